# La puerta del canal de Telegram: quién entra, dónde habla y qué lo detiene.

telegram-owner = Buenas, { $name }. Este libro ya tiene dueño. Se empieza con una pila: pila nueva arroyo, 40 por 120. /invitar da un código para una persona más; /aqui, en el grupo de la cuadrilla, me deja trabajar ahí.
telegram-crew = Buenas, { $name }. Basta escribir lo que se hizo, como a un vecino, o preguntar lo que haga falta.
telegram-viewer = Buenas, { $name }. Aquí se puede preguntar; anotar, solo la cuadrilla.
telegram-no-owner = Este libro todavía no tiene dueño. Falta el código que mostró el programa al arrancar.
telegram-code-spent = Ese código ya se usó o ya venció. El dueño da uno nuevo.
telegram-stranger = Este libro es solo de la cuadrilla. El dueño da el código.
telegram-already = No hace falta código: ya se puede escribir aquí.
telegram-invite = { $role ->
    [viewer] Código para una persona que solo pregunta
   *[crew] Código para una persona
}{ HAS($name) ->
    [yes] {" "}({ $name })
   *[no] {""}
}, sirve hasta el { $until }: { $code }
    { $link }
telegram-invite-private = El código se pide en el chat privado, no aquí.
telegram-here = Este grupo ya es del rancho. Me llega todo lo que se dice aquí: lo del trabajo va al libro y la plática se deja. Para que me llegue menos: quitarme de administrador y activar la privacidad de grupos en BotFather. /fuera lo termina.
telegram-here-hidden = Este grupo ya es del rancho, pero solo me llegan los comandos, las respuestas a lo mío y lo que nombra a { $name }. Para que oiga todo: hacerme administrador, o quitar la privacidad de grupos en BotFather y agregarme otra vez. /fuera lo termina.
telegram-here-private = Eso se escribe en el grupo de la cuadrilla.
telegram-not-here = Este grupo no es del rancho. El dueño puede escribir /aqui para cambiarlo.
telegram-away = Este grupo ya no es del rancho. Lo anotado queda en el libro.
telegram-added = Con /aqui trabajo en este grupo. Mientras tanto, nada de lo que se diga aquí sale de aquí.
telegram-added-crew = Cuando el dueño escriba /aqui trabajo en este grupo. Mientras tanto, nada de lo que se diga aquí sale de aquí.
telegram-words-only = Aquí solo se leen palabras. Falta escribir de qué se trata.
telegram-picture-words = ¿Qué muestra la foto? Se manda con palabras abajo, como: dos hoyos junto a la pared. O como respuesta al mensaje al que corresponde.
telegram-picture-kept = La foto queda guardada con eso.
telegram-place-known = Ya se sabe dónde está el rancho. Para cambiarlo se escriben su latitud y su longitud, así: estamos en 43.07, -89.40.
telegram-no-ear = Aquí no se oyen las notas de voz. Hay que escribirlo, por favor.
telegram-forward-known = Eso ya está en el libro.
telegram-crew-list = { $people }
    Para sacar a alguien: /quitar. Para cambiar lo que puede: /papel, el nombre, y dueño, cuadrilla o mirar.
telegram-crew-one = { $name }: { $role ->
    [owner] dueño
    [viewer] puede preguntar
   *[crew] cuadrilla
}
telegram-role-how = Se escribe así: /papel Beto mirar. Puede ser dueño, cuadrilla o mirar.
telegram-role-set = { $name } ahora { $role ->
    [owner] es dueño
    [viewer] solo pregunta, no anota
   *[crew] es de la cuadrilla
}.
telegram-owner-stays = El rancho necesita un dueño. Primero hay que hacer dueño a otro: /papel Beto dueño.
telegram-nobody-else = Todavía no hay nadie más. /invitar da un código.
telegram-nobody = Nadie se llama así aquí. /cuadrilla da la lista.
telegram-remove-whom = ¿Quién sale de la cuadrilla?
telegram-removed = { $name } ya no está. Lo que anotó { $name } queda en el libro.
telegram-leave-sure = ¿Salir de la cuadrilla? Para volver hace falta un código nuevo.
telegram-left = Hecho, { $name }. Lo que se anotó queda en el libro.
telegram-unreachable = { $name } me bloqueó en Telegram, así que no le llega nada de mí hasta que { $name } me escriba otra vez.
telegram-export-private = El libro solo sale en el chat privado.
telegram-export-begun = Escribiendo { $count } registros, un momento.
telegram-export = El libro entero, { $count } registros, uno por renglón.
telegram-trouble = Algo falló aquí. El mensaje está guardado, pero todavía no se anotó nada de él. No hace falta mandarlo otra vez.
telegram-settled = Eso ya quedó resuelto.
telegram-token-refused = Telegram no acepta lo que está en TELEGRAM_TOKEN. BotFather da el correcto.
telegram-second-reader = Otro programa lee los mensajes de este bot. Primero hay que pararlo; un bot tiene un solo lector.
telegram-webhook-refused = Telegram no acepta la dirección de TELEGRAM_WEBHOOK ({ $why }).
telegram-webhook-port = No se puede abrir el puerto de TELEGRAM_WEBHOOK_LISTEN ({ $why }).

menu-today = Lo que se hizo hoy
menu-left = Cuántos días dura el alimento
menu-covers = Cuándo se revisaron las tapas, y qué falta
menu-stock = Plástico, llantas y cinta que hay
menu-undo = Quitar lo último anotado
menu-help = Lo que se puede decir
menu-invite = Un código para una persona más
menu-crew = Quién está, y qué puede
menu-export = El libro entero en un archivo
