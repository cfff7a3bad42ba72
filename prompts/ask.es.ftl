# Preguntas, las palabras de sus botones y las líneas cortas que cierran un asunto.

ask-pile = { CAP($what) }: ¿en qué pila?
ask-onto = { CAP($what) }: ¿a qué pila?
ask-crop = { HAS($pile) ->
    [yes] ¿Qué se echó en { $pile }?
   *[no] ¿Qué alimento es?
}
ask-count = ¿Cuántos viajes{ HAS($crop) ->
    [yes] {" "}de { WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}en { $pile }
   *[no] {""}
}?
ask-amount = { $type ->
    [load] ¿Cuánto se echó{ HAS($pile) ->
        [yes] {" "}en { $pile }
       *[no] {""}
    }?
    [feed] ¿Cuánto se dio{ HAS($pile) ->
        [yes] {" "}de { $pile }
       *[no] {""}
    }?
    [spoil] ¿Cuánto se tiró{ HAS($pile) ->
        [yes] {" "}de { $pile }
       *[no] {""}
    }?
    [shift] ¿Cuánto se pasó{ HAS($pile) ->
        [yes] {" "}de { $pile }
       *[no] {""}
    }?
    [box] ¿Cuánto le cabe?
    [supply] ¿Cuántos?
   *[other] ¿Cuánto?
}
ask-unknown-pile = Ninguna pila se llama { $name }.{ HAS($near) ->
    [yes] {" "}¿Es { $near }?
   *[no] {" "}¿Cuál es?
}
# `slot` is the name of the event's slot.
ask-implausible = ¿{ slot-value }?{ HAS($most) ->
    [yes] {" "}{ CAP($pile) } mide { $most } pies de largo.
   *[no] {" "}Eso queda lejos de lo que se ve en este rancho.
} Falta el número otra vez, o la confirmación.
slot-value = { $slot ->
    [count] { $unit ->
        [bucket] { n-bucket-value }
        [batch] { n-batch-value }
        [load] { n-load-value }
       *[other] { $value }{ HAS($unit) ->
            [yes] {" "}{ $unit }
           *[no] {""}
        }
    }
    [lb] { $value } lb
    [lbPerDay] { $value } lb al día
    [lbPerHead] { $value } lb por vaca
    [tractorLb] { $value } lb por tractor
    [dmPct] { $value } % de materia seca
    [atFt] Cara en { $value } pies
    [leftFt] { $value } pies que quedan
    [widthFt] { $value } pies de ancho
    [lengthFt] { $value } pies de largo
    [heightFt] { $value } pies de alto
    [wallFt] Paredes de { $value } pies
    [ft] { $value } pies
    [inches] { $value } pulgadas
    [layerIn] Capas de { $value } pulgadas
    [mph] { $value } millas por hora
    [degF] { $value } °F
    [hours] { $value } horas
    [head] { $value } vacas
    [tractors] { $value } tractores
    [acres] { $value } acres
    [cut] Corte número { $value }
    [on] { CAP($value) }
   *[other] { $value }{ HAS($unit) ->
        [yes] {" "}{ $unit }
       *[no] {""}
    }
}
n-load-value = { $value ->
    [one] { $value } viaje
   *[other] { $value } viajes
}
n-bucket-value = { $value ->
    [one] { $value } cucharón
   *[other] { $value } cucharones
}
n-batch-value = { $value ->
    [one] { $value } mezcla
   *[other] { $value } mezclas
}
ask-same = Eso ya lo anotó { $who }: { $what }. ¿Los mismos, o más?
ask-face-back = La cara iba en { $was } pies, ¿y ahora en { $now }? La cara no regresa. ¿Cuál es la buena?
ask-others = Eso lo anotó { $who }: { $what }. Falta el sí de { $who } o del dueño. ¿Se cambia?
ask-remove = ¿Saco { $name } del libro, con { $entries ->
    [one] su único registro
   *[other] sus { $entries } registros
}?
ask-in-all = Ya hay { $logged } anotados. ¿{ $said } es el total, o son otros tantos?
ask-meant = ¿Es esto: { $what }?
ask-slot-generic = { $slot ->
    [pile] ¿Qué pila?
    [toPile] ¿A qué pila?
    [name] ¿Cómo se llama?
    [crop] ¿Qué alimento es?
    [count] ¿Cuántos?
    [lb] ¿Cuántas libras?
    [ft] ¿Cuántos pies?
    [unit] ¿Viajes, cucharones o mezclas?
    [on] ¿Qué día?
    [time] ¿A qué hora?
    [material] ¿Con qué se tapó?
    [change] ¿Se puso, se quitó o se enrolló?
    [cause] ¿Qué lo hizo?
    [animal] ¿Qué animal?
    [what] ¿Un hoyo, una rotura o una orilla suelta?
    [where] ¿En qué parte de la pila?
    [finding] ¿Todo bien, o hay problema?
    [kind] ¿Qué clima?
    [why] ¿Se abrió para dar de comer, o para echarle más?
    [atFt] ¿A cuántos pies de donde se abrió primero?
    [leftFt] ¿Cuántos pies quedan?
    [dmPct] ¿Cuánta materia seca, en por ciento?
    [cut] ¿Qué corte?
    [item] ¿Qué fue?
    [about] ¿Recordar qué?
    [head] ¿Cuántas vacas?
    [text] ¿Qué dice la nota?
    [widthFt] ¿Cuántos pies de ancho?
    [lengthFt] ¿Cuántos pies de largo?
    [heightFt] ¿Cuántos pies de alto?
   *[other] ¿Cuánto fue?
}
ask-choose = ¿Cuál?
ask-reply-how = Vale una de estas respuestas, o con palabras propias.

choice-yes = Sí
choice-no = No
choice-new-pile = Pila nueva { $name }
choice-same = Los mismos
choice-more = Más
choice-as-said = { $value }, así es
choice-never-mind = No importa
choice-more-of = { $n } más
choice-in-all = { $n } en total
choice-all = Todas
choice-good = Todo bien
choice-trouble = Hay problema
choice-why-feed = Para dar de comer
choice-why-add = Para echarle más

undone = Se quitó: { $what }.
nothing-to-undo = Ya no hay nada que quitar.
nothing-to-fix = No hay nada así apuntado.
closed-question = Está bien, no se anotó nada.
puzzled = Eso no se entendió. Por ejemplo: { $examples }.
quoted = "{ $text }"
refused-viewer = Aquí se puede preguntar, pero no anotar. El dueño puede cambiar eso.
refused-stranger = Este libro es solo de la cuadrilla. El dueño tiene el código.
refused-owner = Eso solo lo puede hacer el dueño.
not-yours = { HAS($who) ->
    [yes] Eso es de { $who }. Solo { $who } o el dueño lo puede cambiar.
   *[no] Eso lo anotó otra persona. Solo esa persona o el dueño lo puede cambiar.
}
too-long = Pasa de 4,096 letras. Mejor en partes más cortas; no se anotó nada.
question-lapsed = Esa pregunta ya se cerró. Si todavía cuenta, hay que decirlo completo otra vez.
noted-plan = No se anotó, suena a plan.
noted-denial = No se anotó, porque no pasó.
event-invalid = Eso no cabe en el libro ({ WORD("event", $type) }: { $why }). No se anotó nada.
hello =
    Aquí se lleva el libro de las pilas de silo. Tres cosas para escribir:
    { $one }
    { $two }
    { $three }
hello-one = pila nueva norte, 40 por 120
hello-two = 7 viajes de maíz en norte
hello-three = cuántos días quedan en norte


example-pile = pila nueva arroyo, 40 por 120
example-load = 7 viajes de maíz en { $pile }
example-feed = dimos 12,000 libras de { $pile }
example-left = cuántos días quedan en { $pile }
example-status = cómo va { $pile }
example-damage = dos hoyos en { $pile }
example-check = revisé { $pile }, todo bien
