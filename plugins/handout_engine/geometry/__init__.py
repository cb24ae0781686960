"""Plane geometry of outlines and bands, in millimetres: x to the right, y downward.

Everything here is plain arithmetic on floats, snapped to a billionth of a millimetre, so that the
same measures give the same drawing on every machine and in the reader's browser.
"""
