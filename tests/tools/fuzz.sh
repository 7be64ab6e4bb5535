#!/bin/bash
# Runs each fuzz target: fuzz.sh SECONDS PROGRAM...
# Seeds are tests/fuzz/seeds/NAME/, a dictionary tests/fuzz/NAME.dict; what breaks is kept beside the program.
# SPDX-License-Identifier: MIT
set -u
seconds=$1
shift
passed=0 failed=0
for program in "$@"; do
    name=${program##*/}
    name=${name#fuzz_}
    work=${program%/*}/$name
    mkdir -p "$work/corpus" "$work/found"
    seeds=
    [ -d "tests/fuzz/seeds/$name" ] && seeds=tests/fuzz/seeds/$name
    dictionary=
    [ -f "tests/fuzz/$name.dict" ] && dictionary=-dict=tests/fuzz/$name.dict
    if "$program" -max_total_time="$seconds" -timeout=10 -rss_limit_mb=2048 -print_final_stats=1 \
        -artifact_prefix="$work/found/" $dictionary "$work/corpus" $seeds >"$work/log" 2>&1; then
        passed=$((passed + 1))
        echo "  $name: $(sed -n 's/^stat::number_of_executed_units: //p' "$work/log") runs, none broke it"
    else
        failed=$((failed + 1))
        tail -40 "$work/log"
        echo "FAILED $name: see $work/found/ and $work/log"
    fi
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
