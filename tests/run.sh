#!/bin/sh
# SPDX-License-Identifier: MIT
# Install what the tests need (Debian 12, missing packages only), build, run
# everything and end with the line "N passed, N failed".
#
#   1 everything, built with the address and undefined-behaviour sanitizers
#   2 the rooms below the window again in an optimised build: same results
#   3 the model's tests of that build under valgrind
set -eu
cd "$(dirname "$0")/.."

# Whatever stops the run before its summary is a failure too.
counted=no
trap '[ "$counted" = yes ] || printf "\n0 passed, 1 failed\n"' EXIT

sh tests/install-missing.sh tests/packages/build.txt tests/packages/test.txt

# Debian's own python has the modules of python3-* packages; another one that
# comes first in the path may not.
PATH=/usr/bin:/bin:/usr/sbin:/sbin:$PATH
export PATH LC_ALL=C.UTF-8
unset DISPLAY WAYLAND_DISPLAY G_MESSAGES_DEBUG 2>/dev/null || true

rooms="--suite base --suite ground --suite layout --suite tally --suite judge"
upper="--suite figure --suite store --suite sheet --suite paint --suite document --suite cli"
started=$(date +%s)

# into LOG COMMAND...: show its output only when it fails.
into() {
  log=$1
  shift
  "$@" >"$log" 2>&1 || { tail -60 "$log" >&2; echo "This failed: $*" >&2; exit 1; }
}

# build FOLDER OPTION...: configure once, then only what changed.
build() {
  folder=$1
  shift
  echo "Building in $folder"
  if [ ! -f "$folder/build.ninja" ]; then
    rm -rf "$folder"
    mkdir "$folder"
    into "$folder/setup.log" meson setup "$folder" -Dwerror=true "$@"
  fi
  into "$folder/build.log" ninja -C "$folder"
}

# tests LABEL FOLDER OPTION...: run, leave the log for the summary, never stop here.
tests() {
  label=$1
  folder=$2
  shift 2
  echo "Running: $label"
  rm -f "$folder"/meson-logs/testlog*.json
  xvfb-run -a -s '-screen 0 1400x1000x24' dbus-run-session -- \
    meson test -C "$folder" --no-rebuild --timeout-multiplier 4 "$@" \
    >"$folder/tests-$label.log" 2>&1 || true
  rm -f "$folder/meson-logs/$label.json"
  for log in "$folder/meson-logs"/testlog*.json; do
    [ ! -f "$log" ] || mv "$log" "$folder/meson-logs/$label.json"
  done
}

build build -Db_sanitize=address,undefined

# Locales that write 1,5: numbers of files and sheets must not follow them, the window must.
mkdir -p build/locales
for locale in de_DE es_ES fr_FR; do
  [ -d build/locales/$locale.UTF-8 ] || localedef -i $locale -f UTF-8 build/locales/$locale.UTF-8
done
LOCPATH=$PWD/build/locales
export LOCPATH

ASAN_OPTIONS=detect_leaks=1:strict_string_checks=1
UBSAN_OPTIONS=print_stacktrace=1:halt_on_error=1
LSAN_OPTIONS=suppressions=$PWD/tests/leaks-of-libraries.txt:print_suppressions=0
export ASAN_OPTIONS UBSAN_OPTIONS LSAN_OPTIONS
tests sanitized build

build build-optimised -Dbuildtype=release -Ddebug=true
# Random faces are laid ten times as fast here, so ten times as many.
SLOPEWRIGHT_RANDOM_FACES=3000
# And all packs in all languages, papers and units; with sanitizers one in four.
SLOPEWRIGHT_ALL_SHEETS=1
export SLOPEWRIGHT_RANDOM_FACES SLOPEWRIGHT_ALL_SHEETS
# shellcheck disable=SC2086 # one word an option
tests optimised build-optimised $rooms $upper
unset SLOPEWRIGHT_RANDOM_FACES SLOPEWRIGHT_ALL_SHEETS

# Long sweeps over random faces are left to the sanitizers: valgrind takes minutes for them.
sweeps='layout-(properties|symmetry|runs|pieces|pins)$|cutting|glpk|tally-workings$'
# shellcheck disable=SC2086
short=$(meson test -C build-optimised --list $rooms 2>/dev/null | sed -n 's|.* / ||p' |
  grep -Ev "$sweeps")
# shellcheck disable=SC2086 # one word a test
tests valgrind build-optimised $rooms --timeout-multiplier 20 \
  --wrap 'valgrind --quiet --error-exitcode=9 --leak-check=full --errors-for-leak-kinds=definite' \
  $short

echo "Took $(($(date +%s) - started)) s"
counted=yes
python3 tests/summary.py \
  'All, sanitizers on' build/meson-logs/sanitized.json \
  'Without window, optimised' build-optimised/meson-logs/optimised.json \
  'Model, under valgrind' build-optimised/meson-logs/valgrind.json
