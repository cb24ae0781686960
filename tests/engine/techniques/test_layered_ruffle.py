from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches, total
from worked import length, refusal, said, steps, work

layers = st.lists(st.fractions(1, 20, max_denominator=16).map(inches), min_size=2, max_size=6)


def test_two_layers_worked_by_hand():
    """Common practice, no source: 1 1/2 and 2 1/2 in on a 12 in edge, 2 to 1, 1/4 + 1/4 in hems.

    Cut 1 1/2 + 1/4 + 1/2 = 2 1/4 in and 3 1/4 in; one strip of 24 1/2 in each; 5 1/2 in of
    cloth, 6 1/2 with the spare inch, that is 1/4 yd.
    """
    working = work("layered-ruffle", depths="1 1/2 in; 2 1/2 in", edge="12 in")
    assert said(working, "layer_1_cut_width") == "2 1/4 in"
    assert said(working, "layer_2_cut_width") == "3 1/4 in"
    assert said(working, "layer_1_strip_length") == "24 1/2 in"
    assert said(working, "layer_1_prepared_depth") == "1 3/4 in"
    assert said(working, "layer_2_prepared_depth") == "2 3/4 in"
    assert said(working, "cloth_used") == "5 1/2 in"
    assert said(working, "cloth_to_buy") == "1/4 yd"


def test_each_layer_of_its_own_cloth_is_bought_by_itself():
    working = work("layered-ruffle", cloths="one for each layer")
    assert said(working, "layer_1_cloth_to_buy") == "1/8 yd"
    assert said(working, "layer_2_cloth_to_buy") == "1/8 yd"
    assert [piece.cloth for piece in working.pieces] == ["layer 1 cloth", "layer 2 cloth"]
    assert "cloth_to_buy" not in working.values


def test_one_layer_is_another_technique():
    assert refusal("layered-ruffle", depths=["2 in"]) == (
        "one depth makes a single ruffle; write two or more, or use gathered-ruffle"
    )
    assert refusal("layered-ruffle", depths=["2 in"] * 7) == (
        "depths: 7 given; write from 1 to 6 of them"
    )


def test_the_last_checkpoint_names_every_layer():
    last = steps(work("layered-ruffle", depths="1 in; 2 in; 3 in"))[-1]
    assert last.endswith("> below the seam the layers hang 1 in and 2 in and 3 in.")


@given(layers, st.sampled_from(["double", "rolled", "folded"]))
def test_each_layer_is_cut_as_a_single_ruffle_of_its_depth(depths, hem):
    working = work("layered-ruffle", depths=depths, hem=hem)
    for number, depth in enumerate(depths, 1):
        single = work("gathered-ruffle", depth=depth, hem=hem)
        for name in ("cut_width", "strips", "strip_length"):
            assert working.named[f"layer_{number}_{name}"].amount == single.named[name].amount
    rows = total(length(work("gathered-ruffle", depth=depth, hem=hem), "cloth_used")
                 for depth in depths)  # fmt: skip
    assert length(working, "cloth_used") <= rows, "laid together they never take more"
