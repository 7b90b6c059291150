"""The line to the house, lost and found again: a browser takes a moment to notice either."""

from __future__ import annotations

from playwright.sync_api import Page

ANSWERS = """async here => {
    for (let tries = 0; tries < 200; tries += 1) {
        try {
            const reply = navigator.onLine && await fetch(here, { method: 'HEAD', cache: 'no-store' });
            if (reply.ok) return true;
        } catch { /* not yet */ }
        await new Promise(later => setTimeout(later, 50));
    }
    return false;
}"""


def lose(page: Page) -> None:
    page.context.set_offline(True)


def find_again(page: Page) -> None:
    """Back only when the page itself can reach the house."""
    page.context.set_offline(False)
    assert page.evaluate(ANSWERS, "/here/"), "the house stayed out of reach"
