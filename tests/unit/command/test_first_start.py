"""What a data folder goes through before the shop opens."""

import os
import subprocess
import sys
from pathlib import Path

from spoolwright.command.first_start import UNFINISHED, forget_unfinished


def shop_folder(tmp_path: Path) -> Path:
    for name in ("shop.sqlite3", "shop.sqlite3-wal", "secret-key"):
        (tmp_path / name).write_text("x")
    (tmp_path / "files").mkdir()
    return tmp_path


def test_a_demonstration_that_was_broken_off_is_thrown_away(tmp_path: Path) -> None:
    folder = shop_folder(tmp_path)
    (folder / UNFINISHED).touch()
    forget_unfinished(folder)
    assert [path.name for path in folder.iterdir()] == ["secret-key"]


def test_a_shop_that_was_not_broken_off_is_left_alone(tmp_path: Path) -> None:
    folder = shop_folder(tmp_path)
    before = sorted(path.name for path in folder.iterdir())
    forget_unfinished(folder)
    assert sorted(path.name for path in folder.iterdir()) == before


IN_A_NEW_FOLDER = """
import sys
from spoolwright.command import first_start
from spoolwright.command.house import open_house

data = open_house(sys.argv[1])
print(first_start.bring_tables_up_to_date(), first_start.bring_tables_up_to_date())
for _ in range(2):
    first_start.collect_static(data)
    print((data / "static" / "staticfiles.json").stat().st_mtime_ns)
"""


def test_tables_and_static_files_are_made_once(tmp_path: Path) -> None:
    env = {k: v for k, v in os.environ.items() if not k.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    told = subprocess.run(
        [sys.executable, "-c", IN_A_NEW_FOLDER, str(tmp_path / "data")],
        env=env,
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 0, told.stderr
    first, new, collected, again = told.stdout.strip().splitlines()
    assert (first, new) == ("Making the tables", "True False")
    assert collected == again
