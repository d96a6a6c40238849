//! From a path to its points and back.
//!
//! Pose: the line starts at the origin along +x, and its first bend turns toward +y. The rotation of a bend turns its
//! plane right-handed about the straight before it; the bend itself turns the direction right-handed about the
//! normal of that plane.

use super::vec3::{Vec3, add, cross, dot, norm, scale, sub, turn, unit};
use super::{Path, tangents_mm};
use crate::bend::Bend;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math;
use crate::problem::{Part, Problem, Value};
use crate::units::{Length, deg, mm, rad, to_deg, to_mm, to_rad};

/// A point: x, y, z.
pub type Point = [Length; 3];

/// Points nearer than this are one point (ours, no source).
const COINCIDENT_MM: f64 = 1e-6;
/// A corner flatter than this is no corner but a point on a straight (ours, no source).
const COLLINEAR_DEG: f64 = 1e-7;

/// Where a line is and where it heads.
#[derive(Clone, Copy)]
pub(super) struct Frame {
    pub(super) at: Vec3,
    pub(super) ahead: Vec3,
    pub(super) normal: Vec3,
}

impl Frame {
    pub(super) const START: Frame = Frame { at: [0.0; 3], ahead: [1.0, 0.0, 0.0], normal: [0.0, 0.0, 1.0] };

    pub(super) fn advance(&mut self, length_mm: f64) {
        self.at = add(self.at, scale(self.ahead, length_mm));
    }

    /// Turns the plane of the coming bend.
    pub(super) fn rotate(&mut self, bend: &Bend) {
        let angle = to_rad(bend.rotation());
        self.normal = unit(turn(self.normal, self.ahead, math::sin(angle), math::cos(angle)));
    }

    /// Turns the direction by the bend.
    fn deflect(&mut self, bend: &Bend) {
        let angle = to_rad(bend.angle());
        self.ahead = unit(turn(self.ahead, self.normal, math::sin(angle), math::cos(angle)));
    }

    /// Goes along the arc of a bend as far as `angle` radians.
    pub(super) fn swing(&mut self, radius_mm: f64, angle: f64) {
        let center = add(self.at, scale(cross(self.normal, self.ahead), radius_mm));
        self.ahead = unit(turn(self.ahead, self.normal, math::sin(angle), math::cos(angle)));
        self.at = sub(center, scale(cross(self.normal, self.ahead), radius_mm));
    }
}

pub(super) fn point(at: Vec3) -> Point {
    at.map(mm)
}

impl Path {
    /// A path through corner points, each corner rounded with one radius for all or a radius of its own.
    ///
    /// Points that coincide are merged and the radius of the first counts; a point on a straight is no corner and its
    /// radius is dropped with it.
    ///
    /// # Errors
    /// `PATH_DEGENERATE` for fewer than two different points, and for a point from which the line doubles straight
    /// back; `COUNT_MISMATCH` for radii; `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn from_vertices(points: &[Point], radii: &[Length]) -> Result<Path, Error> {
        let corners = points.len().saturating_sub(2);
        if points.len() > bounds::MOST_BENDS + 2
            || (corners > 0 && radii.len() != 1 && radii.len() != corners)
        {
            return Err(Problem::new(Code::CountMismatch, Part::Field("radii".to_owned()))
                .got(Value::Count(radii.len()))
                .need(Value::Count(corners))
                .why(format!("{} points have {corners} corners", points.len()))
                .into());
        }
        for radius in radii {
            bounds::RADIUS.length(*radius)?;
        }
        let mut kept: Vec<(Vec3, Length)> = Vec::new();
        for (i, at) in points.iter().enumerate() {
            for coordinate in at {
                bounds::COORDINATE
                    .length(*coordinate)
                    .map_err(|e| e.at(Part::Field(format!("point {}", i + 1))))?;
            }
            let radius = match radii {
                [one] => *one,
                many if corners > 0 => many[i.clamp(1, corners) - 1],
                // Without a corner there is nothing to round.
                _ => mm(1.0),
            };
            let at = at.map(to_mm);
            if kept.last().is_none_or(|(before, _)| norm(sub(at, *before)) > COINCIDENT_MM) {
                kept.push((at, radius));
            }
        }
        drop_collinear(&mut kept)?;
        if kept.len() < 2 {
            return Err(degenerate(points.len(), "at least two different points"));
        }
        let bends = bends_between(&kept)?;
        let legs: Vec<Length> = kept.windows(2).map(|p| mm(norm(sub(p[1].0, p[0].0)))).collect();
        Path::from_legs(&legs, &bends)
    }

    /// The corner points in the pose of this module: start, each corner, end.
    ///
    /// # Errors
    /// `NO_CORNER` naming a bend of 180 degrees or more.
    pub fn vertices(&self) -> Result<Vec<Point>, Error> {
        let tangents = tangents_mm(&self.bends)?;
        let mut frame = Frame::START;
        let mut points = vec![point(frame.at)];
        for (i, straight) in self.straights.iter().enumerate() {
            frame.advance(to_mm(*straight) + tangents[i] + tangents[i + 1]);
            points.push(point(frame.at));
            if let Some(bend) = self.bends.get(i) {
                frame.rotate(bend);
                frame.deflect(bend);
            }
        }
        Ok(points)
    }
}

fn degenerate(got: usize, need: &str) -> Error {
    Problem::new(Code::PathDegenerate, Part::Field("points".to_owned()))
        .got(Value::text(format!("{got} points")))
        .need(Value::text(need))
        .into()
}

/// The angle between two directions by atan2, which loses no digits near 0 and 180 degrees as acos does.
fn between(a: Vec3, b: Vec3) -> f64 {
    math::atan2(norm(cross(a, b)), dot(a, b))
}

fn drop_collinear(kept: &mut Vec<(Vec3, Length)>) -> Result<(), Error> {
    let mut i = 1;
    while i + 1 < kept.len() {
        let angle = between(sub(kept[i].0, kept[i - 1].0), sub(kept[i + 1].0, kept[i].0));
        if to_deg(rad(angle)) > 180.0 - COLLINEAR_DEG {
            return Err(degenerate(kept.len(), "a way that does not double straight back on itself"));
        }
        if to_deg(rad(angle)) < COLLINEAR_DEG {
            kept.remove(i);
        } else {
            i += 1;
        }
    }
    Ok(())
}

fn bends_between(corners: &[(Vec3, Length)]) -> Result<Vec<Bend>, Error> {
    let ahead: Vec<Vec3> = corners.windows(2).map(|p| unit(sub(p[1].0, p[0].0))).collect();
    let normals: Vec<Vec3> = ahead.windows(2).map(|u| cross(u[0], u[1])).collect();
    (0..normals.len())
        .map(|i| {
            let rotation = if i == 0 {
                deg(0.0)
            } else {
                let (before, now) = (normals[i - 1], normals[i]);
                rad(math::atan2(dot(ahead[i], cross(before, now)), dot(before, now)))
            };
            let angle = rad(between(ahead[i], ahead[i + 1]));
            Bend::new(angle, rotation, corners[i + 1].1).map_err(|error| error.at(Part::Bend(i + 1)))
        })
        .collect()
}
