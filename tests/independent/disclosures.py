"""Personal texts beside what is signed: the narrow form of SD-JWT (RFC 9901) that the topic record-format describes."""
import hashlib
import re

from canonical import Refused, read_canonical
from jws import from_base64url, to_base64url
from schema import Schema

MAX_LENGTH = 5000
MIN_SALT = 22
_DIGEST = re.compile(r"[A-Za-z0-9_-]{43}")


def read_disclosures(disclosures, most, place):
    """Digest -> text. Refused where one is not of the form, or there twice."""
    if len(disclosures) > most:
        raise Refused(place, f"more than {most}")
    texts = {}
    for i, disclosure in enumerate(disclosures):
        where = f"{place}[{i}]"
        if len(disclosure) > MAX_LENGTH:
            raise Refused(where, f"longer than {MAX_LENGTH} characters")
        one = read_canonical(from_base64url(disclosure, where), where)
        if not isinstance(one, list) or len(one) != 3 or not all(isinstance(part, str) for part in one):
            raise Refused(where, "expected salt, name and text")
        salt, name, text = one
        from_base64url(salt, where)
        if len(salt) < MIN_SALT:
            raise Refused(where, "a salt of less than 128 bits")
        if name != "value":
            raise Refused(where, "a name other than value")
        digest = to_base64url(hashlib.sha256(disclosure.encode("ascii")).digest())
        if digest in texts:
            raise Refused(where, "twice")
        texts[digest] = text
    return texts


def check_disclosures(value, schema, disclosures, most, place):
    """
    Holds disclosures against what is signed, which was checked by its schema: each text is of the form there. Gives digest -> text, and
    how many texts of each kind are withheld.
    """
    texts = read_disclosures(disclosures, most, f"{place}: disclosures")
    _check_digests(value, place)
    withheld, used = {}, set()
    for digest, form, fixed in schema.texts(value):
        if digest in used:
            raise Refused(place, f"the digest {digest} twice")
        used.add(digest)
        if digest in texts:
            Schema(form).check(texts[digest], f"{place}: the text of {digest}")
            if texts[digest] in fixed:
                raise Refused(place, "a word that is fixed, and stays in the open, is concealed")
        else:
            withheld[form["title"]] = withheld.get(form["title"], 0) + 1
    unused = [digest for digest in texts if digest not in used]
    if unused:
        raise Refused(place, "a disclosure that belongs to nothing in the content")
    return texts, withheld


def _check_digests(value, place):
    """`_sd` and `...` in no other form, wherever they are: the schema allows them nowhere else either."""
    if isinstance(value, list):
        for one in value:
            _check_digests(one, place)
    elif isinstance(value, dict):
        if "..." in value:
            raise Refused(place, "an element of a list is concealed")
        if "_sd" in value:
            digests = value["_sd"]
            if len(value) != 1 or not isinstance(digests, list) or len(digests) != 1:
                raise Refused(place, "expected _sd alone, with one digest")
            if not isinstance(digests[0], str) or _DIGEST.fullmatch(digests[0]) is None:
                raise Refused(place, "expected a digest of SHA-256")
            return
        for one in value.values():
            _check_digests(one, place)


def text_at(value, texts):
    """The text in a place; None where it is withheld. Words that are not concealed are themselves."""
    return value if isinstance(value, str) else texts.get(value["_sd"][0])
