# Recipes: the list, the card, its figures.

recipe-title = Recipes
recipe-lead = Write a recipe as on a kitchen card. Each line is read as you type: what it weighs, which food it means, and what is not known.
recipe-find = Find a recipe
recipe-new = New recipe
recipe-none = The book is empty. Write the first recipe, or open a book under About & files.
recipe-none-found = No recipe has these words in its title.
recipe-column-recipe = Recipe
recipe-column-servings = Servings
recipe-column-open = Still open
recipe-new-title = New recipe
recipe-all-recipes = ← All recipes
recipe-recipe-title = Title of the recipe
recipe-servings = Servings
recipe-serving-words = One serving is
recipe-serving-hint = 1 cup
recipe-ingredients = Ingredients
recipe-ingredients-hint = Write or paste one ingredient per line; the Tab key goes to the reading of the line.
recipe-example =
    5 lb ground beef, 85% lean
    3 cups onions, chopped
    1 No. 10 can tomatoes, diced
    salt to taste
recipe-readings = Readings of the lines
recipe-method = Directions
recipe-copy = Copy the card
recipe-remove = Take the card out of the book
recipe-print = Print the card
recipe-to-facts = Nutrition Facts panel
recipe-keep = Keep this version
recipe-go-back = Go back to the kept one
recipe-kept-hint = before → now: the card as last kept, and as it stands.
recipe-not-kept-hint = Keep the card to compare later changes with it.
recipe-figures = One serving
recipe-calories = Calories
recipe-saturated-fat = Saturated fat
recipe-sodium = Sodium
recipe-nothing-yet = The figures appear with the first ingredient.
recipe-nutrients = All nutrients
recipe-nutrient-table = Table of all nutrients
recipe-nutrient = Nutrient
recipe-per-serving = per serving
recipe-per-100-g = per 100 g
recipe-whole = whole recipe
recipe-known-for = known for
recipe-unit = unit
recipe-errors-assumed = errors assumed
recipe-nutrients-hint = Choose a nutrient to see which lines carry it. “Known for” is the share of the weight whose value is known; what is missing is not zero.
recipe-within = Recipes in this recipe
recipe-within-problem = not counted yet
recipe-open-recipe = Open the card of that recipe
recipe-makes = Servings, by their size:
recipe-carriers = What carries
recipe-carriers-nutrient = Nutrient
recipe-line = Line
recipe-amount = Whole recipe
recipe-share = Share
recipe-settle = Settle
recipe-allergens = Allergens in the words
recipe-temperatures = Temperatures for these foods
recipe-food-meant = The food that is meant
recipe-chosen = Chosen by hand.
recipe-from-words = Take it from the words again
recipe-weight = Weight of the whole line, edible part
recipe-a-recipe = recipe of this book
recipe-treat = Cleaned, cooked, drained …
recipe-basis = The stated weight is
recipe-basis-by-words = what the words say
recipe-edible = the edible portion
recipe-cooked = Counted as
recipe-not-cooked = the food as written
recipe-cooked-other = another entry, weighed after cooking
recipe-retained = What stays through cooking
recipe-retained-hint = By the raw and the cooked entry together with the yield. Shares far from 100 % of protein, minerals or carbohydrate tell that the entries or the yield do not fit this kitchen.
recipe-cooked-entry = The entry of the cooked food
recipe-cooked-weight = Weight after cooking
recipe-cooked-weight-hint = Measured on the scale it takes the place of every yield from a table.
recipe-losses = Only a part ends up in the dish:
recipe-open-origin = Where { $nutrient } comes from
recipe-copy-of = { $title }, another version
recipe-not-in-book = The recipe “{ $id }” is not in the book. It may have been taken out: Undo brings it back.
recipe-change = { $before } → { $now } ({ $difference })
recipe-known-for-share = known for { $percent } % of the weight
recipe-uncounted =
    { $count ->
        [0] { "" }
        [one] 1 line is not known and not counted
       *[other] { $count } lines are not known and not counted
    }
recipe-open-lines =
    { $count ->
        [0] nothing
        [one] 1 line
       *[other] { $count } lines
    }
recipe-lines-read = { $read } lines read, { $open } to settle
recipe-not-counted =
    { $count ->
        [one] 1 line is not counted yet
       *[other] { $count } lines are not counted yet
    }
recipe-line-number = Line { $number }:{ " " }
recipe-correction = Set the reading right: { $line }
recipe-weighed = Weighed: { $steps }
recipe-measures =
    { $count ->
        [one] 1 measure of this food in the tables
       *[other] { $count } measures of this food in the tables
    }
recipe-cooked-as = { $food } ({ $yields })
recipe-yields = × { $factor }, { $low } to { $high }, { $route }
recipe-serving-weight = { $grams } g of ingredients
recipe-serving-finished = { $grams } g of the finished batch
recipe-serving-of = { $words }, { $weight }
recipe-batch-measured = { $servings } servings{ $serving }; the finished batch weighs { $weight }, as measured
recipe-batch-not-measured = { $servings } servings{ $serving }; ingredients weigh { $weight }, the finished batch was not weighed
recipe-contains = contains { $name } (line { $lines })
recipe-may-contain = may contain { $name }, check the package (line { $lines })
recipe-other-allergens = all others unknown: check the packages
recipe-step-cook = cook
recipe-step-hold = hold
recipe-step-cool = cool
recipe-step-reheat = reheat
recipe-step-keep = keep
recipe-temperature = { $step }, { $what }: { $fahrenheit } °F ({ $celsius } °C){ $duration } ({ $paragraph }; { $status })
recipe-as-purchased = as purchased
recipe-as-purchased-refuse = as purchased ({ $percent } % is refuse)
recipe-treatment = { $words }: { $keeps } % stays, { $low } to { $high } % ({ $source }; { $status })
