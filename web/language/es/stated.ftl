# Créditos que una oficina declara para una línea.

stated-for-other = declarado para otra cantidad: «{ $line }»
stated-still-holds = Sigue valiendo
