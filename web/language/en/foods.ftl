# Foods: the dataset’s and the office’s own.

foods-title = Foods
foods-look-up = Look up a food
foods-look-up-lead = The dataset’s foods and your own: household measures, values per 100 g, and where they come from.
foods-find = Name of the food
foods-find-hint = oats, milk lowfat, ground beef …
foods-your-own = of your own
foods-own = Foods of your own
foods-own-lead = Products that your office buys, from their package label or the maker’s specification. Recipe lines find them by their description, before the dataset’s foods.
foods-new-label = New food from a label
foods-new-sheet = New food from a specification
foods-none = There is no food of your own in the book yet.
foods-column-food = Food
foods-column-kind = Figures from
foods-column-state = State
foods-from-label = a label
foods-from-sheet = a specification or table
foods-reference = Source
foods-in-use = in use
foods-all-foods = ← All foods
foods-description = Description, as recipes name it
foods-description-hint = as in: Tortilla, whole wheat, 8 inch, Cedar Mill
foods-reference-field = Which package or sheet, and when it was read
foods-reference-hint = as in: label of case 4410, read 2026-08-14
foods-food-in-use = In use: recipes find this food.
foods-label = Nutrition Facts of the package
foods-label-hint = Copy each figure as it is printed, in the label’s order: digits, or words such as “less than 1”. Leave a figure empty where the label has none: empty is unknown, not zero. Write 0 where it prints 0.
foods-serving = Weight of one serving
foods-more-on-label = Further nutrients that a label may list
foods-sheet = Values of the specification
foods-sheet-hint = Unrounded values as the sheet states them, in the units given here. Leave a value empty where the sheet is silent: empty is unknown, not zero.
foods-per = Values are for
foods-more-on-sheet = All further nutrients
foods-ingredients = Ingredient statement of the package
foods-ingredients-hint = Allergens are looked for in these words. Words cannot show what a product has touched: read the current label, each time.
foods-measures = Household measures
foods-measures-hint = So that lines such as “12 tortillas” or “2 cups” can be weighed.
foods-add-measure = Add a measure
foods-amount = Amount
foods-measure-words = Measure
foods-measure-example = tortilla
foods-weight = Weight
foods-remove-measure = Remove
foods-remove = Take the food out of the book
foods-number = Number
foods-group = Food group
foods-other-names = Other names
foods-maker = Maker
foods-refuse = Refuse
foods-no-measures = The dataset has no household measure for this food.
foods-values = Values per 100 g
foods-values-hint = Per 100 g of the edible part, with the dataset’s own digits. No value is not zero.
foods-own-values-hint = Worked out from the figures above. A label’s figure is rounded by law and stands for every amount that prints as it: the interval says from where to where.
foods-nutrient = Nutrient
foods-per-100-g = per 100 g
foods-unit = unit
foods-interval = may be
foods-provenance = how it was found
foods-no-value = no value
foods-as-stated = as stated
foods-import = Take in foods from a file
foods-import-lead = The file is read in this browser and sent nowhere. If anything in it cannot be read, nothing is taken in, and the place is named.
foods-own-csv = Choose a CSV file …
foods-own-csv-hint = One food a line: description, grams (the weight that the values are for), if you like ingredients, measure and measure grams, and nutrients by their INFOODS tagname or SR28 number. An empty cell is a missing value, not zero.
foods-save-example = Save an example file
foods-fdc-json = Choose a FoodData Central JSON file …
foods-fdc-json-hint = One food, a list of foods, or a whole download; from a long one you choose what to take.
foods-fdc-csv = Choose FoodData Central’s CSV tables …
foods-fdc-csv-hint = Choose food.csv, food_nutrient.csv and nutrient.csv of one download together.
foods-the-file = the file
foods-the-files = the files
foods-no-foods = there is no food in it
foods-choose-another = choose another file
foods-choose-again = choose the file again
foods-choose-three = choose food.csv, food_nutrient.csv and nutrient.csv together
foods-filter = Only those with the words
foods-put-away = Put the file away
foods-nth-measure = measure { $number }
foods-of = { $what } of { $name }
foods-between = { $low } to { $high }
foods-table-missing = { $name } is not among them
foods-reading = Reading { $name } …
foods-taken =
    { $count ->
        [one] 1 food was taken in.
       *[other] { $count } foods were taken in.
    }
foods-found = { $count } foods are in the file. Which of them?
foods-take =
    { $count ->
        [0] Take in the chosen foods
        [one] Take in 1 food
       *[other] Take in { $count } foods
    }
foods-not-in-use-short = not in use: { $problem }
foods-not-in-use = Not in use yet. { $problem }.
foods-no-own-food = The book has no food of your own with the number { $number }. It may have been taken out: Undo brings it back.
foods-no-food = The dataset has no food { $id }.
foods-refuse-share = { $percent } % of the weight as purchased
foods-refuse-share-of = { $percent } % of the weight as purchased ({ $what })
foods-no-value-for = No value, which is not zero: { $names }.
foods-analyses =
    { $count ->
        [one] 1 analysis
       *[other] { $count } analyses
    }
foods-standard-error = standard error { $error }
foods-not-taken = Nothing was taken in from { $name }. { $problem }.
foods-fit = { $count } fit
foods-fit-first = { $count } fit; the first { $shown } are shown
foods-in-english = Descriptions, measures and notes of the dataset are in English, as published.
