#!/usr/bin/env bash
# Brings a machine to the point where the demo and the tests run: QGIS, the translation tools and a virtual environment.
# Called by `make setup`; does only what is missing. Debian 12 and 13 are set up unattended, other systems are told what to install.
set -euo pipefail
cd "$(dirname "$0")/.."

MINIMUM=34000 # QGIS 3.40, as QgsProcessing's version number
SYSTEM_PACKAGES=(qgis python3-qgis python3-venv python3-matplotlib qttools5-dev-tools xvfb xauth)

say() { printf 'setup: %s\n' "$*"; }

# The Python that has the QGIS bindings: named by the user, else the system's, else whatever python3 is first.
python_with_qgis() {
    local candidate
    for candidate in "${PYTHON:-}" /usr/bin/python3 python3; do
        [ -n "$candidate" ] || continue
        if "$candidate" -c "from qgis.core import Qgis; raise SystemExit(Qgis.QGIS_VERSION_INT < $MINIMUM)" >/dev/null 2>&1; then
            command -v "$candidate"
            return 0
        fi
    done
    return 1
}

have_translation_tools() { command -v lrelease >/dev/null || [ -x /usr/lib/qt5/bin/lrelease ]; }

# Debian 12 ships QGIS 3.22; 3.40 is in its backports suite. The source entry is the machine's own one with the suite changed,
# so that mirrors and keys stay as the machine's owner chose them.
enable_backports() {
    local codename=$1 target=/etc/apt/sources.list.d/agonic-backports
    if apt-cache policy | grep -q "n=$codename-backports"; then return 0; fi
    local file
    for file in /etc/apt/sources.list.d/*.sources; do
        [ -f "$file" ] || continue
        if awk -v suite="$codename" '
            BEGIN { RS = ""; FS = "\n" }
            { keep = ""; found = 0
              for (i = 1; i <= NF; i++) {
                  line = $i
                  if (line ~ /^#/) continue
                  if (line ~ /^Suites:/) {
                      n = split(line, word, /[ \t]+/)
                      for (j = 2; j <= n; j++) if (word[j] == suite) found = 1
                      line = "Suites: " suite "-backports"
                  }
                  keep = keep line "\n"
              }
              if (found) { printf "%s", keep; exit } }' "$file" | tee "$target.sources" | grep -q .; then
            return 0
        fi
    done
    rm -f "$target.sources"
    for file in /etc/apt/sources.list /etc/apt/sources.list.d/*.list; do
        [ -f "$file" ] || continue
        if sed -nE "s/^(deb( \[[^]]*\])? [^ ]+) $codename( .*)$/\1 $codename-backports\3/p" "$file" | head -1 | tee "$target.list" | grep -q .; then
            return 0
        fi
    done
    rm -f "$target.list"
    return 1
}

if ! python_with_qgis >/dev/null || ! have_translation_tools; then
    codename=$(. /etc/os-release 2>/dev/null && printf '%s' "${VERSION_CODENAME:-}")
    suite=
    case $codename in
        bookworm) suite=bookworm-backports ;; # its main suite has QGIS 3.22
        trixie) suite=trixie ;;
    esac
    if [ "$(id -u)" -ne 0 ] || ! command -v apt-get >/dev/null || [ -z "$suite" ]; then
        cat <<MESSAGE
setup: this machine lacks QGIS 3.40 or newer with its Python bindings, or the Qt translation tools.
setup: unattended installation works on Debian 12 and 13 as root. Here, please install:
setup:   - QGIS 3.40 or newer and its Python module (on Debian 12 both come from the suite "bookworm-backports")
setup:   - packages: ${SYSTEM_PACKAGES[*]}
setup: then run "make setup" again. To name the Python that has the QGIS bindings: make setup PYTHON=/path/to/python3
MESSAGE
        exit 1
    fi
    export DEBIAN_FRONTEND=noninteractive
    say "refreshing the package lists"
    apt-get update -qq
    if [ "$suite" != "$codename" ] && ! python_with_qgis >/dev/null; then
        enable_backports "$codename" || { say "no Debian source for $codename found to derive the backports entry from"; exit 1; }
        apt-get update -qq
    fi
    say "installing ${SYSTEM_PACKAGES[*]}"
    apt-get install -y -qq --no-install-recommends -t "$suite" "${SYSTEM_PACKAGES[@]}" >/dev/null
fi

python=$(python_with_qgis)
say "QGIS bindings found by $python"
if [ ! -x build/venv/bin/python ] || ! build/venv/bin/python -c 'from qgis.core import Qgis' 2>/dev/null; then
    rm -rf build/venv
    "$python" -m venv --system-site-packages build/venv
fi

# pyproj, GDAL and scipy of the system are compiled against the system's numpy: hold every compiled package of the system where it is.
"$python" - >build/constraints.txt <<'PY'
from importlib import metadata
for name in ("numpy", "scipy", "pyproj", "matplotlib", "GDAL"):
    try:
        print(f"{name}=={metadata.version(name)}")
    except metadata.PackageNotFoundError:
        pass
PY
say "installing the test tools"
build/venv/bin/python -m pip install --quiet --disable-pip-version-check -c build/constraints.txt -r tools/requirements.txt
build/venv/bin/python -c 'import numpy, pyproj, scipy, ppigrf'
sha256sum tools/setup.sh tools/requirements.txt >build/setup.done
say "ready"
