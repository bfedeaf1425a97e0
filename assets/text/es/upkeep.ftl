### Texts of the crate upkeep

## Quién responde
role-association = La asociación de propietarios
role-insurer = La aseguradora
role-alarm = La empresa de la alarma
why-hours = { $why } Horario: { $hours }.
why-and-reason = { $why } { $reason }
why-insurer = Si algo se dañó: tome fotos antes de limpiar y luego avise.
responsible-warranty = { $end ->
    [known] { $warranty } cubre esto hasta el { $until }: llame a ellos antes de que otro lo repare.
   *[open] { $warranty } quizá aún cubra esto, porque el archivo de la casa no dice cuándo termina: pregúnteles antes de que otro lo repare.
} { $pays ->
    [all] Lo que cubre lo pagan ellos, no usted.
    [parts] La pieza la pagan ellos; el trabajo quizá usted.
    [fee] Es un plan de servicio: la visita puede tener un costo.
   *[ask] Pregunte qué es lo que paga.
}
responsible-street = Esto queda del lado de la calle del límite «{ $boundary }»: le toca repararlo a { $name }, no a usted.
responsible-boundary = El límite «{ $boundary }» es de ellos ({ $name }): les toca repararlo.
responsible-theirs = El mapa dice que esto es de ellos ({ $name }): les toca repararlo.
responsible-ours = { $mark ->
    [house] Esto queda de su lado del límite «{ $boundary }».
    [own] La calle no tiene parte en este sistema.
    [between] Esto queda detrás del límite «{ $boundary }», con otro más antes de las habitaciones, y el mapa no dice de quién es.
    [boundary] El mapa no dice de quién es el límite «{ $boundary }».
   *[unmarked] El mapa no marca aquí ningún límite con la calle, así que se toma como suyo.
} { $cover ->
    [ended] { $warranty } terminó el { $until }: la reparación le toca a usted.
    [none] Ninguna garantía del mapa lo cubre hoy: la reparación le toca a usted.
   *[unknown] Si lo cubre una garantía depende del día.
}

## Días
day = { $day } de { $month } de { $year }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

## Mantenimiento
upkeep-part = { $device }, { $space }
upkeep-no-place = sin habitación en el mapa
upkeep-by = { $name }: { $phone }

tool-lamp = una lámpara para enchufar
tool-ladder = una escalera
tool-batteries = pilas nuevas
tool-filter = un filtro nuevo del mismo tamaño
tool-wet-vacuum = una aspiradora de líquidos
tool-cup = una taza de agua
tool-bucket = un balde
tool-gloves = guantes de goma y protección para los ojos
tool-hose = una manguera de jardín
tool-flashlight = una linterna
tool-salt = sal para el ablandador
tool-wrench = una llave ajustable
tool-brush = un cepillo para conductos
tool-vacuum = una aspiradora

upkeep-caution-force = No fuerce una llave que no gira: el vástago puede romperse y entonces aquí ya no se puede cortar el agua. Anote que está trabada.
upkeep-caution-critical = Antes de quitar la corriente, avise a quien dependa de algo en este circuito; después compruebe que congeladores, bombas y alarmas funcionan otra vez.
upkeep-caution-failed-test = Lo que no se dispara al oprimir TEST no protege a nadie: no lo use y haga que lo cambien.
upkeep-caution-ladder = Apoye bien la escalera y tenga a alguien cerca.
upkeep-caution-unit-off = Apague el equipo en el termostato antes de abrirlo o meter la mano.
upkeep-caution-no-mixing = Vinagre o jabón, nunca cloro junto con vinagre: mezclados sueltan un gas venenoso.
upkeep-caution-cords = Nunca toque un cable, enchufe o tomacorriente con las manos mojadas ni con los pies en el agua.
upkeep-caution-sewage = Las aguas negras enferman: guantes, protección para los ojos, afloje la tapa despacio y hágase a un lado, lávese después, lejos niños y mascotas.
upkeep-caution-scald = El agua puede quemar. Mantenga la cara y las manos lejos de donde sale.
upkeep-caution-water-off = Cierre el agua antes de aflojar una manguera y suelte la presión en el grifo.
upkeep-caution-dryer-off = Desenchufe primero la secadora. Una de gas la mueve quien sepa probar su tubería.
upkeep-caution-sprinkler = Nunca cierre la válvula de control de los rociadores contra incendios ni cuelgue nada de ellos.
upkeep-caution-panel = Con las manos y los pies secos, y nunca sin la tapa. Deténgase si está caliente, zumba o huele.
upkeep-caution-co = Un generador solo funciona afuera, al menos a 6 metros (20 pies) de puertas y ventanas: su escape mata sin olor.
upkeep-caution-backfeed = Alimente la casa solo por su entrada y su enclavamiento, nunca por un tomacorriente: moriría quien trabaje en la línea de la calle.
upkeep-caution-gas = Si huele a gas: no toque interruptores, salga y llame desde afuera.
upkeep-caution-pit = Nunca entre ni se asome al tanque: su aire mata. Mantenga la tapa cerrada y lejos a los niños.
upkeep-caution-fan-box = Un ventilador de techo solo puede colgar de una caja marcada para eso: de otra puede caerse.
upkeep-caution-dryer-cover = Una secadora que sopla contra una salida tapada o un conducto demasiado largo junta pelusa, y la pelusa arde.

job-exercise = Cerrar y abrir cada llave de paso del agua
job-exercise-how = Ciérrela del todo, vea que el agua detrás de ella se corta, ábrala del todo. Un volante se regresa un poco desde abierto. Una mañana entre semana es más fácil conseguir plomero, si alguna falla. Anote cuál estaba dura, trabada o no cerraba bien.
job-gfci-test = Oprimir TEST y luego RESET en cada GFCI
job-gfci-test-how = Enchufe una lámpara y enciéndala. Oprima TEST: debe apagarse, y todo lo que cuelga del aparato. Oprima RESET: debe encender otra vez.
job-afci-test = Oprimir TEST en cada aparato contra arcos
job-afci-test-how = Oprima TEST con el interruptor encendido: debe dispararse. Llévelo del todo a OFF y luego a ON.
job-alarm-test = Oprimir TEST en cada alarma de humo y de CO
job-alarm-test-how = Mantenga TEST hasta que suene. Si están unidas, deben sonar todas. Compruebe que todos la oyen tras una puerta cerrada.
job-alarm-battery = Pilas nuevas en las alarmas de humo y de CO
job-alarm-battery-how = Abra cada una, cambie la pila, ciérrela, oprima TEST. Una con pila sellada se deja como está.
job-alarm-replace = Cambiar las alarmas de humo y de CO que tienen diez años
job-alarm-replace-how = El día de fabricación está atrás. Cambie la alarma entera y oprima TEST al final.
job-filter = Cambiar el filtro de aire
job-filter-how = Mírelo cada mes; cámbielo cuando esté gris, y a más tardar ahora. La flecha del borde apunta al equipo. Escriba el día en el borde.
job-condensate = Limpiar la línea de condensado y mirar las bandejas
job-condensate-how = Apriete una aspiradora de líquidos contra el extremo exterior de la línea unos cinco minutos. Luego vierta una taza de agua en la te junto al equipo: debe salir afuera. Las bandejas deben estar casi secas; agua en la segunda significa que la primera falló.
job-float-test = Levantar cada interruptor de flotador: el enfriamiento debe parar
job-float-test-how = Con el enfriamiento encendido, levante el flotador: el equipo debe parar en uno o dos minutos. Bájelo: vuelve a funcionar.
job-cooling-service = Hacer revisar el aire acondicionado
job-cooling-service-how = Antes de los primeros días de calor. Pida que revisen serpentines, drenaje, flotadores y conexiones.
job-sump-test = Verter un balde de agua en el pozo de la bomba
job-sump-test-how = La bomba debe arrancar, vaciar el pozo y parar. Nada debe regresar después: si regresa, su válvula de retención no cierra.
job-ejector-test = Ver trabajar la bomba eyectora
job-ejector-test-how = Descargue varias veces el inodoro más bajo y escuche: la bomba debe arrancar y parar. Deje la tapa cerrada.
job-backwater = Abrir y enjuagar la válvula antirretorno del drenaje
job-backwater-how = No use agua en la casa mientras esté sin tapa. Saque o sostenga la clapeta, enjuáguela con su asiento, vea que se mueve bien, cierre bien la tapa.
job-heater-flush = Sacar un balde de agua del calentador
job-heater-flush-how = Ponga una manguera en el grifo al pie del tanque y deje correr un balde, hasta que salga clara. Si el grifo luego no cierra, póngale una tapa de manguera y llame a un plomero. Un tanque viejo que nunca se vació se deja en paz.
job-heater-service = Hacer revisar el calentador de agua
job-heater-service-how = Pida que revisen el quemador, la salida de humos y el intercambiador, y que quiten el sarro.
job-relief = Mirar la válvula de alivio
job-relief-how = Su tubo debe estar libre, apuntar hacia abajo y estar seco. Si gotea hay presión: mire el tanque de expansión. Si su palanca se levanta para probarla lo dice su fabricante: una vieja quizá ya no cierre.
job-expansion = Golpear con los nudillos el tanque de expansión o de presión
job-expansion-how = La mitad con aire suena hueca, la otra apagada. Apagada en todas partes: está lleno de agua y falló.
job-softener = Mirar la sal del ablandador
job-softener-how = Téngalo a medio llenar, por encima del agua. Rompa la costra con el palo de una escoba.
job-hoses = Mirar las mangueras de grifos, inodoros y máquinas
job-hoses-how = Bultos, grietas, óxido en las puntas, gotas: cambie la manguera. Toque detrás de la lavadora. Cierre las llaves de la máquina cuando salga de viaje.
job-hose-replace = Cambiar las mangueras que tienen cinco años
job-hose-replace-how = Ponga mangueras de acero trenzado del mismo largo y rosca, con empaques nuevos, a mano y luego un cuarto de vuelta. Anote el día.
job-dryer-duct = Limpiar el conducto de la secadora
job-dryer-duct-how = Quite el tubo de atrás, cepille y aspire el conducto hasta afuera, despeje la tapa exterior. Encienda la secadora: la tapa debe abrirse bien.
job-winter = Cerrar y vaciar los grifos de afuera antes de las heladas
job-winter-how = Quite las mangueras, cierre la llave de adentro, abra el grifo de afuera y déjelo abierto. Haga vaciar con aire el riego.
job-floor-drain = Verter una taza de agua en cada coladera de piso
job-floor-drain-how = Su trampa se seca cuando no se usa y entonces deja entrar el aire del drenaje.
job-sprinkler = Mirar el manómetro y la válvula de los rociadores contra incendios
job-sprinkler-how = El manómetro marca más o menos lo mismo que el mes pasado y la válvula está abierta. Nada cuelga de un rociador ni lo tapa.
job-backflow-test = Hacer probar el dispositivo contra reflujo
job-backflow-test-how = Por un probador certificado; muchas empresas de agua piden el informe.
job-breakers = Apagar y encender una vez cada interruptor
job-breakers-how = Uno tras otro, con firmeza a OFF y de vuelta. Vea cada vez que se apaga lo que dice la lista. Ponga en hora los relojes al final.
job-generator = Encender el generador
job-generator-how = Afuera, unos veinte minutos, con algo enchufado. Combustible fresco; cierre la llave del combustible y deje que se acabe.
job-gas-service = Hacer revisar los aparatos de gas y sus salidas de humo
job-gas-service-how = Quemador, salida de humos, aire fresco, uniones. Con llama amarilla u hollín no se espera.
job-thermostat-battery = Pilas nuevas en el termostato
job-thermostat-battery-how = Si las tiene: con pilas bajas parece que la calefacción o el frío se dañó.
job-septic = Hacer inspeccionar la fosa séptica y, si hace falta, vaciarla
job-septic-how = Guarde el informe con la altura del lodo: dice cuándo toca otra vez.
job-well = Hacer analizar el agua del pozo
job-well-how = Por un laboratorio que indique el departamento de salud; antes, si hubo inundación o cambia el sabor.
job-warranty = Revisarlo todo antes de que termine: { $warranty }
job-warranty-how = Su último día es el { $until }. Recorra todo lo que cubre y avise por escrito antes de ese día{ $known ->
    [yes] , a: { $name }.
   *[no] .
}

## La mudanza
move-in-number = Llenar los números que faltan
move-in-number-how = Estos faltan en el archivo de la casa: { $list }.
move-in-boundary = Aprender dónde empieza su lado
move-in-boundary-how = Lo que queda del lado de la calle no le toca a usted manejarlo ni repararlo. Encuentre cada límite y tenga su número a mano.
move-in-main = Encontrar el tablero eléctrico y lo que corta toda la casa
move-in-main-how = Abra la puerta, no la tapa. Compare la lista con la casa, interruptor por interruptor, con alguien que avise de cuarto en cuarto.
move-in-shutoffs = Probar las llaves de paso aquí: { $space }
move-in-shutoffs-how = { $count ->
    [one] Ciérrela, vea que el agua detrás de ella se corta, ábrala otra vez.
   *[other] Cierre cada una de las { $count }, vea que el agua detrás de ella se corta, ábrala otra vez.
} Anote cuál está dura, trabada o no cierra bien.
move-in-meter = Leer el medidor de agua con todo cerrado
move-in-meter-how = Cierre todos los grifos y máquinas. Si su ruedita o la última cifra aún se mueve tras un cuarto de hora, algo gotea.
move-in-cleanout = Encontrar el registro del drenaje: { $device }
move-in-cleanout-how = Vea que se puede llegar, que su tapa no está enterrada ni pintada y que la llave para ella está en la casa. Déjelo cerrado.
move-in-gfci = Aprender qué cuelga de esto: { $device }
move-in-gfci-how = { $count ->
    [0] Oprima TEST: solo se apaga él mismo. Oprima RESET.
    [one] Oprima TEST: además de él debe apagarse una cosa, la de la lista. Oprima RESET.
   *[other] Oprima TEST: deben apagarse { $count } cosas, las de la lista. Oprima RESET.
} { $told ->
    [yes] Su luz: { $lamp }
   *[no] Anote qué significa su luz, si la tiene.
}
move-in-alarms = Probar las alarmas de humo y de CO y leer su edad
move-in-alarms-how = Oprima TEST en cada una: si están unidas, deben sonar todas. El día de fabricación está atrás: escríbalo en el archivo de la casa.
move-in-dryer-cover = Quitar la tapa de la salida exterior antes del primer uso: { $device }
move-in-dryer-cover-how = Vaya afuera, a donde termina su conducto. Quite todo plástico, cinta o tapón de la obra. Con la secadora encendida, la tapa debe abrirse.
move-in-dryer-duct = Comprobar el largo del conducto: { $device }
move-in-dryer-duct-how = { $fits ->
    [yes] Está dentro del límite: { $length } { $unit ->
            [feet] pies
           *[meters] m
        } con { $elbows } codos, se permiten { $most } { $unit ->
            [feet] pies
           *[meters] m
        }.
    [no] Es demasiado largo: { $length } { $unit ->
            [feet] pies
           *[meters] m
        } con { $elbows } codos, se permiten { $most } { $unit ->
            [feet] pies
           *[meters] m
        }. Pregunte al constructor antes de usarla.
   *[unknown] Mídalo y cuente sus codos. Con los { $elbows } que tiene el mapa se permiten { $most } { $unit ->
            [feet] pies
           *[meters] m
        }.
} Las instrucciones de la secadora van primero.
move-in-washer-box = Abrir y conectar la caja: { $device }
move-in-washer-box-how = Rompa lo que tapa el drenaje y las llaves en su caja, si es nueva. Conecte las mangueras con empaques nuevos, cuelgue la de drenaje y amárrela. Haga un lavado y toque si hay gotas.
move-in-fan-box = Antes de colgar aquí un ventilador de techo: { $device }
move-in-fan-box-how = Un portalámparas solo prueba que hay corriente. Busque en la caja la marca de que soporta un ventilador; sin ella, primero va una caja que la tenga.
move-in-account = Pasar la cuenta a su nombre y aprender qué funciona a mano: { $device }
move-in-account-how = Haga que la pasen a su nombre, con contraseña nueva y sin el dueño anterior. Pruebe una vez qué funciona sin corriente y sin red: llave, teclado, cordón, interruptor manual.
move-in-heater = Aprender a apagarlo: { $device }
move-in-heater-how = Encuentre su llave de agua fría, su gas o corriente y el final de su tubo de alivio. Primero se apaga, luego se queda sin agua.
move-in-gas = Ver dónde se corta el gas
move-in-gas-how = La llave del medidor es para la empresa, los bomberos y trabajos planeados. Tenga el número de la empresa de gas en su teléfono.
move-in-sump = Ver trabajar la bomba una vez
move-in-sump-how = Vierta un balde de agua en el pozo: la bomba debe arrancar y parar sola. Aprenda qué tomacorriente y qué interruptor la alimentan.
move-in-floats = Levantar una vez cada interruptor de flotador
move-in-floats-how = Con el enfriamiento encendido, el equipo debe parar. Así lo reconocerá cuando pare solo: la bandeja está llena.
move-in-sprinkler = Aprender dónde se controlan los rociadores contra incendios
move-in-sprinkler-how = Para que nadie cierre esa válvula por error. Un rociador que corre sin fuego es cosa de los bomberos.
move-in-generator = Aprender el orden del generador
move-in-generator-how = Pruébelo una vez de día: afuera, todo apagado, enchufar, principal apagado, su interruptor encendido, luego un circuito a la vez.
move-in-warranty = Conocer esta garantía: { $warranty }
move-in-warranty-how = { $end ->
    [known] Su último día es el { $until }.
   *[open] El archivo de la casa no dice cuándo termina: averígüelo.
} Regístrela si lo pide y guarde su papel{ $known ->
    [yes] . Quién la da: { $name }.
   *[no] . El archivo de la casa no dice quién la da.
}

## La lista de lo que toca
upkeep-title = Lo que toca en esta casa: { $home }, { $today }
upkeep-overdue = Atrasado
upkeep-this-month = Este mes
upkeep-later = Más adelante
upkeep-once = Una vez, cuando convenga
upkeep-line = { $name } ({ $due })
upkeep-due-on = toca el { $day }
upkeep-never = nadie ha anotado cuándo se hizo
upkeep-some-never = de algunos nadie ha anotado cuándo se hizo
upkeep-last = última vez: { $day }
upkeep-every-months = { $months ->
    [one] cada mes
    [12] cada año
   *[other] cada { $months } meses
}
upkeep-every-year = cada año en { $list }
upkeep-nothing = No toca nada, y el mapa no da lugar a ningún trabajo.
upkeep-parts = En: { $list }
upkeep-how = Cómo: { $how }
upkeep-tools = Hace falta: { $list }
upkeep-who = Quién: { $who }
upkeep-note = Nota: { $note }
upkeep-source = Fuente: { $source }
upkeep-move-in = Lista de mudanza: { $done } de { $all } hechas.
upkeep-written = Escrito: { $file }
upkeep-not-written = { $problem } Indique un archivo en una carpeta donde pueda escribir.
upkeep-no-day = No se sabe qué día es. Indíquelo: --today 2026-05-02
upkeep-calendar = Mantenimiento: { $home }

## En el paquete y en el teléfono
card-hours = Horario: { $hours }
move-in-done = Hecho el { $day }, { $by }. { $note }
move-in-open = { $how } ({ $list })
