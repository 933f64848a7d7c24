# Recetas: la lista, la ficha y sus cifras.

recipe-title = Recetas
recipe-lead = Escriba una receta como en una ficha de cocina. Cada línea se lee mientras la escribe: cuánto pesa, qué alimento nombra y qué no se sabe.
recipe-find = Buscar una receta
recipe-new = Receta nueva
recipe-none = El libro está vacío. Escriba la primera receta o abra un libro en «Acerca de y archivos».
recipe-none-found = Ninguna receta tiene estas palabras en su título.
recipe-column-recipe = Receta
recipe-column-servings = Porciones
recipe-column-open = Por resolver
recipe-new-title = Receta nueva
recipe-all-recipes = ← Todas las recetas
recipe-recipe-title = Título de la receta
recipe-servings = Porciones
recipe-serving-words = Una porción es
recipe-serving-hint = 1 taza
recipe-ingredients = Ingredientes
recipe-ingredients-hint = Escriba o pegue un ingrediente por línea, en inglés, como los nombran las tablas; la tecla Tab lleva a la lectura de la línea.
recipe-example =
    5 lb ground beef, 85% lean
    3 cups onions, chopped
    1 No. 10 can tomatoes, diced
    salt to taste
recipe-readings = Lecturas de las líneas
recipe-method = Preparación
recipe-copy = Copiar la ficha
recipe-remove = Quitar la ficha del libro
recipe-print = Imprimir la ficha
recipe-to-facts = Panel de datos de nutrición
recipe-keep = Conservar esta versión
recipe-go-back = Volver a la versión conservada
recipe-kept-hint = antes → ahora: la ficha como se conservó la última vez y como está.
recipe-not-kept-hint = Conserve la ficha para comparar con ella los cambios que siguen.
recipe-figures = Una porción
recipe-calories = Calorías
recipe-saturated-fat = Grasa saturada
recipe-sodium = Sodio
recipe-nothing-yet = Las cifras aparecen con el primer ingrediente.
recipe-nutrients = Todos los nutrientes
recipe-nutrient-table = Tabla de todos los nutrientes
recipe-nutrient = Nutriente
recipe-per-serving = por porción
recipe-per-100-g = por 100 g
recipe-whole = receta entera
recipe-known-for = conocido para
recipe-unit = unidad
recipe-errors-assumed = errores supuestos
recipe-nutrients-hint = Elija un nutriente para ver qué líneas lo aportan. «Conocido para» es la parte del peso cuyo valor se conoce; lo que falta no es cero.
recipe-within = Recetas dentro de esta receta
recipe-within-problem = aún sin contar
recipe-open-recipe = Abrir la ficha de esa receta
recipe-makes = Porciones, según su tamaño:
recipe-carriers = Qué líneas aportan
recipe-carriers-nutrient = Nutriente
recipe-line = Línea
recipe-amount = Receta entera
recipe-share = Parte
recipe-settle = Resolver
recipe-allergens = Alérgenos en las palabras
recipe-temperatures = Temperaturas para estos alimentos
recipe-food-meant = El alimento que se quiere decir
recipe-chosen = Elegido a mano.
recipe-from-words = Tomarlo otra vez de las palabras
recipe-weight = Peso de toda la línea, parte comestible
recipe-a-recipe = receta de este libro
recipe-treat = Limpio, cocido, escurrido …
recipe-basis = El peso indicado es
recipe-basis-by-words = lo que dicen las palabras
recipe-edible = la parte comestible
recipe-cooked = Se cuenta como
recipe-not-cooked = el alimento como está escrito
recipe-cooked-other = otra entrada, pesada después de cocinar
recipe-retained = Qué queda después de cocinar
recipe-retained-hint = Según la entrada cruda y la cocida, junto con el rendimiento. Partes lejos del 100 % de proteína, minerales o carbohidratos indican que las entradas o el rendimiento no corresponden a esta cocina.
recipe-cooked-entry = La entrada del alimento cocido
recipe-cooked-weight = Peso después de cocinar
recipe-cooked-weight-hint = Medido en la báscula, reemplaza todo rendimiento de una tabla.
recipe-losses = Solo una parte llega al plato:
recipe-open-origin = De dónde viene { $nutrient }
recipe-copy-of = { $title }, otra versión
recipe-not-in-book = La receta «{ $id }» no está en el libro. Quizá se quitó: Deshacer la trae de vuelta.
recipe-change = { $before } → { $now } ({ $difference })
recipe-known-for-share = conocido para el { $percent } % del peso
recipe-uncounted =
    { $count ->
        [0] { "" }
        [one] 1 línea no se conoce y no se cuenta
       *[other] { $count } líneas no se conocen y no se cuentan
    }
recipe-open-lines =
    { $count ->
        [0] nada
        [one] 1 línea
       *[other] { $count } líneas
    }
recipe-lines-read =
    { $read ->
        [one] 1 línea leída, { $open } por resolver
       *[other] { $read } líneas leídas, { $open } por resolver
    }
recipe-not-counted =
    { $count ->
        [one] 1 línea aún no se cuenta
       *[other] { $count } líneas aún no se cuentan
    }
recipe-line-number = Línea { $number }:{ " " }
recipe-correction = Corregir la lectura: { $line }
recipe-weighed = Pesado: { $steps }
recipe-measures =
    { $count ->
        [one] 1 medida de este alimento en las tablas
       *[other] { $count } medidas de este alimento en las tablas
    }
recipe-cooked-as = { $food } ({ $yields })
recipe-yields = × { $factor }, { $low } a { $high }, { $route }
recipe-serving-weight = { $grams } g de ingredientes
recipe-serving-finished = { $grams } g de la preparación terminada
recipe-serving-of = { $words }, { $weight }
recipe-batch-measured = { $servings } porciones{ $serving }; la preparación terminada pesa { $weight }, según medición
recipe-batch-not-measured = { $servings } porciones{ $serving }; los ingredientes pesan { $weight }, la preparación terminada no se pesó
recipe-contains = contiene { $name } (línea { $lines })
recipe-may-contain = puede contener { $name }, revise el empaque (línea { $lines })
recipe-other-allergens = todos los demás se desconocen: revise los empaques
recipe-step-cook = cocinar
recipe-step-hold = mantener
recipe-step-cool = enfriar
recipe-step-reheat = recalentar
recipe-step-keep = conservar
recipe-temperature = { $step }, { $what }: { $fahrenheit } °F ({ $celsius } °C){ $duration } ({ $paragraph }; { $status })
recipe-as-purchased = como se compra
recipe-as-purchased-refuse = como se compra ({ $percent } % es desecho)
recipe-treatment = { $words }: queda el { $keeps } %, entre { $low } y { $high } % ({ $source }; { $status })
