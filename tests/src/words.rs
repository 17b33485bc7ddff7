//! Words without pictures: for runs of thousands of cooks, in which nobody looks at a chart.

use carvetime::engine::{Audience, Render};
use carvetime::room::chart::Chart;
use carvetime::room::sheet::Sheet;
use carvetime::words::{Text, Voice};
use chrono::{DateTime, Utc};

/// The real words, and no pictures.
pub struct Words(pub Voice);

impl Render for Words {
    fn html(&self, paragraphs: &[Text], audience: Audience<'_>, now: DateTime<Utc>) -> String {
        self.0.html(paragraphs, audience, now)
    }

    fn label(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String {
        Render::label(&self.0, text, audience, now)
    }

    fn picture(&self, _: &Chart, _: Audience<'_>, _: DateTime<Utc>) -> Option<Vec<u8>> {
        None
    }

    fn sheet(&self, _: &Sheet, _: Audience<'_>, _: DateTime<Utc>) -> Option<Vec<u8>> {
        None
    }
}
