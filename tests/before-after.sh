#!/usr/bin/env bash
# A page with every drawing in examples/ as it was and as it is, side by side: for who reviews a change of the drawing.
#
#   tests/before-after.sh [REVISION [PAGE]]     REVISION: what to compare with (HEAD); PAGE: where it goes
#                                               (artifacts/before-after.html)
set -euo pipefail
cd "$(dirname "$0")/.."
revision=${1:-HEAD}
page=${2:-artifacts/before-after.html}
git rev-parse --verify --quiet "$revision^{commit}" >/dev/null || {
  echo "before-after: '$revision' is no revision of this repository; name a commit, such as HEAD~1" >&2
  exit 2
}

picture() { printf '<td><img alt="%s" src="data:image/svg+xml;base64,%s"></td>' "$1" "$2"; }

mkdir -p "$(dirname "$page")"
{
  printf '<!doctype html>\n<html lang="en"><meta charset="utf-8"><title>Drawings, before and after</title>\n'
  printf '<style>body{font:16px sans-serif;margin:2em}table{width:100%%;border-collapse:collapse}'
  printf 'td{width:50%%;vertical-align:top;padding:.5em;border:1px solid #ccc}img{width:100%%}</style>\n'
  printf '<h1>Drawings at %s, and now</h1>\n' "$(git rev-parse --short "$revision")"
  for svg in examples/*.svg examples/response/*.svg; do
    was=$(git show "$revision:$svg" 2>/dev/null | base64 -w0 || true)
    is=$(base64 -w0 "$svg")
    if [ "$was" = "$is" ]; then
      printf '<p>%s: the same</p>\n' "$svg"
    else
      printf '<h2>%s</h2>\n<table><tr>' "$svg"
      if [ -n "$was" ]; then picture before "$was"; else printf '<td>was not there</td>'; fi
      picture after "$is"
      printf '</tr></table>\n'
    fi
  done
  printf '</html>\n'
} >"$page.new"
mv "$page.new" "$page"
echo "$page"
