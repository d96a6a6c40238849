//! Random paths, lines, benches and options. Seeds are fixed: every run tries the same ones.

use linewright::units::{Length, deg, mm};
use linewright::{
    Bench, Bend, End, Flare, FlareTool, Former, Line, Nose, Nut, Path, PlanOptions, Port, Seat, Side,
    Springback, Thread, Trial, Tube,
};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};

/// A run of as many cases as [`super::cases`] says, from a fixed seed.
pub fn config(usual: u32) -> Config {
    Config {
        cases: super::cases(usual),
        rng_seed: RngSeed::Fixed(20_260_105),
        failure_persistence: None,
        ..Config::default()
    }
}

/// Turns a constructor's refusal into a discarded case; these strategies stay within the bounds, so there is none.
fn made<T: std::fmt::Debug, E>(result: Result<T, E>) -> Option<T> {
    result.ok()
}

pub fn bend() -> impl Strategy<Value = Bend> {
    let rotation = prop_oneof![
        4 => -180.0..180.0_f64,
        1 => prop::sample::select(vec![0.0, 90.0, 180.0, -90.0]),
    ];
    (5.0..150.0_f64, rotation, 5.0..50.0_f64).prop_filter_map("a bend", |(angle, rotation, radius)| {
        made(Bend::new(deg(angle), deg(rotation), mm(radius)))
    })
}

/// One to eight bends with radii of their own, no straight below 5 mm.
pub fn path() -> impl Strategy<Value = Path> {
    prop::collection::vec((bend(), 5.0..500.0_f64), 1..=8).prop_flat_map(|parts| {
        (5.0..500.0_f64).prop_filter_map("a path", move |first| {
            let straights: Vec<Length> =
                std::iter::once(first).chain(parts.iter().map(|(_, straight)| *straight)).map(mm).collect();
            let bends: Vec<Bend> = parts.iter().map(|(bend, _)| *bend).collect();
            made(Path::from_straights(&straights, &bends))
        })
    })
}

/// A path as bad lines have it: loops, hardly any straight, legs that overlap, or no bend at all.
pub fn any_path() -> impl Strategy<Value = Path> {
    let angle = prop_oneof![6 => 1.0..150.0_f64, 1 => 150.0..800.0_f64, 2 => Just(90.0), 1 => Just(0.0)];
    let radius = prop_oneof![4 => Just(14.3), 1 => 5.0..60.0_f64];
    let length = prop_oneof![2 => 0.0..60.0_f64, 2 => 30.0..40.0_f64, 2 => 60.0..900.0_f64, 1 => Just(37.0)];
    let parts = prop::collection::vec((angle, -180.0..180.0_f64, radius, length.clone()), 0..=6);
    (length, parts, any::<bool>()).prop_filter_map("a path", |(first, parts, corners)| {
        let lengths: Vec<Length> = std::iter::once(first).chain(parts.iter().map(|p| p.3)).map(mm).collect();
        let bends: Option<Vec<Bend>> =
            parts.iter().map(|p| made(Bend::new(deg(p.0), deg(p.1), mm(p.2)))).collect();
        let bends = bends?;
        let legs = if corners { made(Path::from_legs(&lengths, &bends)) } else { None };
        legs.or_else(|| made(Path::from_straights(&lengths, &bends)))
    })
}

fn thread() -> impl Strategy<Value = Option<Thread>> {
    prop::sample::select(vec!["M10x1", "M10x1", "3/8-24", "M9x1", "unknown"])
        .prop_map(|t| made(Thread::read(t)))
}

fn end() -> impl Strategy<Value = End> {
    let flare = prop::sample::select(vec![Flare::Double45, Flare::Double45, Flare::Bubble, Flare::Single37]);
    let nose = prop::option::weighted(0.8, prop::sample::select(Nose::ALL.to_vec()));
    let seat = prop::option::weighted(0.8, prop::sample::select(Seat::ALL.to_vec()));
    let port = prop::option::weighted(0.8, (thread(), seat, "[a-z ]{0,12}"));
    let sizes = (8.0..40.0_f64, prop::sample::select(vec![5.0, 6.6, 4.7]));
    (thread(), sizes, nose, flare, port).prop_filter_map(
        "an end",
        |(thread, (length, bore), nose, flare, port)| {
            let nut = made(Nut::new(thread, mm(length), mm(bore), nose))?;
            let port = port.map(|(thread, seat, name)| Port::new(&name, thread, seat));
            Some(End { port, ..End::new(nut, flare) })
        },
    )
}

fn tube() -> impl Strategy<Value = Tube> {
    let size = prop::sample::select(vec![(4.7625, 0.7112), (4.75, 0.7), (6.35, 0.7112)]);
    let material = prop::sample::select(linewright::material::ALL.to_vec());
    (size, material, prop::option::of(10.0..20.0_f64)).prop_filter_map(
        "a tube",
        |((od, wall), material, limit)| {
            let tube: Tube = made(Tube::new(mm(od), mm(wall), material))?;
            match limit {
                Some(limit) => made(tube.with_min_radius(mm(limit), "an invented data sheet")),
                None => Some(tube),
            }
        },
    )
}

/// A line whose parts need not agree.
pub fn line() -> impl Strategy<Value = Line> {
    (any_path(), tube(), end(), end(), "[A-Za-z0-9 ]{0,20}")
        .prop_map(|(path, tube, a, b, name)| Line::new(&name, tube, path, a, b))
}

fn flare_tool(flare: Flare) -> impl Strategy<Value = Option<FlareTool>> {
    let measured = (prop::option::of(0.0..6.0_f64), prop::option::of(0.0..6.0_f64));
    let sizes = (5.0..25.0_f64, 0.0..8.0_f64);
    prop::option::weighted(
        0.8,
        (sizes, measured).prop_filter_map("a tool", move |((clamp, out), (net, spare))| {
            let mut tool = made(FlareTool::new(flare, mm(clamp), mm(out)))?;
            if let Some(net) = net {
                tool = made(tool.with_net_shortening(mm(net)))?;
            }
            match spare {
                Some(spare) => made(tool.with_cut_spare(mm(spare))),
                None => Some(tool),
            }
        }),
    )
}

/// A bench that may lack tools, trials and habits.
pub fn bench() -> impl Strategy<Value = Bench> {
    let tools = (flare_tool(Flare::Double45), flare_tool(Flare::Bubble), flare_tool(Flare::Single37));
    let trials = prop::sample::select(vec![0_usize, 1, 2, 2, 2]);
    let habits = (prop::option::of(0.0..6.0_f64), prop::option::of(0.0..6.0_f64));
    (tools, 0.0..60.0_f64, trials, habits).prop_filter_map("a bench", |((a, b, c), grip, trials, habits)| {
        let tools: Vec<FlareTool> = [a, b, c].into_iter().flatten().collect();
        let mut bench = made(Bench::new(made(Former::new(mm(14.3), mm(grip)))?, &tools))?;
        let both = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
        if trials > 0 {
            bench = bench.with_springback(made(Springback::from_trials(&both[..trials]))?);
        }
        if let Some(clearance) = habits.0 {
            bench = made(bench.with_clearance(mm(clearance)))?;
        }
        match habits.1 {
            Some(back_off) => made(bench.with_back_off(mm(back_off))),
            None => Some(bench),
        }
    })
}

/// Options with wishes and acceptances, some of them of findings that no person can lift.
pub fn options() -> impl Strategy<Value = PlanOptions> {
    let side = prop::option::of(prop::sample::select(vec![Side::A, Side::B]));
    let code = prop::sample::select(linewright::code::TABLE.iter().map(|row| row.name).collect::<Vec<_>>());
    let part = prop::sample::select(vec!["line", "end A", "end B", "straight 2", "straight 3", "bend 1"]);
    let liftable = prop::sample::select(vec!["BEND_IN_CLAMP", "NUT_ON_BEND", "BENDS_TOO_CLOSE"]);
    let who = prop::sample::select(vec!["J. Doe", "J. Doe", " ", ""]);
    let acceptance = (prop_oneof![code, liftable], part, who);
    (side, 0.0..30.0_f64, prop::collection::vec(acceptance, 0..4)).prop_filter_map(
        "options",
        |(side, reserve, lifts)| {
            let mut options = made(PlanOptions::default().with_reserve(mm(reserve)))?;
            if let Some(side) = side {
                options = options.with_trim_end(side);
            }
            for (code, part, who) in lifts {
                options = options.accept(&format!("{code}@{part}"), who, "tried by hand");
            }
            Some(options)
        },
    )
}

/// Text from the pieces that lengths, angles and threads are written with, or of any bytes.
pub fn text() -> impl Strategy<Value = String> {
    let piece = prop::sample::select(vec![
        "3",
        "16",
        "316",
        "0",
        "1e999",
        "1e-400",
        "9",
        "1/4",
        "3/16",
        "/",
        "-",
        "+",
        ".",
        ",",
        " ",
        "\u{a0}",
        "'",
        "\"",
        "in",
        "mm",
        "cm",
        "m",
        "ft",
        "thou",
        "deg",
        "°",
        "rad",
        "turn",
        "included",
        "o'clock",
        "½",
        "⅜",
        "⁄",
        "″",
        "nan",
        "inf",
        "e",
        "x",
        "×",
        "M",
        "24",
        "UNF",
        "mar",
        "2025",
        "99999999999999999999",
        "İ",
        "ẞ",
        "\u{200b}",
        "٣",
        "é",
    ]);
    prop_oneof![
        3 => prop::collection::vec(piece, 0..8).prop_map(|pieces| pieces.concat()),
        1 => prop::collection::vec(any::<u8>(), 0..24).prop_map(|bytes| String::from_utf8_lossy(&bytes).into_owned()),
        1 => any::<String>(),
    ]
}

/// Any double at all, with more than their share of the odd ones.
pub fn bits() -> impl Strategy<Value = f64> {
    prop_oneof![
        2 => any::<u64>().prop_map(f64::from_bits),
        1 => prop::sample::select(vec![
            0.0, -0.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, f64::MIN, f64::MIN_POSITIVE, 5e-324, 1.0,
            180.0, -180.0, 3600.0, -3600.0, 540.0, 1e5, 1e6,
        ]),
        2 => -4000.0..4000.0_f64,
    ]
}
