//! What keeps its place while a hand is at work: lists stand in the order in which they stood, a line over them neither
//! comes nor goes, and a count keeps its room.

use yeanling_core::watch::State;

use super::shown::Shown;

/// How many stand in a state under the screen's name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Count {
    /// None do, and none did.
    None,
    /// None do any more: their word keeps its room.
    Room(usize),
    /// So many.
    Some(usize),
}

/// Returns rows in the order in which they stood, each as `stays` says, given what is left of it; then those that are new.
pub(super) fn in_order<'a, R: 'a, K: PartialEq>(
    before: impl IntoIterator<Item = &'a R>,
    fresh: Vec<R>,
    key: impl Fn(&R) -> K,
    stays: impl Fn(&R, Option<R>) -> R,
) -> Vec<R> {
    let mut fresh: Vec<Option<R>> = fresh.into_iter().map(Some).collect();
    // Most stand in the order in which they stood: who comes next is looked for first where the last was.
    let mut next = 0;
    let mut rows: Vec<R> = Vec::with_capacity(fresh.len());
    for was in before {
        let is = |at: &usize| fresh[*at].as_ref().is_some_and(|one| key(one) == key(was));
        let at = (next..fresh.len()).chain(0..next).find(is);
        next = at.map_or(next, |at| at + 1);
        rows.push(stays(was, at.and_then(|at| fresh[at].take())));
    }
    rows.extend(fresh.into_iter().flatten());
    rows
}

/// Returns how many stand in a state. What is to come is not told of newly while rows keep their places: it can wait, and
/// the line has no room for it.
pub(super) fn count(rows: &[Shown], state: State) -> Count {
    let is = rows.iter().filter(|one| one.state == Some(state)).count();
    let stood = rows.iter().filter(|one| one.stood == Some(state)).count();
    if is > 0 && (stood > 0 || state > State::Coming) {
        Count::Some(is)
    } else if stood > 0 {
        Count::Room(stood)
    } else {
        Count::None
    }
}

/// Returns a line that stands over rows and comes and goes: while they keep their places it does neither. `empty` makes of
/// it what keeps its room alone.
pub(super) fn line<T>(before: Option<&T>, fresh: Option<T>, empty: impl FnOnce(&T) -> T) -> Option<T> {
    match (before, fresh) {
        (None, _) => None,
        (Some(_), Some(fresh)) => Some(fresh),
        (Some(before), None) => Some(empty(before)),
    }
}

#[cfg(test)]
mod tests {
    use super::{in_order, line};

    #[test]
    fn rows_keep_their_order_and_what_is_new_stands_behind() {
        let stays = |was: &(u8, char), now: Option<(u8, char)>| now.unwrap_or((was.0, '_'));
        let before = [(1, 'a'), (2, 'b'), (3, 'c')];
        let fresh = vec![(4, 'D'), (3, 'C'), (1, 'A')];
        assert_eq!(in_order(&before, fresh, |one| one.0, stays), [(1, 'A'), (2, '_'), (3, 'C'), (4, 'D')]);
    }

    #[test]
    fn a_line_over_rows_neither_comes_nor_goes_while_they_keep_their_places() {
        let empty = |_: &&str| "room";
        assert_eq!(line(None, Some("new"), empty), None);
        assert_eq!(line(Some(&"old"), Some("new"), empty), Some("new"));
        assert_eq!(line(Some(&"old"), None, empty), Some("room"));
    }
}
