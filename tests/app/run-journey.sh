#!/bin/sh
# SPDX-License-Identifier: MIT
# run-journey.sh PYTHON LAUNCHER SCRIPT ARGUMENTS...: inside xvfb-run and dbus-run-session.
python=$1
launcher=$2
shift 2
"$launcher" --launch-immediately &
bus=$!
status=0
"$python" "$@" || status=$?
kill "$bus"
exit "$status"
