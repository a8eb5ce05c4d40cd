"""Events and states as JSON, and back. No I/O.

An event is kept as its kind (the name of its class in lower case with hyphens), a version and a JSON body
without the kind. Once written, a body is never changed, so every version ever written must remain readable:
when an event changes its form, its number in `VERSIONS` goes up and a function in `_UPGRADES` turns the old
body into the new. The tests keep a frozen sample of each version.

A state is only a cache. Its form has one number, `STATE_VERSION`; a state in any other form is ignored and
folded again.
"""

from __future__ import annotations

import json
import re
import types
import typing
from collections.abc import Callable
from dataclasses import MISSING, fields, is_dataclass
from enum import Enum
from functools import cache
from typing import Any, Final

from stepper.errors import SurroundingsError
from stepper.session.events import EVENTS, Event
from stepper.session.state import State

STATE_VERSION: Final = 12
"""Version of a state's form. It goes up with every change to `State`, to its contents or to how events are
folded; a field with a default that only a new kind of event fills leaves it unchanged."""


class CodecError(SurroundingsError):
    """A journal entry cannot be read: a newer program wrote it, or it is damaged."""


def kind_of(event: type[Event]) -> str:
    """Return the name a class of event is kept under: `PlanChanged` is `plan-changed`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "-", event.__name__).lower()


KINDS: Final = types.MappingProxyType({kind_of(event): event for event in EVENTS})
"""Class of each kind."""

_SECOND: Final = ("advanced", "returned", "placed", "jumped")
# Version 2 adds the stitches and the kind of knitting, for pace and days. Version 3 of a jump says
# whether the last good count is left behind. Version 2 of a changed plan moves respacings and lifelines
# too. Version 2 of counts between landmarks numbers every landmark; where there were very many, version 1
# numbered some, so its answers are left and the counts made again. Version 2 of a count says whether the
# round is finished with it. Version 2 of a stride says for which rounds. Version 2 of a question for the
# place may spread a round anew.

VERSIONS: Final = types.MappingProxyType(
    dict.fromkeys(KINDS, 1)
    | dict.fromkeys((*_SECOND, "plan-changed", "searched", "counted", "stride-set", "place-asked"), 2)
    | {"jumped": 3}
)
"""Version each kind is written in now."""

_Upgrade = Callable[[dict[str, Any]], dict[str, Any]]
_UPGRADES: Final[types.MappingProxyType[tuple[str, int], _Upgrade]] = types.MappingProxyType(
    {(kind, 1): lambda body: body for kind in _SECOND}
    | {("jumped", 2): lambda body: body, ("plan-changed", 1): lambda body: body}
    | {("counted", 1): lambda body: body, ("place-asked", 1): lambda body: body}
    | {("stride-set", 1): lambda body: body}
    | {("searched", 1): lambda body: {**body, "answers": []}}
)
# (kind, old version): the body in that version to the body in the next.


def encode_event(event: Event) -> tuple[str, int, str]:
    """Write an event.

    Returns:
        Kind, version, body.
    """
    kind = kind_of(type(event))
    return kind, VERSIONS[kind], _dumped(event)


def decode_event(kind: str, version: int, body: str) -> Event:
    """Read an event.

    Raises:
        CodecError: The kind or version is not known here, or the body is damaged.
    """
    if kind not in KINDS or version > VERSIONS[kind]:
        raise CodecError(
            f'The journal holds something this version does not know: "{kind}", form {version}. '
            "Open it with the version that wrote it, or a newer one."
        )
    try:
        data = json.loads(body)
        for old in range(version, VERSIONS[kind]):
            data = _UPGRADES[kind, old](data)
        event = _read(KINDS[kind], data)
    except (ValueError, KeyError, TypeError) as error:
        raise CodecError(f'An entry of the journal is damaged: "{kind}" {body!r}.') from error
    assert isinstance(event, Event)
    return event


def encode_state(state: State) -> str:
    """Write a state."""
    return _dumped(state)


def decode_state(body: str) -> State | None:
    """Read a state, or return None if it cannot be read and must be folded again."""
    try:
        state = _read(State, json.loads(body))
    except (ValueError, KeyError, TypeError):
        return None
    return state if isinstance(state, State) else None


def _dumped(record: object) -> str:
    return json.dumps(_plain(record), separators=(",", ":"))


def _plain(value: object) -> object:
    """Turn a record into what JSON knows. Fields at their default are left out."""
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if is_dataclass(value):
        return {
            each.name: _plain(getattr(value, each.name))
            for each in fields(value)
            if each.default is MISSING or getattr(value, each.name) != each.default
        }
    return value


def _read(kind: Any, data: Any) -> Any:
    """Turn what JSON gave into a value of a type, refusing anything else."""
    return _reader(kind)(data)


@cache
def _reader(kind: Any) -> Callable[[Any], Any]:
    """Make the reader of a type; cached, one for each type in the events."""
    origin = typing.get_origin(kind)
    if is_dataclass(kind):
        return _record_reader(kind)
    if isinstance(kind, type) and issubclass(kind, Enum):
        return kind
    if origin is tuple:
        item = _reader(typing.get_args(kind)[0])
        return lambda data: tuple(item(each) for each in _checked(data, list))
    if origin in (typing.Union, types.UnionType):
        inner = _reader(next(each for each in typing.get_args(kind) if each is not type(None)))
        return lambda data: None if data is None else inner(data)
    if kind is float:
        return lambda data: float(_checked(data, (int, float)))
    return lambda data: _checked(data, kind)


def _record_reader(kind: Any) -> Callable[[Any], Any]:
    hints = typing.get_type_hints(kind)

    def read(data: Any) -> Any:
        readers = {each.name: _reader(hints[each.name]) for each in fields(kind)}
        return kind(**{name: readers[name](value) for name, value in _checked(data, dict).items()})

    return read


def _checked(data: Any, kind: Any) -> Any:
    if not isinstance(data, kind) or (isinstance(data, bool) and kind is not bool):
        raise TypeError(f"expected {kind} (got {data!r})")
    return data
