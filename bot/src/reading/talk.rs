//! Short talk between people and the room: what is done, what is not, greetings, thanks, assent, "undo".
//!
//! Owns no word: the tables are the `talk-` entries of the lexicon. A text counts only as a whole, never for a word in it,
//! so a question or a story is no report. Start at [`read_report`].

use super::fold::fold;
use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::told::Told;
use super::will::made_of;
use carvetime_core::plan::Step;

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// As do more words.
const STORY: usize = 12;
/// As many words as a phrase looked for among words has.
const MOST_WORDS: usize = 5;

/// What someone says of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Report {
    /// The job; `None` for whatever is due.
    pub step: Option<Step>,
    /// The job it may be as well, later in the plan: "in the fridge" is thawing or leftovers. Whichever is due is meant.
    pub or: Option<Step>,
    /// Done or not.
    pub kind: ReportKind,
    /// Of thawing: it has begun, and the middle is still ice.
    pub partly: bool,
}

/// Whether a job is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReportKind {
    /// It is.
    Done,
    /// It is not: forgotten, not yet, still frozen.
    NotDone,
}

/// Reads "done", "it's on", "salted it just now", "still frozen solid", "not yet". `None` for everything else.
///
/// Of several clauses that each report something ("it's in the fridge, thawing"), the last tells how far it is.
pub fn read_report(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    const ENDS: [char; 5] = [',', ';', '.', '!', '\n'];
    let clauses: Vec<&str> = text.split(ENDS).filter(|clause| !clause.trim().is_empty()).collect();
    // "Salted it, it's back in the fridge": where it is now is no other job.
    let says = |clause: &&&str| !is_all(clause, "put-back", lexicon) && !is_all(clause, "manners", lexicon);
    let told: Vec<&str> = clauses.iter().filter(says).copied().collect();
    if let ([one], true) = (told.as_slice(), clauses.len() > 1) {
        return read_clause(one, lexicon);
    }
    // "It's in, still a little icy inside": that it is in is what counts from here on.
    let is_on = |report: &Report| report.kind == ReportKind::Done && [report.step, report.or].contains(&Some(Step::On));
    let is_icy = |report: &Report| report.kind == ReportKind::NotDone && report.step == Some(Step::Thaw);
    if let [first, .., last] = told.as_slice()
        && read_clause(last, lexicon).is_some_and(|report| is_icy(&report))
        && let Some(on) = read_clause(first, lexicon).filter(is_on)
    {
        return Some(on);
    }
    let whole = read_clause(text, lexicon).or_else(|| put_back(text, lexicon));
    if whole.is_some() || clauses.len() < 2 {
        return whole;
    }
    let clauses: Option<Vec<Report>> = told.into_iter().map(|clause| read_clause(clause, lexicon)).collect();
    clauses?.into_iter().last()
}

/// "Salted and back in the fridge": what was done before it went back.
fn put_back(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let words = words(text, lexicon)?;
    let joint = |at: &usize| words.get(*at).is_some_and(|word| lexicon.talk(word, "joins"));
    (1..words.len()).filter(joint).find_map(|at| {
        let (first, rest) = (words.get(..at)?.join(" "), words.get(at + 1..)?.join(" "));
        is_all(&rest, "put-back", lexicon).then(|| read_clause(&first, lexicon)).flatten()
    })
}

/// "Carving now": it has begun, and is not done.
pub fn says_carving(text: &str, lexicon: &'static Lexicon) -> bool {
    text.split([',', ';', '.', '!', '\n']).any(|clause| is_all(clause, "carving", lexicon))
}

/// "The oven is cold", "nobody turned the oven on".
pub fn says_oven_cold(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    let never = Sentence::read(text, lexicon).has("heat-never");
    !asks && (never || Told::of(text, lexicon).says("oven-cold")) && !tells_of_past_weeks(text, lexicon)
}

/// "Cook it there": not at home, but where it is eaten.
pub fn says_cooked_there(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "cook-there", lexicon)
}

/// "Turning it on now", of a heat that was spoken of.
pub fn says_lights_it(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "lights-it", lexicon)
}

/// "Let's do Monday instead", "no sorry, tomorrow after all": a day, and nothing beside it but that it is another.
pub fn settles_a_day(text: &str, lexicon: &'static Lexicon) -> bool {
    const TURNS: [&str; 6] = ["suggest", "make-it", "correcting", "party-tail", "hour-settles", "hour-settles-last"];
    const EMPTY: [&str; 3] = ["manners", "filler", "hour-link"];
    if text.contains(['?', '¿']) || text.chars().count() > LONGEST || text.contains(|c: char| c.is_ascii_digit()) {
        return false;
    }
    let sentence = Sentence::read(text, lexicon);
    let day = |at: usize| ["weekday-", "day-"].iter().any(|group| sentence.of(at, group).is_some());
    let days = (0..sentence.len()).filter(|at| day(*at)).count();
    let rest: Vec<&str> = (0..sentence.len()).filter(|at| !day(*at)).map(|at| sentence.raw(at)).collect();
    let words = lexicon.talk_words(&rest.join(" "));
    let found = made_of(&words, &[TURNS.as_slice(), EMPTY.as_slice()].concat(), lexicon);
    days == 1 && found.is_some_and(|found| found.iter().any(|group| TURNS.contains(group)))
}

/// "At what time should I arrive if dinner is at five?", "is the turkey on time?": of the dinner's hours, whatever else stands in it.
pub fn asks_of_the_dinner(text: &str, lexicon: &'static Lexicon) -> bool {
    text.chars().count() <= 2 * LONGEST && Told::of(text, lexicon).says("asks-dinner")
}

/// "Where can I see the plan?"
pub fn asks_for_the_plan(text: &str, lexicon: &'static Lexicon) -> bool {
    text.chars().count() <= LONGEST && Told::of(text, lexicon).says("asks-plan")
}

/// "May I heat the potatoes in Priya's oven?": something else than the bird in the oven, asked for.
pub fn asks_for_the_oven(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let asks = told.opens_with("ask-may") || told.opens_with("asking");
    let oven = sentence.has("cooker-oven") || sentence.has("spot-pit");
    let weighed = (0..sentence.len()).any(|at| sentence.number(at).is_some() || sentence.amount(at).is_some());
    let bird = (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some());
    let other = told.says("oven-for") && (!bird || sentence.has("ask-stand"));
    asks && oven && other && !weighed
}

/// "When?", and nothing else.
pub fn asks_bare_when(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "when-bare", lexicon)
}

/// "Why 10 am?", "why is it at 10": the reason of an hour is asked for, and none is told.
pub fn asks_why_an_hour(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    let (words, asks) = (told.words(), told.opens_with("why"));
    let hour = |word: &String| word.starts_with(|c: char| c.is_ascii_digit());
    asks && text.chars().count() <= LONGEST && words.iter().any(hour)
}

/// "Who's doing what tomorrow?": the same of a day, which stands behind it.
pub fn asks_who_does_what_on<'t>(text: &'t str, lexicon: &'static Lexicon) -> Option<&'t str> {
    of_a_day(text, lexicon, |asked| asks_who_does_what(asked, lexicon))
}

/// The day that stands behind a question: "what do I have to do | tomorrow".
pub(super) fn of_a_day<'t>(text: &'t str, lexicon: &'static Lexicon, asks: impl Fn(&str) -> bool) -> Option<&'t str> {
    const MOST: usize = 3;
    let text = text.trim().trim_end_matches(['?', ' ']);
    let ends: Vec<usize> = text.char_indices().filter(|(_, c)| *c == ' ').map(|(at, _)| at).collect();
    ends.iter().rev().take(MOST).find_map(|end| {
        let (asked, day) = (text.get(..*end)?, text.get(*end..)?.trim());
        if !asks(asked) {
            return None;
        }
        let sentence = Sentence::read(day, lexicon);
        let dates = |at: usize| {
            ["weekday-", "day-", "holiday-"].iter().any(|group| sentence.of(at, group).is_some())
                || ["on", "at", "in"].iter().any(|word| sentence.is(at, word))
        };
        (0..sentence.len()).all(dates).then_some(day)
    })
}

/// Whether a text begins as a question does: "does it need to be 180 in the thigh", "should the breast be 160".
pub fn begins_as_question(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).opens_with("asking")
}

/// Whether the first word is one that a question begins with: "is 250 ok". Only where a statement never begins so.
pub fn opens_as_question(text: &str, lexicon: &'static Lexicon) -> bool {
    lexicon.talk_words(text).first().is_some_and(|first| lexicon.talk(first, "asks-of"))
}

/// "166 breast 175 thigh, pulled it", "bird in!! oven was at 350": what a clause beside numbers says of the bird going on, coming off
/// or being cut up; "166 174 wing 171 its off": what is said behind the last of them of its coming off.
pub fn report_beside(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let digit = |c: char| c.is_ascii_digit();
    let done = |report: Report, steps: &[Step]| {
        let any = |step: Option<Step>| step.is_some_and(|step| steps.contains(&step));
        report.kind == ReportKind::Done && (any(report.step) || any(report.or))
    };
    let asks =
        text.contains(['?', '¿']) || ["asking", "ask-may"].iter().any(|lead| Told::of(text, lexicon).opens_with(lead));
    let clauses = text.split([',', ';', '!', '.', '\n']).flat_map(|clause| joined(clause, lexicon));
    clauses.into_iter().find_map(|clause| match clause.rsplit_once(digit) {
        // "Can it go on the balcony? It's 38 out": a word behind a number is no job done where something is asked.
        Some(_) if asks => None,
        None => read_clause(&clause, lexicon).filter(|report| done(*report, &[Step::On, Step::Pull, Step::Carve])),
        // "325 in the oven" is where it was read.
        Some((_, behind)) => {
            let behind = behind.trim_start_matches(['°', 'F', 'C', 'f', 'c']);
            read_clause(behind, lexicon).filter(|report| done(*report, &[Step::Pull, Step::Carve]))
        }
    })
}

/// "I pulled it at 160", "took it out at 155, it'll coast right?": what was done at what reading, in the words it was told in. `None`: no
/// such number, or an hour.
pub fn report_at_reading(text: &str, lexicon: &'static Lexicon) -> Option<(Report, String)> {
    let numbered = |clause: &&str| clause.contains(|c: char| c.is_ascii_digit());
    let clauses = || text.split([',', ';', '!', '?', '\n']).filter(numbered);
    let first = || clauses().next().filter(|_| clauses().count() == 1);
    done_at_reading(text, lexicon).or_else(|| {
        let parts = joined(first()?, lexicon);
        let only = parts.iter().filter(|part| numbered(&part.as_str())).count() == 1;
        parts.iter().filter(|_| only).find_map(|part| done_at_reading(part, lexicon))
    })
}

fn done_at_reading(text: &str, lexicon: &'static Lexicon) -> Option<(Report, String)> {
    /// Nothing cooked reads less, on either scale.
    const LEAST: f64 = 45.0;
    let words: Vec<&str> = text.split_whitespace().collect();
    let at = words.iter().position(|word| word.starts_with(|c: char| c.is_ascii_digit()))?;
    let told = words.get(at)?;
    let degrees = told.trim_end_matches(|c: char| !c.is_ascii_digit());
    degrees.parse().ok().filter(|degrees: &f64| *degrees >= LEAST)?;
    let before = at.checked_sub(1)?;
    words.get(before).filter(|word| Sentence::read(word, lexicon).is(0, "at"))?;
    let unit = words.get(at + 1).is_some_and(|word| Sentence::read(word, lexicon).of(0, "unit-").is_some());
    let rest: Vec<&str> =
        words.iter().take(before).chain(words.iter().skip(at + 1 + usize::from(unit))).copied().collect();
    let report = read_report(&rest.join(" "), lexicon)?;
    let off = [report.step, report.or].into_iter().flatten().any(|step| matches!(step, Step::Pull | Step::Carve));
    (off && report.kind == ReportKind::Done).then(|| (report, (*told).to_owned()))
}

/// The parts of a clause around "but" and "and".
fn joined(clause: &str, lexicon: &'static Lexicon) -> Vec<String> {
    let mut parts = vec![String::new()];
    for word in clause.split_whitespace() {
        match parts.last_mut() {
            Some(part) if !lexicon.talk(&fold(word), "joins") => {
                part.push_str(if part.is_empty() { "" } else { " " });
                part.push_str(word);
            }
            _ => parts.push(String::new()),
        }
    }
    parts
}

/// "Fell asleep, didn't change the water", "it's in, still a little icy inside": what one clause of a text says of a job it names,
/// where the rest says nothing that is understood.
pub fn report_among(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let clauses = || text.split([',', ';', '!', '.', '\n']);
    // "Bought it, the new TV": what it is stands behind it.
    if clauses().skip(1).any(|clause| names_a_thing(clause, lexicon)) {
        return None;
    }
    clauses().filter_map(|clause| read_clause(clause, lexicon)).find(|report| report.step.is_some())
}

/// "The new TV": a few words behind an article that name something no kitchen has.
fn names_a_thing(clause: &str, lexicon: &'static Lexicon) -> bool {
    const MOST: usize = 4;
    let words = lexicon.talk_words(clause);
    let article = words.first().is_some_and(|first| lexicon.talk(first, "article"));
    article && words.len() <= MOST && words.last().is_some_and(|last| !lexicon.knows(last))
}

/// "Took it out of the oven because it was so brown": it came off the heat, in a story.
pub fn tells_of_pulling(text: &str, lexicon: &'static Lexicon) -> bool {
    const LONGEST: usize = 120;
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    let told = Told::of(text, lexicon);
    told.says("told-pulled")
        && !asks
        && text.chars().count() <= LONGEST
        && !told.says("ahead")
        && !tells_of_past_weeks(text, lexicon)
}

/// "My oven died last week": over, and of no dinner now.
pub fn tells_of_past_weeks(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    ["weeks-ago", "other-year"].iter().any(|group| told.says(group))
}

fn read_clause(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let told = words(text, lexicon)?;
    if ["undo", "greeting", "thanks", "willing"].iter().any(|other| lexicon.talk(&told.join(" "), other)) {
        return None;
    }
    if asks(&told, lexicon) {
        return None;
    }
    // "Salted this morning": when it was says no more than that it is over.
    let (told, behind) = behind(told, lexicon);
    let icy = phrases(&told).any(|phrase| lexicon.talk(&phrase, "icy"));
    let report =
        report(&told, lexicon).map(|report| Report { partly: icy && report.step == Some(Step::Thaw), ..report });
    // "I'll salt it tonight" is not done.
    report.filter(|report| report.kind == ReportKind::NotDone || behind || !is_ahead(&told, lexicon))
}

/// The words without the time past that they name, and whether they do.
fn behind(mut told: Vec<String>, lexicon: &Lexicon) -> (Vec<String>, bool) {
    let is = |words: &[String]| lexicon.talk(&words.join(" "), "behind");
    let found = (1..=MOST_WORDS).rev().find_map(|count| Some((told.windows(count).position(is)?, count)));
    if let Some((from, count)) = found {
        told.drain(from..from + count);
    }
    (told, found.is_some())
}

fn report(told: &[String], lexicon: &'static Lexicon) -> Option<Report> {
    let short = essence(told, lexicon);
    let named = |words: &[&str], groups: &[&str]| steps(words, groups, lexicon);
    for words in [told, &short] {
        let words: Vec<&str> = words.iter().map(String::as_str).collect();
        if lexicon.talk(&words.join(" "), "done") {
            return Some(Report { step: None, or: None, kind: ReportKind::Done, partly: false });
        }
        if lexicon.talk(&words.join(" "), "not") {
            return Some(Report { step: None, or: None, kind: ReportKind::NotDone, partly: false });
        }
        if let Some((step, or)) = named(&words, &["talk-undone-"]) {
            return Some(Report { step: Some(step), or, kind: ReportKind::NotDone, partly: false });
        }
        if let Some((step, or)) = named(&words, &["talk-did-"]) {
            return Some(Report { step: Some(step), or, kind: ReportKind::Done, partly: false });
        }
        for (group, kind) in [("not", ReportKind::NotDone), ("done", ReportKind::Done)] {
            let Some(rest) = without(&words, group, lexicon) else { continue };
            if let Some((step, or)) = named(&rest, &["talk-did-", "step-"]) {
                return Some(Report { step: Some(step), or, kind, partly: false });
            }
        }
    }
    // "It's in the fridge thawing": two that fit each other.
    let short: Vec<&str> = short.iter().map(String::as_str).collect();
    let both = (1..short.len()).find_map(|at| {
        let (first, last) = short.split_at(at);
        Some((named(first, &["talk-did-"])?, named(last, &["talk-did-"])?))
    });
    // "We pulled in at 5" is a car's, and no bird comes off and goes on in one word.
    let both = both.filter(|((first, _), (last, _))| (*first, *last) != (Step::Pull, Step::On));
    if let Some(((first, or), (last, last_or))) = both {
        let meant = [Some(first), or].into_iter().flatten().find(|step| *step == last || Some(*step) == last_or);
        let or = if meant.is_none() { last_or } else { None };
        return Some(Report { step: Some(meant.unwrap_or(last)), or, kind: ReportKind::Done, partly: false });
    }
    // "There is still ice inside the cavity": what so much hangs on is heard in the middle of a sentence.
    let icy = told.len() <= STORY && phrases(told).any(|phrase| lexicon.talk(&phrase, "undone-thaw"));
    icy.then_some(Report { step: Some(Step::Thaw), or: None, kind: ReportKind::NotDone, partly: false })
}

/// "Can I still eat the leftovers", without its question mark.
fn asks(told: &[String], lexicon: &Lexicon) -> bool {
    (1..=MOST_WORDS.min(told.len()))
        .any(|count| told.get(..count).is_some_and(|lead| lexicon.talk(&lead.join(" "), "asking")))
}

/// What is told is still to come.
fn is_ahead(told: &[String], lexicon: &Lexicon) -> bool {
    phrases(told).any(|phrase| lexicon.talk(&phrase, "ahead"))
}

/// Every run of a few words.
pub(super) fn phrases(told: &[String]) -> impl Iterator<Item = String> + '_ {
    (1..=MOST_WORDS).flat_map(|count| told.windows(count).map(|words| words.join(" ")))
}

/// "It's thawed": done with it, not only begun.
pub fn says_thawed(text: &str, lexicon: &'static Lexicon) -> bool {
    let of_thawing = |report: Report| report.kind == ReportKind::Done && report.step == Some(Step::Thaw);
    let Some(told) = words(text, lexicon).filter(|_| read_report(text, lexicon).is_some_and(of_thawing)) else {
        return false;
    };
    // "Elle décongèle" is under way, though folded it reads like "décongelé".
    let said = |group: &str| phrases(&told).any(|phrase| lexicon.talk(&phrase, group));
    said("thawed") && !said("thawing")
}

/// "I forgot to thaw it", "it was in the freezer all along".
pub fn says_never_thawed(text: &str, lexicon: &'static Lexicon) -> bool {
    !text.contains(['?', '¿'])
        && text.split([',', ';', '.', '!', '\n']).any(|clause| is_all(clause, "never-thawed", lexicon))
}

/// "I forgot to take it out", "it's a block of ice": of a bird that nobody has said is thawing, it never left the freezer.
pub fn says_frozen_through(text: &str, lexicon: &'static Lexicon) -> bool {
    !text.contains(['?', '¿'])
        && text.split([',', ';', '.', '!', '\n']).any(|clause| is_all(clause, "frozen-through", lexicon))
}

/// "When do we eat?", "how much longer?", "are we gonna make it by 4?".
pub fn asks_when(text: &str, lexicon: &'static Lexicon) -> bool {
    // Whatever hour is hoped for, the forecast answers.
    let hour = |word: &str| word.contains(|c: char| c.is_ascii_digit());
    let words: Vec<&str> = text.split_whitespace().collect();
    let asked = match words.iter().rposition(|word| hour(word)) {
        Some(at) if at > 0 && at + 2 >= words.len() => words[..at].join(" "),
        _ => text.to_owned(),
    };
    is_question_of(&asked, "when", lexicon) || asks_of_the_bird(text, lexicon)
}

/// "Is the turkey done?", "turkey ready?": the same words without the mark say that it is.
fn asks_of_the_bird(text: &str, lexicon: &'static Lexicon) -> bool {
    let marked = text.contains(['?', '¿']) || opens_as_question(text, lexicon);
    marked && is_question_of(text, "when-bird", lexicon)
}

/// "Why these times?", "why so early?".
pub fn asks_why_these_times(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "why-times", lexicon)
}

/// "What's next?", "what's the plan?".
pub fn asks_what_is_next(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "next", lexicon)
}

/// "How are we doing?", "what do we need to do?", of one who speaks to the bot: people ask each other that of anything.
pub fn asks_how_it_goes(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "how-goes", lexicon)
}

/// "What now?", of one who does not know what to do.
pub fn asks_what_now(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "what-now", lexicon)
}

/// "Can I take it off at 160 and let it coast": whether the bird may come off is asked somewhere in it.
pub fn speaks_of_pulling(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("may-pull")
}

pub(crate) fn is_question_of(text: &str, group: &str, lexicon: &'static Lexicon) -> bool {
    let told = match text.contains(['?', '¿']) {
        true => Told::of(&text.replace(['?', '¿'], ""), lexicon),
        false => Told::of(text, lexicon),
    };
    // "Ok so what now": the words that lead up to it say nothing.
    let led = || {
        let lead = told.words().iter().take_while(|word| lexicon.talk(word, "filler")).count();
        lead > 0 && told.is(lead..told.words().len(), group)
    };
    told.is_all(group) || led()
}

/// "Can we still eat it?", "do we really need to throw it out?".
pub fn asks_to_eat(text: &str, lexicon: &'static Lexicon) -> bool {
    (text.contains(['?', '¿']) || opens_as_question(text, lexicon)) && speaks_of_eating(text, lexicon)
}

/// "Is the turkey still good?", of what was kept.
pub fn asks_if_still_good(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || opens_as_question(text, lexicon);
    asks && Told::of(text, lexicon).says("still-good")
}

/// "It's done", "looks done to me", said of the bird.
pub fn says_bird_done(text: &str, lexicon: &'static Lexicon) -> bool {
    !text.contains(['?', '¿']) && is_all(text, "bird-done", lexicon)
}

/// "I'm putting it in frozen", "it went in frozen": whether it is in already.
pub fn read_put_frozen(text: &str, lexicon: &'static Lexicon) -> Option<bool> {
    let words = words(text, lexicon)?;
    let is = |group: &str| {
        is_all(text, group, lexicon)
            || made_of(&words, &[group, "filler", "manners"], lexicon).is_some_and(|found| found.contains(&group))
    };
    if is("puts-frozen") { Some(false) } else { is("put-frozen").then_some(true) }
}

/// "This is not cooked", "the turkey is raw".
pub fn says_underdone(text: &str, lexicon: &'static Lexicon) -> bool {
    !text.contains(['?', '¿']) && is_all(text, "bird-underdone", lexicon)
}

/// "Dad has a bad heart": why somebody may not have salt.
pub fn tells_who_may_not(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("salt-reason")
}

/// "It's stuffed", "the stuffing goes inside": of the bird, before it is eaten.
pub fn says_stuffed(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    !text.contains(['?', '¿']) && told.says("stuffed-now") && !told.opens_with("asking")
}

/// "Wes spatchcocked it", "I cut the backbone out": done, and nothing is asked.
pub fn says_opened_flat(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    !text.contains(['?', '¿']) && told.says("opened-flat") && !told.opens_with("asking") && !told.says("ahead")
}

/// "The part by the thigh bone looks raw": somewhere in a short text, and of no other food.
pub fn speaks_of_raw(text: &str, lexicon: &'static Lexicon) -> bool {
    const LONGEST: usize = 80;
    let told = Told::of(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    let short = text.chars().count() <= LONGEST && !text.contains(['?', '¿']);
    short && !dish && told.says("underdone-somewhere") && !told.says("pink-other")
}

/// "Yes", "yes it does", to whether a thermometer shows something now.
pub fn says_it_reads_so(text: &str, lexicon: &'static Lexicon) -> bool {
    is_assent(text, lexicon) || is_all(text, "reads-so", lexicon)
}

/// "No it doesn't", "not yet", to the same.
pub fn says_it_reads_less(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "reads-less", lexicon)
}

/// "Yes it is", "it sure is".
pub fn is_so(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "so-it-is", lexicon)
}

/// "No it isn't".
pub fn is_not_so(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "so-it-isnt", lexicon)
}

/// "Yes", and no mere "ok".
pub fn is_plain_yes(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "plain-yes", lexicon)
}

/// "Is it done?", "can I take it out?".
pub fn asks_to_pull(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "may-pull", lexicon)
}

/// "Good enough?": of anything people do.
pub fn asks_vaguely(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "may-pull-vague", lexicon)
}

/// "Can we eat it" without its question mark.
pub fn speaks_of_eating(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("eat")
}

/// "Still pink at the bone", of a bird; a ham, a dress and the sky may be.
pub fn speaks_of_pink(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    told.says("pink") && !told.says("pink-other")
}

/// "Breast is 160, is that ok", "stuffing at 150, good?": whether a number read is enough.
pub fn asks_whether_enough(text: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    let marked = text.contains(['?', '¿']) && (sentence.has("ask-safe") || sentence.has("ask-done"));
    marked || Told::of(text, lexicon).says("asks-enough")
}

/// "Cancel the plan", "dinner's off, everyone's sick": one clause says so, and nothing else of it is asked.
pub fn cancels(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || text.chars().count() > LONGEST;
    !asks && text.split([',', ';', '.', '!', '\n']).any(|clause| is_all(clause, "cancel", lexicon))
}

/// "That can't be right", of a number just read.
pub fn is_doubting(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "doubting", lexicon)
}

/// "Who's doing what?".
pub fn asks_who_does_what(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "who-does-what", lexicon)
}

/// The job someone says they will do: "I'll carve", "I'll take care of the salting tonight". The whole text says so, or it says
/// something else: "I'll carve out some time" takes nothing.
///
/// Beside it: whether only that job can be meant, whoever it is said to.
pub fn read_taking(text: &str, lexicon: &'static Lexicon) -> Option<(Step, bool)> {
    // "J'ai salé" is over.
    let told = words(text, lexicon).filter(|_| read_report(text, lexicon).is_none())?;
    let is = |words: &[String], group: &str| lexicon.talk(&words.join(" "), group);
    let most = MOST_WORDS.min(told.len().saturating_sub(1));
    (1..=most).rev().find_map(|count| {
        let first = told.get(..count).filter(|lead| is(lead, "mine")).and_then(|_| told.get(count..));
        let last = told.get(told.len() - count..).filter(|tail| is(tail, "mine-last"));
        let rest = first.or_else(|| last.and_then(|_| told.get(..told.len() - count)))?;
        only_step(rest, lexicon)
    })
}

/// The one job the words name, if they say nothing else, and whether no other thing people do can be meant.
pub(super) fn only_step(words: &[String], lexicon: &'static Lexicon) -> Option<(Step, bool)> {
    if let Some(step) = kind(words, lexicon) {
        return Some((step, true));
    }
    let step = named_step(words, lexicon)?;
    // "I'll check", "I'll get it": about anything.
    let plain = matches!(step, Step::Thaw | Step::Salt | Step::Temper | Step::Carve | Step::Travel | Step::Reheat);
    // "I'll buy it" as well; the bird is named.
    let sentence = Sentence::read(&words.join(" "), lexicon);
    let whole = |at: usize| sentence.is(at, "step-buy") && sentence.raw(at).contains(' '); // "acheter la dinde"
    let bird = || (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some() || whole(at));
    let plain = plain || step == Step::Buy && bird();
    Some((step, plain))
}

/// "The temps tonight": a kind of job and nothing else.
fn kind(words: &[String], lexicon: &'static Lexicon) -> Option<Step> {
    let empty = |word: &String| ["filler", "mine-link", "ahead"].iter().any(|group| lexicon.talk(word, group));
    let said: Vec<&str> = words.iter().filter(|word| !empty(word)).map(String::as_str).collect();
    let named = |said: &str| lexicon.talked(said, "kind-").find_map(Step::from_name);
    // "Get the bird": what is empty elsewhere may be the job's own word.
    named(&said.join(" ")).or_else(|| named(&words.join(" ")))
}

fn named_step(words: &[String], lexicon: &'static Lexicon) -> Option<Step> {
    let sentence = Sentence::read(&words.join(" "), lexicon);
    let empty = |word: &str| ["filler", "mine-link", "ahead"].iter().any(|group| lexicon.talk(word, group));
    let mut named = None;
    for at in 0..sentence.len() {
        // "Salt it" is a way to salt as well.
        let salting = || sentence.of(at, "salting-").filter(|how| *how != "none").map(|_| Step::Salt);
        match sentence.of(at, "step-").and_then(Step::from_name).or_else(salting) {
            Some(step) if named.is_none_or(|named| named == step) => named = Some(step),
            None if empty(&super::fold(sentence.raw(at))) => {}
            _ => return None,
        }
    }
    named
}

/// "We had 14 last year": of another dinner than the one that is planned.
pub fn tells_of_other_years(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || opens_as_question(text, lexicon);
    !asks && Told::of(text, lexicon).says("other-year")
}

/// "Next year let's eat at 3", "last year we were 14": whatever it says is of no dinner that is planned now.
pub fn speaks_of_another_year(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    ["other-year", "year-to-come"].iter().any(|group| told.says(group))
}

/// "undo", "take that back".
pub fn is_undo(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "undo", lexicon)
}

/// "Threw it all away", "had to toss it".
pub fn is_thrown_away(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "thrown", lexicon)
}

/// "never mind", "forget it".
pub fn is_discard(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "discard", lexicon)
}

/// "hi", "good morning everyone".
pub fn is_greeting(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "greeting", lexicon)
}

/// "ok", "sounds good", "yes please".
pub fn is_assent(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "assent", lexicon)
}

/// "thanks", "thank you so much".
pub fn is_thanks(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "thanks", lexicon)
}

/// "lol", "haha": nothing that wants an answer.
pub fn is_laughter(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "laughter", lexicon)
}

/// "Good to know", "awesome thanks", "hmm ok": talk that asks and tells nothing.
pub fn is_chatter(text: &str, lexicon: &'static Lexicon) -> bool {
    const GROUPS: [&str; 6] = ["chatter", "laughter", "thanks", "assent", "manners", "filler"];
    let sentence = Sentence::read(text, lexicon);
    let bird = (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some());
    !bird
        && words(text, lexicon).is_some_and(|words| {
            made_of(&words, &GROUPS, lexicon).is_some_and(|found| found.iter().any(|group| *group != "filler"))
        })
}

/// "We're here", "made it": a drive is over.
pub fn says_arrived(text: &str, lexicon: &'static Lexicon) -> bool {
    !text.contains(['?', '¿']) && is_all(text, "arrived", lexicon)
}

/// "It's back in the fridge", and nothing of why it was out.
pub fn says_put_back(text: &str, lexicon: &'static Lexicon) -> bool {
    is_all(text, "put-back", lexicon)
}

/// A thumb up, a heart: no word at all.
pub fn is_wordless(text: &str) -> bool {
    !text.is_empty() && !text.chars().any(|c| c.is_alphanumeric() || matches!(c, '?' | '¿' | '/'))
}

/// "How does this work?", "what can you do?".
pub fn asks_what_this_is(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "what-is-this", lexicon)
}

/// "Help", "can you help me".
pub fn is_help(text: &str, lexicon: &'static Lexicon) -> bool {
    Sentence::read(text, lexicon).is(0, "help")
}

/// The language named, by its tag: "language spanish".
pub fn read_language(text: &str, lexicon: &'static Lexicon) -> Option<&'static str> {
    let sentence = Sentence::read(text, lexicon);
    (0..sentence.len()).find_map(|at| sentence.of(at, "language-"))
}

/// The units named, by their name: "metric", "pounds".
pub fn read_unit_system(text: &str, lexicon: &'static Lexicon) -> Option<&'static str> {
    let told = Told::of(text, lexicon);
    match (told.says("units-metric"), told.says("units-us")) {
        (true, false) => Some("metric"),
        (false, true) => Some("us"),
        _ => None,
    }
}

fn is_all(text: &str, group: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).is_all(group)
}

/// The folded words of a short text that asks nothing and counts nothing.
pub(super) fn words(text: &str, lexicon: &'static Lexicon) -> Option<Vec<String>> {
    Told::of(text, lexicon).short().map(<[String]>::to_vec)
}

/// The words without those that say nothing here ("ok", "it's", "just").
pub(super) fn essence(words: &[String], lexicon: &Lexicon) -> Vec<String> {
    words.iter().filter(|word| !lexicon.talk(word, "filler")).cloned().collect()
}

/// The words without the phrase of `group` they begin or end with.
fn without<'a>(words: &[&'a str], group: &str, lexicon: &Lexicon) -> Option<Vec<&'a str>> {
    (1..words.len()).rev().find_map(|count| {
        let (head, behind) = words.split_at(count);
        let (before, tail) = words.split_at(words.len() - count);
        if lexicon.talk(&head.join(" "), group) {
            return Some(behind.to_vec());
        }
        lexicon.talk(&tail.join(" "), group).then(|| before.to_vec())
    })
}

/// The step these words name as a whole, and the other one they may name.
fn steps(words: &[&str], groups: &[&str], lexicon: &'static Lexicon) -> Option<(Step, Option<Step>)> {
    let mut steps: Vec<Step> = Vec::new();
    for group in groups {
        let meant: Vec<&str> = if let Some(talk) = group.strip_prefix("talk-") {
            lexicon.talked(&words.join(" "), talk).collect()
        } else {
            let whole = lexicon.longest(words).filter(|(count, _)| *count == words.len());
            whole.map_or_else(Vec::new, |(_, meanings)| {
                meanings.iter().filter_map(|meaning| meaning.strip_prefix(group)).collect()
            })
        };
        steps.extend(meant.into_iter().filter_map(Step::from_name));
        if !steps.is_empty() {
            break;
        }
    }
    steps.sort_unstable();
    steps.dedup();
    let first = steps.first().copied()?;
    Some((first, steps.get(1).copied()))
}
