//! Brazilian Portuguese.

use crate::{check, dish, hour, log, moved, plan, question, report, step, talk};

#[test]
fn portuguese_plans_are_read() {
    check(
        "pt-BR",
        plan,
        &[
            (
                "peru congelado de 6,5 kg, jantar quinta às 17h, 11 pessoas, defumador a 163",
                "adults=11 condition=frozen cooker=smoker dinner=25.11.@17:00 kind=turkey mass_g=6500 setting_c=163",
            ),
            (
                "tenho um peru congelado de 7 quilos e 12 convidados no sábado às 18h",
                "adults=12 at_home=true condition=frozen dinner=27.11.@18:00 kind=turkey mass_g=7000",
            ),
            (
                "ganso fresco, 5,2 kg, domingo às seis e meia, para 8, forno com ventilador a 160 graus",
                "adults=8 condition=fresh cooker=fan-oven dinner=28.11.@18:30 kind=goose mass_g=5200 setting_c=160",
            ),
            ("quinta-feira às 17h30", "dinner=25.11.@17:30"),
            ("quinta 17:30", "dinner=25.11.@17:30"),
            ("dia 25 de novembro às 17:30", "dinner=25.11.@17:30"),
            ("25/11 às 18h", "dinner=25.11.@18:00"),
            ("depois de amanhã ao meio-dia", "dinner=24.11.@12:00"),
            ("amanhã às 6 da tarde", "dinner=23.11.@18:00"),
            ("amanhã às 18 horas", "dinner=23.11.@18:00"),
            ("às sete da noite", "dinner_hour=19:00:00"),
            ("véspera de Natal às 21h", "dinner=24.12.@21:00"),
            ("Natal às 13h", "dinner=25.12.@13:00"),
            ("daqui a 3 dias às 18h", "dinner=25.11.@18:00"),
            ("almoço sábado às 11:30", "dinner=27.11.@11:30"),
            ("pato meio descongelado, 2,4 kg", "condition=part-thawed kind=duck mass_g=2400"),
            ("frango de 1800 g", "kind=chicken mass_g=1800"),
            ("peito de peru 3 kg, recheado", "kind=turkey-breast mass_g=3000 stuffed=true"),
            ("4 adultos e 3 crianças, com sobras", "adults=4 children=3 leftovers=true"),
            ("somos 9, sem sal", "adults=9 salting=none"),
            ("peru contém até 8 % de solução", "kind=turkey solution_percent=8"),
            ("assar na véspera, na casa da minha irmã, 40 min de carro", "ahead=true drive_min=40 elsewhere=true"),
            ("forno a 165", "cooker=oven setting_c=165"),
            ("churrasqueira a 160 °C", "cooker=smoker setting_c=160"),
            ("salmoura seca, forno", "cooker=oven salting=dry"),
            ("na salmoura", "salting=wet"),
            ("descongelar na geladeira", "thawing=fridge"),
            ("ainda tenho que comprar", "at_home=false"),
            ("onze pessoas", "adults=11"),
            ("vinte e quatro pessoas", "adults=24"),
            ("peru congeldo 6 quilos, quinta às 17h", "condition=frozen dinner=25.11.@17:00 kind=turkey mass_g=6000"),
        ],
    );
    check(
        "pt-BR",
        moved,
        &[
            ("18h", "25.11.@18:00"),
            ("às 18:30", "25.11.@18:30"),
            ("para as 18h", "25.11.@18:00"),
            ("uma hora mais tarde", "25.11.@18:00"),
            ("meia hora antes", "25.11.@16:30"),
            ("uma hora e meia mais tarde", "25.11.@18:30"),
            ("sexta", "26.11.@17:00"),
            ("+45 min", "25.11.@17:45"),
        ],
    );
    check(
        "pt",
        dish,
        &[
            ("inclui recheio no forno 45 min a 190", "recheio: oven 190 45"),
            ("adiciona purê no fogão, 40 minutos", "purê: stove 40"),
            ("inclui farofa 30 min na véspera", "farofa: made 30 ahead"),
            ("tira a farofa", "without farofa"),
            ("inclui molho", "!NoTime(\"molho\")"),
        ],
    );
    check("pt", hour, &[("17h", "17:00"), ("17h30", "17:30"), ("às 17h", "17:00"), ("cinco e meia", "17:30")]);
}

#[test]
fn portuguese_readings_and_reports_are_read() {
    check(
        "pt",
        log,
        &[
            ("peito 53, coxa 61, ar 168", "breast=53 thigh=61 pit=168"),
            ("peito 53 sobrecoxa 61 forno 165 às 14:05", "breast=53 thigh=61 pit=165 22.11.@14:05"),
            ("53 no peito", "breast=53"),
            ("coxa 61,5 °C", "thigh=61.5C"),
            ("há 10 minutos peito 60", "breast=60 22.11.@18:20"),
            ("peito 60 às cinco e meia", "breast=60 22.11.@17:30"),
            ("peito de peru 58 graus", "breast=58"),
            ("58/64/165C", "breast=58C thigh=64C pit=165C"),
        ],
    );
    check(
        "pt",
        report,
        &[
            ("feito", "due"),
            ("Pronto!", "due"),
            ("já fiz", "due"),
            ("já está no forno", "on"),
            ("O peru está no forno", "on"),
            ("coloquei no forno agora", "on"),
            ("já salguei", "salt"),
            ("troquei a água", "water"),
            ("água trocada", "water"),
            ("coloquei na geladeira", "thaw|chill"),
            ("tirei do forno", "pull"),
            ("forno ligado", "fire"),
            ("carvão aceso", "fire"),
            ("cortei", "carve"),
            ("as sobras estão na geladeira", "chill"),
            ("estamos a caminho", "travel"),
            ("já comprei", "buy"),
            ("ainda não", "not due"),
            ("esqueci", "not due"),
            ("ainda está congelado", "not thaw"),
            ("continua duro feito pedra", "not thaw"),
            ("ainda tem gelo dentro", "not thaw"),
            ("não salguei", "not salt"),
            ("ainda não está no forno", "not on"),
            ("done", "due"),
            ("está no forno?", "-"),
            ("peru congelado de 6 kg", "-"),
            ("forno", "-"),
        ],
    );
    check(
        "pt",
        talk,
        &[
            ("desfazer", "undo"),
            ("me enganei", "undo"),
            ("botão errado", "undo"),
            ("Bom dia", "greeting"),
            ("oi pessoal", "greeting"),
            ("beleza", "assent"),
            ("pode ser", "assent"),
            ("Muito obrigada!", "thanks"),
            ("valeu", "thanks"),
            ("ajuda", "help"),
        ],
    );
    check(
        "pt",
        step,
        &[
            ("cortar", "carve"),
            ("troca de água 3", "water 3"),
            ("descongelar", "thaw"),
            ("carve", "carve"),
            ("ligar o forno", "fire"),
            ("salgar a ave", "salt"),
            ("medir temperaturas", "check"),
        ],
    );
}

#[test]
fn portuguese_questions_are_answered() {
    check(
        "pt-BR",
        question,
        &[
            ("2 colheres de sopa de sal de mesa em kosher em flocos", "salt-convert volume=4.28tbsp"),
            ("4 colheres de chá de sal kosher em flocos em kosher grosso", "salt-convert volume=2.33tsp"),
            ("1 colher de chá de sal de mesa em gramas", "salt-convert mass=6.09g"),
            ("quanto sal para 6 kg", "salt-dose mass=23.33g"),
            ("Quanto sal para um peru de 5,76 kg?", "salt-dose mass=22.4g"),
            ("sal para um peru de 5,5 kg", "salt-dose mass=21.39g"),
            ("quanto sal por quilo", "salt-dose mass=3.89g"),
            ("quanto sal para peru", "salt-dose ? ask-back-mass"),
            ("salmoura a 6 % para 4 litros", "brine salt=255.32g water=4L"),
            ("meu sal: 1/4 colher de chá são 0,7 g", "own-salt"),
            ("até onde o sal penetra em 24 horas", "salt-depth depth=9.42mm"),
            ("sódio num peru de 6,5 kg para 11 pessoas", "sodium"),
            ("quanto tempo descongelar", "thaw-time"),
            ("quanto tempo descongela um peru de 6,5 kg", "thaw-time fridge-low=72h fridge-high=96h"),
            ("quanto tempo assa um peru de 6 kg no forno a 165?", "roast-time"),
            ("ganso de 5 kg forno com ventilador a 160 graus quanto tempo", "roast-time"),
            ("que tamanho para 11 pessoas", "portions"),
            ("quantos quilos de peru para 11 pessoas", "portions"),
            ("um peru de 6 kg dá para quantas pessoas", "portions"),
            ("70 °C por 2 minutos é seguro", "lethality needed=40.9s"),
            ("70 por 2 minutos é seguro?", "lethality ? ask-back-scale"),
            ("peru a 68 graus é seguro?", "lethality"),
            ("a que temperatura está pronto o peru", "safe-temp temperature=165°F"),
            ("peru rosado tudo bem?", "safe-temp temperature=165°F"),
            ("peru fora 3 horas, tudo bem?", "left-out over=60min discard=1"),
            ("deixei o peru fora a noite toda, ainda dá?", "left-out over=360min discard=1"),
            ("quanto tempo pode ficar fora", "left-out limit=2h"),
            ("quanto tempo duram as sobras", "keeps days-low=3d days-high=4d"),
            ("quanto tempo duram as sobras no freezer", "keeps months-low=3month"),
            ("reaquecer as sobras", "reheat temperature=165°F"),
            ("tenho que lavar o peru", "wash"),
            ("posso descongelar na bancada", "counter-thaw"),
            ("posso congelar de novo", "refreeze"),
            ("fritar peru congelado", "fry"),
            ("carvão na garagem", "charcoal-indoors"),
            ("quanto carvão para 4 horas", "fuel"),
            ("quanto tempo de descanso", "stand least=20min"),
            ("como manter quente", "hold temperature=140°F"),
            ("a quantos graus o forno", "oven-temp temperature=325°F"),
            ("recheio é seguro?", "stuffing"),
            ("325 °F em °C", "unit-convert"),
            ("o peru ainda está congelado, o que faço", "still-frozen"),
            ("meu forno quebrou", "oven-down"),
            ("o peru está assando rápido demais", "too-fast"),
            ("preciso regar o peru", "baste"),
            ("onde coloco o termômetro", "thermometer"),
            ("molho para 10", "sides volume-low=790mL"),
            ("a que temperatura fica a geladeira", "fridge-temp"),
            ("bobagem com creme", "!"),
        ],
    );
}
