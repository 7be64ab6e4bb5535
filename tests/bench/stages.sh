#!/bin/sh
# Instructions of each stage on an hour of made talk, by callgrind, the same on every run: stages.sh BUILD
# What a stage's own functions call is counted with it; "a byte" is by the bytes of the recording. Prints Markdown.
# SPDX-License-Identifier: MIT
set -eu
B=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$B/bench/gen" --seed 1 42000 >"$work/hour.srt"
bytes=$(wc -c <"$work/hour.srt")
valgrind --tool=callgrind --callgrind-out-file="$work/out" "$B/dishtake" extract -q "$work/hour.srt" >/dev/null 2>&1
callgrind_annotate --inclusive=yes --auto=no --threshold=100 "$work/out" >"$work/functions"

count() { # FUNCTION: its instructions
    sed -n "s/^ *\([0-9,]*\) .*:$1 \[.*/\1/p" "$work/functions" | head -1 | tr -d ,
}
row() { # LABEL FUNCTION
    n=$(count "$2")
    printf '| %s | %s | %s.%s | %s |\n' "$1" "$2" "$((${n:-0} / 1000000))" "$((${n:-0} / 100000 % 10))" "$((${n:-0} / bytes))"
}
echo "An hour, $bytes bytes, $("$B/dishtake" --version)"
echo
echo "| stage | function | million instructions | a byte |"
echo "|---|---|---:|---:|"
row "the whole program" "(below main)"
row "what is ready-made" ready_open
row "bytes to cues" read_cues
row "cues to words" number_words
row "words to tags" tag_words
row "misheard words" hear_words
row "rules" match_rules
row "of these, PCRE2's compiling" rule_compile
row "dishes" split_dishes
row "recipes" build_recipes
row "weights, sums, times" reckon_recipes
row "findings" check_recipes
row "output" dishtake_write
