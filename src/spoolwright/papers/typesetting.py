"""Sets a paper: plain data and pictures in, a tagged PDF out, the same bytes for the same input.

Data reaches the template as JSON and is never built into its source, so no name can become markup.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from spoolwright.papers.lettering import breakable, settable

ROOM = Path(__file__).parent
TEMPLATES = ROOM / "templates"
FONTS = ROOM / "fonts"
STANDARD = "ua-1"
"""PDF/UA-1 (ISO 14289-1): a paper that a screen reader can read."""


@dataclass(frozen=True)
class Picture:
    """A drawing for a paper: SVG text, and the words that stand for it where it cannot be seen."""

    svg: str
    alt: str


class PaperRefused(ValueError):
    """The paper could not be set; `reason` says why in the typesetter's words."""

    def __init__(self, paper: str, reason: str) -> None:
        self.paper = paper
        self.reason = reason
        super().__init__(f"the paper {paper!r} could not be set: {reason}")


def _fit(value: Any) -> Any:
    """The same data with every text in it fit for the type."""
    if isinstance(value, str):
        return breakable(settable(value))
    if isinstance(value, Mapping):
        return {str(key): _fit(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_fit(inner) for inner in value]
    return value


def _picture_data(pictures: Mapping[str, Picture]) -> dict[str, dict[str, str | None]]:
    return {
        name: {"svg": settable(picture.svg), "alt": settable(picture.alt).strip() or None}
        for name, picture in pictures.items()
    }


def render(template: str, data: Mapping[str, Any], pictures: Mapping[str, Picture] | None = None) -> bytes:
    """One paper as a PDF/UA-1 file.

    `template` is a name in papers/templates without its ending; `data` is anything JSON holds; a picture
    without words is refused. Raises PaperRefused.
    """
    import typst

    source = TEMPLATES / f"{template}.typ"
    if not source.is_file():
        known = ", ".join(sorted(path.stem for path in TEMPLATES.glob("*.typ") if path.stem != "house"))
        raise PaperRefused(template, f"there is no such template; known are {known}")
    paper = {"data": _fit(data), "pictures": _picture_data(pictures or {})}
    try:
        return typst.compile(
            source,
            root=TEMPLATES,
            font_paths=[FONTS],
            ignore_system_fonts=True,
            sys_inputs={"paper": json.dumps(paper, ensure_ascii=False, sort_keys=True)},
            pdf_standards=[STANDARD],
        )
    except typst.TypstError as fault:
        raise PaperRefused(template, fault.message) from fault
