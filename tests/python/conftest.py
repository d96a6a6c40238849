"""The invented line T2 and its bench, on which most tests stand."""

import linewright as lw
import pytest

T2 = {
    "name": "T2",
    "od": "3/16 in",
    "wall": "0.028 in",
    "material": "low-carbon steel",
    "legs": "55 mm; 28 in; 9 1/4 in; 76 mm",
    "bends": "30 deg; 60 deg; 90 deg",
    "rotations": "180 deg; 90 deg",
    "radius": "14.3 mm",
} | {
    f"{side}_{field}": text
    for side in "ab"
    for field, text in {
        "thread": "M10x1",
        "nut_length": "17 mm",
        "nut_bore": "5.0 mm",
        "nose": "coned",
        "flare": "double-45",
        "port": "tee",
        "port_thread": "M10x1",
        "seat": "inverted-45",
    }.items()
}


@pytest.fixture
def fields() -> dict[str, str]:
    return dict(T2)


@pytest.fixture
def bench() -> lw.Bench:
    return lw.Bench(
        former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
        flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm", net_shortening="2 mm", cut_spare="3 mm"),
        springback=lw.Springback.from_trials([("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]),
        revision="shop 1",
    )


@pytest.fixture
def line() -> lw.Line:
    nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned")
    end = lw.End(nut, "double-45", port=lw.Port("M10x1", "inverted-45", name="tee"))
    path = lw.Path.from_legs(
        ["55 mm", "28 in", "9 1/4 in", "76 mm"],
        bends=["30 deg", "60 deg", "90 deg"],
        rotations=["180 deg", "90 deg"],
        radius="14.3 mm",
    )
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    return lw.Line("T2", tube=tube, path=path, a=end, b=end)


@pytest.fixture
def plan(line: lw.Line, bench: lw.Bench) -> lw.Plan:
    return line.plan(bench)
