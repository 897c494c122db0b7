"""One random condition, solved by the library and by the witness."""

from dataclasses import dataclass

import gibbsteel as gs
import numpy as np

from .equilibrium import solve
from .parameter_file import shipped
from .random_steels import draw

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
    gap: float  # how far the witness knows that it may lie too high
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
        text += f"{self.energy_above:+.1e} J/mol, witness knows {self.gap:.1e}, "
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
    place = (when["sublattice"] - 1, when["constituent"])
    if place not in phase.constituents:
        return phase.name
    above = y[phase.constituents.index(place)] > when["site_fraction_above"]
    return rule["name"] if above else phase.name


def _by_name(pairs):
    """Amounts by kind; the second and third of a kind, smaller ones, get a number."""
    found, counts = {}, {}
    for name, amount in sorted(pairs, key=lambda pair: -pair[1]):
        counts[name] = counts.get(name, 0) + 1
        found[name if counts[name] == 1 else f"{name} {counts[name]}"] = amount
    return found


def compare(case, **soak_options):
    """The numbered case of random_steels.py; options go to the library's soak."""
    file = shipped()
    percent, celsius = draw(file, case)
    added = {element: w for element, w in percent.items() if element != "Fe"}
    state = gs.Steel(added).soak(celsius=celsius, **soak_options)
    witness = solve(file, percent, celsius)
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


def summary(comparisons):
    """Counts, largest differences, and every case in which the two differ."""
    same = [c for c in comparisons if c.same_energy]
    short = [c for c in comparisons if c.witness_above]
    counts = {
        "conditions": len(comparisons),
        f"same G within {ENERGY:g} J/mol": len(same),
        f"of these, same phases and amounts within {AMOUNT:g} %": sum(
            c.same_phases for c in same
        ),
        f"of these, same potentials within {POTENTIAL:g} J/mol": sum(
            c.same_potentials for c in same
        ),
        "library above the witness": sum(c.library_above for c in comparisons),
        "witness stopped short": len(short),
        "flagged by the library": sum(not c.usable for c in comparisons),
    }
    lines = [f"{count:6d}  {what}" for what, count in counts.items()]
    if same:
        energy = max(abs(c.energy_above) for c in same)
        amount = max(c.largest_amount for c in same)
        potential = max(c.largest_potential for c in same)
        lines += [
            f"largest differences where G is the same: {energy:.1e} J/mol of atoms, "
            f"{amount:.1e} % of the atoms, potential {potential:.1e} J/mol"
        ]
    if short:
        most = max(-c.energy_above for c in short)
        lines.append(f"the witness stopped short by at most {most:.1e} J/mol")
    lines += [c.line() for c in comparisons if not c.same]
    return "\n".join(lines)
