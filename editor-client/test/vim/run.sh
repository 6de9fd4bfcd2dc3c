#!/bin/sh
# Drives a real Vim with ALE through the story that every editor is told.
#
#   JAR=server.jar test/vim/run.sh [VIM]
vim=${1:-vim}
set -- vim
# ALE 3.3 opens the other files of a rename with their bare names, in which Vim replaces % and #.
FOLDER='Rook Haven süß 1'
. "$(dirname "$0")/../editors/story.sh"
require "$vim"

export HOME="$WORK" CLIENT="$client"
LC_ALL=C.UTF-8 timeout 90 "$vim" -N -u NONE -i NONE -es -S "$client/test/vim/check.vim" \
  < /dev/null >> "$LOG" 2>&1
same_answers
told
