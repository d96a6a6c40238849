"""The Python sample of the README runs and prints what the case files know of the same line."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_the_sample_runs(capsys):
    blocks = re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    assert len(blocks) == 1
    exec(compile(blocks[0], "README.md", "exec"), {})
    said = capsys.readouterr().out
    # By hand: 55 + 711.2 + 76 - gains (0.176 + 1.537) + 2 x (2 + 3); first mark 55 - 14.3 tan 15 deg.
    assert said.startswith("cut 850.5 mm, marks [51.2, 757.8] from flare A")
    assert "LINE T2" in said
