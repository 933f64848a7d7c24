# The view of the Nutrition Facts panel.

facts-notes = To know about this panel
facts-print = Print the panel
facts-incomplete = Some values are not known. A figure marked “at least” is what is known, rounded down; such a panel is a draft until the missing values are filled in from product labels.
facts-options = How the panel is made
facts-serving-weight = Weight of a serving as served
facts-container = Servings per container
facts-audience = For
facts-four-and-over = adults and children of 4 years and over
facts-one-to-three = children of 1 to 3 years
facts-dual = A second column for the whole container
facts-content = Rows
facts-full = all
facts-without-insignificant = without those that may be left out for their small amounts
facts-simplified = simplified, where it is allowed
facts-also = List more nutrients
facts-form = Layout
facts-vertical = one row below the other
facts-tabular = side by side, for small packages
facts-linear = running text, for the smallest packages
facts-back = ← { $title }, the card
facts-title = Nutrition Facts: { $title }
facts-in-english = The panel’s words are those that 21 CFR 101.9 prescribes.
