"""Where a length is measured and what else it may be, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


@each_row(
    ("printed", "read"),
    [
        ('Rep Rounds 1 & 2 until sock measures 6 (6.5, 7)" or desired length to heel, ending with Round 2.', 'Rep Rounds 1 and 2 until sock measures 6 (6.5, 7) in, ending with Round 2.'),
        ("Work in rib until leg measures 6 in or desired length to heel.", "Work in rib until leg measures 6 in."),
        ("Continue in pattern until cuff measures 15 cm, or desired length to heel, ending with Rnd 4.", "Continue in pattern until cuff measures 15 cm, ending with Rnd 4."),
        ("Knit until sleeve measures 40 cm from underarm or desired length to cuff.", "Knit until sleeve measures 40 cm from underarm."),
        ("Rep rnds 1-4 until leg measures 18 cm or to desired length before heel, ending with rnd 4.", "Rep rnds 1-4 until leg measures 18 cm, ending with rnd 4."),
        ("Work even until body measures 30 cm from underarm or desired length to hem.", "Work even until body measures 30 cm from underarm."),
        ("Rep last rnd until hat measures 16 cm or desired length to crown.", "Rep last rnd until hat measures 16 cm."),
        ("Repeat Rows 1 and 2 until piece measures 150 cm or desired length, ending with Row 2.", "Repeat Rows 1 and 2 until piece measures 150 cm, ending with Row 2."),
        ("Knit every round until body measures 30 cm from underarm (or desired length minus 5 cm).", "Knit until body measures 30 cm from underarm."),
        ("Work until sleeve measures 40 cm or length required, ending with a WS row.", "Work until sleeve measures 40 cm, ending with a WS row."),
        ("Cont in patt until sleeve measures 17 in, or length required, ending after row 4.", "Cont in patt until sleeve measures 17 in, ending after row 4."),
        ("Knit 20 cm or until the tee is about 7 cm shorter than you want it.", "Knit for 20 cm."),
        ("Work in rib for 18 rounds, or until piece measures 6 cm from cast-on edge.", "work 18 rounds in rib."),
        ("Cont even until work from beg measures same length as Back to armhole, ending on a purl row.", "Cont even until piece measures same as Back to armhole. ends with a purl row."),
        ("Work even until piece measures same as back to armhole, ending with a WS row.", "Work even until piece measures same as back to armhole. ends with a WS row."),
        ("Work even until armhole measures same as back to shoulder.", "Work even until front measures same as back to shoulder."),
        ("Work straight until front is same length as back to shoulder, ending with a WS row.", "Work straight until front measures same as back to shoulder. ends with a WS row."),
        ("Work even on these sts until armhole is same length as on back, ending at armhole edge.", "Work even until front measures same as back to shoulder. ends at armhole edge."),
        ("Work even until front measures the same as back to shoulder shaping, ending with a P row.", "Work even until front measures same as back to shoulder shaping. ends with a P row."),
        ("Work until same length as back to armhole, ending with a WS row.", "Work until piece measures same as back to armhole. ends with a WS row."),
        ("Continue straight until left front matches back to shoulder shaping, ending with a WS row.", "Continue straight until left front measures same as back to shoulder shaping. ends with a WS row."),
        ("Work in st st until Left Front matches Back to armhole shaping, ending with the same row.", "Work in st st until Left Front measures same as Back to armhole shaping."),
        ("Work even until yoke measures 20 cm from last rnd of ribbing, measured straight down the center front.", "Work even until yoke measures 20 cm from end of ribbing."),
        ("Knit until the piece measures 11 cm from the cast-on edge in the middle of the front.", "Knit until the piece measures 11 cm from the cast-on edge."),
        ("Knit until piece measures 20 cm, measured from the cast-on edge.", "Knit until piece measures 20 cm from the cast-on edge."),
        ("Work in stockinette stitch until the hat measures 12 cm from the cast-on edge at the forehead.", "Work in stockinette stitch until the hat measures 12 cm from the cast-on edge."),
        ("Knit in stocking stitch in the round until the body measures 17 cm from where it was divided.", "work in stocking stitch until the body measures 17 cm from the divide."),
        ("Work even until armhole measures 5 in above bound-off sts, ending with a P row.", "Work even until armhole measures 5 in. ends with a P row."),
        ("Continue straight until sleeve measures 40 cm, all sizes.", "Continue straight until sleeve measures 40 cm."),
        ("Knit without increasing until the piece measures 11 cm.", "Knit until the piece measures 11 cm."),
        ("Knit without decreasing until the piece measures 11 cm from underarm.", "Knit until the piece measures 11 cm from underarm."),
        ("Work even until piece measures 10 cm above cuff.", "Work even until piece measures 10 cm from end of cuff."),
        ("Work straight until piece measures 10 cm above rib.", "Work straight until piece measures 10 cm from end of rib."),
        ("Work even until yoke measures 20 cm deep.", "Work even until yoke measures 20 cm."),
        ("Knit until sleeve measures 20 cm, measuring along the underarm.", "Knit until sleeve measures 20 cm."),
        ("Work in patt until the work measures 20 cm, measured flat.", "Work in patt until the work measures 20 cm."),
        ("Work even until sleeve measures 40 cm measured along the underarm.", "Work even until sleeve measures 40 cm."),
        ("Work until armhole measures 20 cm measured straight up.", "Work until armhole measures 20 cm."),
        ("Keep going until the body measures 30 cm.", "work until the body measures 30 cm."),
        ("Work until the yoke is 20 cm deep.", "Work until the yoke is 20 cm."),
        ("Knit until the hat is 15 cm tall.", "Knit until the hat is 15 cm."),
        ("Work until the piece is 12 cm high.", "Work until the piece is 12 cm."),
        ("Knit until you have 12 cm.", "Knit until piece measures 12 cm."),
        ('Rep last 2 rows of (K2. P2) ribbing for 2½" [6 cm], ending on a 2nd row.', 'Rep last 2 rows for 2½ in [6 cm], ending with row 2.'),
        ("Work 9 rows in (K1. P1) ribbing.", "Work 9 rows in k1, p1 ribbing."),
        ("Work 5 cm in (k2, p2) rib, ending with a WS row.", "work in k2, p2 rib for 5 cm, ending with a WS row."),
        ("Work in (K1. P1) ribbing for 5 cm, ending with a RS row.", "Work in k1, p1 ribbing for 5 cm, ending with a RS row."),
        ("Work flat in 1x1 rib for 8 rows, ending with a WS row.", "Work flat. Work in 1x1 rib for 8 rows. ends with a WS row."),
        ("Work in 1x1 rib for 8 rows, ending with a WS row.", "Work in 1x1 rib for 8 rows. ends with a WS row."),
        ("Work 8 rows in k2, p2 rib, ending with a RS row.", "Work 8 rows in k2, p2 rib. ends with a RS row."),
        ("K2 P2 rib around for 6 cm.", "work in k2, p2 rib for 6 cm."),
        ("Work 3 cm rib.", "work in rib for 3 cm."),
        ("Work 3 cm moss stitch.", "work in moss stitch for 3 cm."),
        ("Work 4 cm rib (= approx. 16 rnds).", "work in rib for 4 cm."),
        ("Work 4 ins. in garter st.", "work in garter st for 4 in."),
        ("Work 4 cm in garter st, then bind off.", "work in garter st for 4 cm. bind off."),
        ("Work 4 ins in garter-stitch, then dec 1 st at both ends of next and every alt row until 3 sts remain.", "work in garter stitch for 4 in. dec 1 st at each end of next and every alt row until 3 sts remain."),
        ("Work 6 cm in st st, then dec 1 st each end of next and every foll alt row until 20 sts rem.", "work in st st for 6 cm. dec 1 st each end of next and every foll alt row until 20 sts rem."),
        ("Work 2 in in rib, change to larger needles.", "work in rib for 2 in. change to larger needles."),
        ("Work 1¾ ins straight in st st, change to 3 mm needles and work 6 rows in rib.", "work in st st for 1¾ in. change to 3 mm needles. work 6 rows in rib."),
        ("Work 1 in. in st.st. on these 20 sts.", "work in st st for 1 in. 20 sts."),
        ("Work 3 cm straight.", "work even for 3 cm."),
        ("Work 3 cm even in st st.", "work in st st for 3 cm."),
        ("(K 1 row, P 1 row) until piece measures 9 inches from start, end on wrong side.", "knit 1 row. purl 1 row. rep last 2 rows until piece measures 9 in from start, ending with a wrong side row."),
        ("Work until piece measures 9 inches from start, end on wrong side.", "Work until piece measures 9 in from start, ending with a wrong side row."),
        ("Work in st st until piece measures 9 in, end with a P row.", "Work in st st until piece measures 9 in, ending with a ws row."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Along which line is said beside it; the printed length is worked."""
    assert reword(made_plain(printed)).text == read
    assert reads(printed)


@pytest.mark.parametrize(
    "printed",
    [
        "Knit until yoke measures 8 cm from bottom of ribbing.",
        "Work until sleeve is same length as first sleeve.",
        "Cont straight until sleeve measures 43 cm from beg, ending with same row of patt as on back before armhole shaping.",
        "Work even on these 20 sts for first side until they measure 3 cm and the rest 5 cm.",
        "Work in rib for 6 cm, dec every other st.",
        "Knit until piece measures 20 cm, measured with care while casting off.",
        "Work until armhole measures 12 cm above marker 2 and 3.",
    ],
)
def test_what_means_another_thing_is_not_read(printed: str) -> None:
    """Which way a yoke lies, which other piece, which row: where these are open nothing is worked."""
    assert not reads(printed)


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Carry on without any increases until the sleeve is 24 cm from the beginning.", "Work even until sleeve measures 24 cm from cast-on edge."),
        ("Continue straight on until the foot measures 18 cm from the marker on the heel.", "Continue straight until the foot measures 18 cm from marker."),
        ("Knit until body measures 30 cm down from underarm.", "Knit until body measures 30 cm from underarm."),
        ("Work even until piece measures 20 cm from the last row of rib.", "Work even until piece measures 20 cm from end of rib."),
        ("K1 P1 for 6 rnds, bind off in rib.", "Work 6 rnds in K1 P1 rib. Bind off in rib."),
        ("Rib for 6 cm (k2, p2).", "Work in k2, p2 rib for 6 cm."),
        (
            "Cont even until armhole measures same as back to beg of shoulder shaping, ending with a RS row.",
            "Work even until front measures same as back to shoulder. ends with a RS row.",
        ),
    ],
)
def test_straight_work_needs_no_row_of_its_own(printed: str, read: str) -> None:
    """Its phrases are known by their kinds."""
    assert understood(made_plain(printed)).reworded.text == read
    assert reads(printed)
