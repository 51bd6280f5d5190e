#!/bin/sh
# Sees to it that there is a Chromium for the tests of the page: on Debian and Ubuntu, as root, it is installed.
set -eu

for name in chromium chromium-browser; do
    if command -v "$name" >/dev/null; then
        exit 0
    fi
done
if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    apt-get -qq update
    DEBIAN_FRONTEND=noninteractive apt-get -qq install --yes --no-install-recommends chromium
    exit 0
fi
echo "The tests of the page need Chromium; install it (on Debian or Ubuntu: sudo apt install chromium)."
exit 1
