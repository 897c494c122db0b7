"""Screens punch steels on a cluster of worker processes, through Dask.

    screen_on_dask.py                  two workers on this machine
    screen_on_dask.py ADDRESS          the workers of a scheduler that is running

The tool shop wants every cold-heading punch steel of five elements that keeps at least
2 vol% carbide at 1120 C and reaches 63 HRC as quenched. This is a small part of that
table; screening_on_a_cluster.md beside this file says what changes for a large one.
"""

import sys
from collections import deque
from itertools import product

import gibbsteel as gs
import numpy as np
from distributed import Client

ELEMENTS = ["C", "Cr", "Mo", "W", "V"]
SETTINGS = {"celsius": 1120, "quantities": [gs.quantities.hardness_hrc()]}


def candidates():
    """Weight percents, one row per steel."""
    carbon, chromium = np.linspace(0.50, 0.80, 11), [4.0, 4.5]
    molybdenum, tungsten, vanadium = [2.5, 3.0], [0.0, 2.0], [1.0, 1.5]
    return np.array([*product(carbon, chromium, molybdenum, tungsten, vanadium)])


def connected(address=None):
    """The workers of a scheduler, or two processes on this machine."""
    if address is not None:
        return Client(address)
    return Client(n_workers=2, threads_per_worker=1, dashboard_address=None)


def screened(client, heats, pieces, screen=gs.screen, **settings):
    """Tables of the pieces, in order.

    Two pieces per core are under way at a time, so neither the scheduler nor this
    process ever holds more. A piece whose worker dies is sent to another one.
    """
    ahead = 2 * sum(client.nthreads().values())
    under_way = deque()
    for piece in pieces:
        arguments = (screen, heats[piece], ELEMENTS)
        future = client.submit(*arguments, threads=1, pure=False, **settings)
        under_way.append(future)
        if len(under_way) >= ahead:
            yield under_way.popleft().result()
    while under_way:
        yield under_way.popleft().result()


def main():
    heats = candidates()
    # Ten seconds a piece is the default. This example is smaller than that.
    pieces = gs.screen_pieces(heats, ELEMENTS, seconds=0.1, **SETTINGS)
    with connected(*sys.argv[1:]) as client:
        table = gs.join_screens(list(screened(client, heats, pieces, **SETTINGS)))
    print(f"{len(heats)} steels at 1120 C: {table!r}")
    here = gs.screen(heats, ELEMENTS, **SETTINGS)
    print(f"the same bits as in this process: {table == here}")
    print()

    hardness = table.quantity[:, 0]
    wanted = table.usable & (table.carbide_volume_percent >= 2.0) & (hardness >= 63.0)
    print(f"{wanted.sum()} keep 2 vol% carbide and reach 63 HRC; the hardest five:")
    print("    " + "".join(f"{symbol:>6}" for symbol in ELEMENTS) + "  carbide   HRC")
    best = sorted(np.flatnonzero(wanted), key=lambda row: -hardness[row])[:5]
    for row in best:
        numbers = "".join(f"{percent:6.2f}" for percent in heats[row])
        volume = table.carbide_volume_percent[row]
        print(f"    {numbers}  {volume:7.2f}  {hardness[row]:4.1f}")
    print("Shop soaks are minutes: they leave more carbide. Try coupons first.")


if __name__ == "__main__":  # workers import this file
    main()
