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
