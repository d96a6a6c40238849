"""Runs the cases about flares and hose ends."""

import linewright as lw

STRETCHES = ("keeps length", "uniaxial", "keeps wall")
# As in `case_files.OPERATIONS`: what each operation takes, and what it answers.
OPERATIONS = {
    "flare_form": ("flare od wall diameter", "stick_out_mm height_mm net_mm"),
    "flare_size": ("flare od", "diameter_mm"),
    "hose_end": ("name washers", "sealed_by needed problem"),
    "washers": ("ends", "list"),
}

Answer = dict[str, list[str]]


def run_flare_form(flare: str, **sizes: str) -> Answer:
    form = lw.FlareForm(flare, **sizes)
    return {
        "stick_out_mm": [repr(form.stick_out(stretch).mm) for stretch in STRETCHES],
        "height_mm": [repr(form.height.mm)],
        "net_mm": [repr(form.net_shortening(stretch).mm) for stretch in STRETCHES],
    }


def run_flare_size(flare: str, od: str) -> Answer:
    size = lw.flare_size(flare, od)
    return {"diameter_mm": ["unknown"] if size is None else [repr(size.least.mm), repr(size.most.mm)]}


def run_hose_end(name: str, washers: int) -> Answer:
    problem = lw.hose_end_check(name, washers)
    return {
        "sealed_by": [lw.hose_end_sealed_by(name)],
        "needed": [str(lw.hose_end_washers(name))],
        "problem": ["none" if problem is None else problem.code],
    }


def run_washers(ends: list[list[str]]) -> Answer:
    return {"list": [f"{row.thread} {row.needed}+{row.spares}" for row in lw.washers(ends)]}
