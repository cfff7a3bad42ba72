# Respuestas. Primero el número, luego el margen, luego la fecha.

answer-left = { CAP($pile) }: quedan { n-days }{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($runsOut) ->
    [yes] , hasta como el { $runsOut }
   *[no] {""}
}.
answer-left-stock = Hay unas { ABOUT($lb) }{ HAS($perDay) ->
    [yes] , se dan { NUMBER($perDay, maximumSignificantDigits: 3) } lb al día
   *[no] {""}
}.
answer-reach-yes = { HAS($with) ->
    [yes] Con { $with }: sí
   *[no] Sí
} alcanza hasta el { $until }{ HAS($days) ->
    [yes] , sobran { n-days }
   *[no] {""}
}{ HAS($range) ->
    [yes] {" "}({ $range })
   *[no] {""}
}, quedan unas { HAS($feed) ->
    [yes] { ABOUT($feed) } de comida ({ ABOUT($spare) } en seco).
   *[no] { ABOUT($spare) } de materia seca.
}
answer-range = de { $low } a { $high }
answer-range-spare = sobrar { $n }
answer-range-short = faltar { $n }
answer-range-plain = { $n }
answer-reach-no = { HAS($with) ->
    [yes] Con { $with }: no
   *[no] No
} alcanza{ HAS($days) ->
    [yes] {""}
   *[no] {" "}hasta el { $until }
}{ HAS($ranOutOn) ->
    [yes] , se acaba el { $ranOutOn }
   *[no] {""}
}{ HAS($days) ->
    [yes] , { n-days } antes del { $until }
   *[no] {""}
}{ HAS($range) ->
    [yes] {" "}({ $range })
   *[no] {""}
}. Faltan unas { HAS($feed) ->
    [yes] { ABOUT($feed) } de comida ({ ABOUT($spare) } en seco).
   *[no] { ABOUT($spare) } de materia seca.
}
answer-reach-days = { HAS($with) ->
    [yes] Con { $with }: hay comida
   *[no] Hay comida
} para { n-days }{ HAS($runsOut) ->
    [yes] , hasta como el { $runsOut }
   *[no] {""}
}.
answer-legs = { CAP($list) }.
answer-leg = { $pile } hasta el { $until }
with-both = { $piles } a la vez
answer-gap = Para llegar: { $ways }.
answer-gap-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb al día
answer-gap-head = { $head } cabezas
answer-gap-add = { ABOUT($lb) } más de comida
with-head = { $head } cabezas
with-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb al día
with-day-of = { NUMBER($lb, maximumSignificantDigits: 3) } lb de { WORD("crop", $crop) } al día
with-per-head = { NUMBER($lb, maximumFractionDigits: 1) } lb{ HAS($crop) ->
    [yes] {" "}de { WORD("crop", $crop) }
   *[no] {""}
} por cabeza
with-head-more = { NUMBER($lb, maximumFractionDigits: 1) } lb más por cabeza
with-head-less = { NUMBER($lb, maximumFractionDigits: 1) } lb menos por cabeza
with-day-more = { NUMBER($lb, maximumSignificantDigits: 3) } lb más al día
with-day-less = { NUMBER($lb, maximumSignificantDigits: 3) } lb menos al día
with-pct-more = { NUMBER($pct, maximumFractionDigits: 0) } % más de comida
with-pct-less = { NUMBER($pct, maximumFractionDigits: 0) } % menos de comida
with-more = { ABOUT($lb) } más
with-less = { ABOUT($lb) } menos
with-later = la cosecha { n-days } después
with-sooner = la cosecha { n-days } antes
answer-status = { CAP($pile) }: { WORD("stage", $stage) }.{ HAS($crops) ->
    [yes] {" "}{ CAP($crops) }.
   *[no] {""}
}
answer-status-crop = { HAS($amount) ->
    [yes] { $amount } de { $crop }
   *[no] { $crop }
}{ HAS($lb) ->
    [yes] , unas { ABOUT($lb) }
   *[no] {""}
}
answer-status-sealed = Tapada el { $on }.
answer-status-face = Cara en { NUMBER($ft, maximumFractionDigits: 0) } pies{ HAS($on) ->
    [yes] {" "}el { $on }, ahora como en { NUMBER($today, maximumFractionDigits: 0) }
   *[no] {""}
}.
answer-status-left = Quedan { n-days }{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($lb) ->
    [yes] , hay unas { ABOUT($lb) }
   *[no] {""}
}.
answer-status-there = Hay unas { ABOUT($lb) }.
answer-open-damage = { $count ->
    [0] Nada pendiente en la tapa.
    [one] Falta { $count } lugar por parchar.
   *[other] Faltan { $count } lugares por parchar.
}
answer-worth = Vale unos ${ NUMBER($value, maximumSignificantDigits: 3) } al precio dicho.
answer-worth-of = { CAP($pile) }: vale unos ${ NUMBER($value, maximumSignificantDigits: 3) } al precio puesto, hay { ABOUT($lb) }.
answer-cover-cost = Un plástico de ${ NUMBER($cost, maximumSignificantDigits: 3) } sale a ${ NUMBER($perTon, maximumFractionDigits: 2) } por tonelada tapada.
answer-loads = { $amount }{ HAS($crop) ->
    [yes] {" "}de { WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}{ HAS($from) ->
    [yes] { HAS($to) ->
        [yes] , del { $from } al { $to }
       *[no] , el { $from }
    }
   *[no] {" "}hasta ahora
}{ HAS($lb) ->
    [yes] , unas { ABOUT($lb) }
   *[no] {""}
}.
answer-no-loads = Ningún viaje{ HAS($crop) ->
    [yes] {" "}de { WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}{ HAS($from) ->
    [yes] { HAS($to) ->
        [yes] , del { $from } al { $to }
       *[no] , el { $from }
    }
   *[no] {" "}todavía
}.
answer-density = { CAP($pile) }: { NUMBER($dry, maximumFractionDigits: 1) } lb de materia seca por pie cúbico{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($bulk) ->
    [yes] , { NUMBER($bulk, maximumFractionDigits: 0) } tal como está
   *[no] {""}
}{ HAS($air) ->
    [yes] , { NUMBER($air, maximumFractionDigits: 0) } % de aire
   *[no] {""}
}.
answer-density-verdict = { $enough ->
    [yes] Bien pisada.
   *[no] Está floja, conviene { NUMBER($target, maximumFractionDigits: 0) }.
}{ HAS($ways) ->
    [yes] {" "}Hacen falta { $ways }.
   *[no] {""}
}
answer-density-cost = Así de floja se pierde como { NUMBER($pct, maximumFractionDigits: 0) } % en medio año, { NUMBER($over, maximumFractionDigits: 1) } puntos más que a { NUMBER($target, maximumFractionDigits: 0) }{ HAS($lb) ->
    [yes] : { ABOUT($lb) } de materia seca
   *[no] {""}
}{ HAS($cost) ->
    [yes] , ${ NUMBER($cost, maximumSignificantDigits: 2) }
   *[no] {""}
}.
answer-density-rule = { NUMBER($tons, maximumFractionDigits: 0) } toneladas por hora piden { NUMBER($want, maximumSignificantDigits: 2) } lb de tractor por la regla de 800, y pisaron { NUMBER($have, maximumSignificantDigits: 2) }.
answer-mend-tractor = tractores de { NUMBER($lb, maximumSignificantDigits: 2) } lb
answer-mend-hauling = acarreo a { NUMBER($tons, maximumFractionDigits: 0) } toneladas por hora
answer-density-basis = { $basis ->
    [packing] Sale del pisado que se anotó.
    [measured] Sale de las medidas que se anotaron{ HAS($packing) ->
        [yes] ; por el pisado sería { NUMBER($packing, maximumFractionDigits: 1) }
       *[no] {""}
    }.
   *[assumed] Es supuesto; con el pisado o las medidas sale mejor.
}
answer-face = { CAP($pile) }: { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día, hacen falta { NUMBER($min, maximumFractionDigits: 0) }. { $enough ->
    [yes] Va bien.
   *[no] Va muy despacio.
}
answer-face-mend = Va bien con { $ways }.
answer-mend-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb al día
answer-mend-width = una cara de { NUMBER($ft, maximumFractionDigits: 0) } pies de ancho
answer-cover = Para { $pile }: { $sheet }{ HAS($weights) ->
    [yes] , { $weights }
   *[no] {""}
}.
answer-cover-sheet = plástico de { by-feet }
answer-cover-tires = { NUMBER($count, maximumSignificantDigits: 3) } llantas
answer-cover-bags = { NUMBER($count, maximumSignificantDigits: 3) } bolsas de grava
answer-cover-edge = { NUMBER($ft, maximumFractionDigits: 0) } pies de orilla
answer-cover-gravel = { NUMBER($tons, maximumFractionDigits: 1) } toneladas de grava
answer-cover-stock = { $fromStock ->
    [yes] { HAS($sheets) ->
        [yes] En existencia: { $sheets }{ HAS($waste) ->
            [yes] , sobra { NUMBER($waste, maximumFractionDigits: 0) } %
           *[no] {""}
        }
       *[no] Hay un plástico que alcanza
    }
   *[no] No hay plástico que alcance
}{ HAS($tires) ->
    [yes] , faltan { $tires } llantas
   *[no] {""}
}.
answer-cover-second = Con película barrera debajo se salvan unas { ABOUT($lb) } de materia seca{ HAS($value) ->
    [yes] , ${ NUMBER($value, maximumSignificantDigits: 2) }
   *[no] {""}
}.
answer-plan = { HAS($crop) ->
    [yes] Para { WORD("crop", $crop) }:{" "}
   *[no] {""}
}{ NUMBER($width, maximumFractionDigits: 0) } pies de ancho, { NUMBER($height, maximumFractionDigits: 1) } de alto, { NUMBER($length, maximumFractionDigits: 0) } de largo.
answer-plan-holds = Le caben unas { HAS($feed) ->
    [yes] { ABOUT($feed) } ({ ABOUT($lb) } en seco)
   *[no] { ABOUT($lb) } de materia seca
}{ HAS($days) ->
    [yes] , { n-days }{ HAS($perDay) ->
        [yes] {" "}a { NUMBER($perDay, maximumSignificantDigits: 3) } lb
       *[no] {""}
    }
   *[no] {""}
}{ HAS($inPerDay) ->
    [yes] , cara a { NUMBER($inPerDay, maximumFractionDigits: 1) } pulgadas al día
   *[no] {""}
}.
answer-plan-cover = Para taparla: { $sheet }{ HAS($weights) ->
    [yes] , { $weights }
   *[no] {""}
}.{ HAS($stock) ->
    [yes] {" "}{ $stock }
   *[no] {""}
}
answer-loss-cost = Unos ${ NUMBER($cost, maximumSignificantDigits: 2) } al precio puesto.
answer-ready = { $ready ->
    [yes] { CAP($pile) } ya se puede abrir, lista desde el { $readyOn }.
   *[no] { CAP($pile) } no está lista: tapada el { $sealedOn }, mejor cerrada hasta el { $readyOn }.
}
answer-ready-open = { CAP($pile) } ya está abierta, desde el { $openedOn }.
answer-mix = { CAP($pile) }: { $shares }.{ HAS($pct) ->
    [yes] {" "}Como { NUMBER($pct, maximumFractionDigits: 0) } % de materia seca.
   *[no] {""}
}
answer-share = { NUMBER($pct, maximumFractionDigits: 0) } % { $crop }{ HAS($ft) ->
    [yes] {" "}(desde { NUMBER($ft, maximumFractionDigits: 0) } pies)
   *[no] {""}
}
answer-mix-face = En la cara ahora, { NUMBER($ft, maximumFractionDigits: 0) } pies: { $shares }.{ HAS($ratio) ->
    [yes] {" "}{ $ratio }
   *[no] {""}
}
answer-mix-ratio = { NUMBER($times, maximumFractionDigits: 1) } de { WORD("crop", $more) } por 1 de { WORD("crop", $less) }.
answer-checks = { CAP($pile) }: { HAS($last) ->
    [yes] última revisión { $last }
   *[no] sin revisar todavía
}{ HAS($next) ->
    [yes] { HAS($late) ->
        [yes] , toca desde el { $next }
       *[no] , la próxima { $next }
    }
   *[no] {""}
}.
answer-loss = { CAP($pile) }: como { NUMBER($pct, maximumFractionDigits: 0) } % perdido{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($lb) ->
    [yes] , { ABOUT($lb) } de materia seca
   *[no] {""}
}.
answer-supplies = En existencia: { $items }.
answer-no-supplies = No hay nada anotado en existencia.
answer-event = { $on }{ HAS($who) ->
    [yes] , { $who }
   *[no] {""}
}: { $what }.
answer-more = Y { $count } más.
answer-no-events = En el libro no hay nada de eso.
answer-no-picture = { HAS($pile) ->
    [yes] Nadie mandó foto de { $pile }.
   *[no] Nadie mandó ninguna foto.
} Se manda con palabras abajo, como: dos hoyos junto a la pared.
answer-help = Por ejemplo: { $examples }.
answer-no-how = No había cuenta que hacer.
