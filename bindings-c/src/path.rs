//! The way of a line's center line: straights between bends.

pub mod place;

use crate::argument::{ArrayNames, fill, given, given_mut, item, known, list, put};
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length, quantities};
use linewright::units::{Length, mm, to_mm};
use linewright::{Bend, Error, Path, Point};
use std::mem::MaybeUninit;

/// A path: straights and bends in turn, from end A to end B.
#[derive(Debug)]
pub struct lw_path(pub(crate) Path);

fn put_path(path: Option<&mut MaybeUninit<Box<lw_path>>>, value: Path) -> Result<(), Error> {
    put(path, "path", Box::new(lw_path(value)))
}

unsafe fn lengths(pointer: *const lw_length, count: usize, argument: &str) -> Result<Vec<Length>, Error> {
    Ok(quantities(unsafe { list(pointer, count, argument) }?))
}

unsafe fn bends_of(
    bends: (*const lw_angle, usize),
    rotations: (*const lw_angle, usize),
    radii: (*const lw_length, usize),
) -> Result<Vec<Bend>, Error> {
    let angles = quantities(unsafe { list(bends.0, bends.1, "bends") }?);
    let rotations = quantities(unsafe { list(rotations.0, rotations.1, "rotations") }?);
    let radii = unsafe { lengths(radii.0, radii.1, "radii") }?;
    Bend::list(&angles, &rotations, &radii)
}

/// A path from its legs, corner to corner, A to B: one leg more than bends, a rotation for each bend but the first, and
/// one radius for all bends or one each. A rotation is the turn of the bend plane about the straight before the bend,
/// clockwise looking from A; a radius is the one as formed. Free it with lw_path_free.
///
/// Errors: LW_COUNT_MISMATCH, LW_NO_CORNER for a bend of 180 degrees or more, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_from_legs(
    legs: *const lw_length,
    n_legs: usize,
    bends: *const lw_angle,
    n_bends: usize,
    rotations: *const lw_angle,
    n_rotations: usize,
    radii: *const lw_length,
    n_radii: usize,
    path: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| {
        let legs = unsafe { lengths(legs, n_legs, "legs") }?;
        let bends = unsafe { bends_of((bends, n_bends), (rotations, n_rotations), (radii, n_radii)) }?;
        put_path(path, Path::from_legs(&legs, &bends)?)
    })
}

/// A path from its straights, tangent to tangent; otherwise as lw_path_from_legs. Free it with lw_path_free.
///
/// Errors: LW_COUNT_MISMATCH, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_from_straights(
    straights: *const lw_length,
    n_straights: usize,
    bends: *const lw_angle,
    n_bends: usize,
    rotations: *const lw_angle,
    n_rotations: usize,
    radii: *const lw_length,
    n_radii: usize,
    path: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| {
        let straights = unsafe { lengths(straights, n_straights, "straights") }?;
        let bends = unsafe { bends_of((bends, n_bends), (rotations, n_rotations), (radii, n_radii)) }?;
        put_path(path, Path::from_straights(&straights, &bends)?)
    })
}

/// A path from its legs as a tape over the outer edges measures them, outer corner to outer corner, on tube of diameter
/// od; otherwise as lw_path_from_legs. Free it with lw_path_free.
///
/// Errors: as lw_path_from_legs.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_from_outer_legs(
    legs: *const lw_length,
    n_legs: usize,
    bends: *const lw_angle,
    n_bends: usize,
    rotations: *const lw_angle,
    n_rotations: usize,
    radii: *const lw_length,
    n_radii: usize,
    od: lw_length,
    path: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| {
        let legs = unsafe { lengths(legs, n_legs, "legs") }?;
        let bends = unsafe { bends_of((bends, n_bends), (rotations, n_rotations), (radii, n_radii)) }?;
        put_path(path, Path::from_outer_legs(&legs, &bends, od.into())?)
    })
}

/// A path through points: start, corners, end. xyz_mm holds n_points times x, y, z in millimeters; every corner is
/// rounded with the one radius or with its own. Points that coincide or lie on a straight are no corners. Free it
/// with lw_path_free.
///
/// Errors: LW_PATH_DEGENERATE when the points make no line, LW_COUNT_MISMATCH for the radii, LW_NOT_A_NUMBER,
/// LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_from_vertices(
    xyz_mm: *const f64,
    n_points: usize,
    radii: *const lw_length,
    n_radii: usize,
    path: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| {
        let points = unsafe { list(xyz_mm.cast::<[f64; 3]>(), n_points, "xyz_mm") }?;
        let points: Vec<Point> = points.iter().map(|point| point.map(mm)).collect();
        let radii = unsafe { lengths(radii, n_radii, "radii") }?;
        put_path(path, Path::from_vertices(&points, &radii)?)
    })
}

/// The number of bends; there is one straight and one leg more.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_bend_count(
    path: Option<&lw_path>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(path, "path")?.0.bends().len()))
}

/// A straight, tangent to tangent. It is negative where two bends overlap that were given by legs or points.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_straight(
    path: Option<&lw_path>,
    index: usize,
    straight: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(straight, "straight", (*item(given(path, "path")?.0.straights(), index)?).into()))
}

/// A leg, corner to corner.
///
/// Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_leg(
    path: Option<&lw_path>,
    index: usize,
    leg: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(leg, "leg", (*item(&given(path, "path")?.0.legs()?, index)?).into()))
}

fn bend(path: Option<&lw_path>, index: usize) -> Result<&Bend, Error> {
    item(given(path, "path")?.0.bends(), index)
}

/// How far a bend is bent; 0 is straight.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_angle(
    path: Option<&lw_path>,
    index: usize,
    angle: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(angle, "angle", bend(path, index)?.angle().into()))
}

/// The turn of a bend's plane against the plane of the bend before it, above -180 and up to 180 degrees.
///
/// Errors: LW_NOT_KNOWN for the first bend, which has none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_rotation(
    path: Option<&lw_path>,
    index: usize,
    rotation: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let turn = bend(path, index)?.rotation();
        let rotation = given_mut(rotation, "rotation")?;
        rotation.write(known((index > 0).then_some(turn), "rotation")?.into());
        Ok(())
    })
}

/// The centerline radius of a bend, as formed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_radius(
    path: Option<&lw_path>,
    index: usize,
    radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(radius, "radius", bend(path, index)?.radius().into()))
}

/// Length along the center line: straights and arcs.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_developed_length(
    path: Option<&lw_path>,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", given(path, "path")?.0.developed_length().into()))
}

/// How much shorter the path is than its legs together.
///
/// Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_total_gain(
    path: Option<&lw_path>,
    gain: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(gain, "gain", given(path, "path")?.0.total_gain()?.into()))
}

/// The corner points: start, each corner, end, as x, y, z in millimeters, in an array with room for cap_points points
/// (three numbers each). need_points receives the number of points. The path starts at 0, 0, 0 along x and turns first
/// toward y.
///
/// Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_vertices_mm(
    path: Option<&lw_path>,
    xyz_mm: *mut f64,
    cap_points: usize,
    need_points: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let names = ArrayNames { buf: "xyz_mm", need: "need_points" };
    let points =
        || Ok(given(path, "path")?.0.vertices()?.into_iter().map(|point| point.map(to_mm)).collect());
    call(|| unsafe { fill(&names, xyz_mm.cast::<[f64; 3]>(), cap_points, need_points, points) })
}

/// The far end, as x, y, z in millimeters in an array of three, in the pose of lw_path_vertices_mm. Defined for bends
/// of any size.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_end_point_mm(path: Option<&lw_path>, xyz_mm: *mut f64) -> lw_status {
    call(|| {
        let point = given(path, "path")?.0.end_point().map(to_mm);
        // SAFETY: NULL, or an array of three that may hold anything.
        let xyz_mm = unsafe { xyz_mm.cast::<MaybeUninit<[f64; 3]>>().as_mut() };
        put(xyz_mm, "xyz_mm", point)
    })
}

/// The same line from B to A, as a new path. Rotations keep their signs. Free it with lw_path_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_reversed(
    path: Option<&lw_path>,
    reversed: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| put(reversed, "reversed", Box::new(lw_path(given(path, "path")?.0.reversed()))))
}

/// The other hand, as a new path: all rotations negated. Free it with lw_path_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_mirrored(
    path: Option<&lw_path>,
    mirrored: Option<&mut MaybeUninit<Box<lw_path>>>,
) -> lw_status {
    call(|| put(mirrored, "mirrored", Box::new(lw_path(given(path, "path")?.0.mirrored()))))
}

/// Frees a path. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_free(path: Option<Box<lw_path>>) {
    drop(path);
}
