"""The parser of the command line: help with examples, and for a slip what was probably meant."""

from __future__ import annotations

import argparse
import re
import sys
import textwrap
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any, NoReturn

from stepper.project.spelling import near
from stepper.project.yaml_file.missing_file import PROJECT_ENDINGS
from stepper.regex import regex
from stepper.sitting.folding import write_folded

Examples = Sequence[tuple[str, str]]
"""Command lines as they are typed, each with what it does."""

_UNKNOWN = regex(r"unrecognized arguments: (?P<words>.*)")
_REQUIRED = "the following arguments are required: "
_VALUELESS = regex(r"argument (?P<name>\S+): expected one argument")
_OPTION = regex(r"--?[A-Za-z]")
_CHOICE = regex(
    r"argument (?P<name>.*): invalid choice: '(?P<word>[^']*)' \(choose from (?P<known>.*)\)"
)


class WholeWordsFormatter(argparse.HelpFormatter):
    """Breaks lines between words only, never at a hyphen: `--kept-whole` can be copied as it stands."""

    def _split_lines(self, text: str, width: int) -> list[str]:
        return _wrapped(" ".join(text.split()), width)

    def _fill_text(self, text: str, width: int, indent: str) -> str:
        """Fill a description; lines that are indented already, the examples, keep their indentation."""
        lines = [each for line in text.splitlines() for each in _wrapped(line, width - len(indent))]
        return "\n".join(indent + line for line in lines)


def _wrapped(line: str, width: int) -> list[str]:
    head = line[: len(line) - len(line.lstrip())]
    return textwrap.wrap(
        line.strip(),
        width,
        initial_indent=head,
        subsequent_indent=head,
        break_long_words=False,
        break_on_hyphens=False,
    ) or [""]


def write_examples(examples: Examples) -> str:
    """Write examples for the end of a help page."""
    lines = [line for typed, does in examples for line in (f"  {typed}", f"      {does}")]
    return "\n".join(["Examples:" if len(examples) > 1 else "Example:", *lines]) if examples else ""


class HelpfulParser(argparse.ArgumentParser):
    """A parser whose complaints end with the nearest legal word and the help to ask for."""

    def __init__(self, *args: Any, examples: Examples = (), **kwargs: Any) -> None:
        """Make a parser as `argparse` does.

        Args:
            args: As for `argparse.ArgumentParser`.
            examples: What stands at the end of its help.
            kwargs: As for `argparse.ArgumentParser`.
        """
        kwargs.setdefault("formatter_class", WholeWordsFormatter)
        kwargs.setdefault("epilog", write_examples(examples) or None)
        # A part of an option's name is not taken for it: what it means would change with the next option.
        kwargs.setdefault("allow_abbrev", False)
        self.actions: list[argparse.Action] = []
        self.called: HelpfulParser | None = None
        self._given: tuple[str, ...] = ()
        super().__init__(*args, **kwargs)

    def add_argument(self, *args: Any, **kwargs: Any) -> argparse.Action:
        """Declare an argument as `argparse` does, and remember it."""
        action = super().add_argument(*args, **kwargs)
        self.actions.append(action)
        return action

    def every_action(self) -> Iterator[argparse.Action]:
        """Yield the arguments of this parser and of the command that is called."""
        yield from self.actions
        if self.called is not None:
            yield from self.called.every_action()

    def parse_known_args(self, args: Any = None, namespace: Any = None) -> Any:
        """Parse as `argparse` does, and remember the words for a complaint."""
        self._given = tuple(sys.argv[1:] if args is None else args)
        return super().parse_known_args(args, namespace)

    def parse_args(self, args: Any = None, namespace: Any = None) -> Any:
        """Parse; an option that the called command does not have is answered by that command's parser."""
        parsed, left = self.parse_known_args(args, namespace)
        if left:
            caller: HelpfulParser = getattr(parsed, "parser", self)
            caller.error(f"unrecognized arguments: {' '.join(left)}")
        return parsed

    def error(self, message: str) -> NoReturn:
        """Say what is wrong, what was probably meant and where the help is; end with 2."""
        strange = self._strange_options()
        if message.startswith(_REQUIRED) and strange:  # without the slip nothing may be missing
            message = f"unrecognized arguments: {' '.join(strange)}"
        self.print_usage(sys.stderr)
        told = [f"{self.prog}: {self._plainly(message)}", *self._meant(message), f"Help: {self.prog} --help"]
        write_folded("\n".join(told), sys.stderr)
        self.exit(2)

    def _strange_options(self) -> list[str]:
        """List the options among the words given that there are none of."""
        known = {each for action in self.actions for each in action.option_strings}
        words = self._given[: self._given.index("--")] if "--" in self._given else self._given
        return [word for word in words if _OPTION.match(word) and word.partition("=")[0] not in known]

    def _plainly(self, message: str) -> str:
        """Put a complaint of `argparse` into plainer words."""
        valueless = _VALUELESS.match(message)
        if valueless:
            option = valueless["name"].split("/")[-1]
            wanted = next(
                (each.metavar or each.dest.upper() for each in self.actions if option in each.option_strings),
                "",
            )
            return f"behind {option} this is missing: {wanted}"
        return _plainly(message)

    def _meant(self, message: str) -> Iterator[str]:
        """Yield the nearest legal words to one that is not."""
        choice, unknown = _CHOICE.search(message), _UNKNOWN.search(message)
        if choice:
            word = choice["word"]
            yield from did_you_mean(word, re.findall(r"[\w-]+", choice["known"]))
            if Path(word).suffix.lower() in PROJECT_ENDINGS:
                yield f"To knit it: {self.prog} knit {word}"
        elif unknown:
            options = [each for action in self.actions for each in action.option_strings]
            for word in unknown["words"].split():
                if word.startswith("-"):
                    yield from did_you_mean(word.partition("=")[0], options)


def _plainly(message: str) -> str:
    """Put a complaint of `argparse` into plainer words."""
    message = re.sub(r"^unrecognized arguments: ", "this is not understood here: ", message)
    message = re.sub(f"^{_REQUIRED}", "this is missing: ", message)
    choice = _CHOICE.match(message)
    if choice:
        known = choice["known"].replace("'", "")
        return f'{choice["name"]} cannot be "{choice["word"]}"; it is one of {known}.'
    return message


def did_you_mean(word: str, known: Sequence[str]) -> Iterator[str]:
    """Yield a question for the nearest known word, if one is near."""
    bare = {each.lstrip("-"): each for each in known}
    found = near(word.lstrip("-"), tuple(bare)) if len(word.lstrip("-")) > 1 else ()
    begun = [each for each in bare if len(word.lstrip("-")) > 1 and each.startswith(word.lstrip("-"))]
    nearest = found[0][1] if found else begun[0] if len(begun) == 1 else ""
    if nearest:
        yield f'Did you mean "{bare[nearest]}"?'
