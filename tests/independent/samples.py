"""The compact coding of samples."""
from canonical import Refused
from jws import from_base64

MAX_INTEGER = 2**53 - 1


def decode(event, place):
    """Times in microseconds and counts; the angles, where there are any, only have to be readable."""
    if "angles" in event:
        _integers(event["angles"], event["count"], f"{place}.angles")
    steps = _integers(event["times"], event["count"] - 1, f"{place}.times")
    differences = _integers(event["counts"], event["count"], f"{place}.counts")
    times, step = [event["startUs"]], 0
    for change in steps:
        step += change
        if step < 0:
            raise Refused(f"{place}.times", "a sample before the one in front of it")
        times.append(times[-1] + step)
    counts, count = [], 0
    for difference in differences:
        count += difference
        counts.append(count)
    return times, counts


def _integers(text, due, place):
    data = from_base64(text, place)
    found, value, shift = [], 0, 0
    for byte in data:
        value |= (byte & 127) << shift
        shift += 7
        if value > MAX_INTEGER or shift > 63:
            raise Refused(place, "an integer that is too large")
        if byte < 128:
            if byte == 0 and shift > 7:
                raise Refused(place, "not the shortest form")
            found.append(-(value + 1) // 2 if value & 1 else value // 2)
            value, shift = 0, 0
    if shift or len(found) != due:
        raise Refused(place, f"expected {due} integers")
    return found


def check_samples(events):
    """Every batch can be read."""
    for i, event in enumerate(events):
        if event["type"] == "readings":
            decode(event, f"entries[{i}].event")
