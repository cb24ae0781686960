"""A page worked out: its blocks, in order of their references, as HTML and as a form."""
