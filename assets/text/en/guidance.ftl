# What an answer says.

list-two = { $first } and { $last }
list-more = { $first }, { $rest }
list-more-last = { $first }, { $rest }
problem-line-error = { $file }:{ $line }:{ $column }: error: { $cause } { $remedy }
problem-line-warning = { $file }:{ $line }:{ $column }: warning: { $cause } { $remedy }

## Troubles
trouble-leak = Water is leaking
trouble-leak-hint = from a pipe, hose, valve, tap or appliance
trouble-water-from-above = Water through a ceiling or wall
trouble-water-from-above-hint = and nobody knows from where
trouble-drain-backs-up = A drain backs up
trouble-drain-backs-up-hint = water does not go down, or comes back
trouble-sewage-rising = Sewage is rising
trouble-sewage-rising-hint = in a shower, floor drain, toilet or outside
trouble-dead-outlet = An outlet is dead
trouble-dead-outlet-hint = nothing works that is plugged in there
trouble-breaker-trips = A breaker trips
trouble-breaker-trips-hint = or will not stay on
trouble-sparks = Sparks, burning smell, hot outlet
trouble-sparks-hint = at an outlet, switch, cord or panel
trouble-cooling-stopped = The cooling stopped
trouble-cooling-stopped-hint = or water stands at the air handler
trouble-gas-smell = It smells of gas
trouble-gas-smell-hint = or something hisses at a gas pipe
trouble-co-alarm = The carbon monoxide alarm sounds
trouble-co-alarm-hint = or several people feel ill at once
trouble-fire = Smoke or fire
trouble-fire-hint = anything burns, or the smoke alarm sounds

## Names and places
device-with-tag = { $name } ({ $tag })
where-unknown = Its place is not on the map.
where-space = You find it here: { $space }.
where-space-level = You find it here: { $space }, { $level }.
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
caution-power-in-water = Stay away from a panel, breaker, outlet or cord that is wet or that you can only reach through water. Do not touch it. Ask the electricity utility to cut the power from outside.
caution-hot-water = Water from a hot line can scald. Keep hands and face away from the jet.
caution-ceiling = A ceiling full of water is heavy and can fall. Keep everyone out from under it. Do not touch lights or switches that are wet.
caution-sprinklers-off = This turns off the fire sprinklers too: { $devices }. Tell everyone in the house, watch for fire, and turn the water on again as soon as you can. Tell the fire service if it stays off.
caution-sprinklers-fallback = If you have to use one of these, it turns off the fire sprinklers too: { $devices }. Then tell everyone in the house and watch for fire.
caution-critical-off = This goes off too, and someone may depend on it: { $list }. See to it first.
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
step-stop-using-above = Stop using everything that drains through here: { $list }.
step-find-main = Find the main shutoff: where the pipe from the street comes into the house, or in a box near the meter. Lever: a quarter turn, until it lies across the pipe. Round handle: clockwise (to the right) until it stops.
step-call-utility-water = If you cannot stop it, call the water utility. They can shut the water off at the street.
step-heater-power-off = Switch off the power to { $heater }: { $device } to OFF. { $where } Only if the floor there is dry.
step-heater-gas-off = Turn the gas control on { $heater } to PILOT or OFF.
step-heater-off = Turn the energy of { $heater } off at its own control.

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

## Steps: cooling
step-cooling-off = Turn the cooling off at the thermostat.
step-cooling-general = Look at the air handler: is there water in the pan under it, or is a float switch raised? Then the drain is blocked, and the switch has done its work.
step-look-secondary-pan = Look into: { $device }. { $where } It must be dry. Water here is urgent: a ceiling is at risk.
step-look-pan = Look into: { $device }. { $where } Standing water means that its drain is blocked.
step-look-float = Look at: { $device }. { $where } If it is raised, it has stopped the unit because water rose. Do not bypass it.
step-clear-drain-at = Clear the drain line: hold a wet vacuum tightly to its end for about five minutes, at { $device }. { $where }
step-clear-drain = Clear the drain line: hold a wet vacuum tightly to its outdoor end for about five minutes.
step-empty-pan = Empty the pan with the wet vacuum or a sponge. Then turn the cooling on again and watch the pan for ten minutes.
look-pan = Look into: { $device }. { $where } Does water stand in it?

## Steps: leave
step-gas-leave = Get everyone out now, and away from the house. Leave the door open behind you.
step-gas-call = From outside, far from the house, call the emergency number and the gas utility.
step-gas-nothing-else = Do not look for the leak. Do not turn the gas back on yourself, ever.
step-co-leave = Get everyone out now, into fresh air.
step-co-call = From outside, call the emergency number.
step-co-head-count = Count heads. Say if anyone has a headache, is dizzy or sick.
step-fire-leave = Get everyone out now. Close doors behind you.
step-fire-call = From outside, call the emergency number.
step-fire-stay-low = In smoke stay low. Feel a door before you open it: if it is hot, use another way.
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
