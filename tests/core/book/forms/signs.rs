//! The forms of every sign of illness, every stage of a ewe and all that goes round.

use yeanling_core::book::{Animal, Event, Illness};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign, Onset, Spread};

/// What version 1 writes of signs.
pub(in super::super) const SIGNS_1: &[&str] = &[
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"labor","standing":"good","eating":"good","nothing-out":"good","signs":["on-back","wobbly","cud-at-nose","keeps-apart","dull","blind","presses-head","muzzle-tremor","sweet-breath","face-one-sided","drools","circles","star-gazing","fits","stiff"],"onset":"days"}}}"#,
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"milking","standing":"good","eating":"good","nothing-out":"good","signs":["twitches","smooth-out","strains-with-it","raw-out","bowel-out","cervix-tight","afterbirth-hangs","foul-discharge","bleeds","udder-cold","udder-hot","udder-firm","no-milk","lame","no-weight-on-leg"],"onset":"days"}}}"#,
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"other","standing":"good","eating":"good","nothing-out":"good","signs":["coughs","fast-breath","mouth-open","left-flank-drum","got-at-grain","scours","yellow-or-dark-urine","pale-eyelids","swollen-jaw","aborted","many-ill","second-meal-refused","bright","sees","went-back"],"onset":"days"}}}"#,
    r#"{"illness":{"lamb-seen":{"lamb":"019c0000-0000-7000-8000-000000000002","head-up":"good","swallows":"good","warm":"good","signs":["not-breathing","dull","hunched","hollow-belly","wet-chin","tight-belly","rattles","no-dung","no-anus","watery-scour","blood-in-dung","dark-straining","eyes-sunken","eyes-deep","cannot-stand","hot-joint","limps","leg-dangles","open-or-thigh","thick-navel"]}}}"#,
    r#"{"illness":{"lamb-seen":{"lamb":"019c0000-0000-7000-8000-000000000002","head-up":"good","swallows":"good","warm":"good","signs":["bowel-at-navel","lid-in","cloudy-eye","coughs-often","breathes-fast","breathes-by-mouth","stiff-legs","wobbly-behind","shaking-hairy","rigid-jaw-shut","fits-head-back","scabs-on-lips","milk-from-nose","wound","deep-wound","more-dying","lively","eye-clear","chin-dry"]}}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"spread":"notifiable"}}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"spread":"lambs-dying"}}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"spread":"abortions"}}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"spread":"scours"}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let (ewe, lamb) = (super::ewe(), super::lamb());
    let good = Gate::Good;
    let seen = |stage, signs: &[EweSign]| Illness::EweSeen {
        ewe,
        stage,
        standing: good,
        eating: good,
        nothing_out: good,
        signs: signs.to_vec(),
        onset: Some(Onset::Days),
    };
    let of_lamb = |signs: &[LambSign]| Illness::LambSeen {
        lamb,
        head_up: good,
        swallows: good,
        warm: good,
        signs: signs.to_vec(),
    };
    let (ewes, lambs) = (EweSign::ALL, LambSign::ALL);
    let spread = [Spread::Notifiable, Spread::LambsDying, Spread::Abortions, Spread::Scours]
        .map(|spread| Illness::SpreadSeenTo { animal: Animal::Lamb(lamb), spread });
    [
        seen(EweStage::Labor, &ewes[..15]),
        seen(EweStage::Milking, &ewes[15..30]),
        seen(EweStage::Other, &ewes[30..]),
        of_lamb(&lambs[..20]),
        of_lamb(&lambs[20..]),
    ]
    .into_iter()
    .chain(spread)
    .map(Event::Illness)
    .collect()
}
