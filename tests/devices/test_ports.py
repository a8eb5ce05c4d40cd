from __future__ import annotations

import pytest

from stepper.devices.ports import NoOutputError
from stepper.errors import SurroundingsError
from stepper.mouth.ports import NoVoiceError


@pytest.mark.parametrize("kind", [NoVoiceError, NoOutputError])
def test_want_of_sound_is_the_surroundings_fault(kind: type[SurroundingsError]) -> None:
    """A command that cannot do without sound ends with the exit code for the surroundings."""
    assert issubclass(kind, SurroundingsError)
    assert kind.exit_code == 4
