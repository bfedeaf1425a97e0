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
