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
    if old_size > size:
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


# White space as the form means it, and "+": neither may be in a name.
_NAME = r"[^\s\ufeff+]{1,200}"
_NOTE = re.compile(
    rf"(({_NAME})\n(0|[1-9][0-9]{{0,15}})\n([A-Za-z0-9+/]{{43}}=)\n)\n((?:\u2014 {_NAME} [A-Za-z0-9+/=]{{1,400}}\n){{1,16}})"
)


class Checkpoint:
    """A checkpoint as read; its signatures have not been looked at."""

    def __init__(self, note, place):
        found = _NOTE.fullmatch(note)
        if found is None or int(found[3]) > 2**53 - 1:
            raise Refused(place, "not of the form of a checkpoint")
        self.text, self.origin, size, root, lines = found.groups()
        self.size = int(size)
        self.root = from_base64(root, place)
        self.signatures = []
        for line in lines.rstrip("\n").split("\n"):
            _, name, blob = line.split(" ")
            data = from_base64(blob, place)
            if len(data) < 5:
                raise Refused(place, "a signature that is too short")
            self.signatures.append((name, data[:4], data[4:]))

    def is_signed_by(self, jwk):
        key = public_key(jwk, "checkpoint")
        key_hash = hashlib.sha256(self.origin.encode() + b"\n\x01" + key).digest()[:4]
        return any(
            name == self.origin and hash_ == key_hash and signature_holds(self.text.encode(), signature, key)
            for name, hash_, signature in self.signatures
        )


def origin_of(first_key):
    return f"plugmark/log/{thumbprint(first_key)}"
