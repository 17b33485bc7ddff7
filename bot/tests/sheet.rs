//! The page for the fridge's door: what is on it, and that it can be printed. `CARVETIME_PAGES=DIR` keeps the pages to look at.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;
#[path = "common/stretched.rs"]
mod stretched;

use carvetime::room::RoomKind;
use carvetime::room::sheet::{Sheet, Who};
use carvetime::room::turn::FileContent;
use carvetime::sheet::draw;
use carvetime::words::{Reader, Text, Voice};
use kitchen::Kitchen;

const PLAN: &str = "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325";

fn planned(plan: &str, names: &[(&str, &str)]) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-19 18:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    for (name, job) in names {
        kitchen.say(name, &format!("/take {job}"));
    }
    kitchen
}

fn page(kitchen: &mut Kitchen) -> Sheet {
    kitchen.say("Rosa", "/export");
    let files = kitchen.said.iter().rev().filter_map(|say| say.file.as_ref());
    let page = files.into_iter().find_map(|file| match &file.content {
        FileContent::Sheet(page) => Some((**page).clone()),
        _ => None,
    });
    page.expect("a page")
}

/// Gray values, width, height.
fn drawn(name: &str, sheet: &Sheet, reader: &Reader) -> (Vec<u8>, usize, usize) {
    let png = draw(sheet, &stretched::voice(), reader).expect("drawn");
    if let Some(folder) = std::env::var_os("CARVETIME_PAGES") {
        std::fs::write(std::path::Path::new(&folder).join(format!("{name}.png")), &png).unwrap();
    }
    assert!(png.len() < 1_000_000, "{} bytes", png.len());
    let mut decoder = png::Decoder::new(std::io::Cursor::new(png)).read_info().unwrap();
    let dots = decoder.info().pixel_dims.unwrap().xppu;
    assert_eq!(dots, 7874, "200 dots an inch");
    let mut gray = vec![0; decoder.output_buffer_size().unwrap()];
    let frame = decoder.next_frame(&mut gray).unwrap();
    (gray, frame.width as usize, frame.height as usize)
}

/// Nothing is cut off: the margins are white, and the page is not half empty.
fn check(name: &str, sheet: &Sheet, reader: &Reader, size: (usize, usize)) {
    let (gray, wide, tall) = drawn(name, sheet, reader);
    assert_eq!((wide, tall), size, "{name}");
    let dark = |x: usize, y: usize| gray[y * wide + x] < 128;
    for y in 0..tall {
        assert!((0..110).chain(wide - 100..wide).all(|x| !dark(x, y)), "{name}: ink in the margin at line {y}");
    }
    let last = (0..tall - 120).rev().find(|y| (0..wide).any(|x| dark(x, *y))).unwrap();
    assert!((tall * 6 / 10..tall - 119).contains(&last), "{name}: the last line ends at {last} of {tall}");
}

#[test]
fn a_shared_plan_fills_one_page_of_the_papers_of_its_countries() {
    let mut kitchen = planned(PLAN, &[("Tom", "salt"), ("Ana", "fire"), ("Li", "carve"), ("Rosa", "on")]);
    let page = page(&mut kitchen);
    let rows: Vec<_> = page.days.iter().flat_map(|day| &day.rows).collect();
    assert!(page.days.len() >= 4 && rows.len() >= 10, "{page:?}");
    let owned = rows.iter().filter_map(|row| row.who.as_ref()).map(|who| who.name.as_str());
    assert_eq!(owned.collect::<Vec<_>>(), ["Tom", "Ana", "Rosa", "Li"]);
    let reader = |tag: &str| Reader::new(tag, kitchen.zone, kitchen.now);
    check("letter", &page, &reader("en-US"), (1700, 2200));
    check("a4", &page, &reader("es-ES"), (1654, 2339));
    check("mexico", &page, &reader("es-MX"), (1700, 2200));
    check("britain", &page, &reader("en-GB"), (1654, 2339));
}

#[test]
fn many_jobs_still_fit_and_the_water_is_one_line() {
    let water = "/plan 14.5 lb frozen turkey, thaw in cold water, dinner Saturday 5 pm, 11 people, oven at 325";
    let mut kitchen = planned(water, &[]);
    for dish in
        ["potatoes in the oven 60 min at 400", "stuffing in the oven 45 min at 375", "gravy on the stove 20 min"]
    {
        kitchen.say("Rosa", &format!("/plan add {dish}"));
    }
    let page = page(&mut kitchen);
    let water = page.days.iter().flat_map(|day| &day.rows).filter(|row| row.what.id == "sheet-times");
    assert_eq!(water.count(), 1, "{page:?}");
    check("water", &page, &Reader::new("en-US", kitchen.zone, kitchen.now), (1700, 2200));
}

#[test]
fn names_the_font_has_not_fall_back_to_something_that_can_be_read() {
    let names = [("田中", "salt"), ("محمد", "fire"), ("👩‍🍳 Ana", "carve"), ("נועה", "on"), ("<b>B & b</b>", "pull")];
    let mut kitchen = planned(PLAN, &names);
    for (name, username) in [("田中", Some("tanaka")), ("محمد", None)] {
        let person = kitchen.scene.people.values_mut().find(|person| person.name == name).unwrap();
        person.username = username.map(str::to_owned);
    }
    let page = page(&mut kitchen);
    let reader = Reader::new("en-US", kitchen.zone, kitchen.now);
    check("names", &page, &reader, (1700, 2200));
    let shown = |name: &str| {
        let row = page.days.iter().flat_map(|day| &day.rows).filter_map(|row| row.who.as_ref());
        let who = row.into_iter().find(|who| who.name == name).unwrap();
        carvetime::sheet::name_on_paper(who, &Voice::new(), &reader).unwrap()
    };
    assert_eq!(shown("田中"), "@tanaka");
    assert_eq!(shown("محمد"), "Mhmd");
    assert_eq!(shown("👩‍🍳 Ana"), "Ana");
    assert_eq!(shown("נועה"), "העונ", "drawn from the left, it reads from the right");
    assert_eq!(shown("<b>B & b</b>"), "<b>B & b</b>");
    let who = |name: &str| {
        let who = page.days.iter().flat_map(|day| &day.rows).find_map(|row| row.who.clone()).unwrap();
        carvetime::sheet::name_on_paper(&Who { name: name.to_owned(), ..who }, &Voice::new(), &reader).unwrap()
    };
    assert_eq!(who("נועה (2.5)"), "(2.5) העונ");
    assert_eq!(who("\u{202E}נוֹעָה"), "העונ");
    assert_eq!(who("\u{202E}evil\u{2068}"), "evil");
    let unknown = |name: &str| {
        let number = Text::new("sheet-helper").with("n", carvetime::words::Arg::Count(3));
        let who = Who { name: name.to_owned(), username: None, number };
        carvetime::sheet::name_on_paper(&who, &Voice::new(), &reader).unwrap()
    };
    // Neither letters in the font nor a username: the sound of it.
    assert_eq!(
        (unknown("李明").as_str(), unknown("Ольга").as_str(), unknown("राम").as_str()),
        ("Li Ming", "Ольга", "Raam")
    );
    assert!(unknown("🦃🦃").starts_with("Helper "));
}

#[test]
fn a_dish_the_font_has_no_letters_for_leaves_a_line_to_write_on() {
    let mut kitchen = planned(PLAN, &[]);
    for dish in ["קוגל", "كبة", "餃子", "crème"] {
        kitchen.say("Rosa", &format!("/plan add {dish} on the stove 20 min"));
    }
    let page = page(&mut kitchen);
    let reader = Reader::new("en-US", kitchen.zone, kitchen.now);
    check("dishes", &page, &reader, (1700, 2200));
    let rows = page.days.iter().flat_map(|day| &day.rows);
    let named = rows.map(|row| carvetime::sheet::words_on_paper(&row.what, &Voice::new(), &reader).unwrap());
    let named: Vec<String> = named.collect();
    for (name, count) in [("לגוק", 1), ("________", 2), ("crème", 1)] {
        let dish = format!("{name}: stove, 20 min");
        assert_eq!(named.iter().filter(|what| **what == dish).count(), count, "{name}: {named:?}");
    }
}

#[test]
fn what_is_done_is_ticked_and_the_words_are_said_in_every_language() {
    let mut kitchen = planned(PLAN, &[("Tom", "salt")]);
    kitchen.run_to("2027-11-19 18:10");
    kitchen.say("Rosa", "bought it");
    let page = page(&mut kitchen);
    let first = &page.days[0].rows[0];
    assert!(first.done && first.who.as_ref().is_some_and(|who| who.name == "Rosa"), "{first:?}");
    let voice = stretched::voice();
    for language in voice.languages() {
        let reader = Reader::new(language, kitchen.zone, kitchen.now);
        let label = |text: &Text| voice.label(text, &reader);
        assert!(
            language == stretched::STRETCHED || page.boxes.iter().all(|note| label(&note.head).chars().count() <= 14),
            "{language}: a heading is too long"
        );
        check(
            &format!("language-{language}"),
            &page,
            &reader,
            if language == "en" { (1700, 2200) } else { (1654, 2339) },
        );
    }
}

#[test]
fn a_dish_stands_on_the_page_with_its_heat_and_its_minutes() {
    let mut kitchen = planned(PLAN, &[]);
    kitchen.say("Rosa", "/plan add stuffing in the oven 45 min at 375");
    kitchen.say("Rosa", "/plan add rice on the stove 20 min");
    kitchen.say("Rosa", "/plan add slaw 15 min");
    let page = page(&mut kitchen);
    let reader = Reader::new("en-US", kitchen.zone, kitchen.now);
    let rows = page.days.iter().flat_map(|day| &day.rows);
    let named: Vec<String> =
        rows.map(|row| carvetime::sheet::words_on_paper(&row.what, &Voice::new(), &reader).unwrap()).collect();
    for row in ["stuffing: oven 375 °F, 45 min", "rice: stove, 20 min", "slaw: 15 min"] {
        assert!(named.iter().any(|what| what == row), "{row}: {named:?}");
    }
}
