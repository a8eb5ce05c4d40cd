"""Yarn of every whole garment beside the handbooks' rule of area, by the gauge as knitted and as blocked.

Run: python -m tests.bench.area_rule
"""

from __future__ import annotations

from pathlib import Path

from stepper.report.yarn import list_yarns
from tests.fixtures import plan_in_size, project_of
from tests.report.test_yarn import area_rule_m

TESTS = Path(__file__).parents[1]


def main() -> None:
    """Print a row for each garment: metres, and how far likely lies from the rule."""
    print(f"{'garment':22}{'likely':>8}{'between':>14}{'rule':>7}{'off':>8}{'blocked':>10}{'off':>8}  in the range")
    for folder in (TESTS / "fixtures", TESTS.parent / "sample_projects", TESTS / "report" / "garments"):
        for path in sorted(folder.glob("*.yaml")):
            project, plan = project_of(path), plan_in_size(path)
            rows = list_yarns(plan)
            low, likely, high = (sum(getattr(row.quantity, name) for row in rows) for name in ("low_m", "likely_m", "high_m"))
            rules = [area_rule_m(plan, project, blocked=blocked) for blocked in (False, True)]
            inside = all(low < rule < high for rule in rules)
            told = "".join(f"{rule:{wide}.0f}{likely / rule - 1:8.1%}" for rule, wide in zip(rules, (7, 10), strict=True))
            print(f"{folder.name[:6] + ' ' + path.stem:22}{likely:8.0f}{f'{low:.0f} to {high:.0f}':>14}{told}  {'yes' if inside else 'NO'}")


if __name__ == "__main__":
    main()
