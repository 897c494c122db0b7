#!/usr/bin/env bash
# Installs what the tests need, builds everything and runs all tests.
#
#   bash tests/run.sh
#
# Stages: dev (g++, all tests), clang (compiles without a warning), sanitizers (address
# and undefined behaviour, all tests). GIBBSTEEL_STAGES="dev" runs only the ones named;
# one more is run only when named: threads (thread sanitizer, C++ tests that use threads).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

stages=${GIBBSTEEL_STAGES:-"dev clang sanitizers"}
jobs=$(nproc)
tests_with_threads='^(robustness/(threads|interrupt)|unit/(parallel_for|shared_hash|'
tests_with_threads+='steel|soak_grid|section_map|tolerance|parameter_band|screen|'
tests_with_threads+='calibrate))_test$'
summary=()
# consumer/pip compiles the files of stage dev again, in another folder.
export CCACHE_NOHASHDIR=1

build() { # preset
  cmake --preset "$1"
  cmake --build --preset "$1" --parallel "$jobs"
}

stage_dev() {
  build dev
  ctest --preset dev --parallel "$jobs"
}

stage_clang() {
  build dev-clang
}

stage_sanitizers() {
  build asan-ubsan
  ctest --preset asan-ubsan --parallel "$jobs"
}

stage_threads() {
  cmake --preset tsan
  cmake --build --preset tsan --parallel "$jobs" --target unit_tests robustness_tests
  ctest --preset tsan --parallel 1 --tests-regex "$tests_with_threads"
}

stage=packages
trap '[ $? -eq 0 ] || echo "FAILED in stage $stage after $SECONDS s"' EXIT
bash tests/install_packages.sh tests
for stage in $stages; do
  declare -F "stage_$stage" >/dev/null || { echo "no such stage: $stage" >&2; exit 2; }
  echo "== stage $stage"
  started=$SECONDS
  "stage_$stage"
  summary+=("$stage $((SECONDS - started)) s")
done
printf -v times '%s, ' "${summary[@]}"
echo "all stages passed: ${times%, }"
