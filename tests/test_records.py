"""Records: what the house writes late does what the standard library writes at once.

The check is the library itself: each class is made twice from the same text, by `dataclasses.dataclass` and by
`stepper.records.dataclass`, and asked the same.
"""

from __future__ import annotations

import copy
import dataclasses
import pickle
from collections.abc import Callable, Iterator
from functools import partial
from typing import Any, ClassVar

import pytest

from stepper.records import dataclass
from tests.tables import each_row


def makes() -> Iterator[Callable[..., Any]]:
    """The two ways to make a class: the library's, and the house's."""
    yield dataclasses.dataclass
    yield dataclass


def asked(question: Callable[[], object]) -> str:
    """Return what comes of a question, an error too."""
    try:
        return repr(question())
    except (TypeError, AttributeError, ValueError) as error:
        return f"{type(error).__name__}: {error}"


def named(make: Callable[..., Any]) -> type[Any]:
    """Make a class of all kinds of fields, each given by name."""

    @make(frozen=True, slots=True, kw_only=True)
    class Row:
        """A row."""

        count: int
        label: str = ""
        changes: tuple[int, ...] = ()
        kept: dict[str, int] = dataclasses.field(default_factory=dict)
        shown: int = dataclasses.field(default=0, repr=False)
        beside: int = dataclasses.field(default=0, compare=False)
        fixed: int = dataclasses.field(default=7, init=False)
        ready: list[int] = dataclasses.field(default_factory=list, init=False)
        ALL: ClassVar[int] = 3

        def wider(self) -> int:
            return self.count + 1

    return Row


def placed(make: Callable[..., Any]) -> type[Any]:
    """Make a class of fields given by their places."""

    @make(frozen=True, slots=True)
    class Place:
        """A place."""

        round_: int
        stitch: int = 0
        names: list[str] = dataclasses.field(default_factory=list)
        last: str = dataclasses.field(default="", kw_only=True)

    return Place


def checked(make: Callable[..., Any]) -> type[Any]:
    """Make a class that checks what it is given."""

    @make(frozen=True, slots=True)
    class Checked:
        """Refuses what is none, and keeps what it worked out."""

        count: int
        doubled: int = dataclasses.field(init=False, repr=False, compare=False)

        def __post_init__(self) -> None:
            if self.count < 0:
                raise ValueError("below 0")
            object.__setattr__(self, "doubled", 2 * self.count)

    return Checked


def derived(make: Callable[..., Any]) -> type[Any]:
    """Make a class derived from another."""

    @make(frozen=True, slots=True, kw_only=True)
    class Base:
        """What all have."""

        at: int = 0
        how: str = "so"

    @make(frozen=True, slots=True, kw_only=True)
    class Derived(Base):
        """One more, and another default."""

        how: str = "else"
        more: int = 1

    return Derived


def compared_otherwise(make: Callable[..., Any]) -> type[Any]:
    """Make a class with methods of its own."""

    @make(frozen=True, slots=True)
    class Otherwise:
        """Says itself how it is compared, hashed and shown."""

        count: int

        def __eq__(self, other: object) -> bool:
            return True

        def __hash__(self) -> int:
            return 5

        def __repr__(self) -> str:
            return "otherwise"

    return Otherwise


def compared_alone(make: Callable[..., Any]) -> type[Any]:
    """Make a class that says how it is compared alone."""

    @make(frozen=True, slots=True)
    class Alone:
        """Says how it is compared and not how it is hashed."""

        count: int

        def __eq__(self, other: object) -> bool:
            return True

    return Alone


def not_compared(make: Callable[..., Any]) -> type[Any]:
    """Make a class that is not compared."""

    @make(frozen=True, slots=True, eq=False)
    class NotCompared:
        """Only itself is equal to it."""

        count: int

        def __repr__(self) -> str:
            return f"NotCompared {self.count}"

    return NotCompared


def changing(make: Callable[..., Any]) -> type[Any]:
    """Make a class whose records change."""

    @make(slots=True, kw_only=True)
    class Changing:
        """What is in hand."""

        count: int
        kept: dict[str, int] = dataclasses.field(default_factory=dict)

    return Changing


def changing_alone(make: Callable[..., Any]) -> type[Any]:
    """Make a class whose records change and are not compared."""

    @make(slots=True, eq=False)
    class ChangingAlone:
        """Only itself is equal to it."""

        count: int = 0

        def __repr__(self) -> str:
            return f"ChangingAlone {self.count}"

    return ChangingAlone


def empty(make: Callable[..., Any]) -> type[Any]:
    """Make a class without fields."""

    @make(frozen=True, slots=True)
    class Empty:
        """Nothing in it."""

    return Empty


def answers(one: Any, other: Any) -> list[str]:
    """Ask two records made of the same values all that a record is asked."""
    kind = type(one)
    name = next((each.name for each in dataclasses.fields(one)), "")
    questions: list[Callable[[], object]] = [
        lambda: one == other,
        lambda: one != other,
        lambda: one == 3,
        lambda: hash(one) == hash(other),
        lambda: hash(one) == 5,
        lambda: one,
        lambda: copy.copy(one),
        lambda: copy.deepcopy(one) == one,
        lambda: dataclasses.replace(one),
        lambda: dataclasses.asdict(one),
        lambda: [each.name for each in dataclasses.fields(one)],
        lambda: setattr(one, name, 2) if name else None,
        lambda: delattr(one, name) if name else None,
        lambda: kind.__match_args__,
        lambda: kind.__slots__,
        lambda: kind.__doc__,
        lambda: vars(one),
    ]
    return [asked(each) for each in 2 * questions]


KINDS = (named, placed, checked, derived, compared_otherwise, compared_alone, not_compared, changing, changing_alone, empty)
ARGUMENTS: tuple[tuple[tuple[Any, ...], dict[str, Any]], ...] = (
    ((), {}),
    ((3,), {}),
    ((-3,), {}),
    ((3, 4), {}),
    ((3, 4, ["a"]), {}),
    ((3, 4, ["a"], "b"), {}),
    ((), {"count": 3}),
    ((), {"count": -3}),
    ((), {"count": 3, "label": "a", "changes": (1, 2), "kept": {"a": 1}}),
    ((), {"count": 3, "shown": 2, "beside": 9}),
    ((), {"count": 3, "fixed": 2}),
    ((), {"count": [3]}),
    ((), {"round_": 3, "last": "z"}),
    ((), {"at": 2}),
    ((), {"how": "so", "more": 2}),
    ((), {"self": 2}),
)


@each_row("kind", KINDS)
@each_row(("values", "names"), ARGUMENTS)
def test_a_record_is_made_shown_compared_and_hashed_as_the_librarys(
    kind: Callable[..., type[Any]], values: tuple[Any, ...], names: dict[str, Any]
) -> None:
    """The same from the same, and the same refused in the same words; also once the methods are written."""
    told = []
    for make in makes():
        found = kind(make)
        first = asked(partial(found, *values, **names))
        refused = first.startswith(("TypeError", "ValueError"))
        told.append([first] if refused else answers(found(*values, **names), found(*values, **names)))
    assert told[0] == told[1]


def test_another_class_is_never_equal() -> None:
    """A class derived from another with the same values is another thing, as the library has it."""
    for make in makes():
        base = checked(make)
        other = type("Other", (base,), {})
        assert base(1) != other(1)
        assert other(1) == other(1)
        assert hash(other(1)) == hash(other(1))


def test_each_value_of_a_factory_is_its_own() -> None:
    """A list that two records shared would move in both."""
    row = named(dataclass)
    one, other = row(count=1), row(count=1)
    one.kept["a"] = 1
    one.ready.append(1)
    assert other.kept == {}
    assert other.ready == []


def test_what_compares_otherwise_is_said_by_the_class_alone() -> None:
    """A method that stands in the class is never written over, before or behind the first call."""
    found = compared_otherwise(dataclass)
    assert found(1) == found(2)
    assert [hash(found(1)), hash(found(2)), repr(found(3))] == [5, 5, "otherwise"]


@dataclass(frozen=True, slots=True)
class Loop:
    """A record that can hold itself."""

    held: list[object]


def test_a_record_that_holds_itself_is_shown() -> None:
    """Three points in its place, as the library has it; never an endless text."""
    loop = Loop([])
    loop.held.append(loop)
    assert repr(loop) == "Loop(held=[...])"


def test_a_record_can_be_sent_to_another_process() -> None:
    """Voices live in processes of their own."""
    assert pickle.loads(pickle.dumps(Loop([1]))) == Loop([1])


def test_methods_are_written_when_first_called() -> None:
    """What this is for: an import compiles nothing for a class of which no record is made."""
    found = placed(dataclass)
    before = [found.__dict__[name] for name in ("__init__", "__eq__", "__hash__")]
    one = found(1, 2)
    assert one == found(1, 2)
    assert asked(lambda: hash(one)) == "TypeError: unhashable type: 'list'"
    after = [found.__dict__[name] for name in ("__init__", "__eq__", "__hash__")]
    assert [each.__code__.co_filename for each in after] == ["<string>"] * 3
    assert all(each not in after for each in before)


@pytest.mark.parametrize("options", [{"frozen": True}, {"frozen": True, "slots": True, "order": True}, {}])
def test_every_other_class_is_the_librarys(options: dict[str, bool]) -> None:
    """Only what is in slots is written here; the library's are complete at once."""

    @dataclass(**options)
    class Other:
        count: int

    assert Other.__init__.__code__.co_filename == "<string>"
    assert asked(lambda: Other(1) < Other(2)).startswith("True" if options.get("order") else "TypeError")  # type: ignore[operator]
    assert Other(1) == Other(1)
