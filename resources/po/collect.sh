#!/bin/sh
# SPDX-License-Identifier: MIT
# collect.sh FILE: write every phrase of the window, the desktop entry and the
# catalogue of programs into FILE (a .pot), without line numbers and dates, so
# that two people's changes of a translation meet only where their phrases do.
set -eu
cd "$(dirname "$0")/../.."
xgettext --files-from=resources/po/POTFILES --from-code=UTF-8 --no-location \
  --add-comments=Translators --keyword=_ --keyword=N_ --keyword=C_:1c,2 --keyword=NC_:1c,2 \
  --package-name=slopewright --output=- |
  sed '/^"POT-Creation-Date:/d' >"$1"
