#!/bin/sh
# Our search beside others, on the same strings and typed queries, in the page that
# `cargo xtask build` has built. Installs the others, in pinned versions, into target/bench/search.
set -eu
scripts=$(cd "$(dirname "$0")" && pwd)
root=$scripts/../../..
folder=$root/target/bench/search
mkdir -p "$folder"
cp "$scripts/package.json" "$folder"
(cd "$folder" && npm install --no-audit --no-fund --no-package-lock --silent)
node "$scripts/strings.mjs" "$root" "$folder/strings.json"
node "$scripts/measure.mjs" "$folder/strings.json" "$root/dist" "$folder"
