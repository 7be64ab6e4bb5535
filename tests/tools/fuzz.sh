#!/bin/bash
# Runs each fuzz target, as many at once as there are processors: fuzz.sh SECONDS PROGRAM...
# Seeds are tests/fuzz/seeds/NAME/, a dictionary tests/fuzz/NAME.dict; what breaks is kept beside the program.
# SPDX-License-Identifier: MIT
set -u
seconds=$1
shift

fuzz() { # SECONDS PROGRAM
    name=${2##*/}
    name=${name#fuzz_}
    work=${2%/*}/$name
    mkdir -p "$work/corpus" "$work/found"
    seeds=
    [ -d "tests/fuzz/seeds/$name" ] && seeds=tests/fuzz/seeds/$name
    # How rare each of the many things is that a whole run reaches took half of its time to keep up.
    order=
    case $name in whole | same) order=-entropic=0 ;; esac
    dictionary=
    [ -f "tests/fuzz/$name.dict" ] && dictionary=-dict=tests/fuzz/$name.dict
    if "$2" -max_total_time="$1" -timeout=10 -rss_limit_mb=2048 -print_final_stats=1 \
        -artifact_prefix="$work/found/" $dictionary $order "$work/corpus" $seeds >"$work/log" 2>&1; then
        echo "  $name: $(sed -n 's/^stat::number_of_executed_units: //p' "$work/log") runs, none broke it"
    else
        tail -40 "$work/log"
        echo "FAILED $name: see $work/found/ and $work/log"
    fi
}
export -f fuzz

results=$(mktemp)
trap 'rm -f "$results"' EXIT
printf '%s\n' "$@" | xargs -P "$(nproc)" -I {} bash -c 'said=$(fuzz "$@"); echo "$said"' - "$seconds" {} | tee "$results"
failed=$(grep -c '^FAILED ' "$results")
echo "$(($# - failed)) passed, $failed failed"
[ "$failed" -eq 0 ]
