#!/usr/bin/env bash
# The long run: random cold conditions and swept lines with judges of every result. Ten to
# twenty minutes on two cores; see README.md here.
#
#   bash tests/long/run.sh [--conditions N] [--sweep-points M] [--threads T] [...]
#   bash tests/long/run.sh --valgrind      a small share, looking for leaks and bad reads
#
# Prints tables; fails when a result is wrong without a flag.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

bash tests/install_packages.sh tests
mkdir -p build/long
cmake --preset long >build/long/log.txt
cmake --build --preset long --parallel "$(nproc)" >>build/long/log.txt ||
  { tail -n 20 build/long/log.txt >&2; exit 1; }

program=build/long/tests/long_run
if [ "${1:-}" = --valgrind ]; then
  command -v valgrind >/dev/null || { echo "needs the Debian package valgrind" >&2; exit 2; }
  exec valgrind --leak-check=full --show-leak-kinds=all --error-exitcode=9 \
    "$program" --conditions 30 --sweep-points 100 --proof-every 30
fi
started=$SECONDS
status=0
"$program" "$@" || status=$?
echo "wall time $((SECONDS - started)) s on $(nproc) cores"
exit "$status"
