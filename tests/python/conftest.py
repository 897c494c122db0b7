"""Steels that several tests use."""

import gibbsteel as gs
import pytest

PUNCH = {"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0}
HIGH_SPEED = {"C": 0.9, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9, "Mn": 0.3, "Si": 0.3}


@pytest.fixture(scope="session")
def punch():
    return gs.Steel(PUNCH, name="punch heat 7")


@pytest.fixture(scope="session")
def first_edition():
    """For tests whose purpose needs its state: no standard deviations, no M23C6 in
    high-speed steels."""
    return gs.load_parameters(gs.parameter_files()["editions/2026-11-25.json"])


@pytest.fixture(scope="session")
def with_liquid():
    """The shipped file with the layer that adds liquid."""
    return gs.load_parameters(
        gs.parameter_files()["layers/liquid.json"],
        on_top_of=gs.default_parameters(),
    )


@pytest.fixture(scope="session")
def high_speed():
    return gs.Steel(HIGH_SPEED, name="punch heat 12")


@pytest.fixture(scope="session")
def state(high_speed):
    return high_speed.soak(celsius=1150)


@pytest.fixture
def nothing_left_behind(monkeypatch):
    """No figure is shown, no setting of matplotlib changes, all figures are closed."""
    matplotlib = pytest.importorskip("matplotlib")
    plt = pytest.importorskip("matplotlib.pyplot")
    monkeypatch.setattr(plt, "show", lambda *a, **k: pytest.fail("show() was called"))
    before = dict(matplotlib.rcParams)
    yield
    plt.close("all")
    assert dict(matplotlib.rcParams) == before
