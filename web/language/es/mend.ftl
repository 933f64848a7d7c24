# Lo que arreglaría una semana: preguntar, esperar, el plan.

mend-title = Qué arreglaría esta semana
mend-lead = Los menos cambios que ponen todos los requisitos dentro de sus límites: otros alimentos, cantidades, porciones u otra receta del libro para una opción. Las porciones planificadas se quedan como están. Nada cambia hasta que usted lo acepta.
mend-margin = Margen para los promedios
mend-margin-none = ninguno: el límite mismo
mend-margin-once = una vez la incertidumbre estándar
mend-margin-twice = dos veces la incertidumbre estándar
mend-ways = Clases de cambio
mend-way-swaps = Otros alimentos y otra manera de prepararlos
mend-way-amounts = Otras cantidades
mend-way-portions = Otras porciones
mend-way-choices = Otra receta para una opción
mend-keep = Lo que debe quedarse
mend-keep-hint = Los días, opciones, recetas y líneas marcados no se tocan.
mend-keep-days = Días
mend-keep-choices = Opciones
mend-keep-recipes = Recetas y sus líneas
mend-keep-count = { $count ->
    [0] nada marcado
    [one] 1 marcado
   *[other] { $count } marcados
}
mend-find = Buscar los menos cambios
mend-find-again = Buscar de nuevo
mend-stop = Parar con lo mejor hasta ahora
mend-opening = Abriendo las tablas …
mend-looking = Buscando cambios que puedan ayudar: { $done } de { $all } lugares, { $found } cambios encontrados.
mend-choosing = Eligiendo entre { $found } cambios: { $checked ->
    [one] 1 plan comprobado
   *[other] { $checked } planes comprobados
}, hacen falta al menos { $least } cambios.
mend-explaining = Ningún plan pasa. Averiguando qué requisitos se contradicen.
mend-progress = Hasta dónde ha llegado la búsqueda
mend-none-needed = Todos los requisitos se cumplen con su margen, o no se conocen. No hay nada que arreglar.
mend-least = { $count ->
    [one] Un cambio arregla la semana
   *[other] { $count } cambios arreglan la semana
}. Es lo mínimo, demostrado, de los { $found } cambios que se miraron.
mend-best = { $count ->
    [one] Un cambio arregla la semana
   *[other] { $count } cambios arreglan la semana
}: lo mejor hasta ahora, a lo sumo { $more } más que lo mínimo de los { $found } cambios que se miraron.
mend-checked = El programa hizo los cambios en una copia del libro y todos los requisitos se cumplen. Pruebe antes de servir y lea las etiquetas de los productos nuevos: valen más que la tabla.
mend-impossible = Imposible con los { $found } cambios que se miraron, porque estos requisitos no se pueden cumplir juntos:
mend-impossible-one = Imposible con los { $found } cambios que se miraron, porque este requisito no se puede cumplir:
mend-not-smallest = Quizá no todos estos hacen falta para la contradicción.
mend-impossible-way = Quite una marca o acepte algo rechazado, elija un margen menor o escriba otras recetas en el libro.
mend-stopped = Se paró antes de encontrar un plan. No se sabe nada.
mend-gave-up = No se encontró respuesta, lo que no dice si la hay. Marque algo que deba quedarse y busque de nuevo.
mend-problem = La búsqueda no funcionó: { $problem }
mend-swap = { $recipe }: «{ $new }» en lugar de «{ $old }»
mend-portion = { $recipe }: una porción de { $new } en lugar de { $old }; la tanda rinde entonces { $servings } porciones
mend-choice = { $day }, { $part }: { $new } en lugar de { $old }
mend-allergens = Nuevo en el plato según las palabras: { $allergens }. Avise a quien lleva las listas de alérgenos y lea la etiqueta.
mend-effects = Lo que mueve
mend-effect-what = Requisito
mend-effect-before = Ahora
mend-effect-after = Solo con este cambio
mend-effect-limit = Límite
mend-no-effect = Por sí solo no mueve ninguna cifra.
mend-accept = Aceptar
mend-decline = Rechazar
mend-accept-of = Aceptar: { $change }
mend-decline-of = Rechazar: { $change }
mend-made = Hecho.
mend-misfit = Esto ya no encaja: el libro ha cambiado desde entonces. Busque de nuevo.
mend-accepted = Cambiado: { $change }
mend-all-made = Todos los cambios están hechos.
mend-declined = { $count ->
    [one] 1 cambio rechazado
   *[other] { $count } cambios rechazados
}
mend-forget = Retirar los rechazos
mend-unknown = no se conoce
