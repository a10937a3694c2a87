#!/usr/bin/env bash
# Tries the program as the container would run it, without a container engine: in a minimal Debian root with the packages of
# deploy/Containerfile, as its user, with everything but /data and /tmp read-only. Needs root, debootstrap, and the built
# browser tests (tests/run.sh builds them). Prints what was seen; ends with 0 when all of it is right, with 77 when it cannot be tried.
set -euo pipefail
cd "$(dirname "$0")/.."

containerfile=deploy/Containerfile
user=$(sed -nE 's/^USER ([0-9]+).*/\1/p' "$containerfile")
packages=$(sed -nE 's/^ARG PACKAGES="(.*)"$/\1/p' "$containerfile")
release=$(sed -nE 's/^FROM debian:([a-z]+)-slim$/\1/p' "$containerfile")
tests=tests/ShopPlanner.Browser.Tests/bin/Release/net10.0/ShopPlanner.Browser.Tests
chromium=${SHOP_PLANNER_CHROMIUM:-/usr/bin/chromium}
seconds_to_stop=30

say() { printf '%s\n' "$*"; }
fail() { say "FAILED: $*"; exit 1; }
skip() { say "Skipped: $*"; exit 77; }

# All mounts lie in a mount namespace of this script's own, and go with it.
if [ "${1:-}" != "--inside" ]; then
  [ "$(id -u)" -eq 0 ] || skip "only root can make a Debian root"
  command -v debootstrap >/dev/null || skip "debootstrap is not installed"
  [ -x "$tests" ] || skip "the browser tests are not built: dotnet build -c Release tests/ShopPlanner.Browser.Tests"
  [ -x "$chromium" ] || skip "Chromium is not installed: it asks for the plan"
  [ -n "$user" ] && [ -n "$packages" ] && [ -n "$release" ] || fail "$containerfile names no user, packages or release"
  unshare --mount --propagation private true 2>/dev/null || skip "mount namespaces are not permitted here"
  exec unshare --mount --propagation private bash deploy/try-in-root.sh --inside
fi

work=$(mktemp -d)
program=""
tidy() {
  if [ -n "$program" ]; then
    kill -KILL "$program" 2>/dev/null || true
    wait "$program" 2>/dev/null || true
  fi
  if mountpoint -q "$work/root"; then umount --recursive "$work/root"; fi
  rm -rf --one-file-system "$work"
}
trap tidy EXIT

# The mirror is the one that this machine's own apt uses for Debian.
mirror() {
  apt-get indextargets --format '$(REPO_URI) $(ORIGIN) $(CODENAME)' 2>/dev/null \
    | awk -v release="$release" '$2 == "Debian" && $3 == release { print $1; exit }'
}

# A Debian root is kept between runs, in a file named for what is in it.
bootstrap() {
  local cache kept from
  cache=${XDG_CACHE_HOME:-$HOME/.cache}/shop-planner
  kept=$cache/$release-$(dpkg --print-architecture)-$(sha256sum <<<"$packages" | cut -c1-12).tar
  mkdir -p "$work/root" "$cache"
  if [ ! -f "$kept" ]; then
    from=$(mirror)
    [ -n "$from" ] || skip "apt knows no mirror of Debian $release: run apt-get update"
    say "Making a Debian root with: $packages"
    debootstrap --variant=minbase --include="${packages// /,}" "$release" "$work/root" "$from" >"$work/debootstrap" 2>&1 \
      || { tail -n 5 "$work/debootstrap"; fail "debootstrap could not make the root"; }
    tar -C "$work/root" --one-file-system -cf "$kept.part" . && mv "$kept.part" "$kept"
  else
    tar -C "$work/root" -xf "$kept"
  fi
}

publish() {
  local platform=linux-x64
  [ "$(uname -m)" = aarch64 ] && platform=linux-arm64
  dotnet publish src/ShopPlanner.Web -c Release -r "$platform" --self-contained -o "$work/root/opt/shop-planner" -v q -nologo \
    >"$work/publish" 2>&1 || { tail -n 5 "$work/publish"; fail "the program could not be published"; }
  # mktemp makes folders for their owner alone.
  chmod 0755 "$work" "$work/root"
  chmod -R a+rX "$work/root/opt/shop-planner"
}

shut() {
  mkdir -p "$work/data" "$work/root/data"
  chown "$user:$user" "$work/data"
  chmod 0700 "$work/data"
  mount --bind "$work/root" "$work/root"
  mount --bind "$work/data" "$work/root/data"
  mount -t tmpfs -o mode=1777 tmpfs "$work/root/tmp"
  mount -t tmpfs -o mode=0755 tmpfs "$work/root/dev"
  for device in null zero random urandom; do
    touch "$work/root/dev/$device"
    mount --bind "/dev/$device" "$work/root/dev/$device"
  done
  mount -t proc proc "$work/root/proc"
  mount -o remount,bind,ro "$work/root"
  if touch "$work/root/opt/written" 2>/dev/null; then fail "the root can be written"; fi
  say "Debian $release, user $user, everything read-only but /data and /tmp"
}

# The program's own process, so that a signal reaches it.
in_root=(
  env -i PATH=/usr/bin:/bin HOME=/data DOTNET_RUNNING_IN_CONTAINER=true DOTNET_EnableDiagnostics=0
  /usr/sbin/chroot "$work/root" setpriv "--reuid=$user" "--regid=$user" --clear-groups --no-new-privs --bounding-set=-all --inh-caps=-all
  /opt/shop-planner/ShopPlanner.Web
)

start() {
  "${in_root[@]}" --data /data --port 0 --only-this-computer --demo >"$work/said" 2>&1 &
  program=$!
  for _ in $(seq 600); do
    port=$(sed -nE 's/^Shop Planner is at http:\/\/localhost:([0-9]+).*/\1/p' "$work/said")
    [ -n "$port" ] && break
    kill -0 "$program" 2>/dev/null || { cat "$work/said"; fail "the program did not start"; }
    sleep 0.1
  done
  [ -n "$port" ] || { cat "$work/said"; fail "the program printed no address within a minute"; }
  say "Started on port $port"
}

look() {
  local status
  exec 3<>"/dev/tcp/127.0.0.1/$port"
  printf 'GET / HTTP/1.1\r\nHost: localhost:%s\r\nConnection: close\r\n\r\n' "$port" >&3
  read -r _ status _ <&3
  exec 3>&-
  [ "$status" = 200 ] || fail "the first page answered $status"
  "${in_root[@]}" --health --port "$port" || fail "the health check ended with $?"
  say "The first page answers 200, and the health check is content"
}

plan() {
  SHOP_PLANNER_ADDRESS=http://localhost:$port SHOP_PLANNER_CHROMIUM=$chromium \
    "$tests" -noColor -noLogo -diagnostics -explicit only -class "*InstalledProgramTests" >"$work/planned" 2>&1 \
    || { tail -n 30 "$work/planned"; cat "$work/said"; fail "no plan with its packet was made"; }
  grep -q 'Total: 1, Errors: 0, Failed: 0, Skipped: 0, Not Run: 0' "$work/planned" || fail "the test of plan and packet did not run"
  say "A plan was made. $(grep -oE 'The packet has [0-9]+ pages and [0-9]+ bytes' "$work/planned")"
}

stop() {
  local begun=$SECONDS status=0
  kill -TERM "$program"
  while kill -0 "$program" 2>/dev/null; do
    [ $((SECONDS - begun)) -lt "$seconds_to_stop" ] || fail "the program was still there $seconds_to_stop seconds after SIGTERM"
    sleep 0.1
  done
  wait "$program" || status=$?
  program=""
  [ "$status" -eq 0 ] || { cat "$work/said"; fail "after SIGTERM the program ended with $status"; }
  if grep -qE '^ +at |^(fail|crit):' "$work/said"; then cat "$work/said"; fail "the program wrote errors"; fi
  say "SIGTERM stopped it within $((SECONDS - begun + 1)) seconds, with exit status 0"
}

refuse() {
  local status=0
  mount -o remount,bind,ro "$work/root/data"
  "${in_root[@]}" --data /data --port 0 --only-this-computer >"$work/refused" 2>&1 || status=$?
  if [ "$status" -ne 3 ] || [ "$(wc -l <"$work/refused")" -ne 1 ]; then
    cat "$work/refused"
    fail "a read-only data folder ended the program with $status, not with 3 and one line"
  fi
  say "A read-only data folder is refused in one line, with exit status 3"
}

bootstrap
publish
shut
start
look
plan
stop
refuse
say "Passed: the program runs with the packages of $containerfile"
