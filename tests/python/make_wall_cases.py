"""Makes tests/cases/bend_wall.toml: the wall and the section of bends, by formulas apart from the library.

Sections of kept perimeter by the complete elliptic integral of SciPy and a bracketing root finder; walls by volume and by
the uniaxial ratio; the critical strain by trying waves. `python make_wall_cases.py > ../cases/bend_wall.toml`.
"""

import numpy as np
from scipy.optimize import brentq, minimize_scalar
from scipy.special import ellipe

INCH = {"3/16 in": 4.7625, "0.028 in": 0.7112, "1/4 in": 6.35, "0.035 in": 0.889}
HEAD = """# The wall of a bend, its flattened section and the wrinkling of its inside.
# Written by tests/python/make_wall_cases.py, which computes every figure apart from the library.
"""


def mm(text: str) -> float:
    return INCH[text] if text in INCH else float(text.removesuffix(" mm"))


def walls(wall: float, neutral: float, fiber: float) -> tuple[float, float]:
    """Plane strain: the length times the wall is kept. Uniaxial: wall and hoop each take half of the logarithmic stretch."""
    stretch = np.log(fiber / neutral)
    return wall * np.exp(-stretch), wall * np.exp(-stretch / 2)


def perimeter(a: float, b: float) -> float:
    long, short = max(a, b), min(a, b)
    return 4 * long * ellipe(1 - (short / long) ** 2)


def section(od: float, wall: float, measure: str, share: float, kinematics: str) -> tuple[float, float]:
    middle = (od - wall) / 2
    if kinematics == "sides held":
        return od, share * od if measure == "flattening" else od * (1 - share)
    if measure == "flattening":
        short = (share * od - wall) / 2
        long = brentq(lambda a: perimeter(a, short) - 2 * np.pi * middle, middle, 2 * middle, xtol=1e-15, rtol=1e-15)
    else:
        apart = share * od / 2
        gap = lambda b: perimeter(b + apart, b) - 2 * np.pi * middle  # noqa: E731
        short = brentq(gap, 1e-9, middle, xtol=1e-15, rtol=1e-15)
        long = short + apart
    return 2 * long + wall, 2 * short + wall


def critical(share: float, exponent: float) -> float:
    """The strain at which the cheapest ring wave costs nothing: deformation theory, incompressible, r = K = 1."""

    def energy(strain: float) -> float:
        secant, tangent = strain ** (exponent - 1), exponent * strain ** (exponent - 1)
        compliance = np.array([[1 / tangent, -0.5 / tangent], [-0.5 / tangent, 0.75 / secant + 0.25 / tangent]])
        strip, hoop = np.linalg.inv(compliance)[0, 0], 1 / compliance[1, 1]
        cost = lambda k: strip * share**3 / 12 * np.exp(2 * k) + share * hoop * np.exp(-2 * k)  # noqa: E731
        return float(minimize_scalar(cost, bounds=(-8, 12), method="bounded", options={"xatol": 1e-10}).fun) - (
            strain**exponent * share
        )

    return float(np.exp(brentq(lambda e: energy(np.exp(e)), -16, 1, xtol=1e-13)))


def case(operation: str, accept: dict[str, object], expect: dict[str, object], tolerance: str, origin: str) -> str:
    def value(item: object) -> str:
        if isinstance(item, (list, tuple)):
            return f"[{', '.join(value(part) for part in item)}]"
        if isinstance(item, bool):
            return str(item).lower()
        return f'"{item}"' if isinstance(item, str) else repr(float(f"{item:.12g}"))

    def table(items: dict[str, object]) -> str:
        return ", ".join(f"{key} = {value(item)}" for key, item in items.items())

    lines = ["", "[[case]]", f'operation = "{operation}"', f"accept = {{ {table(accept)} }}"]
    lines.append(f"expect = {{ {table(expect)} }}")
    if tolerance:
        lines.append(f"tolerance = {tolerance}")
    return "\n".join([*lines, f'origin = "{origin}"', ""])


def bent(od: str, wall: str, radius: str, shift: str | None = None, plastic: bool = False) -> str:
    half, t, r = mm(od) / 2, mm(wall), mm(radius)
    moved = mm(shift) if shift else 0.0
    if plastic:
        moved = (half - t / 2) ** 2 / r
    pairs = [walls(t, r - moved, fiber) for fiber in (r + half, r - half, r)]
    expect = {key: sorted(pair) for key, pair in zip(("extrados_mm", "intrados_mm", "side_mm"), pairs)}
    expect |= {"uniaxial_mm": [pair[1] for pair in pairs], "stretch_1": (r + half) / (r - moved) - 1}
    accept = {"od": od, "wall": wall, "radius": radius}
    accept |= {"neutral_shift": shift} if shift else {}
    accept |= {"plastic": True} if plastic else {}
    keys = ("extrados_mm", "intrados_mm", "side_mm", "uniaxial_mm", "neutral_shift_mm")
    tolerance = ", ".join(f'{key} = "1e-10 mm"' for key in keys) + ', stretch_1 = "1e-11 1"'
    origin = "volume kept: t / (1 + e), and t exp(-ln(1 + e) / 2), e from the neutral fiber to the outer surface"
    return case("bent_wall", accept, expect | {"neutral_shift_mm": moved}, f"{{ {tolerance} }}", origin)


def flattened(od: str, wall: str, measure: str, share: float, kinematics: str) -> str:
    d, t = mm(od), mm(wall)
    largest, smallest = section(d, t, measure, share, kinematics)
    bore = np.pi / 4 * (largest - 2 * t) * (smallest - 2 * t)
    left = bore / (np.pi / 4 * (d - 2 * t) ** 2)
    expect = {"largest_mm": largest, "smallest_mm": smallest, "apart_mm": largest - smallest}
    expect |= {"ovality_1": (largest - smallest) / d, "flattening_1": smallest / d}
    expect |= {"bore_mm2": bore, "bore_share_1": left, "bore_loss_1": 1 - left}
    accept = {"od": od, "wall": wall, "measure": measure, "share": share, "kinematics": kinematics}
    units = {"mm": "1e-9 mm", "mm2": "1e-8 mm2", "1": "1e-9 1"}
    tolerance = ", ".join(f'{key} = "{units[key.rsplit("_", 1)[1]]}"' for key in expect)
    return case("section", accept, expect, f"{{ {tolerance} }}", "complete elliptic integral of SciPy and a root finder")


def wrinkling(od: str, wall: str, radius: str, exponent: float, needs: str) -> str:
    d, t, r = mm(od), mm(wall), mm(radius)
    share = t / ((d - t) / 2)
    expect: dict[str, object] = {"compression_1": (d - t) / 2 / r}
    if exponent > 0:
        expect["critical_1"] = critical(min(share, 0.1), exponent)
    tolerance = ", ".join(f'{key} = "1e-8 1"' for key in expect)
    origin = "the wave of least energy, found by trying; the middle radius over the bend's; a tenth is the thickest wall"
    accept = {"od": od, "wall": wall, "radius": radius, "exponent": exponent}
    return case("free_wrinkling", accept, expect | {"needs_groove": needs}, f"{{ {tolerance} }}", origin)


def refused(operation: str, accept: dict[str, object], code: str, origin: str) -> str:
    return case(operation, accept, {"error": code}, "", origin)


def made() -> str:
    steel, quarter, wide = ("3/16 in", "0.028 in"), ("1/4 in", "0.035 in"), ("25 mm", "0.5 mm")
    parts = [HEAD]
    parts += [bent(*steel, radius) for radius in ("14.2875 mm", "14.3 mm", "9.525 mm", "47.6 mm", "1000 mm")]
    parts += [bent(*quarter, "19.05 mm", shift="0.3 mm"), bent(*quarter, "19.05 mm", shift="-0.5 mm")]
    parts += [bent("6 mm", "1 mm", "25 mm", plastic=True), bent(*wide, "37.5 mm", plastic=True)]
    for kinematics in ("perimeter kept", "sides held"):
        parts += [flattened(*steel, "flattening", share, kinematics) for share in (0.75, 0.9, 0.99)]
        parts += [flattened(*quarter, "ovality", share, kinematics) for share in (0.01, 0.08, 0.25)]
    parts += [wrinkling(*steel, radius, 0.21, "unknown") for radius in ("14.3 mm", "25 mm")]
    parts += [wrinkling("4.75 mm", "0.7 mm", "1500 mm", 0.21, "false"), wrinkling(*wide, "37.5 mm", 0.21, "true")]
    parts += [wrinkling(*wide, "37.5 mm", 0.44, "true"), wrinkling(*wide, "1200 mm", 0.21, "false")]
    parts += [wrinkling(*wide, "37.5 mm", 0.0, "true"), wrinkling("50 mm", "0.1 mm", "10000 mm", 0.9, "unknown")]
    parts += [wrinkling(*wide, "1000000 mm", 0.0, "unknown"), wrinkling(*wide, "1200 mm", 0.0, "true")]
    bend = {"od": "3/16 in", "wall": "0.028 in", "radius": "14.3 mm"}
    kinked = {"od": "3/16 in", "wall": "0.028 in", "measure": "flattening", "share": 0.3, "kinematics": "sides held"}
    thick = {"od": "4 mm", "wall": "1.2 mm", "radius": "4.9 mm"}
    tight = {"od": "3/16 in", "wall": "0.028 in", "radius": "5 mm", "neutral_shift": "1.38 mm"}
    no_bore = "the bore is 0.7 of the diameter; at 0.3 of it two walls fill the section"
    parts += [
        refused("bent_wall", bend | {"radius": "2.38 mm"}, "OUT_OF_RANGE", "less than half the tube, 2.38125 mm"),
        refused("bent_wall", bend | {"radius": "4.76 mm"}, "OUT_OF_RANGE", "less than the diameter, 4.7625 mm"),
        refused("bent_wall", thick, "OUT_OF_RANGE", "4 / 0.8 = 5: nearer than r^2 / (r - t) no bore is left"),
        refused("bent_wall", tight, "OUT_OF_RANGE", "the axis 3.62 from the center: the outside, 7.38, twice its length"),
        refused("bent_wall", bend | {"radius": "14.3"}, "UNIT_MISSING", "rule: a bare number has no unit"),
        refused("bent_wall", bend | {"neutral_shift": "2.4 mm"}, "OUT_OF_RANGE", "rule: it would leave the tube"),
        refused("bent_wall", bend | {"neutral_shift": "2 bar"}, "WRONG_KIND", "rule: a pressure is no length"),
        refused("free_wrinkling", bend | {"exponent": 1.0}, "OUT_OF_RANGE", "rule: metals harden by 0 to 0.9"),
        refused("free_wrinkling", bend | {"exponent": -0.1}, "OUT_OF_RANGE", "rule: metals harden by 0 to 0.9"),
        refused("section", kinked | {"share": 0.29}, "OUT_OF_RANGE", no_bore),
        refused("section", kinked | {"share": 1.1}, "OUT_OF_RANGE", "rule: no section is higher than the round one"),
        refused("section", kinked | {"kinematics": "kept"}, "UNKNOWN_NAME", "rule: not one of the two assumptions"),
    ]
    return "".join(parts)


if __name__ == "__main__":
    print(made(), end="")
