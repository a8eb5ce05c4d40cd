"""Turn a printed pattern line into instructions.

Theory of operation. A line is first made plain: typographic signs are replaced by plain ones, one for one, so
that columns stay true. A note and a label are taken off its front. The rest goes through the grammar in
`wording.lark` (`stepper.project.reading.parsing`), and the tree becomes records of
`stepper.project.instructions`. Where the grammar stops, `stepper.project.reading.explaining` says why and
which word was meant.

It is longer than other modules: what is taken off the front of a line, its label, sizes and notes, is taken
off here in one order, and each step reads what the one before has left.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import field, replace

from stepper.project.duration import Rounds, Times
from stepper.project.instructions import (
    Assumed,
    Labelled,
    Line,
    Phrase,
    PrintedCount,
    Remark,
    Repeated,
    RowsCount,
    Sentence,
    WithYarn,
    WorkRounds,
)
from stepper.project.problems import Problem, Span
from stepper.project.reading.chart_repeats import with_repeats_told
from stepper.project.reading.explaining import Explained, Trials, explain, meant_words, misspelt_head
from stepper.project.reading.left_out_sizes import sizes_left_out
from stepper.project.reading.own_words import (
    OwnRow,
    find_own_row,
    is_own_row,
    known_refused,
    misspelt_own,
    with_own_words,
    words_refused,
)
from stepper.project.reading.parsing import NOTE, Stopped, Understood, made_plain, stop_of, understood
from stepper.project.reading.row_ends import (
    change_in_doubt,
    joined_stops,
    on_rows,
    split_at_turns,
    split_over_end,
    with_open_edge,
    work_once,
)
from stepper.project.reading.sentences import Builder, Head
from stepper.project.rewording.asides import label_times
from stepper.project.rewording.remarks.edge_rules import insets_in
from stepper.project.rewording.remarks.finishing import is_off_the_needles
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.size_lists import write_lists_plainly
from stepper.project.rewording.work.counts_apart import counts_in_doubt
from stepper.project.rewording.yarn_names import find_called, with_names
from stepper.project.size_heads import SizeHead, size_head
from stepper.project.sizes import (
    HEAD_OF_SIZES,
    begun_by_size,
    find_size,
    is_other_make,
    names_people,
    names_whose,
    nearest_size,
    sizes_in_prose,
)
from stepper.project.stitchwork import Numbers
from stepper.records import dataclass
from stepper.regex import regex

EXAMPLES = (
    "Cast on 80 sts.",
    "Join in the round.",
    "Knit 2 rounds.",
    "*K2, p2; rep from * to end.",
    "K1, k2tog, k to last 3 sts, ssk, k1.",
    "(k1, yo) 3 times, k to end.",
    "Rnds 1-4: Knit.",
    "Rep rnds 1-2 5 times.",
    "Rep last round until piece measures 30 cm.",
    "Work for 3 cm.",
    "Work 4 rounds in pattern.",
    "Knit until piece measures 32 cm.",
    "Increase evenly to 246 sts.",
    "Decrease 12 sts evenly.",
    "Chart trail, 2 times.",
    "Chart trail, rounds 3-9.",
    "Dec round: K1, k2tog, k to last 3 sts, ssk, k1.",
    "Work dec round every 8th round 6 times.",
    "K34, hold 46 for left sleeve, cast on 8, k to end.",
    "Return left sleeve to needles.",
    "Pick up and knit 8 sts, k to end.",
    "Place marker every 20 sts.",
    "Change to 3.75 mm needles.",
    "With A, knit 2 rounds.",
    "Break A.",
    "Bind off in pattern.",
    "Bind off stretchily.",
    "Note: words to be said.",
)
"""One legal line of every kind; shown if nothing nearer is found, and read by a test."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LineReading:
    """What one printed line reads as: the line, or the problems that stopped it."""

    line: Line | None
    problems: tuple[Problem, ...] = ()
    meant: Line | None = None
    """The line as it reads with the suggested words, if it does; the arithmetic goes on with it."""


@dataclass(slots=True, kw_only=True)
class Words:
    """The names that a garment adds to the legal words: charts, yarns, labels."""

    sizes: int
    """How many sizes the pattern has; every list must have as many entries, or one. 0 if unknown."""
    names: set[str] = field(default_factory=set)
    inches: bool = False
    size_names: tuple[str, ...] = ()
    """The names of the sizes, for lines that are for some of them."""
    insets: dict[str, int] = field(default_factory=dict)
    """How many stitches stand outside all increases and decreases of the section, as its lines say so far."""
    sizes_above: tuple[int, ...] | None = None
    """The sizes the lines right above are for, as indices, where those are for some; None if not known."""
    finishing: bool = False
    """Whether the lines stand below a heading of finishing."""
    yarns: dict[str, str] = field(default_factory=dict)
    """The names of the yarns, by their keys."""
    letters: dict[str, str] = field(default_factory=dict)
    """The letters by which rounds count their colours, each with its yarn: "M2, R1"."""
    trials: Trials = field(default_factory=Trials)
    """How much of the search for words that were meant is left in this file."""


def reads(text: str, size_names: tuple[str, ...] = (), *, finishing: bool = False) -> bool:
    """Return whether a line is in own words or the grammar reads it, without finding out why not.

    Args:
        text: The line.
        size_names: The sizes of the pattern, whose names may stand in front of it; empty if not known.
        finishing: Whether it stands below a heading of finishing.
    """
    if is_own_row(made_plain(text)):
        return True
    plain = made_plain(" ".join(text.split()))
    if is_other_make(plain, size_names):
        return True
    head = size_head(plain, size_names)
    some = None if head else sizes_in_prose(plain)
    start = head.end if head else some.end() if some else 0
    worked = plain[: head.row] + plain[start : head.stop] if head else plain[start:]
    return stop_of(worked) is None or is_off_the_needles(plain, finishing=finishing)


_SPACES = regex(r"(?<=\S)[^\S\n]{2,}(?=\S)")


def read_line(text: str, place_of: Callable[[int, int], Span], words: Words) -> LineReading:
    """Read one printed line. What is not read otherwise, and is all done off the needles, is a remark.

    Args:
        text: The line as written, possibly joined from several lines of the file.
        place_of: Returns the place in the file of a stretch of `text`, from its offset from 0 and length.
        words: The names this garment adds.

    Returns:
        The line, or the problems that stopped it; never both.
    """
    reading = _read_line(text, place_of, words)
    if reading.line is not None or not is_off_the_needles(made_plain(text), finishing=words.finishing):
        return reading
    whole = place_of(0, len(text))
    return LineReading(line=_line(None, Head(), (Remark(text.strip().rstrip("."), whole),), text, whole))


def _read_before_words(
    text: str, plain: str, whole: Span, place_of: Callable[[int, int], Span], words: Words
) -> LineReading | None:
    """Read a line that is known by its beginning: a note, a line of some sizes, another make, own words."""
    note = NOTE.match(plain)
    if note:
        remark = Remark(text[note.end() :].strip().rstrip("."), place_of(note.end(), len(plain) - note.end()))
        return LineReading(line=_line(None, Head(), (remark,), text, whole))
    only = size_head(plain, words.size_names)
    if only is not None:
        return _for_sizes(text, only, place_of, words)
    if is_other_make(plain, words.size_names):
        return LineReading(line=_line(None, Head(), (Remark(text.strip().rstrip("."), whole),), text, whole))
    return _read_own_words(text, plain, place_of, words)


def _read_line(text: str, place_of: Callable[[int, int], Span], words: Words) -> LineReading:
    """Read one printed line as what it works.

    Args:
        text: The line as written, possibly joined from several lines of the file.
        place_of: Returns the place in the file of a stretch of `text`, from its offset from 0 and length.
        words: The names this garment adds.

    Returns:
        The line, or the problems that stopped it; never both.
    """
    if _SPACES.search(text):
        return _read_spread(text, place_of, words)
    plain = made_plain(text)
    whole = place_of(len(plain) - len(plain.lstrip()), len(plain.strip()) or 1)
    early = _read_before_words(text, plain, whole, place_of, words)
    if early is not None:
        return early
    read = understood(plain)
    label, side = read.label, read.side
    refused = _refused(read, plain, whole, place_of, words)
    if refused is not None:
        return refused
    said = tuple(read.reworded.kept)
    if read.outcome is None:
        remarks = tuple(Remark(words_, whole) for words_ in said)
        open_ = _left_open(said, whole)
        return LineReading(line=replace(_line(label, Head(), remarks, text, whole), assumed=open_))

    def printed_at(offset: int, length: int) -> Span:
        return place_of(*read.reworded.place(read.start + offset, length))

    builder = Builder(place_of=printed_at, words=words.sizes, insets=words.insets | insets_in(said))
    head, sentences = _named(builder.build(read.outcome, inches=words.inches), read, words)
    label, times = label_times(label) if label else (label, 0)
    if times:
        head = replace(head, times=Numbers((times,), whole))
    sentences = split_over_end(head, joined_stops(head, label, sentences))
    sentences, open_edge = with_open_edge(split_at_turns(sentences))
    builder.assumed.extend((*open_edge, *work_once(head, label, sentences)))
    placed = on_rows(head, sentences)
    builder.problems.extend(_rows_in_doubt(head, label, sentences, placed, whole))
    sentences = placed or sentences
    if builder.problems:
        return LineReading(line=None, problems=tuple(builder.problems))
    side = side or builder.picked_from
    if side:
        head = replace(head, side=side, rows=True)
    said = tuple(dict.fromkeys(_parts_in_turn((*said, *builder.said))))
    builder.assumed.extend(_left_open(said, whole))
    line = _line(label, head, with_repeats_told(sentences, said, words.sizes), text, whole, said)
    line = replace(line, times=head.times, assumed=tuple(builder.assumed))
    return _without_dashed(line, plain, place_of, words)


_FOR_PART = regex(
    r"for (?:the )?(?:(?:left|right|first|second|other) )?(?:back|front|sleeve|underarm|body)", re.I
)
"""What a stretch of a row is for."""


def _parts_in_turn(said: Sequence[str]) -> Sequence[str]:
    """Say in one what the stretches of a row are for: alone "for sleeve" tells of none which it is."""
    parts = [words for words in said if _FOR_PART.fullmatch(words)]
    if len(parts) < 2:
        return said
    first = said.index(parts[0])
    told = f"the stretches of the row are in turn {', '.join(parts)}"
    return (*said[:first], told, *(words for words in said[first:] if words not in parts))


_SET_ON = regex(r"\bpick(?:ing|ed)?\s+up\b(?!\s+and\s+(?:k|knit|p|purl)\b)[^.;]*\bprovisional\b", re.I)
_LIVE = "stitches of a provisional cast-on are set on the needle or knitted onto it: which is not said."
_KNIT_THEM = 'Where they are knitted at once write "Undo the provisional cast-on and knit 20 sts from it."'
"""Source: common practice."""
_AT_DOUBLE = regex(
    r"\b(?:to|until)\s+(?:the\s+)?st(?:itch)?\s+(?:just\s+|right\s+)?before\s+(?:the\s+)?(?:last\s+|next\s+|previous\s+)?"
    r"(?:ds|double\s+st(?:itch)?)\b[^,.;]*,\s*(?:and\s+)?turn\b",
    re.I,
)
_WHETHER_WORKED = (
    "whether the st before the double st is worked before the turn is not said.",
    'Write "to last DS, turn" where it is, and "to 1 st before last DS, turn" where it is not.',
)
"""Of short rows whose turns lie next to each other and of those with a stitch between both is printed."""
_DASHED = (
    "a size has a dash in this list and a number in another of the line.",
    'Write a line for those sizes alone: "Sizes 3 and 4 only: ...".',
)


def _without_dashed(
    line: Line, plain: str, place_of: Callable[[int, int], Span], words: Words
) -> LineReading:
    """Return a line for the sizes that have no dash in its lists of sizes.

    Rounds that are worked "a total of - (2, 4) times" are worked in no other size either where they are
    written: such a line stands for all sizes.
    """
    if any(_counts_in_all(sentence) for sentence in line.sentences):
        return LineReading(line=line)
    left_out = sizes_left_out(plain, words.sizes)
    if left_out.doubtful is not None:
        return LineReading(line=None, problems=(place_of(*left_out.doubtful).problem(*_DASHED),))
    return LineReading(line=replace(line, only=left_out.worked))


def _counts_in_all(sentence: Sentence) -> bool:
    """Return whether a line says how often rounds are worked, with the time that they are written."""
    if not isinstance(sentence, Repeated) or not isinstance(sentence.duration, Times):
        return False
    return sentence.duration.total or not (sentence.again or sentence.duration.more)


def _named(
    built: tuple[Head, tuple[Sentence, ...]], read: Understood, words: Words
) -> tuple[Head, tuple[Sentence, ...]]:
    """Return what was built with the keys of the yarns that the line calls by a colour."""
    if not read.reworded.yarns:
        return built
    called = {sign: find_called(name, words.yarns) for sign, name in read.reworded.yarns}
    return with_names(built[0], called), with_names(built[1], called)


def _refused(
    read: Understood, plain: str, whole: Span, place_of: Callable[[int, int], Span], words: Words
) -> LineReading | None:
    """Return why a line cannot be read; None if the grammar read all of it."""
    foreign = _foreign(read.label, words, plain) or _lettered(plain, words)
    doubt = counts_in_doubt(write_lists_plainly(as_printed(plain)).text)
    if doubt:
        return LineReading(line=None, problems=(whole.problem(doubt, "Compare them with the printed page."),))
    if _AT_DOUBLE.search(plain):
        return LineReading(line=None, problems=(whole.problem(*_WHETHER_WORKED),))
    if foreign or _SET_ON.search(plain):
        return LineReading(line=None, problems=(whole.problem(*(foreign or (_LIVE, _KNIT_THEM))),))
    if isinstance(read.outcome, Stopped):
        told = explain(plain, read.start, read.outcome, frozenset(words.names), EXAMPLES, words.trials)
        problems = tuple(
            place_of(slip.offset, slip.length).problem(slip.message, slip.hint) for slip in told.slips
        )
        return LineReading(line=None, problems=problems, meant=_meant(told, place_of, words))
    head_slip = misspelt_head(read.label)
    if head_slip is None:
        return None
    place = place_of(plain.index(head_slip.word), len(head_slip.word))
    mended = plain.replace(head_slip.word, head_slip.twins[0], 1)
    return LineReading(
        line=None,
        problems=(place.problem(f'"{head_slip.word}" is not understood here.', meant_words(head_slip)),),
        meant=read_line(mended, lambda _offset, _length: whole, words).line,
    )


def _read_own_words(
    text: str, plain: str, place_of: Callable[[int, int], Span], words: Words
) -> LineReading | None:
    """Read a line that is in own words, or would be but for one misspelt word; None if it is none."""
    slip = misspelt_own(plain)
    if slip is not None:
        at, word, meant = slip
        told = f'"{word}" is not understood here.', f'Did you mean "{meant}"?'
        return LineReading(line=None, problems=(place_of(at, len(word)).problem(*told),))
    own = find_own_row(plain)
    return None if own is None else _read_own(own, text, place_of, words)


def _read_own(own: OwnRow, text: str, place_of: Callable[[int, int], Span], words: Words) -> LineReading:
    """Read a row that is kept in the page's own words: what stands before them as before any other row."""
    place = place_of(own.start, len(text.rstrip()) - own.start)
    refused = words_refused(own)
    if refused is not None:
        at, length, message, hint = refused
        return LineReading(line=None, problems=(place_of(at, length).problem(message, hint),))
    head = read_line(own.stub, lambda at, length: place_of(*own.place(at, length)), words)
    if head.line is None:
        known = place_of(own.known_at, own.known_length)
        return LineReading(line=None, problems=known_refused(own, head.problems, known))
    count: PrintedCount | None = None
    if own.count:
        counted = read_line(own.count, lambda at, length: place_of(own.counted_at + at, length), words)
        if counted.line is None:
            return LineReading(line=None, problems=counted.problems)
        (found,) = counted.line.sentences
        assert isinstance(found, PrintedCount)
        count = found
    made = with_own_words(head.line, own, text, count, place)
    if isinstance(made, Problem):
        return LineReading(line=None, problems=(made,))
    return LineReading(line=replace(made, place=place_of(0, len(text.strip()))))


_ONE_ROW_OR_TWO = (
    "the change may fall in the row before it or in a row of its own.",
    'Write "Work 1 round in pattern, decreasing 6 sts evenly." for one row, or the change on its own line.',
)
_SEVERAL_ROWS = (
    "a line for several rows gives what each of them is: one row.",
    'Write the row after the colon, as in "Next 2 rows: K2, p2, k to end.".',
)
_ROW_ONLY = "a line for rows that stand apart gives the row that is worked on each of them."
_NO_TURN = regex(r"\b(?:do\s+not|don't)\s+turn\b", re.I)
_NOT_TURNED = '"do not turn" is said and changes nothing: in rows, the next is counted as of the other side.'
_ALLOWING = regex(r"\ballowing\b.*\d.*\bfor\b", re.I)
_ON_TOP = "the length is worked as it is printed: what is allowed comes on top of it."


def _left_open(said: Sequence[str], whole: Span) -> tuple[Assumed, ...]:
    """Return what words that are only said with a line leave open, and how that is taken."""
    told = ((_NO_TURN, _NOT_TURNED), (_ALLOWING, _ON_TOP))
    return tuple(Assumed(text, whole) for words in said for pattern, text in told if pattern.search(words))


def _rows_in_doubt(
    head: Head,
    label: str | None,
    read: tuple[Sentence, ...],
    placed: tuple[Sentence, ...] | None,
    whole: Span,
) -> list[Problem]:
    """Return why it is not clear on which rows a line is worked, as read and as placed on rows apart."""
    problems = []
    doubtful = change_in_doubt(head, label, read)
    if doubtful is not None:
        problems.append(doubtful.place.problem(*_ONE_ROW_OR_TWO))
    if placed is None:
        problems.append(whole.problem(_ROW_ONLY, 'Write it as "Next and foll alt row: K1, ssk, …".'))
    if head.times is not None and not _one_row(placed or read):
        problems.append(whole.problem(*_SEVERAL_ROWS))
    if _ADVICE.fullmatch(label or "") and not all(isinstance(one, Remark) for one in read):
        told = f'"{label}:" stands before advice, and the line works rows.'
        problems.append(whole.problem(told, "Leave the word out if they are worked, or write it as a note."))
    shown = any(isinstance(one, Phrase) for one in read)
    if _FABRIC.search(label or "") and not shown and any(map(_goes_on_in_any, read)):
        told = f'"{label}" names a fabric, and the line does not say that it is worked.'
        problems.append(whole.problem(told, _IN_IT))
    return problems


_ADVICE = regex(r"(?:tip|hint|reminder|caption|(?:photo|picture)(?:\s+\d+)?)", re.I)
_FABRIC = regex(
    r"\b(?:rib(?:bing|bed)?|garter|moss|seed|stockinette|stocking|st\s+st|lace|cables?|purl|ridge|stripes?|mosaic|eyelets?)\b"
    r"|\b(?:pattern|patt|stitch)$",
    re.I,
)
"""A fabric in the name of a line: "Garter border: Work 4 rows" would go on in what was worked before."""
_IN_IT = 'Say it in the line: "Work 4 rows in garter stitch."'


def _goes_on_in_any(sentence: Sentence) -> bool:
    return isinstance(sentence, WorkRounds) and sentence.manner == "pattern" and not sentence.as_set


def _one_row(sentences: tuple[Sentence, ...]) -> bool:
    """Return whether a line is one row, with at most a yarn before it and a count after."""
    rest = [one for one in sentences if not isinstance(one, PrintedCount | RowsCount | WithYarn)]
    if len(rest) != 1:
        return False
    (row,) = rest
    once = (
        isinstance(row, WorkRounds)
        and isinstance(row.duration, Rounds)
        and row.duration.number.values == (1,)
    )
    return isinstance(row, Phrase | Labelled) or once


_LETTER = regex(r"\s*([A-H])\.\s")
"""A letter in front of a line."""
_IN_YARN = regex(r"^(?:colou?r|yarn|shade|wool|strand|stripe|in|with)\s+(?=\S+$)|\s+(?:stripe|band)$", re.I)
"""What stands beside a yarn where it is no more than one: "Colour A", "Stripe B", "A stripe"."""
_LETTERED = regex(r"\b(?:chart|panel|section|part|motif|pattern|piece|square|strip|clue)s?\s+[A-Z]\b", re.I)
"""What pages call by a letter that may be a yarn's as well: "Panel A"."""
_ROW_NAME = regex(r"^(?:for|only)\s+|\s+(?:(?:only\s+)?(?:row|rnd|round)|only)$", re.I)
_SOME_SIZES = regex(r"\bsizes?\b", re.I)
_ALL_SIZES = regex(r"\ball\s+(?:the\s+)?sizes\b", re.I)


def _foreign(label: str | None, words: Words, plain: str) -> tuple[str, str] | None:
    """Return what is wrong with a label that names a yarn or sizes, which would be passed over.

    It may do so in brackets or behind a comma, too: "Next rnd (size L only)", "Dec rnd (A)".
    """
    name = (label or "").strip()
    yarn = _yarn_in(name, words)
    if yarn and not re.search(rf"\b{re.escape(yarn)}\b", plain.partition(":")[2]):
        return f'"{name}:" reads as the name of the line, and nothing would be knitted with it.', (
            f'Write "With {yarn}, ..." for the yarn, or "Chart {yarn}" for a chart.'
        )
    if _SOME_SIZES.search(_ALL_SIZES.sub("", name)) or names_whose(name) or any(
        names_people(part) or HEAD_OF_SIZES.match(f"{part}: -") for part in _parts_of(name)
    ):
        return f'"{name}:" reads as the name of the line; it would be worked in every size.', (
            "Write the name of a size as `sizes` has it before the colon, or leave the words out."
        )
    sizes = next((part for part in _parts_of(name) if _are_sizes(part, words.size_names)), "")
    sizes = sizes or begun_by_size(name, words.size_names)
    if sizes:
        return f'"{name}:" reads as the name of the line; it would be worked in every size.', (
            f'Write "Size {sizes} only: ..." for a line of that size.'
        )
    return None


def _parts_of(label: str) -> list[str]:
    """Return a label and what it has in brackets and between commas, without the word for a row behind it."""
    parts = [label, *re.split(r"[,()\[\]]", label)]
    return [part for part in (_ROW_NAME.sub("", part.strip()).strip() for part in parts) if part]


def _lettered(plain: str, words: Words) -> tuple[str, str] | None:
    """Return what is wrong with a letter in front of a line: it numbers it, or is its yarn."""
    letter = _LETTER.match(plain)
    if letter is None or letter[1] not in words.yarns:
        return None
    return f'"{letter[1]}." in front of a line may number it, or be the yarn of that name.', (
        f'Write "With {letter[1]}, ..." for the yarn, or leave the letter out.'
    )


def _yarn_in(label: str, words: Words) -> str:
    """Return the yarn that a label names, by its key, or as the label has it; empty if none."""
    for part in (label, *_parts_of(label)[1:], *re.split(r"\b(?:in|with)\s+", label)[1:]):
        alone = _IN_YARN.sub("", part)
        if alone and (alone in words.names or find_called(alone.lower(), words.yarns) != alone.lower()):
            return alone
    behind = re.findall(r"\b[^\W\d_]\w*", _LETTERED.sub("", label))
    return next((word for word in behind if word in words.yarns or re.fullmatch(r"MC|CC\d?", word)), "")


def _are_sizes(name: str, size_names: tuple[str, ...]) -> bool:
    parts = [part for part in re.split(r"\s*(?:,|&|\band\b)\s*", name) if part]
    onwards = re.fullmatch(
        r"(\S+?)\s*(?:\+|(?:and\s+)?(?:up\w*|onwards?|above|over|down\w*|below|under))", name
    )
    parts = [onwards[1]] if onwards is not None else parts
    return bool(parts) and all(find_size(part, size_names) is not None for part in parts)


def _read_spread(text: str, place_of: Callable[[int, int], Span], words: Words) -> LineReading:
    """Read a line with more than one space between words; places stay those of the line as typed."""
    more = {at for match in _SPACES.finditer(text) for at in range(match.start() + 1, match.end())}
    places = [at for at in range(len(text)) if at not in more]

    def place(offset: int, length: int) -> Span:
        first, last = (places[min(at, len(places) - 1)] for at in (offset, offset + max(length, 1) - 1))
        return place_of(first, max(length, last - first + 1))

    return read_line(_SPACES.sub(" ", text), place, words)


def _for_sizes(text: str, only: SizeHead, place_of: Callable[[int, int], Span], words: Words) -> LineReading:
    """Read a line that is for some sizes: `Sizes M and L only: knit 2 rounds.`"""
    places, start = only.places, only.end
    if only.others:
        named = words.sizes_above
        places = tuple(size for size in range(len(words.size_names)) if named and size not in named)
        if named is not None and len(places) in (0, len(words.size_names)):
            return LineReading(line=None, problems=(place_of(0, start).problem(*_NO_OTHERS),))
    elif only.missing:
        hint = nearest_size(only.missing, words.size_names)
        told = f'there is no size "{only.missing}".'
        return LineReading(line=None, problems=(place_of(*only.named_at).problem(told, hint),))

    def place_behind(at: int, length: int) -> Span:
        return place_of(at if at < only.row else start + at - only.row, length)

    worked = text[: only.row] + text[start : only.stop]
    reading = read_line(worked, place_behind, words)
    if reading.line is None and 1 < len(places) < len(words.size_names):
        reading = _read_padded(worked, places, place_behind, words) or reading
    if reading.line is None:
        return reading
    return LineReading(line=replace(reading.line, only=places))


_NO_OTHERS = (
    "which sizes the others are is not clear: no line right above is for some of them.",
    'Write their names: "Sizes M and L only: ...".',
)
_LISTED = regex(r"(\d+)\s*[(\[]\s*(\d+(?:\s*[,;:]\s*\d+)*)\s*[)\]]")


def _read_padded(
    text: str, places: tuple[int, ...], place_of: Callable[[int, int], Span], words: Words
) -> LineReading | None:
    """Read a line whose lists hold a number for each of the sizes that it is for, and none for the others."""
    made, at = [], list[int]()
    done = 0
    for match in _LISTED.finditer(text):
        numbers = [match.group(1), *re.findall(r"\d+", match.group(2))]
        if len(numbers) != len(places):
            return None
        known = dict(zip(places, numbers, strict=True))
        listed = [known.get(size, numbers[0]) for size in range(len(words.size_names))]
        made += [text[done : match.start()], f"{listed[0]} ({', '.join(listed[1:])})"]
        at += [*range(done, match.start()), *([match.start()] * len(made[-1]))]
        done = match.end()
    if not done:
        return None
    made.append(text[done:])
    at += range(done, len(text) + 1)

    def place(offset: int, length: int) -> Span:
        first, last = (at[min(each, len(at) - 1)] for each in (offset, offset + max(length, 1) - 1))
        return place_of(first, max(1, last - first + 1))

    return read_line("".join(made), place, words)


def _meant(told: Explained, place_of: Callable[[int, int], Span], words: Words) -> Line | None:
    """Read a line with the suggested words put in; its places stay those of the line as written."""
    if not told.mended:
        return None

    def place(offset: int, length: int) -> Span:
        for repair in told.repairs:
            grown = len(repair.twins[0]) - len(repair.word)
            if repair.offset < offset:
                offset = max(repair.offset, offset - grown)
            elif offset + length > repair.offset:
                length = max(1, length - grown)
        return place_of(offset, length)

    return read_line(told.mended, place, words).line


def _line(
    label: str | None,
    head: Head,
    sentences: tuple[Sentence, ...],
    text: str,
    place: Span,
    said: tuple[str, ...] = (),
) -> Line:
    return Line(
        label=label,
        numbers=head.numbers,
        side=head.side,
        rows=head.rows,
        sentences=sentences,
        text=" ".join(text.split()),
        place=place,
        every=head.every,
        said=said,
    )
