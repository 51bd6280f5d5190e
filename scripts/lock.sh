#!/bin/sh
# Remakes the hash-locked lists from pyproject.toml, for every system and Python that is supported.
# Needs uv on the PATH. Options are passed on, for example: scripts/lock.sh --upgrade
set -eu
cd "$(dirname "$0")/.."

compile() {
    uv pip compile --quiet --universal --python-version 3.11 --generate-hashes \
        --no-config --no-emit-index-url --no-emit-find-links --custom-compile-command scripts/lock.sh "$@"
}

compile pyproject.toml --group build --output-file requirements.lock "$@"
compile --group node --output-file requirements-node.lock "$@"
compile pyproject.toml --group build --group dev --constraint requirements.lock --output-file requirements-dev.lock
