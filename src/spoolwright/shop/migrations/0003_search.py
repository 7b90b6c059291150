"""Index what search looks through: FTS5 beside the table on SQLite, a GIN index on PostgreSQL."""

from django.db import migrations

SQLITE = (
    "CREATE VIRTUAL TABLE shop_findable_words USING fts5("
    "folded_title, folded_words, content='shop_findable', content_rowid='id', prefix='2 3')",
    "CREATE TRIGGER shop_findable_added AFTER INSERT ON shop_findable BEGIN "
    "INSERT INTO shop_findable_words (rowid, folded_title, folded_words) "
    "VALUES (NEW.id, NEW.folded_title, NEW.folded_words); END",
    "CREATE TRIGGER shop_findable_gone AFTER DELETE ON shop_findable BEGIN "
    "INSERT INTO shop_findable_words (shop_findable_words, rowid, folded_title, folded_words) "
    "VALUES ('delete', OLD.id, OLD.folded_title, OLD.folded_words); END",
    "CREATE TRIGGER shop_findable_changed AFTER UPDATE ON shop_findable BEGIN "
    "INSERT INTO shop_findable_words (shop_findable_words, rowid, folded_title, folded_words) "
    "VALUES ('delete', OLD.id, OLD.folded_title, OLD.folded_words); "
    "INSERT INTO shop_findable_words (rowid, folded_title, folded_words) "
    "VALUES (NEW.id, NEW.folded_title, NEW.folded_words); END",
    "INSERT INTO shop_findable_words (shop_findable_words) VALUES ('rebuild')",
)
SQLITE_BACK = (
    "DROP TRIGGER shop_findable_changed",
    "DROP TRIGGER shop_findable_gone",
    "DROP TRIGGER shop_findable_added",
    "DROP TABLE shop_findable_words",
)
POSTGRESQL = (
    "CREATE INDEX shop_findable_words ON shop_findable USING gin (("
    "setweight(to_tsvector('simple', folded_title), 'A') || "
    "setweight(to_tsvector('simple', folded_words), 'B')))",
)
POSTGRESQL_BACK = ("DROP INDEX shop_findable_words",)


def run(schema_editor, sqlite, postgresql):
    statements = sqlite if schema_editor.connection.vendor == "sqlite" else postgresql
    with schema_editor.connection.cursor() as cursor:
        for statement in statements:
            cursor.execute(statement)


def index(apps, schema_editor):
    run(schema_editor, SQLITE, POSTGRESQL)


def drop(apps, schema_editor):
    run(schema_editor, SQLITE_BACK, POSTGRESQL_BACK)


class Migration(migrations.Migration):
    dependencies = [("shop", "0002_ink")]
    operations = [migrations.RunPython(index, drop)]
