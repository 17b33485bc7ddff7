# Várias aves num mesmo grupo. $bird é como se chama uma delas (“Pato de Davi”), $birds uma lista delas.

birds-whose = { $kind ->
    [turkey-breast] { $own ->
        [yes] O peito de peru
       *[no] Peito de peru de { $name }
    }
    [chicken] { $own ->
        [yes] O frango
       *[no] Frango de { $name }
    }
    [capon] { $own ->
        [yes] O capão
       *[no] Capão de { $name }
    }
    [duck] { $own ->
        [yes] O pato
       *[no] Pato de { $name }
    }
    [goose] { $own ->
        [yes] O ganso
       *[no] Ganso de { $name }
    }
   *[turkey] { $own ->
        [yes] O peru
       *[no] Peru de { $name }
    }
}
birds-where = { $bird } { $cooker ->
    [smoker] no defumador
    [fan-oven] no forno com ventilador
   *[oven] no forno
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, nº { $number }
birds-of = { $bird }: { $what }

birds-standing = Já há plano aqui: { $birds }. { $replaces ->
    [yes] Esta é mais uma ave, ou entra no lugar?
   *[no] Esta é mais uma ave?
}
birds-same-heat = Nessa hora sua ave de { $mass } também está no mesmo calor. Lado a lado: ar em volta das duas, um pouco mais de tempo para cada uma e um termômetro em cada uma.
birds-other-heat = Nessa hora sua ave de { $mass } também está no mesmo calor, a { $setting }. As duas precisam de uma temperatura só, ou uma vai antes da outra.
birds-one-oven = { $bird } vai estar num forno a { $setting }. Se for o mesmo: uma temperatura para os dois, ou um antes do outro.
birds-one-fridge = Também na geladeira nessa hora: { $birds }. Se for a mesma, { $shelves ->
    [one] uma prateleira não basta
   *[other] { $shelves } prateleiras não bastam
}: outra geladeira, ou uma caixa térmica com gelo a { $cold } ou menos.
birds-all = { $birds }
birds-hotter = No mesmo forno que { $birds }? Então lá também esquenta mais: meça antes.
birds-full = Já há plano aqui: { $birds }. Mais que isso não acompanho num só lugar{ $replaces ->
    [yes] ; esta só poderia entrar no lugar de uma.
   *[no] .
}
birds-button-beside = Mais uma ave
birds-button-instead = Trocar: { $bird }
birds-most = Mais de { $most } aves num só lugar eu não acompanho. Encerre uma com /stop.
birds-beside = Também aqui: { $birds }.

birds-which = Qual ave? “{ $text }”
birds-each = Uma ave de cada vez: mande os números de uma, depois os da outra.
birds-which-gone = Já não tenho o que você disse. Diga de novo, com o nome da ave?
birds-moved = Anotado aqui e não em “{ $bird }”: { $parts }.
