# Files that come in and go out.

files-open = Open a file …
files-others = Recipes for others, and from others
files-others-how = A table (CSV) keeps all that was set right about each line; a spreadsheet opens it. JSON-LD is the form in which web pages state recipes: it has the card’s own words and what is fully known of a serving. Both can be opened here again, and so can those of other writers. What comes in is shown first.
files-schema = The form of the book’s file, for programs (JSON Schema)
files-same-book = It is the book that lies open

files-heading = What “{ $name }” would bring
files-book = A book of “{ $office }”: { $recipes ->
    [one] 1 recipe
   *[other] { $recipes } recipes
}, { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}, { $foods ->
    [0] no foods of its own
    [one] 1 food of its own
   *[other] { $foods } foods of its own
}.
files-book-instead = It takes the place of the book that lies open. Save that one as a file first if you want to keep it.
files-take-book = Open this book
files-list = Recipes in the file
files-recipe = Recipe
files-lines = Lines
files-servings = Servings
files-becomes = What becomes of it
files-new = comes in
files-present = is in the book already, left out
files-beside = comes in beside another recipe of its name
files-take-recipes = { $count ->
    [one] Bring in 1 recipe
   *[other] Bring in { $count } recipes
}
files-nothing-yet = Nothing has changed yet.
files-leave = Leave it
files-opened = The book from “{ $name }” lies open. Undo brings back the one before.
files-brought-in = { $count ->
    [one] 1 recipe has come in from “{ $name }”.
   *[other] { $count } recipes have come in from “{ $name }”.
} Undo takes them out again.

files-save-as = Save as a file
files-recipes-table = All recipes as a table (CSV)
files-recipes-ld = All recipes as JSON-LD
files-recipe-table = The recipe as a table (CSV)
files-recipe-ld = The recipe as JSON-LD
files-recipe-figures = Its figures as a table (CSV)
files-week-figures = The week’s averages as a table (CSV)
