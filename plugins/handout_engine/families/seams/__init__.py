"""Seams: the seams of fine sewing, and the panels that they join.

- fine-seams: Plain, French, flat fell, rolled and whipped, or pin stitched: what each seam takes of
  the cloth, and how wide the pieces are cut.
"""
