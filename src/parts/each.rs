//! A list that keeps its rows: one machine for all lists, so that each costs few bytes.

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

struct Row {
    key: String,
    view: Box<dyn FnOnce() -> AnyView + Send>,
}

fn list(rows: Box<dyn Fn() -> Vec<Row> + Send + Sync>) -> AnyView {
    view! { <For each=move || rows() key=|row| row.key.clone() children=|row| (row.view)() /> }.into_any()
}
