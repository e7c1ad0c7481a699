# Agonic: `make demo` and `make test` do all on a fresh machine.
PYTHON ?=
VENV := build/venv/bin
export QT_QPA_PLATFORM ?= offscreen
export QGIS_PLUGINPATH := $(CURDIR)/build/plugins
export PYTHONDONTWRITEBYTECODE := 1

.PHONY: setup setup-postgis link translations demo test core-test test-newest test-oldest check docs wheel test-batch fuzz soak bench package clean

setup: ## install what is missing: QGIS, translation tools, test tools
	@mkdir -p build
	@sha256sum --status -c build/setup.done 2>/dev/null && [ -x $(VENV)/python ] || PYTHON="$(PYTHON)" bash tools/setup.sh
	@$(MAKE) --no-print-directory link translations-compiled

setup-postgis: ## PostgreSQL with PostGIS, for the tests that write to a server; without it they are skipped
	@bash tools/setup_postgis.sh

# The repository's root is the plugin's folder; this link gives it the name under which QGIS and the tests import it.
link:
	@mkdir -p build/plugins
	@ln -sfn ../.. build/plugins/agonic

translations: setup ## update the translation sources from the code, then compile them
	@$(VENV)/python tools/translations.py update

translations-compiled:
	@$(VENV)/python tools/translations.py compile

demo: setup ## the main job on the sample area: map, project, report
	@$(VENV)/python sample_layers/demo.py

test: setup core-test ## all tests
	@$(VENV)/python -m pytest tests --ignore=tests/core --ignore=tests/batch

core-test: setup ## the science alone, without QGIS
	@$(VENV)/python -m pytest -p no:pytest_qgis tests/core

test-newest: ## all tests on the newest QGIS that Debian has, in a root of its own; needs root and debootstrap
	@bash tools/other_root.sh newest

test-oldest: ## the science under Python 3.9, which the oldest builds of QGIS 3.40 carry; in a root of its own
	@bash tools/other_root.sh oldest

check: setup ## style, types, import direction, translations, repository rules
	@$(VENV)/python -m ruff check .
	@$(VENV)/python -m ruff format --check .
	@$(VENV)/python -m mypy processing_algs/core
	@$(VENV)/python tools/check_layout.py
	@$(VENV)/python tools/translations.py check
	@$(VENV)/python tools/package.py --check
	@$(VENV)/python tools/manual.py check

docs: setup ## the manual as plain HTML in build/docs
	@$(VENV)/python tools/manual.py build

wheel: setup ## build/wheel: the science without QGIS, and the batch runner, as a pip-installable package
	@$(VENV)/python tools/wheel.py

test-batch: wheel ## the batch runner, from the wheel, in an environment of its own
	@[ -x build/venv-batch/bin/python ] || /usr/bin/env python3 -m venv build/venv-batch
	@build/venv-batch/bin/python -m pip install --quiet --disable-pip-version-check -r batch/requirements.txt
	@build/venv-batch/bin/python -m pip install --quiet --disable-pip-version-check --no-deps --force-reinstall build/wheel/*.whl
	@build/venv-batch/bin/python -m pytest -q --noconftest -p no:cacheprovider -c /dev/null --rootdir tests/batch tests/batch

SEED ?= 1
COUNT ?= 400

fuzz: setup ## every tool on COUNT seeded random tables of SEED
	@$(VENV)/python tools/fuzz.py --seed $(SEED) --count $(COUNT)

soak: setup ## 20,000 tables over five seeds; takes hours
	@for seed in 1 2 3 4 5; do $(VENV)/python tools/fuzz.py --seed $$seed --count 4000 || exit 1; done

bench: setup ## speed, as ratios measured in one run
	@$(VENV)/python tools/bench.py

package: setup ## build/agonic-VERSION.zip for the plugin repository
	@$(VENV)/python tools/package.py

clean:
	rm -rf build
