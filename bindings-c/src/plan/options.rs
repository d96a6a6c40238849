//! What a person decides about a plan.

use crate::argument::{given_mut, put, side, text};
use crate::call::{call, lw_status};
use crate::line::lw_side;
use crate::units::lw_length;
use linewright::PlanOptions;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What a person decides about a plan.
#[derive(Debug)]
pub struct lw_plan_options(pub(crate) PlanOptions);

/// Options that decide nothing yet. Free them with lw_plan_options_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_options_new(options: Option<&mut MaybeUninit<Box<lw_plan_options>>>) -> lw_status {
    call(|| put(options, "options", Box::new(lw_plan_options(PlanOptions::default()))))
}

/// Sets the end that is left long and finished last: LW_A or LW_B. Without it the longer end straight that can be
/// flared after bending is taken.
///
/// Errors: LW_OUT_OF_RANGE for another number.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_options_set_trim_end(
    options: Option<&mut lw_plan_options>,
    side: lw_side,
) -> lw_status {
    call(|| {
        let options = given_mut(options, "options")?;
        options.0 = options.0.clone().with_trim_end(self::side(side, "side")?);
        Ok(())
    })
}

/// Sets tube to be added at the trim end, for instance for a second try at its flare.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_options_set_reserve(
    options: Option<&mut lw_plan_options>,
    reserve: lw_length,
) -> lw_status {
    call(|| {
        let options = given_mut(options, "options")?;
        options.0 = options.0.clone().with_reserve(reserve.into())?;
        Ok(())
    })
}

/// Lifts a stop by its id (see lw_problems_id), with the person who does it and the reason; both are printed. Whether a
/// person can lift it, the plan says.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_options_accept(
    options: Option<&mut lw_plan_options>,
    id: *const c_char,
    who: *const c_char,
    why: *const c_char,
) -> lw_status {
    call(|| {
        let options = given_mut(options, "options")?;
        let (id, who, why) = unsafe { (text(id, "id")?, text(who, "who")?, text(why, "why")?) };
        options.0 = options.0.clone().accept(id, who, why);
        Ok(())
    })
}

/// Frees options. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_options_free(options: Option<Box<lw_plan_options>>) {
    drop(options);
}
