# Weeks of menus and how they stand.

week-title = Weeks of menus
week-lead = Plan what each meal offers and how many servings of it. The week’s average meal is compared with the limits in force on its first day.
week-new = New week
week-none = There is no week in the book yet.
week-column-week = Week
week-column-days = Days
week-column-findings = Requirements
week-all-weeks = ← All weeks
week-week-title = Title of the week
week-start = First day
week-add-day = Add a day
week-remove-week = Take the week out of the book
week-print = Print the week
week-no-days = The week has no days yet: add the first.
week-date = Date
week-copy-day = Copy day
week-remove-day = Remove day
week-add-meal = Add a meal
week-meal = Meal
week-group = Grades or ages
week-planned-meals = Meals planned
week-remove-meal = Remove the meal
week-add-part = Add a part
week-part = Part of the meal
week-new-part = Another part
week-take = choices a student may take
week-remove-part = Remove the part
week-add-choice = Add a choice
week-choice-hint = Add a recipe …
week-servings = servings
week-remove = Remove
week-missing-recipe = not in the book
week-no-recipes = The book has no recipes to choose from yet.
week-plan = The plan
week-findings = How the week stands
week-no-meals = Add a meal to a day, and its requirements appear here.
week-requirement = Requirement
week-figure = This week
week-limit = Limit
week-verdict = Verdict
week-coverage = How sure
week-citation = Where it stands
week-carriers = What carries it
week-day = Day
week-recipe = Recipe
week-amount = In the average meal
week-share = Share
week-averages = Calories, fat and sodium are limited in the week’s average meal; no day has to keep them by itself. Of what is offered, the smallest meal counts that a student can choose. Behind ± stands the expanded uncertainty with a coverage factor of 2: of figures like these, about 95 in 100 lie within it.
week-of-average-meal = The average meal
week-of-week = What the week offers
week-of-each-day = What each day offers
week-no-limits = No rules are in force for this meal and these grades or ages on the week’s first day.
week-as-planned = As planned
week-days = Days
week-to-choice = To its place in the plan
week-same-day = Another day of the week has this date already: choose a date of its own.
week-to-findings = All requirements, and what carries them
week-nothing-carries = Nothing that is planned brings any.
week-per-serving = In one serving
week-readings = Rules that can be read in two ways
week-week-of = Week of { $date }
week-day-count =
    { $count ->
        [one] 1 day
       *[other] { $count } days
    }
week-known-for = known for { $percent } % of the weight
week-of = { $what }: { $name }
week-serving-figures = { $calories } kcal, { $sodium } mg sodium
week-not-in-book = The week “{ $id }” is not in the book. It may have been taken out: Undo brings it back.
week-added = A week from Monday { $monday } was added.
week-of-the-known = { $figure } of what is known
week-rules-on = The rules in force on { $date }, with their sources
week-on-average = { $figure } on average
week-between = { $low } to { $high }
week-no-evidence = How sure these figures are cannot be said: { $problem }
week-and-more = and { $count } more not met
week-part-grain-or-main = Grain or main item
week-part-first = First item
week-part-second = Second item
week-part-main = Main dish
week-part-vegetable = Vegetable
week-part-fruit = Fruit
week-part-grain = Grain
week-part-milk = Milk
week-service = { $meal } for { $group }
week-no-meals-yet = no meals yet
week-tally = { $met } met, { $missed } missed, { $unknown } unknown
week-over = average over { $meals } planned meals on { $days }
week-on-day = { $figure } on { $day }
week-missed-on-all = missed on all { $count } days
week-missed-on = missed on { $days }
week-unknown-on-all = unknown on all { $count } days
week-unknown-on = unknown on { $days }
week-met-on-all =
    { $count ->
        [one] met on its one day
       *[other] met on all { $count } days
    }
week-no-pattern = The tables hold no meal pattern of { $meal } for { $group }: amounts of components are not checked. Choose other grades or ages, or enter your own amounts under Rules.
week-give-or-take-more = ± { $margin } or more
week-surely-kept = surely kept
week-probably-kept = probably kept
week-too-close = too close to tell
week-probably-not = probably not kept
week-surely-not = surely not kept
week-all-of =
    { $count ->
        [one] its 1 requirement
       *[other] all { $count } requirements
    }
week-others =
    { $count ->
        [one] 1 other
       *[other] { $count } others
    }
week-take-of = of { $count }
