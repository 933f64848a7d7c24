# The page's frame: header, footer, messages.

frame-skip = Skip to the page’s content
frame-views = Views
frame-recipes = Recipes
frame-weeks = Weeks
frame-foods = Foods
frame-rules = Rules
frame-about = About & files
frame-undo = Undo
frame-redo = Redo
frame-close = Close
frame-taken-out = “{ $title }” was taken out of the book.
