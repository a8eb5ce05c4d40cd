from __future__ import annotations

import pytest

from stepper.commands.main import COMMANDS, main
from stepper.commands.parser import HelpfulParser, did_you_mean, write_examples

ARGUMENTS = [[name] for name in COMMANDS] + [["voice", part] for part in ("install", "enrol", "try")]


def refused(words: list[str], capsys: pytest.CaptureFixture[str]) -> str:
    """Return a command line that is wrong; return what is said of it."""
    with pytest.raises(SystemExit) as ended:
        main(words)
    assert ended.value.code == 2
    return capsys.readouterr().err


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["knti", "hat.yaml"], 'Did you mean "knit"?'),
        (["colors", "hat.yaml"], 'Did you mean "colours"?'),
        (["completions", "bash"], 'Did you mean "completion"?'),
        (["plan", "hat.yaml", "--jsn"], 'Did you mean "--json"?'),
        (["plan", "hat.yaml", "--man", "runs"], 'Did you mean "--manner"?'),
        (["plan", "hat.yaml", "--manner", "mixd"], 'Did you mean "mixed"?'),
        (["voice", "tri"], 'Did you mean "try"?'),
        (["voice", "try", "--seconds=3", "--flim"], 'Did you mean "--film"?'),
        (["hat.yaml"], "To knit it: stepper knit hat.yaml"),
        (["plan"], "this is missing: FILE"),
        (["fit", "--hep"], 'this is not understood here: --hep\nDid you mean "--help"?'),
        (["plan", "hat.yaml", "--html"], "behind --html this is missing: OUT"),
        (["fit", "a.yaml", "b.yaml"], "this is not understood here: b.yaml"),
    ],
)
def test_a_slip_is_answered_with_what_was_meant(
    words: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """And with the help of the command that was called."""
    told = refused(words, capsys)
    assert said in told
    assert told.splitlines()[-1].startswith(f"Help: stepper {words[0]} --help" if words[0] in COMMANDS and words[0] != "voice" else "Help: stepper")


def test_what_is_like_nothing_gets_no_guess(capsys: pytest.CaptureFixture[str]) -> None:
    """A wrong guess sends her the wrong way."""
    assert "Did you mean" not in refused(["zebra"], capsys)
    assert list(did_you_mean("--x", ["--json", "--all"])) == []
    assert list(did_you_mean("--x", ["-h"])) == []


@pytest.mark.parametrize("words", ARGUMENTS, ids=" ".join)
@pytest.mark.parametrize("columns", [60, 80])
def test_every_help_has_an_example_and_keeps_to_the_terminal(
    words: list[str], columns: int, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """An example is what most people read of a help; and a line too wide is broken inside a word."""
    monkeypatch.setenv("COLUMNS", str(columns))
    with pytest.raises(SystemExit):
        main([*words, "--help"])
    told = capsys.readouterr().out
    assert max(map(len, told.splitlines())) <= columns
    assert "Example" in told
    assert f"\n  stepper {' '.join(words)}" in told or words == ["completion"]


@pytest.mark.parametrize("words", ARGUMENTS, ids=" ".join)
def test_every_example_can_be_typed(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    """The parser takes each as it stands."""
    with pytest.raises(SystemExit):
        main([*words, "--help"])
    lines = capsys.readouterr().out.partition("Example")[2].splitlines()
    typed = [line.split() for line in lines if line.startswith("  stepper ")]
    for example in typed:
        end = next((at for at, word in enumerate(example) if word in (">", ">>")), len(example))
        with pytest.raises(SystemExit) as ended:
            main([*example[1:end], "--help"])
        assert ended.value.code == 0
    assert typed or words == ["completion"]
    capsys.readouterr()


def test_an_option_is_never_broken_at_its_hyphen(monkeypatch: pytest.MonkeyPatch) -> None:
    """It can be copied from the help as it stands."""
    monkeypatch.setenv("COLUMNS", "40")
    parser = HelpfulParser(prog="p", description="Keep the " + "well-known-thing " * 9)
    parser.add_argument("--thing", help="as well-known-thing " * 9)
    assert all("well-known-thing" in line or "well" not in line for line in parser.format_help().splitlines())


def test_one_example_is_called_one() -> None:
    """And none leaves the page as it was."""
    assert write_examples([("a b", "does it")]) == "Example:\n  a b\n      does it"
    assert write_examples([]) == ""
