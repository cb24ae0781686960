"""The trade of heirloom sewing as a pure library: no files, no clock, no network, no MkDocs.

Start with `pages.page.work_page` (a page of blocks), or `register.find` and `technique.make` (one
technique). Its rooms, from the ground up: `amounts`, `geometry`, `drawing`, `working`, `cloth` and
`shared` are the vocabulary in which the `families` of techniques are written, `bodies` and
`drafting` that of garments; `paper` and `pages` show what was worked out.
"""
