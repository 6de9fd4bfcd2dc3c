#!/bin/sh
# Reads pages and data that Kettlemark writes as others read them: pages in headless Chromium with axe-core,
# data with the types of the vocabularies that they claim to be written in.
#
#   test/pages/run.sh             writes all pages and data of the samples and checks them
#   test/pages/run.sh FILE…       checks these HTML files
#
# KETTLEMARK is the command that writes them, CHROMIUM the browser. A page is added by one line below.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
client=$(cd "$here/../.." && pwd)
samples=$(cd "$client/../samples/gannet-slip" && pwd)
KETTLEMARK="${KETTLEMARK:-$(realpath "$client/../server/bin/kettlemark")}"
CHROMIUM="${CHROMIUM:-$(command -v chromium || command -v chromium-browser || command -v google-chrome)}"
export CHROMIUM
cd "$client"

[ $# -eq 0 ] || exec node "$here/pages.mjs" "$@"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/pages" "$work/data"
started=$(date +%s)

# Usage: page NAME ARGUMENTS, for a command that writes a page to its output; it is run by `write`.
page() {
  name=$1
  shift
  echo "0 pages/$name.html $*" >> "$work/commands"
}

# Usage: data NAME TYPE ARGUMENTS, for a command that writes JSON; findings are no failure here.
data() {
  name=$1.$2.json
  shift 2
  echo "1 data/$name $*" >> "$work/commands"
}

# Runs the commands, one for each processor at a time: most of what they do is to start.
write() {
  export KETTLEMARK work
  (cd "$samples" && xargs -P "$(getconf _NPROCESSORS_ONLN)" -L 1 sh -c '
    most=$0 to=$1
    shift
    $KETTLEMARK "$@" > "$work/$to" || [ $? -le "$most" ] || { echo "failed: $*" >&2; exit 1; }
  ' < "$work/commands")
}

# The sheets of a site are those of `sheet`, with ways to the other pages around them; what stands alone
# is looked at once for each reader.
page nougat-chef sheet heather-nougat --for chef
page bar-production sheet orchard-bar-42 --for production
page heather-german sheet heather-bench --language de-DE
page heather-french sheet heather-bench --language fr-FR
page dome-american sheet dome-home
page compare-variant compare heather-nougat-plant --format html
page compare-two compare heather-nougat egg-honey-nougat --format html --language de-DE
page card-cook answer cook heather-nougat first-syrup --moisture 11% --format html
page card-gelatine answer gelatine 12 g --from 250 --to 200 --format html --language fr-FR

cp -r "$samples" "$work/changed"
sed -i 's/29\.00 %             white-sugar/28.00 %             white-sugar/' "$work/changed/heather-nougat.kettle"
data check Findings check --format json ../mistakes
data check-clean Findings check --format json .
data sarif Sarif check --format sarif ../mistakes
data sheet Sheet sheet heather-bench --format json
data line Sheet sheet orchard-line --format json
data label Labels label caramel-dome --format json
data show Table show heather-nougat --format json
data trials Trials trials heather-nougat --format json
data changes Changes changes --from . --to "$work/changed" --format json
write

# A site in two languages; the first one twice, so that something has changed since the publication before.
publish() {
  $KETTLEMARK publish "$1" --quiet --out "$work/site-$2" --language "$2" --for "$3"
}
publish "$samples" en-GB chef,home,production,bench
publish "$work/changed" en-GB chef,home,production,bench
publish "$samples" de-DE chef,bench
echo "written: $(($(date +%s) - started)) s"

node "$here/pages.mjs" --words nougat,chew,gs-020 "$work/site-en-GB" "$work/site-de-DE" \
  "$work"/pages/*.html "$work"/site-*/*.html "$work"/site-*/compare/*.html \
  $(for reader in chef home production bench; do
    for name in heather-nougat caramel-dome orchard-bar-42; do echo "$work/site-en-GB/sheets/$name-$reader.html"; done
  done) \
  "$work/site-de-DE/sheets/caramel-dome-bench.html"
node "$here/data.mjs" "$work"
echo "pages and data: $(($(date +%s) - started)) s"
