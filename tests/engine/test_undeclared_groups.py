"""What is worked out on the way, such as the rows of a chart, is not listed among the values."""

from functools import cached_property

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.working_out import Group


class Row(Group):
    """A row of a chart."""

    @value("place")
    def place(self) -> Length:
        return inches(1)


class Edge(Group):
    """An edge with a declared group, and rows that only its chart shows."""

    @group
    def end(self) -> Row:
        return Row("end_")

    @cached_property
    def rows(self) -> list[Row]:
        return [Row("first_"), Row("last_")]

    @value("length")
    def length(self) -> Length:
        return sum((row.place for row in self.rows), self.end.place)


def test_rows_of_a_chart_are_no_values_though_a_value_needs_them():
    edge = Edge()
    assert edge.length == inches(3)
    assert list(edge.values) == ["end_place", "length"]
