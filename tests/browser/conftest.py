"""A real browser on the real server: one of each for all tests, a fresh shop for each test.

The fixtures that tests take: `shop` (the address and the two people), `desk_page`, `phone_page` (signed in as
the owner), `stranger_page` (nobody signed in), `expect_trouble` and `axe`.
"""

import os
import threading
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

from tests.browser.find import find

# Playwright runs an event loop in this thread, and Django would take that for asynchronous code.
os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"

QUIET = (
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)
SIZES = {"desk": (1280, 900), "phone": (390, 844)}
PATIENCE = 20_000  # ms: a machine that does three things at once is slow, not wrong
AXE_RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]
AXE_OPTIONS = {"runOnly": AXE_RULES, "resultTypes": ["violations"]}  # what passes is not described in full


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if Path(__file__).parent in item.path.parents:
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The browser, started once."""
    expect.set_options(timeout=PATIENCE)
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    flags = [*QUIET, *(["--no-sandbox"] if as_root else [])]
    executable = find()
    with sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=executable, args=flags)
        yield started
        started.close()


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The program's own server on a free port, in a thread, started once."""
    from django.conf import settings
    from django.core.wsgi import get_wsgi_application

    from spoolwright.command.listening import server

    serving = server(get_wsgi_application(), "127.0.0.1", 0, settings.LARGEST_UPLOAD)
    threading.Thread(target=serving.run, daemon=True).start()
    yield f"http://127.0.0.1:{serving.effective_port}"
    serving.close()


@dataclass(frozen=True)
class Shop:
    """A shop of this test alone: nothing in it yet but its people."""

    address: str
    owner: Any
    bench: Any


@pytest.fixture
def shop(own_database: None, address: str) -> Shop:
    from tests.people import bench_hand, owner

    return Shop(address, owner(), bench_hand())


def cookie_of(person: Any) -> dict[str, str]:
    from django.conf import settings
    from django.test import Client

    client = Client()
    client.force_login(person)
    name = settings.SESSION_COOKIE_NAME
    return {"name": name, "value": client.cookies[name].value}


@dataclass
class Trouble:
    """What a page complained of, and what the test said beforehand that it would complain of."""

    seen: list[str] = field(default_factory=list)
    expected: list[str] = field(default_factory=list)

    def watch(self, context: BrowserContext) -> None:
        def told(message: Any) -> None:
            if message.type in ("error", "warning"):
                self.seen.append(f"{message.type}: {message.text} ({message.location.get('url', '')})")

        context.on("console", told)
        context.on("weberror", lambda error: self.seen.append(f"script error: {error.error}"))

    def left(self) -> list[str]:
        """What nobody expected. Who types on has the question of a letter ago given up: no fault."""
        given_up = ("htmx:sendAbort", "htmx:afterRequest") if self._given_up() else ()
        known = (*self.expected, *given_up)
        return [line for line in self.seen if not any(words in line for words in known)]

    def _given_up(self) -> bool:
        """Each request that ends without an answer is told twice; here all of them were given up."""
        told = [sum(words in line for line in self.seen) for words in ("htmx:sendAbort", "htmx:afterRequest")]
        return told[0] == told[1] > 0


@pytest.fixture
def trouble() -> Iterator[Trouble]:
    """Fails the test when a page broke its own security policy, a script failed or a file was missing."""
    found = Trouble()
    yield found
    assert not found.left(), "The browser complained:\n" + "\n".join(found.left())


@pytest.fixture
def expect_trouble(trouble: Trouble) -> Callable[[str], None]:
    """`expect_trouble("413")`: complaints with these words in them are what the test is about."""
    return trouble.expected.append


@pytest.fixture
def new_page(browser: Browser, shop: Shop, trouble: Trouble) -> Iterator[Callable[..., Page]]:
    """`new_page("phone", person)`: a window of its own, signed in as this person, or as nobody."""
    opened: list[BrowserContext] = []

    def make(size: str = "desk", person: Any = None, **more: Any) -> Page:
        width, height = SIZES[size]
        phone = {"is_mobile": True, "has_touch": True, "device_scale_factor": 2} if size == "phone" else {}
        context = browser.new_context(
            base_url=shop.address, viewport={"width": width, "height": height}, **phone, **more
        )
        opened.append(context)
        context.set_default_timeout(PATIENCE)
        trouble.watch(context)
        if person is not None:
            context.add_cookies([{**cookie_of(person), "url": shop.address}])
        return context.new_page()

    yield make
    for context in opened:
        context.close()


@pytest.fixture
def desk_page(new_page: Callable[..., Page], shop: Shop) -> Page:
    """1280 x 900, signed in as the owner."""
    return new_page("desk", shop.owner)


@pytest.fixture
def phone_page(new_page: Callable[..., Page], shop: Shop) -> Page:
    """390 x 844 with a thumb, signed in as the owner."""
    return new_page("phone", shop.owner)


@pytest.fixture
def stranger_page(new_page: Callable[..., Page]) -> Page:
    """1280 x 900, nobody signed in."""
    return new_page("desk")


@pytest.fixture
def axe() -> Callable[..., None]:
    """`axe(page)`: fails with the rule, the help and the place for each breach of WCAG 2.2 AA.

    `axe(page, "#next")` looks at one part of the page only.
    """
    from axe_playwright_python.sync_playwright import Axe

    def check(page: Page, part: str | None = None) -> None:
        found = Axe().run(page, part, options=AXE_OPTIONS).response["violations"]
        lines = [
            f"{breach['id']}: {breach['help']} at {node['html'][:160]}"
            for breach in found
            for node in breach["nodes"]
        ]
        assert not lines, f"{page.url} is not accessible:\n" + "\n".join(lines)

    return check
