//! Quiet hours as people type them: "quiet 22:30 to 7", "quiet hours 10 pm - 7 am", "quiet off".

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use chrono::{NaiveTime, TimeDelta};
use regex::Regex;
use std::sync::LazyLock;

/// Longest that quiet hours may be: beyond it, one of the two hours was meant otherwise.
const LONGEST: TimeDelta = TimeDelta::hours(16);

/// What was told of quiet hours.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quiet {
    /// From, to; past midnight where the second is the smaller.
    Hours(NaiveTime, NaiveTime),
    /// None any more.
    Off,
    /// It is about quiet hours, and which can't be told.
    Unread,
}

/// What a text that begins with the word for it says of quiet hours; `None`: it does not.
pub fn read_quiet(text: &str, lexicon: &'static Lexicon) -> Option<Quiet> {
    let sentence = Sentence::read(text, lexicon);
    sentence.is(0, "quiet").then(|| read_hours(text, &sentence, 1))
}

/// The hours alone, told where they were asked for: "10 pm to 7 am", "off".
pub fn read_quiet_span(text: &str, lexicon: &'static Lexicon) -> Quiet {
    read_hours(text, &Sentence::read(text, lexicon), 0)
}

/// `from`: where in the sentence it may say that there are none.
fn read_hours(text: &str, sentence: &Sentence, from: usize) -> Quiet {
    static HOUR: LazyLock<Option<Regex>> =
        LazyLock::new(|| Regex::new(r"(?i)(\d{1,4})(?:\s*[:.h]\s*(\d{2}))?\s*(?:([ap])\.?\s?m\b)?").ok());
    let Some(hours) = HOUR.as_ref() else { return Quiet::Unread };
    let told: Vec<Option<(u32, u32, Option<bool>)>> = hours.captures_iter(text).map(|found| hour(&found)).collect();
    match told[..] {
        [] if (from..sentence.len()).any(|at| sentence.is(at, "quiet-off")) => Quiet::Off,
        [Some(from), Some(to)] => span(from, to).map_or(Quiet::Unread, |(from, to)| Quiet::Hours(from, to)),
        _ => Quiet::Unread,
    }
}

/// Hour, minute, and whether it was said to be after noon.
fn hour(found: &regex::Captures<'_>) -> Option<(u32, u32, Option<bool>)> {
    let number = |at: usize| found.get(at).map_or(Some(0), |text| text.as_str().parse::<u32>().ok());
    let late = found.get(3).map(|half| half.as_str().eq_ignore_ascii_case("p"));
    let (hour, minute) = (number(1)?, number(2)?);
    let good = minute < 60 && if late.is_some() { (1..=12).contains(&hour) } else { hour <= 24 };
    good.then_some((hour, minute, late))
}

fn span(from: (u32, u32, Option<bool>), to: (u32, u32, Option<bool>)) -> Option<(NaiveTime, NaiveTime)> {
    let time = |(hour, minute, late): (u32, u32, Option<bool>)| {
        let hour = match late {
            Some(late) => hour % 12 + if late { 12 } else { 0 },
            None => hour % 24,
        };
        NaiveTime::from_hms_opt(hour, minute, 0)
    };
    let length = |from: NaiveTime, to: NaiveTime| (to - from + TimeDelta::days(1)).num_minutes() % (24 * 60);
    let (start, end) = (time(from)?, time(to)?);
    // "10 to 7" is a night, not a day.
    let evening = from.2.is_none()
        && (7..=12).contains(&from.0)
        && to.2 != Some(true)
        && length(start, end) > LONGEST.num_minutes();
    let start = if evening { start + TimeDelta::hours(12) } else { start };
    (1..=LONGEST.num_minutes()).contains(&length(start, end)).then_some((start, end))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn quiet_hours_are_read_as_people_type_them() {
        for (tag, text, wanted) in [
            ("en", "quiet 22-7", "22:00 07:00"),
            ("en", "quiet hours 10 pm to 7 am", "22:00 07:00"),
            ("en", "Quiet hours: 10:30pm – 6:15 a.m.", "22:30 06:15"),
            ("en", "quiet 10 to 7", "22:00 07:00"),
            ("en", "quiet 12 to 8", "00:00 08:00"),
            ("en", "quiet 13 to 15", "13:00 15:00"),
            ("en", "do not disturb 23:00 to 24:00", "23:00 00:00"),
            ("en", "quiet off", "off"),
            ("en", "no quiet hours", "-"),
            ("en", "quiet", "?"),
            ("en", "quiet 22", "?"),
            ("en", "quiet 25-7", "?"),
            ("en", "quiet 22:70 to 7", "?"),
            ("en", "quiet 7-7", "?"),
            ("en", "quiet 6 to 2 to 3", "?"),
            ("en", "it is quiet here from 10 to 7", "-"),
            ("es", "silencio de 22:30 a 7", "22:30 07:00"),
            ("es", "no molestar 23-8", "23:00 08:00"),
            ("de", "Ruhezeit 22 bis 7 Uhr", "22:00 07:00"),
            ("de", "nicht stören aus", "off"),
            ("pt", "silêncio das 22h às 7h", "22:00 07:00"),
            ("fr", "heures calmes 22h30 à 7h", "22:30 07:00"),
            ("fr", "ne pas déranger 23-8", "23:00 08:00"),
            ("it", "silenzio dalle 22.30 alle 7", "22:30 07:00"),
            ("it", "non disturbare mai", "off"),
        ] {
            let told = match read_quiet(text, Lexicon::of(tag)) {
                None => "-".to_owned(),
                Some(Quiet::Off) => "off".to_owned(),
                Some(Quiet::Unread) => "?".to_owned(),
                Some(Quiet::Hours(from, to)) => format!("{} {}", from.format("%H:%M"), to.format("%H:%M")),
            };
            assert_eq!(told, wanted, "{tag}: {text}");
        }
    }
}
