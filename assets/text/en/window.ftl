# Texts: window

window-title = Quarterturn: what to do when the house goes wrong

## Bar
window-people-in-danger = People in danger: { $phone }
window-settings = Settings…
window-open-other = Another home…
window-text-smaller = A−
window-text-smaller-label = Smaller text
window-text-bigger = A+
window-text-bigger-label = Bigger text
window-theme-light = Light
window-theme-dark = Dark

## Problems of the home's file
window-problems = { $n ->
    [one] One thing in this home’s file needs attention.
   *[other] { $n } things in this home’s file need attention.
}
window-problems-show = Show them
window-problems-hide = Hide them

## Opening another home
window-open-title = Open another home
window-open-hint = A home is a folder with a file home.ron in it.
window-choose-file = Choose a file…
window-choosing = Waiting for the file window… If none appears, type the path below.
window-file-filter = Home files
window-path = Or type the path of the folder
window-open = Open
window-cancel = Cancel
window-perhaps-no-dialog = No file window could be shown, it seems. Type the path instead.
window-unread = { $path } could not be read: { $why }
window-no-home = { $path } holds no home that can be shown. { $why }

## First page: the trouble
window-what-do-you-see = What do you see?
window-what-do-you-see-hint = Press what fits best. Nothing is lost by trying.
window-group-life = Danger to people
window-group-water = Water
window-group-drains = Drains
window-group-power = Electricity
window-group-cooling = Cooling
window-group-control = Locks, doors, alarms
window-trouble-and-hint = { $trouble }, { $hint }
window-back = ← Back

## Second page: the spot
window-where = Where is it?
window-where-hint = Press it in the list or on the plan.
window-search = Find by name, tag or room
window-none-found = Nothing here is called “{ $words }”.
window-show-all = Show everything again
window-no-spots = This home’s map has no spot for this trouble.
window-space-unknown = Room not on the map
window-spot-space = Anywhere in: { $space }
window-spot-home = The whole house
window-spot-connection = Line from { $from } to { $to }
window-tagged = { $tag } { $device }
window-whereabouts = { $space }, { $level }
window-whereabouts-unknown = Its room is not on the map

## Third page: the answer
window-caution = { $signal }: { $text }
window-not-mapped = The map does not show how this spot is fed. What follows is general advice.
window-signal-danger = DANGER
window-signal-warning = WARNING
window-signal-caution = CAUTION
window-signal-notice = NOTICE
window-left-out = Left out, because it does not work: { $device }
window-works-after-all = { $device } does work after all

window-do-this-first = Do this first
window-do-this-now = Do this now
window-step-of = step { $n } of { $of }
window-step-number = { $n }.
window-then = Then
window-all-done = Every step is done.
window-done = Done
window-wont-turn = It won’t turn
window-wont-switch-off = It won’t switch off
window-wont-stay-on = It won’t stay on
window-wont-open = It won’t open
window-was-done = { $n }. { $step }
window-not-done = Not done
window-not-done-of = Step { $n } is not done
window-prove = To be sure: { $prove }
window-takes = About { $time }, with the walk
window-takes-and-spills = About { $time }, with the walk. Until all is shut, about { $water } more will run out.
window-seconds = { $n } seconds
window-minutes = { $n ->
    [one] one minute
   *[other] { $n } minutes
}
window-litres = { $n } L
window-gallons = { $n } gal
window-tool = Take along: { $tool }
window-stiff = Known to be stiff: it takes force or time.
window-leaks-by = Known to let some through when closed.
window-device-line = { $device } ({ $place })
window-device-line-tagged = { $tag } { $device } ({ $place })

window-plot = How much water by then
window-plot-hint = Time until no more comes, and what is out by then. Bold: your steps.
window-plot-hint-one = Time until no more comes, and what is out by then, with your steps.
window-plot-in-words = Plot of the water on the floor against time. The same follows in words.
window-plot-zero = 0
window-plot-seconds = { $n } s
window-plot-minutes = { $n } min
window-choice = Close { $devices }: { $time }, { $water }.
window-choice-reopens = Close { $devices }: { $time }, { $water }. Then open { $again } again: after { $end } the rest of the house has water.
window-choice-list = { $first }, { $rest }

window-narrow-down = Look here to find the cause
window-was-seen = { $device }: { $seen }
window-not-seen = Take back
window-not-seen-of = Take back what was seen at { $device }
window-seen-live = It has power
window-seen-dead = It has no power
window-seen-drains = It drains well
window-seen-backs-up = It backs up
window-seen-wet = Water stands there
window-seen-dry = It is dry
window-seen-on = It is on
window-seen-off = It is off
window-seen-tripped = It has tripped
window-seen-water-comes = Water comes
window-seen-no-water = No water
window-seen-hot-comes = It gets hot
window-seen-no-hot = It stays cold
window-seen-open = It is open
window-seen-shut = It is shut

window-goes-off = This goes off with it
window-goes-off-list = Goes off: { $devices }
window-call = Call
window-no-number = no number on the map
window-call-besides = Your other utilities:
window-call-line = { $phone }  { $name }
window-call-line-without = { $name }: no number on the map
window-blockage = The blockage
window-relief-open = Let it out here: { $device }
window-relief-rod = Rod from here: { $device }
window-relief-emerges = It comes out next at: { $devices }
window-relief-between = It may sit between { $from } and { $to }
window-suspects = What it may be
window-suspect = { $percent ->
    [0] Under 1%: { $device }
   *[other] { $percent }%: { $device }
}
window-suspects-more = { $n ->
    [one] One more, less likely
   *[other] { $n } more, less likely
}
window-other-ways = Other ways to stop it
window-by-licensed = Takes a licensed person.
window-by-utility = Takes the utility.
window-show-on-plan = Show on the plan
window-show-on-plan-of = Show { $device } on the plan
window-show-step = Show my step again
window-restore = Bring it back afterwards

## Plan
window-plan-of = Plan of: { $level }
window-no-levels = This home’s map has no floors.
window-no-plan = There is no plan of this floor. Use the list.
window-picture-unreadable = The picture { $path } cannot be shown. The rooms are drawn from their outlines.
window-level-with-devices = { $level } ({ $n })
window-whole-floor = Whole floor
window-closer = Closer
window-stand = The room you are in
window-stand-in = You are in: { $space }
window-stand-unknown = Which room are you in?
window-device-on-level = { $device } is here: { $level }
window-go-to-level = Go from { $from } to { $to }
window-not-on-plan = { $device } has no place on a plan.
window-pin = Pin: { $device }
window-go-to = Go to: { $device }
window-trouble-here = Trouble is here
window-trouble-here-at = Trouble is here: { $spot }

## Emergency window: one step at a time
window-all-done-hint = If it is not over, take back the last act, or say which device does not hold.
window-go-after = Bring it back, and write it down
window-it-worked = It worked
window-out-of-reach = I can’t get there
window-take-back = Go back one step
window-left-out-of-reach = Left out, because nobody can get there: { $device }
window-in-reach-after-all = I can get to { $device } after all
window-back-to-now = Now: { $step }
window-tab-now = Now
window-tab-steps = All steps
window-tab-steps-count = All steps ({ $n })
window-tab-goes-off = What goes off
window-tab-goes-off-count = { $n ->
    [0] Goes off
   *[other] Goes off ({ $n })
}
window-tab-call = Call
window-tab-after = Afterwards
window-goes-off-nothing = Nothing else goes off with the first way.
window-far = { $far } away
window-far-here = It is right here
window-far-up = { $far } away, and upstairs
window-far-down = { $far } away, and downstairs
window-feet = { $n ->
    [one] one foot
   *[other] { $n } feet
}
window-metres = { $n ->
    [one] one metre
   *[other] { $n } metres
}
window-minutes-and-seconds = { $minutes }:{ $seconds } min
window-picture-of = Picture of { $device }
window-picture-of-tagged = Picture of { $device }, tag { $tag }
window-address = The address to read out
window-no-address = The map does not hold the address of this house.
window-spot-unknown = I don’t know where
window-search-trouble = Or type what you see, such as “toilet” or “no light”
window-search-trouble-hint = Not in the list? Press what fits best, or show everything again.
window-none-found-trouble = Nothing is found for “{ $words }”.
window-trouble-at = { $trouble }: { $spot }

## Afterwards
window-restored = Act { $n } is done
window-restored-not = Act { $n } is done; press to take it back
window-learnt = What did you learn?
window-learnt-hint = One press writes it on the map, so that the next answer is better. It can be taken back.
window-learnt-nothing = Nothing was worked or tried yet.
window-learnt-works = Works well
window-learnt-stiff = Stiff
window-learnt-seized = Does not move
window-learnt-leaks-by = Lets some through when closed
window-learnt-label = Wrong label…
window-learnt-of = { $device }: { $lesson }
window-learnt-written = Written on the map.
window-unlearn = Take it back
window-unlearn-of = Take back what was learnt about { $device }
window-relabel = The tag on it reads
window-write-down = Write it down
window-log-note = Anything else for the log
window-log-kept = This trouble is in the log of this home, with the day and what was done.
window-log-not-yet = Once something was done, it is written to the log of this home.
window-finish = Finished
window-see-log = See the log
window-no-day = The day is unknown: the clock of this computer is not set.
window-not-lasting = This is the built-in example: what is written down is gone when the window closes.

## The log
window-log = What happened here
window-log-hint = Each trouble with its day, what was done, and what ended it. For the insurer and the builder.
window-log-empty = Nothing has happened here yet.
window-log-print = Make a paper of it
window-log-when = { $day }, { $time }
window-log-failed = Did not work: { $devices }
window-log-solved = It ended with: { $devices }
window-log-remove = Remove
window-log-remove-of = Remove from the log: { $trouble }, { $day }

## Practice
window-practice = Practice
window-practice-how = A trouble comes up, and the clock runs. Find the device that is to be worked first, lay your hand on it, and say so. Your time then replaces the estimate for this home.
window-practice-where = Which room do you start from?
window-practice-start = Start the clock
window-practice-nothing = This map leads to no device that could be looked for. Record some first.
window-practice-runs = Practice: { $time }
window-practice-do-not-turn = Lay your hand on it. Do not turn it.
window-practice-found-it = I stand at it
window-practice-found-and-back = I found it and walked back
window-practice-stop = Stop
window-practice-stop-here = Stop the practice
window-practice-found = Found
window-practice-took = { $device }: { $time }
window-practice-reckoned = The estimate, with the working of it, was { $time }.
window-practice-kept = Kept for this home: from now on the answers reckon with your time.
window-practice-again = Another one
window-practice-enough = Enough for today

## When nothing is wrong
window-quiet = When nothing is wrong…
window-open-practice = Practice
window-open-log = What happened here
window-open-map = Map of the home
window-open-papers = Papers
window-open-care = Upkeep and handover

## Map
window-map = Map of the home
window-map-walk = Walk and pin
window-map-plans = Plans and rooms
window-map-lines = What feeds what
window-map-panel = Panel
window-map-missing = Still missing
window-map-no-levels = This home has no floors yet. Add one under “Plans and rooms”.
window-undo-nothing = Nothing to take back
window-redo-nothing = Nothing to make again
window-undo-short = Take back
window-redo-short = Make again
window-motion-on = Let marks move
window-motion-off = Keep marks still

## Plan: looking closer, the way, the lines
window-plan-keys = Arrow keys move the plan, plus and minus come nearer and go farther, zero shows the whole floor, Home shows what matters.
window-plan-farther = Farther
window-plan-matters = What matters
window-plan-way = Your way: { $far }
window-plan-way-guess = Straight there, { $far }: the map shows no doors
window-plan-line = { $system ->
    [water] Water pipe to the trouble
    [drain] Drain to the trouble
    [power] Wiring to the trouble
    [gas] Gas pipe to the trouble
    [cooling] Condensate line to the trouble
   *[control] Control wiring to the trouble
}
window-plan-goes-on = Goes on: { $level }
window-plan-comes-from = Comes from: { $level }
window-picture-coming = The picture is coming. Until then the rooms are drawn from their outlines.

## Figures of devices, in words
window-figure-lever = { $way ->
    [close] Drawing: a lever along the pipe. An arrow turns it a quarter turn clockwise, until it lies across.
    [open] Drawing: a lever across the pipe. An arrow turns it a quarter turn counterclockwise, until it lies along the pipe.
   *[rest] Drawing: a lever along the pipe, which is open.
}
window-figure-tee = { $way ->
    [close] Drawing: a handle with two wings along the pipe. Arrows turn it a quarter turn, until it lies across.
    [open] Drawing: a handle with two wings across the pipe. Arrows turn it a quarter turn, until it lies along the pipe.
   *[rest] Drawing: a handle with two wings along the pipe, which is open.
}
window-figure-oval = { $way ->
    [close] Drawing: a small oval handle along its pipe. Arrows turn it a quarter turn, until it lies across.
    [open] Drawing: a small oval handle across its pipe. Arrows turn it a quarter turn, until it lies along.
    [turns] { $turns ->
        [0] Drawing: a small oval handle. An arrow turns it clockwise, round and round, until it stops.
       *[other] Drawing: a small oval handle. An arrow turns it clockwise until it stops. Turns: { $turns }.
    }
    [turns-open] Drawing: a small oval handle. An arrow turns it counterclockwise, round and round.
   *[rest] Drawing: a small oval handle.
}
window-figure-wheel = { $way ->
    [turns] { $turns ->
        [0] Drawing: a round wheel. An arrow turns it clockwise, round and round, until it stops.
       *[other] Drawing: a round wheel. An arrow turns it clockwise until it stops. Turns: { $turns }.
    }
    [turns-open] Drawing: a round wheel. An arrow turns it counterclockwise, round and round.
   *[rest] Drawing: a round wheel.
}
window-figure-slot = { $way ->
    [close] Drawing: a slot along the pipe and a screwdriver. Arrows turn it a quarter turn, until the slot lies across.
    [open] Drawing: a slot across the pipe and a screwdriver. Arrows turn it a quarter turn, until the slot lies along the pipe.
    [turns] { $turns ->
        [0] Drawing: a slot and a screwdriver. An arrow turns it clockwise, round and round, until it stops.
       *[other] Drawing: a slot and a screwdriver. An arrow turns it clockwise until it stops. Turns: { $turns }.
    }
    [turns-open] Drawing: a slot and a screwdriver. An arrow turns it counterclockwise, round and round.
   *[rest] Drawing: a slot for a screwdriver.
}
window-figure-key = { $way ->
    [close] Drawing: a box in the ground and a long key on the valve in it. An arrow turns the key a quarter turn clockwise, seen from above.
    [open] Drawing: a box in the ground and a long key on the valve in it. An arrow turns the key a quarter turn counterclockwise, seen from above.
    [turns] { $turns ->
        [0] Drawing: a box in the ground and a long key on the valve in it. An arrow turns the key clockwise, round and round, seen from above.
       *[other] Drawing: a box in the ground and a long key on the valve in it. An arrow turns the key clockwise, seen from above. Turns: { $turns }.
    }
    [turns-open] Drawing: a box in the ground and a long key on the valve in it. An arrow turns the key counterclockwise, round and round, seen from above.
   *[rest] Drawing: a box in the ground and a long key on the valve in it.
}
window-figure-gas-cock = { $way ->
    [close] Drawing: a wrench on the flat end of a cock, along the pipe. An arrow turns it a quarter turn, until the flat end lies across.
    [open] Drawing: a wrench on the flat end of a cock, across the pipe. An arrow turns it a quarter turn, until the flat end lies along the pipe.
   *[rest] Drawing: a cock with a flat end, along the pipe, which is open.
}
window-figure-plunger = { $way ->
    [push] Drawing: a knob that stands out. An arrow pushes it in.
    [pull] Drawing: a knob that is pushed in. An arrow pulls it out.
   *[rest] Drawing: a knob that is pushed in or pulled out.
}
window-figure-either = { $way ->
    [close] Drawing of two handles, for the map does not tell which it is. A lever: a quarter turn, until it lies across the pipe. A round wheel: clockwise until it stops.
    [open] Drawing of two handles, for the map does not tell which it is. A lever: a quarter turn, until it lies along the pipe. A round wheel: counterclockwise.
   *[rest] Drawing of two handles, a lever and a round wheel, for the map does not tell which it is.
}
window-figure-breaker = { $way ->
    [off] Drawing: a breaker. An arrow moves its toggle to off.
    [reset] Drawing: a breaker with its toggle in the middle. The first arrow moves it all the way to off, the second to on.
   *[rest] Drawing: a breaker that is on.
}
window-figure-lever-switch = { $way ->
    [work] Drawing: a box with a lever at its side. An arrow moves the lever down, to off.
   *[rest] Drawing: a box with a lever at its side. The lever is up, on.
}
window-figure-pull-out = { $way ->
    [work] Drawing: a box with a block in it. An arrow pulls the block straight out.
   *[rest] Drawing: a box with a block in it that can be pulled out.
}
window-figure-gfci = { $way ->
    [reset] Drawing: an outlet with two buttons. An arrow presses the RESET button.
    [test] Drawing: an outlet with two buttons. An arrow presses the TEST button.
   *[rest] Drawing: an outlet with two buttons.
}
window-figure-button = { $way ->
    [work] Drawing: a button. An arrow presses it.
   *[rest] Drawing: a button.
}
window-figure-plug = Drawing: a plug that is pulled out of its outlet.
window-figure-wall-switch = { $way ->
    [work] Drawing: a wall switch. An arrow moves it down, to off.
   *[rest] Drawing: a wall switch.
}
window-figure-thermostat = { $way ->
    [work] Drawing: a thermostat, with the sign for switching off.
   *[rest] Drawing: a thermostat.
}
window-figure-cap = { $way ->
    [work] Drawing: a cap with a wrench on its nut. A broken arrow unscrews it counterclockwise, slowly.
   *[rest] Drawing: a cap with a nut on it.
}
window-figure-leave = Drawing: someone goes out of a door.
window-figure-telephone = Drawing: a telephone.
window-figure-stop-use = Drawing: a tap crossed out. Do not use it.
window-figure-look = Drawing: an eye. Look.
window-figure-note = Drawing: a sheet with lines. Something to know.
window-figure-thing = Drawing: { $device }

## Edits, as undo and redo name them
edit-undo = Undo: { $what }
edit-redo = Redo: { $what }
edit-connect-breaker = breaker of { $name }
edit-proposed = lines that were proposed
edit-add = add { $name }
edit-change = change { $name }
edit-remove = remove { $name }
edit-state = { $name } found { $state ->
    [works] working
    [stiff] stiff
    [seized] stuck
    [leaks-by] leaking by
   *[unknown] untried
}
edit-rename = rename { $name } to { $new }
edit-tag = tag { $name } as { $tag }
edit-untag = take the tag off { $name }
edit-move = move { $name }
edit-copy = copy { $name }
edit-connect = connect { $from } to { $to }
edit-disconnect = disconnect { $from } from { $to }
edit-change-connection = change the line from { $from } to { $to }
edit-add-passage = add the way between { $one } and { $other }
edit-remove-passage = remove the way between { $one } and { $other }
edit-plan = plan of { $name }
edit-remove-plan = remove the plan of { $name }
edit-done = done on { $on }: { $name }
edit-remove-done = take back that it was done on { $on }: { $name }
edit-tick = tick off “{ $name }”
edit-untick = take the tick off “{ $name }”
edit-drill = drill to { $name }
edit-remove-drill = remove a drill to { $name }
edit-home-name = name of the home: { $name }
edit-address = address of the home
edit-units = units: { $units ->
    [us] feet and gallons
   *[si] metres and litres
}
edit-language = language of the answers
edit-emergency-phone = emergency number
edit-usual-space = room where people mostly are
edit-north = direction of north on the plans
edit-all = { $n } changes at once
edit-cannot-find = Nothing in this home has the id { $id } any more.
edit-cannot-no-id = It needs an id.
edit-cannot-taken = Something else in this home has the id { $id }.
edit-cannot-find-connection = { $from } and { $to } are not connected so.
edit-cannot-connect = { $from } and { $to } cannot be connected so: one of them can have nothing to do with what the line carries.
edit-cannot-loop = A drain runs downhill only. Here it would run in a circle: { $names }
edit-cannot-unfit = The home’s file cannot hold that ({ $key }).

## What differs between two states of a home
change-part-home = Home
change-part-level = Floor
change-part-space = Room
change-part-passage = Way
change-part-component = Device
change-part-connection = Line
change-part-contact = Contact
change-part-warranty = Warranty
change-part-job = Job
change-part-done = Done
change-part-moved-in = Move-in list
change-part-document = Document
change-part-drill = Drill
change-thing = { $part } “{ $name }”
change-thing-between = { $part } between “{ $one }” and “{ $other }”
change-thing-on = { $part } “{ $name }” on { $on }
change-added = New: { $thing }
change-removed = Gone: { $thing }
change-reordered = In another order: { $part }
change-field = { $thing }: { $field } was { $before }, is now { $after }
change-field-new = { $thing }: { $field } is now { $after }
change-field-gone = { $thing }: { $field } was { $before }, is not told any more
change-field-other = { $thing }: { $field } is told in another way
change-quoted = “{ $text }”
change-yes = yes
change-no = no
change-point = ({ $point } m)
change-several = { $n } of them
change-of-name = name
change-of-format = format
change-of-units = units
change-of-language = language
change-of-address = address
change-of-emergency-phone = emergency number
change-of-usual-space = room where people mostly are
change-of-north-deg = direction of north on the plans, in degrees
change-of-elevation-m = height of the floor, in metres
change-of-picture = picture
change-of-left-m = left edge of the plan, in metres
change-of-top-m = top edge of the plan, in metres
change-of-width-m = width of the plan, in metres
change-of-mirrored = drawn mirrored
change-of-level = floor
change-of-outline = outline
change-of-outdoors = outdoors
change-of-between = leads between
change-of-stairs = stairs
change-of-to-at = upper or lower end of the stairs
change-of-id = id
change-of-kind = kind
change-of-tag = tag
change-of-space = room
change-of-at = place
change-of-handle = handle
change-of-closes = way of closing
change-of-state = state
change-of-normally = usual position
change-of-tool = tool
change-of-exercised = last worked
change-of-seconds = seconds
change-of-operates = how it is worked
change-of-operable-by = who may work it
change-of-rating-a = rating, in amperes
change-of-poles = poles
change-of-watts = power, in watts
change-of-volume-l = water held, in litres
change-of-joins = joins hot and cold
change-of-critical = must be named first
change-of-boundary = boundary between two parties
change-of-owner = owner
change-of-panel = panel
change-of-circuit = circuit
change-of-lamp = lamp or button
change-of-photo = photo
change-of-note = note
change-of-arc-fault = trips on arcs
change-of-installed = installed on
change-of-duct = duct
change-of-length-m = length, in metres
change-of-quarter-elbows = elbows of 90 degrees
change-of-eighth-elbows = elbows of 45 degrees
change-of-private = private
change-of-from = from
change-of-to = to
change-of-carries = carries
change-of-size = size
change-of-material = made of
change-of-one-way = one way
change-of-phone = telephone
change-of-role = called for
change-of-hours = hours
change-of-contact = contact
change-of-covers = covers
change-of-media = lines covered
change-of-years = years
change-of-days = days
change-of-months = months
change-of-stands-for = job of the built-in list
change-of-components = components
change-of-component = device
change-of-how = how it is done
change-of-every-months = interval, in months
change-of-last-done = last done
change-of-job = job
change-of-on = day
change-of-by = by whom
change-of-finding = finding
change-of-item = item
change-of-file = file
change-of-found-only = clock stopped at the find
change-of-plan = plan
change-word-works = works
change-word-stiff = stiff
change-word-seized = stuck
change-word-leaks-by = leaks by
change-word-unknown = untried
change-word-open = open
change-word-shut = shut
change-word-anyone = anyone
change-word-licensed = a licensed person
change-word-utility = the utility
change-word-us = feet and gallons
change-word-si = metres and litres
change-word-lever = lever
change-word-wheel = wheel
change-word-knob = knob
change-word-tee = tee handle
change-word-slot = screwdriver slot
change-word-key = nut for a key
change-word-button = push button
change-word-toggle = toggle
change-word-pull-out = pull-out block
change-word-cap = cap
change-word-quarter-turn = a quarter turn
change-word-multi-turn = several turns
change-word-push = push
change-word-pull = pull
change-word-to-off = to OFF
change-word-unscrew = unscrew
change-word-copper = copper
change-word-pex = cross-linked polyethylene
change-word-pe = polyethylene
change-word-pvc = PVC plastic
change-word-cpvc = CPVC plastic
change-word-abs = ABS plastic
change-word-pp = polypropylene
change-word-galvanized = galvanised steel
change-word-steel = black steel
change-word-stainless = stainless steel
change-word-cast-iron = cast iron
change-word-clay = clay
change-word-lead = lead
change-word-rubber = rubber
change-word-braided = braided steel
change-word-aluminum = aluminium
change-word-workmanship = workmanship
change-word-parts-and-labor = parts and labor
change-word-parts = parts
change-word-structural = structure
change-word-service-plan = service plan
change-word-turns = { $n ->
    [one] one turn
   *[other] { $n } turns
}

## The plan that is worked on

window-canvas-nearer = Nearer
window-canvas-keys = Without a mouse: go to the plan with the tab key, move the cross-hair with the arrow keys (with shift, a little), and press Enter.

## Walking round and pinning

edit-accept = accept the lines proposed for { $name }
window-walk-what = What do you stand in front of?
window-walk-search = Search by name
window-walk-room = The room you stand in
window-walk-nothing-found = Nothing is called so. Try another word, or “something else”.
window-walk-first = A map begins with these
window-walk-then = Or go on with
window-breaker-which = On which breaker is it?
window-breaker-circuit = { $number } · { $serves }
window-breaker-with = The same goes for { $devices }.
window-breaker-unknown = Nobody knows? Then it is found by switching one off and walking round.
window-breaker-find = Find it
window-walk-usual = What such a room usually has: { $room }
window-walk-sets = Typical things, each with its stops and lines
window-walk-search-more = Every other valve, fitting and device is found by searching for its name.
window-walk-alone = { $kind }, alone
window-walk-there-sign = ✓ { $what }
window-walk-there = { $what } – on the map
window-walk-press = Now press its place on the plan.
window-walk-no-place = Not on the plan? Then choose the room alone:
window-walk-into = Into the room: { $room }
window-walk-not = Not now
window-walk-fewer = Fewer
window-walk-more = More
window-walk-count = { $n } of them

## The form of a device

window-device-next = Next thing
window-device-is = What it is
window-device-where = Where it is
window-device-room = Room
window-device-move = Give it another place
window-device-press-place = Press its new place on the plan. Its pin can be dragged too, or moved with the arrow keys.
window-device-next-tag = Give it the next free tag: { $tag }
window-device-worked = How it is worked
window-device-state = Tried
window-device-handle = Handle
window-device-closes = It closes by
window-device-by = Who may work it
window-device-normally = On an ordinary day it is
window-device-choice = { $what }: { $choice }
window-device-change = Choose another
window-device-untold = not known
window-device-more = More about it
window-device-critical = Must be named first when it goes off
window-device-boundary = One party’s side ends here
window-device-arc-fault = Trips on arcs too
window-device-private = Note and photo are private
window-device-photo = Photo
window-device-copy = Copy
window-device-copy-of = Copy of { $name }
window-device-delete = Delete…
window-device-delete-what = Delete { $name }?
window-device-delete-nothing = Nothing else depends on it.
window-device-delete-with = This goes with it, or changes:
window-device-delete-now = Delete { $name }
window-device-keep = Keep it
window-field-name = Name
window-field-tag = Tag
window-field-note = Note
window-field-height = Height above the floor
window-field-tool = Tool it takes
window-field-lamp = What its lamp or button tells
window-field-circuit = Circuit, as the panel directory writes it
window-field-rating = Rating, in amperes
window-field-poles = Poles
window-field-watts = Power, in watts
window-field-volume = Water held, in the home’s unit
window-field-no-sense = That cannot be read. What was there before still holds.

## Lines that are proposed

window-offers = What probably feeds and drains it
window-offer = From { $from } to { $to }: { $medium }
window-offer-yes = Yes, so it is
window-offer-accept = Accept from { $from } to { $to }: { $medium }
window-offers-all = Accept all { $n }

## A photo of a device

window-photo-is = Stored as { $path }
window-photo-remove = Take the photo off
window-photo-choose = Choose a photo…
window-photo-path = Or the path of a photo: JPEG, PNG or WebP
window-photo-take = Use this photo
window-photo-coming = The photo is being taken in.
window-photo-stop = Stop that
window-photo-none = No photo was chosen. If no file window came up, type the path of the photo instead.
window-photo-filter = Photos
window-photo-no-folder = This home is in no folder of yours, so it cannot keep photos. Save it into a folder first.

## The list of what is still missing

window-missing-looking = The map is being looked through.
window-missing-percent = { $percent } % of the spots have an answer.
window-missing-next = Next: { $what }
window-missing-why = What protects most comes first. A spot has an answer if the map tells what to shut off there, or whom to call.
window-missing-nothing = Nothing more is missing.
window-missing-protects = { $more ->
    [0] For: { $places }
    [one] For: { $places }, and one more
   *[other] For: { $places }, and { $more } more
}
window-missing-fix-name = Put right: { $what }
window-missing-emergency = Emergency number
window-missing-keep = Keep the number
window-fix-rooms = Draw the rooms
window-fix-pin = Pin it
window-fix-proposal = See what is proposed
window-fix-line = Draw the line
window-fix-breakers = Find the breakers
window-fix-gfcis = Press the test buttons
window-fix-try = Say how it turned out
window-fix-place = Give it its place
window-fix-number = Fill in the number

## Other names of kinds, by which they are searched for

window-also-isolating-valve = valve, shut-off, stop, stopcock, angle stop, curb stop, ball valve, gate valve, isolation valve, main
window-also-water-main = street main, service line
window-also-pressure-reducing-valve = pressure regulator, PRV
window-also-circulation-pump = recirculation pump, circulator
window-also-relief-valve = temperature and pressure relief, T&P
window-also-supply-hose = supply line, connector, flexible hose
window-also-water-heater = boiler, hot water tank
window-also-hose-bibb = spigot, outdoor faucet, sillcock
window-also-tap = faucet
window-also-sink = kitchen sink, laundry tub
window-also-basin = lavatory, washbasin, bathroom sink
window-also-bath = bathtub, tub
window-also-toilet = water closet, WC
window-also-washing-machine = washer, laundry
window-also-ice-maker = refrigerator, fridge
window-also-cleanout = clean-out, rodding eye
window-also-backwater-valve = sewer check valve
window-also-stack = soil pipe, drain pipe
window-also-panel = breaker box, load center, consumer unit, electrical panel, fuse box
window-also-breaker = circuit breaker, AFCI
window-also-service-disconnect = main switch, main disconnect
window-also-gfci = ground fault outlet, GFI, RCD
window-also-receptacle = outlet, socket, plug
window-also-light = lamp, luminaire, fixture
window-also-smoke-alarm = smoke detector, CO alarm
window-also-sump-pump = pit pump
window-also-air-handler = furnace, air conditioner, AC, heat pump
window-also-thermostat = temperature control
window-also-gas-appliance = range, stove, fireplace

## Papers
window-papers-hint = For when the power is out, or the computer is in the wet room. Made from the map, by the same answers as on the screen.
window-papers-choose = Choose a paper. Its pages are shown here as they will be printed.
window-papers-a4 = A4
window-papers-letter = Letter
window-papers-phone = Page for the phone
window-papers-calendar = Upkeep for the calendar
window-papers-cards = Contacts for the phone
window-papers-fridge-hint = One page for the fridge door: the first act for each trouble.
window-papers-panels-hint = A card for each panel’s door.
window-papers-valves-hint = Each valve: what it serves, and which way closes it.
window-papers-tags-hint = To cut out and hang on valves and breakers.
window-papers-pack-hint = Everything in one document, for whoever moves in.
window-papers-log-hint = For the insurer and the builder.
window-papers-phone-hint = One file that works without any network.
window-papers-calendar-hint = A file that calendars read.
window-papers-cards-hint = A file that address books read.
window-papers-folder = Or all of them into the folder
window-papers-save-all = Save all
window-papers-path = Save it as (path of the file)
window-papers-save = Save { $file }
window-papers-choose-place = Choose where…
window-papers-view = Open it to print
window-papers-viewed = It is open in your viewer. Print it from there.
window-papers-not-viewed = No program could be opened for it: { $why }. The file is here: { $path }
window-papers-saved = Saved: { $path }
window-papers-unsaved = { $problem } Choose another place.
window-papers-waiting = One moment…
window-papers-making = Making: { $title }
window-papers-part = Making: { $title } ({ $n } of { $of })
window-papers-stop = Stop
window-papers-stopped = Stopped. Nothing was changed.
window-papers-no-preview = It has no pages to show. Save it, or open it.
window-papers-before = Page before
window-papers-next = Next page
window-papers-which-page = Which page

## Plans, floors, rooms, doors
window-plans-floors = Floors
window-plans-picture = Picture of a plan
window-plans-rooms = Rooms
window-plans-doors = Doors and stairs
window-plans-name-ground = Ground floor
window-plans-name-upper = Upper floor
window-plans-name-lower = Basement
window-plans-floor = { $name }, at { $height }
window-plans-add-first = Add a floor
window-plans-add-above = Add a floor above
window-plans-add-below = Add a floor below
window-plans-floor-name = Name of the floor
window-plans-floor-height = Height of its floor
window-plans-floor-height-hint = Above or below the floor that you call zero, such as 2.7 m or 9', or −8' for a basement. Floors stand in the order of their heights.
window-plans-floor-change = Keep name and height
window-plans-floor-remove = Remove this floor…
window-plans-bad-height = Type the height with its unit, such as 2.7 m or 9' 0", with a minus for below; or 0.
window-plans-no-name = Type a name first.
window-plans-remove-title = Remove { $name }?
window-plans-remove-alone = Nothing else changes. You can take it back.
window-plans-remove-with = This changes with it. You can take it back.
window-plans-remove-it = Remove it
window-plans-leave-it = Leave it
window-plans-room = Room
window-plans-new-room = A new room
window-plans-name-kitchen = Kitchen
window-plans-name-bathroom = Bathroom
window-plans-name-living = Living room
window-plans-name-bedroom = Bedroom
window-plans-name-hall = Hall
window-plans-name-laundry = Laundry
window-plans-name-utility = Utility room
window-plans-name-garage = Garage
window-plans-name-basement = Basement room
window-plans-name-attic = Attic
window-plans-name-yard = Yard
window-plans-room-name = Name of the new room
window-plans-rectangle = Draw a rectangle
window-plans-corners = Press the corners
window-plans-rectangle-hint = Drag across the drawing from one corner of the room to the opposite one; it draws itself to the grid and to the walls beside it. Or type how wide and how deep it is.
window-plans-corners-hint = Press each corner in turn, round the room. Press the first again, or close the room here.
window-plans-across = Width of the new room
window-plans-down = Depth of the new room
window-plans-across-now = Width
window-plans-down-now = Depth
window-plans-add-room = Add the room
window-plans-close-room = Close the room
window-plans-forget-corners = Forget the corners
window-plans-too-small = That is too small for a room. Drag from one corner to the opposite one.
window-plans-too-few-corners = A room needs three corners or more that are not in one line. Press them again.
window-plans-rooms-here = Rooms of this floor
window-plans-picked = { $name }
window-plans-picked-name = Name of the room
window-plans-picked-hint = Drag the room to move it, or one of its corners to stretch it. The arrow keys move a corner that has the focus.
window-plans-change-room = Keep name and size
window-plans-outdoors = Outdoors
window-plans-remove-room = Remove this room…
window-plans-board = Drawing of { $level }
window-plans-size = { $across } × { $down }
window-plans-corner = { $name }, corner { $number }
window-plans-doors-hint = Press a wall between two rooms where its door is, or choose it here. Walls without a door are dashed.
window-plans-walls = Walls without a door
window-plans-add-door = Door: { $one } – { $other }
window-plans-door-there = These two rooms have a door already.
window-plans-no-wall = There is no wall between two rooms. Press on a dashed wall.
window-plans-doors-there = Doors and stairs on the map
window-plans-door-between = Door between { $one } and { $other }
window-plans-stairs-between = Stairs between { $one } and { $other }
window-plans-remove-door = Remove the door between { $one } and { $other }
window-plans-remove-stairs = Remove the stairs between { $one } and { $other }
window-plans-stairs = Stairs
window-plans-stairs-pick = In which room of this floor do they begin?
window-plans-stairs-from = Stairs from { $name }
window-plans-stairs-to = Stairs from { $name } lead to:
window-plans-stairs-room = { $room } ({ $floor })
window-plans-picture-hint = A photo or a scan of a floor plan, or of a sketch, can lie under the rooms: JPEG, PNG or WebP. Where and when it was taken is not kept.
window-plans-choose-picture = Choose a picture…
window-plans-picture-filter = Pictures
window-plans-picture-path = Or type where it is
window-plans-take-picture = Take it in
window-plans-picture-none = You can also drop the picture on this window. Without any picture, draw the rooms under “Rooms”.
window-plans-picture-there = { $level } has a plan
window-plans-picture-move = It lies wrong under the rooms? Drag it to where it belongs, or move it with the arrow keys once the drawing has the focus. The rooms of the floor below are dotted.
window-plans-picture-remove = Take the plan off the map
window-plans-no-folder = This home has no folder yet where a picture could be kept. Save a copy of it first: “Settings”, “Save a copy as…”.
window-plans-reading = Reading the picture
window-plans-straightening = Putting it straight
window-plans-storing = Keeping it in the home’s folder
window-plans-stop = Stop
window-plans-corners-title = Put it straight
window-plans-corners-how = Move the four points to the corners of something that is a rectangle: the edge of the paper, or the outer walls. Drag them, or move them with the arrow keys.
window-plans-beside-strip = A strip round it
window-plans-beside-kept = All that the photo shows
window-plans-beside-cut = The rectangle alone
window-plans-size-hint = If you know how large the rectangle is, type it: then its proportions are right, and nothing is left to measure. A photo taken straight from below or from the side does not tell them.
window-plans-size-across = Width of the rectangle
window-plans-size-down = Depth of the rectangle
window-plans-straighten = Put it straight
window-plans-as-it-is = It is straight as it is
window-plans-straight-title = Is it straight now?
window-plans-straight-hint = Walls should be upright and level, and rooms should look as wide and deep as they are.
window-plans-straight-accept = Yes, go on
window-plans-straight-again = No, set the corners again
window-plans-picture-forget = Do not take this picture
window-plans-measure-title = How large is it?
window-plans-measure-how = Press both ends of something whose length you know, the longer the better, such as an outer wall. Then type how long it is.
window-plans-distance = Distance between the two points
window-plans-door-hint = Nothing measured? Set the points at both sides of a door, and choose which. A door is a poor measure: distances may be wrong by a tenth.
window-plans-door-width = { $door }, { $width }
window-plans-two-points = Press the two points on the picture first.
window-plans-measure = Put it on the map
window-plans-picture-shown = The picture
window-plans-photo-corner = Corner { $number } of the rectangle
window-plans-photo-point = Point { $number } of the distance

## A new home, copies, what was not saved
window-start-new = A new home…
window-start-copy = Save a copy as…
window-start-new-title = A new home
window-start-new-go = Make this home
window-start-picture = The plan: { $path }
window-start-name = Name of the home
window-start-address = Address, as you would tell it on the telephone
window-start-emergency = Emergency number
window-start-emergency-hint = The number to call when people are in danger, such as 911 or 112.
window-start-units-us = Feet and gallons
window-start-units-si = Metres and litres
window-start-language = Language of the answers
window-start-folder = home
window-start-folder-label = Folder that it is kept in
window-start-folder-hint = A new or an empty folder.
window-start-choose-folder = Choose a folder…
window-start-no-name = Type what you call the home.
window-start-copy-title = Save a copy
window-start-copy-hint = The home as it is in this window is kept in another folder, and this window goes on with that.
window-start-copy-go = Save the copy
window-start-copy-folder = copy
window-start-unzip-title = Unpack a home
window-start-unzip-hint = { $path } is unpacked and then opened.
window-start-unzip-go = Unpack and open
window-start-working = Just a moment…
window-start-in-folder = What you change is kept in { $path }.
window-start-left-title = Something was not saved
window-start-left = The last session with this home came to a sudden end. What was changed up to { $when } was kept, and can be taken up.
window-start-left-long-ago = an unknown time
window-start-left-changed-since = The home was changed since by someone else. Taking this up takes that back.
window-start-left-take-up = Take it up
window-start-left-leave = Leave it; ask again next time
window-start-left-discard = Throw it away
window-start-taken-up = What was not saved is here again, and is saved.
window-start-in-use-title = Another window has this home
window-start-in-use = Only one window at a time can save it. What you changed here is not lost as long as this window is open, but is not on disk.
window-start-changed-title = Someone else changed this home
window-start-changed = Its file is not the one that this window opened. What you changed here is not lost as long as this window is open, but does not take the place of what the other wrote.
window-start-keep-copy = Save mine as a copy…
window-start-reload = Show what the other wrote; mine goes
window-start-retry = The other window is closed: save now
window-start-later = Decide later

## Upkeep and handover
window-care-due = What is due
window-care-moving = Moving in
window-care-parties = Who answers
window-care-copies = Copies and changes
window-care-nothing-due = Nothing is due: the map holds nothing that needs upkeep.
window-care-overdue = Overdue
window-care-this-month = This month
window-care-later = Later
window-care-once = Once, whenever
window-care-by-day = by { $day }
window-care-open = How, and done…
window-care-open-of = Open: { $job }
window-care-initials = Who did it (initials)
window-care-note = Anything else
window-care-done = Done
window-care-close = Close
window-care-not-recorded = It could not be written down: { $why }.
window-care-moving-hint = Things to do once, made from what the map holds. Each is ticked off with the day and your initials, and stands in the handover pack.
window-care-untick = Not done after all
window-care-untick-of = Not done after all: { $item }
window-care-first = Whom to call first
window-care-which-device = Which device is it?
window-care-first-unknown = The map does not tell whose it is.
window-care-contacts = Contacts
window-care-new-contact = Another contact…
window-care-change = Change…
window-care-change-of = Change: { $name }
window-care-name = Name, and for what
window-care-phone = Number
window-care-hours = Hours
window-care-keep = Keep
window-care-remove = Remove
window-care-warranties = Warranties
window-care-from-until = From { $from } until { $until }
window-care-from = From { $from }; its end is not known
window-care-copy = A copy
window-care-copy-hint = For the next lot of the same plan: without what belongs to this house’s owner. Chosen contacts go along.
window-care-copy-name = Name of the new home
window-care-copy-folder = Folder to write it to
window-care-mirror = Plan turned left to right
window-care-copy-contacts = Contacts that go along
window-care-next-lot = Copy for the next lot
window-care-next-owner = Copy for the next owner of this home
window-care-next-owner-hint = For a sale: without the log, practice, private notes and phone numbers of people.
window-care-zip = One file to send
window-care-zip-path = Path of the zip
window-care-pack = Write the zip
window-care-no-folder = The built-in example has no folder. Save a copy of it first.
window-care-changed = What has changed
window-care-other = Folder of the home as it was (empty: since this window opened)
window-care-compare = Compare
window-care-no-change = Nothing has changed.

## Map: what feeds what
window-lines-hint = Press one pin, then the one it feeds; or drag from one to the other; or choose them here. Water, power and waste run from the first to the second.
window-lines-search = Find by name or tag
window-lines-from = It comes from
window-lines-to = It goes to
window-lines-choose = Choose…
window-lines-begun-from = Now choose what { $device } feeds, or where it drains to.
window-lines-begun-to = Now choose what feeds { $device }.
window-lines-draw = Draw the line
window-lines-which = It is not clear what this line carries. Choose it, then draw the line.
window-lines-refused = This line cannot be drawn. { $cause } { $remedy }
window-lines-of = Lines of: { $device }
window-lines-line = { $from } → { $to }: { $carries }
window-lines-change = Size and length…
window-lines-change-of = Size and length of { $line }
window-lines-remove = Remove
window-lines-remove-of = Remove { $line }
window-lines-size = Size, as the trade writes it
window-lines-length = Length, such as 12' 6" or 3.8 m
window-lines-keep = Keep
window-lines-proposed = { $n ->
    [one] One line is probably there
   *[other] { $n } lines are probably there
}
window-lines-proposed-hint = Guesses from what stands where. None is on the map until you accept it.
window-lines-accept = Accept
window-lines-accept-of = Accept { $line }
window-lines-proposed-each = One by one
window-lines-accept-all = Accept all that are likely

## Map: risers and one-lines
window-schematic-plan = Plan
window-schematic-water = Riser: water
window-schematic-drains = Riser: drains
window-schematic-power = One-line: power
window-schematic-gas = Riser: gas
window-schematic-hint = Press one box, then the one it feeds. A dashed line is only proposed; a double one is hot water or a vent; a box with a thin edge stands here once already.
window-schematic-box = Box: { $device }
window-schematic-again = Box: { $device }, once more
window-schematic-of = { $drawing }: boxes and lines
window-schematic-outdoors = Outdoors, or floor not known
window-schematic-loose = Joined to nothing here yet
window-schematic-empty = Nothing of this is on the map yet. Pin it first, then draw its lines here.

## Map: the panel
window-panel-directory = Directory
window-panel-import = From a table
window-panel-finding = Find circuits
window-panel-none = There is no panel on the map yet. Pin one under “Walk and pin”.
window-panel-which = Which panel
window-panel-spare = Spare { $number }
window-panel-unnamed = Circuit { $number }
window-panel-main-of-it = Main breaker
window-panel-number = Number, such as 7 or 9,11
window-panel-hint = Type what the label on the door says: Enter goes to the next position down, Tab to the next cell.
window-panel-main = Main
window-panel-no = No.
window-panel-what = What it serves
window-panel-amperes = A
window-panel-poles = Poles
window-panel-on-it = On it
window-panel-left-side = Left side
window-panel-right-side = Right side
window-panel-apart = In no position
window-panel-fed-by = Fed by: { $device }
window-panel-cell = Position { $position }, { $what }
window-panel-cell-apart = Circuit { $position }, { $what }
window-panel-cell-unnumbered = { $name } without a number, { $what }
window-panel-cell-main = Main breaker, { $what }
window-panel-cell-serves = what it serves
window-panel-cell-amperes = amperes
window-panel-cell-poles = poles
window-panel-cell-number = number
window-panel-part = Part of { $other }
window-panel-twice = Position { $number } is also that of { $other }. Give one of them another number.
window-panel-no-room = It has { $poles } poles, but position { $number } is that of { $other }.
window-panel-no-number = It has no number yet. Pick it and type its number.
window-panel-bad-amperes = Amperes are a number, such as 20.
window-panel-bad-poles = Poles are a number from 1 to { $most }.
window-panel-taken = Position { $number } is taken by { $other }.
window-panel-beyond = No panel has a position { $number }.
window-panel-needs-name = It has no number to be called by: say what it serves.
window-panel-take-out-what = Nothing is written here any more. Take { $name } out of the panel?
window-panel-take-out = Take it out
window-panel-more = More positions
window-panel-fewer = Fewer positions
window-panel-serve-nothing = { $n ->
    [0] Of each of { $of } circuits it is known what hangs on it.
    [one] One of { $of } circuits serves nothing known yet.
   *[other] { $n } of { $of } circuits serve nothing known yet.
}
window-panel-pick = Go to a position to see what hangs on it.
window-panel-picked = { $position }: { $name }
window-panel-free = Position { $position } is free
window-panel-main-free = No main breaker is known
window-panel-free-hint = What is typed in its row makes its breaker.
window-panel-main-feeds = It cuts the whole panel.
window-panel-hangs = What hangs on it
window-panel-hangs-nothing = Nothing known yet.
window-panel-behind = Behind it: { $list }
window-panel-take-off = Take off
window-panel-take-off-of = Take off: { $thing }
window-panel-add = Add what it feeds
window-panel-add-search = Search by name, tag or room
window-panel-add-of = Add: { $thing }, { $room }
window-panel-add-not-found = Nothing on the map is called so.
window-panel-add-all-fed = Everything on the map that needs power has its feed. What has one is found by its name.
window-panel-fed-already = { $thing }: has its feed from { $device }
window-panel-no-room-known = In no room
window-panel-import-hint = A directory, or a list of outlets with their circuits: separated text, .xlsx or .ods.
window-panel-path = Path of the file
window-panel-read = Read it
window-panel-paste = Or paste the table here
window-panel-read-pasted = Read what is pasted
window-panel-refused = { $cause } { $remedy }
window-panel-columns = What the columns hold
window-panel-column = { $heading } (such as { $example })
window-panel-which-circuit = Say which column holds the circuit numbers.
window-panel-becomes = What it becomes
window-panel-becomes-of = Circuits: { $circuits }. Devices: { $things }. Lines: { $lines }.
window-panel-unknown = { $n ->
    [one] One row is taken in, but its circuit is unknown:
   *[other] { $n } rows are taken in, but their circuits are unknown:
}
window-panel-left = { $n ->
    [one] One row is not used:
   *[other] { $n } rows are not used:
}
window-panel-doubts = { $n ->
    [one] One value was not understood:
   *[other] { $n } values were not understood:
}
window-panel-row = Row { $row }: { $text }. { $why }
window-panel-more-rows = and { $n } more
window-panel-confirm = Put it on the map
window-panel-imported = It is on the map. “Take back” takes all of it back.

## Map: finding circuits
window-find-hint = Switch some off, walk through the house, tick what went dead. Few walks are enough, for several are off at a time.
window-find-breakers = Find what hangs on the breakers
window-find-gfcis = Find what hangs on the GFCIs
window-find-nothing = There is nothing to find: of everything on the map the circuit is known.
window-find-written = It is on the map.
window-find-may-off = It may go off
window-find-may-off-of = It may go off: { $device }
window-find-walk = Walk { $n } (at most { $most } more)
window-find-switch-off = Switch off: { $devices }
window-find-tick = Then look at each of these and press what is dead. Switch all on again afterwards.
window-find-ticked = { $n } of { $of } are dead.
window-find-room-unseen = Room not looked at
window-find-still = This still holds
window-find-dead = Dead
window-find-unseen = Not looked at
window-find-walked = I have looked
window-find-found = Found so far
window-find-on = { $thing }: { $device }
window-find-on-none = { $thing } hangs on none of these.
window-find-odd = { $thing }: the ticks contradict each other. Look again.
window-find-write = Write it to the map
window-find-undo = Take the last walk back
window-find-leave = Leave it

## North
window-north = Where is north on the plan?
window-north-up = Up
window-north-up-right = Up right
window-north-right = Right
window-north-down-right = Down right
window-north-down = Down
window-north-down-left = Down left
window-north-left = Left
window-north-up-left = Up left
window-north-towards = North: { $way }
window-north-unknown = Not known
window-north-degrees = Degrees, clockwise from up
window-north-degrees-hint = 0 is up, 90 right, 180 down, 270 left. It is the same on every floor.
window-north-keep = Keep these degrees
window-north-bad = Type the degrees clockwise from up, from 0 to 360.
window-north-mark = { $way ->
    [up] North is up on the plan
    [up-right] North is up right on the plan
    [right] North is to the right on the plan
    [down-right] North is down right on the plan
    [down] North is down on the plan
    [down-left] North is down left on the plan
    [left] North is to the left on the plan
    [up-left] North is up left on the plan
   *[other] North is { $degrees } degrees clockwise from up on the plan
}
