"""How `stepper/ears/sounds.onnx` was made: speech, nearly all synthetic, mixed with rooms and films; a small model.

    apt-get install espeak-ng festival festvox-kdlpc16k fortunes
    pip install torch onnx pyworld scipy                # and the packages of ../voices.py
    python -m tests.bench.voice.training.texts               # what is said: look at some of it
    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER --each 1500 --people FOLDER
    python -m tests.bench.voice.training.mixing CLIPS MIXED.npz --versions 4
    python -m tests.bench.voice.training.train MIXED.npz sounds.onnx --minutes 90

No voice that `tests/bench/voice` measures with is used, neither for development nor held out. The packaged weights
come of 7,000 clips of eSpeak NG, 2,000 of Kokoro, 220 diphone ones, 207 of people (with --people: half of the orders of
the speech-to-intent benchmark of Picovoice, Apache 2.0; the other half measures false cues, some of the same people
are in both) and 5,100 by analysis and synthesis; 54,300 mixed utterances in all (33 h), and three hours on one core in
five sittings, each with more of them. Wrong in the end of what was kept apart: 2.5 % of the sounds at 30 dB and more
above the film, 5.0 % above 15 dB, 7.2 % above 8 dB, 24 % below.
"""
