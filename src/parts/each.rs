//! A list that keeps its rows: one machine for all lists, so that each costs few bytes.
//!
//! What stays in order is not touched: only new rows and those that changed places are put in. Leptos' own list takes
//! every row behind a moved one out of the page and puts it back, which costs more than all else that a tap does.
//! A list that opens, or grows by many rows, shows the first at once and the others when those are on the screen.

use std::collections::HashMap;

use leptos::tachys::html::attribute::Attribute;
use leptos::tachys::html::attribute::any_attribute::AnyAttribute;
use leptos::tachys::hydration::Cursor;
use leptos::tachys::reactive_graph::OwnedView;
use leptos::tachys::renderer::Rndr;
use leptos::tachys::renderer::types::{Element, Node, Placeholder};
use leptos::tachys::view::add_attr::AddAnyAttr;
use leptos::tachys::view::{Mountable, Position, PositionState, Render, RenderHtml};

use crate::signals::after_paint;
use crate::signals::prelude::*;

/// Returns a view for each item. One whose key stays is not made anew, so it follows signals for what changes in it.
///
/// Keys are text, so that this is compiled once and not once for each kind of item.
pub fn each<T: Send + Sync + 'static>(
    items: impl Fn() -> Vec<T> + Send + Sync + 'static,
    key: impl Fn(&T) -> String + Send + Sync + 'static,
    view: impl Fn(T) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let view = std::sync::Arc::new(view);
    list(Box::new(move || {
        let row = |item: T| {
            let (key, view) = (key(&item), std::sync::Arc::clone(&view));
            Row { key, view: Box::new(move || view(item)) }
        };
        items().into_iter().map(row).collect()
    }))
}

/// So many rows of a kind are on a phone's screen at first.
const AT_ONCE: usize = 5;

fn list(rows: Box<dyn Fn() -> Vec<Row> + Send + Sync>) -> AnyView {
    // Each row has an owner of its own, so that what it made goes with it and not with the next change of the list.
    let owner = Owner::current().unwrap_or_default();
    let (drawn, others) = (StoredValue::new(AT_ONCE), RwSignal::new(()));
    let in_order = move || {
        others.get();
        let mut rows = rows();
        if rows.len() > drawn.get_value().saturating_add(AT_ONCE) {
            rows.truncate(drawn.get_value());
            drawn.set_value(usize::MAX);
            after_paint(move || others.set(()));
        } else {
            drawn.set_value(rows.len().max(AT_ONCE));
        }
        InOrder { rows, owner: owner.clone() }
    };
    in_order.into_any()
}

struct Row {
    key: String,
    view: Box<dyn FnOnce() -> AnyView + Send>,
}

/// The rows as they should stand.
struct InOrder {
    rows: Vec<Row>,
    owner: Owner,
}

type RowState = <OwnedView<AnyView> as Render>::State;

/// The rows as they stand in the page.
struct Drawn {
    rows: Vec<(String, RowState)>,
    /// Stands behind the last row.
    end: Placeholder,
    parent: Option<Element>,
}

impl Row {
    fn draw(self, list: &Owner) -> (String, RowState) {
        let owner = list.with(Owner::new);
        let view = owner.with(self.view);
        (self.key, OwnedView::new_with_owner(view, owner).build())
    }
}

impl Render for InOrder {
    type State = Drawn;

    fn build(self) -> Drawn {
        let rows = self.rows.into_iter().map(|row| row.draw(&self.owner)).collect();
        Drawn { rows, end: Rndr::create_placeholder(), parent: None }
    }

    fn rebuild(self, drawn: &mut Drawn) {
        let mut there: HashMap<String, (usize, RowState)> = HashMap::new();
        for (place, (key, state)) in drawn.rows.drain(..).enumerate() {
            if let Some((_, mut twin)) = there.insert(key, (place, state)) {
                twin.unmount();
            }
        }
        let mut before = Vec::new();
        for row in self.rows {
            let known = there.remove(&row.key);
            before.push(known.as_ref().map(|(place, _)| *place));
            drawn.rows.push(match known {
                Some((_, state)) => (row.key, state),
                None => row.draw(&self.owner),
            });
        }
        for (_, mut gone) in there.into_values() {
            gone.unmount();
        }
        let Some(parent) = &drawn.parent else { return };
        let stays = stays(&before);
        for place in (0..stays.len()).rev().filter(|place| !stays[*place]) {
            let (rows, behind) = drawn.rows.split_at_mut(place + 1);
            let Some((_, row)) = rows.last_mut() else { continue };
            match behind.first() {
                Some((_, next)) => {
                    next.insert_before_this_or_marker(parent, row, Some(drawn.end.as_ref()));
                }
                None => row.mount(parent, Some(drawn.end.as_ref())),
            }
        }
    }
}

/// Says which rows can stay where they are, given where each was before: as many as possible of those still in order.
fn stays(before: &[Option<usize>]) -> Vec<bool> {
    // The row on which the shortest chain of its length ends so far, for each length; and the row before each in its.
    let mut ends: Vec<usize> = Vec::new();
    let mut behind: Vec<Option<usize>> = vec![None; before.len()];
    for (row, was) in before.iter().enumerate().filter(|(_, was)| was.is_some()) {
        let length = ends.partition_point(|end| before[*end] < *was);
        behind[row] = length.checked_sub(1).map(|shorter| ends[shorter]);
        if length == ends.len() {
            ends.push(row);
        } else {
            ends[length] = row;
        }
    }
    let mut stays = vec![false; before.len()];
    let mut last = ends.last().copied();
    while let Some(row) = last {
        stays[row] = true;
        last = behind[row];
    }
    stays
}

impl Mountable for Drawn {
    fn mount(&mut self, parent: &Element, marker: Option<&Node>) {
        self.parent = Some(parent.clone());
        for (_, row) in &mut self.rows {
            row.mount(parent, marker);
        }
        self.end.mount(parent, marker);
    }

    fn unmount(&mut self) {
        for (_, row) in &mut self.rows {
            row.unmount();
        }
        self.end.unmount();
    }

    fn insert_before_this(&self, child: &mut dyn Mountable) -> bool {
        match self.rows.first() {
            Some((_, row)) => row.insert_before_this(child),
            None => self.end.insert_before_this(child),
        }
    }

    fn elements(&self) -> Vec<Element> {
        self.rows.iter().flat_map(|(_, row)| row.elements()).collect()
    }
}

impl AddAnyAttr for InOrder {
    type Output<Added: Attribute> = Self;

    fn add_any_attr<Added: Attribute>(self, _: Added) -> Self {
        self
    }
}

/// Nothing is drawn by a server here, but a view must say how it would be.
impl RenderHtml for InOrder {
    type AsyncOutput = Self;
    type Owned = Self;

    const MIN_LENGTH: usize = 0;

    fn dry_resolve(&mut self) {}

    async fn resolve(self) -> Self {
        self
    }

    fn to_html_with_buf(self, _: &mut String, _: &mut Position, _: bool, _: bool, _: Vec<AnyAttribute>) {}

    fn hydrate<const FROM_SERVER: bool>(self, _: &Cursor, _: &PositionState) -> Drawn {
        self.build()
    }

    fn into_owned(self) -> Self {
        self
    }
}

#[cfg(test)]
mod tests {
    use super::stays;

    /// `before` is where each row was, `-` for a new one; `expected` says with `=` who stays.
    #[track_caller]
    fn check(before: &str, expected: &str) {
        let places: Vec<Option<usize>> = before.split(' ').map(|place| place.parse().ok()).collect();
        let found: String = stays(&places).into_iter().map(|stays| if stays { '=' } else { '+' }).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn only_who_changed_places_is_moved() {
        check("0 1 2 3", "====");
        check("1 2 3 0", "===+");
        check("3 0 1 2", "+===");
        check("0 2 1 3", "=+==");
        check("3 2 1 0", "+++=");
    }

    #[test]
    fn new_rows_are_put_in_and_those_behind_a_gap_stay() {
        check("- 0 1", "+==");
        check("1 2 - 4", "==+=");
        check("- -", "++");
        check("2 - 5 0 6", "=+=+=");
    }
}
