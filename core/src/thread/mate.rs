//! One thread in another: does it start, how far does it go, on how much of the thread does it hold.

use super::limits::{DiameterLimits, Limits};
use super::profile::{Engagement, Profile, slopes};
use super::{Family, Size, Thread, ThreadSide};
use crate::bounds;
use crate::code::Level;
use crate::error::Error;
use crate::units::{Length, Ratio, mm, ratio, to_mm};

/// A nut is run in by fingers for several turns before a spanner touches it (common practice, no source); one that goes
/// this far is taken for the right one.
const HAND_TURNS: f64 = 3.0;
/// Below this share of the height, at best, a nut is taken to rattle so that fingers notice (ours, no source).
const RATTLE_SHARE: f64 = 0.1;
/// Engagement of a nut in its port that a look-alike is measured against, in mm (ours, no source; within the normal
/// engagement of ISO 965-1 for M8x1 to M12x1.5).
const STANDING_MM: f64 = 6.0;
/// Half of a thread: a wrong one that turns in and may hold on less is a dangerous look-alike.
const HALF: f64 = 0.5;

/// Whether a male starts in a female, over all sizes that the two classes allow.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Starts {
    /// At any size.
    Always,
    /// With some of the sizes; which is met depends on the parts at hand.
    Sometimes,
    /// At no size.
    Never,
}

/// What fingers notice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Feel {
    /// It does not start.
    DoesNotStart,
    /// It starts and binds within the turns that a hand takes.
    Binds,
    /// It turns in like the right one.
    TurnsIn,
    /// It turns in and is obviously loose.
    Rattles,
    /// Its crests pass the female's without touching: it goes in without turning.
    SlidesIn,
}

impl Starts {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Starts::Always => "always",
            Starts::Sometimes => "sometimes",
            Starts::Never => "never",
        }
    }
}

impl Feel {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Feel::DoesNotStart => "does not start",
            Feel::Binds => "binds",
            Feel::TurnsIn => "turns in",
            Feel::Rattles => "rattles",
            Feel::SlidesIn => "slides in",
        }
    }
}

/// A male thread in a female one, from the limits of both. Worst is the combination of sizes that holds least.
///
/// A taper thread overlaps more the further it is turned in. Its overlaps and shares are the mean along the engaged length
/// once it binds, as it does when it is hand-tight.
#[derive(Debug, Clone, PartialEq)]
pub struct Mating {
    male: Thread,
    female: Thread,
    tight: Engagement,
    loose: Engagement,
    /// Share of the height at the entering end, for the two.
    shares: [f64; 2],
    /// By how much the mean overlap in mm grows for each mm turned in: a quarter of both tapers together.
    growth: f64,
    /// Whether the very tightest sizes do not start, so that `tight` is the tightest that does.
    is_sometimes: bool,
}

/// The two extreme sizes of one side: all largest metal, all smallest metal.
///
/// The root of an external Unified thread is taken as the rounded one. The flat one is for reference only, and with the
/// three places that the minor diameter of a nut is printed with it would overlap the thread's own nut by 0.0003 in.
///
/// Where the standard leaves the depth of a nut's root open, it is taken up to a tenth of the pitch deeper than basic (ours,
/// no source): cutting it deeper is how a nut takes a larger screw.
fn extremes(limits: &Limits, pitch_mm: f64) -> [[f64; 3]; 2] {
    let least = |span: DiameterLimits| span.min.or(span.max).map_or(f64::NAN, to_mm);
    let most = |span: DiameterLimits| span.max.or(span.min).map_or(f64::NAN, to_mm);
    let root = limits.rounded_root.map_or(limits.minor, |root| DiameterLimits { min: None, max: Some(root) });
    let small = [limits.major, limits.pitch_diameter, root].map(least);
    let mut large = [limits.major, limits.pitch_diameter, root].map(most);
    if limits.side == ThreadSide::Internal && limits.major.max.is_none() {
        large[0] += large[1] - small[1] + 0.1 * pitch_mm;
    }
    match limits.side {
        ThreadSide::External => [large, small],
        ThreadSide::Internal => [small, large],
    }
}

/// Halvings between sizes that start and sizes that do not; leaves less than a nanometer.
const BISECTIONS: usize = 24;

fn between(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [(a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0, (a[2] + b[2]) / 2.0]
}

/// Both extremes of a male and a female: the tight pair, then the loose one.
pub(super) fn pairs(
    (male, outside): (&Thread, &Limits),
    (female, inside): (&Thread, &Limits),
) -> [([f64; 3], [f64; 3]); 2] {
    let male = extremes(outside, to_mm(male.pitch()));
    let female = extremes(inside, to_mm(female.pitch()));
    [(male[0], female[0]), (male[1], female[1])]
}

impl Mating {
    /// Computes a pair from the limits of its classes, the usual ones where none is given.
    ///
    /// # Errors
    /// As [`Thread::limits`]: `THREAD_SIDE` where the male is an internal thread or the female an external one.
    ///
    /// ```
    /// use linewright::{Thread, thread::Mating};
    /// let wrong = Mating::new(&Thread::read("3/8-24")?, &Thread::read("M10x1")?)?;
    /// assert!(wrong.is_lookalike() && wrong.share_worst().value < 0.16);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn new(male: &Thread, female: &Thread) -> Result<Mating, Error> {
        let outside = male.limits(ThreadSide::External)?;
        let inside = female.limits(ThreadSide::Internal)?;
        let slopes = slopes(male.half_angle(), female.half_angle());
        Ok(Mating::of_limits((male, &outside), (female, &inside), slopes))
    }

    /// The same from limits and slopes of the flanks that are at hand.
    pub(super) fn of_limits(
        (male, outside): (&Thread, &Limits),
        (female, inside): (&Thread, &Limits),
        slopes: [f64; 2],
    ) -> Mating {
        let [mut tight, loose] = pairs((male, outside), (female, inside));
        let engage = |pair: ([f64; 3], [f64; 3])| {
            Profile::of(male, pair.0).engaged_with(&Profile::of(female, pair.1), slopes)
        };
        let share = |pair: ([f64; 3], [f64; 3])| female.share_of_height(pair.0[0], pair.1[2]);
        let (mut tightest, loosest) = (engage(tight), engage(loose));
        let is_sometimes = loosest.starts && !tightest.starts;
        if is_sometimes {
            // Between the two: the tightest sizes that start. What does not start has no overlap to speak of.
            let (mut closed, mut open) = (tight, loose);
            for _ in 0..BISECTIONS {
                let middle = (between(closed.0, open.0), between(closed.1, open.1));
                if engage(middle).starts {
                    open = middle;
                } else {
                    closed = middle;
                }
            }
            (tight, tightest) = (open, engage(open));
        }
        Mating {
            male: *male,
            female: *female,
            tight: tightest,
            loose: loosest,
            shares: [share(tight), share(loose)],
            growth: (male.taper().value + female.taper().value) / 4.0,
            is_sometimes,
        }
    }

    /// The male.
    #[must_use]
    pub fn male(&self) -> Thread {
        self.male
    }

    /// The female.
    #[must_use]
    pub fn female(&self) -> Thread {
        self.female
    }

    /// Whether both are the same thread. Nothing else belongs together, however well it turns.
    #[must_use]
    pub fn is_same(&self) -> bool {
        self.male.is_same_size(&self.female) || self.male.seals_in(&self.female)
    }

    /// Whether it starts.
    #[must_use]
    pub fn starts(&self) -> Starts {
        if self.male.hand() != self.female.hand() {
            return Starts::Never;
        }
        match (self.is_sometimes, self.loose.starts) {
            (true, _) => Starts::Sometimes,
            (false, true) => Starts::Always,
            (false, false) => Starts::Never,
        }
    }

    /// The mean overlap has grown by this, in mm, for the tightest and the loosest sizes, once they are turned in until they
    /// bind or by a length, whichever comes first.
    fn grown(&self, up_to_mm: f64) -> [f64; 2] {
        // What never binds has no taper.
        let along = |pair: &Engagement| pair.length.map_or(0.0, |length| to_mm(length).min(up_to_mm));
        [along(&self.tight), along(&self.loose)].map(|length| self.growth * length)
    }

    /// The worst and the best share of the height, turned in as for [`Mating::grown`].
    fn held(&self, up_to_mm: f64) -> [f64; 2] {
        let height = to_mm(self.female.height());
        let [tight, loose] = self.grown(up_to_mm).map(|grown| grown / height);
        // A ridge deeper than the female's own has no more to hold on.
        let [tight, loose] = [self.shares[0] + tight, self.shares[1] + loose].map(|share| share.min(1.0));
        [tight.min(loose), tight.max(loose)]
    }

    fn worst(&self) -> f64 {
        self.held(f64::INFINITY)[0]
    }

    fn best(&self) -> f64 {
        self.held(f64::INFINITY)[1]
    }

    fn overlaps(&self) -> [f64; 2] {
        let is_in = self.starts() != Starts::Never;
        let [tight, loose] = if is_in { self.grown(f64::INFINITY) } else { [0.0; 2] };
        [to_mm(self.tight.overlap) + tight, to_mm(self.loose.overlap) + loose]
    }

    /// Radial overlap in the worst case; negative where the crests pass each other.
    #[must_use]
    pub fn overlap_worst(&self) -> Length {
        let [tight, loose] = self.overlaps();
        mm(tight.min(loose))
    }

    /// Radial overlap in the best case, of the sizes that start; where none does, how far the crests stand in each other's
    /// way.
    #[must_use]
    pub fn overlap_best(&self) -> Length {
        let [tight, loose] = self.overlaps();
        mm(tight.max(loose))
    }

    /// The worst overlap as a share of the female's full height, 0 where there is none and where nothing starts. The right
    /// thread's own worst is well below 1 too.
    #[must_use]
    pub fn share_worst(&self) -> Ratio {
        self.share(self.worst())
    }

    /// The best overlap, of the sizes that start, as a share of the female's full height; 0 where none does.
    #[must_use]
    pub fn share_best(&self) -> Ratio {
        self.share(self.best())
    }

    fn share(&self, overlap: f64) -> Ratio {
        ratio(if self.starts() == Starts::Never { 0.0 } else { overlap.max(0.0) })
    }

    /// Turns until it binds, at the tightest sizes that start and the loosest; None where it never does, 0 where it does not start.
    #[must_use]
    pub fn turns(&self) -> [Option<f64>; 2] {
        if self.starts() == Starts::Never { [Some(0.0); 2] } else { [self.tight.turns, self.loose.turns] }
    }

    /// Engaged length until it binds, at the tightest sizes that start and the loosest; None where it never does.
    #[must_use]
    pub fn lengths(&self) -> [Option<Length>; 2] {
        if self.starts() == Starts::Never {
            [Some(mm(0.0)); 2]
        } else {
            [self.tight.length, self.loose.length]
        }
    }

    /// Share of a wanted engagement that it reaches before it binds, tightest sizes, times the worst share of the height:
    /// what is left, at worst, of a full engagement over that length.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the length.
    pub fn engaged_share(&self, wanted: Length) -> Result<Ratio, Error> {
        Ok(ratio(self.engaged(to_mm(bounds::ENGAGEMENT.length(wanted)?))))
    }

    fn engaged(&self, wanted_mm: f64) -> f64 {
        let reached = match self.lengths()[0] {
            Some(length) if to_mm(length) < wanted_mm => to_mm(length) / wanted_mm,
            _ => 1.0,
        };
        reached * self.held(wanted_mm)[0].max(0.0)
    }

    /// What fingers notice. Where sizes disagree, the more treacherous answer.
    #[must_use]
    pub fn feel(&self) -> Feel {
        let goes_in = |turns: Option<f64>| turns.is_none_or(|turns| turns >= HAND_TURNS);
        if self.starts() == Starts::Never {
            Feel::DoesNotStart
        } else if self.best() <= 0.0 {
            Feel::SlidesIn
        } else if !self.turns().into_iter().any(goes_in) {
            Feel::Binds
        } else if self.best() < RATTLE_SHARE {
            Feel::Rattles
        } else {
            Feel::TurnsIn
        }
    }

    /// Whether this is a dangerous look-alike: another thread that turns in by hand, holds on something, and may hold on
    /// less than half of its thread, which is the worst share of the height times the share of 6 mm that it reaches before
    /// it binds. The reach is the least at which a hand still takes it for the right one, three turns, or more where even the
    /// tightest sizes go further.
    #[must_use]
    pub fn is_lookalike(&self) -> bool {
        let by_hand = HAND_TURNS * to_mm(self.male.pitch());
        let reach = match (self.tight.length, self.loose.length) {
            (None, _) | (_, None) if self.is_sometimes => self.loose.length.map_or(STANDING_MM, to_mm),
            (Some(tight), _) => to_mm(tight).max(by_hand),
            (None, _) => STANDING_MM,
        };
        let share = (reach / STANDING_MM).min(1.0) * self.held(reach)[0].max(0.0);
        !self.is_same() && matches!(self.feel(), Feel::TurnsIn | Feel::Rattles) && share < HALF
    }

    /// How grave: different threads are a stop, whatever the overlap; the same thread is worth no more than a note.
    #[must_use]
    pub fn level(&self) -> Level {
        if self.is_same() { Level::Note } else { Level::Stop }
    }

    /// The finding in plain words, the worst first.
    #[must_use]
    pub fn verdict(&self) -> String {
        let percent = |share: f64| format!("{:.0} %", share.max(0.0) * 100.0);
        let [worst, best] = self.held(f64::INFINITY).map(percent);
        let bound = if self.growth > 0.0 { ", hand-tight" } else { "" };
        let holds = format!("holds on {worst} (worst) to {best} (best) of the thread height{bound}");
        let (male, female) = (self.male.plain(), self.female.plain());
        if self.is_same() {
            return format!("{male} in {female}: the same thread, {holds}");
        }
        let left = percent(self.engaged(STANDING_MM));
        let holds = format!("keeps {left} of a full {STANDING_MM} mm thread at worst, {holds}");
        let turns = match self.turns() {
            [Some(least), Some(most)] => format!("binds after {least:.1} to {most:.1} turns"),
            [Some(least), None] => format!("binds after {least:.1} turns or never"),
            _ => "never binds".to_owned(),
        };
        let turns = match self.starts() {
            Starts::Sometimes => format!("starts with some parts only, {turns}"),
            Starts::Always | Starts::Never => turns,
        };
        let hand = self.male.hand() != self.female.hand();
        match self.feel() {
            Feel::DoesNotStart if hand => {
                format!("{male} in {female}: one is left-handed, it does not start")
            }
            Feel::DoesNotStart => format!("{male} in {female}: different threads, it does not start"),
            Feel::Binds if self.starts() == Starts::Sometimes => {
                format!("{male} in {female}: different threads; it {turns}, and {holds}")
            }
            Feel::Binds => format!("{male} in {female}: different threads; it starts, {turns}, and {holds}"),
            Feel::TurnsIn => format!(
                "{male} in {female}: different threads; it turns in by hand, {turns}, and {holds}: it can feel right and \
                 pull out"
            ),
            Feel::SlidesIn => {
                format!("{male} in {female}: different threads; it goes in without holding on anything")
            }
            Feel::Rattles => {
                format!("{male} in {female}: different threads; it turns in loosely, {turns}, and {holds}")
            }
        }
    }
}

impl Thread {
    /// Whether a taper R belongs to an Rp or Rc of its size (ISO 7-1 pairs them).
    fn seals_in(&self, female: &Thread) -> bool {
        match (self.size, female.size) {
            (
                Size::Pipe { family: Family::R, row },
                Size::Pipe { family: Family::Rp | Family::Rc, row: other },
            ) => row == other && self.hand == female.hand,
            _ => false,
        }
    }
}
