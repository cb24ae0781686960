"""Drawings: scenes in real millimetres, laid out on a page and written as SVG."""
