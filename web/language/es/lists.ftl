# Listas largas, que se muestran por partes.

lists-drawn = Los primeros { $shown } de { $all }. Busque para encontrar los demás, o:
lists-more = Mostrar más
