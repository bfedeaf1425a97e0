### Putting a home on its map: lines, proposals, sets, panel tables, circuits, what is missing.

## What lines carry

medium-cold-water = cold water
medium-hot-water = hot water
medium-waste = waste water
medium-vent = air of the drains
medium-condensate = condensate
medium-power = power
medium-gas = gas
medium-signal = control wiring

## Kinds

kind-water-main = water main
kind-well = well
kind-water-meter = water meter
kind-isolating-valve = shutoff valve
kind-backflow-preventer = backflow preventer
kind-check-valve = check valve
kind-pressure-reducing-valve = pressure reducing valve
kind-circulation-pump = circulation pump
kind-mixing-valve = mixing valve
kind-relief-valve = relief valve
kind-manifold = manifold
kind-pipe = pipe
kind-supply-hose = supply hose
kind-pressure-tank = pressure tank
kind-water-heater = water heater
kind-expansion-tank = expansion tank
kind-softener = water softener
kind-tap = tap
kind-hose-bibb = hose bibb
kind-irrigation = irrigation
kind-ice-maker = ice maker
kind-sprinkler-riser = fire-sprinkler riser
kind-sink = sink
kind-basin = basin
kind-bath = bath
kind-shower = shower
kind-toilet = toilet
kind-washing-machine = washing machine
kind-dishwasher = dishwasher
kind-floor-drain = floor drain
kind-standpipe = standpipe
kind-trap = trap
kind-stack = stack
kind-cleanout = cleanout
kind-backwater-valve = backwater valve
kind-ejector-pit = ejector pit
kind-sump-pit = sump pit
kind-sewer-main = street sewer
kind-septic-tank = septic tank
kind-electricity-service = electricity service
kind-generator = generator
kind-inverter = inverter
kind-battery = battery
kind-electricity-meter = electricity meter
kind-panel = breaker panel
kind-junction-box = junction box
kind-service-disconnect = service disconnect
kind-breaker = breaker
kind-disconnect = disconnect
kind-transfer-switch = transfer switch
kind-switch = wall switch
kind-gfci = GFCI
kind-receptacle = outlet
kind-light = light
kind-lampholder = lampholder
kind-appliance = appliance
kind-sump-pump = sump pump
kind-smoke-alarm = smoke alarm
kind-medical-device = medical device
kind-air-handler = air handler
kind-condensate-pan = condensate pan
kind-condensate-pump = condensate pump
kind-condensate-outlet = end of the condensate line
kind-float-switch = float switch
kind-thermostat = thermostat
kind-gas-meter = gas meter
kind-gas-valve = gas valve
kind-gas-appliance = gas appliance
kind-other = something else

## Lines that may not be drawn
# $from and $to are the two ends, $medium what the line would carry.

lines-no-such-component = Nothing on the map has the id { $id }.
lines-no-such-component-remedy = Begin and end the line on something that is on the map.
lines-to-itself = { $from } cannot feed itself.
lines-to-itself-remedy = End the line on what { $from } feeds.
lines-cannot-meet = { $name } is a { $kind }, which has nothing to do with { $medium }.
lines-cannot-meet-remedy = Choose another thing for the line to carry, or look whether { $name } is the right kind.
lines-cannot-meet-at-all-remedy = No line fits between { $from } and { $to }. What joins them is another part: pin that, and draw one line to it and one from it.
lines-mixes = { $name } carries { $other } already, and { $medium } would mix with it.
lines-mixes-remedy = Draw the line to another piece, or correct what { $name } carries. Where two lines only cross, they are two pieces.
lines-duplicate = { $from } feeds { $to } with { $medium } already.
lines-duplicate-remedy = Nothing is missing here. A second, parallel line needs a piece of its own in between.
lines-other-way = A line with { $medium } runs from { $to } to { $from } already.
lines-other-way-remedy = To turn it round, take the other line out first.
lines-source-has-inlet = { $medium } comes from { $to }: nothing on this map feeds it.
lines-source-has-inlet-remedy = Draw the line the other way, from { $to } to { $from }.
lines-outfall-has-outlet = { $medium } ends at { $from }: nothing leaves it.
lines-outfall-has-outlet-remedy = Draw the line the other way, from { $to } to { $from }. What lies beyond belongs in a note.
lines-drain-loop = The drain would run in a loop: { $way }.
lines-drain-loop-remedy = { $to } already drains into { $from }. Draw { $from } onwards to what lies lower, towards the sewer.
lines-uphill = { $medium } would run uphill: { $to } lies { $metres } m higher than { $from }.
lines-uphill-remedy = Draw the line downwards, from { $to } to { $from }. If a pump lifts it, pin the pump and draw through it; if the heights are wrong, correct them.
lines-into-fixture = { $medium } would run out of { $from } into { $to }.
lines-into-fixture-remedy = Draw the line the other way: { $to } drains into { $from }.
lines-fixture-ends-it = { $from } uses water and passes none on.
lines-fixture-ends-it-remedy = Draw the line from the stop or the pipe that feeds { $from }. If its hot and cold lines really join inside, mark it so first.
lines-back-into-panel = Power does not run from { $from } back into { $to }. Feeding a house through an outlet can kill those who work on the line.
lines-back-into-panel-remedy = Draw the line the other way, from { $to } to { $from }. A generator is connected through a transfer switch or an interlock, by a licensed electrician.
lines-circle = { $to } feeds { $from } already: { $medium } would run in a circle.
lines-circle-remedy = Draw the line from what feeds both, or take out the line that is wrong.
lines-wrong-water = Only { $other } comes to { $from }, so no { $medium } can leave it.
lines-wrong-water-remedy = Draw a line with { $other }, or begin at what brings { $medium }.

## Words that names, headings and cells are known by: lists of words, parted by commas; a star stands for any ending.

words-hot = hot
words-cold = cold
words-main = main, mains
words-freezer = freezer*, refrigerator*, fridge*, deep freeze
words-alarm = alarm*, smoke, fire alarm, security, detector*, co alarm
words-medical = medical, oxygen, concentrator, dialysis, cpap, ventilator, stair lift, stairlift, nebulizer
words-pump = sump, pump*, ejector, well
words-computer = computer*, server*, router*, network, office, study, internet, modem
words-spare = spare*, not used, unused
words-no-breaker = space, blank, empty, open
words-unknown = unknown, unnamed, <unnamed>, ?, ??, ???, none, n a, na, tbd, not known, no label, unlabeled, unlabelled
words-half-bath = half bath, powder, powder room, guest toilet, wc, cloakroom, lavatory, water closet
words-bath = bath, bathroom, baths, shower room, ensuite, en suite, family bath, main bath
words-kitchen = kitchen, kitchenette, pantry kitchen, galley
words-laundry = laundry, wash room, washroom, laundry room
words-utility = utility, utility room, mechanical, mechanical room, boiler room, plant room, furnace room, heater closet
words-garage = garage, carport, workshop
words-bedroom = bedroom, bed room, child s room, children s room, nursery, guest room, sewing room, study, office, den
words-living = living, living room, dining, dining room, family room, lounge, sitting room, front room, playroom, great room
words-hall = hall, hallway, corridor, landing, entry, foyer, stairs, stairwell, closet
words-outdoors = yard, front yard, back yard, garden, patio, porch, deck, street, driveway, pavement, sidewalk, outside
words-basement = basement, cellar, crawl space, crawlspace
words-attic = attic, loft, attic room
words-table-panel = panel, panelname, panelboard, board, load center, panel id, panel name, fed from, distribution board
words-table-panel-itself = panelname, panel name, name of panel
words-table-circuit = circuit, circuit number, circuit no, circuit #, ckt, ckt no, ckt #, cct, breaker, breaker number, breaker no, breaker #, number, no, #, pole, position, slot, way
words-table-rating = rating, amps, amp, ampere, amperes, breaker size, size, trip, trip rating, breaker rating, current, rated current, ratedcurrent, a
words-table-poles = poles, number of poles, no of poles, phases, p
words-table-serves = serves, description, circuit description, load, load description, purpose, label, use, used for, area served, what it serves, feeds, loads, load name, designation
words-table-room = room, space, level, storey, story, floor, location, area, place
words-table-kind = type, kind, entity, predefined, category, element, device, device type
words-table-name = name, element name, device name, item
words-table-watts = watts, w, va, volt amperes, power, load va, wattage
words-part-smoke-alarm = smoke, smoke detector, smoke alarm, co alarm
words-part-switch = switch, switches, wall switch
words-part-light = light, lights, lighting, luminaire*, lamp, lamps, sconce, pendant, ifclightfixturetype, ifclightfixture, light fixture
words-part-receptacle = outlet, outlets, receptacle, receptacles, socket, sockets, plug, plugs, poweroutlet, ifcoutlettype, ifcoutlet
words-part-gfci = gfci, gfi, rcd, ground fault
words-part-thermostat = thermostat, thermostats
words-part-appliance = appliance, microwave, range, oven, cooker, refrigerator, dishwasher, disposer, dryer, washer, fan, furnace, boiler, pump, heater, charger, opener, air conditioner, ifcelectricappliancetype, ifcfantype, ifcpumptype, ifcboilertype
words-yes-two-pole = 2p, dp, double, double pole, two pole, 2 pole
words-drain = drain*, sewer*, soil, waste, branch drain, vent, standpipe
words-telling-nothing = breaker*, outlet*, light*, panel*, circuit*, main, upstairs, room, floor, with, from, left, right, near, behind, switch*, lamp*, gfci, under

## Proposals: what probably feeds what
# $name is what is proposed, of the kind $kind, for $of.

propose-why-circuit = Both are on circuit { $circuit }.
propose-why-panel = It says that it is in { $name }.
propose-why-words = The name { $name } fits { $of }.
propose-why-only = It is the only { $kind } that fits.
propose-why-same-space = It is the nearest { $kind } in the same room.
propose-why-nearest = It is the nearest { $kind } that fits.
propose-line = { $lack ->
    [feed] { $from } feeds { $to } ({ $medium })
   *[drain] { $from } drains into { $to } ({ $medium })
}

## Typical sets

set-basin = Basin
set-kitchen-sink = Kitchen sink
set-utility-sink = Utility sink
set-toilet = Toilet
set-shower = Shower
set-bath = Bath
set-washer-box = Washing machine and its box
set-dishwasher = Dishwasher
set-ice-maker = Ice maker
set-water-heater = Water heater with a tank
set-water-service = Water service, from the street to the main shutoff
set-house-drain = House drain with its cleanout, to the street
set-stack = Stack with its cleanout
set-floor-drain = Floor drain
set-softener = Water softener
set-hose-bibb = Hose bibb
set-panel = Panel with its breakers
set-sub-panel = Sub-panel with its breakers
set-gfci = GFCI and what hangs on it
set-outlets = Outlets
set-light = Light with its switch
set-smoke-alarm = Smoke alarm
set-sump-pit = Sump pit with its pump
set-air-handler = Air handler with its pans and float switches
set-gas-meter = Gas meter with its valve
set-unknown = Unknown set
# What the main thing of a set is called, if the set is called by more.
thing-washer-box = Washing machine
thing-water-heater = Water heater
thing-stack = Stack
thing-panel = Breaker panel
thing-sub-panel = Sub-panel
thing-gfci = GFCI
thing-light = Light
thing-sump-pit = Sump pit
thing-air-handler = Air handler
thing-gas-meter = Gas meter

set-in-space = { $set }, { $space }
sets-practice = Heights and places inside the set are common practice. Correct them where you stand.
sets-no-set = There is no set named { $id }. Choose one from the list.
sets-no-space = There is no room with the id { $id }. Choose a room, or none.
sets-count = A set cannot have { $wished } of these. Choose from 1 to { $most }.

# Parts of a set; $of is what the set is called.
part-cold-stop = Cold stop, { $of }
part-hot-stop = Hot stop, { $of }
part-cold-hose = Cold hose, { $of }
part-hot-hose = Hot hose, { $of }
part-stop = { $water ->
    [hot] Hot stop, { $of }
   *[other] Stop, { $of }
}
part-hose = Hose, { $of }
part-trap = Trap, { $of }
part-standpipe = Standpipe, { $of }
part-heater-inlet = Cold inlet valve, { $of }
part-relief = Relief valve, { $of }
part-hot-line = Hot line from the heater
part-house-main = House main shutoff
part-street-main = Water main in the street
part-curb-stop = Curb stop of the utility
part-water-meter = Water meter
part-reducer = Pressure reducing valve
part-cold-line = Cold line of the house
part-house-cleanout = House cleanout
part-building-drain = Building drain
part-sewer-line = Sewer line to the street
part-street-sewer = Street sewer
part-stack-cleanout = Cleanout, { $of }
part-inlet = Inlet valve, { $of }
part-outlet-valve = Outlet valve, { $of }
part-winter-stop = Winter shutoff, { $of }
part-service = Electricity service
part-electric-meter = Electricity meter
part-main-breaker = Main breaker, { $of }
part-breaker = Breaker { $number }
part-outlet-on = Outlet { $number } on { $of }
part-outlet = Outlet { $number }, { $place }
part-switch = Switch, { $of }
part-pump = Sump pump, { $of }
part-pump-check = Check valve above the pump, { $of }
part-pump-line = Discharge line, { $of }
part-first-pan = First pan, { $of }
part-second-pan = Second pan, { $of }
part-first-float = Float switch of the first pan, { $of }
part-second-float = Float switch of the second pan, { $of }
part-condensate-line = Condensate line, { $of }
part-condensate-end = End of the condensate line, { $of }
part-disconnect = Disconnect, { $of }
part-gas-valve = Gas valve at the meter

room-half-bath = half bath
room-bath = bathroom
room-kitchen = kitchen
room-laundry = laundry
room-utility = utility room
room-garage = garage
room-outdoors = outdoors
room-basement = basement
room-attic = attic
room-bedroom = bedroom or study
room-living = living or dining room
room-hall = hall or stairs

## Panel tables: files

table-empty = There is nothing in this table.
table-empty-remedy = Look whether it is the right file, and whether it was saved.
table-too-large = The file has more than { $megabytes } MB, which no panel directory has.
table-too-many-rows = The table has more than { $rows } rows, which no panel directory has.
table-too-many-columns = The table has more than { $columns } columns, which no panel directory has.
table-unpacks-too-large = The file unpacks to more than any panel directory holds.
table-too-large-remedy = Copy the part with the circuits into a new table and take that.
table-old-or-locked = This is a spreadsheet of an older kind, or one with a password.
table-old-or-locked-remedy = Open it where it was made and save it without a password as .xlsx, .ods or .csv.
table-no-table = This file is no table.
table-no-table-remedy = Take a spreadsheet (.xlsx, .ods) or text with separators (.csv). Lines copied from a document can be pasted as text.
table-damaged = This spreadsheet is damaged and cannot be read.
table-damaged-remedy = Copy it again from where it came, or open it there and save it once more.

## Panel tables: columns and rows

column-nothing = not used
column-panel = panel
column-panel-itself = name of the panel that the row is
column-circuit = circuit number
column-rating = amperes
column-poles = poles
column-serves = what it serves
column-room = room or floor
column-kind = sort of thing
column-name = name of the thing
column-watts = watts
import-blank = There is nothing in this row.
import-no-circuit = The row has no circuit number.
import-not-a-circuit = { $value } is no circuit number that can be used.
import-no-breaker = By the table there is no breaker in place { $circuit }.
import-only-a-number = The row has a number, { $circuit }, and nothing else: whether there is a breaker, nobody can tell from it.
import-twice = Circuit { $circuit } stands in row { $row } already, and that row was taken.
import-date = The spreadsheet turned what was written here into a date. Write the cell as text, such as 1-3.
import-formula = A formula stands here whose result was not saved. Open the table, save it once more, and take it again.
import-error = A formula failed here.
import-too-long = This cell holds more text than a panel directory has.
import-no-name = The row has neither a name nor a circuit.
import-not-a-rating = { $value } is no rating in amperes. The circuit was taken without one.
import-not-poles = { $value } is no number of poles. It was left out.
import-thing-without-circuit = No circuit is told for { $name }. It is on the map as unknown; find its breaker when you can.
import-thing-with-odd-circuit = The circuit of { $name } reads { $value }, which is no circuit number. It is on the map as unknown; find its breaker when you can.
import-thing = Thing of the table
import-new-panel = Panel of the table
import-note-place = By the table: { $place }
import-breaker-name = Breaker { $circuit }, { $serves }
import-breaker-number = Breaker { $circuit }
import-spare-name = Breaker { $circuit }, spare

## Finding circuits
# $device is a breaker or GFCI.

find-cover-stays-on = Work the breakers' handles only. If the panel's cover must come off, that is licensed work: call an electrician.
find-main-stays-on = The main stays on: it would stop everything at once and tell nothing.
find-press-test = Press TEST on the GFCI. It must click and go dead. Press RESET when the walk is done.
find-dry = Stand on dry ground with dry hands. Do not touch a panel that is wet, hot, buzzing or damaged.
find-tell-everyone = Tell everyone in the house before each walk, and see that nobody is on a stair lift, in a lift or using a tool.
find-depend = Medical devices, the sump pump, freezers and alarms must not go off unnoticed. Ask who depends on what, and give them another supply first.
find-depend-named = These are among what is looked for, so any breaker may stop them: { $list }.
find-computers = Save your work and shut computers down before the first walk.
find-lamp = Plug a lamp or a radio in where you want to see it: a dead outlet does not show. A tester for outlets is better.
find-ask-named = On { $device } hangs what someone may depend on: { $list }. May it go off for a few minutes?
find-ask-medical = By its name { $device } feeds medical equipment. May it go off for a few minutes?
find-ask-pump = By its name { $device } feeds a pump. May it go off for a few minutes?
find-ask-freezer = By its name { $device } feeds a freezer or refrigerator. May it go off for a few minutes?
find-ask-alarm = By its name { $device } feeds alarms. May it go off for a few minutes? Tell whoever watches them.
find-ask-computer = By its name { $device } feeds computers or the network. Are they shut down, and may it go off?
find-ask-marked = { $device } is marked as something that someone depends on. May it go off for a few minutes?
find-conflict = { $name } went dead with { $device }, but the map has it on another breaker. Look which is right: nothing was changed.
find-gfci-before = { $name } went dead with { $device }, which the map has behind it. Look which comes first: nothing was changed.
find-gfci-broken = { $name } does not trip by its test button: it protects nobody. Have it replaced.
find-plan = { $count ->
    [one] Switch this one off, then look at everything on the list.
   *[other] Switch these { $count } off, then look at everything on the list.
}
find-walks = { $walks ->
    [one] One walk at most.
   *[other] At most { $walks } walks, instead of { $single } one at a time.
}

## A home on disk: what can go wrong, and what to do. { $path } is the file or folder.

folder-told = { $problem } { $remedy }

folder-missing = { $path } is not there.
folder-missing-remedy = Look whether it was moved or renamed, then open it from where it is now.

folder-no-home-file = The folder { $path } holds no { $file }, so it is no home.
folder-no-home-file-remedy = Choose the folder that has { $file } in it, or begin a new home there.

folder-unread = { $path } could not be read. The system says: { $why }.
folder-unread-remedy = Look whether its disk is connected and whether you may open it, then try again.

folder-too-large = { $path } has more than { $most } MiB and was not read.
folder-too-large-remedy = Look whether it is the right file. If it is a picture, make it smaller and add it again.

folder-outside = The home in { $path } refers to the file { $inside }, which is outside its folder. It was not opened.
folder-outside-remedy = Put the file into the folder of the home and choose it again.

folder-bad-name = { $path } is no name for a file that belongs to a home.
folder-bad-name-remedy = Use log.ron for the log of troubles.

folder-not-a-picture = The picture for { $path } is no JPEG, PNG or WebP and was not stored.
folder-not-a-picture-remedy = Save it as JPEG or PNG, and add it again.

folder-no-home = { $path } cannot be read as a home. First problem: { $first }
folder-no-home-remedy = Put that right in a text editor, or open the copy that ends in .bak beside it.

folder-newer = { $path } is in a format that this version does not write, so nothing is saved over it.
folder-newer-remedy = Use a newer version of the program to edit it, or save a copy in another folder.

folder-not-text = { $path } is not text in UTF-8, so saving over it would lose something.
folder-not-text-remedy = Open it in a text editor and save it as UTF-8, or save a copy in another folder.

folder-in-use = { $path } is being edited in another window (process { $process } on { $host }). Nothing was saved here.
folder-in-use-remedy = Go on in that window, or close it first. Meanwhile you can look at everything here, or save a copy in another folder.

folder-in-use-by-unknown = { $path } is being edited in another window. Nothing was saved here.
folder-in-use-by-unknown-remedy = Go on in that window, or close it first. Meanwhile you can look at everything here, or save a copy in another folder.

folder-changed = { $path } was changed by someone else since it was read here, so it was not saved over.
folder-changed-remedy = Save yours as a copy in another folder, or load the file again and give up what you changed.

folder-gone = The folder { $path } is not there, so nothing could be saved in it.
folder-gone-remedy = Bring it back or connect its disk, then save again; or save a copy in another folder.

folder-read-only = Nothing may be written at { $path }. The system says: { $why }.
folder-read-only-remedy = Ask for the right to write there, or save a copy in a folder of your own.

folder-full = There is no room to write { $path }. What was there before is untouched. The system says: { $why }.
folder-full-remedy = Make room on that disk and save again, or save a copy on another disk. Leave the window open until then.

folder-unwritten = { $path } could not be written. What was there before is untouched. The system says: { $why }.
folder-unwritten-remedy = Look whether its disk is connected, then save again; or save a copy in another folder.

folder-occupied = There is something at { $path } already, and it was not written over.
folder-occupied-remedy = Choose another name, or an empty folder.

folder-stopped = Saving of { $path } has come to an end after a fault in the program.
folder-stopped-remedy = Save a copy in another folder now, then open the home again.

folder-zip-not-a-zip = { $path } is no complete zip file.
folder-zip-not-a-zip-remedy = Have it sent or copied again: it was perhaps cut off on the way.

folder-zip-damaged = In { $path } the file { $entry } is damaged. Nothing was unpacked.
folder-zip-damaged-remedy = Have the zip sent or copied again.

folder-zip-encrypted = In { $path } the file { $entry } has a password. Nothing was unpacked.
folder-zip-encrypted-remedy = Ask for a zip without a password.

folder-zip-method = In { $path } the file { $entry } is packed in a way that cannot be read here. Nothing was unpacked.
folder-zip-method-remedy = Unpack it with another program and open the folder, or ask for an ordinary zip.

folder-zip-link = In { $path } the entry { $entry } is a link to somewhere else. Nothing was unpacked.
folder-zip-link-remedy = Ask for a zip with the files themselves in it. If you do not know the sender, do not open it with another program.

folder-zip-outside = In { $path } the entry { $entry } would land outside the folder of the home. Nothing was unpacked.
folder-zip-outside-remedy = A home is never packed so. If you do not know the sender, do not open it with another program.

folder-zip-twice = In { $path } two entries have the same name: { $entry } Nothing was unpacked.
folder-zip-twice-remedy = Ask for a zip that was packed anew.

folder-zip-unexpected = In { $path } the entry { $entry } does not belong to a home. Nothing was unpacked.
folder-zip-unexpected-remedy = A home is home.ron and log.ron, with pictures in plans and photos and papers in documents. Take out what is not one of these, and pack it again.

folder-zip-too-many = { $path } has more than { $most } entries. Nothing was unpacked.
folder-zip-too-many-remedy = Look whether it is the right file.

folder-zip-too-large = In { $path } the file { $entry } has more than { $most } MiB. Nothing was unpacked.
folder-zip-too-large-remedy = Make that picture smaller and pack the home again.

folder-zip-too-large-altogether = { $path } has more than { $most } MiB when unpacked. Nothing was unpacked.
folder-zip-too-large-altogether-remedy = Take out photos that are not needed, and pack the home again.

folder-zip-grows = In { $path } the file { $entry } grows more than { $most } times when unpacked, as only files do that are made to fill a disk. Nothing was unpacked.
folder-zip-grows-remedy = Delete the zip if you do not know the sender.

folder-zip-no-home-file = There is no home.ron in { $path }, so it is no home. Nothing was unpacked.
folder-zip-no-home-file-remedy = Choose the zip of a home, or pack the folder that has home.ron in it.

## Pictures, straightening and scale

picture-empty = The file is empty. Copy the picture again, or take another.
picture-not-a-picture = The file is no picture. Choose a JPEG, PNG or WebP.
picture-other-kind = { $kind ->
    [heic] This is a HEIC picture, as some phones store it, and cannot be read here. Share or export it from the phone as JPEG, or set the camera to its most compatible format and take it again.
    [avif] This is an AVIF picture, which cannot be read here. Open it in a picture viewer and save it as JPEG or PNG.
    [pdf] This is a PDF. Show the page with the plan on the screen, take a picture of the screen, and choose that; or export the page as PNG.
    [gif] This is a GIF, which cannot be read here. Open it in a picture viewer and save it as PNG.
    [tiff] This is a TIFF or a raw picture of a camera, which cannot be read here. Save it as JPEG or PNG.
    [bmp] This is a BMP picture, which cannot be read here. Open it in a picture viewer and save it as PNG.
    [svg] This is an SVG drawing, which cannot be read here. Export it as PNG, about 3000 pixels wide.
    [jpeg-xl] This is a JPEG XL picture, which cannot be read here. Open it in a picture viewer and save it as JPEG.
   *[video] This is a film. Take a still picture of the plan and choose that.
}
picture-too-large = The picture says it has { $width } × { $height } pixels, which is more than can be taken in (at most { $side } a side, and not both). Save it smaller, about 4000 pixels wide, and choose it again.
picture-cut-off = The end of the picture's file is missing, so part of it would not be shown. Copy or send it again; over a cable or as a file it arrives whole.
picture-damaged = The picture's file is damaged ({ $why }). Copy or send it again, or take another.
picture-stopped = The picture was not taken in, because you stopped it. Choose it again when you like.

picture-corner-outside = A corner is far outside the picture. Drag it to where the edges of the rectangle meet.
picture-corners-together = Two corners are at the same place. Drag them apart, one to each corner of the rectangle.
picture-corners-in-line = Three corners lie nearly in one line, so they are not those of a rectangle. Drag each to a corner of its own; if they are right, take the photo from higher up.
picture-corners-hollow = One corner lies between the other three. Drag it outwards, to the fourth corner of the rectangle.
picture-corner-sharp = Two sides run together almost to a point. Drag the corners apart; if they are right, take the photo from higher up.

picture-points-close = The two points are too close together to measure by. Set them at the two ends of a long wall.
picture-scale-unlikely = With this distance the plan would be smaller than a table or larger than a street. Look at the two points and at the unit of the distance.

picture-distance-empty = Type the distance between the two points, such as 12' 6" or 3.81 m.
picture-distance-no-unit = { $found } has no unit. Type feet and inches, such as 12' 6", or metres, such as 3.81 m.
picture-distance-no-number = A number should stand where { $found } is. Type it like 12' 6 1/2" or 3.81 m.
picture-distance-unknown = { $found } is no unit that is known here. Use ft and in, or m, cm and mm.
picture-distance-fraction = { $found } is no fraction of an inch or foot. Type it like 6 1/2.
picture-distance-order = { $found } cannot stand there. Type feet and then inches, or metres alone.
picture-distance-too-many = { $found } is too much for what stands before it: a foot has 12 inches, a metre 100 centimetres. Look whether the first number is right.
picture-distance-short = { $metres } m is too short to measure a plan by. Look at the unit and at the decimal point, or choose a longer wall.
picture-distance-long = { $metres } m is longer than any home. Look at the unit and at the decimal point.

picture-door-entrance = Entrance door
picture-door-room = Door of a room
picture-door-bathroom = Door of a bathroom

## What is still missing

missing-percent = { $percent } % of the spots have an answer ({ $answered } of { $spots }).
missing-water-service = Nothing is known of how water comes into the house, nor where it is shut off.
missing-panel = The breaker panel is not on the map.
missing-gas-meter = The gas meter is not on the map.
missing-house-drain = Nothing is known of how the drains leave the house, nor where its cleanout is.
missing-main = No main shutoff is known that anyone in the house may work.
missing-cleanout = { $count ->
    [one] No cleanout is known on the drain of one spot.
   *[other] No cleanout is known on the drain of { $count } spots.
}
missing-shutoff = No shutoff is known for this: { $name }.
missing-feed = { $count ->
    [one] Nothing on the map feeds { $name } ({ $medium }).
   *[other] Nothing on the map feeds { $name } ({ $medium }), on which { $count } spots hang.
}
missing-drain = { $count ->
    [one] By the map { $name } drains to nowhere.
   *[other] By the map { $name } drains to nowhere, and { $count } spots with it.
}
missing-pump = No pump is known for this pit: { $name }.
missing-breakers = { $count ->
    [one] The breaker of one outlet or light is not known.
   *[other] The breakers of { $count } outlets and lights are not known.
}
missing-set = { $room }: such a room usually has this, and it is not on the map: { $kind }.
missing-rooms = No room is on the map yet. A plan, a photo of one, or rectangles will do.
missing-emergency-phone = The emergency number is not filled in.
missing-water-utility = The number of the water utility is not known.
missing-electricity-utility = The number of the electricity utility is not known.
missing-sewer-utility = The number of the sewer utility is not known.
missing-gas-utility = The number of the gas utility is not known.
missing-place = Nobody could find this: the map does not tell its room: { $name }.
missing-tried = Nobody has tried this yet: { $name }. Close it, see that it holds, open it again.
missing-behind-gfci = { $count ->
    [one] What hangs on this GFCI is not known: { $name }.
   *[other] What hangs on { $count } GFCIs is not known, among them { $name }.
}
