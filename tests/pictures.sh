#!/usr/bin/env bash
# Takes a picture of every place of the demo, on desktop, tablet and phone, light and dark, into the folder given
# (default: artifacts/pictures). `--readme` also renews the pictures that the README shows.
set -euo pipefail
cd "$(dirname "$0")/.."
readme=false
if [ "${1:-}" = "--readme" ]; then readme=true; shift; fi
export SHOP_PLANNER_PICTURES=${1:-$PWD/artifacts/pictures}
mkdir -p "$SHOP_PLANNER_PICTURES"
dotnet build -c Release tests/ShopPlanner.Browser.Tests -v q -nologo
dotnet tests/ShopPlanner.Browser.Tests/bin/Release/net10.0/ShopPlanner.Browser.Tests.dll -noLogo -explicit only -class "*PictureTests" -class "*KeptPictures"
if $readme; then
  mkdir -p deploy/pictures
  for name in weekends-desktop-light idea-desktop-light parts-desktop-light cuts-tablet-light bench-tablet-dark stock-phone-light; do
    cp "$SHOP_PLANNER_PICTURES/top-$name.png" "deploy/pictures/$name.png"
  done
fi
