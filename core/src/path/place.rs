//! Where a path is at a station, and the room it takes.

use super::points::{Frame, point};
use super::vec3::{Vec3, cross, dot};
use super::{Path, Point};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math;
use crate::problem::{Part, Problem, Value};
use crate::units::{Length, Ratio, mm, ratio, to_mm, to_rad};

/// A place on a path, in the pose in which the line starts at the origin along +x and first bends toward +y.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// The point on the center line.
    pub point: Point,
    /// The direction from A to B there, of length one.
    pub direction: [Ratio; 3],
    /// The normal of the bend plane there, about which the bend turns right-handed, of length one.
    pub normal: [Ratio; 3],
}

/// The box that a line fills, with the tube's thickness, its sides along the axes of the pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extent {
    /// Corner with the smallest coordinates.
    pub low: Point,
    /// Corner with the largest coordinates.
    pub high: Point,
}

impl Extent {
    /// The three sides.
    #[must_use]
    pub fn size(&self) -> Point {
        [0, 1, 2].map(|axis| self.high[axis] - self.low[axis])
    }
}

fn place(frame: &Frame) -> Place {
    Place { point: point(frame.at), direction: frame.ahead.map(ratio), normal: frame.normal.map(ratio) }
}

/// The pieces of a path in turn: a straight, or part of a bend.
enum Piece {
    Straight { from: Vec3, to: Vec3 },
    Arc { start: Frame, radius_mm: f64, angle: f64 },
}

impl Path {
    /// The far end in the pose of [`Place`]. Defined for bends of any size.
    #[must_use]
    pub fn end_point(&self) -> Point {
        point(self.walk(f64::INFINITY, |_| {}).at)
    }

    /// Where each bend starts, seen from A.
    #[must_use]
    pub fn bend_starts(&self) -> Vec<Point> {
        let mut starts = Vec::with_capacity(self.bends.len());
        self.walk(f64::INFINITY, |piece| {
            if let Piece::Arc { start, .. } = piece {
                starts.push(point(start.at));
            }
        });
        starts
    }

    /// The place at a station: a distance along the center line from end A, 0 to the developed length.
    ///
    /// # Errors
    /// `OUT_OF_RANGE` beyond either end, `NOT_A_NUMBER`.
    pub fn place_at(&self, station: Length) -> Result<Place, Error> {
        let whole = self.developed_length();
        if to_mm(bounds::STATION.length(station)?) > to_mm(whole) + ON_MM {
            return Err(Problem::new(Code::OutOfRange, Part::Field("station".to_owned()))
                .got(Value::Length(station))
                .need(Value::text(format!("0 to the developed length, {}", Value::Length(whole))))
                .into());
        }
        Ok(place(&self.walk(to_mm(station), |_| {})))
    }

    /// Position, direction and bend plane at end B.
    #[must_use]
    pub fn end_place(&self) -> Place {
        place(&self.walk(f64::INFINITY, |_| {}))
    }

    /// The box around the tube. Its sides follow the pose, so a box in another pose can be smaller.
    #[must_use]
    pub fn extent(&self, od: Length) -> Extent {
        let mut low = [0.0; 3];
        let mut high = [0.0; 3];
        let mut take = |at: Vec3| {
            for axis in 0..3 {
                low[axis] = at[axis].min(low[axis]);
                high[axis] = at[axis].max(high[axis]);
            }
        };
        self.walk(f64::INFINITY, |piece| match piece {
            Piece::Straight { from, to } => [from, to].into_iter().for_each(&mut take),
            Piece::Arc { start, radius_mm, angle } => {
                extremes(&start, angle).into_iter().for_each(|at| {
                    let mut frame = start;
                    frame.swing(radius_mm, at);
                    take(frame.at);
                });
            }
        });
        // The tube's thickness stands out on every side; at the ends, where it does not, the box is a little large.
        let half = to_mm(od) / 2.0;
        Extent { low: low.map(|v| mm(v - half)), high: high.map(|v| mm(v + half)) }
    }

    /// Goes along the path as far as `station_mm`, telling each piece on the way; returns where it stands then.
    fn walk(&self, station_mm: f64, mut tell: impl FnMut(Piece)) -> Frame {
        let mut frame = Frame::START;
        let mut left = station_mm;
        for (i, straight) in self.straights.iter().enumerate() {
            let from = frame.at;
            let step = to_mm(*straight).min(left);
            frame.advance(step);
            tell(Piece::Straight { from, to: frame.at });
            left -= step;
            let Some(bend) = self.bends.get(i).filter(|_| left > 0.0) else { break };
            frame.rotate(bend);
            let radius_mm = to_mm(bend.radius());
            let angle = (left / radius_mm).min(to_rad(bend.angle()));
            tell(Piece::Arc { start: frame, radius_mm, angle });
            frame.swing(radius_mm, angle);
            left -= to_mm(bend.arc());
            if left <= 0.0 {
                break;
            }
        }
        frame
    }
}

/// A station this far beyond the end still is the end: rounding of a sum.
const ON_MM: f64 = 1e-6;

/// The angles, from the start of an arc, at which one coordinate is largest or smallest, with both ends of the arc.
fn extremes(start: &Frame, angle: f64) -> Vec<f64> {
    use std::f64::consts::{PI, TAU};
    let inward = cross(start.normal, start.ahead);
    let mut angles = vec![0.0, angle];
    for axis in 0..3 {
        let mut unit = [0.0; 3];
        unit[axis] = 1.0;
        // Along the arc the direction is ahead cos t + inward sin t; where it is square to the axis, the coordinate turns.
        let turning = math::atan2(-dot(start.ahead, unit), dot(inward, unit));
        let mut at = if turning < 0.0 { turning + PI } else { turning };
        while at < angle.min(TAU) {
            angles.push(at);
            at += PI;
        }
    }
    angles
}
