#!/bin/sh
# Runs in the guest over the host's files: a kernel with Bluetooth, virtual controllers, bluetoothd, then the scenario.
word() { sed -n "s/.*$1=\([^ ]*\).*/\1/p" /proc/cmdline; }
project=$(word project) tools=$(word tools) node=$(word node)
export PATH=$(dirname "$node"):/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8
mount -t tmpfs tmpfs /run; mkdir -p /run/out /run/dbus /dev/pts /dev/shm /var/lib/bluetooth /etc/bluetooth /lib/modules
mount -t devpts devpts /dev/pts; mount -t tmpfs tmpfs /dev/shm
mount -t 9p -o trans=virtio,version=9p2000.L,msize=131072,cache=none out /run/out
ln -sf /proc/self/fd /dev/fd; ip link set lo up 2>/dev/null
finish() { echo "$1" > /run/out/status; sync; "$tools/bin/busybox" poweroff -f; sleep 60; }
exec > /run/out/guest.log 2>&1

kernel=$(uname -r)
echo "guest up: $kernel, $(cut -d' ' -f1 /proc/uptime) s"
ln -sfn "$tools/lib/modules/$kernel" "/lib/modules/$kernel"
# The kernel asks for the rest by itself: without a random number generator it has no pairing.
ln -s "$tools/bin/busybox" /run/modprobe; echo /run/modprobe > /proc/sys/kernel/modprobe
for module in bluetooth hci_vhci uhid ecb cmac algif_skcipher algif_hash; do
  "$tools/bin/busybox" modprobe $module || finish 90
done
cp "$tools/etc/dbus-1/system.d/bluetooth.conf" /etc/dbus-1/system.d/
cp "$tools/etc/bluetooth/main.conf" /etc/bluetooth/
dbus-uuidgen --ensure=/etc/machine-id; dbus-daemon --system --fork || finish 91
# Low energy only: with a dual-mode controller noble's scan finds nothing over a raw socket.
"$tools/usr/bin/btvirt" -L -l3 > /run/out/btvirt.log 2>&1 &
echo $! > /run/btvirt.pid
for _ in $(seq 100); do [ -e /sys/class/bluetooth/hci2 ] && break; sleep 0.1; done
[ -e /sys/class/bluetooth/hci2 ] || finish 92
objects() { dbus-send --system --print-reply --dest=org.bluez / org.freedesktop.DBus.ObjectManager.GetManagedObjects; }
"$tools/usr/libexec/bluetooth/bluetoothd" -n > /run/out/bluetoothd.log 2>&1 &
for _ in $(seq 100); do objects 2>/dev/null | grep -q hci2 && break; sleep 0.2; done
echo "bluetoothd up, $(cut -d' ' -f1 /proc/uptime) s"
# Under names of their own, because a user without rights has to reach both, and may not pass the folders above them.
mkdir /project /node; mount --bind "$project" /project; mount --bind "$(dirname "$(dirname "$node")")" /node
cd /project || finish 93
TOOLS=$tools "/node/bin/$(basename "$node")" tests/bluetooth/guest/scenario.mjs
finish $?
