"""Reword a printed line in the grammar's words, each letter keeping its printed place. No I/O.

Theory of operation. A line that does not read as written is taken through the table of
`stepper.project.rewording.synonyms`. A letter that moves keeps its place, and a letter that is put in takes
the place of the words it replaces, so that a problem is shown where it is printed. Words that work no
stitches are cut out and kept, to be said with the line. A name in the head of a line, as in "Row 5 (dec
row):", becomes its label. A line that is not read so either is looked at once more as talk to the knitter; no
other line is touched by that.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache
from typing import Final

from stepper.project.rewording.again.in_all import write_repeats_in_all
from stepper.project.rewording.asides import commands, instructs
from stepper.project.rewording.candidates import Candidates
from stepper.project.rewording.clauses.hems import write_hems
from stepper.project.rewording.clauses.insets import write_insets
from stepper.project.rewording.clauses.lead_ins import write_lead_ins
from stepper.project.rewording.clauses.results import write_results
from stepper.project.rewording.clauses.tails import take_tails_off
from stepper.project.rewording.gathered import write_gathered
from stepper.project.rewording.on_needles.bind_offs import write_bind_offs
from stepper.project.rewording.on_needles.buttonhole_words import write_buttonholes
from stepper.project.rewording.on_needles.counted import write_counts
from stepper.project.rewording.on_needles.drawn_up import write_drawn_up
from stepper.project.rewording.on_needles.edge_lists import write_edge_lists
from stepper.project.rewording.on_needles.hub_rounds import write_hub_rounds
from stepper.project.rewording.on_needles.join_lists import write_join_lists
from stepper.project.rewording.on_needles.neck_rows import write_neck_rows
from stepper.project.rewording.on_needles.neck_turns import write_neck_turns
from stepper.project.rewording.on_needles.parted_cast_ons import write_parted_cast_ons
from stepper.project.rewording.on_needles.rings import write_rings
from stepper.project.rewording.on_needles.stops import write_stops
from stepper.project.rewording.openings import write_openings_in_order
from stepper.project.rewording.remarks.idle import orders_besides
from stepper.project.rewording.remarks.stated_synonyms import STATED_FACTS
from stepper.project.rewording.reworded import Reworded, as_printed
from stepper.project.rewording.second_look import SECOND_LOOK
from stepper.project.rewording.signs.colour_counts import write_colour_counts
from stepper.project.rewording.signs.list_forms import write_in_one_bracket
from stepper.project.rewording.signs.needle_signs import write_needle_signs
from stepper.project.rewording.signs.page_row_synonyms import SPLIT_HEADS
from stepper.project.rewording.signs.plain_signs import HEAD_SIGNS, PLAIN_SIGNS
from stepper.project.rewording.signs.size_lists import write_lists_in_turn, write_lists_plainly
from stepper.project.rewording.starred_rounds import write_starred_rounds
from stepper.project.rewording.style.paragraph_synonyms import STOPS
from stepper.project.rewording.style.spoken_synonyms import SPOKEN
from stepper.project.rewording.synonym import KEPT, Synonym
from stepper.project.rewording.synonyms import SYNONYMS
from stepper.project.rewording.talk import take_talk_out
from stepper.project.rewording.told.edge_steps import write_edge_steps
from stepper.project.rewording.told.foot_rounds import write_foot_rounds
from stepper.project.rewording.told.moving import write_moves
from stepper.project.rewording.told.needle_layouts import write_needle_layouts
from stepper.project.rewording.told.numbers import write_numbers
from stepper.project.rewording.told.round_begins import write_round_begins
from stepper.project.rewording.told.rows import write_rows
from stepper.project.rewording.told.sentences import write_told
from stepper.project.rewording.told.shaped_rows import write_shaped_rows
from stepper.project.rewording.told.turn_goals import write_turn_goals
from stepper.project.rewording.told.waste_yarn import write_waste_yarn
from stepper.project.rewording.voice.events import write_events
from stepper.project.rewording.voice.orders import write_orders
from stepper.project.rewording.work.counts_apart import write_counts_apart
from stepper.project.rewording.yarn_names import printed_again, sign_yarns
from stepper.regex import regex

_MOST = 8
"""Most times one row of the table is tried again on its own result."""
_LONGEST = 2000
"""Most letters of a line that is looked at as told: a row is shorter, and so is a paragraph."""
_PIECES = regex(r"\\(\d)")
_CHOICE = regex(r"^or\s+(?:until|up\s+to|to|when)\b", re.I)
"""What begins a remark that leaves a length to the knitter; the rest of it is looked through."""
_HEAD_NAME = regex(
    r"^\s*(?:next\s+)?(?P<what>row|rnd|round)s?(?:\s+\d+)?\s*(?:\(?[rw]s\)?)?\s*"
    r"(?P<cut>\(\s*(?![rw]s\b|(?:right|wrong)\s+side\b)"
    r"(?!and\b|all\b|every\b|\d|(?:in\s+|with\s+|using\s+)?(?:yarn\s+|colou?r\s+)?(?-i:MC|CC\d?|C\d|[A-H]|[YZ])\s*[,)])"
    r"(?!(?:in|with|using|yarn|colou?r)\s)"
    r"(?P<name>[a-z][a-z' -]*?)\s*\)\s*)(?:\([rw]s\)\s*)?:",
    re.I,
)


_WORDINGS: Final = Candidates(SYNONYMS)
_HEAD_SIGNS: Final = Candidates(HEAD_SIGNS)
_PLAIN_SIGNS: Final = Candidates(PLAIN_SIGNS)
_STOPS: Final = Candidates(STOPS)
SECOND_LOOK_ROWS: Final = Candidates(SECOND_LOOK)
"""For lines that nothing else reads."""
SPOKEN_ROWS: Final = Candidates((*STATED_FACTS, *SPOKEN))
"""For talk to the knitter."""


@lru_cache(maxsize=1024)
def reword(
    plain: str,
    *,
    signed: bool = True,
    spoken: bool = False,
    undressed: bool = False,
    ordered: bool = False,
    alone: bool = False,
) -> Reworded:
    """Put a line into the grammar's words.

    Args:
        plain: The line, made plain.
        signed: Whether signs are put for the yarns that it calls by a colour.
        spoken: Whether talk is taken out of it first, and counts and repeats told in the second person are
            put as they are printed elsewhere.
        undressed: Whether its signs are first put as most pages have them.
        ordered: Whether what it says in another voice is first put into orders.
        alone: Whether what only tells beside its orders is first taken off them, and nothing else is changed.
    """
    if ordered:
        printed = ordered_words(plain, undressed=undressed)
    elif alone:
        printed = without_tails(plain, undressed=undressed)
    else:
        printed = _plain_lists(plain, undressed=undressed)
    for head in SPLIT_HEADS:
        printed = put_words(printed, head) if ":" in plain else printed
    if spoken:
        printed = _as_printed_elsewhere(printed)
    if "instep" in printed.text.lower():
        printed = write_needle_layouts(printed)  # before a table takes out which needle is the instep
    printed = write_counts_apart(write_colour_counts(printed))
    line = sign_yarns(printed) if signed else printed
    yarns = line.yarns
    line = write_starred_rounds(line)
    made = write_gathered(write_openings_in_order(_without_name(line)))
    made = _by_rows(made, _WORDINGS)
    kept = tuple(printed_again(words, yarns) for words in made.kept) if yarns else made.kept
    return replace(made, yarns=yarns or made.yarns, kept=_as_printed_in_turn(kept, plain))


def _as_printed_in_turn(kept: tuple[str, ...], plain: str) -> tuple[str, ...]:
    """Return what is said with a line in the order in which it is printed, those put otherwise last."""
    places: list[int] = []
    behind: dict[str, int] = {}
    for words in kept:
        at = plain.find(words, behind.get(words, 0))
        behind[words] = at + 1 if at >= 0 else len(plain)
        places.append(at if at >= 0 else len(plain))
    return tuple(words for _, words in sorted(zip(places, kept, strict=True), key=lambda each: each[0]))


@lru_cache(maxsize=1024)
def undress(plain: str) -> Reworded:
    """Return a line with its signs as most pages have them: heads, numbers, lists, stars, counts."""
    headed = _by_rows(write_numbers(as_printed(plain)), _HEAD_SIGNS)
    return _by_rows(write_in_one_bracket(headed), _PLAIN_SIGNS)


_STAGES: Final = (
    write_lead_ins,
    write_needle_signs,
    write_insets,
    write_hems,
    write_parted_cast_ons,
    write_hub_rounds,
    write_neck_turns,
    write_buttonholes,
    write_drawn_up,
    write_bind_offs,
    write_repeats_in_all,
    write_results,
    take_tails_off,
    write_events,
    write_counts,
    write_stops,
    write_rings,
    write_lists_in_turn,
    write_round_begins,
    write_needle_layouts,
    write_turn_goals,
    write_waste_yarn,
    write_foot_rounds,
    write_rows,
    write_neck_rows,
    write_moves,
    write_edge_lists,
    write_edge_steps,
    write_shaped_rows,
    write_join_lists,
    write_told,
)
"""What a line goes through that nothing else reads, in this order: each knows one kind of work."""


@lru_cache(maxsize=1024)
def _as_printed_elsewhere(line: Reworded) -> Reworded:
    """Return a line that nothing else reads as other pages print it; the same if it has no such words."""
    if len(line.text) > _LONGEST:
        return line
    for write in _STAGES:
        line = write(line)
    again = _by_rows(_by_rows(line, _STOPS) if "." in line.text else line, SECOND_LOOK_ROWS)
    if again.text != line.text:
        again = replace(again, text=_SENTENCE.sub(lambda found: _capital(found, line.text), again.text))
    return _by_rows(take_talk_out(again), SPOKEN_ROWS)


def _capital(found: re.Match[str], printed: str) -> str:
    """Begin a sentence that is not printed as one with a capital: a small letter follows an abbreviation."""
    return found.group() if found.group() in printed else found.group().upper()


_SENTENCE: Final = regex(r"\. +[a-z]")


def _by_rows(line: Reworded, rows: Candidates) -> Reworded:
    """Put in the words of each row that is found, one after the other, in what the one before made."""
    at = -1
    while (found := rows.find_first(line.text, at + 1)) is not None:
        at, synonym = found, rows.table[found]
        for _ in range(_MOST if synonym.again else 1):
            changed = put_words(line, synonym)
            if changed.text == line.text:
                break
            line = changed
    return line


def orders(plain: str) -> bool:
    """Return whether anything in a line is an order in another voice, so that it is worth rewording as one.

    Args:
        plain: The line, made plain.
    """
    if len(plain) > _LONGEST:
        return False
    manners = (False, True) if undress(plain).text != plain else (False,)
    return any(
        ordered_words(plain, undressed=bare).text != without_tails(plain, undressed=bare).text
        for bare in manners
    )


@lru_cache(maxsize=1024)
def ordered_words(plain: str, *, undressed: bool = False) -> Reworded:
    """Return a line with what it says in another voice put into orders, and nothing else changed.

    Args:
        plain: The line, made plain.
        undressed: Whether its signs are first put as most pages have them.
    """
    return write_orders(without_tails(plain, undressed=undressed))


@lru_cache(maxsize=1024)
def without_tails(plain: str, *, undressed: bool = False) -> Reworded:
    """Return a line with its lists in one form and its results as counts, without what only tells."""
    return take_tails_off(write_results(_plain_lists(plain, undressed=undressed)))


def _plain_lists(plain: str, *, undressed: bool = False) -> Reworded:
    """Return a line as printed, or with its signs as most pages have them, each list of sizes in one form."""
    return write_lists_plainly(undress(plain) if undressed else as_printed(plain))


@lru_cache(maxsize=1024)
def tells_beside(plain: str) -> bool:
    """Return whether something only tells beside the orders of a line, so that they are worth reading alone.

    Args:
        plain: The line, made plain.
    """
    return without_tails(plain).text != _plain_lists(plain).text


@lru_cache(maxsize=1024)
def talks(plain: str) -> bool:
    """Return whether anything in a line talks to the knitter, so that it is worth rewording as such.

    Args:
        plain: The line, made plain.
    """
    printed = _plain_lists(plain)
    if _as_printed_elsewhere(printed).text != printed.text:
        return True
    bare = undress(plain)
    if bare.text in (plain, printed.text):
        return False
    bare = write_lists_plainly(bare)  # a list of sizes in another form may stand in the way of the rest
    return _as_printed_elsewhere(bare).text != bare.text


def _without_name(line: Reworded) -> Reworded:
    match = _HEAD_NAME.match(line.text)
    if match is None:
        return line
    name, what = match.group("name").strip(), match.group("what").lower()
    if not re.search(r"\b(?:row|rnd|round)$", name, re.I):
        name = f"{name} {what}"
    start, end = match.span("cut")
    return Reworded(
        f"{line.text[:start]} {line.text[end:]}",
        (*line.places[:start], line.places[start], *line.places[end:]),
        name=name,
    )


def put_words(line: Reworded, synonym: Synonym) -> Reworded:
    """Put in the words of one row of the table wherever its pattern matches."""
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for match in synonym.pattern.finditer(line.text):
        text.append(line.text[done : match.start()])
        places.extend(line.places[done : match.start()])
        end = match.end()
        if synonym.words == KEPT:
            end = _kept_end(match)
            words = _alone(line.text[match.start() : end].strip(" ,.;()"))
            kept.extend([words] if end > match.start() else [])
        elif _hides_instruction(match, synonym):
            end = match.start()
        else:
            _lay(match, synonym.words, line, text, places)
            words = match.group(synonym.said) if synonym.said else ""
            kept.extend([_alone(words)] if words else [])
        done = end
    if not text:
        return line
    text.append(line.text[done:])
    places.extend(line.places[done:])
    return Reworded("".join(text), tuple(places), tuple(kept), line.name)


def _alone(words: str) -> str:
    """Return words that were taken out as they are said alone: without what joined them to the line."""
    return _JOINT.sub("", words.strip())


_JOINT: Final = regex(r"^(?:and|then)\s+|[\s,;]+(?:and|then)$", re.IGNORECASE)


def _hides_instruction(match: re.Match[str], synonym: Synonym) -> bool:
    """Return whether the words that would only be said with the line may be an instruction."""
    if not synonym.said:
        return False
    if orders_besides(match.group(synonym.said) or ""):
        return True
    if synonym.spelt_out:
        return False
    words = _CHOICE.sub("", match.group(synonym.said) or "")
    return instructs(re.sub(r"\d[\d\s(),;]*", " ", words)) is not None


def _kept_end(match: re.Match[str]) -> int:
    """Return where words that are only said end: never past an instruction, which may follow a comma.

    Returns:
        The end of the words; their beginning if they cannot be told from an instruction.
    """
    words = match.group()
    lead = re.match(
        r"[\s,.(]*(?:(?:do\s+not|don't)\s+\w+|change\s+to|[\w'-]+)(?:\s+(?:place|on|off|up))?", words, re.I
    )
    start = lead.end() if lead else 0
    found = commands(words[start:])
    if found is None:
        return match.start() if orders_besides(words[start:]) else match.end()
    cut = re.search(r"[,;]\s*(?:and\s+|then\s+)?", words[start : start + found.start()])
    return match.start() + start + cut.end() if cut else match.start()


def _lay(match: re.Match[str], words: str, line: Reworded, text: list[str], places: list[int]) -> None:
    """Write out the words of a row, filling in what the brackets of its pattern matched."""
    here = line.places[match.start()]
    for number, piece in enumerate(_PIECES.split(words)):
        if number % 2 == 0:
            text.append(piece)
            places.extend([here] * len(piece))
        elif match.group(int(piece)) is not None:
            start, end = match.span(int(piece))
            text.append(line.text[start:end])
            places.extend(line.places[start:end])
            here = line.places[max(start, end - 1)]
