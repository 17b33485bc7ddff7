//! Inline mode: `@bot 2 tbsp table` anywhere, answered with the asker's units, language and salt.
//!
//! A query comes with every keystroke and lives 30 s, so it is answered from memory: it passes by the inbox, is not repeated
//! after a crash, and changes nothing. Start at [`take`]; what is offered is worked out in [`offers`].

use super::Serving;
use super::send::NO_PREVIEW;
use super::split::{MAX_TEXT, shorten, split};
use crate::ask::{self, Answer, Asker, NotUnderstood, Question, SaltSaid};
use crate::clock::Clock;
use crate::room::state::{Person, Taste};
use crate::room::{PersonId, own_kitchen};
use crate::words::{Reader, Text, Voice, plain};
use carvetime_core::salt::{Grain, OwnSalt};
use chrono::{DateTime, Utc};
use teloxide::payloads::AnswerInlineQuerySetters;
use teloxide::requests::Requester;
use teloxide::types::{
    InlineQuery, InlineQueryResult, InlineQueryResultArticle, InlineQueryResultsButton, InlineQueryResultsButtonKind,
    InputMessageContent, InputMessageContentText, ParseMode, Update, UpdateKind,
};

/// How long the platform may keep an answer for the one who asked, seconds. Settings changed since show after that.
const CACHED: u32 = 30;

/// What `/start` is told when the button above the results was tapped.
pub const START: &str = "inline";

/// Longest title, description and button that phones show.
const MAX_TITLE: usize = 80;
const MAX_DESCRIPTION: usize = 160;
const MAX_BUTTON: usize = 40;

/// What an empty query is answered with: questions of the locale, answered.
const EXAMPLES: [&str; 3] = ["telegram-inline-salt", "telegram-inline-bird", "telegram-inline-safe"];

/// Salts that an amount of another is shown in too, if it was not said in which.
const OTHERS: [Grain; 3] = [Grain::FlakeKosher, Grain::CoarseKosher, Grain::Table];

/// One answer to choose.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Offer {
    /// Its first line.
    pub title: String,
    /// Where it stands apart from the title: an example's question, or the rest of the answer.
    pub description: String,
    /// The whole answer, cautions included, as HTML.
    pub html: String,
}

/// What is shown for a query.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Offers {
    /// Answers.
    pub offers: Vec<Offer>,
    /// Words on the button that leads to the private chat.
    pub button: Option<String>,
}

/// Has the queries among `updates` answered, each by itself; gives back the rest.
pub fn take(serving: &Serving, updates: Vec<Update>) -> Vec<Update> {
    let mut rest = Vec::new();
    for update in updates {
        match update.kind {
            UpdateKind::InlineQuery(query) if !serving.patience.answers(PersonId(query.from.id.0.cast_signed())) => {
                tracing::debug!("more queries than are answered");
            }
            UpdateKind::InlineQuery(query) => {
                let serving = serving.clone();
                tokio::spawn(async move { answer(&serving, query).await });
            }
            _ => rest.push(update),
        }
    }
    rest
}

/// Answers a query. What fails is not tried again: the next keystroke asks anew.
async fn answer(serving: &Serving, query: InlineQuery) {
    let id = PersonId(query.from.id.0.cast_signed());
    let person = serving.engine.acquaintance(id).unwrap_or_default();
    let shown =
        offers(&query.query, person.as_ref(), query.from.language_code.as_deref(), &serving.voice, serving.clock.now());
    let results = shown.offers.iter().enumerate().map(|(nth, offer)| article(nth, offer));
    let mut request = serving.bot.answer_inline_query(query.id, results).cache_time(CACHED).is_personal(true);
    if let Some(text) = shown.button {
        let kind = InlineQueryResultsButtonKind::StartParameter(START.to_owned());
        request = request.button(InlineQueryResultsButton { text, kind });
    }
    if let Err(error) = request.await {
        tracing::debug!(refusal = ?super::refusal::read(&error), "an inline query was not answered");
    }
}

fn article(nth: usize, offer: &Offer) -> InlineQueryResult {
    let text =
        InputMessageContentText::new(offer.html.clone()).parse_mode(ParseMode::Html).link_preview_options(NO_PREVIEW);
    let article = InlineQueryResultArticle::new(nth.to_string(), offer.title.clone(), InputMessageContent::Text(text));
    if offer.description.is_empty() { article } else { article.description(offer.description.clone()) }.into()
}

/// What `query` is answered with for `person`, or for someone unknown whose app speaks `language`. Pure.
pub fn offers(
    query: &str,
    person: Option<&Person>,
    language: Option<&str>,
    voice: &Voice,
    now: DateTime<Utc>,
) -> Offers {
    let told = Taste { language: language.map(str::to_owned), ..Taste::default() };
    let taste = person.map_or_else(Taste::default, |person| person.taste.clone()).or(&told);
    let reader = taste.reader(now);
    let mut asker = Asker::of_reader(&reader);
    let own = person.and_then(|person| person.own_salt);
    asker.fridge = person.and_then(own_kitchen::fridge);
    asker.own_salt = own.and_then(|own| OwnSalt::new(None, own.grams_per_ml).ok());
    let desk = Desk { asker, reader, voice };
    let query = query.trim();
    if query.is_empty() { desk.examples() } else { desk.answers(query) }
}

struct Desk<'a> {
    asker: Asker,
    reader: Reader,
    voice: &'a Voice,
}

impl Desk<'_> {
    fn examples(&self) -> Offers {
        let offers = EXAMPLES.iter().filter_map(|id| {
            let question = self.label(&Text::new(id));
            let answer = ask::ask(&question, &self.asker).ok()?;
            let Offer { title, html, .. } = self.offer(&answer)?;
            Some(Offer { title: question, description: title, html })
        });
        Offers { offers: offers.collect(), button: None }
    }

    fn answers(&self, query: &str) -> Offers {
        // "2 tbsp" is about salt here, as behind /salt.
        let read = ask::read_question(query, &self.asker);
        let read = read.or_else(|error| ask::read_question(&format!("salt {query}"), &self.asker).map_err(|_| error));
        let answered = read.and_then(|question| Ok((ask::answer(&question, &self.asker)?, question)));
        match answered {
            Ok((answer, question)) => match &answer.ask_back {
                None => {
                    let others =
                        others(&question).into_iter().filter_map(|other| ask::answer(&other, &self.asker).ok());
                    let offers = std::iter::once(answer.clone()).chain(others).filter_map(|answer| self.offer(&answer));
                    Offers { offers: offers.collect(), button: None }
                }
                Some(back) => {
                    let replies = back.choices.iter().filter_map(|choice| {
                        let answer = ask::ask(&format!("{query} {}", choice.adds), &self.asker).ok()?;
                        self.offer(&answer)
                    });
                    let offers: Vec<Offer> = replies.collect();
                    let button = offers.is_empty().then(|| self.button(&back.text));
                    Offers { offers, button }
                }
            },
            Err(NotUnderstood::Unknown) => self.unread(),
            Err(error) => Offers { offers: Vec::new(), button: Some(self.button(&error.text())) },
        }
    }

    fn unread(&self) -> Offers {
        Offers { offers: Vec::new(), button: Some(self.button(&Text::new("telegram-inline-unread"))) }
    }

    fn offer(&self, answer: &Answer) -> Option<Offer> {
        let html = self.voice.render(&answer.lines(), &self.reader);
        let html = split(&html, MAX_TEXT).into_iter().next()?;
        let words = plain(&html);
        let (title, rest) = words.split_once('\n').unwrap_or((&words, ""));
        let description = shorten(&rest.replace('\n', " "), MAX_DESCRIPTION);
        (!title.is_empty()).then(|| Offer { title: shorten(title, MAX_TITLE), description, html: html.clone() })
    }

    fn label(&self, text: &Text) -> String {
        self.voice.label(text, &self.reader)
    }

    fn button(&self, text: &Text) -> String {
        shorten(&self.label(text), MAX_BUTTON)
    }
}

/// The same amount in other salts, where only its weight was asked.
fn others(question: &Question) -> Vec<Question> {
    let Question::SaltWeigh { amount, salt: SaltSaid::Grain(from) } = question else { return Vec::new() };
    let convert = |to| Question::SaltConvert {
        amount: Some(amount.clone()),
        from: SaltSaid::Grain(*from),
        to: SaltSaid::Grain(to),
    };
    OTHERS.into_iter().filter(|to| to != from).map(convert).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::room::Speaker;

    fn shown(query: &str, language: &str) -> Offers {
        offers(query, None, Some(language), &Voice::new(), Utc::now())
    }

    #[test]
    fn an_amount_of_salt_is_weighed_and_shown_in_other_salts() {
        let shown = shown("2 tbsp table", "en-US");
        let titles: Vec<&str> = shown.offers.iter().map(|offer| offer.title.as_str()).collect();
        assert_eq!(titles.len(), 3, "{titles:?}");
        assert!(titles[0].contains("36 g") && titles[1].contains("flake"), "{titles:?}");
        assert_eq!(shown.button, None);
    }

    #[test]
    fn a_safety_answer_comes_whole() {
        let shown = shown("turkey out for 3 hours, ok?", "en-US");
        let offer = &shown.offers[0];
        assert!(offer.html.contains("toxins"), "{offer:?}");
        assert!(!offer.title.contains('\n'));
    }

    #[test]
    fn the_askers_own_units_language_and_salt_count() {
        let speaker = Speaker {
            id: PersonId(7),
            name: "Rosa".into(),
            username: None,
            language: Some("en".into()),
            admin: false,
            inside: None,
        };
        let mut rosa = Person::new(&speaker);
        rosa.taste.language = Some("es".into());
        rosa.own_salt = Some(crate::room::state::OwnSalt { grams_per_ml: 0.6 });
        let shown = |person| offers("sal para un pavo de 5 kg", person, Some("en"), &Voice::new(), Utc::now());
        assert!(shown(Some(&rosa)).offers[0].html.contains("tu propia sal"), "{:?}", shown(Some(&rosa)));
        assert_ne!(shown(Some(&rosa)), shown(None));
    }

    #[test]
    fn every_language_has_examples_that_can_be_answered_and_a_button_that_fits() {
        let voice = Voice::new();
        for language in voice.languages() {
            let examples = offers("  ", None, Some(language), &voice, Utc::now());
            assert_eq!(examples.offers.len(), EXAMPLES.len(), "{language}: {examples:?}");
            let unread = offers("zzz qqq", None, Some(language), &voice, Utc::now());
            assert!(unread.offers.is_empty());
            let button = unread.button.unwrap();
            assert!(
                (3..=MAX_BUTTON).contains(&button.chars().count()) && !button.ends_with('…'),
                "{language}: {button}"
            );
        }
    }

    #[test]
    fn what_is_asked_back_becomes_a_choice_or_a_button() {
        let scales = shown("is 70 safe?", "en-US");
        assert_eq!(scales.offers.len(), 2, "{scales:?}");
        let heavy = shown("salt for a turkey", "en-US");
        assert!(heavy.offers.is_empty() && heavy.button.is_some(), "{heavy:?}");
        let wrong = shown("is 900 °F for 2 minutes safe?", "en-US");
        assert!(wrong.offers.is_empty() && wrong.button.is_some(), "{wrong:?}");
    }

    /// What a unit, or a salt, is called in a language's lexicon.
    fn names_of(language: &str, what: &str) -> Vec<String> {
        let file = format!("{}/../locales/{language}/lexicon.ftl", env!("CARGO_MANIFEST_DIR"));
        let lexicon = std::fs::read_to_string(file).unwrap();
        let names = lexicon.lines().find_map(|line| line.strip_prefix(&format!("lexicon-{what} = "))).unwrap();
        names.split(", ").map(str::to_owned).collect()
    }

    #[test]
    fn every_unit_by_each_of_its_names_is_converted_in_every_language() {
        const UNITS: [&str; 9] =
            ["teaspoon", "tablespoon", "cup", "fluid-ounce", "milliliter", "ounce", "pound", "gram", "kilogram"];
        let voice = Voice::new();
        let mut silent = Vec::new();
        for language in ["en", "es", "fr", "de", "pt", "it"] {
            let salt = names_of(language, "salt-table").remove(0);
            for name in UNITS.iter().flat_map(|unit| names_of(language, &format!("unit-{unit}"))) {
                let first =
                    |query: &str| offers(query, None, Some(language), &voice, Utc::now()).offers.into_iter().next();
                let of_salt = format!("2 {name} {salt}");
                if !first(&of_salt).is_some_and(|offer| offer.title.contains('=')) {
                    silent.push(format!("{language}: {of_salt}"));
                }
                // Of which salt was not said; 2 lb or 2 kg alone are a bird's.
                let alone = format!("2 {name}");
                if first(&alone).is_none() {
                    silent.push(format!("{language}: {alone}"));
                }
            }
        }
        assert!(silent.is_empty(), "{silent:#?}");
    }

    #[test]
    fn units_and_spoons_set_privately_show_in_the_answers() {
        let asked = |query: &str, us: Option<bool>, spoons: Option<&str>| {
            let by = PersonId(7);
            let speaker = Speaker {
                id: by,
                name: "Rosa".into(),
                username: None,
                language: Some("en-US".into()),
                admin: false,
                inside: None,
            };
            let mut rosa = Person::new(&speaker);
            rosa.taste.us_units = us;
            rosa.taste.spoons = spoons.map(str::to_owned);
            offers(query, Some(&rosa), Some("en-US"), &Voice::new(), Utc::now()).offers[0].html.clone()
        };
        for (spoons, tablespoons, cups) in [
            ("us", "36 g", "576 g"),
            ("metric", "37 g", "609 g"),
            ("uk", "37 g", "609 g"),
            ("australia", "49 g", "609 g"),
        ] {
            let shown = |query: &str| asked(query, None, Some(spoons));
            assert!(shown("2 tbsp table salt").contains(tablespoons), "{spoons}: {}", shown("2 tbsp table salt"));
            assert!(shown("2 cups table salt").contains(cups), "{spoons}: {}", shown("2 cups table salt"));
        }
        for (us, weight, heat, salt) in
            [(true, "14 lb", "165 °F", "flake kosher"), (false, "6.4 kg", "74 °C", "table salt")]
        {
            let shown = |query: &str| asked(query, Some(us), None);
            assert!(shown("how long to thaw a 14 lb turkey").contains(weight), "{us}");
            assert!(shown("salt for a 14 lb turkey").contains(weight), "{us}");
            assert!(shown("salt for a 14 lb turkey").contains(salt), "{us}: {}", shown("salt for a 14 lb turkey"));
            assert!(shown("what temp is turkey done").contains(heat), "{us}");
        }
        // The salt of whoever did not say which.
        assert!(asked("20 g", Some(true), None).contains("flake kosher"));
    }
}
