//! Tables of bends and lines that were worked out elsewhere, row by row.

use linewright::units::{Length, deg, mm, to_deg, to_mm};
use linewright::{Bend, Code, Path, Point};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

/// The table of lines is printed to a billionth of a millimeter or degree.
const PRINTED: f64 = 1e-9;
/// Half a unit of the last of twelve printed digits, as a share of the figure.
const TWELVE_DIGITS: f64 = 5.1e-12;

fn rows(table: &str) -> Result<Vec<Vec<String>>, std::io::Error> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tables").join(table);
    let text = std::fs::read_to_string(path)?;
    let lines = text.lines().filter(|line| !line.starts_with('#'));
    Ok(lines.map(|line| line.split(';').map(str::to_owned).collect()).collect())
}

fn numbers(text: &str) -> Result<Vec<f64>, std::num::ParseFloatError> {
    text.split_whitespace().map(str::parse).collect()
}

#[test]
fn one_bend_row_by_row() -> Outcome {
    let rows = rows("single_bend.csv")?;
    assert_eq!(rows.len(), 17);
    for row in rows {
        let figures: Vec<f64> = row.iter().map(|figure| figure.parse()).collect::<Result<_, _>>()?;
        let [angle, radius, arc, tangent, gain] = figures[..] else { return Err("a row of five".into()) };
        let bend = Bend::new(deg(angle), deg(0.0), mm(radius))?;
        let near = |got: Length, want: f64| (to_mm(got) - want).abs() <= TWELVE_DIGITS * want.abs();
        assert!(near(bend.arc(), arc), "{angle}: arc {}", to_mm(bend.arc()));
        if gain.is_infinite() {
            // The table says that there is none; so does the code.
            assert_eq!(bend.gain().unwrap_err().code(), Code::NoCorner);
            continue;
        }
        assert!(near(bend.tangent_length()?, tangent), "{angle}: tangent {}", to_mm(bend.tangent_length()?));
        assert!(near(bend.gain()?, gain), "{angle}: gain {}", to_mm(bend.gain()?));
    }
    Ok(())
}

#[test]
fn lines_row_by_row() -> Outcome {
    let rows = rows("bend_geometry.csv")?;
    assert_eq!(rows.len(), 10);
    for row in rows {
        let [name, vertices, radii, straights, rotations, angles, developed, end] = &row[..] else {
            return Err("a row of eight".into());
        };
        let points: Vec<Point> = vertices
            .split(' ')
            .map(|point| {
                let xyz: Vec<f64> = point.split(',').map(str::parse).collect::<Result<_, _>>()?;
                Ok(<[f64; 3]>::try_from(xyz).map_err(|_| "three coordinates")?.map(mm))
            })
            .collect::<Result<_, Box<dyn Error>>>()?;
        // The table drops the radii of points that are no corners; all of its lines with such points have one radius.
        let mut radii: Vec<Length> = numbers(radii)?.into_iter().map(mm).collect();
        if radii.len() + 2 != points.len() {
            radii.truncate(1);
        }
        let path = Path::from_vertices(&points, &radii)?;
        let check = |what: &str, got: Vec<f64>, want: &str, turns: bool| -> Outcome {
            let want = numbers(want)?;
            assert_eq!(got.len(), want.len(), "{name}: {what}");
            for (got, want) in got.iter().zip(&want) {
                let off = (got - want).abs();
                let off = if turns { off.min((360.0 - off).abs()) } else { off };
                // The vertices themselves are printed to 1e-9, and a sharp corner multiplies that.
                assert!(off <= 20.0 * PRINTED, "{name}: {what} {got} instead of {want}");
            }
            Ok(())
        };
        check("straights", path.straights().iter().map(|s| to_mm(*s)).collect(), straights, false)?;
        check("rotations", path.bends().iter().map(|b| to_deg(b.rotation())).collect(), rotations, true)?;
        check("angles", path.bends().iter().map(|b| to_deg(b.angle())).collect(), angles, false)?;
        check("developed length", vec![to_mm(path.developed_length())], developed, false)?;
        check("end point", path.end_point().iter().map(|c| to_mm(*c)).collect(), end, false)?;
    }
    Ok(())
}
