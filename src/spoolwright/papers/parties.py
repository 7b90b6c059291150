"""Who stands on a paper: the shop at its head, the person it is written to, the reel it is about."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class House:
    """The shop at the head of a paper.

    `lines` is its street and town, `contact` telephone and mail, `registration` what the law asks for at
    the foot (number of the business, tax number).
    """

    name: str
    lines: tuple[str, ...] = ()
    contact: tuple[str, ...] = ()
    registration: str = ""


@dataclass(frozen=True)
class Addressee:
    """The person a paper is written to, as the envelope's window shows it."""

    name: str
    lines: tuple[str, ...] = ()


@dataclass(frozen=True)
class ReelMark:
    """The reel a paper is about: its tag, its name, and the marks by which it is known ("338 g, RH")."""

    number: str
    name: str
    marks: str = ""
