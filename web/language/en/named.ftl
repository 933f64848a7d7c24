# What the engine's values are called.

named-fruits = fruits
named-vegetables = vegetables
named-dark-green = dark green vegetables
named-red-orange = red and orange vegetables
named-beans = beans, peas and lentils
named-starchy = starchy vegetables
named-other-vegetables = other vegetables
named-grains = grains
named-meat-alternates = meats and meat alternates
named-fluid-milk = fluid milk

named-juice = juice
named-beverage = beverage
named-whole-grain-rich = whole grain-rich
named-whole-grain-unstated = whole grain unstated
named-dough = dough
named-grain-dessert = grain dessert
named-cereal = breakfast cereal
named-yogurt = yogurt
named-flavored = flavored
named-unflavored = unflavored
named-fat-free = fat-free
named-low-fat = low-fat
named-reduced-fat = reduced-fat
named-whole-milk = whole
named-subgroup-only = subgroup only

named-allergen-milk = milk
named-allergen-egg = egg
named-allergen-fish = fish
named-allergen-shellfish = crustacean shellfish
named-allergen-tree-nuts = tree nuts
named-allergen-wheat = wheat
named-allergen-peanuts = peanuts
named-allergen-soybeans = soybeans
named-allergen-sesame = sesame

named-breakfast = breakfast
named-lunch = lunch
named-snack = snack
named-supper = supper
named-ages = ages { $ages }

named-at-least = at least { $limit }
named-at-most = at most { $limit }
named-below = below { $limit }
named-range = { $low } to { $high }

named-size-mini = mini
named-size-extra-small = extra small
named-size-small = small
named-size-medium = medium
named-size-large = large
named-size-extra-large = extra large
named-size-jumbo = jumbo

named-unit-cup =
    { $number ->
        [one] cup
       *[other] cups
    }
named-unit-pint =
    { $number ->
        [one] pint
       *[other] pints
    }
named-unit-quart =
    { $number ->
        [one] quart
       *[other] quarts
    }
named-unit-gallon =
    { $number ->
        [one] gallon
       *[other] gallons
    }
named-unit-tsp =
    { $number ->
       *[other] tsp
    }
named-unit-tbsp =
    { $number ->
       *[other] tbsp
    }
named-unit-oz-eq =
    { $number ->
       *[other] oz eq
    }
named-unit-fl-oz =
    { $number ->
       *[other] fl oz
    }
named-unit-iu =
    { $number ->
       *[other] IU
    }
named-unit-option =
    { $number ->
        [one] option
       *[other] options
    }
named-unit-component =
    { $number ->
        [one] component
       *[other] components
    }
named-unit-subgroup =
    { $number ->
        [one] subgroup
       *[other] subgroups
    }
named-unit-meal =
    { $number ->
        [one] meal
       *[other] meals
    }
named-unit-day =
    { $number ->
        [one] day
       *[other] days
    }
named-unit-other-product =
    { $number ->
        [one] other product
       *[other] other products
    }
