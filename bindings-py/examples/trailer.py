"""An invented small farm trailer: four brake lines, measured with two tapes, partly in inches.

Prints cut list, marks, settings, cards, findings and assumptions: the same figures, to the last digit, as the Rust and
the C program of the same name.
"""

import linewright as lw

# The same for every line.
COMMON = {
    "od": "3/16 in",
    "wall": "0.028 in",
    "material": "low-carbon steel",
    "radius": "14.3 mm",
    "a_nut_length": "17 mm",
    "a_nut_bore": "5.0 mm",
    "b_nut_length": "17 mm",
    "b_nut_bore": "5.0 mm",
}

# What was written down at the trailer: a field and what was typed into it.
LINES = [
    {
        "name": "T1 coupling to frame hose",
        "legs": "6 in; 14 1/2 in; 1.85 m; 31 cm; 120 mm",
        "bends": "90 deg; 45 deg; 45 deg; 90 deg",
        "rotations": "90 deg; 180 deg; -90 deg",
        "a_port": "coupling cylinder",
        "a_port_thread": "7/16-24",
        "a_seat": "inverted-45",
        "a_thread": "7/16-24",
        "a_nose": "coned",
        "a_flare": "double-45",
        "b_port": "frame hose",
        "b_port_thread": "M10x1",
        "b_seat": "inverted-45",
        "b_thread": "M10x1",
        "b_nose": "coned",
        "b_flare": "double-45",
    },
    {
        "name": "T2 axle tee to left cylinder",
        "legs": "55 mm; 28 in; 9 1/4 in; 76 mm",
        "bends": "30 deg; 60 deg; 90 deg",
        "rotations": "180 deg; 90 deg",
        "a_port": "axle tee",
        "a_port_thread": "M10x1",
        "a_seat": "inverted-45",
        "a_thread": "M10x1",
        "a_nose": "coned",
        "a_flare": "double-45",
        "b_port": "left cylinder",
        "b_port_thread": "3/8-24",
        "b_seat": "unknown",
        "b_thread": "3/8-24",
        "b_nose": "coned",
        "b_flare": "double-45",
    },
    {
        "name": "T3 axle tee to right cylinder",
        "legs": "55 mm; 31 1/2 in; 9 1/4 in; 76 mm",
        "bends": "30 deg; 60 deg; 90 deg",
        "rotations": "-180 deg; -90 deg",
        "a_port": "axle tee",
        "a_port_thread": "M10x1",
        "a_seat": "inverted-45",
        "a_thread": "M10x1",
        "a_nose": "coned",
        "a_flare": "double-45",
        "b_port": "right cylinder",
        "b_port_thread": "3/8-24",
        "b_seat": "inverted-45",
        "b_thread": "3/8-24",
        "b_nose": "coned",
        "b_flare": "double-45",
    },
    {
        "name": "T4 hose bracket to axle tee",
        "legs": "70 mm; 5 1/2 in; 3.5 in",
        "bends": "120 deg included; 0.25 turn",
        "rotations": "3 o'clock",
        "a_port": "hose bracket",
        "a_port_thread": "M10x1",
        "a_seat": "bubble",
        "a_thread": "M10x1",
        "a_nose": "flat",
        "a_flare": "bubble",
        "b_port": "axle tee",
        "b_port_thread": "M10x1",
        "b_seat": "inverted-45",
        "b_thread": "M10x1",
        "b_nose": "coned",
        "b_flare": "double-45",
    },
]


def bench() -> lw.Bench:
    """The workshop's tools, from its own test pieces."""
    double = lw.FlareTool("double-45", clamp="13 mm", projection="4 mm", net_shortening="2 mm", cut_spare="3 mm")
    bubble = lw.FlareTool("bubble", clamp="13 mm", projection="4 mm", net_shortening="1.6 mm", cut_spare="3 mm")
    trials = lw.Springback.from_trials([("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")])
    former = lw.Former(as_formed="14.3 mm", grip="20 mm")
    return lw.Bench(former=former, flare_tool=[double, bubble], springback=trials, revision="r6")


def in_mm(length: lw.Length | None) -> str:
    return "not known" if length is None else f"{length.mm:.4f} mm"


def in_deg(angle: lw.Angle | None) -> str:
    return "not known" if angle is None else f"{angle.deg:.4f} deg"


def bare_mm(length: lw.Length | None) -> str:
    return "not known" if length is None else f"{length.mm:.4f}"


def print_plan(plan: lw.Plan) -> None:
    """One line of the cut list and of each table below it."""
    print(plan.line.name)
    print(f"  finished {in_mm(plan.finished_length)}, cut {in_mm(plan.cut_length)}")
    for what, length in plan.cut_terms or []:
        print(f"    {what:<32} {length.mm:>10.4f} mm")
    print(f"  marks from {plan.datum}")
    for bend in plan.bends:
        print(f"    bend {bend.number}: mark {in_mm(bend.mark)}, bend {in_deg(bend.angle)}, set {in_deg(bend.setting)}")
    for side, end in plan.ends.items():
        needs = " / ".join(bare_mm(need) for need in end.minima.values())
        print(f"  end {side}: straight {in_mm(end.straight)}, needs {needs} mm, flared {end.order}")
    for problem in plan.problems:
        print(f"  {problem}")
    for assumption in plan.assumptions:
        print(f"  assumed {assumption}")
    print()


def main() -> None:
    sized = lw.size_lines([COMMON | line for line in LINES], bench=bench())
    plans = [line.plan for line in sized if line.plan is not None]
    for line in sized:
        if line.plan is not None:
            print_plan(line.plan)
        else:
            for problem in line.problems:
                print(f"row {line.row}: {problem}")
    total = sum(plan.cut_length.mm for plan in plans if plan.cut_length is not None)
    print(f"tube for {len(sized)} lines: {total:.4f} mm")
    print()
    for plan in plans:
        print(plan.card())


if __name__ == "__main__":
    main()
