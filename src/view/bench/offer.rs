//! What can be done at each part as things stand: the table of all work, in the trade's words.

use serde_json::{Value, json};

use super::hazards::Hazards;
use super::slip::{SURE, chances};
use super::work::{Field, FieldKind, OptionName, Piece, Work, whole};
use super::{Amount, AxlePart, Laid};
use crate::axle::SideSetting;
use crate::bench::instrument::WrenchKind;
use crate::bench::{Bench, CarrierSide, Instrument, Level, Measurand, Operation, Part, Ring, ShimPlace, StemChoice};
use crate::exercise::TraineeView;
use crate::words::{answer, bench as words, say};

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

fn number(name: String, at: &'static str, amount: Amount, start: Option<f64>) -> Field {
    Field {
        name,
        first: 0,
        at,
        kind: FieldKind::Number { amount, start },
        options: Vec::new(),
    }
}

/// A tooth: people count from 1, the core from 0.
fn counted_from_one(name: String, at: &'static str) -> Field {
    Field {
        first: 1,
        ..number(name, at, Amount::Count, Some(1.0))
    }
}

fn tick(name: String, at: &'static str, start: bool) -> Field {
    Field {
        name,
        first: 0,
        at,
        kind: FieldKind::Tick { start },
        options: Vec::new(),
    }
}

fn choice(name: String, at: &'static str, options: Vec<(String, Value)>, start: usize) -> Field {
    let named = options
        .into_iter()
        .map(|(words, value)| (OptionName::Words(words), value));
    choice_of(name, at, named.collect(), start)
}

fn choice_of(name: String, at: &'static str, options: Vec<(OptionName, Value)>, start: usize) -> Field {
    let (words, values) = options.into_iter().unzip();
    Field {
        name,
        first: 0,
        at,
        kind: FieldKind::Choice { options: words, start },
        options: values,
    }
}

impl Table<'_> {
    fn add(&mut self, part: AxlePart, name: String, template: Value, fields: Vec<Field>) {
        let key = template.to_string();
        let mut template = template;
        // Fields that start with something stand in the operation that is tried.
        for field in &fields {
            let start = match &field.kind {
                FieldKind::Number { start, amount } => start.map(|v| {
                    if *amount == Amount::Count {
                        whole(v - f64::from(field.first))
                    } else {
                        json!(v)
                    }
                }),
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
        let hazards = Hazards::of(self.bench, &template, &fields);
        self.works.push(Work {
            part,
            key,
            name,
            minutes: operation
                .as_ref()
                .map_or(0.0, |o| self.bench.setting().tariff.minutes_of(o.kind())),
            reads: matches!(operation, Some(Operation::Measure { .. })),
            fields,
            hazards: hazards.met,
            told: hazards.told,
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
        choice(say!("work-instrument"), "/instrument", options, 0)
    }

    fn measure(&mut self, part: AxlePart, name: String, what: Measurand, fits: fn(&Instrument) -> bool) {
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
            say!("work-take-apart"),
            json!({"do": "take_apart", "to": "carrier", "precautions": []}),
            vec![choice(say!("work-take-apart-until"), "/to", options, 1)],
        );
        let parts = Part::ALL.map(|p| (words::part(p), json!(p)));
        let records = self.seen.records.iter().map(|record| Piece {
            number: record.number,
            words: say!(
                "work-record",
                number = record.number,
                what = words::measurand(record.what)
            ),
            labelled_mm: None,
            fitted: false,
        });
        let evidence = Field {
            name: say!("work-reject-evidence"),
            first: 0,
            at: "/evidence",
            kind: FieldKind::Pieces {
                pieces: records.collect(),
                sum: false,
            },
            options: Vec::new(),
        };
        self.add(
            part,
            say!("work-reject-part"),
            json!({"do": "condemn", "part": "gears", "reason": "", "evidence": []}),
            vec![
                choice(say!("work-reject-which"), "/part", parts.to_vec(), 7),
                Field {
                    name: say!("work-reject-reason"),
                    first: 0,
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
            counted_from_one(say!("work-tooth"), "/what/tooth"),
            self.tools(|i| matches!(i, Instrument::Dial(_))),
            choice(say!("work-stem"), "/stem", stems, 0),
            again(),
        ];
        self.add(
            part,
            say!("work-check-backlash"),
            reading(Measurand::Lash { tooth: 0 }),
            fields,
        );
        let teeth = self.bench.setting().axle.gears().wheel_teeth;
        let at = |starts: &[u32]| -> Value {
            starts
                .iter()
                .flat_map(|s| (0..3).map(move |k| (s + k) % teeth))
                .collect()
        };
        let places = vec![
            (say!("work-teeth-one-place"), at(&[0])),
            (say!("work-teeth-two-places"), at(&[0, teeth / 2])),
            (say!("work-teeth-three-places"), at(&[0, teeth / 3, 2 * teeth / 3])),
        ];
        let films = vec![
            (say!("work-film-thin"), json!("thin")),
            (say!("work-film-usual"), json!("usual")),
            (say!("work-film-thick"), json!("thick")),
        ];
        self.add(
            part,
            say!("work-brush-compound"),
            json!({"do": "brush_paste", "teeth": [], "film": "usual"}),
            vec![
                choice(say!("work-teeth"), "/teeth", places, 0),
                choice(say!("work-film"), "/film", films, 1),
            ],
        );
        self.add(
            part,
            say!("work-roll"),
            json!({"do": "roll", "drag_nm": 0.0, "passes": 1}),
            vec![
                number(say!("work-roll-drag"), "/drag_nm", Amount::NutTorque, Some(20.0)),
                number(say!("work-roll-passes"), "/passes", Amount::Count, Some(4.0)),
            ],
        );
        self.add(
            part,
            say!("work-read-pattern"),
            reading(Measurand::Print {}),
            vec![self.tools(|i| matches!(i, Instrument::Eye))],
        );
        self.ring_gear_at_the_bench();
    }

    fn ring_gear_at_the_bench(&mut self) {
        let part = AxlePart::RingGear;
        self.measure(
            part,
            say!("work-measure-face-runout"),
            Measurand::WheelFaceRunout {},
            |i| matches!(i, Instrument::Dial(_)),
        );
        self.measure(
            part,
            say!("work-measure-radial-runout"),
            Measurand::WheelRadialRunout {},
            |i| matches!(i, Instrument::Dial(_)),
        );
        self.add(
            part,
            say!("work-heat"),
            json!({"do": "heat_wheel", "to_c": 0.0, "precautions": []}),
            vec![number(say!("work-heat-to"), "/to_c", Amount::Celsius, Some(80.0))],
        );
        self.measure(
            part,
            say!("work-measure-temperature"),
            Measurand::WheelTemperature {},
            |i| matches!(i, Instrument::Thermometer(_)),
        );
        self.add(
            part,
            say!("work-wait"),
            json!({"do": "wait", "minutes": 0.0}),
            vec![number(say!("work-wait-time"), "/minutes", Amount::Minutes, Some(15.0))],
        );
        self.add(
            part,
            say!("work-draw-on"),
            json!({"do": "fit_wheel", "crosswise": true, "precautions": []}),
            vec![tick(say!("work-draw-on-crosswise"), "/crosswise", false)],
        );
        self.add(
            part,
            say!("work-torque-ring-bolts"),
            json!({"do": "tighten_ring_bolts", "thread_lock": true}),
            vec![tick(say!("work-threadlocker"), "/thread_lock", false)],
        );
        self.add(part, say!("work-remove"), json!({"do": "remove_wheel"}), Vec::new());
        for what in ["wheel_seat", "threads"] {
            self.clean(part, what);
        }
        self.clean(part, "teeth");
        self.replace(part, Part::RingBolts);
    }

    fn clean(&mut self, part: AxlePart, what: &str) {
        let Ok(cleaned) = serde_json::from_value(json!(what)) else {
            return;
        };
        let template = json!({"do": "clean", "what": what, "precautions": []});
        self.add(part, words::cleaned(cleaned), template, Vec::new());
    }

    fn replace(&mut self, part: AxlePart, of: Part) {
        let name = say!("work-replace", part = words::part(of));
        self.add(part, name, json!({"do": "replace", "part": of}), Vec::new());
    }

    fn turn_and_push(&mut self, part: AxlePart, what: &str) {
        self.add(
            part,
            say!("work-turn"),
            json!({"do": "turn", "what": what, "turns": 0.0}),
            vec![number(say!("work-turn-turns"), "/turns", Amount::Turns, Some(10.0))],
        );
        let ways = vec![
            (say!("work-push-into-mesh"), json!("mesh")),
            (say!("work-push-out-of-mesh"), json!("apart")),
        ];
        self.add(
            part,
            say!("work-push"),
            json!({"do": "push", "what": what, "toward": "mesh"}),
            vec![choice(say!("work-push-direction"), "/toward", ways, 0)],
        );
    }

    fn pinion(&mut self) {
        let part = AxlePart::Pinion;
        self.add(part, say!("work-install"), json!({"do": "insert_pinion"}), Vec::new());
        self.add(part, say!("work-remove"), json!({"do": "remove_pinion"}), Vec::new());
        self.turn_and_push(part, "pinion");
        self.add(
            part,
            say!("work-compare-numbers"),
            json!({"do": "compare_numbers"}),
            Vec::new(),
        );
        self.measure(part, say!("work-measure-depth"), Measurand::PinionDepth {}, |i| {
            matches!(i, Instrument::DepthGauge(_))
        });
        let dial: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Dial(_));
        self.measure(part, say!("work-measure-end-play"), Measurand::PinionEndPlay {}, dial);
        self.measure(part, say!("work-measure-runout"), Measurand::PinionRunout {}, dial);
    }

    fn bearings(&mut self) {
        for (ring, value, part) in [
            (Ring::HeadCup, "head_cup", AxlePart::HeadBearing),
            (Ring::HeadCone, "head_cone", AxlePart::HeadBearing),
            (Ring::TailCup, "tail_cup", AxlePart::TailBearing),
        ] {
            let [press, pull, check] = match ring {
                Ring::HeadCup | Ring::TailCup => [
                    say!("work-press-cup"),
                    say!("work-pull-cup"),
                    say!("work-check-behind-cup"),
                ],
                Ring::HeadCone => [
                    say!("work-press-cone"),
                    say!("work-pull-cone"),
                    say!("work-check-behind-cone"),
                ],
            };
            self.add(
                part,
                press,
                json!({"do": "press", "ring": value, "force_kn": 1.0, "precautions": []}),
                vec![number(
                    say!("work-press-force"),
                    "/force_kn",
                    Amount::Kilonewtons,
                    Some(20.0),
                )],
            );
            self.add(
                part,
                pull,
                json!({"do": "pull_off", "ring": value, "precautions": []}),
                Vec::new(),
            );
            self.measure(part, check, Measurand::SeatGap { ring }, |i| {
                matches!(i, Instrument::Feeler(_))
            });
        }
        let part = AxlePart::HeadBearing;
        self.add(
            part,
            say!("work-fit-set-up-bearings"),
            json!({"do": "fit_set_up_bearings"}),
            Vec::new(),
        );
        self.add(
            part,
            say!("work-remove-set-up-bearings"),
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
            name: say!("work-shim-pieces"),
            first: 0,
            at: "/pieces",
            kind: FieldKind::Pieces {
                pieces: pieces.collect(),
                sum: true,
            },
            options: Vec::new(),
        };
        let [make_up, take_out, measure] = if place == ShimPlace::Spacer {
            [
                say!("work-fit-spacer-shims"),
                say!("work-remove-spacer-shims"),
                say!("work-measure-spacer-shims"),
            ]
        } else {
            [
                say!("work-fit-shims"),
                say!("work-remove-shims"),
                say!("work-measure-shims"),
            ]
        };
        self.add(
            part,
            make_up,
            json!({"do": "fit_shims", "place": value, "pieces": []}),
            vec![field],
        );
        self.add(
            part,
            take_out,
            json!({"do": "remove_shims", "place": value}),
            Vec::new(),
        );
        self.measure(part, measure, Measurand::ShimPack { place }, |i| {
            matches!(i, Instrument::Micrometer(_))
        });
    }

    fn shims_and_spacer(&mut self) {
        self.pack(AxlePart::DepthShim, ShimPlace::Depth, "depth");
        let part = AxlePart::Spacer;
        let sleeve = self.laid.layout.has_sleeve();
        self.add(
            part,
            if sleeve {
                say!("work-fit-new-crush-spacer")
            } else {
                say!("work-fit-solid-spacer")
            },
            json!({"do": "fit_spacer", "spacer": "own", "new": sleeve}),
            Vec::new(),
        );
        if sleeve {
            self.add(
                part,
                say!("work-fit-old-crush-spacer"),
                json!({"do": "fit_spacer", "spacer": "own", "new": false}),
                Vec::new(),
            );
        }
        self.add(part, say!("work-remove"), json!({"do": "remove_spacer"}), Vec::new());
        if !sleeve {
            self.pack(part, ShimPlace::Spacer, "spacer");
        }
    }

    fn nut_and_seal(&mut self) {
        let part = AxlePart::Nut;
        let laid = self.laid;
        self.add(
            part,
            say!("work-fit-nut"),
            json!({"do": "fit_nut", "new": true}),
            vec![tick(say!("work-fit-nut-new"), "/new", false)],
        );
        let wrenches: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] > 30.0);
        let mut with = self.tools(wrenches);
        with.at = "/wrench";
        with.name = say!("work-wrench");
        self.add(
            part,
            say!("work-tighten-nut"),
            json!({"do": "tighten_nut", "torque_nm": 0.0, "wrench": "", "precautions": []}),
            vec![
                number(
                    say!("work-tighten-nut-torque"),
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
        read.name = say!("work-turn-nut-wrench");
        self.add(
            part,
            say!("work-turn-nut"),
            json!({"do": "turn_nut", "angle_deg": 0.0, "wrench": null, "precautions": []}),
            vec![
                number(say!("work-turn-nut-angle"), "/angle_deg", Amount::Degrees, Some(10.0)),
                read,
            ],
        );
        self.add(
            part,
            say!("work-remove-nut"),
            json!({"do": "remove_nut", "precautions": []}),
            Vec::new(),
        );
        let hand: fn(&Instrument) -> bool = |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] <= 30.0);
        self.measure(
            part,
            say!("work-measure-rotating-torque"),
            Measurand::RollingTorque {},
            hand,
        );
        self.replace(part, Part::Nut);
        let part = AxlePart::Seal;
        self.add(part, say!("work-fit-seal"), json!({"do": "fit_seal"}), Vec::new());
        self.add(part, say!("work-remove-seal"), json!({"do": "remove_seal"}), Vec::new());
        if laid.layout.has_cartridge() {
            let part = AxlePart::Cartridge;
            self.add(
                part,
                say!("work-bolt-cartridge"),
                json!({"do": "bolt_cartridge"}),
                Vec::new(),
            );
            self.add(
                part,
                say!("work-unbolt-cartridge"),
                json!({"do": "unbolt_cartridge"}),
                Vec::new(),
            );
        }
    }

    fn carrier(&mut self) {
        let part = AxlePart::Carrier;
        self.add(
            part,
            say!("work-set-carrier-in"),
            json!({"do": "set_carrier_in", "marks_out_teeth": 0, "precautions": []}),
            vec![number(
                say!("work-timing-marks"),
                "/marks_out_teeth",
                Amount::Count,
                Some(0.0),
            )],
        );
        self.add(
            part,
            say!("work-lift-carrier-out"),
            json!({"do": "lift_carrier_out", "precautions": []}),
            Vec::new(),
        );
        self.turn_and_push(part, "carrier");
        self.measure(
            part,
            say!("work-measure-rotating-torque"),
            Measurand::CarrierTorque {},
            |i| matches!(i, Instrument::Wrench(w) if w.range_nm[1] <= 30.0),
        );
        self.measure(part, say!("work-measure-end-play"), Measurand::CarrierEndPlay {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        self.replace(part, Part::SideBearings);
        let part = AxlePart::Caps;
        self.add(
            part,
            say!("work-fit-caps"),
            json!({"do": "fit_caps", "as_marked": true}),
            vec![tick(say!("work-fit-caps-as-marked"), "/as_marked", true)],
        );
        self.add(
            part,
            say!("work-torque-caps"),
            json!({"do": "tighten_caps", "to": "full"}),
            Vec::new(),
        );
        self.add(part, say!("work-loosen-caps"), json!({"do": "loosen_caps"}), Vec::new());
        self.add(part, say!("work-remove"), json!({"do": "remove_caps"}), Vec::new());
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
                say!("work-turn"),
                json!({"do": "turn_adjuster", "side": value, "notches": 0.0}),
                vec![number(say!("work-notches"), "/notches", Amount::Notches, Some(1.0))],
            );
            self.add(
                part,
                say!("work-fit-lock"),
                json!({"do": "fit_lock", "side": value}),
                Vec::new(),
            );
            self.add(
                part,
                say!("work-remove-lock"),
                json!({"do": "remove_lock", "side": value}),
                Vec::new(),
            );
        }
    }

    fn case_and_kit(&mut self) {
        let part = AxlePart::Case;
        self.add(
            part,
            say!("work-spread-housing"),
            json!({"do": "spread_case", "by_mm": 0.0}),
            vec![number(say!("work-spread-by"), "/by_mm", Amount::Length, Some(0.3))],
        );
        self.add(
            part,
            say!("work-remove-spreader"),
            json!({"do": "release_spreader"}),
            Vec::new(),
        );
        self.measure(part, say!("work-measure-spread"), Measurand::CaseSpread {}, |i| {
            matches!(i, Instrument::Dial(_))
        });
        let part = AxlePart::Kit;
        let free = self.seen.kit.iter().filter(|p| !p.fitted);
        let options: Vec<(OptionName, Value)> = free
            .map(|p| {
                let name = OptionName::Piece {
                    number: p.number,
                    place: words::place(p.place),
                    labelled_mm: p.labelled_mm,
                };
                (name, json!(p.number))
            })
            .collect();
        let fields = vec![
            choice_of(say!("work-piece-which"), "/what/piece", options, 0),
            self.tools(|i| matches!(i, Instrument::Micrometer(_))),
        ];
        self.add(
            part,
            say!("work-measure-piece"),
            reading(Measurand::ShimPiece { piece: 0 }),
            fields,
        );
        self.clean(part, "shims");
    }

    fn plates(&mut self) {
        let part = AxlePart::Plates;
        let verdicts: [fn(&str) -> String; 3] = [
            |chance| say!("work-judge-toward", chance = chance),
            |chance| say!("work-judge-right", chance = chance),
            |chance| say!("work-judge-away", chance = chance),
        ];
        for plate in (0_u32..).take(self.bench.setting().plates.len()) {
            let eye = self.tools(|i| matches!(i, Instrument::Eye));
            self.add(
                part,
                say!("work-read-plate", plate = words::plate_number(plate)),
                reading(Measurand::Plate { plate }),
                vec![eye],
            );
            let options = verdicts
                .into_iter()
                .enumerate()
                .flat_map(|(outcome, words)| {
                    SURE.into_iter()
                        .enumerate()
                        .map(move |(sure, (percent, _))| (words(percent), json!(chances(outcome, sure))))
                })
                .collect();
            self.add(
                part,
                say!("work-judge-plate", plate = words::plate_number(plate)),
                json!({"do": "judge_plate", "plate": plate, "chances": [0.0, 1.0, 0.0]}),
                vec![choice(say!("work-judge-pinion"), "/chances", options, 4)],
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
    tick(say!("work-set-up-again"), "/set_up_again", false)
}
