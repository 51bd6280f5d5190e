"""Publish a design from the studio: in a thread of its own, told as it goes, and able to be called off."""

from __future__ import annotations

import io
import re
import threading
import zipfile
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from quarterturn.files import ForeignFolderError, guard, guard_others, write_folder
from quarterturn.studio.papers import Paper, Snapshot
from quarterturn.studio.refusals import BusyError, NotHereError, Refusal, TakenError, reason

if TYPE_CHECKING:
    from quarterturn.design import Finding
    from quarterturn.pipeline import Job
    from quarterturn.proof import Pattern, Proof
    from quarterturn.publish.release import Verdict

PartName = Literal["booklet", "templates", "picture", "lists", "selling", "findings"]


class PublishOrder(BaseModel):
    """What to publish: one size or all, on which paper, which parts (none named: all), and whether as a draft."""

    model_config = ConfigDict(frozen=True, extra="forbid")
    size: Annotated[str, Field(max_length=120)] | None = None
    paper: Literal["letter", "a4"] | None = None
    only: Annotated[tuple[PartName, ...], Field(max_length=6)] = ()
    draft: bool = False


State = Literal["none", "running", "done", "stopped", "failed", "cancelled"]


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a publish has come. `findings` are those that stop it, `reason` and `remedy` what else does."""

    state: State = "none"
    revision: int = 0
    part: str = ""
    folder: Path | None = None
    reason: str = ""
    remedy: str = ""
    findings: tuple[Finding, ...] = ()


class _CalledOffError(Exception):
    """The designer has called the publish off."""


@dataclass(slots=True)
class Run:
    """One publish: how far it has come, and what it has made."""

    paper: Paper
    order: PublishOrder
    progress: Progress
    files: dict[str, bytes] = field(default_factory=dict)
    off: threading.Event = field(default_factory=threading.Event)

    def tell(self, **changes: object) -> None:
        """Go on to something else, and let the windows know."""
        self.progress = replace(self.progress, **changes)  # type: ignore[arg-type]
        now = self.progress
        self.paper.news.tell("publish", state=now.state, part=now.part, revision=now.revision)

    def begin(self, part: str) -> None:
        """Begin a part of the work. Raises _CalledOffError."""
        if self.off.is_set():
            raise _CalledOffError
        self.tell(part=part)


class Press:
    """The last publish of each open design."""

    def __init__(self) -> None:
        self._runs: dict[str, Run] = {}
        self._lock = threading.Lock()

    def start(self, paper: Paper, order: PublishOrder) -> Progress:
        """Begin to publish a design as it is now. Raises BusyError, TakenError, UnknownSizeError, UnmadeError."""
        now, made = paper.made()
        if order.size is not None:
            made.design.in_size(order.size)
        folder = folder_of(now, order)
        if folder:
            _ask(folder, ())
        with self._lock:
            known = self._runs.get(paper.id)
            if known and known.progress.state == "running":
                raise BusyError("This design is being published.", "Wait for it, or call it off.")
            run = Run(paper, order, Progress("running", now.revision, "design", folder))
            self._runs[paper.id] = run
        begun = run.progress
        threading.Thread(target=_carry_out, args=(run, now), name="press", daemon=True).start()
        return begun

    def progress(self, paper: Paper) -> Progress:
        """Return how far the last publish of a design has come."""
        run = self._runs.get(paper.id)
        return run.progress if run else Progress()

    def call_off(self, paper: Paper) -> Progress:
        """Call a publish off; what it would have put in place stays as it was."""
        if run := self._runs.get(paper.id):
            run.off.set()
        return self.progress(paper)

    def files(self, paper: Paper) -> Mapping[str, bytes]:
        """Return what was published last; nothing where nothing was."""
        run = self._runs.get(paper.id)
        return run.files if run else {}

    def file(self, paper: Paper, name: str) -> bytes:
        """Return one published file. Raises NotHereError: nothing else can be asked for by a name."""
        content = self.files(paper).get(name)
        if content is None:
            raise NotHereError("No such file has been published.", "Publish the design first.")
        return content

    def forget(self, paper: Paper) -> None:
        """Let go of what was published of a design that is closed."""
        with self._lock:
            if run := self._runs.pop(paper.id, None):
                run.off.set()

    def stop(self) -> None:
        """Call everything off."""
        for run in self._runs.values():
            run.off.set()


def folder_of(now: Snapshot, order: PublishOrder) -> Path | None:
    """Return where a design is published: beside its file, in `out`; nowhere while it has none."""
    if now.path is None:
        return None
    word = re.sub(r"[^\w]+", "-", order.size or "").strip("-")
    return now.path.parent / "out" / (f"{now.path.stem}-{word}" if word else now.path.stem)


def zipped(files: Mapping[str, bytes]) -> bytes:
    """Return files as one archive; equal files give equal bytes."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for name in sorted(files):
            archive.writestr(zipfile.ZipInfo(name), files[name], zipfile.ZIP_DEFLATED)
    return packed.getvalue()


def _carry_out(run: Run, now: Snapshot) -> None:
    """Publish, and tell how it ended, whatever happens."""
    from quarterturn.publish import UnprintableTextError
    from quarterturn.studio.stages import UnmadeError

    try:
        _publish(run, now)
    except _CalledOffError:
        run.tell(state="cancelled")
    except UnmadeError as error:
        run.tell(state="stopped", findings=error.findings)
    except (UnprintableTextError, OSError, Refusal) as error:
        said = error.sentence if isinstance(error, Refusal) else str(error)
        said = reason(error) if isinstance(error, OSError) else said
        remedy = error.remedy if isinstance(error, Refusal) else "Mend that, and publish again."
        run.tell(state="failed", reason=said, remedy=remedy)
    except Exception as error:  # the thread ends here, and the windows must hear of it
        said = f"This is a fault of the program, not of your design ({type(error).__name__})."
        run.tell(state="failed", reason=said, remedy="Publish again, or go back by one step.")


def _publish(run: Run, now: Snapshot) -> None:
    from quarterturn.design import Severity
    from quarterturn.pipeline import judge
    from quarterturn.publish.release import release

    job = _job(run, now)

    def rehearse(pattern: Pattern) -> Proof:
        run.begin("rehearsal")
        return _proof(run, now, pattern)

    verdict: Verdict = judge(job, run.paper.name, rehearse)
    stops = tuple(found for found in verdict.findings if found.severity is Severity.STOPS)
    if stops and not run.order.draft:
        run.tell(state="stopped", findings=stops)
        return
    pattern = _on_paper(job.patterns[0], run.order.paper)
    files = release(pattern, verdict, draft=run.order.draft, only=run.order.only, watch=run.begin)
    run.begin("writing")
    if folder := run.progress.folder:
        _ask(folder, tuple(files) if run.order.only else ())
        write_folder(folder, files)
    run.files = files
    run.tell(state="done", part="")


def _job(run: Run, now: Snapshot) -> Job:
    """Return the patterns to publish, with all that the checks find. Raises UnmadeError."""
    from quarterturn.pipeline import run as run_all
    from quarterturn.studio.stages import UnmadeError

    if run.order.size is not None:
        job = run_all(now.text, run.paper.name, run.begin, run.order.size)
    else:
        run.begin("proof")
        job = run.paper.stages.at(now.text, run.paper.name).job
    if not job.patterns:
        raise UnmadeError(job.findings)
    return job


def _proof(run: Run, now: Snapshot, pattern: Pattern) -> Proof:
    """Return what the rehearsal of a pattern finds, which another view may have asked for before."""
    from quarterturn.proof import prove

    made = run.paper.stages.at(now.text, run.paper.name)
    same = next((size for size in made.sizes if size.laid_design is pattern.design), None)
    return same.proof if same else prove(pattern)


def _on_paper(pattern: Pattern, paper: str | None) -> Pattern:
    from quarterturn.design import Paper as Printed

    if paper is None:
        return pattern
    house = replace(pattern.design.house, paper=Printed(paper))
    return replace(pattern, design=replace(pattern.design, house=house))


def _ask(folder: Path, made: tuple[str, ...]) -> None:
    """Ask whether a folder may be replaced. Raises TakenError."""
    try:
        guard(folder)
        if made:
            guard_others(folder, made)
    except ForeignFolderError as error:
        raise TakenError(f"{error}.", "Move it away, or save the design somewhere else.") from error
