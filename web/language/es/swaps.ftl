# Qué más podría ir en el lugar de una línea.

swaps-title = Qué más podría ir aquí
swaps-title-of = Qué más podría ir aquí: { $line }
swaps-lead = Se compara con esta línea cada alimento que podría hacer su papel, y también lo que una cocina puede hacer de otro modo. Una propuesta es para probarla y saborearla; la etiqueta del producto en el almacén vale más que la tabla.
swaps-looking = Buscando entre todos los alimentos …
swaps-found = Encontrado: { $foods ->
    [0] ningún otro alimento
    [one] 1 alimento más
   *[other] { $foods } alimentos más
} y { $moves ->
    [0] ninguna otra manera
    [one] 1 manera más
   *[other] { $moves } maneras más
}.
swaps-unknown = desconocido

swaps-asked = Qué se pide
swaps-goals = Qué debe cambiar
swaps-less-sodium = Menos sodio
swaps-less-saturated-fat = Menos grasa saturada
swaps-less-added-sugars = Menos azúcares añadidos
swaps-less-calories = Menos calorías
swaps-more-fibre = Más fibra
swaps-less-cost = Menor costo
swaps-weight = { $weight ->
    [0] no se pide
    [1] cuenta una vez
    [2] cuenta el doble
   *[other] cuenta { $weight } veces
}
swaps-band = Las calorías de una porción pueden cambiar
swaps-fall = bajar a lo sumo
swaps-rise = subir a lo sumo
swaps-kcal = kcal
swaps-keeps = Qué debe conservarse
swaps-keep-credit = Ningún componente de la comida puede acreditar menos
swaps-amount-by = Cantidad del alimento nuevo
swaps-by-kind = como se mide su tipo
swaps-by-volume = igual volumen o número
swaps-by-weight = igual peso
swaps-by-credit = lo que acredite lo mismo
swaps-allergens-kept = Nunca se proponen alimentos cuyas palabras señalan un alérgeno que la receta no tiene. Las palabras no prueban nada: lea la etiqueta vigente.

swaps-foods = Otro alimento
swaps-moves = Otra manera
swaps-new-lines = La línea diría
swaps-in-a-serving = En una porción
swaps-in-weeks = En la comida promedio de cada semana
swaps-why = Por qué
swaps-cost = Costo
swaps-try = Probarlo
swaps-take = Tomarlo
swaps-put-back = Devolverlo
swaps-weeks-coming = Se están calculando las semanas …
swaps-no-weeks = Ninguna semana sirve esta receta.
swaps-verdicts = Límites de estas semanas
swaps-verdicts-stay = Ningún límite de estas semanas pasa a cumplirse ni deja de cumplirse, y todos se cumplen o no se saben.
swaps-verdict-stays = sigue así:
swaps-verdict-becomes = pasa a:
swaps-verdict-not-asked = ya no se pide
swaps-limit-of-week = { $week }, { $what } ({ $limit }):
swaps-week-stays = nada cambia
swaps-service = Comida
swaps-service-of = { $meal } para { $group }
swaps-left-out = No se proponen
swaps-left-out-hint = Alimentos que hacen este papel; cada uno se cuenta bajo la primera razón que se encontró.
swaps-left-unknown = { $count ->
    [one] 1 alimento: no se sabe si cambiaría lo que se pide
   *[other] { $count } alimentos: no se sabe si cambiaría lo que se pide
}
swaps-left-energy = { $count ->
    [one] 1 alimento: las calorías saldrían de los límites o no se conocen
   *[other] { $count } alimentos: las calorías saldrían de los límites o no se conocen
}
swaps-left-credit = { $count ->
    [one] 1 alimento: una porción acreditaría menos
   *[other] { $count } alimentos: una porción acreditaría menos
}
swaps-left-allergens = { $count ->
    [one] 1 alimento: sus palabras señalan un alérgeno que la receta no tiene
   *[other] { $count } alimentos: sus palabras señalan un alérgeno que la receta no tiene
}

swaps-tried = Las cifras con ello
swaps-nothing-tried = Pruebe una propuesta: sus cifras aparecen aquí junto a las de la ficha como está. Nada cambia hasta que se tome.
swaps-half = La mitad de ello, la mitad { $food }
swaps-trying = Probando: { $title }. Todavía no cambia nada.
swaps-as-it-stands = como está
swaps-with-it = con ello
swaps-taken = «{ $old }» ahora es «{ $new }».

swaps-calories = Calorías
swaps-saturated-fat = Grasa saturada
swaps-sodium = Sodio
swaps-added-sugars = Azúcares añadidos
swaps-sugars = Azúcares
swaps-fibre = Fibra
swaps-between = de { $low } a { $high }
swaps-at-least = { $low } o más
swaps-at-most = { $high } o menos

swaps-cost-moves = costo: { $change } en una porción
swaps-cost-unknown = falta un precio: el costo no se cuenta
swaps-moves-by = { $way ->
    [wanted] { $nutrient }: { $change } en una porción
   *[other] pero { $nutrient }: { $change } en una porción
}
swaps-moves-at-least = { $way ->
    [wanted] { $nutrient }: { $change } en una porción con certeza; cuánto más, no se sabe
   *[other] pero { $nutrient }: { $change } en una porción con certeza; cuánto más, no se sabe
}
swaps-not-counted = { $nutrient }: no se conoce y no se cuenta como mejor
swaps-same-part = hace el mismo papel: { $part }
swaps-other-part = { $new } puede ir en lugar de { $old }
swaps-same-food = el mismo alimento, hecho de otro modo
swaps-usual-food = un alimento que las cocinas suelen tener
swaps-amount-volume = igual volumen o número
swaps-amount-weight = igual peso
swaps-amount-credit = lo que acredita lo mismo
swaps-amount-weight-instead = igual peso, pues no hay medida con que guiarse
swaps-credit = { $way ->
    [same] sigue acreditando { $after } de { $component }
   *[other] acredita { $after } de { $component } en vez de { $before }
}
swaps-energy = calorías: { $change } en una porción, dentro de los límites
swaps-energy-not-counted = calorías: lo que se escurre no se cuenta, así que puede haber menos
swaps-no-allergen = no se añade ningún alérgeno, hasta donde dicen las palabras: lea la etiqueta
swaps-allergens-gone = ya nada señala { $names }, lo cual no prueba nada: lea la etiqueta

swaps-no-ingredient = Esta línea no es un ingrediente: elija una línea que nombre un alimento.
swaps-names-recipe = Esta línea nombra otra receta: abra esa receta y mire sus líneas.
swaps-no-food = No se ha elegido ningún alimento para esta línea: vuelva a la ficha y elija uno primero.
swaps-no-weight = No se conoce el peso de esta línea: vuelva a la ficha y anote una cantidad que se pueda pesar.
swaps-not-analysed = La receta aún no tiene cifras: vuelva a la ficha y corrija lo que indica.
swaps-no-goal = Elija al menos una cosa que deba cambiar, como menos sodio.
