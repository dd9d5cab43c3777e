"""The part of JSON Schema (draft 2020-12) that the program's own schemas use. Any other keyword is an error here."""
import functools
import math
import re

from canonical import Refused

_TYPES = {
    "object": lambda value: isinstance(value, dict),
    "array": lambda value: isinstance(value, list),
    "string": lambda value: isinstance(value, str),
    "boolean": lambda value: isinstance(value, bool),
    "null": lambda value: value is None,
    "number": lambda value: isinstance(value, (int, float)) and not isinstance(value, bool),
    "integer": lambda value: isinstance(value, (int, float)) and not isinstance(value, bool) and value == int(value),
}
_SAYS_NOTHING = {"$schema", "title", "description", "readOnly", "default", "format", "contentEncoding", "contentSchema"}


@functools.cache
def _compiled(pattern):
    return re.compile(re.sub(r"(?<!\\)\$(?=$|\||\))", r"\\Z", pattern), re.ASCII)


def _matches(pattern, text):
    return _compiled(pattern).search(text) is not None


def _alike(one, other):
    return type(one) is type(other) and one == other


# Each keyword: whether the value is as it asks; it asks nothing of values of other types.
_KEYWORDS = {
    "type": lambda want, value: any(_TYPES[one](value) for one in (want if isinstance(want, list) else [want])),
    "const": lambda want, value: _alike(want, value),
    "enum": lambda want, value: any(_alike(one, value) for one in want),
    "pattern": lambda want, value: not isinstance(value, str) or _matches(want, value),
    "minLength": lambda want, value: not isinstance(value, str) or len(value) >= want,
    "maxLength": lambda want, value: not isinstance(value, str) or len(value) <= want,
    "minItems": lambda want, value: not isinstance(value, list) or len(value) >= want,
    "maxItems": lambda want, value: not isinstance(value, list) or len(value) <= want,
    "minimum": lambda want, value: not _TYPES["number"](value) or value >= want,
    "maximum": lambda want, value: not _TYPES["number"](value) or value <= want,
    "exclusiveMinimum": lambda want, value: not _TYPES["number"](value) or value > want,
    "exclusiveMaximum": lambda want, value: not _TYPES["number"](value) or value < want,
    "multipleOf": lambda want, value: not _TYPES["number"](value) or math.fmod(value, want) == 0,
    "required": lambda want, value: not isinstance(value, dict) or all(name in value for name in want),
}
_NESTED = {"properties", "additionalProperties", "propertyNames", "items", "oneOf", "anyOf", "allOf"}


class Schema:
    """One printed schema."""

    def __init__(self, root):
        self.root = root

    def check(self, value, place):
        """Refused, with the place, for a value that is not of this form."""
        fault = _fault(self.root, value, place)
        if fault is not None:
            raise Refused(*fault)

    def texts(self, value):
        """Every concealed text of a value that was checked: its digest, the schema of the text, and the fixed words beside it, which it is not."""
        found = []
        _texts(self.root, value, found, ())
        return found


def _fault(node, value, place):
    if node is True:
        return None
    if node is False:
        return place, "no such member"
    for keyword, want in node.items():
        if keyword in _SAYS_NOTHING:
            continue
        if keyword in _KEYWORDS:
            if not _KEYWORDS[keyword](want, value):
                return place, f"{keyword} {str(want)[:80]}"
        elif keyword not in _NESTED:
            raise ValueError(f"keyword {keyword} of JSON Schema is not known here")
    return next(filter(None, _nested_faults(node, value, place)), None)


def _nested_faults(node, value, place):
    if isinstance(value, dict):
        own = node.get("properties", {})
        for name, one in value.items():
            if name in own:
                yield _fault(own[name], one, f"{place}.{name}")
            elif "additionalProperties" in node:
                yield _fault(node["additionalProperties"], one, f"{place}.{name[:40]}")
            if "propertyNames" in node:
                yield _fault(node["propertyNames"], name, f"{place}.{name[:40]}")
    if isinstance(value, list) and "items" in node:
        for i, one in enumerate(value):
            yield _fault(node["items"], one, f"{place}[{i}]")
    for one in node.get("allOf", []):
        yield _fault(one, value, place)
    for keyword in ("oneOf", "anyOf"):
        if keyword in node:
            yield _fault_of_choice(node[keyword], value, place, exactly_one=keyword == "oneOf")


def _fault_of_choice(options, value, place, exactly_one):
    faults = [_fault(option, value, place) for option in _likely(options, value)]
    good = faults.count(None)
    if good == 0:
        # The fault that lies deepest says most.
        return max(faults, key=lambda fault: len(fault[0]), default=(place, "none of its kinds"))
    return (place, "of two kinds at once") if exactly_one and good > 1 else None


def _likely(options, value):
    """Of kinds that a constant tells apart only the one that fits, for the fault to be of use; else all."""
    if not isinstance(value, dict):
        return options
    return [
        option
        for option in options
        if all(
            "const" not in one
            or (_alike(one["const"], value[name]) if name in value else name not in option.get("required", []))
            for name, one in option.get("properties", {}).items()
        )
    ]


def _texts(node, value, found, fixed):
    """Walks schema and value together. Where a schema has several kinds, the one that the value is of."""
    if not isinstance(node, dict):
        return
    for keyword in ("oneOf", "anyOf"):
        words = [word for option in node.get(keyword, []) for word in option.get("enum", [])]
        for option in _likely(node.get(keyword, []), value):
            if _fault(option, value, "") is None:
                _texts(option, value, found, words)
                break
    if isinstance(value, dict):
        own = node.get("properties", {})
        if "_sd" in own:
            found.append((value["_sd"][0], own["_sd"]["items"]["contentSchema"], fixed))
            return
        for name, one in value.items():
            _texts(own.get(name), one, found, ())
    if isinstance(value, list):
        for one in value:
            _texts(node.get("items"), one, found, ())
