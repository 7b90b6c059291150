"""The program's own settings, with what the tests need different said here and nowhere else."""

import os
import tempfile
from pathlib import Path

os.environ["SPOOLWRIGHT_DATA"] = tempfile.mkdtemp(prefix="spoolwright-tests-")
os.environ["SPOOLWRIGHT_SECRET_KEY"] = "only-the-tests-use-this-key-and-it-guards-nothing"
os.environ["SPOOLWRIGHT_TIME_ZONE"] = "Europe/Oslo"

from spoolwright.settings import *  # noqa: E402, F403
from spoolwright.settings import DATA, STORAGES  # noqa: E402

Path(DATA).mkdir(exist_ok=True)

# Names without a hash need no collected folder; tests/unit/command/test_serve.py starts the real server with
# the real storage.
STORAGES["staticfiles"] = {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"}
WHITENOISE_USE_FINDERS = True
WHITENOISE_AUTOREFRESH = True

# A slow hash would only make every sign-in of the tests slow.
PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
