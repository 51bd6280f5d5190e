"""Keep strangers out: only this machine, only this page, only who holds the key of this run.

Every request must name a host of the loopback (a name that was made to point here cannot), come from the page itself
where a browser says from where it comes, and, but for the page and its assets, bring the token of this run.
"""

from __future__ import annotations

import hmac
from collections.abc import Iterable
from dataclasses import dataclass, field
from urllib.parse import parse_qs

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import JSONResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

TOKEN = "Studio-Token"
"""The header that brings the token of the run; where a browser sets no headers (news, pictures), `?token=`."""

HOSTS = ("127.0.0.1", "localhost", "[::1]")

POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self' blob: data:",
        "font-src 'self'",
        "connect-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
    )
)
"""What the browser lets the page do: nothing from anywhere but here (Content Security Policy Level 3)."""

SAFE_HEADERS = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
}


@dataclass(frozen=True, slots=True)
class Keys:
    """What a request must show: the token of this run, and one of the addresses that the studio answers to."""

    token: str = field(repr=False)
    port: int

    @property
    def hosts(self) -> frozenset[str]:
        """Return what `Host` may say."""
        return frozenset(f"{host}:{self.port}" for host in HOSTS)

    @property
    def origins(self) -> frozenset[str]:
        """Return what `Origin` may say."""
        return frozenset(f"http://{host}" for host in self.hosts)


class Guard:
    """Turns away every request that may not come in, and lets no answer out without its headers."""

    def __init__(self, app: ASGIApp, keys: Keys) -> None:
        self._app, self._keys = app, keys

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request, or let the studio answer it."""
        if scope["type"] == "lifespan":
            await self._app(scope, receive, send)
            return
        if scope["type"] != "http":  # no other kind of connection is served
            return

        async def send_safely(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in SAFE_HEADERS.items():
                    headers[name] = value
                if str(scope["path"]).startswith("/api/"):
                    headers["Cache-Control"] = "no-store"
            await send(message)

        if reason := self.refusal(scope):
            refused = JSONResponse({"detail": reason, "remedy": REMEDY}, status_code=403)
            await refused(scope, receive, send_safely)
            return
        await self._app(scope, receive, send_safely)

    def refusal(self, scope: Scope) -> str:
        """Return why a request may not come in, or nothing."""
        headers = Headers(scope=scope)
        if _one(headers.getlist("host")) not in self._keys.hosts:
            return "The request is for another host."
        origins = headers.getlist("origin")
        if origins and _one(origins) not in self._keys.origins:
            return "The request comes from another page."
        if headers.get("sec-fetch-site", "none") not in ("same-origin", "none"):
            return "The request comes from another page."
        if needs_token(scope) and not self._knows(headers, scope):
            return "The request does not bring the key of this run."
        return ""

    def _knows(self, headers: Headers, scope: Scope) -> bool:
        brought = headers.getlist(TOKEN)
        if not brought and scope["method"] in ("GET", "HEAD"):
            brought = parse_qs(bytes(scope["query_string"]).decode("latin-1")).get("token", [])
        return hmac.compare_digest(_one(brought).encode(), self._keys.token.encode())


REMEDY = "Open the studio by the address that it tells when it starts."


def needs_token(scope: Scope) -> bool:
    """Tell whether a request must bring the token: all but to read the page and its assets."""
    is_page = not str(scope["path"]).startswith("/api")
    return not (is_page and scope["method"] in ("GET", "HEAD"))


def _one(values: Iterable[str]) -> str:
    """Return the one value that there is; nothing where there are none or several."""
    values = list(values)
    return values[0] if len(values) == 1 else ""


def address(keys: Keys) -> str:
    """Return the address of the page. The token is behind #, which no browser sends anywhere."""
    return f"http://127.0.0.1:{keys.port}/#token={keys.token}"
