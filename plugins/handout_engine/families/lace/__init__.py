"""Lace: edgings, insertions, beading and entredeux, joined, gathered and shaped.

- beading-ribbon: Ribbon run through beading: how long, over and under how many bars, and how its
  ends are made safe.
- entredeux-join: Entredeux joined to flat or gathered cloth: what is taken, trimmed and rolled, and
  how the cloth is cut.
- gathered-edging: Lace edging gathered by its own heading thread and whipped to an edge, with more
  at each corner.
- insertion-band: Strips of lace, entredeux, beading, puffing, embroidery and cloth joined into one
  band of a wanted width.
- lace-shapes: Scallops, diamonds or loops of lace along an edge: the template, and the lace each
  takes.
- mitred-lace: Lace turned round corners of any angle with a stitched fold at each: how much longer
  it is cut, and where each mitre falls.
- round-lace: Lace laid in a circle or an arc: cut as long as its outer line, and shaped inside by
  its own heading thread.
"""
