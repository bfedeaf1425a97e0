### Poner una vivienda en su plano: líneas, propuestas, conjuntos, tablas del cuadro, circuitos, lo que falta.

## What lines carry

medium-cold-water = agua fría
medium-hot-water = agua caliente
medium-waste = aguas residuales
medium-vent = aire de los desagües
medium-condensate = condensado
medium-power = electricidad
medium-gas = gas combustible
medium-signal = cableado de control

## Kinds

kind-water-main = red de agua de la calle
kind-well = pozo
kind-water-meter = contador de agua
kind-isolating-valve = llave de paso
kind-backflow-preventer = válvula antirreflujo
kind-check-valve = válvula de retención
kind-pressure-reducing-valve = reductor de presión
kind-circulation-pump = bomba de recirculación
kind-mixing-valve = válvula mezcladora
kind-relief-valve = válvula de alivio
kind-manifold = colector
kind-pipe = tubería
kind-supply-hose = latiguillo
kind-pressure-tank = depósito de presión
kind-water-heater = calentador de agua
kind-expansion-tank = vaso de expansión
kind-softener = descalcificador
kind-tap = grifo
kind-hose-bibb = grifo exterior
kind-irrigation = riego
kind-ice-maker = máquina de hielo
kind-sprinkler-riser = columna de rociadores contra incendios
kind-sink = fregadero
kind-basin = lavabo
kind-bath = bañera
kind-shower = ducha
kind-toilet = inodoro
kind-washing-machine = lavadora
kind-dishwasher = lavavajillas
kind-floor-drain = sumidero
kind-standpipe = tubo vertical de desagüe
kind-trap = sifón
kind-stack = bajante
kind-cleanout = registro de limpieza
kind-backwater-valve = válvula contra retorno de alcantarilla
kind-ejector-pit = pozo de bombeo de aguas residuales
kind-sump-pit = pozo de achique
kind-sewer-main = alcantarilla de la calle
kind-septic-tank = fosa séptica
kind-electricity-service = acometida eléctrica
kind-generator = generador
kind-inverter = inversor
kind-battery = batería
kind-electricity-meter = contador eléctrico
kind-panel = cuadro eléctrico
kind-junction-box = caja de conexiones
kind-service-disconnect = interruptor general
kind-breaker = disyuntor
kind-disconnect = seccionador
kind-transfer-switch = conmutador de transferencia
kind-switch = interruptor de pared
kind-gfci = diferencial (GFCI)
kind-receptacle = enchufe
kind-light = luz
kind-lampholder = portalámparas
kind-appliance = aparato
kind-sump-pump = bomba de achique
kind-smoke-alarm = detector de humo
kind-medical-device = aparato médico
kind-air-handler = unidad de aire
kind-condensate-pan = bandeja de condensado
kind-condensate-pump = bomba de condensado
kind-condensate-outlet = salida del condensado
kind-float-switch = interruptor de flotador
kind-thermostat = termostato
kind-gas-meter = contador de gas
kind-gas-valve = llave de gas
kind-gas-appliance = aparato de gas
kind-other = otra cosa

## Lines that may not be drawn
# $from and $to are the two ends, $medium what the line would carry.

lines-no-such-component = Nada en el plano tiene el id { $id }.
lines-no-such-component-remedy = Empiece y termine la línea en algo que esté en el plano.
lines-to-itself = { $from } no puede alimentarse a sí mismo.
lines-to-itself-remedy = Termine la línea en lo que alimenta { $from }.
lines-cannot-meet = { $name } es de tipo «{ $kind }», que no tiene que ver con: { $medium }.
lines-cannot-meet-remedy = Elija otra cosa que lleve la línea, o mire si el tipo de { $name } es el correcto.
lines-cannot-meet-at-all-remedy = Ninguna línea cabe entre { $from } y { $to }. Los une otra pieza: póngala en el plano y dibuje una línea hasta ella y otra desde ella.
lines-mixes = { $name } ya lleva { $other }, y se mezclaría con: { $medium }.
lines-mixes-remedy = Lleve la línea a otra pieza, o corrija lo que lleva { $name }. Donde dos líneas solo se cruzan, son dos piezas.
lines-duplicate = { $from } ya alimenta a { $to } con { $medium }.
lines-duplicate-remedy = Aquí no falta nada. Una segunda línea paralela necesita su propia pieza en medio.
lines-other-way = Ya hay una línea con { $medium } de { $to } a { $from }.
lines-other-way-remedy = Para darle la vuelta, quite primero la otra línea.
lines-source-has-inlet = De { $to } viene { $medium }: nada en este plano lo alimenta.
lines-source-has-inlet-remedy = Dibuje la línea al revés, de { $to } a { $from }.
lines-outfall-has-outlet = En { $from } termina: { $medium }. Nada sale de ahí.
lines-outfall-has-outlet-remedy = Dibuje la línea al revés, de { $to } a { $from }. Lo que hay más allá va en una nota.
lines-drain-loop = El desagüe daría una vuelta en círculo: { $way }.
lines-drain-loop-remedy = { $to } ya desagua en { $from }. Lleve { $from } hacia lo que está más bajo, en dirección a la alcantarilla.
lines-uphill = Correría cuesta arriba: { $medium }. { $to } está { $metres } m más alto que { $from }.
lines-uphill-remedy = Dibuje la línea hacia abajo, de { $to } a { $from }. Si lo sube una bomba, ponga la bomba en el plano y pase por ella; si las alturas están mal, corríjalas.
lines-into-fixture = Saldría de { $from } y entraría en { $to }: { $medium }.
lines-into-fixture-remedy = Dibuje la línea al revés: { $to } desagua en { $from }.
lines-fixture-ends-it = { $from } usa agua y no la pasa a nada más.
lines-fixture-ends-it-remedy = Dibuje la línea desde la llave o la tubería que alimenta { $from }. Si sus líneas de fría y caliente se unen de verdad por dentro, márquelo antes.
lines-back-into-panel = La electricidad no vuelve de { $from } a { $to }. Alimentar una casa por un enchufe puede matar a quien trabaja en la red.
lines-back-into-panel-remedy = Dibuje la línea al revés, de { $to } a { $from }. Un generador lo conecta un electricista autorizado, con conmutador de transferencia o enclavamiento.
lines-circle = { $to } ya alimenta a { $from }: daría vueltas en círculo: { $medium }.
lines-circle-remedy = Dibuje la línea desde lo que alimenta a los dos, o quite la línea equivocada.
lines-wrong-water = A { $from } solo llega { $other }, así que de ahí no sale { $medium }.
lines-wrong-water-remedy = Dibuje una línea con { $other }, o empiece en lo que trae { $medium }.

## Words that names, headings and cells are known by: lists of words, parted by commas; a star stands for any ending.

words-hot = caliente, ac, acs
words-cold = fría, fria, frío
words-main = general, principal
words-freezer = congelador*, nevera*, frigorífico*, refrigerador*, arcón
words-alarm = alarma*, humo, detector*, incendio, seguridad
words-medical = médico, médica, oxígeno, concentrador, diálisis, respirador, salvaescaleras, nebulizador
words-pump = achique, bomba*, pozo
words-computer = ordenador*, computadora*, servidor*, despacho, oficina, internet, módem
words-spare = reserva*, sin uso, libre
words-no-breaker = vacío, hueco, espacio, espacio vacío
words-unknown = desconocido, desconocida, sin nombre, no se sabe, ninguno, sin rótulo
words-half-bath = aseo, medio baño, aseo de invitados, servicio
words-bath = baño, cuarto de baño, baños, ducha
words-kitchen = cocina, office de cocina
words-laundry = lavandería, lavadero, cuarto de lavado
words-utility = cuarto técnico, cuarto de instalaciones, cuarto de calderas, sala de calderas, instalaciones
words-garage = garaje, cochera, taller
words-bedroom = dormitorio, habitación, cuarto, recámara, estudio, despacho
words-living = salón, sala, comedor, sala de estar, cuarto de estar
words-hall = pasillo, recibidor, vestíbulo, entrada, escalera, rellano
words-outdoors = jardín, patio, terraza, porche, calle, acera, exterior
words-basement = sótano, bodega
words-attic = desván, ático, buhardilla
words-table-panel = cuadro, tablero, cuadro eléctrico, centro de carga, alimentado de
words-table-panel-itself = nombre del cuadro, nombre del tablero
words-table-circuit = circuito, número de circuito, nº de circuito, número, disyuntor, interruptor, posición, nº
words-table-rating = amperios, amperaje, calibre, corriente nominal, intensidad
words-table-poles = polos, número de polos, fases
words-table-serves = alimenta, descripción, uso, carga, servicio, destino, sirve, para qué
words-table-room = estancia, habitación, planta, nivel, piso, lugar, ubicación
words-table-kind = tipo, clase, categoría, elemento
words-table-name = nombre, denominación
words-table-watts = vatios, potencia
words-part-smoke-alarm = humo, detector de humo
words-part-switch = interruptor, interruptores
words-part-light = luz, luces, luminaria*, lámpara*, alumbrado, aplique
words-part-receptacle = enchufe, enchufes, toma, tomas, tomacorriente*, contacto
words-part-gfci = diferencial, protección diferencial
words-part-thermostat = termostato, termostatos
words-part-appliance = aparato, microondas, horno, cocina eléctrica, frigorífico, lavavajillas, secadora, lavadora, ventilador, caldera, bomba, calentador, cargador, aire acondicionado
words-yes-two-pole = bipolar, doble polo, dos polos
words-drain = desagüe*, alcantarilla*, bajante*, fecales, sifón, saneamiento
words-telling-nothing = disyuntor*, enchufe*, luz, luces, cuadro*, circuito*, general, planta, cuarto, para, desde, izquierda, derecha, junto, detrás, interruptor*, lámpara*, debajo, bajo

## Proposals: what probably feeds what
# $name is what is proposed, of the kind $kind, for $of.

propose-why-circuit = Los dos están en el circuito { $circuit }.
propose-why-panel = Según sus datos, está en { $name }.
propose-why-words = El nombre { $name } concuerda con { $of }.
propose-why-only = De este tipo no hay otro que encaje: { $kind }.
propose-why-same-space = De este tipo es lo más cercano en la misma estancia: { $kind }.
propose-why-nearest = De este tipo es lo más cercano que encaja: { $kind }.
propose-line = { $lack ->
    [feed] { $from } alimenta a { $to } ({ $medium })
   *[drain] { $from } desagua en { $to } ({ $medium })
}

## Typical sets

set-basin = Lavabo
set-kitchen-sink = Fregadero de la cocina
set-utility-sink = Pila de lavadero
set-toilet = Inodoro
set-shower = Ducha
set-bath = Bañera
set-washer-box = Lavadora y su caja de conexiones
set-dishwasher = Lavavajillas
set-ice-maker = Máquina de hielo
set-water-heater = Calentador de agua con depósito
set-water-service = Acometida de agua, de la calle a la llave general
set-house-drain = Desagüe de la casa con su registro, hasta la calle
set-stack = Bajante con su registro
set-floor-drain = Sumidero
set-softener = Descalcificador
set-hose-bibb = Grifo exterior
set-panel = Cuadro con sus disyuntores
set-sub-panel = Subcuadro con sus disyuntores
set-gfci = Diferencial (GFCI) y lo que cuelga de él
set-outlets = Enchufes
set-light = Luz con su interruptor
set-smoke-alarm = Detector de humo
set-sump-pit = Pozo de achique con su bomba
set-air-handler = Unidad de aire con bandejas y flotadores
set-gas-meter = Contador de gas con su llave
set-unknown = Conjunto desconocido
# Cómo se llama lo principal de un conjunto, si el conjunto se llama con más.
thing-washer-box = Lavadora
thing-water-heater = Calentador de agua
thing-stack = Bajante
thing-panel = Cuadro eléctrico
thing-sub-panel = Subcuadro
thing-gfci = Diferencial (GFCI)
thing-light = Luz
thing-sump-pit = Pozo de achique
thing-air-handler = Unidad de aire
thing-gas-meter = Contador de gas

set-in-space = { $set }, { $space }
sets-practice = Las alturas y los sitios dentro del conjunto son los de la práctica común. Corríjalos allí donde está.
sets-no-set = No hay ningún conjunto llamado { $id }. Elija uno de la lista.
sets-no-space = No hay ninguna estancia con el id { $id }. Elija una estancia, o ninguna.
sets-count = Un conjunto no puede tener { $wished } de estos. Elija de 1 a { $most }.

# Parts of a set; $of is what the set is called.
part-cold-stop = Llave de fría, { $of }
part-hot-stop = Llave de caliente, { $of }
part-cold-hose = Latiguillo de fría, { $of }
part-hot-hose = Latiguillo de caliente, { $of }
part-stop = { $water ->
    [hot] Llave de caliente, { $of }
   *[other] Llave, { $of }
}
part-hose = Latiguillo, { $of }
part-trap = Sifón, { $of }
part-standpipe = Tubo vertical de desagüe, { $of }
part-heater-inlet = Llave de entrada de fría, { $of }
part-relief = Válvula de alivio, { $of }
part-hot-line = Línea de caliente desde el calentador
part-house-main = Llave general de la casa
part-street-main = Red de agua en la calle
part-curb-stop = Llave de la compañía en la acera
part-water-meter = Contador de agua
part-reducer = Reductor de presión
part-cold-line = Línea de fría de la casa
part-house-cleanout = Registro de limpieza de la casa
part-building-drain = Desagüe general de la casa
part-sewer-line = Tubo hasta la alcantarilla
part-street-sewer = Alcantarilla de la calle
part-stack-cleanout = Registro de limpieza, { $of }
part-inlet = Llave de entrada, { $of }
part-outlet-valve = Llave de salida, { $of }
part-winter-stop = Llave de invierno, { $of }
part-service = Acometida eléctrica
part-electric-meter = Contador eléctrico
part-main-breaker = Disyuntor general, { $of }
part-breaker = Disyuntor { $number }
part-outlet-on = Enchufe { $number } de { $of }
part-outlet = Enchufe { $number }, { $place }
part-switch = Interruptor, { $of }
part-pump = Bomba de achique, { $of }
part-pump-check = Válvula de retención sobre la bomba, { $of }
part-pump-line = Línea de salida, { $of }
part-first-pan = Primera bandeja, { $of }
part-second-pan = Segunda bandeja, { $of }
part-first-float = Flotador de la primera bandeja, { $of }
part-second-float = Flotador de la segunda bandeja, { $of }
part-condensate-line = Línea de condensado, { $of }
part-condensate-end = Salida de la línea de condensado, { $of }
part-disconnect = Seccionador, { $of }
part-gas-valve = Llave de gas en el contador

room-half-bath = aseo
room-bath = cuarto de baño
room-kitchen = cocina
room-laundry = lavadero
room-utility = cuarto de instalaciones
room-garage = garaje
room-outdoors = exterior
room-basement = sótano
room-attic = desván
room-bedroom = dormitorio o estudio
room-living = sala o comedor
room-hall = pasillo o escalera

## Panel tables: files

table-empty = En esta tabla no hay nada.
table-empty-remedy = Mire si es el archivo correcto y si se guardó.
table-too-large = El archivo tiene más de { $megabytes } MB, lo que no tiene ningún rótulo de cuadro.
table-too-many-rows = La tabla tiene más de { $rows } filas, lo que no tiene ningún rótulo de cuadro.
table-too-many-columns = La tabla tiene más de { $columns } columnas, lo que no tiene ningún rótulo de cuadro.
table-unpacks-too-large = El archivo, descomprimido, es más grande que cualquier rótulo de cuadro.
table-too-large-remedy = Copie la parte de los circuitos en una tabla nueva y use esa.
table-old-or-locked = Es una hoja de cálculo de un tipo antiguo, o con contraseña.
table-old-or-locked-remedy = Ábrala donde se hizo y guárdela sin contraseña como .xlsx, .ods o .csv.
table-no-table = Este archivo no es una tabla.
table-no-table-remedy = Use una hoja de cálculo (.xlsx, .ods) o texto con separadores (.csv). Las líneas copiadas de un documento se pueden pegar como texto.
table-damaged = Esta hoja de cálculo está dañada y no se puede leer.
table-damaged-remedy = Cópiela otra vez de donde vino, o ábrala allí y guárdela de nuevo.

## Panel tables: columns and rows

column-nothing = no se usa
column-panel = cuadro
column-panel-itself = nombre del cuadro que es la fila
column-circuit = número de circuito
column-rating = amperios
column-poles = polos
column-serves = lo que alimenta
column-room = estancia o planta
column-kind = tipo de cosa
column-name = nombre de la cosa
column-watts = vatios
import-blank = En esta fila no hay nada.
import-no-circuit = La fila no tiene número de circuito.
import-not-a-circuit = { $value } no es un número de circuito que se pueda usar.
import-no-breaker = Según la tabla no hay disyuntor en el lugar { $circuit }.
import-only-a-number = La fila tiene un número, { $circuit }, y nada más: con eso nadie sabe si hay un disyuntor.
import-twice = El circuito { $circuit } ya está en la fila { $row }, y se tomó aquella.
import-date = La hoja de cálculo convirtió en fecha lo que aquí se escribió. Escriba la celda como texto, por ejemplo 1-3.
import-formula = Aquí hay una fórmula cuyo resultado no se guardó. Abra la tabla, guárdela de nuevo y vuelva a usarla.
import-error = Aquí falló una fórmula.
import-too-long = Esta celda tiene más texto que un rótulo de cuadro.
import-no-name = La fila no tiene nombre ni circuito.
import-not-a-rating = { $value } no es un calibre en amperios. El circuito se tomó sin él.
import-not-poles = { $value } no es un número de polos. Se dejó fuera.
import-thing-without-circuit = De { $name } no se dice el circuito. Está en el plano como desconocido; busque su disyuntor cuando pueda.
import-thing-with-odd-circuit = El circuito de { $name } dice { $value }, que no es un número de circuito. Está en el plano como desconocido; busque su disyuntor cuando pueda.
import-thing = Cosa de la tabla
import-new-panel = Cuadro de la tabla
import-note-place = Según la tabla: { $place }
import-breaker-name = Disyuntor { $circuit }, { $serves }
import-breaker-number = Disyuntor { $circuit }
import-spare-name = Disyuntor { $circuit }, reserva

## Finding circuits
# $device is a breaker or GFCI.

find-cover-stays-on = Mueva solo las palancas de los disyuntores. Si hay que quitar la tapa del cuadro, es trabajo con licencia: llame a un electricista.
find-main-stays-on = El general se queda conectado: lo pararía todo a la vez y no diría nada.
find-press-test = Pulse TEST en el diferencial. Debe sonar un clic y quedarse sin corriente. Pulse RESET al terminar la vuelta.
find-dry = Póngase en suelo seco y con las manos secas. No toque un cuadro mojado, caliente, que zumbe o esté dañado.
find-tell-everyone = Avise a todos en la casa antes de cada vuelta, y mire que nadie esté en un salvaescaleras, en un ascensor o con una herramienta.
find-depend = Los aparatos médicos, la bomba de achique, los congeladores y las alarmas no deben apagarse sin que nadie lo note. Pregunte quién depende de qué y deles antes otra alimentación.
find-depend-named = Estos están entre lo que se busca, así que cualquier disyuntor puede pararlos: { $list }.
find-computers = Guarde su trabajo y apague los ordenadores antes de la primera vuelta.
find-lamp = Enchufe una lámpara o una radio donde quiera verlo: un enchufe sin corriente no se nota. Mejor es un comprobador de enchufes.
find-ask-named = De { $device } cuelga algo de lo que alguien puede depender: { $list }. ¿Puede apagarse unos minutos?
find-ask-medical = Por su nombre, { $device } alimenta equipo médico. ¿Puede apagarse unos minutos?
find-ask-pump = Por su nombre, { $device } alimenta una bomba. ¿Puede apagarse unos minutos?
find-ask-freezer = Por su nombre, { $device } alimenta un congelador o frigorífico. ¿Puede apagarse unos minutos?
find-ask-alarm = Por su nombre, { $device } alimenta alarmas. ¿Puede apagarse unos minutos? Avise a quien las vigila.
find-ask-computer = Por su nombre, { $device } alimenta ordenadores o la red. ¿Están apagados, y puede apagarse?
find-ask-marked = { $device } está marcado como algo de lo que alguien depende. ¿Puede apagarse unos minutos?
find-conflict = { $name } se quedó sin corriente con { $device }, pero en el plano está en otro disyuntor. Mire qué es lo correcto: no se cambió nada.
find-gfci-before = { $name } se quedó sin corriente con { $device }, que en el plano está detrás. Mire cuál va primero: no se cambió nada.
find-gfci-broken = { $name } no salta con su botón de prueba: no protege a nadie. Hágalo cambiar.
find-plan = { $count ->
    [one] Desconecte este y mire después todo lo de la lista.
   *[other] Desconecte estos { $count } y mire después todo lo de la lista.
}
find-walks = { $walks ->
    [one] Una vuelta como mucho.
   *[other] Como mucho { $walks } vueltas, en lugar de { $single } de uno en uno.
}

## A home on disk: what can go wrong, and what to do. { $path } is the file or folder.

folder-told = { $problem } { $remedy }

folder-missing = No se encuentra { $path }.
folder-missing-remedy = Vea si se movió o cambió de nombre y ábralo desde donde está ahora.

folder-no-home-file = La carpeta { $path } no contiene { $file }, así que no es una casa.
folder-no-home-file-remedy = Elija la carpeta donde está { $file }, o empiece allí una casa nueva.

folder-unread = No se pudo leer { $path }. El sistema dice: { $why }.
folder-unread-remedy = Vea si el disco está conectado y si usted puede abrirlo, y vuelva a intentarlo.

folder-too-large = { $path } tiene más de { $most } MiB y no se leyó.
folder-too-large-remedy = Vea si es el archivo correcto. Si es una imagen, redúzcala y vuelva a agregarla.

folder-outside = La casa en { $path } menciona el archivo { $inside }, que está fuera de su carpeta. No se abrió.
folder-outside-remedy = Ponga el archivo en la carpeta de la casa y vuelva a elegirlo.

folder-bad-name = { $path } no es un nombre para un archivo que pertenezca a una casa.
folder-bad-name-remedy = Use log.ron para el registro de problemas.

folder-not-a-picture = La imagen para { $path } no es JPEG, PNG ni WebP y no se guardó.
folder-not-a-picture-remedy = Guárdela como JPEG o PNG y vuelva a agregarla.

folder-no-home = { $path } no se puede leer como casa. Primer problema: { $first }
folder-no-home-remedy = Corríjalo en un editor de texto, o abra la copia que está al lado y termina en .bak.

folder-newer = { $path } está en un formato que esta versión no escribe, así que no se guarda nada encima.
folder-newer-remedy = Use una versión más nueva del programa para editarlo, o guarde una copia en otra carpeta.

folder-not-text = { $path } no es texto en UTF-8, así que guardar encima perdería algo.
folder-not-text-remedy = Ábralo en un editor de texto y guárdelo como UTF-8, o guarde una copia en otra carpeta.

folder-in-use = { $path } se está editando en otra ventana (proceso { $process } en { $host }). Aquí no se guardó nada.
folder-in-use-remedy = Siga en esa ventana, o ciérrela primero. Mientras tanto puede verlo todo aquí, o guardar una copia en otra carpeta.

folder-in-use-by-unknown = { $path } se está editando en otra ventana. Aquí no se guardó nada.
folder-in-use-by-unknown-remedy = Siga en esa ventana, o ciérrela primero. Mientras tanto puede verlo todo aquí, o guardar una copia en otra carpeta.

folder-changed = Alguien más cambió { $path } desde que se leyó aquí, así que no se guardó encima.
folder-changed-remedy = Guarde lo suyo como copia en otra carpeta, o vuelva a cargar el archivo y renuncie a lo que cambió.

folder-gone = La carpeta { $path } no está, así que no se pudo guardar nada en ella.
folder-gone-remedy = Recupérela o conecte su disco y guarde de nuevo; o guarde una copia en otra carpeta.

folder-read-only = No se permite escribir en { $path }. El sistema dice: { $why }.
folder-read-only-remedy = Pida permiso para escribir allí, o guarde una copia en una carpeta propia.

folder-full = No hay espacio para escribir { $path }. Lo que había antes sigue intacto. El sistema dice: { $why }.
folder-full-remedy = Libere espacio en ese disco y guarde de nuevo, o guarde una copia en otro disco. Deje la ventana abierta hasta entonces.

folder-unwritten = No se pudo escribir { $path }. Lo que había antes sigue intacto. El sistema dice: { $why }.
folder-unwritten-remedy = Vea si el disco está conectado y guarde de nuevo; o guarde una copia en otra carpeta.

folder-occupied = Ya hay algo en { $path }, y no se escribió encima.
folder-occupied-remedy = Elija otro nombre, o una carpeta vacía.

folder-stopped = El guardado de { $path } terminó por un fallo del programa.
folder-stopped-remedy = Guarde ahora una copia en otra carpeta y vuelva a abrir la casa.

folder-zip-not-a-zip = { $path } no es un archivo zip completo.
folder-zip-not-a-zip-remedy = Pida que se lo envíen o cópielo de nuevo: quizá se cortó en el camino.

folder-zip-damaged = En { $path } el archivo { $entry } está dañado. No se desempacó nada.
folder-zip-damaged-remedy = Pida que le envíen el zip de nuevo, o vuelva a copiarlo.

folder-zip-encrypted = En { $path } el archivo { $entry } tiene contraseña. No se desempacó nada.
folder-zip-encrypted-remedy = Pida un zip sin contraseña.

folder-zip-method = En { $path } el archivo { $entry } está empacado de una forma que aquí no se puede leer. No se desempacó nada.
folder-zip-method-remedy = Desempáquelo con otro programa y abra la carpeta, o pida un zip común.

folder-zip-link = En { $path } la entrada { $entry } es un enlace a otro lugar. No se desempacó nada.
folder-zip-link-remedy = Pida un zip que contenga los archivos mismos. Si no conoce a quien lo envía, no lo abra con otro programa.

folder-zip-outside = En { $path } la entrada { $entry } quedaría fuera de la carpeta de la casa. No se desempacó nada.
folder-zip-outside-remedy = Una casa nunca se empaca así. Si no conoce a quien lo envía, no lo abra con otro programa.

folder-zip-twice = En { $path } dos entradas tienen el mismo nombre: { $entry } No se desempacó nada.
folder-zip-twice-remedy = Pida un zip empacado de nuevo.

folder-zip-unexpected = En { $path } la entrada { $entry } no pertenece a una casa. No se desempacó nada.
folder-zip-unexpected-remedy = Una casa es home.ron y log.ron, con imágenes en plans y photos y papeles en documents. Saque lo que no sea de eso y empáquela de nuevo.

folder-zip-too-many = { $path } tiene más de { $most } entradas. No se desempacó nada.
folder-zip-too-many-remedy = Vea si es el archivo correcto.

folder-zip-too-large = En { $path } el archivo { $entry } tiene más de { $most } MiB. No se desempacó nada.
folder-zip-too-large-remedy = Reduzca esa imagen y empaque la casa de nuevo.

folder-zip-too-large-altogether = { $path } tiene más de { $most } MiB al desempacarlo. No se desempacó nada.
folder-zip-too-large-altogether-remedy = Saque las fotos que no hagan falta y empaque la casa de nuevo.

folder-zip-grows = En { $path } el archivo { $entry } crece más de { $most } veces al desempacarlo, como solo lo hacen los archivos hechos para llenar un disco. No se desempacó nada.
folder-zip-grows-remedy = Borre el zip si no conoce a quien lo envía.

folder-zip-no-home-file = En { $path } no hay home.ron, así que no es una casa. No se desempacó nada.
folder-zip-no-home-file-remedy = Elija el zip de una casa, o empaque la carpeta donde está home.ron.

## Pictures, straightening and scale

picture-empty = El archivo está vacío. Copie la imagen de nuevo o tome otra.
picture-not-a-picture = El archivo no es una imagen. Elija un JPEG, PNG o WebP.
picture-other-kind = { $kind ->
    [heic] Es una imagen HEIC, como la guardan algunos teléfonos, y aquí no se puede leer. Compártala o expórtela desde el teléfono como JPEG, o ponga la cámara en su formato más compatible y tómela de nuevo.
    [avif] Es una imagen AVIF, que aquí no se puede leer. Ábrala en un visor de imágenes y guárdela como JPEG o PNG.
    [pdf] Es un PDF. Muestre en la pantalla la página con el plano, tome una imagen de la pantalla y elija esa; o exporte la página como PNG.
    [gif] Es un GIF, que aquí no se puede leer. Ábralo en un visor de imágenes y guárdelo como PNG.
    [tiff] Es un TIFF o una imagen sin revelar de una cámara, que aquí no se puede leer. Guárdela como JPEG o PNG.
    [bmp] Es una imagen BMP, que aquí no se puede leer. Ábrala en un visor de imágenes y guárdela como PNG.
    [svg] Es un dibujo SVG, que aquí no se puede leer. Expórtelo como PNG, de unos 3000 píxeles de ancho.
    [jpeg-xl] Es una imagen JPEG XL, que aquí no se puede leer. Ábrala en un visor de imágenes y guárdela como JPEG.
   *[video] Es una película. Tome una foto del plano y elija esa.
}
picture-too-large = La imagen dice tener { $width } × { $height } píxeles, más de lo que se puede cargar (como máximo { $side } por lado, y no en ambos). Guárdela más pequeña, de unos 4000 píxeles de ancho, y elíjala de nuevo.
picture-cut-off = Falta el final del archivo de la imagen, así que una parte no se vería. Cópiela o envíela de nuevo; por cable o como archivo llega entera.
picture-damaged = El archivo de la imagen está dañado ({ $why }). Cópielo o envíelo de nuevo, o tome otra.
picture-stopped = La imagen no se cargó porque usted lo detuvo. Elíjala de nuevo cuando quiera.

picture-corner-outside = Una esquina está muy fuera de la imagen. Arrástrela adonde se juntan los bordes del rectángulo.
picture-corners-together = Dos esquinas están en el mismo lugar. Sepárelas, una en cada esquina del rectángulo.
picture-corners-in-line = Tres esquinas están casi en línea, así que no son las de un rectángulo. Arrastre cada una a su propia esquina; si están bien, tome la foto desde más arriba.
picture-corners-hollow = Una esquina queda entre las otras tres. Arrástrela hacia afuera, a la cuarta esquina del rectángulo.
picture-corner-sharp = Dos lados se juntan casi en una punta. Separe las esquinas; si están bien, tome la foto desde más arriba.

picture-points-close = Los dos puntos están demasiado cerca para medir con ellos. Póngalos en los dos extremos de una pared larga.
picture-scale-unlikely = Con esta distancia el plano sería más pequeño que una mesa o más grande que una calle. Revise los dos puntos y la unidad de la distancia.

picture-distance-empty = Escriba la distancia entre los dos puntos, como 3,81 m o 12' 6".
picture-distance-no-unit = { $found } no tiene unidad. Escriba metros, como 3,81 m, o pies y pulgadas, como 12' 6".
picture-distance-no-number = Donde está { $found } debe ir un número. Escríbalo como 3,81 m o 12' 6 1/2".
picture-distance-unknown = { $found } no es una unidad conocida aquí. Use m, cm y mm, o pies y pulgadas.
picture-distance-fraction = { $found } no es una fracción de pulgada o pie. Escríbala como 6 1/2.
picture-distance-order = { $found } no puede ir ahí. Escriba pies y después pulgadas, o solo metros.
picture-distance-too-many = { $found } es demasiado para lo que va antes: un pie tiene 12 pulgadas, un metro 100 centímetros. Revise si el primer número es correcto.
picture-distance-short = { $metres } m es muy poco para medir un plano. Revise la unidad y la coma decimal, o elija una pared más larga.
picture-distance-long = { $metres } m es más largo que cualquier casa. Revise la unidad y la coma decimal.

picture-door-entrance = Puerta de entrada
picture-door-room = Puerta de un cuarto
picture-door-bathroom = Puerta de un baño

## What is still missing

missing-percent = El { $percent } % de los sitios tiene respuesta ({ $answered } de { $spots }).
missing-water-service = No se sabe cómo entra el agua en la casa ni dónde se corta.
missing-panel = El cuadro eléctrico no está en el plano.
missing-gas-meter = El contador de gas no está en el plano.
missing-house-drain = No se sabe cómo salen los desagües de la casa ni dónde está su registro.
missing-main = No se conoce ninguna llave general que pueda mover cualquiera de la casa.
missing-cleanout = { $count ->
    [one] En el desagüe de un sitio no se conoce ningún registro.
   *[other] En el desagüe de { $count } sitios no se conoce ningún registro.
}
missing-shutoff = No se conoce ninguna llave para esto: { $name }.
missing-feed = { $count ->
    [one] Nada en el plano alimenta a { $name } ({ $medium }).
   *[other] Nada en el plano alimenta a { $name } ({ $medium }), y de ahí cuelgan { $count } sitios.
}
missing-drain = { $count ->
    [one] Según el plano, { $name } no desagua en ningún sitio.
   *[other] Según el plano, { $name } no desagua en ningún sitio, y con él { $count } sitios.
}
missing-pump = De este pozo no se conoce la bomba: { $name }.
missing-breakers = { $count ->
    [one] No se conoce el disyuntor de un enchufe o luz.
   *[other] No se conocen los disyuntores de { $count } enchufes y luces.
}
missing-set = { $room }: en una estancia así suele haber esto, y no está en el plano: { $kind }.
missing-rooms = Todavía no hay ninguna estancia en el plano. Vale un plano, una foto de uno o unos rectángulos.
missing-emergency-phone = Falta el número de emergencias.
missing-water-utility = No se conoce el número de la compañía del agua.
missing-electricity-utility = No se conoce el número de la compañía eléctrica.
missing-sewer-utility = No se conoce el número de la compañía del alcantarillado.
missing-gas-utility = No se conoce el número de la compañía del gas.
missing-place = Nadie podría encontrarlo, el plano no dice en qué estancia está: { $name }.
missing-tried = Nadie lo ha probado todavía: { $name }. Ciérrela, mire que cierra bien y vuelva a abrirla.
missing-behind-gfci = { $count ->
    [one] No se sabe qué cuelga de este diferencial: { $name }.
   *[other] No se sabe qué cuelga de { $count } diferenciales, entre ellos { $name }.
}
