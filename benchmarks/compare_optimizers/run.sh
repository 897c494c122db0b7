#!/usr/bin/env bash
# Compares this library with general-purpose optimizers on the same compiled phases and
# writes benchmarks/RESULTS.md; figures go to build/comparison/figures.
#
#   bash benchmarks/compare_optimizers/run.sh
#
# One core is used. It takes some minutes; keep the machine quiet meanwhile.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

bash tests/install_packages.sh benchmarks
folder=build/comparison
mkdir -p "$folder/figures"
cmake --preset comparison >build/comparison.log
cmake --build --preset comparison --parallel "$(nproc)" \
  --target compare_optimizers scaling _core >>build/comparison.log ||
  { tail -n 20 build/comparison.log >&2; exit 1; }

# Linear algebra and interpreters on one thread, as the compiled programs are.
export OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 MKL_NUM_THREADS=1
one_core() { taskset --cpu-list 0 "$@"; }
here=benchmarks/compare_optimizers
programs=$folder/benchmarks/compare_optimizers

one_core "$programs/compare_optimizers" "$folder/optimizers.json"
PYTHONPATH=$folder/python one_core /usr/bin/python3 -B "$here/scipy_solvers.py" \
  "$folder/optimizers.json" "$folder/scipy.json"
one_core "$programs/scaling" "$folder/scaling.json"
/usr/bin/python3 -B "$here/plot_scaling.py" "$folder/scaling.json" "$folder/figures"
/usr/bin/python3 -B "$here/results_table.py" "$folder/optimizers.json" \
  "$folder/scipy.json" "$folder/scaling.json" "$(uname -m), g++ $(g++ -dumpversion)" \
  >"$folder/RESULTS.md"
mv "$folder/RESULTS.md" benchmarks/RESULTS.md
echo "table: benchmarks/RESULTS.md"
