# Semanas de menús y cómo quedan.

week-title = Semanas de menús
week-lead = Planee qué ofrece cada comida y cuántas porciones. La comida promedio de la semana se compara con los límites vigentes en su primer día.
week-new = Semana nueva
week-none = Todavía no hay ninguna semana en el libro.
week-column-week = Semana
week-column-days = Días
week-column-findings = Requisitos
week-all-weeks = ← Todas las semanas
week-week-title = Título de la semana
week-start = Primer día
week-add-day = Agregar un día
week-remove-week = Quitar la semana del libro
week-print = Imprimir la semana
week-no-days = La semana todavía no tiene días: agregue el primero.
week-date = Fecha
week-copy-day = Copiar el día
week-remove-day = Quitar el día
week-add-meal = Agregar una comida
week-meal = Comida
week-group = Grados o edades
week-planned-meals = Comidas planeadas
week-remove-meal = Quitar la comida
week-add-part = Agregar una parte
week-part = Parte de la comida
week-new-part = Otra parte
week-take = opciones que un estudiante puede tomar
week-remove-part = Quitar la parte
week-add-choice = Agregar una opción
week-choice-hint = Agregar una receta …
week-servings = porciones
week-remove = Quitar
week-missing-recipe = no está en el libro
week-no-recipes = El libro todavía no tiene recetas para elegir.
week-plan = El plan
week-findings = Cómo queda la semana
week-no-meals = Agregue una comida a un día y aquí aparecerán sus requisitos.
week-requirement = Requisito
week-figure = Esta semana
week-limit = Límite
week-verdict = Resultado
week-coverage = Qué tan seguro
week-citation = Dónde está escrito
week-carriers = Qué lo aporta
week-day = Día
week-recipe = Receta
week-amount = En la comida promedio
week-share = Parte
week-averages = Las calorías, la grasa y el sodio se limitan en la comida promedio de la semana; ningún día tiene que cumplirlos por sí solo. De lo que se ofrece cuenta la comida más pequeña que un estudiante puede elegir. Detrás de ± está la incertidumbre expandida con un factor de cobertura de 2: de cifras como estas, unas 95 de cada 100 quedan dentro de ella.
week-of-average-meal = La comida promedio
week-of-week = Lo que ofrece la semana
week-of-each-day = Lo que ofrece cada día
week-no-limits = No hay reglas vigentes para esta comida y estos grados o edades en el primer día de la semana.
week-as-planned = Según lo planeado
week-days = Días
week-to-choice = A su lugar en el plan
week-same-day = Otro día de la semana ya tiene esta fecha: elija una fecha distinta.
week-to-findings = Todos los requisitos y qué los aporta
week-nothing-carries = Nada de lo planeado lo aporta.
week-per-serving = En una porción
week-readings = Reglas que se pueden leer de dos maneras
week-week-of = Semana del { $date }
week-day-count =
    { $count ->
        [one] 1 día
       *[other] { $count } días
    }
week-known-for = conocido para el { $percent } % del peso
week-of = { $what }: { $name }
week-serving-figures = { $calories } kcal, { $sodium } mg de sodio
week-not-in-book = La semana «{ $id }» no está en el libro. Quizá se quitó: Deshacer la trae de vuelta.
week-added = Se agregó una semana desde el lunes { $monday }.
week-of-the-known = { $figure } de lo que se conoce
week-rules-on = Las reglas vigentes el { $date }, con sus fuentes
week-on-average = { $figure } en promedio
week-between = { $low } a { $high }
week-no-evidence = No se puede decir qué tan seguras son estas cifras: { $problem }
week-and-more =
    { $count ->
        [one] y 1 más que no se cumple
       *[other] y { $count } más que no se cumplen
    }
week-part-grain-or-main = Grano o plato principal
week-part-first = Primer alimento
week-part-second = Segundo alimento
week-part-main = Plato principal
week-part-vegetable = Verdura
week-part-fruit = Fruta
week-part-grain = Grano
week-part-milk = Leche
week-service = { $meal }, { $group }
week-no-meals-yet = todavía sin comidas
week-tally = { $met } se cumplen, { $missed } no se cumplen, { $unknown } no se saben
week-over = promedio de { $meals } comidas planeadas en { $days }
week-on-day = { $figure } el { $day }
week-missed-on-all = no se cumple en ninguno de los { $count } días
week-missed-on = no se cumple: { $days }
week-unknown-on-all = no se sabe en ninguno de los { $count } días
week-unknown-on = no se sabe: { $days }
week-met-on-all =
    { $count ->
        [one] se cumple en su único día
       *[other] se cumple en los { $count } días
    }
week-no-pattern = Las tablas no tienen patrón de comidas ({ $meal }) para { $group }: no se revisan las cantidades de componentes. Elija otros grados o edades, o escriba sus propias cantidades en Reglas.
week-give-or-take-more = ± { $margin } o más
week-surely-kept = se cumple con seguridad
week-probably-kept = probablemente se cumple
week-too-close = demasiado cerca para decirlo
week-probably-not = probablemente no se cumple
week-surely-not = con seguridad no se cumple
week-all-of =
    { $count ->
        [one] su único requisito
       *[other] los { $count } requisitos
    }
week-others =
    { $count ->
        [one] 1 más
       *[other] { $count } más
    }
week-take-of = de { $count }
