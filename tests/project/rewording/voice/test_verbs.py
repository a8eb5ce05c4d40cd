"""The verbs of the trade in all their forms."""

from __future__ import annotations

from stepper.project.rewording.voice.verbs import GERUNDS, PARTICIPLES, VERBS


def test_each_form_is_of_one_verb_spelt_as_english_spells_it() -> None:
    """Letters are doubled and dropped by rule: slipped, decreasing, knitted; drawn and sewn by none."""
    assert {form: PARTICIPLES[form] for form in ("slipped", "decreased", "knitted", "drawn", "sewn", "cut", "purled")} == {
        "slipped": "slip", "decreased": "decrease", "knitted": "knit", "drawn": "draw", "sewn": "sew", "cut": "cut", "purled": "purl",
    }  # fmt: skip
    assert {form: GERUNDS[form] for form in ("slipping", "placing", "knitting", "working")} == {
        "slipping": "slip", "placing": "place", "knitting": "knit", "working": "work",
    }  # fmt: skip
    assert len(set(VERBS)) == len(VERBS)
