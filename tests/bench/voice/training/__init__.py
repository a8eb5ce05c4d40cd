"""How `stepper/voice/sounds.onnx` was made: synthetic speech, mixed with rooms and films, and a small model.

    apt-get install espeak-ng festival festvox-kdlpc16k fortunes
    pip install torch onnx pyworld scipy                # and the packages of ../voices.py
    python -m tests.bench.voice.training.texts               # what is said: look at some of it
    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER --each 1500
    python -m tests.bench.voice.training.mixing CLIPS MIXED.npz --versions 4
    python -m tests.bench.voice.training.train MIXED.npz sounds.onnx --minutes 90

No voice that `tests/bench/voice` measures with is used, neither for development nor held out, and no recording
of a person. The packaged weights come of 6,000 clips of eSpeak NG, 1,600 of Kokoro, 220 diphone ones and 3,200 by
analysis and synthesis, 29,400 mixed utterances in all (17 h), and of a hundred minutes on one core in three
sittings, the first on 9,800 of them. Wrong in the end of what was kept apart: 2.0 % of the sounds at 30 dB and more
above the film, 6.0 % above 15 dB, 8.4 % above 8 dB, 25 % below.
"""
