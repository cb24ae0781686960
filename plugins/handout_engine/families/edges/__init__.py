"""Edges: hems, scallops and rows of stitches that finish an edge.

- curved-hem: How much longer the raw edge of a flared or circular hem is than the line it lies on,
  and whether it can be eased in or wants a facing.
- decorative-row: A machine stitch along an edge or round a ring in whole repeats, stretched a
  little or centred between equal margins.
- hem: Double, single, rolled or faced: what a hem takes, where it folds, how deep it is usually
  made, and how much of it can be let down.
- hemstitched-edge: A square, rectangle or towel whose hem is sewn down with whole repeats of a
  hemstitch from corner to corner.
- mitred-corner: A square or oblong hemmed all round: its cut size, its folds, and the mitre that
  makes each corner lie flat.
- scallop-edge: Whole scallops along an edge or round a hem: chord, rise, radius, a template at true
  scale, and the facing they are turned with.
"""
