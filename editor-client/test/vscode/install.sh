#!/bin/sh
# Installs code-server from the package registry alone: what would fetch programs elsewhere is left out
# and its native parts are compiled here. Needs g++, make, python3 and ripgrep.
#
#   test/vscode/install.sh [FOLDER]
set -eu
version=4.100.3 # The newest for Node 20.
folder=${1:-$HOME/.cache/kettlemark/code-server}
server=$folder/node_modules/code-server
quiet='--no-audit --no-fund --loglevel=error'

if [ "$(cat "$folder/installed" 2> /dev/null)" = "$version" ]; then
  exit 0
fi
rm -rf "$folder"
mkdir -p "$folder"
cd "$folder"
echo '{ "private": true }' > package.json
npm install "code-server@$version" --ignore-scripts $quiet > /dev/null
npm rebuild argon2 $quiet > /dev/null
cd "$server/lib/vscode"
npm install --omit=dev --ignore-scripts $quiet > /dev/null
for part in node-pty @vscode/spdlog native-watchdog @vscode/deviceid; do
  # The terminal's part compiles and then wants to move files that it has not fetched.
  npm rebuild "$part" $quiet > /dev/null 2>&1 || true
done
mkdir -p node_modules/@vscode/ripgrep/bin
ln -sf "$(command -v rg)" node_modules/@vscode/ripgrep/bin/rg
ln -sfn node_modules node_modules.asar
cd extensions
npm install --omit=dev --ignore-scripts $quiet > /dev/null
node "$server/out/node/entry.js" --config "$folder/config.yaml" --version
echo "$version" > "$folder/installed"
