"""The classes of words agree with each other, and with the tables of verbs and stitches. Source: common practice."""

from __future__ import annotations

from stepper.craft.stitches import STITCHES
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.telling import works_nothing
from stepper.project.rewording.voice.verbs import GERUNDS, PARTICIPLES, VERBS
from tests.tables import each_row

ACTS = of.CRAFT | of.GENERAL
LITTLE = of.PREPOSITIONS | of.JOINING | of.SUBORDINATING | of.ASKING | of.MODALS
BESIDE_THE_NEEDLES = {"wash", "block", "steam", "trim"}
"""Verbs of the trade for what lies on a table."""
ALSO_NOUNS = {"position", "transform"}
"""Verbs that are in no class, the first since it is as often a noun."""


@each_row(
    ("one", "other"),
    [
        (of.CRAFT, of.MINDING),
        (of.CRAFT, of.SHOWING),
        (of.CRAFT, of.GIVING),
        (of.CRAFT, of.CRIES),
        (of.CRAFT, of.ADVERBS),
        (of.CRAFT, of.AUXILIARIES),
        (of.GENERAL, of.MODALS),
        (of.SELF, of.YOU),
        (of.PEOPLE, of.IT),
        (of.MODALS, of.AUXILIARIES),
        (LITTLE, ACTS),
        (of.DETERMINERS, ACTS | of.STITCH_THINGS | of.PARTS),
    ],
)
def test_no_word_stands_in_two_classes_that_exclude_each_other(
    one: frozenset[str], other: frozenset[str]
) -> None:
    """A verb that works a stitch and a verb that works none cannot be the same."""
    assert one & other == set()


def test_every_form_of_the_verbs_that_work_is_known_as_one() -> None:
    """A verb that orders elsewhere in the package and is unknown here could hide in a passive."""
    forms = {**{verb: verb for verb in VERBS}, **PARTICIPLES, **GERUNDS}
    assert {verb for form, verb in forms.items() if form not in ACTS} == BESIDE_THE_NEEDLES | ALSO_NOUNS


@each_row("verb", sorted(set(PARTICIPLES.values()) | ALSO_NOUNS))
def test_no_verb_of_the_trade_is_passed_over_in_a_passive(verb: str) -> None:
    """What "are slid here" is moved; only "finished" says as often how something is."""
    for form in (form for form, of_verb in PARTICIPLES.items() if of_verb == verb and form != "finished"):
        assert not works_nothing(f"The stitches are {form} here.")


@each_row("verb", sorted({*VERBS} - BESIDE_THE_NEEDLES - {"stop"}))
def test_no_verb_of_the_trade_is_passed_over_in_the_second_person(verb: str) -> None:
    """By "you slip the stitches here" she is asked to, however friendly it is."""
    assert not works_nothing(f"You {verb} the stitches here.")


def test_signs_of_common_stitches_are_of_the_craft() -> None:
    """A row of signs alone - "k, p, yo" - is work."""
    signs = {"k", "p", "yo", "k2tog", "p2tog", "ssk", "kfb", "pfb", "m1l", "m1r", "m1p", "sk2p", "ds"}
    assert signs <= set(STITCHES)
    assert signs <= of.CRAFT


def test_verbs_get_the_endings_of_english() -> None:
    """The bases are written once; a form that is spelt wrong would be missing."""
    assert {"slipped", "slipping", "decreases", "decreasing", "crosses", "purled", "mirrored"} <= of.CRAFT


def test_copulas_are_the_forms_of_be() -> None:
    """What stands behind them says how something is, and behind "have" it does not."""
    assert {"'s", "'re", "'m"} == of.COPULAS - of.AUXILIARIES
    assert {"has", "have", "do", "does"} & of.COPULAS == set()


def test_harmless_participles_work_nothing() -> None:
    """What "is completed" shares its word with the craft, and is a danger all the same."""
    assert {"complete", "completed"} == of.HARMLESS_PARTICIPLES & of.CRAFT
    assert not works_nothing("The toe is completed.")
