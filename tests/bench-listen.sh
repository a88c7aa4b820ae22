#!/usr/bin/env bash
# How long a whole process takes to write sound: the native command line, strings and a recording. Needs hyperfine.
# usage: tests/bench-listen.sh [EXAMPLE] [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
example=$(realpath "${1:-examples/2-two-pickups-mute.wiring}")
results=$(realpath -m "${2:-artifacts/bench-listen.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet publish src/WireText.Cli -r linux-x64 -c Release -v q --artifacts-path "$work/wiretext"
wiretext=$work/wiretext/publish/WireText.Cli/release_linux-x64/wiretext

# Two passages of strings are 11.5 s, and one recording as long goes through the circuit.
"$wiretext" listen "$example" --what-if cable=700p -o "$work/strings.wav" >/dev/null

cd "$work"
mkdir -p "$(dirname "$results")"
hyperfine -N --warmup 3 --min-runs 10 --style basic --export-markdown "$results" \
  -n 'wiretext --version: starting up' "$wiretext --version" \
  -n 'wiretext listen, strings, 11.5 s' "$wiretext listen $example --what-if cable=700p -o $work/out.wav" \
  -n 'wiretext listen, strings, every position' "$wiretext listen $example --views positions -o $work/out.wav" \
  -n 'wiretext listen, a recording of 11.5 s' "$wiretext listen $example --input $work/strings.wav -o $work/out.wav"
cat "$results"
