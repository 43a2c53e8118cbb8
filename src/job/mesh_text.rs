//! What the teeth do at one placement, in words and numbers for a technician.

use crate::document::mesh::{FlankDocument, MeshDocument};
use crate::gear::{Design, Hunting, HuntingKind};
use crate::quantity::{self, Units};

/// What a technician wants to read.
pub fn text(design: &Design, document: &MeshDocument) -> String {
    let mut lines = vec![design.name.clone(), teeth(design), String::new()];
    lines.extend(document.warnings.iter().map(|warning| format!("Warning: {warning}")));
    if !document.warnings.is_empty() {
        lines.push(String::new());
    }
    lines.extend(placement(document));
    lines.push(String::new());
    lines.extend(lash(document));
    for (name, flank) in [
        ("Drive (convex flank of the ring gear)", &document.drive),
        ("Coast (concave flank of the ring gear)", &document.coast),
    ] {
        lines.push(String::new());
        lines.push(format!("{name}, {} µm paste", quantity::number(document.paste_um, 1)));
        lines.extend(flank_lines(design, flank).into_iter().map(|line| format!("  {line}")));
    }
    if let Some(geometry) = geometry(document) {
        lines.push(String::new());
        lines.extend(geometry);
    }
    lines.join("\n")
}

/// Metric with the inch value behind it.
fn both(show: fn(f64, Units) -> String, length_mm: f64) -> String {
    format!("{} ({})", show(length_mm, Units::Metric), show(length_mm, Units::Inch))
}

fn teeth(design: &Design) -> String {
    let ratio = f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth);
    let timing = match Hunting::of(design.pinion_teeth, design.wheel_teeth).map(|h| h.kind) {
        Some(HuntingKind::Hunting) | None => "hunting: no timing marks",
        Some(HuntingKind::PartlyHunting) => "partly hunting: put together by its timing marks",
        Some(HuntingKind::NonHunting) => "non-hunting: put together by its timing marks",
    };
    format!(
        "{} to {} teeth, {} to 1, {timing}",
        design.wheel_teeth,
        design.pinion_teeth,
        quantity::number(ratio, 3)
    )
}

fn placement(document: &MeshDocument) -> [String; 5] {
    let p = &document.placement;
    let said = |value: f64, positive: &'static str, negative: &'static str| {
        if value > 0.0 {
            positive
        } else if value < 0.0 {
            negative
        } else {
            "as designed"
        }
    };
    let line = |name: &str, value: f64, positive, negative| {
        format!(
            "  {name:<18}{}  {}",
            both(quantity::deviation, value),
            said(value, positive, negative)
        )
    };
    [
        "Placement".to_owned(),
        line("Pinion depth", p.pinion_axial_mm, "shallower", "deeper"),
        line(
            "Ring gear",
            p.wheel_axial_mm,
            "away from the pinion",
            "toward the pinion",
        ),
        line("Offset", p.offset_mm, "more", "less"),
        format!(
            "  {:<18}{}°  {}",
            "Shaft angle",
            quantity::signed(p.shaft_angle_deg, 3),
            said(p.shaft_angle_deg, "opened", "closed")
        ),
    ]
}

fn lash(document: &MeshDocument) -> Vec<String> {
    let name = "Lash at the ring gear's outer pitch diameter, along its circumference";
    let l = &document.lash_mm;
    let (Some(min), Some(mean), Some(max)) = (l.min, l.mean, l.max) else {
        return vec![
            name.to_owned(),
            "  none to be had: a flank finds no contact at this placement".to_owned(),
        ];
    };
    let mut lines = vec![
        name.to_owned(),
        format!("  Tightest  {}", both(quantity::fine_length, min)),
        format!("  Mean      {}", both(quantity::fine_length, mean)),
        format!("  Loosest   {}", both(quantity::fine_length, max)),
    ];
    if max < 0.0 {
        lines.push("  Interference: the teeth would have to overlap; gears placed so do not go together".to_owned());
    } else if min < 0.0 {
        lines.push("  Interference over part of the pitch: the gears bind there".to_owned());
    }
    lines
}

/// Where a print sits along the tooth.
fn lengthwise(x: f64) -> &'static str {
    match x {
        x if x < -0.5 => "at the toe",
        x if x < -0.25 => "toward the toe",
        x if x < -0.08 => "slightly toward the toe",
        x if x <= 0.08 => "in the middle of the length",
        x if x <= 0.25 => "slightly toward the heel",
        x if x <= 0.5 => "toward the heel",
        _ => "at the heel",
    }
}

/// Where a print sits in height.
fn height(y: f64) -> &'static str {
    match y {
        y if y < -0.5 => "at the root",
        y if y < -0.25 => "low",
        y if y < -0.08 => "a little low",
        y if y <= 0.08 => "in the middle of the height",
        y if y <= 0.25 => "a little high",
        y if y <= 0.5 => "high",
        _ => "at the top",
    }
}

fn percent(share: f64) -> String {
    format!("{}\u{a0}%", quantity::number(100.0 * share, 0))
}

fn flank_lines(design: &Design, flank: &FlankDocument) -> Vec<String> {
    let pattern = &flank.pattern;
    let (Some([x, y]), Some(toe), Some(heel), Some(root), Some(top)) =
        (pattern.centroid, pattern.toe, pattern.heel, pattern.root, pattern.top)
    else {
        return vec!["No print: no part of this flank comes as near as the paste is thick".to_owned()];
    };
    let ends = [
        (toe <= -0.98, "the toe"),
        (heel >= 0.98, "the heel"),
        (root <= -0.98, "the root"),
        (top >= 0.98, "the top"),
    ];
    let runs_off: Vec<&str> = ends.iter().filter(|(off, _)| *off).map(|(_, end)| *end).collect();
    let mut lines = vec![format!("Print {}, {}", lengthwise(x), height(y))];
    if !runs_off.is_empty() {
        lines.push(format!("The print runs off the flank at {}", runs_off.join(" and ")));
    }
    let millimetres = 0.5 * design.wheel_face_width_mm;
    lines.push(format!(
        "{} of the flank marked; centre x {}, y {}",
        percent(pattern.area_fraction),
        quantity::signed(x, 2),
        quantity::signed(y, 2)
    ));
    lines.push(format!(
        "Length: {} of {} face width, from x {} (toe end is {MINUS}1) to {} (heel end is +1)",
        quantity::length((heel - toe) * millimetres, Units::Metric),
        quantity::length(design.wheel_face_width_mm, Units::Metric),
        quantity::signed(toe, 2),
        quantity::signed(heel, 2)
    ));
    lines.push(format!(
        "Height: from y {} (root is {MINUS}1) to {} (top is +1)",
        quantity::signed(root, 2),
        quantity::signed(top, 2)
    ));
    if let Some(error) = flank.transmission_error_urad {
        lines.push(format!(
            "Transmission error {}\u{a0}µrad at the ring gear, peak to peak",
            quantity::number(error, 1)
        ));
    }
    lines.push(edges(flank));
    lines
}

const MINUS: char = '\u{2212}';

fn edges(flank: &FlankDocument) -> String {
    let (wheel, tip) = (
        flank.edge_contact.wheel.unwrap_or(0.0),
        flank.edge_contact.pinion_tip.unwrap_or(0.0),
    );
    if wheel <= 0.0 && tip <= 0.0 {
        return "No edge contact".to_owned();
    }
    let mut parts = Vec::new();
    if wheel > 0.0 {
        parts.push(format!(
            "on an edge of the ring gear's flank for {} of the roll",
            percent(wheel)
        ));
    }
    if tip > 0.0 {
        parts.push(format!("on the pinion's tip edge for {} of the roll", percent(tip)));
    }
    format!("Edge contact, a print to correct: {}", parts.join(", "))
}

fn geometry(document: &MeshDocument) -> Option<Vec<String>> {
    let g = document.geometry.as_ref()?;
    let degrees = |value: f64| format!("{}°", quantity::number(value, 2));
    let limit = g.limit_radius_mm.map_or_else(
        || "none (no offset)".to_owned(),
        |radius| quantity::length(radius, Units::Metric),
    );
    let line = |name: &str, value: String| format!("  {name:<34}{value}");
    Some(vec![
        "As designed".to_owned(),
        line(
            "Pitch angles, ring gear / pinion",
            format!(
                "{} / {}",
                degrees(g.wheel_pitch_angle_deg),
                degrees(g.pinion_pitch_angle_deg)
            ),
        ),
        line(
            "Spiral angles, ring gear / pinion",
            format!(
                "{} / {}",
                degrees(g.wheel_spiral_angle_deg),
                degrees(g.pinion_spiral_angle_deg)
            ),
        ),
        line(
            "Ring gear face / root angle",
            format!(
                "{} / {}",
                degrees(g.wheel_face_angle_deg),
                degrees(g.wheel_root_angle_deg)
            ),
        ),
        line("Pinion face angle", degrees(g.pinion_face_angle_deg)),
        line(
            "Mean radii, ring gear / pinion",
            format!(
                "{} / {}",
                quantity::length(g.wheel_mean_radius_mm, Units::Metric),
                quantity::length(g.pinion_mean_radius_mm, Units::Metric)
            ),
        ),
        line(
            "Mean normal module",
            quantity::fine_length(g.mean_normal_module_mm, Units::Metric),
        ),
        line(
            "Offset angle in the pitch plane",
            degrees(g.offset_angle_pitch_plane_deg),
        ),
        line(
            "Limit pressure angle / radius",
            format!("{} / {limit}", degrees(g.limit_pressure_angle_deg)),
        ),
        line(
            "Cutter blades, drive / coast",
            format!(
                "{} / {}",
                degrees(g.blade_angle_drive_deg),
                degrees(g.blade_angle_coast_deg)
            ),
        ),
        line(
            "Cutter point width",
            quantity::fine_length(g.point_width_mm, Units::Metric),
        ),
    ])
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
        }
    }

    fn design() -> Design {
        Design::from_toml(include_str!("../../assets/gears/3.73-tapered-ring-224.toml")).expect("shipped")
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
        assert!(text(&design(), &binding).contains("no contact"), "none");
    }
}
