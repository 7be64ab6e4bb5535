#!/bin/sh
# Whole runs beside general language libraries, which find amounts, times and temperatures and no more: nlp.sh BUILD
# Made talk (gen.c); compare ratios. Without Node or the packages of nlp/package.json it says so. Prints Markdown.
# SPDX-License-Identifier: MIT
set -eu
B=$1
modules="$B/bench/nlp"
command -v node >/dev/null && command -v npm >/dev/null || { echo "no node or npm here: nothing was measured"; exit 0; }
mkdir -p "$modules"
cp tests/bench/nlp/* tests/bench/nlp/.npmrc "$modules"
[ -d "$modules/node_modules" ] || (cd "$modules" && npm ci --silent) ||
    { echo "the packages cannot be had from npm: nothing was measured"; exit 0; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$B/bench/gen" --seed 1 42000 >"$work/hour.srt"
"$B/bench/gen" --seed 2 330000 >"$work/small.srt"
"$B/bench/gen" --seed 3 3300000 >"$work/large.srt"

table() { # FILE ROUNDS LIBRARY...: each as many times slower than the program
    printf '\n## %s bytes\n' "$(wc -c <"$work/$1.srt")"
    file=$work/$1.srt rounds=$2
    shift 2
    for library in "$@"; do
        set -- "$@" "$library=node $modules/nlp.mjs $library $file grammars/en"
        shift
    done
    "$B/bench/run" --rounds "$rounds" "dishtake extract=$B/dishtake extract -q $file" "$@"
}
table hour 5 wink wink-lexicon compromise
table small 1 compromise
table large 3 wink-lexicon
