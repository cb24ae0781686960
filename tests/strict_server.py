"""Serves a built site as a careful publisher would: below a sub-path, with its own headers."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager, suppress
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

SUB_PATH = "/guild/handouts"


class StrictServer:
    """Where the site is, and what was asked of it. `folder` may be changed: a new version."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.asked: list[str] = []
        self.address = ""

    def headers(self) -> list[tuple[str, str]]:
        """The headers that the build has written for the publisher."""
        lines = (self.folder / "content-policy.txt").read_text(encoding="utf-8").splitlines()
        return [(name, value) for name, _, value in (line.partition(": ") for line in lines)]


@contextmanager
def serve(folder: Path) -> Iterator[StrictServer]:
    """Serve a site's folder until the block ends."""
    strict = StrictServer(folder)

    class Handler(SimpleHTTPRequestHandler):
        def __init__(self, *args: object) -> None:
            super().__init__(*args, directory=str(strict.folder))  # type: ignore[arg-type]

        def do_GET(self) -> None:
            strict.asked.append(self.path)
            if not self.path.startswith(SUB_PATH + "/"):
                self.send_error(404)
                return
            self.path = self.path.removeprefix(SUB_PATH)
            with suppress(ConnectionError):  # a page that is left lets its requests go
                super().do_GET()

        def end_headers(self) -> None:
            for name, value in strict.headers():
                self.send_header(name, value)
            super().end_headers()

        def log_message(self, format: str, *args: object) -> None:
            """Say nothing; the tests look at `asked`."""

    with ThreadingHTTPServer(("127.0.0.1", 0), Handler) as server:
        thread = Thread(target=server.serve_forever, daemon=True)
        thread.start()
        strict.address = f"http://127.0.0.1:{server.server_port}{SUB_PATH}/"
        yield strict
        server.shutdown()
        thread.join()
