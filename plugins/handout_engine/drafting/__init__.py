"""Drafting garments from body measures: curves, outlines by their edges, and the body block."""
