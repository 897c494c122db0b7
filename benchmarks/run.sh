#!/usr/bin/env bash
# Measures with a release build and keeps the medians as a baseline.
#
#   bash benchmarks/run.sh [MACHINE]
#
# MACHINE names the file baselines/MACHINE.json; without it the name says architecture,
# number of cores and compiler. One core is used. Keep the machine quiet meanwhile.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

bash tests/install_packages.sh tests
mkdir -p build/benchmarks/results benchmarks/baselines
cmake --preset benchmarks >build/benchmarks.log
cmake --build --preset benchmarks --parallel "$(nproc)" >>build/benchmarks.log

compiler="g++$(g++ -dumpversion)"
machine=${1:-$(uname -m)_$(nproc)core_$compiler}
for program in benchmarks/*.cpp; do
  name=$(basename "$program" .cpp)
  taskset --cpu-list 0 "build/benchmarks/benchmarks/$name" \
    --benchmark_repetitions=15 --benchmark_min_time=0.1 \
    --benchmark_report_aggregates_only=true \
    --benchmark_out="build/benchmarks/results/$name.json" --benchmark_out_format=json
done
/usr/bin/python3 benchmarks/baseline.py "$machine" "$compiler" \
  build/benchmarks/results/*.json >"benchmarks/baselines/$machine.json"
echo "baseline: benchmarks/baselines/$machine.json"
