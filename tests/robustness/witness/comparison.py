"""One random condition, solved by the library and by the witness."""

import json
from dataclasses import dataclass

import gibbsteel as gs
import numpy as np

from .equilibrium import solve
from .parameter_file import shipped
from .random_steels import SOAKS, draw

ENERGY = 1e-3  # J/mol of atoms: most by which either may lie above the other
POTENTIAL = 1e-2  # J/mol: most by which a chemical potential may differ
AMOUNT = 1e-3  # percent of the atoms: most by which an amount may differ


@dataclass
class Comparison:
    """What the two found: energies in J/mol of atoms, amounts in percent of them."""

    case: int
    condition: str
    usable: bool  # the library's own word
    energy_above: float  # of the library above the witness
    gap: float  # how far the witness suspects that it lies too high
    recomputed: float  # energy of the library's mixture in NumPy, less what it states
    balance: float  # largest relative error of an element in that mixture
    polished: bool
    rounds: int  # of the witness
    largest_potential: float  # difference of an element's chemical potential, J/mol
    only_library: dict
    only_witness: dict
    largest_amount: float  # difference of a phase that both have

    @property
    def library_above(self):
        """A fault of the library."""
        return self.usable and self.energy_above > ENERGY

    @property
    def witness_above(self):
        """The witness stopped short."""
        return self.usable and -self.energy_above > ENERGY

    @property
    def same_energy(self):
        """As it should be."""
        return self.usable and abs(self.energy_above) <= ENERGY

    @property
    def same_potentials(self):
        """Of every element, traces too."""
        return self.largest_potential <= POTENTIAL

    @property
    def same_phases(self):
        """Of those of which there is more than AMOUNT; and as much of each."""
        alone = [*self.only_library.values(), *self.only_witness.values()]
        return max([self.largest_amount, *alone]) <= AMOUNT

    @property
    def same(self):
        """Nothing to explain."""
        return self.same_energy and self.same_phases and self.same_potentials

    def line(self):
        """One line that says where the two differ."""
        if not self.usable:
            return f"case {self.case}: {self.condition}: flagged by the library"
        text = f"case {self.case}: {self.condition}: library - witness "
        text += f"{self.energy_above:+.1e} J/mol, witness suspects {self.gap:.1e}, "
        text += f"{'polished' if self.polished else 'not polished'} in {self.rounds} "
        text += f"rounds, potentials differ by {self.largest_potential:.1e} J/mol, "
        text += f"amounts by {self.largest_amount:.1e} %"
        for who, alone in (
            ("library", self.only_library),
            ("witness", self.only_witness),
        ):
            for name, amount in alone.items():
                text += f", only the {who} has {amount:.2g} % {name}"
        return text


def kind(file, phase, y):
    """Name of an occurrence by the rule of the file for a second occurrence."""
    rule = file["phases"][phase.name].get("second_occurrence")
    if rule is None:
        return phase.name
    when = rule["when"]
    counted = when["constituent"]
    counted = [counted] if isinstance(counted, str) else counted
    places = [(when["sublattice"] - 1, name) for name in counted]
    filled = sum(
        y[phase.constituents.index(place)]
        for place in places
        if place in phase.constituents
    )
    return rule["name"] if filled > when["site_fraction_above"] else phase.name


def _by_name(pairs):
    """Amounts by kind; the second and third of a kind, smaller ones, get a number."""
    found, counts = {}, {}
    for name, amount in sorted(pairs, key=lambda pair: -pair[1]):
        counts[name] = counts.get(name, 0) + 1
        found[name if counts[name] == 1 else f"{name} {counts[name]}"] = amount
    return found


def recompute(state, phases, x):
    """(Gibbs energy, largest relative balance error) of the library's mixture.

    By the energies of the witness: it says whether the library's energy can be had.
    """
    energy, contents = 0.0, np.zeros(len(x))
    by_name = {phase.name: phase for phase in phases}
    for occurrence in state.occurrences:
        phase = by_name[occurrence.phase]
        y = np.array([occurrence.site_fractions[s][c] for s, c in phase.constituents])
        formulas = occurrence.mole_percent / 100.0 / (y @ phase.atoms)
        energy += formulas * phase.value(y)
        contents += formulas * (y @ phase.element_matrix)
    return energy, np.abs(contents / x - 1.0).max()


def compare(case, parameters=None, always=("C",), band=SOAKS, **soak_options):
    """The numbered case of random_steels.py; options go to the library's soak.

    `parameters`: another set than the shipped one; `always` and `band`: as in draw().
    """
    file = shipped()
    if parameters is not None:
        file = json.loads(gs.write_parameters(parameters))
    percent, celsius = draw(file, case, always, band)
    added = {element: w for element, w in percent.items() if element != "Fe"}
    steel = gs.Steel(added, parameters=parameters)
    state = steel.soak(celsius=celsius, **soak_options)
    witness = solve(file, percent, celsius)
    energy, balance = recompute(state, witness.phases, witness.x)
    ours = _by_name(
        (kind(file, witness.phases[column.phase], column.y), amount)
        for column, amount in zip(witness.columns, witness.percents)
    )
    theirs = _by_name((o.kind, o.mole_percent) for o in state.occurrences)
    both = [abs(ours[name] - theirs[name]) for name in ours.keys() & theirs.keys()]
    return Comparison(
        case=case,
        condition=f"{celsius:.0f} C, {len(percent)} elements",
        usable=state.usable,
        energy_above=state.gibbs_energy - witness.gibbs_energy,
        gap=max(witness.gap, 0.0),
        recomputed=energy - state.gibbs_energy,
        balance=balance,
        polished=witness.polished,
        rounds=witness.rounds,
        largest_potential=max(
            abs(state.chemical_potential[e] - mu) if state.usable else float("nan")
            for e, mu in zip(percent, witness.potentials)
        ),
        only_library={n: a for n, a in theirs.items() if n not in ours},
        only_witness={n: a for n, a in ours.items() if n not in theirs},
        largest_amount=float(np.max(both, initial=0.0)),
    )


def _counts(comparisons):
    same = [c for c in comparisons if c.same_energy]
    phases = sum(c.same_phases for c in same)
    potentials = sum(c.same_potentials for c in same)
    return {
        "conditions": len(comparisons),
        f"same G within {ENERGY:g} J/mol of atoms": len(same),
        f"of these, same phases and amounts within {AMOUNT:g} %": phases,
        f"of these, same potentials within {POTENTIAL:g} J/mol": potentials,
        "library above the witness": sum(c.library_above for c in comparisons),
        "witness stopped short": sum(c.witness_above for c in comparisons),
        "flagged by the library": sum(not c.usable for c in comparisons),
    }


def _largest(comparisons, name):
    return max((abs(getattr(c, name)) for c in comparisons), default=0.0)


def summary(comparisons):
    """Counts, largest differences, and every case in which the two differ."""
    same = [c for c in comparisons if c.same_energy]
    short = [c for c in comparisons if c.witness_above]
    usable = [c for c in comparisons if c.usable]
    lines = [f"{count:6d}  {what}" for what, count in _counts(comparisons).items()]
    lines += [
        "largest differences where G is the same: "
        f"G {_largest(same, 'energy_above'):.1e} J/mol, "
        f"amount {_largest(same, 'largest_amount'):.1e} % of the atoms, "
        f"potential {_largest(same, 'largest_potential'):.1e} J/mol",
        "the library's mixtures computed by the witness: "
        f"G differs by {_largest(usable, 'recomputed'):.1e} J/mol, "
        f"balance by {_largest(usable, 'balance'):.1e} of an element",
        f"witness stops short by {_largest(short, 'energy_above'):.1e} J/mol at most",
    ]
    lines += [c.line() for c in comparisons if not c.same]
    return "\n".join(lines)
