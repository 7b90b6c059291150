# `make` alone prints what there is. Everything here also works typed out by hand.

.DEFAULT_GOAL := help
PYTHON := .venv/bin/python

help: ## print this list
	@awk -F ':.*## ' '/^[a-z-]+:.*## / {printf "  make %-12s %s\n", $$1, $$2}' $(MAKEFILE_LIST)

open: ## set up and open the shop in the browser
	python3 run.py

test: ## set up and run everything that CI runs
	python3 run.py test

quick: ## only the tests without a browser and without PostgreSQL
	$(PYTHON) -m pytest -q --ignore=tests/browser --deselect tests/house/test_shop_on_postgresql.py

tidy: ## format the code and mend what ruff can mend
	$(PYTHON) -m ruff check --fix .
	$(PYTHON) -m ruff format .

lock: ## work the lock files out anew from the .in files
	uv pip compile $(LOCKING) requirements.in -o requirements.txt
	uv pip compile $(LOCKING) -c requirements.txt requirements-cluster.in -o requirements-cluster.txt
	uv pip compile $(LOCKING) -c requirements.txt requirements-dev.in -o requirements-dev.txt

LOCKING := --quiet --universal --generate-hashes --no-emit-index-url --no-emit-find-links \
	--no-header --no-annotate --python-version 3.11

.PHONY: help open test quick tidy lock
