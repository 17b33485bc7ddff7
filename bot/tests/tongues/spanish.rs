//! Spanish as Mexico types it; what Spain says is tested in `reading.rs` and `ask.rs`.

use crate::{check, plan, question, report, step};

#[test]
fn jobs_begun_and_done_are_heard_as_mexico_says_them() {
    check(
        "es-MX",
        report,
        &[
            ("ya quedó", "due"),
            ("ya quedó listo", "due"),
            ("ya está en el horno", "on"),
            ("ya lo metí", "on"),
            ("ya lo saqué", "pull"),
            ("ya lo rebané", "carve"),
            ("ya la estoy descongelando en agua", "thaw"),
            ("lo tengo en agua fría", "thaw"),
            ("ya estamos cenando", "serve"),
            ("ya metí lo que sobró al refri", "chill"),
            ("ya mero", "not due"),
            ("ya casi", "not due"),
            ("ahorita", "not due"),
        ],
    );
}

#[test]
fn a_first_cook_in_mexico_is_answered() {
    check(
        "es-MX",
        question,
        &[
            ("cómo sé si ya está", "safe-temp"),
            ("cómo sé si ya se coció", "safe-temp"),
            ("se me olvidó sacarlo del congelador", "still-frozen"),
            ("todavía está congelado por dentro", "still-frozen"),
            ("lo puedo descongelar en el fregadero", "thaw-sink"),
            ("cada cuánto le cambio el agua", "thaw-sink"),
            ("cuándo le quito el aluminio", "foil"),
            ("se me quemó la piel", "foil"),
            ("lo tengo que bañar cada rato?", "baste"),
            ("cómo se corta el pavo", "carve"),
            ("cuánto dura el recalentado en el refri", "keeps"),
            ("puedo recalentarlo en el micro", "reheat"),
            ("se puede congelar lo que sobró", "keeps"),
            ("está rosita por dentro", "safe-temp"),
            ("ya se pasó la fecha", "past-date"),
            ("puedo rellenarlo hoy y meterlo mañana", "stuff-ahead"),
            ("cómo hago el gravy", "gravy-how"),
            ("mi horno es de convección cambia algo?", "fan"),
            ("se me fue el gas", "oven-down"),
            ("le pongo agua a la charola?", "pan-water"),
            ("puedo usar bolsa para hornear", "oven-bag"),
            ("inyectado ya trae sal?", "kosher-bird"),
            ("dice 8% de solución le pongo sal", "kosher-bird"),
            ("me quedó crudo", "raw-inside"),
            ("mi abuelita puede comer", "fragile"),
            ("lo volví a congelar", "refreeze"),
            ("huele a gas", "gas"),
        ],
    );
}

#[test]
fn a_first_cook_in_quebec_is_answered() {
    check(
        "fr-CA",
        question,
        &[
            ("j'ai oublié de la sortir du congélateur", "still-frozen"),
            ("elle est encore congelée à l'intérieur", "still-frozen"),
            ("quand est-ce que j'enlève l'alu", "foil"),
            ("la date est dépassée", "past-date"),
            ("je peux la farcir ce soir et la cuire demain", "stuff-ahead"),
            ("la farce dedans ou à côté", "stuffing"),
            ("four à convection ça change quoi", "fan"),
            ("8 % de solution, je sale ?", "kosher-bird"),
            ("combien de temps au frigo pour 6 kg", "thaw-time"),
            ("combien de temps crue au frigo", "keeps"),
            ("changer l'eau tous les combien", "thaw-sink"),
            ("c'est pas cuit au milieu", "raw-inside"),
            ("ma grand-mère peut en manger ?", "fragile"),
            ("les abats j'en fais quoi", "neck"),
            ("j'ai oublié d'enlever les abats", "bag-inside"),
            ("le sachet est resté dedans", "bag-inside"),
        ],
    );
}

/// No times are made up for a bird nobody published any for, and it is not taken for a turkey.
#[test]
fn a_guinea_fowl_is_no_turkey_and_a_poularde_a_chicken() {
    for (tag, text) in [
        ("en-US", "how long does a guinea fowl of 3 lb take"),
        ("es-ES", "pintada de 1,5 kg cuánto tiempo"),
        ("es-MX", "gallina de guinea cuánto tarda"),
        ("fr-FR", "pintade de 1,5 kg combien de temps au four"),
        ("fr-CA", "combien de sel pour une pintade"),
        ("de-DE", "wie lange braucht ein Perlhuhn mit 1,5 kg"),
        ("it-IT", "faraona da 1,5 kg quanto tempo"),
        ("pt-BR", "galinha d'angola de 1,5 kg quanto tempo"),
    ] {
        check(tag, question, &[(text, "other-bird")]);
    }
    check(
        "fr-FR",
        question,
        &[
            // What is known of every bird is told of this one too.
            ("pintade restée dehors 3 heures", "left-out"),
            ("une poularde de 2 kg combien de temps", "roast-time"),
        ],
    );
    check("fr-FR", plan, &[("poularde de 2 kg, jeudi 19 h", "dinner=25.11.@19:00 kind=chicken mass_g=2000")]);
    let (_, problems) =
        carvetime::reading::read_wish("pintade de 1,5 kg, jeudi 19 h, 4 personnes", &crate::ground("fr-FR"));
    assert_eq!(format!("{problems:?}"), "[OtherBird]");
}

/// What someone's blood pressure allows is for their doctor: they are told of less salt, and no dose.
#[test]
fn blood_pressure_gets_no_dose() {
    for (tag, text) in [
        ("en-US", "is it bad for blood pressure?"),
        ("en-US", "my dad has high blood pressure, how much salt"),
        ("es-ES", "¿es malo para la tensión arterial?"),
        ("es-MX", "es malo para la presión arterial?"),
        ("es-MX", "mi papá tiene la presión alta, cuánta sal le pongo"),
        ("fr-FR", "c'est mauvais pour la tension artérielle ?"),
        ("fr-CA", "mon père fait de la pression artérielle, combien de sel"),
        ("de-DE", "ist das schlecht für den Blutdruck?"),
        ("it-IT", "fa male alla pressione?"),
        ("pt-BR", "faz mal para a pressão arterial?"),
    ] {
        check(tag, question, &[(text, "low-salt")]);
    }
}

#[test]
fn the_board_of_mexico_is_read_back() {
    check("es-MX", step, &[("prender", "fire"), ("al refri", "chill"), ("reposo con sal en el refri", "rest")]);
}
