# Cómo se llaman los valores del motor de cálculo.

named-fruits = frutas
named-vegetables = verduras
named-dark-green = verduras de color verde oscuro
named-red-orange = verduras rojas y anaranjadas
named-beans = frijoles, guisantes y lentejas
named-starchy = verduras con almidón
named-other-vegetables = otras verduras
named-grains = granos
named-meat-alternates = carnes y sustitutos de la carne
named-fluid-milk = leche líquida

named-juice = jugo
named-beverage = bebida
named-whole-grain-rich = rico en granos integrales
named-whole-grain-unstated = no dice si el grano es integral
named-dough = masa
named-grain-dessert = postre a base de granos
named-cereal = cereal de desayuno
named-yogurt = yogur
named-flavored = con sabor
named-unflavored = sin sabor
named-fat-free = sin grasa
named-low-fat = baja en grasa
named-reduced-fat = reducida en grasa
named-whole-milk = entera
named-subgroup-only = solo para el subgrupo

named-allergen-milk = leche
named-allergen-egg = huevo
named-allergen-fish = pescado
named-allergen-shellfish = mariscos crustáceos
named-allergen-tree-nuts = nueces de árbol
named-allergen-wheat = trigo
named-allergen-peanuts = cacahuates (maní)
named-allergen-soybeans = soya
named-allergen-sesame = sésamo (ajonjolí)

named-breakfast = desayuno
named-lunch = almuerzo
named-snack = merienda
named-supper = cena
named-ages = { $ages } años

named-at-least = al menos { $limit }
named-at-most = a lo más { $limit }
named-below = menos de { $limit }
named-range = { $low } a { $high }

named-size-mini = miniatura
named-size-extra-small = muy pequeño
named-size-small = pequeño
named-size-medium = mediano
named-size-large = grande
named-size-extra-large = muy grande
named-size-jumbo = gigante

named-unit-cup =
    { $number ->
        [one] taza
       *[other] tazas
    }
named-unit-pint =
    { $number ->
        [one] pinta
       *[other] pintas
    }
named-unit-quart =
    { $number ->
        [one] cuarto de galón
       *[other] cuartos de galón
    }
named-unit-gallon =
    { $number ->
        [one] galón
       *[other] galones
    }
named-unit-tsp =
    { $number ->
        [one] cdta.
       *[other] cdtas.
    }
named-unit-tbsp =
    { $number ->
        [one] cda.
       *[other] cdas.
    }
named-unit-oz-eq =
    { $number ->
       *[other] oz eq
    }
named-unit-fl-oz =
    { $number ->
       *[other] oz líq.
    }
named-unit-iu =
    { $number ->
       *[other] UI
    }
named-unit-option =
    { $number ->
        [one] opción
       *[other] opciones
    }
named-unit-component =
    { $number ->
        [one] componente
       *[other] componentes
    }
named-unit-subgroup =
    { $number ->
        [one] subgrupo
       *[other] subgrupos
    }
named-unit-meal =
    { $number ->
        [one] comida
       *[other] comidas
    }
named-unit-day =
    { $number ->
        [one] día
       *[other] días
    }
named-unit-other-product =
    { $number ->
        [one] otro producto
       *[other] otros productos
    }
