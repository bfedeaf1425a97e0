### Texts of the crate papers

## Phone page
phone-title = What to do: { $home }
phone-made-on = Worked out on { $date } from the map of this home. Map changed since? Make this page again.
phone-plain-hint = The numbers to call, and what to do first. Open this page in a browser to be led step by step.
phone-first-by-place = What to do first, place by place
phone-what = What is wrong?
phone-what-hint = Press what fits best. Nothing is lost by trying.
phone-leave-first = Get out first
phone-short-gas-smell = Gas smell
phone-short-co-alarm = CO
phone-short-fire = Fire
phone-short-wires-down = Wires
phone-group-life = Danger to people
phone-group-water = Water
phone-group-drains = Drains
phone-group-power = Electricity
phone-group-cooling = Cooling
phone-group-control = Locks, doors, alarms
phone-back = ← Back
phone-start-again = Start again
phone-where = Where is it?
phone-where-hint = Press the room.
phone-search = Press the room, or find it by name or tag:
phone-none-found = Nothing here is called “{ $words }”.
phone-no-spots = The map of this home has no place for this trouble yet. There is general advice.
phone-not-sure = Not in the list?
phone-not-listed = I do not know where, or it is not listed
phone-room-unknown = Room not on the map
phone-in-room = { $space }: what is it?
phone-anywhere = Anywhere in: { $space }
phone-hidden = Behind walls and in cabinets
phone-things = Things here
phone-signal-danger = DANGER
phone-signal-warning = WARNING
phone-signal-caution = CAUTION
phone-signal-notice = NOTICE
phone-more-cautions = Read the dangers again
phone-not-mapped = The map does not show how this is fed. This is general advice.
phone-step-of = Step { $n } of { $of }
phone-all-done = Every step is done.
phone-done = Done
phone-next = Next
phone-wont-turn = It won’t turn
phone-wont-switch-off = It won’t switch off
phone-wont-stay-on = It won’t stay on
phone-wont-open = It won’t open
phone-cannot-reach = I can’t get there
phone-no-help = It did not help
phone-no-further = This page knows no other way. Call now.
phone-no-further-hint = Keep away from the danger until help comes.
phone-left-out = Left out, because it does not work or cannot be reached: { $device }
phone-prove = It worked if: { $prove }
phone-takes = About { $time }, with the walk.
phone-takes-and-spills = About { $time }, with the walk. Until all is shut, about { $water } more will run out.
phone-seconds = { $n } seconds
phone-minutes = { $n ->
    [one] one minute
   *[other] { $n } minutes
}
phone-litres = { $n } L
phone-gallons = { $n } gal
phone-tool = Take along: { $tool }
phone-stiff = Known to be stiff: it takes force or time.
phone-leaks-by = Known to let some through when closed.
phone-whereabouts = { $space }, { $level }
phone-whole-floor = Show the whole floor
phone-closer = Show it closer
phone-plan-of = Plan of { $level }. Marked: { $device }
phone-plan-of-north = Plan of { $level }. Marked: { $device }. North is { $degrees } degrees clockwise from its top.
phone-all-steps = All the steps
phone-goes-off = This goes off with it
phone-goes-off-list = Goes off: { $devices }
phone-call = Call
phone-call-besides = Your other utilities
phone-no-number = no number on the map
phone-emergency = People in danger: { $phone }
phone-emergency-name = Emergency number
phone-emergency-missing = This home’s map has no emergency number. Write yours on the door, and add it to the map.
phone-read-out = Say where you are:
phone-other-ways = Other ways to stop it
phone-by-licensed = Takes a licensed person.
phone-by-utility = Takes the utility.
phone-suspects = What it may be
phone-percent = { $percent ->
    [0] under 1%
   *[other] { $percent }%
}
phone-check = Look here to find the cause
phone-seen-live = It has power
phone-seen-dead = It has no power
phone-seen-drains = It drains well
phone-seen-backs-up = It backs up
phone-seen-wet = Water stands there
phone-seen-dry = It is dry
phone-seen-on = It is on
phone-seen-off = It is off
phone-seen-tripped = It has tripped
phone-seen-water-comes = Water comes
phone-seen-no-water = No water
phone-seen-hot-comes = It gets hot
phone-seen-no-hot = It stays cold
phone-seen-open = It is open
phone-seen-shut = It is shut
phone-relief = The blockage
phone-relief-open = Let it out here: { $device }
phone-relief-rod = Rod from here: { $device }
phone-relief-emerges = It comes out next at: { $devices }
phone-relief-between = It may sit between { $from } and { $to }
phone-restore = Bring it back afterwards

## Sheets
paper-document-title = { $title }: { $home }
paper-fridge = What to do first
paper-panels = Panel directory
paper-valves = Valve list
paper-tags = Hang tags
paper-pack = Handover pack
paper-printed = { $home }. Printed { $day }.
paper-page = Page { $page } of { $all }
paper-address-missing = The address is not in the home file. Add it: it is the first thing that the emergency number asks.
paper-place = { $space }, { $level }
paper-place-unknown = place not on the map
paper-outdoors = Outdoors
paper-few = { $more ->
    [0] { $list }
    [one] { $list }, and one more
   *[other] { $list }, and { $more } more
}
paper-plan-alt = Plan: { $level }. On it: { $list }.
paper-plan-alt-north = Plan: { $level }. On it: { $list }. North is { $degrees } degrees clockwise from its top.
paper-system-water = Water
paper-system-drain = Drains
paper-system-power = Electricity
paper-system-gas = Gas
paper-system-cooling = Cooling
paper-system-control = Controls and other

## Fridge door
paper-leave = Get everyone out first. Then call from outside.
paper-where-devices = Where it is
paper-blanks = Find these numbers now and write them here:
paper-general = General advice: the map does not show what feeds this.
paper-trouble-at = { $trouble }: { $spot }

## Panel directory
paper-panel-number = No.
paper-panel-circuit = Circuit
paper-panel-empty = Empty space
paper-panel-spare = Spare, or not traced yet: nothing on the map hangs on it.
paper-panel-apart = Cuts all of it, or has no numbered space
paper-amperes = { $amperes } A
paper-gfci-on = GFCI on this circuit: { $list }
paper-gfci-before = GFCI protected by { $list }

## Valve list and tags
paper-valve-tag = Tag
paper-valve-what = What and where
paper-valve-how = How it closes
paper-valve-serves = What goes off
paper-valve-serves-line = What goes off: { $list }
paper-call-line = { $name }: { $phone }
paper-serves-cleanout = Nothing goes off: it opens the drain.
paper-serves-shut = Nothing: it stands shut on an ordinary day.
paper-serves-nothing = Nothing that the map shows, on its own.
paper-by-utility = The utility’s alone: call them.
paper-by-licensed = For a licensed person only.
paper-state-stiff = Stiff: it takes force or time.
paper-state-seized = Does not move.
paper-state-leaks-by = Turns, but does not stop it all.
paper-state-unknown = Nobody has tried it yet.
paper-normally-shut = Stands shut on an ordinary day.
paper-exercised = Last moved on { $day }.
paper-tags-hint = Cut along the dashed lines, laminate, punch the ring, hang it on the device. A phone reads the square code without a network.
paper-code-alt = Square code that holds this text: { $text }

## Handover pack
paper-contents = Contents
paper-maps = Maps
paper-map-of = { $level }: { $system }
paper-drawings = Riser and one-line drawings
paper-riser-water = Water, from the street to the taps
paper-riser-water-hint = Solid lines are cold, dashed lines are hot. A sign drawn thin stands in the drawing already: a second line reaches it. Dots are branchings of pipe.
paper-riser-drains = Drains, from the sewer up
paper-riser-drains-hint = Waste runs down along the lines, towards the sewer. Dashed lines are vents. Dots are branchings of pipe.
paper-riser-gas = Gas, from the meter to the appliances
paper-riser-gas-hint = Gas runs along the lines, from the meter up. Dots are branchings of pipe.
paper-one-line = Electricity, from the street to the circuits
paper-one-line-hint = One-line drawing, from the service down to each breaker. A sign drawn thin stands in the drawing already: a second feed reaches it.
paper-drawing-alt = Drawing: { $title }. The key after it lists each device with what feeds it.
paper-part = Part { $part } of { $all }
paper-key = Key
paper-key-tag = Tag
paper-key-name = Device
paper-key-where = Where
paper-key-from = Comes from
paper-devices = Every device, room by room
paper-circuit-of = { $panel }, circuit { $circuit }
paper-rated = Rated { $amperes } A.
paper-draws = Draws up to { $watts } W.
paper-holds = Holds { $litres } L.
paper-lamp = Its lamp or button: { $lamp }
paper-photo-alt = Photo: { $name }
paper-parties = Who to call, and who owns what
paper-party = Who
paper-phone = Telephone
paper-hours = When
paper-note = Note
paper-owners = Not ours alone
paper-owners-hint = Where one party’s side ends and another’s begins, and what belongs to someone else.
paper-owner = Whose
paper-boundary = Boundary
paper-boundary-here = their side ends here
paper-warranties = Warranties
paper-warranty = Warranty
paper-given-by = Given by
paper-from = From
paper-until = Until
paper-covers = Covers
paper-medium-cold = cold water lines
paper-medium-hot = hot water lines
paper-medium-waste = drains
paper-medium-vent = vents
paper-medium-condensate = condensate lines
paper-medium-power = wiring
paper-medium-gas = gas lines
paper-medium-signal = control wiring
paper-upkeep = Upkeep
paper-due = Due
paper-due-day = By
paper-job = What
paper-how-often = How often
paper-last-done = Last done
paper-about = Where
paper-every-months = { $months ->
    [one] every month
   *[other] every { $months } months
}
paper-move-in = Moving in
paper-documents = Papers
paper-document = Paper
paper-file = File
paper-missing = What is still missing
paper-missing-hint = What the map of this home lacks or gets wrong, as far as the program can tell.
paper-missing-none = Nothing that the program can tell.
paper-missing-what = What
paper-missing-remedy = What to do
paper-none = None in the home file.

## On the command line
paper-phone-page = Phone page
paper-cli-making = { $nth } of { $all }: { $title }
paper-cli-nothing = { $title }: this home has nothing for it, so it was not made.
paper-cli-failed = { $title }: could not be made: { $why }. This is a fault of the program.
paper-cli-picture = { $path }: this picture could not be read, so the papers are without it: { $why }. Put the file in the home’s folder, or take its path out of the home file.
paper-cli-unwritten = { $problem } Give a folder that you may write in: --to DIR.
paper-cli-no-day = The machine’s clock cannot be read. Give the day: --today 2026-05-02.

## Log of troubles
paper-log = What happened here
paper-log-when = { $day }, { $time }
paper-log-failed = Did not work: { $devices }
paper-log-seen = { $device }: { $seen }
paper-log-solved = It ended with: { $devices }
