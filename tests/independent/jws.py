"""Base64url, Ed25519 keys and signatures, and their names (RFC 7515, 7638, 8032, 8037, 9864)."""
import base64
import binascii
import hashlib

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

from canonical import Refused, canonical, read_canonical

FIELD = 2**255 - 19
ORDER = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, -1, FIELD) % FIELD


def from_base64url(text, place):
    """The bytes; Refused for any text that is not the one writing of its bytes."""
    try:
        data = base64.b64decode(text.encode("ascii").translate(_TO_PLAIN) + b"=" * (-len(text) % 4), validate=True)
    except (binascii.Error, UnicodeEncodeError):
        raise Refused(place, "not base64url") from None
    if to_base64url(data) != text:
        raise Refused(place, "not the one base64url of its bytes")
    return data


# Plain base64 signs turn into something that no decoder takes, so that only those of base64url are left.
_TO_PLAIN = bytes.maketrans(b"-_+/", b"+/!!")


def to_base64url(data):
    return base64.urlsafe_b64encode(data).rstrip(b"=").decode("ascii")


def from_base64(text, place):
    try:
        data = base64.b64decode(text.encode("ascii"), validate=True)
    except (binascii.Error, UnicodeEncodeError):
        raise Refused(place, "not base64") from None
    if base64.b64encode(data).decode("ascii") != text:
        raise Refused(place, "not the one base64 of its bytes")
    return data


def thumbprint(jwk):
    """RFC 7638, 3: SHA-256 over the required members in canonical form."""
    return to_base64url(hashlib.sha256(canonical({name: jwk[name] for name in ("crv", "kty", "x")})).digest())


def public_key(jwk, place):
    """The 32 bytes of a key; Refused where they are no writing of a point, or one of small order."""
    data = from_base64url(jwk["x"], place)
    if len(data) != 32:
        raise Refused(place, "a key has 32 bytes")
    y = int.from_bytes(data, "little") & (2**255 - 1)
    if y >= FIELD:
        raise Refused(place, "a point in another writing")
    if is_small_order(y):
        raise Refused(place, "a point of small order, which is nobody's key")
    return data


def is_small_order(y):
    """Whether a point with this y, doubled three times, is the neutral one. Worked out, not looked up in a list."""
    y2 = y * y % FIELD
    x2 = (y2 - 1) * pow(D * y2 + 1, -1, FIELD) % FIELD
    for _ in range(3):
        # Only squares are needed: x and its sign play no part in the order.
        product = D * x2 * y2 % FIELD
        if (1 - product) % FIELD == 0 or (1 + product) % FIELD == 0:
            return False
        x2, y = (
            4 * x2 * y2 * pow((1 + product) ** 2, -1, FIELD) % FIELD,
            (y2 + x2) * pow(1 - product, -1, FIELD) % FIELD,
        )
        y2 = y * y % FIELD
    return x2 == 0 and y == 1


def signature_holds(message, signature, key):
    """Ed25519 as RFC 8032, 5.1.7 has it: 64 bytes, S below the order of the group."""
    if len(signature) != 64 or int.from_bytes(signature[32:], "little") >= ORDER:
        return False
    try:
        Ed25519PublicKey.from_public_bytes(key).verify(signature, message)
    except (InvalidSignature, ValueError):
        return False
    return True


def read_header(text, schema, place):
    """A protected header, canonical and of its form, with the key that its `kid` names."""
    header = read_canonical(from_base64url(text, place), place)
    schema.check(header, place)
    key = public_key(header["jwk"], place)
    if header["kid"] != thumbprint(header["jwk"]):
        raise Refused(place, "kid is not the thumbprint of the key")
    return header, key


def check_signature(head, payload, signature, key, place):
    """RFC 7515, 5.2: over both in base64url, with a dot between them."""
    data = from_base64url(signature, place)
    if not signature_holds(f"{head}.{payload}".encode("ascii"), data, key):
        raise Refused(place, "the signature does not belong to this content")


def statement_of(text, old_jwk, schema):
    """What a key says of the one that follows it (key-rotated): None where it is not by that key or not of its form."""
    try:
        head, payload, signature = text.split(".")
        header = read_canonical(from_base64url(head, "statement"), "statement")
        said = read_canonical(from_base64url(payload, "statement"), "statement")
        schema.check(said, "statement")
        if header != {"alg": "Ed25519", "kid": thumbprint(old_jwk), "typ": "plugmark-succession+json"}:
            return None
        public_key(said["next"], "statement")
        check_signature(head, payload, signature, public_key(old_jwk, "statement"), "statement")
    except (Refused, ValueError):
        return None
    return said
