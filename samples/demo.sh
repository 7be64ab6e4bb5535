#!/bin/sh
# The main job, shown: an invented cooking session's captions become recipes. demo.sh BUILD
# SPDX-License-Identifier: MIT
set -eu
build=$1
sample=samples/hilltop-canteen.srt
out=$build/demo
dishtake=$build/dishtake
mkdir -p "$out"

echo "One take, $(grep -c -e '-->' "$sample") captions, several dishes: $sample"
echo
"$dishtake" extract -q "$sample" -o "$out/recipes.json"
"$dishtake" card -q "$sample" -o "$out/cards.txt"
"$dishtake" card -q --as markdown "$sample" -o "$out/cards.md"
"$dishtake" chapters -q "$sample" -o "$out/chapters.txt"
"$dishtake" check -q "$sample" -o "$out/findings.txt" || [ $? -eq 1 ]

cat "$out/cards.txt"
echo
echo "Chapters:"
cat "$out/chapters.txt"
echo
echo "What to mend before publishing:"
cat "$out/findings.txt"
echo
echo "Written:"
for file in recipes.json cards.txt cards.md chapters.txt findings.txt; do
    echo "  $out/$file"
done
