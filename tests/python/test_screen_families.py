"""That rows of a screen are of several families is told of the table as a whole: it
does not depend on where a row stands, nor on how the screen is cut."""

import json
import pickle

import gibbsteel as gs
import numpy as np
import pytest

q = gs.quantities
ELEMENTS = ["C", "Cr", "Mo", "W", "V"]
M2 = [0.88, 4.15, 4.95, 6.28, 1.86]
D2 = [1.5, 11.5, 0.8, 0.0, 0.9]
BOTH = (
    "[gibbsteel.warning.357] The steels are of the families chromium-cold-work and "
    "high-speed: their hardening estimates have offsets and errors of their own."
)
SETTINGS = {"celsius": 1050, "quantities": q.hardness_hrc()}


def screened(heats, **more):
    return gs.screen(heats, ELEMENTS, **{**SETTINGS, **more})


def told(table):
    return [str(warning) for warning in table.table_warnings]


@pytest.fixture(scope="module")
def table():
    return screened([M2] * 63 + [D2] + [M2] * 64)


def test_the_same_row_carries_the_same_wherever_it_stands(table):
    other = screened([M2] * 127 + [D2])
    order = [*range(63), *range(64, 128), 63]
    assert np.array_equal(table.warnings[order], other.warnings)
    assert np.array_equal(table.warning_bits[order], other.warning_bits)
    assert told(table) == told(other) == [BOTH]
    assert table.families == other.families == ["chromium-cold-work", "high-speed"]
    assert "gibbsteel.warning.357" not in table.count_warnings()


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_a_permuted_screen_has_the_same_warnings_row_by_row(seed):
    general = [0.4, 1.0, 0.2, 0.0, 0.1]
    heats = np.array([M2, D2, general, [-1.0, 0, 0, 0, 0]] * 20)
    order = np.random.default_rng(seed).permutation(len(heats))
    straight, mixed = screened(heats), screened(heats[order])
    assert np.array_equal(straight.warnings[order], mixed.warnings)
    assert np.array_equal(straight.warning_bits[order], mixed.warning_bits)
    assert told(straight) == told(mixed)
    assert straight.count_warnings() == mixed.count_warnings()


def test_it_prints_and_goes_into_frames_and_pickles(table):
    assert repr(table).endswith("warnings: 310 in 1, 357 of the whole table>")
    code, text = BOTH.split("] ")
    assert f"! {code}] of the whole table: {text}" in " ".join(str(table).split())
    assert table.to_frame().attrs["table_warnings"] == [BOTH]
    assert "table_warnings" not in screened([M2]).to_frame().attrs
    again = pickle.loads(pickle.dumps(table))
    assert again == table and told(again) == [BOTH]


@pytest.mark.parametrize(
    "families",
    [
        [("zz", 5), ("aa", 6), ("zzz", 3)],
        [("aa", 5), ("aa", 6)],
        [("aa", 128)],
        [("aa", 10**15)],
        [("aa", -1)],
        [("aa",)],
    ],
)
def test_families_of_a_damaged_pickle_are_refused(table, families):
    mark, fields = table.__reduce_ex__(4)[2]
    assert fields[-1] == [("chromium-cold-work", 63), ("high-speed", 0)]
    with pytest.raises(gs.InputError) as error:
        gs.ScreenTable.__new__(gs.ScreenTable).__setstate__(
            (mark, (*fields[:-1], families))
        )
    assert str(error.value) == (
        "[gibbsteel.input.258] pickle of ScreenTable: is damaged: its fields are not "
        "those of the class; make the value again from its steel"
    )


def test_pieces_chunks_and_folders_agree_with_the_table(table, tmp_path):
    heats = [M2] * 63 + [D2] + [M2] * 64
    pieces = [screened(heats[:64]), screened(heats[64:])]
    assert [told(piece) for piece in pieces] == [[BOTH], []]
    assert gs.join_screens(pieces) == table
    chunks = gs.screen_chunks(heats, ELEMENTS, chunk_rows=64, **SETTINGS)
    assert gs.join_screens(list(chunks)) == table
    folder = gs.screen_to_folder(tmp_path, heats, ELEMENTS, chunk_rows=64, **SETTINGS)
    assert folder.table() == table
    assert gs.join_screens([screened([M2]), screened([D2])]).families == table.families


def test_steels_of_one_family_and_rows_that_cannot_be_used_tell_of_none():
    assert told(screened([M2, M2])) == []
    assert told(screened([M2, [-1.0, 11.5, 0.8, 0.0, 0.9]])) == []
    own = q.hardness_hrc(family="high-speed")
    assert screened([M2, D2], quantities=own).families == []


def test_a_screen_that_was_stopped_tells_of_the_rows_that_it_has():
    heats = [M2] * 64 + [D2] * 64
    part = screened(heats, threads=1, progress=lambda done: False)
    assert part.cancelled and part.families == ["high-speed"]


def of_format_2(folder, without_families):
    """`without_families`: the chunks that the version before has written."""
    about = json.loads((folder / "screen.json").read_text())
    about["format"] = "gibbsteel screen 2"
    (folder / "screen.json").write_text(json.dumps(about))
    for file in sorted(folder.glob("*.npz"))[:without_families]:
        with np.load(file) as chunk:
            columns = {name: chunk[name] for name in chunk.files}
        del columns["families"]
        np.savez(file, **columns)


@pytest.mark.parametrize("without_families", [1, 2])
def test_families_of_a_folder_of_the_format_before_are_not_known(
    tmp_path, without_families
):
    def work():
        heats = [M2] * 64 + [D2] * 32 + [M2] * 32
        return gs.screen_to_folder(
            tmp_path, heats, ELEMENTS, chunk_rows=64, **SETTINGS
        )

    straight = work().table()
    manifest = json.loads((tmp_path / "screen.json").read_text())
    assert manifest["format"] == "gibbsteel screen 3"
    of_format_2(tmp_path, without_families)
    found = gs.ScreenFolder(tmp_path)
    said = "<ScreenFolder: 128 of 128 rows, families of the steels not known>"
    assert repr(found) == said
    table = found.table()
    assert table.families == table.table_warnings == []
    assert np.array_equal(table.warning_bits, straight.warning_bits)
    with pytest.raises(gs.InputError) as error:
        work()
    assert str(error.value) == (
        "[gibbsteel.input.324] folder: holds a screen of an earlier format; take a new "
        "or an empty folder"
    )
