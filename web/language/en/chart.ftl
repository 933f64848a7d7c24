# Drawings of figures.

chart-as-table = The figures as a table
chart-bar = Of
chart-part = Part
chart-figure = Figure
chart-whole = in all
chart-range = Range
chart-average = Average meal of the week
chart-each-day = Average meal of each day
chart-named = { $name }: { $figure }
chart-other-lines = all other lines
chart-one-serving = One serving
chart-serving-filled = { $nutrient } of a serving, line by line
chart-serving-summary = One serving has { $total }; most of it comes from: { $line }. A limit is one of a whole meal.
