"""The small sets of words that tell one statement from another. No I/O.

Source: English grammar; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import word_set

PAST: Final = word_set(
    "made used took began gave got put went came kept left chose ended did started finished wore had "
    "found"
)
LIES: Final = frozenset(["sit", "sits", "lie", "lies", "fall", "falls", "begin", "begins", "start", "starts"])
BEGINNINGS: Final = word_set(
    "bor beginning start hole holes gap gaps seam seams join tail fold opening bump ends bumps jog"
)
FRAGMENT: Final = word_set(
    "worth fun there far hurry worry worries wonder pressure problem magic promise breath luck job "
    "bad patience pleasure relief bliss beauty joy trick tada phew news secret idea friends friend "
    "everyone all us me you"
)
MILD: Final = word_set(
    "growing coming getting facing looking missing showing feeling having enjoying wondering thinking "
    "hoping reading"
)
GOOD: Final = word_set(
    "best better good neater nicer prettier tidier ideal advisable wise fine safer lovely great "
    "recommended"
)
OPENS: Final = frozenset(["not", "worth", "what", "how", "such", "and", "but", "the", "this", "that"])
GREETINGS: Final = frozenset(["welcome", "thanks", "thank", "congratulations", "congrats", "happy", "cheers"])
ANSWERED: Final = frozenset(
    ["too", "short", "long", "big", "small", "tight", "loose", "wide", "narrow", "enough", "still", "yet"]
)
"""Words of a question on whose answer it may hang what is done next: "Is it too short?"."""
INDIFFERENT: Final = frozenset(["what", "matter", "matters", "wonder", "wonders", "whatever", "whichever"])
SOMEBODY: Final = frozenset(
    ["beginners", "knitters", "people", "everyone", "everybody", "anyone", "anybody", "those", "who"]
)
GOES: Final = word_set(
    "breaks tangles splits go goes went get gets got do does did serve serves call calls match "
    "matches give come comes"
)
SHOWN: Final = word_set(
    "shown hidden pictured called named inspired photographed modelled modeled worn meant designed "
    "intended"
)
INTO: Final = frozenset(["grow", "grows", "come", "comes", "lead", "leads", "shift", "belong", "belongs"])
"""Verbs that may say what follows on what."""
