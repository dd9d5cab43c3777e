"""A package: its index and who signed it, its files, the log that it is taken from, and its records."""
import hashlib
import os
import stat
import time

from beyond import check_event
from canonical import Refused, read_canonical
from disclosures import check_disclosures
from jws import check_signature, from_base64, read_header, thumbprint, to_base64url
from record import NoRecord, Record
from tree import Checkpoint, check_entries, is_consistent
from trust import Station, time_of

MAX_BYTES = 256 << 20
MAX_NOTE_BYTES = 130_000
MAX_DISCLOSURES = 200_000
OWN = ("index.json", "index.jws")


class NoPackage(Exception):
    """The folder has no index that can be read."""


def is_package(folder):
    return any(os.path.lexists(os.path.join(folder, name)) for name in (*OWN, "proofs.json"))


class Package:
    """What was found. Raises NoPackage, or Refused for a package that is not authentic."""

    def __init__(self, folder, schemas, trust, kept=None):
        self.folder = folder
        try:
            raw = _read(folder, "index.json", MAX_BYTES)
            index = read_canonical(raw, "index.json")
            schemas["package-index"].check(index, "index.json")
            _check_index(index)
        except Refused as fault:
            raise NoPackage(str(fault)) from None
        # A day is no clock that is a little off.
        if time_of(index["at"]) > time.time() + 86_400:
            raise Refused("index.json", "dated ahead of the clock of this computer")
        self._read_log(schemas)
        kid = self._check_signature(raw, schemas)
        _check_files(folder, index["files"])
        self._check_log()
        self._check_kept(index, kept)
        records = [(job, self._record(job, schemas, trust)) for job in index["jobs"]]
        for job, record in records:
            if record.content["job"] != job["job"]:
                raise Refused(job["record"], "of another job than the index says")
            if not self._extends(record.checkpoint):
                raise Refused(job["record"], "not in the log of the package")
        self._check_impacts(index["jobs"])
        # All records are in the log that the newest key signed: it vouches for the keys before it.
        self.trusted = self.station.is_trusted(kid, index["at"], trust) and all(
            record.trusted or self.station.has_key(record.station.current_kid()) for _, record in records
        )
        for _, record in records:
            for kind, count in record.withheld.items():
                self.withheld[kind] = self.withheld.get(kind, 0) + count

    def _read_log(self, schemas):
        folder = self.folder
        self.checkpoint = Checkpoint(_note(folder, "log.checkpoint"), "log.checkpoint")
        self.proofs = read_canonical(_read(folder, "proofs.json", MAX_BYTES), "proofs.json")
        schemas["package-proofs"].check(self.proofs, "proofs.json")
        place = "station-entries.json"
        own = read_canonical(_read(folder, place, MAX_BYTES), place)
        schemas["package-station"].check(own, place)
        self.entries = own["entries"]
        form = schemas["package-station"]
        texts, self.withheld = check_disclosures(
            {"entries": own["entries"], "disclosures": []}, form, own["disclosures"], MAX_DISCLOSURES, place
        )
        for i, entry in enumerate(own["entries"]):
            check_event(entry["event"], f"{place}: entries[{i}]")
        self.station = Station(own["entries"], texts, schemas["key-statement"])

    def _check_signature(self, raw, schemas):
        text = _note(self.folder, "index.jws")
        parts = text.split(".")
        if len(parts) != 3 or parts[1] != "" or not parts[2].endswith("\n"):
            raise Refused("index.jws", "not a detached JWS")
        header, key = read_header(parts[0], schemas["package-header"], "index.jws")
        check_signature(parts[0], to_base64url(raw), parts[2][:-1], key, "index.jws")
        if header["kid"] != self.station.current_kid() or header["kid"] in self.station.revoked:
            raise Refused("index.jws", "not the key of the station")
        return header["kid"]

    def _is_signed(self, checkpoint):
        return checkpoint.is_signed_by_any([key for key, _ in self.station.keys])

    def _check_log(self):
        checkpoint = self.checkpoint
        if checkpoint.origin != self.station.origin or not self._is_signed(checkpoint):
            raise Refused("log.checkpoint", "of another log, or not signed by the station")
        for before, entry in zip(self.entries, self.entries[1:]):
            if entry["seq"] <= before["seq"]:
                raise Refused("station-entries.json", "not in the order of the log")
        proof = self.proofs["station"]
        check_entries(self.entries, checkpoint.size, proof, checkpoint.root, "station-entries.json")

    def _extends(self, older):
        """Whether the log begins with all that the older checkpoint stands for."""
        now = self.checkpoint
        if older.origin != now.origin or not self._is_signed(older):
            return False
        path = []
        if 0 < older.size < now.size:
            proof = next((one for one in self.proofs["consistency"] if one["from"] == older.size), None)
            if proof is None:
                return False
            path = [from_base64(one, "proofs.json") for one in proof["path"]]
        return is_consistent(older.size, older.root, now.size, now.root, path)

    def _check_kept(self, index, kept):
        name = "auditor.checkpoint"
        inside = None
        if any(one["path"] == name for one in index["files"]):
            inside = Checkpoint(_note(self.folder, name), name)
        older = inside if kept is None else kept
        if older is not None and not self._extends(older):
            raise Refused(name, "the log does not begin with what it stands for")

    def _record(self, job, schemas, trust):
        try:
            return Record(_read(self.folder, job["record"], MAX_BYTES), schemas, trust)
        except (Refused, NoRecord) as fault:
            raise Refused(job["record"], str(fault)) from None

    def _check_impacts(self, jobs):
        made, decided = {}, {}
        for entry in self.entries:
            event = entry["event"]
            if event["type"] == "assessment-made":
                made[event["assessment"]] = event["items"]
            if event["type"] == "item-decided":
                decided[event["assessment"], event["job"]] = event["decision"]
        for one in jobs:
            said = [
                {"assessment": name, "sort": item["sort"], "decided": decided.get((name, one["job"]))}
                for name, items in made.items()
                for item in items
                if item["job"] == one["job"]
            ]
            if one["impacts"] != said:
                raise Refused("index.json", f"not what the station's entries say of job {one['job']}")


def _check_index(index):
    paths = [one["path"] for one in index["files"]]
    if len(set(paths)) < len(paths) or any(name in paths for name in OWN):
        raise Refused("index.json", "a file twice, or one that can have no digest")
    named = [path for job in index["jobs"] for path in (job["record"], job["paper"]) if path is not None]
    if len(set(named)) < len(named) or not set(named) <= set(paths):
        raise Refused("index.json", "a file of two jobs, or one that is not there")
    if any(path.startswith("records/") and path not in named for path in paths):
        raise Refused("index.json", "a record of no job")


def _check_files(folder, files):
    there = set()
    for parent, folders, names in os.walk(folder):
        links = [name for name in folders if os.path.islink(os.path.join(parent, name))]
        for name in names + links:
            there.add(os.path.relpath(os.path.join(parent, name), folder).replace(os.sep, "/"))
    listed = {one["path"] for one in files}
    if there - set(OWN) != listed:
        raise Refused("files", f"missing or added: {sorted((there - set(OWN)) ^ listed)[:5]}")
    for one in files:
        data = _read(folder, one["path"], None)
        if len(data) != one["bytes"] or hashlib.sha256(data).hexdigest() != one["sha256"]:
            raise Refused("files", f"{one['path']} was changed")


def _read(folder, path, most):
    file = os.path.join(folder, path)
    try:
        found = os.lstat(file)
    except OSError:
        raise Refused(path, "missing") from None
    if not stat.S_ISREG(found.st_mode) or (most is not None and found.st_size > most):
        raise Refused(path, "no plain file, or too large")
    with open(file, "rb") as handle:
        return handle.read()


def _note(folder, path):
    try:
        return _read(folder, path, MAX_NOTE_BYTES).decode("utf-8")
    except UnicodeDecodeError:
        raise Refused(path, "not UTF-8") from None
