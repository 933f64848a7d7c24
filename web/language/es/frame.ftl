# El marco de la página: encabezado, pie, mensajes y palabras que usan muchas vistas.

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
frame-language = Idioma
frame-taken-out = Se quitó «{ $title }» del libro.

frame-opening = Abriendo las tablas de alimentos …
frame-not-opened = No se pudieron abrir las tablas de alimentos
frame-try-again = Intentar de nuevo
frame-nothing-lost = No se ha perdido nada de lo que escribió: se guarda aparte de las tablas de alimentos. Sin ellas no se puede leer ninguna receta. Revise la conexión e intente de nuevo; si vuelve a fallar, cargue la página otra vez.
frame-not-served = el servidor respondió { $status } { $text } en lugar de las tablas

frame-is-not = Solo para planificar. No es un programa que el Servicio de Alimentos y Nutrición haya evaluado (7 CFR 210.10(i)), ni reemplaza la revisión que exigen los programas federales, ni el consejo de un dietista o médico con licencia.
frame-more = Qué es y qué no es
frame-data = Valores de los alimentos: USDA National Nutrient Database for Standard Reference, Release 28.

frame-saved = Guardado en este navegador
frame-saving = Guardando …
frame-demo = Libro de ejemplo, aún sin guardar
frame-not-saved = Sin guardar
frame-save-refused = Este navegador no permite que la página guarde nada (una ventana privada, o el almacenamiento está bloqueado). Sus cambios duran solo hasta que se cierre la página: guarde el libro como archivo.
frame-save-full = Ya no queda espacio en el almacenamiento del navegador, así que los últimos cambios no están guardados. Guarde el libro como archivo, o libere espacio quitando recetas.
frame-save-changed-elsewhere = Otra pestaña guardó un cambio del libro. Para que no se pierda ninguno de los dos, desde aquí no se guarda nada más hasta que usted elija.
frame-save-holds-unreadable = El libro guardado no se pudo leer y se deja como está, así que desde aquí no se guarda nada hasta que usted elija.
frame-unreadable = No se puede leer el libro guardado en este navegador ({ $why }). Se deja como está; mientras tanto se muestra el libro de ejemplo.
frame-save-unreadable = Guardar su texto como archivo
frame-put-aside = Apartarlo y seguir
frame-save-file = Guardar el libro como archivo
frame-take-other = Mostrar el libro de la otra pestaña
frame-keep-this = Conservar el libro de esta pestaña
frame-notices = Mensajes

frame-no-number = «{ $text }» no es un número: escriba cifras, como 250 o 2.5
frame-unit-of = Unidad de: { $label }
frame-below = { $text } es muy poco: escriba { $least } o más
frame-unknown = desconocido
frame-untitled = Sin título
frame-met = se cumple
frame-missed = no se cumple
frame-not-known = no se sabe
frame-standing-verified = leído en su fuente
frame-standing-copy = leído en una copia, no en la regla misma
frame-standing-derived = calculado a partir de otras cifras de la regla
frame-standing-memory = de memoria: compruébelo antes de confiar en ello
frame-standing-not-sure = de memoria y sin certeza: compruébelo antes de confiar en ello
frame-answers =
    { $count ->
        [0] no se encontró nada
        [one] 1 resultado; las flechas eligen
       *[other] { $count } resultados; las flechas eligen
    }
frame-not-analysed = { $date }: «{ $title }» aún no tiene cifras: abra su ficha y corrija lo que indica
frame-left-out = Se conserva en el libro, pero no se usa hasta que se corrija:
frame-own-dietary = Límites propios de la comida promedio
frame-own-patterns = Cantidades propias de componentes
frame-own-week-rules = Proporciones, opciones y límites de productos propios
frame-history-cut = Los { $cut } pasos más antiguos no cupieron en el almacenamiento de este navegador cuando se cerró la página. Deshacer retrocede { $left } pasos desde aquí.
