"""Samples of the site-fraction space of a phase, where the linear program begins."""

from itertools import product

import numpy as np

POINTS = 120  # of each of the random kinds
SOFTENING = (1e-6, 1e-2)  # what an end member gives away to the other constituents
STEPS = (2.0, 1.1, 1.02)  # factors between neighbours


def end_members(phase, softening):
    """Every combination of one constituent per sublattice, softened."""
    corners = [range(part.start, part.stop) for part in phase.sublattices]
    points = np.array(
        [np.eye(phase.size)[list(c)].sum(axis=0) for c in product(*corners)]
    )
    for part in phase.sublattices:
        count = part.stop - part.start
        points[:, part] = (1.0 - softening) * points[:, part] + softening / count
    return points


def dirichlet(phase, random):
    """From well mixed to nearly pure."""
    points = np.empty((POINTS, phase.size))
    shape = 10.0 ** random.uniform(-1.0, 0.5, (POINTS, 1))
    for part in phase.sublattices:
        weights = random.gamma(shape, size=(POINTS, part.stop - part.start)) + 1e-12
        points[:, part] = weights / weights.sum(axis=1, keepdims=True)
    return points


def around_overall(phase, elements, x, random):
    """Metals near the overall composition, vacancies over many orders of magnitude."""
    points = np.empty((POINTS, phase.size))
    overall = dict(zip(elements, x))
    for part in phase.sublattices:
        names = [name for _, name in phase.constituents[part]]
        spread = np.exp(random.normal(0.0, 1.5, (POINTS, len(names))))
        weights = spread * np.array([overall.get(name, 1.0) for name in names])
        if "vacancy" in names:
            weights = np.ones_like(spread)
            for guest in (name for name in names if name != "vacancy"):
                filling = 10.0 ** random.uniform(-4.0, 2.0, POINTS)
                weights[:, names.index(guest)] = filling
        points[:, part] = weights / weights.sum(axis=1, keepdims=True)
    return points


def overall_in(phase, elements, x):
    """The overall composition as one point of a phase with vacancies on its second
    sublattice, beside carbon and what else is dissolved there."""
    overall = dict(zip(elements, x))
    metals = np.array(
        [overall[name] for _, name in phase.constituents[phase.sublattices[0]]]
    )
    guests, interstices = phase.sublattices[1], phase.sites[phase.sublattices[1].start]
    y = np.zeros(phase.size)
    y[phase.sublattices[0]] = metals / metals.sum()
    names = [name for _, name in phase.constituents[guests]]
    filled = [
        0.0 if name == "vacancy" else overall[name] / metals.sum() for name in names
    ]
    y[guests] = np.array(filled) * phase.sites[0] / interstices
    y[guests.start + names.index("vacancy")] = 1.0 - y[guests].sum()
    return y


def sample(phase, elements, x, random):
    """All samples of one phase, one in each row."""
    kinds = [end_members(phase, softening) for softening in SOFTENING]
    if phase.size > len(phase.sublattices):
        kinds += [dirichlet(phase, random), around_overall(phase, elements, x, random)]
    return np.concatenate(kinds)


def neighbours(phase, y):
    """The point, and one site fraction at a time a little larger or smaller."""
    points = [y]
    for part in phase.sublattices:
        if part.stop - part.start == 1:
            continue
        for i in range(part.start, part.stop):
            for factor in (*STEPS, *(1.0 / step for step in STEPS)):
                point = y.copy()
                point[i] *= factor
                point[part] /= point[part].sum()
                points.append(point)
    return np.array(points)


def halfway(phase, y):
    """Points between y and each constituent alone on its sublattice."""
    points = []
    for part in phase.sublattices:
        for i in range(part.start, part.stop if part.stop - part.start > 1 else 0):
            point = y.copy()
            point[part] *= 0.5
            point[i] += 0.5
            points.append(point)
    return points
