"""Where one button of a row stands, and its hole where it lies along the edge."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.working_out import Group


class ButtonPlace(Group):
    """A button by its number in the row, from the upper end of the edge.

    A hole along the edge is given by how far it begins beyond its button, and by its length.
    """

    def __init__(
        self, number: int, first: Length, step: Length | None, hole: tuple[Length, Length] | None
    ) -> None:
        """Take which it is, where the first one stands, the step to the next, and the hole."""
        super().__init__(f"button_{number}_")
        self.number, self.first, self.step, self.hole = number, first, step, hole

    @value("middle")
    def middle(self) -> Length:
        """One step further from button to button."""
        if self.step is None or self.number == 1:
            return self.first
        return self.first + (self.number - 1) * self.step

    @value("hole from")
    def hole_from(self) -> Length | None:
        """Above the button, which pulls down."""
        return None if self.hole is None else self.middle - self.hole[0]

    @value("hole to")
    def hole_to(self) -> Length | None:
        """The length of the hole further."""
        if self.hole is None or self.hole_from is None:
            return None
        return self.hole_from + self.hole[1]
