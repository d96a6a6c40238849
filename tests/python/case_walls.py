"""Runs the cases about the wall of a bend and its section."""

from typing import Any

import linewright as lw

# As in `case_files.OPERATIONS`: what each operation takes, and what it answers.
OPERATIONS = {
    "bent_wall": (
        "od wall radius neutral_shift* plastic*",
        "extrados_mm intrados_mm side_mm uniaxial_mm stretch_1 neutral_shift_mm",
    ),
    "free_wrinkling": ("od wall radius exponent", "compression_1 critical_1 needs_groove words"),
    "section": (
        "od wall measure share kinematics",
        "largest_mm smallest_mm apart_mm ovality_1 flattening_1 bore_mm2 bore_share_1 bore_loss_1",
    ),
}

Answer = dict[str, list[str]]


def steel(od: str, wall: str) -> lw.Tube:
    return lw.Tube(od, wall=wall, material="low-carbon steel")


def run_bent_wall(od: str, wall: str, plastic: bool = False, **bend: str) -> Answer:
    bent = lw.BentWall(steel(od, wall), **bend)
    if plastic:
        bent = bent.with_plastic_neutral_axis()
    places = ("extrados", "intrados", "side")
    ranges = {f"{place}_mm": [repr(length.mm) for length in bent.range(place)] for place in places}
    assert (bent.extrados, bent.intrados) == (bent.range("extrados"), bent.range("intrados"))
    return ranges | {
        "uniaxial_mm": [repr(bent.wall(place, "uniaxial").mm) for place in places],
        "stretch_1": [repr(bent.outer_stretch)],
        "neutral_shift_mm": [repr(bent.neutral_shift.mm)],
    }


def run_free_wrinkling(od: str, wall: str, radius: str, exponent: float) -> Answer:
    found = lw.BentWall(steel(od, wall), radius=radius).free_wrinkling(exponent)
    return {
        "compression_1": [repr(found.compression)],
        "critical_1": [repr(found.critical)],
        "needs_groove": ["unknown" if found.needs_groove is None else str(found.needs_groove).lower()],
        "words": [found.words],
    }


def run_section(od: str, wall: str, measure: str, share: float, **section: Any) -> Answer:
    make = lw.FlattenedSection.from_ovality if measure == "ovality" else lw.FlattenedSection.from_flattening
    made = make(steel(od, wall), share, **section)
    return {
        "largest_mm": [repr(made.largest.mm)],
        "smallest_mm": [repr(made.smallest.mm)],
        "apart_mm": [repr(made.out_of_round.mm)],
        "ovality_1": [repr(made.ovality)],
        "flattening_1": [repr(made.flattening)],
        "bore_mm2": [repr(made.bore_area_mm2)],
        "bore_share_1": [repr(made.bore_share)],
        "bore_loss_1": [repr(made.bore_loss)],
    }
