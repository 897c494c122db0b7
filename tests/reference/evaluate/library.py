"""The only place in this suite that knows how gibbsteel is called."""

from contextlib import contextmanager
from functools import lru_cache

import gibbsteel as gs


class NotComputed(Exception):
    """The library gave no usable answer: the record has no computed value."""


class Absent(Exception):
    """The phase whose amount or composition was published is not there at all.

    This is an answer of the library, and so a miss, not a missing computation.
    """


_CHOSEN = []


def parameters():
    """The parameter set that the records are compared with; usually the shipped one."""
    return _CHOSEN[-1] if _CHOSEN else gs.default_parameters()


def use(chosen):
    """Compares with another parameter set from now on; None: the shipped one."""
    _CHOSEN[:] = [chosen] if chosen else []
    _soak.cache_clear()
    _phase_model.cache_clear()


@contextmanager
def using(chosen):
    """Compares with another parameter set inside the block."""
    before = _CHOSEN[:]
    use(chosen)
    try:
        yield
    finally:
        use(before[-1] if before else None)


def soak(record, celsius=None, composition=None, **changes):
    """Equilibrium of the record's steel; keyword arguments replace its settings.

    With `minutes` the timed soak of the steel annealed at `annealed` [C].
    """
    if composition is None:
        composition = record["composition_wt"]
    settings = {**record.get("soak", {}), **changes}
    state = _soak(
        tuple(sorted(composition.items())),
        float(record["celsius"] if celsius is None else celsius),
        tuple(sorted((key, _frozen(value)) for key, value in settings.items())),
    )
    if "minutes" not in record:
        return state
    try:
        return state.timed_soak(
            record["minutes"],
            annealed_celsius=record["annealed"],
            parameters=parameters(),
        ).state
    except gs.InputError as reason:
        raise NotComputed(str(reason)) from reason


def present(state):
    """Occurrences by kind; of two of one kind the one with the larger volume."""
    by_kind = {}
    for occurrence in state.occurrences:
        by_kind.setdefault(occurrence.kind, occurrence)
    return by_kind


def phase(state, name):
    """The occurrence of that kind. Raises Absent, naming what there is instead."""
    by_kind = present(state)
    if name not in by_kind:
        raise Absent(f"no {name}; present: {', '.join(sorted(by_kind))}")
    return by_kind[name]


def require(record, state):
    """Raises Absent unless all phases that the record names in `with` are there."""
    for name in record.get("with", []):
        phase(state, name)


def gibbs_energy(name, sites, kelvin):
    """Gibbs energy of one phase [J/mol of formula units].

    `sites` has one entry per sublattice: an element, "vacancy", or a dictionary of
    site fractions.
    """
    model, fractions = _model_and_fractions(name, sites)
    return model.gibbs_energy(kelvin=kelvin, site_fractions=fractions)


def curie_temperature(name, sites):
    """Curie temperature of one phase [K]; `sites` as above."""
    model, fractions = _model_and_fractions(name, sites)
    return model.curie_temperature(site_fractions=fractions)


def element_energy(symbol, kelvin):
    """Gibbs energy of an element in its stable form [J/mol], magnetic part included.

    Hence from the phase, not from the curve of the reference state, which leaves the
    magnetic part out. Alpha manganese is no phase of the file; it is paramagnetic above
    room temperature, so its curve is all there is.
    """
    if symbol == "Mn":
        return parameters().curve_value("manganese, alpha", kelvin)
    name = _STABLE_FORM.get(symbol, "ferrite")
    sites = [symbol] if name == "graphite" else [symbol, "vacancy"]
    return gibbs_energy(name, sites, kelvin)


_STABLE_FORM = {"C": "graphite", "Co": "M2C", "Ni": "austenite"}


def _model_and_fractions(name, sites):
    sites = [{entry: 1.0} if isinstance(entry, str) else entry for entry in sites]
    elements = sorted({key for entry in sites for key in entry} - {"vacancy"})
    model = _phase_model(name, tuple(elements))
    return model, [sites[c.sublattice].get(c.name, 0.0) for c in model.constituents]


@lru_cache(maxsize=None)
def _phase_model(name, elements):
    return parameters().phase_model(name, elements=list(elements))


@lru_cache(maxsize=None)
def _soak(composition, celsius, settings):
    alloy = dict(composition) or {"Fe": 100.0}  # a record without alloy
    steel = gs.Steel(alloy, parameters=parameters())
    options = {k: list(v) if isinstance(v, tuple) else v for k, v in settings}
    state = steel.soak(celsius=celsius, **options)
    if not state.usable:
        raise NotComputed(f"soak at {celsius:g} C: {state.solve_report.reason}")
    return state


def _frozen(value):
    return tuple(value) if isinstance(value, list) else value
