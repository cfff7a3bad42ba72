# Lo que se ajustó, cómo se lista, y las palabras de los recordatorios.

watch-for = { $you ->
    [yes] {" "}para ti
   *[no] { HAS($who) ->
        [yes] {" "}para { $who }
       *[no] {""}
    }
}
set-morning = Resumen de la mañana{ watch-for } a las { CLOCK($time) }.
set-evening = Resumen de la tarde{ watch-for } a las { CLOCK($time) }, los días de llenado.
set-weekly = Resumen semanal{ watch-for } el { watch-weekday } a las { CLOCK($time) }.
watch-weekday = { $weekday ->
    [mon] lunes
    [tue] martes
    [wed] miércoles
    [thu] jueves
    [fri] viernes
    [sat] sábado
   *[sun] domingo
}
watch-kind = { $kind ->
    [evening] resumen de la tarde
    [weekly] resumen semanal
   *[morning] resumen de la mañana
}
set-gets = { $you ->
    [yes] Te llega el { watch-kind }.
   *[no] { HAS($who) ->
        [yes] A { $who } le llega el { watch-kind }.
       *[no] Se manda el { watch-kind }.
    }
}
set-gets-not = { $you ->
    [yes] Ya no te llega el { watch-kind }.
   *[no] { HAS($who) ->
        [yes] A { $who } ya no le llega el { watch-kind }.
       *[no] Ya no se manda el { watch-kind }.
    }
}
set-empty = { $always ->
    [yes] Hay resumen aunque no haya nada que decir.
   *[no] Sin resumen cuando no hay nada que decir.
}
set-quiet = Silencio{ watch-for } de { CLOCK($from) } a { CLOCK($to) }, menos los recordatorios con hora.
set-quiet-none = Sin horas de silencio{ watch-for }.
set-check = Las tapas se revisan { $days ->
    [1] cada día
   *[other] cada { $days } días
}, antes si hay tormenta.
set-total = { $count ->
    [0] Sin totales en el grupo.
    [1] El total después de cada viaje dicho en el grupo.
   *[other] El total cada { $count } viajes dichos en el grupo.
}
set-nudges = { $count ->
    [0] Lo pendiente no se pregunta.
    [one] Cuando mucho { $count } aviso al día.
   *[other] Cuando mucho { $count } avisos al día.
}
set-ask = Lo pendiente se pregunta a las { CLOCK($time) }.
set-wait = Una pila espera { n-days } antes de darse.
set-freeze = El suelo se hiela como el { $on }.
set-thaw = El suelo se deshiela como el { $on }.
set-place = La granja está en { NUMBER($lat, maximumFractionDigits: 4) } { $south ->
    [yes] S
   *[no] N
}, { NUMBER($lon, maximumFractionDigits: 4) } { $west ->
    [yes] O
   *[no] E
}.
set-place-none = Lugar para el sol: sin poner.
set-lang = { $lang ->
    [es] Español
   *[en] Inglés
}{ $you ->
    [yes] {" "}para ti
   *[no] { HAS($who) ->
        [yes] {" "}para { $who }
       *[no] {" "}para el grupo
    }
}.
settings-owner-only = Eso solo lo cambia el dueño. El resumen, las horas y el silencio propios sí se pueden poner.
settings-say-anew = Un ajuste queda hasta que se diga otro, como "revisar las tapas cada 7 días".
settings-nobody = Aquí no hay nadie que se llame { $name }.
settings-no-chat = { CAP($name) } tiene que escribirme una vez en privado, y entonces llega.
setting-outside = { $said } no puede ser: de { $min } a { $most }.

reminders-none = Sin recordatorios.
reminders-line = { NUMBER($n, maximumFractionDigits: 0) }. { CAP(LONGDAY($on)) }{ HAS($time) ->
    [yes] {" "}a las { CLOCK($time) }
   *[no] {""}
}{ watch-repeats }{ HAS($who) ->
    [yes] , para { $who }
   *[no] {""}
}: { $about }
watch-repeats = { $every ->
    [day] { $step ->
        [1] , cada día
       *[other] , cada { $step } días
    }
    [week] { $step ->
        [1] , cada semana
       *[other] , cada { $step } semanas
    }
    [month] { $step ->
        [1] , cada mes
       *[other] , cada { $step } meses
    }
   *[other] {""}
}
reminders-which = ¿Cuál? Por ejemplo "cancela el recordatorio 1".
reminder-not-yours = Ese recordatorio no es tuyo.
reminder-no-such = No hay un recordatorio así.
reminder-done = Bien: { $about }.

choice-patched = Ya se parchó
choice-walked = Revisado, todo bien
choice-later = Todavía no
nudge-not-yet = Sigue pendiente entonces.
nudge-over = Eso ya está arreglado.

filled = { CAP($pile) } está llena{ $count ->
    [0] {""}
   *[other] , hoy { n-load }
}.

stock-on = { CAP($pile) }: { $things }.
stock-free = Libre: { $things }.
stock-sheet = { $what } (puesto hace { n-days })
stock-unknown = De eso no hay nada en el libro.

choice-done = Hecho
choice-hour = En una hora
choice-tomorrow = Mañana

lapsed = Dejé la pregunta sobre "{ $what }", no se anotó nada. Si importa, hay que decirlo otra vez.
lapsed-many = Dejé { $count } preguntas, la primera sobre "{ $what }". Si importan, hay que decirlo otra vez.
