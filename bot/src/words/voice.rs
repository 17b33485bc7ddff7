//! Renders a [`Text`] for a [`Reader`]: finds the language, writes the arguments, asks Fluent.

use super::argument;
use super::formats::{Formats, Numbers};
use super::html::plain;
use super::locales::{self, FIRST};
use super::reader::{Reader, identifier};
use super::text::Text;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use icu::locale::Locale;
use intl_memoizer::Memoizable;
use intl_memoizer::concurrent::IntlLangMemoizer;
use std::collections::{BTreeMap, HashMap};
use std::sync::{Arc, PoisonError, RwLock};
use unic_langid::LanguageIdentifier;

/// So many locales are kept ready at once; people's apps name the tags, so there must be an end.
const KEPT: usize = 64;

/// All languages. Share one; it can be used from many threads.
pub struct Voice {
    languages: BTreeMap<String, Vec<Arc<FluentResource>>>,
    tongues: RwLock<HashMap<String, Arc<Tongue>>>,
}

impl Default for Voice {
    fn default() -> Self {
        Self::new()
    }
}

impl Voice {
    /// The languages of `locales/`.
    pub fn new() -> Self {
        let sources = locales::languages().into_iter().chain(locales::regional()).map(|language| {
            let files = locales::files(language).into_iter().map(|(_, text)| text.to_owned()).collect();
            (language.to_owned(), files)
        });
        Self::of_sources(sources)
    }

    /// Languages from elsewhere: tag and the text of its files. A tag with a region is laid over its language. A line that is
    /// no Fluent is logged and left out.
    pub fn of_sources(sources: impl IntoIterator<Item = (String, Vec<String>)>) -> Self {
        let mut languages = BTreeMap::new();
        for (language, files) in sources {
            let resources = files.into_iter().map(|file| {
                Arc::new(FluentResource::try_new(file).unwrap_or_else(|(resource, errors)| {
                    tracing::error!(language, ?errors, "a locale file has lines that cannot be read");
                    resource
                }))
            });
            let resources = resources.collect();
            languages.insert(language, resources);
        }
        Self { languages, tongues: RwLock::default() }
    }

    /// Tags of the languages there are, English first.
    pub fn languages(&self) -> Vec<&str> {
        let mut tags: Vec<&str> = self.languages.keys().map(String::as_str).filter(|tag| !tag.contains('-')).collect();
        tags.sort_by_key(|tag| (*tag != FIRST, *tag));
        tags
    }

    /// The language in which `tag` is answered: its own if there is one, else English.
    pub fn language_of(&self, tag: &str) -> &str {
        identifier(tag)
            .and_then(|id| self.languages.get_key_value(id.language.as_str()))
            .map_or(FIRST, |(language, _)| language)
    }

    /// Paragraphs as HTML, joined by line breaks. Arguments are escaped.
    pub fn render(&self, paragraphs: &[Text], reader: &Reader) -> String {
        let tongue = self.tongue(&reader.tag());
        let mut out = String::new();
        for (i, text) in paragraphs.iter().enumerate() {
            if i > 0 {
                out.push('\n');
            }
            out.push_str(&tongue.say(text, reader));
        }
        out
    }

    /// One message as plain text: for a button, a notice, a line in a terminal.
    pub fn label(&self, text: &Text, reader: &Reader) -> String {
        plain(&self.tongue(&reader.tag()).say(text, reader))
    }

    /// Words and formats of a locale, made at its first use.
    fn tongue(&self, tag: &str) -> Arc<Tongue> {
        if let Some(tongue) = self.tongues.read().unwrap_or_else(PoisonError::into_inner).get(tag) {
            return Arc::clone(tongue);
        }
        let tongue = Arc::new(self.new_tongue(tag));
        let mut tongues = self.tongues.write().unwrap_or_else(PoisonError::into_inner);
        if tongues.len() >= KEPT {
            tongues.clear();
        }
        tongues.insert(tag.to_owned(), Arc::clone(&tongue));
        tongue
    }

    fn new_tongue(&self, tag: &str) -> Tongue {
        let mut id = identifier(tag).unwrap_or_default();
        let language = self.language_of(tag);
        if id.language.as_str() != language {
            // English words for someone in Denmark keep Denmark's clock and decimal comma.
            id = LanguageIdentifier::from_parts(FIRST.parse().unwrap_or_default(), None, id.region, &[]);
        }
        let bundle = |id: &LanguageIdentifier, language: &str| {
            let mut bundle = FluentBundle::new_concurrent(vec![id.clone()]);
            // The marks around arguments show as boxes in terminals and get in the way when a line is copied.
            bundle.set_use_isolating(false);
            bundle.set_formatter(Some(localized_number));
            for resource in self.languages.get(language).into_iter().flatten() {
                if let Err(errors) = bundle.add_resource(Arc::clone(resource)) {
                    tracing::error!(language, ?errors, "a message stands twice in the locale files");
                }
            }
            bundle
        };
        let mut own = bundle(&id, language);
        let region = locales::region_of(&id.to_string()).and_then(|region| self.languages.get(region));
        for resource in region.into_iter().flatten() {
            own.add_resource_overriding(Arc::clone(resource));
        }
        let mut bundles = vec![own];
        if language != FIRST {
            bundles.push(bundle(&id, FIRST));
        }
        Tongue { bundles, formats: Formats::new(&id.to_string()), spanish: language == "es" }
    }
}

/// One locale: its words (and English behind them), and how it writes numbers and times.
pub(super) struct Tongue {
    bundles: Vec<FluentBundle<Arc<FluentResource>>>,
    formats: Formats,
    spanish: bool,
}

impl Tongue {
    pub(super) fn formats(&self) -> &Formats {
        &self.formats
    }

    /// One message as HTML.
    pub(super) fn say(&self, text: &Text, reader: &Reader) -> String {
        let mut args: FluentArgs =
            text.args.iter().map(|(name, arg)| (*name, argument::value(self, arg, reader))).collect();
        // Every message may give its examples in the reader's own measures.
        args.set("units", reader.units.name());
        let said = self.find(&text.id, &args);
        said.map(|said| self.settled(said))
            .or_else(|| self.find("units-unsaid", &FluentArgs::new()))
            .unwrap_or_else(|| "…".into())
    }

    /// What only shows once the hours stand in the sentence.
    fn settled(&self, mut said: String) -> String {
        // A sentence that ends with an hour like "10:00 p.m." has its full stop already.
        for (twice, once) in [(".m..", ".m."), (".m.</b>.", ".m.</b>"), (" m..", " m."), (" m.</b>.", " m.</b>")] {
            if said.contains(twice) {
                said = said.replace(twice, once);
            }
        }
        // One o'clock is singular in Spanish, whatever hour the sentence was written for.
        if self.spanish {
            for hour in ["1:", "01:", "<b>1:", "<b>01:"] {
                let many = format!("las {hour}");
                if said.contains(&many) {
                    said = said.replace(&many, &format!("la {hour}"));
                }
            }
        }
        said
    }

    fn find(&self, id: &str, args: &FluentArgs) -> Option<String> {
        for bundle in &self.bundles {
            let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else {
                tracing::error!(id, "no such message");
                continue;
            };
            let mut errors = Vec::new();
            let said = bundle.format_pattern(pattern, Some(args), &mut errors);
            if errors.is_empty() {
                return Some(said.into_owned());
            }
            tracing::error!(id, ?errors, "a message could not be written");
        }
        None
    }
}

/// Numbers inside messages, as the locale writes them: Fluent itself would print `14.5` everywhere.
fn localized_number(value: &FluentValue<'_>, memoizer: &IntlLangMemoizer) -> Option<String> {
    let FluentValue::Number(number) = value else { return None };
    memoizer.with_try_get::<Numbers, _, _>((), |numbers| numbers.write(number.value)).ok()
}

impl Memoizable for Numbers {
    type Args = ();
    type Error = ();

    fn construct(lang: LanguageIdentifier, (): ()) -> Result<Self, ()> {
        Ok(Self::new(&lang.to_string().parse().unwrap_or(Locale::UNKNOWN)))
    }
}
