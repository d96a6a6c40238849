//! What would have to be sheared off to pull a thread out, compared with the right one. No load follows from it.
//!
//! The areas are those of FED-STD-H28 and of the ISO 898 and VDI 2230 type of formula (texts not opened; the geometry is
//! theirs): the male ridge along the cylinder of the female's minor diameter, the female ridge along the cylinder of the
//! male's major diameter, each over the engaged length. A ridge that overlaps little rides over before it shears, so
//! the share of the right thread is bounded by the overlap as well; how much weaker such a joint really is, nobody says.

use super::mate::pairs;
use super::profile::{Profile, slopes};
use super::{Class, Mating, Starts, Thread, ThreadSide};
use crate::bounds;
use crate::error::Error;
use crate::units::{Area, Length, Ratio, mm, mm2, ratio, to_mm};
use std::f64::consts::PI;

/// Shear areas of a pair over an engaged length; worst first. Worst is the loosest sizes over the shortest reach, so that no
/// parts hold less; best is the most that any sizes hold which start, over what they reach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stripping {
    /// Length that is engaged: the wanted one, or what is reached before it binds.
    pub engaged: Length,
    /// Area of the male's ridge, worst and best.
    pub external: [Area; 2],
    /// Area of the female's ridge, worst and best.
    pub internal: [Area; 2],
    /// What holds of the right male's thread at the wanted length: the smaller of the two areas over the right one's, but
    /// no more than the overlap over the right one's. Worst first.
    pub share: [Ratio; 2],
}

/// Major, pitch and minor diameter of a male and of a female.
type Sizes = ([f64; 3], [f64; 3]);

/// Steps from the loosest to the tightest size of either part among which the best is looked for.
const STEPS: u32 = 12;

/// Sizes `i` steps from loose to tight.
fn blend(loose: [f64; 3], tight: [f64; 3], i: u32) -> [f64; 3] {
    let share = f64::from(i) / f64::from(STEPS);
    std::array::from_fn(|k| (1.0 - share) * loose[k] + share * tight[k])
}

/// Areas of the male's and the female's ridge for one extreme of sizes.
fn areas(male: &Thread, female: &Thread, sizes: Sizes, engaged: f64) -> [f64; 2] {
    let ([major, pitch_diameter, root], [_, female_pitch_diameter, minor]) = sizes;
    if major <= minor {
        return [0.0; 2];
    }
    let (male_pitch, female_pitch) = (to_mm(male.pitch()), to_mm(female.pitch()));
    let at = minor.max(root);
    let male_ridge = male_pitch / 2.0 + (pitch_diameter - at) * male.flank();
    let female_ridge = female_pitch / 2.0 + (major - female_pitch_diameter) * female.flank();
    let area =
        |diameter: f64, ridge: f64, pitch: f64| PI * diameter * engaged * (ridge / pitch).clamp(0.0, 1.0);
    [area(at, male_ridge, male_pitch), area(major, female_ridge, female_pitch)]
}

impl Stripping {
    /// Areas of a pair over a wanted engagement.
    ///
    /// # Errors
    /// As [`Mating::new`]; `NOT_A_NUMBER`, `OUT_OF_RANGE` for the length; `NOT_KNOWN` where one thread is tapered.
    ///
    /// ```
    /// use linewright::{Thread, thread::Stripping, units::mm};
    /// let wrong = Stripping::new(&Thread::read("3/8-24")?, &Thread::read("M10x1")?, mm(6.0))?;
    /// assert!(wrong.share[0].value < 0.5);
    /// let right = Stripping::new(&Thread::read("M10x1")?, &Thread::read("M10x1")?, mm(6.0))?;
    /// assert!((right.share[0].value - 1.0).abs() < 1e-12);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn new(male: &Thread, female: &Thread, wanted: Length) -> Result<Stripping, Error> {
        let wanted = to_mm(bounds::ENGAGEMENT.length(wanted)?);
        if let Some(taper) = [male, female].into_iter().find(|thread| thread.taper().value > 0.0) {
            return Err(taper.has_no(
                "one overlap to compute with: a taper thread's changes along its length",
                "parallel threads",
            ));
        }
        if let Some(ThreadSide::Internal) = female.family().only_side() {
            return Err(female.has_no(
                "right parallel male to compare with: it seals with a taper one",
                "a female that takes a parallel male",
            ));
        }
        let pair = Mating::new(male, female)?;
        let reached = pair.lengths()[0].map_or(wanted, |length| to_mm(length).min(wanted));
        let limits = (male.limits(ThreadSide::External)?, female.limits(ThreadSide::Internal)?);
        let [tight, loose] = pairs((male, &limits.0), (female, &limits.1));
        let class = Class::usual(female, ThreadSide::External);
        let right = Thread { class, ..female.plain() };
        let right_limits = right.limits(ThreadSide::External)?;
        let [right_tight, right_loose] = pairs((&right, &right_limits), (female, &limits.1));
        // A ridge that overlaps little rides over before it shears: no more of the thread holds than overlaps.
        let overlap = |sizes: Sizes| (sizes.0[0] - sizes.1[2]).max(0.0) / 2.0;
        let share = |own: Sizes, right_own: Sizes, engaged: f64| {
            let held = areas(male, female, own, engaged);
            let whole = areas(&right, female, right_own, wanted);
            let area = held[0].min(held[1]) / whole[0].min(whole[1]);
            area.min(overlap(own) / overlap(right_own) * (engaged / wanted))
        };
        // Worst: the loosest sizes over what the tightest that start reach; no parts hold less.
        let worst = areas(male, female, loose, reached);
        let (mut best, mut most) = (worst, share(loose, right_loose, reached));
        // Best: what sizes in between hold more, and what they reach less, tight parts hold most of neither. A pair that
        // never starts, such as of two hands, has none.
        let slopes = slopes(male.half_angle(), female.half_angle());
        let steps = if pair.starts() == Starts::Never { 0..0 } else { 0..STEPS + 1 };
        for i in steps {
            for j in 0..=STEPS {
                let at =
                    |tight: Sizes, loose: Sizes| (blend(loose.0, tight.0, i), blend(loose.1, tight.1, j));
                let own = at(tight, loose);
                let engagement = Profile::of(male, own.0).engaged_with(&Profile::of(female, own.1), slopes);
                if !engagement.starts {
                    continue;
                }
                let reach = engagement.length.map_or(wanted, |length| to_mm(length).min(wanted));
                let held = areas(male, female, own, reach);
                best = [best[0].max(held[0]), best[1].max(held[1])];
                most = most.max(share(own, at(right_tight, right_loose), reach));
            }
        }
        Ok(Stripping {
            engaged: mm(reached),
            external: [mm2(worst[0]), mm2(best[0])],
            internal: [mm2(worst[1]), mm2(best[1])],
            share: [ratio(share(loose, right_loose, reached).min(most)), ratio(most)],
        })
    }
}
