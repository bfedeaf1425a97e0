# What the map of a home lacks or gets wrong.

check-no-isolation = Nothing that you may work cuts this off: { $name }.
check-no-isolation-remedy = Is there a shutoff that is not on the map yet? Add it. If there is none, have one put in.
check-one-line-of-defence = Only one device stands between this and the supply: { $name }. If that one fails, nothing is left.
check-one-line-of-defence-remedy = Add the other shutoffs on the way to the map, or have one put in.
check-unreachable = { $net ->
    [water] By the map no water reaches this: { $name }.
    [power] By the map no power reaches this: { $name }.
    [gas] By the map no gas reaches this: { $name }.
   *[other] By the map nothing reaches this: { $name }.
}
check-unreachable-remedy = Add the connection that feeds it, or turn round one that runs the wrong way.
check-isolates-nothing = Working this device cuts nothing off: { $name }.
check-isolates-nothing-remedy = Look whether its connections are right. If they are, it is of no use in an emergency: say so in its note.
check-drain-without-cleanout = No cleanout lies on the way from here to the sewer: { $name }.
check-drain-without-cleanout-remedy = Look for a capped opening on the way and add it.
check-drain-without-outfall = By the map this drains to nowhere: { $name }.
check-drain-without-outfall-remedy = Add the connections as far as the sewer or the septic tank.
check-no-breaker = No breaker is known for this: { $name }.
check-no-breaker-remedy = Find its breaker (switch off one at a time, with a lamp plugged in) and connect it.
check-one-way-dead-end = This passes one way only, but nothing leaves it, or nothing enters: { $name }.
check-one-way-dead-end-remedy = Its connections must lead from its inlet to its outlet: one to it, one from it.
check-not-connected = Nothing is connected to this: { $name }.
check-not-connected-remedy = Add what feeds it and what it feeds, or remove it.
check-level-unused = No space lies on this level: { $name }.
check-level-unused-remedy = Give its spaces this level, or remove it.
check-space-unused = Nothing is in this space: { $name }.
check-space-unused-remedy = Give the components in it this space, or leave it if there are none.
check-contact-unused = Nothing refers to this contact: { $name }.
check-contact-unused-remedy = Give it a role, or name it as an owner.
check-contact-without-phone = This contact has no number: { $name }.
check-contact-without-phone-remedy = Fill in its phone.
check-no-emergency-phone = The home has no emergency number: { $name }.
check-no-emergency-phone-remedy = Fill in emergency_phone.
