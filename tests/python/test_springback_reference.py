"""Proves where the tables of springback come from: each is made again by its recipe."""

import make_columns_reference
import make_fit_reference
import make_pieces_reference
import make_springback_reference
import pytest

MAKERS = [make_columns_reference, make_fit_reference, make_pieces_reference, make_springback_reference]
# These go through linear solvers and root finders, whose last digits are the platform's; the rest is exact.
SAME = {make_fit_reference: 1e-9, make_pieces_reference: 1e-9}


@pytest.mark.parametrize("maker", MAKERS, ids=lambda maker: maker.__name__)
def test_the_committed_table_is_what_the_maker_makes(maker):
    committed = maker.TABLE.read_text(encoding="ascii").splitlines()
    made = maker.rows()
    assert len(committed) == len(made)
    for old, new in zip(committed, made):
        if old == new:
            continue
        assert maker in SAME, f"{old} and {new}"
        for a, b in zip(old.split(","), new.split(","), strict=True):
            assert a == b or float(a) == pytest.approx(float(b), rel=SAME[maker], abs=SAME[maker])


def test_the_columns_have_every_kind():
    """Elastic throughout, yielding in the wall only, and with a core within the bore."""
    kinds = {"elastic": 0, "wall": 0, "bore": 0}
    for line in make_columns_reference.TABLE.read_text(encoding="ascii").splitlines()[1:]:
        kinds[make_columns_reference.kind(tuple(map(float, line.split(",")))[:6])] += 1
    assert min(kinds.values()) >= 30, kinds
