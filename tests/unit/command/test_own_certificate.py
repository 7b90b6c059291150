"""The certificate of the shop's own making: what is in it, when it is kept, when it is made anew."""

import os
import stat
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec

from spoolwright.command import own_certificate
from spoolwright.command.own_certificate import certificate_for

NAMES = ["192.168.1.20", "bench", "bench.local", "127.0.0.1", "localhost"]


def test_it_names_the_addresses_and_holds_for_a_year(tmp_path: Path) -> None:
    made = certificate_for(tmp_path, NAMES)
    read = x509.load_pem_x509_certificate(made.certificate.read_bytes())
    named = read.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert [str(one) for one in named.get_values_for_type(x509.IPAddress)] == ["192.168.1.20", "127.0.0.1"]
    assert named.get_values_for_type(x509.DNSName) == ["bench", "bench.local", "localhost"]
    assert not read.extensions.get_extension_for_class(x509.BasicConstraints).value.ca
    assert isinstance(read.public_key(), ec.EllipticCurvePublicKey)
    year = datetime.now(UTC) + timedelta(days=365)
    assert abs(read.not_valid_after_utc - year) < timedelta(minutes=5)
    assert len(made.fingerprint.split(":")) == 32
    assert made.is_new


@pytest.mark.skipif(os.name == "nt", reason="Windows has no such permission bits")
def test_nobody_else_reads_the_key(tmp_path: Path) -> None:
    made = certificate_for(tmp_path, NAMES)
    assert stat.S_IMODE(made.key.stat().st_mode) == 0o600
    assert stat.S_IMODE(made.key.parent.stat().st_mode) == 0o700


def test_it_is_kept_so_that_a_phone_asks_once_only(tmp_path: Path) -> None:
    first = certificate_for(tmp_path, NAMES)
    again = certificate_for(tmp_path, [*reversed(NAMES), "bench"])
    assert again.fingerprint == first.fingerprint
    assert not again.is_new


def test_another_address_has_another_certificate(tmp_path: Path) -> None:
    first = certificate_for(tmp_path, NAMES)
    assert certificate_for(tmp_path, ["192.168.1.21", *NAMES[1:]]).fingerprint != first.fingerprint


def test_one_that_ends_soon_is_made_anew(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(own_certificate, "HOLDS", timedelta(days=10))
    first = certificate_for(tmp_path, NAMES)
    monkeypatch.undo()
    again = certificate_for(tmp_path, NAMES)
    assert again.is_new
    assert again.ends > first.ends


@pytest.mark.parametrize("file", [own_certificate.CERTIFICATE, own_certificate.KEY])
@pytest.mark.parametrize("damage", [b"", b"-----BEGIN CERTIFICATE-----\nAAAA\n", None])
def test_what_is_damaged_or_gone_is_made_anew(tmp_path: Path, file: str, damage: bytes | None) -> None:
    certificate_for(tmp_path, NAMES)
    place = tmp_path / own_certificate.FOLDER / file
    place.write_bytes(damage) if damage is not None else place.unlink()
    assert certificate_for(tmp_path, NAMES).is_new


def test_a_key_of_another_certificate_is_not_used(tmp_path: Path) -> None:
    other = certificate_for(tmp_path / "other", NAMES)
    ours = certificate_for(tmp_path / "ours", NAMES)
    ours.key.write_bytes(other.key.read_bytes())
    assert certificate_for(tmp_path / "ours", NAMES).is_new
