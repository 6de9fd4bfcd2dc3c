#!/bin/sh
# Drives a real Emacs with Eglot through the story that every editor is told.
#
#   JAR=server.jar test/emacs/run.sh [EMACS]
emacs=${1:-emacs}
set -- emacs
. "$(dirname "$0")/../editors/story.sh"
require "$emacs"

export HOME="$WORK" CLIENT="$client"
fake_java "$WORK/java11" 11.0.22
LC_ALL=C.UTF-8 timeout 60 "$emacs" --batch -Q -L "$client/emacs" -l "$client/test/emacs/check.el" \
  < /dev/null >> "$LOG" 2>&1
same_answers
told
