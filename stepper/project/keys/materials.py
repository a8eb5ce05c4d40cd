"""Read the measured values of the outline: yarns, gauges and the wearer's body. No I/O."""

from __future__ import annotations

import re

from stepper.craft.gauge import Gauge
from stepper.craft.needles import US_SIZE
from stepper.craft.skeins import OUNCE_G, YARD_M
from stepper.project.draft import FileDraft
from stepper.project.lengths import read_length, read_needle
from stepper.project.model import Fabric, Swatch, Yarn
from stepper.project.problems import one_of
from stepper.project.yaml_file.fields import FORMS, Fields
from stepper.project.yaml_file.source import Mapping, Scalar

MEASUREMENTS = (
    "bust",
    "chest",
    "waist",
    "hip",
    "upper_arm",
    "wrist",
    "neck",
    "head",
    "arm_length",
    "back_length",
    "foot",
    "foot_length",
    "hand",
    "height",
)
"""The body measurements that can be given."""


def read_yes(fields: Fields, name: str, draft: FileDraft) -> bool:
    """Read a yes or no value; no if it is not given."""
    node = fields.text(name)
    if node is None:
        return False
    word = node.text.strip().lower()
    if word not in ("yes", "no", "true", "false"):
        draft.report(node.place, f'`{name}` is "{node.text}".', "Write yes or no.")
    return word in ("yes", "true")


def read_needles(fields: Fields, draft: FileDraft) -> tuple[float, ...]:
    """Read `needles`, the sizes that the pattern names: `3.5 mm, 4 mm`; none if it is not given. Unit: mm."""
    node = fields.text("needles")
    if node is None:
        return ()
    found = [read_needle(part) for part in re.split(r"\s*(?:,|;|\band\b)\s*", node.text.strip()) if part]
    sizes = {mm for mm in found if mm is not None}
    if not found or None in found or len(sizes) < len(found):
        hint = "Write each size once, with commas between them: 3.5 mm, 4 mm."
        draft.report(node.place, f'`needles` is "{node.text}".', hint)
        return ()
    return tuple(sorted(sizes))


def read_needle_names(fields: Fields) -> tuple[tuple[str, float], ...]:
    """Return what `needles` calls its sizes by, `3.5 mm ribbing, 4 mm main`, each with its size. Unit: mm."""
    node = fields.text("needles")
    parts = re.split(r"\s*(?:,|;|\band\b)\s*", node.text.strip()) if node is not None else []
    size = re.compile(r"[\d.]+\s*mm|\bus\b\s*#?[\d.]*", re.I)
    named = ((size.sub("", part).strip(" ()"), read_needle(part)) for part in parts)
    return tuple((words, mm) for words, mm in named if words and mm is not None)


def read_amount(
    fields: Fields, name: str, draft: FileDraft, *, required: bool = False, most: float = 1e5
) -> float | None:
    """Read a number above 0; None, with a problem, if it is not one. Unit: as the key says."""
    node = fields.text(name, required=required)
    if node is None:
        return None
    try:
        value = float(node.text)
    except ValueError:
        value = -1.0
    if not 0 < value <= most:
        draft.report(node.place, f'`{name}` is "{node.text}".', f"Write a number above 0, up to {most:g}.")
        return None
    return value


def read_yarns(fields: Fields, draft: FileDraft) -> dict[str, Yarn]:
    """Read `yarn`: each by its key, with a name, a colour and a skein."""
    node = fields.mapping("yarn", required=True)
    yarns: dict[str, Yarn] = {}
    if node is None:
        return yarns
    outer = Fields(node, "`yarn`", draft.problems)
    for key, (name_node, value) in outer.found.items():
        outer.asked.append(key)
        if not re.fullmatch(r"[A-Za-z]\w{0,2}", key):
            told = f'"{key}" is not a key for a yarn.'
            draft.report(name_node.place, told, "Use up to three letters: MC, A, B.")
        if isinstance(value, Scalar):
            yarns[key] = Yarn(
                key=key, name=value.text.strip() or key, colour=None, grams=None, metres=None, bought=None
            )
            continue
        if not isinstance(value, Mapping):
            draft.report(value.place, f'yarn "{key}" must hold keys and values.')
            continue
        yarns[key] = _yarn(key, value, draft)
        letter = yarns[key].letter
        if letter and any(yarn.letter == letter for other, yarn in yarns.items() if other != key):
            draft.report(value.place, f'two yarns have the letter "{letter}".', "Give each its own.")
    outer.close()
    return yarns


def _yarn(key: str, value: Mapping, draft: FileDraft) -> Yarn:
    inner = Fields(value, f'yarn "{key}"', draft.problems)
    name = inner.text("name")
    colour = inner.text("colour") if "color" not in inner.found else inner.text("color")
    grams = metres = None
    skein = inner.mapping("skein")
    if skein is not None:
        ball = Fields(skein, "`skein`", draft.problems)
        grams = _in_either(ball, "grams", "ounces", OUNCE_G, draft)
        metres = _in_either(ball, "metres", "yards", YARD_M, draft)
        ball.close()
    bought = read_amount(inner, "bought", draft)
    letter = inner.text("letter")
    inner.close()
    if letter is not None and not re.fullmatch(r"[A-JL-OQ-Z]", letter.text.strip()):
        told = f'"{letter.text}" is no letter by which a round counts a yarn.'
        draft.report(letter.place, told, "Write one capital letter, other than K and P: letter: M")
    if colour is not None and not re.fullmatch(r"#[0-9a-fA-F]{6}", colour.text.strip()):
        draft.report(colour.place, f'"{colour.text}" is not a colour.', 'Write it as "#ece6d8", in quotes.')
    return Yarn(
        key=key,
        name=name.text.strip() if name is not None else key,
        colour=colour.text.strip().lower() if colour is not None else None,
        grams=grams,
        metres=metres,
        bought=bought,
        letter=letter.text.strip() if letter is not None else "",
    )


def _in_either(fields: Fields, name: str, other: str, factor: float, draft: FileDraft) -> float | None:
    """Read an amount given in its unit or another; `factor` converts the other to the first."""
    if other not in fields.found:
        amount = read_amount(fields, name, draft, required=True)
        fields.asked.append(other)
        return amount
    value = read_amount(fields, other, draft)
    if name in fields.found:
        message = f"a skein's {name} and {other} are both given."
        draft.report(fields.place(other), message, "Write one of them.")
        fields.take(name)
    return None if value is None else value * factor


UNREAD = Fabric(name="", needle_mm=None, gauge=Gauge(stitches=20, rounds=28), blocked=None)
"""What stands in for a gauge that cannot be read: any will do, as the file has a problem, and only counts are
checked."""


def read_fabrics(fields: Fields, draft: FileDraft) -> dict[str, Fabric]:
    """Read `gauge` (or `tension`): each fabric by its name."""
    given = "tension" if "tension" in fields.found else "gauge"
    node = fields.mapping(given, required=True)
    fabrics: dict[str, Fabric] = {}
    if node is None:
        return fabrics
    outer = Fields(node, f"`{given}`", draft.problems)
    for name, (_, value) in outer.found.items():
        outer.asked.append(name)
        if not isinstance(value, Mapping):
            told = f'gauge "{name}" must hold stitches and rounds.'
            draft.report(value.place, told, f'Write it as "{given}: {FORMS[given]}".')
            continue
        inner = Fields(value, f'gauge "{name}"', draft.problems)
        needle = _needle(inner, draft)
        gauge = _gauge(inner, draft)
        blocked_node = inner.mapping("blocked")
        blocked = None
        if blocked_node is not None:
            after = Fields(blocked_node, "`blocked`", draft.problems)
            blocked = _gauge(after, draft)
            after.close()
        swatch = _swatch(inner, draft)
        inner.close()
        gauge = gauge or UNREAD.gauge
        fabrics[name] = Fabric(name=name, needle_mm=needle, gauge=gauge, blocked=blocked, swatch=swatch)
    if not outer.found:
        hint = f'Write it as "{given}: {FORMS[given]}".'
        draft.report(node.place, f"`{given}` is empty.", hint)
    return fabrics


def _swatch(fields: Fields, draft: FileDraft) -> Swatch | None:
    """Read the weight of a swatch: `swatch: {stitches: 30, rounds: 40, grams: 6.5, yarn: MC}`."""
    node = fields.mapping("swatch")
    if node is None:
        return None
    inner = Fields(node, "`swatch`", draft.problems)
    stitches = read_amount(inner, "stitches", draft, required=True, most=1000)
    rounds = read_amount(
        inner, "rows" if "rows" in inner.found else "rounds", draft, required=True, most=1000
    )
    grams = read_amount(inner, "grams", draft, required=True)
    yarn = inner.text("yarn")
    inner.close()
    if yarn is not None and yarn.text.strip() not in draft.yarns:
        draft.report(yarn.place, f'there is no yarn "{yarn.text}".', f"The yarns are {one_of(draft.yarns)}.")
    if stitches is None or rounds is None or grams is None:
        return None
    return Swatch(
        stitches=stitches, rounds=rounds, grams=grams, yarn=yarn.text.strip() if yarn is not None else ""
    )


def read_float_limit(fields: Fields, draft: FileDraft) -> tuple[float | None, int | None]:
    """Read `longest_float`, the longest float that is not caught: `2.5 cm`, `1 in` or `5 sts`.

    Returns:
        Length in mm, and stitches; at most one is not None.
    """
    node = fields.text("longest_float")
    if node is None:
        return None, None
    counted = re.fullmatch(r"([1-9]\d?)\s*(?:sts?|stitch(?:es)?)", node.text.strip().lower())
    if counted:
        return None, int(counted[1])
    values, trouble = read_length(node.text, inches=draft.inches)
    if trouble or len(values) != 1 or not 0 < values[0] <= 500:
        told = f'`longest_float` is "{node.text}".'
        draft.report(node.place, told, "Write a length or a count: 2.5 cm, or 5 sts.")
        return None, None
    return values[0], None


def _gauge(fields: Fields, draft: FileDraft) -> Gauge | None:
    stitches = read_amount(fields, "stitches", draft, required=True, most=200)
    rows = "rows" if "rows" in fields.found else "rounds"
    rounds = read_amount(fields, rows, draft, required=True, most=300)
    if stitches is None or rounds is None:
        return None
    if draft.inches:
        return Gauge.over_four_inches(stitches=stitches, rounds=rounds)
    return Gauge(stitches=stitches, rounds=rounds)


def _needle(fields: Fields, draft: FileDraft) -> float | None:
    """Return the needle of a gauge in mm, from a length or an unambiguous US number; None if neither."""
    node = fields.text("needle")
    if node is None:
        return None
    if not re.fullmatch(rf"\s*{US_SIZE}\s*", node.text, re.I):
        return _one_length(node, "needle", draft)
    mm = read_needle(node.text)
    if mm is None:
        message = f'"{node.text}" names no needle size that is the same everywhere.'
        draft.report(node.place, message, "Give the size in millimetres: 3.75 mm.")
    return mm


def read_one_length(fields: Fields, name: str, draft: FileDraft) -> float | None:
    """Return one length in mm; None, with a problem, if it is not one."""
    node = fields.text(name)
    return _one_length(node, name, draft) if node is not None else None


def _one_length(node: Scalar, name: str, draft: FileDraft) -> float | None:
    values, trouble = read_length(node.text, inches=draft.inches)
    if trouble or len(values) != 1:
        draft.report(node.place, trouble or f"`{name}` must be one length.")
        return None
    return values[0]


def read_body(fields: Fields, draft: FileDraft) -> dict[str, float]:
    """Read `body`: the wearer's measurements in mm, by name."""
    node = fields.mapping("body")
    if node is None:
        return {}
    inner = Fields(node, "`body`", draft.problems)
    body = {}
    for name in MEASUREMENTS:
        value = read_one_length(inner, name, draft)
        if value is not None:
            body[name] = value
    inner.close()
    return body


def read_wanted_ease(fields: Fields, draft: FileDraft) -> dict[str, float]:
    """Read the ease wanted: one length for the chest, or one for each measurement."""
    node = fields.take("wanted_ease")
    if node is None:
        return {}
    if isinstance(node, Mapping):
        inner = Fields(node, "`wanted_ease`", draft.problems)
        given = {name: inner.text(name) for name in MEASUREMENTS}
        inner.close()
    else:
        given = {"bust": fields.text("wanted_ease")}
    wanted = {}
    for name, scalar in given.items():
        if scalar is None:
            continue
        text = scalar.text.strip()
        sign = -1 if text[:1] in "-−" else 1
        if text.lstrip("+-−").strip() == "0":
            wanted[name] = 0.0
            continue
        values, trouble = read_length(text.lstrip("+-−"), inches=draft.inches)
        if trouble or len(values) != 1:
            draft.report(scalar.place, trouble or "an ease is one length.", "Write 8 cm or -2 cm.")
            continue
        wanted[name] = sign * values[0]
    return wanted
