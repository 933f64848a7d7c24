# La vista del panel de datos de nutrición.

facts-notes = Lo que hay que saber de este panel
facts-print = Imprimir el panel
facts-incomplete = Algunos valores no se conocen. Una cifra con “at least” (al menos) es lo que se conoce, redondeado hacia abajo; un panel así es un borrador hasta que se completen los valores que faltan con las etiquetas de los productos.
facts-options = Cómo se hace el panel
facts-serving-weight = Peso de una porción como se sirve
facts-container = Porciones por envase
facts-audience = Para
facts-four-and-over = adultos y niños de 4 años o más
facts-one-to-three = niños de 1 a 3 años
facts-dual = Una segunda columna para el envase entero
facts-content = Filas
facts-full = todas
facts-without-insignificant = sin las que se pueden omitir por sus cantidades pequeñas
facts-simplified = simplificado, donde está permitido
facts-also = Mostrar más nutrientes
facts-form = Diseño
facts-vertical = una fila debajo de otra
facts-tabular = lado a lado, para envases pequeños
facts-linear = texto seguido, para los envases más pequeños
facts-back = ← { $title }, la ficha
facts-title = Datos de nutrición: { $title }
facts-in-english = El panel está en inglés, como lo prescribe 21 CFR 101.9.
