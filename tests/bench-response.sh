#!/usr/bin/env bash
# How long a whole process takes from a circuit to its levels: the native command line beside ngspice on the netlist that
# it exports, the same 400 frequencies both. Needs hyperfine and ngspice.
# usage: tests/bench-response.sh [EXAMPLE] [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
example=$(realpath "${1:-examples/2-two-pickups-mute.wiring}")
results=$(realpath -m "${2:-artifacts/bench-response.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet publish src/WireText.Cli -r linux-x64 -c Release -v q --artifacts-path "$work/wiretext"
wiretext=$work/wiretext/publish/WireText.Cli/release_linux-x64/wiretext

# One state, and eleven settings of the first dial that the circuit has.
dial=$(awk '$1 == "pot" { print $2; exit }' "$example")
"$wiretext" export "$example" --spice -o "$work/one.cir" 2>/dev/null
for travel in 0 1 2 3 4 5 6 7 8 9 10; do
  "$wiretext" export "$example" --spice --at "$dial=$travel" -o "$work/sweep-$travel.cir" 2>/dev/null
done
# All decks in one process: ngspice as fast as it can be asked. A deck whose tip and sleeve are joined has nothing to run.
{
  echo '* sweep'
  echo '.control'
  echo 'set wr_singlescale'
  for deck in "$work"/sweep-*.cir; do
    grep -q '^ac dec' "$deck" || continue
    sed -e '/^\.control/,/^\.endc/d' "$deck" >"$deck.plain"
    echo "source $deck.plain"
    sed -n -e '/^ac dec/p' -e '/^let level/p' -e "s|^wrdata response.txt|wrdata $deck.txt|p" "$deck"
    echo 'destroy all'
    echo 'remcirc'
  done
  echo 'quit'
  echo '.endc'
  echo '.end'
} >"$work/sweep.sp"

cd "$work"
mkdir -p "$(dirname "$results")"
hyperfine -N --warmup 3 --min-runs 10 --style basic --export-markdown "$results" \
  -n 'wiretext --version: starting up' "$wiretext --version" \
  -n 'wiretext response, one state, csv' "$wiretext response $example -o $work/one.csv" \
  -n 'ngspice, the same state' "ngspice -b $work/one.cir" \
  -n 'wiretext response, a dial at 11 settings, csv' "$wiretext response $example --sweep $dial=0..10:11 -o $work/sweep.csv" \
  -n 'ngspice, the same settings in one process' "ngspice -b $work/sweep.sp" \
  -n 'wiretext response, a dial at 11 settings, svg' "$wiretext response $example --sweep $dial=0..10:11 -o $work/sweep.svg" \
  -n 'wiretext response, a dial at 11 settings, png' "$wiretext response $example --sweep $dial=0..10:11 -o $work/sweep.png"
cat "$results"
