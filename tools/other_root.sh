#!/usr/bin/env bash
# Runs tests in a Debian of another age, in a root of its own under the cache folder:
#   other_root.sh newest   Debian 13 with the QGIS of its backports suite: the whole suite
#   other_root.sh oldest   Debian 11 with Python 3.9: the science alone
# Needs root and debootstrap. Packages come from where the machine's own come from.
set -euo pipefail
cd "$(dirname "$0")/.."

which=${1:?newest or oldest}
case $which in
    newest) suite=trixie ;;
    oldest) suite=bullseye ;;
    *) printf 'other_root: newest or oldest, not "%s"\n' "$which" && exit 2 ;;
esac
root=${XDG_CACHE_HOME:-$HOME/.cache}/agonic/roots/$suite
say() { printf '%s: %s\n' "$which" "$*"; }

if [ "$(id -u)" -ne 0 ]; then say "making a root needs the rights of root" && exit 1; fi
command -v debootstrap >/dev/null || apt-get install -y -qq debootstrap >/dev/null

# The first Debian archive of the machine's own sources that has the suite.
archive() {
    { sed -snE 's/^URIs:[[:space:]]*([^[:space:]]+).*/\1/p' /etc/apt/sources.list.d/*.sources
      sed -nE 's/^deb( \[[^]]*\])? ([^ ]+) .*/\2/p' /etc/apt/sources.list /etc/apt/sources.list.d/*.list
    } 2>/dev/null | grep '/debian/*$' | sort -u | sed -n 1p || true
}

inside() { chroot "$root" /usr/bin/env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LANG=C.UTF-8 \
    DEBIAN_FRONTEND=noninteractive PIP_CERT=/etc/ssl/certs/ca-certificates.crt QT_QPA_PLATFORM=offscreen CI="${CI:-}" bash -ec "$1"; }

leave() { for place in proc dev; do umount -l "$root/$place" 2>/dev/null || true; done; }
trap leave EXIT

if [ ! -e "$root/etc/agonic-ready" ]; then
    say "making a root with Debian $suite in $root"
    rm -rf "$root" && mkdir -p "$root"
    mirror=$(archive)
    [ -n "$mirror" ] || { say "no Debian archive among the machine's sources" && exit 1; }
    debootstrap --variant=minbase --include=ca-certificates,make,git "$suite" "$root" "$mirror" >"$root.log" 2>&1
    cp /etc/apt/apt.conf.d/* "$root/etc/apt/apt.conf.d/" 2>/dev/null || true
    if [ "$which" = newest ]; then
        printf 'deb %s %s-backports main\n' "$mirror" "$suite" >"$root/etc/apt/sources.list.d/backports.list"
    fi
fi
cp -L /etc/resolv.conf "$root/etc/resolv.conf" 2>/dev/null || true
cp -L /etc/pip.conf "$root/etc/pip.conf" 2>/dev/null || true
# Whom the machine trusts, the root trusts: its owner may have put in a certificate of a mirror.
cp -L /etc/ssl/certs/ca-certificates.crt "$root/etc/ssl/certs/ca-certificates.crt"
for place in proc dev; do mount --rbind "/$place" "$root/$place"; done

if [ ! -e "$root/etc/agonic-ready" ]; then
    say "installing packages"
    inside 'apt-get update -qq'
    if [ "$which" = newest ]; then
        inside "apt-get install -y -qq --no-install-recommends -t $suite-backports qgis python3-qgis python3-venv \
            python3-matplotlib qttools5-dev-tools xvfb xauth >/dev/null"
    else
        inside 'apt-get install -y -qq --no-install-recommends python3 python3-venv >/dev/null'
    fi
    touch "$root/etc/agonic-ready"
fi

# The checkout as it stands, without what was built; build/ of the root stays from run to run.
mkdir -p "$root/agonic"
find "$root/agonic" -mindepth 1 -maxdepth 1 ! -name build -exec rm -rf {} +
git ls-files -z --cached --others --exclude-standard | xargs -0 sh -c 'for f; do [ ! -e "$f" ] || printf "%s\0" "$f"; done' _ |
    tar -c --null -T - | tar -x -C "$root/agonic"

if [ "$which" = newest ]; then
    inside 'cd /agonic && make setup && build/venv/bin/python -c "from qgis.core import Qgis; print(\"QGIS\", Qgis.QGIS_VERSION)" && make test'
else
    inside 'cd /agonic && python3 --version && mkdir -p build/plugins && ln -sfn ../.. build/plugins/agonic &&
        { [ -x build/venv/bin/python ] || python3 -m venv build/venv; } &&
        build/venv/bin/python -m pip install --quiet --disable-pip-version-check --upgrade pip &&
        grep -vE "^(pytest-qgis|ruff|mypy)" tools/requirements.txt >build/requirements.txt &&
        build/venv/bin/python -m pip install --quiet --disable-pip-version-check numpy pyproj -r build/requirements.txt &&
        build/venv/bin/python -m pytest -p no:cacheprovider tests/core'
fi
