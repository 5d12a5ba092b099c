//! What must be so of the HTML of every page, and of the patcher, judged without a browser.

use std::collections::BTreeMap;

use yeanling_draw::{Around, Patcher, page as drawn_page};
use yeanling_pages::{Action, Page, Screen, Top};

use crate::meaning;
use crate::phone::Phone;
use crate::reach::pressables;
use crate::tree::{self, Node};

/// Returns what a page looks like, with all that stands above it.
pub(crate) fn nodes(phone: &Phone, screen: Screen, page: &Page) -> Vec<yeanling_draw::Node> {
    let standing = phone.view(|view| yeanling_pages::standing(view, screen));
    let top = phone
        .view(|view| yeanling_pages::top(&phone.flock.settings.farm_name, &phone.says.saving, view.way()));
    let top: &Top = &top;
    drawn_page(screen, page, Around { top, standing: &standing, undo: None })
}

/// Says what is wrong with the HTML of a page.
pub(crate) fn broken(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let root = tree::drawn(nodes(phone, screen, page));
    let all = root.all();
    let mut wrong = Vec::new();
    let mut ids: BTreeMap<String, usize> = BTreeMap::new();
    for id in all.iter().filter_map(|node| node.attribute("id")) {
        if id.is_empty() || id.contains(char::is_whitespace) {
            wrong.push(format!("the id {id:?} is none"));
        }
        *ids.entry(id).or_default() += 1;
    }
    wrong.extend(
        ids.iter().filter(|(_, count)| **count > 1).map(|(id, count)| format!("{count} elements are #{id}")),
    );
    let text_of =
        |id: &str| all.iter().find(|node| node.attribute("id").as_deref() == Some(id)).map(Node::said);
    for node in &all {
        for name in ["aria-labelledby", "aria-describedby", "for"] {
            for id in node.attribute(name).unwrap_or_default().split(' ').filter(|id| !id.is_empty()) {
                if !ids.contains_key(id) {
                    wrong.push(format!("{name} of a {} refers to #{id}, which is not there", node.tag()));
                }
            }
        }
        if is_control(node) && name_of(node, &all, &text_of).trim().is_empty() {
            wrong.push(format!("a {} has no name: {}", node.tag(), node.html()));
        }
        if node.attribute("href").is_some_and(|href| href.is_empty()) {
            wrong.push(format!("a link leads nowhere: {}", node.html()));
        }
        if matches!(node.tag(), "section" | "dialog") && name_of(node, &all, &text_of).trim().is_empty() {
            wrong.push(format!("a {} has no name", node.tag()));
        }
        if node.tag() == "button" && node.all().iter().skip(1).any(is_control) {
            wrong.push(format!("a button stands in a button: {}", node.html()));
        }
    }
    for one in pressables(page) {
        if let Action::Show(key) = &one.does
            && !ids.contains_key(key.as_ref())
        {
            wrong.push(format!("{:?} leads to #{key}, which is not there", one.name));
        }
    }
    wrong.extend(unseen(page, &all));
    wrong.extend(meaning::drawn(&all));
    wrong.extend(headings(&root));
    wrong
}

/// The buttons of a page that are drawn nowhere: what is only in the data nobody can press. What was done stands as a tick.
fn unseen(page: &Page, all: &[Node]) -> Vec<String> {
    let is_drawn = |node: &&Node| is_control(node) || node.attribute("data-done").is_some();
    let drawn: Vec<String> = all.iter().filter(is_drawn).map(Node::said).collect();
    let buttons = page.all().into_iter().flat_map(|block| block.buttons());
    let unseen = buttons.filter(|button| !drawn.iter().any(|said| said.contains(button.label.as_str())));
    unseen.map(|button| format!("a button is drawn nowhere: {:?}", button.label)).collect()
}

fn is_control(node: &Node) -> bool {
    matches!(node.tag(), "button" | "a" | "input" | "textarea" | "summary")
}

fn name_of(node: &Node, all: &[Node], text_of: &impl Fn(&str) -> Option<String>) -> String {
    if let Some(label) = node.attribute("aria-label") {
        return label;
    }
    if let Some(ids) = node.attribute("aria-labelledby") {
        return ids.split(' ').filter_map(text_of).collect();
    }
    let id = node.attribute("id");
    let labels =
        all.iter().filter(|label| label.tag() == "label" && label.attribute("for") == id && id.is_some());
    labels.map(Node::said).collect::<String>() + &node.said()
}

/// The page's name is the one heading of the first level; others go down by one at most. A sheet begins at the second.
fn headings(root: &Node) -> Vec<String> {
    fn gather(node: &Node, to: &mut Vec<(u8, String)>, sheets: &mut Vec<Node>) {
        for one in node.inside() {
            let level = match one.tag() {
                "h1" => 1,
                "h2" => 2,
                "h3" => 3,
                "dialog" => {
                    sheets.push(one);
                    continue;
                }
                _ => 0,
            };
            if level > 0 {
                to.push((level, one.said()));
            }
            gather(&one, to, sheets);
        }
    }
    let (mut page, mut sheets, mut wrong) = (Vec::new(), Vec::new(), Vec::new());
    gather(root, &mut page, &mut sheets);
    if page.iter().filter(|(level, _)| *level == 1).count() != 1 {
        wrong.push(format!("not one name of the page: {page:?}"));
    }
    let mut judge = |all: &[(u8, String)], first: u8| {
        let mut before = first;
        for (level, text) in all {
            if *level > before + 1 {
                wrong.push(format!("the heading {text:?} skips a level"));
            }
            if text.trim().is_empty() {
                wrong.push("a heading says nothing".to_owned());
            }
            before = *level;
        }
    };
    judge(&page, 0);
    for sheet in sheets {
        let (mut all, mut none) = (Vec::new(), Vec::new());
        gather(&sheet, &mut all, &mut none);
        judge(&all, 1);
    }
    wrong
}

/// From one page to another the patcher gives what drawing the other anew gives, and what stays of it keeps its element.
pub(crate) fn patched(phone: &Phone, from: (Screen, &Page), to: (Screen, &Page)) -> Result<(), String> {
    let (tree, root) = tree::root();
    let mut patcher = Patcher::new(tree, root.clone());
    patcher.draw(nodes(phone, from.0, from.1), usize::MAX);
    let before = numbers(&root);
    patcher.draw(nodes(phone, to.0, to.1), usize::MAX);
    let anew = tree::drawn(nodes(phone, to.0, to.1));
    if root.html() != anew.html() {
        return Err(format!("patched:\n{}\nanew:\n{}", root.html(), anew.html()));
    }
    // What has an id is what its key made it: if it is on both pages it is the same element.
    for (id, number) in numbers(&root) {
        if from.0 == to.0 && before.get(&id).is_some_and(|before| *before != number) && !moved(&id) {
            return Err(format!("#{id} stands on both pages and was made anew"));
        }
    }
    Ok(())
}

/// Sheets are counted from below, whichever they are.
fn moved(id: &str) -> bool {
    id.starts_with("sheet-")
}

fn numbers(root: &Node) -> BTreeMap<String, usize> {
    root.all().iter().filter_map(|node| Some((node.attribute("id")?, node.number()))).collect()
}
