//! A line of text in no less room than another line takes, so that nothing below moves when one becomes the other.

use super::Said;
use super::said::tied;
use crate::signals::prelude::*;

/// Shows a line of text and keeps the room of the one that stood there before; that one is neither seen nor read out.
#[component]
pub fn Room(
    /// The line; `*…*` is bold.
    #[prop(into)]
    text: Signal<String>,
    /// The line whose room is kept; without one it takes its own.
    #[prop(into)]
    room: Signal<String>,
) -> impl IntoView {
    let room = move || room.with(|room| (!room.is_empty()).then(|| tied(room).replace('*', "")));
    view! {
        <span class="room" data-room=room>
            <span>
                <Said text=text />
            </span>
        </span>
    }
}
