"""The whole fit of the sample at once."""

from __future__ import annotations

import json

from stepper.report.fit.report import fit_document, report_fit
from tests.fixtures import plan_named
from tests.plan.test_blend import switchback, tried_blends


def test_every_blend_is_either_ranked_or_rejected_and_all_of_it_is_plain() -> None:
    """Six sizes alone and 30 pairs at each of three increases; the document can be written as JSON."""
    found = report_fit(switchback(), plan_named("switchback"), tried_blends())
    assert len(found.ranked) + len(found.rejected) == 96
    written = json.loads(json.dumps(fit_document(found)))
    first = written["blends"][0]
    assert {
        "off_by_mm",
        "size",
        "then",
        "from",
        "before",
        "after",
        "gaps",
        "spacing",
        "lines",
        "divides",
    } <= set(first)
    assert written["rejected"][0]["why"]
    assert [each["measure"] for each in written["ranked_by"]] == ["bust", "upper_arm", "neck"]
    assert all(each["assumed"] for each in written["ranked_by"])
    assert written["table_sizes"] == []  # she gave more than her bust
    assert written["left_out"] == []
    assert not any(line["body_from_table"] for line in written["lines"])
    scenario = next(each for each in written["blends"] if (each["before"], each["after"]) == (225, 246))
    assert scenario["spacing"] == "225 to 246: 21 increases 10 or 11 apart"
    assert scenario["gaps"] == [[11, 15], [10, 6]]  # 225 = 21 × 10 + 15
    assert all(line["change_mm"] == 0 for line in scenario["lines"])
