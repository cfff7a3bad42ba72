# Notas de voz: lo que se oyó, lo que se pregunta, y por qué una nota no se pudo oír.

voice-heard = Oí: "{ $text }"
ask-heard-one = ¿Es así: { $what }?
# `list`: the values that one slot may have had, with "or" between them.
ask-heard-slot = ¿{ $list }?
ask-heard = ¿Cuál era?
heard-value = { $slot ->
    [pile] { $value }
    [toPile] { $value }
   *[other] { slot-value }
}
voice-again = No estoy seguro de haber oído bien. Dilo otra vez, o escríbelo.
voice-unclear = No se entendió. Dilo otra vez más despacio, o escríbelo. Esta computadora solo entiende inglés hablado.
voice-nothing = No se oyó nada en esa nota de voz. Acerca el teléfono, o escríbelo.
voice-no-spanish = Esta computadora solo entiende inglés hablado. Escríbelo, por favor: en español se lee bien.
voice-off = Aquí no se pueden oír notas de voz. Escríbelo, por favor.
voice-too-long = Esa nota de voz dura más de { $most } segundos. Mándala en partes.
voice-too-large = Esa nota de voz es demasiado grande. Mándala en partes.
voice-unreadable = Esa nota de voz no se pudo leer ({ $why }). Mándala otra vez, o escríbelo.
voice-lost = Esa nota de voz no se pudo bajar. Mándala otra vez, o escríbelo.
voice-slow = Tardó demasiado en oírse esa nota. Mándala en partes, o escríbelo.
voice-trouble = Falló el reconocedor de voz ({ $why }). Escríbelo, por favor; el dueño puede revisarlo.

ear-program-missing = El reconocedor { $name } no está instalado. En Debian: apt-get install pocketsphinx pocketsphinx-en-us
ear-model-missing = No hay un modelo de voz que sirva en { $folder } ({ $why }). En Debian: apt-get install pocketsphinx-en-us
