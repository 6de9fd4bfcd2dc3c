#!/bin/sh
# Drives the workbench in headless Chromium: the story that every editor is told, then what only a page
# can meet, and at last its weight and speed.
#
#   JAR=server.jar test/workbench/run.sh [STORY…]
stories=${*:-whole moving saving away ended long access}
set -- workbench
. "$(dirname "$0")/../editors/story.sh"
require chromium
[ -d "$client/workbench/node_modules/playwright-core" ] \
  || { echo 'workbench: run npm ci in editor-client/workbench' >&2; exit 1; }

tell() {
  timeout "${PATIENCE:-240}" node "$client/workbench/test/browser/run.mjs" "$1" >> "$LOG" 2>&1
}

for story in $stories; do
  [ "$story" = whole ] || fresh_library
  tell "$story"
  [ "$story" != whole ] || same_answers
done
grep '^measured' "$LOG" || true
told
