# Lo que falló alrededor del libro, y qué hacer. Una línea cada uno; nombres y rutas tal cual.

folder-unwritable = No se puede escribir en la carpeta { HAS($folder) ->
    [yes] { $folder }
   *[no] del libro
}. Hay que dar permiso, o poner otra en PILEHAND_DATA.
store-locked = Este libro ya está abierto{ HAS($folder) ->
    [yes] {" "}en { $folder }
   *[no] {""}
}. Primero hay que cerrar el otro Pilehand, o poner otra carpeta en PILEHAND_DATA.
store-newer = Este libro lo escribió un Pilehand más nuevo{ HAS($found) ->
    [yes] {" "}(versión { $found }{ HAS($known) ->
        [yes] , este conoce la { $known }
       *[no] {""}
    })
   *[no] {""}
}. Hay que actualizar este; en el libro no cambió nada.
store-corrupt = El libro no se puede leer{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. Hay que poner la última copia; no cambió nada.
zone-unknown = No hay zona horaria { $zone }. Sirve un nombre como America/Chicago.
config-wrong = { $name } no sirve: { $why }.
bad-json = Esta línea no es JSON{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. Un objeto en cada línea.
bad-line-field = El campo { $field } no sirve: { $why }.
clock-backwards = La hora "at" es anterior a la de la línea pasada{ HAS($last) ->
    [yes] {" "}({ $last })
   *[no] {""}
}. Dentro de un rancho nunca regresa.
store-full = El disco está lleno{ HAS($folder) ->
    [yes] {" "}en { $folder }
   *[no] {""}
}. Hay que hacer lugar; lo escrito antes está a salvo.
store-trouble = No se puede escribir en el libro{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. Lo escrito antes está a salvo.
entry-unreadable = El renglón { $n } de { $farm } no se puede leer ({ $why }). Hay que poner la última copia, o actualizar; no cambió nada.
entry-refused = El renglón { $n } de { $farm } no está completo ({ $why }) y no se escribió.
entry-order = El renglón { $n } de { $farm } viene fuera de orden, sigue el { $wanted }; no se escribió.
