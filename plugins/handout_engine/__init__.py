"""The trade of heirloom sewing as a pure library: no files, no clock, no network, no MkDocs.

Start with `pages.work_page` (a page of blocks), or `techniques.find` and `technique.make` (one
technique). `lengths`, `inputs`, `workings`, `cloth` and `drawing` are the vocabulary in which
techniques are written.
"""
