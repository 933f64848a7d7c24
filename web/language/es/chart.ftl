# Dibujos de cifras.

chart-as-table = Las cifras en una tabla
chart-bar = De
chart-part = Parte
chart-figure = Cifra
chart-whole = en total
chart-range = Intervalo
chart-average = Comida promedio de la semana
chart-each-day = Comida promedio de cada día
chart-named = { $name }: { $figure }
chart-other-lines = todos los demás renglones
chart-one-serving = Una porción
chart-serving-filled = { $nutrient } de una porción, renglón por renglón
chart-serving-summary = Una porción tiene { $total }; la mayor parte viene de: { $line }. Un límite es de una comida entera.
