#!/usr/bin/env bash
# PostgreSQL with PostGIS for the tests that write to a database server. Only Debian packages; elsewhere those tests are
# skipped. The tests start a server of their own on a free port, as a user without rights, and stop it again.
set -euo pipefail

found() { ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1 && ls /usr/share/postgresql/*/extension/postgis.control >/dev/null 2>&1; }

if found; then
    exit 0
fi
if ! command -v apt-get >/dev/null; then
    echo "PostgreSQL with PostGIS is not here, and there is no apt-get to install it: those tests will be skipped."
    exit 0
fi
AS_ROOT=()
if [ "$(id -u)" -ne 0 ]; then
    AS_ROOT=(sudo)
fi
# No server of the machine's own is wanted: the package would make one and start it.
"${AS_ROOT[@]}" mkdir -p /etc/postgresql-common
if [ ! -e /etc/postgresql-common/createcluster.conf ]; then
    echo "create_main_cluster = false" | "${AS_ROOT[@]}" tee /etc/postgresql-common/createcluster.conf >/dev/null
fi
"${AS_ROOT[@]}" apt-get update -qq
"${AS_ROOT[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends postgresql postgresql-postgis
found
