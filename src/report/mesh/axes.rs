//! The two axes of a wall chart.

use crate::drawing::ChartAxis;
use crate::quantity::{self, inches};
use crate::words::say;

use super::axis::Axis;
use super::numbers::PlacementNumbers;

/// Values of one axis, at equal steps.
#[derive(Debug, Clone, PartialEq)]
pub struct Range {
    axis: Axis,
    from: f64,
    step: f64,
    values: Vec<f64>,
}

/// Which placements a chart shows: first axis across, second axis down.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartAxes {
    /// From left to right.
    pub across: Range,
    /// From top to bottom.
    pub down: Range,
}

impl Range {
    /// An axis with its values, which begin at `from` and are `step` apart.
    pub fn new(axis: Axis, from: f64, step: f64, values: Vec<f64>) -> Self {
        Self {
            axis,
            from,
            step,
            values,
        }
    }

    /// Which axis.
    pub fn axis(&self) -> Axis {
        self.axis
    }

    /// Its values in order, mm or degrees.
    pub fn values(&self) -> &[f64] {
        &self.values
    }

    /// The scale on the sheet.
    pub(crate) fn chart_axis(&self, numbers: &PlacementNumbers) -> ChartAxis {
        let decimals = |step: f64, most: usize| {
            (2..most)
                .find(|&d| {
                    let scale = (0..d).fold(1.0, |s, _| 10.0 * s);
                    [step, self.from]
                        .iter()
                        .all(|v| (v * scale - (v * scale).round()).abs() < 1.0e-6)
                })
                .unwrap_or(most)
        };
        let places = decimals(self.step, 4);
        let labels = self.values.iter().map(|&v| quantity::signed(v, places)).collect();
        let [less, more] = ends(self.axis);
        let (name, second_labels) = if self.axis.is_angle() {
            (say!("chart-axis-degrees", name = self.axis.name()), Vec::new())
        } else {
            (
                say!("chart-axis-mm", name = self.axis.name()),
                self.values.iter().map(|&v| quantity::signed(inches(v), 4)).collect(),
            )
        };
        ChartAxis {
            name,
            less,
            more,
            labels,
            second_labels,
            present: (self.axis.of(numbers) - self.from) / self.step,
        }
    }
}

/// What the first and the last value of an axis mean.
fn ends(axis: Axis) -> [String; 2] {
    match axis {
        Axis::PinionAxial => [say!("chart-deeper"), say!("chart-shallower")],
        Axis::WheelAxial => [say!("chart-toward-pinion"), say!("chart-from-pinion")],
        Axis::Offset => [say!("chart-less-offset"), say!("chart-more-offset")],
        Axis::ShaftAngle => [say!("chart-angle-closed"), say!("chart-angle-opened")],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_have_the_decimals_of_their_steps() {
        let at = PlacementNumbers {
            pinion_axial_mm: 0.05,
            ..PlacementNumbers::default()
        };
        let axis = Range::new(Axis::PinionAxial, -0.1, 0.1, vec![-0.1, 0.0, 0.1]).chart_axis(&at);
        assert_eq!(axis.labels, ["−0.10", "±0.00", "+0.10"]);
        assert_eq!(axis.second_labels, ["−0.0039", "±0.0000", "+0.0039"]);
        assert!((axis.present - 1.5).abs() < 1e-12);
        let fine = Range::new(Axis::WheelAxial, 0.005, 0.0025, vec![0.005, 0.0075, 0.01]).chart_axis(&at);
        assert_eq!(fine.labels, ["+0.0050", "+0.0075", "+0.0100"]);
    }
}
