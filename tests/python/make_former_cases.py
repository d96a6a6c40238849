"""Makes the cases of formers: former_pieces in tests/cases.

Test pieces by NumPy and SciPy as in `make_pieces_reference`, grooves by the quadrature of `make_springback_cases`. Run it
from anywhere.
"""

import math

import make_pieces_reference as bent
from make_springback_cases import CASES, bilinear, plain, plastic, power, share_of
from make_springback_reference import DIGITS
from mpmath import mp
from write_cases import case, refused


def piece(length, legs, angles, od=None, reading=None):
    given = {"length": f"{length} mm", "legs": [f"{leg} mm" for leg in legs], "angles": [f"{a} deg" for a in angles]}
    return given | ({"od": f"{od} mm"} if od else {}) | ({"reading": f"{reading} mm"} if reading else {})


def piece_fit(rows, angle, chance, origin):
    """Rows of length, legs, angles, where legs are outer ones the diameter, and the reading where it is given."""
    centered, steps = [], []
    for length, legs, angles, *more in rows:
        od, reading = [*more, None, None][:2]
        steps.append(reading or bent.read_to(legs))
        edges = [0.0, *((od or 0.0) / 2 * math.tan(math.radians(a) / 2) for a in angles), 0.0]
        centered.append((length, [leg - a - b for leg, a, b in zip(legs, edges, edges[1:])], angles))
    radius, error, low, high, scatter, _, arc, _, share, share_low, share_high = bent.numbers(
        centered, chance, steps
    )
    turn = math.radians(angle)
    unit = 2 * math.tan(turn / 2) - turn

    def known(*figures):
        return ["unknown"] if figures[0] is None else list(figures)

    gains = (None,) if low is None else (unit * low, unit * high)
    expect = {"radius_mm": radius, "radius_error_mm": known(error), "radius_interval_mm": known(low, high)}
    expect |= {"scatter_mm": known(scatter), "gain_mm": unit * radius, "gain_interval_mm": known(*gains)}
    expect |= {"arc_radius_mm": known(arc), "share_1": known(share), "share_interval_1": known(share_low, share_high)}
    accept = {"pieces": [piece(*row) for row in rows], "angle": f"{angle} deg", "chance": chance}
    return case("piece_fit", accept, expect, origin, near=1e-8)


def of_groove(tube, groove):
    _, share, _ = share_of(tube, groove)
    accept = {"tube": tube, "groove": groove, "grip": "20 mm"}
    origin = "groove over what remains, the moment by quadrature"
    return case("former_of_groove", accept, {"as_formed_mm": plain(groove) / (1 - share)}, origin, near=1e-10)


def formers():
    yield "# A former from its groove, and from bent pieces of known length: radius as formed, gain and stretch.\n"
    yield "# Written by tests/python/make_former_cases.py, which computes every figure apart from the library.\n"
    solved = "NumPy's least squares, SciPy's Student, root finding on the definition of the share's interval"
    three = [(200.0, [112.1, 94.2], [90.0]), (200.0, [102.0, 98.9], [45.0]), (200.0, [121.4, 97.6], [120.0])]
    yield piece_fit(three[:1], 90.0, 0.95, solved)
    yield piece_fit(three[:2], 45.0, 0.9, solved)
    yield piece_fit(three, 90.0, 0.95, solved)
    yield piece_fit([three[0]] * 2 + [(200.0, [112.0, 94.0], [90.0])], 60.0, 0.95, f"one angle only; {solved}")
    longer = [
        (180.0, [70.4, 119.2], [90.0]), (180.0, [62.1, 122.3], [60.0]), (180.0, [64.5, 116.9], [30.0]),
        (180.0, [88.8, 116.3], [120.0]), (260.0, [80.2, 111.0, 87.1], [90.0, 90.0]), (180.0, [71.0, 119.1], [92.0]),
    ]  # fmt: skip
    yield piece_fit(longer, 90.0, 0.95, solved)
    yield piece_fit(longer, 120.0, 0.8, solved)
    # Read to a millimeter they agree by that alone.
    yield piece_fit([(200.0, [112.0, 94.0], [90.0])] * 2, 90.0, 0.95, f"two that are alike; {solved}")
    whole = [(200.0, [112.0, 94.0], [90.0], 4.75), (300.0, [160.0, 150.0], [90.0], 4.75), (250.0, [130.0, 121.0], [45.0], 4.75)]
    yield piece_fit(whole, 60.0, 0.9, f"outer legs to a millimeter; {solved}")
    ruler = [(200.0, [112.0, 94.0], [90.0], None, 0.5)] * 3 + [(200.0, [102.0, 98.5], [45.0], None, 1.0)]
    yield piece_fit(ruler, 90.0, 0.95, f"readings as given, in place of what the legs show; {solved}")
    yield piece_fit([(*row[:4], 2.0) for row in whole], 60.0, 0.9, f"outer legs to two millimeters, as given; {solved}")
    little = [(200.0, [104.0, 102.0], [90.0]), (200.0, [101.0, 100.0], [60.0])]
    yield piece_fit(little, 90.0, 0.95, f"no radius is below nothing; {solved}")
    outer = [(200.0, [115.1, 97.2], [90.0], 6.0), (200.0, [104.0, 99.6], [45.0], 6.0), *three[2:]]
    yield piece_fit(outer, 90.0, 0.95, f"outer legs less half the diameter x tan(angle / 2); {solved}")
    yield of_groove(plastic("250 MPa"), "14.2875 mm")
    yield of_groove(bilinear("250 MPa", "2.07 GPa"), "14.2875 mm")
    yield of_groove(power("600 MPa", 0.21), "14.2875 mm")
    yield of_groove(plastic("110.3 MPa", "124 GPa", od="1/4 in", wall="0.035 in"), "25 mm")
    fit = {"pieces": [piece(*row) for row in three], "angle": "90 deg", "chance": 0.95}

    def wrong(code, origin, *rows, **other):
        return refused("piece_fit", fit | ({"pieces": [piece(*row) for row in rows]} if rows else {}) | other, code, origin)

    yield wrong("TRIALS_UNUSABLE", "rule: nothing was bent", pieces=[])
    yield wrong("TRIALS_UNUSABLE", "legs shorter than the piece", (240.0, [110.0, 110.0], [90.0]))
    yield wrong("TRIALS_UNUSABLE", "10 mm too long among good ones", *three, (200.0, [112.1, 104.2], [90.0]))
    yield wrong("OUT_OF_RANGE", "rule: nobody reads to nothing", (200.0, [112.1, 94.2], [90.0], None, 0.0001))
    yield wrong("COUNT_MISMATCH", "rule: one leg more than angles", (200.0, [112.1], [90.0]))
    yield wrong("COUNT_MISMATCH", "rule: a piece is bent", (200.0, [200.0], []))
    yield wrong("OUT_OF_RANGE", "rule: at most 170 degrees", (200.0, [112.1, 94.2], [175.0]))
    yield wrong("OUT_OF_RANGE", "its corner takes 3 mm of it", (200.0, [2.0, 210.0], [90.0], 6.0))
    yield wrong("OUT_OF_RANGE", "7 mm of gain are a radius of 16.3 mm: an arc of 25.6 mm", (1.0, [4.0, 4.0], [90.0]))
    yield wrong("OUT_OF_RANGE", "its tangent of 100 mm is longer than the leg", (200.0, [40.0, 202.9], [90.0]))
    yield wrong("OUT_OF_RANGE", "rule: nothing is certain", chance=1.0)
    yield wrong("OUT_OF_RANGE", "rule: at most 170 degrees", angle="175 deg")
    yield wrong("UNIT_MISSING", "rule: a bare number has no unit", angle="90")
    groove = {"tube": plastic("250 MPa"), "groove": "14.2875 mm", "grip": "20 mm"}
    yield refused("former_of_groove", groove | {"groove": "2 m"}, "OUT_OF_RANGE", "elastic throughout: nothing remains")
    yield refused("former_of_groove", groove | {"groove": "2.38 mm"}, "OUT_OF_RANGE", "less than half the tube")
    yield refused("former_of_groove", groove | {"grip": "20"}, "UNIT_MISSING", "rule: a bare number has no unit")
    yield refused("former_of_groove", groove | {"grip": "-1 mm"}, "OUT_OF_RANGE", "rule: no length is below nothing")


def made():
    with mp.workdps(DIGITS):
        return {"former_pieces": "".join(formers())}


if __name__ == "__main__":
    for name, text in made().items():
        (CASES / f"{name}.toml").write_text(text, encoding="ascii", newline="\n")
