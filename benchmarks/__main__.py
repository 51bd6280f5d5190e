"""Measure, and print tables. Nothing is asserted: machines differ."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from pathlib import Path

from benchmarks.cutting import cutting_results, cutting_rows, cutting_table
from benchmarks.editing import editing_rows, memory_line
from benchmarks.finding import finding_rows
from benchmarks.frames import NoBrowserError, frame_rows
from benchmarks.nesting import nesting_rows
from benchmarks.stages import edit_rows, effort_rows, publish_rows, stage_rows
from benchmarks.starting import starting_rows
from benchmarks.timing import Row, table

EXAMPLES = Path(__file__).parent.parent / "examples"
DESIGNS = Path(__file__).parent / "designs"
"""Those too large to be examples."""
LARGEST = DESIGNS / "sixteen-hundred-on-point.toml"


def start(files: list[Path]) -> None:
    """Time the command as it is typed."""
    say("The bare command, whole process", starting_rows(files[0]))


def stages(files: list[Path]) -> None:
    """Time the stages of each design, together and one by one."""
    say("From the text to findings and plan (aim for 1,600 units: 100 ms)", edit_rows(files))
    say(
        "From the text to first figures, no plan remembered: proved, and quick (aim for the plans: 50 ms)",
        effort_rows(files),
    )
    for file in files:
        say(f"The stages of {file.stem}", stage_rows(file))


def publish(files: list[Path]) -> None:
    """Time booklets and whole publishes."""
    say("The booklet (aim: 3 s) and the whole publish, rehearsal included", publish_rows(files))


def studio(_: list[Path]) -> None:
    """Time edits of the studio, and weigh its memory."""
    say("An edit in the studio at 1,625 units (aim: first figures in 150 ms)", editing_rows(LARGEST))
    print(f"{memory_line(LARGEST)}\n", flush=True)


def frames(_: list[Path]) -> None:
    """Time the frames of the page in Chromium."""
    try:
        rows = frame_rows(LARGEST)
    except NoBrowserError as error:
        print(f"Frames are left out: {error}\n", flush=True)
    else:
        say("Frames of the quilt room at 1,625 units (aim: 16.7 ms)", rows)


def finder(_: list[Path]) -> None:
    """Time searches for settings."""
    say("Finding settings", finding_rows())


def cutting(_: list[Path]) -> None:
    """Time the cutting of strips."""
    results = cutting_results()
    say("Cutting strips: generated jobs", cutting_rows(results))
    print(f"Cutting strips: lengths in inches\n{cutting_table(results)}\n", flush=True)


def nesting(_: list[Path]) -> None:
    """Time the nesting of outlines."""
    say("Nesting: one run each", nesting_rows())


PARTS: dict[str, Callable[[list[Path]], None]] = {
    part.__name__: part for part in (start, stages, publish, studio, frames, finder, cutting, nesting)
}


def main(arguments: list[str]) -> int:
    """Run the parts named, or all, on the designs named, or on the examples."""
    parts, files = _asked(arguments)
    for part in parts:
        PARTS[part](files)
    return 0


def _asked(arguments: list[str]) -> tuple[list[str], list[Path]]:
    told = "\n".join(f"  {name:9} {part.__doc__}" for name, part in PARTS.items())
    parser = argparse.ArgumentParser(
        prog="./bench",
        description=f"Measure, and print tables. The parts:\n\n{told}",
        epilog="Without the name of a part all are run; without a design, the examples and the large designs.",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("what", nargs="*", metavar="PART|FILE", help="parts to run, and design files")
    what: list[str] = parser.parse_args(arguments).what
    files = [Path(name) for name in what if name not in PARTS]
    for file in files:
        if not file.is_file():
            parser.error(f"{file} is neither a part ({', '.join(PARTS)}) nor a file")
    every = [*sorted(EXAMPLES.glob("*.toml")), *sorted(DESIGNS.glob("*.toml"))]
    return [name for name in PARTS if name in what] or list(PARTS), files or every


def say(title: str, rows: list[Row]) -> None:
    """Print one table."""
    print(f"{title}\n{table(rows)}\n", flush=True)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
