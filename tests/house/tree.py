"""The tree as the house tests see it: which files there are, and what is in them."""

import ast
import subprocess
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SOURCE = ROOT / "src" / "spoolwright"
Function = ast.FunctionDef | ast.AsyncFunctionDef


@cache
def tracked() -> tuple[Path, ...]:
    """Every file that is or would be committed."""
    asked = ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"]
    told = subprocess.run(asked, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    return tuple(path for name in sorted(set(told.split("\0"))) if name and (path := ROOT / name).is_file())


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
