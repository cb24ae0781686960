"""Prints what a garment's values cost at nine sizes, against all of it at one. Run as a script."""

from collections.abc import Callable
from time import process_time

from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drafting.pieces import DraftedGarment
from handout_engine.drawing.markup import html
from handout_engine.pages.fragments import PARTS, block
from handout_engine.paper.sheets import sheets
from handout_engine.register import find_garment, garment_keys
from handout_engine.working.technique import Technique

TAPE, SIZE, TIMES = Tape(), "62", 5


def least(work: Callable[[], object]) -> float:
    """The least processor time of several goes, in milliseconds."""
    times = []
    for _ in range(TIMES):
        start = process_time()
        work()
        times.append(process_time() - start)
    return 1000 * min(times)


def at_nine_sizes(garment: type[Technique], work: Callable[[Technique], object]) -> float:
    """What is asked of a garment, at every size."""
    return least(lambda: [work(garment(size=size)) for size in LENGTHS])


def without_cloth(garment: Technique) -> object:
    """Every value that hangs on no layout: what is declared, and the sizes of the pieces."""
    pieces = garment.drafts if isinstance(garment, DraftedGarment) else ()
    return [garment.result(each) for each in garment.declared.values()], [p.sizes for p in pieces]


def whole(garment: type[Technique]) -> object:
    """All of it at one size: a page with every part, and its sheets."""
    working = garment(size=SIZE).work()
    page = html(block(working, set(PARTS) - {"sizes"}, TAPE, "b0", garment.key()))
    return page, [each.document("a4", TAPE) for each in sheets(working, TAPE)]


def main() -> None:
    """One line for each garment."""
    for key in garment_keys():
        garment = find_garment(key)
        one = least(lambda made=garment: made(size=SIZE).work().pictures)
        page = least(lambda made=garment: whole(made))
        bare = at_nine_sizes(garment, without_cloth)
        all_values = at_nine_sizes(garment, lambda each: each.values)
        print(
            f"{key}: one size worked and drawn {one:.1f} ms, with page and sheets {page:.1f} ms; "
            f"nine sizes without cloth {bare:.1f} ms ({bare / page:.2f} of the whole), with what "
            f"to buy {all_values:.1f} ms ({all_values / page:.2f})"
        )


if __name__ == "__main__":
    main()
