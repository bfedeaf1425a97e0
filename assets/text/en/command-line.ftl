# What the command line says.

cli-no-display = There is no display to open a window on. The same answers are to be had on the command line.
cli-no-window = No window could be opened: { $why }. The same answers are to be had on the command line.
cli-example = An example: the kitchen tap leaks in the built-in house.
cli-how-to-ask = Ask it yourself: quarterturn answer HOME --trouble leak --at SPOT. More: quarterturn --help
cli-unknown-language = There is no language "{ $text }". There are: { $list }.
cli-language = { $tag } ({ $name })
cli-trouble-line = { $title }, { $hint }
cli-unknown-trouble = There is no trouble "{ $text }". See: quarterturn troubles
cli-unknown-spot = There is no component, connection or space "{ $text }" in this home.
cli-no-spot = Say where it is: --at a component, a connection a..b, or a space.
cli-unknown-space = There is no space "{ $text }" in this home to start from.
cli-unknown-device = There is no device "{ $text }" in this home that could have failed.
cli-unknown-seen = There is no component or space "{ $text }" in this home that could have been seen.
cli-unknown-state = "{ $text }" is not understood. Write it as ID=STATE, with one of these states: { $states }.
cli-did-you-mean = { $cause } Nearest: { $list }
cli-unread = { $path }: this could not be read: { $why }. Give the folder of a home, or its home.ron.
cli-finding = { $id }: { $text } { $remedy }
cli-no-findings = Nothing is missing that the program could tell.
cli-heading = { $trouble }: { $spot }
cli-between = { $from } to { $to }
cli-seconds = { $seconds ->
    [one] about one second
   *[other] about { $seconds } seconds
}
cli-minutes = { $minutes ->
    [one] about one minute
   *[other] about { $minutes } minutes
}
cli-step-timed = { $text } ({ $seconds })
cli-prove = It worked if: { $text }
cli-sets = Ways to cut it off, best first:
cli-set = { $list }. { $by } In { $seconds }. Goes off: { $off ->
    [one] one thing.
   *[other] { $off } things.
}
cli-set-litres = { $list }. { $by } In { $seconds }, { $amount ->
    [one] about one liter
   *[other] about { $amount } liters
} on the floor by then. Goes off: { $off ->
    [one] one thing.
   *[other] { $off } things.
}
cli-set-gallons = { $list }. { $by } In { $seconds }, { $amount ->
    [one] about one gallon
   *[other] about { $amount } gallons
} on the floor by then. Goes off: { $off ->
    [one] one thing.
   *[other] { $off } things.
}
by-anyone = Anyone can do it.
by-licensed = A licensed person must do it.
by-utility = The utility must do it.
cli-suspects = What may be the cause:
cli-suspect = - { $name }: { $percent } %
cli-next-check = The check that tells most: { $text } ({ $seconds })
cli-blocked = The blockage may be between:
cli-blocked-between = - { $from } and { $to }
cli-call = Whom to call:
cli-call-line = { $name }: { $phone }. { $why }
cli-restore = How to bring it back:

signal-danger = DANGER
signal-warning = WARNING
signal-caution = CAUTION
signal-notice = NOTICE
