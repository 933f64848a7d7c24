# What can be wrong with a file, where, and how to mend it.

trouble-in-part = { $part }: { $what }
trouble-in-line = line { $line }: { $what }
trouble-in-line-and-part = line { $line }, { $part }: { $what }

trouble-not-json = This is no JSON: choose a file that this page has saved
trouble-cut-off = The text is no complete JSON: it may have been cut off, take an earlier copy
trouble-no-book = This is JSON, but no book and no recipe: choose a file that this page has saved
trouble-recipes-only = This file holds recipes, not a book: bring it in as recipes
trouble-newer = The book has version { $version }, which is later than this page reads: open it with a newer page
trouble-missing = “{ $name }” is missing: compare it with a file that this page has saved
trouble-twice = “{ $name }” is there twice: take one of them out
trouble-unfit = { $found } does not fit here: compare it with a file that this page has saved
trouble-unknown-word = “{ $word }” is not known here: write one of { $known }
trouble-same-name = two have the name “{ $name }”: rename one of them
trouble-no-recipes = There is no recipe in it: choose a table or a JSON-LD file with recipes
trouble-no-column = There is no column “{ $name }”: name it in the first row
trouble-ragged-row = the row has another number of cells than the first: set it right in a spreadsheet
trouble-no-number = “{ $text }” is not a number: write digits, as in 250 or 2.5
trouble-row-without-recipe = the row belongs to no recipe: put the title in the first row of each recipe

trouble-no-servings = “{ $title }”: no number of servings is stated. State it on the card.
trouble-yield-in-words = “{ $title }”: the yield “{ $words }” is no number of servings. State it on the card.
trouble-nutrition-left = “{ $title }”: the nutrition stated in the file is not taken over. Figures are computed from the lines.
trouble-no-lines = “{ $title }”: it has no ingredients. Write them on the card.
