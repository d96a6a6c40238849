//! Three-vectors on plain numbers. Every operation has one fixed order, so that a batch gives the bits of a single
//! call; a library is free to reorder or fuse.

pub(super) type Vec3 = [f64; 3];

pub(super) fn add(a: Vec3, b: Vec3) -> Vec3 {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

pub(super) fn sub(a: Vec3, b: Vec3) -> Vec3 {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

pub(super) fn scale(a: Vec3, factor: f64) -> Vec3 {
    [a[0] * factor, a[1] * factor, a[2] * factor]
}

pub(super) fn dot(a: Vec3, b: Vec3) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

pub(super) fn cross(a: Vec3, b: Vec3) -> Vec3 {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

pub(super) fn norm(a: Vec3) -> f64 {
    dot(a, a).sqrt()
}

/// `a` turned right-handed about the unit vector `axis` it is square to.
pub(super) fn turn(a: Vec3, axis: Vec3, sin: f64, cos: f64) -> Vec3 {
    add(scale(a, cos), scale(cross(axis, a), sin))
}

/// `a` at length one.
pub(super) fn unit(a: Vec3) -> Vec3 {
    scale(a, 1.0 / norm(a))
}
