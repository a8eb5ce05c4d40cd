"""The conductor: one queue of cues, one consumer, and the order that loses nothing.

Keys, pedals, the microphone and typed lines all feed the queue; one thread works it off. For each cue:
**consider → commit → adopt → perform**. An event is on the disk before anything is shown or said. If the
program dies between the commit and the voice, the step is said again next time; it is never lost and never
counted twice.

The caller passes in how events are kept, how lines are shown, a clock, and a speaker if there is to be sound.
So a whole session runs in a test without a disk, a screen or a sound device.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from queue import Empty, SimpleQueue

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.language.listening_words import list_surest_words, tell_how_to_answer, tell_without_ears
from stepper.language.stretches import part_long_sentences
from stepper.language.understanding.own_words import list_own_words
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.mouth.ports import Speaker, SpokenLine, Tone
from stepper.records import dataclass
from stepper.session.clock_cues import Beat, Silence
from stepper.session.cues import Again, Asks, Cue, Listen, Next, Where
from stepper.session.effects import (
    BeatIn,
    Close,
    Effect,
    Refuse,
    RestHands,
    TellHelp,
    TellStep,
    TurnFilm,
    TurnTo,
)
from stepper.session.machine import Considered, Session
from stepper.session.open_row.telling import SettleRow
from stepper.session.pace.learning import seconds_between
from stepper.session.pace.silence import silence_limit_s
from stepper.session.questions.open_question import list_answers
from stepper.session.questions.topics import HelpWith
from stepper.session.state import OpenAnswer, State
from stepper.sitting.ports import ConductorPorts, ConductorSettings, WorkedOff


@dataclass(frozen=True, slots=True)
class _Words:
    """Words yet to be understood; the consumer does that, since their meaning depends on the plan then."""

    text: str
    heard: bool
    """Whether they came through the microphone."""
    score: float
    """How well they were heard. Range: 0 to 1."""


@dataclass(frozen=True, slots=True)
class _Item:
    """What waits in the queue."""

    asked: Cue | _Words
    still: Callable[[State], bool] | None
    """Whether it is still meant when its turn comes; None if it always is."""
    then: Callable[[bool], None] | None
    """Called once it is worked off, with True, or dropped, with False."""


class Conductor:
    """Runs a session: takes cues from any thread and works them off on one."""

    def __init__(
        self,
        session: Session,
        ports: ConductorPorts,
        settings: ConductorSettings | None = None,
    ) -> None:
        """Take over a session.

        Args:
            session: What is knitted and where it stands.
            ports: How it reaches the outside world.
            settings: How the knitter wants it; the defaults if not given.
        """
        self._session, self._ports = session, ports
        self._settings = settings if settings is not None else ConductorSettings()
        self._speaker = ports.speaker
        self._film = self._settings.film
        self._last_at = ""
        self._alarm, self._alarm_set_at, self._alarm_in = 0, "", 0.0
        self._queue: SimpleQueue[_Item] = SimpleQueue()
        self._watchers: list[Callable[[WorkedOff], None]] = []

    @property
    def session(self) -> Session:
        """The session as it stands."""
        return self._session

    @property
    def closed(self) -> bool:
        """Whether the sitting is over."""
        return self._session.state.closed

    @property
    def film_is_on(self) -> bool:
        """Whether a film is on, so that every cue needs the address word."""
        return self._film

    # Any thread

    def offer(
        self,
        cue: Cue,
        *,
        still: Callable[[State], bool] | None = None,
        then: Callable[[bool], None] | None = None,
    ) -> None:
        """Put a cue into the queue. A cue without a time gets the time at which it is worked off.

        Args:
            cue: What is asked.
            still: Asked on the consumer's thread when its turn comes; if it is not meant any more where the
                session then stands, it is dropped.
            then: Called on the consumer's thread with whether it was worked off; what came of it is then on
                the disk.
        """
        self._queue.put(_Item(cue, still, then))

    def offer_words(
        self,
        text: str,
        *,
        heard: bool = False,
        score: float = 1.0,
        then: Callable[[bool], None] | None = None,
    ) -> None:
        """Put words into the queue.

        Args:
            text: As typed or recognised.
            heard: Whether they came through the microphone; while the ears are closed, all such words but
                "start listening" are silently ignored, because they may come from the film.
            score: How well they were heard. Range: 0 (a guess) to 1 (certain).
            then: As for `offer`.
        """
        self._queue.put(_Item(_Words(text, heard, score), None, then))

    # The consumer's thread

    def watch(self, watcher: Callable[[WorkedOff], None]) -> None:
        """Have something called after the opening and after each cue that is worked off, whoever gave it."""
        self._watchers.append(watcher)

    def begin(self, fingerprint: str, changed: Considered | None = None) -> None:
        """Open the sitting: record that, and tell the recap and what comes first.

        Args:
            fingerprint: That of the project file's plan.
            changed: What follows from a changed file: the move to its plan, or the question where to go on in
                it, which itself opens the sitting.
        """
        if changed is not None:
            self._carry_out(changed)
        if self._film and self._speaker is not None and self._settings.sounds:
            self._speaker.sound(Tone.FILM)
        if changed is None or changed.state.question is None:
            self._carry_out(self._session.consider_opening(self._ports.clock(), fingerprint))
        self._expect(self._ports.clock())
        self._watch(self._ports.clock())
        self._report(WorkedOff())

    def run(self) -> None:
        """Work off the queue, waiting for more, until the sitting is over."""
        while not self.closed:
            self._work_off(self._queue.get())

    def drain(self) -> None:
        """Work off what is in the queue and return."""
        while not self.closed:
            try:
                item = self._queue.get_nowait()
            except Empty:
                return
            self._work_off(item)

    def _work_off(self, item: _Item) -> None:
        if item.still is not None and not item.still(self._session.state):
            if item.then is not None:
                item.then(False)
            return
        asked = item.asked
        self._answer(asked)
        self._report(
            WorkedOff(words=asked.text, heard=asked.heard) if isinstance(asked, _Words) else WorkedOff()
        )
        if item.then is not None:
            item.then(True)

    def _report(self, done: WorkedOff) -> None:
        for watcher in self._watchers:
            watcher(done)

    def _answer(self, item: Cue | _Words) -> None:
        now = self._ports.clock()
        heard = isinstance(item, _Words) and item.heard
        cue: Cue | NotUnderstood
        if isinstance(item, _Words):
            session, own = self._session, self._settings.own_wordings
            counting = session.state.knitting.tens is not None
            nearly = Asks if heard else Cue
            cue = understand(
                item.text, session.plan, at=now, own=own, counting=counting, figures=True, nearly=nearly
            )
            if heard and self._session.state.asleep and not isinstance(cue, Listen):
                return
            if heard and isinstance(cue, Cue):
                cue = replace(cue, heard=item.score)
        else:
            cue = item if item.at else replace(item, at=now)
        if isinstance(cue, Silence):
            self._in_silence(cue, now)
            return
        if self._speaker is not None and not isinstance(cue, Beat):  # a clock interrupts nothing
            self._answer_with_a_sound(self._speaker, cue, heard=heard)
        if isinstance(cue, NotUnderstood):
            self._perform((Refuse(sentence=cue.sentence, aloud=not heard),))
        else:
            self._carry_out(self._session.consider(cue))
            self._expect(now)
            self._watch(now)

    def _watch(self, now: str) -> None:
        """Remember when something was asked, and set an alarm for the silence after it.

        An alarm already set stays unless it would ring too late; it is checked again when it rings.
        """
        self._last_at = now
        if self._ports.schedule is None or not self._settings.silence_s or self.closed:
            return
        wait, passed = self._patience(), seconds_between(self._alarm_set_at, now)
        if passed is None or wait < self._alarm_in - passed:
            self._set_alarm(wait, now)

    def _set_alarm(self, seconds: float, now: str) -> None:
        assert self._ports.schedule is not None
        self._alarm, self._alarm_set_at, self._alarm_in = self._alarm + 1, now, seconds
        self._ports.schedule(seconds, Silence(alarm=self._alarm))

    def _patience(self) -> float:
        return silence_limit_s(self._session.plan, self._session.state, self._settings.silence_s)

    def _in_silence(self, cue: Silence, now: str) -> None:
        """Say the place if nothing was asked since; otherwise set the alarm to the remaining time."""
        if cue.alarm != self._alarm:
            return
        self._alarm_set_at = ""
        left = self._patience() - (seconds_between(self._last_at, now) or 0.0)
        if left > 1:
            self._set_alarm(left, now)
        elif self._queue.empty():  # a cue that is waiting matters more, and its answer says the place
            self._carry_out(self._session.consider(cue))

    def _answer_with_a_sound(self, speaker: Speaker, cue: Cue | NotUnderstood, *, heard: bool) -> None:
        """Fall silent for a cue and play a tone to say it was heard; anything else only gets a tone."""
        understood = not isinstance(cue, NotUnderstood)
        if understood or not heard:
            speaker.silence()  # what is asked now matters more than what was being said
        if heard and self._settings.sounds:
            speaker.sound(Tone.HEARD if understood else Tone.NOT_UNDERSTOOD)

    def _expect(self, now: str) -> None:
        """Have the voice prepare what will probably be asked for next."""
        if self._speaker is not None and not self.closed:
            likely = (self._session.consider(cue) for cue in (Next(at=now), Again(at=now), Where(at=now)))
            self._speaker.expect(line for considered in likely for line in self._lines_of(considered))

    def _carry_out(self, considered: Considered) -> None:
        remarks = self._ports.keep(considered.events, considered.state) if considered.events else None
        self._session.adopt(considered)
        for sentence in remarks or ():
            self._ports.show(sentence)
            if self._speaker is not None:
                self._speaker.say(self._spoken(sentence, slower=False).text)
        self._perform(considered.effects)
        if self._ports.asked is not None:
            self._ports.asked(list_answers(self._session.plan, self._session.state, considered.effects))

    def _perform(self, effects: tuple[Effect, ...]) -> None:
        for effect in effects:
            if isinstance(effect, TurnTo) and self._ports.turn is not None:
                self._ports.turn(effect.view)
                continue
            if isinstance(effect, SettleRow):
                self._settle(effect.answer)
                continue
            if isinstance(effect, TurnFilm):
                self._turn_film(effect.on)
            if isinstance(effect, RestHands) and not self._settings.rest:
                continue
            if isinstance(effect, BeatIn) and self._ports.schedule is not None:
                self._ports.schedule(effect.seconds, Beat(seq=effect.seq))
            line = self._line_of(effect)
            if not line or isinstance(effect, Close):
                continue
            self._ports.show(line)
            if self._speaker is not None and not (isinstance(effect, Refuse) and not effect.aloud):
                said = self._said(line, effect)
                self._speaker.say(said.text, slower=said.slower)

    def _settle(self, answer: OpenAnswer) -> None:
        """Have a row that was not read written as she answered, and go on with the plan that follows."""
        if self._ports.settle is None:
            self._perform((Refuse(sentence="Nothing is written here: stepper settle asks about it."),))
            return
        outcome = self._ports.settle(answer)
        if isinstance(outcome, str):
            self._perform((Refuse(sentence=outcome),))
            return
        now, mark = self._ports.clock(), outcome.fingerprint
        self._carry_out(self._session.consider_plan(outcome.plan, now, mark, settled=True))

    def _turn_film(self, on: bool) -> None:
        """Have the address word asked for from now on, or no longer, with a tone for the start of a film."""
        self._film = on
        if self._ports.film is not None:
            self._ports.film(on)
        if on and self._speaker is not None and self._settings.sounds:
            self._speaker.sound(Tone.FILM)

    def _line_of(self, effect: Effect) -> str:
        """Return an effect in words, with what depends on the ears and on her settings."""
        deaf = None if self._ports.listens() else tell_without_ears(effect)
        line = deaf or tell_effect(effect, self._session.plan)
        if isinstance(effect, TellHelp):
            if self._film and effect.about is HelpWith.NOW:
                line = f"{list_surest_words(self._settings.address_word)} {line}"
            if effect.about is HelpWith.LISTENING and self._ports.listens():
                line = f"{line} {tell_how_to_answer(self._settings.address_word)}"
            if self._settings.own_wordings:
                line = f"{line} {list_own_words(self._settings.own_wordings)}"
        return line

    def _lines_of(self, considered: Considered) -> Iterator[SpokenLine]:
        """Yield what would be said about a considered cue, in order."""
        for effect in considered.effects:
            line = tell_effect(effect, self._session.plan)
            if line:
                yield self._said(line, effect)

    def _said(self, line: str, effect: Effect) -> SpokenLine:
        """Return a screen line as it is spoken."""
        return self._spoken(line, slower=isinstance(effect, TellStep) and effect.slower)

    def _spoken(self, line: str, *, slower: bool) -> SpokenLine:
        """Put figures into words, and full stops where it would go on too long at her rate."""
        rate = self._settings.speech.words_per_minute(slower=slower)
        return SpokenLine(text=part_long_sentences(spell_out(line), rate), slower=slower)
