# Moving and copying what a week plans, its drawings, and the ways to a remedy.

plan-up = Up
plan-down = Down
plan-day-back = A day earlier
plan-day-on = A day later
plan-done = Done
plan-copy-week = Copy to the next week
plan-to-kitchen = In the kitchens
plan-to-month = The month
plan-drawings = The week drawn
plan-nutrient = What fills the days with
plan-move = Move: { $name }
plan-to-day = { $weekday ->
    [0] To Monday
    [1] To Tuesday
    [2] To Wednesday
    [3] To Thursday
    [4] To Friday
    [5] To Saturday
   *[other] To Sunday
}
plan-copied = A copy of the week was added from Monday { $date }.
plan-nothing-to-copy = The week from Monday { $date } has no school on the days that this week plans: nothing was copied.
plan-fills = { $nutrient } in the average meal of each day: { $service }
plan-fills-summary = The week’s average meal has { $average }. Most is served on { $weekday ->
    [0] Monday
    [1] Tuesday
    [2] Wednesday
    [3] Thursday
    [4] Friday
    [5] Saturday
   *[other] Sunday
}: { $most }. Limits hold for the week’s average, not for a day.
plan-ranges = The week against its ranges: { $service }
plan-ranges-summary = { $within } of { $all } figures of the week’s average meal lie in their range.
plan-dish-of = { $part }: { $dish }
plan-to-mend = Find what would mend this
plan-swap-line = What else could go for “{ $line }”
