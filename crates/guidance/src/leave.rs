//! Gas, carbon monoxide, fire, wires down: leave, and call from outside.

use quarterturn_home::Role;

use crate::context::Context;
use crate::draft::Draft;
use crate::{Act, Trouble};

pub(crate) fn leave(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { mapped: true, ..Draft::default() };
    let (caution, steps): (&str, &[(&str, Act)]) = match ctx.question.trouble {
        Trouble::GasSmell => (
            "caution-gas",
            &[
                ("step-gas-leave", Act::Leave),
                ("step-gas-call", Act::Call),
                ("step-gas-nothing-else", Act::Advice),
                ("step-stay-out", Act::Advice),
            ],
        ),
        Trouble::CoAlarm => (
            "caution-co",
            &[
                ("step-co-leave", Act::Leave),
                ("step-co-call", Act::Call),
                ("step-co-head-count", Act::Advice),
                ("step-stay-out", Act::Advice),
            ],
        ),
        Trouble::WiresDown => (
            "caution-wires",
            &[
                ("step-wires-leave", Act::Leave),
                ("step-wires-call", Act::Call),
                ("step-wires-nothing-near", Act::Advice),
                ("step-wires-shuffle", Act::Advice),
                ("step-wires-car", Act::Advice),
                ("step-stay-out", Act::Advice),
            ],
        ),
        _ => (
            "caution-fire",
            &[
                ("step-fire-leave", Act::Leave),
                ("step-fire-call", Act::Call),
                ("step-fire-stay-low", Act::Advice),
                ("step-stay-out", Act::Advice),
            ],
        ),
    };
    draft.caution(ctx, caution, &[]);
    for &(id, act) in steps {
        draft.advice(ctx, id, act, &[]);
    }
    match ctx.question.trouble {
        Trouble::WiresDown => {
            draft.call(Role::ElectricityUtility, "why-electricity-utility-wires");
            draft.restore(ctx, "restore-wires", &[]);
        }
        Trouble::Fire => draft.restore(ctx, "restore-when-told", &[]),
        _ => {
            draft.call(Role::GasUtility, "why-gas-utility");
            draft.restore(ctx, "restore-when-told", &[]);
        }
    }
    draft
}
