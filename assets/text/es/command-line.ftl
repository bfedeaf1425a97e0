# Lo que dice la línea de comandos.

cli-no-display = No hay pantalla para abrir una ventana. Las mismas respuestas se obtienen en la línea de comandos.
cli-no-window = No se pudo abrir una ventana: { $why }. Las mismas respuestas se obtienen en la línea de comandos.
cli-example = Un ejemplo: hay una fuga en el grifo de la cocina, en la casa que trae el programa.
cli-how-to-ask = Pregunte usted: quarterturn answer HOME --trouble leak --at SPOT. Más: quarterturn --help
cli-unknown-language = No hay ningún idioma "{ $text }". Hay: { $list }.
cli-language = { $tag } ({ $name })
cli-trouble-line = { $title }, { $hint }
cli-unknown-trouble = No existe el problema "{ $text }". Vea: quarterturn troubles
cli-unknown-spot = En esta casa no hay ningún componente, conexión ni espacio "{ $text }".
cli-no-spot = Diga dónde es: --at con un componente, una conexión a..b o un espacio.
cli-unknown-space = En esta casa no hay ningún espacio "{ $text }" desde donde empezar.
cli-unknown-device = En esta casa no hay ningún dispositivo "{ $text }" que pudiera haber fallado.
cli-unknown-seen = En esta casa no hay ningún componente ni espacio "{ $text }" que se pudiera haber visto.
cli-unknown-state = No se entiende "{ $text }". Escríbalo como ID=STATE, con uno de estos estados: { $states }.
cli-did-you-mean = { $cause } Lo más parecido: { $list }
cli-unread = { $path }: no se pudo leer: { $why }. Dé la carpeta de una casa, o su home.ron.
cli-finding = { $id }: { $text } { $remedy }
cli-no-findings = No falta nada que el programa pueda notar.
cli-heading = { $trouble }: { $spot }
cli-between = { $from } a { $to }
cli-seconds = { $seconds ->
    [one] más o menos un segundo
   *[other] unos { $seconds } segundos
}
cli-minutes = { $minutes ->
    [one] más o menos un minuto
   *[other] unos { $minutes } minutos
}
cli-step-timed = { $text } ({ $seconds })
cli-prove = Funcionó si: { $text }
cli-sets = Maneras de cortarlo, la mejor primero:
cli-set = { $list }. { $by } Tiempo: { $seconds }. Se queda sin servicio: { $off ->
    [one] una cosa.
   *[other] { $off } cosas.
}
cli-set-litres = { $list }. { $by } Tiempo: { $seconds }; para entonces, en el piso, { $amount ->
    [one] más o menos un litro
   *[other] unos { $amount } litros
}. Se queda sin servicio: { $off ->
    [one] una cosa.
   *[other] { $off } cosas.
}
cli-set-gallons = { $list }. { $by } Tiempo: { $seconds }; para entonces, en el piso, { $amount ->
    [one] más o menos un galón
   *[other] unos { $amount } galones
}. Se queda sin servicio: { $off ->
    [one] una cosa.
   *[other] { $off } cosas.
}
by-anyone = Cualquiera puede hacerlo.
by-licensed = Debe hacerlo una persona con licencia.
by-utility = Debe hacerlo la compañía de servicio.
cli-suspects = Cuál puede ser la causa:
cli-suspect = - { $name }: { $percent } %
cli-next-check = Lo que más aclara si lo revisa: { $text } ({ $seconds })
cli-blocked = La obstrucción puede estar entre:
cli-blocked-between = - { $from } y { $to }
cli-call = A quién llamar:
cli-call-line = { $name }: { $phone }. { $why }
cli-restore = Cómo volver a lo normal:

signal-danger = PELIGRO
signal-warning = ADVERTENCIA
signal-caution = PRECAUCIÓN
signal-notice = AVISO
