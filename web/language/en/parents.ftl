# The page for families. The names on the panel are those of 21 CFR 101.9(c) and
# (d), from memory.

parents-title = { $title } – for families
parents-to = For families
parents-back = Back to { $title }
parents-ways = What to do with this page
parents-languages = Languages
parents-print = Print
parents-save = Save as one file to send
parents-save-how = The file holds all of the page below and opens on any phone or computer, without a network.

parents-panel = Nutrition Facts
parents-serving-size = Serving size
parents-one-serving = 1 serving
parents-weight-not-known = { $serving } (weight not known)
parents-per-serving = Amount per serving
parents-calories = Calories
parents-nutrient = Nutrient
parents-percent = % Daily Value*
parents-daily-value = { $percent } DV
parents-daily-value-unknown = DV not known
parents-left-out-one = Not a significant source of { $name }.
parents-left-out = Not a significant source of { $names } or { $name }.
parents-at-least = at least { $amount }
parents-less-than = less than { $amount }
parents-not-known = not known
parents-nutrient-204 = Total Fat { $amount }
parents-nutrient-606 = Saturated Fat { $amount }
parents-nutrient-605 = Trans Fat { $amount }
parents-nutrient-601 = Cholesterol { $amount }
parents-nutrient-307 = Sodium { $amount }
parents-nutrient-205 = Total Carbohydrate { $amount }
parents-nutrient-291 = Dietary Fiber { $amount }
parents-nutrient-269 = Total Sugars { $amount }
parents-nutrient-539 = Includes { $amount } Added Sugars
parents-nutrient-203 = Protein { $amount }
parents-nutrient-328 = Vitamin D { $amount }
parents-nutrient-301 = Calcium { $amount }
parents-nutrient-303 = Iron { $amount }
parents-nutrient-306 = Potassium { $amount }
parents-added-sugars = Added Sugars { $amount }
parents-incomplete = Some values are not known. A figure with “at least” is what is known of it; what is not known is not zero.
parents-no-figures = There are no figures for this dish yet.

parents-allergens = Allergens
parents-contains = Contains, as its words say
parents-may = May contain
parents-not-named = Not named, which proves nothing
parents-contains-short = Contains
parents-may-short = May contain
parents-none = none
parents-none-named = none named; ask
parents-open-lines = { $count ->
    [one] 1 line of the recipe is not matched to a food or has no weight: what it brings is not counted.
   *[other] { $count } lines of the recipe are not matched to a food or have no weight: what they bring is not counted.
}
parents-allergen-caution = This is found from the words of the recipe and of the national food tables only. It does not prove that a food is free of an allergen. Brands, suppliers and kitchens change, and foods touch one another. Before your child eats a dish, ask the school kitchen to read the label of each product that is used that day. Follow the written plan of your child’s physician and the school’s own procedure.

parents-carbohydrate = Carbohydrate count for one serving
parents-carbohydrate-short = Carbohydrate
parents-carbohydrate-row = Carbohydrate
parents-fiber-row = of it, dietary fiber
parents-carbohydrate-caution = The count is computed from average foods and from the recipe as written. What is on a tray may weigh more or less. Do not dose insulin by this figure alone: follow your child’s diabetes plan and the school nurse.

parents-week-how = What the schools plan to serve, with the figures of one serving. Menus can change on the day.
parents-with-panels = With the Nutrition Facts of each dish
parents-dish = Dish and serving
parents-panels = Nutrition Facts of each dish
parents-meal = { $kind } ({ $groups })
parents-day = { $weekday }, { $month ->
    [m01] January
    [m02] February
    [m03] March
    [m04] April
    [m05] May
    [m06] June
    [m07] July
    [m08] August
    [m09] September
    [m10] October
    [m11] November
   *[m12] December
} { $day }, { $year }

parents-ending = Computed with Gramwright from the recipes of the food service office and the USDA National Nutrient Database for Standard Reference, Release 28. For information only: not certified, and no medical advice. Names of dishes and ingredients stand as the office wrote them.
