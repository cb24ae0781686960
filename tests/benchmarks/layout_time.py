"""Prints how long 200 pieces take to be laid out, and how much cloth is lost. Run as a script."""

from random import Random
from time import perf_counter

from handout_engine.amounts.lengths import ZERO, inches
from handout_engine.cloth.laying import lay
from handout_engine.working.layouts import Item, Order

PIECES = 200


def main() -> None:
    """Lay 200 pieces of a nursery's size on 44 in of usable width."""
    chance = Random(7)
    items = [
        Item(f"piece {n}", inches(chance.randint(8, 160)) / 8, inches(chance.randint(8, 120)) / 8)
        for n in range(PIECES)
    ]
    start = perf_counter()
    layout = lay("lawn", inches(44), items, Order(ZERO, ZERO.mm, inches("9/2")))
    seconds = perf_counter() - start
    area = sum(item.across.mm * item.along.mm for item in items)
    lost = 1 - area / (layout.used.mm * inches(44).mm)
    print(
        f"{PIECES} pieces laid out in {seconds:.2f} s; {float(lost):.0%} of the cloth is left over"
    )


if __name__ == "__main__":
    main()
