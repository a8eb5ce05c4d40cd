"""Whether a yarn lasts, for the ear."""

from __future__ import annotations

from stepper.language.yarn_left import tell_yarn_left
from stepper.session.effects import TellLasting
from tests.plan.test_compile import SWITCHBACK, plan_of

PLAN = plan_of(SWITCHBACK.read_text(encoding="utf-8"))


def told(
    *,
    out: int | None = None,
    soonest: int | None = None,
    buy: int = 0,
    beside: int = 0,
    doubtful: bool = False,
) -> str:
    """Say one forecast of chalk."""
    effect = TellLasting(
        yarn="MC", beside=beside, doubtful=doubtful, over_g=38.4, out=out, out_soonest=soonest, buy=buy
    )
    return tell_yarn_left(effect, PLAN)


def test_it_lasts() -> None:
    """With what will be over, and what was taken to lie beside the ball."""
    assert told() == "It lasts, with about 38 grams over."
    assert told(beside=2) == "With 2 whole skeins beside it: it lasts, with about 38 grams over."


def test_it_may_not_last_or_does_not() -> None:
    """Where it ends, and what to buy by then."""
    assert told(soonest=200, buy=1) == (
        "It likely lasts, but may run out in left sleeve, round 40. 1 more skein would make sure."
    )
    assert told(out=210, soonest=200, buy=2) == (
        "It does not last: it runs out about left sleeve, round 50. Buy 2 more skeins."
    )


def test_a_weight_that_can_be_read_two_ways_is_doubted() -> None:
    """She is asked for one that cannot, and sent for no yarn before."""
    asks = "I am not sure how to read that weight: weigh all that is left before you buy any. As I read it, "
    assert told(doubtful=True).startswith(f"{asks}it lasts")
    short = told(doubtful=True, out=210, soonest=200, buy=2)
    assert short.startswith(f"{asks}it does not last: it runs out about ")
    assert "skein" not in short
    assert "skein" not in told(doubtful=True, soonest=200, buy=1)


def test_the_yarn_is_named_where_others_were_spoken_of() -> None:
    """"It" would be the last of three."""
    named = TellLasting(yarn="MC", beside=0, doubtful=False, over_g=38.4, out=None, out_soonest=None, buy=0, named=True)
    assert tell_yarn_left(named, PLAN).lower() == f"{PLAN.yarns['MC']} lasts, with about 38 grams over."
