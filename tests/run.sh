#!/usr/bin/env bash
# Passes the tests (with --all, those that take longest too): installs what they need, builds, runs every test project, ends with
# "N passed, N failed".
set -uo pipefail
cd "$(dirname "$0")/.."

say() { printf '== %s\n' "$*"; }

need_dotnet() {
  command -v dotnet >/dev/null && return
  say "The .NET 10 SDK is missing: install it from your system's packages, then run this again."
  exit 1
}

# The browser tests drive Debian's Chromium. Without it they are skipped, each saying so.
need_chromium() {
  for name in chromium chromium-browser google-chrome; do
    if command -v "$name" >/dev/null; then export SHOP_PLANNER_CHROMIUM="${SHOP_PLANNER_CHROMIUM:-$(command -v "$name")}"; return; fi
  done
  local root=""
  [ "$(id -u)" -eq 0 ] || root="sudo -n"
  if command -v apt-get >/dev/null; then
    say "Installing Chromium, for the browser tests"
    $root apt-get update -qq && $root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq chromium >/dev/null
  fi
  if command -v chromium >/dev/null; then export SHOP_PLANNER_CHROMIUM=$(command -v chromium); return; fi
  say "Chromium could not be installed here: the browser tests will be skipped. Install the package 'chromium' to run them."
}

# A server keeps the shops of some tests. Without PostgreSQL they are skipped, each saying so.
need_postgres() {
  compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null && return
  local root=""
  [ "$(id -u)" -eq 0 ] || root="sudo -n"
  if command -v apt-get >/dev/null; then
    say "Installing PostgreSQL, for the tests of shops on a server"
    $root apt-get update -qq && $root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq postgresql >/dev/null
  fi
  compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null || say "PostgreSQL could not be installed here: install the package 'postgresql' to run these tests."
}

# Runs one test program into a log; prints nothing.
run_to() {
  local log=$1 name=${2##*/}
  "$2/bin/Release/net10.0/$name" -noColor -noLogo "${@:3}" >"$log" 2>&1
  echo "exit status $?" >>"$log"
}

# Prints of a log what failed or was skipped and the line of counts, which is added up.
read_log() {
  local log=$1 counts status
  status=$(sed -nE 's/^exit status ([0-9]+)$/\1/p' "$log" | tail -n 1)
  grep -vE '^ *(Discovering|Discovered|Starting|Finished):|^=== TEST|^exit status' "$log" | tail -n 200
  counts=$(grep -E ' Total: [0-9]+' "$log" | tail -n 1)
  # Said again at the end, where it is looked for.
  all_failing+=$(grep -A 40 -F '[FAIL]' "$log")$'\n'
  rm -f "$log"
  count() { sed -nE "s/.* $1: ([0-9]+).*/\1/p" <<<"$counts"; }
  local total errors failed skipped idle
  total=$(count Total); errors=$(count Errors); failed=$(count Failed); skipped=$(count Skipped); idle=$(count 'Not Run')
  # A program that ran nothing, or died before it could count, is a failure too.
  if [ "${total:-0}" -eq 0 ] || { [ "$status" != 0 ] && [ $((${errors:-0} + ${failed:-0})) -eq 0 ]; }; then errors=$((${errors:-0} + 1)); fi
  all_passed=$((all_passed + ${total:-0} - ${failed:-0} - ${skipped:-0} - ${idle:-0}))
  all_failed=$((all_failed + ${failed:-0} + ${errors:-0}))
  all_skipped=$((all_skipped + ${skipped:-0}))
}

run_one() {
  local log
  log=$(mktemp)
  say "${1##*/} ${*:2}"
  run_to "$log" "$@"
  read_log "$log"
}

# The program as the container would run it counts as one test; 77 says that it cannot be tried here.
try_in_root() {
  local status=0
  say "deploy/try-in-root.sh"
  bash deploy/try-in-root.sh || status=$?
  case $status in
    0) all_passed=$((all_passed + 1)) ;;
    77) all_skipped=$((all_skipped + 1)) ;;
    *) all_failed=$((all_failed + 1)) ;;
  esac
}

# Outages, then the kills: they mostly wait, so they run beside the other browser tests.
run_outages() {
  run_to "$logs/outages" "$browser" -namespace '*.Kept'
  run_to "$logs/kills" "$browser" -explicit only -class '*KillTests'
}

# The same shops, kept by a server: all tests but those that work on the database file itself.
run_on_server() {
  local -a files=(-class- '*.Storage.*' -class- '*.Backups.*' -class- '*.Archives.*' -class- '*.Golden.*' -class- '*.Server.*')
  SHOP_PLANNER_TEST_STORE=server run_to "$logs/server" "$services" "${files[@]}"
}

# What drives no browser makes way for the browsers.
run_making_way() {
  renice -n 10 "$BASHPID" >/dev/null
  local project
  for project in "$@"; do run_to "$logs/${project##*/}" "$project"; done
  [ "$scope" != --all ] || run_on_server
}

run_all() {
  all_passed=0 all_failed=0 all_skipped=0 all_failing=""
  local browser=tests/ShopPlanner.Browser.Tests cutting=tests/ShopPlanner.Cutting.Tests logs project
  local services=tests/ShopPlanner.Services.Tests
  local -a others=()
  logs=$(mktemp -d)
  for project in tests/ShopPlanner.*.Tests; do
    case $project in "$browser" | "$cutting") ;; *) others+=("$project") ;; esac
  done
  run_outages &
  run_making_way "${others[@]}" &
  run_one "$browser" -namespace- '*.Kept'
  # Searches that are given a time have the machine nearly to themselves.
  run_to "$logs/${cutting##*/}" "$cutting"
  wait
  for project in "$cutting" "${others[@]}"; do
    say "${project##*/}"
    read_log "$logs/${project##*/}"
  done
  if [ "$scope" = --all ]; then
    say "${services##*/}: shops on a server"
    read_log "$logs/server"
  fi
  for project in outages kills; do
    say "${browser##*/}: $project"
    read_log "$logs/$project"
  done
  rmdir "$logs"
  try_in_root
  [ "$all_skipped" -gt 0 ] && say "$all_skipped skipped: each says why above"
  [ -n "${all_failing//[[:space:]]/}" ] && say "Failed:" && printf '%s\n' "$all_failing" | head -n 160
  printf '%d passed, %d failed\n' "$all_passed" "$all_failed"
  [ "$all_failed" -eq 0 ]
}

scope=${1:-}
need_dotnet
need_chromium
need_postgres
say "Building"
if ! dotnet build ShopPlanner.sln -c Release -v q -nologo; then
  printf '0 passed, 1 failed\n'
  exit 1
fi
run_all
