"""The records of the house: `dataclass` as the standard library's, whose methods are written late. No I/O.

The library writes three to six methods for each class with slots, as text, and compiles each of them while
the module is imported. With some six hundred classes that was a third of the time until a command began, and
a command makes records of a few of them. Here such a class gets its `__init__`, its `__eq__` and its
`__hash__` when one is first made, compared or hashed. They do what the library's do, which
`tests/test_records.py` compares. The `__init__` of a frozen class puts each value straight into its slot, in
two thirds of the time. Any other class is the library's.
"""

from __future__ import annotations

import dataclasses
from reprlib import recursive_repr
from typing import TYPE_CHECKING, Any, cast

if TYPE_CHECKING:
    from collections.abc import Callable
    from dataclasses import dataclass as dataclass
else:

    def dataclass(**options: bool) -> Callable[[type], type]:
        """Return what makes a dataclass of a class, with the options of the library's `dataclass`.

        A class with slots has no fields that `__init__` takes and does not keep (`InitVar`).
        """
        late = options.get("slots") and options.keys() <= _OPTIONS
        return _LateMethods(options) if late else dataclasses.dataclass(**options)


_OPTIONS = {"frozen", "slots", "kw_only", "eq"}
"""Options that are known here; a class with others is the library's."""

_MADE = object()
"""What stands for a value that its factory is to make."""


class _LateMethods:
    """Makes a dataclass with slots, whose methods are written when they are first called."""

    def __init__(self, options: dict[str, bool]) -> None:
        self._frozen = options.get("frozen", False)
        self._compared = options.get("eq", True)
        self._kw_only = options.get("kw_only", False)

    def __call__(self, written: type) -> type:
        """Return the class with fields, slots and methods.

        Args:
            written: The class as written; a method that is in it stays.
        """
        own = written.__dict__
        # The library finds the fields and makes the slots. That a record is frozen it is not told: it would
        # compile what refuses a change for each class.
        with_fields = dataclasses.dataclass(
            init=False, repr=False, eq=False, slots=True, kw_only=self._kw_only
        )
        made: type = with_fields(written)
        init = _late_init(made, frozen=self._frozen)
        methods: dict[str, Callable[..., object] | None] = {"__repr__": _REPR, "__init__": init}
        if self._frozen:
            methods |= _OF_FROZEN
        if self._compared:
            methods |= {"__eq__": _late_eq(made), "__hash__": _late_hash(made) if self._frozen else None}
        for name, method in methods.items():
            # Python itself enters an empty __hash__ for a class that says how it is compared.
            if name not in own or (name == "__hash__" and own[name] is None and "__eq__" in own):
                setattr(made, name, method)
        return made


def _late_init(made: type, *, frozen: bool) -> Callable[..., None]:
    def init(self: object, /, *values: object, **named: object) -> None:
        _write(made, "__init__", *_init_text(made, frozen=frozen))(self, *values, **named)

    return init


def _late_eq(made: type) -> Callable[[object, object], object]:
    def eq(self: object, other: object) -> object:
        mine, others = (_values(made, name) for name in ("self", "other"))
        same = f" if other.__class__ is self.__class__:\n  return {mine} == {others}"
        return _write(made, "__eq__", f"(self, other):\n{same}\n return NotImplemented", {})(self, other)

    return eq


def _late_hash(made: type) -> Callable[[object], object]:
    def hash_(self: object) -> object:
        return _write(made, "__hash__", f"(self):\n return hash({_values(made, 'self')})", {})(self)

    return hash_


def _write(made: type, name: str, text: str, known: dict[str, object]) -> Callable[..., object]:
    """Compile a method, put it into its class in the place of the one that asked for it, and return it.

    Args:
        made: The class.
        name: The method's name.
        text: What stands behind the name: parameters and body.
        known: What the text speaks of.
    """
    whole = f"def {name}{text}"
    exec(whole, known)
    method: Any = known[name]
    method.__qualname__ = f"{made.__qualname__}.{name}"
    method.__module__ = made.__module__
    setattr(made, name, method)
    return cast("Callable[..., object]", method)


def _init_text(made: Any, *, frozen: bool) -> tuple[str, dict[str, object]]:
    """Word the `__init__` of a class: its parameters, and a line for each value that goes into its slot."""
    known: dict[str, object] = {"_MADE": _MADE}
    places, names, body = ["self"], ["*"], [""]
    for field in dataclasses.fields(made):
        name, value, parameter = field.name, field.name, field.name
        if field.default_factory is not dataclasses.MISSING:
            known[f"_make_{name}"] = field.default_factory
            value, parameter = f"_make_{name}()", f"{name}=_MADE"
            value = f"{value} if {name} is _MADE else {name}" if field.init else value
        elif field.default is not dataclasses.MISSING:
            known[f"_default_{name}"] = field.default
            value, parameter = name if field.init else f"_default_{name}", f"{name}=_default_{name}"
        elif not field.init:
            continue
        if field.init:
            (names if field.kw_only else places).append(parameter)
        if frozen:
            known[f"_set_{name}"] = getattr(made, name).__set__
        body.append(f" _set_{name}(self, {value})" if frozen else f" self.{name} = {value}")
    if hasattr(made, "__post_init__"):
        body.append(" self.__post_init__()")
    parameters = [*places, *(names if len(names) > 1 else [])]
    return f"({', '.join(parameters)}):" + ("\n".join(body) or " pass"), known


def _values(made: Any, owner: str) -> str:
    """Word the tuple of all values that are compared."""
    return f"({''.join(f'{owner}.{field.name}, ' for field in dataclasses.fields(made) if field.compare)})"


def _repr(self: Any) -> str:
    told = (f"{each.name}={getattr(self, each.name)!r}" for each in dataclasses.fields(self) if each.repr)
    return f"{self.__class__.__qualname__}({', '.join(told)})"


def _refuse_set(self: object, name: str, value: object) -> None:
    raise dataclasses.FrozenInstanceError(f"cannot assign to field {name!r}")


def _refuse_delete(self: object, name: str) -> None:
    raise dataclasses.FrozenInstanceError(f"cannot delete field {name!r}")


def _get_state(self: Any) -> list[object]:
    return [getattr(self, field.name) for field in dataclasses.fields(self)]


def _set_state(self: Any, state: list[object]) -> None:
    for field, value in zip(dataclasses.fields(self), state, strict=True):
        object.__setattr__(self, field.name, value)


_REPR = recursive_repr()(_repr)
_OF_FROZEN: dict[str, Callable[..., object]] = {
    "__setattr__": _refuse_set,
    "__delattr__": _refuse_delete,
    "__getstate__": _get_state,
    "__setstate__": _set_state,
}
"""Methods that are the same for all frozen classes."""
