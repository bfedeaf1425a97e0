# Qué está mal en el archivo de una casa. Cada problema tiene una causa y un remedio.
# Lugares comunes: { $path } es dónde está, en las palabras del archivo; { $field } un campo del archivo;
# { $found } lo que dice ahí el archivo; { $nearest } lo que quizá se quiso decir, si { $suggested } es yes.

## El texto no se puede leer

problem-empty-file = El archivo no contiene ninguna casa.
problem-empty-file-remedy = Empiece con Home( y póngale un format y un name, o tome una copia de respaldo.

problem-unclosed = El signo { $bracket } que se abre aquí nunca se cierra. Por eso no se puede leer el archivo.
problem-unclosed-remedy = Ponga el signo que cierra donde termina el grupo.

problem-wrong-bracket = El signo { $bracket } que se abre aquí sigue abierto donde está { $found }, en la línea { $other_line }, columna { $other_column }. No se puede leer el archivo.
problem-wrong-bracket-remedy = Cierre el signo antes de ese lugar, o quite lo que no va ahí.

problem-unclosed-text = A estas comillas les falta su pareja. Por eso no se puede leer el archivo.
problem-unclosed-text-remedy = Ponga comillas donde termina el texto.

problem-unclosed-comment = El comentario que empieza aquí nunca termina. Por eso no se puede leer el archivo.
problem-unclosed-comment-remedy = Ponga */ donde termina el comentario.

problem-unreadable = Desde aquí no se puede leer el archivo: { $found }
problem-unreadable-remedy = Los campos se escriben como nombre: valor, con una coma entre uno y otro. Busque justo antes unas comillas, un paréntesis o dos puntos que falten.

problem-too-deep = Aquí hay más de { $deepest } paréntesis unos dentro de otros. Por eso no se puede leer el archivo.
problem-too-deep-remedy = Una casa necesita cinco niveles de paréntesis. Busque paréntesis que no se cierren.

problem-not-a-home = El archivo no contiene una casa. Empieza con: { $found }
problem-not-a-home-remedy = Empiece con Home( y póngale un format y un name.

problem-missing-comma = Aquí falta una coma. El archivo se leyó como si estuviera.
problem-missing-comma-remedy = Ponga una coma aquí.

problem-extra-comma = Aquí sobra una coma. El archivo se leyó sin ella.
problem-extra-comma-remedy = Quite la coma.

problem-text-after-home = La casa termina antes de este texto, que no se leyó: { $found }
problem-text-after-home-remedy = Páselo adentro del último paréntesis, o busque un paréntesis que se cierre demasiado pronto.

problem-unknown-extension = La primera línea activa { $found }, que no se conoce. No cambia nada.
problem-unknown-extension-remedy = Quítelo.

## El formato

problem-format-missing = El archivo no dice en qué formato está. Se leyó como formato { $newest }.
problem-format-missing-remedy = Escriba primero format: { $newest }.

problem-format-newer = El archivo está en el formato { $found }, más nuevo que el que conoce esta versión ({ $newest }). Puede faltar algo, o puede estar mal algo de lo que se muestra.
problem-format-newer-remedy = Use una versión más nueva del programa. Esta versión no guarda encima del archivo.

problem-format-unreadable = El formato no es un número entero: { $found }. El archivo se leyó como formato { $newest }.
problem-format-unreadable-remedy = Escriba format: { $newest }. Hasta entonces no se guarda encima de este archivo.

## Campos

problem-missing-field = { $path }: falta el campo { $field }.
problem-missing-field-remedy = Agregue { $field }.

problem-unknown-field = { $path }: no existe el campo { $field }. Se pasó por alto.
problem-unknown-field-remedy = { $suggested ->
    [yes] Escriba { $nearest } si eso quiso decir. Si no, póngalo en note.
   *[no] Quítelo, o póngalo en note.
}

problem-field-twice = { $path }: el campo { $field } está dos veces. El primero está en la línea { $other_line }, columna { $other_column }, y ese se tomó.
problem-field-twice-remedy = Quite uno de los dos.

problem-wrong-type = { $path }: { $field } no puede ser { $found }. { $wanted ->
    [text] Debe ser un texto entre comillas.
    [number] Debe ser un número.
    [whole-number] Debe ser un número entero.
    [yes-or-no] Debe ser true o false.
    [list] Debe ser una lista entre corchetes.
    [group] Deben ser campos entre paréntesis.
    [point] Deben ser tres números entre paréntesis.
    [place] Deben ser dos números entre paréntesis.
    [pair] Deben ser dos id entre paréntesis.
    [range] Deben ser dos números entre paréntesis, primero el menor.
    [outline] Debe ser una lista de puntos, cada uno de dos números entre paréntesis.
    [name] Debe ser uno de los nombres que tiene el formato del archivo.
   *[other] Debe ser otra cosa.
} No se tomó en cuenta.
problem-wrong-type-remedy = { $wanted ->
    [text] Escríbalo entre comillas, como "hall".
    [number] Escríbalo como número en unidades SI, como 2.5.
    [whole-number] Escríbalo como número entero, como 2.
    [yes-or-no] Escriba true o false.
    [list] Escríbalo como lista, como ["a", "b"].
    [group] Escríbalo como campos, como (id: "hall", name: "Pasillo").
    [point] Escríbalo como x, y y altura en metros, como (2.1, 3.0, 0.4).
    [place] Escríbalo como x, y en metros, como (2.1, 3.0).
    [pair] Escríbalo como dos id, como ("hall", "kitchen").
    [range] Escríbalo como el menor y el mayor, como (12.0, 40.0).
    [outline] Escríbalo como esquinas en metros, como [(0.0, 0.0), (3.0, 0.0), (3.0, 2.0)].
   *[other] Escríbalo sin comillas ni paréntesis, tal como está en la lista de nombres de la documentación.
}

problem-unreadable-text = { $path }: no se puede leer el texto de { $field }: { $found }. No se tomó en cuenta.
problem-unreadable-text-remedy = Una barra invertida empieza un signo especial. Para escribir una, ponga dos. En la ruta de un archivo, use /.

problem-out-of-range = { $path }: { $field } no puede ser { $found }. No se tomó en cuenta.
problem-out-of-range-remedy = Ponga un valor de { $least } a { $most }, o no ponga el campo si no se sabe.

problem-no-direction = { $path }: { $field } no puede ser { $found }: una dirección va de 0 a menos de 360 grados. No se tomó en cuenta.
problem-no-direction-remedy = { $suggested ->
    [yes] Escriba { $better } para la misma dirección. Los grados van en el sentido de las agujas del reloj desde arriba del plano: 0 es arriba, 90 derecha, 180 abajo, 270 izquierda.
   *[no] Escriba los grados en el sentido de las agujas del reloj desde arriba del plano: 0 es arriba, 90 derecha, 180 abajo, 270 izquierda. No ponga el campo si no se sabe.
}

problem-unknown-value = { $path }: { $found } no es un valor conocido de { $field }.
problem-unknown-value-remedy = { $suggested ->
    [yes] Escriba { $nearest } si eso quiso decir. Puede ser uno de estos: { $known }.
   *[no] Puede ser uno de estos: { $known }.
}

problem-quoted-name = { $path }: { $found } está entre comillas, y los nombres no llevan comillas. Se entendió de todos modos.
problem-quoted-name-remedy = Quite las comillas.

problem-unknown-kind = { $path }: no existe el tipo { $found }. El componente se tomó como un simple tramo de línea.
problem-unknown-kind-remedy = { $suggested ->
    [yes] Escriba { $nearest } si eso quiso decir.
   *[no] Elija un tipo de la lista de la documentación, u Other.
}

problem-unreadable-date = { $path }: { $found } en { $field } no es un día. No se tomó en cuenta.
problem-unreadable-date-remedy = Escriba año, mes y día, entre comillas, como "2026-05-02".

problem-other-name = { $path }: esto se llama { $found }, pero aquí se espera { $wanted }. Se leyó como { $wanted }.
problem-other-name-remedy = Escriba { $wanted }, o ningún nombre. Vea si va en otra lista.

## Ids

problem-empty-id = { $path }: el id está vacío.
problem-empty-id-remedy = Póngale un id de letras minúsculas, números y guiones.

problem-odd-id = { $path }: el id { $found } tiene signos que no sirven en etiquetas ni en enlaces.
problem-odd-id-remedy = Use letras minúsculas, números y guiones, como { $better }, y cámbielo en todo lugar del archivo donde aparezca.

problem-duplicate-id = El id { $id } está dos veces en { $list }. El primero está en la línea { $other_line }, columna { $other_column }, y ese se tomó.
problem-duplicate-id-remedy = Póngale otro id a este, y vea a cuál de los dos se refiere cada conexión.

problem-shared-id = El id { $id } se usa en { $list } y en { $other_list } (línea { $other_line }, columna { $other_column }). Una pregunta sobre él puede referirse a cualquiera de los dos.
problem-shared-id-remedy = Póngale otro id a uno de los dos.

problem-unknown-id = { $path }: { $field } nombra { $id }, y nada en { $list } tiene ese id. No se tomó en cuenta.
problem-unknown-id-remedy = { $suggested ->
    [yes] Escriba { $nearest } si eso quiso decir. Si no, agregue { $id } a { $list }.
   *[no] Agregue { $id } a { $list }, o escriba un id que exista.
}

problem-unknown-owner = { $path }: el dueño { $id } no está en contacts. Por eso no se puede decir a quién llamar.
problem-unknown-owner-remedy = { $suggested ->
    [yes] Escriba { $nearest } si eso quiso decir. Si no, agregue { $id } a contacts.
   *[no] Agregue { $id } a contacts, con un número de teléfono.
}

## Pasos

problem-passage-to-itself = { $path }: el paso va de { $one } a sí mismo. No se tomó en cuenta.
problem-passage-to-itself-remedy = Escriba los id de los dos espacios que tiene a sus lados.

problem-stairs-on-one-level = { $path }: la escalera va de { $one } a { $other }, y los dos están en el mismo nivel.
problem-stairs-on-one-level-remedy = Quite stairs si es una puerta, o revise los niveles de los dos espacios.

problem-door-between-levels = { $path }: { $one } y { $other } están en niveles distintos, y este paso no está marcado como escalera.
problem-door-between-levels-remedy = Escriba stairs: true, y dónde termina como to_at, o revise los niveles de los dos espacios.

problem-door-in-two-places = { $path }: una puerta de { $one } a { $other } está en un solo lugar, y no lleva to_at. No se tomó en cuenta.
problem-door-in-two-places-remedy = Quite to_at, o escriba stairs: true si es una escalera.

## Conexiones

problem-to-itself = { $path }: la conexión va de { $from } a sí mismo. No se tomó en cuenta.
problem-to-itself-remedy = Escriba el id de aquello a lo que llega.

problem-cannot-meet = { $path }: { $id } es de tipo { $kind } y no puede llevar { $carries }. La conexión no se tomó en cuenta.
problem-cannot-meet-remedy = Vea si están bien los dos extremos, el tipo de { $id } y lo que lleva la conexión.

problem-media-mix = { $path }: { $id } llevaría { $carries } y { $medium }, que se mezclarían en un simple tramo de línea. La otra conexión está en la línea { $other_line }, columna { $other_column }. Esta no se tomó en cuenta.
problem-media-mix-remedy = Vea cuál de las dos está bien. Donde una línea cruza otra sin tocarla, son dos componentes.

problem-drain-loop = { $path }: con esta conexión el desagüe daría la vuelta en círculo: { $ids }. El agua no sube, así que la conexión no se tomó en cuenta.
problem-drain-loop-remedy = Vea qué conexión del círculo va al revés, y cambie su from por su to.

## El conjunto

problem-no-components = La casa no tiene componentes. Por eso no se puede contestar ninguna pregunta sobre ella.
problem-no-components-remedy = Empiece con el lugar por donde entra el agua, la llave de paso principal y el panel eléctrico.

## El registro de averías
problem-not-a-log = El archivo no contiene un registro de averías. Empieza con: { $found }
problem-not-a-log-remedy = Empiécelo con Log( y póngale un format y entries. Hasta entonces no se guarda nada encima de él.

problem-text-after-log = El registro termina antes de este texto, que no se leyó: { $found }
problem-text-after-log-remedy = Páselo adentro del último paréntesis, o busque un paréntesis que se cierre demasiado pronto.

problem-unreadable-time = { $path }: { $field } no es una hora del día: { $found }. Se dejó fuera.
problem-unreadable-time-remedy = Escriba horas y minutos, de "00:00" a "23:59".

problem-one-lesson = { $path }: no queda claro qué se aprendió. La entrada sigue en el archivo tal como está.
problem-one-lesson-remedy = Escriba una sola cosa: state, tag, name, o space con at. Ponga las demás entre paréntesis propios.
