"""The page thermo_data/ACCURACY.md and its parity plots, from judged records.

`groups` sorts records, `figures` counts and averages, `page` writes, `plots` draws.
Other files are one section of the page each.
"""
