use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::flare::Nose;
use crate::problem::{Part, Problem, Value};
use crate::thread::Thread;
use crate::units::{Length, mm, to_mm};

/// Corners over flats of a hexagon: 2 / sqrt 3.
const CORNERS: f64 = 1.154_700_538_379_251_5;

/// A nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    thread: Option<Thread>,
    length: Length,
    bore: Length,
    nose: Option<Nose>,
    across_flats: Option<Length>,
    thread_length: Option<Length>,
    lead: Option<Length>,
}

impl Nut {
    /// A nut by its thread (None: not known), length over all, bore, and nose (None: not known).
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(
        thread: Option<Thread>,
        length: Length,
        bore: Length,
        nose: Option<Nose>,
    ) -> Result<Nut, Error> {
        let (length, bore) = (bounds::NUT_LENGTH.length(length)?, bounds::NUT_BORE.length(bore)?);
        Ok(Nut { thread, length, bore, nose, across_flats: None, thread_length: None, lead: None })
    }

    /// With the size of its hexagon across the flats. It says nothing about the thread.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also where its corners are no wider than the nut's own thread or bore.
    pub fn with_across_flats(mut self, across_flats: Length) -> Result<Nut, Error> {
        let flats = bounds::ACROSS_FLATS.length(across_flats)?;
        let thread = self.thread.map_or(0.0, |thread| to_mm(thread.diameter()));
        let least = thread.max(to_mm(self.bore)) / CORNERS;
        if to_mm(flats) <= least {
            let need = Value::text(format!(
                "more than {}: corners outside the nut's thread and bore",
                Value::Length(mm(least))
            ));
            return Err(Error::field(Code::OutOfRange, "across_flats", Value::Length(across_flats), need));
        }
        self.across_flats = Some(flats);
        Ok(self)
    }

    /// With the length of its thread, from under its head toward the nose, and from there to where the nose presses on the
    /// flare: 0 where the thread runs that far.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, and where both together are longer than the nut.
    pub fn with_thread_length(mut self, thread_length: Length, lead: Length) -> Result<Nut, Error> {
        let part = |name: &str| Part::Field(name.to_owned());
        let thread_length =
            bounds::NUT_THREAD.length(thread_length).map_err(|error| error.at(part("nut_thread_length")))?;
        let lead = bounds::NUT_LEAD.length(lead).map_err(|error| error.at(part("nut_lead")))?;
        if to_mm(thread_length) + to_mm(lead) > to_mm(self.length) {
            return Err(Problem::new(Code::OutOfRange, part("nut_thread_length"))
                .got(Value::Length(thread_length + lead))
                .need(Value::text(format!(
                    "thread and lead no longer than the nut, {}",
                    Value::Length(self.length)
                )))
                .into());
        }
        (self.thread_length, self.lead) = (Some(thread_length), Some(lead));
        Ok(self)
    }

    /// Length of the thread, if measured.
    #[must_use]
    pub fn thread_length(&self) -> Option<Length> {
        self.thread_length
    }

    /// Unthreaded lead at the nose, if measured.
    #[must_use]
    pub fn lead(&self) -> Option<Length> {
        self.lead
    }

    /// Thread, if known.
    #[must_use]
    pub fn thread(&self) -> Option<Thread> {
        self.thread
    }

    /// Length over all.
    #[must_use]
    pub fn length(&self) -> Length {
        self.length
    }

    /// Bore.
    #[must_use]
    pub fn bore(&self) -> Length {
        self.bore
    }

    /// Form of the nose, if known.
    #[must_use]
    pub fn nose(&self) -> Option<Nose> {
        self.nose
    }

    /// Hexagon across its flats, if measured.
    #[must_use]
    pub fn across_flats(&self) -> Option<Length> {
        self.across_flats
    }

    /// Hexagon across its corners: flats x 2 / sqrt 3 for sharp corners, so the real nut is no larger.
    #[must_use]
    pub fn across_corners(&self) -> Option<Length> {
        self.across_flats.map(|flats| mm(to_mm(flats) * CORNERS))
    }

    /// The smallest centerline radius that the nut slides along on tube of diameter `od`; None where it does not pass
    /// the tube at all.
    ///
    /// Geometry of a straight bore over a round arc, both rigid and round: the bore must hold the tube's outer edge in
    /// the middle and its inner edge at both ends, so bore = R + od/2 - sqrt((R - od/2)^2 - (length/2)^2). With the
    /// clearance c = bore - od this gives R = od/2 + (length^2/4 + c^2) / (2 c).
    #[must_use]
    pub fn tightest_curve(&self, od: Length) -> Option<Length> {
        let clearance = to_mm(self.bore) - to_mm(od);
        let half = to_mm(self.length) / 2.0;
        (clearance > 0.0)
            .then(|| mm(to_mm(od) / 2.0 + (half * half + clearance * clearance) / (2.0 * clearance)))
    }
}
