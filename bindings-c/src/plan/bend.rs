//! The bends of a plan: marks and settings.

use crate::argument::{fill_text, given, given_mut, item, known, put};
use crate::call::{call, lw_status};
use crate::plan::lw_plan;
use crate::units::{lw_angle, lw_length};
use linewright::Error;
use linewright::plan::PlannedBend;
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn bend(plan: Option<&lw_plan>, index: usize) -> Result<&PlannedBend, Error> {
    item(given(plan, "plan")?.0.bends(), index)
}

/// The number of bends. Their indices follow the path from A to B.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(plan, "plan")?.0.bends().len()))
}

/// The number of a bend on paper: from 1 at end A.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_number(
    plan: Option<&lw_plan>,
    index: usize,
    number: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(number, "number", bend(plan, index)?.number))
}

/// The angle of a bend that shall remain.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_angle(
    plan: Option<&lw_plan>,
    index: usize,
    angle: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(angle, "angle", bend(plan, index)?.angle.into()))
}

/// The turn of the bend plane, in the direction of work, against the plane of the bend made before.
///
/// Errors: LW_NOT_KNOWN for the bend made first, which has none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_rotation(
    plan: Option<&lw_plan>,
    index: usize,
    rotation: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let value = bend(plan, index)?.rotation;
        let rotation = given_mut(rotation, "rotation")?;
        rotation.write(known(value, "rotation")?.into());
        Ok(())
    })
}

/// The radius of a bend, as formed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_radius(
    plan: Option<&lw_plan>,
    index: usize,
    radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(radius, "radius", bend(plan, index)?.radius.into()))
}

/// Where the pen goes for a bend, from the datum of lw_plan_datum.
///
/// Errors: LW_NOT_KNOWN while the datum is a raw end and its flare's shortening is not known.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_mark(
    plan: Option<&lw_plan>,
    index: usize,
    mark: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = bend(plan, index)?.mark;
        let mark = given_mut(mark, "mark")?;
        mark.write(known(value, "mark")?.into());
        Ok(())
    })
}

/// The place of the mark from the raw end at which work starts.
///
/// Errors: LW_NOT_KNOWN while the shortening of that end's flare is not known.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_from_raw_end(
    plan: Option<&lw_plan>,
    index: usize,
    from_raw_end: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = bend(plan, index)?.from_raw_end;
        let from_raw_end = given_mut(from_raw_end, "from_raw_end")?;
        from_raw_end.write(known(value, "from_raw_end")?.into());
        Ok(())
    })
}

/// The place of the mark from the finished flare face at which work starts.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_from_flare_face(
    plan: Option<&lw_plan>,
    index: usize,
    from_flare_face: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(from_flare_face, "from_flare_face", bend(plan, index)?.from_flare_face.into()))
}

/// What the tool is bent to so that the wanted angle remains, not rounded.
///
/// Errors: LW_NOT_KNOWN without a springback, and for a radius that is not that of the former.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_setting(
    plan: Option<&lw_plan>,
    index: usize,
    setting: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let value = bend(plan, index)?.setting;
        let setting = given_mut(setting, "setting")?;
        setting.write(known(value, "setting")?.into());
        Ok(())
    })
}

/// From the end of the bend made before it to the start of this one, for marking again after each bend; for the bend
/// made first it is the mark itself.
///
/// Errors: LW_NOT_KNOWN where that mark is not known.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_bend_from_last_bend(
    plan: Option<&lw_plan>,
    index: usize,
    from_last_bend: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = bend(plan, index)?.from_last_bend;
        let from_last_bend = given_mut(from_last_bend, "from_last_bend")?;
        from_last_bend.write(known(value, "from_last_bend")?.into());
        Ok(())
    })
}

/// How a bend is made: "former", "hand" or "mandrel". Only a bend on the former has a setting.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_bend_making(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(bend(plan, index)?.making.name().to_owned())) })
}
