//! The bottle, weaning, a bag of colostrum and the weather, as pages to read; told by the farm's own choices.

use crate::parts::{Said, live};
use crate::signals::prelude::*;
use yeanling_core::practice::Practice;

use crate::farm::use_farm;

/// Shows the lines of a page, following the farm's choices.
pub(super) fn page(lines: fn(&Practice) -> Vec<String>) -> AnyView {
    let farm = use_farm();
    let items = move || {
        let lines = lines(&farm.practice()).into_iter();
        lines.map(|line| view! { <li><Said text=line /></li> }.into_any()).collect_view()
    };
    view! { <ul class="reading">{live(move || items().into_any())}</ul> }.into_any()
}
