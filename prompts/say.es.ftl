# Palabras y medidas que usan los otros archivos. Se leen en la cabina: corto, llano, sin signos de admiración.

day-short = { $day } de { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[12] diciembre
}
day-long =
    { $weekday ->
        [mon] lunes
        [tue] martes
        [wed] miércoles
        [thu] jueves
        [fri] viernes
        [sat] sábado
       *[sun] domingo
    } { $date }
clock = { $hour }:{ $minute } { $half }

amount-lb = { $n } lb
amount-tons = { $n } { $n ->
    [one] tonelada
   *[other] toneladas
}
weight-lb = { $lb } lb
weight = { WEIGHT($lb) }
about = { ABOUT($lb) }
feet = { $ft } { $ft ->
    [one] pie
   *[other] pies
}
n-load = { $count } { $count ->
    [one] viaje
   *[other] viajes
}
n-bucket = { $count } { $count ->
    [one] cucharón
   *[other] cucharones
}
n-batch = { $count } { $count ->
    [one] mezcla
   *[other] mezclas
}
n-days = { NUMBER($days, maximumFractionDigits: 0) ->
    [one] { NUMBER($days, maximumFractionDigits: 0) } día
   *[other] { NUMBER($days, maximumFractionDigits: 0) } días
}
by-feet = { $widthFt } por { $lengthFt } pies

crop-corn-silage = ensilaje de maíz
crop-haylage = haylage
crop-grass-silage = ensilaje de zacate
crop-small-grain-silage = ensilaje de cereal
crop-sorghum-silage = ensilaje de sorgo
crop-earlage = ensilaje de mazorca
crop-high-moisture-corn = maíz húmedo
crop-of-cut = { WORD("crop", $crop) } de { $cut ->
    [1] primer corte
    [2] segundo corte
    [3] tercer corte
    [4] cuarto corte
    [5] quinto corte
   *[other] corte { $cut }
}
crop-said = { WORD("crop", $crop) }

item-plastic = plástico
item-second-plastic = segundo plástico
item-barrier-film = película de barrera
item-mesh = malla
item-tarp = lona
item-tires = llantas
item-gravel-bags = bolsas de grava
item-gravel = grava
item-dirt = tierra
item-patch-tape = cinta para parchar
# `kind` is the item with hyphens.
things = { HAS($count) ->
    [yes] { things-counted }
   *[no] { WORD("item", $item) }
}{ HAS($widthFt) ->
    [yes] {" "}de { things-size }
   *[no] {""}
}
things-size = { HAS($lengthFt) ->
    [yes] { by-feet }
   *[no] { $widthFt } pies de ancho
}
things-counted = { $count } { $kind ->
    [plastic] { $count ->
        [one] plástico
       *[other] plásticos
    }
    [second-plastic] { $count ->
        [one] segundo plástico
       *[other] segundos plásticos
    }
    [barrier-film] { $count ->
        [one] película de barrera
       *[other] películas de barrera
    }
    [mesh] { $count ->
        [one] malla
       *[other] mallas
    }
    [tarp] { $count ->
        [one] lona
       *[other] lonas
    }
    [tires] { $count ->
        [one] llanta
       *[other] llantas
    }
    [gravel-bags] { $count ->
        [one] bolsa de grava
       *[other] bolsas de grava
    }
    [gravel] { $count ->
        [one] viaje de grava
       *[other] viajes de grava
    }
    [dirt] { $count ->
        [one] viaje de tierra
       *[other] viajes de tierra
    }
    [patch-tape] { $count ->
        [one] rollo de cinta para parchar
       *[other] rollos de cinta para parchar
    }
   *[other] { $item }
}

cause-hail = granizo
cause-wind = viento
cause-animal = animal
cause-machine = máquina
cause-ice = hielo
cause-unknown = no se sabe la causa

animal-raccoon = mapache
animal-dog = perro
animal-cat = gato
animal-deer = venado
animal-bird = pájaro
animal-rat = rata
animal-mouse = ratón
animal-cow = vaca
animal-heifer = vaquilla
animal-calf = becerro
animal-horse = caballo
animal-goat = chivo
animal-pig = marrano
animal-coyote = coyote
animal-starling = estornino
animal-vulture = zopilote
animal-buzzard = zopilote
animal-steer = novillo
animal-bull = toro
animal-fox = zorra
animal-skunk = zorrillo
animal-opossum = tlacuache
animal-possum = tlacuache
animal-badger = tejón
animal-woodchuck = marmota
animal-groundhog = marmota
animal-gopher = tuza
animal-squirrel = ardilla
animal-rabbit = conejo
animal-crow = cuervo
animal-seagull = gaviota
animal-goose = ganso
animal-turkey = guajolote
animal-pigeon = paloma
animal-bear = oso

kind-hail = granizo
kind-wind = viento
kind-rain = lluvia
kind-snow = nieve
kind-freeze = helada
kind-thaw = deshielo
kind-heat = calor

group-milking = en ordeño
group-dry = secas
group-dry-cows = secas
group-heifers = vaquillas
group-calves = becerras
group-beef = ganado de carne
group-steers = novillos
group-fresh = recién paridas
group-close-up = próximas al parto

stage-planned = todavía sin nada
stage-filling = se está llenando
stage-sealed = tapada
stage-feeding = abierta
stage-empty = vacía

event-pile = pila
event-box = caja
event-load = viajes
event-pack = pisado
event-size = medidas
event-cover = tapado
event-damage = daño
event-patch = parche
event-check = revisión
event-weather = clima
event-open = apertura
event-feed = alimento
event-face = cara
event-spoil = echado a perder
event-shift = traspaso
event-empty = vacía
event-test = análisis
event-ration = ración
event-supply = material
event-harvest = cosecha
event-remind = recordatorio
event-note = nota

# Palabras de la finca
words-known = Nuestras palabras: { $list }.
words-none = Todavía no hay palabras propias. Se dice así: cuando decimos el bunk queremos decir north.
word-means = "{ $word }" es { $means }
read-first-words = Era largo: leí solo las primeras 240 palabras. Manda lo demás aparte.
word-taught = De ahora en adelante "{ $word }" es { $means }.
word-forgotten = "{ $word }" ya no es palabra nuestra.
name-trade-word = "{ $name }" es palabra del oficio y no puede ser nombre de una pila. Busca otro.
name-taken = "{ $name }" ya es { $pile }. Busca otro nombre.
remove-unknown = No hay pila ni caja con ese nombre. Hay { $names }.
remove-owner-only = Solo el dueño saca una pila o una caja del libro.
price-owner-only = Solo el dueño pone precios.
price-outside = { $said } no puede ser el precio. Falta otra vez.
price-feed = { CAP(WORD("crop", $of)) } a ${ NUMBER($price, maximumFractionDigits: 2) } la tonelada de ahora en adelante.
price-sheet = Un plástico a ${ NUMBER($price, maximumFractionDigits: 2) } de ahora en adelante.
price-forgotten = Ya no hay precio para { WORD("crop", $of) }.
