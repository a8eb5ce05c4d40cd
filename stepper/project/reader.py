"""Project text to a checked `Project`, or to every problem it has. No I/O."""

from __future__ import annotations

import datetime
import re
from dataclasses import dataclass, field

from stepper.craft.gauge import Gauge
from stepper.project import outline
from stepper.project.alterations import EXAMPLES, check_alterations, read_alteration
from stepper.project.fields import Fields
from stepper.project.instructions import Line
from stepper.project.lengths import read_length
from stepper.project.model import Alteration, Chart, Fabric, Project, Section, Switch, Yarn
from stepper.project.problems import Place, Problem, nearest, one_of
from stepper.project.sizes import find_size, read_sizes
from stepper.project.source import Mapping, Node, Scalar, block_lines, read_nodes
from stepper.project.wording import Words, read_line

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
"""What of a body can be given."""


@dataclass(slots=True, kw_only=True)
class Reading:
    """The outcome of reading a file: a project, or problems; with problems there is no project."""

    project: Project | None
    problems: tuple[Problem, ...]


@dataclass(slots=True, kw_only=True)
class _Draft:
    """What is known so far, while the file is read from the top."""

    text_lines: list[str]
    problems: list[Problem] = field(default_factory=list)
    inches: bool = False
    sizes: tuple[str, ...] = ()
    yarns: dict[str, Yarn] = field(default_factory=dict)
    fabrics: dict[str, Fabric] = field(default_factory=dict)
    charts: dict[str, Chart] = field(default_factory=dict)


def read_project(text: str) -> Reading:
    """Read and check the text of a project file.

    Args:
        text: The whole file.

    Returns:
        The project, or every problem found in one pass, in the order of the file.
    """
    root, problems = read_nodes(text)
    draft = _Draft(text_lines=text.splitlines(), problems=problems)
    if problems:
        return Reading(project=None, problems=tuple(sorted(set(problems))))
    if not isinstance(root, Mapping):
        place = root.place if root is not None else Place(line=1, column=1)
        draft.problems.append(
            place.problem(
                "a project file holds keys and values.", "Begin with `title: …`; see `stepper start`."
            )
        )
        return Reading(project=None, problems=tuple(draft.problems))
    project = _read_root(root, draft)
    found = tuple(sorted(set(draft.problems)))
    return Reading(project=None if found else project, problems=found)


def _read_root(root: Mapping, draft: _Draft) -> Project | None:
    fields = Fields(root, "the file", draft.problems)
    title = fields.text("title", required=True)
    finish_by = _finish_by(fields, draft)
    draft.inches = _units(fields, draft) == "in"
    draft.sizes = _sizes(fields, draft)
    size, switches = _knit(fields, draft)
    draft.yarns = _yarns(fields, draft)
    draft.fabrics = _fabrics(fields, draft)
    body = _body(fields, draft)
    wanted_ease = _wanted_ease(fields, draft)
    draft.charts = _charts(fields, draft)
    alterations = _alterations(fields, draft)
    cues = _cues(fields, draft)
    sections = _sections(fields, draft)
    fields.close()
    outline.check_labels(sections, switches, draft.problems)
    check_alterations(alterations, sections, draft.sizes, draft.problems)
    if title is None or not draft.sizes or not sections:
        return None
    return Project(
        title=title.text.strip(),
        units="in" if draft.inches else "cm",
        sizes=draft.sizes,
        size=size,
        switches=switches,
        yarns=draft.yarns,
        fabrics=draft.fabrics,
        charts=draft.charts,
        sections=sections,
        alterations=alterations,
        body=body,
        wanted_ease=wanted_ease,
        finish_by=finish_by,
        cues=cues,
    )


def _finish_by(fields: Fields, draft: _Draft) -> str | None:
    node = fields.text("finish_by")
    if node is None:
        return None
    try:
        return datetime.date.fromisoformat(node.text.strip()).isoformat()
    except ValueError:
        draft.problems.append(
            node.place.problem(f'"{node.text}" is not a date.', "Write it as 2027-02-14: year, month, day.")
        )
        return None


def _units(fields: Fields, draft: _Draft) -> str:
    node = fields.text("units")
    if node is None:
        return "cm"
    word = {"inch": "in", "inches": "in"}.get(node.text.strip().lower(), node.text.strip().lower())
    if word not in ("cm", "in"):
        draft.problems.append(node.place.problem(f'`units` is "{node.text}".', "Write cm or in."))
    return word


def _sizes(fields: Fields, draft: _Draft) -> tuple[str, ...]:
    node = fields.text("sizes", required=True)
    if node is None:
        return ()
    sizes = read_sizes(node.text)
    lowered = [size.lower() for size in sizes]
    if not sizes or len(set(lowered)) != len(lowered):
        draft.problems.append(
            node.place.problem(
                f'"{node.text}" does not name sizes that differ.', "Write them as printed: 1 (2, 3, 4)."
            )
        )
        return ()
    return sizes


def _size(node: Scalar | None, draft: _Draft) -> int:
    if node is None or not draft.sizes:
        return 0
    found = find_size(node.text, draft.sizes)
    if found is None:
        draft.problems.append(
            node.place.problem(
                f'there is no size "{node.text}".',
                f"The sizes are {one_of(draft.sizes)}.",
            )
        )
        return 0
    return found


def _knit(fields: Fields, draft: _Draft) -> tuple[int, tuple[Switch, ...]]:
    node = fields.mapping("knit", required=len(draft.sizes) > 1)
    if node is None:
        return 0, ()
    inner = Fields(node, "`knit`", draft.problems)
    size = _size(inner.text("size", required=True), draft)
    switches = []
    for item in inner.items("then"):
        if not isinstance(item, Mapping):
            draft.problems.append(
                item.place.problem(
                    "an entry of `then` must name a line and a size.",
                    "Write - {from: Final increase, size: 2}.",
                )
            )
            continue
        entry = Fields(item, "an entry of `then`", draft.problems)
        label = entry.text("from", required=True)
        to = entry.text("size", required=True)
        reshape = _yes(entry, "reshape", draft)
        entry.close()
        if label is not None and to is not None:
            switches.append(
                Switch(label=label.text.strip(), size=_size(to, draft), place=label.place, reshape=reshape)
            )
    inner.close()
    return size, tuple(switches)


def _yes(fields: Fields, name: str, draft: _Draft) -> bool:
    node = fields.text(name)
    if node is None:
        return False
    word = node.text.strip().lower()
    if word not in ("yes", "no", "true", "false"):
        draft.problems.append(node.place.problem(f'`{name}` is "{node.text}".', "Write yes or no."))
    return word in ("yes", "true")


def _amount(
    fields: Fields, name: str, draft: _Draft, *, required: bool = False, most: float = 1e5
) -> float | None:
    node = fields.text(name, required=required)
    if node is None:
        return None
    try:
        value = float(node.text)
    except ValueError:
        value = -1.0
    if not 0 < value <= most:
        draft.problems.append(
            node.place.problem(f'`{name}` is "{node.text}".', f"Write a number above 0, up to {most:g}.")
        )
        return None
    return value


def _yarns(fields: Fields, draft: _Draft) -> dict[str, Yarn]:
    node = fields.mapping("yarn", required=True)
    yarns: dict[str, Yarn] = {}
    if node is None:
        return yarns
    outer = Fields(node, "`yarn`", draft.problems)
    for key, (name_node, value) in outer.found.items():
        outer.asked.append(key)
        if not re.fullmatch(r"[A-Za-z]\w{0,2}", key):
            draft.problems.append(
                name_node.place.problem(
                    f'"{key}" is not a key for a yarn.', "Use up to three letters: MC, A, B."
                )
            )
        if isinstance(value, Scalar):
            yarns[key] = Yarn(
                key=key, name=value.text.strip() or key, colour=None, grams=None, metres=None, bought=None
            )
            continue
        if not isinstance(value, Mapping):
            draft.problems.append(value.place.problem(f'yarn "{key}" must hold keys and values.'))
            continue
        yarns[key] = _yarn(key, value, draft)
    outer.close()
    return yarns


def _yarn(key: str, value: Mapping, draft: _Draft) -> Yarn:
    inner = Fields(value, f'yarn "{key}"', draft.problems)
    name = inner.text("name")
    colour = inner.text("colour") if "color" not in inner.found else inner.text("color")
    grams = metres = None
    skein = inner.mapping("skein")
    if skein is not None:
        ball = Fields(skein, "`skein`", draft.problems)
        grams = _amount(ball, "grams", draft, required=True)
        metres = _amount(ball, "metres", draft, required=True)
        ball.close()
    bought = _amount(inner, "bought", draft)
    inner.close()
    if colour is not None and not re.fullmatch(r"#[0-9a-fA-F]{6}", colour.text.strip()):
        draft.problems.append(
            colour.place.problem(f'"{colour.text}" is not a colour.', 'Write it as "#ece6d8", in quotes.')
        )
    return Yarn(
        key=key,
        name=name.text.strip() if name is not None else key,
        colour=colour.text.strip().lower() if colour is not None else None,
        grams=grams,
        metres=metres,
        bought=bought,
    )


def _fabrics(fields: Fields, draft: _Draft) -> dict[str, Fabric]:
    given = "tension" if "tension" in fields.found else "gauge"
    node = fields.mapping(given, required=True)
    fabrics: dict[str, Fabric] = {}
    if node is None:
        return fabrics
    outer = Fields(node, f"`{given}`", draft.problems)
    for name, (_, value) in outer.found.items():
        outer.asked.append(name)
        if not isinstance(value, Mapping):
            draft.problems.append(value.place.problem(f'gauge "{name}" must hold stitches and rounds.'))
            continue
        inner = Fields(value, f'gauge "{name}"', draft.problems)
        needle = _length(inner, "needle", draft)
        gauge = _gauge(inner, draft)
        blocked_node = inner.mapping("blocked")
        blocked = None
        if blocked_node is not None:
            after = Fields(blocked_node, "`blocked`", draft.problems)
            blocked = _gauge(after, draft)
            after.close()
        inner.close()
        if gauge is not None:
            fabrics[name] = Fabric(name=name, needle_mm=needle, gauge=gauge, blocked=blocked)
    return fabrics


def _gauge(fields: Fields, draft: _Draft) -> Gauge | None:
    stitches = _amount(fields, "stitches", draft, required=True, most=200)
    rows = "rows" if "rows" in fields.found else "rounds"
    rounds = _amount(fields, rows, draft, required=True, most=300)
    if stitches is None or rounds is None:
        return None
    if draft.inches:
        return Gauge.over_four_inches(stitches=stitches, rounds=rounds)
    return Gauge(stitches=stitches, rounds=rounds)


def _length(fields: Fields, name: str, draft: _Draft) -> float | None:
    node = fields.text(name)
    if node is None:
        return None
    values, trouble = read_length(node.text, inches=draft.inches)
    if trouble or len(values) != 1:
        draft.problems.append(node.place.problem(trouble or f"`{name}` must be one length."))
        return None
    return values[0]


def _body(fields: Fields, draft: _Draft) -> dict[str, float]:
    node = fields.mapping("body")
    if node is None:
        return {}
    inner = Fields(node, "`body`", draft.problems)
    body = {}
    for name in MEASUREMENTS:
        value = _length(inner, name, draft)
        if value is not None:
            body[name] = value
    inner.close()
    return body


def _wanted_ease(fields: Fields, draft: _Draft) -> dict[str, float]:
    """Read how much ease is wanted: one length for the chest, or one for each measurement."""
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
            draft.problems.append(
                scalar.place.problem(trouble or "an ease is one length.", "Write 8 cm or -2 cm.")
            )
            continue
        wanted[name] = sign * values[0]
    return wanted


def _charts(fields: Fields, draft: _Draft) -> dict[str, Chart]:
    node = fields.mapping("charts")
    charts: dict[str, Chart] = {}
    if node is None:
        return charts
    outer = Fields(node, "`charts`", draft.problems)
    for name, (_, value) in outer.found.items():
        if not isinstance(value, Mapping):
            draft.problems.append(value.place.problem(f'chart "{name}" must hold a key and rows.'))
            continue
        chart = outline.read_chart(name, value, draft.yarns, draft.text_lines, draft.problems)
        if chart is not None:
            charts[name] = chart
    return charts


def _alterations(fields: Fields, draft: _Draft) -> tuple[Alteration, ...]:
    found = []
    for item in fields.items("alterations"):
        if isinstance(item, Mapping):
            inner = Fields(item, "an alteration", draft.problems)
            note = inner.text("note", required=True)
            inner.close()
            if note is not None:
                found.append(Alteration(kind="note", text=note.text.strip(), place=note.place))
        elif isinstance(item, Scalar):
            made = read_alteration(item.text, item.place, inches=draft.inches)
            if made is None:
                draft.problems.append(
                    item.place.problem(
                        f'"{item.text}" is not an alteration the program can carry out.',
                        nearest(item.text, EXAMPLES) or "Write it in your own words as - note: …",
                    )
                )
            else:
                found.append(made)
        else:
            draft.problems.append(item.place.problem("an alteration is one line of words."))
    return tuple(found)


def _cues(fields: Fields, draft: _Draft) -> dict[str, str]:
    node = fields.mapping("cues")
    if node is None:
        return {}
    inner = Fields(node, "`cues`", draft.problems)
    found = {}
    for wording, (_, value) in inner.found.items():
        if isinstance(value, Scalar) and value.text.strip():
            found[wording] = value.text.strip()
        else:
            draft.problems.append(value.place.problem("a cue is one line of words."))
    return found


def _sections(fields: Fields, draft: _Draft) -> tuple[Section, ...]:
    sections = []
    names: dict[str, Place] = {}
    words = Words(
        sizes=len(draft.sizes) or 1,
        names={*draft.charts, *draft.yarns, *draft.fabrics},
        inches=draft.inches,
    )
    for item in fields.items("sections", required=True):
        if not isinstance(item, Mapping):
            draft.problems.append(item.place.problem("a section must hold a name and work."))
            continue
        section = _section(item, words, draft)
        if section is None:
            continue
        if section.name in names:
            draft.problems.append(
                section.place.problem(
                    f'"{section.name}" names two sections; the first is on line {names[section.name].line}.'
                )
            )
        names[section.name] = section.place
        sections.append(section)
    return tuple(sections)


def _section(item: Mapping, words: Words, draft: _Draft) -> Section | None:
    fields = Fields(item, "a section", draft.problems)
    name = fields.text("name", required=True)
    title = name.text.strip() if name is not None else "?"
    fields.what = f'section "{title}"'
    gauge = _chosen(fields, "gauge", draft.fabrics, draft)
    yarn = _chosen(fields, "yarn", draft.yarns, draft)
    work = fields.take("work", required=True)
    fields.close()
    if work is None or name is None:
        return None
    lines = _work(work, words, draft)
    return Section(name=title, gauge=gauge, yarn=yarn, lines=lines, place=name.place)


def _chosen(fields: Fields, name: str, known: dict[str, Yarn] | dict[str, Fabric], draft: _Draft) -> str:
    """Read the name of a yarn or gauge; without one, the first of the file is meant."""
    node = fields.text(name)
    first = next(iter(known), "")
    if node is None:
        return first
    if node.text.strip() in known:
        return node.text.strip()
    if known:
        hint = nearest(node.text, known) or f"The file has {one_of(known)}."
        draft.problems.append(node.place.problem(f'there is no {name} "{node.text}" in this file.', hint))
    return first


def _work(node: Node, words: Words, draft: _Draft) -> tuple[Line, ...]:
    if not isinstance(node, Scalar) or node.folded:
        draft.problems.append(
            node.place.problem(
                "the lines of `work` must stand in a block.", 'Write "work: |" and the lines below it.'
            )
        )
        return ()
    rows = [
        row for row in block_lines(node, draft.text_lines) if row[0].strip() and row[0].lstrip()[:1] != "#"
    ]
    if not rows:
        draft.problems.append(node.place.problem("`work` is empty."))
    lines: list[Line] = []
    index = 0
    while index < len(rows):
        taken, line = _read_rows(rows[index:], words, draft)
        index += taken
        if line is not None:
            lines.append(line)
    return tuple(lines)


def _read_rows(rows: list[tuple[str, Place]], words: Words, draft: _Draft) -> tuple[int, Line | None]:
    """Read one printed line, which may be broken over several lines of the file.

    A line that cannot be read alone and does not end a sentence is tried together with those that follow it,
    as text copied from a page has its lines broken inside a sentence.
    """
    first = read_line(rows[0][0], _placer(rows[:1]), words)
    if first.line is not None and not _goes_on(rows, 1):
        return 1, first.line
    for count in range(2, min(len(rows), 8) + 1):
        if rows[count - 2][0].rstrip().endswith((".", "!")):
            break
        if _goes_on(rows, count):
            continue
        joined = " ".join(
            row[0].strip() if number else row[0].rstrip() for number, row in enumerate(rows[:count])
        )
        reading = read_line(joined, _placer(rows[:count]), words)
        if reading.line is not None:
            return count, reading.line
    draft.problems.extend(first.problems)
    return 1, first.line


def _goes_on(rows: list[tuple[str, Place]], count: int) -> bool:
    """Say whether the row at the end of the first so many cannot be the end of a sentence."""
    return count < len(rows) and rows[count - 1][0].rstrip().endswith((",", ";", "-", "(", "["))


class _placer:  # noqa: N801 - used as a function: it gives the place of an offset
    """Gives the place in the file of a stretch of text joined from several rows."""

    def __init__(self, rows: list[tuple[str, Place]]) -> None:
        self.starts: list[tuple[int, Place]] = []
        offset = 0
        for number, (text, place) in enumerate(rows):
            lead = len(text) - len(text.lstrip()) if number else 0
            self.starts.append((offset, Place(line=place.line, column=place.column + lead)))
            offset += len(text.strip() if number else text.rstrip()) + 1

    def __call__(self, offset: int, length: int) -> Place:
        start, place = max((entry for entry in self.starts if entry[0] <= offset), key=lambda entry: entry[0])
        return Place(line=place.line, column=place.column + offset - start, length=max(1, length))
