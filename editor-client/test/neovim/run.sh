#!/bin/sh
# Drives a real Neovim through the story that every editor is told, then through what is awkward.
#
#   JAR=server.jar test/neovim/run.sh [NEOVIM]
nvim=${1:-nvim}
set -- neovim
. "$(dirname "$0")/../editors/story.sh"
here=$client/test/neovim
require "$nvim"

# Neovim keeps its own files in these folders; the tester's are left alone.
export XDG_CONFIG_HOME="$WORK" XDG_DATA_HOME="$WORK" XDG_STATE_HOME="$WORK" XDG_CACHE_HOME="$WORK"
export STORY NVIM="$nvim" HERE="$here" FAKES="$WORK/fakes"
mkdir "$FAKES"
fake_java "$FAKES/java17" 17.0.15
fake_java "$FAKES/java25" 25-ea
fake_java "$FAKES/java8" 1.8.0_392
fake_java "$FAKES/java11" 11.0.22
fake_java "$FAKES/javanew" new

tell() {
  STORY=$1
  shift
  timeout 60 "$@" "$nvim" --clean --headless --cmd "set runtimepath^=$client/neovim" \
    -c "luafile $here/check.lua" < /dev/null >> "$LOG" 2>&1
}

tell whole
same_answers
fresh_library
tell awkward
tell two

# Somebody who may read the library and not write it.
if [ "$(id -u)" = 0 ] && command -v setpriv > /dev/null; then
  cp "$JAR" "$WORK/kettlemark.jar"
  mkdir "$WORK/nobody"
  chmod 777 "$WORK/nobody"
  chmod 755 "$WORK"
  cp -R "$client/neovim" "$WORK/neovim"
  cp "$here/check.lua" "$WORK/check.lua"
  : > "$WORK/result"
  chmod 666 "$WORK/result"
  (
    export JAR="$WORK/kettlemark.jar" RESULTS="$WORK/result" STORY=readonly HOME="$WORK/nobody"
    export XDG_CONFIG_HOME="$HOME" XDG_DATA_HOME="$HOME" XDG_STATE_HOME="$HOME" XDG_CACHE_HOME="$HOME"
    cd "$WORK/nobody"
    timeout 60 setpriv --reuid 65534 --regid 65534 --clear-groups \
      "$nvim" --clean --headless --cmd "set runtimepath^=$WORK/neovim" \
      -c "luafile $WORK/check.lua" < /dev/null >> "$LOG" 2>&1
  )
else
  chmod -R a-w "$LIBRARY"
  cp "$RESULTS" "$WORK/result"
  tell readonly
fi
verified 'read-only folder'
told
