//! What the words call a bird: whose it is ("Rosa's", "mine"), which ("the duck"), where it cooks, how big it is; and the words without
//! that.
//!
//! Owns no choice: names tell of plans, [`which`](super::which) says what follows.

use super::PersonId;
use super::sitting::Sitting;
use super::state::LivePlan;
use super::{RoomKind, order};
use crate::reading::sentence::Sentence;
use crate::reading::{self, fold};
use carvetime_core::bird::Kind;
use carvetime_core::quantity::in_grams;
use carvetime_core::roast::Cooker;
use chrono::Datelike;

/// Birds within this part of each other's weight are not told apart by it.
const SAME_WEIGHT: f64 = 0.03;

/// The plans the words name, if they tell some from others: by host, by bird, by cooker.
pub(super) fn names(sitting: &Sitting<'_>, text: &str) -> Option<Vec<u32>> {
    let mut left: Vec<u32> = sitting.room.plans().iter().map(|plan| plan.serial).collect();
    let all = left.len();
    for named in named_by(sitting, text) {
        if !named.is_empty() {
            left.retain(|serial| named.contains(serial));
        }
    }
    // "Tom put Rosa's on" names both, "Tom's goose" may name neither: then the words tell nothing.
    (!left.is_empty() && left.len() < all).then_some(left)
}

/// Whether the words tell of several birds, each by its name: "turkey 150, duck 140".
pub(super) fn names_several(sitting: &Sitting<'_>, text: &str) -> bool {
    let alike = |of: fn(&LivePlan) -> String, serials: &[u32]| {
        let plans = sitting.room.plans();
        let mut kinds = plans.iter().filter(|plan| serials.contains(&plan.serial)).map(|plan| of(plan));
        let first = kinds.next();
        kinds.all(|kind| Some(kind) == first)
    };
    let [by_host, by_bird, by_cooker, by_size] = named_by(sitting, text);
    let host: fn(&LivePlan) -> String = |plan| plan.host.0.to_string();
    let bird: fn(&LivePlan) -> String = |plan| order::kind(&plan.wish).name().into();
    let cooker: fn(&LivePlan) -> String = |plan| is_smoked(plan).to_string();
    !alike(host, &by_host) || !alike(bird, &by_bird) || !alike(cooker, &by_cooker) || by_size.len() > 1
}

/// The plans whose host, whose bird, whose cooker, whose size is named.
fn named_by(sitting: &Sitting<'_>, text: &str) -> [Vec<u32>; 4] {
    let words: Vec<String> = text.split_whitespace().map(|part| bare(sitting, part)).collect();
    let sentence = Sentence::read(&words.join(" "), sitting.lexicon());
    let (own, other) = (own(sitting, &words).contains(&true), other(sitting, &words).contains(&true));
    let by_host = |plan: &LivePlan| {
        let speakers = Some(plan.host) == sitting.speaker();
        own && speakers || other && !speakers || words.iter().any(|word| is_name_of(sitting, plan.host, word))
    };
    // "Turkey breast 148": the breast of the turkey, unless one of the birds is a breast.
    let breast_alone = sitting.room.plans().iter().any(|plan| order::kind(&plan.wish) == Kind::TurkeyBreast);
    let by_bird = |plan: &LivePlan| {
        let kind = order::kind(&plan.wish);
        let whole = kind == Kind::Turkey && !breast_alone;
        (0..sentence.len())
            .filter_map(|at| sentence.of(at, "bird-"))
            .any(|named| named == kind.name() || whole && named == Kind::TurkeyBreast.name())
    };
    // "Smoker went out" is a phrase of its own, with the smoker in it.
    let each: Vec<Sentence> = words.iter().map(|word| Sentence::read(word, sitting.lexicon())).collect();
    let by_cooker = |plan: &LivePlan| {
        let named = || each.iter().any(|word| word.len() == 1 && cooks_in(word, 0, plan));
        (0..sentence.len()).any(|at| cooks_in(&sentence, at, plan)) || named()
    };
    let [lightest, heaviest] = by_weight(sitting);
    let by_size = |plan: &LivePlan| {
        let named = |concept: &str, serial: Option<u32>| serial == Some(plan.serial) && sentence.has(concept);
        let mass = |at: usize| sentence.amount(at).and_then(|amount| amount.mass()).map(in_grams);
        let weighs = |told: f64| plan.wish.mass_g.is_some_and(|mass| (told - mass).abs() < mass * SAME_WEIGHT);
        named("size-small", lightest) || named("size-big", heaviest) || (0..sentence.len()).filter_map(mass).any(weighs)
    };
    [&by_host as &dyn Fn(&LivePlan) -> bool, &by_bird, &by_cooker, &by_size].map(|by| {
        let plans = sitting.room.plans();
        plans.iter().filter(|plan| by(plan)).map(|plan| plan.serial).collect()
    })
}

/// The lightest and the heaviest bird, where they differ.
fn by_weight(sitting: &Sitting<'_>) -> [Option<u32>; 2] {
    let plans = sitting.room.plans();
    let mut masses: Vec<(f64, u32)> = plans.iter().filter_map(|plan| Some((plan.wish.mass_g?, plan.serial))).collect();
    masses.sort_by(|one, other| one.0.total_cmp(&other.0));
    match (masses.first(), masses.last()) {
        (Some(light), Some(heavy)) if heavy.0 > light.0 * (1.0 + SAME_WEIGHT) => [Some(light.1), Some(heavy.1)],
        _ => [None, None],
    }
}

pub(super) fn is_smoked(plan: &LivePlan) -> bool {
    plan.wish.cooker.as_deref() == Some(Cooker::Smoker.name())
}

/// Whether the piece names the cooker of the plan. "Pit" is the air of any of them.
fn cooks_in(sentence: &Sentence, at: usize, plan: &LivePlan) -> bool {
    let named = sentence.of(at, "cooker-").filter(|_| fold(sentence.raw(at)) != reading::Place::Pit.name());
    named.is_some_and(|cooker| is_smoked(plan) == (cooker == Cooker::Smoker.name()))
}

/// A word as names are compared: folded, without signs around it or the ending of a genitive.
pub(super) fn word(text: &str) -> String {
    let folded = fold(text);
    let bare = folded.trim_matches(|c: char| !c.is_alphanumeric());
    bare.strip_suffix("'s").unwrap_or(bare).to_owned()
}

/// Whether a word names a person: the first part of their name, or their handle.
fn is_name_of(sitting: &Sitting<'_>, person: PersonId, told: &str) -> bool {
    let Some(person) = sitting.people.get(&person) else { return false };
    let first = person.name.split_whitespace().map(word).find(|part| !part.is_empty());
    let handle = person.username.as_deref().map(word);
    // "Rosas": a genitive without its sign.
    [first, handle].into_iter().flatten().any(|name| told == name || told.strip_suffix('s') == Some(name.as_str()))
}

/// The words without "the big one": "big one in the oven" is in the oven.
pub(super) fn without_size(sitting: &Sitting<'_>, text: &str) -> String {
    let parts: Vec<&str> = text.split_whitespace().collect();
    let is = |at: usize, what: &dyn Fn(&Sentence) -> bool| {
        parts.get(at).is_some_and(|part| what(&Sentence::read(&word(part), sitting.lexicon())))
    };
    let size = |at: usize| is(at, &|told| told.len() == 1 && told.of(0, "size-").is_some());
    let one = |at: usize| is(at, &|told| told.is(0, "number-1"));
    let article = |at: usize| size(at + 1) && is_article(sitting, parts.get(at).copied().unwrap_or_default());
    let kept = (0..parts.len()).filter(|at| !(size(*at) || article(*at) || *at > 0 && size(at - 1) && one(*at)));
    kept.filter_map(|at| parts.get(at).copied()).collect::<Vec<_>>().join(" ")
}

/// A word as names are compared, without an article that clings to it: "l'oie".
fn bare(sitting: &Sitting<'_>, part: &str) -> String {
    match &sitting.lexicon().talk_words(part)[..] {
        [article, noun] if article.ends_with('\'') => word(noun),
        _ => word(part),
    }
}

/// "The" of "the big one".
fn is_article(sitting: &Sitting<'_>, part: &str) -> bool {
    let told = word(part);
    ["dish-link", "which-filler"].iter().all(|group| sitting.lexicon().talk(&told, group))
}

/// "Mine", "my turkey", from one who has a bird in this group.
fn own(sitting: &Sitting<'_>, words: &[String]) -> Vec<bool> {
    let lexicon = sitting.lexicon();
    let hosts = sitting.room.plans().iter().any(|plan| Some(plan.host) == sitting.speaker());
    let has = hosts && sitting.room.kind == RoomKind::Group;
    let is = |at: usize, group: &str| words.get(at).is_some_and(|word| lexicon.talk(word, group));
    let bird = |at: usize| {
        let told = words.get(at).map(|word| Sentence::read(word, lexicon));
        told.is_some_and(|told| told.len() == 1 && (told.of(0, "bird-").is_some() || told.is(0, "number-1")))
    };
    let pair = |at: usize| is(at, "own-word") && bird(at + 1);
    (0..words.len()).map(|at| has && (is(at, "own-bird") || pair(at) || at > 0 && pair(at - 1))).collect()
}

/// "The other one", from one who has one bird of two.
fn other(sitting: &Sitting<'_>, words: &[String]) -> Vec<bool> {
    let lexicon = sitting.lexicon();
    let plans = sitting.room.plans();
    let hosts = plans.iter().filter(|plan| Some(plan.host) == sitting.speaker()).count();
    let has = plans.len() == 2 && hosts == 1;
    words.iter().map(|word| has && lexicon.talk(word, "which-other")).collect()
}

/// Which of the words only say which bird.
fn naming(sitting: &Sitting<'_>, parts: &[&str]) -> Vec<bool> {
    let hosts: Vec<PersonId> = sitting.room.plans().iter().map(|plan| plan.host).collect();
    let words: Vec<String> = parts.iter().map(|part| bare(sitting, part)).collect();
    let names = |told: &String| {
        let sentence = Sentence::read(told, sitting.lexicon());
        let of = |group: &str| sentence.of(0, group).is_some();
        let bird = sentence.len() == 1 && (of("bird-") || of("cooker-") || of("size-"));
        bird || hosts.iter().any(|host| is_name_of(sitting, *host, told))
    };
    let (own, other) = (own(sitting, &words), other(sitting, &words));
    let also = |at: usize| own.get(at) == Some(&true) || other.get(at) == Some(&true);
    let naming: Vec<bool> = words.iter().enumerate().map(|(at, word)| names(word) || also(at)).collect();
    // "Pato de Tom": what stands between two of them goes with them.
    let is = |at: usize| naming.get(at) == Some(&true);
    (0..parts.len()).map(|at| is(at) || at > 0 && is(at - 1) && is(at + 1) && !measures(parts[at])).collect()
}

/// A number stands in it.
pub(super) fn measures(part: &str) -> bool {
    part.contains(|c: char| c.is_ascii_digit())
}

/// Whether a spot of a bird is named.
pub(super) fn names_a_spot(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some())
}

/// A bird named in a text.
pub(super) struct Mention {
    /// The words that name it.
    pub(super) place: std::ops::Range<usize>,
    /// Its plan.
    pub(super) serial: u32,
    /// A bird is meant, and not the person: "bens", "the duck", "the big one".
    pub(super) sure: bool,
}

/// The birds the words name, one after the other. What may be any of them, or only the air of one, names none.
pub(super) fn mentions(sitting: &Sitting<'_>, parts: &[&str]) -> Vec<Mention> {
    let lexicon = sitting.lexicon();
    let naming = naming(sitting, parts);
    let read = |at: usize| parts.get(at).map(|part| Sentence::read(&bare(sitting, part), lexicon));
    let one = |at: usize| read(at).is_some_and(|told| told.len() == 1 && told.is(0, "number-1"));
    let of = |at: usize, group: &str| read(at).is_some_and(|told| told.len() == 1 && told.of(0, group).is_some());
    let person = |at: usize| {
        let hosts = sitting.room.plans().into_iter().map(|plan| plan.host);
        let mut names = hosts.filter_map(|host| sitting.people.get(&host)).map(|person| fold(&person.name));
        let plain = parts.get(at).map(|part| fold(part).trim_matches(|c: char| !c.is_alphanumeric()).to_owned());
        names.any(|name| plain.as_deref() == name.split_whitespace().next())
    };
    let mut found: Vec<Mention> = Vec::new();
    let mut at = 0;
    while at < parts.len() {
        let run = (at..parts.len()).take_while(|at| naming.get(*at) == Some(&true)).count();
        if run == 0 {
            at += 1;
            continue;
        }
        let named = at..at + run;
        let end = if one(named.end) { named.end + 1 } else { named.end };
        let only_air = named.clone().all(|at| of(at, "cooker-")) && end == named.end;
        let words = parts.get(named.clone()).unwrap_or_default().join(" ");
        if let (false, Some([serial])) = (only_air, names(sitting, &words).as_deref()) {
            let sure = end > named.end || !named.clone().all(person);
            found.push(Mention { place: named.start..end, serial: *serial, sure });
        }
        at = end;
    }
    found
}

/// The words without those that only say which bird.
pub(super) fn unnamed(sitting: &Sitting<'_>, text: &str) -> String {
    let parts: Vec<&str> = text.split_whitespace().collect();
    let naming = naming(sitting, &parts);
    let is = |at: usize| naming.get(at) == Some(&true);
    let one =
        |at: usize| parts.get(at).is_some_and(|part| Sentence::read(&word(part), sitting.lexicon()).is(0, "number-1"));
    let goes = |at: usize| {
        let article = is(at + 1) && is_article(sitting, parts.get(at).copied().unwrap_or_default());
        is(at) || article || at > 0 && is(at - 1) && one(at)
    };
    let kept = (0..parts.len()).filter(|at| !goes(*at)).filter_map(|at| parts.get(at).copied());
    kept.collect::<Vec<_>>().join(" ")
}

/// The one plan that words name and say nothing else: "the duck", "sorry, Rosa's", "not the goose" (of two, the other).
pub(super) fn answer(sitting: &Sitting<'_>, text: &str) -> Option<u32> {
    if text.trim_start().starts_with('/') || text.contains(['?', '¿']) {
        return None;
    }
    let named = names(sitting, text)?;
    let [named] = named.as_slice() else { return None };
    let lexicon = sitting.lexicon();
    let parts: Vec<&str> = text.split_whitespace().collect();
    let naming = naming(sitting, &parts);
    let last = naming.iter().rposition(|names| *names)?;
    let says_more = |at: usize| {
        let told = parts.get(at).map(|part| lexicon.talk_words(part).join(" ")).unwrap_or_default();
        let one = Sentence::read(&told, lexicon);
        let one = one.is(0, "number-1") || one.is(0, "number-article");
        let says = |group: &str| lexicon.talk(&told, group);
        // "The one in the oven"; "the big one is on" says more.
        let link = at < last && says("dish-link");
        naming.get(at) != Some(&true) && !(told.is_empty() || one || link || says("which-filler") || says("not-that"))
    };
    if (0..parts.len()).any(says_more) {
        return None;
    }
    // "No, the goose" is the goose.
    let denies = |part: &&str| !part.ends_with([',', '.', '!', ';']) && lexicon.talk(&word(part), "not-that");
    if !parts.get(..last).is_some_and(|before| before.iter().any(denies)) {
        return Some(*named);
    }
    let plans = sitting.room.plans();
    let mut others = plans.iter().map(|plan| plan.serial).filter(|serial| serial != named);
    others.next().filter(|_| plans.len() == 2)
}

/// The one plan whose dinner is on the day of the week that is named.
pub(super) fn of_the_day(sitting: &Sitting<'_>, text: &str) -> Option<u32> {
    let sentence = Sentence::read(text, sitting.lexicon());
    let told: Vec<&str> = (0..sentence.len()).filter_map(|at| sentence.of(at, "weekday-")).collect();
    let [told] = told.as_slice() else { return None };
    let zone = sitting.zone_or_utc();
    let day = |plan: &LivePlan| plan.wish.dinner.map(|dinner| dinner.with_timezone(&zone).date_naive());
    let is = |plan: &&&LivePlan| day(plan).is_some_and(|day| day.weekday().to_string().to_lowercase() == *told);
    let plans = sitting.room.plans();
    let mut found = plans.iter().filter(is);
    let first = found.next()?;
    found.next().is_none().then_some(first.serial)
}

/// The words without the day of the week, and what leads to it.
pub(super) fn without_day(sitting: &Sitting<'_>, text: &str) -> String {
    let lexicon = sitting.lexicon();
    let parts: Vec<&str> = text.split_whitespace().collect();
    let day =
        |at: usize| parts.get(at).is_some_and(|part| Sentence::read(&word(part), lexicon).of(0, "weekday-").is_some());
    let link = |at: usize| parts.get(at).is_some_and(|part| lexicon.talk(&word(part), "dish-link")) && day(at + 1);
    let kept = (0..parts.len()).filter(|at| !day(*at) && !link(*at)).filter_map(|at| parts.get(at).copied());
    kept.collect::<Vec<_>>().join(" ")
}

/// The words without "both", "both of them"; `None`: they don't say so.
pub(super) fn without_both(sitting: &Sitting<'_>, text: &str) -> Option<String> {
    const LONGEST: usize = 3;
    let parts: Vec<&str> = text.split_whitespace().collect();
    (1..=LONGEST).rev().find_map(|count| {
        let says =
            |some: &[&str]| sitting.lexicon().talk(&sitting.lexicon().talk_words(&some.join(" ")).join(" "), "both");
        let from = parts.windows(count).position(says)?;
        let (before, behind) = (parts.get(..from)?, parts.get(from + count..)?);
        Some([before, behind].concat().join(" "))
    })
}
