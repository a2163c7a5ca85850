#!/bin/sh
# SPDX-License-Identifier: MIT
# From a fresh Debian 12 to the first pack: install what the build needs
# (missing packages only), build, write the pack of an example and its
# quantities into out/.
set -eu
cd "$(dirname "$0")/.."

job=examples/sandlark-bluff-road.slope.json
folder=build-first

sh tests/install-missing.sh tests/packages/build.txt
PATH=/usr/bin:/bin:/usr/sbin:/sbin:$PATH
export PATH

# into LOG COMMAND...: show its output only when it fails.
into() {
  log=$1
  shift
  "$@" >"$log" 2>&1 || { tail -60 "$log" >&2; echo "This failed: $*" >&2; exit 1; }
}
echo "Building in $folder"
if [ ! -f "$folder/build.ninja" ]; then
  rm -rf "$folder"
  mkdir "$folder"
  into "$folder/setup.log" meson setup "$folder" -Dbuildtype=release
fi
into "$folder/build.log" ninja -C "$folder" src/cli/slopepack src/app/slopewright

slopepack=$folder/src/cli/slopepack
mkdir -p out
# Status 3: the pack is written, and the job has a stop finding.
status=0
"$slopepack" pack "$job" -o out/sandlark-bluff-road.pdf || status=$?
[ "$status" -eq 0 ] || [ "$status" -eq 3 ] || exit "$status"
"$slopepack" tally "$job" >out/sandlark-bluff-road.txt
"$slopepack" tally "$job" --format csv >out/sandlark-bluff-road.csv

cat <<END

Written:
  out/sandlark-bluff-road.pdf   the pack
  out/sandlark-bluff-road.txt   its quantities
  out/sandlark-bluff-road.csv   the same for a spreadsheet

Open the same job in the window:
  $folder/src/app/slopewright $job
END
