#!/bin/sh
# SPDX-License-Identifier: MIT
# update.sh: bring the translations up to the sources. What is new stands in them
# with an empty or a doubtful ("fuzzy") translation afterwards; the lint names both.
set -eu
folder=$(dirname "$0")
phrases=$(mktemp)
trap 'rm -f "$phrases"' EXIT
sh "$folder/collect.sh" "$phrases"
grep -v '^#' "$folder/LINGUAS" | while read -r language; do
  msgmerge --quiet --no-location --update --backup=none "$folder/$language.po" "$phrases"
  msgattrib --no-obsolete --output-file="$folder/$language.po" "$folder/$language.po"
  echo "$language: $(msgfmt --statistics --output-file=/dev/null "$folder/$language.po" 2>&1)"
done
