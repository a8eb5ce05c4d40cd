"""`stepper check`: exit codes and words, for every bad file that can be thought of."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from stepper.commands.main import main
from tests.commands.garments import PAGE
from tests.project.samples import project

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
SOUND = SWITCHBACK.read_text(encoding="utf-8")
BOMB = "\n".join(["a0: &a0 [x,x,x,x]", *(f"a{n}: &a{n} [{','.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 9))])


def check(path: Path, capsys: pytest.CaptureFixture[str]) -> tuple[int, str]:
    """Run the command; give its exit code and what it printed on standard error."""
    code = main(["check", str(path)])
    return code, capsys.readouterr().err


def test_the_sample_is_sound(capsys: pytest.CaptureFixture[str]) -> None:
    """Exit code 0, and what it comes to."""
    assert main(["check", str(SWITCHBACK)]) == 0
    assert "is sound: 425 rounds" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("content", "code", "words"),
    [
        pytest.param(SOUND.replace("208, 220) sts.", "208, 218) sts."), 1, "prints 218", id="count"),
        pytest.param(SOUND.replace("80 (84, 92, 100, 108, 112)", "80 (84, 92, 100, 108)"), 1, "5 numbers", id="list"),
        pytest.param(SOUND.replace("to 120 (130,", "to 121 (130,"), 1, "does not divide", id="chart"),
        pytest.param(SOUND.replace("yarn: MC", "yarn: Q", 1), 1, 'no yarn "Q"', id="yarn"),
        pytest.param(SOUND.replace("Chart cairn", "Chart carin"), 1, 'Did you mean "cairn"?', id="undefined chart"),
        pytest.param(SOUND.replace("units: cm", "units: cm\nunits: in"), 1, "given twice", id="duplicate"),
        pytest.param(SOUND.replace("  size: 4", "\tsize: 4"), 1, "a tab", id="tab"),
        pytest.param("work: *K2, p2; rep from * to end\n", 1, '"*" outside a block', id="star"),
        pytest.param(SOUND.replace("  size: 4", "  size: 9"), 1, 'no size "9"', id="size"),
        pytest.param("", 1, "empty", id="empty"),
        pytest.param("title: x\n" * 1_200_000, 1, "too large", id="10 MB"),
        pytest.param(BOMB, 1, "anchors", id="bomb"),
        pytest.param("- a\n- b\n", 1, "keys and values", id="list file"),
        pytest.param("just words\n", 1, "keys and values", id="words"),
    ],
)
def test_a_bad_file_is_told_with_its_place(
    content: str, code: int, words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A clear error with its place, never a traceback."""
    path = tmp_path / "garment.yaml"
    path.write_text(content, encoding="utf-8")
    found, shown = check(path, capsys)
    assert found == code
    assert words in shown
    assert f"{path}:" in shown
    assert "Traceback" not in shown


def test_a_binary_file_and_a_missing_one(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Exit code 1 for what is no project, 4 for what is not there."""
    path = tmp_path / "a.yaml"
    path.write_bytes(bytes(range(256)) * 20)
    assert check(path, capsys)[0] == 1
    code, shown = check(tmp_path / "none.yaml", capsys)
    assert (code, "There is no file" in shown) == (4, True)


def test_a_bad_file_leaves_its_journal_untouched(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """What was knitted stays, whatever happens to the pattern."""
    path = tmp_path / "garment.yaml"
    path.write_text(project("Cast on 8 sts.\nBind off."), encoding="utf-8")
    journal = tmp_path / "garment.journal"
    journal.write_bytes(b"whatever was here")
    path.write_text("title: x\ntitle: y\n", encoding="utf-8")
    for command in (["check"], ["plan"], ["knit", "--plain", "--mute"], ["where"]):
        assert main([*command, str(path)]) == 1
    capsys.readouterr()
    assert journal.read_bytes() == b"whatever was here"


def test_cautions_are_told_with_their_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Something to know is not a fault."""
    assert main(["check", str(SWITCHBACK)]) == 0
    assert "note: 32 cm on the needles become 33.1 cm after blocking" in capsys.readouterr().out


def test_a_document_tells_a_program_what_the_page_tells_her(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Problems are values with their place, and the exit code is the same."""
    assert main(["check", str(SWITCHBACK), "--json"]) == 0
    sound = json.loads(capsys.readouterr().out)
    assert (sound["format"], sound["sound"], sound["rounds"], sound["problems"]) == (1, True, 425, [])

    path = tmp_path / "bad.yaml"
    path.write_text(SOUND.replace("Chart cairn", "Chart carin"), encoding="utf-8")
    assert main(["check", str(path), "--json"]) == 1
    told = capsys.readouterr()
    found = json.loads(told.out)
    code, page = check(path, capsys)
    assert (code, told.err, found["format"], found["sound"]) == (1, "", 1, False)
    (problem,) = found["problems"]
    assert page.startswith(f"{path}:{problem['line']}:{problem['column']}: error: {problem['message']}")
    assert problem["hint"] in page


def test_the_parts_are_told_apart_where_one_has_a_comma_in_its_name(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """ "Sleeves, sleeves, second" reads as three parts; it is two."""
    path = tmp_path / "sleeves.yaml"
    path.write_text(SOUND.replace("- name: left sleeve", '- name: "sleeve, left"'), encoding="utf-8")
    assert main(["check", str(path)]) == 0
    assert "(neckband; yoke; body; sleeve, left; right sleeve)" in " ".join(capsys.readouterr().out.split())


def test_of_a_page_it_says_how_far_it_can_be_knitted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Beside all that is open; what stands in front of the pattern has to be settled first."""
    path = tmp_path / "mitts.yaml"
    path.write_text(PAGE.lstrip())
    code, shown = check(path, capsys)
    assert code == 1
    assert "2 places are open in mitts.yaml. Up to line 16 it can be knitted (4 rounds); there you are asked." in shown
    path.write_text(PAGE.lstrip().replace("size: M}", "size: M}  # LOOK: which size do you knit?"))
    code, shown = check(path, capsys)
    assert code == 1
    assert "Once its size and what stands in front of the pattern are settled" in shown
