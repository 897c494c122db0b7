"""Solubility product of a carbide in austenite of a chosen carbon content.

log10([M][C]^n) with weight percent in the matrix. The total carbon of the steel is
adjusted until the austenite beside the carbide holds `matrix_carbon`.
"""

from . import library
from .roots import bisect


def solubility_product(record):
    metal, wanted = record["element"], record["matrix_carbon"]
    amount = record["composition_wt"][metal]

    def state(total):
        return library.soak(record, composition={"C": total, metal: amount})

    def too_much(total):
        return state(total).matrix.weight_percent["C"] - wanted

    total = bisect(too_much, wanted, wanted + 0.3 * amount, width=1e-5)
    library.require(record, state(total))
    dissolved = state(total).matrix.weight_percent
    return dissolved[metal] * dissolved["C"] ** record["carbon_exponent"]
