"""`spoolwright serve`: open the shop in the browser."""

import argparse
import errno
import json
import os
import sys
import threading
import webbrowser
from collections.abc import Callable
from contextlib import nullcontext, redirect_stdout
from pathlib import Path

from spoolwright.command import first_start, house, listening, own_network, share

SUMMARY = "open the shop in the browser"
TYPED = "serve [--data DIR] [--empty] [--share] [--processes N] [--json]"
FULL_DISK = "The disk is full: make room where the shop's data lies, then start again."
NO_DATABASE = (
    "The database that SPOOLWRIGHT_DATABASE_URL names does not let the shop in ({}): start it or mend the "
    "address, or take the setting away to keep the shop in a file."
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--data", metavar="DIR", help="where the shop's data lies (else shop-data)")
    parser.add_argument("--host", default="127.0.0.1", help="listen on this address of this machine")
    parser.add_argument(
        "--port", type=int, metavar="N", help="this port and no other (else 8017 or the next free)"
    )
    parser.add_argument("--empty", action="store_true", help="begin without the demonstration workshop")
    parser.add_argument("--no-browser", action="store_true", help="print the link and do not open it")
    parser.add_argument("--processes", type=int, default=1, metavar="N", help="serve with N processes")
    parser.add_argument(
        "--share", action="store_true", help="let the phones of your own network in, encrypted"
    )
    parser.add_argument(
        "--share-at", metavar="ADDRESS", default="", help="share on this address of this machine"
    )
    parser.add_argument(
        "--share-port", type=int, metavar="N", help="share on this port (else 8443 or the next)"
    )
    parser.add_argument("--json", action="store_true", help="print address and link as one JSON object")


def run(args: argparse.Namespace) -> int:
    """Make ready what is missing, print the link, and serve until Ctrl-C."""
    try:
        return _serve(args)
    except (listening.NoPort, own_network.NotShared) as taken:
        print(taken, file=sys.stderr)
    except Exception as fault:
        if not (words := _in_one_line(fault)):
            raise
        print(words, file=sys.stderr)
    return 1


def _in_one_line(fault: Exception) -> str:
    """What to do about something outside the program; nothing where the fault is our own."""
    from django.core.exceptions import ImproperlyConfigured
    from django.db import OperationalError

    if _is_full_disk(fault):
        return FULL_DISK
    if isinstance(fault, ImproperlyConfigured):
        return str(fault)
    if isinstance(fault, OperationalError) and os.environ.get("SPOOLWRIGHT_DATABASE_URL"):
        return NO_DATABASE.format(" ".join(str(fault).split()))
    return ""


def _serve(args: argparse.Namespace) -> int:
    if args.host not in ("127.0.0.1", "localhost", "::1"):
        _let_in(args.host)
    port = listening.find_port(args.host, args.port)
    data = Path(args.data or house.usual_folder()).resolve()
    with redirect_stdout(sys.stderr) if args.json else nullcontext():
        is_ready = _make_ready(data, empty=args.empty)
    if not is_ready:
        print("The demonstration could not be loaded; start again, or start with --empty.", file=sys.stderr)
        return 1
    door = share.open_door(data, args.share_at, args.share_port) if args.share or args.share_at else None
    # Another program may have taken that port while the tables were made.
    port = listening.find_port(args.host, args.port)
    serve = _listen(args.host, port, 1 if door else args.processes)
    link = _announce(args.host, port, door, as_json=args.json)
    house.warm_up()
    if not args.no_browser and _has_screen():
        threading.Timer(0.3, webbrowser.open, [link]).start()
    if door:
        share.serve(door, serve, args.processes)
    else:
        serve()
    return 0


def _make_ready(data: Path, *, empty: bool) -> bool:
    house.open_house(data)
    first_start.forget_unfinished(data)
    is_new = first_start.bring_tables_up_to_date()
    first_start.collect_static(data)
    return empty or not is_new or first_start.fill_with_demonstration(data)


def _let_in(host: str) -> None:
    """Answer under an address that was asked for by name; anything beyond this machine is not encrypted."""
    house.answer_to(host)
    caution = f"Caution: {host} can be reached from your network, and what passes there is not encrypted."
    print(caution, file=sys.stderr)


def _announce(host: str, port: int, door: share.Door | None, *, as_json: bool) -> str:
    """Print where the shop is open, with a link for each door that signs one person in once."""
    address = f"http://{f'[{host}]' if ':' in host else host}:{port}"
    link = address + _way_in()
    told = {"address": f"{address}/", "link": link}
    if door:
        told |= {"shared_address": f"{door.address}/", "shared_link": door.address + _way_in()}
        told["fingerprint"] = door.certificate.fingerprint
    if as_json:
        print(json.dumps(told), flush=True)
        return link
    print(f"Spoolwright is open at {address}/")
    print(f"This link signs you in, once: {link}")
    if door:
        print("\n".join(["", *share.told(door, told["shared_link"], sys.stdout), ""]))
    print("Stop with Ctrl-C.", flush=True)
    return link


def _way_in() -> str:
    from django.urls import reverse

    return reverse("sign_in:once", args=[_token()])


def _token() -> str:
    """A token that signs the owner in; in a shop that has nobody yet, the owner is written in first."""
    from spoolwright.shop.acts.add_person import add_person
    from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
    from spoolwright.shop.questions.people import people

    owner = next((one for one in people() if one.is_owner and one.is_active), None)
    return make_sign_in_link(hand=None, person=owner or add_person(hand=None, username="owner", name="Owner"))


def _listen(host: str, port: int, processes: int) -> Callable[[], None]:
    """What to call to serve; one process listens from now on, so that the link already leads somewhere."""
    if processes > 1:
        return lambda: listening.serve_with_processes(host, port, processes)
    from django.conf import settings

    from spoolwright.command.wsgi import application

    serving: Callable[[], None] = listening.server(application, host, port, settings.LARGEST_UPLOAD).run
    return serving


def _has_screen() -> bool:
    """Without a screen Python would open a text browser in the very terminal that shows the link."""
    return sys.platform in ("win32", "darwin") or bool({"DISPLAY", "WAYLAND_DISPLAY"} & set(os.environ))


def _is_full_disk(fault: BaseException) -> bool:
    told = str(fault).lower()
    return (isinstance(fault, OSError) and fault.errno == errno.ENOSPC) or "disk is full" in told
