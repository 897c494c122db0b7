"""Tolerance bands: equal to soaks, tables, pickles, progress, wrong arguments."""

import pickle
import signal

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel import quantities

TOLERANCES = {
    "ranges": {"C": (0.50, 0.60)},
    "standard_deviations": {"V": 0.05},
    "furnace_celsius": 10,
    "segregation_percent": 5,
}


@pytest.fixture(scope="module")
def band(punch):
    return punch.tolerance_band(celsius=1120, samples=64, **TOLERANCES)


def test_inputs_and_quantities(band):
    assert [(i.name, i.unit) for i in band.inputs] == [
        ("C", "wt%"),
        ("V", "wt%"),
        ("temperature", "C"),
        ("segregation", "% of alloy"),
    ]
    assert [q.label for q in band.quantities] == [
        "C in the matrix [wt%]",
        "carbide [vol%]",
        *[f"{kind} [vol%]" for kind in band.nominal.carbides],
        *[f"{symbol} in the matrix [wt%]" for symbol in ("Cr", "Mo", "W", "V")],
    ]
    assert band["carbide"].nominal == band.nominal.carbide_volume_percent
    assert band.segregated_carbon == "equal activity"
    with pytest.raises(gs.InputError) as error:
        band["hardness"]
    assert error.value.code == "gibbsteel.input.209"


def test_percentiles_are_those_of_the_samples(band):
    values = band.sample_values
    assert values.shape == (64, len(band.quantities))
    assert band.sample_inputs.shape == (64, 4)
    with pytest.raises(ValueError):
        values[0, 0] = 1.0
    for column, quantity in enumerate(band.quantities):
        # numpy is an independent implementation of the same definition (linear).
        expected = np.percentile(values[:, column], [5, 50, 95])
        assert quantity.sampled.percentiles == pytest.approx(list(expected), rel=1e-13)
        assert quantity.sampled.mean == pytest.approx(
            values[:, column].mean(), rel=1e-13
        )
        deviation = values[:, column].std(ddof=1)
        assert quantity.sampled.standard_deviation == pytest.approx(deviation, rel=1e-9)
        correlation = np.corrcoef(band.sample_inputs[:, 0], values[:, column])[0, 1]
        share = quantity.contributions[0].sampled_share
        assert share == pytest.approx(correlation**2, rel=1e-9)


def test_samples_are_soaks(punch):
    band = punch.tolerance_band(
        celsius=1120, ranges={"C": (0.5, 0.6)}, furnace_celsius=5, samples=8
    )
    for (carbon, celsius), values in zip(band.sample_inputs, band.sample_values):
        state = punch.changed(C=carbon).soak(celsius=celsius)
        assert values[0] == pytest.approx(state.matrix.weight_percent["C"], rel=1e-12)


def test_own_quantities_from_python(punch):
    own = gs.Quantity(
        "Cr over C",
        "",
        lambda s: s.matrix.weight_percent["Cr"] / s.matrix.weight_percent["C"],
    )
    band = punch.tolerance_band(
        celsius=1120,
        ranges={"C": (0.5, 0.6)},
        quantities=[own, quantities.carbon_activity()],
        samples=16,
        threads=2,
    )
    assert [q.name for q in band.quantities] == ["Cr over C", "carbon activity"]
    first = band["Cr over C"].first_order.standard_deviation
    assert band["Cr over C"].sampled.standard_deviation == pytest.approx(first, rel=0.2)

    def fail(state):
        raise RuntimeError("no such thing")

    with pytest.raises(RuntimeError, match="no such thing"):
        punch.tolerance_band(
            celsius=1120,
            ranges={"C": (0.5, 0.6)},
            quantities=[gs.Quantity("bad", "", fail)],
        )


def test_threads_and_seed(punch):
    def run(**options):
        return punch.tolerance_band(
            celsius=1120, samples=16, corners=False, **TOLERANCES, **options
        )

    one = run(threads=1)
    assert np.array_equal(one.sample_values, run(threads=3).sample_values)
    assert not np.array_equal(one.sample_values, run(seed=2).sample_values)


def test_pickle_repr_and_text(band):
    copy = pickle.loads(pickle.dumps(band))
    assert str(copy) == str(band)
    assert repr(copy) == repr(band)
    assert np.array_equal(copy.sample_values, band.sample_values)
    assert copy.inputs == band.inputs
    assert copy.phases == band.phases
    assert repr(band).startswith(
        "<punch heat 7 at 1120 C (2048 F), tolerance band, long-hold limit: C in the "
        "matrix 0."
    )
    assert "long-hold limit" in str(band)
    assert "injure" in str(band)
    assert max(map(len, str(band).splitlines())) < 140
    with pytest.raises(AttributeError):
        band.samples = 3


def test_to_frame(band):
    pytest.importorskip("pandas")
    frame = band.to_frame()
    assert list(frame["quantity"]) == [q.name for q in band.quantities]
    assert {"unit", "nominal", "percentile_5", "lowest_corner", "share_C"} <= set(frame)
    assert frame["highest_corner"][0] == band.quantities[0].highest_corner.value
    assert frame.attrs["parameters_hash"] == band.nominal.parameters_hash


def test_progress_cancel_and_interrupt(punch):
    seen = []
    options = {"celsius": 1120, "ranges": {"C": (0.5, 0.6)}, "samples": 96}
    punch.tolerance_band(**options, corners=False, progress=seen.append)
    assert seen == [32, 64, 96]
    part = punch.tolerance_band(**options, progress=lambda done: done < 64)
    assert part.cancelled and part.samples == 64
    assert "CANCELLED" in repr(part)

    def interrupt(done):
        signal.raise_signal(signal.SIGINT)

    assert punch.tolerance_band(**options, progress=interrupt).cancelled


def test_plus_or_minus_one_number(punch):
    options = {"celsius": 1120, "samples": 8, "corners": False}
    carbon = punch.analysis.given["C"]
    pairs = {"C": (carbon - 0.02, carbon + 0.02), "Co": (0.0, 0.1)}
    band = punch.tolerance_band(ranges={"C": 0.02, "Co": 0.1}, **options)
    assert str(band) == str(punch.tolerance_band(ranges=pairs, **options))


def test_plus_or_minus_more_than_there_is(punch):
    given = dict(punch.analysis.given)
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(celsius=1120, ranges={"C": 0.9, "V": 1.5, "Co": 0.1})
    assert str(error.value) == (
        f"[gibbsteel.input.270] ranges, C: is 0.9, plus or minus, of a steel with "
        f"{given['C']:g}; give (lowest, highest)\n"
        f"[gibbsteel.input.270] ranges, V: is 1.5, plus or minus, of a steel with "
        f"{given['V']:g}; give (lowest, highest)"
    )
    whole = punch.tolerance_band(
        celsius=1120, ranges={"V": given["V"]}, samples=8, corners=False
    )
    assert whole.samples == 8


def test_wrong_arguments(punch):
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(celsius=1120, ranges={"C": [0.5], "V": ("a", 2), "W": -1})
    remedy = "give (lowest, highest), or plus or minus one number: 0.02"
    assert str(error.value) == (
        f"[gibbsteel.input.270] ranges, C: is [0.5]; {remedy}\n"
        f"[gibbsteel.input.270] ranges, V: is ('a', 2); {remedy}\n"
        f"[gibbsteel.input.270] ranges, W: is -1; {remedy}"
    )
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(celsius=1120, furnace_celsius=5, segregated_carbon="none")
    assert str(error.value) == (
        "[gibbsteel.input.276] segregated_carbon: is 'none'; give 'equal activity', "
        "'scaled' or 'unchanged'"
    )
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(1120)
    assert error.value.code == "gibbsteel.input.211"
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(celsius=1120)
    assert error.value.code == "gibbsteel.input.277"


def test_functions_of_a_state_as_quantities(punch):
    def volume(state):
        return state.carbide_volume_percent

    given = [quantities.carbide_volume_percent(), volume]
    band = punch.tolerance_band(
        celsius=1120, furnace_celsius=10, samples=8, quantities=given
    )
    own, same = band["volume"], band["carbide"]
    assert own.nominal == same.nominal
    assert own.sampled.percentiles == same.sampled.percentiles
    alone = punch.tolerance_band(
        celsius=1120, furnace_celsius=10, samples=8, quantities=volume
    )
    assert alone["volume"].nominal == own.nominal
    with pytest.raises(gs.InputError) as error:
        punch.tolerance_band(celsius=1120, furnace_celsius=10, quantities=["C"])
    assert str(error.value) == (
        "[gibbsteel.input.255] target: 'C' is neither a Quantity nor a function of a "
        'State; give for instance gibbsteel.quantities.matrix("C")'
    )
