# How sure a figure is, and where it comes from.

sure-going = How sure the figures are is still being fetched.
sure-plus-minus-at-least = ± at least
sure-slip-hint = Choose a figure of a serving to see where it comes from. ± is the interval in which the figure lies with a confidence of about 95 percent (coverage factor 2): the dataset’s standard errors, the rounding of labels and the tolerance of the amounts, not how a cook portions. Where the dataset has no standard error, that of similar foods is assumed.
sure-nutrient = Nutrient
sure-not-known = Nothing is known of it.
sure-no-food = no food is chosen
sure-no-weight = the weight is not known
sure-no-value = the dataset has no value
sure-not-counted = Unknown, not counted as zero
sure-carbohydrate = Carbohydrate count
sure-carbohydrate-row = Carbohydrate
sure-fibre-row = of it fiber
sure-failed = How sure the figures are cannot be told: the file with the dataset’s standard errors did not come ({ $problem }). The figures themselves are complete.
sure-title = Where it comes from: { $nutrient }
sure-per-serving = { $figure } in one serving
sure-shared = { $whole } in the whole recipe ÷ { $servings } servings = { $serving }
sure-between = The weight may be { $low } to { $high }.
sure-own-value = a food of the office’s own; by its source the value lies between { $low } and { $high }
sure-footnote = Footnote of the dataset: { $text }
sure-assumed-none = none
sure-assumed-hardly = hardly any
sure-assumed-all = all
sure-assumed-nearly = nearly all
sure-assumed-mostly = mostly, { $percent } %
sure-assumed-partly = partly, { $percent } %
sure-rests-on = errors assumed: { $assumed }
sure-known-for-all = known for all of the weight
sure-known-for = known for { $percent } % of the weight
sure-known-but =
    { $lines ->
        [one] { $known } but 1 line, whose weight is unknown
       *[other] { $known } but { $lines } lines, whose weight is unknown
    }
sure-product = { $value } per 100 g × { $weight } ÷ 100{ $kept } = { $amount }
sure-kept = { $share } that stays in the dish
sure-data-points =
    { $count ->
        [0] no analysis of this food
        [one] 1 analysis
       *[other] { $count } analyses
    }
sure-error-dataset = standard error { $error }
sure-error-label = standard uncertainty { $error } from the rounding of the label
sure-error-group = no standard error; { $error } assumed, the median of its food group
sure-error-all = no standard error; { $error } assumed, the median of all foods
