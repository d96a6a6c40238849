"""Springback in Python: from mechanics, from trials, from both; records; the page, read back."""

import datetime
import math
import xml.etree.ElementTree as ET

import linewright as lw
import numpy as np
import pytest
from scipy import stats

SETS = [20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0]
GOTS = [18.4, 28.6, 42.9, 58.2, 72.5, 87.5, 102.2, 117.3]
TRIALS = [(lw.deg(s), lw.deg(g)) for s, g in zip(SETS, GOTS)]
TUBE = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
PRIOR = lw.Prior(constant=("1 deg", "0.5 deg"), proportional=(0.02, 0.01), scatter="0.3 deg", worth=2)


def raises(code, call, *args, **kwargs):
    with pytest.raises(lw.LinewrightError) as caught:
        call(*args, **kwargs)
    assert caught.value.code == code, caught.value
    return caught.value


def test_mechanics_against_the_closed_form():
    """A perfectly plastic tube with its core in the bore: 4/3 (R^3 - r^3) sy less what the elastic core lacks."""
    od, wall, e, sy, radius = 4.7625, 0.7112, 207e3, 250.0, 14.2875
    tube = lw.Mechanics(lw.mm(od), wall=lw.mm(wall), modulus=lw.mpa(e), yield_strength=lw.mpa(sy))
    bent = tube.bend(lw.mm(radius))
    # By quadrature over the height, chord of the wall times stress times height.
    y = np.linspace(0, od / 2, 400_001)
    bore = od / 2 - wall
    chord = 2 * (np.sqrt(np.maximum((od / 2) ** 2 - y**2, 0)) - np.sqrt(np.maximum(bore**2 - y**2, 0)))
    moment = 2 * np.trapezoid(chord * np.minimum(e * y / radius, sy) * y, y)
    assert bent.moment_nmm == pytest.approx(moment, rel=1e-6)
    stiffness = e * math.pi / 4 * ((od / 2) ** 4 - bore**4)
    share = moment * radius / stiffness
    assert bent.share == pytest.approx(share, rel=1e-6)
    assert bent.formed_radius.mm == pytest.approx(radius / (1 - share), rel=1e-6)
    line = bent.springback(arm="60 mm")
    assert line.basis == "mechanics" and line.proportional == pytest.approx(share, rel=1e-6)
    assert line.constant.rad == pytest.approx(moment * 60 / (2 * stiffness), rel=1e-6)
    least, most = tube.setting_range("90 deg", radius=lw.mm(radius), strength_scatter=0.1, modulus_scatter=0.03)
    assert least < bent.springback().setting("90 deg") < most


def test_laws_that_are_none():
    def make(**law):
        return lw.Mechanics("4.75 mm", wall="0.7 mm", modulus="205 GPa", **law)

    assert raises("FIELD_MISSING", make).part == "field yield_strength"
    assert raises("FIELD_MISSING", make, hardening_exponent=0.2).part == "field strength_coefficient"
    assert raises("FIELD_MISSING", make, strength_coefficient="600 MPa").part == "field hardening_exponent"
    raises("FIELDS_CONFLICT", make, yield_strength="240 MPa", strength_coefficient="600 MPa", hardening_exponent=0.2)
    raises("UNIT_MISSING", make, yield_strength=240)
    raises("OUT_OF_RANGE", make, yield_strength="240 GPa")
    raises("OUT_OF_RANGE", make(yield_strength="240 MPa").bend, "2 mm")
    raises("NOT_KNOWN", lw.Mechanics.of_metal, "4.75 mm", wall="0.7 mm", metal=lw.material_properties("stainless 316"))
    raises("WRONG_KIND", lw.Mechanics.of_metal, "4.75 mm", wall="0.7 mm", metal="stainless 316")


def test_the_law_of_a_metal_is_the_first_that_is_known():
    def of(**figures):
        own = {key: figure if key == "hardening_exponent" else (figure, "pull 3") for key, figure in figures.items()}
        metal = lw.Properties("our coil", modulus=("207 GPa", "report"), **own)
        return lw.Mechanics.of_metal("3/16 in", wall="0.028 in", metal=metal)

    def bare(**law):
        return lw.Mechanics("3/16 in", wall="0.028 in", modulus="207 GPa", **law)

    line = {"yield_strength": "250 MPa", "tangent_modulus": "2.07 GPa"}
    power = {"strength_coefficient": "600 MPa", "hardening_exponent": 0.21}
    assert of(**line, **power) == bare(**power)
    assert of(yield_strength="250 MPa") == bare(yield_strength="250 MPa")
    assert of(**line) == bare(**line) != bare(yield_strength="250 MPa")
    for radius in ("14.2875 mm", "1700 mm", "2000 mm"):
        own, same = of(**line).bend(radius), bare(**line).bend(radius)
        assert (own.moment_nmm, own.share, own.formed_radius) == (same.moment_nmm, same.share, same.formed_radius)
    own, same = (tube(**line).bend("14.2875 mm").springback(arm="60 mm") for tube in (of, bare))
    assert own.setting("45 deg") == same.setting("45 deg")
    # By quadrature with 30 digits, as in the cases.
    assert own.setting("45 deg").deg == pytest.approx(48.463740471272, abs=5e-9)
    error = raises("NOT_KNOWN", of, tangent_modulus="2.07 GPa")
    assert error.part == "field yield_strength" and "where the tangent modulus begins" in str(error)


def test_a_fit_is_that_of_least_squares():
    fit = lw.TrialFit(TRIALS)
    found = stats.linregress(SETS, np.subtract(SETS, GOTS))
    line = fit.springback()
    assert line.proportional == pytest.approx(found.slope, abs=1e-12) and line.basis == "trials"
    assert line.constant.deg == pytest.approx(found.intercept, abs=1e-10)
    assert fit.standard_errors[1] == pytest.approx(found.stderr, rel=1e-9)
    assert fit.standard_errors[0].deg == pytest.approx(found.intercept_stderr, rel=1e-9)
    t = stats.t.ppf(0.975, 6)
    low, high = fit.proportional_interval(chance=0.95)
    assert (low, high) == pytest.approx((found.slope - t * found.stderr, found.slope + t * found.stderr), rel=1e-7)
    low, high = fit.setting_interval("90 deg", chance=0.95)
    assert low < line.setting("90 deg") < high and fit.degrees_of_freedom == 6
    assert fit.outlier is None and fit.is_bent is False and fit.weight_of_trials("90 deg") == 1
    odd = TRIALS.copy()
    odd[4] = (odd[4][0], "71 deg")
    assert lw.TrialFit(odd).outlier == 4


def test_few_trials_say_what_they_cannot():
    two = lw.TrialFit(TRIALS[::7])
    assert two.scatter is two.standard_errors is two.setting_interval("90 deg", chance=0.95) is None
    assert two.next_bend("90 deg", chance=0.95) is two.outlier is two.is_bent is None
    error = raises("NOT_KNOWN", two.advice, ["90 deg"], half_width="0.5 deg", chance=0.95, candidates=["90 deg"])
    assert "third trial" in error.need
    one = lw.TrialFit(TRIALS[5:6], prior=PRIOR)
    assert one.springback().basis == "blend" and 0 < one.weight_of_trials("90 deg") < 1
    assert lw.TrialFit([], prior=PRIOR).springback().basis == "prior"
    raises("TRIALS_UNUSABLE", lw.TrialFit, TRIALS[:1])
    raises("TRIALS_UNUSABLE", lw.TrialFit, [("90 deg", "93 deg"), ("45 deg", "44 deg")])
    raises("WRONG_KIND", lw.TrialFit, [("90 deg",)])
    raises("UNIT_MISSING", lw.TrialFit, [(90, 87)])
    raises("WRONG_KIND", lw.TrialFit, TRIALS, prior=0.3)
    raises("OUT_OF_RANGE", lw.TrialFit(TRIALS).setting_interval, "90 deg", chance=95)
    raises("OUT_OF_RANGE", lw.TrialFit, [], prior=lw.Prior(**{**parts(PRIOR), "worth": 0}))
    raises("OUT_OF_RANGE", lw.Prior, **{**parts(PRIOR), "worth": -1})
    raises("WRONG_KIND", lw.Prior, **{**parts(PRIOR), "constant": "1 deg"})


def parts(prior):
    return {"constant": prior.constant, "proportional": prior.proportional, "scatter": prior.scatter, "worth": prior.worth}


def test_a_record_keeps_what_a_workshop_needs():
    day = datetime.date(2026, 5, 14)
    record = lw.Calibration(TRIALS, tube=TUBE, former="former 1", date=day, revision="2")
    assert record == lw.Calibration(TRIALS, tube=TUBE, former="former 1", date="2026-05-14", revision="2")
    assert record.is_for(TUBE) and not record.is_for(lw.Tube("6 mm", wall="0.7 mm", material="low-carbon steel"))
    assert record.springback().calibration == record and record.springback().setting("90 deg") > lw.deg(90)
    blend = lw.TrialFit(TRIALS, prior=PRIOR).springback()
    assert blend.calibration is None and blend.with_calibration(record).calibration == record
    raises("FIELDS_CONFLICT", lw.TrialFit(TRIALS[:5]).springback().with_calibration, record)
    raises("UNREADABLE", lw.Calibration, TRIALS, tube=TUBE, former="f", date="14.05.2026", revision="1")
    raises("WRONG_KIND", lw.Calibration, TRIALS, tube=TUBE, former="f", date=20260514, revision="1")
    raises("FIELD_MISSING", lw.Calibration, TRIALS, tube=TUBE, former=" ", date=day, revision="1")
    raises("WRONG_KIND", record.is_for, "4.75 mm")
    raises("FIELDS_CONFLICT", lw.Springback, constant="1 deg", proportional=0.02, trials=TRIALS)
    raises("UNKNOWN_NAME", lw.Springback, constant="1 deg", proportional=0.02, basis="guess")


def test_the_page_shows_what_the_fit_says():
    """Read back from the picture: scales from the axes' numbers, then trials, line and band."""
    record = lw.Calibration(TRIALS, tube=TUBE, former="blue <1> & old", date="2026-05-14", revision="2")
    fit = lw.TrialFit(TRIALS)
    page = fit.page(["30 deg", "90 deg"], chance=0.95, calibration=record)
    root = ET.fromstring(page)
    svg = "{http://www.w3.org/2000/svg}"
    group = {g.get("id"): g for g in root.iter(f"{svg}g")}

    def scale(name, axis):
        found = [(float(t.text), float(t.get(axis))) for t in group[name].iter(f"{svg}text")]
        assert len(found) >= 4
        return np.polyfit([at for _, at in found], [value for value, _ in found], 1)

    across, up = scale("across", "x"), scale("up", "y")
    # The numbers of the upright axis stand a little below their lines.
    up[1] += up[0] * 1.1
    trials = [(float(c.get("cx")), float(c.get("cy"))) for c in group["trials"].iter(f"{svg}circle")]
    for (x, y), s, g in zip(trials, SETS, GOTS, strict=True):
        assert np.polyval(across, x) == pytest.approx(s, abs=0.01)
        assert np.polyval(up, y) == pytest.approx(s - g, abs=0.01)

    def points(element):
        return [tuple(map(float, point.split(","))) for point in element.get("points").split()]

    line = fit.springback()
    for element in group["line"].iter(f"{svg}polyline"):
        for x, y in points(element):
            expected = line.constant.deg + line.proportional * np.polyval(across, x)
            assert np.polyval(up, y) == pytest.approx(expected, abs=0.01)
    (band,) = group["band"].iter(f"{svg}polygon")
    edge = points(band)
    assert len(edge) == 122
    n, mean = len(SETS), np.mean(SETS)
    sxx = np.sum((np.array(SETS) - mean) ** 2)
    for (x, low), (_, high) in zip(edge[:61], reversed(edge[61:])):
        at = np.polyval(across, x)
        half = stats.t.ppf(0.975, n - 2) * fit.scatter.deg * math.sqrt(1 + 1 / n + (at - mean) ** 2 / sxx)
        assert (np.polyval(up, high) - np.polyval(up, low)) / 2 == pytest.approx(half, abs=0.01)
    words = " ".join(text.text for text in root.iter(f"{svg}text"))
    assert "blue <1> & old" in words and "2026-05-14" in words and "estimate" in words
    low, high = fit.setting_interval("90 deg", chance=0.95)
    assert f"{math.floor(low.deg * 10) / 10:.1f} to {math.ceil(high.deg * 10) / 10:.1f}" in words
    assert "NOT RECORDED" in fit.page([], chance=0.95)
    assert "NOT KNOWN" in lw.TrialFit(TRIALS[::7]).page(["90 deg"], chance=0.95)
    raises("OUT_OF_RANGE", fit.page, ["90 deg"] * 15, chance=0.95)
    raises("WRONG_KIND", fit.page, [], chance=0.95, calibration="none")


def test_readings_of_a_hand_have_a_rounding():
    fit = lw.TrialFit([("30 deg", "28 deg"), ("60 deg", "57.5 deg"), ("90 deg", "87 deg")])
    assert fit.reading == lw.deg(0.5)
    assert fit.scatter.deg == pytest.approx(0.5 / 12**0.5, rel=1e-12)
    low, high = fit.setting_interval("90 deg", chance=0.95)
    assert low.deg < 93.05 < high.deg
    found = fit.advice(["90 deg"], half_width="0.5 deg", chance=0.95, candidates=["45 deg", "90 deg"])
    assert found.is_enough and 0 < len(found.angles) < 5
    assert lw.TrialFit([("30 deg", "28.123 deg"), ("60 deg", "57.456 deg")]).reading is None


def test_a_prior_has_limits_and_its_parts_go_together():
    given = {"constant": ("1 deg", "0.5 deg"), "proportional": (0.02, 0.01), "scatter": "0.3 deg", "worth": 2}
    assert lw.Prior(**given).correlation == 0.0 and lw.Prior(**given) == lw.Prior(**given, correlation=0)
    together = lw.TrialFit([], prior=lw.Prior(**given, correlation=0.9)).setting_interval("90 deg", chance=0.9)
    apart = lw.TrialFit([], prior=lw.Prior(**given)).setting_interval("90 deg", chance=0.9)
    assert together[1] > apart[1]
    for part, value in [
        ("worth", 10_001),
        ("worth", 2**63),
        ("scatter", "1e-170 deg"),
        ("constant", ("1 deg", "1e-160 deg")),
        ("proportional", (0.02, 1e-170)),
        ("correlation", 1.0),
    ]:
        with pytest.raises(lw.InputError) as beyond:
            lw.TrialFit([("90 deg", "87 deg")], prior=lw.Prior(**given | {part: value}))
        assert beyond.value.code == "OUT_OF_RANGE" and part in beyond.value.part
    with pytest.raises(lw.InputError, match="where the prior expects") as wrong:
        lw.TrialFit([("90 deg", "60 deg")], prior=lw.Prior(**given | {"worth": 8}))
    assert wrong.value.code == "TRIALS_UNUSABLE"


def test_the_page_has_room_for_a_bend_read_as_springing_forward():
    trials = [("30 deg", "30.5 deg"), ("60 deg", "59.5 deg"), ("90 deg", "88 deg")]
    root = ET.fromstring(lw.TrialFit(trials).page(["60 deg"], chance=0.95))
    svg = "{http://www.w3.org/2000/svg}"
    group = {g.get("id"): g for g in root.iter(f"{svg}g")}
    found = [(float(t.get("y")), float(t.text)) for t in group["up"].iter(f"{svg}text")]
    assert min(value for _, value in found) < -0.4 and 0.0 in [value for _, value in found]
    lowest = max(y for y, _ in found)
    assert all(float(circle.get("cy")) <= lowest for circle in group["trials"].iter(f"{svg}circle"))
    words = " ".join(text.text for text in root.iter(f"{svg}text"))
    assert "read to 0.5 degrees" not in words


def test_the_page_says_that_readings_alone_made_the_band():
    trials = [("30 deg", "28 deg"), ("60 deg", "57.5 deg"), ("90 deg", "87 deg")]
    assert "Angles were read to 0.5 degrees" in lw.TrialFit(trials).page(["60 deg"], chance=0.95)
    whole = [("30 deg", "29 deg"), ("60 deg", "58 deg"), ("90 deg", "87 deg")]
    assert "Angles were read to 1 degree:" in lw.TrialFit(whole).page(["60 deg"], chance=0.95)


def test_the_page_lists_no_setting_below_the_angle_wanted():
    trials = [("30 deg", "29.98 deg"), ("60 deg", "59.97 deg"), ("90 deg", "89.95 deg")]
    fit = lw.TrialFit(trials)
    assert 45.25 < fit.springback().setting("45.25 deg").deg < 45.3
    root = ET.fromstring(fit.page(["45.25 deg", "60 deg"], chance=0.95))
    group = next(g for g in root.iter("{http://www.w3.org/2000/svg}g") if g.get("id") == "settings")
    cells = [text.text for text in group.iter("{http://www.w3.org/2000/svg}text")]
    row = cells[cells.index("45.25") :][:3]
    assert row[1] == "45.25" and row[2].startswith("45.25 to 45."), row


def test_repeated_trials_have_one_label():
    trials = [("90 deg", "87.02 deg"), ("90 deg", "87.05 deg"), ("30 deg", "28.5 deg"), ("90 deg", "87.03 deg")]
    trials += [("90 deg", "87.01 deg"), ("90 deg", "87.04 deg"), ("31 deg", "29.45 deg")]
    svg = "{http://www.w3.org/2000/svg}"
    root = ET.fromstring(lw.TrialFit(trials).page(["45 deg"], chance=0.95))
    group = next(g for g in root.iter(f"{svg}g") if g.get("id") == "trials")
    assert [text.text for text in group.iter(f"{svg}text")] == ["1, 2, 4-6", "3, 7"]
    assert len(list(group.iter(f"{svg}circle"))) == 7
