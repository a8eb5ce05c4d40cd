"""README and guide tell the truth: what they show is run, what they name is there."""

from __future__ import annotations

import re
import shlex
import shutil
import tomllib
from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.sitting.preferences import read_preferences
from stepper.sitting.vocabulary_file import read_vocabulary
from tests.commands.garments import stepper

ROOT = Path(__file__).resolve().parents[1]
PAGES = ("README.md", "docs/guide.md")
SAMPLE = ROOT / "sample_projects" / "pullover.yaml"


def text_of(page: str) -> str:
    """Read a page."""
    return (ROOT / page).read_text(encoding="utf-8")


def blocks(page: str, kind: str) -> list[str]:
    """List the blocks of a kind on a page."""
    return re.findall(rf"^```{kind}\n(.*?)^```$", text_of(page), re.DOTALL | re.MULTILINE)


def commands(page: str) -> list[list[str]]:
    """List every command line of ours on a page, in a block or in a sentence, without the name of the program."""
    lines = [line for kind in ("sh", "bat") for block in blocks(page, kind) for line in block.splitlines()]
    lines += re.findall(r"`([^`\n]+)`", text_of(page))
    ours = (re.search(r"(?:^|[ /\\])stepper ((?:[a-z]).*)$", line) for line in lines)
    return [shlex.split(each[1].replace("\\", "/")) for each in ours if each is not None]


def test_the_evening_is_what_is_said(tmp_path: Path) -> None:
    """The first thing she reads of an evening is what she will get, word by word."""
    (shown,) = (block for block in blocks("README.md", "text") if "\n> " in block)
    typed = "".join(f"{line[2:]}\n" for line in shown.splitlines() if line.startswith("> "))
    told = " ".join(line for line in shown.splitlines() if not line.startswith("> "))
    done = stepper("knit", Path(shutil.copy(SAMPLE, tmp_path)), "--plain", "--mute", typed=typed)

    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.split() == told.split()


def test_the_problem_is_what_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """A misspelt word is answered as the page says, with its line and column in the sample."""
    (shown,) = (block for block in blocks("README.md", "text") if ": error:" in block)
    right = SAMPLE.read_text(encoding="utf-8")
    wrong = right.replace("Second increase: increase", "Second increase: incrase")
    (tmp_path / "garment.yaml").write_text(wrong, encoding="utf-8")
    monkeypatch.chdir(tmp_path)

    assert main(["check", "garment.yaml"]) == 1
    assert capsys.readouterr().err == shown


@pytest.mark.parametrize("page", PAGES)
def test_every_command_is_one_that_we_have(page: str, capsys: pytest.CaptureFixture[str]) -> None:
    """What a page says to type is taken: the command, every option beside it, every sample it names."""
    found = commands(page)
    assert len(found) > 3
    for words in found:
        told = known_words(words, capsys)
        for word in words:
            assert not word.startswith("--") or word in told, words
            assert not word.startswith("sample_projects/") or (ROOT / word).is_file(), word


def known_words(words: list[str], capsys: pytest.CaptureFixture[str]) -> set[str]:
    """List the words of the help to a command line, which has to be there."""
    named = [word for word in words[:2] if re.fullmatch(r"[a-z]+", word)]
    for asked in (named, named[:1]):
        with pytest.raises(SystemExit) as ended:
            main([*asked, "--help"])
        told = capsys.readouterr().out
        if ended.value.code == 0:
            return set(re.findall(r"--[a-z-]+", told))
    pytest.fail(f"there is no stepper {' '.join(words)}")


def test_the_project_file_shown_is_sound(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Who types it in has a file that can be knitted."""
    (shown,) = blocks("README.md", "yaml")
    path = tmp_path / "shown.yaml"
    path.write_text(shown, encoding="utf-8")

    assert main(["check", str(path)]) == 0
    assert " is sound: " in capsys.readouterr().out


def test_the_settings_shown_are_read(tmp_path: Path) -> None:
    """Every setting and the vocabulary of the guide are understood, none passed over with a remark."""
    shown = blocks("docs/guide.md", "toml")
    (settings,) = (each for each in shown if "[voice]" in each)
    (words,) = (each for each in shown if "[phrases]" in each)
    path, vocabulary = tmp_path / "settings.toml", tmp_path / "german.toml"
    path.write_text(settings, encoding="utf-8")
    vocabulary.write_text(words, encoding="utf-8")

    assert read_preferences(path).remarks == ()
    assert tomllib.loads(words)["phrases"]
    assert read_vocabulary(vocabulary)


@pytest.mark.parametrize("page", PAGES)
def test_every_link_leads_somewhere(page: str) -> None:
    """Files, pictures and headings that a page points to are there."""
    text = text_of(page)
    links = [*re.findall(r"\]\(([^)]+)\)", text), *re.findall(r'src="([^"]+)"', text)]
    assert links
    for link in links:
        if link.startswith("https://"):
            continue
        file, _, heading = link.partition("#")
        path = (ROOT / page).parent / file if file else ROOT / page
        assert path.is_file(), link
        headings = re.findall(r"^#+ (.*)$", path.read_text("utf-8"), re.MULTILINE) if heading else []
        assert not heading or heading in {re.sub(r"\W+", "-", each.lower()) for each in headings}, link


def test_the_pictures_are_small() -> None:
    """Three hundred kilobytes for all, since everyone who installs from a folder fetches them."""
    pictures = [each for each in (ROOT / "docs").iterdir() if each.suffix in (".svg", ".png")]
    assert len(pictures) == 3
    assert sum(each.stat().st_size for each in pictures) < 300_000
