"""News reach every window, from whatever thread, and a window that has gone is forgotten."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator

from quarterturn.studio.news import WAITING, News, Newsroom


async def take(stream: AsyncIterator[str], count: int) -> list[str]:
    """Take so many events of a stream."""
    return [await asyncio.wait_for(anext(stream), 5) for _ in range(count)]


def told(written: str) -> tuple[str, object]:
    event, data = written.removesuffix("\n\n").split("\n")
    return event.removeprefix("event: "), json.loads(data.removeprefix("data: "))


def test_news_are_written_as_the_standard_has_it() -> None:
    assert News("plans", {"said": "a\nb"}).written == 'event: plans\ndata: {"said": "a\\nb"}\n\n'


def test_a_window_hears_how_many_there_are_and_what_happens() -> None:
    async def listen() -> None:
        room = Newsroom()
        first = room.listen()
        assert await take(first, 2) == [
            "retry: 1000\n\n",
            News("window", {"windows": 1, "elsewhere": False}).written,
        ]
        second = room.listen()
        await take(second, 2)
        assert told((await take(first, 1))[0]) == ("window", {"windows": 2, "elsewhere": False})
        await asyncio.to_thread(room.tell, "revision", revision=4)
        for stream in (first, second):
            assert told((await take(stream, 1))[0]) == ("revision", {"revision": 4})
        await second.aclose()  # type: ignore[attr-defined]
        assert told((await take(first, 1))[0]) == ("window", {"windows": 1, "elsewhere": False})
        assert room.windows == 1

    asyncio.run(listen())


def test_silence_is_broken_by_a_comment() -> None:
    async def listen() -> None:
        stream = Newsroom().listen(heartbeat=0.01)
        await take(stream, 2)
        assert await take(stream, 2) == [": still here\n\n"] * 2

    asyncio.run(listen())


def test_a_window_that_is_far_behind_misses_the_oldest_and_still_ends() -> None:
    async def listen() -> None:
        room = Newsroom()
        stream = room.listen()
        await take(stream, 2)
        for revision in range(WAITING + 10):
            room.tell("revision", revision=revision)
        room.close()
        rest = [told(news) async for news in stream]
        assert len(rest) == WAITING - 1
        assert rest[-1] == ("revision", {"revision": WAITING + 9})

    asyncio.run(listen())


def test_news_to_a_window_whose_server_has_ended_go_nowhere() -> None:
    room = Newsroom()

    async def listen() -> None:
        await take(room.listen(), 2)

    asyncio.run(listen())
    room.tell("revision", revision=1)
    assert room.windows <= 1
