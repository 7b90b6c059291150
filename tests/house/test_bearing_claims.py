"""No text says that ceramic or hybrid bearings spin longer: 84 real hand-spun times deny it.

Source: ali-raheem/fidgetspinner-dataset (MIT); tests/reference/test_spin_times.py reads them. Open steel spun
longest, full ceramic among the shortest, and no difference between them is shown with two spinners.
"""

from __future__ import annotations

import re
import tomllib

from tests.house.tree import ROOT

TEXTS = (".py", ".toml", ".html", ".typ", ".md", ".js")
BALLS = r"(?:ceramics?|hybrids?)\b"
BETTER = (
    r"(?:spin|spins|spun|turn|turns|run|runs|cast|casts)\s+(?:\w+\s+)?(?:longer|farther|further|freer|faster)"
    r"|(?:longer|freer|faster) (?:spin|spool|cast)|less (?:friction|drag)|faster than (?:steel|stainless)"
)
CLAIM = re.compile(rf"{BALLS}[^.;\n]{{0,60}}(?:{BETTER})", re.IGNORECASE)
DENIED = re.compile(r"\b(?:no|not|never|nor|neither|nothing|deny|denies)\b", re.IGNORECASE)


def claims(text: str) -> list[str]:
    return [found.group(0) for found in CLAIM.finditer(text) if not DENIED.search(found.group(0))]


def test_a_claim_would_be_found() -> None:
    assert claims("Hybrid bearings spin longer.")
    assert claims("full ceramic: less friction than any")
    assert not claims("Hybrid bearings do not spin longer.")
    assert not claims("open steel bearings ran longer than hybrids")


def test_no_text_says_that_ceramic_or_hybrid_bearings_spin_longer() -> None:
    places = [ROOT / "README.md", ROOT / "CHANGELOG.md", *(ROOT / "docs").rglob("*.md")]
    places += [path for path in (ROOT / "src").rglob("*") if path.suffix in TEXTS and path.is_file()]
    found = {
        str(path.relative_to(ROOT)): said for path in places if (said := claims(path.read_text("utf-8")))
    }
    assert found == {}


def test_a_work_that_fits_hybrids_promises_no_less_drag_than_new_steel_ones() -> None:
    text = (ROOT / "src/spoolwright/judgement/works.toml").read_text("utf-8")
    works = {work["id"]: work for work in tomllib.loads(text)["works"]}
    steel, hybrid = (
        next(e["becomes"] for e in works[key]["effects"] if e["on"] == "bearing_condition")
        for key in ("new-spool-bearings", "hybrid-spool-bearings")
    )
    assert hybrid[0] >= steel[0]
    assert hybrid[1] >= steel[1]


def test_a_work_that_fits_hybrids_is_no_answer_to_short_casts_or_a_short_spin() -> None:
    text = (ROOT / "src/spoolwright/judgement/works.toml").read_text("utf-8")
    hybrid = next(work for work in tomllib.loads(text)["works"] if work["id"] == "hybrid-spool-bearings")
    assert "casts-short" not in hybrid.get("answers", ())
    assert "spin_time" not in hybrid.get("readings", ())
