# A month at a glance, and cycle menus.

month-all-weeks = ← All weeks
month-lead = Days with and without school, what is planned for them, and how each week stands. Limits follow from the days that a week has.
month-last = ← The month before
month-next = The month after →
month-print = Print the month
month-week-stands = How the week stands
month-no-school = No school
month-why = why
month-open = School after all
month-close = No school
month-planned-anyway = Planned all the same: take the day out of its week.
month-twice = The same meal is planned twice on this day.
month-no-meals = no meals yet
month-cycles = Cycle menus
month-cycles-hint = Weeks of the book that follow each other and begin again. Laying a cycle over dates adds copies of its weeks; days without school are left out. Undo takes all of them back in one step.
month-new-cycle = Cycle menu
month-add-cycle = Add a cycle menu
month-cycle-title = Title of the cycle menu
month-on-break = In a week without school
month-waits = the cycle waits
month-runs-on = the cycle runs on
month-lost-week = a week that is not in the book any more
month-add-week = Add a week …
month-from = From
month-to = To

month-name = { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[other] December
} { $year }
month-days = { $count ->
    [one] { $count } day
   *[other] { $count } days
}
month-why-of = Why there is no school: { $name }
month-open-of = School after all: { $name }
month-close-of = No school: { $name }
month-remove = Remove: { $name }
month-earlier = Earlier: { $name }
month-later = Later: { $name }
month-of = { $what }: { $name }
month-laid-title = { $cycle }, week of { $date }
month-lay-out = { $weeks ->
    [one] Lay it out: { $weeks } week
   *[other] Lay it out: { $weeks } weeks
}, { $days ->
    [one] { $days } day
   *[other] { $days } days
}
month-laid = { $weeks ->
    [one] { $weeks } week was added.
   *[other] { $weeks } weeks were added.
}
month-already = { $days ->
    [one] { $days } of these days is planned already
   *[other] { $days } of these days are planned already
}: meals of both plans would count.
