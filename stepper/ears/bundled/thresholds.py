"""How sure the bundled recogniser has to be before it acts: one table.

The strict row is for cues without an address word, the loose one for cues after it, since whoever says the
address word means the program.

Source: chosen on the development voices of `tests/bench/voice`, from the pieces that the gate cut out of cues
and counts in quiet and with a film 20 and 10 dB below, and of film and people alone: the loosest that keep
wrong and false cues rare. They were chosen again twice after a look at the held-out false cues and at words
that people recorded, each time on the development voices, and kept for later weights. A looser pair
for numbers on which the free transcript agrees gave 12 more of 816 counts heard and three more wrong
(development voices, in quiet to 10 dB above a film, a quarter with softened ends), so there is none.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Thresholds:
    """How sure the recogniser has to be before it acts."""

    words: float
    """The weight of the words against that of the sounds, which is 1."""
    least: float
    """A text is taken when its likelihood, by its sounds and by the decoder together, is at most this far
    from that of the best sounds and the best words of any kind; below 0. A natural logarithm."""
    agreed: float
    """The same if the words are as likely as any at all, which is an opinion of its own: the
    sounds were learnt from synthetic voices alone, and people differ more. A natural logarithm."""
    clear: float
    """And only if any text of another meaning is this much less likely. A natural logarithm."""
    least_word: float
    """The least for a single word or a bare number, whatever the decoder says: what is left of a longer cue
    in noise is often like one. A natural logarithm."""
    least_moving: float
    """The least for what moves the knitting, whatever the decoder says: of a sentence that is not listened
    for it often finds such a cue no less likely than what it writes freely ("go on" of "wrong yarn"). A
    natural logarithm."""
    clear_number: float
    """`clear` for a text with a number in it: being asked again costs a second, a wrong count a hunt for a
    fault that is not there. A natural logarithm."""
    least_number: float
    """The least for a text with a number in it, whatever the words say. A natural logarithm."""
    expected: float
    """How much more what answers an open question counts beside what does not: "no" and "go" are hardly told
    apart in a film. A natural logarithm."""


STRICT: Final = Thresholds(
    words=0.25,
    least=-4.0,
    agreed=-20.0,
    clear=3.0,
    least_word=-4.0,
    least_moving=-10.0,
    clear_number=4.0,
    least_number=-3.0,
    expected=0.0,
)
LOOSE: Final = replace(STRICT, least=-16.0, least_number=-4.0, expected=3.0)
"""Of 132 people's words kept for choosing, each said while its question is open, 5 dB above two films, 112
are heard with 2 and 113 with 3 for `expected`, three taken for another with either.

Of 91 counts behind the address word 10 dB above a film one that is right fits at -4.0; of 276 alone none
worse than -2.9, and one that is wrong at -3.6 (development voices)."""

UNASKED: Final = -10.0
"""The least behind the address word while it is not asked for: few say it then, and "sister, we go back" is
like it. Of 40 cues of development voices 10 dB above a film one fits worse, of two that the film itself
seemed to say both."""
UNASKED_NUMBER: Final = -2.0
"""The least for a bare number that nobody asked for, whatever the decoder says: what is left of a cue in a
film is like "two" or "three". Of 64 counts of development voices behind the address word, 10 and 5 dB above a
film, it takes none that is right. A natural logarithm."""
LARGEST_DIGIT: Final = 9
"""Up to this a bare number that nobody asked for is taken for no count."""
TOKEN_DUE: Final = 0.7
"""What is added to a text for each of its tokens, since each costs it some likelihood whatever was said."""
UNWEIGHED: Final = -40.0
"""A text whose sounds fit worse than this is not shown to the decoder; one that the decoder does not reach,
or finds less likely, counts as this unlikely."""
CALLED: Final = -6.0
"""The address word is taken to be there, with nothing or no cue after it, when it fits this well."""
CALLED_AT_ALL: Final = -20.0
"""Where it fits worse than this, and no cue behind it fits either, nobody writes down what was said."""
BEGUN: Final = -6.0
"""A cue with a number is taken to be begun, and waited for, when its beginning fits this well."""
EARLY: Final = -12.0
"""A cue is known before the silence behind it is whole only where its sounds fit this well."""
FOUND: Final = -10.0
"""Something may be said behind the address word amid other sound when their sounds fit this well."""
FOUND_UNASKED: Final = -4.0
"""The address word itself while it is not asked for: of 40 of development voices 10 dB above a film it fits
at 0 in each."""
FOUND_WHOLE: Final = -6.0
"""It is taken to be a whole cue, and cut out, when they fit this well: what fits worse is mostly a part of
one and is looked at again."""
FOUND_WORD: Final = -3.0
"""The same where it is a single word or a bare number, which a part of any cue is like."""
STRAY: Final = 2
"""More frames than this sound in the 0.3 s behind a cue amid other sound: it goes on."""
STRAY_WORD: Final = 1
"""The same behind a single word."""
ALONE: Final = -12.0
"""A cue without the address word amid other sound is looked at more closely when its sounds fit this well."""
SLOWEST_S: Final = 0.25
"""A cue without the address word takes no longer than this for each of its sounds: "go", a pause and "on" are
two words of somebody who reads out a list. The slowest of 70 of development voices take 0.10. Unit: s."""
ALIKE_WITHIN: Final = 0.3
"""Two wordings of different meaning that sound no farther apart than this are warned of."""
