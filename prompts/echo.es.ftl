# Lo que se entendió, una frase por cada tipo de evento. Toda casilla puede faltar: las mismas frases nombran lo que se pregunta.

echo-line = { CAP($what) }{ HAS($on) ->
    [yes] , { $on }
   *[no] {""}
}.{ HAS($total) ->
    [yes] {" "}{ $total }
   *[no] {""}
}
total-loads = { $count ->
    [one] Va { $count }.
   *[other] Van { $count }.
}
total-weight = Van { ABOUT($lb) }.
total-open-damage = { $count ->
    [one] Queda { $count } sin parchar.
   *[other] Quedan { $count } sin parchar.
}
total-left = Quedan unos { n-days }.
took-back = Se quitó: { $what }.
took-back-many = Se quitaron { $count } registros.
corrected = Ahora { $now } (antes { $was }).

did-pile = { HAS($known) ->
    [yes] { $name }
   *[no] pila nueva { $name }
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
pile-feet-wide = { $ft } pies de ancho
pile-feet-long = { $ft } pies de largo
pile-feet-high = { $ft } pies de alto
pile-feet-top = { $ft } pies de ancho arriba
pile-walls = paredes de { $ft } pies
pile-also = también { $names }
did-box = a { $name } le caben { $amount }{ HAS($crop) ->
    [yes] {" "}de { $crop }
   *[no] {""}
}
did-load = { $amount }{ HAS($crop) ->
    [yes] {" "}de { $crop }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
some-feed = algo
load-dry = { $pct } % de materia seca
load-box = { $box }
load-field = de { $field }
did-pack = pisando{ HAS($pile) ->
    [yes] {" "}{ $pile }
   *[no] {""}
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
pack-tractors = { $count ->
    [one] { $count } tractor
   *[other] { $count } tractores
}{ HAS($lb) ->
    [yes] {" "}de { $lb } lb
   *[no] {""}
}
pack-weight = tractor de { $lb } lb
pack-layers = capas de { $inches } { $inches ->
    [one] pulgada
   *[other] pulgadas
}
pack-hours = { $hours ->
    [one] { $hours } hora
   *[other] { $hours } horas
}
did-size = { HAS($pile) ->
    [yes] { $pile } mide { $details }
   *[no] { $details }
}
did-cover-on = { $things }{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}
did-cover-off = se quitó de { HAS($pile) ->
    [yes] { $pile }
   *[no] la pila
}: { $things }
did-cover-back = { HAS($ft) ->
    [yes] { $ft ->
        [one] se enrolló { $ft } pie de
       *[other] se enrollaron { $ft } pies de
    }
   *[no] se enrolló
} { $things }{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}
did-damage = { hurt }{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ HAS($animal) ->
    [yes] {" "}({ WORD("animal", $animal) })
   *[no] { HAS($cause) ->
        [yes] {" "}({ WORD("cause", $cause) })
       *[no] {""}
    }
}
# `kind` is hole, tear, loose-edge, water, other or any.
hurt = { HAS($count) ->
    [yes] { $kind ->
        [tear] { $count ->
            [one] { $count } rotura
           *[other] { $count } roturas
        }
        [loose-edge] { $count ->
            [one] { $count } orilla suelta
           *[other] { $count } orillas sueltas
        }
        [water] { $count ->
            [one] agua en { $count } lugar
           *[other] agua en { $count } lugares
        }
        [hole] { $count ->
            [one] { $count } hoyo
           *[other] { $count } hoyos
        }
       *[other] { $count ->
            [one] daño en { $count } lugar
           *[other] daño en { $count } lugares
        }
    }
   *[no] { $kind ->
        [hole] un hoyo
        [tear] una rotura
        [loose-edge] una orilla suelta
        [water] agua
       *[other] daño
    }
}
did-patch = { HAS($count) ->
    [yes] { $count ->
        [one] { $count } parche
       *[other] { $count } parches
    }{ HAS($pile) ->
        [yes] {" "}en { $pile }
       *[no] {""}
    }
   *[no] { HAS($pile) ->
        [yes] { $pile } parchada
       *[no] parches
    }
}{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}
did-check = { HAS($pile) ->
    [yes] { $pile ->
        [all] tapas revisadas
       *[other] { $pile } revisada
    }
   *[no] tapas revisadas
}{ $finding ->
    [good] , todo bien
    [trouble] , hay problema
   *[other] {""}
}
did-weather = { WORD("kind", $kind) }{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
weather-inches = { $inches } { $inches ->
    [one] pulgada
   *[other] pulgadas
}
weather-mph = { $mph } millas por hora
weather-degrees = { $degF } °F
did-open-feed = { HAS($pile) ->
    [yes] { $pile } abierta
   *[no] pila abierta
} para dar de comer
did-open-add = { HAS($pile) ->
    [yes] { $pile } abierta
   *[no] pila abierta
} para echarle más
did-feed = { HAS($single) ->
    [yes] se dio
   *[no] se dieron
} { $amount }{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}
did-take = { HAS($single) ->
    [yes] se sacó
   *[no] se sacaron
} { $amount }{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}
did-face-at = cara{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
} en { $ft } pies
did-face-left = quedan { $ft } pies{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}
did-spoil = { HAS($single) ->
    [yes] se tiró
   *[no] se tiraron
} { $amount }{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}
did-shift = { HAS($single) ->
    [yes] se pasó
   *[no] se pasaron
} { HAS($amount) ->
    [yes] { $amount }
   *[no] restos
}{ HAS($pile) ->
    [yes] {" "}de { $pile }
   *[no] {""}
}{ HAS($toPile) ->
    [yes] {" "}a { $toPile }
   *[no] {""}
}
did-empty = { HAS($pile) ->
    [yes] { $pile } se acabó
   *[no] una pila se acabó
}
did-test = { HAS($crop) ->
    [yes] { $crop }{ HAS($pile) ->
        [yes] {" "}en { $pile }
       *[no] {""}
    }
   *[no] { HAS($pile) ->
        [yes] { $pile }
       *[no] el análisis
    }
} salió en { $pct } % de materia seca
did-ration = ración: { $details }
ration-head = { $head } cabezas{ HAS($group) ->
    [yes] {" "}({ WORD("group", $group) })
   *[no] {""}
}
ration-group = { WORD("group", $group) }
ration-per-head = { $lb } lb{ HAS($crop) ->
    [yes] {" "}de { $crop }
   *[no] {""}
} por vaca{ $basis ->
    [dry] , en seco
   *[other] {""}
}
ration-per-day = { $lb } lb{ HAS($crop) ->
    [yes] {" "}de { $crop }
   *[no] {""}
} al día{ $basis ->
    [dry] , en seco
   *[other] {""}
}
ration-from = de { $pile }
did-supply-add = { $things } más en existencia
did-supply-use = { $things } menos en existencia
did-supply-have = { $things } en existencia
did-harvest = { HAS($crop) ->
    [yes] { $crop }
   *[no] cosecha
}{ HAS($on) ->
    [yes] {" "}como el { $on }
   *[no] {""}
}{ HAS($acres) ->
    [yes] , { $acres } acres
   *[no] {""}
}
did-remind = recordatorio{ HAS($who) ->
    [yes] {" "}para { $who }
   *[no] {""}
}{ HAS($on) ->
    [yes] {" "}{ $every ->
        [day] { $step ->
            [1] cada día desde {""}
           *[other] cada { $step } días desde {""}
        }
        [week] { $step ->
            [1] cada semana desde {""}
           *[other] cada { $step } semanas desde {""}
        }
        [month] { $step ->
            [1] cada mes desde {""}
           *[other] cada { $step } meses desde {""}
        }
       *[other] {""}
    }{ LONGDAY($on) }
   *[no] {""}
}{ HAS($time) ->
    [yes] {" "}a las { CLOCK($time) }
   *[no] {""}
}{ HAS($about) ->
    [yes] : { $about }
   *[no] {""}
}
did-note = { HAS($text) ->
    [yes] nota: { $text }
   *[no] una nota
}
day = { $on }
