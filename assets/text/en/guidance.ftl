# What an answer says.

language-name = English
list-two = { $first } and { $last }
list-more = { $first }, { $rest }
list-more-last = { $first }, { $rest }
problem-line-error = { $file }:{ $line }:{ $column }: error: { $cause } { $remedy }
problem-line-warning = { $file }:{ $line }:{ $column }: warning: { $cause } { $remedy }

## Troubles
trouble-leak = Water is leaking
trouble-leak-hint = from a pipe, hose, valve, tap or appliance
trouble-leak-words = leak drip dripping burst pipe water on the floor flood flooding puddle spray wet hose tap faucet sink valve heater washer washing machine dishwasher refrigerator
trouble-water-from-above = Water through a ceiling or wall
trouble-water-from-above-hint = and nobody knows from where
trouble-water-from-above-words = ceiling wall drip stain wet from upstairs above roof
trouble-toilet-overflow = A toilet runs over
trouble-toilet-overflow-hint = or is about to
trouble-toilet-overflow-words = toilet overflow overflows bowl rising clogged blocked plunger
trouble-no-water = No water
trouble-no-water-hint = or only a trickle
trouble-no-water-words = no water dry tap trickle low pressure nothing comes faucet shower
trouble-no-hot-water = No hot water
trouble-no-hot-water-hint = cold water runs
trouble-no-hot-water-words = no hot water cold shower lukewarm heater
trouble-drain-backs-up = A drain backs up
trouble-drain-backs-up-hint = water does not go down, or comes back
trouble-drain-backs-up-words = drain blocked clogged slow sink shower tub bath standing water does not drain gurgle
trouble-sewage-rising = Sewage is rising
trouble-sewage-rising-hint = in a shower, floor drain, toilet or outside
trouble-sewage-rising-words = sewage sewer smell brown water toilet shower floor drain cleanout comes up backs up
trouble-pit-rising = A pit is filling up
trouble-pit-rising-hint = sump or ejector pit, the pump does not keep up
trouble-pit-rising-words = sump pit pump ejector basement water rising alarm
trouble-dead-outlet = An outlet is dead
trouble-dead-outlet-hint = nothing works that is plugged in there
trouble-dead-outlet-words = outlet plug socket receptacle dead no power bathroom kitchen nothing works charger
trouble-dead-light = A light stays dark
trouble-dead-light-hint = lamp, switch or wire
trouble-dead-light-words = light lamp bulb dark no light switch does not work
trouble-dead-area = A room or half the house is dark
trouble-dead-area-hint = several outlets and lights at once
trouble-dead-area-words = dark no power no light half the house room outage blackout electricity out everything off
trouble-breaker-trips = A breaker trips
trouble-breaker-trips-hint = or will not stay on
trouble-breaker-trips-words = breaker trips tripped fuse panel keeps tripping will not reset circuit
trouble-gfci-trips = A GFCI trips
trouble-gfci-trips-hint = or its RESET button does not stay in
trouble-gfci-trips-words = gfci reset button test trips will not reset bathroom outlet
trouble-sparks = Sparks, burning smell, hot outlet
trouble-sparks-hint = at an outlet, switch, cord or panel
trouble-sparks-words = spark sparks arc burning smell hot outlet crackle buzz smoke from an outlet melted
trouble-shock = Someone gets a shock
trouble-shock-hint = or feels a tingle at metal or water
trouble-shock-words = shock tingle electric shock electrocuted zapped touch metal tap
trouble-water-near-power = Water near electricity
trouble-water-near-power-hint = at a panel, outlet, cord or appliance
trouble-water-near-power-words = water panel outlet wet electricity flooded cord
trouble-cooling-stopped = The cooling stopped
trouble-cooling-stopped-hint = or it blows warm air
trouble-cooling-stopped-words = air conditioner ac cooling stopped warm air hot thermostat not cold does not run
trouble-water-at-air-handler = Water at the air handler
trouble-water-at-air-handler-hint = it drips, or stands in a pan
trouble-water-at-air-handler-words = air conditioner ac air handler water pan drip leak condensate attic ceiling
trouble-gas-smell = It smells of gas
trouble-gas-smell-hint = or something hisses at a gas pipe
trouble-gas-smell-words = gas smell rotten eggs hiss propane
trouble-co-alarm = The carbon monoxide alarm sounds
trouble-co-alarm-hint = or several people feel ill at once
trouble-co-alarm-words = carbon monoxide co alarm detector beeping headache dizzy ill
trouble-fire = Smoke or fire
trouble-fire-hint = anything burns, or the smoke alarm sounds
trouble-fire-words = fire smoke flames burning smoke alarm detector
trouble-wires-down = Wires are down
trouble-wires-down-hint = on the ground, on a car, or hanging low
trouble-wires-down-words = wire wires line down power line cable on the ground pole
trouble-not-answering = It does not answer
trouble-not-answering-hint = a lock, door, alarm or thermostat
trouble-not-answering-words = lock door garage opener alarm thermostat keypad does not answer app stuck locked out

## Names and places
device-with-tag = { $name } ({ $tag })
where-unknown = Its place is not on the map.
where-space = You find it here: { $space }.
where-space-level = You find it here: { $space }, { $level }.
where-space-side = You find it here: { $space }, { $side }.
where-space-level-side = You find it here: { $space }, { $level }, { $side }.
side-of-house = { $point ->
    [north] on the north side of the house
    [north-east] on the north-east side of the house
    [east] on the east side of the house
    [south-east] on the south-east side of the house
    [south] on the south side of the house
    [south-west] on the south-west side of the house
    [west] on the west side of the house
   *[north-west] on the north-west side of the house
}
compass-point = { $point ->
    [north] north
    [north-east] north-east
    [east] east
    [south-east] south-east
    [south] south
    [south-west] south-west
    [west] west
   *[north-west] north-west
}
north-letter = N
device-in-space = { $space }: { $device }
with-tool = You need this tool: { $tool }.
no-phone = number not in the home file

how-to-close = { $way ->
    [quarter] { $handle ->
        [lever] Turn the lever a quarter turn, until it lies across the pipe.
        [tee] Turn the handle a quarter turn, until it lies across the pipe.
        [slot] Turn the slot a quarter turn with a screwdriver, until it lies across the pipe.
        [key] Turn it a quarter turn with the key, until the bar lies across the pipe.
       *[other] Turn it a quarter turn, until the handle lies across the pipe.
    }
    [turns] Turn it clockwise (to the right), turn after turn, until it stops. Do not force it.
    [counted] { $turns ->
        [one] Turn it clockwise (to the right), about one turn, until it stops. Do not force it.
       *[other] Turn it clockwise (to the right), about { $turns } turns, until it stops. Do not force it.
    }
    [push] Push it in.
    [pull] Pull it out.
    [off] Push it to OFF.
    [unscrew] Unscrew it to the left (counterclockwise), slowly.
   *[unknown] A lever: a quarter turn, until it lies across the pipe. A round handle: clockwise (to the right) until it stops.
}

role-water-utility = Water utility
role-sewer-utility = Sewer utility
role-electricity-utility = Electricity utility
role-gas-utility = Gas utility
role-emergency = Emergency number
role-plumber = A licensed plumber
role-electrician = A licensed electrician
role-cooling = A heating and cooling technician
role-builder = The builder
role-owner = The owner
role-manager = The building manager
role-neighbor = A neighbor

## Cautions
caution-local-codes = Local codes, your utilities and licensed trades come first. If you are not sure, stop and call.
caution-not-from-map = This is general advice. It is not from your map: what feeds this spot is not on it yet. Add it to the map, so that next time the answer names the device.
caution-water-near-power = Do not step into water that reaches an outlet, a cord or an appliance. It may be live.
caution-water-near-power-named = Do not step into water that reaches an outlet, a cord or an appliance: it may be live. Here that is: { $list }.
caution-panel-below = Water may run down onto this: { $list }. Do not go near it before someone has seen that it is dry.
caution-going-down = The device is lower than the leak: { $level }. Water may have run down there. Look from the stairs first. If water stands on the floor, stay out and call.
caution-way-through-water = The way leads through a place where water may be: { $list }. Look before you step in. If water touches an outlet, a cord or anything plugged in, stay out and call.
caution-power-in-water = Stay away from a panel, breaker, outlet or cord that is wet or that you can only reach through water. Do not touch it. Ask the electricity utility to cut the power from outside.
caution-hot-water = Water from a hot line can scald. Keep hands and face away from the jet.
caution-ceiling = A ceiling full of water is heavy and can fall. Keep everyone out from under it. Do not touch lights or switches that are wet.
caution-sprinklers-off = This turns off the fire sprinklers too: { $devices }. Tell everyone in the house, watch for fire, and turn the water on again as soon as you can. Tell the fire service if it stays off.
caution-sprinklers-fallback = If you have to use one of these, it turns off the fire sprinklers too: { $devices }. Then tell everyone in the house and watch for fire.
caution-critical-off = This goes off too, and someone may depend on it: { $list }. { $when ->
        [after] See to it right after.
       *[before] See to it first.
    }
caution-heater-dry = If the water stays off, this must not go on heating: { $heater }. Turn its energy off before you drain it.
caution-heater-general = A water heater must not go on heating without water. Turn its energy off if the water stays off.
caution-sewage = Sewage makes people ill. Wear rubber gloves, boots and eye protection. Keep children and pets away. Wash your hands well.
caution-cap-pressure = The pipe may be full and under pressure. Loosen the cap slowly, stand to the side, and be ready for sewage to come out.
caution-electric-shock = Electricity can kill. Do not open a panel cover or an outlet. Do not touch anything that is wet, burnt, hot or broken.
caution-burning-smell = If it smells burnt, is hot, buzzes or smokes: do not switch it on again. If there is smoke or fire, leave and call the emergency number.
caution-sparks = Do not touch the thing that sparks, or anyone who is being shocked. If there is smoke or fire, everyone leaves, and you call from outside.
caution-gas = Gas can explode. Touch no switch, no phone, no plug, no doorbell. Light nothing. Get everyone out now.
caution-co = You cannot smell carbon monoxide. It kills. Get everyone out into fresh air now.
caution-fire = Get everyone out now. Do not stop for things. Do not go back in.
caution-wires = A wire that is down can kill, even if it is quiet. The ground around it can kill too. Stay at least 10 m (35 ft) away, and keep others away.
caution-shocked-person = Do not touch someone who is being shocked: you would be shocked too. Cut the power first.
caution-lost-neutral = Some lights too bright and others dim? Then a wire is loose. It can burn out what is plugged in and start a fire.
caution-critical-lost = This may be out of action now, and someone may depend on it: { $list }. See to it first.
caution-gfci-protects = It trips to keep people alive. Never bridge it, and never put a plain outlet in its place.
caution-ladder = Use a ladder that stands firm. Let the lamp cool first.
caution-taps-left-open = Shut every tap that you open. When the water comes back with nobody there, an open tap floods the house.
caution-shut-for-a-reason = A valve may be shut for a reason: someone may be at work, or something leaks. Ask before you open it.
caution-heater-hands = Take no cover off the water heater. Its pipes and its water can burn you.
caution-gas-appliance = If it smells of gas: touch nothing, get everyone out, and call from outside.
caution-ceiling-below = Water here can come through the ceiling below. Keep people out from under it. Below it: { $below }
caution-locked-in = Is someone locked in who needs help, or locked out in the cold? Call the emergency number.
caution-alarm-silent = An alarm that does not answer does not wake you. Nobody sleeps there without one that works.
caution-no-heat = Great heat or cold harms babies, old and ill people first. Take them to a room or a home where it is bearable.
caution-heavy-door = A garage door is heavy and can fall. Keep out from under it. If it is crooked, or a spring or cable is broken, leave it alone.
caution-air-handler = Turn the unit off before you put a hand in it. Do not bypass a float switch: it is what keeps the ceiling dry.
caution-secondary-pan = Water in the secondary pan means that the first drain has failed. A ceiling is at risk now. Keep the unit off. Below it: { $below }

## Steps: water
step-close = Close: { $device }. { $where } { $how } { $tool }
step-close-general = To stop all the water, close: { $device }. { $where } { $how } { $tool }
step-if-valve-is-dry = The only shutoffs that could stop this are in the same room and may leak themselves: { $devices }. Look at each: if it is dry, use it.
step-if-not-close = Does it still run, or will something not turn? Then close this instead: { $devices }.
step-if-not-licensed = If that does not stop it, a licensed person can close this: { $devices }.
step-last-utility = If nothing you can close stops it, call the water utility. Only they may close this: { $devices }.
step-only-utility = Nothing that you may close stops this. Call the water utility now. Only they may close this: { $devices }.
step-nothing-isolates = Nothing on the map stops this. Call the water utility now, and ask them to shut the water off at the street.
step-utility-works-it = Call { $name }: { $phone }. Only they may work { $device }. Do not try it yourself.
step-licensed-works-it = Call { $name }: { $phone }. Only a licensed person may work { $device }. Do not try it yourself.
step-open-again = Now open this again, slowly: { $device }. { $where } The rest of the house gets its water back.
prove-stays-dry = The leak stays dry.
step-goes-off = { $more ->
    [0] This goes off with it: { $list }.
    [one] This goes off with it: { $list }, and one more.
   *[other] This goes off with it: { $list }, and { $more } more.
}
step-nothing-feeds-it = By the map nothing feeds this any more. If it still runs, the map is wrong: shut all the water off.
step-catch-rest = Water that stands in the pipes still runs out for a while. Put a bucket and towels under it.
step-catch-water-above = Put buckets under the drip. Move people and things away from it.
step-find-branch = When it has stopped, find where it came from. Look at these first: { $list }.
step-shut-branches = To find the branch that leaks, shut all of these: { $list }.
step-main-for-test = Then open this again, slowly, only to find the leak: { $devices }.
step-one-branch-at-a-time = Open one branch at a time, in this order, and wait two minutes each: { $list }. Where it drips again, that branch leaks: shut it and leave it shut.
step-stop-using-above = Stop using everything that drains through here: { $list }.
step-find-main = Find the main shutoff: where the pipe from the street comes into the house, or in a box near the meter. Lever: a quarter turn, until it lies across the pipe. Round handle: clockwise (to the right) until it stops.
step-call-utility-water = If you cannot stop it, call the water utility. They can shut the water off at the street.

## Steps: a toilet that runs over
step-no-flush = Do not flush again.
step-lift-float = Take the lid off the tank, if it has one. Lift the float up and hold it: the water stops.
step-toilet-stop-general = Look for a small valve behind the toilet, low on the wall. Turn it clockwise (to the right) until it stops.
step-plunge = When the water has gone down a little: press a plunger over the hole and push it up and down, 15 times. Do not flush to try it: pour in a bucket of water.
prove-toilet = The bowl fills no more, and no water runs into the tank.
restore-toilet = When it drains: open its valve slowly, counterclockwise (to the left). Flush once, and stay there until the tank is full.

## Steps: no water
step-look-for-a-break = Look and listen for water where it does not belong: a wet floor, a hiss in a wall, a wet yard. Found some? Then go by the trouble “Water is leaking”.
step-ask-neighbors = Ask the people next door whether they have water. If they have none either, it is the street's.
step-ask-neighbor-named = Ask whether they have water: { $name }, { $phone }. If they have none either, it is the street's.
step-no-water-general = Open the cold tap that is nearest to where the water comes in. None there: the trouble is at the main shutoff or in the street. Water there: it is further in.
step-is-the-main-open = Find the main shutoff: where the pipe from the street comes into the house, or near the meter. A lever is open when it lies along the pipe.
step-suspect-valve = Look at: { $device }. { $where } It must be open. A lever is open when it lies along the pipe. A round handle opens counterclockwise (to the left).
step-suspect-their-valve = Call and ask whether this is shut: { $device }. It is not yours to turn.
step-suspect-street = Call the water utility. Ask whether they shut the water off, or whether a pipe broke: { $device }.
step-suspect-well = Look at: { $device }. { $where } Does its pump run? Does its pressure gauge show anything?
step-suspect-regulator = It may be stuck: { $device }. { $where } A plumber sets or changes it.
step-suspect-softener = Look at: { $device }. { $where } Is it just rinsing itself? Then wait. If not, set it to bypass.
step-suspect-heater = Look at: { $device }. { $where } Is it on? What does its display or its small window show?
step-suspect-mixer = If only this one stays cold, its mixer may be worn: { $device }. { $where } A plumber changes it.
step-suspect-toilet = Look into the tank of: { $device }. { $where } Is the float stuck at the top? Push it down.
step-suspect-tap = Look at: { $device }. { $where } If only this one gives little, unscrew the sieve at its mouth and rinse it.
step-suspect-pipe = It may be frozen or blocked: { $device }. { $where } Use no flame. Leave a tap open and keep the room warm, or call a plumber.
look-valve = Look at: { $device }. { $where } Is it open?
look-tap = Open: { $device }. { $where } Does water come?
prove-hot-tap = Open the hot tap again: it gets hot.
prove-tap-runs = Open the tap again: now water comes. Then shut it.
restore-run-clear = Let a cold tap run until it is clear and spits no more air. Rinse the sieve at its mouth.

## Steps: no hot water
step-try-other-hot-tap = Open another hot tap and wait for a minute. Does it get hot there?
step-hot-used-up = Was a lot of hot water used? Then wait for an hour: a tank that was used up has to heat again.
step-no-hot-water-general = Look at the water heater: is it on, is its valve open, has its breaker tripped? If only one tap stays cold, it is that tap.
step-heater-full-first = Open a hot tap before you touch the heater's power. If no water comes, the heater may be empty: leave its power off, and call a plumber.
step-suspect-gas-valve = Look at: { $device }. { $where } It is open when the lever lies along the pipe. If it is shut, leave it shut, and ask who shut it.
look-hot-tap = Open the hot side of: { $device }. { $where } Does it get hot within a minute or two?
look-gas-valve = Look at: { $device }. { $where } Is it open?
prove-hot-comes = The heater works again. After an hour hot water comes.
restore-hot-slowly = Try hot water with your hand beside the jet, not in it: it may come very hot at first.
step-heater-power-off = Switch off the power to { $heater }: { $device } to OFF. { $where } Only if the floor there is dry.
step-heater-gas-off = Turn the gas control on { $heater } to PILOT or OFF.
step-heater-off = Turn the energy of { $heater } off at its own control.

step-catch-rest-amount = { $unit ->
    [gallons] { $amount ->
        [one] Up to one gallon that stands in the pipes and tanks may still run out. Put a bucket and towels under it.
       *[other] Up to { $amount } gallons that stand in the pipes and tanks may still run out. Put a bucket and towels under it.
    }
   *[liters] { $amount ->
        [one] Up to one liter that stands in the pipes and tanks may still run out. Put a bucket and towels under it.
       *[other] Up to { $amount } liters that stand in the pipes and tanks may still run out. Put a bucket and towels under it.
    }
}

prove-tap = Open this tap: { $tap }. It must run dry, and stay dry.
prove-water-generic = The leak slows down and stops within a few minutes. A tap that is shut off with it runs dry.
prove-power = Plug in a lamp that works elsewhere: it must stay dark. To be sure, a tester must show that it is dead.
prove-live = A lamp that works elsewhere lights up when plugged in.
prove-sparks = It is quiet and cools down. Plug nothing in. A tester, in the hands of someone who knows how, must show that it is dead.
prove-cooling = The unit starts when the thermostat calls for cooling.
prove-breaker-holds = The handle stays at ON.
prove-cap = Water comes out here, and no longer in the house.

## Steps: drains
step-stop-all-water = Stop all water in the house: no flushing, no taps, no shower, no washing.
step-stop-all-water-named = Stop all water in the house: no flushing, no taps, no shower. Stop this at its own button: { $list }.
step-stop-cooling = Turn the cooling off at the thermostat: its water runs into the sewer too.
step-comes-out-at = It comes out here first: { $device }. { $where } Clear the floor around it.
step-open-cap = Open: { $device }. { $where } Gloves and eye protection on. Stand to the side. Turn the cap slowly to the left (counterclockwise) with the right wrench.
step-no-cap-helps = No cleanout on the map helps here: opening one would not let it out lower than the house. Keep all of them shut.
step-rod = For the plumber: rod towards the street, from: { $device }.
step-rod-against = For the plumber: rod against the flow, into the house, from: { $device }.
step-more-than-one-blockage = What you saw cannot come from one blockage. Look again, or there is more than one.
step-drain-general = Run a little water elsewhere and look: if only this one is slow, the blockage is near it. If all are, it is in the main drain.

## Steps: a pit that fills up
step-pit-stop-use = Use no water in the rooms that drain into the pit.
step-pit-general = Is the pump plugged in? Has its breaker tripped, or has an outlet with a button popped out? Go there only if the floor is dry.
step-look-pump = Look and listen, without touching the water: { $device }. { $where } Does it run? Does it hum and pump nothing?
step-free-float = Look at the float of the pump: is it stuck under something? Free it with a dry stick of wood, not with your hand.
step-look-pit-check = Does the pump run, but the water stays? Then look at: { $device }. { $where } It may be stuck, or the pipe behind it is frozen or blocked.
step-look-pit-outlet = Does the pump run, but the water stays? Then the pipe out may be frozen or blocked. Look at its end outside.
step-plug-pump-in = Plug the pump in again. Dry hands, dry floor.
step-pit-bail = Does it still rise? Bail it out with a bucket, into a drain that does not lead back into it. Never run a generator indoors.
prove-pump = The pump runs, and the water goes down.
restore-pit = When it works: pour a bucket of water in, and watch the pump start and stop by itself. Look again in an hour.
look-replies = { $look } If all is well there, most likely the cause is: { $good }. If not: { $bad }.
between-two = between { $from } and { $to }
look-drains = Run a cup of water into: { $device }. { $where } Does it go down, or does it back up?

## Steps: power
step-power-in-water = Keep out of water that may be live. Call the electricity utility: they cut the power from outside before anyone goes there.
step-try-a-lamp = Unplug what does not work. Plug in a lamp that works elsewhere. Try the wall switches in the room.
step-unplug-all = Unplug everything on this circuit.
step-unplug-named = Unplug, or switch off at its own switch, everything that hangs on this: { $list }.
step-suspect-gfci = Look at: { $device }. { $where } If its button has popped out, press RESET firmly, once.
step-suspect-gfci-lamp = Look at: { $device }. { $where } What its lamp means: { $lamp } If its button has popped out, press RESET firmly, once.
step-suspect-breaker = Look at: { $device }. { $where } A tripped handle often rests between ON and OFF. If it has tripped: push it fully to OFF, then to ON, once.
step-suspect-switch = Try: { $device }. { $where } An outlet can hang on a wall switch.
step-suspect-disconnect = Look at: { $device }. { $where } Is it on?
step-suspect-outage = Is the power out in the whole house, or at the neighbors' too? Then it is not your wiring: call the electricity utility.
step-suspect-own-source = Look at: { $device }. { $where } Does it run?
step-suspect-wiring = If all else is on, the fault may be in the wiring at { $device }. { $where } That is for a licensed electrician.
step-suspect-itself = If all else is on, { $device } may be worn or loose itself. { $where } Leave it alone: that is for a licensed electrician.
step-suspect-light-switch = Try: { $device }. { $where } Push it firmly, a few times. A second switch may work the same light.
step-suspect-pump = If all else is on, the pump may be worn or jammed: { $device }. { $where } A plumber changes it.
step-suspect-lamp = Change the lamp of: { $device }. { $where } Switch it off first, and let it cool. Take a lamp that works elsewhere.
step-reports-contradict = What was seen does not fit together. Test the lamp in an outlet that works, and look again.
step-look-for-gfci = Look for outlets with TEST and RESET buttons: kitchen, bathrooms, garage, outside, laundry. If a button has popped out, unplug what hangs on it, then press RESET once.
step-look-at-gfcis = An outlet without buttons can hang on one with buttons in another room. Look at these for a button that has popped out: { $list }. Unplug what hangs on it, then press RESET once.
step-look-for-tripped = Look along the breakers for a handle that rests between ON and OFF. Do not go there if the floor is wet.
step-reset-breaker = Then reset, once: { $device }. { $where } Push the handle fully to OFF, then to ON.
step-reset-unknown-breaker = Look along the breakers for a handle that rests between ON and OFF. Push it fully to OFF, then to ON, once. Do not go there if the floor is wet.
step-trips-again = If it trips again: leave it off. Do not try a second time. Call a licensed electrician.
step-one-by-one = If it holds, plug in one thing at a time. The one that trips it is broken, or too much: leave it unplugged.
step-load-too-much = What the map knows on this circuit draws up to { $watts } W. The breaker carries { $carries } W, and { $lasting } W if it runs for hours. That is too much at once: use fewer things together.
step-load-fits = What the map knows on this circuit draws up to { $watts } W. The breaker carries { $carries } W, and { $lasting } W if it runs for hours. If it trips at once with that, suspect a fault.
step-switch-off = Switch off: { $device }. Only if the floor there is dry. { $where } Turn your face away.
step-if-not-switch-off = If that does not make it dead, switch this off instead: { $devices }.
step-sparks-stand-back = Step back. Let no one touch it. Pull no plug that sparks, smokes or is hot.
step-sparks-out = Nothing on the map that you may touch makes this dead. Get everyone out, and call from outside.
step-sparks-not-again = Leave it off until a licensed electrician has looked at it.
look-gfci = Look at: { $device }. { $where } Has its button popped out?
look-breaker = Look at: { $device }. { $where } Does its handle rest between ON and OFF, or at OFF?
look-switch = Try: { $device }. { $where } Does that bring the power back?
look-disconnect = Look at: { $device }. { $where } Is it on?
look-outlet = Try: { $device }. { $where } Is it live or dead?

## Steps: dark
step-change-lamp = Switch it off, and let the lamp cool. Then put in a lamp that works elsewhere.
step-lost-neutral = Only if some lights are too bright and others dim, or they flicker: switch off { $devices }, if you get there with dry feet. Then call the electricity utility.
step-lost-neutral-call = Only if some lights are too bright and others dim, or they flicker: pull the plugs of what matters to you, and call the electricity utility.
step-neighbors-dark = Look out of the window: are the neighbors dark too? Then wait, and call the electricity utility.
prove-light = The light comes on.
restore-after-outage = After an outage: switch off what was on, wait until the power has been back for some minutes, then switch on one thing at a time.

## Steps: GFCI
step-gfci-load-side = { $device } also protects this: { $list }.
step-gfci-look-wet = Look at what stands outdoors: { $list }. Is it wet, or is a cord damaged? Leave it dry for a day before you try again.
step-reset-gfci = Then reset, once: { $device }. { $where } Press RESET firmly. If it has a handle instead: fully to OFF, then to ON.
step-reset-gfci-lamp = Then reset, once: { $device }. { $where } Press RESET firmly. If it has a handle instead: fully to OFF, then to ON. What its lamp means: { $lamp }
step-gfci-general = Then press RESET firmly, once, at the outlet with TEST and RESET buttons. Dry hands, dry floor.
step-gfci-has-no-power = Does the button do nothing at all? Then it may have no power. Look at: { $device }. { $where } Does its handle rest at ON?
look-wet = Look at: { $device }. { $where } Is it wet?
prove-gfci-holds = The button stays in. A lamp plugged in there lights up.
restore-gfci = When it holds: press TEST. It must trip. Then press RESET. If TEST does nothing, have it changed.

## Steps: shock, water near power
step-shock-hands-off = Touch neither the person nor the thing. Shout for help.
step-shock-utility = Nothing that you may touch makes this dead. Call the emergency number and the electricity utility now. Stay away until it is dead.
step-shock-breathing = When it is dead, or if someone else can do it now: call the emergency number. Do what they tell you, until help is there.
step-shock-doctor = Whoever had a shock sees a doctor, even if they feel well.
step-tingle = Was it only a tingle? Touch no metal and no water there. Nobody showers or uses that tap until an electrician has been.
step-keep-out-of-water = Keep everyone out of the water, children and pets too.
step-dry-way-only = Is the whole way to the panel dry, and the floor before it? If not, or if you are not sure, do not go: call the electricity utility.
step-stop-water-too = Then stop the water, if you get there with dry feet: { $devices }.
step-stop-water-general = Then stop the water, if you get there with dry feet: look for the main shutoff.
step-pump-stops-too = A pump that hangs on this stops too. The water may rise: watch it from a dry place.
step-was-wet-stays-off = Leave off what was wet, even when it looks dry. An electrician looks at it first.
look-dry-way = Look from afar at the way to: { $device }. { $where } Is the floor dry there, all the way?
prove-dead = Its handle stands at OFF, and what it feeds has gone dark and quiet. A tester, in the hands of someone who knows how, must show that it is dead.
restore-was-wet = Power comes back only after a licensed electrician has looked at what was wet: outlets, cords, panel, appliances.

## Steps: cooling
step-cooling-off = Turn the cooling off at the thermostat.
step-cooling-general = Look at the air handler: is there water in the pan under it, or is a float switch raised? Then the drain is blocked, and the switch has done its work.
step-look-secondary-pan = Look into: { $device }. { $where } It must be dry. Water here is urgent: a ceiling is at risk.
step-look-pan = Look into: { $device }. { $where } Standing water means that its drain is blocked.
step-look-condensate-pump = Look at: { $device }. { $where } Is it plugged in, and does it run? Is its tank full?
step-look-filter = Look at the filter, and for ice on the coil. Ice: leave the cooling off until it has melted, and change a full filter.
step-unit-off = Does water drip on wires or on the unit's switch? Then switch this off, if the floor there is dry: { $devices }.
step-unit-off-call = Does water drip on wires or on the unit's switch? Then touch nothing there, and call the technician.
step-look-float = Look at: { $device }. { $where } If it is raised, it has stopped the unit because water rose. Do not bypass it.
step-clear-drain-at = Clear the drain line: hold a wet vacuum tightly to its end for about five minutes, at { $device }. { $where }
step-clear-drain = Clear the drain line: hold a wet vacuum tightly to its outdoor end for about five minutes.
step-empty-pan = Empty the pan with the wet vacuum or a sponge. Then turn the cooling on again and watch the pan for ten minutes.
look-pan = Look into: { $device }. { $where } Does water stand in it?

## Steps: leave
step-gas-leave = Get everyone out now, and away from the house.
step-gas-call = From outside, far from the house, call the emergency number and the gas utility.
step-gas-nothing-else = Do not look for the leak. Do not turn the gas back on yourself, ever.
step-co-leave = Get everyone out now, into fresh air.
step-co-call = From outside, call the emergency number.
step-co-head-count = Count heads. Say if anyone has a headache, is dizzy or sick.
step-fire-leave = Get everyone out now. Close doors behind you.
step-fire-call = From outside, call the emergency number.
step-fire-stay-low = In smoke stay low. Feel a door before you open it: if it is hot, use another way.
step-wires-leave = Get away from the wire and from all that it touches: fence, puddle, car, tree. At least 10 m (35 ft).
step-wires-call = From there, call the emergency number and the electricity utility.
step-wires-nothing-near = Touch nothing there, and no one who lies there. Do not move the wire, not even with a stick.
step-wires-shuffle = Are you near it already? Keep your feet close together. Slide away in small steps, both feet on the ground.
step-wires-car = Are you in a car that it touches? Stay in, and warn others off. Only if it burns: jump out clear with both feet together, touch nothing, and slide away.

## Steps: what does not answer
step-by-hand-note = What the map says of { $device }: { $note }
step-by-hand-at = Work it by hand: { $device }. { $where } A lock has a key or a keypad. A garage door has a cord to pull, with the door shut.
step-by-hand = Work it by hand. A lock has a key or a keypad. A garage door has a cord to pull, with the door shut. A thermostat has buttons.
step-alarm-test = Press and hold the test button of: { $device }. { $where } It must be loud. One chirp a minute means a weak battery.
step-thermostat-by-hand = Set it at its own buttons: { $device }. { $where } A blank display means no power: weak batteries, a tripped breaker, or a float switch that stopped the unit because of water.
step-new-batteries = Put new batteries in, if it takes any.
step-is-there-power = Is it plugged in? Does an outlet near it have power?
step-account = Is the account yours? After a move it may still be the builder's or the last owner's. Ask them to hand it over.
prove-answers = It answers again.
restore-answers = When it works: write down its code, its account and what worked by hand.
step-stay-out = Stay out until the people who come say that you may go in.

## Bringing it back
restore-water-slowly = When it is mended: open one tap, then turn the water on slowly, a little at a time. Look for leaks. Then open the rest.
restore-heater-full = Before the water heater gets its energy back, it is full: a hot tap runs without air first.
restore-find-cause = Write down what leaked and what held, and which valve was stiff.
restore-sewage-clean = Wash what sewage touched. Throw away what cannot be washed. Wash clothes apart.
restore-drain-test = When it is clear: put every cap back. Run water into one fixture at a time, the lowest first, and watch.
restore-power = When it is found: plug in one thing at a time.
restore-sparks = Only after a licensed electrician has mended it: breaker on, then one thing at a time.
restore-cooling = When the pans are dry and the line runs: cooling on, and look into the pans again after an hour.
restore-when-told = Go back in only when the people who came say so. They turn gas back on, not you.
restore-wires = Go near it only when the electricity utility says that it is dead and gone.

## Why to call
why-emergency = When people are in danger.
why-emergency-missing = The home file does not give it. Fill in emergency_phone, so that it stands here.
why-add-contact = { $why } The home file has no such contact: add one with its number.
why-utility = Your utility.
why-works-device = They work what you may not.
why-trips-again = If it trips again.
why-cut-power-outside = To cut the power from outside.
why-plumber-leak = To mend the leak.
why-plumber-drain = To clear the drain.
why-water-utility = If you cannot stop the water.
why-water-utility-close = To shut the water off at the street.
why-sewer-utility = If neighbors have the same trouble, or it comes from the street.
why-sewer-beyond-boundary = What is likely blocked lies on their side.
why-electrician = If nothing you may touch brings it back.
why-electricity-utility = If the whole house or the street is dark.
why-electrician-sparks = Before it is switched on again.
why-electricity-utility-cut = If you cannot switch it off safely.
why-cooling = If the line does not clear, or the pan fills again.
why-gas-utility = From outside, after the emergency number.
why-gas-utility-heater = If the gas is off, or it smells of gas.
why-water-utility-outage = If the neighbors have no water either.
why-plumber-no-water = If it is only yours.
why-plumber-heater = If the heater stays off, or only one tap stays cold.
why-plumber-pit = If the pump does not empty it.
why-electrician-wet = Before anything that was wet is switched on.
why-electricity-utility-wires = From a safe place, after the emergency number.
why-warranty = They gave the warranty.
why-account = The account may be theirs.
why-cooling-thermostat = If the heating or cooling does not follow it.
