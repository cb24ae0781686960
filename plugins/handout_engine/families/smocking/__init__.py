"""Smocking: pleats held by stitches, and the fine handwork that goes with it.

- fagoted-band: Folded strips joined by stitches over an open gap: finished width, cut strips, whole
  repeats and thread.
- shadow-work: Threads crossed behind sheer cloth between two lines of back stitch: whole stitches
  along an edge, lines to trace, thread.
- smocked-neck: Front, backs and sleeves joined and pleated as one round the neck: how wide each is
  cut there, and where its seams come to lie.
- smocking-grid: A panel drawn up into even pleats on rows of dots and smocked: flat width, dots,
  rows and a dot sheet to trace.
"""
