"""The district year as a columnar dataframe computes it: totals of the recipes, averages of
the services as they are printed, and the limits in force.

Joins through the optimiser and gathers by row number are both written down; the faster of the
two on this machine is the one that is measured."""

import json
import pathlib
import sys
import time

import numpy as np
import polars as pl

from timed import serve

folder = pathlib.Path(sys.argv[1])
size = json.loads((folder / "size.json").read_text())


def numbers(name):
    kinds = {"f64": np.float64, "u32": np.uint32}
    return np.fromfile(folder / name, dtype=kinds[name.rsplit(".")[-1]])


names = [f"v{number}" for number in range(size["nutrients"])]
lost = [f"m{name}" for name in names]
table = numbers("values.f64").reshape(size["foods"], size["nutrients"])
values = pl.DataFrame(
    {"food": np.arange(size["foods"], dtype=np.uint32)}
    | {name: table[:, at] for at, name in enumerate(names)}
).with_columns(pl.col(names).fill_nan(None))
lines = pl.DataFrame(
    {
        "recipe": np.repeat(np.arange(size["recipes"], dtype=np.uint32), size["lines"]),
        "food": numbers("line_food.u32"),
        "grams": numbers("line_grams.f64"),
    }
)
recipes = pl.DataFrame(
    {
        "recipe": np.arange(size["recipes"], dtype=np.uint32),
        "servings": numbers("recipe_servings.f64"),
        "milk": numbers("recipe_milk.f64"),
    }
)
services = pl.DataFrame(
    {
        "service": np.arange(size["services"], dtype=np.uint32),
        "pattern": numbers("service_pattern.u32"),
        "meals": numbers("service_meals.f64"),
    }
)
choices = pl.DataFrame(
    {
        "service": numbers("choice_service.u32"),
        "recipe": numbers("choice_recipe.u32"),
        "planned": numbers("choice_planned.f64"),
    }
)
# A rule's amount is one of the limited nutrients, or one of them without fluid milk.
rules = pl.DataFrame(size["rules"]).with_columns(pl.col("pattern").cast(pl.UInt32))
subjects = sorted(set(rules["subject"]))
energy = names[size["energy"]]
fat = names[size["saturated_fat"]]
powers = [10.0**digits for digits in size["digits"]]


def printed(average):
    """The averages as they are printed, with how much is missing."""
    return average.select(
        "service",
        *[
            (pl.col(name) / pl.col("meals") * (power / 100) + 0.5).floor().cast(pl.Int64)
            for name, power in zip(names, powers)
        ],
        *lost,
    )


def found(average):
    """Every limit in force with its verdict."""
    per_meal = average.select(
        "service",
        "pattern",
        energy=pl.col(energy) / pl.col("meals") / 100,
        **{
            subject: (
                (pl.col(fat) / 100 - pl.col("milk")) / pl.col("meals")
                if subject == "milk free"
                else pl.col(subject) / pl.col("meals") / 100
            )
            for subject in subjects
        },
        **{
            "lost " + subject: pl.col("m" + (fat if subject == "milk free" else subject)) > 0
            for subject in subjects
        },
    )
    joined = per_meal.join(rules.lazy(), on="pattern")
    amount = pl.coalesce(
        *[pl.when(pl.col("subject") == subject).then(pl.col(subject)) for subject in subjects]
    )
    missing = pl.coalesce(
        *[pl.when(pl.col("subject") == subject).then("lost " + subject) for subject in subjects]
    )
    figure = (
        pl.when(pl.col("is_share")).then(amount * pl.col("kcal") * 100 / pl.col("energy")).otherwise(amount)
    )
    holds = (
        pl.when(pl.col("bound") == "at least")
        .then(figure >= pl.col("limit"))
        .when(pl.col("bound") == "at most")
        .then(figure <= pl.col("limit"))
        .otherwise(figure < pl.col("limit"))
    )
    return joined.select("service", "rule", figure=figure, holds=holds, missing=missing)


def by_joins():
    totals = (
        lines.lazy()
        .join(values.lazy(), on="food")
        .group_by("recipe")
        .agg(
            *[(pl.col(name) * pl.col("grams")).sum() for name in names],
            *[pl.col(name).null_count().alias("m" + name) for name in names],
        )
    )
    average = (
        choices.lazy()
        .join(recipes.lazy(), on="recipe")
        .with_columns(
            batches=pl.col("planned") / pl.col("servings"), milk=pl.col("milk") * pl.col("planned")
        )
        .join(totals, on="recipe")
        .group_by("service")
        .agg(
            *[(pl.col(name) * pl.col("batches")).sum() for name in names],
            *[pl.col(name).sum() for name in lost],
            pl.col("milk").sum(),
        )
        .join(services.lazy(), on="service")
    )
    return pl.collect_all([printed(average), found(average)])


def by_rows():
    totals = (
        values[lines["food"]]
        .lazy()
        .select(
            pl.col(names).is_null().cast(pl.UInt16).name.prefix("m"),
            pl.col(names) * lines["grams"],
            recipe=lines["recipe"],
        )
        .group_by("recipe")
        .agg(pl.all().sum())
        .sort("recipe")
        .collect()
    )
    batches = choices["planned"] / recipes["servings"][choices["recipe"]]
    average = (
        totals[choices["recipe"]]
        .lazy()
        .select(
            pl.col(lost),
            pl.col(names) * batches,
            milk=recipes["milk"][choices["recipe"]] * choices["planned"],
            service=choices["service"],
        )
        .group_by("service")
        .agg(pl.all().sum())
        .sort("service")
        .collect()
        .with_columns(meals=services["meals"], pattern=services["pattern"])
        .lazy()
    )
    return pl.collect_all([printed(average), found(average)])


def usual(work):
    times = []
    for _ in range(9):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return sorted(times)[4]


ways = {way.__name__: (usual(way), way) for way in (by_joins, by_rows)}
best = min(ways, key=lambda name: ways[name][0])
averages, findings = ways[best][1]()
averages.sort("service").select(names).to_numpy().astype(np.int64).tofile(folder / "polars_printed.i64")
kept = findings.sort("service", "rule").select("holds").to_numpy().astype(np.uint8)
kept.tofile(folder / "polars_holds.u8")
serve(ways[best][1], best)
