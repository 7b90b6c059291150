"""A certificate that the shop makes for itself, so that what passes on its network is encrypted."""

from __future__ import annotations

import ipaddress
import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from cryptography.x509 import Certificate

FOLDER, CERTIFICATE, KEY = "own-certificate", "certificate.pem", "key.pem"
HOLDS = timedelta(days=365)
RENEWED_BEFORE = timedelta(days=14)
CLOCKS_DIFFER = timedelta(days=1)
"""A phone whose clock is behind must not find the certificate not yet valid."""


@dataclass(frozen=True)
class OwnCertificate:
    """Where the two files lie, and what a person compares."""

    certificate: Path
    key: Path
    fingerprint: str
    ends: datetime
    is_new: bool


def certificate_for(data: Path, names: Sequence[str]) -> OwnCertificate:
    """The kept certificate where it holds for these names and addresses, else a new one."""
    folder = data / FOLDER
    kept = _kept(folder)
    if kept is not None and _holds(kept, names):
        return _told(folder, kept, is_new=False)
    return _told(folder, _make(folder, names), is_new=True)


def _told(folder: Path, certificate: Certificate, *, is_new: bool) -> OwnCertificate:
    from cryptography.hazmat.primitives import hashes

    fingerprint = certificate.fingerprint(hashes.SHA256()).hex(":").upper()
    ends = certificate.not_valid_after_utc
    return OwnCertificate(folder / CERTIFICATE, folder / KEY, fingerprint, ends, is_new)


def _kept(folder: Path) -> Certificate | None:
    """The certificate that lies there, if its key lies beside it and both can be read and belong together."""
    from cryptography import x509
    from cryptography.hazmat.primitives.serialization import load_pem_private_key

    try:
        found = x509.load_pem_x509_certificate((folder / CERTIFICATE).read_bytes())
        key = load_pem_private_key((folder / KEY).read_bytes(), None)
    except (OSError, ValueError, TypeError):
        return None
    return found if key.public_key() == found.public_key() else None


def _holds(certificate: Certificate, names: Sequence[str]) -> bool:
    from cryptography.x509 import SubjectAlternativeName

    now = datetime.now(UTC)
    named = certificate.extensions.get_extension_for_class(SubjectAlternativeName).value
    is_time = certificate.not_valid_before_utc <= now < certificate.not_valid_after_utc - RENEWED_BEFORE
    return is_time and set(named) == set(_general(names))


def _general(names: Sequence[str]) -> list[Any]:
    from cryptography import x509

    found: list[Any] = []
    for name in dict.fromkeys(names):
        try:
            found.append(x509.IPAddress(ipaddress.ip_address(name)))
        except ValueError:
            found.append(x509.DNSName(name))
    return found


def _make(folder: Path, names: Sequence[str]) -> Certificate:
    from cryptography.hazmat.primitives.asymmetric import ec
    from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat

    key = ec.generate_private_key(ec.SECP256R1())
    made = _signed(key, names)
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    secret = key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())
    _put(folder / KEY, secret)
    _put(folder / CERTIFICATE, made.public_bytes(Encoding.PEM))
    return made


def _signed(key: Any, names: Sequence[str]) -> Certificate:
    from cryptography import x509
    from cryptography.hazmat.primitives import hashes
    from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

    now = datetime.now(UTC)
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Spoolwright in this workshop")])
    builder = x509.CertificateBuilder().subject_name(name).issuer_name(name).public_key(key.public_key())
    builder = builder.serial_number(x509.random_serial_number())
    builder = builder.not_valid_before(now - CLOCKS_DIFFER).not_valid_after(now + HOLDS)
    builder = builder.add_extension(x509.SubjectAlternativeName(_general(names)), critical=False)
    builder = builder.add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
    use = x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH])
    return builder.add_extension(use, critical=False).sign(key, hashes.SHA256())


def _put(path: Path, data: bytes) -> None:
    """Written beside and moved into place: never half a file, never readable by anybody else."""
    half = path.with_suffix(".half")
    half.unlink(missing_ok=True)
    handle = os.open(half, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as file:
        file.write(data)
    half.replace(path)
