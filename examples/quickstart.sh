#!/usr/bin/env bash
# From a fresh clone to the first result: installs what is missing, builds, runs the main
# job on two demo steels.
#
#   bash examples/quickstart.sh
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

bash tests/install_packages.sh run

log=build/quickstart.log
mkdir -p build
echo "building (about five minutes on two cores), log in $log"
if ! { cmake --preset release && cmake --build --preset release --parallel "$(nproc)"; } \
  >"$log" 2>&1; then
  tail -n 40 "$log" >&2
  echo "quickstart: the build failed, see $log" >&2
  exit 1
fi

PYTHONPATH=build/release/python /usr/bin/python3 examples/main_job.py
