"""The tree as the house tests see it: which files there are, and what is in them."""

import ast
import subprocess
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SOURCE = ROOT / "src" / "spoolwright"
Function = ast.FunctionDef | ast.AsyncFunctionDef


NOT_OURS = {".git", ".venv", "shop-data", "build", "test-results", "staticfiles", "__pycache__"}


@cache
def tracked() -> tuple[Path, ...]:
    """Every file that is or would be committed; in an unpacked archive, every file that is not made here."""
    asked = ["git", "-c", f"safe.directory={ROOT}", "ls-files", "-co", "--exclude-standard", "-z"]
    if (ROOT / ".git").exists():
        told = subprocess.run(asked, cwd=ROOT, capture_output=True, text=True, check=True).stdout
        names = sorted(set(filter(None, told.split("\0"))))
        return tuple(path for name in names if (path := ROOT / name).is_file())
    found = (path for path in sorted(ROOT.rglob("*")) if path.is_file())
    return tuple(path for path in found if not NOT_OURS & set(path.relative_to(ROOT).parts))


def python_files(*below: str) -> list[Path]:
    """Our Python files below these folders, without the migrations that the framework wrote."""
    roots = [ROOT / folder for folder in below]
    return [
        path
        for path in tracked()
        if path.suffix == ".py"
        and "migrations" not in path.parts
        and any(root in path.parents for root in roots)
    ]


@cache
def parsed(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"), filename=str(path))


def functions(path: Path) -> list[Function]:
    return [node for node in ast.walk(parsed(path)) if isinstance(node, Function)]


def short(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def place(path: Path, node: ast.AST) -> str:
    return f"{short(path)}:{getattr(node, 'lineno', 1)}"
