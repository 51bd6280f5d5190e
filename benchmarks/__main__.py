"""Measure, and print tables. Nothing is asserted: machines differ."""

from __future__ import annotations

import sys
from pathlib import Path

from benchmarks.cutting import cutting_results, cutting_rows, cutting_table
from benchmarks.editing import editing_rows, memory_line
from benchmarks.finding import finding_rows
from benchmarks.nesting import nesting_rows
from benchmarks.stages import edit_rows, effort_rows, publish_rows, stage_rows
from benchmarks.starting import starting_rows
from benchmarks.timing import Row, table

EXAMPLES = Path(__file__).parent.parent / "examples"
DESIGNS = Path(__file__).parent / "designs"
"""Those too large to be examples."""


def main(arguments: list[str]) -> int:
    """Time the examples, or the designs named."""
    files = [Path(name) for name in arguments] or [
        *sorted(EXAMPLES.glob("*.toml")),
        *sorted(DESIGNS.glob("*.toml")),
    ]
    say("The bare command, whole process", starting_rows(files[0]))
    say("From the text to findings and plan (aim for 1,600 units: 100 ms)", edit_rows(files))
    say(
        "From the text to first figures, no plan remembered: proved, and quick (aim for the plans: 50 ms)",
        effort_rows(files),
    )
    for file in files:
        say(f"The stages of {file.stem}", stage_rows(file))
    say("The booklet (aim: 3 s) and the whole publish, rehearsal included", publish_rows(files))
    largest = DESIGNS / "sixteen-hundred-on-point.toml"
    say("An edit in the studio at 1,625 units (aim: first figures in 150 ms)", editing_rows(largest))
    print(f"{memory_line(largest)}\n", flush=True)
    say("Finding settings", finding_rows())
    results = cutting_results()
    say("Cutting strips: generated jobs", cutting_rows(results))
    print(f"Cutting strips: lengths in inches\n{cutting_table(results)}\n", flush=True)
    say("Nesting: one run each", nesting_rows())
    return 0


def say(title: str, rows: list[Row]) -> None:
    """Print one table."""
    print(f"{title}\n{table(rows)}\n", flush=True)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
