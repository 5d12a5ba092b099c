//! The choices of care: how vigor is scored, whose birth weights, rings, and whether the dams were vaccinated.

use yeanling_core::reckon::marking::banned;
use yeanling_core::settings::{
    BreedMeans, BreedType, Choice, DamsVaccinated, FarmSettings, Latitude, RINGS_OWN_DAYS, RingRule, Rings,
    VigorInUse,
};
use yeanling_core::terms::Ring;
use yeanling_words::{errors, marking, settings as words};

use super::{one_of, options};
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect};

const DAYS: &str = "practice-ring-days";

/// How long the farm's own limit is until it is typed.
const OWN_DAYS: u16 = 7;

const SCALES: [VigorInUse; 2] = [VigorInUse::FourGrade, VigorInUse::TenPoint];
const BREEDS: [BreedMeans; 4] =
    [BreedMeans::NoBreed, BreedMeans::Katahdin, BreedMeans::StCroix, BreedMeans::Dorper];
const VACCINATED: [DamsVaccinated; 3] = [DamsVaccinated::Unknown, DamsVaccinated::Yes, DamsVaccinated::No];
const RULES: [RingRule; 6] = [
    RingRule::NoRings,
    RingRule::EnglandWales,
    RingRule::Germany,
    RingRule::NewSouthWales,
    RingRule::NewZealand,
    RingRule::Own { days: OWN_DAYS },
];

/// Returns the choices of care.
pub(super) fn blocks(settings: &FarmSettings, fields: &Fields) -> Blocks {
    let scales = SCALES.map(|scale| (Choice::Vigor(scale), words::vigor(scale)));
    let breeds = BREEDS.map(|means| (Choice::BreedMeans(means), words::breed_means(means)));
    let dams = VACCINATED.map(|dams| (Choice::DamsVaccinated(dams), (words::dams_vaccinated(dams), "")));
    let breed = one_of(words::BREED_MEANS, breeds, &Choice::BreedMeans(settings.breed_means));
    let dams = one_of(words::DAMS, dams, &Choice::DamsVaccinated(settings.dams_vaccinated));
    super::rule("vigor", words::VIGOR, scales, &Choice::Vigor(settings.vigor))
        .section(
            "breed-means",
            words::BREED_MEANS,
            Blocks::new().small(words::BREED_MEANS_SUB).choices("", breed.stacked()),
        )
        .section("rings", words::RINGS, rings(settings.rings, fields))
        .section("dams", words::DAMS, Blocks::new().small(words::DAMS_SUB).choices("", dams.stacked()))
}

/// Returns which kind of sheep the farm has, by how long it carries.
pub(super) fn breed_type(settings: &FarmSettings) -> Blocks {
    let kinds = BreedType::ALL.map(|breed| (Choice::BreedType(breed), words::breed_type(breed)));
    let kind = one_of(words::BREED_TYPE, kinds, &Choice::BreedType(settings.breed_type));
    let inside = Blocks::new().small(words::BREED_TYPE_SUB).choices("", kind.stacked());
    Blocks::new().section("breed-type", words::BREED_TYPE, inside)
}

/// Returns where the farm lies, by which its ewes have a season.
pub(super) fn latitude(settings: &FarmSettings) -> Blocks {
    let all = [Latitude::North, Latitude::South, Latitude::Tropics];
    let all = all.map(|latitude| (Choice::Latitude(latitude), words::latitude(latitude)));
    let lies = one_of(words::LATITUDE, all, &Choice::Latitude(settings.latitude));
    let inside = Blocks::new().small(words::LATITUDE_SUB).choices("", lies.stacked());
    Blocks::new().section("latitude", words::LATITUDE, inside)
}

/// By whose limit rings go on, and on which lambs. With no rings nothing else is asked.
fn rings(rings: Rings, fields: &Fields) -> Blocks {
    let rules = RULES.map(|rule| (Choice::Rings(by_rule(rings, rule)), named(rule)));
    let stands = RULES.iter().position(|rule| *rule == any_days(rings.rule));
    let rules = options(words::RINGS, rules, stands).stacked();
    let mut blocks = Blocks::new().small(words::rings_sub(&marking::local_rules())).choices("rule", rules);
    if let RingRule::Own { days } = rings.rule {
        blocks = blocks.then(own_days(days, fields));
    }
    if words::is_banned(rings) {
        blocks = blocks.remark(words::RINGS_BANNED, []);
    }
    if rings.rule == RingRule::NoRings { blocks } else { blocks.choices("on", on(rings)) }
}

/// Any limit of its own is the one choice "our own", whatever its days.
const fn any_days(rule: RingRule) -> RingRule {
    match rule {
        RingRule::Own { .. } => RingRule::Own { days: OWN_DAYS },
        RingRule::NoRings
        | RingRule::EnglandWales
        | RingRule::Germany
        | RingRule::NewSouthWales
        | RingRule::NewZealand => rule,
    }
}

fn named(rule: RingRule) -> (String, &'static str) {
    let (name, note) = words::ring_rule(rule);
    (if matches!(rule, RingRule::Own { .. }) { words::RINGS_OWN.to_owned() } else { name }, note)
}

/// Whoever first chooses a rule means tails: what is on no lamb would be no choice at all.
const fn by_rule(rings: Rings, rule: RingRule) -> Rings {
    Rings { rule, tails: rings.tails || !rings.ram_lambs, ram_lambs: rings.ram_lambs }
}

fn own_days(days: u16, fields: &Fields) -> Blocks {
    let (least, most) = RINGS_OWN_DAYS;
    let field = Field::new(words::RINGS_DAYS, FieldKind::Whole, fields.text(DAYS, &days.to_string()))
        .hint(words::between_days(least, most))
        .error(fields.error(DAYS))
        .unit(words::DAYS);
    let save = Action::Does(Does::FarmSettings(super::Does::SaveRingDays));
    Blocks::new().field(DAYS, field).button(Button::new("save-days", words::SAVE_DAYS, save))
}

/// What the law bans is not offered; a book that has chosen it is told so.
fn on(rings: Rings) -> crate::block::Choices {
    let all = [
        (true, false, words::RINGS_TAILS),
        (false, true, words::RINGS_RAMS),
        (true, true, words::RINGS_BOTH),
    ];
    let offered = if banned(rings.rule, Ring::Castration) { &all[..1] } else { &all[..] };
    let choices = offered.iter().map(|(tails, ram_lambs, name)| {
        (Choice::Rings(Rings { tails: *tails, ram_lambs: *ram_lambs, ..rings }), (*name, ""))
    });
    one_of(words::RINGS_ON, choices, &Choice::Rings(rings)).labelled().stacked()
}

/// Saves the farm's own limit.
pub(super) fn save_days(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(typed) = draft.fields.typed(DAYS).map(|typed| typed.trim().to_owned()) else {
        return Vec::new();
    };
    let stood = view.settings().rings;
    let Ok(days) = typed.parse() else {
        return draft.say_wrong(DAYS, words::not_whole(&typed, OWN_DAYS));
    };
    match (Rings { rule: RingRule::Own { days }, ..stood }).checked() {
        Err(wrong) => draft.say_wrong(DAYS, errors::ring_days(&wrong)),
        Ok(rings) if rings == stood => {
            draft.fields.forget(DAYS);
            Vec::new()
        }
        Ok(rings) => super::choose(view, draft, Choice::Rings(rings), &[DAYS.into()]),
    }
}
