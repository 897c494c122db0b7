"""Random steels within the validity range of a parameter file.

The same idea as random_steels.hpp beside this folder, other random numbers: 4 to 10
elements, weight percents uniform within the validity range, one in seven a trace down
to 1e-9 of it.
"""

import numpy as np

SOAKS = (700.0, 1250.0)  # lowest and highest [C]
LEAST_IRON = 20.0


def draw(file, number, always=("C",), band=SOAKS):
    """(weight percent by element, iron first; temperature [C]) of a numbered case.

    The elements `always` are in every steel; temperatures lie in the band.
    """
    random = np.random.default_rng([20261125, number])
    highest = {el: r[1] for el, r in file["validity"]["weight_percent"].items()}
    others = [element for element in highest if element not in always]
    count = random.integers(2, len(others) + 1)
    chosen = [*always, *random.permutation(others)[:count].tolist()]
    share = {
        el: 10.0 ** (-9.0 * random.random())
        if random.random() < 0.15
        else random.random()
        for el in chosen
    }
    percent = {el: highest[el] * share[el] for el in chosen}
    iron = max(100.0 - sum(percent.values()), LEAST_IRON)
    total = iron + sum(percent.values())
    steel = {"Fe": iron, **percent}
    celsius = random.uniform(*band)
    return {el: 100.0 * w / total for el, w in steel.items()}, celsius
