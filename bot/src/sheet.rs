//! Draws the plan on one page to print: black on white, large times, a box to tick for each job, a line to sign where nobody
//! has it yet. A4 or Letter by the reader's country, at 200 dots an inch.
//!
//! Owns ink, paper and how a page is filled. What is on it comes as a [`Sheet`], words and numbers from [`Voice`]. Start at
//! [`draw`].

use crate::picture::{self, FAMILY};
use crate::room::sheet::{Day, Note, Row, Sheet, Who};
use crate::words::foreign::is_unseen;
use crate::words::{Arg, Reader, Text, UnitSystem, Voice};
use ab_glyph::{Font, FontRef, InvalidFont};
use plotters::coord::Shift;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};
use std::error::Error;

/// Pixels: 8.5 by 11 inches, and 210 by 297 mm.
const LETTER: (u32, u32) = (1700, 2200);
const A4: (u32, u32) = (1654, 2339);
/// Countries that print on Letter. From memory.
const LETTER_COUNTRIES: [&str; 14] =
    ["BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"];
/// From the edge; printers need some.
const MARGIN: i32 = 120;
/// In place of a dish the font has no letters for.
const BLANK: &str = "________";
/// Sizes tried, largest first, until the page holds everything.
const SCALES: [f64; 12] = [1.32, 1.24, 1.16, 1.08, 1.0, 0.92, 0.85, 0.78, 0.7, 0.62, 0.55, 0.48];

const INK: RGBColor = RGBColor(0, 0, 0);
const SOFT: RGBColor = RGBColor(90, 90, 90);

type Page<'a> = DrawingArea<BitMapBackend<'a>, Shift>;
type Drawn<T = ()> = Result<T, Box<dyn Error + Send + Sync>>;

/// The page as a PNG. `None`, with a line in the log, if it could not be drawn.
pub fn draw(sheet: &Sheet, voice: &Voice, reader: &Reader) -> Option<Vec<u8>> {
    match try_draw(sheet, voice, reader) {
        Ok(png) => Some(png),
        Err(error) => {
            tracing::error!(%error, "a page could not be drawn");
            None
        }
    }
}

fn try_draw(sheet: &Sheet, voice: &Voice, reader: &Reader) -> Drawn<Vec<u8>> {
    picture::register();
    let size = paper(reader);
    let mut pixels = vec![255_u8; (size.0 * size.1 * 3) as usize];
    {
        let page = BitMapBackend::with_buffer(&mut pixels, size).into_drawing_area();
        let glyphs = FontRef::try_from_slice(picture::FONT)?;
        let mut pen = Pen { page: &page, hand: Hand { voice, reader, glyphs }, size, scale: 1.0, ink: false, y: 0 };
        for scale in SCALES {
            (pen.scale, pen.y) = (scale, MARGIN);
            pen.sheet(sheet)?; // measured only
            if pen.y <= pen.bottom() {
                break;
            }
        }
        (pen.ink, pen.y) = (true, MARGIN);
        pen.sheet(sheet)?;
        pen.foot(sheet)?;
        page.present()?;
    }
    picture::encode_gray(&pixels, size)
}

/// A person's name as it is written on the page.
///
/// # Errors
/// When the font can't be read.
pub fn name_on_paper(who: &Who, voice: &Voice, reader: &Reader) -> Result<String, InvalidFont> {
    let hand = Hand { voice, reader, glyphs: FontRef::try_from_slice(picture::FONT)? };
    Ok(hand.name(who))
}

/// Words as they are written on the page.
///
/// # Errors
/// When the font can't be read.
pub fn words_on_paper(text: &Text, voice: &Voice, reader: &Reader) -> Result<String, InvalidFont> {
    let hand = Hand { voice, reader, glyphs: FontRef::try_from_slice(picture::FONT)? };
    Ok(hand.plain(&hand.words(text)))
}

/// Letter where it is usual; a language without a country goes by its units.
fn paper(reader: &Reader) -> (u32, u32) {
    let country = reader.locale.split(['-', '_']).skip(1).find(|part| part.len() == 2).map(str::to_ascii_uppercase);
    let letter = match country {
        Some(country) => LETTER_COUNTRIES.contains(&country.as_str()),
        None => reader.units == UnitSystem::Us,
    };
    if letter { LETTER } else { A4 }
}

/// Draws from the top down; without ink it only measures.
struct Pen<'a, 'b> {
    page: &'a Page<'b>,
    hand: Hand<'a>,
    size: (u32, u32),
    scale: f64,
    ink: bool,
    y: i32,
}

impl Pen<'_, '_> {
    fn sheet(&mut self, sheet: &Sheet) -> Drawn {
        let (left, wide) = (MARGIN, self.wide());
        let title = self.hand.words(&sheet.dinner);
        self.paragraph(&title, left, wide, 84, true)?;
        self.down(6);
        let bird = self.hand.words(&sheet.bird);
        self.paragraph(&bird, left, wide, 42, false)?;
        self.down(22);
        for day in &sheet.days {
            self.day(day)?;
        }
        self.down(26);
        for note in &sheet.boxes {
            self.note(note)?;
        }
        Ok(())
    }

    fn day(&mut self, day: &Day) -> Drawn {
        self.down(30);
        let name = self.hand.words(&day.name);
        self.paragraph(&name, MARGIN, self.wide(), 38, true)?;
        self.down(2);
        self.rule(MARGIN, self.wide(), 3);
        self.down(12);
        day.rows.iter().try_for_each(|row| self.row(row))
    }

    /// A box to tick, the time, the job, and who has it or a line to sign.
    fn row(&mut self, row: &Row) -> Drawn {
        let height = self.px(64);
        let tick = self.px(36);
        let middle = self.y + height / 2;
        let top = middle - tick / 2;
        if self.ink && !row.by_itself {
            let corners = [(MARGIN, top), (MARGIN + tick, top + tick)];
            let stroke = INK.stroke_width(3);
            self.page.draw(&Rectangle::new(corners, stroke))?;
            if row.done {
                let mark =
                    [(MARGIN + tick / 5, middle), (MARGIN + tick * 2 / 5, top + tick * 4 / 5), (MARGIN + tick, top)];
                self.page.draw(&PathElement::new(mark.to_vec(), INK.stroke_width(6)))?;
            }
        }
        let (time, what) = (self.hand.words(&row.at), self.hand.words(&row.what));
        let at = MARGIN + self.px(64);
        let column = at + self.px(300);
        let end = MARGIN + self.wide();
        let signed = end - self.px(400);
        self.fit(&time, at, middle, column - at - self.px(20), 52, true, INK)?;
        self.fit(&what, column, middle, signed - column - self.px(20), 44, row.by_itself, INK)?;
        match &row.who {
            Some(who) => {
                let name = self.hand.name(who);
                self.fit(&name, signed, middle, end - signed, 42, true, INK)?;
            }
            None if !row.by_itself && self.ink => {
                let y = middle + self.px(22);
                self.page.draw(&PathElement::new(vec![(signed, y), (end, y)], SOFT.stroke_width(2)))?;
            }
            None => {}
        }
        self.y += height;
        Ok(())
    }

    /// A heading beside its paragraphs.
    fn note(&mut self, note: &Note) -> Drawn {
        let head = self.hand.words(&note.head);
        let column = MARGIN + self.px(250);
        self.rule(MARGIN, self.wide(), 1);
        self.down(12);
        let top = self.y;
        let wide = column - MARGIN - self.px(20);
        self.fit(&head, MARGIN, top + self.px(20), wide, 34, true, INK)?;
        for line in &note.lines {
            let line = self.hand.words(line);
            self.paragraph(&line, column, MARGIN + self.wide() - column, 34, false)?;
            self.down(4);
        }
        self.down(10);
        Ok(())
    }

    fn foot(&self, sheet: &Sheet) -> Drawn {
        let text = self.hand.words(&sheet.made);
        let style = (FAMILY, 28).into_font().color(&SOFT).pos(Pos::new(HPos::Left, VPos::Bottom));
        self.page.draw_text(&self.hand.plain(&text), &style, (MARGIN, self.tall() - 60))?;
        Ok(())
    }

    // ---- ink

    /// One line, as large as it may be and fits, its middle at `y`.
    #[allow(clippy::too_many_arguments)] // a text, where, and how large
    fn fit(&self, text: &str, x: i32, y: i32, wide: i32, size: i32, bold: bool, color: RGBColor) -> Drawn {
        let mut text = self.hand.plain(text);
        let mut px = self.px(size);
        let least = self.px(size * 6 / 10);
        while self.width(&text, px, bold)? > wide && px > least {
            px -= 1;
        }
        while self.width(&text, px, bold)? > wide && text.chars().count() > 2 {
            text = text.chars().take(text.chars().count() - 2).chain(['…']).collect();
        }
        // The middle of the letters stands above the middle of their box.
        self.write(&text, x, y + px / 6, px, bold, VPos::Center, color)
    }

    /// Words in lines that fit; the pen moves down.
    fn paragraph(&mut self, text: &str, x: i32, wide: i32, size: i32, bold: bool) -> Drawn {
        let px = self.px(size);
        let mut line = String::new();
        let text = self.hand.plain(text);
        for word in text.split(' ').filter(|word| !word.is_empty()) {
            let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if self.width(&longer, px, bold)? > wide && !line.is_empty() {
                self.line(&line, x, px, bold)?;
                line = word.to_owned();
            } else {
                line = longer;
            }
        }
        if line.is_empty() { Ok(()) } else { self.line(&line, x, px, bold) }
    }

    fn line(&mut self, text: &str, x: i32, px: i32, bold: bool) -> Drawn {
        self.write(text, x, self.y + px / 5, px, bold, VPos::Top, INK)?;
        self.y += px * 5 / 4;
        Ok(())
    }

    #[allow(clippy::too_many_arguments)] // as above
    fn write(&self, text: &str, x: i32, y: i32, px: i32, bold: bool, down: VPos, color: RGBColor) -> Drawn {
        if self.ink {
            let style = self.style(px, bold).color(&color).pos(Pos::new(HPos::Left, down));
            self.page.draw_text(text, &style, (x, y))?;
        }
        Ok(())
    }

    fn width(&self, text: &str, px: i32, bold: bool) -> Drawn<i32> {
        let style = self.style(px, bold).color(&INK);
        let (wide, _) = self.page.estimate_text_size(text, &style)?;
        Ok(i32::try_from(wide).unwrap_or(i32::MAX))
    }

    fn style(&self, px: i32, bold: bool) -> FontDesc<'static> {
        let style = if bold { FontStyle::Bold } else { FontStyle::Normal };
        FontDesc::new(FontFamily::Name(FAMILY), f64::from(px), style)
    }

    fn rule(&mut self, x: i32, wide: i32, thick: u32) {
        if self.ink {
            let line = PathElement::new(vec![(x, self.y), (x + wide, self.y)], INK.stroke_width(thick));
            // A rule that can't be drawn is no reason for no page.
            let _ = self.page.draw(&line);
        }
    }

    fn down(&mut self, px: i32) {
        self.y += self.px(px);
    }

    fn px(&self, size: i32) -> i32 {
        (f64::from(size) * self.scale).round() as i32
    }

    fn wide(&self) -> i32 {
        i32::try_from(self.size.0).unwrap_or(0) - 2 * MARGIN
    }

    fn tall(&self) -> i32 {
        i32::try_from(self.size.1).unwrap_or(0)
    }

    /// Where the last line must end: above the foot.
    fn bottom(&self) -> i32 {
        self.tall() - MARGIN
    }
}

/// What can be written with this font for this reader.
struct Hand<'a> {
    voice: &'a Voice,
    reader: &'a Reader,
    glyphs: FontRef<'static>,
}

impl Hand<'_> {
    fn words(&self, text: &Text) -> String {
        let mut text = text.clone();
        self.pen(&mut text);
        self.voice.label(&text, self.reader)
    }

    /// What people wrote as the font can write it. Where it can't, a line to write it on.
    fn pen(&self, text: &mut Text) {
        for (_, arg) in &mut text.args {
            match arg {
                Arg::Verbatim(given) if !given.is_ascii() => {
                    *given = self.drawable(given).unwrap_or_else(|| BLANK.to_owned());
                }
                Arg::Text(text) => self.pen(text),
                Arg::List(texts) | Arg::Lines(texts) => texts.iter_mut().for_each(|text| self.pen(text)),
                _ => {}
            }
        }
    }

    /// A name as it can be read on paper: its letters if the font has them all, else the `@name`, else its sound in Latin letters, else a
    /// number.
    fn name(&self, who: &Who) -> String {
        let handle = who.username.as_ref().map(|name| format!("@{name}"));
        let sound = || self.drawable(&in_latin(&who.name)?);
        let drawn = self.drawable(&who.name).or_else(|| self.drawable(&handle?)).or_else(sound);
        drawn.unwrap_or_else(|| self.words(&who.number))
    }

    /// The name without what decorates it. Nothing, if letters of it would be lost or stand in the wrong order: nothing here
    /// shapes Arabic. Hebrew only has to be turned round.
    fn drawable(&self, name: &str) -> Option<String> {
        let hebrew = |c: char| ('\u{590}'..='\u{5FF}').contains(&c);
        let joined = |c: char| ('\u{600}'..='\u{8FF}').contains(&c) || ('\u{FB50}'..='\u{FEFF}').contains(&c);
        let points = |c: char| matches!(c, '\u{591}'..='\u{5BD}' | '\u{5BF}'..='\u{5C7}');
        let name: String = name.chars().filter(|c| !points(*c)).collect();
        if name.chars().any(|c| c.is_alphanumeric() && (!self.has(c) || joined(c))) {
            return None;
        }
        let kept = self.plain(&name);
        let kept = kept.split_whitespace().collect::<Vec<_>>().join(" ");
        let letters = || kept.chars().filter(|c| c.is_alphabetic());
        if letters().any(hebrew) {
            return letters().all(hebrew).then(|| turned(&kept));
        }
        kept.chars().any(char::is_alphanumeric).then_some(kept)
    }

    fn has(&self, c: char) -> bool {
        c == ' ' || self.glyphs.glyph_id(c).0 != 0
    }

    /// What the font has of a text. Joiners and marks of direction have no ink of their own; some fonts draw a box for them.
    fn plain(&self, text: &str) -> String {
        let unseen = |c: char| is_unseen(c) || c.is_control() || ('\u{FE00}'..='\u{FE0F}').contains(&c);
        let spaced = text.chars().map(|c| if c.is_whitespace() { ' ' } else { c });
        spaced.filter(|c| self.has(*c) && !unseen(*c)).collect()
    }
}

/// What a name in another script sounds like, roughly. Nothing where no letter of it is known.
fn in_latin(name: &str) -> Option<String> {
    let letters: String = name.chars().filter(|c| c.is_alphanumeric() || c.is_whitespace()).collect();
    let sound = deunicode::deunicode_with_tofu(&letters, "");
    let capital = |word: &str| -> String {
        let mut letters = word.chars();
        letters.next().into_iter().flat_map(char::to_uppercase).chain(letters.as_str().to_lowercase().chars()).collect()
    };
    let sound = sound.split_whitespace().map(capital).collect::<Vec<_>>().join(" ");
    sound.chars().any(char::is_alphabetic).then_some(sound)
}

/// Hebrew in the order of its places from the left. Numbers in it keep theirs, and brackets open the other way.
fn turned(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut number = String::new(); // turned, to be turned back
    let mut chars = text.chars().rev().peekable();
    while let Some(c) = chars.next() {
        let inside = matches!(c, '.' | ',' | ':' | '/') && !number.is_empty();
        if c.is_ascii_digit() || inside && chars.peek().is_some_and(char::is_ascii_digit) {
            number.push(c);
            continue;
        }
        out.extend(std::mem::take(&mut number).chars().rev());
        out.push(match c {
            '(' => ')',
            ')' => '(',
            '[' => ']',
            ']' => '[',
            c => c,
        });
    }
    out.extend(number.chars().rev());
    out
}
