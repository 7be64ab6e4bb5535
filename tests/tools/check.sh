#!/bin/bash
# Checks of the source: check.sh BUILD "CORE FOLDERS" "COMPILER FLAGS"
# SPDX-License-Identifier: MIT
set -u
build=$1 core=$2 flags=$3
passed=0 failed=0

verdict() { # NAME: says whether the command before it held
    if [ "$2" -eq 0 ]; then
        passed=$((passed + 1))
        echo "  $1: fine"
    else
        failed=$((failed + 1))
        echo "FAILED $1"
    fi
}

all_sources=$(find src include tests -name '*.[ch]' | LC_ALL=C sort)
program_sources=$(find src -name '*.c' | LC_ALL=C sort)
core_sources=$(for folder in $core; do find "src/$folder" -name '*.[ch]' 2>/dev/null; done | grep -vE '^src/pack/(embed|precompile).c$')
core_sources="$core_sources $(ls src/*.c | grep -vx src/precompile.c | tr '\n' ' ')"

untidy=$(printf '%s\n' $all_sources | xargs -P "$(nproc)" -n 50 clang-format --dry-run -Werror 2>&1 |
    sed -n 's/^\([^:]*\.[ch]\):.*/  \1/p' | sort -u)
[ -z "$untidy" ] || printf 'not laid out (make format):\n%s\n' "$untidy"
test -z "$untidy"
verdict "layout (clang-format)" $?

# Functions that overrun, keep hidden state or start a shell (style.md asks that they do not appear).
banned='\b(strcpy|strcat|sprintf|vsprintf|gets|strtok|atoi|atol|atof|system|popen|localtime|gmtime|tmpnam|alloca)[[:space:]]*\('
! grep -nE "$banned" $all_sources
verdict "banned calls" $?

# The core touches no file, clock, thread, environment or output, and ends no program.
impure='(?<![.>_a-z])(fopen|freopen|open|fread|fwrite|read|write|printf|puts|putchar|perror|fprintf|time|clock|clock_gettime|gettimeofday|getenv|setenv|setlocale|pthread_[a-z_]+|fork|exec[a-z]*|exit|abort|rand|random|socket)[[:space:]]*\('
! grep -nP "$impure" $core_sources | grep -vE '^[^:]+:[0-9]+:[[:space:]]*(/?\*|//)'
verdict "purity of the core" $?
! grep -nE '^(static )?[a-z_ ]+[ *][a-z_]+(\[[^]]*\])?( = .*)?;$' $core_sources | grep -E ':static ' | grep -vE 'const '
verdict "no changing global state in the core" $?

unlicensed=$(grep -L 'SPDX-License-Identifier: MIT' $all_sources Makefile \
    $(find .ci tests src grammars -path tests/corpus -prune -o \( -name '*.py' -o -name '*.sh' \) -print))
[ -z "$unlicensed" ] || printf 'no SPDX line:\n%s\n' "$unlicensed"
test -z "$unlicensed"
verdict "licence lines" $?

# What one of them has built already stands. Warnings of clang come without optimization, gcc's do not.
builder=$(readlink -f "$(command -v "${CC##* }")")
for compiler in gcc clang; do
    folder=$build/with-$compiler optimize=
    [ "$builder" = "$(readlink -f "$(command -v $compiler)")" ] && folder=$build
    [ $compiler = clang ] && [ "$folder" != "$build" ] && optimize=CFLAGS=-O0
    make --no-print-directory -j"$(nproc)" CC=$compiler $optimize B="$folder" all >"$build/$compiler.log" 2>&1
    status=$?
    [ $status -eq 0 ] || cat "$build/$compiler.log"
    verdict "builds with $compiler" $status
done

# constStatement: takes the sizeof inside PHRASE_TEXT for a statement. unknownMacro: Jansson's loops.
cppcheck --quiet -j "$(nproc)" --std=c11 --enable=warning,performance,portability --inline-suppr --error-exitcode=1 \
    --suppress=missingIncludeSystem --suppress=constStatement --suppress=unknownMacro -Isrc -Iinclude $program_sources
verdict "cppcheck" $?

# A file at a time: clang-tidy 14 takes over va_lists from one file to the next. The analyzer stops at so many states of a
# function, a tenth of its own limit: the same was found in a fifteenth of the time. TIDY_NODES=225000 is its own.
nodes=${TIDY_NODES:-20000}
printf '%s\n' $program_sources | xargs -P "$(nproc)" -I {} sh -c 'clang-tidy --quiet {} -- $0 2>/dev/null' \
    "$flags -Xclang -analyzer-config -Xclang max-nodes=$nodes" >"$build/tidy.log"
status=$?
[ $status -eq 0 ] || cat "$build/tidy.log"
verdict "clang-tidy" $status
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
