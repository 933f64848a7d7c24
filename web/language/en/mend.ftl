# What would mend a week: asking, waiting, the plan.

mend-title = What would mend this week
mend-lead = The fewest changes that bring every requirement inside its limits: other foods, amounts, portions, or another recipe of the book for a choice. Planned servings stay. Nothing changes until you accept it.
mend-margin = Margin for averages
mend-margin-none = none: the limit itself
mend-margin-once = once the standard uncertainty
mend-margin-twice = twice the standard uncertainty
mend-ways = Kinds of change
mend-way-swaps = Other foods and ways of handling them
mend-way-amounts = Other amounts
mend-way-portions = Other portions
mend-way-choices = Another recipe for a choice
mend-keep = What must stay
mend-keep-hint = Marked days, choices, recipes and lines are not touched.
mend-keep-days = Days
mend-keep-choices = Choices
mend-keep-recipes = Recipes and their lines
mend-keep-count = { $count ->
    [0] nothing marked
    [one] 1 marked
   *[other] { $count } marked
}
mend-find = Find the fewest changes
mend-find-again = Look again
mend-stop = Stop with the best so far
mend-opening = Opening the tables …
mend-looking = Looking for changes that could help: { $done } of { $all } places, { $found } changes found.
mend-choosing = Choosing among { $found } changes: { $checked ->
    [one] 1 plan checked
   *[other] { $checked } plans checked
}, at least { $least } changes needed.
mend-explaining = No plan passes. Finding out which requirements conflict.
mend-progress = How far the search has come
mend-none-needed = Every requirement is kept by its margin, or unknown. There is nothing to mend.
mend-least = { $count ->
    [one] One change mends the week
   *[other] { $count } changes mend the week
}. Proven least of the { $found } changes that were looked at.
mend-best = { $count ->
    [one] One change mends the week
   *[other] { $count } changes mend the week
}: the best so far, at most { $more } more than the least of the { $found } changes that were looked at.
mend-checked = The engine has made the changes in a copy of the book and found every requirement kept. Taste before you serve, and read the labels of new products: they go before the table.
mend-impossible = Impossible with the { $found } changes that were looked at, because these cannot be kept together:
mend-impossible-one = Impossible with the { $found } changes that were looked at, because this cannot be kept:
mend-not-smallest = Perhaps not all of these are needed for the conflict.
mend-impossible-way = Give up a mark or a decline, choose a smaller margin, or write other recipes into the book.
mend-stopped = Stopped before a plan was found. Nothing is known.
mend-gave-up = No answer was found, which says nothing about whether there is one. Mark something that must stay and look again.
mend-problem = The search did not work: { $problem }
mend-swap = { $recipe }: “{ $new }” instead of “{ $old }”
mend-portion = { $recipe }: a portion of { $new } instead of { $old }; the batch then makes { $servings } servings
mend-choice = { $day }, { $part }: { $new } instead of { $old }
mend-allergens = New in the dish as far as words tell: { $allergens }. Tell whoever keeps the allergen lists, and read the label.
mend-effects = What it moves
mend-effect-what = Requirement
mend-effect-before = Now
mend-effect-after = With it alone
mend-effect-limit = Limit
mend-no-effect = It moves no figure by itself.
mend-accept = Accept
mend-decline = Decline
mend-accept-of = Accept: { $change }
mend-decline-of = Decline: { $change }
mend-made = Made.
mend-misfit = This no longer fits: the book has changed since. Look again.
mend-accepted = Changed: { $change }
mend-all-made = All changes are made.
mend-declined = { $count ->
    [one] 1 change declined
   *[other] { $count } changes declined
}
mend-forget = Take the declined back
mend-unknown = unknown
