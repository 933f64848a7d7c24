# Declaraciones sobre nutrientes.

claims-title = Declaraciones que las cifras sostienen
claims-hint = Según 21 CFR 101.13 y 101.54 a 101.62. Una declaración se ofrece solo cuando datos completos prueban cada criterio; quien revisa las etiquetas tiene la última palabra. Lo que se dice aquí no se guarda con la receta. Las declaraciones mismas están en inglés, como las define la norma.
claims-kind = El alimento es
claims-reference-amount = Cantidad que se acostumbra comer (21 CFR 101.12(b))
claims-two-tablespoons = Esa cantidad es de 2 cucharadas o menos
claims-questions = Ingredientes, para declaraciones “free”
claims-reference-food = Comparar con otra receta del libro, para “reduced” y “light”
claims-reference-food-hint = palabras de su título
claims-compare-no-more = No comparar con ninguna
claims-none-proven = Ninguna está probada.
claims-may-be-needed = (los valores que faltan deciden si esto se necesita)
claims-kinds-1 = un solo alimento
claims-kinds-2 = un plato principal
claims-kinds-3 = una comida
claims-answers-1 = no se ha dicho
claims-answers-2 = se usa
claims-answers-3 = no se usa
claims-compared-with = Comparado con «{ $title }».
claims-proven =
    { $count ->
        [0] Probadas
       *[other] Probadas, se pueden ofrecer ({ $count })
    }
claims-silent = De estas no se dice nada, porque falta algo ({ $count })
claims-not-met = No se cumplen, falte lo que falte ({ $count })
claims-verified = verificado
claims-copy = leído en una copia
claims-memory = de memoria
