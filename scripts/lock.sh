#!/bin/sh
# Remakes the two hash-locked lists from pyproject.toml, for every system and Python that is supported.
# Needs uv on the PATH. Options are passed on, for example: scripts/lock.sh --upgrade
set -eu
cd "$(dirname "$0")/.."

compile() {
    uv pip compile pyproject.toml --quiet --universal --python-version 3.11 --generate-hashes \
        --no-config --no-emit-index-url --no-emit-find-links --custom-compile-command scripts/lock.sh "$@"
}

compile --group build --output-file requirements.lock "$@"
compile --group build --group dev --constraint requirements.lock --output-file requirements-dev.lock
