"""What would carry the pull after an option is kept with what was expected of it.

The column may be null, so neither database remakes the table and the triggers that hold the ink stay where they are.
"""

from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0005_strike_has_reason'),
    ]

    operations = [
        migrations.AddField(
            model_name='quoteprediction',
            name='carried',
            field=models.JSONField(blank=True, null=True),
        ),
    ]
