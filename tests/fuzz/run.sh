#!/usr/bin/env bash
# Builds the fuzzing programs (clang, sanitizers) and runs each of them.
#
#   bash tests/fuzz/run.sh SECONDS [NAME...]      all of them when no NAME is given
#
# Starts from the stored corpus and keeps what is new in build/fuzz/corpus/NAME. Findings
# are written to build/fuzz/findings/NAME-*; the script then fails. What counts as a hang
# is GIBBSTEEL_FUZZ_TIMEOUT seconds, 1 by default; a busy machine needs more.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

seconds=${1:?usage: bash tests/fuzz/run.sh SECONDS [NAME...]}
shift
names=("$@")
if [ "${#names[@]}" -eq 0 ]; then
  for source in tests/fuzz/*_fuzz.cpp; do
    name=$(basename "$source" _fuzz.cpp)
    names+=("$name")
  done
fi

bash tests/install_packages.sh tests
cmake --preset fuzz
cmake --build --preset fuzz

build=build/fuzz
mkdir -p "$build/findings"
failed=()
for name in "${names[@]}"; do
  mkdir -p "$build/corpus/$name"
  options=(-max_total_time="$seconds" -timeout="${GIBBSTEEL_FUZZ_TIMEOUT:-1}"
    -detect_leaks=1 -rss_limit_mb=1500 -print_final_stats=1
    -artifact_prefix="$build/findings/$name-")
  case $name in
    parameter_reader | layering) options+=(-dict=tests/fuzz/parameter_file.dict) ;;
  esac
  echo "== $name"
  "$build/tests/fuzz/${name}_fuzz" "${options[@]}" \
    "$build/corpus/$name" "tests/fuzz/corpus/$name" \
    >"$build/findings/$name.log" 2>&1 || failed+=("$name")
  grep -E "promise|ERROR|runtime error|stat::(number|average|slowest)" \
    "$build/findings/$name.log" || true
done
if [ "${#failed[@]}" -gt 0 ]; then
  echo "FOUND something in: ${failed[*]}; see $build/findings/" >&2
  exit 1
fi
echo "nothing found in ${#names[@]} programs"
