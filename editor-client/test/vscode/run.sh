#!/bin/sh
# Drives a real VS Code (code-server in headless Chromium) through the story that every editor is told.
#
#   CODE_SERVER=folder [PATIENCE=factor] test/vscode/run.sh
#
# CODE_SERVER is where test/vscode/install.sh has put it. The extension is the packed one.
# A machine that has much else to do needs more PATIENCE.
set -- vscode
. "$(dirname "$0")/../editors/story.sh"
require chromium
export CODE_SERVER="${CODE_SERVER:-$HOME/.cache/kettlemark/code-server}" CLIENT="$client"
[ -d "$CODE_SERVER/node_modules/code-server" ] \
  || { echo "vscode: no code-server in $CODE_SERVER; run test/vscode/install.sh" >&2; exit 1; }
[ -f "$client/target/kettlemark.vsix" ] \
  || { echo 'vscode: the extension is not packed; run npm run package' >&2; exit 1; }

# For the stories about Java: one that is too old.
mkdir -p "$WORK/old/bin"
fake_java "$WORK/old/bin/java" 11.0.22

# A broken Java is not to take the real one's place, and the tester's own files are left alone.
cd "$client"
export HOME="$WORK"
export PATIENCE="${PATIENCE:-1}"
timeout $((240 * PATIENCE)) node test/vscode/run.mjs >> "$LOG" 2>&1
same_answers
told
