# Qué le falta al mapa de una casa o qué tiene mal.

check-no-isolation = Nada que usted pueda cerrar corta esto: { $name }.
check-no-isolation-remedy = ¿Hay una llave de paso que todavía no está en el mapa? Agréguela. Si no hay ninguna, haga que le pongan una.
check-one-line-of-defence = Entre esto y la entrada hay un solo dispositivo: { $name }. Si ese falla, no queda nada más.
check-one-line-of-defence-remedy = Agregue al mapa las otras llaves de paso del camino, o haga que le pongan una.
check-unreachable = { $net ->
    [water] Según el mapa, el agua no llega a esto: { $name }.
    [power] Según el mapa, la electricidad no llega a esto: { $name }.
    [gas] Según el mapa, el gas no llega a esto: { $name }.
   *[other] Según el mapa, nada llega a esto: { $name }.
}
check-unreachable-remedy = Agregue la conexión que lo alimenta, o dé vuelta a una que vaya al revés.
check-isolates-nothing = Mover este dispositivo no corta nada: { $name }.
check-isolates-nothing-remedy = Vea si sus conexiones están bien. Si lo están, no sirve en una emergencia: dígalo en su note.
check-drain-without-cleanout = No hay ningún registro de limpieza (cleanout) en el camino de aquí al alcantarillado: { $name }.
check-drain-without-cleanout-remedy = Busque en el camino una abertura con tapa y agréguela.
check-drain-without-outfall = Según el mapa, este desagüe no lleva a ninguna parte: { $name }.
check-drain-without-outfall-remedy = Agregue las conexiones hasta el alcantarillado o la fosa séptica.
check-no-breaker = No se conoce el disyuntor (breaker) de esto: { $name }.
check-no-breaker-remedy = Busque su disyuntor (apague uno a la vez, con una lámpara enchufada) y conéctelo.
check-one-way-dead-end = Esto solo deja pasar en un sentido, pero nada sale de ello, o nada entra: { $name }.
check-one-way-dead-end-remedy = Sus conexiones deben ir de su entrada a su salida: una que llegue y una que salga.
check-not-connected = Nada está conectado a esto: { $name }.
check-not-connected-remedy = Agregue lo que lo alimenta y lo que él alimenta, o quítelo.
check-level-unused = No hay ningún espacio en este nivel: { $name }.
check-level-unused-remedy = Ponga este nivel en sus espacios, o quítelo.
check-space-unused = No hay nada en este espacio: { $name }.
check-space-unused-remedy = Ponga este espacio en los componentes que están en él. Si no hay ninguno, déjelo así.
check-contact-unused = Nada se refiere a este contacto: { $name }.
check-contact-unused-remedy = Póngale un role, o nómbrelo como owner.
check-contact-without-phone = Este contacto no tiene número: { $name }.
check-contact-without-phone-remedy = Llene su phone.
check-no-emergency-phone = La casa no tiene número de emergencia: { $name }.
check-no-emergency-phone-remedy = Llene emergency_phone.
