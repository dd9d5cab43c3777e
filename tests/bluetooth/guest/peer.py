#!/usr/bin/python3
"""One tool on bluetoothd: an Industrial Measurement Device with Device Information, told what to do line by line.

usage: peer.py ADAPTER torque|length NAME SERIAL [encrypt]
Reads JSON lines: {"do":"advertise"}, {"do":"hide"}, {"do":"send","counts":[...],"everyMs":10}, {"do":"drop"},
{"do":"power","on":false}. Writes JSON lines: ready, subscribed, unsubscribed, sent, done.
"""
import json
import struct
import sys
import time

import dbus
import dbus.mainloop.glib
import dbus.service
from gi.repository import GLib

ADAPTER, QUANTITY, NAME, SERIAL = sys.argv[1:5]
ENCRYPT = "encrypt" in sys.argv[5:]
PATH = "/org/bluez/" + ADAPTER
PROPERTIES = "org.freedesktop.DBus.Properties"
SERVICE, CHARACTERISTIC, DESCRIPTOR = (f"org.bluez.Gatt{kind}1" for kind in ("Service", "Characteristic", "Descriptor"))
TORQUE = QUANTITY == "torque"

dbus.mainloop.glib.DBusGMainLoop(set_as_default=True)
bus = dbus.SystemBus()
loop = GLib.MainLoop()


def say(what, **more):
    print(json.dumps({"say": what, **more}), flush=True)


def uuid(short):
    return f"0000{short}-0000-1000-8000-00805f9b34fb"


def bytes_of(value):
    return dbus.Array(value, signature="y")


class Node(dbus.service.Object):
    def __init__(self, path, interface, properties, value=b""):
        self.path, self.interface, self.properties, self.value = path, interface, properties, value
        super().__init__(bus, path)
        nodes.append(self)

    @dbus.service.method(PROPERTIES, in_signature="s", out_signature="a{sv}")
    def GetAll(self, _interface):
        return self.properties

    @dbus.service.signal(PROPERTIES, signature="sa{sv}as")
    def PropertiesChanged(self, interface, changed, invalidated):
        pass

    @dbus.service.method(CHARACTERISTIC, in_signature="a{sv}", out_signature="ay")
    def ReadValue(self, _options):
        return bytes_of(self.value)

    @dbus.service.method(CHARACTERISTIC)
    def StartNotify(self):
        say("subscribed")

    @dbus.service.method(CHARACTERISTIC)
    def StopNotify(self):
        say("unsubscribed")


class Descriptor(Node):
    @dbus.service.method(DESCRIPTOR, in_signature="a{sv}", out_signature="ay")
    def ReadValue(self, _options):
        return bytes_of(self.value)


class Root(dbus.service.Object):
    @dbus.service.method("org.freedesktop.DBus.ObjectManager", out_signature="a{oa{sa{sv}}}")
    def GetManagedObjects(self):
        return {node.path: {node.interface: node.properties} for node in nodes}


class Advertisement(dbus.service.Object):
    def __init__(self):
        super().__init__(bus, "/advertisement")

    @dbus.service.method(PROPERTIES, in_signature="s", out_signature="a{sv}")
    def GetAll(self, _interface):
        return {
            "Type": "peripheral",
            "ServiceUUIDs": dbus.Array([uuid("185a")], signature="s"),
            "LocalName": NAME,
            "Appearance": dbus.UInt16(0x14C8 if TORQUE else 0x1482),
        }

    @dbus.service.method("org.bluez.LEAdvertisement1")
    def Release(self):
        say("advertisement-released")


class Agent(dbus.service.Object):
    """Says yes to every pairing, as a tool without keys and display does."""

    @dbus.service.method("org.bluez.Agent1", in_signature="o")
    def RequestAuthorization(self, _device):
        say("paired")

    @dbus.service.method("org.bluez.Agent1", in_signature="ou")
    def RequestConfirmation(self, _device, _passkey):
        say("paired")

    @dbus.service.method("org.bluez.Agent1")
    def Release(self):
        pass

    @dbus.service.method("org.bluez.Agent1")
    def Cancel(self):
        say("pairing-cancelled")


nodes = []


def service(path, short):
    Node(path, SERVICE, {"UUID": uuid(short), "Primary": dbus.Boolean(True)})


def characteristic(path, short, flags, value=b""):
    properties = {
        "UUID": uuid(short),
        "Service": dbus.ObjectPath(path.rsplit("/", 1)[0]),
        "Flags": dbus.Array(flags, signature="s"),
    }
    return Node(path, CHARACTERISTIC, properties, value)


def descriptor(path, short, value):
    properties = {
        "UUID": uuid(short),
        "Characteristic": dbus.ObjectPath(path.rsplit("/", 1)[0]),
        "Flags": dbus.Array(["read"], signature="s"),
    }
    Descriptor(path, DESCRIPTOR, properties, value)


service("/measure", "185a")
measurement = characteristic("/measure/value", "2c0b" if TORQUE else "2c0a", ["notify"])
# Layouts as in the Bluetooth SIG's definitions: sint32, 10^-2 N.m; uint32, 10^-7 m; 0.1 % steps of uncertainty.
descriptor("/measure/value/format", "2904", bytes.fromhex("10FE4127010000" if TORQUE else "08F90127010000"))
descriptor("/measure/value/range", "2906", struct.pack("<ii", -6000, 6000) if TORQUE else struct.pack("<II", 2000, 20000))
descriptor("/measure/value/about", "2912", bytes.fromhex("250001" + "0A0000" + "14"))
service("/about", "180a")
read = ["encrypt-read"] if ENCRYPT else ["read"]
characteristic("/about/maker", "2a29", ["read"], b"Peer")
characteristic("/about/model", "2a24", ["read"], QUANTITY.encode())
characteristic("/about/serial", "2a25", read, SERIAL.encode())

root, advertisement = Root(bus, "/"), Advertisement()
adapter = bus.get_object("org.bluez", PATH)
properties = dbus.Interface(adapter, PROPERTIES)
gatt = dbus.Interface(adapter, "org.bluez.GattManager1")
advertising = dbus.Interface(adapter, "org.bluez.LEAdvertisingManager1")


def answer(what):
    return {
        "reply_handler": lambda *_: say("done", did=what),
        "error_handler": lambda error: say("done", did=what, error=str(error)),
    }


def send(counts, every_ms):
    """At a steady mean rate, catching up when a timer comes late."""
    start, at = time.monotonic(), 0

    def tick():
        nonlocal at
        due = min(len(counts), int((time.monotonic() - start) * 1000 / every_ms) + 1)
        while at < due:
            value = struct.pack("<i" if TORQUE else "<I", counts[at])
            measurement.PropertiesChanged(CHARACTERISTIC, {"Value": bytes_of(value)}, [])
            at += 1
        if at < len(counts):
            return True
        say("sent", count=at)
        return False

    GLib.timeout_add(max(1, every_ms // 2), tick)


def drop():
    manager = dbus.Interface(bus.get_object("org.bluez", "/"), "org.freedesktop.DBus.ObjectManager")
    for path, interfaces in manager.GetManagedObjects().items():
        device = interfaces.get("org.bluez.Device1")
        if device is not None and path.startswith(PATH + "/") and device["Connected"]:
            dbus.Interface(bus.get_object("org.bluez", path), "org.bluez.Device1").Disconnect(**answer("drop"))
            return
    say("done", did="drop", error="not connected")


def act(order):
    do = order["do"]
    if do == "advertise":
        advertising.RegisterAdvertisement("/advertisement", {}, **answer(do))
    elif do == "hide":
        advertising.UnregisterAdvertisement("/advertisement", **answer(do))
    elif do == "send":
        send(order["counts"], order["everyMs"])
    elif do == "drop":
        drop()
    elif do == "power":
        properties.Set("org.bluez.Adapter1", "Powered", dbus.Boolean(order["on"]))
        say("done", did=do)


def on_line(source, _condition):
    line = source.readline()
    if line == "":
        loop.quit()
        return False
    act(json.loads(line))
    return True


if ENCRYPT:
    agent = Agent(bus, "/agent")
    agents = dbus.Interface(bus.get_object("org.bluez", "/org/bluez"), "org.bluez.AgentManager1")
    agents.RegisterAgent("/agent", "NoInputNoOutput")
    agents.RequestDefaultAgent("/agent")
properties.Set("org.bluez.Adapter1", "Powered", dbus.Boolean(True))
address = str(properties.Get("org.bluez.Adapter1", "Address")).lower()
gatt.RegisterApplication(
    "/",
    {},
    reply_handler=lambda: say("ready", address=address),
    error_handler=lambda error: (say("failed", error=str(error)), loop.quit()),
)
GLib.io_add_watch(sys.stdin, GLib.IO_IN | GLib.IO_HUP, on_line)
loop.run()
