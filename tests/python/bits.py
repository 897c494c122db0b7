"""Every number of a state as text that keeps all bits; times are left out."""

import gibbsteel as gs


def bits_of(state: gs.State) -> list[str]:
    """Names with hexadecimal numbers."""
    found = [state.gibbs_energy.hex(), state.carbon_activity.hex()]
    lists = [state.chemical_potential, state.driving_force, state.matrix.weight_percent]
    for occurrence in state.occurrences:
        found.append(f"{occurrence.name} {occurrence.volume_percent.hex()}")
        lists += [occurrence.weight_percent, *occurrence.site_fractions]
    for values in lists:
        found += [f"{name} {value.hex()}" for name, value in values.items()]
    return found
