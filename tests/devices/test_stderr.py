from __future__ import annotations

import os
import subprocess
import sys
from threading import Event, Thread

import pytest

from stepper.devices.stderr import quiet_stderr, stderr_aside


def test_what_c_code_writes_is_thrown_away_and_later_words_are_not(capfd: pytest.CaptureFixture[str]) -> None:
    """A sound library's complaints must not tear the screen, and ours must not be lost."""
    with quiet_stderr():
        os.write(2, b"ALSA lib: no card\n")
    os.write(2, b"after\n")
    assert capfd.readouterr().err == "after\n"


def test_it_is_put_back_when_the_block_fails(capfd: pytest.CaptureFixture[str]) -> None:
    """An exception inside must not swallow all that is written afterwards."""
    with pytest.raises(OSError, match="bad"), quiet_stderr():
        raise OSError("bad")
    os.write(2, b"after\n")
    assert capfd.readouterr().err == "after\n"


def test_where_nothing_can_be_thrown_away_the_voice_goes_on(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    """The voice is worth more than a whole screen."""
    monkeypatch.setattr(os, "devnull", "/no/such/folder")
    with quiet_stderr():
        os.write(2, b"inside\n")
    assert capfd.readouterr().err == "inside\n"


def test_a_program_without_standard_error_goes_on() -> None:
    """Started from a menu, a program may have no standard error at all."""
    code = (
        "import os; os.close(2)\n"
        "from stepper.devices.stderr import quiet_stderr\n"
        "with quiet_stderr(): print('on')"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=30)
    assert done.stdout == "on\n"


def test_a_screen_keeps_it_aside_while_quiet_blocks_come_and_go(capfd: pytest.CaptureFixture[str]) -> None:
    """A device opened again from a thread must neither wait for the screen nor tear it."""
    opened, over = Event(), Event()

    def open_device() -> None:
        with quiet_stderr():
            os.write(2, b"ALSA lib: thrown away\n")
            opened.set()
            over.wait(60)

    thread = Thread(target=open_device)
    with stderr_aside():
        thread.start()
        assert opened.wait(60)
        over.set()
        thread.join(60)
        os.write(2, b"while the screen is shown\n")
    os.write(2, b"after\n")

    assert capfd.readouterr().err == "after\n"
