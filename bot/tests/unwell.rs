//! A cook who throws up keeps away from food, and one who bleeds covers it: answered in every language, and small talk of it is not.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, read_question};
use carvetime::room::{RoomKind, What};
use carvetime::words::Reader;
use carvetime_core::plan::Step;
use chrono::Utc;
use chrono_tz::{America::Chicago, Tz};
use kitchen::Kitchen;

fn kind(tag: &str, text: &str) -> &'static str {
    let reader = Reader::new(tag, Tz::UTC, Utc::now());
    read_question(text, &Asker::of_reader(&reader)).map_or("-", |question| question.kind())
}

const SICK: [(&str, &str); 24] = [
    ("en-US", "i have a stomach bug, can i still make the stuffing"),
    ("en-US", "jake was throwing up last night, he's carving"),
    ("en-US", "mom's been puking since monday"),
    ("en-GB", "had diarrhoea yesterday, ok to cook?"),
    ("en-US", "stopped throwing up this morning, i can salt it right?"),
    ("en-US", "I had a stomach bug last week, is it ok if I cook?"),
    ("es-ES", "tengo gastroenteritis, ¿puedo hacer el relleno?"),
    ("es-MX", "ando mal del estómago, puedo cocinar?"),
    ("es-ES", "Luis estuvo vomitando anoche"),
    ("es-MX", "me dio diarrea en la noche y yo trincho"),
    ("fr-FR", "j'ai la gastro, je peux quand même faire la farce ?"),
    ("fr-CA", "Marc a vomi toute la nuit"),
    ("fr-FR", "j’ai la diarrhée depuis hier"),
    ("de-DE", "ich hab Magen-Darm, kann ich trotzdem die Füllung machen?"),
    ("de-DE", "Jan hat sich letzte Nacht übergeben müssen"),
    ("de-DE", "Tim hat heute Nacht gekotzt und soll tranchieren"),
    ("de-DE", "hab Durchfall"),
    ("pt-BR", "tô com virose, posso fazer o recheio?"),
    ("pt-BR", "o João vomitou ontem à noite"),
    ("pt-PT", "estou com diarreia"),
    ("it-IT", "ho un virus intestinale, posso fare il ripieno?"),
    ("it-IT", "Marco ha vomitato stanotte"),
    ("it-IT", "ho la diarrea da ieri"),
    ("it-IT", "sto vomitando da stamattina"),
];

const CUT: [(&str, &str); 16] = [
    ("en-US", "I cut my finger while chopping onions"),
    ("en-US", "ow sliced my thumb on the peeler"),
    ("en-US", "my finger is bleeding all over the potatoes"),
    ("en-US", "cut myself carving"),
    ("es-ES", "me he cortado el dedo picando cebolla"),
    ("es-MX", "me corté la mano con el cuchillo"),
    ("es-ES", "me sangra el dedo"),
    ("fr-FR", "je me suis coupé en épluchant"),
    ("fr-FR", "Léa s’est coupé le doigt"),
    ("de-DE", "hab mir in den Finger geschnitten"),
    ("de-DE", "mein Daumen blutet"),
    ("de-DE", "ich hab mich geschnitten"),
    ("pt-BR", "cortei o dedo picando cebola"),
    ("pt-BR", "me cortei com a faca"),
    ("it-IT", "mi sono tagliato con il coltello"),
    ("it-IT", "Anna si è tagliata un dito"),
];

const NEITHER: [(&str, &str); 42] = [
    ("en-US", "the dog threw up on the rug"),
    ("en-US", "the baby is throwing up"),
    ("en-US", "everyone at work has a stomach bug"),
    ("en-US", "I had a stomach bug last week"),
    ("en-US", "the Lions threw up 40 points"),
    ("en-US", "he threw up a brick"),
    ("en-US", "that movie makes me wanna throw up"),
    ("en-US", "laughing so hard I'm gonna be throwing up"),
    ("en-US", "nobody is throwing up"),
    ("en-US", "we cut the turkey into slices"),
    ("en-US", "cut me a slice"),
    ("en-US", "cut myself a piece of pie"),
    ("en-US", "cut my finger last week"),
    ("en-US", "chicken fingers, cut in half"),
    ("en-US", "bloody at the bone"),
    ("es-ES", "el perro ha vomitado"),
    ("es-ES", "se cortó la luz"),
    ("es-ES", "lo corté a mano"),
    ("es-ES", "la semana pasada tuve gastroenteritis"),
    ("es-MX", "córtalo en rebanadas de un dedo"),
    ("es-ES", "me corté el pelo"),
    ("es-MX", "se me cortó la mayonesa"),
    ("fr-FR", "le chat a vomi"),
    ("fr-FR", "le courant s’est coupé"),
    ("fr-FR", "le pain est coupé à la main"),
    ("fr-FR", "j’ai eu la gastro le mois dernier"),
    ("fr-FR", "on a pas la gastro"),
    ("fr-FR", "la dinde est coupée"),
    ("de-DE", "der Hund hat gekotzt"),
    ("de-DE", "das Wetter kotzt mich an"),
    ("de-DE", "hab den Schlüssel dem Nachbarn übergeben"),
    ("de-DE", "ich hatte letzte Woche Durchfall"),
    ("de-DE", "hab die Pute geschnitten"),
    ("de-DE", "fingerdick geschnitten"),
    ("pt-BR", "o cachorro vomitou no tapete"),
    ("pt-BR", "tive virose mês passado"),
    ("pt-BR", "cortei o peru"),
    ("pt-BR", "cortei à mão"),
    ("it-IT", "il gatto ha vomitato"),
    ("it-IT", "ho avuto la gastroenterite il mese scorso"),
    ("it-IT", "ho tagliato il tacchino"),
    ("it-IT", "tagliato a mano"),
];

#[test]
fn a_sick_cook_and_a_cut_are_known_in_every_language() {
    for (tag, text) in SICK {
        assert_eq!(kind(tag, text), "sick", "{tag}: {text}");
    }
    for (tag, text) in CUT {
        assert_eq!(kind(tag, text), "cut", "{tag}: {text}");
    }
}

#[test]
fn animals_films_past_weeks_and_cut_food_are_neither() {
    for (tag, text) in NEITHER {
        assert!(!matches!(kind(tag, text), "sick" | "cut"), "{tag}: {text}");
    }
}

fn planned() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, we have it, no salt, dinner Thursday 5 pm, 10 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Jake", "/take carve");
    kitchen
}

fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn carver(kitchen: &Kitchen) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner.is_some()
}

#[test]
fn who_says_it_of_themselves_is_told_and_their_jobs_are_free() {
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Jake", "i've been throwing up all night");
    assert!(said.contains("48 h") && said.contains("Jake can’t. Free again") && said.contains("[Undo]"), "{said}");
    assert!(!carver(&kitchen), "{said}");
    assert_eq!(kitchen.among("Jake", "still throwing up"), 0, "said once");
}

#[test]
fn whoever_made_the_plan_frees_the_jobs_of_another_and_nobody_else_does() {
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Rosa", "jake was throwing up last night, he's carving");
    assert!(said.contains("48 h") && said.contains("Jake can’t. Free again"), "{said}");
    assert!(!carver(&kitchen), "{said}");
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Li", "jake was throwing up last night, he's carving");
    assert!(said.contains("48 h") && !said.contains("Free again"), "{said}");
    assert!(carver(&kitchen), "{said}");
}

#[test]
fn a_cut_takes_no_job_and_an_ill_stranger_none_either() {
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Jake", "cut my finger slicing bread");
    assert!(said.contains("Food with blood on it") && carver(&kitchen), "{said}");
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Jake", "aunt Lu has a stomach bug");
    assert!(said.contains("48 h") && carver(&kitchen), "{said}");
    for text in ["the dog threw up", "had a stomach bug last month", "the Bears threw up 30"] {
        assert_eq!(planned().among("Jake", text), 0, "{text}");
    }
}

#[test]
fn where_nothing_is_planned_people_talk_among_themselves() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    assert_eq!(kitchen.among("Jake", "i've been throwing up all night"), 0);
    assert!(kitchen.say("Jake", "i've been throwing up all night").contains("48 h"));
}

#[test]
fn who_does_not_come_for_it_is_called_for_nothing_any_more() {
    let mut kitchen = planned();
    let said = aside(&mut kitchen, "Jake", "i can't come, i've been throwing up all night");
    assert!(said.contains("48 h") && said.contains("Jake is out. Free again"), "{said}");
    assert!(!carver(&kitchen) && !kitchen.scene.room.excused.is_empty(), "{said}");
}

const ATE: [(&str, &str); 18] = [
    ("en-US", "feel sick after the turkey"),
    ("en-US", "i feel sick after eating the turkey, what do i do?"),
    ("en-US", "grandpa threw up after dinner"),
    ("en-US", "everyone is sick from the turkey"),
    ("en-US", "my pregnant wife is throwing up after the turkey"),
    ("es-ES", "me siento mal después de comer el pavo"),
    ("es-MX", "nos cayó mal el pavo"),
    ("es-ES", "el abuelo vomitó después de la cena"),
    ("fr-FR", "j’ai mal au ventre après la dinde"),
    ("fr-FR", "papi a vomi après le repas"),
    ("de-DE", "mir ist schlecht nach der Pute"),
    ("de-DE", "Opa hat nach dem Essen erbrochen"),
    ("pt-BR", "tô passando mal depois do peru"),
    ("pt-BR", "o vô vomitou depois da ceia"),
    ("it-IT", "sto male dopo il tacchino"),
    ("it-IT", "il nonno ha vomitato dopo cena"),
    ("it-IT", "ho mal di pancia dopo aver mangiato"),
    ("en-GB", "stomach ache since we ate"),
];

#[test]
fn whoever_has_eaten_gets_the_eaters_answer_and_not_the_cooks_rule() {
    for (tag, text) in ATE {
        assert_eq!(kind(tag, text), "ate-sick", "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "i ate so much i feel sick"),
        ("en-US", "im sick of turkey"),
        ("en-US", "feel sick after that game"),
        ("en-US", "the dog threw up after dinner"),
        ("en-US", "i feel sick"),
        ("en-US", "we feel sick after all that wine, after dinner drinks were too much"),
        ("es-ES", "comí demasiado, me siento mal después de la cena"),
        ("fr-FR", "trop mangé, j’ai mal au ventre après le repas"),
        ("de-DE", "zu viel gegessen, mir ist schlecht nach dem Essen"),
        ("it-IT", "ho mangiato troppo, sto male dopo cena"),
        ("pt-BR", "comi demais, tô passando mal depois da ceia"),
    ] {
        assert_ne!(kind(tag, text), "ate-sick", "{tag}: {text}");
    }
}

#[test]
fn an_eater_who_is_ill_keeps_their_jobs_and_a_doctor_is_named() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 18:00");
    let said = aside(&mut kitchen, "Jake", "i feel sick after eating the turkey");
    assert!(said.contains("A doctor for") && said.contains("911") && !said.contains("Free again"), "{said}");
    assert!(!said.contains("Nothing with food for now"), "{said}");
}
