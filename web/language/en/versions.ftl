# Versions of a recipe, side by side.

versions-way = Versions side by side
versions-title-of = Versions of “{ $title }”
versions-back-to = ← Card of “{ $title }”
versions-lead = Keep the card as it stands under a name, change it as you like, and compare any two forms. Each can be gone back to, and going back can be taken back.
versions-none = No version is kept under a name yet.
versions-kept = Kept versions
versions-name = Name of the version
versions-name-example = as served last year
versions-needs-name = Give the version a name first, such as “as served last year”.
versions-keep-it = Keep the card as it stands
versions-was-kept = “{ $name }” is kept.
versions-kept-on = kept on { $day }
versions-go-back = Go back to it
versions-gone-back = The card is again as in “{ $name }”.
versions-remove = Take it out
versions-print = Print the comparison
versions-version = “{ $name }”

versions-side-by-side = Side by side
versions-left = On the left
versions-right = On the right
versions-as-it-stands = As it stands
versions-as-last-kept = As last kept

versions-lines = Ingredients
versions-weight = Weight
versions-differs = differs
versions-figures = One serving
versions-nutrient = Nutrient
versions-change = Change
versions-unknown = unknown
versions-credits = Meal components in one serving
versions-component = Component
versions-nothing = nothing
versions-no-credits = Neither form credits toward a meal component.
versions-allergens = Allergens in the words
versions-allergen = Allergen
versions-no-allergens = No word of either form points to an allergen, which proves nothing.
versions-contains = contains it
versions-may-contain = may contain it
versions-not-named = no word points to it
