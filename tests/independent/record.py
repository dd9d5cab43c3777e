"""A job record: its form, who signed it, where it is in the log, and what its entries say."""
from agreement import check_agreement
from beyond import check_record_form
from canonical import Refused, canonical, read_canonical, read_json
from clock import check_clock
from disclosures import check_disclosures, text_at
from jws import check_signature, from_base64url, read_header, thumbprint
from samples import check_samples
from tree import Checkpoint, check_entries, is_consistent
from trust import Station

MAX_BYTES = 32 << 20
MAX_DISCLOSURES = 100_000
BEGINNING = b'{"payload":"'


class NoRecord(Exception):
    """The file is no record at all."""


class Record:
    """What was found. Raises NoRecord, or Refused for a record that is not authentic."""

    def __init__(self, data, schemas, trust, later=None):
        jws = _open(data, schemas)
        self.content = read_canonical(from_base64url(jws["payload"], "payload"), "payload")
        schemas["record"].check(self.content, "payload")
        disclosures = jws["signatures"][0].get("header", {}).get("disclosures", []) if jws["signatures"] else []
        self.texts, self.withheld = check_disclosures(
            self.content, schemas["record"], disclosures, MAX_DISCLOSURES, "payload"
        )
        check_record_form(self.content)
        self.station = _station_of(self.content, self.texts, schemas)
        signed = _check_signatures(jws, schemas, len(self.content["signers"]))
        self._check_signers(signed)
        self.checkpoint = self._check_log()
        self._check_contents()
        self.jumps = check_clock(self.content["entries"], self.content["background"])
        self.complete = is_complete(self.content)
        if _calls_itself_complete(self.content) and not self.complete and not _is_void(self.content):
            raise Refused("contents", "closed as complete, and it is not")
        self.trusted = any(
            header["role"] == "station"
            and self.station.is_trusted(
                header["kid"], header["signedAt"], trust, self._is_in(later, header["kid"], trust)
            )
            for header in signed
        )

    def _check_signers(self, signed):
        content, station = self.content, self.station
        due = [(one["role"], one["kid"]) for one in content["signers"]]
        found = [(header["role"], header["kid"]) for header in signed]
        if found[: len(due)] != due or any(role != "countersigner" for role, _ in found[len(due) :]):
            raise Refused("signatures", "not those that the content announces")
        if len(set(due)) < len(due):
            raise Refused("signatures", "somebody signed twice")
        key = station.key_of(_technician(content["entries"], self.texts))
        for role, kid in due:
            if role == "station" and kid != station.current_kid():
                raise Refused("signatures", "not the key that the station's log names last")
            if role == "technician" and (key is None or kid != thumbprint(key)):
                raise Refused("signatures", "not the key of the technician")
            if kid in station.revoked:
                raise Refused("signatures", "the station's log says that the key was revoked")
        if content["station"] != station.name:
            raise Refused("station", "not the name in the station's log")
        if content["technicianSignature"] != _technician_signature(due, station, key):
            raise Refused("technicianSignature", "not what the log says")

    def _is_in(self, later, kid, trust):
        """Whether a later log begins with that of this record, signed by a key of now that took the place of this one."""
        if later is None or later.checkpoint.origin != self.checkpoint.origin:
            return False
        if not later.checkpoint.is_signed_by_any(trust.heirs_of(kid)):
            return False
        old, now = self.checkpoint, later.checkpoint
        return is_consistent(old.size, old.root, now.size, now.root, later.path)

    def _check_log(self):
        content = self.content
        for i, entry in enumerate(content["entries"]):
            before = content["entries"][i - 1]["seq"] if i > 0 else 0
            if entry["n"] != i + 1 or entry["seq"] <= before or entry["stream"] != f"job:{content['job']}":
                raise Refused(f"entries[{i}]", "the entries of the job are not whole")
        checkpoint = Checkpoint(content["log"]["checkpoint"], "log.checkpoint")
        if checkpoint.origin != self.station.origin:
            raise Refused("log.checkpoint", "of another log")
        [kid] = [one["kid"] for one in content["signers"] if one["role"] == "station"]
        keys = [key for key, _ in self.station.keys]
        if not any(thumbprint(key) == kid for key in checkpoint.signers(keys)):
            raise Refused("log.checkpoint", "not signed by the key of the station")
        leaves = content["background"] + content["entries"]
        check_entries(leaves, checkpoint.size, content["log"]["proof"], checkpoint.root, "log.proof")
        return checkpoint

    def _check_contents(self):
        content = self.content
        events = [entry["event"] for entry in content["entries"]]
        if [event["type"] for event in events].count("job-opened") != 1 or events[0]["type"] != "job-opened":
            raise Refused("entries", "the job was not opened once, at its beginning")
        opened = events[0]
        if opened["order"]["job"] != content["job"]:
            raise Refused("entries", "of another job")
        recorded = {
            entry["event"]["instrument"]["id"]: entry["event"]["instrument"]
            for entry in content["background"]
            if entry["event"]["type"] == "instrument-recorded" and entry["seq"] < content["entries"][0]["seq"]
        }
        for one in opened["instruments"]:
            if one["id"] not in recorded or canonical(recorded[one["id"]]) != canonical(one):
                raise Refused("instruments", f"{one['id']} is not as the station's log has it")
        check_samples(events)
        check_agreement(content, self.texts)
        _check_summary(content["summary"], events)


def _open(data, schemas):
    """The JWS of a file in its one writing."""
    if len(data) > MAX_BYTES:
        raise NoRecord("the file is too large")
    try:
        jws = read_canonical(data[:-1], "file")
        schemas["record-file"].check(jws, "file")
        if data[-1:] != b"\n":
            raise Refused("file", "no line feed at its end")
        if any("header" in one for one in jws["signatures"][1:]):
            raise Refused("file", "disclosures in a later signature")
        return jws
    except Refused as fault:
        if data.startswith(BEGINNING) or _looks_like_jws(data):
            raise
        raise NoRecord(str(fault)) from None


def _looks_like_jws(data):
    for some in (data, data[:-1]):
        try:
            value = read_json(some, "file")
        except Refused:
            continue
        if isinstance(value, dict) and "payload" in value and "signatures" in value:
            return True
    return False


def _check_signatures(jws, schemas, announced):
    """The headers of signatures that hold, in the order of the file. All that are announced hold; others anybody may add."""
    headers = []
    for i, one in enumerate(jws["signatures"]):
        place = f"signatures[{i}]"
        try:
            header, key = read_header(one["protected"], schemas["record-header"], place)
            check_signature(one["protected"], jws["payload"], one["signature"], key, place)
            headers.append(header)
        except Refused:
            if i < announced:
                raise
    return headers


def _station_of(content, texts, schemas):
    background = content["background"]
    for before, entry in zip(background, background[1:]):
        if not 0 < entry["n"] - before["n"] <= entry["seq"] - before["seq"]:
            raise Refused("background", "not in order")
    if background[0]["n"] != 1:
        raise Refused("background", "not from the first entry on")
    return Station(background, texts, schemas["key-statement"])


def _technician(entries, texts):
    """The name; None where it is withheld."""
    name = entries[0]["event"].get("order", {}).get("technician")
    for entry in entries:
        if entry["event"]["type"] == "job-handed-over":
            name = entry["event"]["to"]
    if name is None:
        raise Refused("entries", "they do not begin with the opening of a job")
    return text_at(name, texts)


def _technician_signature(due, station, key):
    if any(role == "technician" for role, _ in due):
        return "given"
    if station.technicians == "do-not-sign":
        return "shop-does-without"
    return "no-key" if key is None else "not-given"


def _check_summary(summary, events):
    """What of it needs no rules: its cylinders, its closing, and that each verdict is one of an entry of that cylinder."""
    service_order = sorted(events[0]["order"]["engine"]["serviceOrder"])
    if [one["cylinder"] for one in summary["cylinders"]] != service_order:
        raise Refused("summary", "not the cylinders of the order")
    closed = [event for event in events if event["type"] == "job-closed"]
    void = any(event["type"] == "job-voided" for event in events)
    complete = closed[-1]["complete"] if closed and not void else False
    if (summary["closed"] is None) != (not closed and not void):
        raise Refused("summary.closed", "not as the entries have it")
    if summary["closed"] is not None and summary["closed"]["complete"] != complete:
        raise Refused("summary.closed", "not as the entries have it")
    kinds = {"gap-measured": "gap", "pull-placed": "torque"}
    verdicts = {
        (kinds[event["type"]], event["cylinder"], canonical(event["judgement"]))
        for event in events
        if event["type"] in kinds and event["judgement"] is not None
    }
    for one in summary["cylinders"]:
        for quantity in ("gap", "torque"):
            judgement = one[quantity]["judgement"]
            if judgement is not None and (quantity, one["cylinder"], canonical(judgement)) not in verdicts:
                raise Refused(f"summary.cylinders.{quantity}", "a verdict that no entry of the cylinder has")


def _is_void(content):
    return any(entry["event"]["type"] == "job-voided" for entry in content["entries"])


def _calls_itself_complete(content):
    closed = [entry["event"] for entry in content["entries"] if entry["event"]["type"] == "job-closed"]
    return bool(closed) and closed[-1]["complete"]


def is_complete(content):
    """By the summary, which only judging again can prove."""
    summary = content["summary"]
    gaps = content["entries"][0]["event"]["gapWindow"] is not None
    return (
        _calls_itself_complete(content)
        and not _is_void(content)
        and summary["openQuestions"] == 0
        and all(
            (_is_ok(one["torque"]) or one["torque"]["state"] == "settled") and (not gaps or _is_ok(one["gap"]))
            for one in summary["cylinders"]
        )
    )


def _is_ok(quantity):
    return quantity["judgement"] is not None and quantity["judgement"]["result"] == "OK"
