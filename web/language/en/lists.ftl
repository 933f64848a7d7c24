# Long lists, which are drawn part by part.

lists-drawn = The first { $shown } of { $all }. Search to find the others, or:
lists-more = Show more
