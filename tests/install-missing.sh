#!/bin/sh
# SPDX-License-Identifier: MIT
# Install the Debian packages listed in the given files, those only that are
# missing. Nothing is fetched when nothing is missing.
set -eu

missing=
# shellcheck disable=SC2013 # one word a package
for package in $(cat "$@"); do
  state=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
  [ "$state" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

as_root=
if [ "$(id -u)" -ne 0 ]; then
  if ! command -v sudo >/dev/null 2>&1; then
    echo "These packages are missing:$missing" >&2
    echo "Neither root nor sudo is at hand to install them." >&2
    exit 1
  fi
  as_root=sudo
fi

echo "Installing:$missing"
log=$(mktemp)
trap 'rm -f "$log"' EXIT
quietly() {
  if ! "$@" >"$log" 2>&1; then
    cat "$log" >&2
    echo "This failed: $*" >&2
    exit 1
  fi
}
quietly $as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q
# shellcheck disable=SC2086 # one word a package
quietly $as_root env DEBIAN_FRONTEND=noninteractive \
  apt-get install -q -y --no-install-recommends $missing
