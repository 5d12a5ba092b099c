//! What must be so on every page, whatever was noted, typed and pressed.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::{Animal, Event};
use yeanling_core::watch::{Duty, EweTask, LambTask, State, Task};
use yeanling_pages::block::{Kind, RowLook};
use yeanling_pages::{Action, Block, Page, Screen, act};

use crate::phone::Phone;
use crate::reach::{Pressable, pressables, texts};
use crate::{glance, html, length, meaning, milk, speech};

/// Says what of a page breaks a law.
pub(crate) fn broken(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let mut wrong = words(page);
    wrong.extend(keys(page));
    wrong.extend(empty(page));
    wrong.extend(milk::broken(phone, screen, page));
    wrong.extend(well(phone, page));
    wrong.extend(watch(screen, page));
    wrong.extend(gate(phone, screen, page));
    wrong.extend(vet(page));
    wrong.extend(meaning::broken(phone, screen, page));
    wrong.extend(html::broken(phone, screen, page));
    wrong.extend(speech::broken(page));
    wrong.extend(glance::broken(phone, screen, page));
    wrong.extend(length::broken(page));
    wrong
}

/// No page holds what is no word: a number that is none, a value as it is written in code, an id, a sign that means bold, a
/// doubled space.
fn words(page: &Page) -> Vec<String> {
    let is_id = |text: &str| {
        text.split(|c: char| !c.is_ascii_hexdigit() && c != '-')
            .any(|word| word.len() == 36 && word.bytes().filter(|byte| *byte == b'-').count() == 4)
    };
    let is_wrong = |text: &String| {
        // What a person typed is said back to them as it was.
        let text = &text.replace(crate::walk::ODD, "x");
        ["NaN", "inf ", "None,", "(None", "Some(", "Ok(", "Err(", "  ", "{", "}", "*", "\u{fffd}"]
            .iter()
            .any(|sign| text.contains(sign))
            || text == "None"
            || text.trim() != text
            || is_id(text)
    };
    texts(page).into_iter().filter(is_wrong).map(|text| format!("no words for people: {text:?}")).collect()
}

/// A key tells one block of a page from all others. What has none is text alone.
fn keys(page: &Page) -> Vec<String> {
    let mut seen = BTreeSet::new();
    let mut wrong = Vec::new();
    for block in page.all() {
        let key = block.key.as_ref();
        if key.contains(char::is_whitespace) {
            wrong.push(format!("a key with a space: {key:?}"));
        }
        let types = matches!(block.kind, Kind::Field(_) | Kind::Section(_) | Kind::FilePick(_));
        if types && key.is_empty() {
            wrong.push(format!("a field or section without a key: {:?}", block.texts()));
        }
        // Buttons are told apart among those beside them.
        if !key.is_empty() && !matches!(block.kind, Kind::Button(_)) && !seen.insert(block.key.clone()) {
            wrong.push(format!("two blocks are {key:?}"));
        }
        if let Kind::Group(group) = &block.kind {
            let beside: Vec<_> = group.inside.iter().flat_map(|one| one.buttons()).collect();
            for (place, one) in beside.iter().enumerate() {
                if beside[..place].iter().any(|other| (&other.label, &other.does) == (&one.label, &one.does))
                {
                    wrong.push(format!("{:?} stands twice beside itself", one.label));
                }
            }
        }
        let mut buttons = BTreeSet::new();
        for button in block.buttons() {
            let leads = matches!(button.does, Action::Go(_));
            if !buttons.insert((button.key.clone(), leads))
                && !matches!(block.kind, Kind::Timeline(_) | Kind::List(_))
            {
                wrong.push(format!("two buttons of {key:?} are {:?}", button.key));
            }
        }
    }
    wrong
}

/// Nothing stands there without a word, and nothing that holds others without any.
fn empty(page: &Page) -> Vec<String> {
    let mut wrong = Vec::new();
    if page.title.trim().is_empty() {
        wrong.push("the page has no name".to_owned());
    }
    for one in pressables(page) {
        if one.name.trim().is_empty() || one.label.trim().is_empty() {
            wrong.push(format!("something to press says nothing: {:?}", one.does));
        }
    }
    for block in page.all() {
        let holds = matches!(
            block.kind,
            Kind::Section(_) | Kind::Rows(_) | Kind::Tiles(_) | Kind::Fold(_) | Kind::Buttons(_)
        );
        if holds && block.inside().is_empty() {
            wrong.push(format!("{:?} holds nothing", block.key));
        }
    }
    wrong
}

/// No button says that all is well with an animal for which anything but a look is due.
fn well(phone: &Phone, page: &Page) -> Vec<String> {
    let due: Vec<Animal> = phone.view(|view| {
        let duties = view.duties.iter().filter(|duty| duty.state(view.now) > State::Coming);
        let other = |duty: &&Duty| {
            !matches!(
                duty.task,
                Task::Ewe(_, EweTask::Look | EweTask::LetOut)
                    | Task::Lamb(_, LambTask::Look | LambTask::HardBirth)
            )
        };
        duties.filter(other).map(Duty::subject).collect()
    });
    let mut wrong = Vec::new();
    for Pressable { name, label, does } in pressables(page) {
        let (Action::Note(events) | Action::Answer(events)) = &does else { continue };
        for event in events {
            let Event::LookedAt { animal } = event else { continue };
            if label.to_lowercase().contains("all well") && due.contains(animal) {
                wrong.push(format!("{name:?} says that all is well, and more is due"));
            }
        }
    }
    wrong
}

/// On the Watch what is in danger is pinned, as a card in full ink; every other animal is a line with one button and at most
/// one other; one ribbon alone is shown, and no figure.
fn watch(screen: Screen, page: &Page) -> Vec<String> {
    if screen != Screen::Watch {
        return Vec::new();
    }
    let (mut wrong, mut ribbons, mut calmer) = (Vec::new(), 0, false);
    for block in page.all() {
        match &block.kind {
            Kind::Ribbon(_) => ribbons += 1,
            Kind::Figure(_) => wrong.push("a figure stands on the Watch".to_owned()),
            Kind::Row(row) if row.look != RowLook::Paper => {
                let danger = row.state == yeanling_pages::State::Danger;
                if danger && (calmer || row.look != RowLook::Solid) {
                    wrong.push(format!("{:?} is in danger and not pinned", row.name));
                }
                calmer |= row.look != RowLook::Solid;
                if !danger && row.others.len() > 1 {
                    wrong.push(format!("{:?} has {} buttons more", row.name, row.others.len()));
                }
            }
            _ => {}
        }
    }
    if ribbons > 1 {
        wrong.push(format!("{ribbons} ribbons stand on the Watch"));
    }
    wrong
}

/// Every button that notes is accepted by the gate, or says in words why not.
fn gate(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let mut wrong = Vec::new();
    for Pressable { name, does, .. } in pressables(page) {
        let (Action::Note(_) | Action::Answer(_)) = &does else { continue };
        let mut draft = phone.draft();
        draft.refused = None;
        let effects = phone.view(|view| act(&does, screen, view, &mut draft));
        let said = draft.refused.as_ref().map(|rejection| {
            yeanling_words::rejections::rejection(rejection, phone.now, phone.flock.settings.system)
        });
        if effects.is_empty() && said.is_none_or(|said| said.is_empty()) {
            wrong.push(format!("{name:?} notes nothing and says nothing"));
        }
    }
    wrong
}

/// Where something says to call the vet, a button that dials stands with it, or the way to give the number: on the page for
/// what stands on the page, on a sheet for what stands on it.
fn vet(page: &Page) -> Vec<String> {
    fn within<'a>(blocks: &'a [Arc<Block>], to: &mut Vec<&'a Arc<Block>>) {
        for block in blocks {
            let hidden = matches!(&block.kind, Kind::Group(group) if group.hidden);
            if !hidden {
                to.push(block);
                block.inside().into_iter().for_each(|inside| within(std::slice::from_ref(inside), to));
            }
        }
    }
    let mut wrong = Vec::new();
    let page_itself = page.blocks.iter().chain(&page.thumb).cloned().collect::<Vec<_>>();
    let sheets = page.sheets.iter().map(|sheet| sheet.blocks.clone());
    for layer in std::iter::once(page_itself).chain(sheets) {
        let mut blocks = Vec::new();
        within(&layer, &mut blocks);
        let calls = blocks.iter().flat_map(|block| block.buttons()).any(|button| {
            let gives = matches!(button.does, Action::Go(_)) && button.label == yeanling_words::vet::ADD;
            gives || matches!(button.does, Action::Call(_))
        });
        let says = |text: &String| {
            let text = text.to_lowercase();
            text.contains("call your vet") || text.contains("call the vet")
        };
        if !calls && let Some(text) = blocks.iter().flat_map(|block| orders(block)).find(says) {
            wrong.push(format!("no way to call the vet beside {text:?}"));
        }
    }
    wrong
}

/// What a block tells people to do: not its name, nor what is typed, chosen, pressed, printed or was noted.
fn orders(block: &Block) -> Vec<String> {
    match &block.kind {
        Kind::Row(row) => vec![row.kind.plain(), row.text.plain(), row.says.plain()],
        Kind::Section(_)
        | Kind::Heading(_)
        | Kind::Fold(_)
        | Kind::Field(_)
        | Kind::Choices(_)
        | Kind::Button(_)
        | Kind::Timeline(_)
        | Kind::PaperCard(_)
        | Kind::Ring(_) => Vec::new(),
        _ => block.texts(),
    }
}

#[cfg(test)]
mod tests {
    use yeanling_core::book::Event;
    use yeanling_pages::block::{Field, FieldKind, Row, RowLook};
    use yeanling_pages::{Action, Blocks, Button, Page, Screen, State};

    use super::broken;
    use crate::phone::Phone;

    /// A page with these blocks breaks a law in these words.
    #[track_caller]
    fn bites(phone: &Phone, blocks: Blocks, words: &str) {
        let wrong = broken(phone, Screen::Farm, &Page::new("A page").blocks(blocks));
        assert!(wrong.iter().any(|one| one.contains(words)), "{words:?} is not among {wrong:?}");
    }

    #[test]
    fn a_page_without_fault_breaks_none() {
        let phone = Phone::at("2027-02-01 23:55");
        let page = Page::new("A page").blocks(Blocks::new().text("All is *right* here."));
        assert_eq!(broken(&phone, Screen::Farm, &page), Vec::<String>::new());
    }

    #[test]
    fn the_laws_bite() {
        let mut phone = Phone::at("2027-02-01 23:55");
        let ewe = phone.ewe("7");
        let lamb = phone.lamb(ewe);
        phone.note(Event::VigorScored { lamb, scale: yeanling_core::book::VigorScale::FourGrade, score: 4 });
        let note = |event: Event| Action::Note(vec![event]);
        let milk = Button::new("fed", "Nursed", note(Event::Sucked { lamb }));
        bites(&phone, Blocks::new().button(milk), "must not have any");
        let looked = note(Event::LookedAt { animal: yeanling_core::book::Animal::Lamb(lamb) });
        let well = Button::new("well", "All well", looked).small();
        let row = Row::new("7a").says(State::Danger, "failing").inside(Blocks::new().button(well));
        bites(&phone, Blocks::new().rows("rows", [("row-7a", row)]), "more is due");
        bites(&phone, Blocks::new().text("NaN ml"), "no words for people");
        bites(&phone, Blocks::new().text("two  rooms"), "no words for people");
        let on_watch = |row: Row| {
            let page = Page::new("A page").blocks(Blocks::new().rows("rows", [("row-7a", row)]));
            broken(&phone, Screen::Watch, &page)
        };
        let below = Row::new("7a").look(RowLook::Line).says(State::Danger, "failing");
        assert!(on_watch(below).iter().any(|one| one.contains("not pinned")));
        let more = ["one", "two"].map(|key| Button::new(key, key, Action::Close));
        let many = Row::new("7a").look(RowLook::Line).others(more);
        assert!(on_watch(many).iter().any(|one| one.contains("2 buttons more")));
        let field = || Field::new("Weight", FieldKind::Decimal, "");
        bites(&phone, Blocks::new().field("one", field()).field("one", field()), "two blocks are");
        bites(&phone, Blocks::new().button(Button::new("empty", " ", Action::Close)), "says nothing");
        bites(&phone, Blocks::new().field("bare", Field::default()), "has no name");
        let gone = Button::new("there", "There", Action::Show("nowhere".into()));
        bites(&phone, Blocks::new().button(gone), "nowhere");
        bites(&phone, Blocks::new().heading("Skipped"), "skips a level");
        bites(&phone, Blocks::new().text("It is blue: *call your vet* now."), "no way to call the vet");
        let row = Row::new("7").text("Afterbirth hangs: call the vet");
        bites(&phone, Blocks::new().rows("rows", [("row-7", row)]), "no way to call the vet");
    }
}
