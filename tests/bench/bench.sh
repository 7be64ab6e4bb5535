#!/bin/sh
# Throughput and memory of whole runs, start-up included, beside programs that everybody has: bench.sh BUILD
# Made talk only (gen.c), so that anybody gets the same bytes; the sums are printed. Figures of one table come from one
# run, in turn; compare ratios, not milliseconds. Prints Markdown.
# SPDX-License-Identifier: MIT
set -eu
B=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
run="$B/bench/run" gen="$B/bench/gen" tool="$B/dishtake"

"$gen" --seed 1 42000 >"$work/hour.srt"
"$gen" --seed 2 450000 >"$work/ten.srt"
"$gen" --seed 3 4500000 >"$work/hundred.srt"
mkdir "$work/many"
n=1
while [ $n -le 60 ]; do
    "$gen" --seed $n 42000 >"$work/many/$n.srt"
    n=$((n + 1))
done
echo "## Inputs"
(cd "$work" && sha256sum hour.srt ten.srt hundred.srt | cut -c1-16,65- && wc -c hour.srt ten.srt hundred.srt | head -3)
echo "$("$tool" --version), $(uname -m), $(nproc) cores, $(${CC:-gcc} --version | head -1)"

icu=
[ -x "$B/bench/icu" ] && icu="$B/bench/icu"
table() { # TITLE FILE ROUNDS
    printf '\n## %s\n' "$1"
    set -- "$2" "$3" "an empty program=$B/bench/empty $2" "wc -w=wc -w $2" "dishtake extract=$tool extract -q $2" \
        "dishtake card=$tool card -q $2" ${icu:+"words and sentences by ICU=$icu $2"}
    file=$1 rounds=$2
    shift 2
    "$run" --rounds "$rounds" "$@"
}
table "An hour of talk" "$work/hour.srt" 25
table "Ten hours" "$work/ten.srt" 9
table "A hundred hours" "$work/hundred.srt" 3

printf '\n## Start\n'
"$run" --rounds 25 "an empty program=$B/bench/empty" "dishtake --version=$tool --version" \
    "dishtake measure=$tool measure 350F --in C"

printf '\n## Sixty files of an hour\n'
files=$(echo "$work"/many/*.srt)
"$run" --rounds 5 "one thread=$tool extract -q --jobs 1 $files" "two threads=$tool extract -q --jobs 2 $files"

printf '\n## The same again and again (1 MB), beside ordinary talk of that size\n'
"$gen" --seed 4 1000000 >"$work/talk.srt"
set --
for words in one "one and a" flour "stir it." "a" "two to three" "cup of" "12345678"; do
    name=$(printf '%s' "$words" | tr -c 'a-z0-9' '-')
    "$gen" --repeat "$words" 1000000 >"$work/repeat-$name.srt"
    set -- "$@" "\"$words\"=$tool extract -q $work/repeat-$name.srt"
done
"$run" --rounds 3 "talk=$tool extract -q $work/talk.srt" "$@"
