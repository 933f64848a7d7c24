# Archivos que entran y salen.

files-open = Abrir un archivo …
files-others = Recetas para otros y de otros
files-others-how = Una tabla (CSV) guarda todo lo que se corrigió en cada línea; se abre con una hoja de cálculo. JSON-LD es la forma en que las páginas web dan recetas: lleva las palabras de la tarjeta y lo que se conoce por completo de una porción. Las dos se pueden volver a abrir aquí, y también las de otros. Primero se muestra lo que entraría.
files-schema = La forma del archivo del libro, para programas (JSON Schema)
files-same-book = Es el libro que está abierto

files-heading = Lo que traería «{ $name }»
files-book = Un libro de «{ $office }»: { $recipes ->
    [one] 1 receta
   *[other] { $recipes } recetas
}, { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}, { $foods ->
    [0] ningún alimento propio
    [one] 1 alimento propio
   *[other] { $foods } alimentos propios
}.
files-book-instead = Toma el lugar del libro que está abierto. Guarde ese primero como archivo si quiere conservarlo.
files-take-book = Abrir este libro
files-list = Recetas del archivo
files-recipe = Receta
files-lines = Líneas
files-servings = Porciones
files-becomes = Qué pasa con ella
files-new = entra
files-present = ya está en el libro, se omite
files-beside = entra al lado de otra receta con su nombre
files-take-recipes = { $count ->
    [one] Traer 1 receta
   *[other] Traer { $count } recetas
}
files-nothing-yet = Todavía no ha cambiado nada.
files-leave = Dejarlo
files-opened = El libro de «{ $name }» está abierto. Deshacer devuelve el anterior.
files-brought-in = { $count ->
    [one] Entró 1 receta de «{ $name }».
   *[other] Entraron { $count } recetas de «{ $name }».
} Deshacer las quita de nuevo.

files-save-as = Guardar como archivo
files-recipes-table = Todas las recetas como tabla (CSV)
files-recipes-ld = Todas las recetas como JSON-LD
files-recipe-table = La receta como tabla (CSV)
files-recipe-ld = La receta como JSON-LD
files-recipe-figures = Sus cifras como tabla (CSV)
files-week-figures = Los promedios de la semana como tabla (CSV)
