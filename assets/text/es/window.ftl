# Textos: la ventana

window-title = Quarterturn: qué hacer cuando algo falla en la casa

## Barra
window-people-in-danger = Personas en peligro: { $phone }
window-settings = Ajustes…
window-open-other = Otra casa…
window-text-smaller = A−
window-text-smaller-label = Letra más pequeña
window-text-bigger = A+
window-text-bigger-label = Letra más grande
window-theme-light = Claro
window-theme-dark = Oscuro

## Problemas del archivo de la casa
window-problems = { $n ->
    [one] Hay una cosa que revisar en el archivo de esta casa.
   *[other] Hay { $n } cosas que revisar en el archivo de esta casa.
}
window-problems-show = Mostrar
window-problems-hide = Ocultar

## Abrir otra casa
window-open-title = Abrir otra casa
window-open-hint = Una casa es una carpeta con un archivo home.ron adentro.
window-choose-file = Elegir un archivo…
window-choosing = Esperando la ventana de archivos… Si no aparece, escriba la ruta abajo.
window-file-filter = Archivos de casas
window-path = O escriba la ruta de la carpeta
window-open = Abrir
window-cancel = Cancelar
window-perhaps-no-dialog = Parece que no se pudo mostrar la ventana de archivos. Escriba la ruta.
window-unread = No se pudo leer { $path }: { $why }
window-no-home = { $path } no contiene una casa que se pueda mostrar. { $why }

## Primera página: el problema
window-what-do-you-see = ¿Qué ve usted?
window-what-do-you-see-hint = Oprima lo que más se parezca. No se pierde nada con probar.
window-group-life = Peligro para las personas
window-group-water = Agua
window-group-drains = Desagües
window-group-power = Electricidad
window-group-cooling = Aire acondicionado
window-group-control = Cerraduras, puertas, alarmas
window-trouble-and-hint = { $trouble }, { $hint }
window-back = ← Atrás

## Segunda página: el lugar
window-where = ¿Dónde es?
window-where-hint = Oprímalo en la lista o en el plano.
window-search = Busque por nombre, etiqueta o cuarto
window-none-found = Aquí nada se llama “{ $words }”.
window-show-all = Mostrar todo otra vez
window-no-spots = El mapa de esta casa no tiene ningún lugar para este problema.
window-space-unknown = Cuarto que no está en el mapa
window-spot-space = En cualquier parte de: { $space }
window-spot-home = Toda la casa
window-spot-connection = Línea de { $from } a { $to }
window-tagged = { $tag } { $device }
window-whereabouts = { $space }, { $level }
window-whereabouts-unknown = Su cuarto no está en el mapa

## Tercera página: la respuesta
window-caution = { $signal }: { $text }
window-not-mapped = El mapa no muestra de dónde se alimenta este lugar. Lo que sigue son consejos generales.
window-signal-danger = PELIGRO
window-signal-warning = ADVERTENCIA
window-signal-caution = PRECAUCIÓN
window-signal-notice = AVISO
window-left-out = No se cuenta, porque no funciona: { $device }
window-works-after-all = Sí funciona: { $device }

window-do-this-first = Haga esto primero
window-do-this-now = Haga esto ahora
window-step-of = paso { $n } de { $of }
window-step-number = { $n }.
window-then = Después
window-all-done = Todos los pasos están hechos.
window-done = Listo
window-wont-turn = No gira
window-wont-switch-off = No se apaga
window-wont-stay-on = No se queda encendido
window-wont-open = No abre
window-was-done = { $n }. { $step }
window-not-done = No está hecho
window-not-done-of = El paso { $n } no está hecho
window-prove = Para estar seguro: { $prove }
window-takes = Más o menos { $time }, con la caminata
window-takes-and-spills = Más o menos { $time }, con la caminata. Hasta que todo esté cerrado, saldrá más agua: más o menos { $water }.
window-seconds = { $n } segundos
window-minutes = { $n ->
    [one] un minuto
   *[other] { $n } minutos
}
window-litres = { $n } L
window-gallons = { $n } gal
window-tool = Lleve: { $tool }
window-stiff = Se sabe que cuesta moverlo: pide fuerza o tiempo.
window-leaks-by = Se sabe que deja pasar algo cuando está cerrado.
window-device-line = { $device } ({ $place })
window-device-line-tagged = { $tag } { $device } ({ $place })

window-plot = Cuánta agua sale hasta entonces
window-plot-hint = El tiempo hasta que no salga más, y lo que habrá salido. En negrita: sus pasos.
window-plot-hint-one = El tiempo hasta que no salga más, y lo que habrá salido, con sus pasos.
window-plot-in-words = Gráfica del agua en el piso según el tiempo. Lo mismo sigue en palabras.
window-plot-zero = 0
window-plot-seconds = { $n } s
window-plot-minutes = { $n } min
window-choice = Cierre: { $devices }. { $time }, { $water }.
window-choice-reopens = Cierre: { $devices }. { $time }, { $water }. Después vuelva a abrir: { $again }. Después de { $end }, el resto de la casa tiene agua.
window-choice-list = { $first }, { $rest }

window-narrow-down = Mire aquí para encontrar la causa
window-was-seen = { $device }: { $seen }
window-not-seen = Deshacer
window-not-seen-of = Deshacer lo que se vio en: { $device }
window-seen-live = Tiene corriente
window-seen-dead = No tiene corriente
window-seen-drains = Desagua bien
window-seen-backs-up = El agua se devuelve
window-seen-wet = Hay agua ahí
window-seen-dry = Está seco
window-seen-on = Está encendido
window-seen-off = Está apagado
window-seen-tripped = Se disparó
window-seen-water-comes = Sale agua
window-seen-no-water = No sale agua
window-seen-hot-comes = Sale caliente
window-seen-no-hot = Sigue fría
window-seen-open = Está abierta
window-seen-shut = Está cerrada

window-goes-off = También se queda sin servicio
window-goes-off-list = Se queda sin servicio: { $devices }
window-call = Llame
window-no-number = no hay número en el mapa
window-call-besides = Sus otras compañías de servicio:
window-call-line = { $phone }  { $name }
window-call-line-without = { $name }: no hay número en el mapa
window-blockage = La obstrucción
window-relief-open = Déjelo salir aquí: { $device }
window-relief-rod = Meta la sonda desde aquí: { $device }
window-relief-emerges = Después sale en: { $devices }
window-relief-between = Puede estar entre { $from } y { $to }
window-suspects = Qué puede ser
window-suspect = { $percent ->
    [0] Menos de 1%: { $device }
   *[other] { $percent }%: { $device }
}
window-suspects-more = { $n ->
    [one] Una más, menos probable
   *[other] { $n } más, menos probables
}
window-other-ways = Otras maneras de pararlo
window-by-licensed = Lo hace una persona con licencia.
window-by-utility = Lo hace la compañía de servicio.
window-show-on-plan = Ver en el plano
window-show-on-plan-of = Ver en el plano: { $device }
window-show-step = Ver otra vez mi paso
window-restore = Después: volver a lo normal

## Plano
window-plan-of = Plano de: { $level }
window-no-levels = El mapa de esta casa no tiene pisos.
window-no-plan = No hay plano de este piso. Use la lista.
window-picture-unreadable = No se puede mostrar la imagen { $path }. Los cuartos se dibujan por su contorno.
window-level-with-devices = { $level } ({ $n })
window-whole-floor = Todo el piso
window-closer = Más cerca
window-stand = El cuarto donde está usted
window-stand-in = Usted está en: { $space }
window-stand-unknown = ¿En qué cuarto está usted?
window-device-on-level = { $device } está aquí: { $level }
window-go-to-level = Vaya de { $from } a { $to }
window-not-on-plan = { $device } no tiene lugar en un plano.
window-pin = Marca: { $device }
window-go-to = Vaya a: { $device }
window-trouble-here = El problema está aquí
window-trouble-here-at = El problema está aquí: { $spot }

## Plan: looking closer, the way, the lines
window-plan-keys = Las flechas mueven el plano, más y menos lo acercan y lo alejan, cero muestra toda la planta, Inicio muestra lo que importa.
window-plan-farther = Más lejos
window-plan-matters = Lo que importa
window-plan-way = Su camino: { $far }
window-plan-way-guess = En línea recta, { $far }: el mapa no muestra puertas
window-plan-line = { $system ->
    [water] Tubo de agua hasta el problema
    [drain] Desagüe hasta el problema
    [power] Cableado hasta el problema
    [gas] Tubo de gas hasta el problema
    [cooling] Tubo de condensado hasta el problema
   *[control] Cable de control hasta el problema
}
window-plan-goes-on = Sigue en: { $level }
window-plan-comes-from = Viene de: { $level }
window-picture-coming = La imagen está por llegar. Hasta entonces los cuartos se dibujan por sus contornos.

## Figures of devices, in words
window-figure-lever = { $way ->
    [close] Dibujo: una palanca a lo largo del tubo. Una flecha la gira un cuarto de vuelta hacia la derecha, hasta que quede atravesada.
    [open] Dibujo: una palanca atravesada sobre el tubo. Una flecha la gira un cuarto de vuelta hacia la izquierda, hasta que quede a lo largo del tubo.
   *[rest] Dibujo: una palanca a lo largo del tubo, que está abierto.
}
window-figure-tee = { $way ->
    [close] Dibujo: una manija de dos alas a lo largo del tubo. Unas flechas la giran un cuarto de vuelta, hasta que quede atravesada.
    [open] Dibujo: una manija de dos alas atravesada sobre el tubo. Unas flechas la giran un cuarto de vuelta, hasta que quede a lo largo del tubo.
   *[rest] Dibujo: una manija de dos alas a lo largo del tubo, que está abierto.
}
window-figure-oval = { $way ->
    [close] Dibujo: una manija ovalada pequeña a lo largo de su tubo. Unas flechas la giran un cuarto de vuelta, hasta que quede atravesada.
    [open] Dibujo: una manija ovalada pequeña atravesada sobre su tubo. Unas flechas la giran un cuarto de vuelta, hasta que quede a lo largo.
    [turns] { $turns ->
        [0] Dibujo: una manija ovalada pequeña. Una flecha la gira hacia la derecha, vuelta tras vuelta, hasta que pare.
       *[other] Dibujo: una manija ovalada pequeña. Una flecha la gira hacia la derecha hasta que pare. Vueltas: { $turns }.
    }
    [turns-open] Dibujo: una manija ovalada pequeña. Una flecha la gira hacia la izquierda, vuelta tras vuelta.
   *[rest] Dibujo: una manija ovalada pequeña.
}
window-figure-wheel = { $way ->
    [turns] { $turns ->
        [0] Dibujo: un volante redondo. Una flecha lo gira hacia la derecha, vuelta tras vuelta, hasta que pare.
       *[other] Dibujo: un volante redondo. Una flecha lo gira hacia la derecha hasta que pare. Vueltas: { $turns }.
    }
    [turns-open] Dibujo: un volante redondo. Una flecha lo gira hacia la izquierda, vuelta tras vuelta.
   *[rest] Dibujo: un volante redondo.
}
window-figure-slot = { $way ->
    [close] Dibujo: una ranura a lo largo del tubo y un destornillador. Unas flechas la giran un cuarto de vuelta, hasta que la ranura quede atravesada.
    [open] Dibujo: una ranura atravesada sobre el tubo y un destornillador. Unas flechas la giran un cuarto de vuelta, hasta que la ranura quede a lo largo del tubo.
    [turns] { $turns ->
        [0] Dibujo: una ranura y un destornillador. Una flecha la gira hacia la derecha, vuelta tras vuelta, hasta que pare.
       *[other] Dibujo: una ranura y un destornillador. Una flecha la gira hacia la derecha hasta que pare. Vueltas: { $turns }.
    }
    [turns-open] Dibujo: una ranura y un destornillador. Una flecha la gira hacia la izquierda, vuelta tras vuelta.
   *[rest] Dibujo: una ranura para destornillador.
}
window-figure-key = { $way ->
    [close] Dibujo: una caja en el suelo y una llave larga sobre su válvula. Una flecha gira la llave un cuarto de vuelta hacia la derecha, vista desde arriba.
    [open] Dibujo: una caja en el suelo y una llave larga sobre su válvula. Una flecha gira la llave un cuarto de vuelta hacia la izquierda, vista desde arriba.
    [turns] { $turns ->
        [0] Dibujo: una caja en el suelo y una llave larga sobre su válvula. Una flecha gira la llave hacia la derecha, vuelta tras vuelta, vista desde arriba.
       *[other] Dibujo: una caja en el suelo y una llave larga sobre su válvula. Una flecha gira la llave hacia la derecha, vista desde arriba. Vueltas: { $turns }.
    }
    [turns-open] Dibujo: una caja en el suelo y una llave larga sobre su válvula. Una flecha gira la llave hacia la izquierda, vuelta tras vuelta, vista desde arriba.
   *[rest] Dibujo: una caja en el suelo y una llave larga sobre su válvula.
}
window-figure-gas-cock = { $way ->
    [close] Dibujo: una llave inglesa en el extremo plano de una llave de paso, a lo largo del tubo. Una flecha la gira un cuarto de vuelta, hasta que el extremo plano quede atravesado.
    [open] Dibujo: una llave inglesa en el extremo plano de una llave de paso, atravesado sobre el tubo. Una flecha la gira un cuarto de vuelta, hasta que el extremo plano quede a lo largo del tubo.
   *[rest] Dibujo: una llave de paso con un extremo plano, a lo largo del tubo, que está abierto.
}
window-figure-plunger = { $way ->
    [push] Dibujo: un botón que sobresale. Una flecha lo empuja hacia adentro.
    [pull] Dibujo: un botón metido. Una flecha lo jala hacia afuera.
   *[rest] Dibujo: un botón que se empuja o se jala.
}
window-figure-either = { $way ->
    [close] Dibujo de dos manijas, porque el mapa no dice cuál es. Una palanca: un cuarto de vuelta, hasta que quede atravesada sobre el tubo. Un volante redondo: hacia la derecha hasta que pare.
    [open] Dibujo de dos manijas, porque el mapa no dice cuál es. Una palanca: un cuarto de vuelta, hasta que quede a lo largo del tubo. Un volante redondo: hacia la izquierda.
   *[rest] Dibujo de dos manijas, una palanca y un volante redondo, porque el mapa no dice cuál es.
}
window-figure-breaker = { $way ->
    [off] Dibujo: un interruptor del tablero. Una flecha mueve su palanca a la posición de apagado.
    [reset] Dibujo: un interruptor del tablero con la palanca en medio. La primera flecha la lleva hasta apagado, la segunda a encendido.
   *[rest] Dibujo: un interruptor del tablero, encendido.
}
window-figure-lever-switch = { $way ->
    [work] Dibujo: una caja con una palanca al lado. Una flecha baja la palanca a la posición de apagado.
   *[rest] Dibujo: una caja con una palanca al lado. La palanca está arriba, encendida.
}
window-figure-pull-out = { $way ->
    [work] Dibujo: una caja con un bloque. Una flecha saca el bloque derecho hacia afuera.
   *[rest] Dibujo: una caja con un bloque que se puede sacar.
}
window-figure-gfci = { $way ->
    [reset] Dibujo: un tomacorriente con dos botones. Una flecha oprime el botón RESET.
    [test] Dibujo: un tomacorriente con dos botones. Una flecha oprime el botón TEST.
   *[rest] Dibujo: un tomacorriente con dos botones.
}
window-figure-button = { $way ->
    [work] Dibujo: un botón. Una flecha lo oprime.
   *[rest] Dibujo: un botón.
}
window-figure-plug = Dibujo: una clavija que se saca de su tomacorriente.
window-figure-wall-switch = { $way ->
    [work] Dibujo: un interruptor de pared. Una flecha lo baja a la posición de apagado.
   *[rest] Dibujo: un interruptor de pared.
}
window-figure-thermostat = { $way ->
    [work] Dibujo: un termostato con el signo de apagar.
   *[rest] Dibujo: un termostato.
}
window-figure-cap = { $way ->
    [work] Dibujo: una tapa con una llave inglesa en su tuerca. Una flecha entrecortada la desenrosca hacia la izquierda, despacio.
   *[rest] Dibujo: una tapa con una tuerca.
}
window-figure-leave = Dibujo: alguien sale por una puerta.
window-figure-telephone = Dibujo: un teléfono.
window-figure-stop-use = Dibujo: una llave de agua tachada. No la use.
window-figure-look = Dibujo: un ojo. Mire.
window-figure-note = Dibujo: una hoja con renglones. Algo que conviene saber.
window-figure-thing = Dibujo: { $device }

## Emergency window: one step at a time
window-all-done-hint = Si no ha terminado, retire el último paso, o diga qué dispositivo no cierra bien.
window-go-after = Volver a lo normal, y anotarlo
window-it-worked = Funcionó
window-out-of-reach = No puedo llegar
window-take-back = Volver un paso
window-left-out-of-reach = Se deja fuera, porque nadie puede llegar: { $device }
window-in-reach-after-all = Sí puedo llegar a { $device }
window-back-to-now = Ahora: { $step }
window-tab-now = Ahora
window-tab-steps = Todos los pasos
window-tab-steps-count = Todos los pasos ({ $n })
window-tab-goes-off = Qué se apaga
window-tab-goes-off-count = { $n ->
    [0] Se apaga
   *[other] Se apaga ({ $n })
}
window-tab-call = Llamar
window-tab-after = Después
window-goes-off-nothing = Con la primera opción no se apaga nada más.
window-far = A { $far }
window-far-here = Está aquí mismo
window-far-up = A { $far }, y subiendo la escalera
window-far-down = A { $far }, y bajando la escalera
window-feet = { $n ->
    [one] un pie
   *[other] { $n } pies
}
window-metres = { $n ->
    [one] un metro
   *[other] { $n } metros
}
window-minutes-and-seconds = { $minutes }:{ $seconds } min
window-picture-of = Imagen de { $device }
window-picture-of-tagged = Imagen de { $device }, etiqueta { $tag }
window-address = La dirección para leer por teléfono
window-no-address = El mapa no tiene la dirección de esta casa.
window-spot-unknown = No sé dónde
window-search-trouble = O escriba lo que ve, como «inodoro» o «sin luz»
window-search-trouble-hint = ¿No está en la lista? Pulse lo que más se parezca, o muestre todo otra vez.
window-none-found-trouble = No se encuentra nada con «{ $words }».
window-trouble-at = { $trouble }: { $spot }

## Afterwards
window-restored = La acción { $n } está hecha
window-restored-not = La acción { $n } está hecha; pulse para retirarla
window-learnt = ¿Qué aprendió?
window-learnt-hint = Una pulsación lo escribe en el mapa, para que la próxima respuesta sea mejor. Se puede retirar.
window-learnt-nothing = Todavía no se usó ni se probó nada.
window-learnt-works = Funciona bien
window-learnt-stiff = Está dura
window-learnt-seized = No se mueve
window-learnt-leaks-by = Deja pasar algo aunque esté cerrada
window-learnt-label = Etiqueta equivocada…
window-learnt-of = { $device }: { $lesson }
window-learnt-written = Escrito en el mapa.
window-unlearn = Retirarlo
window-unlearn-of = Retirar lo que se aprendió de { $device }
window-relabel = La etiqueta dice
window-write-down = Anotarlo
window-log-note = Algo más para el registro
window-log-kept = Este problema está en el registro de esta casa, con el día y lo que se hizo.
window-log-not-yet = Cuando se haya hecho algo, se escribe en el registro de esta casa.
window-finish = Terminado
window-see-log = Ver el registro
window-no-day = No se sabe el día: el reloj de esta computadora no está puesto.
window-not-lasting = Este es el ejemplo incluido: lo que se anote se pierde al cerrar la ventana.

## The log
window-log = Qué pasó aquí
window-log-hint = Cada problema con su día, lo que se hizo y con qué terminó. Para el seguro y el constructor.
window-log-empty = Aquí todavía no pasó nada.
window-log-print = Hacer una hoja
window-log-when = { $day }, { $time }
window-log-failed = No funcionó: { $devices }
window-log-solved = Terminó con: { $devices }
window-log-remove = Quitar
window-log-remove-of = Quitar del registro: { $trouble }, { $day }

## Practice
window-practice = Práctica
window-practice-how = Aparece un problema y corre el reloj. Busque el dispositivo que hay que usar primero, póngale la mano encima y dígalo. Desde entonces su tiempo reemplaza la estimación en esta casa.
window-practice-where = ¿Desde qué cuarto empieza?
window-practice-start = Empezar el reloj
window-practice-nothing = Este mapa no lleva a ningún dispositivo que buscar. Anote alguno primero.
window-practice-runs = Práctica: { $time }
window-practice-do-not-turn = Póngale la mano encima. No lo gire.
window-practice-found-it = Estoy junto a él
window-practice-found-and-back = Lo encontré y volví
window-practice-stop = Parar
window-practice-stop-here = Parar la práctica
window-practice-found = Encontrado
window-practice-took = { $device }: { $time }
window-practice-reckoned = La estimación, contando el manejo, era { $time }.
window-practice-kept = Guardado para esta casa: desde ahora las respuestas cuentan con su tiempo.
window-practice-again = Otra más
window-practice-enough = Basta por hoy

## When nothing is wrong
window-quiet = Cuando no pasa nada…
window-open-practice = Practicar
window-open-log = Qué pasó aquí
window-open-map = Mapa de la casa
window-open-papers = Hojas para imprimir
window-open-care = Mantenimiento y entrega

## Map
window-map = Mapa de la casa
window-map-walk = Recorrer y marcar
window-map-plans = Planos y cuartos
window-map-lines = Qué alimenta a qué
window-map-panel = Panel
window-map-missing = Falta todavía
window-map-no-levels = Esta casa todavía no tiene pisos. Agregue uno en «Planos y cuartos».
window-undo-nothing = No hay nada que deshacer
window-redo-nothing = No hay nada que rehacer
window-undo-short = Deshacer
window-redo-short = Rehacer
window-motion-on = Permitir que las marcas se muevan
window-motion-off = Dejar las marcas quietas

## Cambios, como los nombran deshacer y rehacer
edit-undo = Deshacer: { $what }
edit-redo = Rehacer: { $what }
edit-connect-breaker = interruptor de { $name }
edit-proposed = líneas propuestas
edit-add = agregar { $name }
edit-change = cambiar { $name }
edit-remove = quitar { $name }
edit-state = { $name }: { $state ->
    [works] funciona
    [stiff] va duro
    [seized] no se mueve
    [leaks-by] no cierra del todo
   *[unknown] sin probar
}
edit-rename = renombrar { $name } a { $new }
edit-tag = etiquetar { $name } como { $tag }
edit-untag = quitar la etiqueta de { $name }
edit-move = mover { $name }
edit-copy = copiar { $name }
edit-connect = conectar { $from } con { $to }
edit-disconnect = desconectar { $from } de { $to }
edit-change-connection = cambiar la línea de { $from } a { $to }
edit-add-passage = agregar el paso entre { $one } y { $other }
edit-remove-passage = quitar el paso entre { $one } y { $other }
edit-plan = plano de { $name }
edit-remove-plan = quitar el plano de { $name }
edit-done = hecho el { $on }: { $name }
edit-remove-done = borrar que se hizo el { $on }: { $name }
edit-tick = marcar «{ $name }»
edit-untick = desmarcar «{ $name }»
edit-drill = simulacro hasta { $name }
edit-remove-drill = quitar un simulacro hasta { $name }
edit-home-name = nombre de la casa: { $name }
edit-address = dirección de la casa
edit-units = unidades: { $units ->
    [us] pies y galones
   *[si] metros y litros
}
edit-language = idioma de las respuestas
edit-emergency-phone = número de emergencias
edit-usual-space = cuarto donde se está casi siempre
edit-north = dirección del norte en los planos
edit-all = { $n } cambios a la vez
edit-cannot-find = Ya no hay nada en esta casa con el id { $id }.
edit-cannot-no-id = Le falta un id.
edit-cannot-taken = Otra cosa de esta casa ya tiene el id { $id }.
edit-cannot-find-connection = { $from } y { $to } no están conectados así.
edit-cannot-connect = { $from } y { $to } no se pueden conectar así: uno de los dos no puede tener nada que ver con lo que lleva la línea.
edit-cannot-loop = Un desagüe solo corre hacia abajo. Aquí correría en círculo: { $names }
edit-cannot-unfit = El archivo de la casa no puede contener eso ({ $key }).

## Qué cambió entre dos estados de una casa
change-part-home = Casa
change-part-level = Piso
change-part-space = Cuarto
change-part-passage = Paso
change-part-component = Aparato
change-part-connection = Línea
change-part-contact = Contacto
change-part-warranty = Garantía
change-part-job = Tarea
change-part-done = Hecho
change-part-moved-in = Lista de mudanza
change-part-document = Documento
change-part-drill = Simulacro
change-thing = { $part } «{ $name }»
change-thing-between = { $part } entre «{ $one }» y «{ $other }»
change-thing-on = { $part } «{ $name }» el { $on }
change-added = Nuevo: { $thing }
change-removed = Ya no está: { $thing }
change-reordered = En otro orden: { $part }
change-field = { $thing }: { $field }, antes { $before }, ahora { $after }
change-field-new = { $thing }: { $field }, ahora { $after }
change-field-gone = { $thing }: { $field }, antes { $before }; ya no se indica
change-field-other = { $thing }: { $field }, indicado de otra manera
change-quoted = «{ $text }»
change-yes = sí
change-no = no
change-point = ({ $point } m)
change-several = { $n } en total
change-of-name = nombre
change-of-format = formato
change-of-units = unidades
change-of-language = idioma
change-of-address = dirección
change-of-emergency-phone = número de emergencias
change-of-usual-space = cuarto donde se está casi siempre
change-of-north-deg = dirección del norte en los planos, en grados
change-of-elevation-m = altura del piso, en metros
change-of-picture = imagen
change-of-left-m = borde izquierdo del plano, en metros
change-of-top-m = borde superior del plano, en metros
change-of-width-m = ancho del plano, en metros
change-of-mirrored = dibujado en espejo
change-of-level = piso
change-of-outline = contorno
change-of-outdoors = al aire libre
change-of-between = une
change-of-stairs = escalera
change-of-to-at = otro extremo de la escalera
change-of-id = identificador
change-of-kind = tipo
change-of-tag = etiqueta
change-of-space = cuarto
change-of-at = lugar
change-of-handle = mando
change-of-closes = forma de cerrar
change-of-state = estado
change-of-normally = posición habitual
change-of-tool = herramienta
change-of-exercised = movido por última vez
change-of-seconds = segundos
change-of-operates = cómo se maneja
change-of-operable-by = quién puede manejarlo
change-of-rating-a = capacidad, en amperios
change-of-poles = polos
change-of-watts = potencia, en vatios
change-of-volume-l = agua que contiene, en litros
change-of-joins = une fría y caliente
change-of-critical = debe nombrarse primero
change-of-boundary = límite entre dos partes
change-of-owner = dueño
change-of-panel = tablero
change-of-circuit = circuito
change-of-lamp = luz o botón
change-of-photo = foto
change-of-note = nota
change-of-arc-fault = dispara por arcos
change-of-installed = instalado el
change-of-duct = ducto
change-of-length-m = largo, en metros
change-of-quarter-elbows = codos de 90 grados
change-of-eighth-elbows = codos de 45 grados
change-of-private = privado
change-of-from = desde
change-of-to = hasta
change-of-carries = lleva
change-of-size = medida
change-of-material = hecho de
change-of-one-way = un solo sentido
change-of-phone = teléfono
change-of-role = se le llama para
change-of-hours = horario
change-of-contact = contacto
change-of-covers = cubre
change-of-media = líneas cubiertas
change-of-years = años
change-of-days = días
change-of-months = meses
change-of-stands-for = tarea de la lista incluida
change-of-components = aparatos
change-of-component = aparato
change-of-how = cómo se hace
change-of-every-months = intervalo, en meses
change-of-last-done = hecho por última vez
change-of-job = tarea
change-of-on = día
change-of-by = por quién
change-of-finding = resultado
change-of-item = punto
change-of-file = archivo
change-of-found-only = el reloj paró al encontrarlo
change-of-plan = plano
change-word-works = funciona
change-word-stiff = va duro
change-word-seized = no se mueve
change-word-leaks-by = no cierra del todo
change-word-unknown = sin probar
change-word-open = abierto
change-word-shut = cerrado
change-word-anyone = cualquiera
change-word-licensed = alguien con licencia
change-word-utility = la compañía
change-word-us = pies y galones
change-word-si = metros y litros
change-word-lever = palanca
change-word-wheel = volante
change-word-knob = perilla
change-word-tee = mariposa
change-word-slot = ranura para destornillador
change-word-key = cuadrado para llave
change-word-button = pulsador
change-word-toggle = palanquita
change-word-pull-out = bloque extraíble
change-word-cap = tapa
change-word-quarter-turn = un cuarto de vuelta
change-word-multi-turn = varias vueltas
change-word-push = empujar
change-word-pull = tirar
change-word-to-off = a OFF
change-word-unscrew = desenroscar
change-word-copper = cobre
change-word-pex = polietileno reticulado
change-word-pe = polietileno
change-word-pvc = plástico PVC
change-word-cpvc = plástico CPVC
change-word-abs = plástico ABS
change-word-pp = polipropileno
change-word-galvanized = acero galvanizado
change-word-steel = acero negro
change-word-stainless = acero inoxidable
change-word-cast-iron = hierro fundido
change-word-clay = barro
change-word-lead = plomo
change-word-rubber = caucho
change-word-braided = acero trenzado
change-word-aluminum = aluminio
change-word-workmanship = mano de obra
change-word-parts-and-labor = piezas y mano de obra
change-word-parts = piezas
change-word-structural = estructura
change-word-service-plan = plan de servicio
change-word-turns = { $n ->
    [one] una vuelta
   *[other] { $n } vueltas
}

## The plan that is worked on

window-canvas-nearer = Más cerca
window-canvas-keys = Sin ratón: vaya al plano con el tabulador, mueva la cruz con las flechas (con mayúsculas, un poco) y pulse Intro.

## Walking round and pinning

edit-accept = aceptar las líneas propuestas para { $name }
window-walk-what = ¿Delante de qué está usted?
window-walk-search = Buscar por nombre
window-walk-room = El cuarto en que está
window-walk-nothing-found = Nada se llama así. Pruebe otra palabra, o «otra cosa».
window-walk-first = Un mapa empieza por esto
window-walk-then = O siga con
window-breaker-which = ¿En qué interruptor está?
window-breaker-circuit = { $number } · { $serves }
window-breaker-with = Lo mismo vale para { $devices }.
window-breaker-unknown = ¿Nadie lo sabe? Entonces se averigua apagando uno y recorriendo la casa.
window-breaker-find = Averiguarlo
window-walk-usual = Lo que suele tener un cuarto así: { $room }
window-walk-sets = Cosas típicas, cada una con sus llaves y líneas
window-walk-search-more = Cualquier otra llave, pieza o aparato se encuentra buscando su nombre.
window-walk-alone = { $kind }, por separado
window-walk-there-sign = ✓ { $what }
window-walk-there = { $what } – en el mapa
window-walk-press = Pulse ahora su lugar en el plano.
window-walk-no-place = ¿No está en el plano? Elija entonces solo el cuarto:
window-walk-into = Al cuarto: { $room }
window-walk-not = Ahora no
window-walk-fewer = Menos
window-walk-more = Más
window-walk-count = { $n } en total

## The form of a device

window-device-next = Lo siguiente
window-device-is = Qué es
window-device-where = Dónde está
window-device-room = Cuarto
window-device-move = Darle otro lugar
window-device-press-place = Pulse su nuevo lugar en el plano. También se puede arrastrar su marca, o moverla con las flechas.
window-device-next-tag = Darle la siguiente etiqueta libre: { $tag }
window-device-worked = Cómo se maneja
window-device-state = Probado
window-device-handle = Mando
window-device-closes = Se cierra con
window-device-by = Quién puede manejarlo
window-device-normally = En un día normal está
window-device-choice = { $what }: { $choice }
window-device-change = Elegir otra cosa
window-device-untold = no se sabe
window-device-more = Más sobre él
window-device-critical = Hay que nombrarlo primero si se apaga
window-device-boundary = Aquí termina el lado de una de las partes
window-device-arc-fault = También salta por arcos
window-device-private = La nota y la foto son privadas
window-device-photo = Foto
window-device-copy = Copiar
window-device-copy-of = Copia de { $name }
window-device-delete = Borrar…
window-device-delete-what = ¿Borrar { $name }?
window-device-delete-nothing = Nada más depende de él.
window-device-delete-with = Esto se va con él, o cambia:
window-device-delete-now = Borrar { $name }
window-device-keep = Conservarlo
window-field-name = Nombre
window-field-tag = Etiqueta
window-field-note = Nota
window-field-height = Altura sobre el suelo
window-field-tool = Herramienta que necesita
window-field-lamp = Qué dice su luz o botón
window-field-circuit = Circuito, como lo escribe el directorio del tablero
window-field-rating = Corriente nominal, en amperios
window-field-poles = Polos
window-field-watts = Potencia, en vatios
window-field-volume = Agua que contiene, en la unidad de la casa
window-field-no-sense = Eso no se puede leer. Sigue valiendo lo que había antes.

## Lines that are proposed

window-offers = Lo que probablemente lo alimenta y desagua
window-offer = De { $from } a { $to }: { $medium }
window-offer-yes = Sí, así es
window-offer-accept = Aceptar de { $from } a { $to }: { $medium }
window-offers-all = Aceptar las { $n }

## A photo of a device

window-photo-is = Guardada como { $path }
window-photo-remove = Quitar la foto
window-photo-choose = Elegir una foto…
window-photo-path = O la ruta de una foto: JPEG, PNG o WebP
window-photo-take = Usar esta foto
window-photo-coming = Se está leyendo la foto.
window-photo-stop = Parar eso
window-photo-none = No se eligió ninguna foto. Si no apareció la ventana de archivos, escriba la ruta de la foto.
window-photo-filter = Fotos
window-photo-no-folder = Esta casa no está en una carpeta suya y no puede guardar fotos. Guárdela antes en una carpeta.

## The list of what is still missing

window-missing-looking = Se está repasando el mapa.
window-missing-percent = El { $percent } % de los puntos tiene respuesta.
window-missing-next = Siguiente: { $what }
window-missing-why = Primero va lo que más protege. Un punto tiene respuesta si el mapa dice qué cerrar allí, o a quién llamar.
window-missing-nothing = No falta nada más.
window-missing-protects = { $more ->
    [0] Para: { $places }
    [one] Para: { $places }, y uno más
   *[other] Para: { $places }, y { $more } más
}
window-missing-fix-name = Arreglar: { $what }
window-missing-emergency = Número de emergencias
window-missing-keep = Guardar el número
window-fix-rooms = Dibujar los cuartos
window-fix-pin = Marcarlo
window-fix-proposal = Ver lo que se propone
window-fix-line = Trazar la línea
window-fix-breakers = Encontrar los interruptores
window-fix-gfcis = Pulsar los botones de prueba
window-fix-try = Decir cómo resultó
window-fix-place = Darle su lugar
window-fix-number = Rellenar el número

## Other names of kinds, by which they are searched for

window-also-isolating-valve = válvula, llave, llave de paso, llave de corte, llave de escuadra, llave general
window-also-water-main = red de agua, acometida
window-also-pressure-reducing-valve = regulador de presión
window-also-circulation-pump = bomba de recirculación
window-also-relief-valve = válvula de seguridad, alivio de presión
window-also-supply-hose = latiguillo, manguera
window-also-water-heater = termo, boiler, calefón, calentador
window-also-hose-bibb = grifo de jardín, llave de manguera
window-also-tap = grifo, canilla
window-also-sink = pila, tarja, lavadero
window-also-basin = lavamanos, lavatorio
window-also-bath = tina, bañera
window-also-toilet = inodoro, excusado, retrete, WC
window-also-washing-machine = lavadora
window-also-ice-maker = refrigerador, nevera
window-also-cleanout = registro, boca de limpieza
window-also-backwater-valve = antirretorno de alcantarilla
window-also-stack = bajante
window-also-panel = tablero, cuadro eléctrico, caja de breakers, centro de carga
window-also-breaker = disyuntor, breaker, térmica
window-also-service-disconnect = interruptor general
window-also-gfci = diferencial, toma con protección de tierra
window-also-receptacle = enchufe, toma, contacto
window-also-light = lámpara, luminaria, foco
window-also-smoke-alarm = detector de humo, alarma de CO
window-also-sump-pump = bomba del pozo
window-also-air-handler = aire acondicionado, calefacción, bomba de calor
window-also-thermostat = control de temperatura
window-also-gas-appliance = cocina, estufa, chimenea

## Papers
window-papers-hint = Para cuando no hay luz, o la computadora está en el cuarto mojado. Se hacen del mapa, con las mismas respuestas que en la pantalla.
window-papers-choose = Elija una hoja. Aquí se ven sus páginas tal como se imprimirán.
window-papers-a4 = A4
window-papers-letter = Carta
window-papers-phone = Página para el teléfono
window-papers-calendar = Mantenimiento para el calendario
window-papers-cards = Contactos para el teléfono
window-papers-fridge-hint = Una página para la puerta del refrigerador: lo primero que se hace en cada problema.
window-papers-panels-hint = Una tarjeta para la puerta de cada panel.
window-papers-valves-hint = Cada válvula: a qué sirve y hacia dónde cierra.
window-papers-tags-hint = Para recortar y colgar en válvulas y disyuntores.
window-papers-pack-hint = Todo en un documento, para quien se muda.
window-papers-log-hint = Para el seguro y el constructor.
window-papers-phone-hint = Un archivo que funciona sin ninguna red.
window-papers-calendar-hint = Un archivo que leen los calendarios.
window-papers-cards-hint = Un archivo que leen las libretas de direcciones.
window-papers-folder = O todas en la carpeta
window-papers-save-all = Guardar todas
window-papers-path = Guardar como (ruta del archivo)
window-papers-save = Guardar { $file }
window-papers-choose-place = Elegir dónde…
window-papers-view = Abrir para imprimir
window-papers-viewed = Está abierta en su visor. Imprímala desde ahí.
window-papers-not-viewed = No se pudo abrir ningún programa para ella: { $why }. El archivo está aquí: { $path }
window-papers-saved = Guardado: { $path }
window-papers-unsaved = { $problem } Elija otro lugar.
window-papers-waiting = Un momento…
window-papers-making = Preparando: { $title }
window-papers-part = Preparando: { $title } ({ $n } de { $of })
window-papers-stop = Parar
window-papers-stopped = Se paró. No cambió nada.
window-papers-no-preview = No tiene páginas que mostrar. Guárdela o ábrala.
window-papers-before = Página anterior
window-papers-next = Página siguiente
window-papers-which-page = Qué página

## Plans, floors, rooms, doors
window-plans-floors = Plantas
window-plans-picture = Imagen de un plano
window-plans-rooms = Habitaciones
window-plans-doors = Puertas y escaleras
window-plans-name-ground = Planta baja
window-plans-name-upper = Planta alta
window-plans-name-lower = Sótano
window-plans-floor = { $name }, a { $height }
window-plans-add-first = Añadir una planta
window-plans-add-above = Añadir una planta encima
window-plans-add-below = Añadir una planta debajo
window-plans-floor-name = Nombre de la planta
window-plans-floor-height = Altura de su suelo
window-plans-floor-height-hint = Por encima o por debajo del suelo que usted llama cero, como 2,7 m o 9', o −8' para un sótano. Las plantas están en el orden de sus alturas.
window-plans-floor-change = Conservar nombre y altura
window-plans-floor-remove = Quitar esta planta…
window-plans-bad-height = Escriba la altura con su unidad, como 2,7 m o 9' 0", con un menos si está por debajo; o 0.
window-plans-no-name = Escriba antes un nombre.
window-plans-remove-title = ¿Quitar { $name }?
window-plans-remove-alone = Nada más cambia. Se puede deshacer.
window-plans-remove-with = Con ello cambia esto. Se puede deshacer.
window-plans-remove-it = Quitarlo
window-plans-leave-it = Dejarlo
window-plans-room = Habitación
window-plans-new-room = Una habitación nueva
window-plans-name-kitchen = Cocina
window-plans-name-bathroom = Baño
window-plans-name-living = Sala de estar
window-plans-name-bedroom = Dormitorio
window-plans-name-hall = Pasillo
window-plans-name-laundry = Lavandería
window-plans-name-utility = Cuarto de instalaciones
window-plans-name-garage = Garaje
window-plans-name-basement = Cuarto del sótano
window-plans-name-attic = Ático
window-plans-name-yard = Patio
window-plans-room-name = Nombre de la habitación nueva
window-plans-rectangle = Dibujar un rectángulo
window-plans-corners = Pulsar las esquinas
window-plans-rectangle-hint = Arrastre por el dibujo de una esquina de la habitación a la opuesta; se ajusta sola a la cuadrícula y a las paredes de al lado. O escriba su ancho y su fondo.
window-plans-corners-hint = Pulse cada esquina por turno, alrededor de la habitación. Pulse otra vez la primera, o cierre aquí la habitación.
window-plans-across = Ancho de la habitación nueva
window-plans-down = Fondo de la habitación nueva
window-plans-across-now = Ancho
window-plans-down-now = Fondo
window-plans-add-room = Añadir la habitación
window-plans-close-room = Cerrar la habitación
window-plans-forget-corners = Olvidar las esquinas
window-plans-too-small = Es demasiado pequeño para una habitación. Arrastre de una esquina a la opuesta.
window-plans-too-few-corners = Una habitación necesita tres esquinas o más que no estén en línea. Púlselas otra vez.
window-plans-rooms-here = Habitaciones de esta planta
window-plans-picked = { $name }
window-plans-picked-name = Nombre de la habitación
window-plans-picked-hint = Arrastre la habitación para moverla, o una de sus esquinas para estirarla. Las flechas del teclado mueven la esquina que tiene el foco.
window-plans-change-room = Conservar nombre y tamaño
window-plans-outdoors = Al aire libre
window-plans-remove-room = Quitar esta habitación…
window-plans-board = Dibujo de { $level }
window-plans-size = { $across } × { $down }
window-plans-corner = { $name }, esquina { $number }
window-plans-doors-hint = Pulse una pared entre dos habitaciones donde está su puerta, o elíjala aquí. Las paredes sin puerta están a trazos.
window-plans-walls = Paredes sin puerta
window-plans-add-door = Puerta: { $one } – { $other }
window-plans-door-there = Estas dos habitaciones ya tienen una puerta.
window-plans-no-wall = Ahí no hay pared entre dos habitaciones. Pulse sobre una pared a trazos.
window-plans-doors-there = Puertas y escaleras en el mapa
window-plans-door-between = Puerta entre { $one } y { $other }
window-plans-stairs-between = Escalera entre { $one } y { $other }
window-plans-remove-door = Quitar la puerta entre { $one } y { $other }
window-plans-remove-stairs = Quitar la escalera entre { $one } y { $other }
window-plans-stairs = Escaleras
window-plans-stairs-pick = ¿En qué habitación de esta planta empiezan?
window-plans-stairs-from = Escalera desde { $name }
window-plans-stairs-to = La escalera desde { $name } lleva a:
window-plans-stairs-room = { $room } ({ $floor })
window-plans-picture-hint = Una foto o un escaneo de un plano, o de un croquis, puede quedar debajo de las habitaciones: JPEG, PNG o WebP. No se conserva dónde ni cuándo se hizo.
window-plans-choose-picture = Elegir una imagen…
window-plans-picture-filter = Imágenes
window-plans-picture-path = O escriba dónde está
window-plans-take-picture = Tomarla
window-plans-picture-none = También puede soltar la imagen sobre esta ventana. Sin ninguna imagen, dibuje las habitaciones en «Habitaciones».
window-plans-picture-there = { $level } tiene un plano
window-plans-picture-move = ¿No coincide con las habitaciones? Arrástrelo a su sitio, o muévalo con las flechas cuando el dibujo tenga el foco. Las habitaciones del piso de abajo están punteadas.
window-plans-picture-remove = Quitar el plano del mapa
window-plans-no-folder = Esta vivienda aún no tiene carpeta donde guardar una imagen. Guarde antes una copia: «Ajustes», «Guardar una copia como…».
window-plans-reading = Leyendo la imagen
window-plans-straightening = Enderezándola
window-plans-storing = Guardándola en la carpeta de la vivienda
window-plans-stop = Parar
window-plans-corners-title = Enderécela
window-plans-corners-how = Mueva los cuatro puntos a las esquinas de algo que sea un rectángulo: el borde del papel o las paredes exteriores. Arrástrelos, o muévalos con las flechas del teclado.
window-plans-beside-strip = Una franja alrededor
window-plans-beside-kept = Todo lo que muestra la foto
window-plans-beside-cut = Solo el rectángulo
window-plans-size-hint = Si sabe cuánto mide el rectángulo, escríbalo: entonces sus proporciones son correctas y no queda nada por medir. Una foto tomada justo desde abajo o desde un lado no las muestra.
window-plans-size-across = Ancho del rectángulo
window-plans-size-down = Fondo del rectángulo
window-plans-straighten = Enderezar
window-plans-as-it-is = Ya está derecha
window-plans-straight-title = ¿Está derecha ahora?
window-plans-straight-hint = Las paredes deberían estar verticales y horizontales, y las habitaciones tan anchas y hondas como son.
window-plans-straight-accept = Sí, seguir
window-plans-straight-again = No, poner otra vez las esquinas
window-plans-picture-forget = No tomar esta imagen
window-plans-measure-title = ¿Qué tamaño tiene?
window-plans-measure-how = Pulse los dos extremos de algo cuya longitud conozca, cuanto más largo mejor, como una pared exterior. Después escriba cuánto mide.
window-plans-distance = Distancia entre los dos puntos
window-plans-door-hint = ¿Nada medido? Ponga los puntos a ambos lados de una puerta y elija cuál. Una puerta es mala medida: las distancias pueden errar en una décima parte.
window-plans-door-width = { $door }, { $width }
window-plans-two-points = Pulse antes los dos puntos en la imagen.
window-plans-measure = Ponerla en el mapa
window-plans-picture-shown = La imagen
window-plans-photo-corner = Esquina { $number } del rectángulo
window-plans-photo-point = Punto { $number } de la distancia

## A new home, copies, what was not saved
window-start-new = Una vivienda nueva…
window-start-copy = Guardar una copia como…
window-start-new-title = Una vivienda nueva
window-start-new-go = Crear esta vivienda
window-start-picture = El plano: { $path }
window-start-name = Nombre de la vivienda
window-start-address = Dirección, como la diría por teléfono
window-start-emergency = Número de emergencias
window-start-emergency-hint = El número al que llamar si hay personas en peligro, como 911 o 112.
window-start-units-us = Pies y galones
window-start-units-si = Metros y litros
window-start-language = Idioma de las respuestas
window-start-folder = vivienda
window-start-folder-label = Carpeta en la que se guarda
window-start-folder-hint = Una carpeta nueva o vacía.
window-start-choose-folder = Elegir una carpeta…
window-start-no-name = Escriba cómo llama a la vivienda.
window-start-copy-title = Guardar una copia
window-start-copy-hint = La vivienda tal como está en esta ventana se guarda en otra carpeta, y esta ventana sigue con ella.
window-start-copy-go = Guardar la copia
window-start-copy-folder = copia
window-start-unzip-title = Desempaquetar una vivienda
window-start-unzip-hint = { $path } se desempaqueta y después se abre.
window-start-unzip-go = Desempaquetar y abrir
window-start-working = Un momento…
window-start-in-folder = Lo que cambie se guarda en { $path }.
window-start-left-title = Algo no se guardó
window-start-left = La última sesión con esta vivienda terminó de golpe. Lo cambiado hasta { $when } se conservó y se puede retomar.
window-start-left-long-ago = un momento desconocido
window-start-left-changed-since = Desde entonces otra persona cambió la vivienda. Retomar esto deshace aquello.
window-start-left-take-up = Retomarlo
window-start-left-leave = Dejarlo; preguntar la próxima vez
window-start-left-discard = Desecharlo
window-start-taken-up = Lo que no se guardó está aquí de nuevo, y guardado.
window-start-in-use-title = Otra ventana tiene esta vivienda
window-start-in-use = Solo una ventana a la vez puede guardarla. Lo que ha cambiado aquí no se pierde mientras esta ventana esté abierta, pero no está en el disco.
window-start-changed-title = Otra persona cambió esta vivienda
window-start-changed = Su archivo no es el que abrió esta ventana. Lo que ha cambiado aquí no se pierde mientras esta ventana esté abierta, pero no ocupa el lugar de lo que escribió la otra.
window-start-keep-copy = Guardar lo mío como copia…
window-start-reload = Mostrar lo que escribió la otra; lo mío se va
window-start-retry = La otra ventana está cerrada: guardar ahora
window-start-later = Decidir más tarde

## Upkeep and handover
window-care-due = Qué toca hacer
window-care-moving = Al mudarse
window-care-parties = Quién responde
window-care-copies = Copias y cambios
window-care-nothing-due = No toca nada: el mapa no tiene nada que necesite mantenimiento.
window-care-overdue = Atrasado
window-care-this-month = Este mes
window-care-later = Más adelante
window-care-once = Una vez, cuando sea
window-care-by-day = hasta el { $day }
window-care-open = Cómo, y hecho…
window-care-open-of = Abrir: { $job }
window-care-initials = Quién lo hizo (iniciales)
window-care-note = Algo más
window-care-done = Hecho
window-care-close = Cerrar
window-care-not-recorded = No se pudo anotar: { $why }.
window-care-moving-hint = Cosas que se hacen una vez, sacadas de lo que tiene el mapa. Cada una se marca con el día y sus iniciales, y aparece en la carpeta de entrega.
window-care-untick = No estaba hecho
window-care-untick-of = No estaba hecho: { $item }
window-care-first = A quién llamar primero
window-care-which-device = ¿Qué dispositivo es?
window-care-first-unknown = El mapa no dice de quién es.
window-care-contacts = Contactos
window-care-new-contact = Otro contacto…
window-care-change = Cambiar…
window-care-change-of = Cambiar: { $name }
window-care-name = Nombre, y para qué
window-care-phone = Número
window-care-hours = Horario
window-care-keep = Guardar
window-care-remove = Quitar
window-care-warranties = Garantías
window-care-from-until = Desde el { $from } hasta el { $until }
window-care-from = Desde el { $from }; no se sabe hasta cuándo
window-care-copy = Una copia
window-care-copy-hint = Para el próximo lote con el mismo plano: sin lo que es del dueño de esta casa. Los contactos elegidos van con ella.
window-care-copy-name = Nombre de la casa nueva
window-care-copy-folder = Carpeta donde escribirla
window-care-mirror = Plano invertido de izquierda a derecha
window-care-copy-contacts = Contactos que van con ella
window-care-next-lot = Copia para el próximo lote
window-care-next-owner = Copia para el próximo dueño de esta casa
window-care-next-owner-hint = Para una venta: sin el registro, las prácticas, las notas privadas ni los teléfonos de personas.
window-care-zip = Un solo archivo para enviar
window-care-zip-path = Ruta del zip
window-care-pack = Escribir el zip
window-care-no-folder = El ejemplo incluido no tiene carpeta. Guarde antes una copia.
window-care-changed = Qué cambió
window-care-other = Carpeta de la casa como era (vacío: desde que se abrió esta ventana)
window-care-compare = Comparar
window-care-no-change = No cambió nada.

## Map: what feeds what
window-lines-hint = Pulse una marca y luego la que alimenta; o arrastre de una a otra; o elíjalas aquí. El agua, la corriente y el desagüe van de la primera a la segunda.
window-lines-search = Buscar por nombre o etiqueta
window-lines-from = Viene de
window-lines-to = Va a
window-lines-choose = Elegir…
window-lines-begun-from = Ahora elija qué alimenta { $device } o hacia dónde desagua.
window-lines-begun-to = Ahora elija qué alimenta a { $device }.
window-lines-draw = Trazar la línea
window-lines-which = No está claro qué lleva esta línea. Elíjalo y luego trace la línea.
window-lines-refused = Esta línea no se puede trazar. { $cause } { $remedy }
window-lines-of = Líneas de: { $device }
window-lines-line = { $from } → { $to }: { $carries }
window-lines-change = Medida y largo…
window-lines-change-of = Medida y largo de { $line }
window-lines-remove = Quitar
window-lines-remove-of = Quitar { $line }
window-lines-size = Medida, como la escribe el oficio
window-lines-length = Largo, como 12' 6" o 3.8 m
window-lines-keep = Guardar
window-lines-proposed = { $n ->
    [one] Es probable que haya una línea
   *[other] Es probable que haya { $n } líneas
}
window-lines-proposed-hint = Suposiciones según lo que está dónde. Ninguna está en el mapa hasta que usted la acepte.
window-lines-accept = Aceptar
window-lines-accept-of = Aceptar { $line }
window-lines-proposed-each = Una por una
window-lines-accept-all = Aceptar todas las probables

## Map: risers and one-lines
window-schematic-plan = Plano
window-schematic-water = Esquema vertical: agua
window-schematic-drains = Esquema vertical: desagües
window-schematic-power = Unifilar: corriente
window-schematic-gas = Esquema vertical: gas
window-schematic-hint = Pulse una caja y luego la que alimenta. Una línea a trazos es solo una propuesta; una doble es agua caliente o ventilación; una caja de borde fino ya está aquí una vez.
window-schematic-box = Caja: { $device }
window-schematic-again = Caja: { $device }, otra vez
window-schematic-of = { $drawing }: cajas y líneas
window-schematic-outdoors = Afuera, o piso desconocido
window-schematic-loose = Aún sin unir a nada aquí
window-schematic-empty = Todavía no hay nada de esto en el mapa. Márquelo primero y luego trace aquí sus líneas.

## Map: the panel
window-panel-directory = Directorio
window-panel-import = De una tabla
window-panel-finding = Encontrar circuitos
window-panel-none = Todavía no hay ningún panel en el mapa. Marque uno en «Recorrer y marcar».
window-panel-which = Qué panel
window-panel-spare = Libre { $number }
window-panel-unnamed = Circuito { $number }
window-panel-main-of-it = Disyuntor principal
window-panel-number = Número, como 7 o 9,11
window-panel-hint = Escriba lo que dice la etiqueta de la puerta: Intro va a la posición de abajo, Tab a la casilla siguiente.
window-panel-main = Gral.
window-panel-no = N.º
window-panel-what = A qué sirve
window-panel-amperes = A
window-panel-poles = Polos
window-panel-on-it = Cosas
window-panel-left-side = Lado izquierdo
window-panel-right-side = Lado derecho
window-panel-apart = En ninguna posición
window-panel-fed-by = Alimentado por: { $device }
window-panel-cell = Posición { $position }, { $what }
window-panel-cell-apart = Circuito { $position }, { $what }
window-panel-cell-unnumbered = { $name } sin número, { $what }
window-panel-cell-main = Disyuntor principal, { $what }
window-panel-cell-serves = a qué sirve
window-panel-cell-amperes = amperios
window-panel-cell-poles = polos
window-panel-cell-number = número
window-panel-part = Parte de { $other }
window-panel-twice = La posición { $number } es también la de { $other }. Dé otro número a uno de los dos.
window-panel-no-room = Tiene { $poles } polos, pero la posición { $number } es la de { $other }.
window-panel-no-number = Todavía no tiene número. Elíjalo y escriba su número.
window-panel-bad-amperes = Los amperios son un número, como 20.
window-panel-bad-poles = Los polos son un número del 1 al { $most }.
window-panel-taken = La posición { $number } está ocupada por { $other }.
window-panel-beyond = Ningún panel tiene una posición { $number }.
window-panel-needs-name = No tiene un número por el que llamarlo: diga a qué sirve.
window-panel-take-out-what = Aquí ya no hay nada escrito. ¿Quitar { $name } del panel?
window-panel-take-out = Quitarlo
window-panel-more = Más posiciones
window-panel-fewer = Menos posiciones
window-panel-serve-nothing = { $n ->
    [0] De cada uno de los { $of } circuitos se sabe qué cuelga de él.
    [one] Uno de los { $of } circuitos todavía no sirve a nada conocido.
   *[other] { $n } de los { $of } circuitos todavía no sirven a nada conocido.
}
window-panel-pick = Vaya a una posición para ver qué cuelga de ella.
window-panel-picked = { $position }: { $name }
window-panel-free = La posición { $position } está libre
window-panel-main-free = No se conoce ningún disyuntor principal
window-panel-free-hint = Lo que se escribe en su fila crea su disyuntor.
window-panel-main-feeds = Corta todo el panel.
window-panel-hangs = Qué cuelga de él
window-panel-hangs-nothing = Nada conocido todavía.
window-panel-behind = Detrás: { $list }
window-panel-take-off = Quitar
window-panel-take-off-of = Quitar: { $thing }
window-panel-add = Añadir lo que alimenta
window-panel-add-search = Buscar por nombre, etiqueta o habitación
window-panel-add-of = Añadir: { $thing }, { $room }
window-panel-add-not-found = Nada en el mapa se llama así.
window-panel-add-all-fed = Todo lo que necesita corriente en el mapa tiene quién lo alimente. Lo que ya lo tiene se encuentra por su nombre.
window-panel-fed-already = { $thing }: lo alimenta { $device }
window-panel-no-room-known = En ninguna habitación
window-panel-import-hint = Un directorio, o una lista de tomacorrientes con sus circuitos: texto separado, .xlsx o .ods.
window-panel-path = Ruta del archivo
window-panel-read = Leerlo
window-panel-paste = O pegue la tabla aquí
window-panel-read-pasted = Leer lo pegado
window-panel-refused = { $cause } { $remedy }
window-panel-columns = Qué contienen las columnas
window-panel-column = { $heading } (como { $example })
window-panel-which-circuit = Diga qué columna contiene los números de circuito.
window-panel-becomes = En qué se convierte
window-panel-becomes-of = Circuitos: { $circuits }. Dispositivos: { $things }. Líneas: { $lines }.
window-panel-unknown = { $n ->
    [one] Una fila se toma, pero no se sabe su circuito:
   *[other] { $n } filas se toman, pero no se saben sus circuitos:
}
window-panel-left = { $n ->
    [one] Una fila no se usa:
   *[other] { $n } filas no se usan:
}
window-panel-doubts = { $n ->
    [one] Un valor no se entendió:
   *[other] { $n } valores no se entendieron:
}
window-panel-row = Fila { $row }: { $text }. { $why }
window-panel-more-rows = y { $n } más
window-panel-confirm = Ponerlo en el mapa
window-panel-imported = Está en el mapa. «Deshacer» lo quita todo.

## Map: finding circuits
window-find-hint = Apague algunos, recorra la casa y marque lo que se quedó sin corriente. Bastan pocas vueltas, porque se apagan varios a la vez.
window-find-breakers = Encontrar qué cuelga de los disyuntores
window-find-gfcis = Encontrar qué cuelga de los GFCI
window-find-nothing = No hay nada que encontrar: de todo lo que está en el mapa se sabe el circuito.
window-find-written = Está en el mapa.
window-find-may-off = Se puede apagar
window-find-may-off-of = Se puede apagar: { $device }
window-find-walk = Vuelta { $n } (a lo más { $most } más)
window-find-switch-off = Apague: { $devices }
window-find-tick = Luego mire cada uno de estos y pulse lo que no tiene corriente. Después encienda todo otra vez.
window-find-ticked = { $n } de { $of } no tienen corriente.
window-find-room-unseen = No miré esta habitación
window-find-still = Esto sigue valiendo
window-find-dead = Sin corriente
window-find-unseen = No lo miré
window-find-walked = Ya miré
window-find-found = Encontrado hasta ahora
window-find-on = { $thing }: { $device }
window-find-on-none = { $thing } no cuelga de ninguno de estos.
window-find-odd = { $thing }: las marcas se contradicen. Mire otra vez.
window-find-write = Escribirlo en el mapa
window-find-undo = Retirar la última vuelta
window-find-leave = Dejarlo

## North
window-north = ¿Dónde está el norte en el plano?
window-north-up = Arriba
window-north-up-right = Arriba a la derecha
window-north-right = Derecha
window-north-down-right = Abajo a la derecha
window-north-down = Abajo
window-north-down-left = Abajo a la izquierda
window-north-left = Izquierda
window-north-up-left = Arriba a la izquierda
window-north-towards = Norte: { $way }
window-north-unknown = No se sabe
window-north-degrees = Grados desde arriba, como las agujas del reloj
window-north-degrees-hint = 0 es arriba, 90 derecha, 180 abajo, 270 izquierda. Es igual en todas las plantas.
window-north-keep = Conservar estos grados
window-north-bad = Escriba los grados desde arriba, como las agujas del reloj, de 0 a 360.
window-north-mark = { $way ->
    [up] En el plano el norte está arriba
    [up-right] En el plano el norte está arriba a la derecha
    [right] En el plano el norte está a la derecha
    [down-right] En el plano el norte está abajo a la derecha
    [down] En el plano el norte está abajo
    [down-left] En el plano el norte está abajo a la izquierda
    [left] En el plano el norte está a la izquierda
    [up-left] En el plano el norte está arriba a la izquierda
   *[other] En el plano el norte está a { $degrees } grados desde arriba, como las agujas del reloj
}
