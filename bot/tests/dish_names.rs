//! A dish is called what its cook wrote: no slip is mended in a name, and no word of its heat or its time is part of it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::reading::{DishOrder, Ground, read_dish};
use chrono::{TimeZone, Utc};
use chrono_tz::America::Chicago;

fn name(tag: &str, text: &str) -> String {
    let ground = Ground::new(tag, tag != "en", Chicago, Utc.with_ymd_and_hms(2027, 11, 20, 12, 0, 0).unwrap());
    match read_dish(text, &ground) {
        Some(Ok(DishOrder::Add(dish, _))) => dish.name,
        other => format!("{other:?}"),
    }
}

#[test]
fn foods_keep_the_names_their_cooks_wrote() {
    let table = [
        (
            "en",
            "add {} in the oven 30 min at 375",
            "leeks|brownies|baked beans|trifle|parsnips|sprouts|Tom's pie|Yorkshire puddings|mac & cheese|grits|okra|kugel|\
             latkes|beets|swede|turnips|yams|focaccia|crumble|cobbler|pecan pie|wild rice|half-baked bread|biscuits|clams|\
             oysters|risotto|squash|tart|tarts|crisp|Pies|stew|corn pudding|collard greens|pigs in blankets",
        ),
        (
            "es",
            "añade {} en el horno 30 min a 190",
            "patatas|puré|camotes|bolillos|romeritos|canelones|setas|coles|lombarda|elote|bacalao|torrijas|brócoli|gratén|\
             berenjenas|pimientos|piñones|cebollas|alcachofas|macarrones|hojaldre|empanadas|coca|roscón|tortas|flan|migas",
        ),
        (
            "fr",
            "ajoute {} au four 30 min à 190",
            "marrons|gratin dauphinois|poireaux|navets|endives|cardons|feuilletés|potimarron|bûche|crumble|panais|tourte|\
             cannelloni|brioche|cake salé|betteraves|choux|cèpes|girolles|quenelles|polenta|chapon farci|fenouil|blettes",
        ),
        (
            "de",
            "füge {} im Ofen 30 min bei 190 hinzu",
            "Brötchen|Klöße|Knödel|Rotkohl|Maronen|Möhren|Lauch|Bohnen|Semmeln|Spätzle|Kohlrabi|Plätzchen|Quiche|Wirsing|\
             Schupfnudeln|Kroketten|Zwiebelkuchen|Pastinaken|Apfelstrudel|Stollen|Kürbis|Fenchel|Hefezopf|Rösti|Würstchen",
        ),
        (
            "pt",
            "inclui {} no forno 30 min a 190",
            "farofa|batatas|pãezinhos|rabanada|salpicão|mandioca|couve|empadão|abóbora|tender|pernil|cuscuz|bolinho|pudim|\
             quiche|torta|broa|chuchu|maionese|escondidinho|lasanha|canjica|panetone|vagem|berinjela|purê",
        ),
        (
            "it",
            "aggiungi {} in forno 30 min a 190",
            "crostata|lasagne|cannelloni|cotechino|finocchi|cardi|patate|zucca|sformato|parmigiana|focaccia|polenta|cipolle|\
             carciofi|pandoro|castagne|timballo|gnocchi|porri|cavolini|radicchio|melanzane|peperoni|torta salata|pasticcio",
        ),
    ];
    let mut wrong = Vec::new();
    for (tag, text, names) in table {
        assert!(names.split('|').count() >= 20, "{tag}");
        for own in names.split('|') {
            let read = name(tag, &text.replace("{}", own));
            if read != own {
                wrong.push(format!("{tag} {own}: {read}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn what_leads_on_to_the_time_or_the_heat_is_no_part_of_a_name() {
    for (tag, text, own) in [
        ("en", "I'm bringing a pie that needs 50 minutes in the oven at 375", "pie"),
        ("en", "add turkey in the oven 3 h at 325", "turkey"),
        ("en", "add the rolls which take 15 min at 375", "rolls"),
        ("en", "add casserole needing 40 min at 350", "casserole"),
        ("es", "añade una tarta que necesita 50 min al horno a 180", "tarta"),
        ("es", "añade pavo al horno 3 h a 160", "pavo"),
        ("fr", "ajoute une tarte qui prend 50 min au four à 180", "tarte"),
        ("de", "dazu ein Kuchen, der 50 min im Ofen bei 180 braucht", "Kuchen"),
        ("de", "dazu Brötchen die 15 min bei 200 brauchen", "Brötchen"),
        ("pt", "inclui uma torta que leva 50 min no forno a 180", "torta"),
        ("pt", "inclui peru no forno 3 h a 160", "peru"),
        ("it", "aggiungi una crostata che vuole 50 min in forno a 180", "crostata"),
    ] {
        assert_eq!(name(tag, text), own, "{text}");
    }
}
