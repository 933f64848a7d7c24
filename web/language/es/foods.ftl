# Alimentos: los de la base de datos y los propios de la oficina.

foods-title = Alimentos
foods-look-up = Buscar un alimento
foods-look-up-lead = Los alimentos de la base de datos y los suyos: medidas caseras, valores por 100 g y de dónde vienen.
foods-find = Nombre del alimento
foods-find-hint = oats, milk lowfat, ground beef …
foods-your-own = propio
foods-own = Alimentos propios
foods-own-lead = Productos que compra su oficina, según la etiqueta del empaque o la especificación del fabricante. Las líneas de las recetas los encuentran por su descripción, antes que los alimentos de la base de datos.
foods-new-label = Alimento nuevo según una etiqueta
foods-new-sheet = Alimento nuevo según una especificación
foods-none = Todavía no hay alimentos propios en el libro.
foods-column-food = Alimento
foods-column-kind = Cifras según
foods-column-state = Estado
foods-from-label = una etiqueta
foods-from-sheet = una especificación o tabla
foods-reference = Fuente
foods-in-use = en uso
foods-all-foods = ← Todos los alimentos
foods-description = Descripción, como la nombran las recetas
foods-description-hint = por ejemplo: Tortilla, whole wheat, 8 inch, Cedar Mill
foods-reference-field = Qué empaque u hoja, y cuándo se leyó
foods-reference-hint = por ejemplo: etiqueta de la caja 4410, leída el 2026-08-14
foods-food-in-use = En uso: las recetas encuentran este alimento.
foods-label = Datos de nutrición del empaque
foods-label-hint = Copie cada cifra como está impresa, en el orden de la etiqueta: números, o palabras como “less than 1” (en inglés). Deje vacía una cifra donde la etiqueta no la tiene: vacío es desconocido, no cero. Escriba 0 donde dice 0.
foods-serving = Peso de una porción
foods-more-on-label = Otros nutrientes que puede mostrar una etiqueta
foods-sheet = Valores de la especificación
foods-sheet-hint = Valores sin redondear como los da la hoja, en las unidades indicadas aquí. Deje vacío un valor donde la hoja no dice nada: vacío es desconocido, no cero.
foods-per = Los valores son para
foods-more-on-sheet = Todos los demás nutrientes
foods-ingredients = Lista de ingredientes del empaque
foods-ingredients-hint = Los alérgenos se buscan en estas palabras, en inglés. Las palabras no pueden mostrar con qué estuvo en contacto un producto: lea la etiqueta actual, cada vez.
foods-measures = Medidas caseras
foods-measures-hint = Para que se puedan pesar líneas como “12 tortillas” o “2 cups”.
foods-add-measure = Agregar una medida
foods-amount = Cantidad
foods-measure-words = Medida
foods-measure-example = tortilla
foods-weight = Peso
foods-remove-measure = Quitar
foods-remove = Quitar el alimento del libro
foods-number = Número
foods-group = Grupo de alimentos
foods-other-names = Otros nombres
foods-maker = Fabricante
foods-refuse = Desecho
foods-no-measures = La base de datos no tiene medidas caseras para este alimento.
foods-values = Valores por 100 g
foods-values-hint = Por 100 g de la parte comestible, con las cifras propias de la base de datos. Sin valor no es cero.
foods-own-values-hint = Calculado a partir de las cifras de arriba. La ley redondea la cifra de una etiqueta, que vale por toda cantidad que se imprime igual: el intervalo dice desde dónde hasta dónde.
foods-nutrient = Nutriente
foods-per-100-g = por 100 g
foods-unit = unidad
foods-interval = puede ser
foods-provenance = cómo se obtuvo
foods-no-value = sin valor
foods-as-stated = como se indica
foods-import = Incorporar alimentos de un archivo
foods-import-lead = El archivo se lee en este navegador y no se envía a ninguna parte. Si algo en él no se puede leer, no se incorpora nada y se nombra el lugar.
foods-own-csv = Elegir un archivo CSV …
foods-own-csv-hint = Un alimento por línea: description, grams (el peso al que corresponden los valores), si quiere ingredients, measure y measure grams, y nutrientes por su nombre INFOODS o número SR28. Una celda vacía es un valor que falta, no cero.
foods-save-example = Guardar un archivo de ejemplo
foods-fdc-json = Elegir un archivo JSON de FoodData Central …
foods-fdc-json-hint = Un alimento, una lista de alimentos o una descarga entera; de una larga usted elige qué incorporar.
foods-fdc-csv = Elegir las tablas CSV de FoodData Central …
foods-fdc-csv-hint = Elija juntos food.csv, food_nutrient.csv y nutrient.csv de una misma descarga.
foods-the-file = el archivo
foods-the-files = los archivos
foods-no-foods = no contiene ningún alimento
foods-choose-another = elija otro archivo
foods-choose-again = elija el archivo otra vez
foods-choose-three = elija juntos food.csv, food_nutrient.csv y nutrient.csv
foods-filter = Solo los que tienen las palabras
foods-put-away = Guardar el archivo sin usarlo
foods-nth-measure = medida { $number }
foods-of = { $what } de { $name }
foods-between = { $low } a { $high }
foods-table-missing = { $name } no está entre ellos
foods-reading = Leyendo { $name } …
foods-taken =
    { $count ->
        [one] Se incorporó 1 alimento.
       *[other] Se incorporaron { $count } alimentos.
    }
foods-found = Hay { $count } alimentos en el archivo. ¿Cuáles de ellos?
foods-take =
    { $count ->
        [0] Incorporar los alimentos elegidos
        [one] Incorporar 1 alimento
       *[other] Incorporar { $count } alimentos
    }
foods-not-in-use-short = no se usa: { $problem }
foods-not-in-use = Aún no se usa. { $problem }.
foods-no-own-food = El libro no tiene un alimento propio con el número { $number }. Quizá se quitó: Deshacer lo trae de vuelta.
foods-no-food = La base de datos no tiene el alimento { $id }.
foods-refuse-share = { $percent } % del peso como se compra
foods-refuse-share-of = { $percent } % del peso como se compra ({ $what })
foods-no-value-for = Sin valor, lo cual no es cero: { $names }.
foods-analyses =
    { $count ->
        [one] 1 análisis
       *[other] { $count } análisis
    }
foods-standard-error = error estándar { $error }
foods-not-taken = No se incorporó nada de { $name }. { $problem }.
foods-fit = { $count } coinciden
foods-fit-first = { $count } coinciden; se muestran los primeros { $shown }
foods-in-english = Las descripciones, medidas y notas de la base de datos están en inglés, como se publicaron.
