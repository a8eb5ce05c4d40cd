"""Settings for all tests."""

from __future__ import annotations

from hypothesis import HealthCheck, Phase, settings

pytest_plugins = ["tests.sound_room"]

# A busy machine is no fault of the code, and explaining a failure may take longer than finding it.
settings.register_profile(
    "house",
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
    phases=[Phase.explicit, Phase.reuse, Phase.generate, Phase.shrink],
)
settings.load_profile("house")
