# El campo que encuentra todo.

find-label = Buscar una receta, una semana, un alimento o una vista
find-hint = Buscar todo (Ctrl+K)
find-recipe = receta
find-week = semana
find-food = alimento propio
find-view = vista
find-month = El mes de un vistazo
