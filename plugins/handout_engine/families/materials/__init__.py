"""Materials: cloth, thread and needle, each to suit the other.

- cloth-adviser: For a cloth: needle number, thread in every count, stitch length, fullness,
  fraying, shrinkage and pressing.
- needle-numbers: What the numbers on a package of machine needles mean: metric and old sizes, twin
  and wing needles.
- thread-amount: How much thread seams take, by the kind of stitch or by a sample, and how many
  spools hold it.
"""
