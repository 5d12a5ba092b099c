//! A ledger: figures one under another, each with its name and a few words, beside those of another time.

use super::{Said, live};
use crate::signals::prelude::*;

/// One figure.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LedgerRow {
    /// What it is.
    pub name: String,
    /// A few words under it, such as what it is a share of; may be empty.
    pub note: String,
    /// The figure.
    pub value: String,
    /// The same of the other time; empty for none.
    pub other: String,
}

/// Shows figures in rows under the heads of their columns.
#[component]
pub fn Ledger(
    /// What the figures are, for those who listen.
    #[prop(into)]
    label: Signal<String>,
    /// The head of the figures, and of those of another time; the second is empty when there is none.
    #[prop(into)]
    heads: Signal<(String, String)>,
    /// The figures.
    #[prop(into)]
    rows: Signal<Vec<LedgerRow>>,
) -> impl IntoView {
    live(move || {
        let (head, other) = heads.get();
        let two = !other.is_empty();
        let row = |row: LedgerRow| {
            view! {
                <tr>
                    <th scope="row">
                        {row.name} {(!row.note.is_empty()).then(|| view! { <small>{row.note}</small> }.into_any())}
                    </th>
                    <td><Said text=row.value /></td>
                    {two.then(|| view! { <td class="ledger-other"><Said text=row.other /></td> }.into_any())}
                </tr>
            }
            .into_any()
        };
        let rows: Vec<AnyView> = rows.get().into_iter().map(row).collect();
        view! {
            <table class="ledger" aria-label=label.get()>
                {two.then(|| view! {
                    <thead>
                        <tr>
                            <td></td>
                            <th scope="col">{head}</th>
                            <th scope="col" class="ledger-other">{other}</th>
                        </tr>
                    </thead>
                }.into_any())}
                <tbody>{rows}</tbody>
            </table>
        }
        .into_any()
    })
}
