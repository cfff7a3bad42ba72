# Tiempo de fuera: solo se pregunta.

alert-kind = { $kind ->
    [hail] Granizo
    [wind] Viento fuerte
    [rain] Lluvia fuerte
   *[freeze] Helada
}
alert-past = Hubo aviso de { $kind ->
    [hail] granizo
    [wind] viento fuerte
    [rain] lluvia fuerte
   *[freeze] helada
} cerca del rancho, { $on }. ¿Llegó hasta acá? Hay que revisar { $piles }.
alert-ahead = Hay aviso de helada para { $on }. Conviene levantar malla y costales de lo que se va a dar pronto: ya pegados no se quitan.
