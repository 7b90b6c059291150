"""Migrations only add, the ink survives them, and a shop with data in it comes through the last one whole."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from django.db import DatabaseError, connection, migrations, transaction
from django.db.migrations.executor import MigrationExecutor

from spoolwright.command import first_start
from spoolwright.shop.questions.find import find
from spoolwright.shop.records.entry import ENTRY_KINDS
from spoolwright.shop.records.ink import WORDS, inked_tables
from tests import people
from tests.shop import walk


def shops_migrations() -> list[Any]:
    graph = MigrationExecutor(connection).loader.graph
    (last,) = graph.leaf_nodes("shop")
    return [key for key in graph.forwards_plan(last) if key[0] == "shop"]


def go_to(target: Any) -> None:
    executor = MigrationExecutor(connection)
    executor.migrate([target])


Rows = list[dict[str, Any]]


def everything_in_ink() -> dict[str, Rows]:
    with connection.cursor() as cursor:
        held = {}
        present = set(connection.introspection.table_names(cursor))
        for table in (one for one in inked_tables() if one.name in present):
            cursor.execute(f"SELECT * FROM {table.name} ORDER BY 1")
            columns = [column[0] for column in cursor.description]
            held[table.name] = [dict(zip(columns, row, strict=True)) for row in cursor.fetchall()]
        return held


def as_known_to(kept: dict[str, Rows], held: dict[str, Rows]) -> dict[str, Rows]:
    """What is held, as far as a state knows it that keeps this: no younger table, no younger column."""
    columns = {name: set(rows[0]) if rows else set() for name, rows in kept.items()}
    return {
        name: [{column: row[column] for column in row if column in known} for row in held[name]]
        for name, known in columns.items()
    }


def refused(statement: str) -> bool:
    try:
        with transaction.atomic(), connection.cursor() as cursor:
            cursor.execute(statement)
    except DatabaseError as error:
        return WORDS in str(error)
    return False


def younger_than(state: Any) -> set[str]:
    """Kinds of entry that this state does not know, and so cannot hold."""
    known = MigrationExecutor(connection).loader.project_state(state).models["shop", "entry"].fields["kind"]
    return set(ENTRY_KINDS) - {kind for kind, _ in known.choices}


def test_from_the_state_before_the_last_with_data(own_database: None) -> None:
    *_, previous, last = shops_migrations()
    walk.everything(people.bench_hand(), without=younger_than(previous))
    before = everything_in_ink()
    go_to(previous)
    kept = everything_in_ink()
    assert kept == as_known_to(kept, before)
    go_to(last)
    after = everything_in_ink()
    assert as_known_to(kept, after) == kept
    assert {name: len(rows) for name, rows in after.items() if name not in kept and rows} == {}
    assert {name: set(rows[0]) for name, rows in before.items() if rows and name in kept} == {
        name: set(rows[0]) for name, rows in after.items() if rows
    }
    assert [found.title for found in find("Moloveien")] == ["Ragna Solbu"]


def test_ink_holds_on_the_way_back(own_database: None) -> None:
    """Winding a migration back remakes a table on SQLite, and a table that is remade loses its triggers."""
    states = [("shop", "0008_instruments"), ("shop", "0007_more_ways")]
    walk.everything(people.bench_hand(), without=younger_than(states[-1]))
    for state, remade in zip(states, ("shop_proofrow", "shop_reading"), strict=True):
        go_to(state)
        kept = everything_in_ink()
        assert kept[remade]
        assert [name for name, rows in kept.items() if rows and not refused(f"DELETE FROM {name}")] == []
        column = next(iter(kept[remade][0]))
        assert refused(f"UPDATE {remade} SET {column} = {column}")


def test_ink_laid_over_a_shop_that_has_data(own_database: None) -> None:
    """From the state before the ink: what was there is under lock afterwards."""
    first = ("shop", "0001_initial")
    walk.everything(people.bench_hand(), without=younger_than(first))
    before = everything_in_ink()
    go_to(first)
    assert not refused("UPDATE shop_entry SET words = words")
    kept = everything_in_ink()
    go_to(shops_migrations()[-1])
    assert as_known_to(kept, everything_in_ink()) == kept
    assert kept == as_known_to(kept, before)
    assert all(refused(f"DELETE FROM {name}") for name in kept)


def test_a_demonstration_that_was_broken_off_leaves_an_empty_shop(own_database: None, tmp_path: Path) -> None:
    """Half a workshop would mislead: the tables go, and the next start makes them anew and knows it."""
    walk.everything(people.bench_hand())
    (tmp_path / first_start.UNFINISHED).touch()
    first_start.forget_unfinished(tmp_path)
    if connection.vendor == "sqlite":
        connection.close()  # the file is gone, and with it what this connection knew
    assert first_start.bring_tables_up_to_date()
    assert not first_start.bring_tables_up_to_date()
    assert not (tmp_path / first_start.UNFINISHED).exists()
    assert not find("Moloveien")


@pytest.mark.django_db
def test_every_inked_table_has_its_triggers_after_all_migrations() -> None:
    catalogue = {
        "sqlite": "SELECT name FROM sqlite_master WHERE type = 'trigger'",
        "postgresql": "SELECT tgname FROM pg_trigger WHERE NOT tgisinternal",
    }
    with connection.cursor() as cursor:
        cursor.execute(catalogue[connection.vendor])
        triggers = {name for (name,) in cursor.fetchall()}
    verbs = {"sqlite": ("update", "delete", "replace"), "postgresql": ("row", "truncate")}[connection.vendor]
    wanted = {f"ink_{verb}_{table.name}" for table in inked_tables() for verb in verbs}
    assert wanted - triggers == set()


@pytest.mark.django_db
def test_no_migration_takes_anything_away() -> None:
    loader = MigrationExecutor(connection).loader
    takes_away = (
        migrations.DeleteModel,
        migrations.RemoveField,
        migrations.RenameField,
        migrations.RenameModel,
        migrations.AlterModelTable,
    )
    operations = [op for key in shops_migrations() for op in loader.get_migration(*key).operations]
    assert [op for op in operations if isinstance(op, takes_away)] == []


@pytest.mark.django_db
def test_the_models_are_what_the_migrations_made(capsys: Any) -> None:
    from django.core.management import call_command

    call_command("makemigrations", "shop", check=True, dry_run=True)
