//! Laws of the wall after a bend and of the section: limits and monotony on random tubes.

#[path = "../common/mod.rs"]
mod common;

use common::random;
use linewright::bend::pressure::{Cylinder, Strength, Theory, ovality_amplification};
use linewright::bend::wall::{BentWall, FlattenedSection, Kinematics, Place};
use linewright::units::{Length, mm, mpa, ratio, to_mm, to_mpa};
use linewright::{Material, Tube};
use proptest::prelude::*;

fn tube(od: f64, wall: f64) -> Result<Tube, linewright::Error> {
    Tube::new(mm(od), mm(wall), Material::LowCarbonSteel)
}

fn some_tube() -> impl Strategy<Value = (f64, f64)> {
    (4.0..20.0_f64, 0.04..0.3_f64).prop_map(|(od, share)| (od, od * share))
}

proptest! {
    #![proptest_config(random::config(2_000))]

    #[test]
    fn theories_keep_their_order((od, wall) in some_tube(), strength in 50.0..800.0_f64, factor in 1.0..8.0_f64) {
        let tube = tube(od, wall)?;
        let asked = Strength::new(mpa(strength), ratio(factor), "random")?;
        let at = |cylinder: &Cylinder, theory| {
            cylinder.ideal_cylinder_pressure(theory, &asked).map(|ideal| to_mpa(ideal.pressure()))
        };
        let straight = Cylinder::new(&tube);
        prop_assert!(at(&straight, Theory::Barlow)? < at(&straight, Theory::Lame)?);
        prop_assert!(at(&straight, Theory::Lame)? < at(&straight, Theory::Tresca)?);
        prop_assert!(at(&straight, Theory::Tresca)? < at(&straight, Theory::VonMises)?);
        let thinner = straight.with_tolerances(mm(0.05), mm(0.02))?;
        let bent = straight.bent(mm(2.0 * od))?;
        let tighter = straight.bent(mm(1.5 * od))?;
        // Boardman's formula is for walls up to a sixth, and there low, as Barlow's.
        let thin = wall < od / 6.0;
        prop_assert_eq!(at(&straight, Theory::Boardman).is_ok(), thin);
        prop_assert!(!thin || at(&straight, Theory::Boardman)? < at(&straight, Theory::Lame)?);
        for theory in Theory::ALL.into_iter().filter(|theory| thin || *theory != Theory::Boardman) {
            prop_assert!(at(&thinner, theory)? < at(&straight, theory)?);
            prop_assert!(at(&bent, theory)? < at(&straight, theory)?);
            prop_assert!(at(&tighter, theory)? < at(&bent, theory)?);
            let ideal = straight.ideal_cylinder_pressure(theory, &asked)?;
            let margin = straight.margin(theory, ideal.pressure(), &asked)?;
            prop_assert!((margin.found().value / factor - 1.0).abs() < 1e-12);
        }
        // Worst of a thin-walled bend: outside, all of the stretch out of the wall.
        let ideal = bent.ideal_cylinder_pressure(Theory::Barlow, &asked)?;
        prop_assert_eq!(ideal.place(), Some(Place::Extrados));
        let drop = at(&straight, Theory::Barlow)? / to_mpa(ideal.pressure());
        prop_assert!((drop - (1.0 + 1.0 / 8.0)).abs() < 1e-12, "{}", drop);
    }

    #[test]
    fn tolerances_come_before_or_after_the_bend((od, wall) in some_tube(), tight in 1.5..10.0_f64) {
        let straight = Cylinder::new(&tube(od, wall)?);
        let radius = mm(tight * od);
        let one = straight.with_tolerances(mm(0.1), mm(0.01))?.bent(radius)?.with_neutral_shift(mm(0.05))?;
        let other = straight.bent(radius)?.with_neutral_shift(mm(0.05))?.with_tolerances(mm(0.1), mm(0.01))?;
        prop_assert_eq!(one, other);
    }

    #[test]
    fn walls_lie_between_their_bounds((od, wall) in some_tube(), times in 1.000_001..20.0_f64, shift in -0.49..0.49_f64) {
        // From where the formulas begin: one diameter, or the radius at which the thickened inside just leaves a bore.
        let tight = times * (0.25 / (0.5 - wall / od)).max(1.0);
        let bent = BentWall::new(&tube(od, wall)?, mm(tight * od))?;
        let share = |length: Length| to_mm(length) / wall;
        prop_assert!(bent.extrados().least < bent.extrados().most && share(bent.extrados().most) < 1.0);
        prop_assert!(bent.intrados().least < bent.intrados().most && share(bent.intrados().least) > 1.0);
        let wider = BentWall::new(&tube(od, wall)?, mm(1.1 * tight * od))?;
        prop_assert!(wider.extrados().least > bent.extrados().least);
        prop_assert!(wider.intrados().most < bent.intrados().most);
        prop_assert!(wider.outer_stretch() < bent.outer_stretch());
        // Plane strain keeps the metal: wall times fiber is the same at every place.
        let kept = share(bent.extrados().least) * (tight + 0.5) - share(bent.intrados().most) * (tight - 0.5);
        prop_assert!(kept.abs() < 1e-12);
        prop_assert!(to_mm(bent.intrados().most) < od / 2.0 && bent.outer_stretch().value <= 0.5 + 1e-9);
        prop_assert!(BentWall::new(&tube(od, wall)?, mm(0.999_999 / times * tight * od)).is_err());
        // Where a shift is refused and where it is not, by the lengths of the fibers.
        let inside = bent.with_neutral_shift(mm(shift * od)).is_ok();
        let (outer, inner) = ((tight + 0.5) / (tight - shift), (tight - shift) / (tight - 0.5));
        prop_assert_eq!(inside, outer <= 2.0 && inner <= 2.0 && wall * inner.max(1.0) < od / 2.0);
        prop_assert!(bent.with_neutral_shift(bent.with_plastic_neutral_axis().neutral_shift()).is_ok());
    }

    #[test]
    fn measures_of_a_section_lead_to_each_other((od, wall) in some_tube(), left in 0.1..0.999_f64) {
        let tube = tube(od, wall)?;
        let closed = 2.0 * wall / od;
        let share = closed + left * (1.0 - closed);
        for kinematics in Kinematics::ALL {
            let section = FlattenedSection::from_flattening(&tube, ratio(share), kinematics)?;
            let back = FlattenedSection::from_ovality(&tube, section.ovality(), kinematics)?;
            prop_assert!((back.flattening().value - share).abs() < 1e-9, "{} {}", share, back.flattening().value);
            prop_assert!((back.bore_share().value - section.bore_share().value).abs() < 1e-9);
            prop_assert!(section.bore_share().value < 1.0 && section.bore_loss().value > 0.0);
            prop_assert!(section.ovality().value >= 1.0 - share - 1e-12);
        }
    }

    #[test]
    fn ovality_adds_and_pressure_rounds((od, wall) in some_tube(), u in 0.001..0.125_f64, p in 1.0..50.0_f64) {
        let tube = tube(od, wall)?;
        let at = |u: f64, p: f64| {
            ovality_amplification(&tube, mm(u * od), mpa(p), mpa(207_000.0), ratio(0.29)).map(|peak| peak.value)
        };
        prop_assert!(at(u, p)? > 1.0 && at(1.1 * u, p)? > at(u, p)? && at(u, 1.1 * p)? < at(u, p)?);
    }
}
