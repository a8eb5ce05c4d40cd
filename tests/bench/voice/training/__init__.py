"""How `stepper/voice/sounds.onnx` was made: synthetic speech, mixed with rooms and films, and a small model.

    apt-get install espeak-ng festival festvox-kdlpc16k fortunes
    pip install torch onnx pyworld scipy                # and the packages of ../voices.py
    python -m tests.bench.voice.training.texts               # what is said: look at some of it
    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER --each 1500
    python -m tests.bench.voice.training.mixing CLIPS MIXED.npz --versions 4
    python -m tests.bench.voice.training.train MIXED.npz sounds.onnx --minutes 90

No voice that `tests/bench/voice` measures with is used, neither for development nor held out, and no recording
of a person. The packaged weights come of about 7,500 clips of the first two kinds, 1,600 of Kokoro, 220 diphone
ones and 1,350 by analysis and synthesis, mixed anew several times, and of a hundred minutes on one core.
"""
