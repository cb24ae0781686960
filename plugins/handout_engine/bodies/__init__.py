"""Babies' bodies: their measures by size, and how a garment asks for them."""
