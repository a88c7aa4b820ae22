#!/usr/bin/env bash
# How long a layout takes: each layout case in process (BenchmarkDotNet), and the same graph laid out by Graphviz as a whole
# process and by elkjs (layered, straight-angled) as a whole process and in process. Only ratios of one run mean anything.
# Needs hyperfine; Graphviz, and node with npm, are compared when installed (elkjs 0.12.1 is fetched into a folder of its own).
# usage: tests/bench-layout.sh [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
results=$(realpath -m "${1:-artifacts/bench-layout.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
cases=tests/WireText.Tests/Drawing/Layout/Cases

mean() { hyperfine -N --warmup 2 --min-runs 8 --style none --export-json "$work/time.json" "$1" >/dev/null 2>&1 &&
  sed -n 's/.*"mean": \([0-9.]*\).*/\1/p' "$work/time.json" | head -1 | awk '{ printf "%.1f", 1000 * $1 }'; }

# Milliseconds of one of our benchmarks, from the table that BenchmarkDotNet writes.
ours() { awk -F'|' -v m="$1" -v p="$2" -v c="$3" '{ gsub(/[ *]/, "", $2); gsub(/[ *]/, "", $3); gsub(/[ *]/, "", $4); gsub(/[,*]/, "", $5) }
  $2 == m && $3 == p && $4 == c { split($5, v, " "); printf "%.1f", v[2] == "ms" ? v[1] : v[2] == "ns" ? v[1] / 1e6 : v[1] / 1e3 }' \
  "$work"/ours/results/*-report-github.md; }

has_dot=$(command -v neato || true)
has_elk=
if command -v node >/dev/null && command -v npm >/dev/null; then
  cp tests/bench-layout.mjs "$work/"
  (cd "$work" && npm install --silent --no-audit --no-fund elkjs@0.12.1 >/dev/null 2>&1) && has_elk=yes
fi

dotnet run -c Release --project tests/WireText.Benchmarks -- --filter '*LayoutBenchmarks*' \
  --artifacts "$work/ours" >"$work/ours.log"

mkdir -p "$(dirname "$results")"
{
  echo '| case | places | ours, quick | ours, full | neato -n2, process | elkjs, process | elkjs, in process |'
  echo '| --- | --- | --- | --- | --- | --- | --- |'
  for file in "$cases"/*.json; do
    name=$(basename "$file" .json)
    for places in True False; do
      quick=$(ours Quick "$places" "$name") full=$(ours Full "$places" "$name")
      dot=- elk=- elk_in=-
      if [ "$places" = True ] && [ -n "$has_dot" ]; then
        node tests/bench-layout.mjs dot "$file" >"$work/$name.dot"
        dot=$(mean "neato -n2 -Tsvg -o $work/$name.svg $work/$name.dot" || echo failed)
      fi
      if [ "$places" = False ] && [ -n "$has_elk" ]; then
        elk=$(mean "node $work/bench-layout.mjs elk $PWD/$file" || echo failed)
        elk_in=$(node "$work/bench-layout.mjs" elk "$file" 20)
      fi
      awk -v n="$name" -v p="$places" -v q="${quick:-failed}" -v f="${full:-failed}" -v d="$dot" -v e="$elk" -v i="$elk_in" \
        'BEGIN { printf "| %s | %s | %s | %s | %s | %s | %s |\n", n, (p == "True" ? "given" : "searched"), q, f, d, e, i }'
    done
  done
} >"$results"
cat "$results"
