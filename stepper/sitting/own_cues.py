"""The knitter's own words for cues from the project file, checked and combined with those of her settings.

The file is for one garment and the settings are for all; both map her words to the wording they stand for.
Words that would mean two things are a problem in the file, reported with its place: a cue taken for another
would move her place.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.language.understanding.own_words import means_the_same, sound_alike
from stepper.project.problems import Problem, UnsoundFileError
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import LoadedProject


def add_own_cues(loaded: LoadedProject, mine: Preferences) -> Preferences:
    """Add the wordings of a project file to those of the settings.

    Args:
        loaded: The project file.
        mine: Her settings.

    Raises:
        UnsoundFileError: The same words stand for one cue in the file and for another in the settings.
    """
    problems = tuple(_clashes(loaded, mine))
    if problems:
        raise UnsoundFileError(problems, loaded.text, str(loaded.path))
    own = {each.words: each.meant for each in loaded.project.cues}
    return replace(mine, wordings={**mine.wordings, **own})


def _clashes(loaded: LoadedProject, mine: Preferences) -> Iterator[Problem]:
    for each in loaded.project.cues:
        for words, meant in mine.wordings.items():
            if sound_alike(words, each.words) and not means_the_same(meant, each.meant, loaded.plan):
                yield each.place.problem(
                    f'"{each.words}" stands for "{each.meant}" here and for "{meant}" in your settings.',
                    "Choose other words in one of them.",
                )
