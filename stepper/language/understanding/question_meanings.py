"""What a question means by the ideas in it: one table, from ideas to the cue that answers. No I/O.

Only cues that ask and change nothing stand here. A row is meant where each of its needs is met and nothing is
said beyond what it may hold; the row with most needs wins, and two that are as good are none.
"""

from __future__ import annotations

from typing import Final

from stepper.records import dataclass
from stepper.session import cues
from stepper.session.questions.topics import PartTopic, Topic


@dataclass(frozen=True, slots=True, kw_only=True)
class Sense:
    """One way in which something is asked for."""

    cue: cues.Asks
    """What it comes to; a place is filled in where one was named."""
    needs: tuple[frozenset[str], ...]
    """Ideas, of each group one."""
    may: frozenset[str]
    """Ideas that may be there too, and change nothing."""
    fills_place: bool = False
    """Whether a section or a label has to be named, and is asked about."""


_IDLE: Final = frozenset(("garment",))


def _sense(cue: cues.Asks, *lines: str, fills_place: bool = False) -> tuple[Sense, ...]:
    """Read rows of needs, alternatives parted by strokes; what may be there besides stands in brackets."""
    found = []
    for line in lines:
        needs, _, may = line.partition("(")
        groups = tuple(frozenset(group.replace("_", " ").split("/")) for group in needs.split())
        besides = frozenset(each.replace("_", " ") for each in may.rstrip(")").split()) | _IDLE
        found.append(Sense(cue=cue, needs=groups, may=besides, fills_place=fills_place))
    return tuple(found)


def _about(topic: Topic, *lines: str) -> tuple[Sense, ...]:
    return _sense(cues.About(topic=topic), *lines)


def _shaping(word: str, coming: Topic, left: Topic, past: Topic, rhythm: Topic) -> tuple[Sense, ...]:
    """Return the rows for increases or for decreases, which are asked about in the same words."""
    return (
        *_about(
            coming,
            f"when/far {word} (next round left done soon until)",
            f"whether {word} (next round soon section)",
            f"many_round {word} until/next (left after)",
            f"many_stitch {word} (next after round)",
            f"which round {word} (next)",
        ),
        *_about(
            left,
            f"many_{word} (left done past round section until finish)",
            f"much {word} left/done (section)",
        ),
        *_about(rhythm, f"often {word} (round section)", f"many_round between {word} (left)"),
        *_about(past, f"whether {word} past (last round done)"),
        *_about(
            past,
            f"when/far/many_round {word} past (last round done)",
            f"when/many_round last {word} (past round)",
        ),
    )


SENSES: Final[tuple[Sense, ...]] = (
    *_sense(cues.Again(), "not_heard"),
    *_about(Topic.NEXT_STEP, "which next", "which next stitch"),
    *_about(Topic.NEXT_ROUND, "which/read next round (after)"),
    *_about(
        Topic.THIS_ROUND,
        "read round (whole begin)",
        "whether/which knit_or_purl (round)",
        "whether plain (round)",
        "which/read pattern (round)",
    ),
    *_about(Topic.ALIKE, "many/many_round/far alike (round left until)"),
    *_about(Topic.NEXT_ROUND, "whether/which knit_or_purl next (round)", "which yarn/colour next round"),
    *_sense(cues.Spacing(), "many_stitch between increase/decrease (round)"),
    *_about(Topic.LAST_ROUND, "which/read last round (past done)", "which round past (done)"),
    *_about(Topic.LAST_STEP, "which last (past done)", "which last stitch (past done)"),
    *_about(
        Topic.STITCHES_LEFT,
        "many_stitch left (round until finish)",
        "much/which round left (until finish)",
        "many_stitch finish (round until)",
        "far round finish (left until)",
        "whether stop (round)",
    ),
    *_sense(
        cues.HowMany(),
        "many_stitch (round on_the_needle after)",
        "many on_the_needle",
        "which/many on_the_needle (round done stitch)",
        "which stitch count (round right)",
        "which count (right round next)",
        "many_stitch at_the_end (round done)",
    ),
    *_sense(cues.Where(), "whether/which at_once (section round)", "many_stitch done round (past)"),
    *_sense(cues.Where(), "where round (done section)", "which round (section done)", "which/where stitch"),
    *_about(
        Topic.YARN,
        "which yarn/colour/ball (hand used round)",
        "which yarn colour (hand used round)",
        "many_yarn/many_colour (hand used round hold)",
    ),
    *_about(
        Topic.COLOUR_CHANGE,
        "which/when next yarn/colour (begin used)",
        "when/far/whether/many_stitch/many_round yarn/colour change (next until soon left round)",
        "when/far/many_stitch/many_round next yarn/colour (until left)",
        "when colour finish (used)",
    ),
    *_about(
        Topic.FLOAT,
        "length/which/whether/where/far float (caught round length longest)",
        "whether/where caught (yarn float round)",
        "many_float (caught round)",
    ),
    *_shaping(
        "increase", Topic.NEXT_INCREASE, Topic.INCREASES_LEFT, Topic.LAST_INCREASE, Topic.INCREASE_RHYTHM
    ),
    *_shaping(
        "decrease", Topic.NEXT_DECREASE, Topic.DECREASES_LEFT, Topic.LAST_DECREASE, Topic.DECREASE_RHYTHM
    ),
    *_about(
        Topic.CABLE_RHYTHM,
        "often/when/far cable (round next until section)",
        "many_round cable between/until/next",
        "many_cable (left section until finish done)",
    ),
    *_about(
        Topic.DIVISION,
        "when/far/many_round/where division (until left yarn stitch next place)",
        "when/far/many_round hold (until left stitch place)",
    ),
    *_about(Topic.SIDE, "which/whether side (right round)"),
    *_about(
        Topic.REPEAT,
        "which repeat (round done)",
        "many_repeat (left done round past)",
        "many_stitch repeat (next until left finish)",
        "when/far repeat finish (until)",
    ),
    *_about(
        Topic.CHART,
        "which/where/many_round chart (round left done until finish)",
        "when chart finish",
        "much chart left/done",
    ),
    *_about(
        Topic.MARKER,
        "where/far/when marker (next until)",
        "which next marker",
        "which marker",
        "many_stitch marker (next until left)",
    ),
    *_about(
        Topic.TURN,
        "where/when/far/many_stitch turn (next until round)",
        "many_turn (left)",
        "many_short_row (left done)",
        "where/when short_row turn (next)",
    ),
    *_about(
        Topic.NEEDLE,
        "which needle (size size_in_mm section round used next hand)",
        "when/whether/which needle change (next soon size left section)",
        "when other/next needle (size change)",
        "many_size_in_mm needle",
    ),
    *_about(Topic.SIZE, "which size (section past)"),
    *_about(Topic.GAUGE, "which/whether gauge (past section)"),
    *_about(
        Topic.LENGTH,
        "length (section done finish next)",
        "which/whether length (section done right finish)",
        "many_cm (left done section past)",
        "far left (section)",
        "whether length enough (section)",
    ),
    *_about(Topic.WIDTH, "wide (section round done)", "which width (section)"),
    *_about(
        Topic.YARN_LEFT,
        "whether yarn/ball/named enough/last (left until finish section)",
        "much/many_grams yarn/ball/named/grams (left until finish section)",
        "many_ball (left used until finish)",
        "when ball next/new (ready until begin)",
        "when yarn/ball enough/finish",
        "when/far/many_round new yarn/ball (until ready)",
        "much left yarn/ball/named (ball)",
    ),
    *_about(
        Topic.YARN_USED,
        "much yarn/ball/named used/done (past)",
        "many_grams used/done (yarn past named)",
        "much yarn/ball/named take past (done)",
        "many_ball used (done past)",
    ),
    *_about(
        Topic.PACE,
        "which pace",
        "time round (take)",
        "many_minutes round (take)",
        "many_stitch minutes (round)",
    ),
    *_about(
        Topic.DONE_WHEN,
        "when finish/done (section)",
        "whether finish/done/ready in_time",
        "many_hours left/until (until finish)",
        "whether in_time",
    ),
    *_about(
        Topic.TONIGHT,
        "which tonight (next left done)",
        "many_round tonight (left)",
        "far tonight",
    ),
    *_about(
        Topic.KNITTED_TODAY,
        "many_round tonight past/done (past done)",
        "much tonight past/done (past done)",
        "many_round past",
        "many_stitch tonight past/done (past done)",
    ),
    *_sense(
        cues.HowLong(),
        "time_past (tonight done)",
        "time past (tonight done which)",
        "many_hours past/done (past done tonight)",
    ),
    *_about(Topic.REMINDERS, "which reminder (left next past)"),
    *_about(Topic.LAST_COUNT, "which/when last count (past)", "when/where count past (last)"),
    *_about(Topic.NOTES, "which/read/whether/where note (past section place done last)"),
    *_about(Topic.NEXT_COUNT, "when/whether count (next soon)", "many_round count until/next (until left)"),
    *_about(Topic.NEXT_SECTION, "which next section (after)", "which/when after section (next)"),
    *_about(Topic.HELD, "which/many_stitch/many hold (stitch place)"),
    *_about(Topic.UNDERARM, "many/many_stitch/which cast_on division (round stitch)"),
    *_sense(
        cues.HowFarIn(place="division", asks=PartTopic.STITCHES),
        "many_stitch division past (until)",
        "many_stitch division at_the_end",
    ),
    *_about(Topic.CAST_ON, "many/many_stitch/which cast_on (past stitch)"),
    *_about(Topic.SHARE_DONE, "much done (past)", "whether half (done)"),
    *_about(Topic.ALTERATIONS, "which altered (done past)", "which past change (done)", "many_altered"),
    *_sense(
        cues.HowFar(),
        "many_round left (section until finish)",
        "many_round section (until finish left)",
        "far finish (section until left)",
        "much/which left (section)",
        "many_round until finish (left section)",
    ),
    *_sense(
        cues.HowFarIn(),
        "many_round place (left done past)",
        "many_round place finish (until left)",
        "much place left/done (past)",
        "when/whether place finish/done (tonight)",
        "where place",
        "time place (take)",
        fills_place=True,
    ),
    *_sense(
        cues.HowFarIn(asks=PartTopic.LENGTH),
        "length place",
        "which length place (right)",
        "many_cm place (left done)",
        fills_place=True,
    ),
    *_sense(
        cues.HowFarIn(asks=PartTopic.STITCHES),
        "many_stitch place (begin finish at_the_end section hold)",
        "many_stitch place past (begin finish at_the_end until)",
        "which count place (begin finish at_the_end)",
        fills_place=True,
    ),
    *_sense(
        cues.HowFarIn(asks=PartTopic.NOTES),
        "which/read/whether/where note place (past done other last section)",
        "which/whether place past (done other)",
        fills_place=True,
    ),
    *_sense(
        cues.HowFarIn(asks=PartTopic.LINES),
        "many place (left done past next)",
        fills_place=True,
    ),
    *_sense(
        cues.HowFarTo(place=""),
        "when/far place (next begin left until)",
        "many_round place until/next (begin left)",
        "where place next",
        fills_place=True,
    ),
)
"""Every row."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ToldRemark:
    """Something she says has happened."""

    wording: str
    """A wording for it."""
    needs: frozenset[str]
    """Ideas, all of them."""
    may: frozenset[str] = frozenset()
    """Ideas that may be there too, and change nothing."""
    is_surely_meant: bool = True
    """Whether it is meant by these ideas alone, so that it is done where it was typed."""


def _remark(wording: str, needs: str, may: str = "", *, sure: bool = True) -> ToldRemark:
    return ToldRemark(
        wording=wording, needs=frozenset(needs.split()), may=frozenset(may.split()), is_surely_meant=sure
    )


_YARNS_CALLED: Final = ("yarn", "colour", "named")
"""How a yarn is spoken of: as such, or by its own name."""

REMARKS: Final[tuple[ToldRemark, ...]] = (
    _remark("i forgot an increase", "forgot increase", "round last past"),
    _remark("i forgot a decrease", "forgot decrease", "round last past"),
    _remark("i dropped a stitch", "dropped stitch", "needle round past"),
    _remark("i lost count", "lost count", "past"),
    _remark("i have one too many", "surplus stitch", "needle"),
    _remark("one stitch is missing", "missing stitch", "needle"),
    _remark("i counted wrong", "fault count", "past"),
    _remark("i made a mistake", "fault", sure=False),
    *(_remark("wrong yarn", f"fault {what}", "done past round last stitch") for what in _YARNS_CALLED),
    *(_remark("i ran out of yarn", f"enough {what}", "past") for what in _YARNS_CALLED),
    _remark("i ran out of yarn", "finish named", "past"),
    _remark("that is all for tonight", "stop", "round half", sure=False),
)
"""What is remarked on. A wording is offered where its ideas were named, and done where it was typed, if it is
surely meant and nothing else was said."""
