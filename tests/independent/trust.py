"""The reader's trust list (a JSON Web Key set), and the keys of a station as its own entries tell them."""
import re
import time
from datetime import datetime, timezone

from canonical import Refused, read_json
from jws import public_key, statement_of, thumbprint
from tree import origin_of


def time_of(text):
    """Seconds of an ISO time in UTC; what is finer than a millisecond is cut off."""
    text = re.sub(r"(\.[0-9]{3})[0-9]*", r"\1", text)
    return datetime.fromisoformat(text.replace("Z", "+00:00")).astimezone(timezone.utc).timestamp()


class TrustList:
    def __init__(self, data, schema):
        keys = read_json(data, "trust list")
        schema.check(keys, "trust list")
        self.keys = {}
        for key in keys["keys"]:
            public_key(key, "trust list")
            if key["kid"] != thumbprint(key) or key["kid"] in self.keys:
                raise Refused("trust list", "a kid that is not the thumbprint, or a key twice")
            self.keys[key["kid"]] = key
        followed = [key["follows"] for key in keys["keys"] if "follows" in key]
        if len(set(followed)) < len(followed):
            raise Refused("trust list", "two keys that follow the same one")

    def has_ended(self, kid):
        """Its time is over, it was revoked, or another key on the list took its place."""
        key = self.keys.get(kid, {})
        over = "validUntil" in key and time_of(key["validUntil"]) <= time.time()
        return over or "revoked" in key or any(one.get("follows") == kid for one in self.keys.values())

    def trusts(self, kid, role, signed_at, in_log):
        key = self.keys.get(kid)
        if key is None or key.get("role", role) != role:
            return False
        if "validFrom" in key and time_of(signed_at) < time_of(key["validFrom"]):
            return False
        # Nobody gives a time stamp here: only a later log shows what a key that has ended signed before.
        return in_log or not self.has_ended(kid)

    def heirs_of(self, kid):
        """Stations' keys that took the place of this one, over any number of keys, and have not ended."""
        heirs = []
        while True:
            key = next((one for one in self.keys.values() if one.get("follows") == kid), None)
            if key is None or key in heirs:
                break
            heirs.append(key)
            kid = key["kid"]
        return [key for key in heirs if key.get("role", "station") == "station" and not self.has_ended(key["kid"])]


class Station:
    """Folded from entries of the station's own stream."""

    def __init__(self, entries, texts, statement_schema):
        self.statement_schema = statement_schema
        self.keys, self.revoked, self.people = [], set(), []
        self.name, self.technicians = None, None
        for i, entry in enumerate(entries):
            event = entry["event"]
            kind = event["type"]
            if (kind == "station-set-up") != (i == 0):
                raise Refused("station", "it is set up by the first of its entries, and by no other")
            if kind in ("station-set-up", "station-renamed"):
                self.name = event["station"]
            if kind in ("station-set-up", "key-rotated", "key-replaced"):
                if self.has_key(thumbprint(event["key"])):
                    raise Refused("station", "a key that signed before came back")
                self.keys.append((event["key"], event.get("statement")))
            if kind == "key-revoked":
                self.revoked.add(event["kid"])
            if kind == "person-recorded":
                self.people.append((texts.get(event["person"]["_sd"][0]), event["key"]))
            if kind == "technicians-decided":
                self.technicians = event["technicians"]
        if not self.keys:
            raise Refused("station", "no entries")
        self.origin = origin_of(self.keys[0][0], entries[0]["event"].get("domain"))

    def current_kid(self):
        return thumbprint(self.keys[-1][0])

    def key_of(self, technician):
        """A withheld name counts as any: the entries of a record tell of no other person."""
        for name, key in reversed(self.people):
            if name is None or technician is None or name == technician:
                return key
        return None

    def has_key(self, kid):
        return any(thumbprint(key) == kid for key, _ in self.keys)

    def is_trusted(self, kid, signed_at, trust, in_log=False):
        """By the list itself, or by the key before it, which named it and has not ended."""
        at = next((i for i, (key, _) in enumerate(self.keys) if thumbprint(key) == kid), 0)
        if kid in trust.keys:
            return trust.trusts(kid, "station", signed_at, in_log) and self._is_one_line(at, trust)
        stated = self._statement(at)
        old_kid = thumbprint(self.keys[at - 1][0])
        if stated is None or trust.has_ended(old_kid):
            return False
        return self.is_trusted(old_kid, stated["at"], trust)

    def _is_one_line(self, at, trust):
        """Whether each key of the list that signed before was followed, one by one, up to this one."""
        listed = [i for i in range(at) if thumbprint(self.keys[i][0]) in trust.keys]
        return all(self._is_named(i, trust) for i in range(min(listed, default=at) + 1, at + 1))

    def _is_named(self, at, trust):
        """By `follows` on the list; where no key on the list follows the one before, by that one, if it has not ended."""
        old_kid = thumbprint(self.keys[at - 1][0])
        heir = next((kid for kid, key in trust.keys.items() if key.get("follows") == old_kid), None)
        if heir is not None:
            return heir == thumbprint(self.keys[at][0])
        return not trust.has_ended(old_kid) and self._statement(at) is not None

    def _statement(self, at):
        """What the key before said of this one; None where it said nothing that holds."""
        key, text = self.keys[at]
        if at == 0 or text is None:
            return None
        said = statement_of(text, self.keys[at - 1][0], self.statement_schema)
        if said is None or said["log"] != self.origin or thumbprint(said["next"]) != thumbprint(key):
            return None
        return said
