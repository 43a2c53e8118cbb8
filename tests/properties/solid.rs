//! Closed meshes: all shipped sets and random sets near them.

use lashwright::catalogue::GEAR_SETS;
use lashwright::gear::{DepthTaper, Design, Detail, GearSet, Part, Side, Solid, SolidError};
use lashwright::numerics::math;
use nalgebra::Vector3;
use proptest::prelude::*;

fn shipped() -> Vec<(&'static str, GearSet)> {
    GEAR_SETS
        .iter()
        .map(|embedded| {
            let design = Design::from_toml(embedded.text).expect("a shipped file reads");
            (embedded.name, GearSet::new(design).expect("a shipped set exists"))
        })
        .collect()
}

fn both(set: &GearSet, detail: Detail) -> [Solid; 2] {
    [
        Solid::wheel(set, detail).expect("wheel"),
        Solid::pinion(set, detail).expect("pinion"),
    ]
}

/// What must hold of every solid, with `euler` 0 for a body with a bore and 2 without; says what does not.
fn sound(solid: &Solid, euler: i64) -> Result<(), String> {
    let topology = solid.topology();
    if topology.open_edges != 0 {
        return Err(format!("{} open edges", topology.open_edges));
    }
    if topology.euler_characteristic() != euler {
        return Err(format!("Euler characteristic {}", topology.euler_characteristic()));
    }
    if topology.points != solid.points_mm().len() {
        return Err("points that nothing uses".to_owned());
    }
    let volume = solid.volume_mm3();
    if !(volume > 0.0 && volume.is_finite()) {
        return Err(format!("volume {volume}"));
    }
    let least = solid.smallest_area_mm2();
    if least.is_nan() || least <= 1e-6 {
        return Err(format!("a triangle of {least} mm²"));
    }
    for vertex in solid.vertices() {
        let off = (vertex.normal.norm() - 1.0).abs();
        if off.is_nan() || off >= 1e-9 {
            return Err(format!("normal {:?}", vertex.normal));
        }
    }
    Ok(())
}

#[test]
fn shipped_sets_are_closed_and_fit_the_window() {
    for (name, set) in shipped() {
        for detail in [
            Detail::WINDOW,
            Detail::new(5, 3),
            Detail::new(1, 2),
            Detail::new(37, 16),
        ] {
            let [wheel, pinion] = both(&set, detail);
            sound(&wheel, 0).unwrap_or_else(|what| panic!("{name} wheel {detail:?}: {what}"));
            sound(&pinion, 2).unwrap_or_else(|what| panic!("{name} pinion {detail:?}: {what}"));
            let triangles = wheel.triangles().len() + pinion.triangles().len();
            if detail == Detail::WINDOW {
                println!(
                    "{name}: {} + {} triangles",
                    wheel.triangles().len(),
                    pinion.triangles().len()
                );
                assert!(triangles < 60_000, "{name}: {triangles} triangles");
            }
        }
    }
}

/// Normals of vertices stand on the outside of the triangles that they belong to.
#[test]
fn normals_face_outward() {
    for (name, set) in shipped() {
        for (member, solid) in ["wheel", "pinion"].iter().zip(both(&set, Detail::new(24, 12))) {
            let mut least: f64 = 1.0;
            for (triangle, [a, b, c]) in solid.triangles().iter().zip(solid.corners_mm()) {
                let across = (b - a).cross(&(c - a)).normalize();
                for vertex in triangle.vertices {
                    let cosine = solid.vertices()[vertex as usize].normal.dot(&across);
                    least = least.min(cosine);
                    assert!(
                        cosine > 0.5,
                        "{name} {member}: {cosine} on {:?} at {a:?}",
                        triangle.part
                    );
                }
            }
            println!("{name} {member}: least cosine between normal and triangle {least:.3}");
        }
    }
}

fn turned_about_z(q: Vector3<f64>, angle: f64) -> Vector3<f64> {
    let (sin, cos) = math::sin_cos(angle);
    Vector3::new(q.x * cos - q.y * sin, q.x * sin + q.y * cos, q.z)
}

fn turned_about_x(p: Vector3<f64>, angle: f64) -> Vector3<f64> {
    let (sin, cos) = math::sin_cos(angle);
    Vector3::new(p.x, p.y * cos - p.z * sin, p.y * sin + p.z * cos)
}

/// Pinion angle by which the coast flank stands back: j0 as an arc at the wheel's outer pitch radius.
fn lash_turn_rad(set: &GearSet) -> f64 {
    set.design().lash_mm / (0.5 * set.design().wheel_outer_pitch_diameter_mm) / set.ratio().abs()
}

/// A pinion vertex turned back to tooth 0, the designed lash taken out of its coast flank.
fn on_tooth_0(set: &GearSet, solid: &Solid, vertex: &lashwright::gear::Vertex) -> Vector3<f64> {
    let mark = vertex.flank.expect("a vertex of a flank");
    let pitch = 2.0 * std::f64::consts::PI / f64::from(set.design().pinion_teeth);
    // The count goes against the positive sense.
    let p = turned_about_x(solid.position_mm(vertex), f64::from(mark.number) * pitch);
    if mark.side == Side::Drive {
        return p;
    }
    let outward = vertex.normal;
    let outward = turned_about_x(outward, f64::from(mark.number) * pitch);
    // The flank was turned against its outward normal.
    let sense = if p.y * outward.z - p.z * outward.y > 0.0 {
        1.0
    } else {
        -1.0
    };
    turned_about_x(p, sense * lash_turn_rad(set))
}

#[test]
fn flank_vertices_lie_on_the_flanks() {
    let (mut worst_wheel, mut worst_pinion, mut worst_normal): (f64, f64, f64) = (0.0, 0.0, 0.0);
    for (name, set) in shipped() {
        let [wheel, pinion] = both(&set, Detail::WINDOW);
        for vertex in wheel.vertices() {
            let Some(mark) = vertex.flank else { continue };
            let q = turned_about_z(
                wheel.position_mm(vertex),
                -f64::from(mark.number) * set.wheel_pitch_rad(),
            );
            let (distance, normal) = set.wheel_flank(mark.side).distance_and_normal(q);
            worst_wheel = worst_wheel.max(distance.abs());
            let vertex_normal = turned_about_z(vertex.normal, -f64::from(mark.number) * set.wheel_pitch_rad());
            worst_normal = worst_normal.max((normal - vertex_normal).norm());
            let (x, y) = set.blank().coordinates(math_radius(q.x, q.y), q.z);
            assert!(
                (x - mark.x).abs() + (y - mark.y).abs() < 1e-9,
                "{name}: {mark:?} at {x} {y}"
            );
        }
        let (mut here, mut lost, mut count): (f64, u32, u32) = (0.0, 0, 0);
        for vertex in pinion.vertices() {
            let Some(mark) = vertex.flank else { continue };
            count += 1;
            let flank = set.pinion_flank(mark.side);
            let p = on_tooth_0(&set, &pinion, vertex);
            let roll = flank
                .meeting(mark.x, mark.y)
                .expect("the wheel point meets the pinion")
                .roll_rad;
            // The other way round than it was made: from the pinion point, by the minimum along the roll.
            let Some((_, _, _, distance)) = flank.partner(p, roll) else {
                lost += 1;
                continue;
            };
            here = here.max((distance - flank.ease_off_mm(mark.x, mark.y)).abs());
        }
        for side in Side::BOTH {
            let marks = pinion
                .vertices()
                .iter()
                .filter_map(|v| v.flank)
                .filter(|mark| mark.side == side);
            let range = |of: fn(&lashwright::gear::FlankMark) -> f64| {
                marks
                    .clone()
                    .map(|mark| of(&mark))
                    .fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], v| {
                        [low.min(v), high.max(v)]
                    })
            };
            let ([toe, heel], [down, up]) = (range(|mark| mark.x), range(|mark| mark.y));
            println!("{name} {side}: the pinion's flank meets x {toe:.2} to {heel:.2}, y {down:.2} to {up:.2}");
            assert!(toe <= -1.0 && heel >= 1.0, "{name} {side}: x {toe} to {heel}");
            // The pinion's tip works at some roll before or after it is deepest, so that it does not reach y = −1.
            assert!(down < -0.5 && up > 0.9, "{name} {side}: y {down} to {up}");
        }
        println!(
            "{name}: pinion vertices off by {:.2e} µm at most; {lost} of {count} without a minimum",
            1e3 * here
        );
        assert!(here < 1e-3, "{name}: {here} mm");
        assert!(lost * 50 <= count, "{name}: {lost} of {count} vertices see no minimum");
        worst_pinion = worst_pinion.max(here);
    }
    println!(
        "wheel {:.2e} µm, normals {worst_normal:.1e}; pinion {:.2e} µm",
        1e3 * worst_wheel,
        1e3 * worst_pinion
    );
    assert!(worst_wheel < 1e-3, "{worst_wheel} mm");
    assert!(worst_normal < 1e-6, "{worst_normal}");
}

fn math_radius(a: f64, b: f64) -> f64 {
    (a * a + b * b).sqrt()
}

/// The pair in its designed place at several rolls: no vertex of a pinion flank lies deeper in the wheel's flank than its
/// ease-off says, and the land of the pinion's tooth stays over the bottom of the slot.
#[test]
fn teeth_interleave() {
    for (name, set) in shipped() {
        let pinion = Solid::pinion(&set, Detail::WINDOW).expect("pinion");
        let pitch = set.wheel_pitch_rad();
        let offset = Vector3::new(0.0, set.design().offset_mm, 0.0);
        let (mut deepest, mut lowest, mut count): (f64, f64, u32) = (f64::INFINITY, f64::INFINITY, 0);
        let mut nearest = [f64::INFINITY; 2];
        for step in -4_i32..4 {
            let roll = pitch * f64::from(step) / 8.0;
            for vertex in pinion.vertices() {
                let Some(mark) = vertex.flank else { continue };
                let p = pinion.position_mm(vertex);
                let on_wheel = turned_about_z(offset + turned_about_x(p, roll / set.ratio()), -roll);
                let (x, y) = set.blank().coordinates(math_radius(on_wheel.x, on_wheel.y), on_wheel.z);
                if on_wheel.x < 0.0 || x.abs() > 1.0 || y > 1.0 {
                    continue;
                }
                // Into slot 0; the count of the pinion's teeth is short, so that number z1 − 1 fills slot −1.
                let teeth = i64::from(set.design().pinion_teeth);
                let number = i64::from(mark.number);
                let slot = if 2 * number > teeth { number - teeth } else { number };
                #[expect(clippy::cast_precision_loss, reason = "a tooth number")]
                let q = turned_about_z(on_wheel, -(slot as f64) * pitch);
                let e = set.pinion_flank(mark.side).ease_off_mm(mark.x, mark.y);
                let gap = set.wheel_flank(mark.side).distance_mm(q);
                deepest = deepest.min(gap - e);
                let i = mark.side.index();
                nearest[i] = nearest[i].min(gap);
                let over_bottom = set.cutter().axis.dot(&(q - set.cutter().centre_mm));
                lowest = lowest.min(over_bottom);
                count += 1;
            }
        }
        println!(
            "{name}: {count} places in the wheel's teeth; gap less ease-off {:.3} µm or more, gap {:.1} and {:.1} µm or more; \
             {lowest:.2} mm over the bottom with a clearance of {:.2} mm",
            1e3 * deepest,
            1e3 * nearest[0],
            1e3 * nearest[1],
            set.blank().clearance_mm
        );
        assert!(count > 500, "{name}: only {count} places in mesh");
        assert!(deepest > -1e-3, "{name}: {deepest} mm");
        assert!(
            lowest > 0.5 * set.blank().clearance_mm,
            "{name}: {lowest} mm over the bottom"
        );
    }
}

/// The pinion's tooth is thinner by j0, measured as the issue of the lash says: turn of the pinion until coast touches,
/// as an arc at the wheel's outer pitch radius.
#[test]
fn the_designed_lash_is_in_the_solid() {
    let (_, mut set) = shipped().swap_remove(5);
    let with = Solid::pinion(&set, Detail::new(4, 4)).expect("pinion");
    let mut design = set.design().clone();
    let lash = design.lash_mm;
    design.lash_mm = 0.0;
    set = GearSet::new(design).expect("a shipped set exists");
    let without = Solid::pinion(&set, Detail::new(4, 4)).expect("pinion");
    let outer = 0.5 * set.design().wheel_outer_pitch_diameter_mm;
    for (a, b) in with.vertices().iter().zip(without.vertices()) {
        let (Some(mark), Some(_)) = (a.flank, b.flank) else {
            continue;
        };
        let (p, q) = (with.position_mm(a), without.position_mm(b));
        let turn = math::atan2(q.y * p.z - q.z * p.y, q.y * p.y + q.z * p.z);
        let arc = turn * set.ratio().abs() * outer;
        if mark.side == Side::Drive {
            assert!(arc.abs() < 1e-9, "the drive flank moved by {arc}");
        } else {
            let outward = q.y * b.normal.z - q.z * b.normal.y;
            assert!(
                (arc + outward.signum() * lash).abs() < 1e-9,
                "the coast flank moved by {arc} mm"
            );
        }
    }
}

/// Volume of a body of revolution with this outline (axial, radius), by Pappus, mm³.
fn revolved(outline: &[[f64; 2]]) -> f64 {
    let next = outline.iter().cycle().skip(1);
    let twice: f64 = outline
        .iter()
        .zip(next)
        .map(|(a, b)| (a[0] * b[1] - b[0] * a[1]) * (a[1] + b[1]) / 3.0)
        .sum();
    std::f64::consts::PI * twice.abs()
}

/// Outline of the body, read off the mesh, its corners in order.
fn outline(solid: &Solid, place: fn(Vector3<f64>) -> [f64; 2]) -> Vec<[f64; 2]> {
    let mut used: Vec<u32> = solid
        .triangles()
        .iter()
        .zip(solid.corner_points())
        .filter(|(triangle, _)| triangle.part == Part::Body)
        .flat_map(|(_, points)| points)
        .collect();
    used.sort_unstable();
    used.dedup();
    let mut corners: Vec<[f64; 2]> = Vec::new();
    for point in used {
        let [axial, r] = place(solid.points_mm()[point as usize]);
        if corners
            .last()
            .is_none_or(|c| (c[0] - axial).abs() + (c[1] - r).abs() > 1e-9)
        {
            corners.push([axial, r]);
        }
    }
    corners
}

/// Outline of the wheel's blank: the body and, over its teeth, the face cone.
fn wheel_outline(set: &GearSet, wheel: &Solid) -> Vec<[f64; 2]> {
    let body = outline(wheel, |p| [p.z, math_radius(p.x, p.y)]);
    // From the bore to the toe's foot, over the tips, from the heel's foot to the back.
    let (front, back) = body.split_at(3);
    let [toe, heel] = [-1.0, 1.0].map(|x| {
        let (r, z) = set.blank().place_mm(x, 1.0);
        [z, r]
    });
    [front, &[toe, heel], back].concat()
}

/// Whether a place lies inside an outline: a ray from it crosses the outline an odd number of times.
fn inside(outline: &[[f64; 2]], [axial, r]: [f64; 2]) -> bool {
    let next = outline.iter().cycle().skip(1);
    let crossings = outline
        .iter()
        .zip(next)
        .filter(|(a, b)| (a[1] > r) != (b[1] > r) && axial < a[0] + (r - a[1]) * (b[0] - a[0]) / (b[1] - a[1]));
    crossings.count() % 2 == 1
}

/// Shaft and front of the pinion stand nowhere in the wheel's blank.
#[test]
fn bodies_keep_clear_of_each_other() {
    for (name, set) in shipped() {
        let [wheel, pinion] = both(&set, Detail::WINDOW);
        let blank = wheel_outline(&set, &wheel);
        let mut seen = 0;
        for (triangle, corners) in pinion.triangles().iter().zip(pinion.corners_mm()) {
            if triangle.part != Part::Body {
                continue;
            }
            // Also between the corners of the long triangles of the shaft.
            for (i, j) in [
                (0, 0),
                (0, 1),
                (0, 2),
                (0, 3),
                (0, 4),
                (1, 1),
                (1, 2),
                (1, 3),
                (2, 1),
                (2, 2),
                (3, 1),
            ] {
                let (u, v) = (f64::from(i) / 4.0, f64::from(j) / 4.0);
                let [a, b, c] = corners;
                let q = a * (1.0 - u - v) + b * u + c * v + Vector3::new(0.0, set.design().offset_mm, 0.0);
                assert!(
                    !inside(&blank, [q.z, math_radius(q.x, q.y)]),
                    "{name}: {q:?} stands in the wheel"
                );
                seen += 1;
            }
        }
        assert!(seen > 1000, "{name}: {seen} places");
        let (r, z) = set.blank().place_mm(0.0, 0.0);
        assert!(
            inside(&blank, [z, r]),
            "{name}: the middle of a flank lies in the blank"
        );
    }
}

/// Volume of one slot of the wheel by a sum over places, from nothing but the distances from flanks and slot bottom, mm³.
fn slot_volume_mm3(set: &GearSet, along: u32) -> f64 {
    let (up, around) = (along + along / 3, 30 * along);
    let reach = 1.5 * set.wheel_pitch_rad();
    let blank = set.blank();
    let half_face = 0.5 * set.design().wheel_face_width_mm;
    let middle = |x: f64| {
        let at = |side| set.wheel_flank(side).point(x, 0.0).expect("a flank point").position_mm;
        let p = at(Side::Drive) + at(Side::Coast);
        math::atan2(p.y, p.x)
    };
    let lowest = -1.0 - 6.0 * blank.clearance_mm / blank.working_depth_mm;
    let mut sum = 0.0;
    for i in 0..along {
        let x = 2.0 * (f64::from(i) + 0.5) / f64::from(along) - 1.0;
        let centre = middle(x);
        for j in 0..up {
            let y = lowest + (1.0 - lowest) * (f64::from(j) + 0.5) / f64::from(up);
            let (r, z) = blank.place_mm(x, y);
            let above = blank.place_mm(x, y + 1e-3);
            let rise = math_radius(above.0 - r, above.1 - z) / 1e-3;
            let mut inside = 0.0;
            // The bottom cuts through a row of places: the part of the row over it counts.
            let row = (1.0 - lowest) / f64::from(up);
            for k in 0..around {
                let angle = centre + reach * ((f64::from(k) + 0.5) / f64::from(around) - 0.5);
                let (sin, cos) = math::sin_cos(angle);
                let q = Vector3::new(r * cos, r * sin, z);
                let deep = set.cutter().axis.dot(&(q - set.cutter().centre_mm));
                let between = set.wheel_flank(Side::Drive).distance_mm(q) > 0.0
                    && set.wheel_flank(Side::Coast).distance_mm(q) > 0.0;
                let high = Vector3::new(above.0 * cos, above.0 * sin, above.1);
                let rise_deep = set.cutter().axis.dot(&(high - q)) / 1e-3 * row;
                if between {
                    inside += (deep / rise_deep + 0.5).clamp(0.0, 1.0);
                }
            }
            let arc = r * reach * inside / f64::from(around);
            sum += arc * rise * row * 2.0 * half_face / f64::from(along);
        }
    }
    sum
}

/// Against the blank of revolution less slots that were measured independently of the mesh. The mesh is refined twice; its
/// error falls with the square of the fields, so that a third of the last change is added and half of that is the
/// tolerance. The sum over places may be off by its own change from half as many places a side, and by 1e-4 for the steps
/// around, which are a few hundredths of a millimetre.
#[test]
fn the_wheels_volume_is_the_blank_less_its_slots() {
    for (name, set) in shipped().into_iter().step_by(3) {
        let [coarse, middle, fine] = [6, 12, 24].map(|n| {
            let solid = Solid::wheel(&set, Detail::new(2 * n, n)).expect("wheel");
            let blank = revolved(&wheel_outline(&set, &solid));
            (solid.volume_mm3(), blank)
        });
        let slots = |along| f64::from(set.design().wheel_teeth) * slot_volume_mm3(&set, along);
        let (rough, slots) = (slots(24), slots(48));
        let expected = fine.1 - slots;
        let left = (fine.0 - middle.0) / 3.0;
        let off = fine.0 + left - expected;
        let tolerance = 0.5 * left.abs() + (slots - rough).abs() + 1e-4 * slots;
        println!(
            "{name}: blank {:.0}, slots {slots:.0}, expected {expected:.0}, mesh {:.0} {:.0} {:.0} mm³, refined without end off by {off:.1} (tolerance {tolerance:.1})",
            fine.1, coarse.0, middle.0, fine.0
        );
        assert!(off.abs() < tolerance, "{name}: off by {off} mm³, tolerance {tolerance}");
        assert!(
            (fine.0 - middle.0).abs() < 0.4 * (middle.0 - coarse.0).abs(),
            "{name}: refining does not settle"
        );
    }
}

/// The pinion's volume settles with detail and lies where teeth of about half a pitch must have it: between the body under
/// its root cone and the one under its face cone.
#[test]
fn the_pinions_volume_settles_between_its_cones() {
    for (name, set) in shipped() {
        let [coarse, middle, fine] = [6, 12, 24].map(|n| Solid::pinion(&set, Detail::new(2 * n, n)).expect("pinion"));
        let volumes = [&coarse, &middle, &fine].map(Solid::volume_mm3);
        let body = outline(&fine, |p| [p.x, math_radius(p.y, p.z)]);
        // End faces of teeth: everything at the toe and heel that is no flank.
        let (sin, cos) = math::sin_cos(set.pitch().pinion_pitch_angle_rad);
        let ends = |of: fn(f64, f64) -> bool| {
            let stations = fine.vertices().iter().filter(|v| v.flank.is_some()).map(|v| {
                let p = fine.position_mm(v);
                p.x * cos + math_radius(p.y, p.z) * sin
            });
            stations
                .reduce(|a, b| if of(a, b) { a } else { b })
                .expect("flank vertices")
        };
        let (toe, heel) = (ends(|a, b| a < b), ends(|a, b| a > b));
        let under = |cone: &lashwright::gear::ConeLine| {
            // Where the line across the pitch cone at a station meets the cone: x cos + r sin = station.
            let corner = |station: f64| {
                let x = (station - cone.radius_at_crossing_mm * sin) / (cos + cone.slope * sin);
                [x, cone.radius_mm(x)]
            };
            // Bands of the body: start on the axis, front, foot of the toe; foot of the heel to the end.
            let mut corners = body.clone();
            // The points on the axis come last: start, then end.
            corners.rotate_right(2);
            let end = corners.remove(1);
            corners.push(end);
            let foot = corners
                .iter()
                .position(|c| (c[0] * cos + c[1] * sin - toe).abs() < 1e-6)
                .expect("foot of the toe");
            corners.splice(foot + 1..=foot, [corner(toe), corner(heel)]);
            revolved(&corners)
        };
        let (least, most) = (under(&set.blank().pinion_root), under(&set.blank().pinion_face));
        let share = (volumes[2] - least) / (most - least);
        println!(
            "{name}: {:.0} {:.0} {:.0} mm³, teeth fill {share:.3} between the cones",
            volumes[0], volumes[1], volumes[2]
        );
        assert!(share > 0.3 && share < 0.7, "{name}: teeth fill {share}");
        let [first, second] = [volumes[1] - volumes[0], volumes[2] - volumes[1]];
        assert!(second.abs() < 0.4 * first.abs(), "{name}: {first} then {second}");
    }
}

prop_compose! {
    fn near_a_shipped_set()(
        which in 0..GEAR_SETS.len(),
        pinion_teeth in -2_i32..=2,
        wheel_teeth in -3_i32..=3,
        offset in 0.7_f64..1.2,
        face in 0.8_f64..1.2,
        spiral in -5.0_f64..5.0,
        limit in 0.85_f64..1.2,
        cutter in 0.85_f64..1.2,
        drive in 14.0_f64..26.0,
        coast in 14.0_f64..26.0,
        uniform in any::<bool>(),
        depth in 1.6_f64..2.4,
        clearance in 0.1_f64..0.3,
        addendum in 0.6_f64..1.4,
        thickness in -0.05_f64..0.2,
        lash in 0.0_f64..0.5,
        crown in 0.0_f64..150.0,
    ) -> Design {
        let mut design = Design::from_toml(GEAR_SETS[which].text).expect("a shipped file reads");
        design.pinion_teeth = design.pinion_teeth.saturating_add_signed(pinion_teeth).max(5);
        design.wheel_teeth = design.wheel_teeth.saturating_add_signed(wheel_teeth);
        design.offset_mm *= offset;
        design.wheel_face_width_mm *= face;
        design.pinion_mean_spiral_angle_deg += spiral;
        design.limit_radius_mm *= limit;
        design.cutter_radius_mm *= cutter;
        design.pressure_angle_drive_deg = drive;
        design.pressure_angle_coast_deg = coast;
        design.depth = if uniform { DepthTaper::Uniform } else { DepthTaper::Tapered };
        design.depth_factor = depth;
        design.clearance_factor = clearance;
        design.wheel_addendum_factor *= addendum;
        design.thickness_factor = thickness;
        design.lash_mm = lash;
        design.ease_off_drive.profile_crown_um = crown;
        design.ease_off_coast.lengthwise_crown_um = crown;
        design
    }
}

proptest! {
    /// Whatever exists as gears has closed solids; only doubtful gears may have none, with an error that says why not.
    #[test]
    fn sets_near_the_shipped_ones_are_closed(design in near_a_shipped_set(), along in 1_u32..16, up in 2_u32..10) {
        let Ok(set) = GearSet::new(design) else { return Ok(()) };
        let detail = Detail::new(along, up);
        match Solid::wheel(&set, detail) {
            Ok(solid) => prop_assert_eq!(sound(&solid, 0), Ok(())),
            Err(error) => {
                prop_assert!(!set.warnings().is_empty(), "{}", error);
                prop_assert!(!matches!(error, SolidError::PinionFlank { .. }), "{}", error);
            }
        }
        match Solid::pinion(&set, detail) {
            Ok(solid) => prop_assert_eq!(sound(&solid, 2), Ok(())),
            Err(error) => {
                prop_assert!(!set.warnings().is_empty(), "{}", error);
                prop_assert!(!matches!(error, SolidError::WheelFlank { .. }), "{}", error);
            }
        }
    }
}
