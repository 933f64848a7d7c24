# The batch and the size of a serving.

batch-title = Size of a serving, weight of the batch
batch-way = The number of servings
batch-serving = One serving
batch-batch = The whole batch
batch-pieces = pieces
batch-finished = Measured weight of the finished batch
batch-ways-1 = is entered above
batch-ways-2 = follows from the weight of a serving
batch-ways-3 = follows from the volume of a serving
batch-ways-4 = follows from the pieces in a serving
batch-makes = The batch makes { $servings } servings.
batch-finished-servings-follow = While it is empty: the sum of the ingredients{ $sum }. The number of servings and the figures per 100 g follow from it.
batch-finished-weight-follows = While it is empty: the sum of the ingredients{ $sum }. A serving’s weight and the figures per 100 g follow from it; what a serving contains does not change.
