# Makes and keeps .venv. Sourced by ./quarterturn, ./check and ./bench, which set $root first.
# Everything said here goes to standard error: standard output belongs to the command.
#
# Two stamps in .venv tell whether it is whole: one for each lock that is installed, one for the project.
# They are written last and taken away first, so that an interrupted run leaves none and is begun afresh.

venv=$root/.venv

say() {
    printf '%s\n' "$@" >&2
}

fail() {
    say "$@"
    exit 1
}

# The path is part of the stamp: an environment that was moved or copied along is made anew.
stamp_of() {
    cksum "$root/$1"
}

stamped() {
    [ -x "$venv/bin/python" ] && [ -r "$venv/stamp-$1" ] && read -r stamp <"$venv/stamp-$1" &&
        [ "$stamp" = "$(stamp_of "$1")" ]
}

write_stamp() {
    stamp_of "$1" >"$venv/stamp-$1"
}

is_new_enough() {
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1
}

can_make_venv() {
    "$1" -c 'import ensurepip, venv' >/dev/null 2>&1
}

# The Python itself, where the one found belongs to an environment (which may be the one to be remade).
base_of() {
    "$1" -c 'import sys; print(getattr(sys, "_base_executable", sys.executable))'
}

# Sets $python. PYTHON, if set, is the only one tried.
find_python() {
    without_venv=
    for python in ${PYTHON:-python3 python3.13 python3.12 python3.11 python}; do
        is_new_enough "$python" || continue
        if can_make_venv "$python"; then
            python=$(base_of "$python")
            return
        fi
        : "${without_venv:=$python}"
    done
    [ -z "$without_venv" ] || fail_without_venv "$without_venv"
    first=${PYTHON:-python3}
    if version=$("$first" --version 2>/dev/null); then
        fail "Quarterturn needs Python 3.11 or newer; $first is $version." \
            "Install a newer one, or name it: PYTHON=/path/to/python3 $0"
    fi
    fail "Quarterturn needs Python 3.11 or newer, and $first was not found." \
        "Install it (on Debian or Ubuntu: sudo apt install python3 python3-venv), or name it: PYTHON=/path/to/python3 $0"
}

fail_without_venv() {
    version=$("$1" -c 'import sys; print("%d.%d" % sys.version_info[:2])')
    fail "Python $version is here, but its venv module is not complete (ensurepip is missing)." \
        "On Debian or Ubuntu it comes with: sudo apt install python3-venv   (or python$version-venv)"
}

# Waits for any other run that is making .venv. The lock is held by descriptor 9 of this shell and of
# what it starts, and the system lets go of it when they end, however they end.
take_turn() {
    exec 9>"$root/.venv.lock"
    "$python" - 9>&9 <<'PYTHON' || fail "Cannot lock $root/.venv.lock."
import fcntl, sys
try:
    fcntl.flock(9, fcntl.LOCK_EX | fcntl.LOCK_NB)
except BlockingIOError:
    print("Another run is preparing Quarterturn; waiting for it ...", file=sys.stderr, flush=True)
    fcntl.flock(9, fcntl.LOCK_EX)
PYTHON
}

pip() {
    (
        unset PIP_USER PIP_TARGET PIP_PREFIX PYTHONHOME PYTHONPATH
        "$venv/bin/python" -m pip --quiet --quiet --disable-pip-version-check --no-input "$@" >&2
    ) || fail "Preparing Quarterturn failed (see above). Mend the cause and run the command again."
}

make_venv() {
    say "Preparing Quarterturn in .venv (once; well under a minute on a fair connection) ..."
    rm -rf "$venv"
    "$python" -m venv "$venv" >&2 || fail "Python could not make $venv (see above)."
}

install_packages() {
    rm -f "$venv"/stamp-*
    pip install --require-hashes --requirement "$root/$1"
}

install_project() {
    pip install --no-deps --no-build-isolation --no-index --editable "$root"
    write_stamp pyproject.toml
}

is_outdated() {
    [ -e "$venv/stamp-$1" ] && ! stamped "$1"
}

# The longer list holds the shorter one, at the same versions.
bring_up_to_date() {
    if ! stamped requirements.lock || is_outdated "$1"; then
        make_venv
    fi
    if ! stamped "$1"; then
        [ "$1" = requirements.lock ] || say "Installing the tools for checking ..."
        install_packages "$1"
    fi
    stamped pyproject.toml || install_project
    write_stamp requirements.lock
    write_stamp "$1"
}

# prepare LOCK: on return .venv holds exactly what LOCK and pyproject.toml ask for.
prepare() {
    if stamped requirements.lock && stamped "$1" && stamped pyproject.toml; then
        return
    fi
    find_python
    take_turn
    bring_up_to_date "$1"
    exec 9>&-
}
