"""How property tests search: the same examples at every run, or new ones when asked.

`HYPOTHESIS_PROFILE=search` looks at more and different examples; what it finds is then kept as a
test of its own. `quick` looks at a few, for `mutations.py`.
"""

import os

from hypothesis import settings

settings.register_profile("steady", derandomize=True, deadline=None, max_examples=60, database=None)
settings.register_profile("quick", derandomize=True, deadline=None, max_examples=12, database=None)
settings.register_profile("search", deadline=None, max_examples=600, database=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "steady"))
