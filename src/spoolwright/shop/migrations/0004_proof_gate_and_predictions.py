"""Keep what was expected when a reel was quoted, what was tried by hand at its release, and who signed."""

import django.db.models.deletion
from django.db import migrations, models

from spoolwright.shop.records import ink

# Frozen: the tables as this migration makes them.
TABLES = (
    ("shop_quoteprediction", (("option_id",),)),
    ("shop_proofcheck", (("id",),)),
    ("shop_proofsign", (("entry_id",),)),
)


def inked():
    return [ink.InkedTable(name, unique) for name, unique in TABLES]


def lay(apps, schema_editor):
    ink.lay(schema_editor.connection, inked())


def lift(apps, schema_editor):
    ink.lift(schema_editor.connection, inked())


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0003_search'),
    ]

    operations = [
        migrations.CreateModel(
            name='QuotePrediction',
            fields=[
                ('option', models.OneToOneField(on_delete=django.db.models.deletion.PROTECT, primary_key=True, related_name='prediction', serialize=False, to='shop.quoteoption')),
                ('values', models.JSONField(blank=True, default=dict)),
                ('star_turns', models.JSONField(blank=True, default=list)),
                ('limited_by', models.TextField(blank=True)),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='ProofCheck',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('position', models.PositiveSmallIntegerField()),
                ('key', models.CharField(max_length=40)),
                ('words', models.CharField(max_length=300)),
                ('proof', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='checks', to='shop.proof')),
            ],
            options={
                'ordering': ['proof_id', 'position'],
            },
        ),
        migrations.CreateModel(
            name='ProofSign',
            fields=[
                ('entry', models.OneToOneField(on_delete=django.db.models.deletion.PROTECT, primary_key=True, related_name='proof_sign', serialize=False, to='shop.entry')),
                ('proof', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='signs', to='shop.proof')),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.RunPython(lay, lift),
    ]
