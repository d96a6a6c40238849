"""Proves where the bend table comes from: it is made again."""

import make_bend_reference as reference


def test_the_committed_table_is_what_the_maker_makes():
    committed = reference.TABLE.read_text(encoding="ascii").splitlines()
    made = reference.rows()
    different = [(n, a, b) for n, (a, b) in enumerate(zip(committed, made), 1) if a != b]
    assert different == []
    assert len(committed) == len(made) > 300
