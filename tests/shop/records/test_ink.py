"""What is written in ink cannot be changed or deleted: not by the code, not by SQL, on neither database."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import DatabaseError, connection, transaction

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import WORDS, InkWasDry, inked_tables
from spoolwright.shop.records.reading import ReadingValue
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def written(hand: Any) -> Any:
    return walk.everything(hand)


def sql(statement: str) -> list[Any]:
    with transaction.atomic(), connection.cursor() as cursor:
        cursor.execute(statement)
        return cursor.fetchall() if statement.startswith("SELECT") else []


def test_the_walk_fills_every_inked_table(written: Any) -> None:
    empty = [t.name for t in inked_tables() if sql(f"SELECT count(*) FROM {t.name}") == [(0,)]]
    assert empty == []
    assert len(inked_tables()) == 37


def test_the_database_refuses_update_and_delete_of_every_row(written: Any) -> None:
    for table in inked_tables():
        key = table.unique[0][0]
        before = sql(f"SELECT * FROM {table.name} ORDER BY 1")
        for statement in (
            f"UPDATE {table.name} SET {key} = {key}",
            f"DELETE FROM {table.name}",
            f"UPDATE {table.name} SET {key} = {key} + 1000",
        ):
            with pytest.raises(DatabaseError, match=WORDS):
                sql(statement)
        assert sql(f"SELECT * FROM {table.name} ORDER BY 1") == before


def test_a_row_cannot_be_swapped_by_writing_over_it(written: Any) -> None:
    """SQLite's INSERT OR REPLACE deletes without a DELETE trigger; PostgreSQL's way round is ON CONFLICT."""
    for table in inked_tables():
        key = table.unique[0][0]
        if connection.vendor == "sqlite":
            statement = f"INSERT OR REPLACE INTO {table.name} SELECT * FROM {table.name}"
        else:
            statement = (
                f"INSERT INTO {table.name} SELECT * FROM {table.name} "
                f"ON CONFLICT ({key}) DO UPDATE SET {key} = EXCLUDED.{key}"
            )
        with pytest.raises(DatabaseError, match=WORDS):
            sql(statement)


def test_nor_by_the_back_doors_that_each_database_has(written: Any) -> None:
    """SQLite: replaced under another key, by the diary's own numbering. PostgreSQL: emptied at once."""
    if connection.vendor == "sqlite":
        named = ", ".join(f.column for f in Entry._meta.concrete_fields if f.column != "id")
        entries = f"SELECT id + 1000, {named} FROM shop_entry"
        with pytest.raises(DatabaseError, match=WORDS):
            sql(f"INSERT OR REPLACE INTO shop_entry (id, {named}) {entries}")
        return
    sql("SET CONSTRAINTS ALL IMMEDIATE")
    for table in inked_tables():
        with pytest.raises(DatabaseError, match=WORDS):
            sql(f"TRUNCATE {table.name} CASCADE")


def test_the_code_refuses_before_the_database_has_to(written: Any) -> None:
    entry = written.entries.first()
    entry.words = "something else"
    tries = (
        entry.save,
        entry.delete,
        lambda: Entry.objects.update(words=""),
        lambda: Entry.objects.filter(pk=entry.pk).delete(),
        lambda: written.entries.all().delete(),
        lambda: Entry.objects.bulk_update([entry], ["words"]),
        lambda: Entry.objects.bulk_create([entry], update_conflicts=True),
        lambda: ReadingValue.objects.update(value_si=0.0),
        lambda: Entry.objects.update_or_create(pk=entry.pk, defaults={"words": ""}),
    )
    for trying in tries:
        with pytest.raises(InkWasDry):
            trying()


def test_what_the_code_lets_through_the_database_still_refuses(written: Any) -> None:
    entry = written.entries.first()
    for trying in (
        lambda: Entry._base_manager.filter(pk=entry.pk)._update(
            [(Entry._meta.get_field("words"), None, "x")]
        ),
        lambda: Entry.objects.filter(pk=entry.pk)._raw_delete("default"),
    ):
        with pytest.raises(DatabaseError, match=WORDS), transaction.atomic():
            trying()


def test_a_visit_with_entries_cannot_be_deleted(written: Any) -> None:
    with pytest.raises(DatabaseError), transaction.atomic():
        written.delete()
    assert written.entries.count() == 13
