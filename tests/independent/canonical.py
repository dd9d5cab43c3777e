"""Canonical JSON (RFC 8785), and a reader that takes nothing that could be read in two ways."""
import json
import math
import re

MAX_DEPTH = 64
MAX_INTEGER = 2**53 - 1
MAX_NUMBER_LENGTH = 40


class Refused(Exception):
    """Something that is not as the form says: where, and why."""

    def __init__(self, place, why):
        super().__init__(f"{place}: {why}")
        self.place = place


def read_json(data, place):
    """The value of one JSON text; what the topic record-format refuses raises Refused."""
    if data.startswith(b"\xef\xbb\xbf"):
        raise Refused(place, "a byte order mark")
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as fault:
        raise Refused(place, f"not UTF-8 at byte {fault.start}") from None
    _check_depth(text, place)

    def number(token):
        value = float(token) if len(token) <= MAX_NUMBER_LENGTH else math.inf
        if abs(value) > MAX_INTEGER:
            raise Refused(place, "a number too large or too long")
        if _digits(token) != _digits(number_text(value)):
            raise Refused(place, f"the number {token} is not held exactly")
        return int(value) if value == int(value) else value

    def constant(token):
        raise Refused(place, f"{token} is no JSON")

    def members(pairs):
        found = {}
        for name, value in pairs:
            if name in found:
                raise Refused(place, f"the name {name!r} twice")
            if name == "__proto__":
                raise Refused(place, "the name __proto__")
            found[name] = value
        return found

    try:
        value = json.loads(text, object_pairs_hook=members, parse_int=number, parse_float=number, parse_constant=constant)
    except (json.JSONDecodeError, RecursionError) as fault:
        raise Refused(place, f"not JSON ({fault})") from None
    if "\\u" in text:
        try:
            canonical(value)
        except UnicodeEncodeError:
            raise Refused(place, "half a surrogate pair") from None
    return value


def read_canonical(data, place):
    """The same, where the text has to be in canonical form as well."""
    value = read_json(data, place)
    if canonical(value) != data:
        raise Refused(place, "not canonical JSON")
    return value


def _check_depth(text, place):
    """Before anything is parsed, so that a bomb costs no more than its length."""
    depth, in_string = 0, False
    for token in re.finditer(r'\\.|["\[\]{}]', text, re.DOTALL):
        sign = token.group()
        if sign == '"':
            in_string = not in_string
        elif in_string or sign.startswith("\\"):
            continue
        elif sign in "[{":
            depth += 1
            if depth > MAX_DEPTH:
                raise Refused(place, f"nested deeper than {MAX_DEPTH}")
        else:
            depth -= 1


def canonical(value):
    """The one sequence of bytes of a value."""
    return _text(value).encode("utf-8")


def _text(value):
    if value is None:
        return "null"
    if value is True:
        return "true"
    if value is False:
        return "false"
    if isinstance(value, str):
        return string_text(value)
    if isinstance(value, (int, float)):
        return number_text(value)
    if isinstance(value, list):
        return "[" + ",".join(map(_text, value)) + "]"
    names = sorted(value, key=lambda name: name.encode("utf-16-be", "surrogatepass"))
    return "{" + ",".join(string_text(name) + ":" + _text(value[name]) for name in names) + "}"


# RFC 8785, 3.2.2.2: what has a short escape, and lower-case hexadecimal for the other control characters.
_SHORT = {'"': '\\"', "\\": "\\\\", "\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f", "\r": "\\r"}
_ESCAPED = re.compile(r'["\\\x00-\x1f]')


def string_text(text):
    return '"' + _ESCAPED.sub(lambda one: _SHORT.get(one.group()) or f"\\u{ord(one.group()):04x}", text) + '"'


def number_text(value):
    """As ECMAScript prints a double: the shortest digits that read back, with an exponent only outside 1e-7 < x < 1e21."""
    value = float(value)
    if value == 0:
        return "0"
    sign = "-" if value < 0 else ""
    mantissa, _, exponent = f"{repr(abs(value))}".partition("e")
    whole, _, fraction = mantissa.partition(".")
    digits = (whole + fraction).lstrip("0")
    point = len(whole) + int(exponent or "0") - (len(whole + fraction) - len(digits))
    digits = digits.rstrip("0")
    count = len(digits)
    if count <= point <= 21:
        return sign + digits + "0" * (point - count)
    if 0 < point <= 21:
        return sign + digits[:point] + "." + digits[point:]
    if -6 < point <= 0:
        return sign + "0." + "0" * -point + digits
    power = f"e{'+' if point > 0 else '-'}{abs(point - 1)}"
    return sign + digits[0] + ("." + digits[1:] if count > 1 else "") + power


def _digits(token):
    """Sign, digits and power of ten: 4.50, 45e-1 and 4.5 are one number; -0 and 0 are not."""
    sign = "-" if token.startswith("-") else ""
    mantissa, _, exponent = token.lstrip("-").lower().partition("e")
    whole, _, fraction = mantissa.partition(".")
    digits = (whole + fraction).lstrip("0")
    if digits == "":
        return (sign, "0", 0)
    significant = digits.rstrip("0")
    return (sign, significant, int(exponent or "0") - len(fraction) + len(digits) - len(significant))
