"""What a user writes, for the type checker alone: it must find nothing wrong here."""

from collections.abc import Iterator

import linewright as lw


class Quantity:
    """Any quantity that can be asked for its number in a unit."""

    def to_value(self, unit: str) -> float:
        return {"mm": 14.3, "deg": 90.0}[unit]


tube = lw.Tube("3/16 in", wall=lw.inch(0.028), material="low-carbon steel", min_radius=None)
bench = lw.Bench(
    former=lw.Former(as_formed=Quantity(), grip="20 mm"),
    flare_tool=[lw.FlareTool("double-45", clamp="13 mm", projection="4 mm", net_shortening="2 mm")],
    springback=lw.Springback.from_trials([("90 deg", lw.deg(86.5)), ("45 deg", "43.2 deg")]),
)
nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose=None)
path = lw.Path.from_legs(["55 mm", lw.mm(700)], bends=["30 deg"], radius=lw.mm(14.3))
end = lw.End(nut, "double-45", port=lw.Port("M10x1", "inverted-45", name="axle tee"))
line = lw.Line("T2", tube=tube, path=path, a=end, b=end)
plan = line.plan(bench, trim_end="B", reserve="20 mm", accept=[("NUT_ON_BEND@end A", "K. Doe", "tried")])

finished: float = plan.finished_length.mm
cut: float | None = None if plan.cut_length is None else plan.cut_length.mm
marks: list[lw.Length | None] = plan.marks
settings: list[float] = [setting.deg for setting in plan.settings if setting is not None]
need: lw.Length | None = plan.ends["A"].minima["flare after"]
card: str = plan.card()
mass: float | None = tube.mass_g("1 m")
arc: lw.Length = lw.arc(radius="14.3 mm", angle=lw.rad(1.57))


thread = lw.thread("M10x1-6H")
widest: lw.Length | None = thread.pitch_diameter.max
limits: lw.Limits = lw.thread("M10x1").limits("external")
measured = lw.identify_thread(
    major="9.45 mm +- 0.05 mm", side="external", pitches=(5, (lw.mm(5.3), "0.1 mm")), among=[thread, "3/8-24"]
)
shares: dict[str, float] = {str(candidate.thread): candidate.share for candidate in measured.candidates}
further: str = measured.advice if measured.next is None else measured.next.words
mating: lw.Mating = lw.mate("3/8-24 UNF-2A", thread)
unlimited: bool = mating.turns[0] is None
sheared: tuple[float, float] = lw.stripping(mating.male, thread, engagement="6 mm").external_mm2
table: lw.Table = lw.threads()
pitches: list[float] = table["pitch_mm"]


def rows() -> Iterator[dict[str, str | float | lw.Length]]:
    yield {"name": "T2", "od": lw.inch(0.1875), "wall": 0.7}


for sized in lw.size_lines(rows(), bench=bench, ignore=["remark"]):
    findings: list[tuple[str, lw.Length | lw.Angle | lw.Pressure | int | float | str | None]]
    findings = [(problem.id, problem.got) for problem in sized.problems]

checked = lw.LineDraft(od="3/16 in", legs=["55 mm", lw.mm(76)]).check()
again: lw.Plan | None = checked.line.plan(bench) if checked.line is not None else None
level: str = lw.CODES["UNIT_MISSING"].level

try:
    lw.thread("M10")
except lw.InputError as error:
    what: str = error.code
except (lw.UnknownNameError, lw.QuantityError) as error:
    number: int = error.number
