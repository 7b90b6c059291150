"""Ink: rows that are written once. The code refuses a change, and the database refuses it too.

The triggers below are the second lock. They hold for raw SQL, for another program with the same
database open, and on SQLite also for `INSERT OR REPLACE`, which would delete without a DELETE trigger.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from django.apps import apps
from django.db import models

WORDS = "written in ink: strike it through and write it again"
"""The text that both databases raise, so that one test and one message serve both."""


class InkWasDry(Exception):
    """Somebody tried to change or delete a row that is written once."""

    def __init__(self, what: str) -> None:
        self.words = f"{what} is {WORDS}."
        super().__init__(self.words)


class InkSet(models.QuerySet):
    """A query set that can add and read, and nothing else."""

    def update(self, **_: Any) -> int:
        raise InkWasDry(self.model.__name__)

    def delete(self) -> tuple[int, dict[str, int]]:
        raise InkWasDry(self.model.__name__)

    def bulk_update(self, *_: Any, **__: Any) -> int:
        raise InkWasDry(self.model.__name__)

    def bulk_create(self, objs: Iterable[Any], *args: Any, **kwargs: Any) -> list[Any]:
        if kwargs.get("update_conflicts") or kwargs.get("ignore_conflicts"):
            raise InkWasDry(self.model.__name__)
        return super().bulk_create(objs, *args, **kwargs)


class Inked(models.Model):
    """Base of every row that is added once and never changed."""

    objects = InkSet.as_manager()

    class Meta:
        abstract = True

    def save(self, *args: Any, **kwargs: Any) -> None:
        if not self._state.adding:
            raise InkWasDry(type(self).__name__)
        kwargs["force_insert"] = True
        super().save(*args, **kwargs)

    def delete(self, *_: Any, **__: Any) -> tuple[int, dict[str, int]]:
        raise InkWasDry(type(self).__name__)


@dataclass(frozen=True)
class InkedTable:
    """A table under lock, with the column sets that are unique in it (its primary key among them)."""

    name: str
    unique: tuple[tuple[str, ...], ...]


def inked_tables() -> tuple[InkedTable, ...]:
    """Every table of the shop that is written in ink, as the models stand now."""
    found = [m for m in apps.get_app_config("shop").get_models() if issubclass(m, Inked)]
    return tuple(InkedTable(m._meta.db_table, _unique_columns(m)) for m in found)


def _unique_columns(model: type[models.Model]) -> tuple[tuple[str, ...], ...]:
    meta = model._meta
    single = [(f.column,) for f in meta.local_concrete_fields if f.unique]
    several = [
        tuple(meta.get_field(name).column for name in constraint.fields)
        for constraint in meta.constraints
        if isinstance(constraint, models.UniqueConstraint) and constraint.condition is None
    ]
    return tuple(dict.fromkeys(single + several))


def lay(connection: Any, tables: Iterable[InkedTable]) -> None:
    """Put the triggers on these tables; laying them twice changes nothing."""
    make = {"sqlite": _sqlite, "postgresql": _postgresql}.get(connection.vendor)
    if make is None:
        raise NotImplementedError(f"No ink for the database '{connection.vendor}': use SQLite or PostgreSQL.")
    with connection.cursor() as cursor:
        for statement in make(tables):
            cursor.execute(statement)


def lay_again(connection: Any) -> None:
    """Put the triggers on every inked table that stands in the database."""
    with connection.cursor() as cursor:
        present = set(connection.introspection.table_names(cursor))
    lay(connection, [table for table in inked_tables() if table.name in present])


def lift(connection: Any, tables: Iterable[InkedTable]) -> None:
    """Take the triggers off; only a migration that is wound back does this."""
    with connection.cursor() as cursor:
        for table in tables:
            for verb in _VERBS[connection.vendor]:
                on = f" ON {table.name}" if connection.vendor == "postgresql" else ""
                cursor.execute(f"DROP TRIGGER IF EXISTS ink_{verb}_{table.name}{on}")


_VERBS = {"sqlite": ("update", "delete", "replace"), "postgresql": ("row", "truncate")}


def _sqlite(tables: Iterable[InkedTable]) -> Iterable[str]:
    refuse = f"BEGIN SELECT RAISE(ABORT, '{WORDS}'); END"
    for table in tables:
        for verb in ("update", "delete"):
            yield (
                f"CREATE TRIGGER IF NOT EXISTS ink_{verb}_{table.name} "
                f"BEFORE {verb.upper()} ON {table.name} {refuse}"
            )
        same = " OR ".join(
            "(" + " AND ".join(f"{column} = NEW.{column}" for column in columns) + ")"
            for columns in table.unique
        )
        yield (
            f"CREATE TRIGGER IF NOT EXISTS ink_replace_{table.name} BEFORE INSERT ON {table.name} "
            f"WHEN EXISTS (SELECT 1 FROM {table.name} WHERE {same}) {refuse}"
        )


def _postgresql(tables: Iterable[InkedTable]) -> Iterable[str]:
    yield (
        "CREATE OR REPLACE FUNCTION shop_ink_is_dry() RETURNS trigger LANGUAGE plpgsql AS "
        f"$$ BEGIN RAISE EXCEPTION '{WORDS}' USING ERRCODE = 'integrity_constraint_violation'; END $$"
    )
    for table in tables:
        yield (
            f"CREATE OR REPLACE TRIGGER ink_row_{table.name} BEFORE UPDATE OR DELETE ON {table.name} "
            "FOR EACH ROW EXECUTE FUNCTION shop_ink_is_dry()"
        )
        yield (
            f"CREATE OR REPLACE TRIGGER ink_truncate_{table.name} BEFORE TRUNCATE ON {table.name} "
            "FOR EACH STATEMENT EXECUTE FUNCTION shop_ink_is_dry()"
        )
