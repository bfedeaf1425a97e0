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
words-part-panel = cuadro, subcuadro, tablero
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
part-outlet = Enchufe { $number }, { $of }
part-light = Luz, { $of }
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
