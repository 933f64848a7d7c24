# El expediente de una semana para una revisión.

review-title = { $week }: expediente para revisión
review-running-head = { $week } – { $office } – registro de planificación, no certificado
review-to = Expediente para revisión
review-back = Volver a { $week }
review-print = Imprimir el expediente
review-not-certified = No certificado. Este expediente se hizo con una herramienta de planificación que ninguna agencia ha evaluado. No es un análisis de nutrientes en el sentido de 7 CFR 210.10(i) y no reemplaza una revisión, las herramientas de la agencia estatal, los registros de producción ni la documentación de los productos. Las cifras y reglas marcadas «de memoria» deben verificarse antes de confiar en ellas.

review-menus = Menús y porciones planificadas
review-meal = { $service }: { $planned } comidas planificadas
review-part = Parte de la comida
review-offer = { $title } (tomar { $take })
review-dish = Platillo
review-planned = Porciones planificadas

review-findings = Resultados
review-findings-how = Los límites de la comida promedio se comparan con el promedio de la semana, ponderado por las porciones planificadas. De lo que se ofrece, cuenta la comida más pequeña que un estudiante puede elegir. «Desconocido» significa que lo que no se sabe podría decidirlo en un sentido o en otro.
review-service = { $service }: { $meals } comidas en { $days ->
    [one] 1 día
   *[other] { $days } días
}
review-requirement = Requisito
review-figure = Esta semana
review-limit = Límite
review-verdict = Veredicto
review-known = Qué tan seguro
review-paragraph = Párrafo

review-recipes = Recetas estandarizadas, con créditos
review-recipes-how = Cada línea como la tiene la cocina, su peso en el platillo, el alimento cuyos valores la representan y cómo se halló el peso. Debajo, lo que acredita una porción y la aritmética de cada línea.
review-line = Línea
review-weight = Peso
review-food = Alimento
review-how = Cómo se pesó
review-chosen = { $food }, elegido por la oficina
review-method = Preparación
review-credits = Créditos de una porción

review-rules = Reglas
review-rules-how = Límites vigentes el primer día de cada comida, con los días desde y hasta los que rigen, dónde están, dónde se leyeron y qué tan seguro es.
review-on-day = { $what }, el { $day }

review-sources = Fuentes de los valores
review-sources-how = Los valores son los de los alimentos siguientes, por 100 g de alimento comestible, como se publicaron o como los anotó la oficina.
review-citation = US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: September 2015, slightly revised May 2016.
review-number = Número
review-source = Fuente
review-dataset = SR28
review-label = etiqueta del envase: { $reference }
review-values = valores declarados: { $reference }

review-assumptions = Supuestos
review-method-values = Los alimentos son alimentos promedio. Un producto de una marca puede ser distinto; si se tiene su etiqueta, la oficina puede anotarlo.
review-method-missing = Un valor que falta no es cero. Las cifras dicen para cuánto del peso del alimento se conocen. SR28 no tiene valores de azúcares añadidos.
review-method-average = La comida promedio es la suma de las porciones planificadas por la cantidad en una porción, dividida entre las comidas planificadas (7 CFR 210.10(i)).
review-method-credit = Los créditos se suman con exactitud en toda la receta y se redondean hacia abajo una vez, para una porción, al final.
review-method-smallest = Una opción sin porciones planificadas no se ofrece.
review-method-allergens = Los alérgenos no son parte de este expediente. Se encuentran solo en palabras, lo que no prueba ninguna ausencia.
review-unmeasured = El peso de la preparación terminada no se midió y es la suma de sus ingredientes en: { $recipes }
review-doubts = Líneas que se tomaron de una manera y pueden significar otra cosa, o que no se cuentan
review-no-doubts = Ninguna línea se tomó de una manera dudosa.
review-recipe = Receta
review-taken-as = Qué se supuso

review-overrides = Decisiones de personas
review-foods-chosen = { $count ->
    [one] En 1 línea la oficina eligió el alimento; la línea está marcada en las recetas.
   *[other] En { $count } líneas la oficina eligió el alimento; las líneas están marcadas en las recetas.
}
review-not-followed = Esta lectura de las reglas está desactivada: { $name }
review-own-limits = Se usan límites propios de la oficina: { $name }
review-no-overrides = No se cambió nada más.
review-decided = Qué se decidió
review-reason = Motivo
review-no-reason = no hay motivo anotado
review-whole = toda la receta
review-finished = la preparación terminada pesa { $weight }, según medición
review-sized = el número de porciones resulta del tamaño de una porción
review-beans = los frijoles, chícharos y lentejas cuentan como alternativa de carne
review-weighs = la línea pesa { $weight }
review-as-purchased = el peso indicado es tal como se compra
review-edible-portion = el peso indicado es de la porción comestible
review-cooked = cuenta como «{ $food }» una vez cocido
review-cooked-measured = cuenta como «{ $food }» una vez cocido, { $grams } g según medición
review-other-recipe = se refiere a la receta «{ $title }»
review-credit = acredita { $amount } { $component }, según se declaró
review-stated-for = { $credit }; se declaró para la línea «{ $line }»
