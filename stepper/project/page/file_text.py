"""Write a commented project file from what a page or the knitter gave. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import groupby, pairwise
from typing import Final

from stepper.craft.figures import format_number
from stepper.craft.needles import NEEDLE_ROLES
from stepper.project.instructions import BreakYarn, ChartWork, Line, Needle, WithYarn
from stepper.project.keys.own_lengths import asked_lengths
from stepper.project.nested_records import records_in
from stepper.project.page.drawn.grid_charts import is_yarn
from stepper.project.page.front_values import (
    FoundGauge,
    FoundYarn,
    find_gauges,
    find_needle,
    find_needle_names,
    find_needles,
    find_yarns,
    in_inches,
)
from stepper.project.page.marks import FROM_PAGE, MARK
from stepper.project.page.own_abbreviations import abbreviation_rows
from stepper.project.page.own_stripes import stripe_rows
from stepper.project.page.pasted import Pasted
from stepper.project.page.pieces import PagePart, Piece
from stepper.project.page.quoting import comment, size_line, value, writable
from stepper.project.pattern_heads import heads_pattern, key_of, name_in_head
from stepper.project.reader import read_project
from stepper.project.reading.written_charts import written_key
from stepper.project.rewording.yarn_names import find_called
from stepper.project.stitchwork import ChartPart, Until, Work
from stepper.records import dataclass
from stepper.regex import regex

_RIBBED = regex(r"\b(?:rib|ribbing|neckband|cuffs?|hem|brim|welt|collar|button\s*bands?|bands?)\b")
_COLOURED = regex(r"colou?r|strand|fair|chart|pattern")


@dataclass(frozen=True, slots=True, kw_only=True)
class WrittenFile:
    """A project file, and the rows where the knitter has to look."""

    text: str
    looks: tuple[int, ...]
    """Rows of the file with a mark, from 1."""
    lines: int
    """Pieces read as lines of the pattern."""
    notes: int
    """Marks over text not understood; adjacent pieces in the front matter share one."""


def write_file(pasted: Pasted) -> WrittenFile:
    """Write the project file of a pasted text.

    A line that is read by itself and not among the others, as one named like a round that the page explains
    further up, is put under a mark: else nothing of the file could be knitted.

    Returns:
        The file. Always: every piece of the text is on one row of it, in order.
    """
    made = _write(pasted)
    for _ in range(_MOST_TRIES):
        stopped = _stopped(made.text)
        parts = tuple(_with_marks(part, stopped) for part in pasted.parts)
        if parts == pasted.parts:
            break
        pasted = replace(pasted, parts=parts)
        made = _write(pasted)
    return made


_MOST_TRIES: Final = 3
"""Times a file is written anew: a line that stopped the reading may hide another."""


def _stopped(text: str) -> dict[str, str]:
    """Return the rows of a file that are not read among the others, each with why."""
    rows = text.split("\n")
    found = read_project(text)
    if found.project is not None:
        return {}
    return {rows[one.line - 1].strip(): one.message for one in found.problems if one.line <= len(rows)}


def _with_marks(part: PagePart, stopped: Mapping[str, str]) -> PagePart:
    """Return a part with marks over its lines that are not read among the others."""
    return replace(part, pieces=[_with_mark(piece, stopped) for piece in part.pieces])


def _with_mark(piece: Piece, stopped: Mapping[str, str]) -> Piece:
    """Return a line that is not read among the others under a mark; another piece as it is."""
    if piece.kind != "line" or piece.text not in stopped:
        return piece
    return replace(piece, kind="note", line=None, why=stopped[piece.text])


def _write(pasted: Pasted) -> WrittenFile:
    inches = in_inches(pasted.text)
    gauges = find_gauges(pasted.text)
    yarns, names = _yarns(pasted)
    rows = [
        *_head(pasted),
        f"title: {value(pasted.title)}",
        f"units: {'in' if inches else 'cm'}",
        *_sizes(pasted),
        *yarns,
        *_gauges(gauges, pasted.text, inches=inches),
        *_needles(pasted, gauges),
        *abbreviation_rows(pasted.abbreviations, [p.text for p in pasted.pieces if p.kind != "comment"]),
        *stripe_rows(pasted.stripes),
        *_charts(pasted, names),
        *_lengths(pasted),
        "",
        "sections:",
    ]
    for part in pasted.parts:
        rows += _section(part, gauges)
    if not pasted.parts:
        rows += ["  - name: pattern", "    work: |", *_NO_LINE]
    looks = tuple(at for at, row in enumerate(rows, start=1) if re.search(rf"# {MARK}\b", row))
    lines = sum(piece.kind == "line" for piece in pasted.pieces)
    notes = sum(bool(re.search(rf"# {MARK} \(rows? \d", row)) for row in rows)
    return WrittenFile(text="\n".join(rows) + "\n", looks=looks, lines=lines, notes=notes)


_NO_LINE: Final = (
    f"      # {MARK}: no line of a pattern was found in the text.",
    "      Note: Type the lines of the pattern here, each as it is printed.",
)
_KEPT: Final = (
    "# A row that is to be knitted and is not read can be kept in its words, with the stitches after it:",
    "# Own words: work the motif as on page 3. 96 sts.",
    "# Before the colon may stand what has to be known of it: Own words, until piece measures 12 cm: …",
)


def _head(pasted: Pasted) -> list[str]:
    rows = [
        f"{FROM_PAGE} All of the text stands here, in its order. Rows that",
        f"# begin with # are not knitted. Where {MARK} stands, something was not found or not understood:",
        "# put it right, then let `stepper check` read the file.",
        *(_KEPT if any(piece.kind == "note" for piece in pasted.pieces) else ()),
        "",
    ]
    if pasted.front:
        rows.append("# The text before the first line of the pattern:")
        rows += [*_front(pasted.front), ""]
    return rows


def _front(pieces: Sequence[Piece]) -> list[str]:
    """Write front matter as comments, each run of a kind under its name, and doubtful ones under a mark."""
    rows: list[str] = []
    for (kind, front), run in groupby(pieces, key=lambda piece: (piece.kind, piece.front)):
        group = list(run)
        if kind == "note":
            first, last = group[0].row, group[-1].row
            where = f"row {first}" if first == last else f"rows {first}-{last}"
            rows.append(f"# {MARK} ({where} of the text): {group[0].why}")
        else:
            rows.append(_named(front))
        rows += [comment(piece.text) for piece in group]
    return rows


def _named(front: str) -> str:
    """Write the row that names a kind of front matter, above its rows."""
    return f"# --- {front} ---"


def _sizes(pasted: Pasted) -> list[str]:
    names = pasted.sizes
    if not names:
        example = "Write them as printed, for example: sizes: S (M, L)"
        return ["", f"# {MARK}: the sizes are not sure: {pasted.sizes_doubt} {example}"]
    if any(re.search(r"[(\[\]),;:#\"\\]", name) for name in names):
        names = tuple(str(at) for at in range(1, len(names) + 1))
    rows = ["", f"sizes: {size_line(names)}"]
    if not pasted.sizes_found and len(names) > 1:  # a page in one size has no name for it
        rows[1] += f"  # {MARK}: the text names no sizes; numbered by its lists"
    if len(names) > 1:
        rows += ["knit:", f"  size: {value(names[0])}  # {MARK}: which size do you knit?"]
    return rows


def _yarns(pasted: Pasted) -> tuple[list[str], dict[str, str]]:
    """Return the rows of the yarns, and their names by their keys."""
    found = {yarn.key: yarn for yarn in find_yarns(pasted.yarn_rows)}
    rows = ["", "yarn:"]
    names = {key: yarn.name for key, yarn in found.items()}
    for yarn in found.values():
        rows.append(f"  {yarn.key}: {{{', '.join([*_yarn(yarn), *_letter(yarn.key, names, pasted)])}}}")
    if not found:
        found["MC"] = FoundYarn(key="MC", name="main yarn")
        names["MC"] = "main yarn"
        rows.append(f"  MC: {{name: main yarn}}  # {MARK}: no yarn was found in the text")
    known = {key.lower() for key in found}
    meant = [words for chart in pasted.charts for _, words in chart.key]
    signs = (each for words in meant for each in (words, words.rpartition(" ")[0]) if is_yarn(each))
    for key in dict.fromkeys((*_yarn_keys(line for line in _lines(pasted)), *signs)):
        if key.lower() not in known and re.fullmatch(r"[A-Za-z]\w{0,2}", key):
            known.add(key.lower())
            names[key] = f"yarn {key}"
            inner = ", ".join([f"name: {value(names[key])}", *_letter(key, names, pasted)])
            rows.append(f"  {value(key)}: {{{inner}}}  # {MARK}: what is it called?")
        elif key.lower() not in known and not _called(key, found):
            known.add(key.lower())  # "change to white" says the colour: the letters are for the charts alone
            letters = next(each for each in _keys_for(key) if each.lower() not in known)
            known.add(letters.lower())
            names[letters] = key.lower()
            inner = ", ".join([f"name: {value(key.lower())}", *_letter(letters, names, pasted)])
            rows.append(f"  {letters}: {{{inner}}}")
    return rows, names


def _called(name: str, yarns: Mapping[str, FoundYarn]) -> bool:
    """Return whether one of the yarns is called by a colour, or by its part in the pattern."""
    return find_called(name.lower(), {key: yarn.name for key, yarn in yarns.items()}) in yarns


def _keys_for(colour: str) -> Iterator[str]:
    """Yield keys for a yarn that the lines call by its colour, the shortest first."""
    yield colour[0].upper()
    yield colour[:2].capitalize()
    yield colour[:3].capitalize()
    yield from (f"{colour[0].upper()}{number}" for number in range(1, 100))


def _yarn(yarn: FoundYarn) -> list[str]:
    """Return what is known of a yarn."""
    measured = yarn.grams and yarn.metres
    skein = [f"skein: {{grams: {yarn.grams}, metres: {yarn.metres}}}"] if measured else []
    return [f"name: {value(yarn.name)}", *skein]


def _letter(key: str, names: Mapping[str, str], pasted: Pasted) -> list[str]:
    """Return the letter by which the rounds of the page count a yarn, if it explains one."""
    letters = pasted.letters.items()
    return [f"letter: {letter}" for letter, words in letters if find_called(words.lower(), names) == key][:1]


def _lines(pasted: Pasted) -> Iterator[Line]:
    for piece in pasted.pieces:
        if piece.line is not None:
            yield piece.line


def _yarn_keys(lines: Iterable[Line]) -> Iterator[str]:
    for line in lines:
        for record in records_in(line.sentences):
            named = isinstance(record, WithYarn | BreakYarn | Work | Until) and record.yarn
            if named and named.lower() != "ccs":  # all contrast yarns of the page
                yield named
        if line.stripes is not None:
            yield from (yarn for _, yarn in line.stripes.stripes)


def _gauges(gauges: Sequence[FoundGauge], text: str, *, inches: bool) -> list[str]:
    """Return the rows of the gauges; one on no needle has the first of the page, marked if it has several."""
    needle, several = find_needle(text), len(find_needles(text)) > 1
    rows = ["", f"gauge:  # stitches and rounds over {'4 in' if inches else '10 cm'}"]
    for found in gauges:
        mm = found.needle_mm or needle
        inner = [f"needle: {format_number(mm)} mm"] if mm else []
        rounds = found.rounds or round(found.stitches * 30 / 22)
        inner += [f"stitches: {format_number(found.stitches)}", f"rounds: {format_number(rounds)}"]
        if found.blocked:
            stitches, high = found.blocked
            inner.append(f"blocked: {{stitches: {format_number(stitches)}, rounds: {format_number(high)}}}")
        doubts = [] if found.rounds else ["the text gives no rows; these are made up"]
        doubts += ["the text does not say on which of its needles"] if several and not found.needle_mm else []
        why = f"  # {MARK}: {'; '.join(doubts)}" if doubts else ""
        rows.append(f"  {value(found.name)}: {{{', '.join(inner)}}}{why}")
    if not gauges:
        size = f"needle: {format_number(needle)} mm, " if needle else ""
        why = f"# {MARK}: no gauge was found; this one is made up"
        rows.append(f"  plain: {{{size}stitches: 22, rounds: 30}}  {why}")
    return rows


def _needles(pasted: Pasted, gauges: Sequence[FoundGauge]) -> list[str]:
    """Return the needles of the page, if its lines call them smaller, or by their use, and no gauge tells."""
    words = {
        record.printed
        for line in _lines(pasted)
        for record in records_in(line.sentences)
        if isinstance(record, Needle)
    }
    called = find_needle_names(pasted.text) if words & NEEDLE_ROLES.keys() else {}
    if called:
        sizes = find_needles(pasted.text)
        names = {mm: name for name, mm in called.items()}
        listed = ", ".join(f"{format_number(mm)} mm {names.get(mm, '')}".strip() for mm in sizes)
        return ["", f"needles: {listed}  # each with what the page calls it by"]
    spoken = bool(words & {"smaller", "larger", "rib", "main"})
    named, sizes = {gauge.needle_mm for gauge in gauges if gauge.needle_mm}, find_needles(pasted.text)
    listed = ", ".join(f"{format_number(size)} mm" for size in sizes)
    if spoken and len(sizes) > len(named) == 2:
        return ["", f"needles: {listed}  # more than two: the lines do not say which they call smaller"]
    if not spoken or len(named) == 2 or len(sizes) != 2:
        return []
    return ["", f'needles: {listed}  # "smaller" and "larger" are of these']


def _lengths(pasted: Pasted) -> list[str]:
    """Return the lengths that lines of the page leave to the knitter, to be filled in."""
    asked: dict[str, str] = {}
    for part in pasted.parts:
        for piece in part.pieces:
            for name in asked_lengths((piece.line,) if piece.line is not None else (), part.name):
                asked.setdefault(name, " ".join(piece.text.split()))
    rows = ["", "lengths:  # what the page leaves to you"] if asked else []
    for name, line in asked.items():
        asks = f"how long do you want it? Write it here, as 24 cm. ({writable(line)})"
        rows.append(f"  {value(name)}:  # {MARK}: {asks}")
    return rows


def _charts(pasted: Pasted, yarns: Mapping[str, str]) -> list[str]:
    drawn = {chart.name: chart for chart in pasted.charts}
    asked = dict.fromkeys(
        record.name.lower()
        for line in _lines(pasted)
        for record in records_in(line.sentences)
        if isinstance(record, ChartWork | ChartPart) and not getattr(record, "defined", False)
    )
    written = _written(pasted)
    missing = [name for name in asked if name not in drawn and not written_key(name, written, drawn)]
    if not drawn and not missing:
        return []
    rows = ["", "charts:"]
    for chart in drawn.values():
        key = ", ".join(f"{_sign(sign)}: {value(_meant(words, yarns))}" for sign, words in chart.key)
        rows += [f"  {value(chart.name)}:", f"    key: {{{key}}}"]
        rows += [f"    repeat: {chart.repeat}"] if chart.repeat else []
        rows += [f"    drawn: {chart.drawn}"] if chart.drawn else []
        rows.append("    rows: |")
        rows += [f"      {row}" for row in chart.rows]
    for name in missing:
        rows += [
            f"  {value(name)}:  # {MARK}: the text draws no such chart; draw it, the bottom row worked first",
            '    key: {".": k}',
            "    rows: |",
            "      .",
        ]
    return rows


def _meant(words: str, yarns: Mapping[str, str]) -> str:
    """Return what a sign of a chart means: the key of the yarn that it calls, a stitch, or a stitch in it."""
    yarn, _, stitch = words.rpartition(" ")
    if is_yarn(words):
        return find_called(words.lower(), yarns)
    return f"{find_called(yarn.lower(), yarns)} {stitch}" if is_yarn(yarn) else words


def _written(pasted: Pasted) -> set[str]:
    """Return the keys of the charts whose rows the page writes out."""
    found = set[str]()
    for part in pasted.parts:
        told = [piece for piece in part.pieces if piece.kind != "comment"]
        heads = (head.text for head, below in pairwise(told) if heads_pattern(head.text, below.text))
        found |= {key for name in heads if "chart" in (key := key_of(name_in_head(name))).split()}
    return found


def _sign(sign: str) -> str:
    escaped = sign.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'


def _section(part: PagePart, gauges: Sequence[FoundGauge]) -> list[str]:
    rows = [f"  - name: {value(part.name)}"]
    gauge = _gauge_of(part, gauges)
    rows += [f"    gauge: {value(gauge)}"] if gauge else []
    rows.append("    work: |")
    before = ""
    for piece in part.pieces:
        named = piece.front not in ("", "heading", before)
        rows += [f"      {row}" for row in ([_named(piece.front)] if named else []) + _piece(piece)]
        before = piece.front
    return rows if any(piece.kind != "comment" for piece in part.pieces) else [*rows, *_NO_LINE]


def _piece(piece: Piece) -> list[str]:
    if piece.kind == "comment":
        return [comment(piece.text)]
    if piece.kind == "label":
        return [f"{piece.text.rstrip(' :.')}:"]
    if piece.kind == "line":
        return [piece.text]
    why = f": {' '.join(writable(piece.why).split())}" if piece.why else "."
    open_end = " …" if piece.text.endswith((",", ";", "-", "(", "[")) else ""
    return [f"# {MARK} (row {piece.row} of the text){why}", f"Note: {piece.text}{open_end}"]


def _gauge_of(part: PagePart, gauges: Sequence[FoundGauge]) -> str:
    """Return the gauge of a section: the one named after its heading, or the one its name suggests."""
    names = [gauge.name for gauge in gauges]
    for name in names:
        if re.search(rf"\b{re.escape(name)}\b", part.aside):
            return name
    if len(names) < 2:
        return ""
    ribs = [name for name in names if "rib" in name]
    coloured = [name for name in names if _COLOURED.search(name)]
    charted = any(
        isinstance(record, ChartWork | ChartPart) and not getattr(record, "defined", False)
        for piece in part.pieces
        if piece.line is not None
        for record in records_in(piece.line.sentences)
    )
    if ribs and _RIBBED.search(part.name):
        return ribs[0]
    if coloured and charted:
        return coloured[0]
    return next((name for name in names if name not in ribs and name not in coloured), names[0])
