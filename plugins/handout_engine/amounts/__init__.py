"""Amounts: measures, counts and shares; how they are written, read, said and refused."""
