#!/bin/bash
# Scores every recording that has gold, the sets apart: accuracy.sh PROGRAM
#   tests/corpus               the recordings that the grammar's figures are stated on
#   tests/recordings           others, written before the rules, in other styles
#   tests/recordings/flawless  recordings with nothing to mend: what false alarms cost
#   tests/recordings/second    written later, by a hand that had seen neither rules nor word lists
#   tests/recordings/third     the same, later again; read since, to see what fails
#   tests/recordings/fourth    the same, written with third; read later
#   tests/recordings/fifth     the same; read later
#   tests/recordings/sixth     the same; read later
#   tests/recordings/seventh   the same; read later
#   tests/recordings/eighth    the same; read later
#   tests/recordings/ninth to thirteenth   written to learn borders from (ninth, tenth: odds of steps too)
#   tests/recordings/unseen    the same; no rule, word or weight may be made with these in sight: only their figures are looked at
# Fails where a figure falls below its floor (floors-NAME.json: least figures; pk, window_diff, failed: most).
# SPDX-License-Identifier: MIT
set -u
program=$1
passed=0 failed=0

score() { # NAME FOLDER
    echo "$2"
    if python3 tests/corpus/score --floor "tests/accuracy/floors-$1.json" "$program" "$2"/*.gold.json; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED: $2 is below a floor of tests/accuracy/floors-$1.json"
    fi
    echo
}

score corpus tests/corpus
score recordings tests/recordings
score flawless tests/recordings/flawless
score second tests/recordings/second
score third tests/recordings/third
score fourth tests/recordings/fourth
score fifth tests/recordings/fifth
score sixth tests/recordings/sixth
score seventh tests/recordings/seventh
score eighth tests/recordings/eighth
score ninth tests/recordings/ninth
score tenth tests/recordings/tenth
score eleventh tests/recordings/eleventh
score twelfth tests/recordings/twelfth
score thirteenth tests/recordings/thirteenth
score fourteenth tests/recordings/fourteenth
score fifteenth tests/recordings/fifteenth
score plain tests/recordings/plain
score unseen tests/recordings/unseen
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
