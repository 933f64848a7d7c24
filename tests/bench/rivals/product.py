"""The bare nutrient product: a sparse matrix of grams times a dense one of values."""

import json
import pathlib
import sys

import numpy as np
import scipy.sparse

from timed import serve

folder = pathlib.Path(sys.argv[1])
size = json.loads((folder / "size.json").read_text())
values = np.fromfile(folder / "values.f64").reshape(size["foods"], size["nutrients"])
values = np.nan_to_num(values)
grams = np.fromfile(folder / "line_grams.f64")
foods = np.fromfile(folder / "line_food.u32", dtype=np.uint32).astype(np.int32)
starts = np.arange(0, len(foods) + 1, size["lines"], dtype=np.int32)
recipes = scipy.sparse.csr_array((grams, foods, starts), shape=(size["recipes"], size["foods"]))

serve(lambda: recipes @ values, f"{(recipes @ values).sum():.6e}")
