"""Lines of an invented trailer, and random ones, against a solid-modeling kernel, Open CASCADE.

The kernel is given corners and a radius. It rounds each corner by its own fillet algorithm and measures the wire by
its own integration, so neither a tangent length nor an arc of this library is used on its side.
"""

import math
import random

import linewright as lw
import pytest
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeWire
from OCP.BRepGProp import BRepGProp
from OCP.ChFi2d import ChFi2d_FilletAlgo
from OCP.gp import gp_Ax1, gp_Dir, gp_Pln, gp_Pnt, gp_Vec
from OCP.GProp import GProp_GProps
from OCP.TopExp import TopExp

RADIUS_MM = 14.3
NEAR_MM = 1e-6

# What was typed, and beside it the same in mm and degrees, worked out by hand (1 in = 25.4 mm).
LINES = {
    "T1": (
        ["6 in", "14 1/2 in", "1.85 m", "31 cm", "120 mm"],
        ["90 deg", "45 deg", "45 deg", "90 deg"],
        ["90 deg", "180 deg", "-90 deg"],
        [152.4, 368.3, 1850.0, 310.0, 120.0],
        [90.0, 45.0, 45.0, 90.0],
        [90.0, 180.0, -90.0],
    ),
    "T2": (
        ["55 mm", "28 in", "9 1/4 in", "76 mm"],
        ["30 deg", "60 deg", "90 deg"],
        ["180 deg", "90 deg"],
        [55.0, 711.2, 234.95, 76.0],
        [30.0, 60.0, 90.0],
        [180.0, 90.0],
    ),
    "T3": (
        ["55 mm", "31 1/2 in", "9 1/4 in", "76 mm"],
        ["30 deg", "60 deg", "90 deg"],
        ["-180 deg", "-90 deg"],
        [55.0, 800.1, 234.95, 76.0],
        [30.0, 60.0, 90.0],
        [-180.0, -90.0],
    ),
    "T4": (
        ["70 mm", "5 1/2 in", "3.5 in"],
        ["120 deg included", "0.25 turn"],
        ["3 o'clock"],
        [70.0, 139.7, 88.9],
        [60.0, 90.0],
        [90.0],
    ),
}


def path(name):
    legs, bends, rotations, *_ = LINES[name]
    return lw.Path.from_legs(legs, bends=bends, rotations=rotations, radius=f"{RADIUS_MM} mm")


def corners(name):
    *_, legs, bends, rotations = LINES[name]
    return corner_points(legs, bends, rotations)


def corner_points(legs, bends, rotations):
    """Corner points by the kernel's own rotations: along +x, the first bend toward +y, turns right-handed."""
    at, ahead, normal = gp_Vec(0, 0, 0), gp_Vec(1, 0, 0), gp_Vec(0, 0, 1)
    points = [at]
    for leg, bend, rotation in zip(legs, [*bends, None], [0.0, *rotations, None]):
        at = at.Added(ahead.Multiplied(leg))
        points.append(at)
        if bend is not None:
            normal = turned(normal, ahead, rotation)
            ahead = turned(ahead, normal, bend)
    return [gp_Pnt(p.X(), p.Y(), p.Z()) for p in points]


def turned(vector, axis, degrees):
    return vector.Rotated(gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(axis)), math.radians(degrees))


def wire(points, radius):
    """The line as edges: straights cut back by a fillet at each corner."""
    edges = []
    straight = BRepBuilderAPI_MakeEdge(points[0], points[1]).Edge()
    for before, corner, after in zip(points, points[1:], points[2:]):
        following = BRepBuilderAPI_MakeEdge(corner, after).Edge()
        normal = gp_Vec(before, corner).Crossed(gp_Vec(corner, after))
        fillet = ChFi2d_FilletAlgo(straight, following, gp_Pln(corner, gp_Dir(normal)))
        assert fillet.Perform(radius)
        arc = fillet.Result(corner, straight, following)
        assert not arc.IsNull()
        edges += [straight, arc]
        straight = following
    edges.append(straight)
    maker = BRepBuilderAPI_MakeWire()
    for edge in edges:
        maker.Add(edge)
        assert maker.IsDone()
    return maker.Wire(), edges


def length(shape):
    properties = GProp_GProps()
    BRepGProp.LinearProperties_s(shape, properties)
    return properties.Mass()


def coordinates(point):
    return (point.X(), point.Y(), point.Z())


def far_end(edges):
    return coordinates(BRep_Tool.Pnt_s(TopExp.LastVertex_s(edges[-1], True)))


@pytest.mark.parametrize("name", LINES)
def test_length_and_end_of_the_line_drawn_by_the_kernel(name):
    line = path(name)
    drawn, edges = wire(corners(name), RADIUS_MM)
    assert length(drawn) == pytest.approx(line.developed_length.mm, abs=NEAR_MM)
    assert far_end(edges) == pytest.approx([c.mm for c in line.end_point], abs=NEAR_MM)


@pytest.mark.parametrize("name", LINES)
def test_straights_and_arcs_one_by_one(name):
    line = path(name)
    _, edges = wire(corners(name), RADIUS_MM)
    measured = [length(edge) for edge in edges]
    assert measured[0::2] == pytest.approx([s.mm for s in line.straights], abs=NEAR_MM)
    arcs = [lw.arc(radius=f"{RADIUS_MM} mm", angle=angle).mm for angle in line.angles]
    assert measured[1::2] == pytest.approx(arcs, abs=NEAR_MM)


@pytest.mark.parametrize("name", LINES)
def test_the_corners_of_the_library_draw_the_same_line(name):
    line = path(name)
    ours = [tuple(c.mm for c in vertex) for vertex in line.vertices]
    theirs = [coordinates(point) for point in corners(name)]
    assert len(ours) == len(theirs)
    for our, their in zip(ours, theirs):
        assert our == pytest.approx(their, abs=NEAR_MM)
    drawn, _ = wire([gp_Pnt(*vertex) for vertex in ours], RADIUS_MM)
    assert length(drawn) == pytest.approx(line.developed_length.mm, abs=NEAR_MM)


@pytest.mark.parametrize("name", LINES)
def test_the_other_way_round_and_the_other_hand_are_as_long(name):
    line = path(name)
    for other in (line.reversed(), line.mirrored()):
        drawn, _ = wire([gp_Pnt(*(c.mm for c in vertex)) for vertex in other.vertices], RADIUS_MM)
        assert length(drawn) == pytest.approx(line.developed_length.mm, abs=NEAR_MM)


def random_line(source):
    """Legs long enough for the bends at both their ends, in mm and degrees."""
    count = source.randint(1, 6)
    radius = source.uniform(8.0, 40.0)
    bends = [source.uniform(5.0, 150.0) for _ in range(count)]
    rotations = [source.uniform(-179.0, 179.0) for _ in range(count - 1)]
    tangents = [0.0, *(radius * math.tan(math.radians(bend) / 2) for bend in bends), 0.0]
    legs = [source.uniform(20.0, 300.0) + a + b for a, b in zip(tangents, tangents[1:])]
    return legs, bends, rotations, radius


def end_direction(edges):
    """The direction in which the last edge ends, by the kernel."""
    curve = BRepAdaptor_Curve(edges[-1])
    point, ahead = gp_Pnt(), gp_Vec()
    curve.D1(curve.LastParameter(), point, ahead)
    return (ahead.X() / ahead.Magnitude(), ahead.Y() / ahead.Magnitude(), ahead.Z() / ahead.Magnitude())


@pytest.mark.parametrize("seed", range(200))
def test_length_and_end_of_a_random_line(seed):
    legs, bends, rotations, radius = random_line(random.Random(20260105 + seed))
    drawn, edges = wire(corner_points(legs, bends, rotations), radius)
    line = lw.Path.from_legs(
        [lw.mm(leg) for leg in legs],
        bends=[lw.deg(bend) for bend in bends],
        rotations=[lw.deg(rotation) for rotation in rotations],
        radius=lw.mm(radius),
    )
    assert length(drawn) == pytest.approx(line.developed_length.mm, abs=NEAR_MM)
    end = line.end_place
    assert far_end(edges) == pytest.approx([c.mm for c in end.point], abs=NEAR_MM)
    assert end_direction(edges) == pytest.approx(end.direction, abs=1e-9)
