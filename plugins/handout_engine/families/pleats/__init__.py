"""Pleats: folds laid to one side or to both, and held at one edge.

- box-pleats: Pleats whose two folds turn away from each other, each taking four times its depth;
  boxes that meet, or stand apart.
- inverted-pleat: Two folds that meet in front, taking four times their depth; one at a centre, or
  several evenly spaced.
- knife-pleats: Pleats that all turn one way, each taking twice its depth; three to one where the
  depth is what shows.
- underlay-pleat: Two main pieces turned back and sewn to an underlay of a second cloth, which shows
  when the pleat opens.
"""
