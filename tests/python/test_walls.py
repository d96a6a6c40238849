"""The wall and the section of a bend from Python: what comes back, what is refused, and where the cases come from."""

import linewright as lw
import make_wall_cases
import numpy as np
import pytest
from case_files import CASES

TUBE = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
THIN = lw.Tube("25 mm", wall="0.5 mm", material="low-carbon steel")


def bend(radius="14.3 mm", **more):
    return lw.BentWall(TUBE, radius=radius, **more)


def flat(share, kinematics="sides held", make=lw.FlattenedSection.from_flattening):
    return make(TUBE, share, kinematics=kinematics)


def test_the_cases_are_what_their_maker_makes():
    assert make_wall_cases.made() == (CASES / "bend_wall.toml").read_text(encoding="utf-8")


def test_a_bent_wall_knows_what_it_was_made_of():
    bent = bend(neutral_shift="0.1 mm")
    assert (bent.tube, bent.radius, bent.neutral_shift) == (TUBE, lw.mm(14.3), lw.mm(0.1))
    assert bent != bend() and bent == lw.BentWall(TUBE, radius=lw.mm(14.3), neutral_shift=lw.mm(0.1))
    assert bend().extrados.least < TUBE.wall < bend().intrados.most
    again = bend().with_plastic_neutral_axis()
    assert eval(repr(again), {"BentWall": lw.BentWall, "Tube": lw.Tube, "mm": lw.mm}) == again


def test_a_section_knows_what_it_was_made_of():
    section = flat(0.75)
    assert (section.tube, section.kinematics) == (TUBE, "sides held")
    assert section.smallest < section.largest == TUBE.od
    assert section != flat(0.75, "perimeter kept") and section.flattening == 0.75
    # By hand: a quarter of 4.7625 mm, of a bore of 3.3401 mm.
    assert section.out_of_round.mm == pytest.approx(4.7625 / 4, rel=1e-14)
    assert section.bore_share == pytest.approx(1 - 4.7625 / 4 / 3.3401, rel=1e-14)
    assert lw.ovality_amplification(
        TUBE, out_of_round=flat(0.9).out_of_round, pressure="1 bar", modulus="207 GPa", poisson=0.29
    ) == pytest.approx(1 + 1.5 * 0.47625 / 0.7112, rel=1e-4)
    # A round section keeps its bore, by the circle.
    assert flat(1).bore_area_mm2 == pytest.approx(np.pi / 4 * TUBE.bore.mm**2, rel=1e-14)


def test_what_is_not_known_about_wrinkles_says_why():
    found = bend().free_wrinkling(0.21)
    assert found.needs_groove is None and found.words.startswith("not known: the wall is thicker than a tenth")
    assert found.wall_share == pytest.approx(0.7112 / 2.02565, rel=1e-14)
    thin = lw.BentWall(THIN, radius="37.5 mm").free_wrinkling(0.21)
    assert thin.needs_groove is True and "mandrel" in thin.words
    # A thinner wall and a tighter radius never help.
    order = {False: 0, None: 1, True: 2}
    for radius in ("200 mm", "60 mm", "30 mm"):
        last = 0
        for wall in (4.0, 2.0, 1.2, 1.0, 0.5, 0.2):
            tube = lw.Tube("25 mm", wall=lw.mm(wall), material="low-carbon steel")
            answer = order[lw.BentWall(tube, radius=radius).free_wrinkling(0.21).needs_groove]
            assert answer >= last
            last = answer
        assert last == 2


@pytest.mark.parametrize(
    ("make", "error", "code", "part"),
    [
        (lambda: bend(14.3), lw.QuantityError, "UNIT_MISSING", "field radius"),
        (lambda: bend("2 mm"), lw.InputError, "OUT_OF_RANGE", "field radius"),
        (lambda: bend("90 deg"), lw.InputError, "WRONG_KIND", "field radius"),
        (lambda: bend(None), lw.QuantityError, "WRONG_KIND", "field radius"),
        (lambda: bend(neutral_shift="3 mm"), lw.InputError, "OUT_OF_RANGE", "field neutral_shift"),
        (lambda: bend(neutral_shift=0.1), lw.QuantityError, "UNIT_MISSING", "field neutral_shift"),
        (lambda: bend().wall("outside", "uniaxial"), lw.UnknownNameError, "UNKNOWN_NAME", "field place"),
        (lambda: bend().wall("extrados", "free"), lw.UnknownNameError, "UNKNOWN_NAME", "field thinning"),
        (lambda: bend().range(""), lw.UnknownNameError, "UNKNOWN_NAME", "field place"),
        (lambda: bend().free_wrinkling(1.5), lw.InputError, "OUT_OF_RANGE", "field hardening_exponent"),
        (lambda: bend().free_wrinkling(float("nan")), lw.InputError, "NOT_A_NUMBER", "field hardening_exponent"),
        (lambda: bend().free_wrinkling("0.2"), lw.QuantityError, "WRONG_KIND", "field hardening_exponent"),
        (lambda: bend().free_wrinkling(True), lw.QuantityError, "WRONG_KIND", "field hardening_exponent"),
        (lambda: flat(0.1), lw.InputError, "OUT_OF_RANGE", "field flattening"),
        (lambda: flat("75 %"), lw.QuantityError, "WRONG_KIND", "field flattening"),
        (lambda: flat(0.75, "free"), lw.UnknownNameError, "UNKNOWN_NAME", "field kinematics"),
        (lambda: flat(9.0, make=lw.FlattenedSection.from_ovality), lw.InputError, "OUT_OF_RANGE", "field ovality"),
        (lambda: bend(radius="4.7 mm"), lw.InputError, "OUT_OF_RANGE", "field radius"),
        (lambda: bend(neutral_shift="-3 mm"), lw.InputError, "OUT_OF_RANGE", "field neutral_shift"),
        (lambda: lw.radius_rules(4.75), lw.QuantityError, "UNIT_MISSING", "field od"),
        (lambda: lw.radius_rules("0 mm"), lw.InputError, "OUT_OF_RANGE", "field od"),
    ],
)
def test_what_cannot_be_is_refused(make, error, code, part):
    with pytest.raises(error) as caught:
        make()
    assert (caught.value.code, caught.value.part) == (code, part)


def test_a_class_wants_its_own_kinds():
    for wrong in ("3/16 in", None, THIN.od):
        with pytest.raises(TypeError):
            lw.BentWall(wrong, radius="14.3 mm")
        with pytest.raises(TypeError):
            lw.FlattenedSection.from_flattening(wrong, 0.75, kinematics="sides held")
    with pytest.raises(TypeError):
        lw.FlattenedSection(TUBE, 0.75)


def test_rules_have_scope_and_source():
    rows = [*lw.radius_rules("4.75 mm"), *lw.section_limits()]
    assert len(rows) == 7 and all(row.scope and row.source.endswith(row.checked) for row in rows)
    assert [row.least for row in lw.radius_rules("4.75 mm") if "DIN 74234" in row.scope] == [lw.mm(25)]
    # UFC 4-159-01 table 5-4.
    reserves = [(row.radius_in_diameters, row.multiple) for row in lw.wall_reserves()]
    assert reserves == [(6, 1.06), (5, 1.08), (4, 1.14), (3, 1.25)]
    assert all(row.checked == "seen" and "5-4" in row.source for row in lw.wall_reserves())
