"""A screen that writes finished chunks to a folder and goes on from what is there."""

import json
import signal
import subprocess
import sys

import gibbsteel as gs
import numpy as np
import pytest
from screen_folders import REMEDY, heats, into, whole  # noqa: F401


@pytest.fixture(scope="module")
def complete(heats, tmp_path_factory):
    return into(tmp_path_factory.mktemp("complete"), heats)


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected


def test_the_folder_holds_the_screen(complete, whole):
    assert complete.complete
    assert repr(complete) == "<ScreenFolder: 150 of 150 rows>"
    assert complete.table() == whole
    assert [len(chunk) for chunk in complete.chunks()] == [64, 64, 22]
    names = sorted(file.name for file in complete.path.iterdir())
    rows = [f"rows_{first:012d}.npz" for first in (0, 64, 128)]
    assert names == [*rows, "screen.json"]
    about = json.loads((complete.path / "screen.json").read_text())
    assert about["made_of"]["library_version"] == gs.__version__
    assert about["made_of"]["parameters_hash"] == whole.parameters_hash
    with np.load(complete.path / rows[1]) as stored:
        assert (stored["gibbs_energy"] == whole.gibbs_energy[64:128]).all()


def test_it_goes_on_from_what_is_there(heats, whole, tmp_path):
    folder = into(tmp_path, heats, progress=lambda done: done < 100)
    assert not folder.complete
    assert folder.rows_done == 128
    assert folder.table().gibbs_energy.tolist() == whole.gibbs_energy[:128].tolist()
    told = []
    done = {file.name: file.stat().st_mtime_ns for file in tmp_path.iterdir()}
    folder = into(tmp_path, heats, progress=told.append, chunk_rows=1000)
    assert told == [150]
    assert folder.complete
    assert folder.table() == whole
    for name, time in done.items():
        assert (tmp_path / name).stat().st_mtime_ns == time


KILLED = """
import os, signal, sys
import gibbsteel as gs
import numpy as np

def die(done):
    if done > 64:
        os.kill(os.getpid(), signal.SIGKILL)

heats = np.load(sys.argv[1])
settings = {"celsius": 950, "chunk_rows": 64, "threads": 1}
gs.screen_to_folder(sys.argv[2], heats, ["C", "Cr"], progress=die, **settings)
"""


def test_a_process_that_is_killed_leaves_what_was_finished(heats, whole, tmp_path):
    np.save(tmp_path / "heats.npy", heats)
    arguments = [str(tmp_path / "heats.npy"), str(tmp_path / "folder")]
    done = subprocess.run([sys.executable, "-c", KILLED, *arguments], check=False)
    assert done.returncode == -signal.SIGKILL
    assert gs.ScreenFolder(tmp_path / "folder").rows_done == 64
    told = []
    folder = into(tmp_path / "folder", heats, progress=told.append)
    assert told == [128, 150]
    assert folder.table() == whole


@pytest.mark.parametrize("harm", ["missing", "cut short", "changed"])
def test_a_chunk_that_is_missing_or_damaged_is_computed_again(
    heats, whole, tmp_path, harm
):
    folder = into(tmp_path, heats)
    chunk = tmp_path / "rows_000000000064.npz"
    data = bytearray(chunk.read_bytes())
    if harm == "missing":
        chunk.unlink()
    elif harm == "cut short":
        chunk.write_bytes(data[: len(data) // 2])
    else:
        data[len(data) // 3] ^= 1
        chunk.write_bytes(data)
    told = []
    folder = into(tmp_path, heats, progress=told.append)
    assert told == [150]
    assert folder.table() == whole


def test_a_folder_that_is_read_later(complete, whole):
    assert gs.ScreenFolder(complete.path).table() == whole


def test_an_empty_screen(tmp_path):
    folder = into(tmp_path, np.empty((0, 2)))
    assert folder.complete
    assert len(folder.table()) == 0


@pytest.mark.parametrize(
    ("settings", "what"),
    [
        ({"celsius": 951}, "other compositions or temperatures"),
        ({"graphite": True}, "other options"),
        ({"options": gs.SolveOptions(starts_per_phase=30)}, "other options"),
        (
            {"quantities": [gs.quantities.matrix("C")]},
            "other options, other quantities",
        ),
    ],
)
def test_a_folder_of_another_screen_is_refused(heats, complete, settings, what):
    refused(
        lambda: into(complete.path, heats, **settings),
        f"[gibbsteel.input.324] folder: holds a screen of {what}; {REMEDY}",
    )


def test_other_compositions_and_another_version_are_refused(
    heats, complete, monkeypatch
):
    refused(
        lambda: into(complete.path, heats + 1e-12),
        "[gibbsteel.input.324] folder: holds a screen of other compositions or "
        f"temperatures; {REMEDY}",
    )
    monkeypatch.setattr("gibbsteel._core.version", "0.0.1")
    refused(
        lambda: into(complete.path, heats),
        "[gibbsteel.input.324] folder: holds a screen of another version of the "
        f"library; {REMEDY}",
    )


def test_settings_of_quantities_count(heats, complete, tmp_path):
    cold, warm = (
        [gs.quantities.hardness_hrc(coldest_celsius=celsius)] for celsius in (-75, 20)
    )
    into(tmp_path, heats[:2], quantities=cold)
    refused(
        lambda: into(tmp_path, heats[:2], quantities=warm),
        f"[gibbsteel.input.324] folder: holds a screen of other options; {REMEDY}",
    )


def test_a_folder_of_other_things_is_refused(heats, tmp_path):
    (tmp_path / "notes.txt").write_text("heat 7")
    refused(
        lambda: into(tmp_path, heats),
        f"[gibbsteel.input.325] folder: holds no screen.json; {REMEDY}",
    )
    refused(
        lambda: into(tmp_path / "notes.txt", heats),
        f"[gibbsteel.input.325] folder: is a file; {REMEDY}",
    )
    refused(
        lambda: gs.ScreenFolder(tmp_path / "nowhere"),
        f"[gibbsteel.input.325] folder: holds no screen.json; {REMEDY}",
    )
    for text, what in (
        ("{", "a damaged"),
        ("[]", "another kind of"),
        ('{"format": 1}', "another kind of"),
    ):
        (tmp_path / "screen.json").write_text(text)
        refused(
            lambda: into(tmp_path, heats),
            f"[gibbsteel.input.325] folder: holds {what} screen.json; {REMEDY}",
        )


def test_bad_input_leaves_no_folder(tmp_path):
    with pytest.raises(gs.InputError):
        gs.screen_to_folder(tmp_path / "new", [[1.0]], ["Xx"], celsius=950)
    assert not (tmp_path / "new").exists()
