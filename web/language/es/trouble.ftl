# Qué puede estar mal en un archivo, dónde, y cómo corregirlo.

trouble-in-part = { $part }: { $what }
trouble-in-line = línea { $line }: { $what }
trouble-in-line-and-part = línea { $line }, { $part }: { $what }

trouble-not-json = Esto no es JSON: elija un archivo que esta página haya guardado
trouble-cut-off = El texto no es JSON completo: puede estar cortado, use una copia anterior
trouble-no-book = Es JSON, pero no es un libro ni una receta: elija un archivo que esta página haya guardado
trouble-recipes-only = Este archivo contiene recetas, no un libro: tráigalo como recetas
trouble-newer = El libro es de la versión { $version }, posterior a la que lee esta página: ábralo con una página más nueva
trouble-missing = falta «{ $name }»: compare con un archivo que esta página haya guardado
trouble-twice = «{ $name }» está dos veces: quite una de ellas
trouble-unfit = { $found } no corresponde aquí: compare con un archivo que esta página haya guardado
trouble-unknown-word = «{ $word }» no se conoce aquí: escriba una de estas: { $known }
trouble-same-name = hay dos con el nombre «{ $name }»: cambie el nombre de una
trouble-no-recipes = No contiene ninguna receta: elija una tabla o un archivo JSON-LD con recetas
trouble-no-column = No hay columna «{ $name }»: póngale nombre en la primera fila
trouble-ragged-row = la fila tiene otro número de celdas que la primera: corríjala en una hoja de cálculo
trouble-no-number = «{ $text }» no es un número: escriba cifras, como 250 o 2.5
trouble-row-without-recipe = la fila no pertenece a ninguna receta: ponga el título en la primera fila de cada receta

trouble-no-servings = «{ $title }»: no indica el número de porciones. Indíquelo en la tarjeta.
trouble-yield-in-words = «{ $title }»: el rendimiento «{ $words }» no es un número de porciones. Indíquelo en la tarjeta.
trouble-nutrition-left = «{ $title }»: no se toman los datos de nutrición del archivo. Las cifras se calculan a partir de las líneas.
trouble-no-lines = «{ $title }»: no tiene ingredientes. Escríbalos en la tarjeta.
