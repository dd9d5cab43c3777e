#!/usr/bin/env bash
# Installs build/plugmark_*_amd64.deb on a bare Debian 12 in a folder, and uses it there. Prints what it checked; ends with 1 at
# the first thing that is not right. Needs root and debootstrap.
set -euo pipefail
cd "$(dirname "$0")/../.."

if [ "$(id -u)" != 0 ] || ! command -v debootstrap >/dev/null; then
  echo 'test:deb: run it as root, with debootstrap installed: apt-get install debootstrap' >&2
  exit 2
fi
# What is mounted here goes with this process.
[ "${1:-}" = mounted ] || exec unshare --mount "$0" mounted

deb=$(echo build/plugmark_*_amd64.deb)
root=$(mktemp -d)
chmod 755 "$root"
trap 'umount "$root/proc" 2>/dev/null; rm -rf "$root"' EXIT
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"; }
user() { inside su - shop -c "$1"; }
ok() { echo "ok  $*"; }
fail() { echo "test:deb: $*" >&2; exit 1; }
expect() { grep -- "$1" >/dev/null || fail "expected: $1"; }

debootstrap --variant=minbase bookworm "$root" >/dev/null
mount -t proc proc "$root/proc"
apt() { inside apt-get -qy "$@" > "$root/apt.log" 2>&1 || fail "apt-get $*: $(tail -5 "$root/apt.log")"; }
apt update
inside useradd --create-home --shell /bin/bash shop
inside sh -c 'command -v node npm' && fail 'this Debian is not bare'
ok 'a bare Debian 12, without Node'

install() { cp "$deb" "$root/root/"; apt install --no-install-recommends "$@" "/root/$(basename "$deb")"; }
install
user 'plugmark --version' | expect "$(dpkg-deb -f "$deb" Version)"
ok "apt install ./$(basename "$deb")"

user 'plugmark doctor --json' > "$root/doctor.json" || fail "doctor: $(cat "$root/doctor.json")"
expect '"name": *"database"' < "$root/doctor.json"
grep -q 'not installed' "$root/doctor.json" && fail 'the Bluetooth part is missing'
ok 'plugmark doctor: Node, SQLite and the Bluetooth part are there'
job() {
  user 'plugmark demo --fast' > "$root/demo.txt"
  grep -q 'without Bluetooth' "$root/demo.txt" && fail 'the demo went without Bluetooth'
  user 'for r in plugmark-demo/*.record.json; do plugmark verify --trust plugmark-demo/trusted-keys.json "$r" || test $? = 1 || exit 1; done' |
    expect 'Authentic and complete, but NOT PROVEN'
}
job
ok 'plugmark demo --fast; the record is authentic and complete'

inside sh -c 'zcat /usr/share/man/man1/plugmark.1.gz' | expect '^\.TH'
for file in bash-completion/completions/plugmark zsh/vendor-completions/_plugmark fish/vendor_completions.d/plugmark.fish; do
  test -s "$root/usr/share/$file" || fail "no $file"
done
user '. /usr/share/bash-completion/completions/plugmark && complete -p plugmark' | expect plugmark
ok 'man page, completions for bash, zsh and fish'

rights() { user "/usr/lib/plugmark/$1node -p \"fs.readFileSync('/proc/self/status','utf8').match(/CapEff:\\s*(.*)/)[1]\""; }
[ "$(rights '')" = 0000000000000000 ] || fail 'every user has a right to the adapter'
user '/usr/lib/plugmark/bluetooth/node --version' 2>/dev/null && fail 'the Node with rights can be started by everybody'
inside adduser --quiet shop plugmark
[ "$(rights bluetooth/)" = 0000000000003000 ] || fail "a member of the group has the rights $(rights bluetooth/)"
ok 'CAP_NET_RAW and CAP_NET_ADMIN, and no other, for members of the group plugmark; none for others'
job
ok 'plugmark demo --fast as a member of the group, into the same log'

install --reinstall
job
ok 'installed again: the next job goes into the same log'
apt remove plugmark
test ! -e "$root/usr/lib/plugmark" || fail "left behind: $(find "$root/usr/lib/plugmark" | head -3)"
test -s "$root/home/shop/plugmark-demo/station.db" || fail 'the log of the station is gone'
ok 'apt remove leaves nothing of the program, and the station its log'
