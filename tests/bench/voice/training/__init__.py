"""How the networks in `models/ears` were made: an encoder taught to hear through films, and a head that tells sounds.

    apt-get install espeak-ng festival festvox-kdlpc16k fortunes ffmpeg
    pip install torch onnx soundfile pyworld scipy           # and the packages of ../voices.py
    python -m tests.bench.voice.training.texts               # what is said: look at some of it
    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER --each 1500
    python -m tests.bench.voice.training.encoder DATA/enc.npz
    python -m tests.bench.voice.training.collect people RECORDINGS DATA
    python -m tests.bench.voice.training.collect clips CLIPS DATA
    python -m tests.bench.voice.training.collect tokens STYLES TOKENS.json --count 16000
    python -m tests.bench.voice.training.kokoro MODEL.onnx TOKENS.json DATA --minutes 20     # beside the next
    python -m tests.bench.voice.training.teach DATA TAUGHT --minutes 16
    python -m tests.bench.voice.training.export TAUGHT models/ears

And for wordings that came later, one a line in NEW, on from there:

    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER --each 1500 --anew NEW --seed 2
    python -m tests.bench.voice.training.collect tokens STYLES TOKENS.json --count 9000 --anew NEW
    python -m tests.bench.voice.training.kokoro MODEL.onnx TOKENS.json DATA --minutes 9
    python -m tests.bench.voice.training.teach DATA A --minutes 11.5 --begin models/ears --pace 0.6 --deep     # both at once
    python -m tests.bench.voice.training.teach DATA B --minutes 11.5 --begin models/ears --pace 0.6
    python -m tests.bench.voice.training.export A B models/ears

And for people's words behind an address word that nobody says on record, on from there (`joins`), with eSpeak NG on all
cores where the training is (`many`):

    python -m tests.bench.voice.training.joins RECORDINGS DATA
    python -m tests.bench.voice.training.collect lines LINES.json --count 18000 --short 0.45
    python -m tests.bench.voice.training.collect tokens STYLES TOKENS.json --count 14000 --short 0.4
    python -m tests.bench.voice.training.many LINES.json DATA
    python -m tests.bench.voice.training.kokoro MODEL.onnx TOKENS.json DATA --minutes 7                    # beside the next
    python -m tests.bench.voice.training.teach DATA A --minutes 13 --begin models/ears --pace 0.6 --joined 14000
    python -m tests.bench.voice.training.teach DATA B --minutes 13 --begin models/ears --pace 0.6 --joined 14000 --seed 2 --deep
    python -m tests.bench.voice.training.export A B SHIPPED models/ears --shares .175 .175 .65     # SHIPPED: `export --back models/ears SHIPPED`

And for people's digits, of which few are on record, on from there, with other throats of each (`throats`):

    python -m tests.bench.voice.training.collect people RECORDINGS DATA
    python -m tests.bench.voice.training.joins RECORDINGS DATA
    python -m tests.bench.voice.training.collect lines LINES.json --count 26000 --short 0.5
    python -m tests.bench.voice.training.many LINES.json DATA
    python -m tests.bench.voice.training.throats DATA                                                      # beside the next
    python -m tests.bench.voice.training.teach DATA A --minutes 12 --begin models/ears --pace 0.6 --joined 20000 --loudest 20
    python -m tests.bench.voice.training.export A SHIPPED models/ears --shares .5 .5

The shares of families and of what is joined are in `teach` and `joins`, those of the last training.

No voice that `tests/bench/voice` measures with is used, neither for development nor held out, and nobody whom
`../people.tsv` has under measuring. Sources and figures: `models/ears/README.md`.
"""
