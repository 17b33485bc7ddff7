//! What burns indoors, in each language: with a window open as well, and above all where someone feels it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, Question, read_question};
use carvetime::reading::Peril;
use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn read(tag: &str, text: &str) -> Option<Question> {
    let now = "2027-12-24T16:00:00Z".parse().unwrap();
    read_question(text, &Asker::new(tag, Chicago, now)).ok()
}

#[test]
fn whoever_feels_it_is_sent_into_fresh_air() {
    for (tag, text) in [
        ("en-US", "we lit the charcoal inside the house and my head hurts"),
        ("en-US", "we put the grill in the living room, we're dizzy"),
        ("en-US", "we left the grill on in the bedroom, my uncle is asleep and won't wake up"),
        ("en-US", "we're all dizzy from the charcoal smoke"),
        ("es-MX", "prendimos el carbon adentro de la casa y me duele la cabeza"),
        ("es-MX", "metimos el asador a la sala, estamos mareados"),
        ("es-MX", "dejamos el asador prendido en el cuarto, mi tio esta dormido y no despierta"),
        ("es-MX", "todos estamos mareados por el humo del carbon"),
        ("de-DE", "wir haben die kohle drinnen angezündet und mir tut der kopf weh"),
        ("de-DE", "wir haben den grill ins wohnzimmer gestellt, uns ist schwindlig"),
        ("fr-FR", "on a allumé le charbon dans la maison et j'ai mal à la tête"),
        ("fr-FR", "on a mis le barbecue dans le salon, on a la tête qui tourne"),
        ("it-IT", "abbiamo acceso il carbone in casa e mi fa male la testa"),
        ("it-IT", "abbiamo messo la griglia in salotto, ci gira la testa"),
        ("pt-BR", "acendemos o carvão dentro de casa e estou com dor de cabeça"),
        ("pt-BR", "colocamos a churrasqueira na sala, estamos tontos"),
    ] {
        assert_eq!(read(tag, text), Some(Question::Peril(Peril::CarbonMonoxide)), "{tag}: {text}");
    }
}

#[test]
fn an_open_window_and_a_roof_are_indoors() {
    for (tag, text) in [
        ("en-US", "can i grill with charcoal inside if i open the window"),
        ("en-US", "charcoal in the garage with the door open"),
        ("en-US", "brazier lit in the living room with the window open"),
        ("en-US", "can i put the grill under the patio roof"),
        ("es-MX", "puedo asar con carbon adentro si abro la ventana"),
        ("es-MX", "se puede asar con carbon adentro con la ventana abierta"),
        ("es-MX", "carbon en el garage con la puerta abierta"),
        ("es-MX", "anafre prendido en la sala con la ventana abierta"),
        ("es-MX", "brasero prendido adentro para calentarnos"),
        ("es-MX", "puedo meter el asador abajo del techo del patio"),
        ("de-DE", "kann ich drinnen mit kohle grillen wenn das fenster auf ist"),
        ("de-DE", "grill in der garage bei offenem tor"),
        ("fr-FR", "je peux griller au charbon à l'intérieur si j'ouvre la fenêtre"),
        ("fr-FR", "barbecue dans le garage porte ouverte"),
        ("it-IT", "posso grigliare con il carbone in casa se apro la finestra"),
        ("it-IT", "griglia nel garage con la porta aperta"),
        ("pt-BR", "posso assar com carvão dentro de casa se abrir a janela"),
        ("pt-BR", "churrasqueira na garagem com a porta aberta"),
    ] {
        assert_eq!(read(tag, text), Some(Question::CharcoalIndoors), "{tag}: {text}");
    }
}

#[test]
fn what_belongs_indoors_and_what_stands_outside_is_neither() {
    for (tag, text) in [
        ("en-US", "the grill is in the garden"),
        ("en-US", "keep the chicken under cover on the grill"),
        ("es-MX", "la parrilla esta en el jardin"),
        ("de-DE", "der grill steht im garten"),
        ("en-US", "i have a headache"),
        ("en-US", "my head hurts from uncle bob's stories"),
    ] {
        let read = read(tag, text);
        assert!(!matches!(read, Some(Question::CharcoalIndoors | Question::Peril(_))), "{tag}: {text}: {read:?}");
    }
}

#[test]
fn a_head_that_aches_in_a_house_where_coals_were_lit_is_no_small_talk() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "es-MX", Chicago, "2027-12-24 15:00");
    assert_eq!(kitchen.among("Memo", "me duele la cabeza"), 0);
    assert_eq!(kitchen.ids("Tio", "tengo el asador de carbon en la cocina prendido", false).0, ["ask-charcoal"]);
    assert_eq!(kitchen.ids("Memo", "me duele la cabeza", false).0, ["ask-carbon-monoxide"]);
    kitchen.run_to("2027-12-25 15:00");
    assert_eq!(kitchen.among("Memo", "me duele la cabeza"), 0, "a day later it is another's matter");
}
