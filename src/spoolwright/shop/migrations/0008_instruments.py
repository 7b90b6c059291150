"""The shop's own instruments with their checks and studies; a reading may say with which of them it was taken.

The column that is added to a reading may be null, so neither database remakes that table on the way forward. On
the way back SQLite does, and so strips it of its triggers: they are laid again.
"""

import django.db.models.deletion
from django.conf import settings
from django.db import migrations, models

from spoolwright.shop.records import ink

# Frozen: the tables as this migration makes them.
TABLES = (
    ("shop_instrument", (("id",), ("mark",))),
    ("shop_instrumentversion", (("id",), ("instrument_id", "number"))),
    ("shop_instrumentcheck", (("id",),)),
    ("shop_gaugestudy", (("id",),)),
    ("shop_gaugetrial", (("id",), ("study_id", "part", "person", "trial"))),
)
READING = ink.InkedTable("shop_reading", (("entry_id",),))


def inked():
    return [ink.InkedTable(name, unique) for name, unique in TABLES]


def lay(apps, schema_editor):
    ink.lay(schema_editor.connection, inked())


def lift(apps, schema_editor):
    ink.lift(schema_editor.connection, inked())


def lay_on_readings(apps, schema_editor):
    ink.lay(schema_editor.connection, [READING])


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0007_more_ways'),
    ]

    operations = [
        migrations.RunPython(migrations.RunPython.noop, lay_on_readings),
        migrations.CreateModel(
            name='Instrument',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('mark', models.CharField(max_length=40, unique=True)),
                ('kind', models.CharField(max_length=40)),
                ('dimension', models.CharField(max_length=40)),
                ('written_at', models.DateTimeField()),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='GaugeStudy',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('what', models.CharField(max_length=200)),
                ('dimension', models.CharField(max_length=40)),
                ('day', models.DateField()),
                ('tolerance_si', models.FloatField(blank=True, null=True)),
                ('written_at', models.DateTimeField()),
                ('words', models.TextField(blank=True)),
                ('attachment', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.PROTECT, related_name='+', to='shop.attachment')),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
                ('instrument', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='studies', to='shop.instrument')),
            ],
            options={
                'ordering': ['instrument_id', 'day', 'id'],
            },
        ),
        migrations.AddField(
            model_name='reading',
            name='instrument',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.PROTECT, related_name='readings', to='shop.instrument'),
        ),
        migrations.CreateModel(
            name='InstrumentCheck',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('day', models.DateField()),
                ('against', models.CharField(max_length=200)),
                ('nominal_si', models.FloatField()),
                ('found_si', models.FloatField()),
                ('standard_uncertainty_si', models.FloatField()),
                ('written_at', models.DateTimeField()),
                ('words', models.TextField(blank=True)),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
                ('instrument', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='checks', to='shop.instrument')),
            ],
            options={
                'ordering': ['instrument_id', 'day', 'id'],
            },
        ),
        migrations.CreateModel(
            name='GaugeTrial',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('part', models.CharField(max_length=60)),
                ('person', models.CharField(max_length=60)),
                ('trial', models.PositiveSmallIntegerField()),
                ('value_si', models.FloatField()),
                ('study', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='trials', to='shop.gaugestudy')),
            ],
            options={
                'ordering': ['study_id', 'id'],
                'constraints': [models.UniqueConstraint(fields=('study', 'part', 'person', 'trial'), name='shop_gauge_trial_once')],
            },
        ),
        migrations.CreateModel(
            name='InstrumentVersion',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('number', models.PositiveIntegerField()),
                ('name', models.CharField(max_length=200)),
                ('serial', models.CharField(blank=True, max_length=100)),
                ('resolution_si', models.FloatField()),
                ('limit_si', models.FloatField(blank=True, null=True)),
                ('limit_share', models.FloatField(blank=True, null=True)),
                ('range_low_si', models.FloatField(blank=True, null=True)),
                ('range_high_si', models.FloatField(blank=True, null=True)),
                ('retired', models.BooleanField(default=False)),
                ('written_at', models.DateTimeField()),
                ('words', models.TextField(blank=True)),
                ('author', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to=settings.AUTH_USER_MODEL)),
                ('instrument', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='versions', to='shop.instrument')),
            ],
            options={
                'ordering': ['instrument_id', 'number'],
                'constraints': [models.UniqueConstraint(fields=('instrument', 'number'), name='shop_instrument_version_once')],
            },
        ),
        migrations.RunPython(lay, lift),
    ]
