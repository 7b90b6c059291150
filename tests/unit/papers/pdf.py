"""Reads a paper back with pypdf, an outside reader: what a screen reader and a printer would find in it."""

import io

from pypdf import PdfReader
from pypdf.generic import DictionaryObject

from spoolwright.papers.lettering import ZERO_WIDTH_SPACE


def reader(paper: bytes) -> PdfReader:
    return PdfReader(io.BytesIO(paper))


def text(paper: bytes) -> str:
    """All text, in one line, without the marks where a long word may break."""
    pages = " ".join(page.extract_text() for page in reader(paper).pages)
    return " ".join(pages.replace(ZERO_WIDTH_SPACE, "").split())


def squeezed(paper: bytes) -> str:
    """The text without any space: what was broken over lines is whole again."""
    return text(paper).replace(" ", "")


def is_tagged(paper: bytes) -> bool:
    root = reader(paper).trailer["/Root"]
    return bool(root["/MarkInfo"]["/Marked"]) and "/StructTreeRoot" in root


def claims_universal_access(paper: bytes) -> bool:
    """Whether the metadata claims PDF/UA-1 (ISO 14289-1, 5: pdfuaid:part is 1)."""
    metadata = reader(paper).trailer["/Root"]["/Metadata"].get_data().decode()
    return "<pdfuaid:part>1</pdfuaid:part>" in metadata


def language(paper: bytes) -> str:
    return str(reader(paper).trailer["/Root"]["/Lang"])


def alternatives(paper: bytes) -> list[str]:
    """The words that stand for pictures, from the tree of tags."""
    found: list[str] = []
    waiting = [reader(paper).trailer["/Root"]["/StructTreeRoot"]]
    while waiting:
        node = waiting.pop()
        if not isinstance(node, DictionaryObject):
            continue
        if "/Alt" in node:
            found.append(str(node["/Alt"]))
        kids = node.get("/K", [])
        waiting += [kid.get_object() for kid in (kids if isinstance(kids, list) else [kids])]
    return found


def fonts_outside(paper: bytes) -> list[str]:
    """Fonts that the paper names and does not carry."""
    lacking = []
    for page in reader(paper).pages:
        for font in page["/Resources"].get("/Font", {}).values():
            parts = font.get_object().get("/DescendantFonts", [font])
            descriptor = parts[0].get_object()["/FontDescriptor"].get_object()
            if not any(key in descriptor for key in ("/FontFile", "/FontFile2", "/FontFile3")):
                lacking.append(str(font.get_object()["/BaseFont"]))
    return lacking
