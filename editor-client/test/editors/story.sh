# The frame of every editor's test; the story itself is told by the editor's own script.
#
#   . story.sh NAME      sets JAR, WORK, LIBRARY, LOG, RESULTS and cleans up at the end
#
# LIBRARY is a copy of the small library, at a path as awkward as they come. WORK holds what the editor
# writes for itself. Lines `feature: ok` go to RESULTS.
set -eu

editors=$(cd "$(dirname "$0")/../editors" && pwd)
client=$(cd "$editors/../.." && pwd)
name=$1
JAR=$(realpath "${JAR:-$client/../server/target/kettlemark.jar}")
WORK=$(mktemp -d)
LIBRARY="$WORK/${FOLDER:-Rook Haven 50 % süß #1}"
LOG="$WORK/log"
RESULTS="$client/target/editors/$name.txt"
export JAR WORK LIBRARY LOG RESULTS

[ -f "$JAR" ] || { echo "$name: no server at $JAR; build it first" >&2; exit 1; }

ended() {
  status=$?
  if [ "$status" != 0 ] && [ -f "$LOG" ]; then
    echo "--- $name failed; its log:" >&2
    tail -n 80 "$LOG" >&2
  fi
  chmod -R u+w "$WORK"
  rm -rf "$WORK"
  exit "$status"
}
trap ended EXIT

fresh_library() {
  chmod -R u+w "$LIBRARY" 2> /dev/null || true
  rm -rf "$LIBRARY"
  cp -R "$editors/library" "$LIBRARY"
}

require() {
  command -v "$1" > /dev/null || { echo "$name: $1 is not installed" >&2; exit 1; }
}

verified() {
  echo "$1: ok" >> "$RESULTS"
}

# The saved library is what every editor must leave, and the checker has nothing against it.
same_answers() {
  diff -ru "$editors/expected" "$LIBRARY"
  verified 'same files as in every other editor'
  java -jar "$JAR" check --severity warning --warnings-as-errors "$LIBRARY" >> "$LOG" 2>&1
  verified 'no finding is left'
}

told() {
  echo "$name: $(grep -c ': ok$' "$RESULTS") features"
}

# A program that calls itself Java of some version, as the real ones print it.
fake_java() {
  printf '#!/bin/sh\necho "openjdk version \\"%s\\" 2024-01-16" >&2\n' "$2" > "$1"
  chmod +x "$1"
}

mkdir -p "$(dirname "$RESULTS")"
: > "$RESULTS"
: > "$LOG"
fresh_library
