"""Runs the cases about springback from mechanics and from trials, records, and test pieces."""

from typing import Any

import linewright as lw

# As in `case_files.OPERATIONS`: what each operation takes, and what it answers.
OPERATIONS = {
    "advice": ("trials prior* wanted half_width chance candidates", "angles_deg reaches_deg enough"),
    "calibration": ("trials tube other former date revision wanted", "record setting_deg is_for"),
    "former_of_groove": ("tube groove grip", "as_formed_mm"),
    "held_bend": ("tube radius arm* wanted*", "moment_nmm share_1 formed_mm constant_deg setting_deg basis"),
    "mechanics_prior": (
        "tube radius arm* strength_scatter modulus_scatter bend_scatter worth",
        "constants_deg proportionals_1 correlation_1 scatter_deg worth",
    ),
    "piece_fit": (
        "pieces angle chance",
        "radius_mm radius_error_mm radius_interval_mm scatter_mm gain_mm gain_interval_mm arc_radius_mm share_1 "
        "share_interval_1",
    ),
    "setting_range": ("tube radius arm* wanted strength_scatter modulus_scatter", "least_deg most_deg"),
    "trial_fit": (
        "trials prior* wanted chance",
        "constant_deg proportional setting_deg basis scatter_deg constant_error_deg proportional_error_1 "
        "reading_deg constant_interval_deg proportional_interval_1 setting_interval_deg next_bend_deg weight_1 outlier bent contradicted freedom",
    ),
}

Answer = dict[str, list[str]]
UNKNOWN = "unknown"


def numbers(*figures: float | None) -> list[str]:
    return [UNKNOWN if figure is None else repr(figure) for figure in figures]


def deg(*angles: lw.Angle | None) -> list[str]:
    return numbers(*(angle and angle.deg for angle in angles))


def mm(*lengths: lw.Length | None) -> list[str]:
    return numbers(*(length and length.mm for length in lengths))


def yes(flag: bool) -> list[str]:
    return [str(flag).lower()]


def metal_tube(od: str, wall: str, material: str | None = None, condition: str | None = None, **figures: Any) -> lw.Mechanics:
    if material is not None:
        return lw.Mechanics.of_metal(od, wall=wall, metal=lw.material_properties(material, condition=condition))
    if "source" not in figures:
        return lw.Mechanics(od, wall=wall, **figures)
    source = figures.pop("source")
    own = {key: figure if key == "hardening_exponent" else (figure, source) for key, figure in figures.items()}
    return lw.Mechanics.of_metal(od, wall=wall, metal=lw.Properties("own", **own))


def run_held_bend(tube: dict[str, Any], radius: str, wanted: str | None = None, **arm: str) -> Answer:
    bend = metal_tube(**tube).bend(radius)
    answer = {
        "moment_nmm": numbers(bend.moment_nmm),
        "share_1": numbers(bend.share),
        "formed_mm": mm(bend.formed_radius),
    }
    if wanted is None:
        return answer
    line = bend.springback(**arm)
    return answer | {
        "constant_deg": deg(line.constant),
        "setting_deg": deg(line.setting(wanted)),
        "basis": [line.basis],
    }


def run_setting_range(tube: dict[str, Any], wanted: str, **given: Any) -> Answer:
    least, most = metal_tube(**tube).setting_range(wanted, **given)
    return {"least_deg": deg(least), "most_deg": deg(most)}


def run_mechanics_prior(tube: dict[str, Any], **given: Any) -> Answer:
    prior = metal_tube(**tube).prior(**given)
    return {
        "constants_deg": deg(*prior.constant),
        "proportionals_1": numbers(*prior.proportional),
        "correlation_1": numbers(prior.correlation),
        "scatter_deg": deg(prior.scatter),
        "worth": [str(prior.worth)],
    }


def run_former_of_groove(tube: dict[str, Any], groove: str, grip: str) -> Answer:
    former = lw.Former.of_groove(groove, grip=grip, tube=metal_tube(**tube))
    assert former.groove == lw.read_length(groove) and former.grip == lw.read_length(grip)
    return {"as_formed_mm": mm(former.as_formed)}


def fit_of(trials: list[list[str]], prior: dict[str, Any] | None) -> lw.TrialFit:
    return lw.TrialFit(trials, prior=None if prior is None else lw.Prior(**prior))


def run_trial_fit(trials: list[list[str]], wanted: str, chance: float, prior: dict[str, Any] | None = None) -> Answer:
    fit = fit_of(trials, prior)
    line = fit.springback()
    setting = line.setting(wanted)
    constant_error, share_error = fit.standard_errors or (None, None)
    outlier, bent, contradicted = fit.outlier, fit.is_bent, fit.is_contradicted
    return {
        "constant_deg": deg(line.constant),
        "proportional": numbers(line.proportional),
        "setting_deg": deg(setting),
        "basis": [line.basis],
        "reading_deg": deg(fit.reading),
        "scatter_deg": deg(fit.scatter),
        "constant_error_deg": deg(constant_error),
        "proportional_error_1": numbers(share_error),
        "constant_interval_deg": deg(*fit.constant_interval(chance=chance) or (None,)),
        "proportional_interval_1": numbers(*fit.proportional_interval(chance=chance) or (None,)),
        "setting_interval_deg": deg(*fit.setting_interval(wanted, chance=chance) or (None,)),
        "next_bend_deg": deg(fit.next_bend(setting, chance=chance)),
        "weight_1": numbers(fit.weight_of_trials(setting)),
        "outlier": ["none" if outlier is None else str(outlier + 1)],
        "bent": [UNKNOWN] if bent is None else yes(bent),
        "contradicted": [UNKNOWN] if contradicted is None else yes(contradicted),
        "freedom": [str(fit.degrees_of_freedom)],
    }


def run_advice(trials: list[list[str]], wanted: list[str], prior: dict[str, Any] | None = None, **given: Any) -> Answer:
    found = fit_of(trials, prior).advice(wanted, **given)
    return {"angles_deg": deg(*found.angles), "reaches_deg": deg(found.reaches), "enough": yes(found.is_enough)}


def plain_tube(od: str, wall: str, material: str) -> lw.Tube:
    return lw.Tube(od, wall=wall, material=material)


def run_calibration(
    trials: list[list[str]], tube: list[str], other: list[str], wanted: str, **record: str
) -> Answer:
    first, second = plain_tube(*tube), plain_tube(*other)
    made = lw.Calibration(trials, tube=first, **record)
    line = made.springback()
    return {
        "record": [str(line.calibration)],
        "setting_deg": deg(line.setting(wanted)),
        "is_for": yes(made.is_for(second)),
    }


def piece_of(
    length: str, legs: list[str], angles: list[str], od: str | None = None, reading: str | None = None
) -> lw.TestPiece:
    if od is None:
        return lw.TestPiece(length, legs=legs, angles=angles, reading=reading)
    return lw.TestPiece.from_outer_legs(length, outer_legs=legs, angles=angles, od=od, reading=reading)


def run_piece_fit(pieces: list[dict[str, Any]], angle: str, chance: float) -> Answer:
    fit = lw.PieceFit([piece_of(**piece) for piece in pieces])
    stretch = fit.stretch(chance=chance)
    return {
        "radius_mm": mm(fit.radius),
        "radius_error_mm": mm(fit.radius_error),
        "radius_interval_mm": mm(*fit.radius_interval(chance=chance) or (None,)),
        "scatter_mm": mm(fit.scatter),
        "gain_mm": mm(fit.gain(angle)),
        "gain_interval_mm": mm(*fit.gain_interval(angle, chance=chance) or (None,)),
        "arc_radius_mm": mm(stretch and stretch.radius),
        "share_1": numbers(stretch and stretch.share),
        "share_interval_1": numbers(*(stretch and stretch.interval) or (None,)),
    }
