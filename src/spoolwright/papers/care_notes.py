"""What an owner should do with the reel until it comes back: a few sentences for the foot of a bill."""

from __future__ import annotations

# Common practice, no source; where pages disagree (jet, hose, bath) the gentler way is taken.
AFTER_SALT = (
    "After salt: drag closed, wipe it with a cloth wrung out in lukewarm fresh water, never a jet and never "
    "a bucket; brush dried salt off the foot and the bars; let it dry in a warm room, then open the drag.",
)
AFTER_FRESH = ("After use: wipe it dry and brush the grit out of what moves.",)
WHEREVER = (
    "Store it dry and dark with the drag backed off, in a cloth bag and not in plastic, which sweats.",
    "No spray into the drag, no grease into spool bearings, no household oil into the anti-reverse.",
    "If it falls into the water do not turn the handle: rinse it and bring it within two days.",
)
MULTIPLIER = ("Two drops of oil on the worm of the level wind after every few trips.",)
FLY = ("For storage turn the check to its least.",)
OF_KIND = {"round multiplier": MULTIPLIER, "low-profile multiplier": MULTIPLIER, "fly": FLY}


def care_notes(kind: str, water: str) -> tuple[str, ...]:
    """Sentences for this kind of reel ("" where it is not known) and this water ("salt", "fresh", ...)."""
    after = AFTER_FRESH if water == "fresh" else AFTER_SALT
    return (*after, *OF_KIND.get(kind, ()), *WHEREVER)
