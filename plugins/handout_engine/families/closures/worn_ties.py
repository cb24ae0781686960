"""Where ties may be worn, and how far their bow hangs."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import choice, length
from handout_engine.amounts.lengths import Length, millimetres, most
from handout_engine.amounts.naming import NOTHING
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs

SEAMED, DRAWN = "sewn into a seam", "drawn through at waist or hem"
NECK, BONNET = "neck or hood", "bonnet"
LONGEST_DRAWN = millimetres(75)


class WornTies(ClothInputs):
    """Ties by their measures, on a child."""

    tie_length = length(
        "length of a tie",
        "What hangs free of one tie, from the seam to its end.",
        "16 in",
        ("2 in", "40 in"),
    )
    hem_below = length(
        "down to the hem",
        "Of the garment it is sewn to: from the tie straight down to the hem. The ends of the "
        "bow stay above it.",
        "7 in",
        ("1 in", "40 in"),
        basis=PRACTICE,
    )
    reach = length(
        "round to the bow",
        "From the seam to where the bow is tied: from a side to the middle of the back it is a "
        "quarter of the waist.",
        "5 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    bow = length(
        "taken by the bow",
        "What one tie gives to its loop and to the knot; tie a tape round your hand and measure.",
        "5 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    tie_width = length("width of a tie", "Finished.", "1 in", ("1/4 in", "8 in"))
    place = choice(
        "where it is worn",
        "Decides which rule on cords and ties applies.",
        SEAMED,
        DRAWN,
        BONNET,
        NECK,
    )

    @property
    def has_bow(self) -> bool:
        """Whether a bow is tied of it, at the garment that it is sewn to."""
        return self.noted("place") == SEAMED

    @check
    def no_tie_is_worn_at_the_neck(self) -> None:
        """Refuse ties by which a child could be caught."""
        if self.place == NECK:
            raise RefusalError(
                "no tie or cord belongs at the neck or hood of a child's garment, where it can "
                "catch and pull tight; close it with a button or a loop, or sew a bow down flat "
                "through its knot",
                "place",
            )

    @value(
        "most that may hang free of a tie drawn through at waist or hem",
        basis=published("cfr-1120"),
    )
    def longest(self) -> Length | None:
        """As the rule has it; None for ties that are sewn in."""
        return LONGEST_DRAWN if self.place == DRAWN else None

    @check
    def no_drawn_tie_hangs_too_long(self) -> None:
        """Refuse a tie that is drawn through and could catch."""
        if self.longest is not None and self.tie_length > self.longest:
            raise RefusalError(
                f"tie_length {TAPE.say(self.tie_length)} is more than may hang free at waist or "
                f"hem; use {at_most(self, 'tie_length', self.longest)}, or sew the ties into a "
                f"seam: place: {SEAMED}",
                "tie_length",
            )

    @value("what hangs from the knot of the bow")
    def bow_end(self) -> Length | None:
        """What the way to the bow and the bow itself leave of a tie; None where none is tied."""
        if not self.has_bow:
            return None
        return most(self.tie_length - self.reach - self.bow, NOTHING)

    @check
    def the_bow_ends_above_the_hem(self) -> None:
        """Refuse a bow whose ends pass the hem, where a child steps on them."""
        if self.bow_end is not None and self.bow_end > self.hem_below:
            longest = self.hem_below + self.reach + self.bow
            raise RefusalError(
                f"tie_length {TAPE.say(self.tie_length)} lets the ends of the bow hang "
                f"{TAPE.say(self.bow_end)}, below the hem of the garment, "
                f"{TAPE.say(self.hem_below)} down; use "
                f"{ways(at_most(self, 'tie_length', longest), 'a larger bow')}",
                "tie_length",
            )

    @value("from the ends of the bow down to the hem")
    def above_hem(self) -> Length | None:
        """What is left when the bow is tied."""
        return None if self.bow_end is None else self.hem_below - self.bow_end

    @value("untied, it reaches below the hem by")
    def untied_below(self) -> Length | None:
        """Why it is tied whenever it is worn."""
        return most(self.tie_length - self.hem_below, NOTHING) if self.has_bow else None
