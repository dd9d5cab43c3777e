"""
Verifies records and packages. Written from the manual (record-format, package-format) and the printed schemas alone, so that it
shows whether they say enough.

    plugmark schema NAME > schemas/NAME.json        for each name below
    python3 verify.py [--kept CHECKPOINT] schemas trusted-keys.json RECORD-OR-PACKAGE...

Prints one line of JSON for each: verdict, trusted, complete, withheld, jumps of the wall clock, and why it was refused. Judges nothing
again: whether samples give the pulls and the verdicts that the entries say, only the rules can tell.
"""
import argparse
import json
import os

from canonical import Refused, read_json
from package import NoPackage, Package, is_package
from record import NoRecord, Record
from schema import Schema
from tree import Checkpoint, Later
from trust import TrustList

NAMES = (
    "record-file record-header record key-statement trust-list consistency "
    "package-index package-header package-proofs package-station"
).split()


def verdict_on(path, schemas, trust, kept):
    try:
        if os.path.isdir(path):
            if not is_package(path):
                raise NoPackage("no index")
            found = Package(path, schemas, trust, kept)
        else:
            with open(path, "rb") as file:
                found = Record(file.read(), schemas, trust, later_beside(path, schemas))
    except (NoRecord, NoPackage) as fault:
        return {"verdict": "unreadable", "why": str(fault)}
    except Refused as fault:
        return {"verdict": "not authentic", "why": str(fault)}
    return {
        "verdict": "authentic",
        "trusted": found.trusted,
        "complete": getattr(found, "complete", None),
        "withheld": found.withheld,
        "jumps": getattr(found, "jumps", None),
    }


def later_beside(path, schemas):
    """The proof beside a record whose key has ended; one that cannot be read proves nothing."""
    if not os.path.isfile(path + ".proof"):
        return None
    with open(path + ".proof", "rb") as file:
        try:
            content = read_json(file.read(), "proof")
            schemas["consistency"].check(content, "proof")
            return Later(content)
        except Refused:
            return None


def main():
    options = argparse.ArgumentParser(description="Verifies records and packages.")
    options.add_argument("--kept", help="the checkpoint that you kept, for packages")
    options.add_argument("schemas", help="folder of the printed schemas")
    options.add_argument("trust", help="your trust list")
    options.add_argument("paths", nargs="+", help="records and folders of packages")
    given = options.parse_args()
    schemas = {}
    for name in NAMES:
        with open(os.path.join(given.schemas, f"{name}.json"), encoding="utf-8") as file:
            schemas[name] = Schema(json.load(file))
    with open(given.trust, "rb") as file:
        trust = TrustList(file.read(), schemas["trust-list"])
    kept = None
    if given.kept is not None:
        with open(given.kept, encoding="utf-8", newline="") as file:
            kept = Checkpoint(file.read(), given.kept)
    for path in given.paths:
        print(json.dumps({"path": path, **verdict_on(path, schemas, trust, kept)}), flush=True)


if __name__ == "__main__":
    main()
