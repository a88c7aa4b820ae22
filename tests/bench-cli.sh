#!/usr/bin/env bash
# How long whole processes take: the native command line beside a native program that does nothing, and beside
# programs that do a like amount of work. Needs hyperfine; graphviz, ngspice and node are compared when installed.
# usage: tests/bench-cli.sh [EXAMPLE] [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
example=$(realpath "${1:-examples/2-two-pickups-mute.wiring}")
results=$(realpath -m "${2:-artifacts/bench-cli.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet publish src/WireText.Cli -r linux-x64 -c Release -v q --artifacts-path "$work/wiretext"
wiretext=$work/wiretext/publish/WireText.Cli/release_linux-x64/wiretext

mkdir "$work/nothing"
echo 'return 0;' >"$work/nothing/Program.cs"
cat >"$work/nothing/nothing.csproj" <<'PROJECT'
<Project Sdk="Microsoft.NET.Sdk">
  <PropertyGroup>
    <OutputType>Exe</OutputType>
    <TargetFramework>net10.0</TargetFramework>
    <PublishAot>true</PublishAot>
    <InvariantGlobalization>true</InvariantGlobalization>
  </PropertyGroup>
</Project>
PROJECT
dotnet publish "$work/nothing" -r linux-x64 -c Release -v q -o "$work/nothing/out"

# The same parts and stretches of wire as a plain graph.
awk 'BEGIN { print "graph wiring {" }
     $1 == "wire" { last = ""; for (i = 2; i <= NF; i++) if ($i ~ /\./) { split($i, lug, ".");
                    if (last != "") print "\"" last "\" -- \"" lug[1] "\""; last = lug[1] } }
     END { print "}" }' "$example" >"$work/graph.dot"

# A pickup into a volume pot, a tone control and a cable: 100 frequencies.
cat >"$work/deck.cir" <<'DECK'
pickup, pot, tone, cable
V1 e 0 AC 1
R1 e a 6k
L1 a hot 2.4
C1 hot 0 100p
R2 hot 0 250k
R3 hot t 250k
C2 t 0 47n
C3 hot 0 470p
R4 hot 0 1meg
.control
ac dec 33 20 20000
quit
.endc
.end
DECK

runs=(
  -n 'nothing, native' "$work/nothing/out/nothing"
  -n 'wiretext --version' "$wiretext --version"
  -n 'wiretext check' "$wiretext check $example"
  -n 'wiretext draw, svg, quick' "$wiretext draw $example -o $work/a.svg --effort quick"
  -n 'wiretext draw, svg' "$wiretext draw $example -o $work/a.svg"
  -n 'wiretext draw, png' "$wiretext draw $example -o $work/a.png"
)
command -v dot >/dev/null && runs+=(-n 'dot -Tsvg, same graph' "dot -Tsvg -o $work/dot.svg $work/graph.dot")
command -v ngspice >/dev/null && runs+=(-n 'ngspice, small deck' "ngspice -b $work/deck.cir")
command -v node >/dev/null && runs+=(-n 'node -e 0' 'node -e 0')

mkdir -p "$(dirname "$results")"
hyperfine -N --warmup 3 --min-runs 10 --style basic --export-markdown "$results" "${runs[@]}"
cat "$results"
