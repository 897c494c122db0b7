"""The two ways of posing the task, for SciPy: the same as amounts_posing.hpp and
logits_posing.hpp, with energies and derivatives from the library's PhaseModel."""

from __future__ import annotations

from dataclasses import dataclass

import gibbsteel as gs
import numpy as np
from scipy import sparse

GAS_CONSTANT = 8.31446261815324  # [J/(mol K)]
VANISHING = 1e-9  # amounts below are no phase


@dataclass
class Task:
    """One entry of `tasks` in the file that compare_optimizers writes."""

    name: str
    elements: list[str]
    mole_fractions: list[float]
    kelvin: float
    phases: list[str]
    potentials: list[float]
    naive: list[dict]
    warm: list[dict]

    @classmethod
    def read(cls, entry: dict) -> Task:
        """From JSON, what is not needed here left out."""
        return cls(**{name: entry[name] for name in cls.__annotations__})

    def models(self) -> list[gs.PhaseModel]:
        """The phases that the sets name by their index."""
        file = gs.default_parameters()
        return [file.phase_model(name, self.elements) for name in self.phases]


class Slot:
    """One set: its model, its place among the variables, atoms per constituent."""

    def __init__(self, model: gs.PhaseModel, elements: list[str], first: int) -> None:
        constituents = model.constituents
        self.model = model
        self.first = first
        self.atoms = np.zeros((len(elements), len(constituents)))
        for i, constituent in enumerate(constituents):
            if constituent.name in elements:
                self.atoms[elements.index(constituent.name), i] = model.sites[i]
        sublattice = np.array([c.sublattice for c in constituents])
        lists = [np.flatnonzero(sublattice == s) for s in np.unique(sublattice)]
        # Constituents alone on their sublattice are fixed at 1 and not variables.
        groups = [members for members in lists if len(members) > 1]
        self.free = np.concatenate(groups) if groups else np.array([], dtype=int)
        ends = np.cumsum([0, *map(len, groups)])
        self.groups = [slice(a, b) for a, b in zip(ends[:-1], ends[1:], strict=True)]

    @property
    def variables(self) -> slice:
        """Where the free site fractions stand."""
        return slice(self.first + 1, self.first + 1 + len(self.free))


class Posing:
    """What both share."""

    def __init__(self, task: Task, models: list[gs.PhaseModel], sets: list[dict]):
        self.task = task
        self.sets = sets
        self.rt = GAS_CONSTANT * task.kelvin
        self.slots: list[Slot] = []
        self.size = 0
        for entry in sets:
            self.slots.append(Slot(models[entry["phase"]], task.elements, self.size))
            self.size += 1 + len(self.slots[-1].free)
        self.amounts = [slot.first for slot in self.slots]

    def derivatives(self, slot: Slot, y: np.ndarray) -> gs.PhaseDerivatives:
        """Energy, gradient and Hessian: the library gives them together."""
        return slot.model.derivatives(site_fractions=y, kelvin=self.task.kelvin)

    def fractions(self, slot: Slot, x: np.ndarray) -> np.ndarray:
        """Site fractions of a set."""
        raise NotImplementedError

    def answer(self, x: np.ndarray) -> list[tuple[Slot, float, np.ndarray]]:
        """Sets that are present, site fractions normalized."""
        found = []
        for slot in self.slots:
            if x[slot.first] > VANISHING:
                y = np.maximum(self.fractions(slot, x), 0.0)
                for group in slot.groups:
                    y[slot.free[group]] /= y[slot.free[group]].sum()
                found.append((slot, x[slot.first], y))
        return found


class LogitsPosing(Posing):
    """Posing B: amounts and logits; the element balance is not linear."""

    def start(self) -> np.ndarray:
        """Variables of the start."""
        x = np.zeros(self.size)
        for slot, entry in zip(self.slots, self.sets, strict=True):
            x[slot.first] = entry["amount"]
            y = np.array(entry["y"])[slot.free]
            x[slot.variables] = np.log(np.maximum(y, 1e-300))
        return x

    def fractions(self, slot: Slot, x: np.ndarray) -> np.ndarray:
        """Softmax on each sublattice."""
        y = np.ones(slot.atoms.shape[1])
        u = x[slot.variables]
        for group in slot.groups:
            e = np.exp(u[group] - u[group].max())
            y[slot.free[group]] = np.maximum(e / e.sum(), 1e-300)
        return y

    def energy(self, x: np.ndarray) -> tuple[float, np.ndarray]:
        """Value and gradient."""
        total, gradient = 0.0, np.zeros(self.size)
        for slot in self.slots:
            y = self.fractions(slot, x)
            d = self.derivatives(slot, y)
            total += x[slot.first] * d.value
            gradient[slot.first] = d.value
            yg = (y * d.dy)[slot.free]
            for group in slot.groups:
                yg[group] -= y[slot.free[group]] * yg[group].sum()
            gradient[slot.variables] = x[slot.first] * yg
        return total / self.rt, gradient / self.rt

    def balance(self, x: np.ndarray) -> np.ndarray:
        """Element balance, 0 where it holds."""
        total = -np.array(self.task.mole_fractions)
        for slot in self.slots:
            total += x[slot.first] * (slot.atoms @ self.fractions(slot, x))
        return total

    def balance_gradient(self, x: np.ndarray) -> np.ndarray:
        """Its derivatives, elements x variables."""
        out = np.zeros((len(self.task.elements), self.size))
        for slot in self.slots:
            y = self.fractions(slot, x)
            out[:, slot.first] = slot.atoms @ y
            part = (slot.atoms * y)[:, slot.free]
            for group in slot.groups:
                sums = part[:, group].sum(axis=1)
                part[:, group] -= np.outer(sums, y[slot.free[group]])
            out[:, slot.variables] = x[slot.first] * part
        return out


class AmountsPosing(Posing):
    """Posing A: amounts and amounts times site fractions; constraints are linear."""

    def start(self) -> np.ndarray:
        """Variables of the start."""
        x = np.zeros(self.size)
        for slot, entry in zip(self.slots, self.sets, strict=True):
            x[slot.first] = entry["amount"]
            x[slot.variables] = entry["amount"] * np.array(entry["y"])[slot.free]
        return x

    def fractions(self, slot: Slot, x: np.ndarray) -> np.ndarray:
        """Site fractions of a set."""
        y = np.ones(slot.atoms.shape[1])
        y[slot.free] = x[slot.variables] / x[slot.first]
        return y

    def constraints(self) -> tuple[sparse.csr_matrix, np.ndarray]:
        """Matrix and right-hand side of element balance and sublattice sums."""
        balance = np.zeros((len(self.task.elements), self.size))
        sums = []
        for slot in self.slots:
            fixed = np.ones(slot.atoms.shape[1])
            fixed[slot.free] = 0.0
            balance[:, slot.first] = slot.atoms @ fixed
            balance[:, slot.variables] = slot.atoms[:, slot.free]
            for group in slot.groups:
                row = np.zeros(self.size)
                row[slot.first] = -1.0
                row[slot.variables][group] = 1.0
                sums.append(row)
        right = np.concatenate([self.task.mole_fractions, np.zeros(len(sums))])
        return sparse.csr_matrix(np.vstack([balance, *sums])), right

    def energy(self, x: np.ndarray) -> tuple[float, np.ndarray]:
        """Value and gradient."""
        total, gradient = 0.0, np.zeros(self.size)
        for slot in self.slots:
            y = self.fractions(slot, x)
            d = self.derivatives(slot, y)
            total += x[slot.first] * d.value
            gradient[slot.first] = d.value - y[slot.free] @ d.dy[slot.free]
            gradient[slot.variables] = d.dy[slot.free]
        return total / self.rt, gradient / self.rt

    def hessian(self, x: np.ndarray) -> sparse.csr_matrix:
        """One block for each set."""
        blocks = []
        for slot in self.slots:
            y = self.fractions(slot, x)
            h = self.derivatives(slot, y).dy2[np.ix_(slot.free, slot.free)]
            free = y[slot.free]
            hy = h @ free
            corner = np.array([[free @ hy]])
            block = np.block([[corner, -hy[None, :]], [-hy[:, None], h]])
            blocks.append(block / (x[slot.first] * self.rt))
        return sparse.block_diag(blocks, format="csr")
