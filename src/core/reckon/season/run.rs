//! The fewest nights in a row that hold a part of all: how "most lambings" and a ewe's days are told.

/// Returns the first and the last place of the fewest numbers in a row that hold this part of all; of several as few the
/// first. Nothing but the whole holds a part of nothing.
pub(super) fn shortest_run(numbers: &[f64], part: f64) -> (usize, usize) {
    let wanted = part * numbers.iter().sum::<f64>() - 1e-12;
    let (mut from, mut held) = (0, 0.0);
    let mut found = (0, numbers.len().saturating_sub(1));
    for (to, number) in numbers.iter().enumerate() {
        held += number;
        while from < to && held - numbers[from] >= wanted {
            held -= numbers[from];
            from += 1;
        }
        if held >= wanted && to - from < found.1 - found.0 {
            found = (from, to);
        }
    }
    found
}
