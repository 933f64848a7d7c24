# Dónde se usa una receta.

used-title = Dónde se usa
used-nowhere = Ninguna receta se hace con ella y ninguna semana la sirve.
used-in-recipes = Recetas que se hacen con ella
used-through-them = Recetas a las que llega por medio de esas
used-in-weeks = Semanas que la sirven
used-moved = Qué cambió allí desde que se guardó la ficha por última vez
