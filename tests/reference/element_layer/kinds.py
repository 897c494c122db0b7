"""Computes the quantities of records.json in this folder.

Kinds that are named here are added to those of `evaluate`, whose docstrings say what
the others read. A record of this folder may say `interstitial` (C or N) and `curve` (a
curve of the parameter set in a reaction).
"""

from evaluate import KINDS, composition, curie_maximum, gamma_loop, library, thermal
from evaluate.reaction import LOWEST
from evaluate.roots import bisect

DILUTE = 1e-4  # atom fraction


def formation_energy(record):
    """Gibbs energy of the reaction [kJ/mol]; entries name a phase or a curve."""
    return _reaction(record, record["celsius"] + 273.15) / 1000.0


def formation_enthalpy(record):
    kelvin = max(record["celsius"] + 273.15, LOWEST)
    return thermal.enthalpy(lambda t: _reaction(record, t), kelvin) / 1000.0


def reaction_rest_temperature(record):
    """Celsius at which the Gibbs energy of the reaction is zero."""
    low, high = record["search_celsius"]
    return bisect(lambda t: _reaction(record, t + 273.15), low, high)


def solubility_product_in(record):
    """[M][X]^n in wt% of the matrix phase beside MC, at the X that the record names.

    The total of X is adjusted until the phase holds `interstitial_wt`. The steel has
    M, 0.05 wt% and 1.5 times what the published product dissolves, so that MC
    is there; it is an error where it is not.
    """
    metal, guest = record["element"], record["interstitial"]
    wanted, phase = record["interstitial_wt"], record["phase"]
    total = 0.05 + 1.5 * record["value"] / wanted ** record["exponent"]

    def dissolved(amount):
        alloy = {**record["composition_wt"], metal: total, guest: amount}
        state = library.soak(record, composition=alloy)
        return library.phase(state, phase).weight_percent

    most = wanted + 0.35 * total
    amount = bisect(lambda a: dissolved(a)[guest] - wanted, wanted, most, width=1e-9)
    alloy = {**record["composition_wt"], metal: total, guest: amount}
    library.phase(library.soak(record, composition=alloy), "MC")
    found = dissolved(amount)
    return found[metal] * found[guest] ** record["exponent"]


def nitrogen_at_one_bar(record):
    """wt% N at which its potential is that of nitrogen gas of 1 bar."""
    gas = library.parameters().curve_value(
        "nitrogen, half of N2", record["celsius"] + 273.15
    )

    def above(amount):
        alloy = {**record["composition_wt"], "N": amount}
        state = library.soak(record, composition=alloy)
        return state.chemical_potential["N"] - gas

    return bisect(above, 1e-6, 2.0, width=1e-7)


def alpha_gamma_ratio(record):
    """Weight percent of the element in ferrite over that in austenite beside it."""
    return _boundary(record, "ferrite") / _boundary(record, "austenite")


def curie_rise(record):
    """Kelvin per atom percent of the element, in iron with next to none of it."""
    low, high = (curie_maximum.kelvin(record, x) for x in (0.0, DILUTE))
    return (high - low) / (100.0 * DILUTE)


def share_in_kind(record):
    """Part of the steel's element that is in all occurrences of the kind."""
    element, inside, all_of_it = record["element"], 0.0, 0.0
    for occurrence in library.soak(record).occurrences:
        amount = occurrence.mass_percent * occurrence.weight_percent[element]
        all_of_it += amount
        inside += amount if occurrence.kind == record["kind"] else 0.0
    return inside / all_of_it


def metal_share(record):
    """Atoms of the element per atom of metal, all occurrences of the kind together."""
    amount, metals = 0.0, 0.0
    for occurrence in library.soak(record).occurrences:
        if occurrence.kind != record["kind"]:
            continue
        moles = occurrence.mass_percent / occurrence.molar_mass
        fraction = occurrence.atom_fraction
        amount += moles * fraction[record["element"]]
        metals += moles * (1.0 - fraction.get("C", 0.0) - fraction.get("N", 0.0))
    if not metals:
        raise library.Absent("no " + record["kind"])
    return amount / metals


def total_volume(record):
    """Volume percent of all carbides and nitrides together."""
    return library.soak(record).carbide_volume_percent


def kind_volume(record):
    """Volume percent of all occurrences of the kind."""
    return _volume(record, record["composition_wt"])


def effect(record):
    """Change of the weight percent in the phase when `changed` is made."""
    return _weight_percent(record, _changed(record)) - _weight_percent(
        record, record["composition_wt"]
    )


def effect_on_volume(record):
    """Change of the volume percent of the kind when `changed` is made."""
    return _volume(record, _changed(record)) - _volume(record, record["composition_wt"])


def _changed(record):
    return {**record["composition_wt"], **record["changed"]}


def _weight_percent(record, alloy):
    state = library.soak(record, composition=alloy)
    if record["phase"] == "matrix":
        return state.matrix.weight_percent[record["element"]]
    return library.phase(state, record["phase"]).weight_percent[record["element"]]


def _volume(record, alloy):
    state = library.soak(record, composition=alloy)
    return sum(o.volume_percent for o in state.occurrences if o.kind == record["kind"])


def _reaction(record, kelvin):
    total = 0.0
    for entry in record["reaction"]:
        if "curve" in entry:
            energy = library.parameters().curve_value(entry["curve"], kelvin)
        else:
            energy = library.gibbs_energy(entry["phase"], entry["sites"], kelvin)
        total += entry["count"] * energy
    return total


def _boundary(record, phase):
    return gamma_loop._boundary({**record, "phase": phase}, record["celsius"])


ADDED = (
    formation_energy,
    formation_enthalpy,
    reaction_rest_temperature,
    solubility_product_in,
    nitrogen_at_one_bar,
    alpha_gamma_ratio,
    curie_rise,
    share_in_kind,
    metal_share,
    total_volume,
    kind_volume,
    effect,
    effect_on_volume,
)
composition.MOLAR_MASS.update({"Nb": 92.906, "Ti": 47.867, "N": 14.007})
KINDS.update({function.__name__: function for function in ADDED})
