//! The Python binding of linewright. It only converts: what a figure means is decided in the core.
//!
//! Each module is named after the module of the core that it brings over. Five have no counterpart: `quantity` reads
//! arguments, `record` gives every class its repr, hash and pickle, `typed` makes text of what stands in a table,
//! `results` makes the named answers, and `table` those that are tables.

mod bench;
mod bend;
mod check;
mod clip;
mod code;
mod error;
mod flare;
mod hydraulics;
mod line;
mod material;
mod path;
mod plan;
mod problem;
mod quantity;
mod record;
mod results;
mod size;
mod springback;
mod table;
mod tape;
mod thread;
mod tube;
mod turn;
mod typed;
mod units;

/// Compiled part of linewright; its names are documented and offered by the package.
#[pyo3::pymodule]
mod _native {
    use pyo3::prelude::*;

    #[pymodule_export]
    use crate::bench::pieces::{PieceFit, TestPiece};
    #[pymodule_export]
    use crate::bench::{Bench, FlareTool, Former};
    #[pymodule_export]
    use crate::bend::{
        BendFactors, BentWall, Cylinder, FlattenedSection, Strength, arc, gain, ovality_amplification,
        radius_rules, section_limits, size_tolerances, tangent_length, wall_reserves,
    };
    #[pymodule_export]
    use crate::check::HandCheck;
    #[pymodule_export]
    use crate::clip::{ClipRule, clip_rules, clips, clips_to_buy};
    #[pymodule_export]
    use crate::code::Code;
    #[pymodule_export]
    use crate::flare::{
        FlareForm, flare_allowances, flare_fits_nose, flare_fits_seat, flare_known_diameters,
        flare_net_shortening, flare_size, flare_slip, flare_standards, flare_strokes,
        flare_thickness_at_least, hexagons, hose_end_check, hose_end_sealed_by, hose_end_washers,
        seats_of_thread, usual_threads, washers,
    };
    #[pymodule_export]
    use crate::hydraulics::span::{Span, handbook_spacings};
    #[pymodule_export]
    use crate::hydraulics::{FilledTube, Fluid, Hold};
    #[pymodule_export]
    use crate::line::{ClampMargin, Draft, End, Field, Line, LineDraft, Nut, Port};
    #[pymodule_export]
    use crate::material::{Properties, material_conditions, material_properties, materials};
    #[pymodule_export]
    use crate::path::Path;
    #[pymodule_export]
    use crate::plan::{EndPlan, Plan, PlannedBend, Step};
    #[pymodule_export]
    use crate::problem::{Assumption, Problem};
    #[pymodule_export]
    use crate::size::{SizedLine, size_lines};
    #[pymodule_export]
    use crate::springback::Springback;
    #[pymodule_export]
    use crate::springback::calibration::Calibration;
    #[pymodule_export]
    use crate::springback::fit::{Prior, TrialFit};
    #[pymodule_export]
    use crate::springback::mechanics::{HeldBend, Mechanics};
    #[pymodule_export]
    use crate::table::Table;
    #[pymodule_export]
    use crate::tape::tape_cut;
    #[pymodule_export]
    use crate::thread::catalogue::{thread_report, threads};
    #[pymodule_export]
    use crate::thread::identify::{identify_thread, separate_threads};
    #[pymodule_export]
    use crate::thread::limits::Limits;
    #[pymodule_export]
    use crate::thread::mate::{Mating, mate, mate_measured, stripping, thread_lookalikes};
    #[pymodule_export]
    use crate::thread::{Thread, thread};
    #[pymodule_export]
    use crate::tube::Tube;
    #[pymodule_export]
    use crate::turn::{inclinometer, turn_clock, turn_words};
    #[pymodule_export]
    use crate::units::{
        Angle, Length, Pressure, deg, inch, m, mm, mpa, rad, read_angle, read_length, read_pressure,
        read_rotation, read_tolerance,
    };

    #[pymodule_init]
    fn init(module: &Bound<'_, PyModule>) -> PyResult<()> {
        module.add("CODES", crate::code::table(module.py())?)?;
        module.add("__version__", env!("CARGO_PKG_VERSION"))
    }
}
