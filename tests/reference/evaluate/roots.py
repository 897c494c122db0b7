"""One-dimensional searches. They refuse instead of guessing."""

from .library import NotComputed


def bisect(function, low, high, width=1e-4):
    """Root of a function that changes sign between low and high."""
    f_low = function(low)
    if f_low * function(high) > 0.0:
        raise NotComputed(f"no change of sign between {low:g} and {high:g}")
    while high - low > width:
        middle = 0.5 * (low + high)
        f_middle = function(middle)
        if f_low * f_middle > 0.0:
            low, f_low = middle, f_middle
        else:
            high = middle
    return 0.5 * (low + high)


def first_true(test, low, high, step, width=0.005):
    """Lowest x at which `test` turns from false to true, scanning upwards."""
    if test(low):
        raise NotComputed(f"already so at {low:g}")
    x = low
    while x < high:
        following = min(x + step, high)
        if test(following):
            return _boundary(test, x, following, width)
        x = following
    raise NotComputed(f"never so between {low:g} and {high:g}")


def largest(function, low, high, width):
    """Maximum of a function with one peak between low and high: (x, value)."""
    ratio = 0.6180339887498949
    a, b = low, high
    x1, x2 = b - ratio * (b - a), a + ratio * (b - a)
    f1, f2 = function(x1), function(x2)
    while b - a > width:
        if f1 > f2:
            b, x2, f2 = x2, x1, f1
            x1 = b - ratio * (b - a)
            f1 = function(x1)
        else:
            a, x1, f1 = x1, x2, f2
            x2 = a + ratio * (b - a)
            f2 = function(x2)
    return (x1, f1) if f1 > f2 else (x2, f2)


def _boundary(test, low, high, width):
    while high - low > width:
        middle = 0.5 * (low + high)
        if test(middle):
            high = middle
        else:
            low = middle
    return 0.5 * (low + high)
