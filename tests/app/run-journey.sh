#!/bin/sh
# SPDX-License-Identifier: MIT
# run-journey.sh PYTHON LAUNCHER SCRIPT ARGUMENTS...: inside xvfb-run and dbus-run-session.
python=$1
launcher=$2
shift 2
# What the registry says of itself is no TAP.
"$launcher" --launch-immediately >&2 &
bus=$!
status=0
"$python" "$@" || status=$?
kill "$bus"
exit "$status"
