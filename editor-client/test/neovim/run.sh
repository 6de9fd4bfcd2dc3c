#!/bin/sh
# Drives a real Neovim against the server and compares the saved file with the expected text.
#
#   JAR=server.jar SAMPLES=folder test/neovim/run.sh [NEOVIM]
#
# JAR is the server, SAMPLES a library that the text is put beside.
set -eu

here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

mkdir "$work/library"
[ -z "${SAMPLES:-}" ] || cp -R "$SAMPLES/." "$work/library"
cp "$here/bench.kettle" "$work/library/bench.kettle"

export KETTLE_FILE="$work/library/bench.kettle"
export KETTLE_JAR="$(realpath "${JAR:?name the server}")"
# Neovim keeps its own files in these folders; the tester's are left alone.
export XDG_CONFIG_HOME="$work" XDG_DATA_HOME="$work" XDG_STATE_HOME="$work" XDG_CACHE_HOME="$work"

"${1:-nvim}" --clean --headless --cmd "set runtimepath^=$here/../../neovim" \
  -c "luafile $here/check.lua" </dev/null
diff -u "$here/bench.expected.kettle" "$KETTLE_FILE"
echo "saved file as expected"
