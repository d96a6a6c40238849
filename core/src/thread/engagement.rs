//! Groups of engagement lengths, ISO 965-1: short, normal, long.

use super::metric::diameter_step;
use super::{Size, Thread};
use crate::bounds;
use crate::error::Error;
use crate::units::{Length, mm, to_mm};

/// Short, normal or long engagement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum EngagementGroup {
    /// Up to the lower limit of normal.
    Short,
    /// Normal.
    Normal,
    /// Beyond it.
    Long,
}

/// Step of the diameter (its upper end in micrometers), pitch in micrometers, longest short and longest normal length
/// in tenths of a millimeter. ISO 965-1 as transcribed by an open-source program that states the standard; the rows
/// from 1.4 to 22.4 mm also agree with Machinery's Handbook 27 (both seen).
const ROWS: [(u32, u32, u32, u32); 47] = [
    (1_400, 200, 5, 14),
    (1_400, 250, 6, 17),
    (1_400, 300, 7, 20),
    (2_800, 200, 5, 15),
    (2_800, 250, 6, 19),
    (2_800, 350, 8, 26),
    (2_800, 400, 10, 30),
    (2_800, 450, 13, 38),
    (5_600, 350, 10, 30),
    (5_600, 500, 15, 45),
    (5_600, 600, 17, 50),
    (5_600, 700, 20, 60),
    (5_600, 750, 22, 67),
    (5_600, 800, 25, 75),
    (11_200, 750, 24, 71),
    (11_200, 1_000, 30, 90),
    (11_200, 1_250, 40, 120),
    (11_200, 1_500, 50, 150),
    (22_400, 1_000, 38, 110),
    (22_400, 1_250, 45, 130),
    (22_400, 1_500, 56, 160),
    (22_400, 1_750, 60, 180),
    (22_400, 2_000, 80, 240),
    (22_400, 2_500, 100, 300),
    (45_000, 1_000, 40, 120),
    (45_000, 1_500, 63, 190),
    (45_000, 2_000, 85, 250),
    (45_000, 3_000, 120, 360),
    (45_000, 3_500, 150, 450),
    (45_000, 4_000, 180, 530),
    (45_000, 4_500, 210, 630),
    (90_000, 1_500, 75, 220),
    (90_000, 2_000, 95, 280),
    (90_000, 3_000, 150, 450),
    (90_000, 4_000, 190, 560),
    (90_000, 5_000, 240, 710),
    (90_000, 5_500, 280, 850),
    (90_000, 6_000, 320, 950),
    (180_000, 2_000, 120, 360),
    (180_000, 3_000, 180, 530),
    (180_000, 4_000, 240, 710),
    (180_000, 6_000, 360, 1_060),
    (180_000, 8_000, 450, 1_320),
    (355_000, 3_000, 200, 600),
    (355_000, 4_000, 260, 800),
    (355_000, 6_000, 400, 1_180),
    (355_000, 8_000, 500, 1_500),
];

impl EngagementGroup {
    /// The letter in a designation.
    #[must_use]
    pub fn letter(self) -> char {
        match self {
            EngagementGroup::Short => 'S',
            EngagementGroup::Normal => 'N',
            EngagementGroup::Long => 'L',
        }
    }

    pub(super) fn read(text: &str) -> Option<EngagementGroup> {
        [EngagementGroup::Short, EngagementGroup::Normal, EngagementGroup::Long]
            .into_iter()
            .find(|group| text == group.letter().to_string())
    }
}

impl Thread {
    /// The shortest and longest normal engagement of an ISO metric thread; None where the table has no row for it.
    ///
    /// ```
    /// use linewright::{Thread, units::to_mm};
    /// let (short, long) = Thread::read("M10x1")?.normal_engagement().unwrap();
    /// assert_eq!((to_mm(short), to_mm(long)), (3.0, 9.0));
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn normal_engagement(&self) -> Option<(Length, Length)> {
        let Size::Metric { diameter_um, pitch_um } = self.size else { return None };
        let (_, most) = diameter_step(diameter_um)?;
        let tenths = |n: u32| mm(f64::from(n) / 10.0);
        ROWS.iter().find(|row| row.0 == most && row.1 == pitch_um).map(|row| (tenths(row.2), tenths(row.3)))
    }

    /// The group that an engaged length belongs to; None where the table has no row for the thread.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn engagement_group(&self, length: Length) -> Result<Option<EngagementGroup>, Error> {
        let length = to_mm(bounds::ENGAGEMENT.length(length)?);
        Ok(self.normal_engagement().map(|(short, long)| match () {
            () if length <= to_mm(short) => EngagementGroup::Short,
            () if length <= to_mm(long) => EngagementGroup::Normal,
            () => EngagementGroup::Long,
        }))
    }
}
