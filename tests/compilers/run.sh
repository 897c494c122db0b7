#!/usr/bin/env bash
# Builds the library in several flavours, prints the numbers of tests/compilers/ with each,
# and compares them bit by bit: bash tests/compilers/run.sh [folder for the builds].
# Some ten minutes on two cores; not part of tests/run.sh. README.md holds the last table.
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
builds=${1:-$root/build/compilers}
mkdir -p "$builds"
builds=$(cd "$builds" && pwd)

# name | compiler | flags | settings of the C library when the program runs
flavours=(
  "g++ -O2|g++|-O2|"
  "g++ -O0|g++|-O0|"
  "g++ -O3|g++|-O3|"
  "clang++ -O2|clang++|-O2|"
  "clang++ -O3|clang++|-O3|"
  "g++ -O1 asan ubsan|g++|-O1 -fsanitize=address,undefined|"
  "g++ -O2, no FMA in libm|g++|-O2|glibc.cpu.hwcaps=-FMA,-FMA4,-AVX2"
  "g++ -O3 -march=x86-64-v3|g++|-O3 -march=x86-64-v3|"
)

printed=()
for flavour in "${flavours[@]}"; do
  IFS='|' read -r name compiler flags tunables <<<"$flavour"
  folder="$builds/$(tr -cs 'a-zA-Z0-9\n' '_' <<<"$compiler $flags")"
  cmake -S "$root" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=None \
    -DCMAKE_CXX_COMPILER="$compiler" -DCMAKE_CXX_FLAGS="$flags" \
    -DGIBBSTEEL_BUILD_TESTS=OFF -DGIBBSTEEL_BUILD_BINDINGS=OFF \
    -DGIBBSTEEL_BUILD_EXAMPLES=OFF >"$folder.log" 2>&1
  nice -n 10 cmake --build "$folder" --target gibbsteel >>"$folder.log" 2>&1
  # shellcheck disable=SC2086  # several flags
  "$compiler" -std=c++20 $flags -ffp-contract=off -I "$root/include" \
    -I "$folder/generated/include" "$here/print_numbers.cpp" \
    "$folder/src/libgibbsteel.a" -lnlopt -pthread -o "$folder/print_numbers"
  GLIBC_TUNABLES=$tunables "$folder/print_numbers" >"$builds/$name.txt"
  printed+=("$builds/$name.txt")
done

python3 "$here/compare.py" "$here/numbers.txt" "${printed[@]}"
