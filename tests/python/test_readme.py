"""The Python samples of the README run and print what is known otherwise."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_the_samples_run(capsys):
    blocks = re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    assert len(blocks) == 3
    exec(compile(blocks[0], "README.md", "exec"), {})
    said = capsys.readouterr().out
    # By hand: 55 + 711.2 + 76 - gains (0.176 + 1.537) + 2 x (2 + 3); first mark 55 - 14.3 tan 15 deg.
    assert said.startswith("cut 850.5 mm, marks [51.2, 757.8] from flare A")
    assert "LINE T2" in said
    exec(compile(blocks[1], "README.md", "exec"), {})
    advice, verdict, most = capsys.readouterr().out.splitlines()
    # Ten pitches of 25.4 / 24 mm; M10x1-6H, pitch diameter of ISO 965-2.
    assert "10.58 mm for 3/8-24" in advice and verdict.startswith("3/8-24 UNF in M10x1: different") and most == "9.5"
    exec(compile(blocks[2], "README.md", "exec"), {})
    said = capsys.readouterr().out
    # By hand: 2844.8 less 7 x 4.7625 / 2 x pi / 2, with 10 for two flares and 1.645 x sqrt(8.53 ^ 2 + 7 x 4 + 9).
    assert "cut 2846 mm: long enough with a chance of 0.95" in said and "assumed angle of each bend" in said
