"""The program's own settings, with what the tests need different said here and nowhere else."""

import atexit
import os
import shutil
import tempfile

FOLDER = tempfile.mkdtemp(prefix="spoolwright-tests-")
atexit.register(shutil.rmtree, FOLDER, ignore_errors=True)
os.environ["SPOOLWRIGHT_DATA"] = FOLDER
os.environ["SPOOLWRIGHT_SECRET_KEY"] = "only-the-tests-use-this-key-and-it-guards-nothing"
os.environ["SPOOLWRIGHT_TIME_ZONE"] = "Europe/Oslo"
# Compiled mechanics stays beside its source, so that it is not compiled anew for every run of the tests.
os.environ.setdefault("NUMBA_CACHE_DIR", "")

from spoolwright.settings import *  # noqa: E402, F403
from spoolwright.settings import DATABASES, STORAGES  # noqa: E402

# Each test may have a database of its own, so no connection outlives a request.
DATABASES["default"]["CONN_MAX_AGE"] = 0

# Names without a hash need no collected folder; tests/unit/command/test_serve.py starts the real server with
# the real storage.
STORAGES["staticfiles"] = {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"}
WHITENOISE_USE_FINDERS = True
WHITENOISE_AUTOREFRESH = True

# A slow hash would only make every sign-in of the tests slow.
PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
