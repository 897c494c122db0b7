"""The tasks of compare_optimizers solved by SciPy through the library's Python module.

/usr/bin/python3 scipy_solvers.py TASKS.json OUT.json [NUMBER OF TASKS]

Energies and derivatives are those of PhaseModel.derivatives(): the time of the
interpreter, of the calls and of the temperature functions (evaluated at every call) is
inside.
"""

from __future__ import annotations

import json
import statistics
import sys
import time
import warnings
from collections.abc import Callable
from pathlib import Path

import numpy as np
import scipy
from posings import AmountsPosing, LogitsPosing, Posing, Slot, Task
from scipy import optimize

REPETITIONS = 5
MOST_SECONDS = 1.0  # for the repetitions of one solve
POINTS = 10_000

Answer = tuple[list[tuple[Slot, float, np.ndarray]], int, str]


def judge(task: Task, answer: Answer) -> dict:
    """Energy above the plane of the reference, and balance: as outcome.cpp."""
    sets, iterations, said = answer
    energy, balance = 0.0, -np.array(task.mole_fractions)
    for slot, amount, y in sets:
        d = slot.model.derivatives(site_fractions=y, kelvin=task.kelvin)
        atoms = slot.atoms @ y
        energy += amount * (d.value - atoms @ np.array(task.potentials))
        balance += amount * atoms
    numbers = {"gap": energy, "balance": float(np.abs(balance).max())}
    finite = {k: v if np.isfinite(v) else None for k, v in numbers.items()}
    return finite | {"iterations": iterations, "said": said}


def measure(task: Task, solve: Callable[[], Answer]) -> dict:
    """Median processor time of some repetitions, and what came out."""
    times: list[float] = []
    while len(times) < REPETITIONS and sum(times) < MOST_SECONDS:
        begin = time.process_time()
        answer = solve()
        times.append(time.process_time() - begin)
    timing = {"seconds": statistics.median(times), "repetitions": len(times)}
    return timing | judge(task, answer)


def slsqp(posing: LogitsPosing) -> Answer:
    """Sequential quadratic programming on the logits."""
    bounds = [(None, None)] * posing.size
    for variable in posing.amounts:
        bounds[variable] = (0.0, None)
    balance = {"type": "eq", "fun": posing.balance, "jac": posing.balance_gradient}
    result = optimize.minimize(
        posing.energy,
        posing.start(),
        jac=True,
        method="SLSQP",
        bounds=bounds,
        constraints=balance,
        options={"ftol": 1e-12, "maxiter": 1000},
    )
    return posing.answer(result.x), int(result.nit), str(result.message)


def trust_constr(posing: AmountsPosing, barrier: float) -> Answer:
    """Interior point with trust region on the amounts, exact Hessian."""
    matrix, right = posing.constraints()
    options = {
        "gtol": 1e-12,
        "xtol": 1e-14,
        "barrier_tol": 1e-12,
        "initial_barrier_parameter": barrier,
        "initial_barrier_tolerance": barrier,
        "maxiter": 400,
    }
    result = optimize.minimize(
        posing.energy,
        posing.start(),
        jac=True,
        hess=posing.hessian,
        method="trust-constr",
        bounds=optimize.Bounds(0.0, np.inf, keep_feasible=True),
        constraints=optimize.LinearConstraint(matrix, right, right),
        options=options,
    )
    return posing.answer(result.x), int(result.nit), str(result.message)


class SampledProgram:
    """Linear program over random compositions: half of them evenly distributed over
    the site fractions, half around the naive start, the same number for each set."""

    def __init__(self, posing: Posing) -> None:
        random = np.random.default_rng(1)
        self.task = posing.task
        self.columns = []
        for slot, entry in zip(posing.slots, posing.sets, strict=True):
            for k in range(POINTS // len(posing.slots)):
                around = np.maximum(5.0 * np.array(entry["y"]), 0.05)
                y = np.ones(slot.atoms.shape[1])
                for group in slot.groups:
                    members = slot.free[group]
                    weight = np.ones(len(members)) if k % 2 else around[members]
                    y[members] = np.maximum(random.dirichlet(weight), 1e-12)
                    y[members] /= y[members].sum()
                self.columns.append((slot, y))
                if len(slot.free) == 0:
                    break  # one composition only
        energies, atoms = [], []
        for slot, y in self.columns:
            energies.append(posing.derivatives(slot, y).value)
            atoms.append(slot.atoms @ y)
        self.counts = np.sum(atoms, axis=1)
        self.cost = np.array(energies) / self.counts / posing.rt
        self.matrix = (np.array(atoms) / self.counts[:, None]).T

    def solve(self) -> Answer:
        """The mixture of the points with the lowest energy."""
        b = np.array(self.task.mole_fractions)
        result = optimize.linprog(self.cost, A_eq=self.matrix, b_eq=b, method="highs")
        if result.x is None:
            return [], int(result.nit), str(result.message)
        used = np.flatnonzero(result.x > 0.0)
        sets = [
            (self.columns[i][0], result.x[i] / self.counts[i], self.columns[i][1])
            for i in used
        ]
        return sets, int(result.nit), "optimal"


def solve_task(number: int, task: Task) -> list[dict]:
    """Every solver from every start."""
    runs = []
    models = task.models()

    def add(solver: str, start: str, solve: Callable[[], Answer]) -> None:
        names = {"solver": solver, "start": start, "task": number}
        runs.append(names | measure(task, solve))

    for start, barrier in (("naive", 1e-5), ("warm", 1e-9)):
        logits = LogitsPosing(task, models, getattr(task, start))
        add("SciPy SLSQP", start, lambda logits=logits: slsqp(logits))
        amounts = AmountsPosing(task, models, getattr(task, start))
        solver = "SciPy trust-constr, low barrier"
        add(solver, start, lambda a=amounts, b=barrier: trust_constr(a, b))
    program = SampledProgram(Posing(task, models, task.naive))
    add("SciPy HiGHS, 10^4 points", "none", program.solve)
    return runs


def main(tasks: Path, out: Path, count: int) -> None:
    """Solve the tasks and write the runs."""
    warnings.simplefilter("ignore")  # solvers warn of what the table shows
    np.seterr(all="ignore")
    entries = json.loads(tasks.read_text(encoding="utf-8"))["tasks"]
    runs = []
    for number, entry in enumerate(entries[:count]):
        runs += solve_task(number, Task.read(entry))
    result = {"scipy": scipy.__version__, "numpy": np.__version__, "runs": runs}
    out.write_text(json.dumps(result, indent=1), encoding="utf-8")


if __name__ == "__main__":
    most = int(sys.argv[3]) if len(sys.argv) > 3 else 10**6
    main(Path(sys.argv[1]), Path(sys.argv[2]), most)
