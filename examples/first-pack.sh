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

# quietly COMMAND...: show its output only when it fails.
quietly() {
  "$@" >"$folder.log" 2>&1 || { tail -60 "$folder.log" >&2; exit 1; }
}
if [ ! -f "$folder/build.ninja" ]; then
  rm -rf "$folder"
  quietly meson setup "$folder" -Dbuildtype=release
fi
echo "Building in $folder"
quietly ninja -C "$folder" src/cli/slopepack src/app/slopewright
rm -f "$folder.log"

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
