"""A line through an entry has its reason in the database too, not in the act alone."""

from django.db import migrations, models

from spoolwright.shop.records import ink

# Frozen: the table as it stands here. SQLite remakes it for a new constraint and so strips it of its triggers.
TABLE = ink.InkedTable("shop_strike", (("entry_id",),))


def lay(apps, schema_editor):
    ink.lay(schema_editor.connection, [TABLE])


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0004_proof_gate_and_predictions'),
    ]

    operations = [
        migrations.RunPython(migrations.RunPython.noop, lay),
        migrations.AddConstraint(
            model_name='strike',
            constraint=models.CheckConstraint(condition=models.Q(('reason', ''), _negated=True), name='shop_strike_has_reason'),
        ),
        migrations.RunPython(lay, migrations.RunPython.noop),
    ]
