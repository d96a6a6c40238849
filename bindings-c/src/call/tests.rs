use super::*;
use std::panic::resume_unwind;

fn last_code() -> i32 {
    let mut code = MaybeUninit::new(-1);
    assert_eq!(lw_last_error_code(Some(&mut code)), OK);
    // SAFETY: initialized above.
    unsafe { code.assume_init() }
}

#[test]
fn no_panic_gets_out() {
    assert_eq!(call(|| resume_unwind(Box::new("a broken table"))), number(Code::InternalFault));
    let text = LAST_ERROR.with(|last| last.borrow().as_ref().map(Error::to_string).unwrap_or_default());
    assert!(text.contains("a broken table"), "{text}");
    assert_eq!(call(|| resume_unwind(Box::new(7))), number(Code::InternalFault));
}

#[test]
fn the_last_error_stays_until_the_next_and_belongs_to_its_thread() {
    let fail = |code| call(|| Err(Problem::new(code, Part::Line).into()));
    assert_eq!(last_code(), OK);
    assert_eq!(fail(Code::NoCorner), number(Code::NoCorner));
    assert_eq!(call(|| Ok(())), OK);
    assert_eq!(lw_last_error_code(None), number(Code::NullArgument));
    assert_eq!(last_code(), number(Code::NoCorner));
    std::thread::scope(|scope| {
        scope.spawn(|| {
            assert_eq!(last_code(), OK);
            fail(Code::OutOfRange);
        });
    });
    assert_eq!(last_code(), number(Code::NoCorner));
}

/// The header promises that handles may be used by any thread.
#[test]
fn handles_may_go_to_any_thread() {
    fn handle<T: Send + Sync>() -> usize {
        size_of::<T>()
    }
    use crate::{bench, draft, end, line, path, plan, problem, size, springback, tube};
    let sizes = [
        handle::<tube::lw_tube>(),
        handle::<path::lw_path>(),
        handle::<springback::lw_springback>(),
        handle::<bench::lw_bench>(),
        handle::<end::lw_nut>(),
        handle::<end::lw_end>(),
        handle::<line::lw_line>(),
        handle::<draft::lw_draft>(),
        handle::<problem::lw_problems>(),
        handle::<plan::lw_plan>(),
        handle::<plan::options::lw_plan_options>(),
        handle::<size::lw_sized>(),
    ];
    assert!(sizes.iter().all(|size| *size > 0));
}
