# La puerta de los mensajes de texto: quién entra por teléfono y por qué se rechaza lo que manda una pasarela.

sms-owner = Buenas{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. Este libro ya tiene dueño. Se empieza con una pila: pila nueva arroyo, 40 por 120. Con "invitar" sale un código para una persona más.
sms-crew = Buenas{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. Basta escribir lo que se hizo, como a un vecino, o preguntar lo que haga falta.
sms-no-owner = Este libro todavía no tiene dueño. Falta el código que mostró el programa al arrancar, y el nombre.
sms-code-spent = Ese código ya se usó o ya venció. El dueño da uno nuevo.
sms-stranger = Este número es solo de la cuadrilla. El dueño da el código.
sms-already = No hace falta código: ya se puede escribir aquí.
sms-invite = Código para una persona{ $role ->
    [viewer] {""}, solo para preguntar
   *[crew] {""}
}, sirve hasta el { $until }: { $code }. Se manda a este número, y después el nombre.
sms-viewer = Buenas{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. Aquí se puede preguntar; anotar es de la cuadrilla.
sms-one = { HAS($name) ->
    [yes] { $name } { $phone }
   *[no] { $phone }
}, { $role ->
    [owner] dueño
    [viewer] solo pregunta
   *[crew] cuadrilla
}
sms-removed = { $name } ya no está. Sus mensajes ya no tienen respuesta.
sms-left = Hecho, ya no se puede escribir en el libro de este rancho. Para volver, el dueño da un código.
sms-owner-stays = Un rancho necesita dueño. Primero hay que nombrar a otro.
sms-trouble = Algo falló aquí. El mensaje está guardado, pero todavía no se anotó nada de él. No hace falta mandarlo otra vez.
sms-about = unos
sms-port = La puerta de los mensajes de texto no se puede abrir en { $host }, puerto { $port }: { $why }. Se puede nombrar otro en SMS_HOST y SMS_PORT.

sms-path = Aquí solo hay { $path }.
sms-method = Solo se acepta POST.
sms-type = El cuerpo tiene que ser application/json.
sms-size = El cuerpo pasa de { $most } bytes.
sms-time = Falta la cabecera Pilehand-Time, o está a más de cinco minutos. Lleva segundos enteros desde 1970.
sms-signature = La cabecera Pilehand-Signature no es el HMAC-SHA256 de la hora, un punto y el cuerpo, en hexadecimal.
sms-replayed = Esta misma petición ya se aceptó. Para volver a intentar hay que firmar de nuevo con el mismo id.
sms-body = El campo { $field } no se puede usar: { $why }.
sms-often = Demasiados mensajes de este número. Se puede volver a intentar en { $seconds } segundos.
sms-busy = El mensaje no se pudo guardar. Hay que intentarlo más tarde.
