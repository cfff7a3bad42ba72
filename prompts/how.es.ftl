# Por qué no se puede responder, con qué hay que tener cuidado y de dónde sale la cuenta, una línea cada uno.

nothing-in-pile = { $stage ->
    [empty] { CAP($pile) } está vacía{ HAS($on) ->
        [yes] {" "}desde el { $on }
       *[no] {""}
    }.
   *[other] En { $pile } todavía no hay nada.
}
no-size-known = De { $pile } no hay viajes ni medidas. Falta algo como: { $pile } mide 40 por 120 y 10 de alto.
no-size-told = Las medidas de { $pile } no están anotadas. Por ejemplo: { $pile } mide 40 por 120 y 10 de alto.
no-ration-known = { HAS($lbAsFed) ->
    [yes] Hay unas { ABOUT($lbAsFed) } en { $pile }{ HAS($lbLow) ->
        [yes] {" "}({ ABOUT($lbLow) } a { ABOUT($lbHigh) })
       *[no] {""}
    }. {""}
   *[no] {""}
}Con lo que se da al día salen los días, por ejemplo: damos 9,000 al día{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}.
no-such-feed = En ninguna pila hay { WORD("crop", $crop) }.
no-head-known = No se ha dicho cuántas cabezas son{ HAS($group) ->
    [yes] {" "}({ WORD("group", $group) })
   *[no] {""}
}. Por ejemplo: ordeñando 118.
note-no-harvest = Falta cuándo viene el próximo corte, por ejemplo: primer corte como el 28 de mayo.
no-such-pile = Ninguna pila se llama { $pile }.
which-pile = ¿Cuál pila: { $piles }?
no-pile-fits = Todavía no hay pila para eso.
no-answer-yet = Aquí todavía no se ha hecho ninguna cuenta.
figures-do-not-fit = Lo anotado{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
} no cuadra, por eso no sale la cuenta. Conviene revisar los viajes, las medidas y lo que se ha dado.
not-open = { CAP($pile) } todavía no se abre.
not-covered = { CAP($pile) } no está tapada todavía. El tiempo cuenta desde que se tapa.
no-face-known = Falta dónde va la cara de { $pile }, en pies, o lo que se da al día, por ejemplo: la cara va en 40 pies.
plan-impossible = Con eso no sale ninguna pila: { WORD("outside", $what) }.
no-amount-known = { $missing ->
    [ration] Falta lo que come el ganado al día, o las toneladas, por ejemplo: qué tan grande para 600 toneladas.
   *[days] Faltan las toneladas o los días, por ejemplo: qué tan grande para 600 toneladas.
}
nothing-to-explain = Aquí todavía no se ha hecho ninguna cuenta.

weighed-scale = la báscula
weighed-tickets = lo que marcaron sus boletas
weighed-box = lo que se dijo que le cabe
weighed-crop-box = la caja de ese cultivo
weighed-usual = una caja normal
lost-filling = llenado
lost-fermentation = fermentación
lost-seepage = escurrimiento
lost-top = arriba y lados
lost-face = cara
moves-readings = las lecturas
moves-feet = los pies que se anotaron
moves-use = lo que se da al día
used-pile = la ración de esa pila
used-crop = la ración de ese cultivo
used-herd = la ración del ganado
used-intake = lo que comen tantas vacas
used-logs = lo que se anotó como dado
used-face = lo que avanzó la cara
used-none = nada anotado

how-in = Entró: { ABOUT($lb) }{ $loads ->
    [0] {""}
    [one] , { $loads } viaje
   *[other] , { $loads } viajes
}, según { WORD("weighed", $from) }{ HAS($boxes) ->
    [yes] {" "}({ $boxes })
   *[no] {""}
}.
how-light = Las cajas salen menos que copeteadas: { NUMBER($pct, maximumFractionDigits: 1) } % menos, { ABOUT($lb) }.
how-in-size = Por sus medidas, { NUMBER($ft3, maximumSignificantDigits: 3) } pies cúbicos, entraron unas { ABOUT($lb) }.
how-loss = Perdido en el camino, como { NUMBER($pct, maximumFractionDigits: 0) } %{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}.
how-fed = Anotado como dado: { ABOUT($lb) } en { n-days }.
how-thrown = Tirado: { ABOUT($lb) }.
how-silent = Sin anotar { n-days }; se toman como dados, unas { ABOUT($lb) }.{ HAS($copied) ->
    [yes] {" "}Lo anotado es igual a la ración, así que pesa poco.
   *[no] {""}
}
how-face = Cara en { NUMBER($ft, maximumFractionDigits: 0) } de { NUMBER($lengthFt, maximumFractionDigits: 0) } pies{ HAS($on) ->
    [yes] , el { $on }
   *[no] {""}
}{ $readings ->
    [one] {""}
   *[other] , { $readings } lecturas en total
}.
how-use = Se usan al día unas { NUMBER($lb, maximumSignificantDigits: 3) } lb, según { WORD("used", $from) }{ HAS($said) ->
    [yes] {" "}({ NUMBER($said, maximumSignificantDigits: 3) } lb)
   *[no] {""}
}.
how-fused = Todo junto, cada cosa según lo segura que es: { n-days }{ $readings ->
    [0] {""}
    [one] , { $readings } lectura de la cara
   *[other] , { $readings } lecturas de la cara
}.
how-narrow = { $what ->
    [face] Con una lectura de la cara en pies
    [tickets] Pesando unos viajes
    [length] Midiendo el largo con cinta
   *[ration] Leyendo en la báscula la comida de un día
}{ HAS($pile) ->
    [yes] , en { $pile },
   *[no] {""}
} el margen baja, de { NUMBER($half, maximumFractionDigits: 0) } a { NUMBER($after, maximumFractionDigits: 0) } días para cada lado.
how-narrow-none = Nada que se anote ahora lo afina mucho: { NUMBER($half, maximumFractionDigits: 0) } días para cada lado.
how-narrow-density = { $what ->
    [size] Midiendo ancho, largo y alto con cinta el margen baja, de { NUMBER($half, maximumFractionDigits: 1) } a { NUMBER($after, maximumFractionDigits: 1) } lb para cada lado.
    [tickets] Pesando unos viajes el margen baja, de { NUMBER($half, maximumFractionDigits: 1) } a { NUMBER($after, maximumFractionDigits: 1) } lb para cada lado.
    [packing] Anotando los tractores y las capas el margen baja, de { NUMBER($half, maximumFractionDigits: 1) } a { NUMBER($after, maximumFractionDigits: 1) } lb para cada lado.
   *[none] Nada que se anote ahora lo afina mucho: { NUMBER($half, maximumFractionDigits: 1) } lb para cada lado.
}
how-narrow-face = { $after ->
    [0] Con dos lecturas de la cara en pies, con una semana entre ellas, se sabe cuánto avanza.
   *[other] Con una lectura de la cara hoy el margen baja, de { NUMBER($half, maximumFractionDigits: 1) } a { NUMBER($after, maximumFractionDigits: 1) } pulgadas para cada lado.
}
how-loss-widest = { PCT($share) } % de ese margen viene de { WORD("lost", $cause) }: { $cause ->
    [top] falta saber cuándo se tapó y con qué.
    [face] hay que leer la cara, entre más avanza menos se pierde.
    [seepage] falta una prueba de materia seca.
   *[other] solo pesando lo que entra y lo que sale se ve.
}
how-cover-height = Falta medir el alto: según lo que salga, el plástico tiene que ser de { NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } pies de ancho.
how-checks = Una pila tapada se revisa cada { n-days }, más seguido con calor o abierta, y después de granizo, viento, lluvia, deshielo o animales.
how-cover = Para { $widthFt } por { $lengthFt } pies{ HAS($heightFt) ->
    [yes] , { NUMBER($heightFt, maximumFractionDigits: 1) } de alto
   *[no] {""}
}{ HAS($assumed) ->
    [yes] {" "}(alto sin anotar)
   *[no] {""}
}.
how-sheet = Por encima de la corona y hasta el suelo, 2 pies más alrededor: { NUMBER($widthFt, maximumFractionDigits: 0) } por { NUMBER($lengthFt, maximumFractionDigits: 0) } pies.
how-tires = { NUMBER($tires, maximumSignificantDigits: 3) } llantas en { NUMBER($areaFt2, maximumSignificantDigits: 3) } pies cuadrados, una junto a otra{ HAS($spaced) ->
    [yes] ; { NUMBER($spaced, maximumSignificantDigits: 3) } separadas
   *[no] {""}
}.
how-edge = { NUMBER($edgeFt, maximumFractionDigits: 0) } pies de orilla con peso.
how-density-measured = { ABOUT($lb) } en { NUMBER($ft3, maximumSignificantDigits: 3) } pies cúbicos, como se midió.
how-density-packing = { $tractors ->
    [one] { $tractors } tractor
   *[other] { $tractors } tractores
} de { $tractorLb } lb, capas de { $layerIn } pulgadas, { NUMBER($tonsHour, maximumFractionDigits: 0) } toneladas por hora.
how-density-usual = Lo normal{ HAS($crop) ->
    [yes] {" "}en { WORD("crop", $crop) }
   *[no] {""}
}; del pisado o las medidas no hay nada anotado.
how-porosity = { HAS($air) ->
    [yes] { PCT($air) } % de aire
   *[no] Aire
} con materia seca de { NUMBER($dmPct, maximumFractionDigits: 0) } %; conviene no más de { PCT($target) } %.
how-density-loss = Así de pisada se pierde como { NUMBER($pct, maximumFractionDigits: 0) } % en medio año.
how-face-rate = La cara avanza { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día, según { WORD("moves", $from) }{ HAS($days) ->
    [yes] , en { n-days }
   *[no] {""}
}.
how-face-least = { $season ->
    [warm] Con calor
   *[cool] Con frío
} hacen falta { NUMBER($inPerDay, maximumFractionDigits: 0) } pulgadas al día por lo menos, mejor { NUMBER($goal, maximumFractionDigits: 0) }.
how-plan-amount = { ABOUT($lbDry) } de materia seca{ HAS($days) ->
    [yes] , { n-days }{ HAS($lbDay) ->
        [yes] {" "}a { NUMBER($lbDay, maximumSignificantDigits: 3) } lb
       *[no] {""}
    }
   *[no] {""}
} con { NUMBER($dmPct, maximumFractionDigits: 0) } % de materia seca{ HAS($loss) ->
    [yes] , { $loss } % perdido en el camino
   *[no] {""}
}.
how-plan-face = Una cara que avance { NUMBER($inPerDay, maximumFractionDigits: 0) } pulgadas al día.
how-plan-shape = Pisada a { NUMBER($density, maximumFractionDigits: 1) } lb de materia seca por pie cúbico, lados de { $run } a 1.
how-of = { CAP($pile) }:
how-loss-cause = { CAP(WORD("lost", $cause)) }: { NUMBER($pct, maximumFractionDigits: 1) } % ({ NUMBER($low, maximumFractionDigits: 1) } a { NUMBER($high, maximumFractionDigits: 1) }).
how-loss-total = Todo junto { NUMBER($pct, maximumFractionDigits: 0) } % ({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) }).
how-loss-record = Según lo que lleva anotado: { NUMBER($pct, maximumFractionDigits: 0) } %.
how-ready = Tapada el { $sealedOn }, y { n-days } para trabajar.
how-have = Hay { ABOUT($lbDry) } de materia seca en { $piles }.
how-day = Se usan al día { NUMBER($lb, maximumSignificantDigits: 3) } lb tal cual, { NUMBER($lbDry, maximumSignificantDigits: 3) } en seco.
how-until = { n-days } hasta el { $until }.
how-mix = De { ABOUT($lb) } en { $layers ->
    [one] { $layers } capa
   *[other] { $layers } capas
}, como se anotaron.
how-weighed = { ABOUT($lb) } según { WORD("weighed", $from) }{ HAS($box) ->
    [yes] {" "}({ $box })
   *[no] {""}
}.

note-not-open = { CAP($pile) } todavía no se abre: la cuenta es como si se abriera hoy.
note-overfed = De { $pile } se ha dado más de lo que debe tener: unas { ABOUT($fed) } con los días sin anotar, de { ABOUT($in) }. Conviene revisar los viajes y las cajas.
note-face-past-end = La cara se anotó en { NUMBER($atFt, maximumFractionDigits: 0) } pies, más allá del final en { NUMBER($lengthFt, maximumFractionDigits: 0) }.
note-size-odd = { $heightFt } pies de alto en { $widthFt } de ancho es demasiado parado. Hay que medir otra vez.
note-intake = Sin ración anotada: la cuenta sale de lo que comen { $head } vacas.
note-no-ration = Sin ración anotada: la cuenta sale de { WORD("used", $from) }.
note-no-loads = Sin viajes anotados en { $pile }: la cuenta sale de sus medidas.
note-usual-box = Sin peso de caja anotado: se tomó una caja normal.
note-level-layers = La cuenta es como si las capas estuvieran parejas.
note-mix-turns = La mezcla cambia en { NUMBER($atFt, maximumFractionDigits: 0) } pies{ HAS($on) ->
    [yes] , como el { $on }
   *[no] {""}
}{ HAS($crop) ->
    [yes] , con más { WORD("crop", $crop) }
   *[no] {""}
}.
note-size-assumed = Sin medidas anotadas: la cuenta es como si midiera { NUMBER($widthFt, maximumFractionDigits: 0) } por { NUMBER($lengthFt, maximumFractionDigits: 0) } pies.
note-face-back = La cara de { $pile } se regresó, de { NUMBER($wasFt, maximumFractionDigits: 0) } a { NUMBER($atFt, maximumFractionDigits: 0) } pies: una de las dos está mal.
note-height-assumed = Sin altura anotada: se tomaron { NUMBER($ft, maximumFractionDigits: 0) } pies.
note-face-not-read = Nadie ha leído la cara: la cuenta sale de lo que se da.
note-density-guide = Sale del pisado que se anotó, es solo una guía.
note-density-misfit = Lo anotado no cuadra: { ABOUT($lb) } en { NUMBER($ft3, maximumSignificantDigits: 3) } pies cúbicos pesarían más que el lodo. Conviene revisar los viajes y las medidas.
note-density-assumed = Nada anotado del pisado o las medidas: se tomó lo normal.
note-hours-assumed = Horas de acarreo sin anotar: se tomó un día normal.
note-outside = Aproximado, fuera de lo conocido: { WORD("outside", $what) }.
note-plan-year = Para un año.
note-plan-slower-face = { HAS($inPerDay) ->
    [yes] { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día es lento con calor, que pide { $goal }: conviene darla en los meses fríos.
   *[no] La cara avanza más despacio de lo deseable.
}
note-plan-below-least = { HAS($inPerDay) ->
    [yes] Es poco ganado para una pila: para { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día queda de solo { NUMBER($heightFt, maximumFractionDigits: 1) } pies de alto, casi pura orilla. Conviene darla con frío, o embolsar la comida.
   *[no] Es poco ganado para una pila: conviene baja y angosta, y darla con frío.
}
note-plan-lower = Queda baja: con tan poca comida no sale más alta.
note-plan-narrower = Queda angosta, para caber en la losa.
note-plan-short-pile = Sale más corta que ancha: es poca comida para una pila.
note-plan-several-piles = Demasiado larga para una pila: conviene hacer { $n }, de { NUMBER($lengthFt, maximumFractionDigits: 0) } pies cada una.
note-gas = { $stage ->
    [worst] El gas está en lo peor ahora
   *[danger] Puede haber gas
}, hasta el { $clearOn }: afuera, del lado del viento.
note-better-later = Mejor todavía después del { $on }.
note-core-hot = El centro está más caliente de lo debido.
note-spot-hot = Hay un punto caliente: ahí se está quemando comida.
note-protein-bound = Tan caliente que la proteína se pierde para la vaca.
note-no-face = Falta dónde va la cara de { $pile } para saber la mezcla ahí.
note-no-price = Falta el precio de todo lo que tiene. Por ejemplo: el maíz vale 55 la tonelada.
note-record-odd = Los viajes, lo dado y la cara de { $pile } no cuadran: algo de eso está mal.
