"""The Merkle tree (RFC 9162, 2.1), one proof for many leaves, and checkpoints as signed notes."""
import hashlib
import re

from canonical import Refused, canonical
from jws import from_base64, public_key, signature_holds, thumbprint

EMPTY_ROOT = hashlib.sha256().digest()


def leaf_hash(entry):
    return hashlib.sha256(b"\x00" + canonical(entry)).digest()


def node_hash(left, right):
    return hashlib.sha256(b"\x01" + left + right).digest()


def check_entries(entries, size, proof, root, place):
    """Whether these entries, wherever they are in the log, lead to its root with the proof, and use all of it."""
    leaves = {}
    for entry in entries:
        index = entry["seq"] - 1
        if index in leaves or index >= size:
            raise Refused(place, f"entry {index + 1} twice, or not in a log of {size}")
        leaves[index] = leaf_hash(entry)
    hashes = [from_base64(text, place) for text in proof]
    if any(len(one) != 32 for one in hashes):
        raise Refused(place, "a hash of another length")
    left = iter(hashes)

    def subtree(start, end, indexes):
        if not indexes:
            found = next(left, None)
            if found is None:
                raise Refused(place, "the proof is too short")
            return found
        if end - start == 1:
            return leaves[start]
        middle = start + largest_power_below(end - start)
        one = subtree(start, middle, [index for index in indexes if index < middle])
        return node_hash(one, subtree(middle, end, [index for index in indexes if index >= middle]))

    if not leaves or subtree(0, size, sorted(leaves)) != root or next(left, None) is not None:
        raise Refused(place, "the entries are not in the log that the checkpoint signs")


def largest_power_below(n):
    return 1 << (n - 1).bit_length() - 1


def is_consistent(old_size, old_root, size, root, path):
    """RFC 9162, 2.1.4.2."""
    if old_size > size or (old_size == 0 and old_root != EMPTY_ROOT):
        return False
    if old_size == size:
        return path == [] and old_root == root
    if old_size == 0:
        return path == [] and old_root == EMPTY_ROOT
    path = ([old_root] if old_size & (old_size - 1) == 0 else []) + path
    if not path:
        return False
    fn, sn = old_size - 1, size - 1
    while fn & 1:
        fn, sn = fn >> 1, sn >> 1
    fr = sr = path[0]
    for step in path[1:]:
        if sn == 0:
            return False
        if fn & 1 or fn == sn:
            fr, sr = node_hash(step, fr), node_hash(step, sr)
            while fn and not fn & 1:
                fn, sn = fn >> 1, sn >> 1
        else:
            sr = node_hash(sr, step)
        fn, sn = fn >> 1, sn >> 1
    return sn == 0 and fr == old_root and sr == root


# A name has no white space of any script (Python counts control characters in, which are refused anyway) and no "+".
_SIGNATURE = re.compile(r"\u2014 ([^\s+]+) ([A-Za-z0-9+/]+={0,2})")
_TEXT = re.compile(r"(.+)\n(0|[1-9][0-9]{0,15})\n([A-Za-z0-9+/]{43}=)\n(?:.+\n)*")
_CONTROLS = re.compile(r"[\x00-\x09\x0b-\x1f\ud800-\udfff]")
MAX_NOTE = 128_000
MAX_SIGNATURES = 64


class Checkpoint:
    """A checkpoint as read; its signatures have not been looked at."""

    def __init__(self, note, place):
        text, gap, lines = note.rpartition("\n\n")
        self.text = text + "\n"
        found = _TEXT.fullmatch(self.text)
        # Length as UTF-16 counts it.
        length = len(note.encode("utf-16-le", "surrogatepass")) // 2
        if gap == "" or found is None or _CONTROLS.search(note) or length > MAX_NOTE or int(found[2]) > 2**53 - 1:
            raise Refused(place, "not of the form of a checkpoint")
        self.origin, size, root = found.groups()
        self.size = int(size)
        self.root = from_base64(root, place)
        self.signatures = []
        *lines, end = lines.split("\n")
        if end != "" or not 1 <= len(lines) <= MAX_SIGNATURES:
            raise Refused(place, "no signatures, too many, or no line feed at the end")
        for line in lines:
            signed = _SIGNATURE.fullmatch(line)
            data = b"" if signed is None else from_base64(signed[2], place)
            if len(data) < 5:
                raise Refused(place, "a line that is no signature")
            self.signatures.append((signed[1], data[:4], data[4:]))

    def signers(self, keys):
        """Those of the keys that signed under the name of the log; none where a signature of one of them does not hold."""
        found = []
        for jwk in keys:
            key = public_key(jwk, "checkpoint")
            key_id = hashlib.sha256(self.origin.encode() + b"\n\x01" + key).digest()[:4]
            own = [mark for name, id_, mark in self.signatures if name == self.origin and id_ == key_id]
            if not all(signature_holds(self.text.encode(), mark, key) for mark in own):
                return []
            if own:
                found.append(jwk)
        return found

    def is_signed_by_any(self, keys):
        return self.signers(keys) != []


class Later:
    """A later checkpoint, and the proof that its log begins with an older one."""

    def __init__(self, content):
        self.checkpoint = Checkpoint(content["checkpoint"], "proof")
        self.path = [from_base64(one, "proof") for one in content["path"]]


def origin_of(first_key, domain):
    return f"{domain or 'plugmark'}/log/{thumbprint(first_key)}"
