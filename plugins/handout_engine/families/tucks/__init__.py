"""Tucks: folds stitched down, in sets and rows, or to be let out again.

- graduated-tucks: Tucks that grow deeper in steps, each gap as wide as the tuck lying over it; one
  set, or two facing a centre.
- growth-tuck: Tucks above a hem that are let out as the child grows, each lengthening the garment
  by twice its depth.
- pin-tucks: Rows of pin tucks from a twin needle, with the cloth they draw up measured on a sample.
- release-tucks: Tucks stitched for part of the panel and then freed, so that it is narrow where
  they are sewn and full beyond.
- tuck-fit: Of flat panel, finished width, number of tucks and their depth, three give the fourth.
- tuck-set: Equal tucks side by side: pin tucks, touching (blind) ones, or spaced, from the centre
  or from one edge.
- twin-needle-clearance: How wide a stitch a twin needle may make before it strikes the plate or the
  foot.
"""
