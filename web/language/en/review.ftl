# The record of a week for a review.

review-title = { $week }: record for a review
review-running-head = { $week } – { $office } – planning record, not certified
review-to = Record for a review
review-back = Back to { $week }
review-print = Print the record
review-not-certified = Not certified. This record was made with a planning tool that no agency has evaluated. It is no nutrient analysis in the meaning of 7 CFR 210.10(i) and does not replace a review, the State agency’s tools, production records or product documentation. Figures and rules marked “from memory” have to be checked before anyone relies on them.

review-menus = Menus and planned servings
review-meal = { $service }: { $planned } meals planned
review-part = Part of the meal
review-offer = { $title } (take { $take })
review-dish = Dish
review-planned = Planned servings

review-findings = Findings
review-findings-how = Limits on the average meal are compared with the week’s average, weighted by planned servings. Of what is offered, the smallest meal counts that a student can choose. “Unknown” means that what is not known could decide it either way.
review-service = { $service }: { $meals } meals on { $days ->
    [one] 1 day
   *[other] { $days } days
}
review-requirement = Requirement
review-figure = This week
review-limit = Limit
review-verdict = Verdict
review-known = How sure
review-paragraph = Paragraph

review-recipes = Standardized recipes, with credits
review-recipes-how = Each line as the kitchen has it, its weight in the dish, the food whose values stand for it, and how the weight was found. Below, what a serving credits and the arithmetic of each line.
review-line = Line
review-weight = Weight
review-food = Food
review-how = How it was weighed
review-chosen = { $food }, chosen by the office
review-method = Directions
review-credits = Credits of one serving

review-rules = Rules
review-rules-how = Limits in force on the first day of each meal, with the days from and until which they hold, where they stand, where they were read, and how sure that is.
review-on-day = { $what }, on { $day }

review-sources = Sources of values
review-sources-how = Values are those of the foods below, per 100 g of edible food, as published or as the office entered them.
review-citation = US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: September 2015, slightly revised May 2016.
review-number = Number
review-source = Source
review-dataset = SR28
review-label = package label: { $reference }
review-values = stated values: { $reference }

review-assumptions = Assumptions
review-method-values = Foods are average foods. A product of one brand can differ; where its label is at hand, the office can enter it.
review-method-missing = A missing value is not zero. Figures say how much of the food’s weight they are known for. SR28 has no values for added sugars.
review-method-average = The average meal is the sum of planned servings times the amount in a serving, divided by the meals planned (7 CFR 210.10(i)).
review-method-credit = Credits are added up exactly over the recipe and rounded down once, for one serving, last.
review-method-smallest = A choice of which no servings are planned is not offered.
review-method-allergens = Allergens are not part of this record. They are found in words only, which proves no absence.
review-unmeasured = The weight of the finished batch was not measured and is the sum of its ingredients in: { $recipes }
review-doubts = Lines that were taken one way and may be meant another, or are not counted
review-no-doubts = No line was taken in a way that is open to doubt.
review-recipe = Recipe
review-taken-as = What was assumed

review-overrides = Overrides
review-foods-chosen = { $count ->
    [one] On 1 line the office chose the food itself; the line is marked in the recipes.
   *[other] On { $count } lines the office chose the food itself; the lines are marked in the recipes.
}
review-not-followed = This reading of the rules is switched off: { $name }
review-own-limits = Limits of the office’s own are in use: { $name }
review-no-overrides = Nothing else was overridden.
review-decided = What was decided
review-reason = Reason
review-no-reason = no reason is recorded
review-whole = the whole recipe
review-finished = the finished batch weighs { $weight }, as measured
review-sized = the number of servings follows from the size of a serving
review-beans = beans, peas and lentils count as a meat alternate
review-weighs = the line weighs { $weight }
review-as-purchased = the stated weight is as purchased
review-edible-portion = the stated weight is the edible portion
review-cooked = counts as “{ $food }” once cooked
review-cooked-measured = counts as “{ $food }” once cooked, { $grams } g as measured
review-other-recipe = the recipe “{ $title }” is meant
review-credit = credits { $amount } { $component }, as stated
review-stated-for = { $credit }; it was stated for the line “{ $line }”
