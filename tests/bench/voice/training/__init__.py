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

No voice that `tests/bench/voice` measures with is used, neither for development nor held out, and nobody whom
`../people.tsv` has under measuring. Sources and figures: `models/ears/README.md`.
"""
