"""Sheets at true scale: what a pen draws, cut into printed pages that are glued together."""
