"""Strict reader of the case files: what nobody reads is an error."""

import tomllib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import case_flares
import case_filled
import case_springback
import case_walls

CASES = Path(__file__).resolve().parents[1] / "cases"

PATH = "legs* straights* outer_legs* od* bends* rotations* radius* making*"
# What each operation takes (a star: may be missing), and what it answers.
OPERATIONS = {
    "read_length": ("text", "value_mm"),
    "read_angle": ("text", "value_deg"),
    "read_pressure": ("text", "value_mpa"),
    "thread": ("text", "designation"),
    "thread_form": ("text", "diameter_mm pitch_mm height_mm lead_deg stress_area_mm2 side class"),
    "limits": (
        "text side",
        "major_min_mm major_max_mm pitch_min_mm pitch_max_mm minor_min_mm minor_max_mm class assumed checked",
    ),
    "mate": (
        "male female",
        "starts feel level lookalike overlap_worst_mm overlap_best_mm lengths_mm verdict",
    ),
    "stripping": ("male female engagement", "engaged_mm external_mm2 internal_mm2 share_1"),
    "identify": (
        "side diameter* pitches* pitch_length* per_inch* wear* list*",
        "candidates nearest next ten_pitches_mm",
    ),
    "bend": ("radius angle", "arc_mm tangent_length_mm gain_mm"),
    "tube": ("od wall material length", "bore_mm volume_ml mass_g"),
    "springback": ("trials wanted", "setting_deg constant_deg proportional"),
    "path": (
        PATH,
        "developed_length_mm straights_mm angles_deg rotations_deg end_point_mm reversed_rotations_deg "
        "mirrored_rotations_deg legs_mm total_gain_mm extent_low_mm extent_high_mm",
    ),
    "read_rotation": ("text", "value_deg"),
    "tolerance": ("text", "value_mm plus_minus_mm"),
    "place": ("path station", "point_mm direction_1"),
    "nut": ("length bore od across_flats*", "tightest_curve_mm across_corners_mm"),
    "tape": (
        "measured bends laid od chance radius* total_angle* flares*",
        "length_mm rounded_mm sigma_mm floor_acts",
    ),
    "clips": ("path spacing from_end", "stations_mm"),
    "clips_to_buy": ("needed reusable", "buy spares"),
    "flare_trial": ("before after", "net_shortening_mm"),
    **case_flares.OPERATIONS,
    **case_springback.OPERATIONS,
    **case_walls.OPERATIONS,
    **case_filled.OPERATIONS,
    "turn": ("rotation bend", "words clock inclinometer_deg"),
    "vertices": ("points radius*", "straights_mm angles_deg rotations_deg developed_length_mm"),
    "plan": (
        "line bench trim_end* reserve* accepted*",
        "finished_length_mm cut_length_mm first trim_end datum draft marks_mm from_raw_mm from_flare_mm settings_deg "
        "minima_a_mm minima_b_mm shortfalls_a_mm shortfalls_b_mm problems assumptions steps loading forgiving "
        "from_last_mm tape_checks tape_changes_mm hand",
    ),
}
CASE = "operation accept expect origin tolerance* known_failing*"
BENCH = "former grip trials* clearance* back_off* flare_tools*"
FLARE_TOOL = "flare clamp projection net_shortening* cut_spare*"


@dataclass(frozen=True)
class Case:
    name: str
    operation: str
    accept: dict[str, Any]
    expect: dict[str, Any]
    tolerances: dict[str, float]
    known_failing: str | None


def check_keys(table: dict[str, Any], known: str, where: str) -> None:
    needed = {key for key in known.split() if not key.endswith("*")}
    allowed = {key.rstrip("*") for key in known.split()}
    if not needed <= table.keys() <= allowed:
        raise ValueError(f"{where}: has {sorted(table)}, but its keys are {known}")


def unit_of(key: str) -> str | None:
    """The unit a key ends with; what is counted or named has none."""
    if key == "proportional":
        return "1"
    units = ("nmm", "mm2", "mm", "deg", "mpa", "ml", "m_per_s", "hz", "g", "1")
    return next((unit for unit in units if key.endswith(f"_{unit}")), None)


def read_tolerance(text: str, key: str, where: str) -> float:
    number, _, unit = text.partition(" ")
    if unit != unit_of(key) or not 0 <= float(number) < float("inf"):
        raise ValueError(f"{where}: {text!r} is no tolerance of {key}")
    return float(number)


def tolerances(table: dict[str, Any], where: str) -> dict[str, float]:
    expect, given = table["expect"], table.get("tolerance")
    figures = [key for key, value in expect.items() if unit_of(key) and any(is_number(item) for item in items(value))]
    if given is None:
        given = {}
    elif isinstance(given, str):
        given = {key: given for key in figures} or {"": given}
    if given.keys() != set(figures):
        raise ValueError(f"{where}: tolerances for {sorted(given)}, figures in {sorted(figures)}")
    return {key: read_tolerance(text, key, where) for key, text in given.items()}


def items(value: Any) -> list[Any]:
    return value if isinstance(value, list) else [value]


def is_number(item: Any) -> bool:
    return isinstance(item, (int, float)) and not isinstance(item, bool)


def read_bench(bench: dict[str, Any], where: str) -> dict[str, Any]:
    check_keys(bench, BENCH, where)
    for tool in bench.get("flare_tools", []):
        check_keys(tool, FLARE_TOOL, where)
    return bench


def read_case(table: dict[str, Any], benches: dict[str, Any], name: str) -> Case:
    check_keys(table, CASE, name)
    takes, answers = OPERATIONS[table["operation"]]
    accept, expect = dict(table["accept"]), table["expect"]
    check_keys(accept, takes, name)
    if "path" in accept:
        check_keys(accept["path"], PATH, name)
    if "bench" in accept:
        accept["bench"] = benches[accept["bench"]]
    if not expect or not table["origin"].strip() or not table.get("known_failing", "a reason").strip():
        raise ValueError(f"{name}: nothing expected, no origin, or no reason for failing")
    if "error" in expect:
        check_keys(expect, "error", name)
    else:
        check_keys(expect, " ".join(f"{key}*" for key in answers.split()), name)
    return Case(name, table["operation"], accept, expect, tolerances(table, name), table.get("known_failing"))


def read_file(name: str, text: str) -> list[Case]:
    file = tomllib.loads(text)
    check_keys(file, "benches* case", name)
    benches = {key: read_bench(bench, f"{name}, bench {key}") for key, bench in file.get("benches", {}).items()}
    if not file["case"]:
        raise ValueError(f"{name}: no cases")
    return [read_case(table, benches, f"{name}#{index}") for index, table in enumerate(file["case"])]


def read_all() -> list[Case]:
    paths = sorted(CASES.iterdir())
    if not paths or any(path.suffix != ".toml" for path in paths):
        raise ValueError(f"{CASES}: no case files, or others among them")
    return [case for path in paths for case in read_file(path.stem, path.read_text(encoding="utf-8"))]
