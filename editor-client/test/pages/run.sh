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
KETTLEMARK="${KETTLEMARK:-java -jar $(realpath "${JAR:-$client/../server/target/kettlemark.jar}")}"
CHROMIUM="${CHROMIUM:-$(command -v chromium || command -v chromium-browser || command -v google-chrome)}"
export CHROMIUM
cd "$client"

[ $# -eq 0 ] || exec node "$here/pages.mjs" "$@"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/pages" "$work/data"

# Usage: page NAME ARGUMENTS, for a command that writes a page to its output.
page() {
  to="$work/pages/$1.html"
  shift
  (cd "$samples" && $KETTLEMARK "$@" > "$to")
}

# Usage: data NAME TYPE ARGUMENTS, for a command that writes JSON; findings are no failure here.
data() {
  to="$work/data/$1.$2.json"
  shift 2
  (cd "$samples" && { $KETTLEMARK "$@" > "$to" || [ $? = 1 ]; })
}

for reader in chef home production bench; do
  for name in heather-nougat caramel-dome orchard-bar-42; do
    page "$name-$reader" sheet "$name" --for "$reader"
  done
done
page heather-german sheet heather-bench --language de-DE
page heather-french sheet heather-bench --language fr-FR
page dome-american sheet dome-home
page compare-variant compare heather-nougat-plant --format html
page compare-two compare heather-nougat egg-honey-nougat --format html --language de-DE
page card-cook answer cook heather-nougat first-syrup --moisture 11% --format html
page card-gelatine answer gelatine 12 g --from 250 --to 200 --format html --language fr-FR

gallery="$samples/../mistakes"
data check Findings check --format json "$gallery"
data check-clean Findings check --format json .
data sarif Sarif check --format sarif "$gallery"
data sheet Sheet sheet heather-bench --format json
data line Sheet sheet orchard-line --format json
data label Labels label caramel-dome --format json
data show Table show heather-nougat --format json
data trials Trials trials heather-nougat --format json
cp -r "$samples" "$work/changed"
sed -i 's/29\.00 %             white-sugar/28.00 %             white-sugar/' "$work/changed/heather-nougat.kettle"
data changes Changes changes --from . --to "$work/changed" --format json

# A site in two languages; the first one twice, so that something has changed since the publication before.
publish() {
  $KETTLEMARK publish "$1" --quiet --out "$work/site-$2" --language "$2" --for "$3"
}
publish "$samples" en-GB chef,home,production,bench
publish "$work/changed" en-GB chef,home,production,bench
publish "$samples" de-DE chef,bench
for language in en-GB de-DE; do
  node "$here/site.mjs" "$work/site-$language" nougat chew gs-020
done

node "$here/pages.mjs" "$work"/pages/*.html "$work"/site-*/*.html "$work"/site-*/compare/*.html \
  "$work/site-en-GB/sheets/heather-nougat-chef.html" "$work/site-de-DE/sheets/caramel-dome-bench.html"
node "$here/data.mjs" "$work"
