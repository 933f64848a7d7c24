# The field that finds anything.

find-label = Find a recipe, week, food or view
find-hint = Find anything (Ctrl+K)
find-recipe = recipe
find-week = week
find-food = own food
find-view = view
find-month = Month at a glance
