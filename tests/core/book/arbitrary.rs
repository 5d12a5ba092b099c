//! Any entry at all: every fact, corrections among them, with ids from a small pool so that corrections hit.

mod illness;

use chrono::NaiveDate;
use proptest::prelude::*;
use uuid::Uuid;
use yeanling_core::book::{
    Animal, Awaited, BatchId, Belly, BirthDay, Book, Care, Castration, Cause, CullReason, Departure,
    DeviceId, DutyKind, Entry, EntryId, Event, EweId, Found, GlucoseBy, GroupId, Item, LambId, LambingEase,
    Life, Milk, MilkedFrom, Mouth, Part, Past, PenId, PenSize, PlannedJob, Planning, Presentation, RamAge,
    Ring, Route, Sex, Sign, Suck, Treatment, VetSaid, VigorScale, Way,
};
use yeanling_core::settings::{
    BottleTable, BreedMeans, BreedType, ChillLimit, Choice, Clock, CullSigns, DamsVaccinated, DayRule,
    FreezerLife, Housing, LaborLimits, Latitude, Limits, PenStay, PowderRule, RingRule, Rings, VetAgreed,
    VigorInUse, WeaningRule,
};
use yeanling_core::units::{
    Amount, Brix, Condition, Length, Mass, Moment, Price, Strength, System, Temperature, Volume,
};

/// So many cases, and no file of old failures: a failure found becomes a test with a name.
pub(crate) fn config(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

/// How many ids there are.
const POOL: u128 = 10;

/// Facts of a later version, in every guise that JSON has.
pub(super) const UNKNOWN: &[&str] = &[
    r#""shorn""#,
    r#"{"shorn":{}}"#,
    r#"{"shorn":{"kg":1.0,"n":1e3,"m":-0,"big":123456789012345678901234567890,"e":1E+400}}"#,
    r#"{"shorn":{"text":"a \"b\" \\ \/ \u00e9 \ud83d\udc11 é 🐑 \ud800","deep":[[[{"a":[null,true]}]]]}}"#,
    r#"{"shorn":{"spaced out":"two  spaces\tand\nlines"},"twice":1,"twice":2}"#,
    r#"{"stood":{"lamb":"019c0000-0000-7000-8000-000000000001","seen-by":"night shift"}}"#,
    r#"{"amended":{"entry":"00000000-0000-0000-0000-000000000003","event":{"shorn":{}},"at":"2026-02-25T03:12:00.000-05:00"}}"#,
];

fn id() -> impl Strategy<Value = Uuid> {
    (1..=POOL).prop_map(Uuid::from_u128)
}

fn entry_id() -> impl Strategy<Value = EntryId> {
    id().prop_map(EntryId::from_uuid)
}

fn lamb() -> impl Strategy<Value = LambId> {
    id().prop_map(LambId::from_uuid)
}

fn ewe() -> impl Strategy<Value = EweId> {
    id().prop_map(EweId::from_uuid)
}

fn animal() -> impl Strategy<Value = Animal> {
    prop_oneof![ewe().prop_map(Animal::Ewe), lamb().prop_map(Animal::Lamb)]
}

fn moment() -> impl Strategy<Value = Moment> {
    let near = (0..40_i64).prop_map(|hours| 1_772_000_000_000 + hours * 3_600_000);
    let offset = prop_oneof![Just(-300_i16), Just(0), Just(60), Just(345)];
    (prop_oneof![9 => near, 1 => -2_208_988_800_000..253_402_214_400_000_i64], offset)
        .prop_map(|(milliseconds, offset)| Moment::from_unix_milliseconds(milliseconds, offset))
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof![".{0,12}", Just("\"\\\u{0}\u{1f}\u{2028} 🐑".to_owned())]
}

fn volume() -> impl Strategy<Value = Volume> {
    prop_oneof![(0..=20_000_u32).prop_map(f64::from), 0.0..=20_000.0].prop_map(Volume::from_milliliters)
}

fn mass() -> impl Strategy<Value = Mass> {
    prop_oneof![(0..=500_u32).prop_map(f64::from), 0.0..=500.0].prop_map(Mass::from_kilograms)
}

fn choice() -> impl Strategy<Value = Choice> {
    let limits = any::<[u16; 5]>().prop_map(|[up, help, red, last_call, navel_again]| Limits {
        up_minutes: up,
        help_minutes: help,
        red_minutes: red,
        last_call_minutes: last_call,
        navel_again_minutes: navel_again,
    });
    prop_oneof![
        text().prop_map(Choice::FarmName),
        Just(Choice::System(System::Us)),
        Just(Choice::System(System::Metric)),
        Just(Choice::Clock(Clock::Twelve)),
        Just(Choice::DayRule(DayRule::TenPercent)),
        Just(Choice::DayRule(DayRule::Ruma210)),
        Just(Choice::Housing(Housing::Outdoors)),
        Just(Choice::BottleTable(BottleTable::UsHandbook)),
        limits.prop_map(Choice::Limits),
        any::<[u16; 2]>().prop_map(|[look, neck]| Choice::LaborLimits(LaborLimits {
            look_minutes: look,
            neck_minutes: neck,
            ..LaborLimits::default()
        })),
        any::<[u16; 3]>().prop_map(|[single, twins, more]| Choice::PenStay(PenStay {
            single_hours: single,
            twins_hours: twins,
            more_hours: more
        })),
        Just(Choice::FreezerLife(FreezerLife::TwoYears)),
        (0.0..=1000.0).prop_map(|grams| Choice::PowderRate(Strength::from_grams_per_liter(grams))),
        Just(Choice::PowderRule(PowderRule::FarmersJournal)),
        Just(Choice::WeaningRule(WeaningRule::Teagasc)),
        Just(Choice::BreedMeans(BreedMeans::StCroix)),
        Just(Choice::Vigor(VigorInUse::TenPoint)),
        Just(Choice::ChillLimit(ChillLimit::Murdoch1100)),
        rings().prop_map(Choice::Rings),
        Just(Choice::DamsVaccinated(DamsVaccinated::No)),
        Just(Choice::BreedType(BreedType::Hair)),
        Just(Choice::Latitude(Latitude::South)),
        (any::<Option<u8>>(), any::<Option<u8>>())
            .prop_map(|(lame, thin)| { Choice::CullSigns(CullSigns { lame, thin, ..CullSigns::default() }) }),
        text().prop_map(Choice::VetPhone),
        "[0-9 +().-]{0,20}".prop_map(Choice::VetNightPhone),
        "[0-9 ]{0,12}".prop_map(Choice::VetSecondPhone),
        Just(Choice::VetAgreed(VetAgreed::Trained)),
        Just(Choice::VetAgreed(VetAgreed::Killing)),
    ]
}

fn rings() -> impl Strategy<Value = Rings> {
    let rule = prop_oneof![
        Just(RingRule::NoRings),
        Just(RingRule::EnglandWales),
        any::<u16>().prop_map(|days| RingRule::Own { days }),
    ];
    (rule, any::<bool>(), any::<bool>()).prop_map(|(rule, tails, ram_lambs)| Rings { rule, tails, ram_lambs })
}

fn sex() -> impl Strategy<Value = Sex> {
    prop_oneof![Just(Sex::Ewe), Just(Sex::Ram)]
}

fn milk() -> impl Strategy<Value = Milk> {
    prop_oneof![Just(Milk::DamColostrum), Just(Milk::PowderColostrum), Just(Milk::Replacer), Just(Milk::Milk)]
}

fn way() -> impl Strategy<Value = Way> {
    prop_oneof![Just(Way::Bottle), Just(Way::Tube)]
}

fn pen() -> impl Strategy<Value = PenId> {
    id().prop_map(PenId::from_uuid)
}

/// Any fact of labor.
fn labor() -> impl Strategy<Value = Event> {
    let sign = prop_oneof![Just(Sign::Restless), Just(Sign::UdderTight)];
    let part = prop_oneof![Just(Part::ForeFeet), Just(Part::Tail)];
    let found = prop_oneof![
        Just(Found::CervixClosed),
        Just(Found::NothingYet),
        Just(Found::Empty),
        Just(Found::Lamb(Presentation::Normal)),
        Just(Found::Lamb(Presentation::Crosswise)),
    ];
    prop_oneof![
        (ewe(), sign).prop_map(|(ewe, sign)| Event::SignSeen { ewe, sign }),
        ewe().prop_map(|ewe| Event::WaterBagSeen { ewe }),
        ewe().prop_map(|ewe| Event::StrainingSeen { ewe }),
        (ewe(), part).prop_map(|(ewe, part)| Event::PartShowing { ewe, part }),
        (ewe(), found).prop_map(|(ewe, found)| Event::HandChecked { ewe, found }),
        ewe().prop_map(|ewe| Event::HelpBegun { ewe }),
        animal().prop_map(|animal| Event::VetCalled { animal }),
        animal().prop_map(|animal| Event::LookedAt { animal }),
        ewe().prop_map(|ewe| Event::NotLambing { ewe }),
        ewe().prop_map(|ewe| Event::AfterbirthPassed { ewe }),
    ]
}

/// Any fact of a failing or a growing lamb.
fn care() -> impl Strategy<Value = Event> {
    let ring = prop_oneof![Just(Ring::Tail), Just(Ring::Castration)];
    let celsius = (-60.0..=120.0).prop_map(Temperature::from_celsius);
    prop_oneof![
        (lamb(), any::<bool>()).prop_map(|(lamb, accepts)| Event::Accepted { lamb, accepts }),
        (lamb(), celsius).prop_map(|(lamb, temperature)| Event::TemperatureTaken { lamb, temperature }),
        (lamb(), any::<bool>()).prop_map(|(lamb, able)| Event::SwallowTried { lamb, able }),
        lamb().prop_map(|lamb| Event::Warmed { lamb }),
        (lamb(), mass()).prop_map(|(lamb, mass)| Event::SolidsEaten { lamb, mass }),
        lamb().prop_map(|lamb| Event::Weaned { lamb }),
        (lamb(), ring).prop_map(|(lamb, ring)| Event::Ringed { lamb, ring }),
    ]
}

/// Any fact of the pens, and duties put off.
fn pens() -> impl Strategy<Value = Event> {
    let side = || (0.0..=1000.0).prop_map(Length::from_meters);
    let size = (side(), side()).prop_map(|(wide, deep)| PenSize { wide, deep });
    let duty = prop_oneof![Just(DutyKind::Feed), Just(DutyKind::Look), Just(DutyKind::Afterbirth)];
    prop_oneof![
        3 => (text(), prop::option::of(size)).prop_map(|(name, size)| Event::PenMade { name, size }),
        1 => (pen(), text()).prop_map(|(pen, name)| Event::PenNamed { pen, name }),
        1 => pen().prop_map(|pen| Event::PenCleaned { pen }),
        1 => pen().prop_map(|pen| Event::PenClosed { pen }),
        3 => (animal(), pen()).prop_map(|(animal, pen)| Event::PutInPen { animal, pen }),
        2 => animal().prop_map(|animal| Event::LetOut { animal }),
        1 => (animal(), duty, moment()).prop_map(|(animal, duty, until)| Event::PutOff { animal, duty, until }),
    ]
}

/// Any fact of a group, and of what is seen of a ewe in the field.
fn groups() -> impl Strategy<Value = Event> {
    let group = || id().prop_map(GroupId::from_uuid);
    let age = prop::option::of(prop_oneof![Just(RamAge::Lamb), Just(RamAge::Mature)]);
    let score = (0.0..=5.0).prop_map(Condition::from_score);
    prop_oneof![
        4 => text().prop_map(|name| Event::GroupFormed { name }),
        1 => (group(), text()).prop_map(|(group, name)| Event::GroupNamed { group, name }),
        1 => group().prop_map(|group| Event::GroupParted { group }),
        6 => (ewe(), group()).prop_map(|(ewe, group)| Event::JoinedGroup { ewe, group }),
        1 => (ewe(), group()).prop_map(|(ewe, group)| Event::LeftGroup { ewe, group }),
        4 => (group(), prop::option::of(text()), age)
            .prop_map(|(group, ram, age)| Event::RamIn { group, ram, age }),
        2 => group().prop_map(|group| Event::RamOut { group }),
        1 => (group(), text()).prop_map(|(group, color)| Event::CrayonChanged { group, color }),
        2 => (ewe(), text()).prop_map(|(ewe, color)| Event::CrayonMark { ewe, color }),
        2 => (ewe(), any::<u8>(), prop::option::of(any::<u16>()))
            .prop_map(|(ewe, lambs, days)| Event::Scanned { ewe, lambs, days }),
        1 => (ewe(), score).prop_map(|(ewe, score)| Event::Conditioned { ewe, score }),
        1 => (ewe(), mass()).prop_map(|(ewe, mass)| Event::EweWeighed { ewe, mass }),
        1 => (group(), mass()).prop_map(|(group, mass)| Event::FeedSet { group, mass }),
        1 => group().prop_map(|group| Event::BoosterGiven { group }),
    ]
}

/// Any fact of the stores and the freezer.
fn stores() -> impl Strategy<Value = Event> {
    let goods = || {
        let amount = prop_oneof![(0..=1_000_u32).prop_map(f64::from), 0.0..=1e9].prop_map(Amount::from_units);
        (prop::sample::select(&Item::ALL[..]), amount)
    };
    let from = prop_oneof![
        ewe().prop_map(MilkedFrom::Ewe),
        Just(MilkedFrom::SomeEwe),
        Just(MilkedFrom::Goat),
        Just(MilkedFrom::Cow),
    ];
    let brix = prop::option::of((0.0..=100.0).prop_map(Brix::from_percent));
    let batch = || (id().prop_map(BatchId::from_uuid), any::<u8>());
    prop_oneof![
        goods().prop_map(|(item, amount)| Event::StoreIn { item, amount }),
        goods().prop_map(|(item, amount)| Event::StoreUsed { item, amount }),
        goods().prop_map(|(item, amount)| Event::StoreThrown { item, amount }),
        goods().prop_map(|(item, amount)| Event::StoreCounted { item, amount }),
        (from, any::<u8>(), volume(), brix, prop::option::of(text())).prop_map(
            |(from, bags, volume, brix, label)| Event::ColostrumFrozen { from, bags, volume, brix, label }
        ),
        batch().prop_map(|(batch, bags)| Event::ColostrumThawed { batch, bags }),
        batch().prop_map(|(batch, bags)| Event::ColostrumThrown { batch, bags }),
    ]
}

/// Anything that is meant for the season.
fn planning() -> impl Strategy<Value = Event> {
    let group = || id().prop_map(GroupId::from_uuid);
    let what = || prop::sample::select(&PlannedJob::ALL[..]);
    let day = (0..20_000_u64).prop_map(|day| NaiveDate::default() + chrono::Days::new(day));
    prop_oneof![
        (group(), prop::option::of(moment())).prop_map(|(group, until)| Planning::RamStays { group, until }),
        (group(), prop::collection::vec(text(), 0..3))
            .prop_map(|(group, rams)| Planning::RamsMeant { group, rams }),
        (group(), day.clone()).prop_map(|(group, until)| Planning::FeedPutOff { group, until }),
        (what(), prop::option::of(group()), prop::option::of(day))
            .prop_map(|(what, group, on)| Planning::Planned { what, group, on }),
        (what(), prop::option::of(group())).prop_map(|(what, group)| Planning::Happened { what, group }),
    ]
    .prop_map(Event::Planning)
}

/// Any treatment.
fn treatment() -> impl Strategy<Value = Box<Treatment>> {
    let maybe = || prop::option::of(text());
    let route = prop::option::of(prop_oneof![Just(Route::Mouth), Just(Route::Injection)]);
    let words = (text(), maybe(), maybe(), maybe(), maybe());
    let days = || prop::option::of(any::<u16>());
    (words, route, any::<bool>(), days(), days()).prop_map(
        |((product, amount, reason, batch, by), route, day_only, meat_days, milk_days)| {
            Box::new(Treatment { product, amount, route, reason, batch, by, day_only, meat_days, milk_days })
        },
    )
}

/// Anything from before the book.
fn past() -> impl Strategy<Value = Event> {
    let name = text();
    prop_oneof![
        2 => ewe().prop_map(|animal| Past::IsRam { animal }),
        2 => (animal(), ewe()).prop_map(|(animal, ram)| Past::Sired { animal, ram }),
        1 => (ewe(), ewe()).prop_map(|(animal, dam)| Past::DamOf { animal, dam }),
        1 => (animal(), any::<u8>()).prop_map(|(animal, of)| Past::BornAs { animal, of }),
        1 => (lamb(), prop::option::of(any::<u8>())).prop_map(|(lamb, of)| Past::RearedAs { lamb, of }),
        1 => lamb().prop_map(|lamb| Past::IsWether { lamb }),
        1 => (animal(), name).prop_map(|(animal, name)| Past::Called { animal, name }),
    ]
    .prop_map(Event::Past)
}

/// Any fact of an animal's life.
fn life() -> impl Strategy<Value = Event> {
    let maybe = || prop::option::of(text());
    let day = (0..20_000_u64).prop_map(|day| NaiveDate::default() + chrono::Days::new(day));
    let born = prop_oneof![any::<u16>().prop_map(BirthDay::Year), day.prop_map(BirthDay::Day)];
    let how = prop_oneof![Just(Departure::Sold), Just(Departure::Missing)];
    let way = prop_oneof![Just(Castration::Cut), Just(Castration::Clamped)];
    prop_oneof![
        3 => (lamb(), ewe()).prop_map(|(lamb, dam)| Life::Fostered { lamb, dam }),
        1 => (animal(), text()).prop_map(|(animal, mark)| Life::Marked { animal, mark }),
        2 => lamb().prop_map(|lamb| Life::KeptAsEwe { lamb }),
        1 => (ewe(), prop::option::of(born), maybe())
            .prop_map(|(ewe, born, breed)| Life::Described { ewe, born, breed }),
        1 => (lamb(), way).prop_map(|(lamb, way)| Life::Castrated { lamb, way }),
        2 => (animal(), treatment()).prop_map(|(animal, treatment)| Life::Treated { animal, treatment }),
        1 => (ewe(), treatment()).prop_map(|(ewe, treatment)| Life::Boosted { ewe, treatment }),
        1 => (animal(), (0.0..=1e6).prop_map(Price::from_money))
            .prop_map(|(animal, price)| Life::SoldFor { animal, price }),
        1 => (animal(), prop::sample::select(&CullReason::ALL[..]))
            .prop_map(|(animal, why)| Life::Culled { animal, why }),
        2 => (animal(), how, maybe()).prop_map(|(animal, how, to)| Life::Went { animal, how, to }),
        1 => (animal(), text()).prop_map(|(animal, finding)| Life::Examined { animal, finding }),
    ]
    .prop_map(Event::Life)
}

/// Any fact of the care for an animal in trouble.
fn trouble() -> impl Strategy<Value = Event> {
    let maybe = || prop::option::of(text());
    let said = prop_oneof![
        Just(VetSaid::Coming),
        (maybe(), moment()).prop_map(|(what, look_again)| VetSaid::Advised { what, look_again }),
        Just(VetSaid::NobodyReached),
        (maybe(), moment()).prop_map(|(plan, look_again)| VetSaid::Saw { plan, look_again }),
    ];
    let by = prop_oneof![Just(GlucoseBy::Vet), Just(GlucoseBy::Trained)];
    let mouth = prop_oneof![Just(Mouth::Cold), Just(Mouth::Cool), Just(Mouth::Warm)];
    let suck = prop_oneof![Just(Suck::Strong), Just(Suck::Weak), Just(Suck::None)];
    let awaited = prop_oneof![Just(Awaited::Hanging), Just(Awaited::NotSeenBright)];
    prop_oneof![
        3 => (animal(), said).prop_map(|(animal, said)| Care::VetSaid { animal, said }),
        1 => (lamb(), by).prop_map(|(lamb, by)| Care::GlucoseGiven { lamb, by }),
        1 => (lamb(), mouth, suck).prop_map(|(lamb, mouth, suck)| Care::MouthFelt { lamb, mouth, suck }),
        1 => (ewe(), awaited).prop_map(|(ewe, seen)| Care::AfterbirthAwaited { ewe, seen }),
        1 => ewe().prop_map(|ewe| Care::PutRight { ewe }),
        1 => ewe().prop_map(|ewe| Care::Settled { ewe }),
        1 => lamb().prop_map(|lamb| Care::FoundBorn { lamb }),
    ]
    .prop_map(Event::Care)
}

/// Any fact that is no correction.
fn fact() -> impl Strategy<Value = Event> {
    let birth = (prop::option::of(ewe()), prop::option::of(lamb()), prop::option::of(sex()), any::<bool>())
        .prop_map(|(dam, beside, sex, alive)| Event::LambBorn { dam, beside, sex, alive });
    let cause = prop_oneof![Just(Cause::Cold), Just(Cause::HardBirth), Just(Cause::Unknown)];
    let ease = prop_oneof![
        Just(LambingEase::Alone),
        Just(LambingEase::HardByHand),
        Just(LambingEase::PlannedSurgery)
    ];
    let belly = prop_oneof![Just(Belly::Full), Just(Belly::Hollow)];
    prop_oneof![
        3 => prop::option::of(text()).prop_map(|tag| Event::EweCame { tag }),
        6 => birth,
        1 => (animal(), text()).prop_map(|(animal, tag)| Event::Tagged { animal, tag }),
        1 => (lamb(), ewe()).prop_map(|(lamb, dam)| Event::DamGiven { lamb, dam }),
        1 => (lamb(), ease).prop_map(|(lamb, ease)| Event::BirthEase { lamb, ease }),
        1 => lamb().prop_map(|lamb| Event::Stood { lamb }),
        1 => lamb().prop_map(|lamb| Event::Sucked { lamb }),
        1 => lamb().prop_map(|lamb| Event::NavelDipped { lamb }),
        1 => (lamb(), mass()).prop_map(|(lamb, mass)| Event::Weighed { lamb, mass }),
        2 => (lamb(), volume(), milk(), way())
            .prop_map(|(lamb, volume, milk, way)| Event::Fed { lamb, volume, milk, way }),
        1 => (lamb(), any::<u8>())
            .prop_map(|(lamb, score)| Event::VigorScored { lamb, scale: VigorScale::FourGrade, score }),
        1 => (lamb(), belly).prop_map(|(lamb, belly)| Event::BellyFelt { lamb, belly }),
        1 => lamb().prop_map(|lamb| Event::AllBorn { lamb }),
        1 => (animal(), cause).prop_map(|(animal, cause)| Event::Died { animal, cause }),
        1 => (animal(), text()).prop_map(|(animal, text)| Event::Remarked { animal, text }),
        1 => choice().prop_map(Event::Chose),
        4 => labor(),
        3 => care(),
        3 => illness::illness(),
        4 => pens(),
        5 => groups(),
        3 => stores(),
        4 => life(),
        3 => planning(),
        3 => past(),
        4 => trouble(),
        2 => (animal(), animal()).prop_map(|(keep, also)| Event::SameAnimal { keep, also }),
        1 => prop::sample::select(UNKNOWN)
            .prop_map(|json| super::noting(1, json).event),
    ]
}

/// Any fact at all.
pub(super) fn event() -> impl Strategy<Value = Event> {
    // What is inside an amendment must be readable, else the whole amendment is not.
    let known = fact().prop_filter("readable", |event| !matches!(event, Event::Unread(_)));
    let correction = prop_oneof![
        2 => (entry_id(), known, moment())
            .prop_map(|(entry, event, at)| Event::Amended { entry, event: Box::new(event), at }),
        1 => (entry_id(), entry_id(), moment()).prop_map(|(entry, inner, at)| Event::Amended {
            entry,
            event: Box::new(Event::Deleted { entry: inner }),
            at
        }),
        3 => entry_id().prop_map(|entry| Event::Deleted { entry }),
        3 => entry_id().prop_map(|entry| Event::Restored { entry }),
    ];
    prop_oneof![2 => fact(), 1 => correction]
}

/// An entry of this id.
fn entry(id: u128) -> impl Strategy<Value = Entry> {
    (1..=3_u128, moment(), moment(), event()).prop_map(move |(device, noted, at, event)| Entry {
        id: EntryId::from_uuid(Uuid::from_u128(id)),
        device: DeviceId::from_uuid(Uuid::from_u128(device)),
        noted,
        at,
        event,
    })
}

/// Any entries, each with an id of its own.
pub(crate) fn entries() -> impl Strategy<Value = Vec<Entry>> {
    let ids: Vec<u128> = (1..=POOL).collect();
    let most = ids.len();
    prop::sample::subsequence(ids, 0..=most)
        .prop_flat_map(|ids| ids.into_iter().map(entry).collect::<Vec<_>>())
}

/// The same entries in three books that overlap.
pub(crate) fn three_books() -> impl Strategy<Value = [Book; 3]> {
    (entries(), prop::collection::vec(0..8_u8, 20)).prop_map(|(entries, lots)| {
        let of = |book: u8| -> Book {
            let held = entries.iter().zip(&lots).filter(|(_, lot)| *lot & (1 << book) != 0);
            held.map(|(entry, _)| entry.clone()).collect()
        };
        [of(0), of(1), of(2)]
    })
}
