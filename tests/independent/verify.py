"""
Verifies records and packages. Written from the manual (record-format, package-format) and the printed schemas alone, so that it
shows whether they say enough.

    plugmark schema NAME > schemas/NAME.json        for each name below
    python3 verify.py schemas trusted-keys.json RECORD-OR-PACKAGE...

Prints one line of JSON for each: verdict, trusted, complete, withheld, jumps of the wall clock, and why it was refused. Judges nothing
again: whether samples give the pulls and the verdicts that the entries say, only the rules can tell.
"""
import json
import os
import sys

from canonical import Refused
from package import NoPackage, Package, is_package
from record import NoRecord, Record
from schema import Schema
from trust import TrustList

NAMES = (
    "record-file record-header record key-statement trust-list "
    "package-index package-header package-proofs package-station"
).split()


def verdict_on(path, schemas, trust):
    try:
        if os.path.isdir(path):
            if not is_package(path):
                raise NoPackage("no index")
            found = Package(path, schemas, trust)
        else:
            with open(path, "rb") as file:
                found = Record(file.read(), schemas, trust)
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


def main(folder, trust_file, *paths):
    schemas = {}
    for name in NAMES:
        with open(os.path.join(folder, f"{name}.json"), encoding="utf-8") as file:
            schemas[name] = Schema(json.load(file))
    with open(trust_file, "rb") as file:
        trust = TrustList(file.read(), schemas["trust-list"])
    for path in paths:
        print(json.dumps({"path": path, **verdict_on(path, schemas, trust)}), flush=True)


if __name__ == "__main__":
    if len(sys.argv) < 4:
        sys.exit(__doc__)
    main(*sys.argv[1:])
