"""Lattice: narrow bands woven over and under.

- lattice-panel: Narrow bias tubes woven over and under inside an outline, knotted where they cross.
"""
