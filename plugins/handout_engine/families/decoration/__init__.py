"""Decoration: stitches and motifs set out on finished cloth.

- hoop-placements: A design wider than the hoop in as few placements as its field allows, with their
  centre marks, their basting frames, and the cloth to hold them.
- knots: Knots or bullions on a line, a grid or at points of your own: how many, where, and how much
  thread.
- repeated-motif: Whole motifs with equal gaps along an edge, round a hem, or between four corners:
  how many, how far apart, and where each is centred.
"""
