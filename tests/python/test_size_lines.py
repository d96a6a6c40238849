"""Many lines at once, from whatever a table is."""

import datetime
import signal
import subprocess
import sys
import threading
import time

import linewright as lw
import numpy as np
import pandas as pd
import pytest


class Polars:
    """The part of a polars frame that counts."""

    def __init__(self, rows):
        self.rows = rows

    def to_dict(self):
        raise AssertionError("a dict of columns is not asked for")

    def iter_rows(self, *, named):
        assert named
        return iter(self.rows)


class Arrow:
    """The part of a pyarrow table that counts."""

    def __init__(self, rows):
        self.to_pylist = lambda: rows


@pytest.mark.parametrize("table", [list, tuple, iter, Polars, Arrow, pd.DataFrame])
def test_every_kind_of_table(table, fields, bench, plan):
    sized = lw.size_lines(table([fields, fields]), bench=bench)
    assert [(one.row, one.name, one.plan) for one in sized] == [(1, "T2", plan), (2, "T2", plan)]
    assert sized[0].problems == plan.problems


def test_a_bad_row_never_stops_the_rest(fields, bench, plan):
    frame = pd.DataFrame([fields] * 7).astype(object)
    frame.loc[1, "od"] = 316
    frame.loc[2, "od"] = 4.75
    frame.loc[3, "wall"] = np.nan
    frame.loc[4, "od"] = pd.Timestamp("2026-03-16")
    frame.loc[5, "material"] = pd.NA
    sized = lw.size_lines(frame, bench=bench)
    assert [one.plan == plan for one in sized] == [True, False, False, False, False, False, True]
    assert [[problem.id for problem in one.problems] for one in sized[1:6]] == [
        ["UNIT_MISSING@field od"],
        ["UNIT_MISSING@field od"],
        ["FIELD_MISSING@field wall"],
        ["DATE_IN_SIZE@field od"],
        ["FIELD_MISSING@field material"],
    ]
    assert [one.row for one in sized] == [1, 2, 3, 4, 5, 6, 7]


@pytest.mark.parametrize("missing", [None, np.nan, float("nan"), np.float32("nan"), pd.NA, pd.NaT, ""])
def test_a_missing_value_is_an_empty_field(missing, fields, bench, plan):
    (sized,) = lw.size_lines([{**fields, "min_radius": missing}], bench=bench)
    assert sized.plan == plan


@pytest.mark.parametrize(
    ("value", "typed"),
    [
        ("3/16 in", "3/16 in"),
        (316, "316"),
        (np.int64(316), "316"),
        (316.0, "316"),
        (np.float32(4.5), "4.5"),
        (True, "True"),
        (lw.inch(0.1875), "4.7625 mm"),
        (lw.deg(86.5), "86.5 deg"),
        (["55 mm", lw.mm(76)], "55 mm; 76 mm"),
        (("30 deg", 60), "30 deg; 60"),
        (np.array(["55 mm", "76 mm"]), "55 mm; 76 mm"),
        (10**5000, "<int>"),
        ("\ud800 mm", "\N{REPLACEMENT CHARACTER}" * 3 + " mm"),
    ],
    ids=lambda value: type(value).__name__,
)
def test_what_is_typed_into_a_field(value, typed):
    assert lw.LineDraft(legs=value).typed == {"legs": typed}


@pytest.mark.parametrize(
    "cell", [pd.Timestamp("2026-03-16"), datetime.datetime(2026, 3, 16, 12, 5), datetime.date(2026, 3, 16)]
)
def test_a_size_that_a_sheet_made_a_date_is_no_size(cell, fields, bench):
    (sized,) = lw.size_lines([{**fields, "od": cell}], bench=bench)
    assert sized.plan is None
    assert [problem.id for problem in sized.problems] == ["DATE_IN_SIZE@field od"]


def test_quantities_of_other_packages_keep_their_unit(fields, bench, plan):
    class Quantity:
        def __init__(self, number, unit):
            self.number, self.unit = number, unit

        def to_value(self, unit):
            if unit != self.unit:
                raise ValueError(unit)
            return self.number

    row = {**fields, "od": Quantity(4.7625, "mm"), "bends": [Quantity(angle, "deg") for angle in (30, 60, 90)]}
    (sized,) = lw.size_lines([row], bench=bench)
    assert sized.plan == plan


def test_an_angle_in_radians_is_read_back_without_loss():
    angle = lw.rad(0.1)
    assert lw.read_angle(lw.LineDraft(bends=angle).typed["bends"]) == angle


def test_an_unknown_name_refuses_its_row_and_no_other(fields, bench, plan):
    row = {**fields, "mechanic": "K. Doe", 7: "x"}
    before, refused, after = lw.size_lines([fields, row, fields], bench=bench)
    assert before.plan == after.plan == plan and refused.plan is None and refused.row == 2
    assert [problem.id for problem in refused.problems[:2]] == ["UNKNOWN_NAME@field mechanic", "UNKNOWN_NAME@field 7"]
    assert "a_nut_length" in refused.problems[0].need
    (sized,) = lw.size_lines([row], bench=bench, ignore=["mechanic", "7"])
    assert sized.plan == plan
    with pytest.raises(TypeError):
        lw.size_lines([row], bench=bench, ignore="mechanic")
    with pytest.raises(lw.UnknownNameError):
        lw.LineDraft(mechanic="K. Doe")


@pytest.mark.parametrize("wrong", [None, 3, "T2", b"T2", {"name": "T2"}, ["T2"], [None], [3]])
def test_what_is_no_table(wrong, bench):
    with pytest.raises(lw.QuantityError) as caught:
        lw.size_lines(wrong, bench=bench)
    assert caught.value.code == "WRONG_KIND" and caught.value.part.startswith("field rows")


def test_no_rows_give_none(bench):
    assert lw.size_lines([], bench=bench) == []
    assert lw.size_lines(pd.DataFrame(), bench=bench) == []


def test_the_options_are_those_of_a_single_plan(fields, line, bench):
    options = {"trim_end": "A", "reserve": "20 mm", "accept": [("NUT_ON_BEND@end A", "K. Doe", "seen")]}
    (sized,) = lw.size_lines([fields], bench=bench, **options)
    assert sized.plan == line.plan(bench, **options)
    with pytest.raises(lw.QuantityError):
        lw.size_lines([fields], bench=bench, reserve=20)


def test_rows_are_numbered_over_all_stretches(fields, bench, plan):
    sized = lw.size_lines([fields] * 4500, bench=bench)
    assert [one.row for one in sized] == list(range(1, 4501))
    assert sized[0].plan == sized[2500].plan == sized[-1].plan == plan


def test_other_threads_run_while_it_computes(fields, bench):
    ticks, done = [], threading.Event()

    def tick():
        while not done.is_set():
            ticks.append(time.perf_counter())
            time.sleep(0.0005)

    long = {**fields, "legs": "; ".join(["100 mm"] * 1000), "bends": "; ".join(["30 deg"] * 999)}
    long["rotations"] = "; ".join(["0 deg"] * 998)
    rows = [long] * 40
    thread = threading.Thread(target=tick)
    thread.start()
    before = time.perf_counter()
    sized = lw.size_lines(rows, bench=bench)
    after = time.perf_counter()
    done.set()
    thread.join()
    assert all(one.plan for one in sized)
    assert len([tick for tick in ticks if before < tick < after]) > 5


def test_an_interrupt_ends_a_long_call(fields, bench):
    def interrupted(number, frame):
        raise KeyboardInterrupt

    before = signal.signal(signal.SIGINT, interrupted)
    timer = threading.Timer(0.05, signal.raise_signal, [signal.SIGINT])
    try:
        timer.start()
        with pytest.raises(KeyboardInterrupt):
            lw.size_lines([fields] * 100_000, bench=bench)
    finally:
        timer.cancel()
        signal.signal(signal.SIGINT, before)


def test_neither_numpy_nor_pandas_is_imported():
    program = "import sys, linewright; print([name for name in ('numpy', 'pandas', 'pint') if name in sys.modules])"
    answer = subprocess.run([sys.executable, "-P", "-c", program], capture_output=True, text=True, check=True)
    assert answer.stdout.strip() == "[]"
