# La puerta del canal de Telegram: quién entra, dónde habla y qué lo detiene.

telegram-owner = Buenas, { $name }. Este libro ya tiene dueño. Se empieza con una pila: pila nueva arroyo, 40 por 120. /invite da un código para una persona más; /here, en el grupo de la cuadrilla, me deja trabajar ahí.
telegram-crew = Buenas, { $name }. Basta escribir lo que se hizo, como a un vecino, o preguntar lo que haga falta.
telegram-no-owner = Este libro todavía no tiene dueño. Falta el código que mostró el programa al arrancar.
telegram-code-spent = Ese código ya se usó o ya venció. El dueño da uno nuevo.
telegram-stranger = Este libro es solo de la cuadrilla. El dueño da el código.
telegram-already = No hace falta código, la puerta ya está abierta.
telegram-invite = Código para una persona, sirve hasta el { $until }: { $code }
    { $link }
telegram-invite-private = El código se pide en el chat privado, no aquí.
telegram-here = Este grupo ya es del rancho. Lo que se diga aquí va al libro.
telegram-here-hidden = Este grupo ya es del rancho, pero Telegram solo me muestra los comandos, las respuestas a lo mío y lo que nombra a { $name }. Para que oiga todo hay que hacerme administrador del grupo.
telegram-here-private = /here se escribe en el grupo de la cuadrilla.
telegram-not-here = Este grupo no es del rancho. El dueño puede escribir /here para cambiarlo.
telegram-words-only = Aquí solo se leen palabras. Falta escribir lo que se ve; una foto las puede llevar abajo.
telegram-trouble = Algo falló aquí. El mensaje está guardado, pero todavía no se anotó nada de él. No hace falta mandarlo otra vez.
telegram-settled = Eso ya quedó resuelto.
telegram-token-refused = Telegram no acepta lo que está en TELEGRAM_TOKEN. BotFather da el correcto.
telegram-second-reader = Otro programa lee los mensajes de este bot. Primero hay que pararlo; un bot tiene un solo lector.
