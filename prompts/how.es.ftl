# Por qué no se puede responder, con qué hay que tener cuidado y de dónde sale la cuenta, una línea cada uno.

nothing-in-pile = { $stage ->
    [empty] { CAP($pile) } está vacía{ HAS($on) ->
        [yes] {" "}desde el { $on }
       *[no] {""}
    }.
   *[other] En { $pile } todavía no hay nada.
}
no-size-known = De { $pile } no hay viajes ni medidas. Falta algo como: { $pile } mide 40 por 120 y 10 de alto.
no-ration-known = { HAS($lbAsFed) ->
    [yes] Hay unas { ABOUT($lbAsFed) } en { $pile }. {""}
   *[no] {""}
}Con lo que se da al día salen los días, por ejemplo: damos 9,000 al día{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}.
no-head-known = No se ha dicho cuántas cabezas son{ HAS($group) ->
    [yes] {" "}({ WORD("group", $group) })
   *[no] {""}
}. Por ejemplo: ordeñando 118.
no-harvest-known = Hay comida para { n-days }, hasta como el { $runsOut }. Falta cuándo viene el próximo corte, por ejemplo: primer corte como el 28 de mayo.
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
} el margen baja, de { NUMBER($half, maximumFractionDigits: 0) } a { NUMBER($then, maximumFractionDigits: 0) } días para cada lado.
how-cover = Para { $widthFt } por { $lengthFt } pies{ HAS($heightFt) ->
    [yes] , { $heightFt } de alto
   *[no] {""}
}, con 2 pies de sobra alrededor.
how-density = Materia seca por pie cúbico, por las medidas, si no por el pisado, si no lo normal.
how-face-rate = La cara avanza { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día, según { WORD("moves", $from) }{ HAS($days) ->
    [yes] , en { n-days }
   *[no] {""}
}.
how-face-least = En esta época hacen falta { NUMBER($inPerDay, maximumFractionDigits: 0) } pulgadas al día.
how-plan = Sale de la materia seca, de lo apretado que queda y de una cara que avance lo suficiente.
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
note-overfed = De { $pile } se anotó más dado de lo que entró ({ ABOUT($fed) } de { ABOUT($in) }). Conviene revisar los viajes y las cajas.
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
}.
note-height-assumed = Sin altura anotada: se tomó una normal.
note-no-face = Falta dónde va la cara de { $pile } para saber la mezcla ahí.

# Límites de las fórmulas: lo anotado queda fuera de aquello para lo que se hicieron.

box-volume = Esa caja queda fuera de lo normal, de 50 a 2,500 pies cúbicos.
dry-matter = Esa materia seca queda fuera de lo que abarca la fórmula.
sample-weights = Los pesos de la muestra no cuadran: seca debe pesar menos que mojada.
no-weighing = No hay peso anotado de la muestra.
not-dry-yet = La muestra todavía no está seca: los dos últimos pesos no son iguales.
face-area = La cara no tiene área; faltan el ancho y el alto.
width-impossible = Ese ancho no puede ser.
length-impossible = Ese largo no puede ser.
height-impossible = Esa altura no puede ser.
height-above-half-width = Más alta que la mitad del ancho es demasiado parada para una pila.
top-impossible = Ese ancho de arriba no puede ser.
top-wider-than-base = Arriba se anotó más ancha que abajo.
ramp-impossible = Esa rampa no puede ser.
ramps-longer-than-pile = Las rampas se anotaron más largas que la pila.
wall-impossible = Esa pared no puede ser.
wall-above-crown = La pared se anotó más alta que la corona.
slope-impossible = Esa pendiente del suelo no puede ser.
slope-runs-out = El suelo baja más de lo que la pila tiene de alto.
days-uncovered = Tantos días destapada queda fuera de lo medido, de 0 a 365.
ash-below-reference = La ceniza es menor que en la comida buena, así no se sabe la pérdida.
