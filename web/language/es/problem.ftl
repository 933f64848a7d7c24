# Qué está mal y cómo se corrige.

problem-at-line = línea { $line }: { $problem }

problem-no-servings = una receta necesita más de { $servings } porciones: diga cuántas porciones rinde la tanda entera
problem-no-serving-size = el tamaño de una porción no da el número de porciones: escriba un tamaño mayor que cero, y el tamaño o peso de la tanda entera
problem-no-batch-weight = el peso de la tanda terminada es cero o menos: escríbalo en gramos, o déjelo vacío
problem-no-yield = no hay rendimiento de { $raw } a { $cooked }: pese el alimento cocido y escriba su peso
problem-negative-weight = el peso es menor que cero: escriba cero gramos o más
problem-cycle = la receta se necesita a sí misma: { $path }: quítela de una de estas recetas
problem-recipe-not-in-book = el libro no tiene la receta «{ $recipe }»: escríbala, o nombre otro alimento
problem-amount-unclear = ¿cuánto de «{ $title }»? Dé porciones, tandas o un peso, en inglés: “4 servings”, “1/2 batch”, “2 lb”
problem-not-analysed = «{ $title }» no se puede analizar: ábrala y corrija lo que indica

problem-not-an-ingredient = esta línea no es un ingrediente
problem-no-food = no se conoce ningún alimento para estas palabras
problem-unknown-food = no existe el alimento { $food }
problem-no-amount = la línea no dice ninguna cantidad
problem-vague = «{ $words }» no es un peso
problem-no-measure = este alimento no tiene medida para «{ $wanted }»
problem-no-piece = este alimento no tiene medida por pieza («{ $wanted }»)
problem-amount-nothing = no hay ninguna cantidad
problem-amount-left-over = «{ $words }» no es parte de una cantidad
problem-amount-no-number = «{ $words }» no contiene ningún número
problem-amount-divides-by-zero = «{ $words }» divide entre cero
problem-amount-malformed = «{ $words }» no es un número
problem-amount-negative = «{ $words }» es menos que nada
problem-amount-zero = «{ $words }» es una cantidad de nada
problem-amount-too-large = «{ $words }» es más que { $most }
problem-amount-too-fine = «{ $words }» tiene demasiadas cifras
problem-amount-mixed-kinds = «{ $words }» une unidades que no miden lo mismo

problem-mend-not-an-ingredient = No hay nada que hacer; si es un ingrediente, escriba su cantidad.
problem-mend-food = Elija el alimento que se quiere decir.
problem-mend-no-amount = Escriba la cantidad delante del alimento, o escriba su peso.
problem-mend-vague = Escriba el peso que se usa; hasta entonces cuenta como desconocido.
problem-mend-measure = Escriba el peso, use una de las medidas propias del alimento, o elija otro alimento.
problem-mend-no-number = Escriba un número y una unidad, como “1 1/2 cups” o “500 g”.
problem-mend-left-over = Escriba solo la cantidad, como “1 1/2 cups”.
problem-mend-divides-by-zero = Escriba un número mayor que cero debajo de la raya, como 1/2.
problem-mend-malformed = Escriba números como 2, 1/2, 1 1/2, 1.5 o 2-3.
problem-mend-negative = Escriba la cantidad sin signo menos.
problem-mend-zero = Escriba cuánto se usa, o quite la línea.
problem-mend-too-large = Revise el número; si es correcto, use una unidad mayor (kg, lb, gallon).
problem-mend-too-fine = Escriba a lo más 18 cifras.
problem-mend-mixed-kinds = Ponga cantidades de distinto tipo (peso, volumen, número) en líneas separadas.

problem-week-unknown-recipe = { $date }: la receta «{ $recipe }» no está en el libro: elija otra o escríbala
problem-week-negative-servings = { $date }: las porciones planeadas de «{ $recipe }» son menos que cero: escriba cero o más
problem-week-no-meals = { $date }: { $meal } para { $group } no tiene comidas planeadas: escriba cuántas se planean, o quite la comida del día

problem-panel-no-servings = Un envase no puede contener { $servings } porciones: escriba un número mayor que cero. Se usan las porciones de la receta.
problem-panel-no-weight = Una porción no puede pesar { $grams } g: escriba su peso como se sirve. Se usa el peso de la receta.
problem-panel-not-on-labels = El nutriente { $nutrient } no es uno que un panel de datos de nutrición pueda mostrar: quítelo de lo pedido.
problem-panel-not-simplified = El panel simplificado necesita { $needed } nutrientes en cantidades insignificantes; aquí se sabe de { $insignificant }. Se muestra el panel completo.

problem-claim-reference-amount = una cantidad de referencia no puede ser { $grams } g: escriba los gramos que da 21 CFR 101.12(b) para este tipo de alimento
problem-claim-serving-weight = una porción no puede pesar { $grams } g: escriba su peso como se sirve, o déjelo vacío
problem-claim-value = no se conoce «{ $name }» para todos los ingredientes
problem-claim-value-of-reference = no se conoce «{ $name }» para todos los ingredientes del alimento de referencia
problem-claim-no-serving-weight = no se conoce el peso de una porción
problem-claim-no-reference-weight = no se conoce el peso de una porción del alimento de referencia
problem-claim-no-reference-amount = no se ha dicho la cantidad de referencia
problem-claim-no-reference-food = no se ha elegido el alimento de referencia
problem-claim-ingredient = no se ha dicho: { $words }

