"""Read project text into a checked `Project`, or every problem it has. No I/O."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import replace

from stepper.project.draft import FileDraft, Pictures
from stepper.project.instructions import Line, Unread
from stepper.project.keys import outline
from stepper.project.keys.alterations import check_alterations, read_alteration, say_instead
from stepper.project.keys.even_spacing import read_rounds_over, read_spacing
from stepper.project.keys.materials import (
    UNREAD,
    read_body,
    read_fabrics,
    read_float_limit,
    read_needle_names,
    read_needles,
    read_wanted_ease,
    read_yarns,
    read_yes,
)
from stepper.project.keys.own_lengths import give_lengths, read_own_lengths
from stepper.project.lines import read_work
from stepper.project.model import (
    Alteration,
    Chart,
    Fabric,
    OwnCue,
    Project,
    RuleKind,
    Section,
    Switch,
    Yarn,
)
from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.lists import can_be_name
from stepper.project.problems import Problem, Span, nearest, one_of
from stepper.project.reading.wording import Words
from stepper.project.reading.written_charts import call_written_charts
from stepper.project.sizes import find_size, nearest_size, read_sizes
from stepper.project.stripes.stripe_sequences import StripeSequences
from stepper.project.yaml_file.fields import Fields
from stepper.project.yaml_file.source import Mapping, Scalar, read_nodes
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class FileReading:
    """The outcome of reading a file: a project, or problems; with problems there is no project."""

    project: Project | None
    problems: tuple[Problem, ...]
    partial: Project | None = None
    """With problems: as much of the project as could be read, so that its other counts can be checked."""


def read_project(text: str, pictures: Pictures | None = None) -> FileReading:
    """Read and check the text of a project file.

    Args:
        text: The whole file.
        pictures: Finds the pictures that charts name; if None, they are problems.

    Returns:
        The project, or every problem found in one pass, in the order of the file.
    """
    root, problems = read_nodes(text)
    draft = FileDraft(text_lines=text.splitlines(), problems=problems, pictures=pictures)
    if problems:
        return FileReading(project=None, problems=tuple(sorted(set(problems))))
    if not isinstance(root, Mapping):
        place = root.place if root is not None else Span(line=1, column=1)
        told = "a project file holds keys and values."
        draft.report(place, told, "Begin with `title: …`; see `stepper start`.")
        return FileReading(project=None, problems=tuple(draft.problems))
    project = _read_root(root, draft)
    found = tuple(sorted(set(draft.problems)))
    if not found:
        return FileReading(project=project, problems=())
    return FileReading(project=None, problems=found, partial=_as_far_as_known(project, draft))


def _as_far_as_known(project: Project | None, draft: FileDraft) -> Project | None:
    """Mark lines that use anything unreadable as unread themselves: one fault is reported once."""
    if project is None:
        return None
    sections = []
    for section in project.sections:
        lines = tuple(_known(line, draft) for line in section.lines)
        sections.append(replace(section, lines=lines))
    return replace(project, sections=tuple(sections))


def _known(line: Line, draft: FileDraft) -> Line:
    words = line.text.lower().split()
    faulty = any(name.lower() in " ".join(words) for name in draft.faulty)
    return replace(line, sentences=(Unread(line.place),)) if faulty else line


def _read_root(root: Mapping, draft: FileDraft) -> Project | None:
    fields = Fields(root, "the file", draft.problems)
    title = fields.text("title", required=True)
    finish_by = _finish_by(fields, draft)
    draft.inches = _units(fields, draft) == "in"
    draft.sizes = _sizes(fields, draft)
    size, switches, alone = _knit(fields, draft)
    draft.yarns = read_yarns(fields, draft)
    draft.fabrics = read_fabrics(fields, draft)
    needles_mm = read_needles(fields, draft)
    body = read_body(fields, draft)
    wanted_ease = read_wanted_ease(fields, draft)
    float_mm, float_stitches = read_float_limit(fields, draft)
    spacing = read_spacing(fields, draft)
    abbreviations, stripes = _read_abbreviations(fields, draft), _read_stripes(fields, draft)
    draft.charts = _charts(fields, draft, abbreviations.single())
    alterations = _alterations(fields, draft)
    cues = _cues(fields, draft)
    lengths = read_own_lengths(fields, draft)
    sections = give_lengths(_sections(fields, draft, abbreviations, stripes), lengths, draft)
    fields.close()
    outline.check_labels(sections, switches, draft)
    check_alterations(alterations, sections, draft)
    if not draft.sizes or not sections:
        return None
    return Project(
        title=title.text.strip() if title is not None else "",
        units="in" if draft.inches else "cm",
        sizes=draft.sizes,
        size=size,
        switches=switches,
        yarns=draft.yarns,
        fabrics=draft.fabrics or {UNREAD.name: UNREAD},
        needles_mm=needles_mm,
        needle_names=read_needle_names(fields),
        charts=draft.charts,
        sections=sections,
        alterations=alterations,
        body=body,
        wanted_ease=wanted_ease,
        finish_by=finish_by,
        float_mm=float_mm,
        float_stitches=float_stitches,
        cues=cues,
        spacing=spacing,
        alone=alone,
    )


def _finish_by(fields: Fields, draft: FileDraft) -> str | None:
    node = fields.text("finish_by")
    if node is None:
        return None
    try:
        return datetime.date.fromisoformat(node.text.strip()).isoformat()
    except ValueError:
        draft.report(node.place, f'"{node.text}" is not a date.', "Write it as 2027-02-14: year, month, day.")
        return None


def _units(fields: Fields, draft: FileDraft) -> str:
    node = fields.text("units")
    if node is None:
        return "cm"
    word = {"inch": "in", "inches": "in"}.get(node.text.strip().lower(), node.text.strip().lower())
    if word not in ("cm", "in"):
        draft.report(node.place, f'`units` is "{node.text}".', "Write cm or in.")
    return word


def _sizes(fields: Fields, draft: FileDraft) -> tuple[str, ...]:
    node = fields.text("sizes", required=True)
    if node is None:
        return ()
    sizes = read_sizes(node.text)
    lowered = [size.lower() for size in sizes]
    if not sizes or len(set(lowered)) != len(lowered):
        told = f'"{node.text}" does not name sizes that differ.'
        draft.report(node.place, told, "Write them as printed: 1 (2, 3, 4).")
        return ()
    return sizes


def _size(node: Scalar | None, draft: FileDraft) -> int:
    if node is None or not draft.sizes:
        return 0
    found = find_size(node.text, draft.sizes)
    if found is None:
        draft.report(node.place, f'there is no size "{node.text}".', nearest_size(node.text, draft.sizes))
        return 0
    return found


def _knit(fields: Fields, draft: FileDraft) -> tuple[int, tuple[Switch, ...], Span | None]:
    node = fields.mapping("knit", required=len(draft.sizes) > 1)
    if node is None:
        return 0, (), None
    inner = Fields(node, "`knit`", draft.problems)
    before = len(draft.problems)
    size = _size(inner.text("size", required=True), draft)
    is_known = len(draft.problems) == before
    switches = []
    for item in inner.items("then"):
        if not isinstance(item, Mapping):
            told = "an entry of `then` must name a line and a size."
            draft.report(item.place, told, "Write - {from: Final increase, size: 2}.")
            continue
        entry = Fields(item, "an entry of `then`", draft.problems)
        label = entry.text("from", required=True)
        to = entry.text("size", required=True)
        reshape = read_yes(entry, "reshape", draft)
        over = read_rounds_over(entry, draft)
        entry.close()
        if label is not None and to is not None:
            switches.append(
                Switch(
                    label=label.text.strip(),
                    size=_size(to, draft),
                    place=label.place,
                    reshape=reshape,
                    over=over,
                )
            )
    only = inner.text("only")
    alone = _alone(only, size, switches, draft) if is_known or only is None else only.place
    inner.close()
    return size, tuple(switches), alone


def _alone(node: Scalar | None, size: int, switches: Sequence[Switch], draft: FileDraft) -> Span | None:
    """Read for which size alone the file is kept; it has to be the one that is knitted."""
    if node is None or not draft.sizes:
        return None
    before = len(draft.problems)
    only = _size(node, draft)
    if len(draft.problems) > before:
        return node.place
    name, knitted = draft.sizes[only], draft.sizes[size]
    if only != size:
        told = f"the file is kept for size {name} alone, and size {knitted} is to be knitted."
        hint = f"Its single counts are those of size {name}: put those of size {knitted} in their place, "
        draft.report(node.place, told, f"{hint}then write only: {knitted}")
    elif switches:
        told = f"the file is kept for size {name} alone, so that no other can be switched to."
        hint = "Take `only` out and give the counts of every size, or take `then` out."
        draft.report(switches[0].place, told, hint)
    return node.place


def _charts(fields: Fields, draft: FileDraft, own: dict[str, str]) -> dict[str, Chart]:
    node = fields.mapping("charts")
    charts: dict[str, Chart] = {}
    if node is None:
        return charts
    outer = Fields(node, "`charts`", draft.problems)
    for name, (_, value) in outer.found.items():
        if not isinstance(value, Mapping):
            draft.report(value.place, f'chart "{name}" must hold a key and rows.')
            draft.faulty.add(name)
            continue
        before = len(draft.problems)
        chart = outline.read_chart(name, value, draft, own)
        if chart is not None:
            charts[name] = chart
        if chart is None or len(draft.problems) > before:
            draft.faulty.add(name)
    return charts


def _read_abbreviations(fields: Fields, draft: FileDraft) -> Abbreviations:
    """Read what the page means by its abbreviations."""
    found = Abbreviations()
    node = fields.mapping("abbreviations")
    inner = Fields(node, "`abbreviations`", draft.problems) if node is not None else None
    for name, (key, value) in inner.found.items() if inner is not None else ():
        problem: Problem | None
        if not isinstance(value, Scalar) or not value.text.strip():
            problem = value.place.problem("an abbreviation is explained in one line of words.")
        elif name in {*draft.yarns, *draft.fabrics, *draft.sizes}:
            problem = key.place.problem(f'"{name}" is a yarn, a gauge or a size of this file.')
        elif not can_be_name(name):
            problem = key.place.problem(
                f'"{name}" is not read as the abbreviation of a stitch.', "Write one word, as in SE: …"
            )
        else:
            problem = found.define(name, value.text, key.place)
        if problem is not None:
            draft.problems.append(problem)
    return found


def _read_stripes(fields: Fields, draft: FileDraft) -> StripeSequences:
    """Read the stripe sequences of the page: `stripes: {stripe sequence: "4 rnds MC, 2 rnds CC"}`."""
    found = StripeSequences()
    node = fields.mapping("stripes")
    inner = Fields(node, "`stripes`", draft.problems) if node is not None else None
    names = [*draft.yarns, *(yarn.name for yarn in draft.yarns.values())]
    for name, (key, value) in inner.found.items() if inner is not None else ():
        if not isinstance(value, Scalar) or not found.take([f"{name}: {value.text}"], names):
            told = f'"{name}" is not read as a stripe sequence.'
            hint = 'Write it as stripe sequence: "4 rnds MC, 2 rnds CC", in yarns of the file.'
            draft.report(key.place, told, hint)
    return found


def _alterations(fields: Fields, draft: FileDraft) -> tuple[Alteration, ...]:
    found = []
    for item in fields.items("alterations"):
        if isinstance(item, Mapping):
            inner = Fields(item, "an alteration", draft.problems)
            note = inner.text("note", required=True)
            inner.close()
            if note is not None:
                found.append(Alteration(kind=RuleKind.NOTE, text=note.text.strip(), place=note.place))
        elif isinstance(item, Scalar):
            made = read_alteration(item.text, item.place, inches=draft.inches)
            if made is None:
                told = f'"{item.text}" is not an alteration the program can carry out.'
                draft.report(item.place, told, say_instead(item.text))
            else:
                found.append(made)
        else:
            draft.report(item.place, "an alteration is one line of words.")
    return tuple(found)


def _cues(fields: Fields, draft: FileDraft) -> tuple[OwnCue, ...]:
    node = fields.mapping("cues")
    if node is None:
        return ()
    inner = Fields(node, "`cues`", draft.problems)
    found = []
    for words, (key, value) in inner.found.items():
        if isinstance(value, Scalar) and value.text.strip():
            meant = value.text.strip()
            found.append(OwnCue(words=words, meant=meant, place=key.place, meant_place=value.place))
        else:
            draft.report(value.place, "a cue is one line of words.")
    return tuple(found)


def _sections(
    fields: Fields, draft: FileDraft, abbreviations: Abbreviations, stripes: StripeSequences
) -> tuple[Section, ...]:
    sections = []
    names: dict[str, Span] = {}
    words = Words(
        sizes=len(draft.sizes),
        names={*draft.charts, *draft.yarns, *draft.fabrics},
        inches=draft.inches,
        size_names=draft.sizes,
        yarns={key: yarn.name for key, yarn in draft.yarns.items()},
        letters={yarn.letter: key for key, yarn in draft.yarns.items() if yarn.letter},
    )
    items = fields.items("sections", required=True)
    for number, item in enumerate(items):
        if not isinstance(item, Mapping):
            draft.report(item.place, "a section must hold a name and work.")
            continue
        behind = _name_of(items[number + 1]) if number + 1 < len(items) else ""
        section = _section(item, words, draft, abbreviations, stripes, behind)
        if section is None:
            continue
        if section.name in names:
            told = f'"{section.name}" names two sections; the first is on line {names[section.name].line}.'
            draft.report(section.place, told)
        names[section.name] = section.place
        sections.append(section)
    return call_written_charts(tuple(sections), draft.charts)


def _name_of(item: object) -> str:
    """Return the name of a section that is not read yet; empty if it has none."""
    entries = item.entries if isinstance(item, Mapping) else []
    return next((text.text for key, text in entries if key.text == "name" and isinstance(text, Scalar)), "")


def _section(
    item: Mapping,
    words: Words,
    draft: FileDraft,
    abbreviations: Abbreviations,
    stripes: StripeSequences,
    behind: str,
) -> Section | None:
    fields = Fields(item, "a section", draft.problems)
    name = fields.text("name", required=True)
    title = name.text.strip() if name is not None else "?"
    fields.what = f'section "{title}"'
    gauge = _chosen(fields, "gauge", draft.fabrics, draft)
    yarn = _chosen(fields, "yarn", draft.yarns, draft)
    short_rows = _short_rows(fields, draft)
    work = fields.take("work", required=True)
    fields.close()
    if work is None or name is None:
        return None
    lines = read_work(work, words, draft, abbreviations, stripes, behind)
    return Section(
        name=title,
        gauge=gauge,
        yarn=yarn,
        lines=lines,
        place=name.place,
        short_rows=short_rows,
        own_yarn="yarn" in fields.found,
        own_gauge="gauge" in fields.found,
    )


def _short_rows(fields: Fields, draft: FileDraft) -> str:
    node = fields.text("short_rows")
    if node is None:
        return ""
    word = " ".join(node.text.lower().replace("&", "and").split())
    method = {"german": "german", "wrap": "wrap", "wrap and turn": "wrap", "plain": "plain"}.get(word, "")
    if not method:
        draft.report(node.place, f'`short_rows` is "{node.text}".', "Write german, wrap and turn, or plain.")
    return method


def _chosen(fields: Fields, name: str, known: dict[str, Yarn] | dict[str, Fabric], draft: FileDraft) -> str:
    """Read the name of a yarn or gauge; without one, return the first in the file."""
    node = fields.text(name)
    first = next(iter(known), "")
    if node is None:
        return first
    if node.text.strip() in known:
        return node.text.strip()
    if known:
        hint = nearest(node.text, known) or f"The file has {one_of(known)}."
        draft.report(node.place, f'there is no {name} "{node.text}" in this file.', hint)
    return first
