//! What can hurt is answered, however it is asked: raw inside, half cooked, a warm fridge, hours in the open, two thermometers.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, Printed, answer_line, read_question};
use carvetime::room::{RoomKind, What};
use carvetime::words::{Reader, Voice};
use chrono::TimeZone;
use chrono_tz::Europe::Madrid;
use kitchen::Kitchen;

/// Asked on 25 December at four in the afternoon.
fn reader(tag: &str) -> Reader {
    Reader::new(tag, Madrid, Madrid.with_ymd_and_hms(2026, 12, 25, 16, 0, 0).unwrap().to_utc())
}

fn kind(tag: &str, text: &str) -> &'static str {
    read_question(text, &Asker::of_reader(&reader(tag))).map_or("-", |question| question.kind())
}

fn answer(tag: &str, text: &str) -> String {
    match answer_line(text, &reader(tag), &Voice::new(), false) {
        Printed::Answer(said) => said,
        Printed::NotUnderstood(said) => panic!("{text}: {said}"),
    }
}

/// A bird in the oven since five on the 24th.
fn cooking(kind: RoomKind, tag: &str) -> Kitchen {
    let (plan, accept, on) = match tag {
        "es-ES" => (
            "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180, sin sal",
            "Aceptar",
            "el pavo ya esta en el horno",
        ),
        "fr-FR" => (
            "/plan dinde fraîche de 5 kg, je l'ai déjà, repas le 24 à 21h, 8 personnes, four à 180, sans sel",
            "Accepter",
            "la dinde est dans le four",
        ),
        "de-DE" => (
            "/plan frische Pute 5 kg, haben wir schon, Essen am 24. um 21 Uhr, 8 Personen, Ofen auf 180, kein Salz",
            "Annehmen",
            "die Pute ist im Ofen",
        ),
        "it-IT" => (
            "/plan tacchino fresco 5 kg, ce l'abbiamo, cena il 24 alle 21, 8 persone, forno a 180, senza sale",
            "Accetta",
            "il tacchino è in forno",
        ),
        "pt-BR" => (
            "/plan peru fresco de 5 kg, já temos, ceia dia 24 às 21h, 8 pessoas, forno a 180, sem sal",
            "Aceitar",
            "o peru está no forno",
        ),
        _ => (
            "/plan 11 lb fresh turkey, we have it, dinner on the 24th at 9 pm, 8 people, oven at 350, no salt",
            "Accept",
            "the turkey is in the oven",
        ),
    };
    let mut kitchen = Kitchen::new(kind, tag, Madrid, "2026-12-23 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2026-12-24 17:00");
    kitchen.say("Ana", on);
    kitchen.run_to("2026-12-24 18:10");
    kitchen
}

fn readings(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().readings.len()
}

#[test]
fn what_can_hurt_has_its_answer() {
    for (tag, text, wanted) in [
        ("es-ES", "esta crudo por dentro al trincharlo", "raw-inside"),
        ("fr-FR", "c'est cru près de l'os", "raw-inside"),
        ("de-DE", "am Knochen ist sie noch roh", "raw-inside"),
        ("it-IT", "è crudo vicino all'osso", "raw-inside"),
        ("pt-BR", "está cru perto do osso", "raw-inside"),
        ("en-US", "it's raw near the bone", "raw-inside"),
        ("es-ES", "es peligroso cocinarlo a medias y acabarlo luego", "half-cook"),
        ("fr-FR", "je la cuis a moitié ce soir et je finis demain", "half-cook"),
        ("en-US", "can I half cook it tonight and finish it tomorrow", "half-cook"),
        ("fr-FR", "on a mangé une dinde pas cuite!", "ate-raw"),
        ("en-US", "we ate undercooked turkey", "ate-raw"),
        ("es-ES", "se fue la luz y la nevera estuvo apagada 8 horas con el pavo dentro", "fridge-down"),
        ("de-DE", "der Kühlschrank war aus", "fridge-down"),
        ("fr-FR", "elle sent bizarre", "smell"),
        ("es-ES", "el pavo huele mal", "smell"),
        ("es-ES", "lo dejo en el balcon a 3 grados", "garage-thaw"),
        ("fr-FR", "balcon il fait 3 degres", "garage-thaw"),
        ("fr-CA", "on peut tu la mettre dehors? il fait -5", "cold-place"),
        ("es-ES", "lo puedo dejar en el garaje, hace frio", "garage-thaw"),
        ("es-ES", "puedo volver a congelarlo", "refreeze"),
        ("es-ES", "venia ya salado, le pongo sal?", "kosher-bird"),
        ("es-ES", "viene con salmuera, hay que salarlo?", "kosher-bird"),
        ("fr-FR", "dinde injectée de saumure je sale quand même", "kosher-bird"),
        ("es-MX", "le inyecto jugo de naranja o vino?", "inject"),
        ("es-MX", "lleva 3 horas afuera, todavia sirve?", "left-out"),
        ("fr-FR", "jai oublié la dinde dans le coffre cette nuit", "left-out"),
        ("es-ES", "mi suegra dice q con 70 ya esta, es verdad?", "lethality"),
        ("fr-FR", "c'est bon à 68 ?", "lethality"),
    ] {
        assert_eq!(kind(tag, text), wanted, "{tag}: {text}");
    }
    for (tag, text) in [
        ("es-MX", "ya huele bien rico jaja"),
        ("fr-FR", "ça sent trop bon!"),
        ("en-US", "smells so good"),
        ("de-DE", "riecht das gut!"),
        ("pt-BR", "que cheiro bom"),
    ] {
        assert_ne!(kind(tag, text), "smell", "{tag}: {text}");
    }
}

#[test]
fn since_an_hour_of_the_afternoon_is_no_length_of_time() {
    for (text, span) in [
        ("les restes sont dehors depuis 13h30, c'est encore bon ?", "2 h 30 min"),
        ("il est resté dehors depuis 14h", "2 h"),
        ("il est resté dehors depuis midi", "4 h"),
        ("il est resté dehors depuis 2h", "2 h"),
        ("il est resté dehors depuis 3h30", "3 h 30 min"),
    ] {
        let said = answer("fr-FR", text).replace(['\u{a0}', '\u{202f}'], " ");
        assert!(said.contains(span) && !said.contains("13 h"), "{text}: {said}");
    }
    assert!(answer("es-ES", "el pavo lleva fuera desde la 1").contains("3 h"));
}

#[test]
fn two_thermometers_are_no_two_spots() {
    for (tag, text, low, ice) in [
        ("es-ES", "cada termometro dice una cosa, uno 60 y otro 70", "60 °C", "0 °C"),
        ("fr-FR", "thermomètres pas d'accord, un dit 60 l'autre 70", "60 °C", "0 °C"),
        ("de-DE", "zwei Thermometer, eins sagt 70 das andere 60", "60 °C", "0 °C"),
        ("it-IT", "i termometri non sono d'accordo, uno dice 60 l'altro 70", "60 °C", "0 °C"),
        ("pt-BR", "cada termômetro diz uma coisa, um 60 e outro 70", "60 °C", "0 °C"),
        ("en-US", "two thermometers disagree, one says 140 the other 160", "140 °F", "32 °F"),
    ] {
        let mut kitchen = cooking(RoomKind::Private, tag);
        let said = kitchen.say("Ana", text);
        assert!(said.contains(low) && said.contains(ice), "{tag}: {said}");
        assert_eq!(readings(&kitchen), 0, "{tag}: {text}");
    }
}

#[test]
fn a_cold_oven_is_said_and_a_question_about_it_is_no_reading() {
    for (tag, cold, limit, asked) in [
        ("es-ES", "horno 120", "163 °C", "bajo el horno a 150?"),
        ("fr-FR", "le four est descendu a 120", "163 °C", "je baisse le four à 150 ?"),
        ("de-DE", "Ofen ist nur bei 120", "163 °C", "soll ich den Ofen auf 150 runterdrehen?"),
        ("it-IT", "il forno è a 120", "163 °C", "abbasso il forno a 150?"),
        ("pt-BR", "o forno está a 120", "163 °C", "posso baixar o forno para 150?"),
        ("en-US", "oven is at 250", "325 °F", "should I turn the oven down to 300?"),
    ] {
        let mut kitchen = cooking(RoomKind::Private, tag);
        let said = kitchen.say("Ana", cold);
        assert!(said.contains(limit), "{tag}: {said}");
        assert_eq!(readings(&kitchen), 1, "{tag}: {said}");
        let mut kitchen = cooking(RoomKind::Private, tag);
        let setting = kitchen.scene.room.plan.as_ref().unwrap().wish.setting_c;
        let said = kitchen.say("Ana", asked);
        assert!(said.contains(limit), "{tag}: {said}");
        assert_eq!(readings(&kitchen), 0, "{tag}: {asked}: {said}");
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.setting_c, setting, "{tag}: {asked}");
    }
}

#[test]
fn one_spot_behind_the_other_needs_no_numbers() {
    for (tag, text) in [
        ("fr-FR", "le blanc est cuit mais pas la cuisse"),
        ("es-ES", "la pechuga esta hecha pero el muslo no"),
        ("de-DE", "Brust ist gar aber die Keule nicht"),
        ("it-IT", "il petto è cotto ma la coscia no"),
        ("pt-BR", "o peito está pronto mas a coxa não"),
        ("en-US", "breast is done but the thigh isn't"),
    ] {
        let mut kitchen = cooking(RoomKind::Private, tag);
        let with_words = kitchen.say("Ana", text);
        let target = if tag == "en-US" { "165 °F" } else { "74 °C" };
        assert!(with_words.contains(target), "{tag}: {with_words}");
        assert_eq!(readings(&kitchen), 0, "{tag}");
    }
}

#[test]
fn a_warm_fridge_with_the_bird_in_it_speaks_of_the_bird_first() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "es-ES", Madrid, "2026-12-19 10:00");
    kitchen.say("Ana", "/plan pavo congelado de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180");
    kitchen.press("Ana", "Aceptar");
    kitchen.run_to("2026-12-22 10:00");
    let what = |text: &str| What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
    let said = kitchen.hear(Some("Luis"), what("la nevera esta a 9 grados desde ayer"));
    assert!(said.contains("descongelada y a más de 4 °C") && said.contains("se tira"), "{said}");
}

#[test]
fn a_bird_forgotten_out_overnight_is_no_job_forgotten() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "es-ES", Madrid, "2026-12-22 10:00");
    kitchen.say("Ana", "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180");
    kitchen.press("Ana", "Aceptar");
    kitchen.run_to("2026-12-23 09:00");
    let said = kitchen.say("Ana", "se me olvido fuera de la nevera anoche");
    assert!(said.contains("Tíralo"), "{said}");
}

#[test]
fn foil_off_the_heat_is_for_the_stand() {
    for (tag, off, text, least) in [
        ("es-ES", "he sacado el pavo del horno", "lo tapo con aluminio?", "reposa"),
        ("fr-FR", "la dinde est sortie du four", "je la couvre avec de l'alu?", "repos"),
        ("en-US", "pulled it", "do i cover it with foil", "stands"),
    ] {
        let mut kitchen = cooking(RoomKind::Private, tag);
        kitchen.run_to("2026-12-24 20:00");
        kitchen.say("Ana", off);
        let said = kitchen.say("Ana", text);
        assert!(said.contains(least), "{tag}: {said}");
    }
}

#[test]
fn what_to_buy_is_asked_and_changes_nothing() {
    for (tag, text) in [
        ("es-ES", "q necesito comprar"),
        ("fr-FR", "la liste de courses stp"),
        ("de-DE", "was muss ich noch kaufen?"),
        ("it-IT", "cosa devo comprare?"),
        ("pt-BR", "o que preciso comprar?"),
        ("en-US", "what do I need to buy"),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Madrid, "2026-12-19 10:00");
        let (plan, accept) = match tag {
            "es-ES" => (
                "/plan pavo congelado de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180",
                "Aceptar",
            ),
            "fr-FR" => {
                ("/plan dinde surgelée de 5 kg, je l'ai déjà, repas le 24 à 21h, 8 personnes, four à 180", "Accepter")
            }
            "de-DE" => (
                "/plan gefrorene Pute 5 kg, haben wir schon, Essen am 24. um 21 Uhr, 8 Personen, Ofen auf 180",
                "Annehmen",
            ),
            "it-IT" => {
                ("/plan tacchino congelato 5 kg, ce l'abbiamo, cena il 24 alle 21, 8 persone, forno a 180", "Accetta")
            }
            "pt-BR" => {
                ("/plan peru congelado de 5 kg, já temos, ceia dia 24 às 21h, 8 pessoas, forno a 180", "Aceitar")
            }
            _ => ("/plan 11 lb frozen turkey, we have it, dinner on the 24th at 9 pm, 8 people, oven at 350", "Accept"),
        };
        kitchen.say("Ana", plan);
        kitchen.press("Ana", accept);
        let before = kitchen.scene.room.plan.clone();
        let said = kitchen.say("Ana", text);
        assert!(said.contains("19 g"), "{tag}: {said}");
        assert_eq!(kitchen.scene.room.plan, before, "{tag}: {text}");
    }
}

#[test]
fn half_an_hour_later_that_cannot_be_is_offered_with_a_button() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "es-ES", Madrid, "2026-12-23 10:00");
    kitchen
        .say("Ana", "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180, sin sal");
    kitchen.press("Ana", "Aceptar");
    kitchen.run_to("2026-12-24 18:20");
    kitchen.say("Ana", "el pavo ya esta en el horno");
    kitchen.run_to("2026-12-24 20:00");
    kitchen.say("Ana", "pechuga 52 muslo 50");
    kitchen.run_to("2026-12-24 20:41");
    let said = kitchen.say("Ana", "retrasa la cena media hora");
    assert!(said.contains("22:00"), "{said}");
    let buttons = kitchen.said.last().unwrap().buttons.len();
    assert!(buttons >= 2, "{said}");
}
