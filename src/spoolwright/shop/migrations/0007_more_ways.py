"""More ways in which a reading is taken. Only the choices change; neither database touches the table."""

from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('shop', '0006_carried'),
    ]

    operations = [
        migrations.AlterField(
            model_name='reading',
            name='way',
            field=models.CharField(choices=[('typed', 'typed'), ('pull trace', 'pull trace'), ('spin-down', 'spin-down'), ('pull series', 'pull series'), ('inertia', 'inertia'), ('bearing noise', 'bearing noise'), ('gear noise', 'gear noise'), ('by hand', 'by hand')], max_length=20),
        ),
    ]
