# Versiones de una receta, una junto a otra.

versions-way = Versiones una junto a otra
versions-title-of = Versiones de «{ $title }»
versions-back-to = ← Ficha de «{ $title }»
versions-lead = Guarde la ficha como está con un nombre, cámbiela como quiera y compare dos formas cualesquiera. Se puede volver a cada una, y el regreso también se puede deshacer.
versions-none = Todavía no se guarda ninguna versión con nombre.
versions-kept = Versiones guardadas
versions-name = Nombre de la versión
versions-name-example = como se sirvió el año pasado
versions-needs-name = Póngale primero un nombre a la versión, como «como se sirvió el año pasado».
versions-keep-it = Guardar la ficha como está
versions-was-kept = Se guardó «{ $name }».
versions-kept-on = guardada el { $day }
versions-go-back = Volver a ella
versions-gone-back = La ficha está otra vez como en «{ $name }».
versions-remove = Quitarla
versions-print = Imprimir la comparación
versions-version = «{ $name }»

versions-side-by-side = Una junto a otra
versions-left = A la izquierda
versions-right = A la derecha
versions-as-it-stands = Como está
versions-as-last-kept = Como se guardó por última vez

versions-lines = Ingredientes
versions-weight = Peso
versions-differs = difiere
versions-figures = Una porción
versions-nutrient = Nutriente
versions-change = Cambio
versions-unknown = desconocido
versions-credits = Componentes de la comida en una porción
versions-component = Componente
versions-nothing = nada
versions-no-credits = Ninguna de las dos formas acredita hacia un componente de la comida.
versions-allergens = Alérgenos en las palabras
versions-allergen = Alérgeno
versions-no-allergens = Ninguna palabra de las dos formas señala un alérgeno, lo cual no prueba nada.
versions-contains = lo contiene
versions-may-contain = puede contenerlo
versions-not-named = ninguna palabra lo señala
