//! Rows of the table of codes, by how grave they are.

use super::{Code, CodeRow, Level, Lift, Locks};

/// A finding that leaves no result: nothing lifts it, and no step exists to lock.
pub(super) const fn refuse(
    code: Code,
    name: &'static str,
    meaning: &'static str,
    cleared_by: &'static str,
) -> CodeRow {
    CodeRow {
        code,
        name,
        level: Level::Refuse,
        lift: Lift::Never,
        locks: Locks::Nothing,
        meaning,
        cleared_by,
    }
}

pub(super) const fn stop(
    code: Code,
    name: &'static str,
    lift: Lift,
    locks: Locks,
    meaning: &'static str,
    cleared_by: &'static str,
) -> CodeRow {
    CodeRow { code, name, level: Level::Stop, lift, locks, meaning, cleared_by }
}

/// The commonest stop: a fact lifts it, and it locks the line.
pub(super) const fn fact(
    code: Code,
    name: &'static str,
    meaning: &'static str,
    cleared_by: &'static str,
) -> CodeRow {
    stop(code, name, Lift::Fact, Locks::Line, meaning, cleared_by)
}

/// A caution or a note locks nothing, and needs no lifting.
pub(super) const fn tell(
    code: Code,
    name: &'static str,
    level: Level,
    meaning: &'static str,
    cleared_by: &'static str,
) -> CodeRow {
    CodeRow { code, name, level, lift: Lift::Fact, locks: Locks::Nothing, meaning, cleared_by }
}
