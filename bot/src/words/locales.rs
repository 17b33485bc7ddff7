//! The files of `locales/`, embedded. A folder is a language (`es`), or what a region says otherwise (`es-MX`): laid over its
//! language, it holds only the messages that differ, most of them terms (`-fridge`) that the language's own sentences use.

use include_dir::{Dir, include_dir};
use std::sync::LazyLock;

static LOCALES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/../locales");

/// The language everything is written in first, and the one to fall back to.
pub const FIRST: &str = "en";

/// Regions whose kitchens say what another's folder says.
const SPEAK_LIKE: &[(&str, &str)] = &[
    ("es-419", "es-MX"),
    ("es-US", "es-MX"),
    ("es-GT", "es-MX"),
    ("es-HN", "es-MX"),
    ("es-SV", "es-MX"),
    ("es-NI", "es-MX"),
    ("es-CR", "es-MX"),
];

/// Tags of all languages there are (`en`, `es`), in order.
pub fn languages() -> Vec<&'static str> {
    folders().iter().copied().filter(|tag| !tag.contains('-')).collect()
}

/// Tags of the regions with words of their own (`es-MX`), in order.
pub fn regional() -> Vec<&'static str> {
    folders().iter().copied().filter(|tag| tag.contains('-')).collect()
}

/// The regional folder for a tag of language and region, as one of [`regional`].
pub(super) fn region_of(tag: &str) -> Option<&'static str> {
    let tag = SPEAK_LIKE.iter().find(|(there, _)| *there == tag).map_or(tag, |(_, like)| like);
    regional().into_iter().find(|present| *present == tag)
}

fn folders() -> &'static [&'static str] {
    static TAGS: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
        let mut tags: Vec<&'static str> = LOCALES.dirs().filter_map(|dir| dir.path().to_str()).collect();
        tags.sort_unstable();
        tags
    });
    &TAGS
}

/// The language there is for a tag: its own, or the first.
pub fn nearest(tag: &str) -> &'static str {
    let language = tag.split(['-', '_']).next().unwrap_or_default();
    languages().into_iter().find(|present| present.eq_ignore_ascii_case(language)).unwrap_or(FIRST)
}

/// Name and text of every file of one language, in the order of their names.
pub fn files(language: &str) -> Vec<(&'static str, &'static str)> {
    let Some(dir) = LOCALES.get_dir(language) else { return Vec::new() };
    let mut files: Vec<_> = dir
        .files()
        .filter_map(|file| Some((file.path().file_name()?.to_str()?, file.contents_utf8()?)))
        .filter(|(name, _)| name.ends_with(".ftl"))
        .collect();
    files.sort_unstable();
    files
}
