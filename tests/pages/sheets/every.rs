//! Every sheet that can lie over a page, for whatever is in the book.

use yeanling_core::book::{Animal, Item, Milk, PlannedJob};
use yeanling_core::units::{Moment, System, Volume};
use yeanling_core::watch;
use yeanling_pages::{Action, Screen, Sheet, sample};

use crate::laws;
use crate::phone::Phone;

/// Returns every sheet that is not of one screen alone, for all that is in the book and for all that is due.
pub(crate) fn every(phone: &Phone) -> Vec<Sheet> {
    let flock = &phone.flock;
    let mut all = vec![Sheet::Freeze, Sheet::Count(Item::ALL[0])];
    for lamb in flock.lambs.keys().copied() {
        all.extend([
            Sheet::Weight(lamb),
            Sheet::Vigor(lamb),
            Sheet::TenPoint(lamb),
            Sheet::Belly(lamb),
            Sheet::Mouth(lamb),
            Sheet::Feed(lamb, Some(Volume::from_milliliters(150.0)), Milk::Milk),
            Sheet::Feed(lamb, None, Milk::EweColostrum),
            Sheet::Found(lamb),
            Sheet::Foster(lamb),
            Sheet::Castrate(lamb),
        ]);
    }
    for ewe in flock.ewes.keys().copied() {
        all.extend([
            Sheet::Condition(ewe),
            Sheet::EweWeight(ewe),
            Sheet::Scan(ewe),
            Sheet::Mark(ewe),
            Sheet::Describe(ewe),
            Sheet::TakeOn(ewe),
        ]);
    }
    let ewes = flock.ewes.keys().map(|ewe| Animal::Ewe(*ewe));
    for animal in flock.lambs.keys().map(|lamb| Animal::Lamb(*lamb)).chain(ewes) {
        all.extend([
            Sheet::Vet(animal),
            Sheet::Examined(animal),
            Sheet::Paint(animal),
            Sheet::Remark(animal),
            Sheet::Tag(animal),
            Sheet::Death(animal),
            Sheet::Leave(animal),
            Sheet::WhichPen(animal),
            Sheet::Treat(vec![animal]),
        ]);
    }
    all.extend(flock.pens.keys().map(|pen| Sheet::PutIn(*pen)));
    for group in flock.groups.keys().copied() {
        all.extend([
            Sheet::RamIn(group),
            Sheet::RamOut(group),
            Sheet::RamStays(group),
            Sheet::Plan(Some(group)),
        ]);
        all.push(Sheet::PlanDay(PlannedJob::RamIn, Some(group)));
    }
    all.extend([Sheet::Plan(None), Sheet::PlanDay(PlannedJob::Shearing, None)]);
    all.extend(flock.lines.iter().map(|line| Sheet::Amend(line.entry)));
    let duties = watch::duties(flock, phone.now, &flock.settings);
    all.extend(duties.into_iter().map(|duty| Sheet::Later(Box::new(duty))));
    all
}

fn every_sheet_keeps_the_laws(system: System) {
    let now = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut phone = Phone::with(sample::book(now, system), now);
    phone.open(Screen::Farm);
    let all = every(&phone);
    assert!(all.len() > 300, "{}", all.len());
    for sheet in all {
        phone.ask(sheet.clone());
        let page = phone.page();
        assert!(!page.sheets[0].title.is_empty(), "{sheet:?} asks nothing");
        let mut wrong = laws::broken(&phone, phone.screen, &page);
        // To save an untouched sheet notes something, says what is missing, or is no way it has.
        let book = phone.book.len();
        if let Some(save) = phone.pressables().into_iter().find(|one| one.does == Action::Save) {
            phone.act(&save.does);
            let page = phone.page();
            if phone.book.len() == book && page.sheets.is_empty() {
                wrong.push("it closed and noted nothing".to_owned());
            }
            wrong.extend(laws::broken(&phone, phone.screen, &page));
            if phone.book.len() > book && !phone.undo() {
                wrong.push("what it noted cannot be taken back".to_owned());
            }
        }
        assert!(wrong.is_empty(), "{sheet:?}:\n{}", wrong.join("\n"));
        while !phone.page().sheets.is_empty() {
            phone.act(&Action::Close);
        }
    }
}

#[test]
fn every_sheet_keeps_the_laws_in_metric_units() {
    every_sheet_keeps_the_laws(System::Metric);
}

#[test]
fn every_sheet_keeps_the_laws_in_us_units() {
    every_sheet_keeps_the_laws(System::Us);
}

#[test]
fn a_sheet_on_which_a_ewe_is_picked_leaves_no_other_picker_on_the_page() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let phone = Phone::with(sample::book(begins, System::Metric), begins);
    let picks = every(&phone).into_iter().filter(|sheet| matches!(sheet, Sheet::Foster(_) | Sheet::PutIn(_)));
    for sheet in picks {
        for screen in [Screen::Lambing, Screen::NotRight] {
            let mut other = phone.clone();
            other.open(screen);
            other.act(&Action::Ask(sheet.clone()));
            let pickers = other
                .page()
                .all()
                .into_iter()
                .filter(|block| ["ewe-find", "who-find"].contains(&block.key.as_ref()))
                .count();
            assert_eq!(pickers, 1, "{sheet:?} over {screen:?}");
        }
    }
}
