"""Makes the cases of springback: springback_mechanics and springback_fit in tests/cases.

Moments by the quadrature of `make_springback_reference`; what follows from a moment by mpmath. Lines and intervals by NumPy and SciPy, as in
`make_fit_reference`; the trial that stands out and the bent line by fits of their own; advice by trying every choice. Some rows are of tests/tables/bending/springback_theory.csv. Run
it from anywhere.
"""

import csv
import itertools
import math
from pathlib import Path

import make_fit_reference as fits
import numpy as np
from make_springback_reference import DIGITS, moment
from mpmath import mp, mpf
from scipy import stats
from write_cases import case, refused

CASES = Path(__file__).resolve().parent.parent / "cases"
THEORY = Path(__file__).resolve().parent.parent / "tables" / "bending" / "springback_theory.csv"
STEEL = {"od": "3/16 in", "wall": "0.028 in"}
MM = {"3/16 in": 4.7625, "0.028 in": 0.7112, "1/4 in": 6.35, "0.035 in": 0.889}


def plain(text):
    """The number of a text with its unit, in mm, MPa or degrees."""
    if text in MM:
        return MM[text]
    number, unit = text.split(" ")
    return float(number) * (1000 if unit in ("GPa", "m") else 1)


QUADRATURE = "quadrature with 30 digits; the rest follows from the moment"


def plastic(strength, modulus="207 GPa", **tube):
    return {**STEEL, **tube, "modulus": modulus, "yield_strength": strength}


def bilinear(strength, tangent, **tube):
    return {**plastic(strength, **tube), "tangent_modulus": tangent}


def power(coefficient, exponent, modulus="207 GPa", **tube):
    return {
        **STEEL, **tube, "modulus": modulus, "strength_coefficient": coefficient, "hardening_exponent": exponent,
    }  # fmt: skip


def law_of(tube, strength=0.0, soft=0.0):
    """Diameter, wall, law and its figures, with the strength and the modulus off by shares."""
    modulus = plain(tube["modulus"]) * (1 + soft)
    if "hardening_exponent" in tube:
        law = ("power", modulus, plain(tube["strength_coefficient"]) * (1 + strength), tube["hardening_exponent"])
    else:
        tangent = plain(tube["tangent_modulus"]) if "tangent_modulus" in tube else 0.0
        law = ("bilinear", modulus, plain(tube["yield_strength"]) * (1 + strength), tangent)
    return (plain(tube["od"]), plain(tube["wall"]), *law)


def share_of(tube, radius, arm="0 mm", **off):
    """Moment, share that springs back, and the constant part in degrees for an arm."""
    od, wall, law, modulus, first, second = law_of(tube, **off)
    m = moment(od, wall, law, modulus, first, second, plain(radius))
    outer, bore = mpf(od) / 2, mpf(od) / 2 - mpf(wall)
    stiffness = mpf(modulus) * mp.pi / 4 * (outer**4 - bore**4)
    return m, m * plain(radius) / stiffness, mp.degrees(m * plain(arm) / (2 * stiffness))


def held(tube, radius, wanted=None, arm=None, origin=QUADRATURE):
    m, share, constant = share_of(tube, radius, arm or "0 mm")
    left = 1 - share
    expect = {"moment_nmm": m, "share_1": share, "formed_mm": plain(radius) / left if left > 1e-9 else "unknown"}
    if wanted:
        expect |= {"constant_deg": constant, "setting_deg": (plain(wanted) + constant) / left, "basis": "mechanics"}
    accept = {"tube": tube, "radius": radius}
    accept |= {key: text for key, text in (("arm", arm), ("wanted", wanted)) if text}
    return case("held_bend", accept, expect, origin, near=1e-10)


def theory_cases():
    """One row of each law and of each tube of the table."""
    seen = set()
    for row in csv.DictReader(line for line in THEORY.read_text(encoding="utf-8").splitlines() if line[0] != "#"):
        if row["law"] == "holl" or (row["od_mm"], row["law"]) in seen:
            continue
        seen.add((row["od_mm"], row["law"]))
        tube = {"od": f"{row['od_mm']} mm", "wall": f"{row['wall_mm']} mm", "modulus": f"{row['modulus_mpa']} MPa"}
        tube["yield_strength"] = f"{row['first']} MPa"
        if row["law"] == "bil":
            tube["tangent_modulus"] = f"{row['second']} MPa"
        expect = {"moment_nmm": row["moment_nmm"], "share_1": row["share"], "formed_mm": row["formed_mm"]}
        expect |= {"constant_deg": 0.0, "setting_deg": row["setting_deg"], "basis": "mechanics"}
        expect = {key: text if key == "basis" else float(text) for key, text in expect.items()}
        accept = {"tube": tube, "radius": f"{row['radius_mm']} mm", "wanted": "90 deg"}
        yield case("held_bend", accept, expect, "tests/tables/bending/springback_theory.csv", near=2e-9)


def setting_range(tube, radius, wanted, strength, modulus, arm=None):
    ends = []
    for off, soft in ((-strength, modulus), (strength, -modulus)):
        _, share, constant = share_of(tube, radius, arm or "0 mm", strength=off, soft=soft)
        ends.append((plain(wanted) + constant) / (1 - share))
    accept = {"tube": tube, "radius": radius, "wanted": wanted, "strength_scatter": strength, "modulus_scatter": modulus}
    accept |= {"arm": arm} if arm else {}
    expect = {"least_deg": ends[0], "most_deg": ends[1]}
    return case("setting_range", accept, expect, "the two worst metals of the scatter, by quadrature", near=1e-10)


def prior_of(tube, radius, strength, modulus, bend_scatter, worth, arm=None):
    parts = [share_of(tube, radius, arm or "0 mm", **off)[1:] for off in ({}, {"strength": strength}, {"soft": modulus})]
    (share, constant), *others = parts
    shares = mp.sqrt(sum((other - share) ** 2 for other, _ in others))
    constants = mp.sqrt(sum((other - constant) ** 2 for _, other in others) + mpf(plain(bend_scatter)) ** 2)
    together = sum((one - share) * (other - constant) for one, other in others)
    accept = {"tube": tube, "radius": radius, "strength_scatter": strength, "modulus_scatter": modulus}
    accept |= {"bend_scatter": bend_scatter, "worth": worth} | ({"arm": arm} if arm else {})
    expect = {"constants_deg": [constant, constants], "proportionals_1": [share, shares]}
    expect |= {"correlation_1": together / (constants * shares)}
    expect |= {"scatter_deg": plain(bend_scatter), "worth": str(worth)}
    return case("mechanics_prior", accept, expect, "differences to the metals that are off, by quadrature", near=1e-10)


def mechanics():
    yield "# Springback from mechanics: moment, radius as formed, setting, scatter of the metal, belief before trials.\n"
    yield "# Written by tests/python/make_springback_cases.py, which computes every figure apart from the library.\n"
    yield from theory_cases()
    mild, hard, strong = plastic("250 MPa"), bilinear("250 MPa", "2.07 GPa"), power("600 MPa", 0.21)
    yield held(mild, "14.2875 mm", "90 deg")
    yield held(hard, "14.2875 mm", "45 deg", "60 mm")
    yield held(strong, "14.2875 mm", "90 deg", "25 mm")
    yield held(power("600 MPa", 0.0), "14.2875 mm", "90 deg")
    yield held(power("1400 MPa", 0.44, "193 GPa", od="1/4 in", wall="0.035 in"), "19.05 mm", "30 deg", "40 mm")
    # The core ends in the bore at 14 mm; between bore and surface at 1700 mm; the wall is elastic at 2000 mm.
    for tube in (mild, hard):
        yield held(tube, "1700 mm", origin=f"core between bore and surface; {QUADRATURE}")
        yield held(tube, "1382.8 mm", origin=f"core a hair beyond the bore; {QUADRATURE}")
        yield held(tube, "2000 mm", origin=f"elastic throughout: nothing remains; {QUADRATURE}")
    yield held(power("600 MPa", 0.21), "3400 mm", origin=f"core between bore and surface; {QUADRATURE}")
    yield held(power("600 MPa", 0.21), "4000 mm", origin=f"elastic throughout: nothing remains; {QUADRATURE}")
    yield held(plastic("250 MPa", od="10 mm", wall="5 mm"), "40 mm", "90 deg", origin=f"a solid bar; {QUADRATURE}")
    yield held(plastic("250 MPa", od="40 mm", wall="0.1 mm"), "60 mm", "90 deg", origin=f"a thin tube; {QUADRATURE}")
    known = {**STEEL, "material": "low-carbon steel", "condition": "annealed"}
    m, share, _ = share_of(strong, "14.2875 mm")
    expect = {"moment_nmm": m, "share_1": share, "formed_mm": mpf("14.2875") / (1 - share)}
    accept = {"tube": known, "radius": "14.2875 mm"}
    yield case("held_bend", accept, expect, f"207 GPa, 600 MPa, 0.21, the textbook's figures; {QUADRATURE}", near=1e-10)
    # Figures of one's own: a power law before a straight line, and that before no hardening.
    own = {"source": "pull 3"}
    yield held({**hard, **own}, "14.2875 mm", "45 deg", "60 mm", origin=f"a yield strength and a tangent modulus; {QUADRATURE}")
    yield held({**hard, **own}, "1700 mm", origin=f"core between bore and surface; {QUADRATURE}")
    yield held({**mild, **own}, "14.2875 mm", "90 deg", origin=f"a yield strength alone; {QUADRATURE}")
    yield held({**hard, **strong, **own}, "14.2875 mm", "90 deg", origin=f"the power law of all three; {QUADRATURE}")
    yield setting_range({**hard, **own}, "14.2875 mm", "60 deg", 0.1, 0.03, "50 mm")
    yield setting_range(mild, "14.2875 mm", "90 deg", 0.2, 0.05)
    yield setting_range(hard, "14.2875 mm", "60 deg", 0.1, 0.03, "50 mm")
    yield setting_range(strong, "30 mm", "90 deg", 0.15, 0.0)
    yield prior_of(mild, "14.2875 mm", 0.15, 0.03, "0.3 deg", 2)
    yield prior_of(strong, "14.2875 mm", 0.2, 0.05, "0.25 deg", 4, "25 mm")
    bend = {"tube": mild, "radius": "14.2875 mm"}

    def wrong(code, origin, tube=(), **other):
        accept = {**bend, **other, "tube": {**mild, **dict(tube)}}
        return refused("held_bend", accept, code, origin)

    yield wrong("OUT_OF_RANGE", "half of 3/16 in is 2.38125 mm; no bore is left", {"wall": "2.4 mm"})
    yield wrong("OUT_OF_RANGE", "half of 3/16 in is 2.38125 mm", radius="2.38 mm")
    yield wrong("OUT_OF_RANGE", "rule: no metal yields beyond its modulus", {"modulus": "2 GPa", "yield_strength": "2 GPa"})
    yield wrong("OUT_OF_RANGE", "rule: no metal hardens faster than it is stiff", {"tangent_modulus": "207 GPa"})
    yield wrong("UNIT_MISSING", "rule: a bare number has no unit", {"yield_strength": "250"})
    yield wrong("WRONG_KIND", "rule: a length is no stress", {"yield_strength": "250 mm"})
    yield wrong("OUT_OF_RANGE", "rule: where all springs back no setting is credible", radius="2000 mm", wanted="90 deg")
    yield wrong("OUT_OF_RANGE", "rule: no hand tool has an arm of 3 m", arm="3 m", wanted="90 deg")
    yield wrong("OUT_OF_RANGE", "M d / 2 E I passes 30 degrees", arm="1.9 m", wanted="90 deg")
    yield refused("held_bend", {**bend, "tube": power("600 MPa", 0.95)}, "OUT_OF_RANGE", "rule: metals harden by 0 to 0.9")
    sloped = {**STEEL, "modulus": "207 GPa", "tangent_modulus": "2.07 GPa", **own}
    for tube, code, origin in (
        (sloped, "NOT_KNOWN", "rule: a tangent modulus begins at a yield strength"),
        ({**sloped, "yield_strength": "250 MPa", "tangent_modulus": "207 GPa"}, "OUT_OF_RANGE", "rule: as of bare numbers"),
        ({**hard, "source": " "}, "FIELD_MISSING", "rule: every figure has its source"),
    ):
        yield refused("held_bend", {**bend, "tube": tube}, code, origin)
    unseen = {**STEEL, "material": "stainless 316"}
    yield refused("held_bend", {**bend, "tube": unseen}, "NOT_KNOWN", "rule: without a condition there is no strength")
    for names in ({"material": "steel"}, {"material": "copper-nickel", "condition": "soft"}):
        yield refused("held_bend", {**bend, "tube": {**STEEL, **names}}, "UNKNOWN_NAME", "rule: not one of the list")
    scattered = {**bend, "wanted": "90 deg", "strength_scatter": 0.2, "modulus_scatter": 0.05}
    for off, origin in (({"strength_scatter": 0.81}, "rule: up to 0.8"), ({"modulus_scatter": -0.01}, "rule: from 0")):
        yield refused("setting_range", scattered | off, "OUT_OF_RANGE", origin)
    yield refused("setting_range", scattered | {"wanted": "90"}, "UNIT_MISSING", "rule: a bare number has no unit")
    belief = {**bend, "strength_scatter": 0.2, "modulus_scatter": 0.05, "bend_scatter": "0.3 deg", "worth": 2}
    yield refused("mechanics_prior", belief | {"worth": 0}, "OUT_OF_RANGE", "rule: a belief is worth at least one bend")
    yield refused("mechanics_prior", belief | {"bend_scatter": "0 deg"}, "OUT_OF_RANGE", "rule: every bend scatters")
    yield refused("mechanics_prior", belief | {"bend_scatter": "11 deg"}, "OUT_OF_RANGE", "rule: up to 10 degrees")


# Trials ------------------------------------------------------------------------------------------------------------

BLENDED = "conditioned normal distributions, the scatter integrated by Gauss and Legendre: NumPy and SciPy"
SOLVED = "NumPy's normal equations, SciPy's Student, root finding on the definition of the setting's interval"


def texts(sets, gots):
    return [[f"{s} deg", f"{g} deg"] for s, g in zip(sets, gots)]


def told_of(sets, gots, wanted, chance, setting):
    """What three and more trials say."""
    beta, covariance, square, dof = fits.fitted(sets, gots)
    t, scatter = stats.t.ppf(0.5 + chance / 2, dof), math.sqrt(square)
    errors = scatter * np.sqrt(np.diag(covariance))
    bias = fits.bias_of(sets, covariance, fits.one_sided(fits.read_to(gots), scatter))
    halves = [t * error + bias(np.array(v)) for error, v in zip(errors, ([1.0, 0.0], [0.0, 1.0]))]
    at = np.array([1.0, setting])
    return {
        "scatter_deg": scatter,
        "constant_error_deg": errors[0],
        "proportional_error_1": errors[1],
        "constant_interval_deg": [beta[0] - halves[0], beta[0] + halves[0]],
        "proportional_interval_1": [beta[1] - halves[1], beta[1] + halves[1]],
        "setting_interval_deg": fits.intervals(sets, gots, wanted, chance, None)[2] or ["unknown"],
        "next_bend_deg": t * scatter * math.sqrt(1 + at @ covariance @ at) + bias(at),
    }


def told_beside(prior, sets, gots, wanted, chance, setting):
    """What a belief and trials say."""
    blend = fits.blended(sets, gots, prior)
    beta, covariance, scatter = blend.summary()
    at = np.array([1.0, setting])
    return {
        "scatter_deg": scatter,
        "constant_error_deg": math.sqrt(covariance[0][0]),
        "proportional_error_1": math.sqrt(covariance[1][1]),
        "constant_interval_deg": blend.constant(chance),
        "proportional_interval_1": blend.slope(chance),
        "setting_interval_deg": [max(end, wanted) for end in blend.setting(beta, wanted, chance)],
        "next_bend_deg": blend.next_half(setting, chance),
        "weight_1": max(blend.taken(at, prior), 0.0),
    }


def trial_fit(sets, gots, wanted, chance, prior=None, endless=False):
    dof = prior[5] + len(sets) if prior else len(sets) - 2
    if prior:
        beta = fits.blended(sets, gots, prior).summary()[0]
    elif dof:
        beta = fits.fitted(sets, gots)[0]
    else:
        slope = ((sets[1] - gots[1]) - (sets[0] - gots[0])) / (sets[1] - sets[0])
        beta = np.array([sets[0] - gots[0] - slope * sets[0], slope])
    setting = max((wanted + beta[0]) / (1 - beta[1]), wanted)
    basis = "trials" if prior is None else "blend" if sets else "prior"
    expect = {"constant_deg": beta[0], "proportional": beta[1], "setting_deg": setting, "basis": basis}
    keys = "scatter_deg constant_error_deg proportional_error_1 constant_interval_deg proportional_interval_1 "
    expect |= {key: ["unknown"] for key in (keys + "setting_interval_deg next_bend_deg").split()}
    expect |= {"reading_deg": fits.read_to(gots) or ["unknown"], "weight_1": 1.0}
    if prior:
        expect |= told_beside(prior, sets, gots, wanted, chance, setting)
    elif dof:
        expect |= told_of(sets, gots, wanted, chance, setting)
    assert (expect["setting_interval_deg"] == ["unknown"]) == (endless or dof == 0)
    expect["outlier"] = "none" if prior else fits.deleted(sets, gots)
    expect["bent"] = "unknown" if prior else fits.is_bent(sets, gots)
    expect |= {"contradicted": fits.contradicted(sets, gots, prior), "freedom": str(dof)}
    accept = {"trials": texts(sets, gots), "wanted": f"{wanted} deg", "chance": chance}
    accept |= {"prior": belief(prior)} if prior else {}
    return case("trial_fit", accept, expect, BLENDED if prior else SOLVED, near=1e-8)


def belief(prior):
    a, sa, b, sb, scatter, worth, correlation = prior
    shown = {"constant": [f"{a} deg", f"{sa} deg"], "proportional": [b, sb], "scatter": f"{scatter} deg", "worth": worth}
    return shown | ({"correlation": correlation} if correlation else {})


def advice(sets, gots, wanted, half_width, chance, candidates, prior=None):
    """Every choice of more bends, fewest first."""
    if prior:
        blend = fits.blended(sets, gots, prior)
        beta = blend.summary()[0]
    else:
        beta, covariance, square, dof = fits.fitted(sets, gots)
        information, half = np.linalg.inv(covariance), fits.one_sided(fits.read_to(gots), math.sqrt(square))

    def of_trials(more):
        """The interval of a setting by its definition, after more bends."""
        after = np.linalg.inv(information + sum((np.outer(v, v) for v in ([1.0, x] for x in more)), np.zeros((2, 2))))
        factor = stats.t.ppf(0.5 + chance / 2, dof + len(more))
        bias = fits.bias_of([*sets, *more], after, half)
        return lambda w: fits.ends_of(beta, w, lambda v: factor * math.sqrt(square * float(v @ after @ v)) + bias(v))

    def beside(more):
        after = blend.with_more(more)
        return lambda w: after.setting(beta, w, chance)

    def width(more):
        """The farthest end of any setting's interval."""
        ends = beside(more) if prior else of_trials(more)
        return max(abs(end - (w + beta[0]) / (1 - beta[1])) for w in wanted for end in ends(w) or [math.inf])

    best = ()
    for count in range(6):
        choices = itertools.combinations_with_replacement(sorted(candidates), count)
        best = min(choices, key=width)
        if width(best) <= half_width:
            break
    else:
        raise ValueError("more than five bends")
    accept = {"trials": texts(sets, gots), "wanted": [f"{w} deg" for w in wanted], "half_width": f"{half_width} deg"}
    accept |= {"chance": chance, "candidates": [f"{c} deg" for c in candidates]}
    accept |= {"prior": belief(prior)} if prior else {}
    expect = {"angles_deg": list(best), "reaches_deg": width(best), "enough": "true"}
    return case("advice", accept, expect, "every choice tried, with NumPy and SciPy", near=1e-8)


def record(expect, origin, **other):
    accept = {
        "trials": [["90 deg", "86.5 deg"], ["45 deg", "43.2 deg"]],
        "tube": ["3/16 in", "0.028 in", "low-carbon steel"],
        "other": ["4.75 mm", "0.7 mm", "low-carbon steel"],
        "former": "former 1",
        "date": "2026-05-14",
        "revision": "2",
        "wanted": "60 deg",
    } | other
    return case("calibration", accept, expect, origin)


def trials():
    yield "# Springback from trials: lines, intervals, beliefs, what stands out, advice, and records.\n"
    yield "# Written by tests/python/make_springback_cases.py, which computes every figure apart from the library.\n"
    sets, gots = [20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0], [18.4, 28.6, 42.9, 58.2, 72.5, 87.5, 102.2, 117.3]
    mild = (1.0, 0.5, 0.015, 0.006, 0.3, 2, 0.0)
    yield trial_fit([90.0, 45.0], [86.5, 43.2], 60.0, 0.95)
    yield trial_fit([30.0, 60.0, 90.0], [28.6, 58.2, 87.4], 60.0, 0.95)
    yield trial_fit([30.0, 60.0, 90.0], [28.6, 58.2, 87.4], 110.0, 0.8)
    yield trial_fit([40.0, 50.0, 52.5], [38.9, 47.7, 50.9], 45.0, 0.99, endless=True)
    yield trial_fit(sets, gots, 90.0, 0.95)
    yield trial_fit(sets, gots, 25.0, 0.99)
    odd = gots.copy()
    odd[3] -= 1.5
    yield trial_fit(sets, odd, 90.0, 0.95)
    odd = gots.copy()
    odd[7] += 1.9
    yield trial_fit(sets, odd, 45.0, 0.9)
    yield trial_fit(sets, [s - round(0.5 + 0.0003 * s * s, 2) for s in sets], 90.0, 0.95)
    for some in ([], [5], [0], [2, 7], range(8)):
        yield trial_fit([sets[i] for i in some], [gots[i] for i in some], 90.0, 0.95, prior=mild)
    # Trials that agree with each other and hardly with the belief, to hundredths and to whole degrees.
    yield trial_fit([90.0] * 3, [86.31, 86.42, 86.36], 60.0, 0.95, prior=(1.0, 0.4, 0.015, 0.004, 0.3, 4, 0.0))
    yield trial_fit([45.0, 90.0], [43.33, 86.42], 60.0, 0.95, prior=(1.0, 0.2, 0.015, 0.002, 0.3, 50, 0.5))
    yield trial_fit([45.0, 90.0], [42.0, 86.0], 60.0, 0.95, prior=(1.0, 0.2, 0.015, 0.002, 0.3, 50, 0.5))
    # Trials that repeat ten times better than believed, at one angle: others stay as doubtful as they were.
    close = [87.02, 87.05, 87.03, 87.01, 87.04, 87.03]
    yield trial_fit([90.0] * 6, close, 30.0, 0.95, prior=(1.0, 0.4, 0.02, 0.006, 0.3, 4, 0.0))
    yield trial_fit([90.0], [87.9], 60.0, 0.9, prior=(0.5, 0.2, 0.01, 0.002, 0.2, 8, 0.0))
    yield trial_fit([90.0, 90.0], [87.2, 87.5], 45.0, 0.95, prior=(0.5, 1.0, 0.01, 0.02, 0.2, 1, -0.8))
    yield trial_fit([90.0], [87.25], 60.0, 0.9, prior=(1.0, 0.4, 0.015, 0.006, 0.2, 8, 0.95))
    # Read to whole and to half degrees: on a line by that alone.
    yield trial_fit([30.0, 60.0, 90.0], [28.0, 57.5, 87.0], 90.0, 0.95)
    yield trial_fit([30.0, 60.0, 90.0, 120.0], [29.0, 58.0, 87.0, 116.0], 75.0, 0.95)
    yield trial_fit([30.0, 45.0, 60.0, 75.0, 90.0], [29.0, 43.0, 58.0, 73.0, 88.0], 45.0, 0.95)
    yield trial_fit([90.0, 90.0], [88.0, 88.0], 45.0, 0.95, prior=(0.5, 1.0, 0.01, 0.02, 0.05, 1, 0.0))
    # One of five was read as springing forward; and a setting that is never below the angle wanted.
    yield trial_fit([30.0, 45.0, 60.0, 75.0, 90.0], [30.1, 44.8, 59.7, 74.4, 89.5], 60.0, 0.95)
    yield trial_fit([60.0, 90.0, 120.0], [59.53, 88.04, 116.57], 10.0, 0.95, endless=True)
    yield trial_fit([30.0, 60.0, 90.0] * 2, [28.0, 57.0, 87.0] * 2, 75.0, 0.95)
    four = ([30.0, 50.0, 70.0, 90.0], [28.3, 48.1, 67.6, 87.5])
    places = [20.0, 45.0, 60.0, 90.0, 120.0]
    yield advice(*four, [60.0], 1.0, 0.95, places)
    yield advice(*four, [35.0, 110.0], 0.4, 0.95, places)
    yield advice(*four, [90.0], 0.25, 0.9, places)
    yield advice([90.0], [87.03], [45.0, 90.0], 0.35, 0.9, places, prior=mild)
    # Read to whole degrees.
    yield advice([90.0, 60.0], [87.0, 58.0], [45.0, 90.0], 0.9, 0.9, places, prior=mild)
    yield advice([60.0, 90.0], [58.13, 87.03], [30.0], 0.45, 0.95, places, prior=(1.0, 0.5, 0.015, 0.006, 0.3, 8, 0.5))
    line = {"trials": texts([30.0, 60.0, 90.0], [28.6, 58.2, 87.4]), "wanted": "60 deg", "chance": 0.95}

    def wrong(code, origin, **other):
        return refused("trial_fit", line | other, code, origin)

    two = texts([90.0, 45.0], [86.5, 43.2])
    yield wrong("TRIALS_UNUSABLE", "rule: one trial has no line of its own", trials=two[:1])
    yield wrong("TRIALS_UNUSABLE", "rule: one angle tells no two parts", trials=two[:1] * 3)
    yield wrong("TRIALS_UNUSABLE", "rule: no trial, no line", trials=[])
    yield wrong("TRIALS_UNUSABLE", "rule: no bend springs forward by so much", trials=texts([90.0, 45.0], [86.5, 47.2]))
    yield wrong("TRIALS_UNUSABLE", "rule: all of them forward is an exchange", trials=texts([90.0, 45.0], [90.5, 45.2]))
    yield wrong("TRIALS_UNUSABLE", "27 degrees off the prior", trials=texts([90.0], [60.0]), prior=belief(mild))
    strong = texts([90.0] * 4, [85.31, 85.42, 85.36, 85.37])
    yield wrong("TRIALS_UNUSABLE", "4.6 degrees in a row, where 2.4 +- 0.5 are believed", trials=strong, prior=belief((1.0, 0.4, 0.015, 0.004, 0.3, 4, 0.0)))
    yield wrong("TRIALS_UNUSABLE", "rule: nothing bent tells nothing", trials=texts([0.0], [0.0]), prior=belief(mild))
    for part, value in [
        ("worth", 10_001), ("worth", 0), ("scatter", "0.0009 deg"), ("constant", ["1 deg", "1e-160 deg"]),
        ("proportional", [0.015, 1e-170]), ("correlation", 1.0),
    ]:  # fmt: skip
        yield wrong("OUT_OF_RANGE", "rule: nobody is so sure", prior=belief(mild) | {part: value})
    yield wrong("TRIALS_UNUSABLE", "4 degrees from the line through all", trials=texts([90, 60, 45], [86.5, 50, 43.2]))
    yield wrong("UNIT_MISSING", "rule: a bare number has no unit", trials=[["90", "87 deg"]])
    yield wrong("OUT_OF_RANGE", "rule: below one half is a gamble", chance=0.4)
    yield wrong("OUT_OF_RANGE", "rule: nothing is certain", chance=1.0)
    yield wrong("OUT_OF_RANGE", "rule: up to ten turns", wanted="3601 deg")
    known = belief(mild)
    yield wrong("OUT_OF_RANGE", "rule: a belief is worth at least one bend", prior=known | {"worth": 0})
    yield wrong("OUT_OF_RANGE", "rule: nobody is wholly sure", prior=known | {"proportional": [0.015, 0.0]})
    yield wrong("OUT_OF_RANGE", "rule: every bend scatters", prior=known | {"scatter": "0 deg"})
    yield wrong("OUT_OF_RANGE", "rule: from 0 to one half", prior=known | {"proportional": [0.6, 0.1]})
    yield wrong("UNIT_MISSING", "rule: a bare number has no unit", prior=known | {"scatter": "0.3"})
    forward = texts([90.0], [92.5])
    yield wrong("TRIALS_UNUSABLE", "rule: no bend springs forward by so much, whatever is believed", prior=known, trials=forward)
    asked = {"trials": line["trials"], "wanted": ["60 deg"], "half_width": "0.5 deg", "chance": 0.95}
    asked |= {"candidates": ["30 deg", "90 deg"]}
    yield refused("advice", asked | {"trials": two}, "NOT_KNOWN", "rule: two trials tell nothing of the scatter")
    yield refused("advice", asked | {"candidates": []}, "FIELD_MISSING", "rule: nothing to choose from")
    yield refused("advice", asked | {"wanted": []}, "FIELD_MISSING", "rule: nothing is wanted")
    yield refused("advice", asked | {"half_width": "0.5"}, "UNIT_MISSING", "rule: a bare number has no unit")
    words = "4.76 mm x 0.71 mm, low-carbon steel, former 1, 2026-05-14, revision 2"
    hand = "sizes are printed to 0.01 mm; by hand: 3.5 and 1.8 degrees, so (60 + 0.1) / (1 - 1.7 / 45)"
    setting = 60.1 / (1 - 1.7 / 45)
    yield record({"record": words, "setting_deg": setting, "is_for": "true"}, hand)
    for other in (["6 mm", "0.7 mm", "low-carbon steel"], ["4.75 mm", "0.9 mm", "low-carbon steel"], ["4.75 mm", "0.7 mm", "copper-nickel"]):
        yield record({"record": words, "setting_deg": setting, "is_for": "false"}, hand, other=other)
    yield record({"error": "UNREADABLE"}, "rule: a day is year-month-day", date="14.05.2026")
    yield record({"error": "UNREADABLE"}, "rule: 2026 has no 29th of February", date="2026-02-29")
    yield record({"error": "FIELD_MISSING"}, "rule: a former has a name", former=" ")
    yield record({"error": "FIELD_MISSING"}, "rule: a state of a record has a name", revision=" ")
    yield record({"error": "TRIALS_UNUSABLE"}, "rule: no bend springs forward by so much", trials=forward)
    yield record({"error": "OUT_OF_RANGE"}, "rule: a wall of at most half the diameter", tube=["4.75 mm", "2.4 mm", "low-carbon steel"])


def made():
    with mp.workdps(DIGITS):
        parts = {"springback_mechanics": mechanics, "springback_fit": trials}
        return {name: "".join(part()) for name, part in parts.items()}


if __name__ == "__main__":
    for name, text in made().items():
        (CASES / f"{name}.toml").write_text(text, encoding="ascii", newline="\n")
