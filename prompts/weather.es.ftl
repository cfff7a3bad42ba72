# Tiempo de fuera: solo se pregunta.

alert-past = { $when ->
    [night] Anoche hubo aviso de
    [today] Hoy hubo aviso de
   *[day] El { $on } hubo aviso de
} { $kind ->
    [hail] granizo
    [wind] viento fuerte
   *[rain] lluvia fuerte
} cerca del rancho. { $kind ->
    [rain] ¿Cuánto cayó? Hay que revisar
   *[other] ¿Llegó hasta acá? Hay que revisar
} { $piles }.
alert-ahead = Hay aviso de helada para { $on }. Conviene levantar malla y costales de lo que se va a dar pronto: ya pegados no se quitan.
alert-none = Bien, nada que anotar.
choice-hail = Sí, granizo
choice-wind = Sí, mucho viento
choice-none = Aquí no
choice-inches = { $inches } pulg
