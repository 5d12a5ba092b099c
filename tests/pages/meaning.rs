//! Three shapes, three meanings: what a button looks like is what a press on it does.

use yeanling_pages::{Action, Draft, Effect, Meaning, Page, Screen, Sheet, act};

use crate::phone::Phone;
use crate::reach::pressables;
use crate::tree::Node;

/// What was seen of a press.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Seen {
    saved: bool,
    opened: bool,
    explained: bool,
}

/// Presses, and looks what comes of it. `typed` says whether what was typed stands there: a screen that is left for another
/// saves that, whatever leads there.
fn press(phone: &Phone, screen: Screen, does: &Action, typed: bool) -> Seen {
    let mut draft = phone.draft();
    draft.refused = None;
    if !typed {
        let sheets = draft.sheets.iter().map(|open| open.sheet.clone()).collect::<Vec<_>>();
        draft = Draft::default();
        sheets.into_iter().for_each(|sheet| draft.ask(sheet));
    }
    let lay = draft.sheets.len();
    let effects = phone.view(|view| act(does, screen, view, &mut draft));
    let on_top = draft.sheets.get(lay).map(|open| &open.sheet);
    let explained = matches!(on_top, Some(Sheet::Why(_)));
    let leads = |one: &Effect| matches!(one, Effect::Go(_) | Effect::Replace(_) | Effect::Show(_));
    Seen {
        saved: draft.refused.is_some() || effects.iter().any(|one| matches!(one, Effect::Note(_))),
        opened: !explained && (on_top.is_some() || effects.iter().any(leads)),
        explained,
    }
}

/// Says what can be pressed on a page and means something else than it looks.
pub(crate) fn broken(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let mut wrong = Vec::new();
    for one in pressables(page) {
        let seen = press(phone, screen, &one.does, true);
        let fault = match one.does.meaning() {
            // The first run's last button notes what was chosen, and leads on also where nothing was.
            Meaning::Saves if seen.opened && !seen.saved && screen != Screen::Setup => {
                "says that it saves, and opens"
            }
            Meaning::Saves | Meaning::Opens if seen.explained => "explains, and looks like more",
            Meaning::Opens if press(phone, screen, &one.does, false).saved => "says that it opens, and saves",
            Meaning::Explains if !seen.explained => "says that it explains, and does not",
            Meaning::Here if seen != Seen { saved: false, opened: false, explained: false } => {
                "says that it changes only what stands here, and does more"
            }
            _ => continue,
        };
        wrong.push(format!("{:?} {fault}: {:?}", one.name, one.does));
    }
    wrong
}

/// Says which elements do not look as they mean: what leads on has a chevron and nothing else has; what explains is
/// underlined words.
pub(crate) fn drawn(all: &[Node]) -> Vec<String> {
    let mut wrong = Vec::new();
    for node in all {
        let class = node.attribute("class").unwrap_or_default();
        let is = |name| class.split(' ').any(|one| one == name);
        // A tile is a way to its animal, as a row of a list is: what saves or explains looks otherwise.
        if is("tile-name") && node.attribute("data-means").as_deref() != Some("opens") {
            wrong.push(format!("a tile does not open: {}", node.html()));
        }
        let (large, small) = (is("button"), is("small-button"));
        if !large && !small || is("toggle") {
            continue;
        }
        let means = node.attribute("data-means").unwrap_or_default();
        let chevrons =
            node.all().iter().filter(|one| one.attribute("class").as_deref() == Some("chevron")).count();
        let leads = node.tag() == "a" || node.tag() == "label";
        let asks = node.attribute("aria-haspopup").is_some();
        let fault = match means.as_str() {
            // One of a few that is seen to be down, and is no button of its own.
            "" if is("choice") => continue,
            "saves" | "here" if leads || asks => "opens something",
            "opens" if large && !is("drawn") && chevrons != 1 => "has no chevron",
            "explains" if large => "is not underlined",
            "saves" | "here" | "explains" if chevrons > 0 => "has a chevron",
            "saves" | "here" | "explains" | "opens" => continue,
            _ => "has no shape",
        };
        wrong.push(format!("looks as one that {means:?}, and {fault}: {}", node.html()));
    }
    wrong
}

#[cfg(test)]
mod tests {
    use yeanling_core::book::Event;
    use yeanling_draw::{Element, el};
    use yeanling_pages::{Action, Blocks, Button, Page, Screen};

    use super::{broken, drawn, press};
    use crate::phone::Phone;
    use crate::tree;

    #[test]
    fn what_a_press_does_is_seen() {
        let mut phone = Phone::at("2027-02-01 23:55");
        let ewe = phone.ewe("7");
        let seen = |does| {
            let seen = press(&phone, Screen::Watch, &does, true);
            (seen.saved, seen.opened, seen.explained)
        };
        let looked = Event::LookedAt { animal: yeanling_core::book::Animal::Ewe(ewe) };
        assert_eq!(seen(Action::Note(vec![looked])), (true, false, false));
        assert_eq!(seen(Action::Go(Screen::Flock)), (false, true, false));
        assert_eq!(seen(Action::Ask(yeanling_pages::Sheet::Condition(ewe))), (false, true, false));
        assert_eq!(seen(Action::Choose("a".into(), 1)), (false, false, false));
    }

    #[test]
    fn what_looks_otherwise_than_it_means_is_found() {
        let found = |one: Element| drawn(&tree::drawn(vec![one.with("Name").into()]).all()).len();
        let looks = |tag, class, means: &str| el(tag, class).has("data-means", means);
        let chevron = || el("svg", "chevron");
        assert_eq!(found(looks("button", "button", "saves")), 0);
        assert_eq!(found(looks("button", "button", "saves").with(chevron())), 1);
        assert_eq!(found(looks("a", "button", "saves")), 1);
        assert_eq!(found(looks("button", "button", "here").has("aria-haspopup", "dialog")), 1);
        assert_eq!(found(looks("a", "button", "opens").with(chevron())), 0);
        assert_eq!(found(looks("a", "button", "opens")), 1);
        assert_eq!(found(looks("button", "button", "explains")), 1);
        assert_eq!(found(looks("button", "small-button", "explains")), 0);
        assert_eq!(found(el("button", "button")), 1);
        assert_eq!(found(looks("a", "tile-name", "opens")), 0);
        assert_eq!(found(looks("button", "tile-name", "saves")), 1);
        assert_eq!(found(el("button", "button choice")), 0);
    }

    #[test]
    fn every_sheet_can_be_asked_for_by_what_looks_so() {
        let mut phone = crate::sheets::with_lamb().0;
        for sheet in crate::sheets::every(&phone) {
            let does = Action::Ask(sheet.clone());
            let page = Page::new("A page").blocks(Blocks::new().button(Button::new("ask", "Ask", does)));
            assert_eq!(broken(&phone, Screen::Watch, &page), Vec::<String>::new(), "{sheet:?}");
            phone.act(&Action::Ask(sheet));
            phone.act(&Action::Close);
        }
    }
}
