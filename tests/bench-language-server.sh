#!/usr/bin/env bash
# How long an editor waits for the native language server, as a client on Node sees it. Needs node and npm.
# usage: tests/bench-language-server.sh [RESULTS.md]
set -euo pipefail
cd "$(dirname "$0")/.."
results=$(realpath -m "${1:-artifacts/bench-language-server.md}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

npm ci --ignore-scripts --prefix tests/WireText.Cli.Tests/Editor
dotnet publish src/WireText.Cli -r linux-x64 -c Release -v q --artifacts-path "$work/wiretext"
mkdir -p "$(dirname "$results")"
WIRETEXT=$work/wiretext/publish/WireText.Cli/release_linux-x64/wiretext node tests/bench-language-server.mjs | tee "$results"
