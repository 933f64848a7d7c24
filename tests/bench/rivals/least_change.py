"""Solves the models of least-change weeks with HiGHS and compares objective and time.

Prints one row of a table per model and what they come to; ends with an error when an objective is
another."""

import json
import pathlib
import statistics
import sys
import time

import highspy
import numpy as np

folder = pathlib.Path(sys.argv[1])
REPEATS = 5
# Seconds after which a model is not solved again.
LONG = 3.0
# Costs are multiples of 2^-12: two objectives that are nearer than that are one.
SAME = 2.0**-13


def program(model):
    """The model in the solver's form; making it is not timed."""
    open_end = highspy.kHighsInf
    columns, rows = model["columns"], model["rows"]
    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = len(columns), len(rows)
    bound = lambda value, missing: missing if value is None else value
    lp.col_cost_ = np.array([column["cost"] for column in columns], dtype=float)
    lp.col_lower_ = np.array([bound(column["lower"], -open_end) for column in columns])
    lp.col_upper_ = np.array([bound(column["upper"], open_end) for column in columns])
    lp.row_lower_ = np.array([bound(row["lower"], -open_end) for row in rows])
    lp.row_upper_ = np.array([bound(row["upper"], open_end) for row in rows])
    lp.integrality_ = [
        highspy.HighsVarType.kInteger if column["integer"] else highspy.HighsVarType.kContinuous
        for column in columns
    ]
    lp.sense_ = highspy.ObjSense.kMinimize
    if model["sense"] == "maximize":
        lp.sense_ = highspy.ObjSense.kMaximize
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    terms = [term for row in rows for term in row["terms"]]
    lengths = [len(row["terms"]) for row in rows]
    lp.a_matrix_.start_ = np.array([0, *np.cumsum(lengths)], dtype=np.int32)
    lp.a_matrix_.index_ = np.array([column for column, _ in terms], dtype=np.int32)
    lp.a_matrix_.value_ = np.array([value for _, value in terms], dtype=float)
    return lp


def solve(model):
    lp = program(model)
    times = []
    for _ in range(REPEATS):
        if times and sum(times) > LONG:
            break
        start = time.perf_counter()
        highs = highspy.Highs()
        highs.silent()
        highs.setOptionValue("threads", 1)
        highs.setOptionValue("mip_rel_gap", 0.0)
        highs.setOptionValue("mip_abs_gap", SAME / 2)
        highs.passModel(lp)
        highs.run()
        times.append(time.perf_counter() - start)
    status = highs.getModelStatus()
    found = {
        highspy.HighsModelStatus.kOptimal: "optimal",
        highspy.HighsModelStatus.kInfeasible: "infeasible",
    }.get(status, str(status))
    objective = highs.getInfo().objective_function_value if found == "optimal" else None
    return found, objective, statistics.median(times)


models = sorted(folder.glob("*.json"))
if not models:
    sys.exit(f"no models in {folder}")
apart, ratios, ours_all, theirs_all = [], [], 0.0, 0.0
print("| Week | Columns | Rows | Objective | Ours | HiGHS | Ratio |\n|---|---|---|---|---|---|---|")
for path in models:
    model = json.loads(path.read_text())
    ours = model["ours"]
    status, objective, seconds = solve(model)
    same = status == ours["status"] and (
        objective is None or abs(objective - ours["objective"]) <= SAME
    )
    if not same:
        apart.append((model["name"], ours, status, objective))
    ratio = ours["seconds"] / seconds
    ratios.append(ratio)
    ours_all += ours["seconds"]
    theirs_all += seconds
    shown = status if objective is None else f"{objective:.4f}"
    print(
        f"| {model['name']} | {len(model['columns'])} | {len(model['rows'])} | {shown} "
        f"| {1000 * ours['seconds']:.2f} ms | {1000 * seconds:.2f} ms | {ratio:.2f}× |"
    )
print(
    f"\n{len(models) - len(apart)} of {len(models)} objectives are the same; ours takes "
    f"{statistics.median(ratios):.2f}× the time of HiGHS in the median, {max(ratios):.2f}× at most, "
    f"{ours_all / theirs_all:.2f}× in all"
)
if apart:
    sys.exit(f"other objectives: {apart}")
