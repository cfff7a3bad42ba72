# Las fórmulas en que se apoyan las respuestas: para qué son, su nombre y su fuente. Lo que es de memoria lo dice.

how-by = Según: { $formulas }.
formula-fused = viajes, comida y cara, cada uno según su error (Kalman 1960)
formula-balance = lo que hay menos los días por lo que se usa (balance de masa)
formula-chained = pérdidas una tras otra (Hay & Forage Grower 3112; pilas 18 % en promedio, Muck)
formula-muck-holmes = pisado de Muck y Holmes (2000, números de memoria; explica una quinta parte)
formula-eight-hundred = la regla de 800 (Kaatz, Michigan State)
formula-measured = peso que entró entre el volumen
formula-survey = lo que se encontró en silos de ranchos (de memoria)
formula-richard = aire (Richard 2004, de memoria; 40 % cuando mucho, Holmes y Muck, de memoria)
formula-ruppel = pérdida según la densidad en 180 días (Ruppel 1992)
formula-top = pérdida bajo el plástico (Wilkinson y Fenlon 2014)
formula-bastiman = escurrimiento según la materia seca (Bastiman 1976, de memoria)
formula-face-rate = comida al día entre la densidad y la cara
formula-face-least = por lo menos 4 pulgadas con calor y 3 con frío (Nebraska), mejor 10 y 6 (Holmes, Wisconsin)
formula-arc = arco de parábola y largo por encima de las puntas (geometría)
formula-tires = llantas de 26 pulgadas que se tocan (Holmes, Wisconsin); separadas, 10 en 100 pies cuadrados (Lancaster Farming)
formula-second-sheet = película barrera contra plástico solo (Wilkinson y Fenlon 2014)
formula-sizing = la cara según comida, densidad y avance (Holmes, Wisconsin), lados de 3 a 1 (Muck)
formula-layers = capas parejas bajo una parábola (geometría)
formula-boxes = cuenta por caja, corregida con las boletas de báscula
formula-three-weeks = tres semanas para fermentar y para que se vaya el gas (Penn State, Michigan State)
formula-walks = una semana entre revisiones (costumbre, sin fuente)
