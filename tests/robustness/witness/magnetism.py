"""Magnetic ordering energy, Eq. (G5) to (G7)."""

import numpy as np

GAS_CONSTANT = 8.31446261815324  # J/(mol K), exact since 2019


def series(tau, p):
    """g and dg/dtau of Eq. (G6) and (G7) for the structure factor p."""
    k = 1.0 / p - 1.0
    a = 518.0 / 1125.0 + 11692.0 / 15975.0 * k
    ordered = tau.real < 1.0
    low = np.where(ordered, tau, 1.0)
    high = np.where(ordered, 1.0, tau)
    cold = 79.0 / (140.0 * p)
    m = 474.0 / 497.0 * k
    g_low = (
        1.0 - (cold / low + m * (low**3 / 6 + low**9 / 135 + low**15 / 600)) / a
    )
    d_low = (cold / low**2 - m * (low**2 / 2 + low**8 / 15 + low**14 / 40)) / a
    g_high = -(high**-5 / 10 + high**-15 / 315 + high**-25 / 1500) / a
    d_high = (high**-6 / 2 + high**-16 / 21 + high**-26 / 60) / a
    return np.where(ordered, g_low, g_high), np.where(ordered, d_low, d_high)


class Magnetism:
    """Of one phase at one temperature, from the polynomials of its two properties."""

    def __init__(self, constants, curie, moment, kelvin):
        self._p = constants["structure_factor"]
        self._divisor = constants["negative_value_divisor"]
        self._curie, self._moment, self._kelvin = curie, moment, kelvin

    def _effective(self, raw):
        """Magnitude of a negative value over the divisor, and the slope of that."""
        slope = np.where(raw.real < 0.0, -1.0 / self._divisor, 1.0)
        return raw * slope, slope

    def _parts(self, raw_curie, raw_moment):
        curie, curie_slope = self._effective(raw_curie)
        moment, moment_slope = self._effective(raw_moment)
        none = curie.real < 1e-3  # no order: the limit of the series is 0
        curie = np.where(none, 1e-3, curie)
        g, dg = series(self._kelvin / curie, self._p)
        rt, log = GAS_CONSTANT * self._kelvin, np.log(1.0 + moment)
        by_curie = -rt * log * dg * self._kelvin / curie**2
        by_moment = rt * g / (1.0 + moment)
        parts = rt * log * g, by_curie * curie_slope, by_moment * moment_slope
        return [np.where(none, 0.0, part) for part in parts]

    def value(self, y):
        """[J/mol of formula units]"""
        return self._parts(self._curie.value(y), self._moment.value(y))[0]

    def value_and_gradient(self, y):
        """The gradient has the shape of y."""
        curie, curie_gradient = self._curie.value_and_gradient(y)
        moment, moment_gradient = self._moment.value_and_gradient(y)
        value, by_curie, by_moment = self._parts(curie, moment)
        gradient = by_curie[..., None] * curie_gradient
        return value, gradient + by_moment[..., None] * moment_gradient
