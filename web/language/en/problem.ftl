# What is wrong, and how to mend it.

problem-at-line = line { $line }: { $problem }

problem-no-servings = a recipe needs more than { $servings } servings: state how many servings the whole batch makes
problem-no-serving-size = the size of a serving does not tell the number of servings: enter a size above zero, and the size or weight of the whole batch
problem-no-batch-weight = the weight of the finished batch is zero or less: enter it in grams, or leave it empty
problem-no-yield = there is no yield from { $raw } to { $cooked }: weigh the cooked food and enter its weight
problem-negative-weight = the weight is below zero: enter zero or more grams
problem-cycle = the recipe needs itself: { $path }: take it out of one of these recipes
problem-recipe-not-in-book = the book has no recipe “{ $recipe }”: write it, or name another food
problem-amount-unclear = how much of “{ $title }”? Give servings, batches or a weight, as in “4 servings”, “1/2 batch”, “2 lb”
problem-not-analysed = “{ $title }” cannot be analysed itself: open it and mend what it reports

problem-not-an-ingredient = this line is not an ingredient
problem-no-food = no food is known for these words
problem-unknown-food = there is no food { $food }
problem-no-amount = the line says no amount
problem-vague = “{ $words }” is not a weight
problem-no-measure = this food has no measure for “{ $wanted }”
problem-no-piece = this food has no measure by the piece (“{ $wanted }”)
problem-amount-nothing = there is no amount
problem-amount-left-over = “{ $words }” is not part of an amount
problem-amount-no-number = “{ $words }” holds no number
problem-amount-divides-by-zero = “{ $words }” divides by zero
problem-amount-malformed = “{ $words }” is not a number
problem-amount-negative = “{ $words }” is less than nothing
problem-amount-zero = “{ $words }” is an amount of nothing
problem-amount-too-large = “{ $words }” is more than { $most }
problem-amount-too-fine = “{ $words }” has too many digits
problem-amount-mixed-kinds = “{ $words }” joins units that do not measure the same thing

problem-mend-not-an-ingredient = Nothing to do; if it is an ingredient, write its amount.
problem-mend-food = Choose the food that is meant.
problem-mend-no-amount = Write the amount before the food, or enter its weight.
problem-mend-vague = Enter the weight that is used; until then it counts as unknown.
problem-mend-measure = Enter the weight, use one of the food’s own measures, or choose another food.
problem-mend-no-number = Write a number and a unit, such as “1 1/2 cups” or “500 g”.
problem-mend-left-over = Write the amount alone, such as “1 1/2 cups”.
problem-mend-divides-by-zero = Write a number above zero below the line, as in 1/2.
problem-mend-malformed = Write numbers such as 2, 1/2, 1 1/2, 1.5 or 2-3.
problem-mend-negative = Write the amount without a minus sign.
problem-mend-zero = Write how much is used, or take the line out.
problem-mend-too-large = Check the number; if it is meant, use a larger unit (kg, lb, gallon).
problem-mend-too-fine = Write at most 18 digits.
problem-mend-mixed-kinds = Put amounts of different kinds (weight, volume, count) on lines of their own.

problem-week-unknown-recipe = { $date }: the recipe “{ $recipe }” is not in the book: choose another or write it
problem-week-negative-servings = { $date }: the servings planned of “{ $recipe }” are below zero: enter zero or more
problem-week-no-meals = { $date }: { $meal } for { $group } has no planned meals: enter how many are planned, or take the meal off the day

problem-panel-no-servings = A container cannot hold { $servings } servings: enter a number above zero. The recipe’s own servings are used.
problem-panel-no-weight = A serving cannot weigh { $grams } g: enter its weight as served. The recipe’s own weight is used.
problem-panel-not-on-labels = Nutrient { $nutrient } is not one that a Nutrition Facts panel can list: take it out of the request.
problem-panel-not-simplified = The simplified panel needs { $needed } nutrients in insignificant amounts; here { $insignificant } are known to be. The full panel is shown.

problem-claim-reference-amount = a reference amount cannot be { $grams } g: enter the grams that 21 CFR 101.12(b) gives for this kind of food
problem-claim-serving-weight = a serving cannot weigh { $grams } g: enter its weight as served, or leave it empty
problem-claim-value = { $name } is not known for every ingredient
problem-claim-value-of-reference = { $name } of the reference food is not known for every ingredient
problem-claim-no-serving-weight = the weight of a serving is not known
problem-claim-no-reference-weight = the weight of a serving of the reference food is not known
problem-claim-no-reference-amount = the reference amount is not stated
problem-claim-no-reference-food = no reference food is chosen
problem-claim-ingredient = { $words } is not stated

