"""Equilibria once more, by general-purpose tools: the library's independent witness.

Nothing here calls the library but `comparison.py`. Energies are NumPy, straight from
the parameter file; the minimum is found by SciPy: a linear program on samples of every
phase, local minimizations of the tangent-plane distance, and a root finder at the end.
"""
