"""The closed classes of words by which a clause is told: little words, verbs of the craft, things of the work. No I/O.

Source: English grammar; the words of knitting patterns in print, common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import word_set


def _forms(bases: str) -> frozenset[str]:
    """Return verbs with their endings: base, -s, -ed, -ing, with a letter doubled or an `e` dropped."""
    forms: set[str] = set()
    for base in bases.split():
        stem = base[:-1] if base.endswith("e") else base
        twice = base + base[-1]
        forms |= {base, f"{base}s", f"{base}es", f"{stem}ed", f"{stem}ing", f"{twice}ed", f"{twice}ing"}
        if base.endswith("y"):
            forms |= {f"{base[:-1]}ies", f"{base[:-1]}ied"}
    return frozenset(forms)


SELF: Final = word_set("i i'm i've i'd i'll we we're we've we'd we'll")
YOU: Final = word_set("you you're you've you'd you'll")
IT: Final = word_set(
    """
    it it's it'll it'd this that that's that'll these those they they're they've they'll they'd he she
    he's she's mine yours
"""
)
PEOPLE: Final = word_set(
    "nobody somebody everybody anybody everyone someone anyone people knitters beginners folks friends others'"
)
THERE: Final = word_set("there there's there'll")
DETERMINERS: Final = word_set(
    """
    the a an my your our his her their its this that these those some any no most many much few several
    such what which either neither enough
"""
)
AUXILIARIES: Final = word_set(
    """
    is are was were be been am isn't aren't wasn't weren't has have had hasn't haven't hadn't do does
    did don't doesn't didn't
"""
)
COPULAS: Final = word_set("is are was were be been am isn't aren't wasn't weren't 's 're 'm")
MODALS: Final = word_set(
    """
    will would can could may might shall should must won't wouldn't can't cannot couldn't shouldn't
    mustn't needn't 'll 'd
"""
)
NEGATIONS: Final = word_set("not never no n't")
PREPOSITIONS: Final = word_set(
    """
    of in on at to from for with without by about as into onto over under between behind above below
    beside besides through across along around during before after like unlike near inside outside
    towards toward against among despite per via off up down thanks because
"""
)
JOINING: Final = word_set("and but or so yet nor")
SUBORDINATING: Final = word_set(
    """
    if when whenever while because since although though as unless until till once whether where
    wherever whereas that which who whose how why lest
"""
)
ASKING: Final = word_set("what what's why who who's how how's where where's when which whose")
ADVERBS: Final = word_set(
    """
    now then here there just also too very quite so-far odd-looking rather really actually simply soon
    already still yet often usually sometimes normally mostly generally probably maybe perhaps surely
    certainly definitely always never ever well again please even so far almost nearly only much finally
    first later meanwhile however otherwise instead therefore thus hence moreover besides likewise
    together apart away back ahead at-least of-course as-well a-little no-longer at-first so-far in-fact
    by-the-way at-hand as-usual somewhat slightly naturally obviously luckily happily sadly hopefully
    fortunately unfortunately ultimately eventually initially traditionally personally basically
    honestly frankly technically truly fairly pretty
"""
)
CRIES: Final = word_set(
    "ok okay good great yes no oh ah aha wow phew whew hurray hooray yay hey hi hello voila voilà tada ta-da thanks sorry congratulations congrats cheers easy nice lovely beautiful perfect done ready finished phooey alas bravo right sure well careful excellent wonderful brilliant fantastic super welcome alright fine hm hmm wait psst ta warning heads-up"
)
NUMBERS: Final = word_set(
    """
    one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
    eighteen twenty thirty forty fifty sixty seventy eighty ninety hundred dozen dozens couple pair
    pairs half halves double triple quarter third thirds
"""
)

CRAFT: Final = _forms(
    """
    knit purl slip increase decrease inc dec repeat rep cross join rejoin wrap skip omit ravel
    unravel frog rip graft kitchener transfer steek cable rib reverse mirror alternate distribute
    rearrange bobble tink seam crochet hem pleat pick cast bind divide split separate twist turn cont
    work redistribute reposition swap switch exchange undo replace remove continue rotate bead duplicate
    embroider cable cord whip overcast gather fasten anchor reattach attach tuck stripe strand intarsia
    swiss darn decreas increas chain hook unpick recast yo yarnover ladder rearrange slide shift insert
    resume proceed cease ignore disregard complete recommence revert displace offset
"""
) | word_set(
    """
    bound slid k p k2tog p2tog ssk skp sk2p psso yo m1 m1l m1r m1p kfb pfb sl co bo pm sm slm rm wyif wyib
    cdd s2kp sssk k3tog p3tog w&t ds mds tbl rev undone frogged undid patt tog rem foll alt beg tinking
"""
)
"""Verbs with which a needle, or the knitter's hand at one, does something; and signs for them."""
GENERAL: Final = word_set(
    """
    put puts putting drop drops dropped dropping take takes taking took taken leave leaves leaving left keep keeps keeping kept go
    goes going gone went come comes coming came do does doing did done make makes making made let lets
    letting get gets getting got give gives giving gave given bring brings bringing brought hold holds
    holding held add adds adding added lose loses losing lost begin begins beginning began begun start
    starts starting started end ends ending ended finish finishes finishing finished stop stops stopping
    stopped use uses using used change changes changing changed move moves moving moved place places
    placing placed break breaks breaking broke broken cut cuts cutting fold folds folding folded lift
    lifts lifting lifted pass passes passing passed draw draws drawing drew drawn pull pulls pulling
    pulled carry carries carrying carried set sets setting mark marks marking marked open opens opening
    opened close closes closing closed shape shapes shaping shaped return returns returning returned try
    tries trying tried follow follows following followed weave weaves woven weaving sew sews sewn sewed
    sewing tie ties tied tying thread threads threading threaded run runs running ran double doubles
    doubled doubling measure measures measuring measured count counts counting counted wind winds
    winding wound rest rests resting rested wait waits waiting waited serve serves serving served become
    becomes becoming became lengthen lengthens lengthened shorten shortens shortened grow grows growing
    grew grown match matches matching matched meet meets meeting met call calls calling called begin
    share swing trim trims trimmed hang hangs hanging hung lay lays laying laid pop pops popped flip
    flips flipped tighten tightens loosen loosens arrange arranged arranging work
"""
)
"""Everyday verbs that an order may use too."""

FABRIC: Final = word_set(
    """
    plain garter stockinette stocking moss seed lace brioche ribbed straight even odd flat striped solid
    stranded colorwork colourwork textured reversed unshaped live held open identical same alike
    different opposite mirror-image reversible vertical horizontal double-knit st-st rib ribbing
"""
)
"""Words that say in what something is worked, or as what else."""
COLOURS: Final = word_set(
    """
    mc cc cc1 cc2 white black grey gray red blue green yellow orange purple pink brown cream navy darker
    lighter brighter paler main contrast contrasting background
"""
)
LIMITS: Final = word_set(
    """
    every each both only until till unless except instead again same alike other others another
    otherwise else alternate alternately alternating times time's twice thrice once next following
    previous throughout without extra additional further half double rest remaining remainder second
    third fourth last final opposite reverse everything rs ws whole vice versa optional optionally fewer
    less more longer shorter wider narrower larger smaller sooner earlier respectively
"""
)
"""Words that say how often, in which rows, for which half or with what difference."""
STITCH_THINGS: Final = word_set(
    """
    st sts stitch stitches row rows round rounds rnd rnds needle needles dpn dpns marker markers loop
    loops ridge ridges bor repeats reps yarn yarns wool color colors colour colours strand strands shade
    shades chart charts holder holders wraps yarnover yarnovers eyelet eyelets buttonhole buttonholes
    bobbles cables chain chains motif motifs panel panels pattern patterns size sizes version versions
    stripes stripe section sections shaping
"""
)
"""What is on the needles, or says what is worked there."""
PARTS: Final = word_set(
    """
    body sleeve sleeves back front fronts neck neckline neckband collar yoke shoulder shoulders armhole
    armholes underarm underarms cuff cuffs brim crown heel heels toe toes foot feet leg legs sole instep
    gusset gussets flap thumb thumbs finger fingers hand palm mitten mitt glove sock socks hat cowl
    scarf shawl blanket sweater cardigan jumper pullover vest edge edges edging border borders band
    bands hem hems pocket pockets placket button hood strap straps brace side sides left right middle
    center centre top bottom piece pieces half halves work end ends beginning start tail tails seam
    seams corner corners tip point points wedge wedges strip square squares triangle tie ties cord
    fringe steek waist hip hips bust spine wing wings flaps ear ears join lining fabric facing fold
    thumbhole selvedge selvage bib
"""
)
"""Parts of the piece and places on it."""
MINDING: Final = word_set(
    """
    see sees saw seen notice notices noticed find finds found feel feels felt like likes liked love
    loves loved want wants wanted wonder wonders think thinks thought remember remembers know knows knew
    known need needs needed enjoy enjoys enjoyed regret recognise recognize recognized recognised prefer
    prefers preferred hope hopes hoped believe guess wish wishes understand appreciate thank forget
    forgot learn learned learnt learns hate hates hated dislike hear heard discover discovered expect
    expects expected mind realise realize suspect doubt recall worry agree dread imagine
"""
)
"""Verbs of a mind, which move no stitch."""
SHOWING: Final = word_set(
    """
    look looks looked feel feels seem seems seemed appear appears sound sounds smell smells curl curls
    roll rolls stretch stretches stretched relax relaxes shrink shrinks drape drapes drop drops hang
    hangs vary varies varied differ differs depend depends matter matters help helps helped happen
    happens happened show shows showed fit fits pay pays settle settles flare flares ripple ripples
    pucker puckers bleed bleeds shed sheds bloom blooms soften softens tend tends suit suits disappear
    disappears vanish vanishes hide hides blend blends prevent prevents avoid avoids ensure ensures
    protect protects remind reminds prove proves tell tells last lasts wear wears benefit benefits bias
    biases slant slants lean leans loosen loosens tighten tightens hug hugs sag sags droop droops bulge
    bulges pop pops scallop scallops wobble slope slopes dry dries felt felts pill pills wash washes
    deserve deserves require requires allow allows cost costs save saves grow grows need needs want
    wants come comes belong belongs make makes made give gives gave create creates form forms produce
    produces keep keeps let lets lead leads forgive forgives line lines block blocks bother bothers reach reaches touch touches cover covers surprise surprises
    lie lies sit sits stay stays remain remains mean means
"""
)
"""Verbs that say how something turns out."""
GIVING: Final = word_set(
    """
    make makes made give gives gave create creates form forms produce produces keep keeps let lets need
    needs want wants require requires allow allows take takes took have has had get gets got become
    becomes remain remains stay stays mean means come comes lead leads leave leaves cost costs save
    saves add adds serve serves grow grows lie lies sit sits hold holds
"""
)
"""Of these, such as may also say what there is to be."""
HARMLESS_PARTICIPLES: Final = word_set(
    """
    called meant designed intended written shown pictured given based named inspired supposed known
    loved hidden finished done completed complete interested tired worried surprised reserved allowed
    included sold worn copyrighted protected permitted tested calculated estimated listed explained
    described found noticed seen felt expected rewarded crowded pleased delighted experienced advanced
    relaxed confused needed required recommended suggested advised forgiven forgiving tempted bored
    scared excited forewarned warned translated published updated corrected fixed rounded photographed
    modelled modeled printed wasted stretched spaced-out blocked washed old-fashioned fitted tailored
    curved rounded detailed limited unfinished unwanted unnoticed prized
"""
)
"""Participles behind "is", by which nothing is worked."""
TROUBLES: Final = word_set(
    """
    hole holes gap gaps ladder ladders bump bumps lump loop wobble mistake mistakes jog pucker
    difference need hurry point way reason doubt right wrong trick room
"""
)

ALL: Final = (
    SELF | YOU | IT | PEOPLE | THERE | DETERMINERS | AUXILIARIES | MODALS | NEGATIONS | PREPOSITIONS | JOINING | SUBORDINATING
    | ASKING | ADVERBS | CRIES | NUMBERS | CRAFT | GENERAL | FABRIC | COLOURS | LIMITS | STITCH_THINGS | PARTS | MINDING | SHOWING
    | GIVING | HARMLESS_PARTICIPLES | TROUBLES
)  # fmt: skip
"""Every word of a class: it means itself, and is no slip for another."""
