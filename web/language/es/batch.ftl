# La tanda y el tamaño de una porción.

batch-title = Tamaño de una porción, peso de la tanda
batch-way = El número de porciones
batch-serving = Una porción
batch-batch = La tanda entera
batch-pieces = piezas
batch-finished = Peso medido de la tanda terminada
batch-ways-1 = se escribe arriba
batch-ways-2 = resulta del peso de una porción
batch-ways-3 = resulta del volumen de una porción
batch-ways-4 = resulta de las piezas de una porción
batch-makes = La tanda rinde { $servings } porciones.
batch-finished-servings-follow = Mientras está vacío: la suma de los ingredientes{ $sum }. De él resultan el número de porciones y las cifras por 100 g.
batch-finished-weight-follows = Mientras está vacío: la suma de los ingredientes{ $sum }. De él resultan el peso de una porción y las cifras por 100 g; lo que contiene una porción no cambia.
