"""What the shop book leaves out and takes back again; a row of a proof keeps the chance that its pass is wrong.

The column that is added may be null, so neither database remakes that table on the way forward. On the way back
SQLite does, and so strips it of its triggers: they are laid again.
"""

import django.db.models.deletion
from django.conf import settings
from django.db import migrations, models

from spoolwright.shop.records import ink

# Frozen: the tables as this migration makes them.
TABLES = (
    ("shop_setaside", (("id",),)),
    ("shop_takenback", (("set_aside_id",),)),
)
PROOF_ROW = ink.InkedTable("shop_proofrow", (("id",),))


def inked():
    return [ink.InkedTable(name, unique) for name, unique in TABLES]


def lay(apps, schema_editor):
    ink.lay(schema_editor.connection, inked())


def lift(apps, schema_editor):
    ink.lift(schema_editor.connection, inked())


def lay_on_proofs(apps, schema_editor):
    ink.lay(schema_editor.connection, [PROOF_ROW])


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0008_instruments'),
    ]

    operations = [
        migrations.RunPython(migrations.RunPython.noop, lay_on_proofs),
        migrations.CreateModel(
            name='SetAside',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('coefficient', models.CharField(blank=True, max_length=200)),
                ('reason', models.TextField()),
                ('written_at', models.DateTimeField()),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='set_aside', to='shop.entry')),
            ],
            options={
                'ordering': ['id'],
            },
        ),
        migrations.AddField(
            model_name='proofrow',
            name='chance_of_wrong_pass',
            field=models.FloatField(blank=True, null=True),
        ),
        migrations.CreateModel(
            name='TakenBack',
            fields=[
                ('set_aside', models.OneToOneField(on_delete=django.db.models.deletion.PROTECT, primary_key=True, related_name='taken_back', serialize=False, to='shop.setaside')),
                ('written_at', models.DateTimeField()),
                ('words', models.TextField(blank=True)),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.AddConstraint(
            model_name='setaside',
            constraint=models.CheckConstraint(condition=models.Q(('reason', ''), _negated=True), name='shop_set_aside_has_reason'),
        ),
        migrations.RunPython(lay, lift),
    ]
