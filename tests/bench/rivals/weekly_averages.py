"""Runs the SQL file over Parquet files and writes what it finds as CSV."""

import pathlib
import sys

import datafusion

folder, query, found = map(pathlib.Path, sys.argv[1:])
context = datafusion.SessionContext()
for table in ("nutrient", "value", "recipe", "part", "kept", "meal", "choice"):
    context.register_parquet(table, str(folder / f"{table}.parquet"))
with found.open("w") as file:
    for batch in context.sql(query.read_text()).execute_stream():
        columns = [column.to_pylist() for column in batch.to_pyarrow().columns]
        file.writelines(",".join(map(str, row)) + "\n" for row in zip(*columns))
