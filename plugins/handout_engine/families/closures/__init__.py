"""Closures: what opens a garment and holds it closed.

- button-spacing: Buttons at equal distances along an edge, with the length and the place of every
  buttonhole, the shank and the thread.
- elastic-casing: A casing for elastic, and how long the elastic is cut for the body it goes round.
- front-band: The overlap of a buttoned front: a folded strip, a strip with a narrow contrast edge,
  or a facing cut on.
- lap-placket: One strip sewn round both edges of a slit, without a break at its point.
- tie-pair: Ties or sashes in pairs, as a turned tube or in one hemmed layer, and where they may be
  worn.
"""
