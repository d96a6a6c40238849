"""What a user writes about flares, ports and hose ends, for the type checker alone: it must find nothing wrong here."""

import linewright as lw

nut = lw.Nut("M10x1", length="17 mm", bore="5 mm", nose="coned", thread_length=lw.mm(11), lead="0 mm")
port = lw.Port("M10x1", "inverted-45", name="tee", thread_depth="9.5 mm", seat_depth=lw.mm(10))
margin = lw.End(nut, "double-45", port=port).clamp_margin(lw.mm(0.7))
if margin is not None:
    showing: float = margin.threads_showing(lw.thread("M10x1").pitch)
    least: lw.Length = margin.least

form = lw.FlareForm("double-45", od="3/16 in", wall=lw.inch(0.028), diameter="6.9 mm")
out: lw.Length = form.stick_out("uniaxial")
size = lw.flare_size("double-45", "3/16 in")
diameters = None if size is None else (size.least, size.most)
for way in lw.flare_allowances("double-45", od="3/16 in", wall="0.028 in", diameters=diameters):
    name: str = way.way
    range_of_net: tuple[lw.Length, lw.Length] | None = way.net_shortening
    added: lw.Length | None = way.cut_allowance

seats: list[str] = lw.seats_of_thread(lw.thread("3/8-24"), "3/16 in")
tubes: list[float] = [row.od.mm for row in lw.usual_threads() if row.seat == "bubble"]
spanners: dict[str, float] = {row.on: row.across_flats.mm for row in lw.hexagons()}
covers: list[tuple[str, str]] = [(row.name, row.covers) for row in lw.flare_standards()]
buy: list[tuple[lw.Thread, int]] = [(row.thread, row.needed + row.spares) for row in lw.washers([("banjo", "M10x1")])]
problem: lw.Problem | None = lw.hose_end_check("banjo", lw.hose_end_washers("banjo"))
