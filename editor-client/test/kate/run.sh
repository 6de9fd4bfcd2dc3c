#!/bin/sh
# Colours the small library with the engine of Kate, which runs without a screen; Kate itself is not driven.
#
#   test/kate/run.sh
set -- kate
. "$(dirname "$0")/../editors/story.sh"
require kate-syntax-highlighter

export XDG_DATA_HOME="$WORK/data" QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8
mkdir -p "$XDG_DATA_HOME/org.kde.syntax-highlighting/syntax"
cp "$client/kate/kettlemark.xml" "$XDG_DATA_HOME/org.kde.syntax-highlighting/syntax"
kate-syntax-highlighter --syntax Kettlemark --output-format html "$LIBRARY/lemon.kettle" \
  > "$WORK/coloured.html" 2>> "$LOG"
cp "$WORK/coloured.html" "$LOG"

# The look of a word, as the engine writes it; plain words have none.
look() {
  sed -n "s/.*<span style=\"\([^\"]*\)\">$1<\/span>.*/\1/p" "$WORK/coloured.html" | head -n 1
}

seen=
for word in formula lemon-chews code 1200 boil dissolved until all '# A syrup.*'; do
  of=$(look "$word")
  [ -n "$of" ] || { echo "$word has no colour" >> "$LOG"; exit 1; }
  seen="$seen$of
"
done
[ "$(printf '%s' "$seen" | sort -u | wc -l)" -ge 5 ] \
  || { echo "the words look the same: $seen" >> "$LOG"; exit 1; }
[ -z "$(look white-sugar)" ] || { echo 'a name is coloured' >> "$LOG"; exit 1; }
verified 'colours'
told
