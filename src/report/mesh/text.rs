//! What the teeth do at one placement, in words and numbers for a technician.

use crate::document::mesh::{FlankDocument, MeshDocument};
use crate::gear::{Design, Hunting, HuntingKind};
use crate::quantity::{self, Units};
use crate::words::{self, say, tooth};

use crate::report::columns::{in_columns, with_unit};

/// What a technician wants to read.
pub(crate) fn text(design: &Design, document: &MeshDocument) -> String {
    let mut lines = vec![design.name.clone(), teeth(design), String::new()];
    lines.extend(
        document
            .warnings
            .iter()
            .map(|warning| say!("mesh-warning", what = warning.clone())),
    );
    if !document.warnings.is_empty() {
        lines.push(String::new());
    }
    lines.extend(placement(document));
    lines.push(String::new());
    lines.extend(lash(document));
    let film = quantity::number(document.paste_um, 1);
    for (heading, flank) in [
        (say!("mesh-drive-heading", film = film.clone()), &document.drive),
        (say!("mesh-coast-heading", film = film), &document.coast),
    ] {
        lines.push(String::new());
        lines.push(heading);
        lines.extend(flank_lines(design, flank).into_iter().map(|line| format!("  {line}")));
    }
    if let Some(geometry) = geometry(document) {
        lines.push(String::new());
        lines.extend(geometry);
    }
    lines.push(String::new());
    lines.push(words::simulated());
    lines.join("\n")
}

/// Metric with the inch value behind it.
fn both(show: fn(f64, Units) -> String, length_mm: f64) -> String {
    format!("{} ({})", show(length_mm, Units::Metric), show(length_mm, Units::Inch))
}

fn teeth(design: &Design) -> String {
    let ratio = f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth);
    let (ring_gear, pinion, ratio) = (design.wheel_teeth, design.pinion_teeth, quantity::number(ratio, 3));
    match Hunting::of(pinion, ring_gear).map(|h| h.kind) {
        Some(HuntingKind::Hunting) | None => say!(
            "mesh-teeth-hunting",
            ring_gear = ring_gear,
            pinion = pinion,
            ratio = ratio
        ),
        Some(HuntingKind::PartlyHunting) => say!(
            "mesh-teeth-partly-hunting",
            ring_gear = ring_gear,
            pinion = pinion,
            ratio = ratio
        ),
        Some(HuntingKind::NonHunting) => say!(
            "mesh-teeth-non-hunting",
            ring_gear = ring_gear,
            pinion = pinion,
            ratio = ratio
        ),
    }
}

fn placement(document: &MeshDocument) -> Vec<String> {
    let p = &document.placement;
    let said = |shown: String, value: f64, positive: String, negative: String| {
        let meaning = if value > 0.0 {
            positive
        } else if value < 0.0 {
            negative
        } else {
            say!("mesh-as-designed")
        };
        format!("{shown}  {meaning}")
    };
    let line = |value: f64, positive, negative| said(both(quantity::deviation, value), value, positive, negative);
    let rows = [
        (
            say!("mesh-pinion-depth"),
            line(
                p.pinion_axial_mm,
                say!("mesh-from-ring-gear"),
                say!("mesh-toward-ring-gear"),
            ),
        ),
        (
            say!("mesh-ring-gear"),
            line(p.wheel_axial_mm, say!("mesh-from-pinion"), say!("mesh-toward-pinion")),
        ),
        (
            say!("mesh-offset"),
            line(p.offset_mm, say!("mesh-more-offset"), say!("mesh-less-offset")),
        ),
        (
            say!("mesh-shaft-angle"),
            said(
                format!("{}°", quantity::signed(p.shaft_angle_deg, 3)),
                p.shaft_angle_deg,
                say!("mesh-angle-opened"),
                say!("mesh-angle-closed"),
            ),
        ),
    ];
    let mut lines = vec![say!("mesh-placement")];
    lines.extend(in_columns(&rows));
    lines
}

fn lash(document: &MeshDocument) -> Vec<String> {
    let l = &document.lash_mm;
    let mut lines = vec![say!("mesh-backlash-measured")];
    let (Some(min), Some(mean), Some(max)) = (l.min, l.mean, l.max) else {
        lines.push(format!("  {}", say!("mesh-no-backlash")));
        return lines;
    };
    lines.extend(in_columns(&[
        (say!("mesh-tightest"), both(quantity::fine_length, min)),
        (say!("mesh-mean"), both(quantity::fine_length, mean)),
        (say!("mesh-loosest"), both(quantity::fine_length, max)),
    ]));
    if max < 0.0 {
        lines.push(format!("  {}", say!("mesh-interference")));
    } else if min < 0.0 {
        lines.push(format!("  {}", say!("mesh-interference-in-places")));
    }
    lines
}

/// Where a print sits along the tooth.
fn lengthwise(x: f64) -> String {
    match x {
        x if x < -0.5 => say!("mesh-at-toe"),
        x if x < -0.25 => say!("mesh-toward-toe"),
        x if x < -0.08 => say!("mesh-slightly-toward-toe"),
        x if x <= 0.08 => say!("mesh-middle-of-length"),
        x if x <= 0.25 => say!("mesh-slightly-toward-heel"),
        x if x <= 0.5 => say!("mesh-toward-heel"),
        _ => say!("mesh-at-heel"),
    }
}

/// Where a print sits in height.
fn height(y: f64) -> String {
    match y {
        y if y < -0.5 => say!("mesh-at-flank"),
        y if y < -0.25 => say!("mesh-toward-flank"),
        y if y < -0.08 => say!("mesh-slightly-toward-flank"),
        y if y <= 0.08 => say!("mesh-middle-of-height"),
        y if y <= 0.25 => say!("mesh-slightly-toward-face"),
        y if y <= 0.5 => say!("mesh-toward-face"),
        _ => say!("mesh-at-face"),
    }
}

fn percent(share: f64) -> String {
    with_unit(&quantity::number(100.0 * share, 0), "%")
}

fn flank_lines(design: &Design, flank: &FlankDocument) -> Vec<String> {
    let pattern = &flank.pattern;
    let (Some([x, y]), Some(toe), Some(heel), Some(root), Some(top)) =
        (pattern.centroid, pattern.toe, pattern.heel, pattern.root, pattern.top)
    else {
        return vec![say!("mesh-no-pattern-at-all")];
    };
    let ends = [
        (toe <= -0.98, tooth::toe()),
        (heel >= 0.98, tooth::heel()),
        (root <= -0.98, tooth::flank()),
        (top >= 0.98, tooth::face()),
    ];
    let runs_off: Vec<String> = ends.into_iter().filter(|(off, _)| *off).map(|(_, end)| end).collect();
    let mut lines = vec![say!("mesh-pattern-place", along = lengthwise(x), up = height(y))];
    if !runs_off.is_empty() {
        lines.push(say!("mesh-pattern-runs-off", edges = runs_off.join(", ")));
    }
    let millimetres = 0.5 * design.wheel_face_width_mm;
    lines.push(say!(
        "mesh-area-and-center",
        area = percent(pattern.area_fraction),
        along = quantity::signed(x, 2),
        up = quantity::signed(y, 2)
    ));
    lines.push(say!(
        "mesh-length",
        length = quantity::length((heel - toe) * millimetres, Units::Metric),
        face_width = quantity::length(design.wheel_face_width_mm, Units::Metric),
        toe = quantity::signed(toe, 2),
        heel = quantity::signed(heel, 2)
    ));
    lines.push(say!(
        "mesh-height",
        root = quantity::signed(root, 2),
        top = quantity::signed(top, 2)
    ));
    if let Some(error) = flank.transmission_error_urad {
        lines.push(say!("mesh-transmission-error-of", error = quantity::number(error, 1)));
    }
    lines.push(edges(flank));
    lines
}

fn edges(flank: &FlankDocument) -> String {
    let (wheel, tip) = (
        flank.edge_contact.wheel.unwrap_or(0.0),
        flank.edge_contact.pinion_tip.unwrap_or(0.0),
    );
    match (wheel > 0.0, tip > 0.0) {
        (false, false) => say!("mesh-no-edge-contact"),
        (true, false) => say!("mesh-edge-contact-ring-gear", ring_gear = percent(wheel)),
        (false, true) => say!("mesh-edge-contact-pinion", pinion = percent(tip)),
        (true, true) => say!(
            "mesh-edge-contact-both",
            ring_gear = percent(wheel),
            pinion = percent(tip)
        ),
    }
}

fn geometry(document: &MeshDocument) -> Option<Vec<String>> {
    let g = document.geometry.as_ref()?;
    let degrees = |value: f64| format!("{}°", quantity::number(value, 2));
    let limit = g.limit_radius_mm.map_or_else(
        || say!("mesh-no-limit-radius"),
        |radius| quantity::length(radius, Units::Metric),
    );
    let rows = [
        (
            say!("mesh-pitch-angles"),
            format!(
                "{} / {}",
                degrees(g.wheel_pitch_angle_deg),
                degrees(g.pinion_pitch_angle_deg)
            ),
        ),
        (
            say!("mesh-spiral-angles"),
            format!(
                "{} / {}",
                degrees(g.wheel_spiral_angle_deg),
                degrees(g.pinion_spiral_angle_deg)
            ),
        ),
        (
            say!("mesh-ring-gear-angles"),
            format!(
                "{} / {}",
                degrees(g.wheel_face_angle_deg),
                degrees(g.wheel_root_angle_deg)
            ),
        ),
        (say!("mesh-pinion-face-angle"), degrees(g.pinion_face_angle_deg)),
        (
            say!("mesh-mean-radii"),
            format!(
                "{} / {}",
                quantity::length(g.wheel_mean_radius_mm, Units::Metric),
                quantity::length(g.pinion_mean_radius_mm, Units::Metric)
            ),
        ),
        (
            say!("mesh-normal-module"),
            quantity::fine_length(g.mean_normal_module_mm, Units::Metric),
        ),
        (say!("mesh-offset-angle"), degrees(g.offset_angle_pitch_plane_deg)),
        (
            say!("mesh-limit"),
            format!("{} / {limit}", degrees(g.limit_pressure_angle_deg)),
        ),
        (
            say!("mesh-blades"),
            format!(
                "{} / {}",
                degrees(g.blade_angle_drive_deg),
                degrees(g.blade_angle_coast_deg)
            ),
        ),
        (
            say!("mesh-point-width"),
            quantity::fine_length(g.point_width_mm, Units::Metric),
        ),
    ];
    let mut lines = vec![say!("mesh-geometry")];
    lines.extend(in_columns(&rows));
    Some(lines)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::mesh::{
        EdgeContactDocument, GeometryDocument, LashDocument, PatternDocument, PlacementDocument,
    };

    fn flank(centroid: Option<[f64; 2]>, ends: Option<[f64; 4]>) -> FlankDocument {
        FlankDocument {
            pattern: PatternDocument {
                area_fraction: if centroid.is_some() { 0.26 } else { 0.0 },
                centroid,
                toe: ends.map(|e| e[0]),
                heel: ends.map(|e| e[1]),
                root: ends.map(|e| e[2]),
                top: ends.map(|e| e[3]),
            },
            transmission_error_urad: centroid.map(|_| 129.97),
            edge_contact: EdgeContactDocument {
                wheel: centroid.map(|_| 0.0),
                pinion_tip: centroid.map(|_| 0.25),
            },
        }
    }

    fn document() -> MeshDocument {
        MeshDocument {
            gears: "sample".to_owned(),
            route: "exact".to_owned(),
            paste_um: 8.0,
            warnings: vec!["the pinion's tooth is pointed at the heel.".to_owned()],
            placement: PlacementDocument {
                pinion_axial_mm: 0.1,
                wheel_axial_mm: -0.05,
                offset_mm: 0.0,
                shaft_angle_deg: -0.01,
            },
            geometry: Some(GeometryDocument {
                pinion_pitch_angle_deg: 18.0104,
                wheel_pitch_angle_deg: 70.8783,
                pinion_spiral_angle_deg: 50.0,
                wheel_spiral_angle_deg: 29.6753,
                offset_angle_pitch_plane_deg: 20.3247,
                limit_pressure_angle_deg: -6.2237,
                limit_radius_mm: Some(101.0),
                mean_normal_module_mm: 4.1062,
                wheel_mean_radius_mm: 96.88,
                pinion_mean_radius_mm: 35.14,
                wheel_face_angle_deg: 72.384,
                wheel_root_angle_deg: 65.861,
                pinion_face_angle_deg: 22.774,
                point_width_mm: 2.2145,
                blade_angle_drive_deg: 16.313,
                blade_angle_coast_deg: 23.809,
            }),
            lash_mm: LashDocument {
                min: Some(0.2359),
                mean: Some(0.2404),
                max: Some(0.2479),
            },
            drive: flank(Some([0.102, 0.25]), Some([-0.533, 0.99, -0.412, 0.928])),
            coast: flank(None, None),
            note: String::new(),
        }
    }

    fn design() -> Design {
        Design::from_toml(include_str!("../../../assets/gears/3.73-tapered-ring-224.toml")).expect("shipped")
    }

    #[test]
    fn what_a_technician_reads() {
        insta::assert_snapshot!(text(&design(), &document()).replace('\u{a0}', " "));
    }

    #[test]
    fn interference_and_no_contact_are_said() {
        let mut binding = document();
        binding.lash_mm = LashDocument {
            min: Some(-0.02),
            mean: Some(-0.01),
            max: Some(0.01),
        };
        assert!(text(&design(), &binding).contains("bind"), "part of the pitch");
        binding.lash_mm = LashDocument {
            min: Some(-0.02),
            mean: Some(-0.01),
            max: Some(-0.005),
        };
        assert!(
            text(&design(), &binding).contains("do not go together"),
            "all of the pitch"
        );
        binding.lash_mm = LashDocument {
            min: None,
            mean: None,
            max: None,
        };
        assert!(text(&design(), &binding).contains("cannot touch"), "none");
    }
}
