"""Makes tests/cases/pressure.toml and tests/cases/hydraulics.toml by formulas apart from the library.

Thick walls by Lame's two constants solved from the pressures on both surfaces, and Hooke's law; walls that yield by
integrating the equilibrium of a ring over the radius; beams by the roots of their equations, found by SciPy.
`python make_filled_cases.py pressure > ../cases/pressure.toml`, and the same for `hydraulics`.
"""

import sys

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq

MM = {"3/16 in": 4.7625, "0.028 in": 0.7112, "1/4 in": 6.35, "0.035 in": 0.889, "0.003 in": 0.0762, "0.005 in": 0.127}


def mm(text: str) -> float:
    return MM[text] if text in MM else float(text.removesuffix(" mm"))


def mpa(text: str) -> float:
    number, unit = text.split(" ")
    return float(number) * {"MPa": 1.0, "GPa": 1000.0, "bar": 0.1}[unit]


def lame(outer: float, bore: float) -> tuple[float, float]:
    """A and B of a + b / r^2: radial stress -1 at the bore, 0 outside."""
    a, b = np.linalg.solve([[1, -1 / bore**2], [1, -1 / outer**2]], [-1.0, 0.0])
    return a, b


def per_pressure(theory: str, od: float, wall: float) -> float:
    outer, bore = od / 2, od / 2 - wall
    if theory == "Barlow":
        return outer / wall
    if theory == "Boardman":
        return (outer - 0.4 * wall) / wall
    if theory == "Lame":
        a, b = lame(outer, bore)
        return a + b / bore**2
    held = quad(lambda r: 1 / r, bore, outer, epsabs=0, epsrel=1e-13)[0]
    return (1.0 if theory == "Tresca" else np.sqrt(3) / 2) / held


def cylinder(case: dict) -> dict:
    od, wall = mm(case["od"]) + mm(case.get("od_plus", "0 mm")), mm(case["wall"]) - mm(case.get("wall_minus", "0 mm"))
    places = [("straight", wall, 1.0)]
    if "radius" in case:
        radius, shift = mm(case["radius"]), mm(case.get("neutral_shift", "0 mm"))
        neutral = radius - shift
        for place, fiber, factor in [
            ("extrados", radius + od / 2, (2 * radius + od / 2) / (2 * (radius + od / 2))),
            ("intrados", radius - od / 2, (2 * radius - od / 2) / (2 * (radius - od / 2))),
            ("side", radius, 1.0),
        ]:
            stretch = np.log(fiber / neutral)
            places += [(place, wall * np.exp(-stretch * part), factor) for part in (1.0, 0.5)]
    worst = max(places, key=lambda place: per_pressure(case["theory"], od, place[1]) * place[2])
    stress = per_pressure(case["theory"], od, worst[1]) * worst[2]
    strength, at = mpa(case["strength"]), mpa(case["pressure"])
    margin = strength / (at * stress)
    return {
        "ideal_mpa": strength / case["factor"] / stress,
        "wall_mm": worst[1],
        "place": worst[0],
        "stress_mpa": at * stress,
        "margin_1": margin,
        "reached": bool(margin >= case["factor"]),
    }


def filled(case: dict) -> dict:
    outer, bore = mm(case["od"]) / 2, mm(case["od"]) / 2 - mm(case["wall"])
    modulus, poisson = mpa(case["modulus"]), case["poisson"]
    a, b = lame(outer, bore)
    hoop, radial = a + b / bore**2, -1.0
    axial = {"closed": a, "open": 0.0, "fixed": poisson * (hoop + radial)}[case["ends"]]
    around = (hoop - poisson * (radial + axial)) / modulus
    along = (axial - poisson * (hoop + radial)) / modulus
    wall, bulk = 2 * around + along, mpa(case["bulk_modulus"])
    both = wall + 1 / bulk
    bore_growth = (3 if case["ends"] != "fixed" else 2 * (1 + poisson)) * case["wall_expansion"]
    return {
        "wall_per_mpa": wall,
        "all_per_mpa": both,
        "bulk_mpa": 1 / both,
        "volume_ml": np.pi * bore**2 * mm(case["length"]) * mpa(case["pressure"]) * both / 1000,
        "rise_mpa": (case["expansion"] - bore_growth) * case["warming"] / both,
        "wave_m_per_s": np.sqrt(1e6 / both / case["density"]),
    }


def span(case: dict) -> dict:
    root = {
        "pinned": np.pi,
        "clamped-pinned": brentq(lambda x: np.sin(x) * np.cosh(x) - np.cos(x) * np.sinh(x), 3.8, 4.2, xtol=1e-15),
        "clamped": brentq(lambda x: np.cos(x) * np.cosh(x) - 1, 4.5, 5.0, xtol=1e-15),
    }[case["ends"]]
    outer, bore = mm(case["od"]) / 2e3, (mm(case["od"]) / 2 - mm(case["wall"])) / 1e3
    stiffness = mpa(case["modulus"]) * 1e6 * np.pi / 4 * (outer**4 - bore**4)
    mass = case["density"] * np.pi * (outer**2 - bore**2) + case.get("fluid_density", 0.0) * np.pi * bore**2
    at_one = root**2 / (2 * np.pi) * np.sqrt(stiffness / mass)
    length = mm(case["length"]) / 1e3
    return {
        "mass_g": 1e3 * mass * length,
        "frequency_hz": at_one / length**2,
        "length_mm": 1e3 * np.sqrt(at_one / case["wanted"]),
    }


def hold(case: dict) -> dict:
    bulk = mpa(case["bulk_modulus"])
    grown = case["volume"] * case["expansion"] * case["warming"]
    return {
        "grown_ml": grown,
        "warmed_mpa": bulk * grown / case["volume"],
        "fallen_mpa": bulk * case["lost"] / case["volume"],
        "loss_ml": case["volume"] * mpa(case["fall"]) / bulk,
    }


ORIGINS = {
    "ideal_cylinder": "Lame's constants from the surface pressures, equilibrium integrated over the radius; shape and wall of a bend",
    "filled_tube": "Lame's constants and Hooke's law; bulk modulus in series",
    "span": "roots of the beam's equation by SciPy, second moment, mass",
    "hold": "volume, bulk modulus and expansion multiplied out",
}
RUN = {"ideal_cylinder": cylinder, "filled_tube": filled, "span": span, "hold": hold}
MINE = {"strength": "290 MPa", "factor": 4.0, "source": "made up", "pressure": "15 MPa"}
STEEL = {"od": "3/16 in", "wall": "0.028 in"}
BENT = {"radius": "14.2875 mm", "od_plus": "0.003 in", "wall_minus": "0.005 in"}
THEORIES = ["Barlow", "Boardman", "Lame", "Tresca", "von Mises"]
LINE = {**STEEL, "modulus": "207 GPa", "poisson": 0.29, "bulk_modulus": "1800 MPa", "density": 1060.0, "expansion": 7e-4}
LINE |= {"length": "2000 mm", "pressure": "100 bar", "warming": 10.0, "wall_expansion": 1.2e-5}
BEAM = {**STEEL, "modulus": "207 GPa", "density": 7850.0, "length": "300 mm", "wanted": 200.0}
HELD = {"volume": 90.0, "bulk_modulus": "1700 MPa", "expansion": 7e-4, "warming": 1.0, "lost": 0.05, "fall": "2 bar"}
WITHOUT = lambda case, key: {name: value for name, value in case.items() if name != key}  # noqa: E731

FILES = {
    "pressure": [
        *[("ideal_cylinder", {**STEEL, **MINE, "theory": theory}, None) for theory in THEORIES],
        *[("ideal_cylinder", {**STEEL, **MINE, **BENT, "theory": theory}, None) for theory in THEORIES],
        ("ideal_cylinder", {"od": "4.75 mm", "wall": "0.9 mm", **MINE, "theory": "lame", "radius": "12 mm"}, "Lame"),
        ("ideal_cylinder", {"od": "8 mm", "wall": "1 mm", **MINE, "theory": "Lame", "radius": "9 mm", "neutral_shift": "0.5 mm"}, None),
        ("ideal_cylinder", {"od": "1/4 in", "wall": "0.035 in", **MINE, "factor": 1.0, "theory": "Barlow", "pressure": "300 MPa"}, None),
        ("ideal_cylinder", {"od": "20 mm", "wall": "9.99 mm", **MINE, "theory": "Boardman"}, "OUT_OF_RANGE"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Clavarino"}, "UNKNOWN_NAME"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Lame", "source": " "}, "FIELD_MISSING"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Lame", "wall_minus": "0.7 mm"}, "OUT_OF_RANGE"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Lame", "neutral_shift": "0.1 mm"}, "FIELD_MISSING"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Lame", "radius": "2 mm"}, "OUT_OF_RANGE"),
        ("ideal_cylinder", {**STEEL, **MINE, "theory": "Lame", "pressure": "0 MPa"}, "OUT_OF_RANGE"),
    ],
    "hydraulics": [
        *[("filled_tube", {**LINE, "ends": ends}, None) for ends in ("closed", "open", "fixed")],
        ("filled_tube", {**LINE, "od": "4.75 mm", "wall": "0.9 mm", "modulus": "135 GPa", "poisson": 0.33, "ends": "closed"}, None),
        ("filled_tube", {**LINE, "ends": "closed", "warming": -25.0}, None),
        ("filled_tube", {**LINE, "ends": "closed", "warming": -80.0}, "OUT_OF_RANGE"),
        ("filled_tube", {**LINE, "ends": "loose"}, "UNKNOWN_NAME"),
        ("filled_tube", {**WITHOUT(LINE, "bulk_modulus"), "ends": "closed"}, "NOT_KNOWN"),
        ("filled_tube", {**WITHOUT(LINE, "expansion"), "ends": "closed"}, "NOT_KNOWN"),
        ("filled_tube", {**WITHOUT(LINE, "density"), "ends": "closed"}, "NOT_KNOWN"),
        *[("span", {**BEAM, "fluid_density": 1060.0, "ends": ends}, None) for ends in ("pinned", "clamped-pinned", "clamped")],
        ("span", {**BEAM, "ends": "pinned"}, None),
        ("span", {**WITHOUT(BEAM, "density"), "ends": "pinned"}, "NOT_KNOWN"),
        ("span", {**BEAM, "ends": "free"}, "UNKNOWN_NAME"),
        ("span", {**BEAM, "ends": "pinned", "wanted": 0.0}, "OUT_OF_RANGE"),
        ("hold", HELD, None),
        ("hold", {**HELD, "warming": -2.5, "lost": 1.0}, None),
        ("hold", {**HELD, "lost": 4.6}, "OUT_OF_RANGE"),
        ("hold", {**HELD, "warming": 301.0}, "OUT_OF_RANGE"),
        ("hold", {**HELD, "volume": 0.0}, "OUT_OF_RANGE"),
        ("hold", WITHOUT(HELD, "expansion"), "NOT_KNOWN"),
        ("hold", WITHOUT(HELD, "bulk_modulus"), "NOT_KNOWN"),
    ],
}
HEADS = {
    "pressure": "# The ideal cylinder under pressure, straight and bent.",
    "hydraulics": "# A line full of fluid: stiffness, a span between clips, a pressure that is held.",
}


def toml(value: object) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    return f'"{value}"' if isinstance(value, str) else repr(float(value))


def table(rows: dict) -> str:
    return "{ " + ", ".join(f"{key} = {toml(value)}" for key, value in rows.items()) + " }"


def tolerance(key: str, value: float) -> str:
    units = ("mm2", "mm", "deg", "mpa", "ml", "m_per_s", "hz", "g", "1")
    unit = next(unit for unit in units if key.endswith(f"_{unit}"))
    return f"{abs(value) * 1e-11:.1e} {unit}"


def main(name: str) -> None:
    print(HEADS[name])
    print("# Written by tests/python/make_filled_cases.py, which computes every figure apart from the library.")
    for operation, accept, code in FILES[name]:
        print(f'\n[[case]]\noperation = "{operation}"\naccept = {table(accept)}')
        if code and code.isupper():
            print(f'expect = {{ error = "{code}" }}\norigin = "what is missing or cannot be has its code"')
            continue
        expect = RUN[operation]({**accept, "theory": code} if code else accept)
        print(f"expect = {table(expect)}")
        figures = {key: tolerance(key, value) for key, value in expect.items() if not isinstance(value, (str, bool))}
        print(f'tolerance = {table(figures)}\norigin = "{ORIGINS[operation]}"')


if __name__ == "__main__":
    main(sys.argv[1])
