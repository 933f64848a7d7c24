# Claims about nutrients.

claims-title = Claims that the figures bear out
claims-hint = By 21 CFR 101.13 and 101.54 to 101.62. A claim is offered only when complete data proves every criterion; a reviewer of labels has the last word. What is said here is not kept with the recipe.
claims-kind = The food is
claims-reference-amount = Amount customarily eaten (21 CFR 101.12(b))
claims-two-tablespoons = That amount is 2 tablespoons or less
claims-questions = Ingredients, for “free” claims
claims-reference-food = Compare with another recipe of the book, for “reduced” and “light”
claims-reference-food-hint = words of its title
claims-compare-no-more = Compare with none
claims-none-proven = None is proven.
claims-may-be-needed = (missing values decide whether this is needed)
claims-kinds-1 = a single food
claims-kinds-2 = a main dish
claims-kinds-3 = a meal
claims-answers-1 = not said
claims-answers-2 = it is used
claims-answers-3 = it is not used
claims-compared-with = Compared with “{ $title }”.
claims-proven =
    { $count ->
        [0] Proven
       *[other] Proven, may be offered ({ $count })
    }
claims-silent = Nothing is said of these, for something is missing ({ $count })
claims-not-met = Not met, whatever is missing ({ $count })
claims-verified = verified
claims-copy = read in a secondary copy
claims-memory = from memory
