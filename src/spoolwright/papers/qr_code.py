"""A QR code as a picture that a paper can carry."""

from __future__ import annotations

import io

from spoolwright.papers.typesetting import Picture


def of(address: str, alt: str) -> Picture:
    """The address as a QR code (error correction M: a thumb's dirt may cover a seventh of it)."""
    import segno

    if not address.strip():
        raise ValueError("a QR code needs an address, nothing was given")
    drawing = io.BytesIO()
    segno.make(address, error="m", micro=False).save(
        drawing, kind="svg", border=0, xmldecl=False, svgns=True, nl=False
    )
    return Picture(drawing.getvalue().decode(), alt)
