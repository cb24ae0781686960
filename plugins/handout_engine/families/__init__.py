"""The families of techniques, a room each.

A module with a `TECHNIQUE`, or a `GARMENT`, is that technique; its name with hyphens is what
authors write. Beside it stand its measures, steps, pictures and drawing, and what its family
shares. No family looks into another.
"""
