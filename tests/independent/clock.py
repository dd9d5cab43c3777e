"""What the two clocks of a job say of one another."""
from canonical import Refused
from samples import decode
from trust import time_of

JUMP_S = 2
NEW_SESSION = {"session-started", "job-handed-over", "job-voided"}


def check_clock(entries, background):
    """`n` of each entry in front of which the wall clock jumped; Refused where the times cannot be true."""
    jumps = []
    before = None
    source = {}
    for entry in entries:
        fresh = before is None or entry["event"]["type"] in NEW_SESSION
        if not fresh and entry["monoUs"] < before["monoUs"]:
            raise Refused(f"entry n={entry['n']}", "the monotonic clock runs back")
        event = entry["event"]
        if event["type"] == "tool-linked":
            source[event["tool"]] = event["source"]
        if source.get(event.get("tool")) != "replayed" and _last_us(event) > entry["monoUs"]:
            raise Refused(f"entry n={entry['n']}", "a reading from after it was written")
        if _is_jump(before, entry, fresh, background):
            jumps.append(entry["n"])
        before = entry
    return jumps


def _last_us(event):
    """When the last reading of an event arrived."""
    if event["type"] == "readings":
        return decode(event, "readings")[0][-1]
    return event.get("atUs", event.get("toUs", 0))


def _is_jump(before, entry, fresh, background):
    at = time_of(entry["at"])
    since = 0 if before is None else before["seq"]
    between = [one for one in background if since < one["seq"] < entry["seq"]]
    if between and at - time_of(between[-1]["at"]) < -JUMP_S:
        return True
    if before is None:
        return False
    wall = at - time_of(before["at"])
    if fresh:
        return wall < -JUMP_S
    # In microseconds, which integers hold exactly.
    return abs(round(wall * 1e6) - (entry["monoUs"] - before["monoUs"])) > JUMP_S * 1_000_000
