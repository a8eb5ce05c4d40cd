"""Map the folder `models` into the package, which pyproject.toml cannot do beside finding the packages."""

from setuptools import find_packages, setup

setup(
    packages=[*find_packages(include=["stepper", "stepper.*"]), "stepper.models"],
    package_dir={"stepper.models": "models"},
)
