# Qué tan segura es una cifra y de dónde viene.

sure-going = Todavía se está cargando qué tan seguras son las cifras.
sure-plus-minus-at-least = ± al menos
sure-slip-hint = Elija una cifra de una porción para ver de dónde viene. ± es el intervalo en que está la cifra con una confianza de alrededor del 95 por ciento (factor de cobertura 2): los errores estándar de la base de datos, el redondeo de las etiquetas y la tolerancia de las cantidades, no la manera en que sirve un cocinero. Donde la base de datos no tiene error estándar, se supone el de alimentos parecidos.
sure-nutrient = Nutriente
sure-not-known = No se sabe nada de él.
sure-no-food = no se ha elegido el alimento
sure-no-weight = no se conoce el peso
sure-no-value = la base de datos no tiene valor
sure-not-counted = Desconocido, no se cuenta como cero
sure-carbohydrate = Conteo de carbohidratos
sure-carbohydrate-row = Carbohidratos
sure-fibre-row = de ellos, fibra
sure-failed = No se puede decir qué tan seguras son las cifras: no llegó el archivo con los errores estándar de la base de datos ({ $problem }). Las cifras mismas están completas.
sure-title = De dónde viene: { $nutrient }
sure-per-serving = { $figure } en una porción
sure-shared = { $whole } en la receta entera ÷ { $servings } porciones = { $serving }
sure-between = El peso puede ser de { $low } a { $high }.
sure-own-value = un alimento propio de la oficina; según su fuente, el valor está entre { $low } y { $high }
sure-footnote = Nota de la base de datos: { $text }
sure-assumed-none = ninguno
sure-assumed-hardly = casi ninguno
sure-assumed-all = todos
sure-assumed-nearly = casi todos
sure-assumed-mostly = la mayoría, { $percent } %
sure-assumed-partly = una parte, { $percent } %
sure-rests-on = errores supuestos: { $assumed }
sure-known-for-all = conocido para todo el peso
sure-known-for = conocido para el { $percent } % del peso
sure-known-but =
    { $lines ->
        [one] { $known }, salvo 1 línea de peso desconocido
       *[other] { $known }, salvo { $lines } líneas de peso desconocido
    }
sure-product = { $value } por 100 g × { $weight } ÷ 100{ $kept } = { $amount }
sure-kept = { $share } que queda en el plato
sure-data-points =
    { $count ->
        [0] ningún análisis de este alimento
        [one] 1 análisis
       *[other] { $count } análisis
    }
sure-error-dataset = error estándar { $error }
sure-error-label = incertidumbre estándar { $error } por el redondeo de la etiqueta
sure-error-group = sin error estándar; se supone { $error }, la mediana de su grupo de alimentos
sure-error-all = sin error estándar; se supone { $error }, la mediana de todos los alimentos
