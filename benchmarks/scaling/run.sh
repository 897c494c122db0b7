#!/usr/bin/env bash
# Measures cost against points, threads, and memory against rows, and writes
# benchmarks/SCALING.md; figures go to build/comparison/figures.
#
#   bash benchmarks/scaling/run.sh [ROWS...]   rows whose memory is measured: multiples
#                                              of 20; else 10000 100000 1000000
#   bash benchmarks/scaling/run.sh --trial     small sizes, to see that it works: the
#                                              page stays in build/comparison
#
# It takes about ten minutes on two cores; keep the machine quiet meanwhile.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

page=benchmarks/SCALING.md
points=(--benchmark_repetitions=3 --benchmark_min_time=0.2)
threads=()
rows=(10000 100000 1000000)
folder=build/comparison
if [ "${1:-}" = --trial ]; then
  page=$folder/SCALING.md
  points=(--benchmark_repetitions=2 --benchmark_min_time=0
    '--benchmark_filter=soak|line/(50|100)$|grid/1.$|random/100$')
  threads=(--rounds 1 --rows 1024 --soaks 500 --hashed 20000000)
  rows=(2000 8000)
elif [ "$#" -gt 0 ]; then
  rows=("$@")
fi

bash tests/install_packages.sh benchmarks
mkdir -p "$folder/figures"
echo "building: $folder"
cmake --preset comparison >build/comparison.log
cmake --build --preset comparison --parallel "$(nproc)" \
  --target bench_points _core >>build/comparison.log ||
  { tail -n 20 build/comparison.log >&2; exit 1; }

here=benchmarks/scaling
export PYTHONPATH=$folder/python
results=("$folder/points.json" "$folder/threads.json" "$folder/memory.json")
rm -f "${results[@]}"

echo "cost against points"
taskset --cpu-list 0 "$folder/benchmarks/scaling/points" "${points[@]}" \
  --benchmark_report_aggregates_only=true \
  --benchmark_out="${results[0]}" --benchmark_out_format=json
echo "threads"
/usr/bin/python3 -B "$here/threads.py" "${results[1]}" "${threads[@]}"
echo "memory"
/usr/bin/python3 -B "$here/memory.py" "${results[2]}" "${rows[@]}"

/usr/bin/python3 -B "$here/figures.py" "${results[@]}" "$folder/figures"
/usr/bin/python3 -B "$here/page.py" "${results[@]}" \
  "$(uname -m), g++ $(g++ -dumpversion)" >"$folder/SCALING.md.part"
mv "$folder/SCALING.md.part" "$page"
echo "page: $page"
