# El marco de la página: encabezado, pie, mensajes.

frame-skip = Saltar al contenido de la página
frame-views = Vistas
frame-recipes = Recetas
frame-weeks = Semanas
frame-foods = Alimentos
frame-rules = Reglas
frame-about = Acerca de y archivos
frame-undo = Deshacer
frame-redo = Rehacer
frame-close = Cerrar
frame-taken-out = Se quitó «{ $title }» del libro.
