"""The JSON document is the contract: these keys and no others."""

from __future__ import annotations

import json
from pathlib import Path

from stepper.plan.export import plan_document
from tests.plan.test_compile import plan_of

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"

ROUND_KEYS = [
    "index",
    "section",
    "number",
    "of",
    "label",
    "size",
    "needle_mm",
    "flat",
    "side",
    "instruction",
    "spoken",
    "before",
    "after",
    "held",
    "runs",
    "shaping",
    "floats",
    "checkpoint",
    "own_words",
]


def test_the_document_has_the_keys_of_the_contract() -> None:
    """Other tools read it by these names."""
    document = plan_document(plan_of(SWITCHBACK.read_text(encoding="utf-8")), spoken=lambda r: r.instruction)
    assert list(document) == ["format", "title", "sections", "rounds", "warnings"]
    assert all(list(round_) == ROUND_KEYS for round_ in document["rounds"])
    assert json.loads(json.dumps(document)) == document
    section = document["sections"][1]
    assert section["name"] == "yoke"
    assert section["rounds"] == 37


def test_a_round_can_be_summed_by_the_reader() -> None:
    """Uses and leaves by a table written out here, from the published list (check-values 1.6)."""
    uses = {"k": 1, "p": 1, "m1": 0, "k2tog": 2, "ssk": 2, "co": 0, "bo": 1, "hold": 1, "return": 0, "pu": 0}
    leaves = {"k": 1, "p": 1, "m1": 1, "k2tog": 1, "ssk": 1, "co": 1, "bo": 0, "hold": 0, "return": 1, "pu": 1}
    document = plan_document(plan_of(SWITCHBACK.read_text(encoding="utf-8")), spoken=lambda r: r.instruction)
    for round_ in document["rounds"]:
        assert sum(uses[stitch] * times for stitch, times, _ in round_["runs"]) == round_["before"]
        assert sum(leaves[stitch] * times for stitch, times, _ in round_["runs"]) == round_["after"]
