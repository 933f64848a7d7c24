# Where a recipe is used.

used-title = Where it is used
used-nowhere = No recipe is made with it, and no week serves it.
used-in-recipes = Recipes made with it
used-through-them = Recipes that it reaches through those
used-in-weeks = Weeks that serve it
used-moved = What has moved there since the card was last kept
