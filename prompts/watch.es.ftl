# Lo que llega solo: mañanas, tardes, la semana, pendientes, recordatorios, precauciones.

reminder = Recordatorio{ HAS($who) ->
    [yes] {" "}para { $who }
   *[no] {""}
}: { $about }{ HAS($by) ->
    [yes] , de parte de { $by }
   *[no] {""}
}.
summary-more = Y { $count } más.

morning-head = { CAP(LONGDAY($day)) }, mañana.
morning-nothing = { CAP(LONGDAY($day)) }, mañana. Nada pendiente.
morning-pile = { CAP($pile) }: { watch-left }{ watch-range }, cara { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día{ watch-face }.
morning-pile-days = { CAP($pile) }: { watch-left }{ watch-range }.
morning-pile-face = { CAP($pile) }: cara { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día{ watch-face }.
morning-pile-bare = { CAP($pile) } se está dando. Con lo que se da al día salen los días que quedan.
watch-left = { NUMBER($days, maximumFractionDigits: 0) ->
    [one] queda
   *[other] quedan
} { n-days }
watch-range = { HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}
watch-face = { $enough ->
    [yes] {""}
   *[no] , hacen falta { NUMBER($minInPerDay, maximumFractionDigits: 1) }
}
morning-pile-out = { CAP($pile) } ya se debió acabar. Hay que decir dónde va la cara, o "{ $pile } se acabó".
morning-mix = { CAP($pile) }: la mezcla en la cara cambia{ HAS($on) ->
    [yes] {" "}como el { $on }
   *[no] {""}
}, a los { NUMBER($atFt, maximumFractionDigits: 0) } pies{ HAS($crop) ->
    [yes] , de ahí más { WORD("crop", $crop) }
   *[no] {""}
}.
morning-roll = { CAP($pile) }: enrollar { NUMBER($ft, maximumFractionDigits: 0) } pies.{ $tires ->
    [0] {""}
   *[other] {" "}Quitar { NUMBER($tires, maximumFractionDigits: 0) } llantas: { NUMBER($edgeTires, maximumFractionDigits: 0) } a la orilla nueva{ $stackTires ->
        [0] {""}
       *[other] , { NUMBER($stackTires, maximumFractionDigits: 0) } al montón de llantas
    }.
}{ $bags ->
    [0] {""}
   *[other] {" "}Quitar { NUMBER($bags, maximumFractionDigits: 0) } bolsas, a la orilla nueva.
}
morning-bare = { CAP($pile) }: { NUMBER($ft, maximumFractionDigits: 0) } pies destapados, { n-days } de comida. Conviene acercar el plástico.
morning-damage = { CAP($pile) }: { watch-places } sin parchar{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ $days ->
    [0] {""}
   *[other] , ya { n-days }
}.
watch-places = { $what ->
    [hole] { $count ->
        [one] { $count } hoyo
       *[other] { $count } hoyos
    }
    [tear] { $count ->
        [one] { $count } rotura
       *[other] { $count } roturas
    }
   *[other] { $count ->
        [one] { $count } lugar
       *[other] { $count } lugares
    }
}
morning-uncovered = { CAP($pile) } sigue destapada, { n-days } desde el último viaje.{ watch-depth }
# El único plazo publicado es de una pila del todo destapada; se nombra para que nadie lo tome por el de un hoyo.
watch-depth = { $depthFt ->
    [0] {""}
    [1] {" "}Una pila del todo destapada había perdido el primer pie a la semana 2 (Kansas State, alfalfa, 1991). Un hoyo va más despacio.
    [2] {" "}Una pila del todo destapada perdía el segundo pie después de la semana 4 (Kansas State, alfalfa, 1991). Un hoyo va más despacio.
   *[3] {" "}Una pila del todo destapada perdía el tercer pie después de la semana 7 (Kansas State, alfalfa, 1991). Un hoyo va más despacio.
}
morning-round = Después del granizo del { $on }, falta revisar: { $piles }.
morning-check-due = { CAP($pile) }: toca revisar la tapa{ $late ->
    [0] {" "}hoy
    [one] , { $late } día de atraso
   *[other] , { $late } días de atraso
}{ watch-why }{ HAS($last) ->
    [yes] , última vez { $last }
   *[no] {""}
}.
watch-why = { $why ->
    [sealed] {" "}(plástico nuevo)
    [hail] {" "}(granizo)
    [wind] {" "}(viento)
    [rain] {" "}(lluvia)
    [thaw] {" "}(deshielo)
    [animal] {" "}(los animales regresan)
   *[plain] {""}
}

evening-head = { CAP(LONGDAY($day)) }, tarde.
evening-nothing = { CAP(LONGDAY($day)) }, tarde. Nada que contar.
evening-load = { CAP($pile) }: { $count ->
    [0] {""}
   *[other] { n-load } de{" "}
}{ WORD("crop", $crop) } hoy{ HAS($lb) ->
    [yes] , { ABOUT($lb) }
   *[no] {""}
}.
evening-driver = { CAP($by) }: { n-load }.
cover-tonight = Si ya fue el último viaje, tapar { $pile } hoy en la noche: plástico de { by-feet }{ watch-weights }, { $people } personas unos { watch-minutes }.{ $fromStock ->
    [no] {" "}No hay plástico que alcance.
   *[other] {""}
}
watch-weights = { $tires ->
    [0] {""}
   *[other] , { NUMBER($tires, maximumFractionDigits: 0) } llantas
}{ $bags ->
    [0] {""}
   *[other] , { NUMBER($bags, maximumFractionDigits: 0) } bolsas
}
watch-minutes = { NUMBER($minutes, maximumSignificantDigits: 2) } minutos
cover-now = Tapar { $pile } hoy en la noche: plástico de { by-feet }{ watch-weights }, { $people } personas unos { watch-minutes }.{ $fromStock ->
    [no] {" "}No hay plástico que alcance.
   *[other] {""}
}
cover-now-bare = Tapar { $pile } hoy en la noche.
cover-sun-today = El mejor sol hoy de { CLOCK($from) } a { CLOCK($to) }, ahí el plástico queda bien estirado.
cover-tonight-bare = Tapar { $pile } hoy en la noche si ya fue el último viaje.
cover-sun = Si se deja para mañana: el mejor sol de { CLOCK($from) } a { CLOCK($to) }, ahí el plástico queda bien estirado.

weekly-head = La semana hasta el { LONGDAY($day) }.
weekly-nothing = La semana hasta el { LONGDAY($day) }: nada que contar.
weekly-fed = { CAP($pile) }: { HAS($lb) ->
    [yes] se dieron { ABOUT($lb) }
   *[no] en uso
}{ HAS($days) ->
    [yes] , { watch-left }
   *[no] {""}
}{ HAS($runsOut) ->
    [yes] , hasta como el { $runsOut }
   *[no] {""}
}.
weekly-loads = { n-load }, en { $piles }.
weekly-check = { CAP($pile) }: tapa { HAS($last) ->
    [yes] sin revisar desde el { $last }
   *[no] todavía sin revisar
}{ watch-why }.
weekly-walks = Revisiones de tapas: { $count }.

pace-high = { CAP($pile) }: llegan { NUMBER($tonsHour, maximumFractionDigits: 0) } toneladas por hora contra { NUMBER($lb, maximumFractionDigits: 0) } lb de tractor, que alcanzan a pisar { NUMBER($okTonsHour, maximumFractionDigits: 0) }. Más despacio, capas más delgadas, o más peso hasta { NUMBER($needLb, maximumSignificantDigits: 2) } lb.
early-open = { CAP($pile) } se tapó el { $sealedOn } y todavía está trabajando. Mejor cerrada hasta el { $readyOn }.
supply-head = { $filling ->
    [yes] Para { $pile }, que se está llenando: hace falta ya.
   *[no] Para { $pile }, como el { $on }: { $now ->
        [yes] hay que pedir ya.
       *[no] pedir antes del { $by }.
    }
}
supply-short = { HAS($widthFt) ->
    [yes] { CAP(WORD("item", $item)) } de { by-feet }
   *[no] { CAP(WORD("item", $item)) }
}: se ocupan { $need }, hay { $have }.
check-line = { CAP($pile) }{ watch-why }{ HAS($last) ->
    [yes] , última revisión { $last }
   *[no] , sin revisar todavía
}{ $late ->
    [0] {""}
    [one] , { $late } día de atraso
   *[other] , { $late } días de atraso
}.
check-again = Falta revisar:
check-owner = Se preguntó dos veces y sigue sin revisar:
round-start = Granizo el { $on }{ $inches ->
    [0] {""}
    [one] , { $inches } pulgada
   *[other] , { $inches } pulgadas
}. Toca revisar { $piles } y decir qué se ve.
round-line = { CAP($piles) }, granizo del { $on }.
round-again = Después del granizo falta revisar:
round-owner = Después del granizo se preguntó dos veces y sigue sin revisar:
round-good = Revisión del granizo completa, { $count ->
    [one] { $count } tapa entera
   *[other] { $count } tapas enteras
}.
round-trouble = Revisión del granizo completa. Hay problema en { $piles }.
freeze-first = { NUMBER($degF, maximumFractionDigits: 0) } °F: con un día así una orilla mojada y sin nieve se puede helar hasta { NUMBER($depthIn, maximumFractionDigits: 0) } pulgadas. Es un cálculo aproximado. Hay que levantar ya lo que detiene el plástico en { $piles }.
freeze-ask = Antes de que se hiele el suelo, hay que levantar lo que se quedaría pegado donde se va a dar este invierno. Dejar lo bastante para detener el plástico.
freeze-again = Pronto se hiela el suelo. Falta levantar:
freeze-owner = Se preguntó dos veces, falta levantar:
freeze-line = { CAP($pile) }, de { NUMBER($fromFt, maximumFractionDigits: 0) } pies { $end ->
    [yes] al final
   *[no] a { NUMBER($toFt, maximumFractionDigits: 0) } pies
}: { $mesh ->
    [yes] malla
   *[no] orillas del plástico
}{ watch-weights }{ HAS($by) ->
    [yes] , antes del { $by }
   *[no] , ya
}.
repair-line = { CAP($pile) }: { watch-places }{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ $days ->
    [0] {""}
   *[other] , ya { n-days }
}.{ watch-depth }
repair-ask = ¿Ya se parchó?
repair-again = Según el libro sigue abierto:
repair-owner = Se preguntó dos veces, falta parchar:
repair-risk = En una paca envuelta un hoyo de 3 mm echó a perder la quinta parte (Teagasc). En pilas nadie lo ha medido; va más rápido con calor y con un hoyo más grande.
repair-advice = Hay que parchar pronto, con cinta para silo sobre plástico limpio y seco. La cinta gris se despega.
edge-spring = Desde ahora hay que volver a sellar la orilla de { $pile } cada vez que se enrolla: peso otra vez en la orilla, no más de { n-days } de comida destapada. Revisar lo que estuvo helado.
edge-idle = De { $pile } no se ha anotado comida desde el { $last }. Si está parada, hay que cerrar la orilla.
edge-leftover = { CAP($pile) } va a tener comida { $daysOver } días después del nuevo { WORD("crop", $crop) } del { $on }. Hay que empujarla y darla primero: lo viejo antes que lo nuevo.

caution-face = Lejos de la cara{ $awayFt ->
    [0] {""}
   *[other] {" "}{ NUMBER($awayFt, maximumFractionDigits: 0) } pies
}, tres veces su altura, y nunca trabajar ahí sin compañía.
caution-gas = { n-days } después de llenar, hasta el { $until }, { $pile } puede dar gas, se vea o no. Con humo amarillo u olor a cloro: afuera, del lado del viento.
caution-slope = Pendientes de 3 a 1 o más suaves; subir y bajar derecho, no atravesado.
caution-sheet-wind = El viento debajo de un plástico grande levanta a una persona. Mejor esperar la calma, y soltarlo si se va.
caution-knife = Cortar hacia afuera, y cerrar la navaja antes de bajar.
caution-ice = Hielo en el plástico y en la orilla: despacio, y con alguien más.
caution-defer = Las reglas del lugar y la gente con licencia van primero.
