"""Ruffles: a strip, or a ring, longer than the edge it is sewn to.

- banded-ruffle: Two strips sewn together and folded; the wider facing turns up as a band along the
  edge.
- centre-gathered-ruffle: A strip finished along both edges, gathered along its middle and stitched
  on as a trim.
- circular-flounce: Cut as a ring or as arcs, so that it lies smooth along its seam and ripples at
  its hem.
- fullness-advice: Where to begin for a cloth or trim, and what an edge takes at the least and at
  the most.
- fullness-sample: Gather a test strip, measure it before and after, and know how long a strip an
  edge needs.
- gathered-ruffle: A strip, hemmed or folded double, gathered along one edge into a seam.
- headed-ruffle: A strip finished along both edges and gathered inside its upper one, so that a
  heading stands above the stitching.
- layered-ruffle: Ruffles of two or more depths gathered as one into the same edge.
- outline-ruffle: A gathered ruffle round a collar, pillow or neck, full enough at its hem as well.
- puffing-strip: A strip gathered along both long edges and let in as an insertion between two
  edges.
- spiral-flounce: Cut as one spiral without a join; it ripples most where it begins and less to its
  end.
"""
