"""Lay the ink: from here on the database itself refuses to change or delete what was written once."""

from django.db import migrations

from spoolwright.shop.records import ink

# Frozen: the tables as they stand after 0001. A later migration names its own.
TABLES = (
    ('shop_answer', (('entry_id',),)),
    ('shop_arrival', (('entry_id',),)),
    ('shop_arrivalcontent', (('id',),)),
    ('shop_attachment', (('id',),)),
    ('shop_dispatch', (('entry_id',),)),
    ('shop_entry', (('id',), ('visit_id', 'seq'))),
    ('shop_entryattachment', (('id',), ('entry_id', 'position'))),
    ('shop_finding', (('entry_id',),)),
    ('shop_identitymark', (('id',),)),
    ('shop_invoice', (('entry_id',), ('number',))),
    ('shop_invoiceline', (('id',),)),
    ('shop_lubricantused', (('id',),)),
    ('shop_partfitted', (('id',),)),
    ('shop_payment', (('entry_id',),)),
    ('shop_proof', (('entry_id',),)),
    ('shop_proofrow', (('id',),)),
    ('shop_quote', (('entry_id',),)),
    ('shop_quoteline', (('id',),)),
    ('shop_quoteoption', (('id',), ('quote_id', 'key'))),
    ('shop_quotepromise', (('id',),)),
    ('shop_quotework', (('id',),)),
    ('shop_reading', (('entry_id',),)),
    ('shop_readingvalue', (('id',), ('reading_id', 'kind', 'repeat'))),
    ('shop_sheetversion', (('id',), ('sheet_id', 'number'))),
    ('shop_strike', (('entry_id',),)),
    ('shop_work', (('entry_id',),)),
    ('shop_workdone', (('id',),)),
)


def inked():
    return [ink.InkedTable(name, unique) for name, unique in TABLES]


def lay(apps, schema_editor):
    ink.lay(schema_editor.connection, inked())


def lift(apps, schema_editor):
    ink.lift(schema_editor.connection, inked())


class Migration(migrations.Migration):
    dependencies = [("shop", "0001_initial")]
    operations = [migrations.RunPython(lay, lift)]
