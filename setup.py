"""What pyproject.toml cannot say: the folder `models` stands beside the package here and inside it where it is installed."""

from setuptools import find_packages, setup

setup(
    packages=[*find_packages(include=["stepper", "stepper.*"]), "stepper.models"],
    package_dir={"stepper.models": "models"},
)
