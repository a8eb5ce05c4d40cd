"""Work without shaping is put in one order, whatever order its phrases are printed in. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.straight import put_works_in_order
from tests.tables import each_row


@each_row(
    ("printed", "order"),
    [
        (
            "Knit the sleeve in the round in stockinette until it measures 40 cm.",
            "Join in the round. Work in stockinette until it measures 40 cm.",
        ),
        ("Work back and forth in garter st for 6 cm.", "Work flat. Work in garter st for 6 cm."),
        ("Work around in ribbing of k 2, p 2 for 3 inches.", "Work in k 2, p 2 rib for 3 inches."),
        ("K around until piece measures 16 inches from beg.", "Knit until piece measures 16 inches from cast-on edge"),
        ("K straight until it's 42 cm long, measured along the underside.", "Work even until it measures 42 cm."),
        ("Working in rows, cont in pattern until armhole measures 5 cm.", "Work flat. Work in pattern until armhole measures 5 cm."),
        ("Working flat from here.", "Work flat."),
        ("From here on, continue working in rounds.", "Join in the round."),
        ("Work even to 5 cm, ending 5 sts before the marker.", "Work even until piece measures 5 cm. Stop short 5 sts."),
        ("Work in st st on these 60 sts for 4 cm.", "60 sts. Work in st st for 4 cm."),
        ("Work 4 rounds in st st for the bodice.", "Work 4 rounds in st st."),
        ("Work a further 2 ins. in st.st.", "Work in st.st. for 2 ins."),
        ("Work the next 12 rounds in 2x2 rib.", "Work 12 rounds in 2x2 rib."),
        ("Rib as set for 5 cm.", "Work in Rib for 5 cm."),
        ("Rib k1, p1 for 16 rounds.", "Work 16 rounds in k1, p1 rib."),
        ("Ribbing: 5 cm knit 2, purl 2.", "Work in k2, p2 rib for 5 cm."),
        (
            "Smaller needles, 2x2 rib for 6 cm, BO loosely in rib.",
            "Change to Smaller needles. Work in 2x2 rib for 6 cm. Bo loosely in rib.",
        ),
        ("Change to k2, p2 rib for the last 6 cm.", "Work in k2, p2 rib for 6 cm."),
        ("Just keep knitting for 15 cm.", "Work even for 15 cm."),
        (
            "Work in k1, p1 rib for 6 cm; the last row is a WS row.",
            "Work in k1, p1 rib for 6 cm, ending with a WS row.",
        ),
        ("Even to 7 in from underarm CO.", "Work even until piece measures 7 in from underarm."),
        (
            "Cont in MC without shaping until yoke measures 8 in from the end of the ribbing.",
            "With MC, Work even until yoke measures 8 in from end of ribbing.",
        ),
        (
            "St st with 3 garter sts at each edge, until same length as fronts, end WS.",
            "Work in St st until piece measures same as front to shoulder, keeping 3 edge sts in garter st. Ends with a WS row.",
        ),
        (
            "Change to 4 mm needles and continue in stocking st, starting with a purl row, until back measures 35 cm.",
            "Next row (WS): Change to 4 mm needles. Work in stocking st until back measures 35 cm.",
        ),
        (
            "Keep repeating these two rows until the work is 15 cm tall, finishing with a Row 2.",
            "Repeat these two rows until work measures 15 cm, ending with row 2.",
        ),
        (
            "Work straight for 6 cm. Finish with a WS row, and in this last row increase 2 (2, 0) sts.",
            "Work even for 6 cm, ending with a WS row, increasing 2 (2, 0) sts evenly on last row.",
        ),
        (
            "With MC, cast on 46 sts and work 3 cm in 1x1 rib as given for back, ending with a 2nd row.",
            "With MC, cast on 46 sts. Work in rib as given for back for 3 cm, ending with row 2.",
        ),
        ("Work 6 cm of twisted rib (k1 through the back loop, p1).", "Work in k1 tbl, p1 rib for 6 cm."),
        (
            "Continue without shaping until armhole measures 7 ins. on the straight, end with RS facing for next row.",
            "Continue even until armhole measures 7 ins., ending with a WS row.",
        ),
        ("Body: even for 5 cm.", "Body: Work even for 5 cm."),
        ("Larger ndl.", "Change to Larger needles."),
        (
            "Work 4 cm in twisted rib: *k1 tbl, p1; rep from * to end.",
            "*k1 tbl, p1; rep from * to end. Work for 4 cm.",
        ),
    ],
)
def test_phrases_are_put_in_the_order_of_the_grammar(printed: str, order: str) -> None:
    """Fabric, manner and length stand in any order, with any verb or none."""
    assert put_works_in_order(as_printed(printed)).text == order


@each_row(
    "printed",
    [
        "Rib for 4 cm or 7 cm.",
        "Work 2 cm in rib, 3 cm in stockinette.",
        "Continue in rib or stockinette for 5 cm.",
        "Work 6 rounds in rib and 4 rounds in stockinette.",
        "4 rounds.",
        "Work 5 cm in seed stitch: *k1, p1; rep from * to end.",
        "Work in the round back and forth in rib for 5 cm.",
        "Working in rib for 5 cm.",
        "Repeat these two rows 5 times.",
        "Knit until yoke measures 8 cm from bottom of ribbing.",
        "Work even until piece measures 10 cm from the last decrease.",
        "Work 6 cm of twisted rib (k1, p1).",
        "Work in seed st, beginning with a knit row, for 5 cm.",
        "Work in rib for 5 cm, so decrease 4 sts on the last row.",
        "Work even until sleeve measures same as back.",
        "Work 5 in garter, k to end.",
        "Work in rib and knit in garter st for 5 cm.",
    ],
)
def test_what_says_more_than_one_thing_stays_as_it_is(printed: str) -> None:
    """One phrase too many or of no known kind, and nobody can tell what the others belong to."""
    assert put_works_in_order(as_printed(printed)).text == printed


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("Knit the sleeve in rib for 4 cm.", ("the sleeve",)),
        ("Work even for 2 cm so the cuff has something to grip.", ("so the cuff has something to grip",)),
        ("Cont as est, panel between markers, rest St st, for 5 cm.", ("as est", "panel between markers, rest St st")),
        ("Work in rib until it is about 5 cm long, slightly stretched.", ("about", "slightly stretched")),
    ],
)
def test_what_only_tells_is_said(printed: str, said: tuple[str, ...]) -> None:
    """What is taken out is told with the line."""
    assert put_works_in_order(as_printed(printed)).kept == said
