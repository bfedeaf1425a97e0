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
window-cannot-edit = The map cannot be changed so: { $why }.
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
window-undo = Take back: { $edit }
window-redo = Make again: { $edit }
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
