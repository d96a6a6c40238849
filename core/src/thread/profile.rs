//! One rigid, coaxial pair of threads of given sizes: whether it starts and how far it turns in.
//!
//! In the axial section the male ridge and the female groove are trapezoids, each half a pitch wide at its own pitch
//! diameter. Going along the helix by a turn, the ridge moves by the male's pitch and the groove by the female's, so what
//! room the flanks leave is used up by the difference. Taper is a change of diameters along the axis. Friction, the
//! lead-in, burrs and the tilt a loose thread takes are left out: a real nut may go further when forced.

use super::{Thread, ThreadSide};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::tan;
use crate::problem::{Part, Value};
use crate::units::{Angle, Length, Ratio, mm, to_mm, to_rad};

/// Overlaps below this are contact, not interference.
const TOUCH_MM: f64 = 1e-9;

/// Sizes of one thread at the end that enters first: the male's tip, the female's mouth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Profile {
    /// Pitch.
    pub pitch: Length,
    /// Half the angle between the flanks.
    pub half_angle: Angle,
    /// Major diameter.
    pub major: Length,
    /// Pitch diameter, where ridge and groove are half a pitch wide.
    pub pitch_diameter: Length,
    /// Minor diameter.
    pub minor: Length,
    /// Change of diameter along the axis: a male grows away from its tip, a female narrows with depth.
    pub taper: Ratio,
}

/// How far a male goes into a female.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Engagement {
    /// Whether it starts at all.
    pub starts: bool,
    /// Radial overlap at the entering end; negative where the crests pass each other.
    pub overlap: Length,
    /// Engaged length until the play is used up; None where nothing binds.
    pub length: Option<Length>,
    /// The same in turns.
    pub turns: Option<f64>,
}

/// Plain numbers of a pair.
struct Pair {
    male: [f64; 3],
    female: [f64; 3],
    male_pitch: f64,
    female_pitch: f64,
    male_flank: f64,
    female_flank: f64,
    male_taper: f64,
    female_taper: f64,
}

/// Tangent of half the angle between flanks.
pub(super) fn slope(half_angle: Angle) -> f64 {
    tan(to_rad(half_angle))
}

/// The slopes of a male and a female: mostly the same, and one takes a third of the time of a whole pair.
pub(super) fn slopes(male: Angle, female: Angle) -> [f64; 2] {
    let own = slope(male);
    [own, if male == female { own } else { slope(female) }]
}

/// A part whose major diameter is off its thread's by more than this share is no such thread, however worn (ours).
const MOST_OFF: f64 = 0.15;

impl Profile {
    /// The sizes of a thread as they were measured, at the end that enters first; pitch, flanks and taper are its own.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` also for diameters that do not follow each other, and for a major one that is off the
    /// thread's by more than 15 %.
    ///
    /// ```
    /// use linewright::{Thread, thread::Profile, units::mm};
    /// let profile = |name, sizes: [f64; 3]| {
    ///     Profile::measured(&Thread::read(name)?, mm(sizes[0]), mm(sizes[1]), mm(sizes[2]))
    /// };
    /// let worn = profile("3/8-24", [9.3, 8.7, 8.2])?;
    /// let pair = worn.into_female(&profile("M10x1", [10.2, 9.45, 9.1])?);
    /// assert!(pair.starts && pair.overlap < mm(0.11));
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn measured(
        thread: &Thread,
        major: Length,
        pitch_diameter: Length,
        minor: Length,
    ) -> Result<Profile, Error> {
        let read = |name: &str, value: Length| {
            let field = |error: Error| error.at(Part::Field(name.to_owned()));
            bounds::THREAD_DIAMETER.length(value).map(to_mm).map_err(field)
        };
        let sizes = [read("major", major)?, read("pitch_diameter", pitch_diameter)?, read("minor", minor)?];
        let nominal = to_mm(thread.diameter());
        if (sizes[0] - nominal).abs() > MOST_OFF * nominal {
            let [least, most] =
                [1.0 - MOST_OFF, 1.0 + MOST_OFF].map(|share| Value::Length(mm(share * nominal)));
            let need = Value::text(format!(
                "{least} to {most}: the major diameter of a {thread}, or another thread"
            ));
            return Err(Error::field(Code::OutOfRange, "major", Value::Length(major), need));
        }
        if sizes[1] >= sizes[0] || sizes[2] >= sizes[1] {
            let need = Value::text(format!(
                "less than {} and more than {}: the pitch diameter lies between the major and the minor one",
                Value::Length(major),
                Value::Length(minor)
            ));
            return Err(Error::field(
                Code::OutOfRange,
                "pitch_diameter",
                Value::Length(pitch_diameter),
                need,
            ));
        }
        Ok(Profile::of(thread, sizes))
    }

    /// One part in another, both as measured: [`Profile::into_female`] of two threads, which know their side and their hand.
    ///
    /// # Errors
    /// As [`Profile::measured`]; `THREAD_SIDE` for an internal male or an external female.
    pub fn mate(
        (male, outside): (&Thread, [Length; 3]),
        (female, inside): (&Thread, [Length; 3]),
    ) -> Result<Engagement, Error> {
        let sides = [(male, ThreadSide::External, "male"), (female, ThreadSide::Internal, "female")];
        if let Some((thread, side, field)) =
            sides.into_iter().find(|(thread, side, _)| thread.side().is_some_and(|own| own != *side))
        {
            let need = Value::text(format!("an {} thread", side.name()));
            return Err(Error::field(Code::ThreadSide, field, Value::text(thread.to_string()), need));
        }
        let of = |thread, [major, pitch, minor]: [Length; 3]| Profile::measured(thread, major, pitch, minor);
        let pair = of(male, outside)?.into_female(&of(female, inside)?);
        if male.hand() == female.hand() {
            return Ok(pair);
        }
        Ok(Engagement { starts: false, length: Some(mm(0.0)), turns: Some(0.0), ..pair })
    }

    /// Turns this male into a female.
    ///
    /// ```
    /// use linewright::thread::Profile;
    /// use linewright::units::{deg, mm, ratio, to_mm};
    /// let profile = |pitch, major, pitch_diameter, minor| Profile {
    ///     pitch: mm(pitch), half_angle: deg(30.0), major: mm(major), pitch_diameter: mm(pitch_diameter),
    ///     minor: mm(minor), taper: ratio(0.0),
    /// };
    /// // The play, 0.5 mm tan 30 and half the difference of the pitches, over that difference.
    /// let pair = profile(1.0, 9.5, 8.85, 8.4).into_female(&profile(1.1, 10.0, 9.35, 8.9));
    /// assert!((pair.turns.unwrap() - (0.05 + 0.5 / 3_f64.sqrt()) / 0.1).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn into_female(&self, female: &Profile) -> Engagement {
        self.engaged_with(female, slopes(self.half_angle, female.half_angle))
    }

    /// The same with both slopes at hand: all sizes of a pair of threads share them.
    pub(super) fn engaged_with(&self, female: &Profile, slopes: [f64; 2]) -> Engagement {
        let sizes = |p: &Profile| [to_mm(p.major), to_mm(p.pitch_diameter), to_mm(p.minor)];
        Pair {
            male: sizes(self),
            female: sizes(female),
            male_pitch: to_mm(self.pitch),
            female_pitch: to_mm(female.pitch),
            male_flank: slopes[0],
            female_flank: slopes[1],
            male_taper: self.taper.value,
            female_taper: female.taper.value,
        }
        .engage()
    }

    /// A profile of a thread with given diameters in mm.
    pub(super) fn of(thread: &Thread, [major, pitch_diameter, minor]: [f64; 3]) -> Profile {
        Profile {
            pitch: thread.pitch(),
            half_angle: thread.half_angle(),
            major: mm(major),
            pitch_diameter: mm(pitch_diameter),
            minor: mm(minor),
            taper: thread.taper(),
        }
    }
}

impl Pair {
    /// Room between flanks on each side at a diameter, ridge centered in the groove.
    fn slack(&self, diameter: f64) -> f64 {
        (self.female_pitch - self.male_pitch) / 4.0 + (self.female[1] - diameter) / 2.0 * self.female_flank
            - (self.male[1] - diameter) / 2.0 * self.male_flank
    }

    fn engage(&self) -> Engagement {
        let overlap = (self.male[0] - self.female[2]) / 2.0;
        // Flanks are straight, so the ends of the touching range are enough: the female's minor diameter, where a growing
        // male or a narrowing female takes the male's flank from the slack, and the male's major, with the female's.
        let at_minor = (self.slack(self.female[2]), self.male_flank);
        let at_major = (self.slack(self.male[0]), self.female_flank);
        let crest = (self.female[0] - self.male[0]).min(self.female[2] - self.male[2]);
        let flanks = overlap <= 0.0 || at_minor.0.min(at_major.0) >= -TOUCH_MM;
        let starts = crest >= -TOUCH_MM && flanks;
        let length =
            if starts { self.reach(overlap, [at_minor, at_major], crest.max(0.0)) } else { Some(0.0) };
        Engagement {
            starts,
            overlap: mm(overlap),
            length: length.map(mm),
            turns: length.map(|length| length / self.male_pitch),
        }
    }

    /// The engaged length at which the first limit is met.
    fn reach(&self, overlap: f64, slacks: [(f64, f64); 2], crest: f64) -> Option<f64> {
        let drift = (self.male_pitch - self.female_pitch).abs() / self.male_pitch;
        let (tip, mouth) = (self.female_taper, self.male_taper);
        let taper = tip.max(mouth);
        let mut least = f64::INFINITY;
        let mut limit = |length: f64| least = if length < least { length } else { least };
        if taper > 0.0 {
            limit(crest / taper);
        }
        // Where the crests pass each other at the entering end, flanks meet only from this length on, or never.
        let apart = if overlap > 0.0 { 0.0 } else { -2.0 * overlap / taper };
        if apart.is_finite() {
            let both = tip > 0.0 && mouth > 0.0;
            for (first, first_flank) in slacks {
                let first = first.max(0.0);
                // What the taper takes at the tip and at the mouth once an engaged length is reached.
                for at in [tip, mouth] {
                    if at > 0.0 {
                        limit((2.0 * first / (at * first_flank)).max(apart));
                    }
                }
                for (second, second_flank) in slacks {
                    let room = first + second.max(0.0);
                    let length = if both || apart == 0.0 {
                        room / (drift + (tip * first_flank + mouth * second_flank) / 2.0)
                    } else {
                        // One taper: the inner end of the touching stretch has lost what it will.
                        let inner = room - taper * apart / 2.0 * first_flank + drift * apart;
                        inner / (drift + taper * second_flank / 2.0)
                    };
                    if length.is_finite() {
                        limit(length.max(apart));
                    }
                }
            }
        }
        least.is_finite().then_some(least)
    }
}
