"""Folders of a screen whose files are not what their names say."""

import json
import pickle
import shutil
import zipfile

import gibbsteel as gs
import numpy as np
import pytest
from screen_folders import REMEDY, heats, into, whole  # noqa: F401

SECOND = "rows_000000000064.npz"


@pytest.fixture(scope="module")
def made(heats, tmp_path_factory):
    path = tmp_path_factory.mktemp("made")
    into(path, heats)
    return path


@pytest.fixture
def folder(made, tmp_path):
    return shutil.copytree(made, tmp_path / "copy")


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected


def stored(file):
    with np.load(file) as chunk:
        return {name: chunk[name] for name in chunk.files}


def cut(file):
    file.write_bytes(file.read_bytes()[:900])


def emptied(file):
    file.write_bytes(b"")


def flipped(file):
    data = bytearray(file.read_bytes())
    data[len(data) // 3] ^= 1
    file.write_bytes(data)


def no_archive(file):
    file.write_text("no archive")


def an_array(file):
    with file.open("wb") as stream:
        np.save(stream, np.zeros(64))


def column_lost(file):
    columns = stored(file)
    del columns["status"]
    np.savez(file, **columns)


def column_short(file):
    columns = stored(file)
    np.savez(file, **{**columns, "kelvin": columns["kelvin"][:3]})


def other_rows(file):
    shutil.copy(file.with_name("rows_000000000000.npz"), file)


def families_lost(file):
    columns = stored(file)
    del columns["families"]
    np.savez(file, **columns)


def of_another_screen(file):
    heats = np.column_stack([np.full(150, 0.7), np.full(150, 4.0)])
    into(file.parent.parent / "other", heats)
    shutil.copy(file.parent.parent / "other" / SECOND, file)


def unnamed(file):
    columns = stored(file)
    del columns["first_row"], columns["screen"]
    np.savez(file, **columns)


@pytest.mark.parametrize(
    "harm",
    [
        cut,
        emptied,
        flipped,
        no_archive,
        an_array,
        column_lost,
        column_short,
        families_lost,
        other_rows,
        of_another_screen,
        unnamed,
    ],
)
def test_a_chunk_that_is_not_that_of_its_rows_counts_as_not_there(
    heats, whole, folder, harm
):
    harm(folder / SECOND)
    found = gs.ScreenFolder(folder)
    assert not found.complete
    assert repr(found) == "<ScreenFolder: 64 of 150 rows>"
    assert found.table().gibbs_energy.tolist() == whole.gibbs_energy[:64].tolist()
    assert into(folder, heats).table() == whole


def test_a_chunk_that_is_damaged_after_it_was_read(folder):
    found = gs.ScreenFolder(folder)
    assert found.complete
    cut(folder / SECOND)
    assert found.rows_done == 64
    assert not found.complete


def test_a_folder_in_the_place_of_a_chunk(heats, folder):
    (folder / SECOND).unlink()
    (folder / SECOND).mkdir()
    assert gs.ScreenFolder(folder).rows_done == 64
    refused(
        lambda: into(folder, heats),
        f"[gibbsteel.input.325] folder: holds a folder named {SECOND}; {REMEDY}",
    )


def with_about(folder, **changed):
    about = json.loads((folder / "screen.json").read_text())
    (folder / "screen.json").write_text(json.dumps({**about, **changed}))


DAMAGED = f"[gibbsteel.input.325] folder: holds a damaged screen.json; {REMEDY}"


@pytest.mark.parametrize(
    "changed",
    [
        {"chunk_rows": 0},
        {"chunk_rows": -5},
        {"chunk_rows": 64.0},
        {"chunk_rows": None},
        {"rows": "x"},
        {"rows": -1},
        {"rows": True},
        {"made_of": []},
        {"made_of": {}},
        {"made_of": {"parameters_hash": 5}},
        {"columns": {}},
        {"columns": []},
        {"columns": {"kinds": 5}},
    ],
)
def test_a_damaged_manifest_is_refused(heats, folder, changed):
    with_about(folder, **changed)
    refused(lambda: gs.ScreenFolder(folder), DAMAGED)
    refused(lambda: into(folder, heats), DAMAGED)


@pytest.mark.parametrize(
    "changed", [{"rows": 10**12}, {"rows": 149}, {"chunk_rows": 1}]
)
def test_numbers_of_the_manifest_that_are_not_those_of_the_screen(
    heats, folder, changed
):
    with_about(folder, **changed)
    refused(lambda: into(folder, heats), DAMAGED)
    found = gs.ScreenFolder(folder)
    assert not found.complete
    assert found.rows_done < 150


def test_columns_of_the_manifest_that_are_not_those_of_the_screen(heats, folder):
    columns = json.loads((folder / "screen.json").read_text())["columns"]
    with_about(folder, columns={**columns, "elements": columns["elements"][::-1]})
    refused(lambda: into(folder, heats), DAMAGED)


def test_a_folder_in_the_place_of_the_manifest(folder):
    (folder / "screen.json").unlink()
    (folder / "screen.json").mkdir()
    refused(
        lambda: gs.ScreenFolder(folder),
        f"[gibbsteel.input.325] folder: holds a folder named screen.json; {REMEDY}",
    )


def test_a_folder_of_the_first_format_is_read_and_not_completed(heats, whole, folder):
    for file in folder.glob("*.npz"):
        families_lost(file)
        unnamed(file)
    with_about(folder, format="gibbsteel screen 1")
    found = gs.ScreenFolder(folder)
    said = "<ScreenFolder: 150 of 150 rows, chunks do not name their rows>"
    assert repr(found) == said
    assert found.table() == whole
    refused(
        lambda: into(folder, heats),
        "[gibbsteel.input.324] folder: holds a screen of an earlier format; " + REMEDY,
    )


def test_a_chunk_says_what_it_is_a_part_of(made):
    of_each = [stored(file) for file in sorted(made.glob("*.npz"))]
    assert [int(chunk["first_row"]) for chunk in of_each] == [0, 64, 128]
    assert len({str(chunk["screen"]) for chunk in of_each}) == 1
    with zipfile.ZipFile(made / SECOND) as archive:
        assert {"first_row.npy", "screen.npy"} <= set(archive.namelist())


def test_a_quantity_that_cannot_be_told_from_others_leaves_no_folder(heats, tmp_path):
    own = gs.Quantity("austenite", "vol%", lambda s: s.matrix.volume_percent)
    early = gs.quantities.after_minutes(own, 20)
    with pytest.raises(TypeError, match="own function after minutes cannot be pickled"):
        pickle.dumps(early)
    refused(
        lambda: into(tmp_path / "new", heats, quantities=[early]),
        f"[gibbsteel.input.220] quantities: {early.label} cannot be told from another "
        "one of this name; screen without a folder",
    )
    assert not (tmp_path / "new").exists()


def test_a_folder_tells_quantities_of_two_parameter_sets_apart(heats, tmp_path):
    sets = [gs.default_parameters(), gs.default_parameters("iron_as_measured")]
    first, other = (
        gs.quantities.timed_soak_matrix("C", 20, parameters=one) for one in sets
    )
    folder = into(tmp_path / "new", heats, quantities=[first])
    assert folder.complete
    assert into(tmp_path / "new", heats, quantities=[first]).complete
    refused(
        lambda: into(tmp_path / "new", heats, quantities=[other]),
        "[gibbsteel.input.324] folder: holds a screen of other options; take a new or "
        "an empty folder",
    )
