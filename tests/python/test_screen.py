"""Many compositions at many temperatures: arrays in, arrays out."""

import os
import pickle
import signal
import subprocess
import sys
import threading
from pathlib import Path

import gibbsteel as gs
import numpy as np
import pytest

PUNCH = ["C", "Cr", "Mo", "W", "V", "P"]
HEATS = [[0.55, 4.5, 2.75, 2.0, 1.0, 0.0], [0.62, 4.1, 3.5, 0.0, 1.2, 0.02]]
CELSIUS = [1000, 1120]


def chromium(count):
    """Compositions that are quick to solve, none like another."""
    i = np.arange(count)
    return np.column_stack([0.4 + 0.01 * (i % 90), 1.0 + 0.04 * i])


@pytest.fixture(scope="module")
def heats():
    return chromium(150)


@pytest.fixture(scope="module")
def whole(heats):
    return gs.screen(heats, ["C", "Cr"], celsius=950, threads=1)


def refused(call, *expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == "\n".join(expected)


@pytest.fixture(scope="module")
def table():
    wanted = [gs.quantities.hardness_hrc(), gs.quantities.mass_percent("M6C")]
    return gs.screen(HEATS, PUNCH, celsius=CELSIUS, quantities=wanted)


@pytest.mark.parametrize("row", range(4))
def test_every_row_is_the_single_soak_of_its_steel(table, row):
    steel = gs.Steel(dict(zip(PUNCH, HEATS[row // 2], strict=True)))
    state = steel.soak(celsius=CELSIUS[row % 2])
    assert bool(table.usable[row]) == state.usable
    certificate = table.certificate_names[table.certificate[row]]
    assert certificate == state.solve_report.certificate
    own = {w.code for w in state.warnings}
    of_hardness = {w.code for w in state.hardening().warnings}
    assert table.warnings[row] == len(own | of_hardness)
    assert table.carbide_volume_percent[row] == state.carbide_volume_percent
    assert table.carbon_activity[row] == state.carbon_activity
    assert table.gibbs_energy[row] == state.gibbs_energy
    for kind, percent in zip(table.kinds, table.volume_percent[row], strict=True):
        assert percent == state.volume_percent_of(kind)
    matrix = dict(zip(table.elements, table.matrix_weight_percent[row], strict=True))
    assert {e: p for e, p in matrix.items() if p} == state.matrix.weight_percent
    assert table.quantity[row, 0] == gs.quantities.hardness_hrc().value(state)
    assert table.quantity[row, 1] == gs.quantities.mass_percent("M6C").value(state)


def test_arrays_are_read_only_and_keep_the_table(table):
    volumes = gs.screen([[0.8]], ["C"], celsius=700).volume_percent
    assert volumes[0].sum() > 10.0
    with pytest.raises(ValueError, match="read-only"):
        table.status[0] = 0
    assert table.quantities == ["as-quenched hardness [HRC]", "M6C [mass%]"]
    told = "warnings: 307 in 2, 331 in 1"
    assert repr(table) == f"<ScreenTable: 4 rows, long-hold limit, 4 usable, {told}>"
    assert table.count() == {"usable": 4}


def test_pickle(table):
    again = pickle.loads(pickle.dumps(table))
    assert again == table
    assert again != gs.screen(HEATS, PUNCH, celsius=CELSIUS)


def test_a_damaged_pickle_is_refused(table):
    mark, fields = table.__reduce_ex__(4)[2]
    assert mark == "gibbsteel ScreenTable 3"
    for at, wrong in ((9, b"\x0c" * 4), (10, b"\xff" * 16), (8, 10**12), (15, b"")):
        damaged = (*fields[:at], wrong, *fields[at + 1 :])
        refused(
            lambda damaged=damaged: gs.ScreenTable.__new__(gs.ScreenTable).__setstate__(
                (mark, damaged)
            ),
            "[gibbsteel.input.258] pickle of ScreenTable: is damaged: its fields are "
            "not those of the class; make the value again from its steel",
        )


def test_each_composition_at_its_own_temperature(table):
    paired = gs.screen(HEATS, PUNCH, fahrenheit=[1832, 2048], one_per_composition=True)
    assert len(paired) == 2
    kelvin = [(1832 - 32) / 1.8 + 273.15, (2048 - 32) / 1.8 + 273.15]
    as_array = gs.screen(
        HEATS, PUNCH, kelvin=np.array(kelvin), one_per_composition=True
    )
    assert paired == as_array
    np.testing.assert_allclose(paired.gibbs_energy, table.gibbs_energy[[0, 3]])


def test_settings_are_those_of_steels_and_soaks():
    names = ["C", "Cr", "Ti", "V", "N"]
    heat = [1.2, 1.5, 0.05, 0.4, 0.02]
    soak = {"celsius": 700, "graphite": True, "suppressed": ["M7C3", "M23C6"]}
    soak |= {"at_soak_temperature": True, "certify": "proof"}
    table = gs.screen([heat], names, bind_tramp_elements=True, **soak)
    steel = gs.Steel(dict(zip(names, heat, strict=True)), bind_tramp_elements=True)
    state = steel.soak(**soak)
    assert state.analysis.bound
    assert "graphite" in {occurrence.kind for occurrence in state.occurrences}
    assert table.certificate_names[table.certificate[0]] == "proof"
    assert table.at_soak_temperature
    assert table.gibbs_energy[0] == state.gibbs_energy
    assert table.carbide_volume_percent[0] == state.carbide_volume_percent


def test_a_data_frame_names_its_columns(table):
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame(HEATS, columns=PUNCH)
    wanted = [gs.quantities.hardness_hrc(), gs.quantities.mass_percent("M6C")]
    assert gs.screen(frame, celsius=CELSIUS, quantities=wanted) == table


def test_to_frame(table):
    pytest.importorskip("pandas")
    frame = table.to_frame()
    assert list(frame["status"]) == ["usable"] * 4
    numbers = [name for name in frame if frame[name].dtype == np.float64]
    assert set(frame.attrs["units"]) == set(numbers)
    origin = gs.Steel(C=1.0).soak(celsius=950).to_frame().attrs
    assert frame.attrs == {
        **origin,
        "units": frame.attrs["units"],
        "library_version": gs.__version__,
        "volumes_at": "room temperature",
        "warning_texts": table.warning_texts,
    }
    assert (
        frame.loc[2, "matrix_C_weight_percent"]
        == table.matrix_weight_percent[2, table.elements.index("C")]
    )


@pytest.mark.parametrize("threads", [2, 3])
def test_threads_change_no_bit(heats, whole, threads):
    assert gs.screen(heats, ["C", "Cr"], celsius=950, threads=threads) == whole


def test_chunks_change_no_bit_and_count_up(heats, whole):
    told = []
    chunks = gs.screen_chunks(
        heats, ["C", "Cr"], celsius=950, threads=1, chunk_rows=64, progress=told.append
    )
    chunks = list(chunks)
    assert [len(chunk) for chunk in chunks] == [64, 64, 22]
    assert [chunk.first_row for chunk in chunks] == [0, 64, 128]
    assert told == [64, 128, 150]
    assert gs.join_screens(chunks) == whole


def test_a_part_in_the_middle_of_blocks(heats, whole):
    part = gs.screen(heats, ["C", "Cr"], celsius=950, first_row=30, last_row=70)
    assert repr(part) == (
        "<ScreenTable: 40 rows from row 30, long-hold limit, 40 usable>"
    )
    assert (part.gibbs_energy == whole.gibbs_energy[30:70]).all()


def test_it_is_stopped_by_the_callback_and_goes_on(heats, whole):
    part = gs.screen(
        heats, ["C", "Cr"], celsius=950, threads=1, progress=lambda done: done < 64
    )
    assert part.cancelled
    assert repr(part) == (
        "<ScreenTable: 64 rows, long-hold limit, 64 usable, CANCELLED, 86 not done>"
    )
    rest = gs.screen(heats, ["C", "Cr"], celsius=950, first_row=part.next_row)
    assert not rest.cancelled
    both = np.concatenate([part.gibbs_energy, rest.gibbs_energy])
    assert (both == whole.gibbs_energy).all()


def test_an_interrupt_keeps_what_is_done(heats):
    """As Ctrl-C: the signal arrives while the first block is solved."""

    def interrupt(done):
        if done >= 64:
            signal.raise_signal(signal.SIGINT)

    part = gs.screen(heats, ["C", "Cr"], celsius=950, threads=1, progress=interrupt)
    assert part.cancelled
    assert 64 <= len(part) < 150
    assert part.usable.all()


@pytest.mark.skipif(
    threading.current_thread() is not threading.main_thread(), reason="needs signals"
)
def test_an_interrupt_inside_a_quantity_flags_no_row(heats):
    calls = []

    def function(state):
        calls.append(state)
        if len(calls) == 100:
            raise KeyboardInterrupt
        return 1.0

    wanted = [gs.Quantity("one", "", function)]
    part = gs.screen(heats, ["C", "Cr"], celsius=950, threads=1, quantities=wanted)
    assert part.cancelled
    assert part.count() == {"usable": 64}


def test_a_bad_row_is_flagged_and_stops_nothing():
    nan, inf = float("nan"), float("inf")
    rows = [
        [0.8, 4.0, 0.0],
        [nan, 4.0, 0.0],
        [0.8, inf, 0.0],
        [0.8, -4.0, 0.0],
        [60.0, 50.0, 0.0],
        [0.0, 0.0, 100.0],
        [0.8, 4.0, 0.0],
        [0.8, 4.0, 0.0],
    ]
    celsius = [1000, 1000, 1000, 1000, 1000, 1000, 5000, nan]
    table = gs.screen(
        rows, ["C", "Cr", "Cu"], celsius=celsius, one_per_composition=True
    )
    assert [table.status_names[status] for status in table.status] == [
        "usable",
        "composition not finite",
        "composition not finite",
        "composition negative",
        "composition sum",
        "nothing modelled",
        "temperature outside",
        "temperature outside",
    ]
    assert np.isnan(table.carbide_volume_percent[1:]).all()
    assert np.isnan(table.matrix_weight_percent[1:]).all()
    assert table.usable.tolist() == [True] + 7 * [False]


def test_a_quantity_that_raises_flags_its_row():
    def half(state):
        if state.analysis.given["C"] > 0.85:
            raise ZeroDivisionError
        return 0.5

    table = gs.screen(
        [[0.8], [0.9]], ["C"], celsius=700, quantities=[gs.Quantity("half", "", half)]
    )
    assert table.count() == {"usable": 1, "quantity failed": 1}
    assert table.quantity[0, 0] == 0.5
    assert np.isnan(table.quantity[1, 0])
    assert table.carbide_volume_percent[1] > 10.0


def test_into_arrays_of_the_caller(heats, whole, tmp_path):
    volumes = np.memmap(
        tmp_path / "volumes", np.float64, "w+", shape=whole.volume_percent.shape
    )
    status = np.zeros(150, np.int8)
    arrays = {"volume_percent": volumes, "status": status}
    settings = {"celsius": 950, "threads": 1, "chunk_rows": 64}
    done = gs.screen_into(
        arrays, heats, ["C", "Cr"], progress=lambda done: done < 128, **settings
    )
    assert done == 128
    assert (status[128:] == 0).all()
    assert gs.ScreenTable.status_names[0] == "not done"
    done = gs.screen_into(arrays, heats, ["C", "Cr"], first_row=done, **settings)
    assert done == 150
    assert (volumes == whole.volume_percent).all()
    assert (status == whole.status).all()


def test_pieces_are_whole_blocks_of_compositions(heats, whole):
    pieces = gs.screen_pieces(heats, ["C", "Cr"], celsius=950, seconds=1e-6, pilot=2)
    assert [(p.start, p.stop) for p in pieces] == [(0, 64), (64, 128), (128, 150)]
    tables = [gs.screen(heats[p], ["C", "Cr"], celsius=950) for p in pieces]
    assert gs.join_screens(tables) == whole
    (one,) = gs.screen_pieces(heats, ["C", "Cr"], celsius=950, seconds=1e4, pilot=1000)
    assert one == slice(0, 150)
    assert gs.screen_pieces(np.empty((0, 2)), ["C", "Cr"], celsius=950) == []


def test_what_cannot_be_a_screen_is_refused():
    refused(
        lambda: gs.screen([[0.5]], celsius=950),
        "[gibbsteel.input.320] elements: are not given; name the element of each "
        'column, for instance elements=["C", "Cr", "Mo"]',
    )
    table = "give an array with one row per composition and one column per element"
    for given, what in (
        ([0.5, 0.6], "are 2 for 1 elements"),
        ([[0.5, 0.6]], "are 1 x 2 for 1 elements"),
        (0.5, "are one number for 1 elements"),
        ([["much"]], "are list, no table of numbers"),
    ):
        refused(
            lambda given=given: gs.screen(given, ["C"], celsius=950),
            f"[gibbsteel.input.320] compositions: {what}; {table}",
        )
    refused(
        lambda: gs.screen([[0.5, 1.0, 2.0]], ["C", "cr", "C"], celsius=950),
        "[gibbsteel.input.201] elements: 'cr' is not the symbol of an element; did you "
        "mean 'Cr'?",
        "[gibbsteel.input.321] elements: 'C' has two columns; give each element one "
        "column",
    )
    refused(
        lambda: gs.screen([[0.5]], ["C"], celsius=[]),
        "[gibbsteel.input.322] temperatures: are none; give at least one temperature",
    )
    refused(
        lambda: gs.screen([[0.5]], ["C"], celsius=[900, 950], one_per_composition=True),
        "[gibbsteel.input.322] temperatures: are 2 for 1 compositions; give one per "
        "composition",
    )
    refused(
        lambda: gs.screen([[0.5]], ["C"]),
        "[gibbsteel.input.211] temperature: got none; give exactly one of celsius=, "
        "fahrenheit= and kelvin=",
    )


def test_a_masked_number_is_not_known():
    heats = np.ma.masked_array(
        [[0.5, 1.0], [0.6, 99.0], [0.7, 2.0]], mask=[[0, 0], [0, 1], [0, 0]]
    )
    known = [[0.5, 1.0], [0.6, np.nan], [0.7, 2.0]]
    table = gs.screen(heats, ["C", "Cr"], celsius=950)
    assert table == gs.screen(known, ["C", "Cr"], celsius=950)
    assert repr(table) == (
        "<ScreenTable: 3 rows, long-hold limit, 2 usable, 1 composition not finite>"
    )
    assert gs.screen(list(heats), ["C", "Cr"], celsius=950) == table
    whole = np.ma.masked_array([[5, 10]], mask=[[0, 1]])
    assert gs.screen(whole, ["C", "Cr"], celsius=950).count() == {
        "composition not finite": 1
    }
    refused(
        lambda: gs.screen(
            [[0.5]], ["C"], celsius=np.ma.masked_array([950.0, 900.0], mask=[0, 1])
        ),
        "[gibbsteel.input.210] temperature: is nan K = nan C; give 300 K to 2500 K "
        "(27 C to 2227 C, 80 F to 4040 F) and check the unit",
    )


def test_complex_numbers_are_refused():
    table = "give an array with one row per composition and one column per element"
    for given, what in (
        (np.array([[0.5 + 0.1j]]), "are ndarray of complex128, no table of numbers"),
        ([[0.5 + 0.1j]], "are list, no table of numbers"),
        (
            np.ma.masked_array([[0.5 + 0j]]),
            "are MaskedArray of complex128, no table of numbers",
        ),
    ):
        refused(
            lambda given=given: gs.screen(given, ["C"], celsius=950),
            f"[gibbsteel.input.320] compositions: {what}; {table}",
        )
    refused(
        lambda: gs.screen([[0.5]], ["C"], celsius=np.array([950 + 1j])),
        "[gibbsteel.input.211] temperature: celsius= holds complex128, no temperatures"
        "; give a series, for instance celsius=range(900, 1231, 5)",
    )


def test_rows_that_it_does_not_have_are_refused():
    remedy = "give the number of a row, counted from 0"
    for first, what in ((3, "is 3 of 1 rows"), (-1, "is -1 of 1 rows")):
        refused(
            lambda first=first: gs.screen([[0.5]], ["C"], celsius=950, first_row=first),
            f"[gibbsteel.input.323] first_row: {what}; {remedy}",
        )
    refused(
        lambda: gs.screen([[0.5]], ["C"], celsius=950, first_row=-2, last_row=-1),
        f"[gibbsteel.input.323] first_row: is -2 of 1 rows; {remedy}",
        f"[gibbsteel.input.323] last_row: is -1 of 1 rows; {remedy}",
    )
    chunks = gs.screen_chunks([[0.5]], ["C"], celsius=950, last_row=-1)
    refused(
        lambda: next(chunks),
        f"[gibbsteel.input.323] last_row: is -1 of 1 rows; {remedy}",
    )


def test_arrays_and_pieces_that_do_not_fit_are_refused():
    refused(
        lambda: gs.screen_into(
            {"status": np.zeros(3, np.int8), "carbide": np.zeros(2)},
            [[0.5], [0.6]],
            ["C"],
            celsius=950,
        ),
        "[gibbsteel.input.327] out: 'status' has shape (3,) and type int8; give an "
        "array of shape (2,) and type int8",
        "[gibbsteel.input.327] out: there is no column 'carbide'; choose from: status, "
        "certificate, warnings, carbide_volume_percent, carbon_activity, gibbs_energy, "
        "volume_percent, matrix_weight_percent, quantity, kelvin, "
        "steel_weight_percent, warning_bits",
    )
    refused(
        lambda: gs.screen_pieces([[0.5]], ["C"], celsius=950, seconds=0, pilot=0),
        "[gibbsteel.input.328] seconds: is 0; give a time above 0, for instance 10",
        "[gibbsteel.input.328] pilot: is 0; give 1 or more compositions",
    )
    refused(
        lambda: gs.join_screens([]),
        "[gibbsteel.input.326] tables: are none; give at least one table",
    )
    refused(
        lambda: gs.screen([[0.5]], ["C"], celsius=950, quantities=["C"]),
        "[gibbsteel.input.220] quantities: is str, not Quantity; give a list, such as "
        "[gs.quantities.hardness_hrc()]",
    )


GROWTH = """
import re, sys
from pathlib import Path
import gibbsteel as gs
import numpy as np

def peak(rows, keep):
    compositions = np.full((rows, 1), np.nan)  # flagged at once: quick
    kept = []
    for chunk in gs.screen_chunks(
        compositions, ["C"], celsius=700, chunk_rows=1024, threads=1
    ):
        kept = [*kept, chunk] if keep else [chunk]
    # getrusage() would count the process that started this one.
    status = Path("/proc/self/status").read_text()
    return int(re.search("VmHWM:[^0-9]*([0-9]+)", status)[1])  # [KiB]

keep = sys.argv[1] == "keep"
first = peak(10_000, keep)
print(peak(80_000, keep) - first)
"""


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="needs Linux")
@pytest.mark.skipif(
    os.environ.get("LD_PRELOAD") is not None,
    reason="a sanitizer keeps memory that was freed, to find late uses of it",
)
@pytest.mark.parametrize("what", ["drop", "keep"])
def test_memory_of_chunks_does_not_grow_with_the_rows(what):
    """Eight times the rows: 70000 x 24 numbers, 13 MB, when the caller keeps them."""
    done = subprocess.run(
        [sys.executable, "-c", GROWTH, what], capture_output=True, text=True, check=True
    )
    grown = int(done.stdout)
    if what == "drop":
        assert grown < 3000  # 560 of them are the compositions themselves
    else:
        assert grown > 9000
