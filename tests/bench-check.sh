#!/usr/bin/env bash
# How long one run of the native program over 1,000 files takes beside 1,000 runs over one file each. Needs hyperfine.
# usage: tests/bench-check.sh [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
results=$(realpath -m "${1:-artifacts/bench-check.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet publish src/WireText.Cli -r linux-x64 -c Release -v q --artifacts-path "$work/wiretext"
wiretext=$work/wiretext/publish/WireText.Cli/release_linux-x64/wiretext

# The right examples in turn, each copy with a name of its own, in folders of a hundred.
examples=(examples/*.wiring)
for i in $(seq 0 999); do
  folder=$work/shop/$((i / 100))
  mkdir -p "$folder"
  { cat "${examples[$((i % ${#examples[@]}))]}"; echo "note \"harness $i\""; } >"$folder/harness-$(printf %04d "$i").wiring"
done

echo "\"$wiretext\" check \"$work\"/shop/*/*.wiring >/dev/null" >"$work/one-run.sh"
echo "\"$wiretext\" check --jobs 1 \"$work\"/shop/*/*.wiring >/dev/null" >"$work/one-job.sh"
echo "for file in \"$work\"/shop/*/*.wiring; do \"$wiretext\" check \"\$file\" >/dev/null; done" >"$work/single-runs.sh"
for script in one-run one-job single-runs; do bash "$work/$script.sh"; done

mkdir -p "$(dirname "$results")"
hyperfine --warmup 1 --runs 5 --style basic --export-markdown "$results" \
  -n 'one run, 1,000 files' "bash $work/one-run.sh" \
  -n 'one run, one file at a time' "bash $work/one-job.sh" \
  -n '1,000 runs, a file each' "bash $work/single-runs.sh"
cat "$results"
