# La página para las familias. Los nombres del panel son los que suelen usar las
# etiquetas bilingües (ejemplo de la FDA, de memoria); 21 CFR 101.9(d)(14) permite
# un segundo idioma (de memoria). Lo demás es uso común, sin fuente.

parents-title = { $title } – para las familias
parents-to = Para las familias
parents-back = Volver a { $title }
parents-ways = Qué hacer con esta página
parents-languages = Idiomas
parents-print = Imprimir
parents-save = Guardar como un solo archivo para enviar
parents-save-how = El archivo lleva toda la página de abajo y se abre en cualquier teléfono o computadora, sin red.

parents-panel = Datos de Nutrición
parents-serving-size = Tamaño por ración
parents-one-serving = 1 ración
parents-weight-not-known = { $serving } (no se conoce el peso)
parents-per-serving = Cantidad por ración
parents-calories = Calorías
parents-nutrient = Nutriente
parents-percent = % Valor Diario*
parents-daily-value = { $percent } VD
parents-daily-value-unknown = no se conoce el VD
parents-left-out-one = No es una fuente significativa de { $name }.
parents-left-out = No es una fuente significativa de { $names } ni { $name }.
parents-at-least = al menos { $amount }
parents-less-than = menos de { $amount }
parents-not-known = no se conoce
parents-nutrient-204 = Grasa Total { $amount }
parents-nutrient-606 = Grasa Saturada { $amount }
parents-nutrient-605 = Grasa Trans { $amount }
parents-nutrient-601 = Colesterol { $amount }
parents-nutrient-307 = Sodio { $amount }
parents-nutrient-205 = Carbohidrato Total { $amount }
parents-nutrient-291 = Fibra Dietética { $amount }
parents-nutrient-269 = Azúcares Totales { $amount }
parents-nutrient-539 = Incluye { $amount } de Azúcares Añadidos
parents-nutrient-203 = Proteínas { $amount }
parents-nutrient-328 = Vitamina D { $amount }
parents-nutrient-301 = Calcio { $amount }
parents-nutrient-303 = Hierro { $amount }
parents-nutrient-306 = Potasio { $amount }
parents-added-sugars = Azúcares Añadidos { $amount }
parents-incomplete = Algunos valores no se conocen. Una cifra con «al menos» es lo que se conoce de ella; lo que no se conoce no es cero.
parents-no-figures = Todavía no hay cifras de este platillo.

parents-allergens = Alérgenos
parents-contains = Contiene, según sus palabras
parents-may = Puede contener
parents-not-named = No se mencionan, lo que no prueba nada
parents-contains-short = Contiene
parents-may-short = Puede contener
parents-none = ninguno
parents-none-named = ninguno mencionado; pregunte
parents-open-lines = { $count ->
    [one] 1 línea de la receta no tiene alimento o peso asignado: lo que aporta no se cuenta.
   *[other] { $count } líneas de la receta no tienen alimento o peso asignado: lo que aportan no se cuenta.
}
parents-allergen-caution = Esto se encontró solo en las palabras de la receta y de las tablas nacionales de alimentos. No prueba que un alimento esté libre de un alérgeno. Las marcas, los proveedores y las cocinas cambian, y los alimentos se tocan entre sí. Antes de que su hijo o hija coma un platillo, pida a la cocina de la escuela que lea la etiqueta de cada producto que se usa ese día. Siga el plan escrito de su médico y el procedimiento de la escuela.

parents-carbohydrate = Conteo de carbohidratos de una ración
parents-carbohydrate-short = Carbohidratos
parents-carbohydrate-row = Carbohidratos
parents-fiber-row = de ellos, fibra dietética
parents-carbohydrate-caution = El conteo se calcula con alimentos promedio y con la receta tal como está escrita. Lo que hay en una bandeja puede pesar más o menos. No dosifique la insulina solo con esta cifra: siga el plan de diabetes de su hijo o hija y a la enfermera escolar.

parents-week-how = Lo que las escuelas piensan servir, con las cifras de una ración. Los menús pueden cambiar el mismo día.
parents-with-panels = Con los Datos de Nutrición de cada platillo
parents-dish = Platillo y ración
parents-panels = Datos de Nutrición de cada platillo
parents-meal = { $kind } ({ $groups })
parents-day = { $weekday ->
    [Monday] lunes
    [Tuesday] martes
    [Wednesday] miércoles
    [Thursday] jueves
    [Friday] viernes
    [Saturday] sábado
   *[Sunday] domingo
}, { $day } de { $month ->
    [m01] enero
    [m02] febrero
    [m03] marzo
    [m04] abril
    [m05] mayo
    [m06] junio
    [m07] julio
    [m08] agosto
    [m09] septiembre
    [m10] octubre
    [m11] noviembre
   *[m12] diciembre
} de { $year }

parents-ending = Calculado con Gramwright a partir de las recetas de la oficina de servicio de alimentos y de la base nacional de nutrientes del USDA (Standard Reference, Release 28). Solo para información: no está certificado ni es consejo médico. Los nombres de platillos e ingredientes están como los escribió la oficina.
