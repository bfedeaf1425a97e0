### Texts of the crate upkeep

## Who answers for it
role-association = The owners' association
role-insurer = The insurer
role-alarm = Whoever runs the alarm
why-hours = { $why } Hours: { $hours }.
why-and-reason = { $why } { $reason }
why-insurer = If something was damaged: photograph it before you clear up, then report it.
responsible-warranty = { $end ->
    [known] { $warranty } covers this until { $until }: call them before anyone else mends it.
   *[open] { $warranty } may still cover this, for the home file does not tell when it ends: ask them before anyone else mends it.
} { $pays ->
    [all] What it covers is on them, not on you.
    [parts] The part is on them, the work may be on you.
    [fee] It is a service plan: a visit may cost a fee.
   *[ask] Ask what it pays for.
}
responsible-street = This is on the street side of the boundary "{ $boundary }": it is { $name } who must mend it, not you.
responsible-boundary = The boundary "{ $boundary }" itself is theirs ({ $name }): it is on them to mend it.
responsible-theirs = The map says that this belongs to them ({ $name }): it is on them to mend it.
responsible-ours = { $mark ->
    [house] This is on your side of the boundary "{ $boundary }".
    [own] The street has no part in this system.
    [between] This lies behind the boundary "{ $boundary }", with another one before the rooms, and the map does not say whose it is.
    [boundary] The map does not say whose the boundary "{ $boundary }" is.
   *[unmarked] The map marks no boundary to the street here, so it is taken as yours.
} { $cover ->
    [ended] { $warranty } ran out on { $until }: it is on you to have it mended.
    [none] No warranty on the map covers it today: it is on you to have it mended.
   *[unknown] Whether a warranty covers it depends on the day.
}

## Days
day = { $day } { $month } { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

## Upkeep
upkeep-part = { $device }, { $space }
upkeep-no-place = no room on the map
upkeep-by = { $name }: { $phone }

tool-lamp = a lamp to plug in
tool-ladder = a ladder
tool-batteries = new batteries
tool-filter = a new filter of the same size
tool-wet-vacuum = a wet vacuum
tool-cup = a cup of water
tool-bucket = a bucket
tool-gloves = rubber gloves and eye protection
tool-hose = a garden hose
tool-flashlight = a flashlight
tool-salt = softener salt
tool-wrench = an adjustable wrench
tool-brush = a duct brush
tool-vacuum = a vacuum cleaner

upkeep-caution-force = Do not force a valve that will not turn: the stem can break, and then the water cannot be stopped here. Write down that it is seized.
upkeep-caution-critical = Before the power goes: tell whoever depends on something on this circuit, and see afterwards that freezers, pumps and alarms run again.
upkeep-caution-failed-test = What does not trip when TEST is pressed protects nobody: leave it unused and have it replaced.
upkeep-caution-ladder = Stand the ladder firmly, and have someone nearby.
upkeep-caution-unit-off = Switch the unit off at the thermostat before you open it or reach in.
upkeep-caution-no-mixing = Vinegar or soap, never both bleach and vinegar: together they give off a poisonous gas.
upkeep-caution-cords = Never touch a cord, plug or outlet with wet hands or while you stand in water.
upkeep-caution-sewage = Sewage makes ill: gloves, eye protection, loosen a cap slowly and stand clear, wash afterwards, keep children and pets away.
upkeep-caution-scald = The water can be hot enough to scald. Keep face and hands away from where it comes out.
upkeep-caution-water-off = Shut the water off before you loosen a hose, and let the pressure out at the tap.
upkeep-caution-dryer-off = Unplug the dryer first. A gas dryer is pulled out by someone who knows how to test its line.
upkeep-caution-sprinkler = Never shut the control valve of the fire sprinklers, and hang nothing on them.
upkeep-caution-panel = With dry hands and dry feet, and never with the cover off. Stop if it is warm, hums or smells.
upkeep-caution-co = A generator runs outdoors only, at least 20 feet (6 meters) from doors and windows: its exhaust kills without a smell.
upkeep-caution-backfeed = Feed the house only through its inlet and interlock, never through an outlet: people working on the street line would be killed.
upkeep-caution-gas = If it smells of gas: touch no switch, leave, and call from outside.
upkeep-caution-pit = Never climb or lean into the tank: its air kills. Keep the lid closed and children away.
upkeep-caution-fan-box = A ceiling fan may hang only from a box that is marked for it: another one can come down.
upkeep-caution-dryer-cover = A dryer that blows against a closed vent or a duct that is too long gathers lint, which burns.

job-exercise = Close and open each water shutoff
job-exercise-how = Close it all the way, see that the water behind it stops, open it all the way. A wheel is turned back a little from fully open. On a weekday morning a plumber is easiest to get, should one of them fail. Write down what was stiff, seized or did not hold.
job-gfci-test = Press TEST, then RESET, on each GFCI
job-gfci-test-how = Plug a lamp in and switch it on. Press TEST: it must go out, and so must all that hangs on the device. Press RESET: it must light again.
job-afci-test = Press TEST on each arc-fault device
job-afci-test-how = Press TEST with the breaker on: it must trip. Push it fully to OFF, then to ON.
job-alarm-test = Press TEST on every smoke and CO alarm
job-alarm-test-how = Hold TEST until it sounds. Where they are joined, all of them must sound. See that everyone hears it behind a closed door.
job-alarm-battery = New batteries in the smoke and CO alarms
job-alarm-battery-how = Open each one, change the battery, close it, press TEST. One with a sealed battery is left as it is.
job-alarm-replace = Replace the smoke and CO alarms that are ten years old
job-alarm-replace-how = The day of making stands on the back. Replace the whole alarm, and press TEST afterwards.
job-filter = Change the air filter
job-filter-how = Look at it every month; change it when it is grey, and at the latest now. The arrow on its edge points to the unit. Write the day on its edge.
job-condensate = Clear the condensate line and look in the pans
job-condensate-how = Hold a wet vacuum tight over the outdoor end of the line for about five minutes. Then pour a cup of water in at the tee near the unit: it must come out at the outdoor end. The pans must be dry or nearly so; water in the secondary pan means that the primary has failed.
job-float-test = Lift each float switch: cooling must stop
job-float-test-how = With cooling running, lift the float: the unit must stop within a minute or two. Let it down: the unit comes back.
job-cooling-service = Have the cooling looked over
job-cooling-service-how = Before the first hot days. Ask that coils, drain, float switches and connections are looked at.
job-sump-test = Pour a bucket of water into the sump pit
job-sump-test-how = The pump must start, empty the pit and stop. Nothing may run back after it stops: otherwise its check valve leaks.
job-ejector-test = See the ejector pump work
job-ejector-test-how = Flush the lowest toilet a few times and listen: the pump must start, and stop again. Leave the lid closed.
job-backwater = Open and rinse the backwater valve
job-backwater-how = Use no water in the house while its lid is off. Lift the flap out or hold it up, rinse it and its seat, see that it moves freely, close the lid tight.
job-heater-flush = Drain a bucket from the water heater
job-heater-flush-how = Hang a hose on the drain tap at the foot of the tank, let a bucketful run, until it is clear. If the tap will not close afterwards, screw a hose cap on it and call a plumber. An old tank that was never drained is left alone.
job-heater-service = Have the water heater serviced
job-heater-service-how = Ask that burner, flue and heat exchanger are looked at, and limescale is taken out.
job-relief = Look at the relief valve
job-relief-how = Its pipe must be open, point down and be dry. Drips tell of pressure: look at the expansion tank. Whether its lever is lifted for a test is up to its maker: an old one may not close again.
job-expansion = Tap the expansion or pressure tank
job-expansion-how = The half with air sounds hollow, the other one dull. Dull all over: it is full of water and has failed.
job-softener = Look at the softener's salt
job-softener-how = Keep it about half full, above the water. Break up a crust with a broom handle.
job-hoses = Look at the hoses of taps, toilets and machines
job-hoses-how = Bulges, cracks, rust at the ends, drops: replace the hose. Feel behind the washing machine. Shut the machine's valves when you go away.
job-hose-replace = Replace the hoses that are five years old
job-hose-replace-how = Take braided steel ones of the same length and threads, new washers with them, by hand and then a quarter turn. Write down the day.
job-dryer-duct = Clean the dryer's duct
job-dryer-duct-how = Take the hose off behind it, brush and vacuum the duct to the outdoors, clear the flap outside. Run the dryer: the flap must open wide.
job-winter = Shut and empty the outdoor taps before frost
job-winter-how = Take the hoses off, shut the stop indoors, open the tap outside and leave it open. Have the garden's watering blown out.
job-floor-drain = Pour a cup of water into each floor drain
job-floor-drain-how = Its trap dries out when it is not used, and then lets sewer air in.
job-sprinkler = Look at the fire sprinklers' gauge and control valve
job-sprinkler-how = The gauge reads about the same as last month, and the control valve stands open. Nothing hangs from a head, nothing stands before one.
job-backflow-test = Have the backflow preventer tested
job-backflow-test-how = By a certified tester; many water utilities ask for the report.
job-breakers = Switch each breaker off and on once
job-breakers-how = One after the other, firmly to OFF and back. See each time that what the directory says goes off. Set the clocks afterwards.
job-generator = Run the generator
job-generator-how = Outdoors, for about twenty minutes, with something plugged in. Fresh fuel; shut the fuel tap and let it run dry.
job-gas-service = Have gas appliances and flues looked at
job-gas-service-how = Burner, flue, fresh air, joints. A yellow flame or soot is not waited with.
job-thermostat-battery = New batteries in the thermostat
job-thermostat-battery-how = If it has any: low batteries look like broken heating or cooling.
job-septic = Have the septic tank inspected and, if need be, pumped
job-septic-how = Keep the report with the sludge's depth: it tells when to come next.
job-well = Have the well's water tested
job-well-how = By a laboratory that the health department names; sooner after a flood or when it tastes different.
job-warranty = Look everything over before this ends: { $warranty }
job-warranty-how = Its last day is { $until }. Go through all it covers, and report what you find in writing before then{ $known ->
    [yes] , to: { $name }.
   *[no] .
}

## Moving in
move-in-number = Fill in the missing numbers
move-in-number-how = These are missing in the home file: { $list }.
move-in-boundary = Learn where your side begins
move-in-boundary-how = What lies on the street's side of these is not yours to work or to mend. Find each one, and keep its number at hand.
move-in-main = Find the electric panel and what cuts the whole house
move-in-main-how = Open the door, not the cover. Compare the directory with the house, breaker by breaker, with someone calling from room to room.
move-in-shutoffs = Test the shutoffs here: { $space }
move-in-shutoffs-how = { $count ->
    [one] Close it, see that the water behind it stops, open it again.
   *[other] Close each of the { $count }, see that the water behind it stops, open it again.
} Write down what is stiff, seized or does not hold.
move-in-meter = Read the water meter with all taps shut
move-in-meter-how = Shut every tap and machine. If its small wheel or last digit still moves after a quarter of an hour, something leaks.
move-in-cleanout = Find the cleanout: { $device }
move-in-cleanout-how = See that one gets to it, that its cap is not buried or painted over, and that the wrench for it is in the house. Leave it closed.
move-in-gfci = Learn what hangs on this: { $device }
move-in-gfci-how = { $count ->
    [0] Press TEST: only itself goes dead. Press RESET.
    [one] Press TEST: one thing beside itself must go dead, as listed. Press RESET.
   *[other] Press TEST: { $count } things must go dead, as listed. Press RESET.
} { $told ->
    [yes] Its lamp: { $lamp }
   *[no] Write down what its lamp means, if it has one.
}
move-in-alarms = Test the smoke and CO alarms, and read their age
move-in-alarms-how = Press TEST on each: where they are joined, all must sound. The day of making stands on the back: write it into the home file.
move-in-dryer-cover = Take the cover off the outdoor vent before the first use: { $device }
move-in-dryer-cover-how = Go outside to where its duct ends. Take off any plastic, tape or plug from the building time. With the dryer running, the flap must open.
move-in-dryer-duct = Check the length of the duct: { $device }
move-in-dryer-duct-how = { $fits ->
    [yes] It is within the limit: { $length } { $unit ->
            [feet] ft
           *[meters] m
        } with { $elbows } elbows, { $most } { $unit ->
            [feet] ft
           *[meters] m
        } allowed.
    [no] It is too long: { $length } { $unit ->
            [feet] ft
           *[meters] m
        } with { $elbows } elbows, { $most } { $unit ->
            [feet] ft
           *[meters] m
        } allowed. Ask the builder before you use it.
   *[unknown] Measure it, and count its elbows. With the { $elbows } that the map has, { $most } { $unit ->
            [feet] ft
           *[meters] m
        } are allowed.
} The dryer's own instructions come before this.
move-in-washer-box = Open and connect the box: { $device }
move-in-washer-box-how = Knock out what closes the drain and the valves in its box, if it is new. Connect hot and cold hoses with new washers, hang the drain hose in, tie it. Run one wash and feel for drops.
move-in-fan-box = Before you hang a ceiling fan here: { $device }
move-in-fan-box-how = A bare lampholder only proves that there is power. Look for a mark on the box that it bears a fan; without one, a fan-rated box comes first.
move-in-account = Move the account and learn what works by hand: { $device }
move-in-account-how = Have it moved to your name, with a new password, and the former owner taken out. Try once what still works with no power and no network: key, keypad, cord, manual switch.
move-in-heater = Learn to turn it off: { $device }
move-in-heater-how = Find its cold inlet valve, its gas or power, and the end of its relief pipe. Off comes before dry: its energy is off before its water is.
move-in-gas = See where the gas is shut off
move-in-gas-how = The meter's valve is for the utility, the fire service and planned work. Keep the number of the gas utility on your phone.
move-in-sump = See the pump work once
move-in-sump-how = Pour a bucket of water into the pit: the pump must start and stop by itself. Learn which outlet and which breaker feed it.
move-in-floats = Lift each float switch once
move-in-floats-how = With cooling running, the unit must stop. So you know it again when it stops by itself: the pan is full.
move-in-sprinkler = Learn where the fire sprinklers are controlled
move-in-sprinkler-how = So that nobody shuts that valve by mistake. A head that runs without a fire is for the fire service.
move-in-generator = Learn the order of the generator
move-in-generator-how = Try it once by day: outdoors, everything off, plug in, main off, its breaker on, then one circuit at a time.
move-in-warranty = Know this warranty: { $warranty }
move-in-warranty-how = { $end ->
    [known] Its last day is { $until }.
   *[open] The home file does not tell when it ends: find out.
} Register it if it asks for that, and keep its paper{ $known ->
    [yes] . Who gives it: { $name }.
   *[no] . The home file does not tell who gives it.
}

## The list of what is due
upkeep-title = What is due in this home: { $home }, { $today }
upkeep-overdue = Overdue
upkeep-this-month = This month
upkeep-later = Later
upkeep-once = Once, whenever it suits
upkeep-line = { $name } ({ $due })
upkeep-due-on = due { $day }
upkeep-never = nobody has written down when it was done
upkeep-some-never = for some of them nobody has written down when it was done
upkeep-last = last done { $day }
upkeep-every-months = { $months ->
    [one] every month
    [12] every year
   *[other] every { $months } months
}
upkeep-every-year = every year in { $list }
upkeep-nothing = Nothing is due, and the map gives rise to no job.
upkeep-parts = To: { $list }
upkeep-how = How: { $how }
upkeep-tools = Takes: { $list }
upkeep-who = Who: { $who }
upkeep-note = Note: { $note }
upkeep-source = Source: { $source }
upkeep-move-in = Move-in list: { $done } of { $all } done.
upkeep-written = Written: { $file }
upkeep-not-written = { $problem } Give a file in a folder that you may write to.
upkeep-no-day = The day is not known. Give it: --today 2026-05-02
upkeep-calendar = Upkeep: { $home }

## In the pack and on the phone
card-hours = Hours: { $hours }
move-in-done = Done on { $day }, { $by }. { $note }
move-in-open = { $how } ({ $list })
