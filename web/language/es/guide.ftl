# Uso guiado del distrito de ejemplo.

guide-title = ¿Es su primera vez? Tres minutos con el distrito de ejemplo
guide-lead = Seis pasos cortos llevan del texto de una receta a una semana lista para la revisión. Puede salir en cualquier paso y seguir después.
guide-begin = Muéstreme
guide-skip = Ahora no
guide-empty = Empezar un libro vacío
guide-emptied = Está abierto un libro vacío. Deshacer trae de vuelta el ejemplo.
guide-step = Paso { $step } de { $steps }:
guide-back = Atrás
guide-next = Siguiente
guide-leave = Salir y seguir después
guide-done = Terminar
guide-go-on = Seguir con el uso guiado en el paso { $step }
guide-again = Uso guiado del ejemplo

guide-book = El libro
guide-book-text = El distrito Quillhaven es inventado. Cada fila es una receta con sus calorías, grasa saturada y sodio en una porción; «Por resolver» cuenta las líneas que no se pudieron pesar. Elija Siguiente para abrir una ficha.
guide-card = Una receta es texto
guide-card-text = Cambie una cantidad en el campo Ingredientes, como en una ficha de cocina: la lectura junto a la línea cambia de inmediato. Una línea mal leída se corrige con el botón que tiene al lado.
guide-figures = Cada cifra se puede abrir
guide-figures-text = En «Una porción» elija la cifra de sodio: muestra cuánto aporta cada línea, el cálculo y la fuente de cada valor. El pequeño ? junto a una cifra dice qué es y cómo se calcula.
guide-week = Una semana frente a sus reglas
guide-week-text = La franja de arriba dice qué no se cumple y qué no se sabe. Abajo está cada requisito con su cifra, su límite, el párrafo y qué lo aporta. Cambie las porciones planeadas de una opción y los resultados cambian con ellas.
guide-find = Buscar todo
guide-find-text = Presione Ctrl+K y escriba unas letras: recetas, semanas, alimentos y vistas se encuentran en un solo campo. Las flechas eligen, Entrar abre.
guide-files = Conserve su trabajo
guide-files-text = Todo queda en este navegador. Guarde el libro como archivo a menudo. Cuando haya visto suficiente del ejemplo, empiece aquí un libro vacío.
