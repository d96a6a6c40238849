"""The Python sample of the README runs and prints what the case files know of the same line."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_the_sample_runs(capsys):
    blocks = re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    assert len(blocks) == 2
    exec(compile(blocks[0], "README.md", "exec"), {})
    said = capsys.readouterr().out
    # By hand: 55 + 711.2 + 76 - gains (0.176 + 1.537) + 2 x (2 + 3); first mark 55 - 14.3 tan 15 deg.
    assert said.startswith("cut 850.5 mm, marks [51.2, 757.8] from flare A")
    assert "LINE T2" in said
    exec(compile(blocks[1], "README.md", "exec"), {})
    said = capsys.readouterr().out
    # By hand: 2844.8 less 7 x 4.7625 / 2 x pi / 2, with 10 for two flares and 1.645 x sqrt(8.53 ^ 2 + 7 x 4 + 9).
    assert "cut 2846 mm: long enough with a chance of 0.95" in said and "assumed angle of each bend" in said
