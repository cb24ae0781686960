"""The cautions a page must carry when they apply, in plain words, deferring to local rules."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.sources import SOURCES, Source


@dataclass(frozen=True)
class Caution:
    """One caution: shown once a page however many blocks call for it."""

    key: str
    text: str
    sources: tuple[Source, ...] = ()


PINS_AND_IRON = Caution(
    "pins-and-iron",
    "Count pins in and out, keep blades and a hot iron out of a child's reach, and stop the "
    "machine before a hand comes near the needle.",
)
LOOSE_THREADS = Caution(
    "loose-threads",
    "Draw gathering threads out or fasten them, and trim every loose end on the wrong side: a long "
    "thread inside a sleeve or sock can wind round a finger or toe.",
)
NOT_SLEEPWEAR = Caution(
    "not-sleepwear",
    "A ruffled garment is not sleepwear. What a child sleeps in must meet the rules of the place "
    "where it is used; in the United States a ruffle rules out tight-fitting sleepwear.",
    (SOURCES["cfr-1615"],),
)
GARMENT_IS_DAYWEAR = Caution(
    "garment-daywear",
    "This garment is for the day, while someone watches. What a child sleeps in must meet the "
    "rules of the place where it is used: in the United States those for children's sleepwear, "
    "which a loose gown of plain cotton does not meet.",
    (SOURCES["cfr-1615"],),
)
MEASURE_THE_BABY = Caution(
    "measure-the-baby",
    "A size is an average, and some of its figures are estimates. Measure the baby, and sew the "
    "first one in plain cotton before you cut silk or lace.",
    (SOURCES["snyder-1977"],),
)
THIN_COTTON = Caution(
    "thin-cotton",
    "Thin cotton burns fast, and gathers burn faster: keep the garment away from open flame and "
    "heaters.",
    (SOURCES["cfr-1610"],),
)
LONG_HEM = Caution(
    "long-hem",
    "A hem below the foot can trip a child who crawls or walks, and whoever carries her.",
)
NEEDLE_BREAKS = Caution(
    "needle-breaks",
    "A twin needle breaks when the stitch is wider than plate and foot allow, and the pieces fly: "
    "turn the hand wheel through one whole stitch first, and count every piece of a broken needle.",
)
OPEN_LATTICE = Caution(
    "open-lattice",
    "An open lattice can catch a small finger, a toe or a hook: keep the openings too small for a "
    "fingertip where hands and feet reach it, back it with cloth on sleeves, cuffs and feet, and "
    "sew every tube end into a seam that is stitched twice.",
)
KNOTS_AS_SMALL_PARTS = Caution(
    "knots-small-parts",
    "A knot, bead or button on a lattice is a small part that a child can mouth and pull off. Work "
    "knots through the tubes and bury their ends, pull hard at each before the garment is worn, "
    "and use no beads or pearls for a baby.",
    (SOURCES["cfr-1501"],),
)
LACE_CATCHES = Caution(
    "lace-catches",
    "Small fingers and toes catch in open lace, beading and eyelets: keep wide holes away from "
    "sleeve ends, sock tops and whatever an infant can reach, and choose lace with small meshes "
    "there.",
)
WORKED_KNOTS = Caution(
    "worked-knots",
    "A knot or bullion that a child can catch with a nail or a tooth can be pulled off: wrap it "
    "firmly, fasten its thread on the wrong side, pull at each before the garment is worn, and "
    "work no bead or pearl in with it for a baby.",
    (SOURCES["cfr-1501"],),
)
LONG_FLOATS = Caution(
    "long-floats",
    "Threads that run loose across the wrong side catch fingers and toes: fasten off between "
    "stitches that lie far apart, leave no knot or end longer than a stitch, and line sleeves and "
    "bonnets behind the work.",
)
NECK_CORDS = Caution(
    "neck-cords",
    "No ribbon, tie or cord that can be drawn or that hangs loose at a child's neck or hood, and "
    "none longer than 75 mm (2 15/16 in) beyond its casing at waist or hem: catch its ends in the "
    "seams, and stitch it down at the middle so that it cannot be pulled out.",
    (SOURCES["en-14682"], SOURCES["cfr-1120"]),
)
BUTTONS_AS_SMALL_PARTS = Caution(
    "buttons-small-parts",
    "A button is a small part that a child can mouth and swallow: sew each on with doubled thread "
    "and a shank, pull hard at it before every wearing, and put none on what a baby sleeps in.",
    (SOURCES["cfr-1501"],),
)
LOOPS_CATCH = Caution(
    "loops-catch",
    "A loop that stands out can catch a finger, a toe or a cot: make it no longer than the button "
    "needs, sew both ends of a cloth loop into a seam that is stitched twice, fasten a thread loop "
    "at both ends with several small stitches through the edge, and trim every end.",
)
NOTHING_LOOSE_IN_THE_COT = Caution(
    "nothing-loose-in-the-cot",
    "Nothing loose and nothing soft lies where a baby sleeps: no pillow, quilt, shawl, bib or "
    "cloth in a cot, crib, pram or car seat with a sleeping child. Lay it there only while someone "
    "watches, and follow the safe-sleep advice of your own health service.",
)
NOTHING_UNDER_THE_HARNESS = Caution(
    "nothing-under-the-harness",
    "In a car seat or pushchair nothing thick lies between a child and the harness, and nothing "
    "hangs over the face: fasten the harness on the child first and lay a cover over it.",
)
BONNET_COMES_OFF = Caution(
    "bonnet-comes-off",
    "A bonnet comes off for sleep and in the car: it can slip over the face, and it keeps heat in. "
    "Close it with a short soft strap that pulls open rather than with ties, and take it off a "
    "child who is left alone. The European rule on cords leaves bonnets to such judgement.",
    (SOURCES["en-14682"],),
)
BIB_COMES_OFF = Caution(
    "bib-comes-off",
    "A bib is a ring round the neck: it comes off after the meal, for sleep and in the car. Give "
    "it a closing that pulls open by itself, and no ties. The European rule on cords leaves bibs "
    "to such judgement.",
    (SOURCES["en-14682"],),
)
FASTENERS_AS_SMALL_PARTS = Caution(
    "fasteners-small-parts",
    "A press fastener is a small part that a child can mouth and swallow, and old metal ones may "
    "hold lead or nickel: set it through two layers of firm cloth, pull hard at it before every "
    "use, or sew on soft hook-and-loop tape.",
    (SOURCES["cfr-1501"],),
)
OLD_BUTTONS = Caution(
    "old-buttons",
    "Old buttons, their paint and plating, and metal snaps and hooks may hold lead or nickel: put "
    "none of unknown origin where a child can mouth it or where it lies on the skin.",
)
TIGHT_ELASTIC = Caution(
    "tight-elastic",
    "Elastic that marks the skin is too tight: it should slip over a finger laid flat under it. "
    "Let it out as the child grows, and sew its ends together so that it cannot come out.",
)
WING_NEEDLE = Caution(
    "wing-needle",
    "A wing needle is wider than its number says. Take a straight-stitch plate off, and a foot "
    "with one round hole too; turn the hand wheel through one whole repeat before the motor runs, "
    "and never use it as one of a pair or with a stitch that swings wider than the opening.",
)
WIDE_STITCH = Caution(
    "wide-stitch",
    "A needle breaks, and its pieces fly, when a stitch swings wider than the opening of plate or "
    "foot: put on the plate and the foot with the wide slot, turn the hand wheel through one whole "
    "repeat first, and count every piece of a broken needle.",
)
RAISED_CLOTH = Caution(
    "raised-cloth",
    "Flannel, towelling and other cloth with a raised surface can catch fire along its nap: keep "
    "it from open flame and heaters. The United States rule that spares heavier cloth a test "
    "speaks of plain surfaces only.",
    (SOURCES["cfr-1610"],),
)
SASH_LENGTH = Caution(
    "sash-length",
    "No rule that could be consulted says how long a sash may be that is sewn into a seam: the "
    "United States rule speaks of drawstrings in a channel, and of the European rule only its "
    "scope was at hand. Here the ends of the bow stay above the hem, which is common practice; ask "
    "for your own country's rule before you sell or give it away. Untied, a sash that reaches "
    "below the hem trips a child and catches in a door: tie it whenever it is worn, or make it "
    "shorter.",
    (SOURCES["en-14682"], SOURCES["cfr-1120"]),
)
TIES_CATCH = Caution(
    "ties-catch",
    "Ties and sashes can catch in a cot, a door or a playground and pull tight: none on what a "
    "child sleeps in, a bow that opens at one pull rather than a knot, and each end sewn in twice. "
    "The European rule on cords and your own country's decide what is allowed where.",
    (SOURCES["en-14682"],),
)
