"""Take talk out of a line: sentences, reasons and brackets that hold no word of the work. No I/O.

Theory of operation. Knitters who write for each other chat between the orders: "OK, are you there? This
is the boring bit." Of such a sentence any word may be anything, so it is told by what it lacks and how
it begins. It holds no number, no stitch, nothing that is worked, counted or measured, no place or part
of the piece, and no word that repeats, leaves out, exchanges or limits (`_WORK`). And it begins as an
order never does (`_BEGINS`): with who or what it is about, as a question, with a cry, or with what she
is to do besides knitting ("have a cup of tea"). A sentence that begins with any other verb is no talk,
whatever else it says. A reason ("so you know where your round begins") stands behind the order it
explains; it may name the stitches, but nothing that is done to them. What is talk is said at its place.
Sentences of other pages that work no stitch (`remarks.idle`) are taken out with it.
Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.asides import instructs
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_LONGEST: Final = 300
"""Most letters of a sentence that may be talk."""
_WORK: Final = regex(
    r"\d|[*\[\]:=]|(?<![\w'-])(?:"
    r"st(?:itch(?:es)?|s)?|rows?|rounds?|rnds?|needles?|dpns?|markers?|holders?|loops?|ridges?|purls?|knits?|wraps?|"
    r"cms?|mm|inch(?:es)?|ribs?|ribbing|garter|stock(?:inette|ing)|moss|seed|cables?|charts?|pattern|patt|sizes?|"
    r"two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|half|double|pairs?|once|"
    r"works?|worked|working|knitted|purled|slipped|turned|cast(?:ing)?|bind(?:ing)?|bound|join\w*|pick\w*|"
    r"increas\w*|decreas\w*|shap\w*|rip\w*|undo\w*|unravel\w*|frog\w*|swap\w*|mirror\w*|revers\w*|"
    r"divid\w*|separat\w*|split\w*|graft\w*|sew\w*|weav\w*|seams?|block\w*|hold\w*|drop\w*|yarn\s+over|yarnovers?|"
    r"again|same|repeat\w*|instead|skip\w*|omit\w*|ignor\w*|except|unless|until|till|otherwise|other|others|another|before|after|"
    r"next|previous|following|opposite|alternat\w*|optional|only|just\s+for|leave|left\s+out|leav\w*|longer|shorter|wider|"
    r"narrower|bigger|smaller|larger|looser|tighter|fewer|less|"
    r"sides?|fronts?|backs?|left|right|middle|cent(?:er|re)|begin\w*|ends?|start\w*|edges?|top|bottom|first|last|final|second|third|"
    r"plain|even|straight|from\s+(?:here|now)|more|goes|here\s+(?:you|we)|time\s+(?:to|for)|yarns?|wool|balls?|skeins?|colou?r\w*|shades?|strip\w*|contrast\w*|main|background|"
    r"white|black|grey|gray|red|blue|green|yellow|orange|purple|pink|brown|cream|navy|"
    r"for\s+(?:the\s+)?(?:wom[ae]n|m[ae]n|lad(?:y|ies)|kids?|child(?:ren)?|adults?|grown-?ups?|bab(?:y|ies)|toddlers?|big|small|tall|short|large|little)\b.*"
    r")(?![\w-])",
    re.IGNORECASE,
)
"""Words of the work: with one of them a sentence may say what is knitted."""
_FREE: Final = regex(
    r"\b(?:(?:that|it|this|they|you|all)(?:'s|'re|\s+is|\s+are)?\s+(?:all\s+)?right|all\s+right|right\s+(?:away|now)|back\s+home|"
    r"in\s+the\s+end|the\s+end|(?:first|second|third|last|next)\s+(?:[a-z]+\s+)?(?:bridge|station|film|episode|chapter|cup|mug|glass|evening|week|weekend)|(?:the\s+)?other\s+day|once\s+in\s+a\s+while|(?:no|any|many|much)\s+(?:longer|more)|more\s+(?:fun|often|or\s+less)|knit(?:s|ting)?\s+(?:along|group|friends?|bags?))\b",
    re.IGNORECASE,
)
"""Everyday phrases with such a word, which say nothing of the work."""
_GO_ON: Final = regex(
    r"(?:[,;-]|\b(?:and|then|so|now|but|or)\b)\s*(?:(?:then|just|now|please|simply)\s+)*"
    r"(?:do|go|keep|carry|continue|stop|finish|put|take|move|make|add|lift|pull|draw|pass|cut|break|change|switch|place|remove|use|close|open|swap|return|fold|count|measure)\b",
    re.IGNORECASE,
)
"""A clause that orders something though its sentence began as talk: "It's pretty, now go on."."""
_LEAD: Final = regex(
    r"^(?:(?:and|now|then|so)\s*,?\s+)+(?=put\s+(?:the\s+kettle|your\s+feet|on\s+(?:a|some)\s)"
    r"|take\s+(?:a\s+(?:break|breath|photo|picture|nap|rest)|your\s+time))",
    re.IGNORECASE,
)
"""What stands before one thing she does besides knitting: "then put the kettle on"."""
_WHO: Final = (
    r"(?:(?:i|it|that|this|they|there|here|he|she|all(?=\s+(?:you|that|i)\b)|who|what|nobody|no\s+one|somebody|someone|everybody|everyone|nothing|something|"
    r"mine|(?:most|some|many)\s+(?:people|knitters|of\s+us)|people|knitters|(?:my|our)\s+[a-z]+)(?:'(?:s|m|ve|d|ll|re))?(?=\s+[a-z])"
    r"|(?:you|we)(?:'re|\s+are|'ve\s+been|\s+(?:can|could|might|may|won't|don't|didn't|know|see|need\s+no|deserve)|'ll\s+(?:be|see|love|like|get\s+there|never|have\s+to\s+trust)|\s+will\s+(?:be|see|love|like|never))\b"
    r"|if\s+(?:i|only\s+i)\b)"
)
_CRY: Final = (
    r"(?:ok(?:ay)?|good|great|yes|no|oh|ah|aha|wow|phew|whew|hurray|hooray|yay|hey|voil[aà]|ta-?da+|well\s+done|well|thanks?|thank\s+you|sorry|"
    r"congratulations|(?:happy|merry)\s+[a-z]+|cheers|see|hello|hi|easy|easy-peasy|nearly\s+there|almost\s+there|good\s+luck|not\s+(?:bad|to\s+worry|hard|so)|nice|lovely|"
    r"beautiful|pretty|perfect|done|ready|finished|never\s+mind|promise|phooey|alas|and\s+(?:that's|there)|there\s+you\s+go|there|so\s+(?:easy|far)|how\s+[a-z]+|what\s+a)"
)
_BESIDES: Final = (
    r"(?:(?:now|then|so|and|please|just|also)\s*,?\s+)*(?:have\s+(?:fun|a\s|another\s+(?:cup|tea)|some\s)|enjoy|trust\s+me|don't\s+(?:worry|panic|be|forget\s+to\s+(?:breathe|smile|eat|sleep)|despair|cry|give\s+up|rush|laugh|ask|tell)"
    r"|do\s+not\s+(?:worry|panic|despair|give\s+up|rush)|relax|breathe|take\s+(?:a\s+(?:break|breath|photo|picture|deep|moment|nap|look|rest)|your\s+time|it\s+easy)"
    r"|put\s+(?:on\s+(?:a|an|some|your|the)\s+(?:\w+\s+)?(?:film|movie|series|music|record|song|podcast|show|audiobook|kettle|coffee|tea|slippers)|the\s+kettle\s+on|your\s+feet\s+up)"
    r"|send\s+(?:me|us)|show\s+(?:me|us|it|them|off)|tell\s+(?:me|us)|ask\s+(?:me|a|your)|share|tag\s+me|let\s+(?:me|us)\s+know|be\s+(?:patient|brave|kind|proud|warned|gentle|happy|nice)"
    r"|imagine|guess|admire|celebrate|pour\s+yourself|make\s+(?:yourself|some\s+(?:tea|coffee)|a\s+(?:cup|pot)\s+of)|grab\s+(?:a|some|yourself)\s+(?:cup|coffee|tea|drink|snack|biscuit|cookie|chair|blanket)"
    r"|get\s+(?:comfortable|cosy|cozy|yourself)|come\s+back|feel\s+free|treat\s+yourself|give\s+yourself|pat\s+yourself|cross\s+your\s+fingers|believe\s+(?:me|it)|bear\s+with\s+me|keep\s+calm|"
    r"wear\s+(?:it|them)|write\s+(?:to\s+)?(?:me|us)|see\s+you)"
)
_BEGINS: Final = regex(
    rf"(?:{_CRY}\b\s*[,!]?\s*)?(?:(?:and|but|so|yes|no|well|now|oh)\s*,?\s+)?(?:{_WHO}|{_BESIDES}\b)|{_CRY}(?:\W*$|\s*[,!-]\s*{_CRY}\W*$)",
    re.IGNORECASE,
)
"""How talk begins."""
_ASKS: Final = regex(
    rf"(?:{_CRY}\b\s*[,!]?\s*)?(?:(?:and|but|so)\s+)?(?:is|are|do|does|did|can|could|have|has|isn't|aren't|don't|doesn't|haven't|will|would|what|why|who|how|see|ready|still|got|scared|confused|tired|done)\b",
    re.IGNORECASE,
)
_ANSWERED: Final = regex(r"\b(?:too|short|long|big|small|tight|loose|wide|narrow|enough)\b", re.IGNORECASE)
"""Words of a question on whose answer it hangs what is done next: "Is it too short? Knit 4 rounds."."""
_HABIT: Final = regex(
    r"i\s+(?:(?:also|really|do|still|personally)\s+)*(?:always|usually|often|normally|sometimes|never|mostly|like|love|prefer|hate|enjoy)\b"
    r"(?![^.!?]*(?:[\d*:=]|\b(?:until|every|each|both|rows?|rounds?|rnds?|here|first|last|next|more|ends?|sides?|edges?|inc\w*|dec\w*|add\w*|slip\w*|purl\w*|knit(?!ting)\w*)\b))[^.!?]*$",
    re.IGNORECASE,
)
"""What the writer does or likes: it may name a way to do it, but no row and nothing that is shaped."""
_REASON: Final = regex(
    r"(?:\s*,\s*|\s+(?:-\s+)?)(?P<said>(?:(?:so(?:\s+that)?|because|since|otherwise|or\s+else)\s+(?:you|it|it's|they|they're|there|there's|your|the|that|that's|this|i|we|everything|nobody|nothing|it'll|you'll|they'll)|or\s+(?:it|you|your|the|they|there)(?:\s+[a-z]+){0,2}(?:'ll|\s+will|\s+won't|\s+might|\s+may|\s+gets?)|as\s+you\s+(?:come|go|get|reach))\b[^.!?:;()*\d]*?)(?=\s*[.!?)]|\s*$)",
    re.IGNORECASE,
)
_NO_REASON: Final = regex(
    r"(?<![\w'-])(?:until|till|times?|twice|thrice|again|every|each|both|only|more|less|fewer|instead|ends?|ending|remain\w*|left|over|"
    r"between|from|before|after|turn\w*|number|even|odd|multiple|divisible|count\w*|have|has|same|match\w*|meet\w*|line\s+up|cent(?:er|re)\w*|middle|"
    r"continu\w*|repeat\w*|increas\w*|decreas\w*|knit\w*|purl\w*|work\w*|slip\w*|pick\w*|cast\w*|bind\w*|place\w*|hold\w*|join\w*|move\w*|"
    r"first|last|next|other|another|one|long(?:er)?|short(?:er)?|measures?|reach\w*|as\s+wide|front|back|rs|ws|(?<!know\swhere\s)(?<!see\swhere\s)(?<!where\syour\s)round\s+(?:now\s+)?(?:begins|starts))(?![\w-])",
    re.IGNORECASE,
)
"""Words with which a reason says how many stitches there are to be, or what else is done."""
_BRACKET: Final = regex(r"\s*\((?P<said>[^()\d*]{2,160}?)\)")
_ASKED: Final = regex(
    r"(?:(?<=^)|(?<=[.!?]\s))\s*(?P<said>(?:(?:(?:do|would)\s+you\s+)?(?:want|like|prefer|fancy|need)"
    r"\s+[a-z' -]{3,50}|(?:yarn|wool)\s+running\s+(?:out|short|low))\?\s+[^.!?*]{3,120}[.!]?)(?=\s|$)",
    re.IGNORECASE,
)
"""A question of what she would like, with what she may then do."""
_WHOLE_BRACKET: Final = regex(r"(?:(?<=^)|(?<=[.!?]\s))\s*\((?P<said>[^()*]{2,300})\)[.!]?\s*")
"""A bracket that is a sentence of its own, or several."""
_CRIES: Final = regex(
    r"(?:,\s*|\s+-\s+)(?P<said>sorry|hurray|hooray|yay|phew|promise|honest(?:ly)?|alas|sadly|i\s+promise|trust\s+me|believe\s+me|really|ta-?da|easy|please|poor\s+you|lucky\s+you)(?=\s*[.,!?)]|\s*$)",
    re.IGNORECASE,
)
SENTENCE: Final = regex(
    r"(?:[^.!?]|(?<=\d)\.(?=\d)|(?<=\bapprox)\.|(?<=[\s\d\u00bd\u00bc\u00be]ins)\.(?=\s[a-z(])"
    r"|(?<=[\s\d\u00bd\u00bc\u00be]in)\.(?=\s[a-z(]))*(?:[.!?]+(?=\s|$|[)])\s*|$|[.!?])"
)
"""A sentence: the full stop of a number, of "approx." and of inches within it is none of its end."""
_MAYBE: Final = regex(
    r"\b(?:i|i'm|you|you're|we|it|it's|its|they|there|here|that|that's|this|my|so|because|since|ok|okay|good|great|enjoy|"
    r"have\s+(?:fun|a)|trust|put\s+on|send|tell|show|sorry|hurray|hooray|yay|phew|well|happy|voila|nobody|everybody|people|oh|yes|otherwise|or)\b|[?!]",
    re.IGNORECASE,
)
"""A word of which one is in all talk; most lines have none."""


def is_talk(sentence: str) -> bool:
    """Return whether a sentence, or what stands in brackets, is only talk.

    Args:
        sentence: The sentence, made plain.
    """
    words = sentence.strip(" .!-,\"'")
    if not words or len(words) > _LONGEST:
        return False
    if _HABIT.match(words) and not _GO_ON.search(words):
        return True
    bare = _FREE.sub(" ", words)
    if _WORK.search(bare) or _GO_ON.search(_LEAD.sub("", words)) or _stitches_in(bare):
        return False
    if words.endswith("?") and _ANSWERED.search(words):
        return False
    return bool(_BEGINS.match(words)) or (words.endswith("?") and bool(_ASKS.match(words)))


def _stitches_in(words: str) -> bool:
    """Return whether words hold a stitch, a verb of the craft or a yarn by its letter."""
    return instructs(_OFTEN_SAID.sub(" ", words)) is not None


_OFTEN_SAID: Final = regex(
    r"(?<![\w-])(?:not|\w+n't|n't|more|then|without|times?|change|every|one|each|both|while|cut|break|place|again)(?![\w-])",
    re.IGNORECASE,
)
"""Words that say how often or which only beside a word of the work, which a sentence of talk has not."""


def take_talk_out(line: Reworded) -> Reworded:
    """Take the talk out of a line, to be said with it.

    Returns:
        The line without sentences, brackets and reasons that are talk; the same if it has none.
    """
    cuts: list[tuple[int, int, str]] = []
    brackets = [match.span() for match in _WHOLE_BRACKET.finditer(line.text) if _is_all_talk(match["said"])]
    brackets += [match.span("said") for match in _ASKED.finditer(line.text) if is_idle(match["said"])]
    cuts += [(start, end, line.text[start:end].strip(" ()")) for start, end in brackets]
    for match in SENTENCE.finditer(line.text):
        inside = any(start < match.end() and match.start() < end for start, end in brackets)
        if match.end() > match.start() and not inside:
            cuts += _cuts_in(line.text, match.start(), match.end())
    cuts.sort()
    if not cuts:
        return line
    text: list[str] = []
    places: list[int] = []
    done = 0
    for start, end, _ in cuts:
        text.append(line.text[done:start])
        places += line.places[done:start]
        done = end
    text.append(line.text[done:])
    places += line.places[done:]
    kept = tuple(said.strip(" .,;-") for _, _, said in cuts)
    return replace(line, text="".join(text), places=tuple(places), kept=(*line.kept, *kept))


def _is_all_talk(words: str) -> bool:
    """Return whether each sentence of a bracket is talk or works no stitch."""
    said = [match.group().strip() for match in SENTENCE.finditer(words) if match.group().strip(" .!?")]
    return bool(said) and all(is_idle(one) or is_talk(one) for one in said)


def _cuts_in(text: str, start: int, end: int) -> list[tuple[int, int, str]]:
    """Return what is talk, or works no stitch, between two places of a line: where it stands, its words."""
    sentence = text[start:end]
    if is_idle(sentence) or (_MAYBE.search(sentence) and is_talk(sentence)):
        return [(start, end, sentence)]
    if not _MAYBE.search(sentence):
        return []
    found = [
        (start + match.start(), start + match.end(), match.group("said"))
        for match in _BRACKET.finditer(sentence)
        if is_talk(match.group("said")) or _CRIES.fullmatch(f", {match.group('said').strip(' !.')}")
    ]
    found += [
        (start + match.start(), start + match.end(), match.group("said"))
        for match in _CRIES.finditer(sentence)
    ]
    reason = _REASON.search(sentence)
    if reason is not None and reason.start() and not _NO_REASON.search(reason.group("said")):
        found.append((start + reason.start(), start + reason.end(), reason.group("said")))
    found.sort()
    return [cut for at, cut in enumerate(found) if at == 0 or cut[0] >= found[at - 1][1]]
