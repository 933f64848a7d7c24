# Un mes de un vistazo, y menús cíclicos.

month-all-weeks = ← Todas las semanas
month-lead = Días con y sin clases, lo planificado para ellos y cómo queda cada semana. Los límites dependen de los días que tiene la semana.
month-last = ← El mes anterior
month-next = El mes siguiente →
month-print = Imprimir el mes
month-week-stands = Cómo queda la semana
month-no-school = Sin clases
month-why = por qué
month-open = Sí hay clases
month-close = Sin clases
month-planned-anyway = Planificado de todos modos: quite el día de su semana.
month-twice = La misma comida está planificada dos veces este día.
month-no-meals = sin comidas todavía
month-cycles = Menús cíclicos
month-cycles-hint = Semanas del libro que se siguen y vuelven a empezar. Poner un ciclo en fechas agrega copias de sus semanas; los días sin clases quedan fuera. Deshacer las quita todas en un paso.
month-new-cycle = Menú cíclico
month-add-cycle = Agregar un menú cíclico
month-cycle-title = Título del menú cíclico
month-on-break = En una semana sin clases
month-waits = el ciclo espera
month-runs-on = el ciclo sigue
month-lost-week = una semana que ya no está en el libro
month-add-week = Agregar una semana …
month-from = Desde
month-to = Hasta

month-name = { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[other] diciembre
} de { $year }
month-days = { $count ->
    [one] { $count } día
   *[other] { $count } días
}
month-why-of = Por qué no hay clases: { $name }
month-open-of = Sí hay clases: { $name }
month-close-of = Sin clases: { $name }
month-remove = Quitar: { $name }
month-earlier = Antes: { $name }
month-later = Después: { $name }
month-of = { $what }: { $name }
month-laid-title = { $cycle }, semana del { $date }
month-lay-out = { $weeks ->
    [one] Ponerlo en fechas: { $weeks } semana
   *[other] Ponerlo en fechas: { $weeks } semanas
}, { $days ->
    [one] { $days } día
   *[other] { $days } días
}
month-laid = { $weeks ->
    [one] Se agregó { $weeks } semana.
   *[other] Se agregaron { $weeks } semanas.
}
month-already = { $days ->
    [one] { $days } de estos días ya está planificado
   *[other] { $days } de estos días ya están planificados
}: contarían las comidas de ambos planes.
