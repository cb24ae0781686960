"""Bias: strips cut at 45 degrees to the grain, and what is bound and corded with them.

- bias-strips: Strips cut from a rectangle at 45 degrees, each with its length, joined on the grain.
- bias-tube: A flat tube sewn inside out and turned, its seam on an edge or centred on the back.
- button-loops: Loops of fine bias tube along an opening, worked out from the button they pass.
- continuous-bias: A square or rectangle sewn into a tube one row out of step and cut round into one
  strip.
- double-binding: A strip folded in half and wrapped round a raw edge, for blankets, quilts and
  bibs.
- piping: A cord covered with bias and sewn into a seam: collars, yokes, waists, cushions.
- single-binding: One layer of bias wrapped round a raw edge, for necks, armholes and bibs.
"""
