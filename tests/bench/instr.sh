#!/bin/sh
# Instructions, counted by cachegrind: the same on every run of one program, so these are gates: instr.sh BUILD
# From 60 and 600 KB of made talk: what a run costs at the start, and each byte of the recording.
# SPDX-License-Identifier: MIT
set -eu
B=$1
# The floors: a little above what is reached (docs/gates.md), so that it gets no slower unseen.
START_MOST=${START_MOST:-5}    # millions
BYTE_MOST=${BYTE_MOST:-2450}
GROWTH_MOST=${GROWTH_MOST:-130} # hundredths: a byte of 600 KB against a byte of 60 KB
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

count() { # FILE: instructions of a whole run
    valgrind --tool=cachegrind --cache-sim=no --cachegrind-out-file=/dev/null "$B/dishtake" extract -q "$1" 2>&1 >/dev/null |
        sed -n 's/.*refs: *//p' | tr -d ,
}
"$B/bench/gen" --seed 1 1000 >"$work/tiny.srt"
"$B/bench/gen" --seed 1 35000 >"$work/small.srt"
"$B/bench/gen" --seed 1 350000 >"$work/large.srt"
bytes() { wc -c <"$1"; }
for size in large small tiny; do
    count "$work/$size.srt" >"$work/$size" &
done
wait
t=$(cat "$work/tiny") s=$(cat "$work/small") l=$(cat "$work/large")
tb=$(bytes "$work/tiny.srt") sb=$(bytes "$work/small.srt") lb=$(bytes "$work/large.srt")
small=$(((s - t) / (sb - tb))) large=$(((l - s) / (lb - sb)))
start=$(((t - small * tb) / 1000000))
growth=$((large * 100 / small))
echo "figure: $sb bytes: $s instructions; $lb bytes: $l"
echo "figure: start $start M (at most $START_MOST M); a byte $large (at most $BYTE_MOST); growth $growth/100 (at most $GROWTH_MOST/100)"
failed=0
[ "$start" -le "$START_MOST" ] || failed=$((failed + 1))
[ "$large" -le "$BYTE_MOST" ] || failed=$((failed + 1))
[ "$growth" -le "$GROWTH_MOST" ] || failed=$((failed + 1))
echo "$((3 - failed)) passed, $failed failed"
[ "$failed" -eq 0 ]
