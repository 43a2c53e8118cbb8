//! What can be done at each part as things stand: the table of all work, in the trade's words.

use serde_json::{Value, json};

use super::hazards::hazards;
use super::slip::{SURE, chances};
use super::work::{Field, FieldKind, Piece, Work, whole};
use super::{Amount, AxlePart, Laid};
use crate::axle::SideSetting;
use crate::bench::instrument::WrenchKind;
use crate::bench::{Bench, CarrierSide, Instrument, Level, Measurand, Operation, Part, Ring, ShimPlace, StemChoice};
use crate::exercise::TraineeView;
use crate::words::{answer, bench as words};

/// All work of an axle, done or not possible now.
pub(super) fn works(bench: &Bench, seen: &TraineeView, laid: &Laid) -> Vec<Work> {
    let mut table = Table {
        bench,
        seen,
        laid,
        works: Vec::new(),
    };
    table.whole_axle();
    table.ring_gear();
    table.pinion();
    table.bearings();
    table.shims_and_spacer();
    table.nut_and_seal();
    table.carrier();
    table.sides();
    table.case_and_kit();
    table.plates();
    table.works
}

struct Table<'a> {
    bench: &'a Bench,
    seen: &'a TraineeView,
    laid: &'a Laid,
    works: Vec<Work>,
}

fn number(name: &'static str, at: &'static str, amount: Amount, start: Option<f64>) -> Field {
    Field {
        name,
        at,
        kind: FieldKind::Number { amount, start },
        options: Vec::new(),
    }
}

fn tick(name: &'static str, at: &'static str, start: bool) -> Field {
    Field {
        name,
        at,
        kind: FieldKind::Tick { start },
        options: Vec::new(),
    }
}

fn choice(name: &'static str, at: &'static str, options: Vec<(String, Value)>, start: usize) -> Field {
    let (words, values) = options.into_iter().unzip();
    Field {
        name,
        at,
        kind: FieldKind::Choice { options: words, start },
        options: values,
    }
}

fn said(options: &[(&str, Value)]) -> Vec<(String, Value)> {
    options
        .iter()
        .map(|(word, value)| ((*word).to_owned(), value.clone()))
        .collect()
}

impl Table<'_> {
    fn add(&mut self, part: AxlePart, name: impl Into<String>, template: Value, fields: Vec<Field>) {
        let mut template = template;
        // Fields that start with something stand in the operation that is tried.
        for field in &fields {
            let start = match &field.kind {
                FieldKind::Number { start, amount } => {
                    start.map(|v| if *amount == Amount::Count { whole(v) } else { json!(v) })
                }
                FieldKind::Choice { start, .. } => field.options.get(*start).cloned(),
                FieldKind::Tick { start } => Some(json!(start)),
                FieldKind::Pieces { .. } | FieldKind::Text => None,
            };
            if let (Some(start), Some(place)) = (start, template.pointer_mut(field.at)) {
                *place = start;
            }
        }
        let operation = serde_json::from_value::<Operation>(template.clone()).ok();
        let not_now = operation.as_ref().and_then(|operation| self.not_now(operation));
        let hazards = if template.get("precautions").is_some() {
            hazards(self.bench, &template, &fields)
        } else {
            Vec::new()
        };
        self.works.push(Work {
            part,
            name: name.into(),
            minutes: operation
                .as_ref()
                .map_or(0.0, |o| self.bench.setting().tariff.minutes_of(o.kind())),
            reads: matches!(operation, Some(Operation::Measure { .. })),
            fields,
            hazards,
            not_now,
            template,
        });
    }

    /// Why an operation cannot be done now, if that is plain to see.
    fn not_now(&self, operation: &Operation) -> Option<String> {
        let mut tried = operation.clone();
        // Of work with a choice it is asked whether any of it can be done.
        if let Operation::TakeApart { to, .. } = &mut tried {
            *to = Level::Bearings;
        }
        if let Operation::Condemn { evidence, .. } = &mut tried {
            evidence.extend(self.seen.records.first().map(|r| r.number));
        }
        let refusal = self.bench.plain_refusal(&tried)?;
        Some(answer::refusal(&refusal))
    }

    /// Instruments on the bench that a quantity is read with.
    fn tools(&self, fits: fn(&Instrument) -> bool) -> Field {
        let tools = &self.bench.setting().tools;
        let options = tools
            .iter()
            .filter(|tool| fits(&tool.instrument))
            .map(|tool| (words::tool(&tool.name), json!(tool.name)))
            .collect();
        choice("With", "/instrument", options, 0)
    }

    fn measure(&mut self, part: AxlePart, name: &str, what: Measurand, fits: fn(&Instrument) -> bool) {
        let fields = vec![self.tools(fits), again()];
        self.add(part, name, reading(what), fields);
    }

    fn whole_axle(&mut self) {
        let part = AxlePart::Axle;
        let levels = [
            (Level::Caps, "caps"),
            (Level::Carrier, "carrier"),
            (Level::Wheel, "wheel"),
            (Level::Nut, "nut"),
            (Level::Pinion, "pinion"),
            (Level::Bearings, "bearings"),
        ];
        let options = levels
            .into_iter()
            .map(|(level, value)| (words::level(level), json!(value)))
            .collect();
        self.add(
            part,
            "Take apart",
            json!({"do": "take_apart", "to": "carrier", "precautions": []}),
            vec![choice("As far as", "/to", options, 1)],
        );
        let parts = Part::ALL.map(|p| (words::part(p), json!(p)));
        let records = self.seen.records.iter().map(|record| Piece {
            number: record.number,
            words: format!("{}: {}", record.number, words::measurand(record.what)),
            labelled_mm: None,
            fitted: false,
        });
        let evidence = Field {
            name: "Readings that show it",
            at: "/evidence",
            kind: FieldKind::Pieces {
                pieces: records.collect(),
                sum: false,
            },
            options: Vec::new(),
        };
        self.add(
            part,
            "Condemn a part",
            json!({"do": "condemn", "part": "gears", "reason": "", "evidence": []}),
            vec![
                choice("Part", "/part", parts.to_vec(), 7),
                Field {
                    name: "Why",
                    at: "/reason",
                    kind: FieldKind::Text,
                    options: Vec::new(),
                },
                evidence,
            ],
        );
    }

    fn ring_gear(&mut self) {
        let part = AxlePart::RingGear;
        let stems = [
            StemChoice::SquareToTrace,
            StemChoice::AlongMotion,
            StemChoice::AlongNormal,
        ];
        let stems = stems.map(|stem| (words::stem(stem), json!(stem))).to_vec();
        let fields = vec![
            number("Tooth in mesh", "/what/tooth", Amount::Count, Some(0.0)),
            self.tools(|i| matches!(i, Instrument::Dial(_))),
            choice("Stem", "/stem", stems, 0),
            again(),
        ];
        self.add(part, "Rock for lash", reading(Measurand::Lash { tooth: 0 }), fields);
        let teeth = self.bench.setting().axle.gears().wheel_teeth;
        let at = |starts: &[u32]| -> Value {
            starts
                .iter()
                .flat_map(|s| (0..3).map(move |k| (s + k) % teeth))
                .collect()
        };
        let places = vec![
            ("three, at one place".to_owned(), at(&[0])),
            ("three, at two places".to_owned(), at(&[0, teeth / 2])),
            ("three, at three places".to_owned(), at(&[0, teeth / 3, 2 * teeth / 3])),
        ];
        let films = said(&[
            ("wiped thin", json!("thin")),
            ("as usual", json!("usual")),
            ("thick", json!("thick")),
        ]);
        self.add(
            part,
            "Brush paste on",
            json!({"do": "brush_paste", "teeth": [], "film": "usual"}),
            vec![choice("Teeth", "/teeth", places, 0), choice("Film", "/film", films, 1)],
        );
        self.add(
            part,
            "Roll the painted teeth",
            json!({"do": "roll", "drag_nm": 0.0, "passes": 1}),
            vec![
                number("Drag on the ring gear", "/drag_nm", Amount::NutTorque, Some(20.0)),
                number("Passes each way", "/passes", Amount::Count, Some(4.0)),
            ],
        );
        self.add(
            part,
            "Look at the print",
            reading(Measurand::Print {}),
            vec![self.tools(|i| matches!(i, Instrument::Eye))],
        );
        self.ring_gear_at_the_bench();
    }

    fn ring_gear_at_the_bench(&mut self) {
        let part = AxlePart::RingGear;
        self.measure(part, "Face runout", Measurand::WheelFaceRunout {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        self.measure(part, "Radial runout", Measurand::WheelRadialRunout {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        self.add(
            part,
            "Heat",
            json!({"do": "heat_wheel", "to_c": 0.0, "precautions": []}),
            vec![number("To", "/to_c", Amount::Celsius, Some(80.0))],
        );
        self.measure(part, "Temperature", Measurand::WheelTemperature {}, |i| {
            matches!(i, Instrument::Thermometer(_))
        });
        self.add(
            part,
            "Wait",
            json!({"do": "wait", "minutes": 0.0}),
            vec![number("For", "/minutes", Amount::Minutes, Some(15.0))],
        );
        self.add(
            part,
            "Draw on with its bolts",
            json!({"do": "fit_wheel", "crosswise": true, "precautions": []}),
            vec![tick("Crosswise", "/crosswise", false)],
        );
        self.add(
            part,
            "Torque its bolts",
            json!({"do": "tighten_ring_bolts", "thread_lock": true}),
            vec![tick("Thread-locking", "/thread_lock", false)],
        );
        self.add(part, "Take off", json!({"do": "remove_wheel"}), Vec::new());
        for what in ["wheel_seat", "threads"] {
            self.clean(part, what);
        }
        self.clean(part, "teeth");
        self.replace(part, Part::RingBolts);
    }

    fn clean(&mut self, part: AxlePart, what: &str) {
        let name = serde_json::from_value(json!(what)).map_or_else(|_| "Clean".to_owned(), words::cleaned);
        let template = json!({"do": "clean", "what": what, "precautions": []});
        self.add(part, name, template, Vec::new());
    }

    fn replace(&mut self, part: AxlePart, of: Part) {
        let name = format!("New {} from the shelf", words::part(of));
        self.add(part, name, json!({"do": "replace", "part": of}), Vec::new());
    }

    fn turn_and_push(&mut self, part: AxlePart, what: &str) {
        self.add(
            part,
            "Turn",
            json!({"do": "turn", "what": what, "turns": 0.0}),
            vec![number("Turns", "/turns", Amount::Turns, Some(10.0))],
        );
        let ways = said(&[("into mesh", json!("mesh")), ("out of mesh", json!("apart"))]);
        self.add(
            part,
            "Push along its axis",
            json!({"do": "push", "what": what, "toward": "mesh"}),
            vec![choice("Which way", "/toward", ways, 0)],
        );
    }

    fn pinion(&mut self) {
        let part = AxlePart::Pinion;
        self.add(part, "Put in", json!({"do": "insert_pinion"}), Vec::new());
        self.add(part, "Take out", json!({"do": "remove_pinion"}), Vec::new());
        self.turn_and_push(part, "pinion");
        self.add(part, "Read the numbers", json!({"do": "compare_numbers"}), Vec::new());
        self.measure(part, "Gauge its depth", Measurand::PinionDepth {}, |i| {
            matches!(i, Instrument::DepthGauge(_))
        });
        let dial: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Dial(_));
        self.measure(part, "End play", Measurand::PinionEndPlay {}, dial);
        self.measure(part, "Runout", Measurand::PinionRunout {}, dial);
    }

    fn bearings(&mut self) {
        for (ring, value, part, short) in [
            (Ring::HeadCup, "head_cup", AxlePart::HeadBearing, "cup"),
            (Ring::HeadCone, "head_cone", AxlePart::HeadBearing, "cone"),
            (Ring::TailCup, "tail_cup", AxlePart::TailBearing, "cup"),
        ] {
            self.add(
                part,
                format!("Press the {short} on"),
                json!({"do": "press", "ring": value, "force_kn": 1.0, "precautions": []}),
                vec![number(
                    "Stop the press at",
                    "/force_kn",
                    Amount::Kilonewtons,
                    Some(20.0),
                )],
            );
            self.add(
                part,
                format!("Pull the {short} off"),
                json!({"do": "pull_off", "ring": value, "precautions": []}),
                Vec::new(),
            );
            self.measure(
                part,
                &format!("Feel behind the {short}"),
                Measurand::SeatGap { ring },
                |i| matches!(i, Instrument::Feeler(_)),
            );
        }
        let part = AxlePart::HeadBearing;
        self.add(
            part,
            "Slip set-up bearings in",
            json!({"do": "fit_set_up_bearings"}),
            Vec::new(),
        );
        self.add(
            part,
            "Take set-up bearings out",
            json!({"do": "remove_set_up_bearings"}),
            Vec::new(),
        );
        self.clean(part, "bearings");
        self.replace(part, Part::PinionBearings);
    }

    /// Fitting, taking out and measuring the pack of a place.
    fn pack(&mut self, part: AxlePart, place: ShimPlace, value: &str) {
        let pieces = self.seen.kit.iter().filter(|p| p.place == place).map(|p| Piece {
            number: p.number,
            words: String::new(),
            labelled_mm: Some(p.labelled_mm),
            fitted: p.fitted,
        });
        let field = Field {
            name: "Pieces, by their labels",
            at: "/pieces",
            kind: FieldKind::Pieces {
                pieces: pieces.collect(),
                sum: true,
            },
            options: Vec::new(),
        };
        let what = if place == ShimPlace::Spacer { "shims" } else { "pack" };
        self.add(
            part,
            format!("Make up the {what}"),
            json!({"do": "fit_shims", "place": value, "pieces": []}),
            vec![field],
        );
        self.add(
            part,
            format!("Take the {what} out"),
            json!({"do": "remove_shims", "place": value}),
            Vec::new(),
        );
        self.measure(
            part,
            &format!("Measure the {what}"),
            Measurand::ShimPack { place },
            |i| matches!(i, Instrument::Micrometer(_)),
        );
    }

    fn shims_and_spacer(&mut self) {
        self.pack(AxlePart::DepthShim, ShimPlace::Depth, "depth");
        let part = AxlePart::Spacer;
        let sleeve = self.laid.layout.has_sleeve();
        self.add(
            part,
            if sleeve {
                "Put a new sleeve on"
            } else {
                "Put on the shaft"
            },
            json!({"do": "fit_spacer", "spacer": "own", "new": sleeve}),
            Vec::new(),
        );
        if sleeve {
            self.add(
                part,
                "Put the old sleeve back on",
                json!({"do": "fit_spacer", "spacer": "own", "new": false}),
                Vec::new(),
            );
        }
        self.add(part, "Take off", json!({"do": "remove_spacer"}), Vec::new());
        if !sleeve {
            self.pack(part, ShimPlace::Spacer, "spacer");
        }
    }

    fn nut_and_seal(&mut self) {
        let part = AxlePart::Nut;
        let laid = self.laid;
        self.add(
            part,
            "Flange and nut on",
            json!({"do": "fit_nut", "new": true}),
            vec![tick("A new nut", "/new", false)],
        );
        let wrenches: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] > 30.0);
        let mut with = self.tools(wrenches);
        with.at = "/wrench";
        self.add(
            part,
            "Tighten to a torque",
            json!({"do": "tighten_nut", "torque_nm": 0.0, "wrench": "", "precautions": []}),
            vec![
                number(
                    "Torque",
                    "/torque_nm",
                    Amount::NutTorque,
                    Some(self.seen.card.targets.nut_torque_nm),
                ),
                with,
            ],
        );
        // A click wrench shows nothing while the nut is turned.
        let shows: fn(&Instrument) -> bool =
            |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] > 30.0 && w.kind != WrenchKind::Click);
        let mut read = self.tools(shows);
        read.at = "/wrench";
        read.name = "Read on";
        self.add(
            part,
            "Turn by an angle",
            json!({"do": "turn_nut", "angle_deg": 0.0, "wrench": null, "precautions": []}),
            vec![
                number("Angle, + tightens", "/angle_deg", Amount::Degrees, Some(10.0)),
                read,
            ],
        );
        self.add(
            part,
            "Nut and flange off",
            json!({"do": "remove_nut", "precautions": []}),
            Vec::new(),
        );
        let hand: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] <= 30.0);
        self.measure(part, "Feel the rotating torque", Measurand::RollingTorque {}, hand);
        self.replace(part, Part::Nut);
        let part = AxlePart::Seal;
        self.add(part, "Drive a new one in", json!({"do": "fit_seal"}), Vec::new());
        self.add(part, "Pull out", json!({"do": "remove_seal"}), Vec::new());
        if laid.layout.has_cartridge() {
            let part = AxlePart::Cartridge;
            self.add(part, "Bolt to the case", json!({"do": "bolt_cartridge"}), Vec::new());
            self.add(part, "Unbolt", json!({"do": "unbolt_cartridge"}), Vec::new());
        }
    }

    fn carrier(&mut self) {
        let part = AxlePart::Carrier;
        self.add(
            part,
            "Set in the case",
            json!({"do": "set_carrier_in", "marks_out_teeth": 0, "precautions": []}),
            vec![number(
                "Timing marks out by, teeth",
                "/marks_out_teeth",
                Amount::Count,
                Some(0.0),
            )],
        );
        self.add(
            part,
            "Lift out",
            json!({"do": "lift_carrier_out", "precautions": []}),
            Vec::new(),
        );
        self.turn_and_push(part, "carrier");
        self.measure(
            part,
            "Feel its rotating torque",
            Measurand::CarrierTorque {},
            |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] <= 30.0),
        );
        self.measure(part, "End play", Measurand::CarrierEndPlay {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        self.replace(part, Part::SideBearings);
        let part = AxlePart::Caps;
        self.add(
            part,
            "Put on, snug",
            json!({"do": "fit_caps", "as_marked": true}),
            vec![tick("Each on its own side, as marked", "/as_marked", true)],
        );
        self.add(
            part,
            "Torque the bolts",
            json!({"do": "tighten_caps", "to": "full"}),
            Vec::new(),
        );
        self.add(part, "Slacken until snug", json!({"do": "loosen_caps"}), Vec::new());
        self.add(part, "Take off", json!({"do": "remove_caps"}), Vec::new());
    }

    fn sides(&mut self) {
        let shims = self.laid.layout.side_setting() == SideSetting::Shims;
        for (part, side, place, value) in [
            (AxlePart::ToothSide, CarrierSide::Tooth, ShimPlace::ToothSide, "tooth"),
            (AxlePart::BackSide, CarrierSide::Back, ShimPlace::BackSide, "back"),
        ] {
            if shims {
                self.pack(
                    part,
                    place,
                    if side == CarrierSide::Tooth {
                        "tooth_side"
                    } else {
                        "back_side"
                    },
                );
                continue;
            }
            self.add(
                part,
                "Turn",
                json!({"do": "turn_adjuster", "side": value, "notches": 0.0}),
                vec![number("Notches, + is in", "/notches", Amount::Notches, Some(1.0))],
            );
            self.add(
                part,
                "Put its lock in",
                json!({"do": "fit_lock", "side": value}),
                Vec::new(),
            );
            self.add(
                part,
                "Take its lock out",
                json!({"do": "remove_lock", "side": value}),
                Vec::new(),
            );
        }
    }

    fn case_and_kit(&mut self) {
        let part = AxlePart::Case;
        self.add(
            part,
            "Spread",
            json!({"do": "spread_case", "by_mm": 0.0}),
            vec![number("By, on its dial", "/by_mm", Amount::Length, Some(0.3))],
        );
        self.add(part, "Spreader off", json!({"do": "release_spreader"}), Vec::new());
        self.measure(part, "Read the spread", Measurand::CaseSpread {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        let part = AxlePart::Kit;
        let free = self.seen.kit.iter().filter(|p| !p.fitted);
        let options: Vec<(String, Value)> = free
            .map(|p| {
                let words = format!(
                    "{}: {} {}",
                    p.number,
                    words::place(p.place),
                    Amount::FineLength.text(p.labelled_mm, crate::quantity::Units::Metric)
                );
                (words, json!(p.number))
            })
            .collect();
        let fields = vec![
            choice("Piece", "/what/piece", options, 0),
            self.tools(|i| matches!(i, Instrument::Micrometer(_))),
        ];
        self.add(
            part,
            "Measure a piece",
            reading(Measurand::ShimPiece { piece: 0 }),
            fields,
        );
        self.clean(part, "shims");
    }

    fn plates(&mut self) {
        let part = AxlePart::Plates;
        let verdicts = ["has to come deeper", "is right", "has to stand shallower"];
        for plate in (0_u32..).take(self.bench.setting().plates.len()) {
            let eye = self.tools(|i| matches!(i, Instrument::Eye));
            self.add(
                part,
                format!("Look at plate {}", plate + 1),
                reading(Measurand::Plate { plate }),
                vec![eye],
            );
            let options = verdicts
                .into_iter()
                .enumerate()
                .flat_map(|(outcome, words)| {
                    SURE.into_iter().enumerate().map(move |(sure, (percent, _))| {
                        (format!("{words}, {percent} sure"), json!(chances(outcome, sure)))
                    })
                })
                .collect();
            self.add(
                part,
                format!("Judge plate {}", plate + 1),
                json!({"do": "judge_plate", "plate": plate, "chances": [0.0, 1.0, 0.0]}),
                vec![choice("Its pinion", "/chances", options, 4)],
            );
        }
    }
}

/// A reading of a quantity.
fn reading(what: Measurand) -> Value {
    json!({
        "do": "measure",
        "what": what,
        "instrument": "",
        "set_up_again": false,
        "stem": StemChoice::default(),
    })
}

fn again() -> Field {
    tick("Set up afresh", "/set_up_again", false)
}
