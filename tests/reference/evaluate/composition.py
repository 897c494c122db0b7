"""From atom fractions to weight percent, balance iron."""

# Abridged IUPAC standard atomic weights, g/mol.
MOLAR_MASS = {
    "Fe": 55.845,
    "C": 12.011,
    "Cr": 51.996,
    "Mo": 95.95,
    "W": 183.84,
    "V": 50.942,
    "Co": 58.933,
    "Ni": 58.693,
    "Mn": 54.938,
    "Si": 28.085,
}


def weight_percent(atom_fraction):
    """Weight percent of all elements given (iron, the balance, is left out)."""
    rest = 1.0 - sum(atom_fraction.values())
    mass = rest * MOLAR_MASS["Fe"]
    mass += sum(x * MOLAR_MASS[el] for el, x in atom_fraction.items())
    return {el: 100.0 * x * MOLAR_MASS[el] / mass for el, x in atom_fraction.items()}
