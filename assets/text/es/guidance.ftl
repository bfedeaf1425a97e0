# Lo que dice una respuesta.

language-name = Español
list-two = { $first } y { $last }
list-more = { $first }, { $rest }
list-more-last = { $first }, { $rest }
problem-line-error = { $file }:{ $line }:{ $column }: error: { $cause } { $remedy }
problem-line-warning = { $file }:{ $line }:{ $column }: advertencia: { $cause } { $remedy }

## Problemas
trouble-leak = Hay una fuga de agua
trouble-leak-hint = en un tubo, manguera, válvula, grifo o aparato
trouble-leak-words = fuga gotea gotera tubo roto tubería agua en el piso inundación charco manguera grifo llave fregadero válvula calentador lavadora lavaplatos refrigerador mojado
trouble-water-from-above = Sale agua del techo o de la pared
trouble-water-from-above-hint = y nadie sabe de dónde viene
trouble-water-from-above-words = techo pared gotea mancha humedad de arriba gotera
trouble-toilet-overflow = Un inodoro se desborda
trouble-toilet-overflow-hint = o está por desbordarse
trouble-toilet-overflow-words = inodoro baño taza desborda rebosa tapado
trouble-no-water = No hay agua
trouble-no-water-hint = o sale solo un hilo
trouble-no-water-words = no hay agua no sale agua seco hilo poca presión grifo ducha
trouble-no-hot-water = No hay agua caliente
trouble-no-hot-water-hint = la fría sí sale
trouble-no-hot-water-words = no hay agua caliente ducha fría calentador tibia
trouble-drain-backs-up = Un desagüe está tapado
trouble-drain-backs-up-hint = el agua no baja, o se devuelve
trouble-drain-backs-up-words = desagüe tapado lento fregadero ducha tina agua no baja estancada gorgotea
trouble-sewage-rising = Suben aguas negras
trouble-sewage-rising-hint = en la ducha, el desagüe del piso, el inodoro o afuera
trouble-sewage-rising-words = aguas negras cloaca alcantarilla mal olor agua sucia inodoro ducha desagüe registro sube
trouble-pit-rising = Se está llenando un pozo de bombeo
trouble-pit-rising-hint = de agua de lluvia o de aguas negras; la bomba no alcanza
trouble-pit-rising-words = pozo bomba sumidero sótano sube agua alarma
trouble-dead-outlet = Un tomacorriente no da corriente
trouble-dead-outlet-hint = nada de lo que se enchufa ahí funciona
trouble-dead-outlet-words = tomacorriente enchufe contacto sin corriente no funciona baño cocina cargador
trouble-dead-light = Una luz no enciende
trouble-dead-light-hint = bombilla, interruptor o cable
trouble-dead-light-words = luz lámpara foco bombilla no enciende oscuro interruptor
trouble-dead-area = Un cuarto o media casa está sin luz
trouble-dead-area-hint = varios tomacorrientes y luces a la vez
trouble-dead-area-words = sin luz a oscuras apagón cuarto media casa no hay luz corriente
trouble-breaker-trips = Un disyuntor (breaker) se dispara
trouble-breaker-trips-hint = o no se queda encendido
trouble-breaker-trips-words = disyuntor breaker se dispara salta fusible panel circuito
trouble-gfci-trips = Un GFCI se dispara
trouble-gfci-trips-hint = o su botón RESET no se queda adentro
trouble-gfci-trips-words = gfci botón reset test se dispara no se queda enchufe baño
trouble-sparks = Chispas, olor a quemado, enchufe caliente
trouble-sparks-hint = en un tomacorriente, interruptor, cable o panel
trouble-sparks-words = chispa chispas olor a quemado enchufe caliente zumbido derretido humo del enchufe
trouble-shock = Alguien recibe una descarga eléctrica
trouble-shock-hint = o siente un cosquilleo en metal o agua
trouble-shock-words = descarga toque calambre cosquilleo corriente electrocutado grifo metal
trouble-water-near-power = Agua cerca de la electricidad
trouble-water-near-power-hint = en un panel, tomacorriente, cable o aparato
trouble-water-near-power-words = agua panel enchufe mojado electricidad inundado cable
trouble-cooling-stopped = El aire acondicionado se paró
trouble-cooling-stopped-hint = o sopla aire caliente
trouble-cooling-stopped-words = aire acondicionado clima frío parado no enfría aire caliente termostato
trouble-water-at-air-handler = Agua junto a la unidad de aire
trouble-water-at-air-handler-hint = gotea, o hay agua en una bandeja
trouble-water-at-air-handler-words = aire acondicionado unidad de aire agua bandeja gotea condensado techo
trouble-gas-smell = Huele a gas
trouble-gas-smell-hint = o algo silba en un tubo de gas
trouble-gas-smell-words = gas olor huele huevo podrido silba propano
trouble-co-alarm = Suena la alarma de monóxido de carbono
trouble-co-alarm-hint = o varias personas se sienten mal a la vez
trouble-co-alarm-words = monóxido de carbono co alarma detector pita dolor de cabeza mareo
trouble-fire = Humo o fuego
trouble-fire-hint = algo se quema, o suena la alarma de humo
trouble-fire-words = fuego humo llamas incendio alarma de humo
trouble-wires-down = Hay cables caídos
trouble-wires-down-hint = en el suelo, sobre un auto, o colgando bajo
trouble-wires-down-words = cable cables caído línea eléctrica poste suelo
trouble-not-answering = Algo no responde
trouble-not-answering-hint = una cerradura, puerta, alarma o termostato
trouble-not-answering-words = cerradura puerta garaje portón alarma termostato teclado no responde aplicación trabada

## Nombres y lugares
device-with-tag = { $name } ({ $tag })
where-unknown = Su lugar no está en el mapa.
where-space = Está aquí: { $space }.
where-space-level = Está aquí: { $space }, { $level }.
where-space-side = Está aquí: { $space }, { $side }.
where-space-level-side = Está aquí: { $space }, { $level }, { $side }.
side-of-house = { $point ->
    [north] en el lado norte de la casa
    [north-east] en el lado noreste de la casa
    [east] en el lado este de la casa
    [south-east] en el lado sureste de la casa
    [south] en el lado sur de la casa
    [south-west] en el lado suroeste de la casa
    [west] en el lado oeste de la casa
   *[north-west] en el lado noroeste de la casa
}
compass-point = { $point ->
    [north] norte
    [north-east] noreste
    [east] este
    [south-east] sureste
    [south] sur
    [south-west] suroeste
    [west] oeste
   *[north-west] noroeste
}
north-letter = N
device-in-space = { $space }: { $device }
with-tool = Necesita esta herramienta: { $tool }.
no-phone = el número no está en el archivo de la casa

how-to-close = { $way ->
    [quarter] { $handle ->
        [lever] Gire la palanca un cuarto de vuelta, hasta que quede atravesada sobre el tubo.
        [tee] Gire la manija un cuarto de vuelta, hasta que quede atravesada sobre el tubo.
        [slot] Gire la ranura un cuarto de vuelta con un destornillador, hasta que quede atravesada sobre el tubo.
        [key] Gírela un cuarto de vuelta con la llave para válvulas, hasta que la barra quede atravesada sobre el tubo.
       *[other] Gírela un cuarto de vuelta, hasta que la manija quede atravesada sobre el tubo.
    }
    [turns] Gírela hacia la derecha, como las agujas del reloj, vuelta tras vuelta, hasta que pare. No la fuerce.
    [counted] { $turns ->
        [one] Gírela hacia la derecha, como las agujas del reloj, más o menos una vuelta, hasta que pare. No la fuerce.
       *[other] Gírela hacia la derecha, como las agujas del reloj, unas { $turns } vueltas, hasta que pare. No la fuerce.
    }
    [push] Empuje hacia adentro.
    [pull] Jale hacia afuera.
    [off] Empuje la palanca a OFF (apagado).
    [unscrew] Desenrosque despacio hacia la izquierda, al contrario de las agujas del reloj.
   *[unknown] Si es palanca: un cuarto de vuelta, hasta que quede atravesada sobre el tubo. Si es manija redonda: hacia la derecha, como las agujas del reloj, hasta que pare.
}

role-water-utility = Compañía de agua
role-sewer-utility = Compañía de alcantarillado
role-electricity-utility = Compañía eléctrica
role-gas-utility = Compañía de gas
role-emergency = Número de emergencia
role-plumber = Un plomero con licencia
role-electrician = Un electricista con licencia
role-cooling = Un técnico de calefacción y aire acondicionado
role-builder = El constructor
role-owner = El dueño
role-manager = El administrador del edificio
role-neighbor = Un vecino

## Cuidados
caution-local-codes = Primero van los códigos locales, sus compañías de servicio y los profesionales con licencia. Si no está seguro, deténgase y llame.
caution-not-from-map = Este es un consejo general. No sale de su mapa: lo que alimenta este lugar todavía no está en él. Agréguelo al mapa, para que la próxima vez la respuesta nombre el dispositivo.
caution-water-near-power = No pise agua que llegue a un tomacorriente, un cable o un aparato. Puede tener corriente.
caution-water-near-power-named = No pise agua que llegue a un tomacorriente, un cable o un aparato: puede tener corriente. Aquí: { $list }.
caution-panel-below = Puede caer agua sobre esto: { $list }. No se acerque antes de que alguien haya visto que está seco.
caution-going-down = El dispositivo está más abajo que la fuga: { $level }. El agua puede haber bajado hasta ahí. Mire primero desde la escalera. Si hay agua en el piso, no entre y llame.
caution-way-through-water = El camino pasa por donde puede haber agua: { $list }. Mire antes de entrar. Si el agua toca un tomacorriente, un cable o algo enchufado, no entre y llame.
caution-power-in-water = Aléjese de un panel, disyuntor (breaker), tomacorriente o cable que esté mojado, o al que solo se llega pisando agua. No lo toque. Pida a la compañía eléctrica que corte la corriente desde afuera.
caution-hot-water = El agua de una línea caliente puede quemar. Mantenga las manos y la cara lejos del chorro.
caution-ceiling = Un techo lleno de agua pesa mucho y se puede caer. Que nadie se quede debajo. No toque lámparas ni interruptores mojados.
caution-sprinklers-off = Esto también deja sin agua los rociadores contra incendios: { $devices }. Avise a todos en la casa, esté atento al fuego y vuelva a abrir el agua en cuanto pueda. Avise a los bomberos si queda cerrada.
caution-sprinklers-fallback = Si tiene que usar uno de estos, también deja sin agua los rociadores contra incendios: { $devices }. Entonces avise a todos en la casa y esté atento al fuego.
caution-critical-off = Esto también se apaga, y alguien puede depender de ello: { $list }. { $when ->
    [after] Atiéndalo justo después.
   *[before] Atiéndalo primero.
}
caution-heater-dry = Si el agua queda cerrada, esto no debe seguir calentando: { $heater }. Corte su energía antes de vaciarlo.
caution-heater-general = Un calentador de agua no debe seguir calentando sin agua. Corte su energía si el agua queda cerrada.
caution-sewage = Las aguas negras enferman a la gente. Use guantes de goma, botas y protección para los ojos. Que no se acerquen niños ni mascotas. Lávese bien las manos.
caution-cap-pressure = El tubo puede estar lleno y con presión. Afloje la tapa despacio, párese a un lado y esté listo: pueden salir aguas negras.
caution-electric-shock = La electricidad puede matar. No abra la cubierta de un panel ni un tomacorriente. No toque nada mojado, quemado, caliente o roto.
caution-burning-smell = Si huele a quemado, está caliente, zumba o echa humo: no lo vuelva a encender. Si hay humo o fuego, salga y llame al número de emergencia.
caution-sparks = No toque lo que echa chispas, ni a una persona que está recibiendo una descarga. Si hay humo o fuego, que salgan todos, y llame desde afuera.
caution-gas = El gas puede explotar. No toque ningún interruptor, teléfono, enchufe ni timbre. No encienda nada. Saque a todos ahora.
caution-co = El monóxido de carbono no tiene olor. Mata. Saque a todos al aire fresco ahora.
caution-fire = Saque a todos ahora. No se detenga por las cosas. No vuelva a entrar.
caution-wires = Un cable caído puede matar, aunque no haga ruido. El suelo a su alrededor también puede matar. Quédese al menos a 10 m (35 pies), y que nadie se acerque.
caution-shocked-person = No toque a alguien que está recibiendo una descarga: usted también la recibiría. Primero corte la corriente.
caution-lost-neutral = ¿Unas luces brillan demasiado y otras poco? Entonces hay un cable suelto. Puede quemar lo que está enchufado y causar un incendio.
caution-critical-lost = Esto puede estar fuera de servicio ahora, y alguien puede depender de ello: { $list }. Atiéndalo primero.
caution-gfci-protects = Se dispara para que nadie muera. Nunca lo anule, y nunca ponga en su lugar un tomacorriente común.
caution-ladder = Use una escalera que esté firme. Primero deje enfriar la bombilla.
caution-taps-left-open = Cierre cada grifo que abra. Si el agua vuelve cuando no hay nadie, un grifo abierto inunda la casa.
caution-shut-for-a-reason = Una válvula puede estar cerrada por algo: quizá alguien está trabajando, o hay una fuga. Pregunte antes de abrirla.
caution-heater-hands = No quite ninguna tapa del calentador de agua. Sus tubos y su agua pueden quemarlo.
caution-gas-appliance = Si huele a gas: no toque nada, saque a todos y llame desde afuera.
caution-ceiling-below = El agua de aquí puede salir por el techo de abajo. Que nadie se quede debajo. Debajo está: { $below }
caution-locked-in = ¿Hay alguien encerrado que necesita ayuda, o alguien afuera en el frío? Llame al número de emergencia.
caution-alarm-silent = Una alarma que no responde no lo va a despertar. Que nadie duerma ahí sin una que funcione.
caution-no-heat = El mucho calor o frío daña primero a los bebés, los ancianos y los enfermos. Llévelos a un cuarto o una casa donde se pueda estar.
caution-heavy-door = Una puerta de garaje pesa mucho y se puede caer. No se ponga debajo. Si está torcida, o hay un resorte o cable roto, no la toque.
caution-air-handler = Apague la unidad antes de meter la mano. No anule un interruptor de flotador: es lo que mantiene seco el techo.
caution-secondary-pan = Si hay agua en la bandeja secundaria, el primer desagüe falló. Un techo está en riesgo ahora. Deje la unidad apagada. Debajo de ella: { $below }

## Pasos: agua
step-close = Cierre: { $device }. { $where } { $how } { $tool }
step-close-general = Para detener toda el agua, cierre: { $device }. { $where } { $how } { $tool }
step-if-valve-is-dry = Las únicas llaves de paso que podrían detener esto están en el mismo cuarto, y la fuga puede ser de ellas: { $devices }. Mire cada una: si está seca, úsela.
step-if-not-close = ¿Sigue saliendo agua, o hay algo que no gira? Entonces cierre esto en su lugar: { $devices }.
step-if-not-licensed = Si eso no detiene el agua, una persona con licencia puede cerrar esto: { $devices }.
step-last-utility = Si nada de lo que usted puede cerrar detiene el agua, llame a la compañía de agua. Solo ellos pueden cerrar esto: { $devices }.
step-only-utility = Nada de lo que usted puede cerrar detiene esto. Llame ahora a la compañía de agua. Solo ellos pueden cerrar esto: { $devices }.
step-nothing-isolates = Nada de lo que está en el mapa detiene esto. Llame ahora a la compañía de agua y pida que cierren el agua en la calle.
step-utility-works-it = Llame a { $name }: { $phone }. Solo ellos pueden mover esto: { $device }. No lo intente usted.
step-licensed-works-it = Llame a { $name }: { $phone }. Solo una persona con licencia puede mover esto: { $device }. No lo intente usted.
step-open-again = Ahora vuelva a abrir esto, despacio: { $device }. { $where } El resto de la casa vuelve a tener agua.
prove-stays-dry = El lugar de la fuga sigue seco.
step-goes-off = { $more ->
    [0] Con esto también se queda sin servicio: { $list }.
    [one] Con esto también se queda sin servicio: { $list }, y una cosa más.
   *[other] Con esto también se queda sin servicio: { $list }, y { $more } cosas más.
}
step-nothing-feeds-it = Según el mapa, ya nada alimenta esto. Si sigue saliendo agua, el mapa está mal: cierre toda el agua.
step-catch-rest = El agua que queda en los tubos sigue saliendo un rato. Ponga debajo un balde y toallas.
step-catch-water-above = Ponga baldes debajo de la gotera. Aleje de ahí a las personas y las cosas.
step-find-branch = Cuando haya parado, busque de dónde vino. Mire primero esto: { $list }.
step-shut-branches = Para encontrar el ramal que tiene la fuga, cierre todo esto: { $list }.
step-main-for-test = Después vuelva a abrir esto, despacio, solo para encontrar la fuga: { $devices }.
step-one-branch-at-a-time = Abra un ramal a la vez, en este orden, y espere dos minutos en cada uno: { $list }. Donde gotee otra vez, ese ramal tiene la fuga: ciérrelo y déjelo cerrado.
step-stop-using-above = Deje de usar todo lo que desagua por aquí: { $list }.
step-find-main = Busque la llave de paso principal: donde el tubo de la calle entra en la casa, o en una caja cerca del medidor. Si es palanca: un cuarto de vuelta, hasta que quede atravesada sobre el tubo. Si es manija redonda: hacia la derecha, como las agujas del reloj, hasta que pare.
step-call-utility-water = Si no puede detener el agua, llame a la compañía de agua. Ellos pueden cerrar el agua en la calle.

## Pasos: un inodoro que se desborda
step-no-flush = No descargue otra vez el inodoro.
step-lift-float = Quite la tapa del tanque, si tiene. Levante el flotador y sosténgalo: el agua se detiene.
step-toilet-stop-general = Busque una válvula pequeña detrás del inodoro, abajo en la pared. Gírela hacia la derecha, como las agujas del reloj, hasta que pare.
step-plunge = Cuando el agua haya bajado un poco: ponga un destapador de goma sobre el hueco y empújelo arriba y abajo, 15 veces. No descargue el inodoro para probar: eche un balde de agua.
prove-toilet = La taza ya no se llena, y no entra agua en el tanque.
restore-toilet = Cuando se vaya bien: abra su válvula despacio hacia la izquierda, al contrario de las agujas del reloj. Descargue una vez, y quédese ahí hasta que el tanque esté lleno.

## Pasos: no hay agua
step-look-for-a-break = Mire y escuche si hay agua donde no debe: un piso mojado, un silbido en una pared, un patio mojado. ¿Encontró algo? Entonces siga el problema “Hay una fuga de agua”.
step-ask-neighbors = Pregunte a los vecinos si tienen agua. Si ellos tampoco tienen, el problema está en la calle.
step-ask-neighbor-named = Pregunte si tienen agua: { $name }, { $phone }. Si ellos tampoco tienen, el problema está en la calle.
step-no-water-general = Abra el grifo de agua fría más cercano a la entrada del agua. Si no sale: el problema está en la llave de paso principal o en la calle. Si sale: está más adentro.
step-is-the-main-open = Busque la llave de paso principal: donde el tubo de la calle entra en la casa, o cerca del medidor. Una palanca está abierta cuando queda a lo largo del tubo.
step-suspect-valve = Mire: { $device }. { $where } Debe estar abierta. Una palanca está abierta cuando queda a lo largo del tubo. Una manija redonda abre hacia la izquierda, al contrario de las agujas del reloj.
step-suspect-their-valve = Llame y pregunte si esto está cerrado: { $device }. No le toca a usted moverlo.
step-suspect-street = Llame a la compañía de agua. Pregunte si cerraron el agua, o si se rompió un tubo: { $device }.
step-suspect-well = Mire: { $device }. { $where } ¿Funciona su bomba? ¿Marca algo su medidor de presión?
step-suspect-regulator = Esto puede estar trabado: { $device }. { $where } Un plomero lo ajusta o lo cambia.
step-suspect-softener = Mire: { $device }. { $where } ¿Solo se está enjuagando? Entonces espere. Si no, póngalo en “bypass” (desvío).
step-suspect-heater = Mire: { $device }. { $where } ¿Está encendido? ¿Qué muestra su pantalla o su ventanita?
step-suspect-mixer = Si solo este sale frío, su mezclador puede estar gastado: { $device }. { $where } Un plomero lo cambia.
step-suspect-toilet = Mire dentro del tanque de: { $device }. { $where } ¿Está el flotador trabado arriba? Empújelo hacia abajo.
step-suspect-tap = Mire: { $device }. { $where } Si solo este da poca agua, desenrosque la rejilla de su boca y enjuáguela.
step-suspect-pipe = Puede estar congelado o tapado: { $device }. { $where } No use llama. Deje un grifo abierto y mantenga caliente el cuarto, o llame a un plomero.
look-valve = Mire: { $device }. { $where } ¿Está abierta?
look-tap = Abra: { $device }. { $where } ¿Sale agua?
prove-hot-tap = Abra otra vez el grifo de agua caliente: sale caliente.
prove-tap-runs = Abra otra vez el grifo: ahora sale agua. Después ciérrelo.
restore-run-clear = Deje correr un grifo de agua fría hasta que salga clara y sin aire. Enjuague la rejilla de su boca.

## Pasos: no hay agua caliente
step-try-other-hot-tap = Abra otro grifo de agua caliente y espere un minuto. ¿Ahí sale caliente?
step-hot-used-up = ¿Se usó mucha agua caliente? Entonces espere una hora: un tanque que se acabó tiene que calentar otra vez.
step-no-hot-water-general = Mire el calentador de agua: ¿está encendido, está abierta su válvula, se disparó su disyuntor (breaker)? Si solo un grifo sale frío, es ese grifo.
step-heater-full-first = Abra un grifo de agua caliente antes de tocar la corriente del calentador. Si no sale agua, puede estar vacío: deje la corriente apagada, y llame a un plomero.
step-suspect-gas-valve = Mire: { $device }. { $where } Está abierta cuando la palanca queda a lo largo del tubo. Si está cerrada, déjela cerrada, y pregunte quién la cerró.
look-hot-tap = Abra el lado caliente de: { $device }. { $where } ¿Sale caliente en uno o dos minutos?
look-gas-valve = Mire: { $device }. { $where } ¿Está abierta?
prove-hot-comes = El calentador funciona otra vez. Después de una hora sale agua caliente.
restore-hot-slowly = Pruebe el agua caliente con la mano al lado del chorro, no adentro: al principio puede salir muy caliente.
step-heater-power-off = Corte la corriente de { $heater }. Ponga en OFF (apagado): { $device }. { $where } Solo si ahí el piso está seco.
step-heater-gas-off = Gire el control de gas a PILOT (piloto) o a OFF (apagado) en: { $heater }.
step-heater-off = Corte la energía, en su propio control, de: { $heater }.

step-catch-rest-amount = { $unit ->
    [gallons] { $amount ->
        [one] Todavía puede salir hasta un galón que queda en los tubos y tanques. Ponga debajo un balde y toallas.
       *[other] Todavía pueden salir hasta { $amount } galones que quedan en los tubos y tanques. Ponga debajo un balde y toallas.
    }
   *[liters] { $amount ->
        [one] Todavía puede salir hasta un litro que queda en los tubos y tanques. Ponga debajo un balde y toallas.
       *[other] Todavía pueden salir hasta { $amount } litros que quedan en los tubos y tanques. Ponga debajo un balde y toallas.
    }
}

prove-tap = Abra este grifo: { $tap }. Debe dejar de salir agua, y no volver a salir.
prove-water-generic = La fuga baja y se detiene en unos minutos. Un grifo que se cortó con ella se queda sin agua.
prove-power = Enchufe una lámpara que funcione en otra parte: debe quedarse apagada. Para estar seguro, un probador debe mostrar que no hay corriente.
prove-live = Una lámpara que funciona en otra parte se enciende al enchufarla.
prove-sparks = No hace ruido y se enfría. No enchufe nada. Un probador, en manos de alguien que sabe, debe mostrar que no hay corriente.
prove-cooling = La unidad arranca cuando el termostato pide frío.
prove-breaker-holds = La palanca se queda en ON (encendido).
prove-cap = El agua sale aquí, y ya no en la casa.

## Pasos: desagües
step-stop-all-water = Pare toda el agua de la casa: no descargue el inodoro, no abra grifos ni ducha, no lave.
step-stop-all-water-named = Pare toda el agua de la casa: no descargue el inodoro, no abra grifos ni ducha. Pare esto con su propio botón: { $list }.
step-stop-cooling = Apague el aire acondicionado en el termostato: su agua también va al alcantarillado.
step-comes-out-at = Primero sale aquí: { $device }. { $where } Despeje el piso alrededor.
step-open-cap = Abra: { $device }. { $where } Póngase guantes y protección para los ojos. Párese a un lado. Gire la tapa despacio hacia la izquierda, al contrario de las agujas del reloj, con la herramienta adecuada.
step-no-cap-helps = Ningún registro de limpieza (cleanout) del mapa ayuda aquí: al abrirlo no saldría más abajo que la casa. Déjelos todos cerrados.
step-rod = Para el plomero: meta la sonda hacia la calle, desde: { $device }.
step-rod-against = Para el plomero: meta la sonda contra la corriente, hacia la casa, desde: { $device }.
step-more-than-one-blockage = Lo que usted vio no puede venir de una sola obstrucción. Mire otra vez, o hay más de una.
step-drain-general = Deje correr un poco de agua en otra parte y mire: si solo este desagua lento, la obstrucción está cerca de él. Si todos desaguan lento, está en el desagüe principal.

## Pasos: un pozo que se llena
step-pit-stop-use = No use agua en los cuartos que desaguan en el pozo.
step-pit-general = ¿Está enchufada la bomba? ¿Se disparó su disyuntor (breaker), o saltó el botón de un tomacorriente? Vaya ahí solo si el piso está seco.
step-look-pump = Mire y escuche, sin tocar el agua: { $device }. { $where } ¿Funciona? ¿Zumba y no bombea nada?
step-free-float = Mire el flotador de la bomba: ¿está trabado debajo de algo? Suéltelo con un palo de madera seco, no con la mano.
step-look-pit-check = ¿Funciona la bomba, pero el agua no baja? Entonces mire: { $device }. { $where } Puede estar trabado, o el tubo que sigue está congelado o tapado.
step-look-pit-outlet = ¿Funciona la bomba, pero el agua no baja? Entonces el tubo de salida puede estar congelado o tapado. Mire su extremo afuera.
step-plug-pump-in = Enchufe otra vez la bomba. Manos secas, piso seco.
step-pit-bail = ¿Sigue subiendo? Saque el agua con un balde, y échela en un desagüe que no vuelva al pozo. Nunca use un generador dentro de la casa.
prove-pump = La bomba funciona, y el agua baja.
restore-pit = Cuando funcione: eche un balde de agua, y mire cómo la bomba arranca y se detiene sola. Mire otra vez en una hora.
look-replies = { $look } Si ahí todo está bien, la causa más probable es: { $good }. Si no: { $bad }.
between-two = entre { $from } y { $to }
look-drains = Eche una taza de agua en: { $device }. { $where } ¿Se va, o se devuelve?

## Pasos: electricidad
step-power-in-water = No pise agua que pueda tener corriente. Llame a la compañía eléctrica: ellos cortan la corriente desde afuera antes de que alguien entre ahí.
step-try-a-lamp = Desenchufe lo que no funciona. Enchufe una lámpara que funcione en otra parte. Pruebe los interruptores de pared del cuarto.
step-unplug-all = Desenchufe todo lo que está en este circuito.
step-unplug-named = Desenchufe, o apague en su propio interruptor, todo lo que depende de esto: { $list }.
step-suspect-gfci = Mire: { $device }. { $where } Si su botón saltó hacia afuera, oprima RESET con firmeza, una sola vez.
step-suspect-gfci-lamp = Mire: { $device }. { $where } Lo que significa su luz: { $lamp } Si su botón saltó hacia afuera, oprima RESET con firmeza, una sola vez.
step-suspect-breaker = Mire: { $device }. { $where } Una palanca disparada muchas veces queda entre ON y OFF. Si se disparó: empújela hasta OFF (apagado), y luego a ON (encendido), una sola vez.
step-suspect-switch = Pruebe: { $device }. { $where } Un tomacorriente puede depender de un interruptor de pared.
step-suspect-disconnect = Mire: { $device }. { $where } ¿Está encendido?
step-suspect-outage = ¿No hay luz en toda la casa, o tampoco donde los vecinos? Entonces no es su instalación: llame a la compañía eléctrica.
step-suspect-own-source = Mire: { $device }. { $where } ¿Está funcionando?
step-suspect-wiring = Si todo lo demás está encendido, la falla puede estar en los cables de esto: { $device }. { $where } Eso es para un electricista con licencia.
step-suspect-itself = Si todo lo demás está encendido, esto mismo puede estar gastado o flojo: { $device }. { $where } No lo toque: eso es para un electricista con licencia.
step-suspect-light-switch = Pruebe: { $device }. { $where } Oprímalo con firmeza, varias veces. Otro interruptor puede mover la misma luz.
step-suspect-pump = Si todo lo demás está encendido, la bomba puede estar gastada o trabada: { $device }. { $where } Un plomero la cambia.
step-suspect-lamp = Cambie la bombilla (foco) de: { $device }. { $where } Primero apague la luz, y deje enfriar la bombilla. Tome una que funcione en otra parte.
step-reports-contradict = Lo que se vio no concuerda. Pruebe la lámpara en un tomacorriente que funcione, y mire otra vez.
step-look-for-gfci = Busque tomacorrientes con botones TEST y RESET (GFCI): cocina, baños, garaje, afuera, lavandería. Si un botón saltó hacia afuera, desenchufe lo que depende de él. Después oprima RESET una sola vez.
step-look-at-gfcis = Un tomacorriente sin botones puede depender de uno con botones en otro cuarto. Mire si en estos un botón saltó hacia afuera: { $list }. Desenchufe lo que depende de él. Después oprima RESET una sola vez.
step-look-for-tripped = Busque entre los disyuntores (breakers) una palanca que quede entre ON y OFF. No vaya ahí si el piso está mojado.
step-reset-breaker = Después, vuelva a encender esto, una sola vez: { $device }. { $where } Empuje la palanca hasta OFF (apagado), y luego a ON (encendido).
step-reset-unknown-breaker = Busque entre los disyuntores (breakers) una palanca que quede entre ON y OFF. Empújela hasta OFF (apagado), y luego a ON (encendido), una sola vez. No vaya ahí si el piso está mojado.
step-trips-again = Si se dispara otra vez: déjelo apagado. No lo intente una segunda vez. Llame a un electricista con licencia.
step-one-by-one = Si se queda encendido, enchufe una cosa a la vez. La que lo dispara está dañada, o es demasiado: déjela desenchufada.
step-load-too-much = Los aparatos que el mapa conoce en este circuito gastan hasta { $watts } W. El disyuntor (breaker) aguanta { $carries } W, y { $lasting } W si funciona por horas. Es demasiado a la vez: use menos cosas juntas.
step-load-fits = Los aparatos que el mapa conoce en este circuito gastan hasta { $watts } W. El disyuntor (breaker) aguanta { $carries } W, y { $lasting } W si funciona por horas. Si con eso se dispara de inmediato, puede haber una falla.
step-switch-off = Apague: { $device }. Solo si ahí el piso está seco. { $where } Voltee la cara hacia otro lado.
step-if-not-switch-off = Si eso no le quita la corriente, apague esto en su lugar: { $devices }.
step-sparks-stand-back = Aléjese un paso. Que nadie lo toque. No jale ningún enchufe que eche chispas o humo, o esté caliente.
step-sparks-out = Nada de lo que está en el mapa y usted puede tocar le quita la corriente. Saque a todos, y llame desde afuera.
step-sparks-not-again = Déjelo apagado hasta que lo revise un electricista con licencia.
look-gfci = Mire: { $device }. { $where } ¿Saltó su botón hacia afuera?
look-breaker = Mire: { $device }. { $where } ¿Está su palanca entre ON y OFF, o en OFF?
look-switch = Pruebe: { $device }. { $where } ¿Con eso vuelve la corriente?
look-disconnect = Mire: { $device }. { $where } ¿Está encendido?
look-outlet = Pruebe: { $device }. { $where } ¿Tiene corriente o no?

## Pasos: sin luz
step-change-lamp = Apague la luz, y deje enfriar la bombilla (foco). Después ponga una que funcione en otra parte.
step-lost-neutral = Solo si unas luces brillan demasiado y otras poco, o parpadean: apague { $devices }, si puede llegar con los pies secos. Después llame a la compañía eléctrica.
step-lost-neutral-call = Solo si unas luces brillan demasiado y otras poco, o parpadean: desenchufe lo que le importa, y llame a la compañía eléctrica.
step-neighbors-dark = Mire por la ventana: ¿los vecinos tampoco tienen luz? Entonces espere, y llame a la compañía eléctrica.
prove-light = La luz enciende.
restore-after-outage = Después de un apagón: apague lo que estaba encendido, espere hasta que la luz haya vuelto por unos minutos, y luego encienda una cosa a la vez.

## Pasos: GFCI
step-gfci-load-side = { $device } también protege esto: { $list }.
step-gfci-look-wet = Mire lo que está afuera: { $list }. ¿Está mojado, o hay un cable dañado? Déjelo secar un día antes de probar otra vez.
step-reset-gfci = Después, restablezca esto, una sola vez: { $device }. { $where } Oprima RESET con firmeza. Si en cambio tiene palanca: hasta OFF (apagado), y luego a ON (encendido).
step-reset-gfci-lamp = Después, restablezca esto, una sola vez: { $device }. { $where } Oprima RESET con firmeza. Si en cambio tiene palanca: hasta OFF (apagado), y luego a ON (encendido). Lo que significa su luz: { $lamp }
step-gfci-general = Después oprima RESET con firmeza, una sola vez, en el tomacorriente con botones TEST y RESET. Manos secas, piso seco.
step-gfci-has-no-power = ¿El botón no hace nada? Entonces puede no tener corriente. Mire: { $device }. { $where } ¿Está su palanca en ON?
look-wet = Mire: { $device }. { $where } ¿Está mojado?
prove-gfci-holds = El botón se queda adentro. Una lámpara enchufada ahí se enciende.
restore-gfci = Cuando se quede: oprima TEST. Debe dispararse. Después oprima RESET. Si TEST no hace nada, haga que lo cambien.

## Pasos: descarga, agua cerca de la electricidad
step-shock-hands-off = No toque a la persona ni la cosa. Grite pidiendo ayuda.
step-shock-utility = Nada de lo que usted puede tocar le quita la corriente. Llame ahora al número de emergencia y a la compañía eléctrica. No se acerque hasta que no haya corriente.
step-shock-breathing = Cuando ya no haya corriente, o si otra persona puede hacerlo ahora: llame al número de emergencia. Haga lo que le digan, hasta que llegue la ayuda.
step-shock-doctor = Quien recibió una descarga va al médico, aunque se sienta bien.
step-tingle = ¿Fue solo un cosquilleo? No toque ahí metal ni agua. Que nadie se duche ni use ese grifo hasta que haya venido un electricista.
step-keep-out-of-water = Que nadie pise el agua, tampoco los niños ni las mascotas.
step-dry-way-only = ¿Está seco todo el camino al panel, y el piso delante de él? Si no, o si no está seguro, no vaya: llame a la compañía eléctrica.
step-stop-water-too = Después pare el agua, si puede llegar con los pies secos: { $devices }.
step-stop-water-general = Después pare el agua, si puede llegar con los pies secos: busque la llave de paso principal.
step-pump-stops-too = Una bomba que depende de esto también se para. El agua puede subir: mírela desde un lugar seco.
step-was-wet-stays-off = Deje apagado lo que se mojó, aunque parezca seco. Primero lo revisa un electricista.
look-dry-way = Mire desde lejos el camino hacia: { $device }. { $where } ¿Está seco el piso ahí, en todo el camino?
prove-dead = Su palanca está en OFF (apagado), y lo que alimenta quedó apagado y sin ruido. Un probador, en manos de alguien que sabe, debe mostrar que no hay corriente.
restore-was-wet = La corriente vuelve solo después de que un electricista con licencia haya revisado lo que se mojó: tomacorrientes, cables, panel, aparatos.

## Pasos: aire acondicionado
step-cooling-off = Apague el aire acondicionado en el termostato.
step-cooling-general = Mire la unidad interior de aire: ¿hay agua en la bandeja de abajo, o está levantado un interruptor de flotador? Entonces el desagüe está tapado, y el interruptor hizo su trabajo.
step-look-secondary-pan = Mire dentro de: { $device }. { $where } Debe estar seca. Si hay agua es urgente: un techo está en riesgo.
step-look-pan = Mire dentro de: { $device }. { $where } Si hay agua, su desagüe está tapado.
step-look-condensate-pump = Mire: { $device }. { $where } ¿Está enchufada, y funciona? ¿Está lleno su tanque?
step-look-filter = Mire el filtro, y si hay hielo en el serpentín. Si hay hielo: deje apagado el aire hasta que se derrita. Si el filtro está lleno: cámbielo.
step-unit-off = ¿Cae agua sobre cables o sobre el interruptor de la unidad? Entonces apague esto, si ahí el piso está seco: { $devices }.
step-unit-off-call = ¿Cae agua sobre cables o sobre el interruptor de la unidad? Entonces no toque nada ahí, y llame al técnico.
step-look-float = Mire: { $device }. { $where } Si está levantado, paró la unidad porque subió el agua. No lo anule.
step-clear-drain-at = Destape la línea de desagüe: ponga una aspiradora para líquidos bien pegada a su extremo unos cinco minutos, aquí: { $device }. { $where }
step-clear-drain = Destape la línea de desagüe: ponga una aspiradora para líquidos bien pegada a su extremo de afuera unos cinco minutos.
step-empty-pan = Vacíe la bandeja con la aspiradora para líquidos o una esponja. Después encienda otra vez el aire acondicionado y mire la bandeja diez minutos.
look-pan = Mire dentro de: { $device }. { $where } ¿Hay agua?

## Pasos: salir
step-gas-leave = Saque a todos ahora, y aléjense de la casa.
step-gas-call = Desde afuera, lejos de la casa, llame al número de emergencia y a la compañía de gas.
step-gas-nothing-else = No busque la fuga. No vuelva a abrir el gas usted mismo, nunca.
step-co-leave = Saque a todos ahora, al aire fresco.
step-co-call = Desde afuera, llame al número de emergencia.
step-co-head-count = Cuente a las personas. Diga si a alguien le duele la cabeza, está mareado o tiene náuseas.
step-fire-leave = Saque a todos ahora. Cierre las puertas al salir.
step-fire-call = Desde afuera, llame al número de emergencia.
step-fire-stay-low = Si hay humo, vaya agachado. Toque una puerta antes de abrirla: si está caliente, use otro camino.
step-wires-leave = Aléjese del cable y de todo lo que toca: cerca, charco, auto, árbol. Quédese al menos a 10 m (35 pies).
step-wires-call = Desde ahí, llame al número de emergencia y a la compañía eléctrica.
step-wires-nothing-near = No toque nada ahí, ni a nadie que esté en el suelo. No mueva el cable, ni siquiera con un palo.
step-wires-shuffle = ¿Ya está cerca? Mantenga los pies bien juntos. Aléjese deslizándolos en pasos cortos, con los dos pies en el suelo.
step-wires-car = ¿Está en un auto que el cable toca? Quédese adentro, y avise a otros que no se acerquen. Solo si se incendia: salte afuera con los dos pies juntos, no toque nada, y aléjese deslizando los pies.

## Pasos: lo que no responde
step-by-hand-note = Lo que dice el mapa de { $device }: { $note }
step-by-hand-at = Muévalo a mano: { $device }. { $where } Una cerradura tiene llave o teclado. Una puerta de garaje tiene un cordón que se jala, con la puerta cerrada.
step-by-hand = Muévalo a mano. Una cerradura tiene llave o teclado. Una puerta de garaje tiene un cordón que se jala, con la puerta cerrada. Un termostato tiene botones.
step-alarm-test = Mantenga oprimido el botón de prueba de: { $device }. { $where } Debe sonar fuerte. Un pitido por minuto quiere decir que la batería está débil.
step-thermostat-by-hand = Ajústelo con sus propios botones: { $device }. { $where } Una pantalla apagada quiere decir que no hay corriente: baterías débiles, un disyuntor (breaker) disparado, o un interruptor de flotador que paró la unidad por agua.
step-new-batteries = Ponga baterías nuevas, si las usa.
step-is-there-power = ¿Está enchufado? ¿Tiene corriente un tomacorriente cercano?
step-account = ¿Es suya la cuenta? Después de una mudanza todavía puede ser del constructor o del dueño anterior. Pídales que se la pasen.
prove-answers = Responde otra vez.
restore-answers = Cuando funcione: anote su código, su cuenta y qué funcionó a mano.
step-stay-out = Quédese afuera hasta que las personas que lleguen le digan que puede entrar.

## Volver a lo normal
restore-water-slowly = Cuando esté arreglado: abra un grifo, y luego abra el agua despacio, poco a poco. Busque fugas. Después abra lo demás.
restore-heater-full = Antes de darle energía otra vez, el calentador de agua debe estar lleno: primero, un grifo de agua caliente debe correr sin aire.
restore-find-cause = Anote qué tuvo la fuga, qué aguantó y qué válvula estaba dura.
restore-sewage-clean = Lave lo que tocaron las aguas negras. Tire lo que no se puede lavar. Lave la ropa aparte.
restore-drain-test = Cuando esté destapado: vuelva a poner todas las tapas. Deje correr agua en un solo lugar a la vez, primero el más bajo, y mire.
restore-power = Cuando se haya encontrado: enchufe una cosa a la vez.
restore-sparks = Solo después de que lo haya arreglado un electricista con licencia: encienda el disyuntor (breaker), y luego una cosa a la vez.
restore-cooling = Cuando las bandejas estén secas y la línea corra: encienda el aire acondicionado, y mire otra vez las bandejas después de una hora.
restore-when-told = Vuelva a entrar solo cuando lo digan las personas que llegaron. Ellos vuelven a abrir el gas, usted no.
restore-wires = Acérquese solo cuando la compañía eléctrica diga que ya no tiene corriente y que lo quitaron.

## Por qué llamar
why-emergency = Cuando hay personas en peligro.
why-emergency-missing = El archivo de la casa no lo tiene. Llene emergency_phone, para que aparezca aquí.
why-add-contact = { $why } El archivo de la casa no tiene ese contacto: agréguelo con su número.
why-utility = Su compañía de servicio.
why-works-device = Mueven lo que usted no puede mover.
why-trips-again = Si se dispara otra vez.
why-cut-power-outside = Para cortar la corriente desde afuera.
why-plumber-leak = Para arreglar la fuga.
why-plumber-drain = Para destapar el desagüe.
why-water-utility = Si usted no puede detener el agua.
why-water-utility-close = Para cerrar el agua en la calle.
why-sewer-utility = Si los vecinos tienen el mismo problema, o viene de la calle.
why-sewer-beyond-boundary = Lo que parece tapado está del lado de ellos.
why-electrician = Si nada de lo que usted puede tocar devuelve la corriente.
why-electricity-utility = Si toda la casa o la calle está sin luz.
why-electrician-sparks = Antes de volver a encenderlo.
why-electricity-utility-cut = Si usted no puede apagarlo sin peligro.
why-cooling = Si la línea no se destapa, o la bandeja se llena otra vez.
why-gas-utility = Desde afuera, después del número de emergencia.
why-gas-utility-heater = Si el gas está cortado, o huele a gas.
why-water-utility-outage = Si los vecinos tampoco tienen agua.
why-plumber-no-water = Si solo pasa en su casa.
why-plumber-heater = Si el calentador no enciende, o solo un grifo sale frío.
why-plumber-pit = Si la bomba no lo vacía.
why-electrician-wet = Antes de encender cualquier cosa que se mojó.
why-electricity-utility-wires = Desde un lugar seguro, después del número de emergencia.
why-warranty = Ellos dieron la garantía.
why-account = La cuenta puede ser de ellos.
why-cooling-thermostat = Si la calefacción o el aire no le hacen caso.
