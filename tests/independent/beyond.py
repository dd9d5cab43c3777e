"""What the topic record-format asks of a record beyond its JSON Schema."""
import math

from canonical import Refused
from jws import public_key

MAX_ATTEMPTS = 4000
ATTEMPTS = {"gap-measured", "pull-detected", "pull-placed"}


def check_record_form(record):
    if [one["role"] for one in record["signers"]].count("station") != 1:
        raise Refused("signers", "exactly one is the station")
    if sum(entry["event"]["type"] in ATTEMPTS for entry in record["entries"]) > MAX_ATTEMPTS:
        raise Refused("entries", f"more than {MAX_ATTEMPTS} attempts")
    for name in ("background", "entries"):
        for i, entry in enumerate(record[name]):
            check_event(entry["event"], f"{name}[{i}].event")


def check_event(event, place):
    """Work order, instruments, certificates, routine and keys, wherever in an event they are."""
    _walk(event, place)
    if event["type"] == "job-opened":
        _check_engine(event["order"]["engine"], f"{place}.order.engine")


def _walk(value, place):
    if isinstance(value, list):
        for i, one in enumerate(value):
            _walk(one, f"{place}[{i}]")
    elif isinstance(value, dict):
        _check_object(value, place)
        for name, one in value.items():
            _walk(one, f"{place}.{name}")


def _check_object(value, place):
    if value.get("kty") == "OKP":
        public_key(value, place)
    if "resolution" in value and "basis" in value:
        _check_instrument(value, place)
    if "laboratory" in value and len({point["reading"] for point in value["points"]}) < len(value["points"]):
        raise Refused(f"{place}.points", "a reading twice")
    if "armMm" in value and "within" in value:
        lever = value["armMm"] + value["offsetMm"] * math.cos(value["angleDeg"] * math.pi / 180)
        if lever <= 0:
            raise Refused(place, "an adapter without a lever")
    if "beforeRemoval" in value:
        items = [item["id"] for name in ("beforeRemoval", "fitting", "afterwards") for item in value[name]]
        if len(set(items)) < len(items):
            raise Refused(place, "an item of the routine twice")


def _check_instrument(value, place):
    span = value.get("range")
    if span is not None and span["from"] >= span["to"]:
        raise Refused(f"{place}.range", "expected the lower end first")
    spread = value.get("repeatability")
    if spread is not None and len(set(spread["readings"])) < 2:
        raise Refused(f"{place}.repeatability", "all readings are the same")


def _check_engine(engine, place):
    numbers = sorted(number for bank in engine["banks"] for number in bank)
    plugs = engine.get("plugs")
    if len(set(numbers)) < len(numbers):
        raise Refused(f"{place}.banks", "a number twice")
    if sorted(engine["serviceOrder"]) != numbers:
        raise Refused(f"{place}.serviceOrder", "not just the numbers of banks")
    if plugs is not None and sorted(number for one in plugs for number in one["plugs"]) != numbers:
        raise Refused(f"{place}.plugs", "not just the numbers of banks")
    cylinders = numbers if plugs is None else sorted(one["cylinder"] for one in plugs)
    if len(set(cylinders)) < len(cylinders):
        raise Refused(f"{place}.plugs", "a cylinder twice")
    firing = engine.get("firingOrder")
    if firing is not None and (sorted(firing) != cylinders or firing[0] != cylinders[0]):
        raise Refused(f"{place}.firingOrder", "not just the cylinders, the lowest first")
