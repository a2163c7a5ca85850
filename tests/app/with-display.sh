#!/bin/sh
# SPDX-License-Identifier: MIT
# with-display.sh COMMAND...: run it on a display of its own. Xvfb finds a free
# number itself, so that several may start at once. Without -noreset the server
# starts over when its last client leaves, and turns away whoever calls just then.
folder=$(mktemp -d)
mkfifo "$folder/number"
Xvfb -displayfd 3 -noreset -screen 0 1600x1000x24 -nolisten tcp 3>"$folder/number" 2>/dev/null &
server=$!
read -r number <"$folder/number"
rm -r "$folder"
DISPLAY=:$number
export DISPLAY
status=0
"$@" || status=$?
kill "$server"
exit "$status"
