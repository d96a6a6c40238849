"""Writes cases as the case files have them."""

UNITS = ("nmm", "mm", "deg")


def value(item):
    if isinstance(item, dict):
        return f"{{ {table(item)} }}"
    if isinstance(item, (list, tuple)):
        return f"[{', '.join(map(value, item))}]"
    if isinstance(item, bool):
        return str(item).lower()
    if isinstance(item, (str, int)):
        return f'"{item}"' if isinstance(item, str) else repr(item)
    return repr(float(f"{float(item):.14g}"))


def table(items):
    return ", ".join(f"{key} = {value(item)}" for key, item in items.items())


def case(operation, accept, expect, origin, near=1e-9):
    """A case; `near` is the tolerance of every figure, as a share of it above 1 and as it is below."""

    def tolerance(key, item):
        unit = next((unit for unit in UNITS if key.endswith(f"_{unit}")), "1")
        figures = [abs(float(x)) for x in (item if isinstance(item, list) else [item])]
        return f"{near * max([1.0, *figures]):.1g} {unit}"

    def is_figure(item):
        items = item if isinstance(item, list) else [item]
        return any(not isinstance(x, str) for x in items)

    lines = ["", "[[case]]", f'operation = "{operation}"', f"accept = {value(accept)}", f"expect = {value(expect)}"]
    given = {key: tolerance(key, item) for key, item in expect.items() if is_figure(item)}
    if given:
        lines.append(f"tolerance = {value(given)}")
    return "\n".join([*lines, f'origin = "{origin}"', ""])


def refused(operation, accept, code, origin):
    return case(operation, accept, {"error": code}, origin)


# Mechanics ---------------------------------------------------------------------------------------------------------
