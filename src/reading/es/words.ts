/**
 * The Spanish words of the trade and of the yard, as Mexican and Central American crews type them: no accents (they are
 * folded before), usual slips of spelling beside the right form. Same keys as the English table.
 */
export const ES_WORDS: Record<string, string> = {
  'v:put':
    'vine a dejar, vine a tirar, vine a echar, fui a dejar, fuimos a dejar, venimos a dejar, vinimos a dejar, vinieron a dejar, pon, ponme, volvimos a poner, volvi a poner, volvieron a poner, volvimos a echar, acabamos de poner, acabo de poner, acabamos de echar, acabo de echar, acabamos de meter, terminamos de echar, le eche, le echamos, les eche, le puse, le pusimos, le echaron, le puso, bajamos, baje, bajaron, descargue, puse, pusimos, puso, pusieron, pusistes, eche, echamos, echo, echaron, meti, metimos, metio, metieron, vacie, vaciamos, vacio, vaciaron, descargue, descargamos, descargo, descargaron, tire, tiramos, tiraron, lleve, llevamos, llevaron, llevo, agregue, agregamos, poniendo, echando, entraron, cayeron, llegaron, van, llevamos puestos, acarree, acarreamos, trajimos, traje, trajeron, subi, subimos, subieron, hemos puesto, se echaron, se pusieron, se metieron, puce, pusimo, ponimos, dejamos, deje, dejaron, se puso, se echo, he puesto, aviente, aventamos, puci, tiro, dimos, di, apunta, apuntame, anota, anotame, apunte, anote, descarge, baciamos, bacie, hechamos, heche, hecharon, amontonamos, metiendo, jalamos, jale, jalaron, agrege, puesto, puestos, puesta, puestas, trajo, dejo, acabo de vaciar, acabamos de vaciar, acaba de vaciar, acabo de descargar, acabamos de descargar, acaba de descargar, acabo de meter, acabo de tirar, acabamos de tirar, acabo de bajar, acabamos de bajar, arrimamos, arrime, arrimaron, arrimo, vaciadas, vaciados, descargadas, descargados, acarreadas, acarreados, echadas, echados, tendimos, tendi, tendieron, extendimos, extendi, estiramos, estire, apuntenle, apuntale, apuntele, apunten, anotenle, anoten, anotele, anotale',
  'v:feed':
    'les toca a, les tocan, le toca a, les toca, le damos, les damos, damos, le dimos, les dimos, dimos, le di, les di, di, dieron, le dieron, les dieron, dio, le dio, les dio, alimente, alimentamos, alimentaron, dimos de comer, di de comer, le eche, les eche, le echamos, les echamos, comieron, se comieron, sacamos pa, servi, servimos, le serví, les servimos, dando, le echaron, les echaron, se le dio, se les dio, se dieron, gastamos, le dimo, le dimos de comer, les dimos de comer, dar de comer, repartimos, reparti, saque, sacamos, sacaron, saco, le sacamos, le saque',
  'b:feed': 'dale, dar, dales, alimentar',
  'v:take':
    'quitado, quitada, quitados, quitadas, sacada, saque, sacamos, sacaron, saco, quite, quitamos, quitaron, quito, le quitamos, le quite, le saque, le sacamos, cortamos, corte, tumbamos, tumbe, rebanamos, bajamos, sacando, le sacaron, le quitaron, comimos, avanzamos, avance, raspamos, agarramos, le baje, le bajamos, le bajaron, le bajo, rebane, rebanaron',
  'v:cover':
    'quedaron tapados, quedaron tapadas, tape, tapamos, taparon, tapo, cubri, cubrimos, cubrio, cubrieron, tapando, quedo tapada, quedo tapado, ya quedo tapada, ya esta tapada, ya esta tapado, selle, sellamos, sellaron, cubriendo, enlonamos, se tapo, quedo cubierta, quedo cubierto, quedo sellada, quedo sellado, esta tapado, esta tapada, tapado, tapada, le pusimos el plastico, tapamo, encobijado, encobijada, encobije, encobijamos, quedo encobijado, quedo encobijada, ya quedo encobijado, ya quedo encobijada, arropamos, arrope, forramos, forre, envolvimos, quedo envuelto, quedo envuelta, acabamos de tender, acabo de tender, acabamos de tapar, acabo de tapar, acaban de tapar',
  'b:cover': 'tapar, cubrir, tapa, hay que tapar',
  'v:uncover': 'destape, destapamos, destaparon, destapo, descubrimos, descubri, destapado, destapando',
  'v:roll':
    'hice pa atras, hicimos pa atras, hizo pa atras, hicieron pa atras, jale pa atras, jalamos pa atras, recorri pa atras, enrolle, enrollamos, enrollaron, enrollo, doble, doblamos, doblaron, recorri, recorrimos, recogimos, recogi, jale, jalamos, jale pa tras, jalamos para atras, hicimos para atras, hice para atras, levantamos, destapamos, destape, retiramos, recorrio, arrollamos, hacer para atras, hicimos pa tras, hice pa tras',
  'v:patch':
    'quedaron tapados, quedaron tapadas, parche, parchamos, parcharon, parcho, parchie, parchee, parcheamos, remende, remendamos, repare, reparamos, repararon, arregle, arreglamos, arreglaron, tape con cinta, tapamos con cinta, pegue, pegamos, puse cinta, le puse cinta, pusimos cinta, le pusimos cinta, parchado, parchada, parchados, parchadas, reparado, reparada, reparados, reparadas, remendado, remendada, remendados, remendadas, arreglado, arreglada, arreglados, arregladas, ya parche, parchando, parchaos, emparche, encinte, tape los hoyos, cerre, cerramos, ya quedaron parchados, quedaron parchados, quedo parchado, quedo parchada, tape, tapamos, taparon, componer, compuse, compusimos, le pegue cinta, les pegue cinta, pegue cinta, pegamos cinta, le pegamos cinta, pegaron cinta, le pego cinta',
  'b:patch': 'parchar, reparar, arreglar, parcha',
  'v:check':
    'pase viendo, pase a ver, pase revisando, pasamos viendo, pasamos a ver, pasamos revisando, anduve viendo, fui a ver, fuimos a ver, di la vuelta viendo, le di la vuelta, le dimos la vuelta, le di una vuelta, le dimos una vuelta, le di vuelta, le dimos vuelta, una checada, le dimos una checada, le di una checada, le echamos un ojo, revise, revisamos, revisaron, reviso, cheque, checamos, checaron, checo, di la vuelta, dimos la vuelta, camine, caminamos, inspeccione, mire, miramos, vi, vimos, le eche un ojo, chequie, chequee, chequeamos, checke, recorri, recorrimos, rebise, rebisamos, revisando, anduve viendo, fui a ver, fuimos a ver, pase a ver, checando, ya revise, andube viendo, revisados, revisadas, checkie, chekie, cheke, se ve, se ven, di una vuelta, dimos una vuelta, les di la vuelta, les di una vuelta, les dimos la vuelta, les dimos una vuelta, fui a revisar, fuimos a revisar, fui a checar, fuimos a checar, pase a revisar, pasamos a revisar, vine a revisar',
  'b:check': 'revisar, checar, revisa, checa',
  'v:pack':
    'pasando, pasandole, pasando el tractor, le pasamos el tractor, pasamos el tractor, pisando, pisamos, pise, apisonando, apisonamos, compactando, compactamos, compacte, aplastando, aplastamos, pizando, pisaron, apretando, apelmazando, de pisada, pisadas, una pisada, pisoneada, de pisar, pisoteando, apretamos, apretandole, apisona, pisa y pisa, le pisamos, le pise, pisandole',
  'v:open':
    'abri, abrimos, abrio, abrieron, empezamos, empece, abriendo, destape, destapamos, se abrio, habrimos, habri, abierto, ya abrimos, empezamos a sacar de, comenzamos, empezamos a dar, reabrimos, volvimos a abrir, se empezo',
  'b:open': 'abrir, abre, abran',
  'v:push':
    'empuje, empujamos, empujaron, empujo, movi, movimos, movieron, moviendo, pase, pasamos, recorrimos, arrimamos, arrime, juntamos, pasaron, moví, empujando',
  'v:pitch':
    'tire, tiramos, tiraron, tiro, bote, botamos, botaron, aventamos, aviente, aventaron, deseche, desechamos, quite, quitamos, sacamos, saque, sacaron, limpie, limpiamos, tirando, se tiro, se tiraron, a la basura',
  'v:test':
    'salio, salio en, salio a, salio con, dio, analisis, prueba, analisis de, la prueba, probamos, probe, examen, tiene, trae, viene, el laboratorio, laboratorio, muestra, anda en, esta en, esta a, marco, midio, salieron, me dio, nos dio, calo, cale, calamos',
  'v:buy':
    'compre, compramos, compraron, compro, llegaron, llego, traje, trajimos, trajo, consegui, conseguimos, recibimos, nos llegaron, nos trajeron, trajeron, nos llego, vinieron',
  'v:have':
    'tenemos, hay, quedan, tengo, nos quedan, ay, conte, contamos, quedan todavia, tenemos todavia, todavia hay, todavia tenemos, son, solo tenemos, nomas tenemos, nada mas tenemos, solo hay, nomas hay, solo nos quedan, nomas nos quedan',
  'v:use': 'use, usamos, gaste, gastamos, usaron, gastaron, ocupamos, ocupe, se usaron, se gastaron, perdimos',
  'v:measure':
    'medi, medimos, mide, midio, midieron, quedo, quedo de, salio, salio de, son, es, tiene, mido, medida, mides, miden, pase la cinta, pasamos la cinta, le pase la cinta, le pasamos la cinta, medi con la cinta',
  'v:remind':
    'recordame, acordame, avisame, poneme un recordatorio, haceme acordar, ponme un recordatorio, pon un recordatorio, hazme un recordatorio, avisame, avisanos, avisenme, avisenos, recuerdame, recordarme, acuerdame, recuerdanos, recuerda, que no se me olvide, recuerdenme, recordatorio, acuerdenme, recuerdele, recuerdale, hazme acordar, no me dejes olvidar, acuerdanos, acuerdame de',
  'v:note': 'nota, apunta, anota, notas, apuntale, para que quede, apunta esto, anota esto',
  'v:new':
    'nueva pila, pila nueva, nuevo monton, empezamos pila, empezamos una pila, empezar pila, haz una pila, hacer una pila, otra pila, nueva, nuevo, empezamos una pila nueva, empezamos pila nueva, vamos a hacer una pila, empiezo pila, agrega una pila, monton nuevo, silo nuevo, crear pila, crea una pila, empece una pila, empece pila, abre una pila nueva, agrega pila, pila nueva que se llama',
  'v:call':
    'que se llame, se llame, que se va a llamar, se va a llamar, llamada, llamado, se llama, que se llama, le decimos, le vamos a decir, de nombre, nombre, le pusimos',
  'v:alias':
    'tambien le decimos, o, tambien llamada, tambien llamado, alias, tambien se llama, le dicen, le decimos, tambien le dicen, tambien le decimos asi, todos le dicen, le dicen tambien, los muchachos le dicen, tambien conocida como, tambien conocido como, y le decimos, y le dicen, los muchachos tambien le dicen',
  'v:weigh':
    'traia, traian, pesaba, pesaban, pesamos, pesaron, pese, peso, pesó, boleta, boleta de la bascula, ticket, la bascula dice, en la bascula, dio en la bascula',
  'v:hold': 'carga, cabe, caben, lleva, agarra, hace, pesa, trae, aguanta, le caben, le cabe, cargan, pesan',
  'v:milk':
    'en ordeno, en ordeña, ordeno, ordeñando, ordenando, ordeñamos, ordenamos, en ordeña, en ordena, estamos ordeñando, en la ordeña, ordena, ordeña, ordenamos ahora, hordenando, hordeñando, hordenamos',
  'v:break':
    'se metieron las vacas, se metio una vaca, se subieron las vacas, se subio una vaca, se metio la vaca, anduvieron las vacas, le pegue a, le pegue con, le pegue, le pego a, le pego con, le pegamos con, le di con, le dio con, le dimos con, choque con, ponchamos, ponche, rasgamos, rasgue, picamos, agujereamos, rajamos, raje, desgarramos, le pegamos, le dimos con, chocamos, atropello, hizo, hicieron, rompio, rompieron, rasgo, rasgaron, pico, picaron, mordio, mordieron, entro, entraron, se metio, se metieron, abrio, agujero, agujeraron, agujereo, araño, aranaron, arano, destrozo, rajo, rajaron, poncho, poncharon, pego, piso, pisaron, rompi, rompimos, hice, hicimos, se rompio, se rajo, perforo, perforaron, quebro, quebraron, despedazo, despedazaron, escarbo, escarbaron, rompiendo, rompen, jalaron, jalo, choco, le pegue, le pego, le hizo, le hicieron, fue, fueron, roto, anduvo, anduvieron, andubo, andubieron, haciendo, rasguño, rasguno, se comieron, comio, andan, trono, atraveso, dejo, dejaron, metio, dano, danaron, agarro, picotearon, picoteo, picoteado, corto el, corto la, cortaron el, se salieron las vacas, se salio una vaca, se escaparon las vacas, se brincaron las vacas, se saltaron las vacas, se salieron los becerros, se salieron las vaquillas, se metieron las vaquillas, se subieron las vaquillas, se metieron los becerros, se subieron los becerros, se metieron otra vez',
  'v:lift':
    'levanto, levantaron, se levanto, volo, se volo, destapo, se destapo, se solto, solto, despego, se despego, aflojo, se aflojo, se alzo, alzo, voló, volaron, arranco, se lo llevo, se llevo, se zafo, zafo, destapa, desprendio, se desprendio, se desamarro, volteo',
  'unit:load':
    'trocada, trocadas, camionada, camionadas, carretada, carretadas, carretonada, carretonadas, troconada, troconadas, volteada, volteadas, viaje, viajes, viages, biajes, viajecitos, carga, cargas, troca, trocas, camion, camiones, camionada, camionadas, remolque, remolques, carreta, carretas, vagon, vagones, carro, carros, trailas, traila, carretada, carretadas, vueltas, vuelta, cajas, caja, caja de, tráiler, trailer, volteo, volteos, trailes, viaj, biaje, vaje, vajes, boxes, góndolas, gondola, gondolas, remolkes, cargaz, carreton, carretones, troque, troques, troquadas, vjs, vje, vjes, vj, viajecito, viajito, viajitos, carguita, carguitas, trocadita, trocaditas, gondolitas',
  'unit:bucket':
    'cucharon, cucharones, bote, botes, cubeta, cubetas, boteadas, boteada, palada, paladas, cucharonazos, balde, baldes, palas, pala, cuchara, cucharas, cucharada, cucharadas, cucharónes, botesadas, cubetadas, cubetada, baldecito, baldecitos, cubetita, cubetitas, botecitos, botecito',
  'unit:batch':
    'mezcla, mezclas, revoltura, revolturas, mezcladas, mezclada, carro mezclador, mixer, batida, batidas, tandas, tanda, mescla, mesclas',
  'unit:lb': 'libra, libras, lbs, libraz, lb, livras',
  'unit:ton': 'tonelada, toneladas, ton, tons, tonelads, tonelaadas, toneladitas',
  'unit:tonne': 'toneladas metricas, tonelada metrica, metricas',
  'unit:kg': 'kilos, kilo, kilogramos',
  'unit:ft': 'pie, pies, piez',
  'unit:in': 'pulgada, pulgadas, pulgada de, pulg',
  'unit:m': 'metros, metro',
  'unit:pct': 'por ciento, porciento, por siento, %',
  'unit:cwt': 'quintal, quintales, qq, quintalitos',
  'unit:yd': 'yardas, yarda',
  'unit:mm': 'milimetros, milimetro',
  'unit:cm': 'centimetros, centimetro',
  'unit:mph': 'millas por hora, millas x hora, mph, millas, millas la hora, millas por ora',
  'unit:degF': 'grados, grados bajo cero, bajo cero, grado',
  'unit:head': 'vacas, cabezas, vaca, vakas, bacas, animales, vaquillas, becerras, vaqitas',
  'unit:hour': 'horas, hora',
  'unit:acre': 'acres, acre',
  'unit:tractor': 'tractores, tractor, tratores, trator, tractors, maquinas',
  'unit:day': 'dias, dia',
  'unit:month': 'meses, mes',
  each: 'cada uno, cada una, c/u, cada viaje, por viaje, en cada uno, en cada una, cada cual, por carga, cada carga, a cada uno, por caja',
  'per:day': '/ dia, al dia, por dia, diario, diarias, diarios, diariamente, cada dia, x dia, todos los dias, a diario',
  'per:head': '/ vaca, por vaca, x vaca, por cabeza, x cabeza, cada vaca, a cada vaca, por animal, a cada una',
  'per:hour': 'por hora, x hora, la hora',
  'dim:width': 'de ancho, ancho, ancha, a lo ancho, de anchura, hancho, de ancho abajo, abajo de ancho, en la base',
  'dim:length': 'de largo, largo, larga, a lo largo, de longitud',
  'dim:height': 'de alto, alto, alta, de altura, altura',
  'dim:top': 'arriba, de ancho arriba',
  'dim:wall': 'muro, de pared, pared, paredes, pared de, paredes de',
  'dim:layer': 'capas, capa, de grueso, gruesas, en capas, capitas',
  'dm:dry': 'materia seca, ms, de materia seca, materia ceca, seca, seco, de seca, mat seca, matria seca, m s',
  'dm:wet': 'humedad, de humedad, umedad, de umedad, agua, mojado, humeda, de humeda, umeda, humedad de',
  'basis:dry': 'materia seca, en seco, base seca',
  'basis:as fed': 'en humedo, tal cual, como se da',
  'crop:corn silage':
    'maiz, mais, silo de maiz, silaje de maiz, ensilaje de maiz, elote, milpa, silo, silaje, ensilado de maiz, maiz picado, ensilado, ensilaje, maíz ensilado, mahiz, maiz ensilado, maz, mays, rastrojo, planta de maiz',
  'crop:haylage':
    'alfalfa, henolaje, pastura, alfalfa picada, alfalfa ensilada, alfalfa molida, silaje de alfalfa, silo de alfalfa, ensilaje de alfalfa, henilaje, jeno, heno, alfafa, alfalfas, heilage, jeilach, corte, alfarfa, ensilado de alfalfa, heno picado, la alfalfa, al falfa',
  'crop:grass silage':
    'zacate, sacate, pasto, zacate picado, silaje de zacate, silo de zacate, silo de pasto, ensilaje de pasto, silaje de pasto, sacate picado',
  'crop:small-grain silage':
    'avena, centeno, trigo, cebada, triticale, silaje de avena, silo de avena, silaje de centeno, abena, silo de centeno, silaje de trigo',
  'crop:sorghum silage': 'sorgo, silo de sorgo, silaje de sorgo, zorgo, sorgo forrajero',
  'crop:earlage': 'mazorca, silo de mazorca, mazorca molida',
  'crop:high-moisture corn': 'maiz humedo, maiz de alta humedad, grano humedo',
  cutword: 'corte, cortes, cosecha, korte, corthe, cortada, cortadas',
  'say:ordinal:1': 'primer, primera, primero, primr',
  'say:ordinal:2': 'segundo, segunda, segun, cegundo',
  'say:ordinal:3': 'tercer, tercera, tercero, terser, tercr',
  'say:ordinal:4': 'cuarto, cuarta, cuartto',
  'say:ordinal:5': 'quinto, quinta',
  'say:ordinal:6': 'sexto, sexta',
  'mat:plastic':
    'nylon, nailon, nilon, naylon, plastico, plasticos, lona plastica, hule, hules, nylon, nailon, naylon, plastiko, platico, plasticco, cubierta, cubiertas, nilon, plastikos, tapa, tapadera, pelicula, plstico, polietileno',
  'mat:second plastic':
    'segundo plastico, otro plastico, plastico de encima, doble plastico, segunda capa de plastico, segunda lona, segunda capa, otro plastico encima',
  'mat:barrier film':
    'barrera de oxigeno, pelicula de barrera, pelicula barrera, film barrera, plastico delgado, plastico barrera, barrera',
  'mat:mesh': 'malla, mallas, red, redes, maya, mayas, malla de proteccion',
  'mat:tarp': 'lona, lonas',
  'mat:tires':
    'llantas, llanta, yantas, yanta, neumaticos, llantaz, gomas, llantas viejas, ruedas, lantas, llants, llantas sueltas, llantas sobrantes',
  'mat:gravel bags':
    'bolsas de grava, costales de grava, costales de graba, costales, sacos de grava, bolsas de arena, costales de arena, sacos, bolsas, costalitos, bultos de grava, bultos, costal, costalitos de grava, saquitos, sacos de arena, bolsas con grava, costales con grava, costales con arena, bolsitas de grava, vlsas de grava, bolzas de grava',
  'mat:gravel': 'grava, arena, piedrilla, piedra, graba',
  'mat:dirt': 'tierra',
  'item:patch tape':
    'cinta pa parchar, cinta para parchar, rollos de cinta pa parchar, rollos de cinta para parchar, rollo de cinta pa parchar, cinta pa parchar, cinta, cintas, rollos de cinta, rollo de cinta, cinta de parchar, cinta para parchar, cinta para silo, tape, sinta, cinta para plastico',
  'what:hole':
    'hoyo, hoyos, agujero, agujeros, hoyitos, hoyito, oyos, oyo, ollos, ollo, joyos, ojos, boquete, boquetes, perforaciones, agugeros, agujeritos, ahujeros, hollos, picotazos, ponchaduras',
  'what:tear':
    'rajada, rajadas, rasgada, rasgadas, rotura, roturas, rompida, rasgon, rasgones, desgarre, desgarrada, rajadura, rajaduras, rasgadura, rasgaduras, cortada, cortadas, roto, rota, rompidas, rajado, ragada, rasguño, rasguños, rasgadas, rasguno, rajon, rajones, rajadon',
  'what:loose edge':
    'suelto, suelta, orilla suelta, orilla levantada, esquina suelta, esquina levantada, despegado, despegada, la orilla se levanto, levantado, levantada, destapado, destapada, flojo, floja, volando, zafado, zafada, amanecio volada, amanecio volado, amanecio levantada, amanecio levantado, amanecio destapada, amanecio destapado, volada de, volado de',
  'what:water': 'agua, charco, charcos, agua encharcada, goteando, encharcado, encharcada',
  'cause:hail': 'granizo',
  'cause:wind': 'viento, aire, ventarron, aigre, vientos',
  'cause:machine':
    'tractor, cargador, payloader, maquina, troca, camion, loader, minicargador, pala, bobcat, skid, cucharon, trator, remolque, retroexcavadora, skid steer, la pala',
  'cause:ice': 'pegada con hielo, pegado con hielo, congelado al piso, congelada al piso, hielo, ielo, yelo',
  'animal:raccoon': 'mapache, mapaches, mapachi, mapachis, mapachez',
  'animal:dog': 'perro, perros, pero, perra, perrito, chucho, chuchos',
  'animal:cat': 'gato, gatos, gata, gatitos',
  'animal:deer': 'venado, venados, benado, benados',
  'animal:bird': 'pajaro, pajaros, aves, ave, pajaritos, zanates, zanate, pajaroz',
  'animal:crow': 'cuervo, cuervos, urraca, urracas',
  'animal:pigeon': 'paloma, palomas',
  'animal:goose': 'ganso, gansos',
  'animal:turkey': 'guajolote, guajolotes',
  'animal:vulture': 'zopilote, zopilotes',
  'animal:heifer': 'vaquilla, vaquillas, se salieron las vaquillas, se metieron las vaquillas, se subieron las vaquillas',
  'animal:calf': 'becerro, becerra, becerros, becerras, se metieron los becerros, se subieron los becerros',
  'animal:bull': 'toro, toros',
  'animal:rat': 'rata, ratas',
  'animal:mouse': 'raton, ratones',
  'animal:cow':
    'se metieron las vacas, se metio una vaca, se subieron las vacas, se subio una vaca, se metio la vaca, anduvieron las vacas, vaca, vacas, se salieron las vacas, se salio una vaca, se escaparon las vacas, se brincaron las vacas, se saltaron las vacas, se salieron los becerros',
  'animal:skunk': 'zorrillo, zorrillos, zorriyo',
  'animal:coyote': 'coyote, coyotes',
  'animal:opossum': 'tlacuache, tlacuaches, tacuache, tacuaches, tacuazin, tacuazines',
  'animal:fox': 'zorro, zorros, zorra',
  'animal:badger': 'tejon, tejones',
  'animal:bear': 'oso, osos',
  'animal:squirrel': 'ardilla, ardillas',
  'animal:rodent': 'roedor, roedores',
  'animal:animal': 'animal, animales, algo',
  'animal:goat': 'chiva, chivas, cabra, cabras',
  'animal:horse': 'caballo, caballos',
  'animal:pig': 'puerco, puercos, marrano, marranos, cochino, cochinos',
  'animal:woodchuck': 'marmota, marmotas, tuza, tuzas',
  'sky:hail':
    'granizo, granizada, granizadas, graniso, granizando, piedra, cayo piedra, grniazo, granisada, granizazo, granizó, granizos, granisos',
  'sky:wind':
    'viento, aire, aires, ventarron, aironazo, airazo, vientos, ventarrones, biento, venteo, ventisca de aire, aigre, ventolera, rafagas, soplo, soplo fuerte, soplo recio, sopla',
  'sky:rain':
    'lluvia, llovieron, llovio, aguacero, llover, llovizna, lluvias, yovio, llobio, agua de lluvia, tormenta, lloviendo, yuvia, chubasco, aguaceros, de lluvia, lluvio, yobio, agua',
  'sky:snow': 'nieve, nevo, nevada, nevando, niebe, nebo',
  'sky:freeze':
    'helada, helo, heladas, congelo, se congelo, ielo, elada, elo, hielo, escarcha, heló, congelado, yelo, helando, amanecio helado, amanecio helando, amanecio congelado',
  'sky:thaw': 'deshielo, deshelo, se derritio, descongelo, deshielando, se deshelo, desielo, derritiendo, derritio, se descongelo',
  'sky:heat': 'calor, caloron, mucho calor, calorón, caliente',
  'stone:0.25': 'chicharo, chicharos',
  'stone:0.5': 'canica, canicas, canicas chicas',
  'stone:1': 'moneda, moneda de 25, peseta, pesetas, cora, coras',
  'stone:1.5': 'pimpon, pelotas de pimpon, pelota de pimpon, nuez, nueces, pelota de ping pong, pelotas de ping pong',
  'stone:1.75': 'pelota de golf, pelotas de golf, bola de golf, bolas de golf, pelotitas de golf, golf',
  'stone:2': 'huevo, huevos, huevo de gallina, huevos de gallina, limon, limones',
  'stone:2.5': 'pelota de tenis, pelotas de tenis',
  'stone:2.75': 'pelota de beisbol, pelotas de beisbol, beisbol',
  'stone:size': 'tamaño, tamano, del tamaño, del tamano, como pelota, de grande, diametro',
  'find:good':
    'no tiene nada, no tenia nada, no tienen nada, se ve bien tapada, se ve bien tapado, se ven bien tapadas, se ven bien tapados, se mira bien tapada, se mira bien tapado, esta bien tapada, esta bien tapado, estan bien tapadas, estan bien tapados, sigue bien tapada, sigue bien tapado, sigue tapada, sigue tapado, siguen tapadas, todo cheque, todo tuanis, todo calidad, todo nitido, todo tranquilo, esta cheque, bien socado, bien socada, socado, socada, no tenia nada, no tenia nada malo, no habia nada, no habia nada malo, no tiene nada malo, no le vi nada, no le vi nada malo, no vi nada malo, nada malo, las dos estan bien, los dos estan bien, ambas estan bien, todas estan bien, no habia ningun hoyo, no habia hoyos, no hay ningun hoyo, ningun hoyo, ni un hoyo, bien, todo bien, todo esta bien, esta bien, estan bien, todo ok, sin novedad, sin problema, sin problemas, todo en orden, bien apretado, bien apretada, todo tranquilo, bien tapado, bien tapada, no hay hoyos, buen estado, en buen estado, todo bn, bn, estan buenos, todo bueno, todo apretado, ningun hoyo, sin hoyos, apretado, apretada, todos bien, todas bien, sin daño, sin danos, sin dano, al cien, todo al cien, ta bien, ta todo bien, todo perfecto, todo firme, firme, se ve bien, se ven bien, esta buena, esta bueno, bien todo, nada roto, tensa, tenso, se mira bien, se miran bien, muy bien, perfecto, esta firme, todo vien, vien, todo sta bien, todo correcto, ok, limpio, sin agujeros, ni un hoyo, no tiene ni un hoyo, no tiene hoyos, no tienen hoyos, ningun problema, nada de hoyos, no hay nada, no hay problema, sin problema, ni uno, andan bien, anda bien, todo anda bien, andan todas bien, andan todos bien, no hallamos nada malo, no hallamos nada, no encontramos nada malo, no encontramos nada, no vimos nada malo, no hay nada malo, no halle nada malo, no encontre nada malo, ni una marca, ni un rasguno, ni un rasguño, ni un rasponcito, ni un agujero, sin un rasguno, todo bien tapado, todo bien tapada, todas bien tapadas, todos bien tapados, bien tapadas, bien tapados, sigue todo tapado, todo sigue tapado, todo tapado, todas tapadas, todos tapados',
  'find:trouble':
    'mal, hay problema, problema, problemas, no esta bien, esta mal, estan mal, danado, hay problemas, dañado, feo, no se ve bien, no se ven bien, no estan bien, no quedo bien, no se ve nada bien, no esta nada bien, no se ven nada bien, se ve raro, se ve rara, se mira mal, se mira raro, no se mira bien, si hay problema, hay un problema, hay bronca, hay broncas, si hay problemas, si ay problema, si ay problemas, si tiene problema, si tiene problemas, y si hay problema, y si hay problemas, y si ay problemas, y si hay bronca, y si hay broncas',
  'thing:covers':
    'los nylon, todos los nylon, los nylons, todos los nylons, los plasticos, las pilas, todas las pilas, todos los plasticos, las lonas, los hules, pilas, todo, plasticos, las cubiertas, todas, cubiertas, todos, los montones, todos los montones, las tapas, lonas, todas las cubiertas, todas las lonas, las mallas',
  'thing:at':
    'va a los, va en los, anda en los, anda por los, ya va por los, va por los, vamos en, va en, ya va en, ya vamos en, andamos en',
  'thing:face': 'cara, frente, la cara, el frente, kara',
  'thing:left':
    'quedan, queda, faltan, nos quedan, restan, le quedan, sobran, todavia quedan, falta, le faltan, todavia le quedan, aun quedan, nos faltan, por dar',
  'thing:spoiled':
    'hechadas a perder, hechados a perder, echadas a perder, echados a perder, echado a perder, podrido, podrida, mal, malo, mala, moho, mojo, mohoso, hechado a perder, silo malo, feo, basura, echada a perder, malo de, echado, perdido, comida mala, ensilaje malo, lo podrido, lo malo, enmohecido, negro, lama, podridos, pudrido, pudrida, desperdicio, dañado, merma, enlamado',
  'thing:out':
    'se acabo, se acabaron, se nos acabo, se nos acabaron, se termino, se terminaron, se nos termino, se nos terminaron, ya se acabo, ya se acabaron, ya se nos acabo, ya se nos acabaron, nos quedamos sin, me quede sin, ya no queda, ya no quedan, ya no hay, ya no tenemos',
  'thing:gone':
    'dimos lo ultimo de, se dio lo ultimo de, lo ultimo de, se acabo, ya se acabo, se termino, ya se termino, vacia, vacio, ya no hay, ya no hay nada, quedo vacia, quedo vacio, acabamos, terminamos, ya se acabaron, ya no queda nada, ya no queda, ya no quedo nada, ya no tiene nada, ya no ay, ya no ay nada, acabado, acabada, terminada, limpia, quedo limpia, le dimos lo ultimo, ya acabamos, ya terminamos, acabamos con, terminamos con, nos acabamos, ya se bacio, se vacio, ya esta vacia, ya esta vacio, esta vacia, esta vacio, ya no kda nada, ya no qda nada, no queda nada, bacia, no quedo nada, quedo el piso pelon, el piso pelon, ya ni una paca, quedo barrido, quedo pelon, puro piso',
  'thing:first': 'ultimos, los ultimos, lo ultimo, resto, el resto, ultimo, lo que quedaba, sobrante, lo que quedo',
  // where feed goes that is fed
  'to:cows':
    'en los comederos, en el comedero, al comedero, a los comederos, en los pesebres, al pesebre, en el pesebre, en las canoas, a las canoas, a las vacas, alas vacas, a la vacada, a las bacas, a los animales, al ganado, para las vacas, pa las vacas, a las lecheras',
  'why:feed':
    'para dar de comer, pa dar de comer, para dar, pa dar, pa darles de comer, para darles de comer, para alimentar, para comida, para las vacas, pa las vacas, para sacar, pa sacar, para darle, para darle a las vacas, a dar, a sacar, para empezar a dar, pa darle, pa darles, para darles, de comer, para empezar a darle, para empezar, pa empezar a dar, a darle, para comer, pa empezar a darles, para empezar a darles, pa empezar a darles a las vacas, para darles a las vacas, pa darles a las vacas',
  'why:add':
    'para echar, pa echar, para poner, pa poner, para agregar, para meter, pa meter, para echarle, para ponerle, pa ponerle, pa echarle, para subir, para meterle, pa agregar, para encimar, pa meterle, para agregarle, para llenar, para echar mas, para echarle mas, pa echarle mas, otra vez para, agregarle, echarle, ponerle, meterle',
  'group:milking':
    'ordeñando, ordenando, ordeña, ordena, vacas en ordeña, vacas en ordena, vacas lecheras, lecheras, las de ordeña, produccion, en produccion, ordeñamos, ordenamos, vacas en produccion, de ordeña',
  'group:dry': 'vacas secas, secas',
  'group:heifers': 'vaquillas, novillas, las vaquillas',
  'group:calves': 'becerras, becerros',
  'group:fresh': 'frescas, recien paridas',
  'group:high': 'las altas, grupo alto',
  'group:low': 'las bajas, grupo bajo',
  'harv:expect':
    'cae por ahi del, cae por ahi de, cae como por el, cae como el, cae alrededor del, yo creo que, yo creo k, yo creo q, va a ser, ba a ser, ba ser, va a estar, esperamos, seria, sera, calculamos, calculo, pensamos, empezamos, empezaremos, vamos a cortar, esta para, va para, viene, listo, lista, estara, va a salir, va a empezar, se espera, toca, como, seria como, sale, esta lista, esta listo, cosechamos, vamos a empezar, estaria, pensamos cortar, planeamos, vamos a cosechar, vamos a picar, se va a cortar, pa, para, cosecha, va a estar listo, va a estar lista, va ser, esperamos el',
  on: 'en, n, a, al, encima, encima de, sobre, arriba de, hasta, en la, en el, a la, para la, para el, pa la, pa el, pal, ala, hacia, encima del, arriba del, sobre el, sobre la, encima de la, arriba de la, encima de el',
  off: 'de, del, d',
  with: 'con, c/, kon',
  back: 'pa atras, atras, para atras, pa atras, otra vez, de nuevo, patras, pa tras, hacia atras',
  and: 'y, e, ademas, tambien, y luego, luego, aparte, i, y tambien, despues',
  also: 'tambien',
  more: 'mas, otro, otra, otros, otras, otrs',
  'm:no':
    'nos paso de lado, paso de lado, no nos toco, nos libramos, se fue de lado, no, nunca, todavia no, aun no, nadie, ni, ningun, ninguna, tampoco, ya no, nada, sin, todabia no, falta, faltan por, jamas, en vez de, ni una gota, ni gota, ni una gotita, ni una piedra, ni tantito, ni tantita, se fue pa otro lado, se fue para otro lado, se fue por otro lado, se fue a otro lado, paso de largo, nos saco la vuelta, se fue de largo, se fue lejos, no nos llego',
  'm:hope': 'ojala, espero, esperemos, primero dios, dios quiera, ojala que, ojala y',
  aside:
    'entre los dos, entre las dos, entre los tres, entre todos, entre los cuatro, las conte dos veces, los conte dos veces, las conte 2 veces, los conte 2 veces, dos veces, tres veces, 2 veces, 3 veces, un par de veces',
  'm:plan':
    'esperando que, esperando a que, esperando, dile a, diles que, dile que, todavia vienen, todavia faltan, faltan por llegar, van a venir, queria, queriamos, querian, iba a, ibamos a, iban a, vamos a, voy a, va a, van a, hay que, tenemos que, tengo que, manana, quiero, queremos, pensamos, a ver si, habria que, deberiamos, debemos, falta, al rato, luego, ocupamos, necesitamos, necesito, planeamos, boy a, bamos a, ay que, tienen que, para manana, pienso, quisiera, puedes, pueden, podemos, toca, por favor, ahorita vamos, ire, iremos, echaremos, pondremos, taparemos, ahi vamos a, pa manana, hagan, pongan, echen, tapen, den, denle, mañana, el proximo, quieren, quiere, debo, deben, tal vez, quizas, quiza, a lo mejor, capaz que, puede que, pensaba, pensabamos, pensaban, vienen mas, vienen otros, faltan mas, hiba a, hibamos a, hiban a, traete, traigan, traiganse, traeme, echale, echenle, metele, metanle, pongale, ponganle, llevale, llevenle, subele, bajale, vayan por, ve por, vete por, anda por, a ver si llegan, traiganme, puede alguien, alguien puede, alguien que, puede alguno, alguno que',
  'm:if':
    'si, cuando, en caso, a menos que, hasta que, en cuanto, mientras, y si, por si, por si acaso, si no llueve, si aguanta el tiempo, si el tiempo deja, x si, por si llueve, x si llueve',
  'm:tell':
    'dicen, dijeron, dice, dijo, pronostico, anuncian, oi, escuche, segun, parece que va, creo que va, el vecino, la vecina, casi, es broma, broma, soñe, sone, me acuerdo, pronosticaron, anunciaron, por poquito y, por poquito, por nada y, casi casi, en la tele, en la pelicula, vi una pelicula, la cancion, el corrido, la novela',
  'q:howmany': 'cuanto, cuantos, cuanta, cuantas, quanto, qantos, kuantos, kuanto, qntos, cuants, qanto, cuantoz, cuanto llevamos',
  'q:howlong':
    'cuanto nos queda, cuanto nos dura, cuanto dura, para cuantos dias, cuantos dias, pa cuanto, cuanto queda, cuanto mas dura, cuanto tiempo, cuanto va a durar, cuando se acaba, para cuanto, hasta cuando, pa cuantos dias, cuantos dias quedan, cuanto falta, cuanto le queda, cuanto alcanza, para cuanto tiempo, cuanto aguanta, dias quedan, kuanto nos keda, cuando se termina, hasta cuando alcanza, cuanto nos va a durar, cuanta comida queda, cuanto nos keda, cuanto nos qda, dias que quedan, cuantos dias nos quedan, cuanto silo nos queda, cuanto mas nos queda, cuanto mas nos dura, cuanto ns keda, cuanto ns qda, cuanto ns queda, cuanto ns dura',
  'q:how':
    'como, como esta, como va, como anda, estado de, estado, que onda con, como sigue, como vamos con, que tal, que tal esta, como va la, como anda la, como estan, como ba, info de, que hay en, que tiene, que tenemos en, que ay en, que llevamos, ensename, ensenanos, muestrame, muestranos, dejame ver, mandame la foto, mandame las fotos, pasame la foto',
  'q:what': 'que, cual, q, ke, k',
  'q:when': 'cuando, cuando fue, ultima vez, hace cuanto, que dia, kuando, quando, cuando fue la ultima vez',
  'q:who': 'quien, quienes, kien, alguien, quien fue, qien',
  'q:where': 'donde, adonde',
  'q:why':
    'por que, porque, como sacas, de donde sale, como sale eso, como lo calculas, de donde sacas, como calculaste, como se calcula, por ke, como llegaste a eso, explica, explicame',
  'q:yesno':
    'ya esta listo, ya esta lista, nos va a alcanzar, va a alcanzar, hay suficiente, nos faltara, llegaremos, ya podemos, podemos, puedo, se puede, debemos, ya podemos abrir, ya puedo, llegamos, alcanza, nos alcanza, alcanzara, sera que, ya se puede, si alcanza, crees que, creen que, tu crees que, usted cree que, cree que, ya se podra, se podra, ya podremos, podremos',
  'q:happened':
    'que paso, que hicieron, que se apunto, que apuntaron, que han hecho, historial, que ha pasado, que hicimos, historia, que se ha hecho, que hubo, que se hizo, q paso, ke paso, que a pasado, bitacora, q ha pasado, ke ha pasado, que a habido, que ha habido, q hubo, que movimiento hubo',
  'q:help':
    'ayuda, que puedo decir, como funciona, que puedes hacer, que te puedo decir, como te uso, como se usa, que sabes hacer, que puedo preguntar, como le hago, comandos',
  'qt:last': 'dura, durar, queda, quedan, alcanza, acaba, nos queda, aguanta, termina, durara',
  'qt:reach':
    'alcanza, alcanzar, faltara, suficiente, alcanzamos, llegamos, llegar, nos alcanza, si alcanza, alcanzara, va a alcanzar, llega, la hacemos, rinde, alcansa, llegara, faltar, va a faltar, nos va a faltar, hasta el, hasta la, y si, ajustamos, ajusta, completamos',
  'qt:density':
    'bien pisado, bien pisada, apretado, apretada, bien compactado, bien compactada, densidad, compactado, compactada, pisado, pisada, suficiente pisado, bien apisonada, bien apisonado, compactacion, cuanto aire, aire tiene, mucho aire, floja, flojo',
  'qt:face':
    'bastante rapido, suficiente rapido, avanzando, vamos rapido, dando rapido, rapido, pulgadas al dia, pulgadas por dia, avanza, lo suficiente al dia, suficiente por dia, sacando suficiente, pies por dia',
  'qt:cover':
    'plastico necesito, plastico necesitamos, plastico ocupo, plastico ocupamos, que plastico, plastico para, llantas para tapar, llantas necesito, llantas ocupo, llantas ocupamos, llantas necesitamos, de que tamano, para tapar, plastico se ocupa, llantas se ocupan, plastico le, llantas le, ke plastico, tamaño de plastico, pa tapar, q plastico, plastico hace falta',
  'qt:plan':
    'de que tamano hago, que tamano hago, de que tamano hacemos, que tan grande, que tamano de pila, que ancho, de que tamano la pila, pila para, que tan ancha, que tan larga, que tan alta, hacer la pila, de que tamaño la hacemos, para hacer, que tamaño de pila, que tan ancho, de que ancho, que tan alto, de q tamaño hacemos, de q tamano hacemos, q tamano de pila, de que tamaño hacemos, de q tamano hago',
  'qt:ready':
    'abrir, lista, listo, ya se puede abrir, podemos abrir, puedo abrir, empezar a dar, ya esta lista, ya esta listo, habrir, fermentado, destapar, usar, dar de, sacar de, ya fermento, ya se puede, ya se puede usar, ya podemos',
  'qt:mix':
    'mezcla, esta hecho, esta hecha, porcentaje de, que porcentaje, proporcion, que mezcla, relacion, mescla, revoltura, capas, porcentaje de cada, cuanto de cada',
  'qt:checks':
    'que toca, que nos toca, que falta por hacer, que falta hacer, que nos falta por hacer, que nos falta hacer, que queda por hacer, que hay que hacer, pendiente, pendientes, revisamos, revisaron, reviso, checamos, checaron, ultima revision, revision, revisado, revisada, checaron, revise, checo, revisar, toca revisar, rebisaron, checado, falta por revisar, falta revisar, falta por checar, falta checar, faltan por revisar, faltan de revisar',
  'qt:loss':
    'echa a perder, echando a perder, perdido, se ha perdido, perdiendo, perdemos, perdida, merma, perdidas, desperdiciando, pierde, mermas, se pierde, se esta perdiendo',
  'qt:supplies': 'tenemos, hay, quedan, nos quedan, tengo, inventario, sobran, ay, todavia hay, llantas hay, existencias',
  'qt:loads':
    'viajes, cargas, llevamos, hoy, maiz, alfalfa, van, trocas, hay en, ay en, pusimos, puesto, metimos, echamos, hemos metido, tiene, en total',
  pileword: 'pila, pilas, monton, montones, silo, bunker, la pila, el monton, pla, plia, montn, piila, pilla, el silo',
  'where:place':
    'por encima, pared, lado, orilla, esquina, punta, arriba, abajo, norte, sur, lado este, orilla este, pared este, punta este, esquina este, del este, al este, oeste, poniente, oriente, frente, atras, medio, centro, enmedio, en medio, muro, camino, rampa, fondo, barda, cerco, izquierdo, derecho, izquierda, derecha, costado, encima, porton, carretera, lomo, esqina, orillita, puerta, mitad, parte, cerca, entrada, lateral, borde, cabecera, poste',
  prepWhere:
    'pegado, pegada, pegados, pegadas, por, cerca de, cerca, junto a, junto al, junto, del lado, al lado de, al lado, a un lado de, a un lado, hacia, a lo largo de, x, pegado a, pegado al, debajo de, por la parte de, atras de, detras de',
  'fix:make':
    'eran, fueron, era, fue, son, corrige, corrigelo a, cambialo a, que sean, ponle, eran como, seria, mejor, quise decir, digo, perdon, cambia a, cambia, cambiale a, debe ser, debio ser, mas bien, es, son como, serian, en realidad, corrijo, dejalo en, corrige a, correccion, quize decir, deberia ser, deben ser',
  'fix:no':
    'no, perdon, digo, mejor dicho, no espera, espera, me equivoque, no perdon, no digo, mentira, corrijo, miento, mas bien, ay no, nombre, uy no, uy, no no, no es cierto, sorry, equivocado, perdon no, no mejor, chin, esta mal, eso esta mal, disculpa, disculpen, no eran, no era, me equivoqe, oops, mal, nel, nel no',
  'fix:undo':
    'borra eso, borralo, borra, quita eso, quita el ultimo, deshacer, deshaz, cancela, cancela eso, quitalo, borra el ultimo, borra la ultima, elimina, eliminalo, deshazlo, quita lo ultimo, borra lo ultimo, olvida eso, cancelalo, eso no, borre eso, quita esa, borra ese, quita ese, borra esa, quita la ultima, eso no va, borra los dos, quita los dos, elimina eso, elimina el ultimo, cancela el ultimo, borrar, deshacer eso, ignora eso, quite eso, borrar eso, olvidalo eso, vorra eso, bora eso, los dos mal, no cuenta eso, eso no cuenta, quita los de, quita las de, quita la de, quita el de, borra los de, borra las de, borra la de, borra el de, quitale los de, saca los de, saca las de',
  'ans:yes':
    'si, claro, correcto, asi es, simon, sip, exacto, sii, ei, ey, eso, asi mero, andale, si senor, afirmativo, esta bien, sale, simon que si, asi mismo, arre, seguro, por supuesto, tiene razon, si tiene razon, tienes razon, es correcto, asi mero es, es verdad, de acuerdo, esta correcto',
  'ans:no': 'no, nel, nop, para nada, negativo, nombre, ni una, ninguno',
  'ans:drop':
    'olvidalo, dejalo, no importa, nada, cancela, no hay problema, dejalo asi, ya no, asi dejalo, no le hace, no te preocupes, olvidelo, ninguno, deja el mio, deje el mio, dejalo como esta, dejelo como esta, dejalo asi como esta, asi como esta',
  'ans:same':
    'los mismos, las mismas, lo mismo, el mismo, la misma, son los mismos, son las mismas, mismos, iguales, ya estaban, ya estan, es lo mismo, mismas, son los mismo, ya los apunto, repetido, misma',
  'ans:more':
    'otros, mas, son otros, otras, aparte, son mas, adicionales, no son otros, diferentes, no otros, nuevos, aparte de esos, son aparte, ademas de esos, no mas',
  'ans:all': 'en total, total, por todo, en todo el dia, por todos, todo el dia',
  'pick:1': 'primero, primera, uno, una',
  'pick:2': 'segundo, segunda, otro, otra',
  'pick:3': 'tercero, tercera',
  'pick:last': 'ultimo, ultima',
  total: 'en total, total, por todo, por todos, hasta ahora, total de hoy, van',
  vague:
    'no se unos cuantos, no se cuantos, no se unos, no se como unos, unos, unas, algunos, algunas, unos cuantos, unas cuantas, varios, varias, muchos, muchas, un chingo, un monton de, bastante, bastantes, un poco, poquito, tantito, hartos, hartas, algo de, algunas cuantas, unos pocos, unas pocas, un chorro, un poco de, un titipuchal, un bonche, bonche, mucho, mucha, poco, pocos, un resto, muchisimo, varias veces, todo el dia, toda la manana, como unos, como unas, no se cuantos, un buen',
  approx:
    'como, mas o menos, aproximadamente, unos, unas, alrededor de, casi, por ahi de, como unos, como unas, cerca de, aprox, por hay de, calculo, mas o menos como, ahi como, ay como, no estoy seguro, no se bien',
  so: 'para que no, pa que no, pa q no, para q no, para que, pa que, para q, pa q, para que podamos, pa que podamos, para poder, pa poder',
  but: 'pero, nomas que, sino',
  'thing:home': 'de la tienda, del pueblo, de la cooperativa',
  filler:
    'otra cosa, una pregunta, una cosa mas, no se de que, no se de quien, no se como fue, no se cuando, jaja, jajaja, jeje, la regue, sin querer, vos, se me paso apuntarlo, se me paso anotarlo, se me paso avisar, oigan, andan, se me olvido anotar, se me olvido apuntar, se me olvido anotarlo, se me olvido apuntarlo, se me olvido decirles, se me olvido avisar, se me paso anotar, se me paso apuntar, no se que fue, no se quien fue, no se quien, no sabemos que fue, quien sabe que fue, sepa que fue, asi como vamos, vamos, no se que, no se quien, no se como, quien sabe, encontre, encontramos, encontraron, halle, hallamos, fijate que, fijese que, que los, que le, que se, que ya, el, la, los, las, un, una, lo, le, les, se, me, te, nos, su, sus, mi, ya, pues, este, esta, estan, esto, eso, ese, esa, esos, esas, oye, oiga, bueno, ok, okey, de, del, a, al, en, con, que, q, hoy, ahorita, ahora, ay, hay, aqui, ahi, alla, son, es, fue, fueron, era, eran, ha, han, he, hemos, haber, por, para, pa, x, hola, buenas, buenos dias, buenas tardes, buenas noches, jefe, patron, compa, gracias, porfa, muy, todo, toda, todos, todas, estos, estas, si, tambien, solo, nomas, nada mas, apenas, acabo de, acabamos de, recien, otra vez, y, o, porque, como, asi, entonces, andamos, anda, ando, quedo, quedaron, quedamos, con el, las vacas, vacas, hey, eh, este pues, mano, wey, guey, amigo, don, senor, senora, onda, que onda, q onda, mira, mire, fijate, fijese, cada, mismo, misma, ayer, dice, digo, buen, buena, nuevo, nuevos, completo, completa, completos, bien, lleno, llena, llenos, llenas, grande, grandes, chico, chicos, chiquito, chiquitos, mediano, medianos, temprano, tarde, rato, hace rato, hace un rato, cuando, despues de comer, antes de comer, antes de la ordena, despues de la ordena, al final, finalmente, por fin, gracias a dios, la verdad, tiene, tienen, hicimos, estuvo, estubo, estaba, estaban, estaba bien, fuerte, duro, recio, feo, gacho, mucho, gruesa, grueso, ahi les va, les aviso, aviso, reporte, les digo, para que sepan, por si acaso, ok jefe, va, vale, sale, listo, lista, listos, de la bascula, en la bascula, segun la bascula, por bascula, bascula, en bascula, pesados, pesadas, pesado, de peso, por ahora, de una vez, entre todos, entre, nosotros, yo, ellos, ella, nadie mas, mas, cosa, cosas, parte, tanto, tantos, tambien hoy, desde, hasta, sobre, ademas, del rancho, de ahi, eramos, somos, soy, habla, aca, ay les va, junto, juntos, cayo, cayeron, callo, caio, calleron, cayendo, pego, hubo, ubo, habia, hizo, hiso, izo, tuvimos, llego, vino, hacia, otra, otro, pies, antes, ratito, puro, pura, puros, primero, nada, del laboratorio, en el laboratorio, entre los dos, entre las dos, entre los tres, entre los cuatro, desde el almuerzo, desde la comida, desde la ordena, desde el desayuno, por si las dudas, no duro nada, no duro mucho, duro poquito, no lo habia puesto, no la habia puesto, no los habia puesto, no las habia puesto, no lo habiamos puesto, orita, horita, ahorititita, ahoritita, oritita, si dios quiere, primero dios, antes de darles, antes de alimentar, despues de darles, no se q animal, no se que animal, no se q animal fue, no se que animal fue, no se q fue, no sabemos que animal, no supe que fue, no supe q fue, no se ni que fue, del vecino, de la vecina, de los vecinos, vecino, vecinos, jefa, patrona, se refiere a, quiere decir, como dijo, como dijiste, asi dijo, como me dijeron, como me dijo, segun me dijeron, asi lo quiere, como quedamos, como lo pidio, fijate que casi no, mi compa, no te enojes, no se enojen, quien sabe si, si alguien pregunta, por si preguntan, no se crean, yo y el perro, con mi perro, ni modo, ni pex, ni hablar, hay de donde, de donde agarrar, de donde dar, de donde sacar',
}
