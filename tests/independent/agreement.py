"""What stands twice in a record is the same in both places."""
from canonical import Refused, canonical
from disclosures import text_at

BY_TECHNICIAN = set(
    "technician-at-work trial-click-skipped job-opened job-closed gap-kept cylinder-chosen cylinder-restarted cylinder-left-out gap-inspected wire-tried plug-scrapped "
    "pull-given pull-accepted question-answered windows-confirmed steps-attested old-plugs-read new-plugs-checked "
    "fitted-by-angle taken-back job-handed-over".split()
)
BY_NAME = {"instrument-overridden", "job-voided"}


def check_agreement(content, texts):
    opening = content["entries"][0]
    opened = opening["event"]
    if opened["basis"]["on"] != opening["at"][:10]:
        raise Refused("basis", "of another day than the opening")
    figures = canonical(without_names(opened["order"]["specification"]))
    if not any(
        entry["event"]["type"] == "specification-recorded"
        and entry["seq"] < opening["seq"]
        and canonical(without_names(entry["event"]["specification"])) == figures
        for entry in content["background"]
    ):
        raise Refused("specification", "not as the station's log has it")
    instruments = {one["id"]: one for one in opened["instruments"]}
    for i, entry in enumerate(content["entries"]):
        _check_writer(entry, texts, f"entries[{i}].by")
        if entry["event"]["type"] == "tool-linked":
            _check_tool(entry["event"], instruments, f"entries[{i}].event")


def without_names(specification):
    """The figures alone: whoever checked them or set the rule makes no other specification of them."""
    figures = {name: value for name, value in specification.items() if name != "checkedBy"}
    if "reduction" in figures:
        figures["reduction"] = {name: value for name, value in figures["reduction"].items() if name != "setBy"}
    return figures


def _check_writer(entry, texts, place):
    event, by = entry["event"], text_at(entry["by"], texts)
    if event["type"] in BY_NAME:
        due = text_at(event["by"], texts)
        holds = by == due or (None in (by, due) and not isinstance(entry["by"], str))
    else:
        holds = by == ("technician" if event["type"] in BY_TECHNICIAN else "station")
    if not holds:
        raise Refused(place, "not by whom such an entry is")


def _check_tool(event, instruments, place):
    description = event["description"]
    instrument = instruments.get(event["tool"])
    if instrument is None or instrument["quantity"] != description["quantity"]:
        raise Refused(place, "no instrument of the order that measures this")
    over_the_air = description["link"]["kind"] == "bluetooth-le"
    if over_the_air and "serial" in instrument and description.get("serial") != instrument["serial"]:
        raise Refused(place, "another serial number than the instrument")
