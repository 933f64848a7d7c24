# What else could go in a line's place.

swaps-title = What else could go here
swaps-title-of = What else could go here: { $line }
swaps-lead = Every food that could play this part is weighed against it, and so is what a kitchen can do besides. A proposal is one to try and to taste; the label of the product in the store room goes before the table.
swaps-looking = Looking through all foods …
swaps-found = { $foods ->
    [0] No other food
    [one] 1 other food
   *[other] { $foods } other foods
} and { $moves ->
    [0] no other way
    [one] 1 other way
   *[other] { $moves } other ways
} found.
swaps-unknown = unknown

swaps-asked = What is asked
swaps-goals = What should move
swaps-less-sodium = Less sodium
swaps-less-saturated-fat = Less saturated fat
swaps-less-added-sugars = Less added sugars
swaps-less-calories = Fewer calories
swaps-more-fibre = More fiber
swaps-less-cost = Lower cost
swaps-weight = { $weight ->
    [0] not asked
    [1] counts once
    [2] counts twice
   *[other] counts { $weight } times
}
swaps-band = Calories of a serving may move
swaps-fall = down by at most
swaps-rise = up by at most
swaps-kcal = kcal
swaps-keeps = What must stay
swaps-keep-credit = No meal component may credit less
swaps-amount-by = Amount of the new food
swaps-by-kind = as its kind is measured
swaps-by-volume = same volume or number
swaps-by-weight = same weight
swaps-by-credit = as much as credits the same
swaps-allergens-kept = Foods whose words point to an allergen that the recipe does not have are never proposed. Words prove nothing: read the current label.

swaps-foods = Another food
swaps-moves = Another way
swaps-new-lines = The line would read
swaps-in-a-serving = In a serving
swaps-in-weeks = In the average meal of each week
swaps-why = Why
swaps-cost = Cost
swaps-try = Try it
swaps-take = Take it
swaps-put-back = Put it back
swaps-weeks-coming = The weeks are being worked out …
swaps-no-weeks = No week serves this recipe.
swaps-verdicts = Limits of these weeks
swaps-verdicts-stay = No limit of these weeks becomes met or missed, and none is missed.
swaps-verdict-stays = stays
swaps-verdict-becomes = becomes
swaps-verdict-not-asked = is not asked for any more
swaps-limit-of-week = { $week }, { $what } ({ $limit }):
swaps-week-stays = nothing moves
swaps-service = Meal
swaps-service-of = { $meal } for { $group }
swaps-left-out = Not proposed
swaps-left-out-hint = Foods that play this part, each counted under the first reason that was found.
swaps-left-unknown = { $count ->
    [one] 1 food: whether a goal would move is not known
   *[other] { $count } foods: whether a goal would move is not known
}
swaps-left-energy = { $count ->
    [one] 1 food: the calories would leave the band, or are not known
   *[other] { $count } foods: the calories would leave the band, or are not known
}
swaps-left-credit = { $count ->
    [one] 1 food: a serving would credit less
   *[other] { $count } foods: a serving would credit less
}
swaps-left-allergens = { $count ->
    [one] 1 food: its words point to an allergen that the recipe does not have
   *[other] { $count } foods: their words point to an allergen that the recipe does not have
}

swaps-tried = The figures with it
swaps-nothing-tried = Try a proposal: its figures appear here beside those of the card as it stands. Nothing is changed until it is taken.
swaps-half = Half of it, half { $food }
swaps-trying = Trying: { $title }. Nothing is changed yet.
swaps-as-it-stands = as it stands
swaps-with-it = with it
swaps-taken = “{ $old }” is now “{ $new }”.

swaps-calories = Calories
swaps-saturated-fat = Saturated fat
swaps-sodium = Sodium
swaps-added-sugars = Added sugars
swaps-sugars = Sugars
swaps-fibre = Fiber
swaps-between = { $low } to { $high }
swaps-at-least = { $low } or more
swaps-at-most = { $high } or less

swaps-cost-moves = cost: { $change } in a serving
swaps-cost-unknown = a price is missing: the cost is not counted
swaps-moves-by = { $way ->
    [wanted] { $nutrient }: { $change } in a serving
   *[other] but { $nutrient }: { $change } in a serving
}
swaps-moves-at-least = { $way ->
    [wanted] { $nutrient }: { $change } in a serving for certain, how much further is not known
   *[other] but { $nutrient }: { $change } in a serving for certain, how much further is not known
}
swaps-not-counted = { $nutrient }: not known, and not counted as better
swaps-same-part = plays the same part: { $part }
swaps-other-part = { $new } can stand for { $old }
swaps-same-food = the same food, made otherwise
swaps-usual-food = a food that kitchens usually have
swaps-amount-volume = the same volume or number
swaps-amount-weight = the same weight
swaps-amount-credit = as much as credits the same
swaps-amount-weight-instead = the same weight, since there is no measure to go by
swaps-credit = { $way ->
    [same] still credits { $after } of { $component }
   *[other] credits { $after } of { $component } instead of { $before }
}
swaps-energy = calories: { $change } in a serving, within the band
swaps-energy-not-counted = calories: what drains away is not counted, so that there may be less
swaps-no-allergen = no allergen is added as far as words tell: read the label
swaps-allergens-gone = nothing points to { $names } any more, which proves nothing: read the label

swaps-no-ingredient = This line is no ingredient: choose a line that names a food.
swaps-names-recipe = This line names another recipe: open that recipe and look at its lines.
swaps-no-food = No food is chosen for this line: go back to the card and choose one first.
swaps-no-weight = The weight of this line is not known: go back to the card and enter an amount that can be weighed.
swaps-not-analysed = The recipe has no figures yet: go back to the card and mend what it reports.
swaps-no-goal = Choose at least one thing that should move, such as less sodium.
