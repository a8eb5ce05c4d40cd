"""Yokes: Zimmermann's percentages, the rhythms that close a round yoke, and raglan sums.

All counts go back to one key number, the body's stitches at its widest. Two rhythms for the three decrease
rounds of a round yoke are in print, and one of them cannot reach the neck it is printed with. So the target
leads here, not the rhythm: the rhythm says how many stitches should go in each round, and the last round
takes what is needed to arrive. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.craft.gauge import half_up, nearest_multiple

SLEEVE_SHARE = 0.33
"""Upper sleeve. In print 33 %; 35 % in later books, from memory."""
WRIST_SHARE = 0.20
"""Cuff. From memory."""
NECK_SHARE = 0.40
"""Neck. Source: yoke cheat sheet citing Knitting Without Tears."""
UNDERARM_SHARE = 0.08
"""Each underarm. Source: the same."""
DEPTH_SHARE = 0.25
"""Yoke depth as a share of the body's circumference. Source: the same."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeCounts:
    """The counts of a seamless pullover."""

    body: int
    """The key number. Unit: stitches."""
    sleeve: int
    """Each upper sleeve; even. Unit: stitches."""
    wrist: int
    """Each cuff; even. Unit: stitches."""
    underarm: int
    """Held at each of the four edges that meet: body twice, each sleeve once. Unit: stitches."""
    neck: int
    """Where the yoke ends; even. Unit: stitches."""

    @property
    def joined(self) -> int:
        """Stitches on the needle when body and sleeves are joined: body + 2 sleeves - 4 underarms."""
        return self.body + 2 * self.sleeve - 4 * self.underarm


@dataclass(frozen=True, slots=True, kw_only=True)
class Rhythm:
    """How three decrease rounds share the work: each closes `twos` pairs in every group of stitches."""

    name: str
    """How it reads in print."""
    groups: tuple[tuple[int, int], ...]
    """For each decrease round (stitches of a group, decreases in it)."""


THIRDS = Rhythm(name="three rounds of *k1, k2tog*", groups=((3, 1), (3, 1), (3, 1)))
"""Source: Knitting Without Tears, by the yoke cheat sheet."""
RISING = Rhythm(
    name="*k2, k2tog*, then *k1, k2tog*, then *k1, k2tog, k2tog*", groups=((4, 1), (3, 1), (5, 2))
)
"""Source: Knitting Around, by the yoke cheat sheet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeStep:
    """One decrease round."""

    before: int
    """Unit: stitches."""
    decreases: int
    """Each takes one stitch away."""
    by_rhythm: int
    """Decreases the rhythm alone would give, leftover stitches knit plain."""

    @property
    def after(self) -> int:
        """Unit: stitches."""
        return self.before - self.decreases


def yoke_counts(body: int, *, sleeve_share: float = SLEEVE_SHARE) -> YokeCounts:
    """Work out a pullover's counts from the body's stitches.

    Args:
        body: The key number. Range: 20 and up. Unit: stitches.
        sleeve_share: Upper sleeve as a share of the body. Range: 0.1 to 1.

    Raises:
        ValueError: An argument is out of range.

    Source: Zimmermann's percentage system, by "Elizabeth Zimmermann Yoke Cheat Sheet" and J. Joyce,
        "Percentage Systems", 2012. It gives narrower upper arms than sizing tables do: never mix the two.
    """
    if body < 20 or not 0.1 <= sleeve_share <= 1:
        raise ValueError(
            f"the body needs 20 stitches or more and a sleeve of 0.1 to 1 of it (got {body}, {sleeve_share})."
        )
    return YokeCounts(
        body=body,
        sleeve=nearest_multiple(body * sleeve_share, 2),
        wrist=nearest_multiple(body * WRIST_SHARE, 2),
        underarm=half_up(body * UNDERARM_SHARE),
        neck=nearest_multiple(body * NECK_SHARE, 2),
    )


def yoke_steps(joined: int, neck: int, rhythm: Rhythm = THIRDS) -> tuple[YokeStep, ...]:
    """Share the decreases of a round yoke over its decrease rounds so that the neck is met.

    Args:
        joined: Stitches at the join. Range: above `neck`.
        neck: Stitches to end with. Range: 1 and up.
        rhythm: How the rounds share the work.

    Returns:
        One step for each decrease round. All but the last follow the rhythm; the last goes to `neck`, and
        `by_rhythm` shows where the rhythm alone would have gone. Always: the last `after` is `neck`.

    Raises:
        ValueError: The counts are out of order, or the last round cannot get there with k2tog alone.

    Source: as for the rhythm. Published 134 -> 80 by *k1, k2tog, k2tog* gives 82, so the target leads.
    """
    if not 1 <= neck < joined:
        raise ValueError(f"a yoke goes from more stitches to fewer (got {joined} to {neck}).")
    steps, before = [], joined
    for i, (group, decreases) in enumerate(rhythm.groups):
        by_rhythm = before // group * decreases
        last = i == len(rhythm.groups) - 1
        step = YokeStep(before=before, decreases=before - neck if last else by_rhythm, by_rhythm=by_rhythm)
        steps.append(step)
        before = step.after
    final = steps[-1]
    if not 0 <= final.decreases <= final.before // 2:
        raise ValueError(
            f"{rhythm.name} leaves {final.before} stitches before the last decrease round, "
            f"from which {neck} cannot be reached: it takes {(final.before + 1) // 2} to {final.before}."
        )
    return tuple(steps)


def yoke_decrease_rounds(depth_rounds: int, times: int = 3) -> tuple[int, ...]:
    """Say in which rounds of a yoke the decreases come.

    Args:
        depth_rounds: Rounds from join to neck. Range: `2 * times` and up.
        times: Decrease rounds, the first half-way up and the last at the neck. Range: 2 and up.

    Returns:
        Round numbers, the first round being 1: at 1/2, 3/4 and all of the depth for three.

    Raises:
        ValueError: An argument is out of range.

    Source: yoke cheat sheet citing Knitting Without Tears.
    """
    if times < 2 or depth_rounds < 2 * times:
        raise ValueError(
            f"{times} decrease rounds need {2 * max(times, 2)} rounds or more (got {depth_rounds})."
        )
    upper = depth_rounds / 2
    return tuple(half_up(upper + upper * i / (times - 1)) for i in range(times))


@dataclass(frozen=True, slots=True, kw_only=True)
class Raglan:
    """How a joined yoke divides into front, back and sleeves, and how its lines close."""

    front: int
    """Unit: stitches."""
    back: int
    """The larger by one when the body is odd. Unit: stitches."""
    sleeve: int
    """Each. Unit: stitches."""
    shaping_rounds: int
    """Whole shaping rounds that fit."""
    left_over: int
    """Stitches still above the neck after them: fewer than one shaping round takes."""
    rounds: int
    """Rounds these take, plain ones included."""


def raglan(counts: YokeCounts, *, per_round: int = 8, every: int = 2) -> Raglan:
    """Divide a joined yoke for raglan shaping and count its shaping rounds.

    Args:
        counts: As from `yoke_counts`.
        per_round: Stitches each shaping round takes: two at each of four lines. Range: 1 and up.
        every: Shaping every so many rounds. Range: 1 and up.

    Raises:
        ValueError: An argument is out of range, or an underarm leaves nothing of a piece.

    Source: the same percentages; eight stitches every other round is common practice.
    """
    if per_round < 1 or every < 1:
        raise ValueError(
            f"stitches a shaping round and rounds between must be 1 or more (got {per_round}, {every})."
        )
    pieces = counts.body - 2 * counts.underarm
    sleeve = counts.sleeve - counts.underarm
    if pieces < 2 or sleeve < 1 or counts.joined < counts.neck:
        raise ValueError("the underarms leave too few stitches for front, back and sleeves.")
    times, left_over = divmod(counts.joined - counts.neck, per_round)
    return Raglan(
        front=pieces // 2,
        back=pieces - pieces // 2,
        sleeve=sleeve,
        shaping_rounds=times,
        left_over=left_over,
        rounds=times * every,
    )


def sleeve_decreases(upper: int, wrist: int) -> int:
    """Count the paired decrease rounds of a sleeve.

    Args:
        upper: Stitches at the upper arm.
        wrist: Stitches at the cuff; the same parity, since each round takes two.

    Raises:
        ValueError: The wrist is wider, below 1, or of another parity.

    Source: two stitches a shaping round; common practice.
    """
    if not 1 <= wrist <= upper or (upper - wrist) % 2:
        raise ValueError(
            f"pairs of decreases go from {upper} to a smaller count of the same parity (got {wrist})."
        )
    return (upper - wrist) // 2
