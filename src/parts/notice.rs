//! A few lines that the page wants read, and perhaps one thing to do about them.

use super::live;
use crate::signals::prelude::*;

/// How much a notice matters.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum NoticeKind {
    /// Good to know.
    #[default]
    Calm,
    /// Needs a look.
    Warn,
    /// Something is wrong.
    Bad,
}

impl NoticeKind {
    const fn key(self) -> &'static str {
        match self {
            Self::Calm => "calm",
            Self::Warn => "warn",
            Self::Bad => "bad",
        }
    }
}

/// Shows a notice; what is wrong is announced at once.
#[component]
pub fn Notice(
    /// How much it matters.
    #[prop(optional)]
    kind: NoticeKind,
    /// The one thing to do about it.
    #[prop(optional, into)]
    action: Option<ViewFnOnce>,
    /// What it says.
    children: Children,
) -> impl IntoView {
    let role = match kind {
        NoticeKind::Calm | NoticeKind::Warn => None,
        NoticeKind::Bad => Some("alert"),
    };
    view! {
        <div class="notice" data-kind=kind.key() role=role>
            <div class="notice-text">{children()}</div>
            {action.map(ViewFnOnce::run)}
        </div>
    }
}

/// Says what is wrong where no field can say it; nothing while nothing is.
#[component]
pub fn Wrong(
    /// What is wrong, in words.
    #[prop(into)]
    error: Signal<String>,
) -> impl IntoView {
    live(move || {
        let wrong = error.get();
        (!wrong.is_empty()).then(|| view! { <Notice kind=NoticeKind::Bad><p>{wrong}</p></Notice> }).into_any()
    })
}
