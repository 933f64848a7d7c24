# Mover y copiar lo que planifica una semana, sus dibujos y los caminos a un remedio.

plan-up = Arriba
plan-down = Abajo
plan-day-back = Un día antes
plan-day-on = Un día después
plan-done = Listo
plan-copy-week = Copiar a la semana siguiente
plan-to-kitchen = En las cocinas
plan-to-month = El mes
plan-drawings = La semana dibujada
plan-nutrient = Qué llena los días con
plan-move = Mover: { $name }
plan-to-day = { $weekday ->
    [0] Al lunes
    [1] Al martes
    [2] Al miércoles
    [3] Al jueves
    [4] Al viernes
    [5] Al sábado
   *[other] Al domingo
}
plan-copied = Se agregó una copia de la semana desde el lunes { $date }.
plan-nothing-to-copy = La semana desde el lunes { $date } no tiene clases en los días que planifica esta semana: no se copió nada.
plan-fills = { $nutrient } en la comida promedio de cada día: { $service }
plan-fills-summary = La comida promedio de la semana tiene { $average }. Lo más se sirve el { $weekday ->
    [0] lunes
    [1] martes
    [2] miércoles
    [3] jueves
    [4] viernes
    [5] sábado
   *[other] domingo
}: { $most }. Los límites valen para el promedio de la semana, no para un día.
plan-ranges = La semana frente a sus intervalos: { $service }
plan-ranges-summary = { $within } de { $all } cifras de la comida promedio de la semana están en su intervalo.
plan-dish-of = { $part }: { $dish }
plan-to-mend = Buscar qué arreglaría esto
plan-swap-line = Qué más podría ir en lugar de «{ $line }»
