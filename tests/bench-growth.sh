#!/usr/bin/env bash
# How the processor time and the memory of every command grow with the text; writes docs/growth.md. Needs GNU time.
# usage: tests/bench-growth.sh [SECONDS]     a run is ended after so many seconds, and its cell says so
set -euo pipefail
cd "$(dirname "$0")/.."
most=${1:-20}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet build src/WireText.Cli -c Release -v q --artifacts-path "$work/wiretext" >/dev/null
wiretext="dotnet $work/wiretext/bin/WireText.Cli/release/wiretext.dll"

# One pickup, a volume and a jack: the eight lines that every text starts with.
whole() {
  printf '%s\n' 'pickup neck single-coil' 'pot vol 250k audio' 'jack out mono' 'wire neck.hot to vol.3 white' \
    'wire neck.ground to vol.case black' 'wire vol.1 to vol.case bare' 'wire vol.2 to out.tip white' \
    'wire vol.case to out.sleeve black'
}

# A twelfth are pots from hot to ground; the rest are wires, eleven from each to the one before.
harness() {
  whole
  awk -v lines="$1" 'BEGIN {
    parts = int(lines / 12)
    for (i = 0; i < parts; i++) print "pot q" i " 1M linear"
    for (i = 0; i < lines - 8 - parts; i++) {
      part = int(i / 11); lug = i % 11 < 6 ? 3 : 1
      print "wire q" part "." lug " to " (part > 0 && i % 11 > 0 ? "q" part - 1 "." lug : lug == 3 ? "vol.3" : "vol.case") " white"
    }
  }'
}

# The same, with a slip in a colour of each twelfth line.
slips() { harness "$1" | sed '12~12s/ white$/ whtie/'; }

comments() { whole; awk -v lines="$1" 'BEGIN { for (i = 8; i < lines; i++) print "# line " i }'; }

# Processor seconds and the most memory at once, in MiB; "ended" past the limit.
measure() {
  local code=0
  timeout "$most" env time -o "$work/time" -f '%U %S %M' "$@" >/dev/null 2>&1 || code=$?
  if [ "$code" -ge 124 ]; then echo "ended"; else tail -1 "$work/time" | awk '{ printf "%.2f %d", $1 + $2, $3 / 1024 }'; fi
}

row() { # command text
  local command=$1 text=$2 line before="" now
  line="| \`$command\` | $text |"
  for lines in 1000 10000 100000; do
    "$text" "$lines" >"$work/$text.wiring"
    # shellcheck disable=SC2086
    now=$(measure $wiretext ${command%% *} "$work/$text.wiring" $(options "$command"))
    if [ "$now" = ended ]; then
      line+=" over $most s | |"
      break
    fi
    line+=" ${now% *} s, ${now#* } MiB | $(awk -v a="${before% *}" -v b="${now% *}" 'BEGIN { if (a > 0) printf "%.1f", b / a }') |"
    before=$now
  done
  echo "$line"
}

options() {
  case $1 in
    draw) echo "-o $work/drawn.svg" ;;
    response) echo "-o $work/response.svg" ;;
    export) echo "--spice -o $work/circuit.cir" ;;
    *' '*) echo "${1#* }" ;;
  esac
}

{
  cat <<'TEXT'
# How the work grows

Processor seconds and the most memory at once of one run of the program, start of the runtime included, by the number of lines;
beside each the ratio of the time to that of a tenth of the lines. What is not within a limit ends in the finding of that limit
(see [bounds.md](bounds.md)): a drawing has 2,000 wires at most, and says so at once past them.

| text | what it is |
| --- | --- |
| harness | one pickup, a volume, and for each twelve lines a pot across it with eleven wires to the one before |
| slips | the same with a slip in the colour of each twelfth line |
| comments | one pickup, a volume, and comments |

Measured, and never tested: tests hold the work to the text by counts. This page is written by `tests/bench-growth.sh`, the
program built for release and run by the runtime, on a virtual machine with two cores of a server's processor.

TEXT
  echo "| command | text | 1,000 lines | | 10,000 lines | ratio | 100,000 lines | ratio |"
  echo "| --- | --- | ---: | ---: | ---: | ---: | ---: | ---: |"
  for text in harness slips comments; do row check "$text"; done
  row "check --fix" slips
  row format comments
  for command in positions draw arrange format response export; do
    row "$command" harness
  done
} >"$work/growth.md"
cp "$work/growth.md" docs/growth.md
cat docs/growth.md
