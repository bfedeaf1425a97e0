### Texts of the crate papers

## Página para el teléfono
phone-title = Qué hacer: { $home }
phone-made-on = Preparado el { $date } con el mapa de esta casa. ¿El mapa cambió? Haga esta página de nuevo.
phone-plain-hint = Los números para llamar y lo primero que hay que hacer. Abra esta página en un navegador para que lo guíe paso a paso.
phone-first-by-place = Lo primero que hay que hacer, lugar por lugar
phone-what = ¿Qué pasa?
phone-what-hint = Oprima lo que más se parezca. No se pierde nada con probar.
phone-leave-first = Primero salga
phone-short-gas-smell = Gas
phone-short-co-alarm = CO
phone-short-fire = Fuego
phone-short-wires-down = Cables
phone-group-life = Peligro para las personas
phone-group-water = Agua
phone-group-drains = Desagües
phone-group-power = Electricidad
phone-group-cooling = Aire acondicionado
phone-group-control = Cerraduras, puertas, alarmas
phone-back = ← Atrás
phone-start-again = Empezar de nuevo
phone-where = ¿Dónde es?
phone-where-hint = Oprima el cuarto.
phone-search = Oprima el cuarto, o busque por nombre o etiqueta:
phone-none-found = Aquí nada se llama “{ $words }”.
phone-no-spots = El mapa de esta casa todavía no tiene ningún lugar para este problema. Hay consejos generales.
phone-not-sure = ¿No está en la lista?
phone-not-listed = No sé dónde es, o no está en la lista
phone-room-unknown = Cuarto que no está en el mapa
phone-in-room = { $space }: ¿qué es?
phone-anywhere = En cualquier parte de: { $space }
phone-hidden = Detrás de paredes y en gabinetes
phone-things = Cosas que hay aquí
phone-signal-danger = PELIGRO
phone-signal-warning = ADVERTENCIA
phone-signal-caution = PRECAUCIÓN
phone-signal-notice = AVISO
phone-more-cautions = Leer los peligros otra vez
phone-not-mapped = El mapa no muestra de dónde se alimenta esto. Estos son consejos generales.
phone-step-of = Paso { $n } de { $of }
phone-all-done = Todos los pasos están hechos.
phone-done = Listo
phone-next = Siguiente
phone-wont-turn = No gira
phone-wont-switch-off = No se apaga
phone-wont-stay-on = No se queda encendido
phone-wont-open = No abre
phone-cannot-reach = No puedo llegar
phone-no-help = No sirvió
phone-no-further = Esta página no conoce otra manera. Llame ahora.
phone-no-further-hint = Aléjese del peligro hasta que llegue la ayuda.
phone-left-out = No se cuenta, porque no funciona o no se puede llegar: { $device }
phone-prove = Funcionó si: { $prove }
phone-takes = Más o menos { $time }, con la caminata.
phone-takes-and-spills = Más o menos { $time }, con la caminata. Hasta que todo esté cerrado, saldrá más agua: más o menos { $water }.
phone-seconds = { $n } segundos
phone-minutes = { $n ->
    [one] un minuto
   *[other] { $n } minutos
}
phone-litres = { $n } L
phone-gallons = { $n } galones
phone-tool = Lleve: { $tool }
phone-stiff = Se sabe que cuesta moverlo: pide fuerza o tiempo.
phone-leaks-by = Se sabe que deja pasar algo cuando está cerrado.
phone-whereabouts = { $space }, { $level }
phone-whole-floor = Ver todo el piso
phone-closer = Ver más de cerca
phone-plan-of = Plano de: { $level }. Marcado: { $device }
phone-plan-of-north = Plano de: { $level }. Marcado: { $device }. El norte está a { $degrees } grados desde arriba, como las agujas del reloj.
phone-all-steps = Todos los pasos
phone-goes-off = También se queda sin servicio
phone-goes-off-list = Se queda sin servicio: { $devices }
phone-call = Llame
phone-call-besides = Sus otras compañías de servicio
phone-no-number = no hay número en el mapa
phone-emergency = Personas en peligro: { $phone }
phone-emergency-name = Número de emergencia
phone-emergency-missing = El mapa de esta casa no tiene número de emergencia. Escríbalo en la puerta y agréguelo al mapa.
phone-read-out = Diga dónde está:
phone-other-ways = Otras maneras de pararlo
phone-by-licensed = Lo hace una persona con licencia.
phone-by-utility = Lo hace la compañía de servicio.
phone-suspects = Qué puede ser
phone-percent = { $percent ->
    [0] menos de 1 %
   *[other] { $percent } %
}
phone-check = Mire aquí para encontrar la causa
phone-seen-live = Tiene corriente
phone-seen-dead = No tiene corriente
phone-seen-drains = Desagua bien
phone-seen-backs-up = El agua se devuelve
phone-seen-wet = Hay agua ahí
phone-seen-dry = Está seco
phone-seen-on = Está encendido
phone-seen-off = Está apagado
phone-seen-tripped = Se disparó
phone-seen-water-comes = Sale agua
phone-seen-no-water = No sale agua
phone-seen-hot-comes = Sale caliente
phone-seen-no-hot = Sigue fría
phone-seen-open = Está abierta
phone-seen-shut = Está cerrada
phone-relief = La obstrucción
phone-relief-open = Déjelo salir aquí: { $device }
phone-relief-rod = Meta la sonda desde aquí: { $device }
phone-relief-emerges = Después sale en: { $devices }
phone-relief-between = Puede estar entre { $from } y { $to }
phone-restore = Después: volver a lo normal

## Hojas
paper-document-title = { $title }: { $home }
paper-fridge = Qué hacer primero
paper-panels = Directorio del panel
paper-valves = Lista de válvulas
paper-tags = Etiquetas para colgar
paper-pack = Carpeta de entrega
paper-printed = { $home }. Impreso el { $day }.
paper-page = Página { $page } de { $all }
paper-address-missing = La dirección no está en el archivo de la casa. Añádala: es lo primero que pregunta el número de emergencia.
paper-place = { $space }, { $level }
paper-place-unknown = lugar que no está en el mapa
paper-outdoors = Afuera
paper-few = { $more ->
    [0] { $list }
    [one] { $list }, y una cosa más
   *[other] { $list }, y { $more } cosas más
}
paper-plan-alt = Plano: { $level }. En él: { $list }.
paper-plan-alt-north = Plano: { $level }. En él: { $list }. El norte está a { $degrees } grados desde arriba, como las agujas del reloj.
paper-system-water = Agua
paper-system-drain = Desagües
paper-system-power = Electricidad
paper-system-gas = Gas
paper-system-cooling = Aire acondicionado
paper-system-control = Controles y otros

## Puerta del refrigerador
paper-leave = Primero saque a todos. Después llame desde afuera.
paper-where-devices = Dónde está
paper-blanks = Averigüe ahora estos números y escríbalos aquí:
paper-general = Consejo general: el mapa no muestra qué alimenta esto.
paper-trouble-at = { $trouble }: { $spot }

## Directorio del panel
paper-panel-number = N.º
paper-panel-circuit = Circuito
paper-panel-empty = Espacio vacío
paper-panel-spare = De reserva, o aún sin identificar: en el mapa nada depende de él.
paper-panel-apart = Lo corta todo, o no tiene espacio con número
paper-amperes = { $amperes } A
paper-gfci-on = GFCI en este circuito: { $list }
paper-gfci-before = Protegido por GFCI: { $list }

## Lista de válvulas y etiquetas
paper-valve-tag = Etiqueta
paper-valve-what = Qué y dónde
paper-valve-how = Cómo se cierra
paper-valve-serves = Qué se apaga o se queda sin agua
paper-valve-serves-line = Qué se apaga o se queda sin agua: { $list }
paper-call-line = { $name }: { $phone }
paper-serves-cleanout = Nada deja de funcionar: abre el desagüe.
paper-serves-shut = Nada: un día normal está cerrada.
paper-serves-nothing = Nada que el mapa muestre, por sí sola.
paper-by-utility = Solo la compañía puede moverla: llámela.
paper-by-licensed = Solo para una persona con licencia.
paper-state-stiff = Dura: pide fuerza o tiempo.
paper-state-seized = No se mueve.
paper-state-leaks-by = Gira, pero no lo corta todo.
paper-state-unknown = Nadie la ha probado todavía.
paper-normally-shut = Un día normal está cerrada.
paper-exercised = Movida por última vez el { $day }.
paper-tags-hint = Corte por las líneas punteadas, plastifique, perfore el aro y cuélguela en el aparato. Un teléfono lee el código cuadrado sin red.
paper-code-alt = Código cuadrado que guarda este texto: { $text }

## Carpeta de entrega
paper-contents = Contenido
paper-maps = Planos
paper-map-of = { $level }: { $system }
paper-drawings = Diagramas de montantes y unifilar
paper-riser-water = Agua, de la calle a los grifos
paper-riser-water-hint = Las líneas llenas son de agua fría, las punteadas de agua caliente. Un signo de trazo fino ya está en el diagrama: otra línea llega a él. Los puntos son ramales del tubo.
paper-riser-drains = Desagües, desde el alcantarillado hacia arriba
paper-riser-drains-hint = El agua usada baja por las líneas hacia el alcantarillado. Las líneas punteadas son de ventilación. Los puntos son ramales del tubo.
paper-riser-gas = Gas, del medidor a los aparatos
paper-riser-gas-hint = El gas va por las líneas, del medidor hacia arriba. Los puntos son ramales del tubo.
paper-one-line = Electricidad, de la calle a los circuitos
paper-one-line-hint = Diagrama unifilar, de la acometida a cada disyuntor. Un signo de trazo fino ya está en el diagrama: otra alimentación llega a él.
paper-drawing-alt = Diagrama: { $title }. La lista que sigue dice qué alimenta cada aparato.
paper-part = Parte { $part } de { $all }
paper-key = Lista de signos
paper-key-tag = Etiqueta
paper-key-name = Aparato
paper-key-where = Dónde
paper-key-from = Viene de
paper-devices = Cada aparato, cuarto por cuarto
paper-circuit-of = { $panel }, circuito { $circuit }
paper-rated = De { $amperes } A.
paper-draws = Consume hasta { $watts } W.
paper-holds = Contiene { $litres } L.
paper-lamp = Su luz o botón: { $lamp }
paper-photo-alt = Foto: { $name }
paper-parties = A quién llamar, y de quién es cada cosa
paper-party = Quién
paper-phone = Teléfono
paper-hours = Cuándo
paper-note = Nota
paper-owners = No es solo nuestro
paper-owners-hint = Dónde termina la parte de uno y empieza la de otro, y qué pertenece a alguien más.
paper-owner = De quién
paper-boundary = Límite
paper-boundary-here = su parte termina aquí
paper-warranties = Garantías
paper-warranty = Garantía
paper-given-by = La da
paper-from = Desde
paper-until = Hasta
paper-covers = Cubre
paper-medium-cold = tubos de agua fría
paper-medium-hot = tubos de agua caliente
paper-medium-waste = desagües
paper-medium-vent = ventilaciones
paper-medium-condensate = tubos de condensado
paper-medium-power = cables
paper-medium-gas = tubos de gas
paper-medium-signal = cables de control
paper-upkeep = Mantenimiento
paper-due = Pendiente
paper-due-day = Antes del
paper-job = Qué
paper-how-often = Cada cuánto
paper-last-done = Última vez
paper-about = Dónde
paper-every-months = { $months ->
    [one] cada mes
   *[other] cada { $months } meses
}
paper-move-in = Al mudarse
paper-documents = Papeles
paper-document = Papel
paper-file = Archivo
paper-missing = Lo que aún falta
paper-missing-hint = Lo que al mapa de esta casa le falta o tiene mal, hasta donde el programa puede ver.
paper-missing-none = Nada que el programa pueda ver.
paper-missing-what = Qué
paper-missing-remedy = Qué hacer
paper-none = Ninguno en el archivo de la casa.

## En la línea de órdenes
paper-phone-page = Página para el teléfono
paper-cli-making = { $nth } de { $all }: { $title }
paper-cli-nothing = { $title }: esta casa no tiene nada para eso, así que no se hizo.
paper-cli-failed = { $title }: no se pudo hacer: { $why }. Es un error del programa.
paper-cli-picture = { $path }: no se pudo leer esta imagen, así que los papeles van sin ella: { $why }. Ponga el archivo en la carpeta de la casa, o quite su ruta del archivo de la casa.
paper-cli-unwritten = { $problem } Dé una carpeta en la que pueda escribir: --to DIR.
paper-cli-no-day = No se puede leer el reloj de la máquina. Dé el día: --today 2026-05-02.

## Log of troubles
paper-log = Qué pasó aquí
paper-log-when = { $day }, { $time }
paper-log-failed = No funcionó: { $devices }
paper-log-seen = { $device }: { $seen }
paper-log-solved = Terminó con: { $devices }
