//! The radius of a former, its gain and its stretch from test pieces of known length.

use crate::argument::{ArrayNames, fill, given, given_mut, interval, item, known, list, put};
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length, quantities};
use linewright::Error;
use linewright::bench::{PieceFit, Stretch, TestPiece};
use std::mem::MaybeUninit;

/// Test pieces of one tube on one former.
#[derive(Debug)]
pub struct lw_pieces(Vec<TestPiece>);

/// What they say, with its uncertainty. Pieces bent to the same angles, within 2 degrees, can all be rounded to the same side,
/// and so can lengths of pieces that were cut alike: intervals reach further by what that can make of them.
#[derive(Debug)]
pub struct lw_piece_fit(PieceFit);

/// An empty list of test pieces. Free it with lw_pieces_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_new(pieces: Option<&mut MaybeUninit<Box<lw_pieces>>>) -> lw_status {
    call(|| put(pieces, "pieces", Box::new(lw_pieces(Vec::new()))))
}

/// Adds a piece of a length before bending, with its n + 1 legs along the centerline, from end to corner, corner to corner,
/// and corner to end, and the n angles that remained, in order. Where the numbers of the legs do not show which step they were
/// read to, lw_pieces_set_reading says it.
///
/// Errors: LW_COUNT_MISMATCH, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a piece that is too short for its own bends even if its
/// legs were read 3 mm too long.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pieces_add(
    pieces: Option<&mut lw_pieces>,
    length: lw_length,
    legs: *const lw_length,
    n_legs: usize,
    angles: *const lw_angle,
    n_angles: usize,
) -> lw_status {
    call(|| {
        let pieces = given_mut(pieces, "pieces")?;
        let (legs, angles) = unsafe { (list(legs, n_legs, "legs")?, list(angles, n_angles, "angles")?) };
        pieces.0.push(TestPiece::new(length.into(), &quantities(legs), &quantities(angles))?);
        Ok(())
    })
}

/// The same with legs as a square or a tape laid over the outer edges of the tube measures them, to the outer corners.
///
/// Errors: as lw_pieces_add, LW_OUT_OF_RANGE also for a leg shorter than what its corners take.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pieces_add_outer(
    pieces: Option<&mut lw_pieces>,
    length: lw_length,
    outer_legs: *const lw_length,
    n_legs: usize,
    angles: *const lw_angle,
    n_angles: usize,
    od: lw_length,
) -> lw_status {
    call(|| {
        let pieces = given_mut(pieces, "pieces")?;
        let legs = unsafe { list(outer_legs, n_legs, "outer_legs") }?;
        let angles = unsafe { list(angles, n_angles, "angles") }?;
        let (legs, angles) = (quantities(legs), quantities(angles));
        pieces.0.push(TestPiece::from_outer_legs(length.into(), &legs, &angles, od.into())?);
        Ok(())
    })
}

/// Says which step the legs of a piece were read to, where their numbers do not show it; lw_unknown_length() says that they were
/// read to finer than 0.01 mm, so that their rounding does not count. Pieces count from 0 in the order they were added.
///
/// Errors: LW_INDEX_OUT_OF_RANGE, LW_OUT_OF_RANGE for a step below 0.001 mm or above 10 mm.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_set_reading(
    pieces: Option<&mut lw_pieces>,
    index: usize,
    reading: lw_length,
) -> lw_status {
    call(|| {
        let pieces = &mut given_mut(pieces, "pieces")?.0;
        let read = item(pieces, index)?.clone().with_reading(reading.known())?;
        if let Some(piece) = pieces.get_mut(index) {
            *piece = read;
        }
        Ok(())
    })
}

fn piece(pieces: Option<&lw_pieces>, index: usize) -> Result<&TestPiece, Error> {
    item(&given(pieces, "pieces")?.0, index)
}

/// The number of test pieces in a list.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_count(
    pieces: Option<&lw_pieces>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(pieces, "pieces")?.0.len()))
}

/// The step that the legs of a piece were read to, as given or as their numbers show: the coarsest of 1/16 in, 1 mm, 1/32 in,
/// 0.5 mm, 1/64 in, 0.25, 0.2, 0.1, 0.05, 0.02 and 0.01 mm that all of them are multiples of; of outer legs as they were read.
///
/// Errors: LW_INDEX_OUT_OF_RANGE, LW_NOT_KNOWN for finer ones.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_reading(
    pieces: Option<&lw_pieces>,
    index: usize,
    reading: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = piece(pieces, index)?.reading();
        let output = given_mut(reading, "reading")?;
        output.write(known(found, "reading")?.into());
        Ok(())
    })
}

/// The length of a piece before bending.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_length(
    pieces: Option<&lw_pieces>,
    index: usize,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", piece(pieces, index)?.length().into()))
}

/// The gain of a piece's bends together as measured: how much longer its legs along the centerline are than it was.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_gain(
    pieces: Option<&lw_pieces>,
    index: usize,
    gain: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(gain, "gain", piece(pieces, index)?.gain().into()))
}

/// The legs of a piece along the centerline, also where outer legs were given: fills `legs`, which has room for cap lengths.
///
/// Errors: LW_INDEX_OUT_OF_RANGE, LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pieces_legs(
    pieces: Option<&lw_pieces>,
    index: usize,
    legs: *mut lw_length,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(quantities(piece(pieces, index)?.legs()));
    call(|| unsafe { fill(&ArrayNames { buf: "legs", need: "need" }, legs, cap, need, found) })
}

/// The angles of a piece that remained, in order: fills `angles`, which has room for cap of them.
///
/// Errors: LW_INDEX_OUT_OF_RANGE, LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pieces_angles(
    pieces: Option<&lw_pieces>,
    index: usize,
    angles: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(quantities(piece(pieces, index)?.angles()));
    call(|| unsafe { fill(&ArrayNames { buf: "angles", need: "need" }, angles, cap, need, found) })
}

/// Frees a list of test pieces. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_pieces_free(pieces: Option<Box<lw_pieces>>) {
    drop(pieces);
}

/// The fit to the pieces. Free it with lw_piece_fit_free.
///
/// Errors: LW_TRIALS_UNUSABLE for no piece, for legs that give no credible radius, and for a piece whose length is more
/// than 3 mm off what all say, or that is more than 3 mm too short for its own bends.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_new(
    pieces: Option<&lw_pieces>,
    fit: Option<&mut MaybeUninit<Box<lw_piece_fit>>>,
) -> lw_status {
    call(|| {
        let made = PieceFit::new(&given(pieces, "pieces")?.0)?;
        put(fit, "fit", Box::new(lw_piece_fit(made)))
    })
}

/// The radius as formed that makes lengths come out: the one for lw_bench_new.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_radius(
    fit: Option<&lw_piece_fit>,
    radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(radius, "radius", given(fit, "fit")?.0.radius().into()))
}

/// Its standard error. Errors: LW_NOT_KNOWN for one piece.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_radius_error(
    fit: Option<&lw_piece_fit>,
    radius_error: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = given(fit, "fit")?.0.radius_error();
        let output = given_mut(radius_error, "radius_error")?;
        output.write(known(found, "radius_error")?.into());
        Ok(())
    })
}

/// Scatter of one piece's gain, one standard deviation, and at least what the rounding of lengths, legs and angles makes.
///
/// Errors: LW_NOT_KNOWN for one piece.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_scatter(
    fit: Option<&lw_piece_fit>,
    scatter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = given(fit, "fit")?.0.scatter();
        let output = given_mut(scatter, "scatter")?;
        output.write(known(found, "scatter")?.into());
        Ok(())
    })
}

/// Interval of the radius at a chance such as 0.95, cut at 0: no radius is below nothing.
///
/// Errors: LW_NOT_KNOWN for one piece, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_radius_interval(
    fit: Option<&lw_piece_fit>,
    chance: f64,
    low: Option<&mut MaybeUninit<lw_length>>,
    high: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        interval(low, high, || Ok(fit.radius_interval(chance)?.map(|ends| ends.map(Into::into))))
    })
}

/// The gain of a bend on this former. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_gain(
    fit: Option<&lw_piece_fit>,
    angle: lw_angle,
    gain: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(gain, "gain", given(fit, "fit")?.0.gain(angle.into())?.into()))
}

/// Interval of that gain at a chance; one more piece scatters in addition.
///
/// Errors: as lw_piece_fit_radius_interval, LW_OUT_OF_RANGE also for the angle.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_gain_interval(
    fit: Option<&lw_piece_fit>,
    angle: lw_angle,
    chance: f64,
    low: Option<&mut MaybeUninit<lw_length>>,
    high: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        let found = || fit.gain_interval(angle.into(), chance);
        interval(low, high, || Ok(found()?.map(|ends| ends.map(Into::into))))
    })
}

fn stretch(fit: Option<&lw_piece_fit>) -> Result<&Stretch, Error> {
    known(given(fit, "fit")?.0.stretch(), "stretch")
}

/// Radius of the arcs and stretch as two figures: the share says how much longer an arc is than the tube that went into
/// it; negative where it is shorter.
///
/// Errors: LW_NOT_KNOWN where the angles of the pieces are too much alike to tell them apart.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_stretch(
    fit: Option<&lw_piece_fit>,
    radius: Option<&mut MaybeUninit<lw_length>>,
    share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let found = stretch(fit);
        let (radius, share) = (given_mut(radius, "radius")?, given_mut(share, "share")?);
        let found = found?;
        radius.write(found.radius().into());
        share.write(found.share().value);
        Ok(())
    })
}

/// Standard error of the radius of the arcs that lw_piece_fit_stretch gives, which is another than that of lw_piece_fit_radius.
///
/// Errors: LW_NOT_KNOWN as lw_piece_fit_stretch, and for two pieces, which any two figures fit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_stretch_radius_error(
    fit: Option<&lw_piece_fit>,
    radius_error: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = stretch(fit);
        let output = given_mut(radius_error, "radius_error")?;
        output.write(known(found?.radius_error(), "radius_error")?.into());
        Ok(())
    })
}

/// Interval of the share at a chance (Fieller's). One that holds 0 means that no stretch has been shown.
///
/// Errors: LW_NOT_KNOWN as lw_piece_fit_stretch, for two pieces, and where the pieces say so little that it has no end;
/// LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_stretch_interval(
    fit: Option<&lw_piece_fit>,
    chance: f64,
    low: Option<&mut MaybeUninit<f64>>,
    high: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let found = stretch(fit);
        interval(low, high, || Ok(found?.share_interval(chance)?.map(|ends| ends.map(|end| end.value))))
    })
}

/// Frees a fit to test pieces. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_piece_fit_free(fit: Option<Box<lw_piece_fit>>) {
    drop(fit);
}
