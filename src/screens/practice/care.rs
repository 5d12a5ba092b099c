//! The choices of care: how vigor is scored, whose birth weights, rings, and whether the dams were vaccinated.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::Event;
use yeanling_core::practice::{
    self, BreedMeans, BreedType, DamsVaccinated, RINGS_OWN_DAYS, RingRule, Rings, VigorInUse,
};
use yeanling_core::reckon::marking::{Ring, banned};

use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Remark, Section};
use crate::words::{errors, marking, practice as words};

/// How long the farm's own limit is until it is typed.
const OWN_DAYS: u16 = 7;

/// Vigor, birth weights, rings and vaccine: one tap each.
#[component]
pub(super) fn Care() -> impl IntoView {
    let farm = use_farm();
    let choose = move |choice: practice::Choice| {
        farm.tap(Event::Chose(choice));
    };
    let vigor = Signal::derive(move || Some(farm.practice().vigor));
    let breed = Signal::derive(move || Some(farm.practice().breed_means));
    let dams = Signal::derive(move || Some(farm.practice().dams_vaccinated));
    let scales = [VigorInUse::FourGrade, VigorInUse::TenPoint]
        .map(|scale| {
            let (name, note) = words::vigor(scale);
            Choice::new(scale, name).note(note)
        })
        .to_vec();
    let breeds = [BreedMeans::NoBreed, BreedMeans::Katahdin, BreedMeans::StCroix, BreedMeans::Dorper]
        .map(|means| {
            let (name, note) = words::breed_means(means);
            Choice::new(means, name).note(note)
        })
        .to_vec();
    let kind = Signal::derive(move || Some(farm.practice().breed_type));
    let kinds = BreedType::ALL
        .map(|breed| {
            let (name, note) = words::breed_type(breed);
            Choice::new(breed, name).note(note)
        })
        .to_vec();
    let vaccinated = [DamsVaccinated::Unknown, DamsVaccinated::Yes, DamsVaccinated::No]
        .map(|dams| Choice::new(dams, words::dams_vaccinated(dams)))
        .to_vec();
    view! {
        <Section title=words::VIGOR>
            <Choices
                label=words::VIGOR
                options=scales
                chosen=vigor
                on_choose=move |new| {
                    if vigor.get_untracked() != Some(new) {
                        choose(practice::Choice::Vigor(new));
                    }
                }
                stacked=true
            />
        </Section>
        <Section title=words::BREED_MEANS>
            <p class="small-print">{words::BREED_MEANS_SUB}</p>
            <Choices
                label=words::BREED_MEANS
                options=breeds
                chosen=breed
                on_choose=move |new| {
                    if breed.get_untracked() != Some(new) {
                        choose(practice::Choice::BreedMeans(new));
                    }
                }
                stacked=true
            />
        </Section>
        <Section title=words::BREED_TYPE>
            <p class="small-print">{words::BREED_TYPE_SUB}</p>
            <Choices
                label=words::BREED_TYPE
                options=kinds
                chosen=kind
                on_choose=move |new| {
                    if kind.get_untracked() != Some(new) {
                        choose(practice::Choice::BreedType(new));
                    }
                }
                stacked=true
            />
        </Section>
        <RingChoices />
        <Section title=words::DAMS>
            <p class="small-print">{words::DAMS_SUB}</p>
            <Choices
                label=words::DAMS
                options=vaccinated
                chosen=dams
                on_choose=move |new| {
                    if dams.get_untracked() != Some(new) {
                        choose(practice::Choice::DamsVaccinated(new));
                    }
                }
                stacked=true
            />
        </Section>
    }
}

/// By whose limit rings go on, and on which lambs. With no rings nothing else is asked.
#[component]
fn RingChoices() -> impl IntoView {
    let farm = use_farm();
    let rings = Memo::new(move |_| farm.practice().rings);
    let error = RwSignal::new(String::new());
    let days = RwSignal::new(String::new());
    let choose = move |new: Rings| {
        if rings.get_untracked() == new {
            return;
        }
        match new.checked() {
            Ok(new) => {
                error.set(String::new());
                farm.tap(Event::Chose(practice::Choice::Rings(new)));
            }
            Err(wrong) => error.set(errors::ring_days(&wrong)),
        }
    };
    // Any limit of its own is the one choice "our own", whatever its days.
    let same = |rule: RingRule| match rule {
        RingRule::Own { .. } => RingRule::Own { days: OWN_DAYS },
        RingRule::NoRings
        | RingRule::EnglandWales
        | RingRule::Germany
        | RingRule::NewSouthWales
        | RingRule::NewZealand => rule,
    };
    let rules = [
        RingRule::NoRings,
        RingRule::EnglandWales,
        RingRule::Germany,
        RingRule::NewSouthWales,
        RingRule::NewZealand,
        RingRule::Own { days: OWN_DAYS },
    ]
    .map(|rule| match rule {
        RingRule::Own { .. } => Choice::new(rule, words::RINGS_OWN).note(words::ring_rule(rule).1),
        RingRule::NoRings
        | RingRule::EnglandWales
        | RingRule::Germany
        | RingRule::NewSouthWales
        | RingRule::NewZealand => {
            let (name, note) = words::ring_rule(rule);
            Choice::new(rule, name).note(note)
        }
    })
    .to_vec();
    let by_rule = move |rule: RingRule| {
        let now = rings.get_untracked();
        if same(now.rule) == rule {
            return;
        }
        // Whoever first chooses a rule means tails: what is on no lamb would be no choice at all.
        let none = !now.tails && !now.ram_lambs;
        choose(Rings { rule, tails: now.tails || none, ram_lambs: now.ram_lambs });
    };
    let uses = Memo::new(move |_| rings.get().rule != RingRule::NoRings);
    let own = Memo::new(move |_| matches!(rings.get().rule, RingRule::Own { .. }));
    let bans = Memo::new(move |_| banned(rings.get().rule, Ring::Castration));
    Effect::new(move |_| {
        if let RingRule::Own { days: known } = rings.get().rule {
            days.set(known.to_string());
        }
    });
    let save_days = move || {
        let typed = days.get_untracked().trim().to_owned();
        match typed.parse() {
            Ok(days) => choose(Rings { rule: RingRule::Own { days }, ..rings.get_untracked() }),
            Err(_) => error.set(words::not_whole(&typed, OWN_DAYS)),
        }
    };
    // What the law bans is not offered; a book that has chosen it is told so.
    let on = move || {
        let tails = Choice::new((true, false), words::RINGS_TAILS);
        let rams = Choice::new((false, true), words::RINGS_RAMS);
        let both = Choice::new((true, true), words::RINGS_BOTH);
        if bans.get() { vec![tails] } else { vec![tails, rams, both] }
    };
    let (least, most) = RINGS_OWN_DAYS;
    let hint = words::between_days(least, most);
    view! {
        <Section title=words::RINGS>
            <p class="small-print">{format!("{} {}", words::RINGS_SUB, marking::local_rules())}</p>
            <Choices
                label=words::RINGS
                options=rules
                chosen=Signal::derive(move || Some(same(rings.get().rule)))
                on_choose=by_rule
                stacked=true
            />
            {live(move || own.get().then(|| view! {
                <Field label=words::RINGS_DAYS value=days kind=FieldKind::Whole hint=hint.clone() error=error>
                    <span>{words::DAYS}</span>
                </Field>
                <Button label=words::SAVE_DAYS on_press=save_days />
            }.into_any()).into_any())}
            {live(move || words::is_banned(rings.get()).then(|| view! { <Remark text=words::RINGS_BANNED /> }.into_any()).into_any())}
            {live(move || uses.get().then(|| view! {
                <Choices
                    label=words::RINGS_ON
                    labelled=true
                    options=on()
                    chosen=Signal::derive(move || Some((rings.get().tails, rings.get().ram_lambs)))
                    on_choose=move |(tails, ram_lambs)| choose(Rings { tails, ram_lambs, ..rings.get_untracked() })
                    stacked=true
                />
            }.into_any()).into_any())}
        </Section>
    }
}
