#!/usr/bin/env bash
# Builds the library with several compilers and flags, prints the numbers of this folder
# with each, and compares them bit by bit: bash tests/compilers/run.sh [folder of builds].
# A quarter of an hour and more on two cores, so it is not part of tests/run.sh.
# README.md holds the last table.
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
builds=${1:-$root/build/compilers}
mkdir -p "$builds/identical" "$builds/near"
builds=$(cd "$builds" && pwd)

folder_of() { # compiler and flags
  printf '%s/%s' "$builds" "$(tr -cs 'a-zA-Z0-9' '_' <<<"$1" | sed 's/_$//')"
}

build() { # compiler, flags
  local folder
  folder=$(folder_of "$1 $2")
  cmake -S "$root" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=None \
    -DCMAKE_CXX_COMPILER="$1" -DCMAKE_CXX_FLAGS="$2" -DGIBBSTEEL_BUILD_TESTS=OFF \
    -DGIBBSTEEL_BUILD_BINDINGS=OFF -DGIBBSTEEL_BUILD_EXAMPLES=OFF >"$folder.log" 2>&1
  nice -n 10 cmake --build "$folder" --target gibbsteel >>"$folder.log" 2>&1
  # shellcheck disable=SC2086  # several flags
  "$1" -std=c++20 $2 -ffp-contract=off -I "$root/include" \
    -I "$folder/generated/include" "$here/print_numbers.cpp" \
    "$folder/src/libgibbsteel.a" -lnlopt -pthread -o "$folder/print_numbers"
}

rm -f "$builds"/identical/*.txt "$builds"/near/*.txt
for flavour in "g++ -O0" "g++ -O2" "g++ -O3" "clang++ -O2" "clang++ -O3"; do
  build "${flavour% *}" "${flavour#* }"
  "$(folder_of "$flavour")/print_numbers" >"$builds/identical/$flavour.txt"
done

# Other machines, as far as this one can play them: a C library without fused
# multiply-add, a rough one, and wider vectors (with which the library is not built).
plain=$(folder_of "g++ -O2")/print_numbers
GLIBC_TUNABLES=glibc.cpu.hwcaps=-FMA,-FMA4,-AVX2 "$plain" >"$builds/near/no FMA in libm.txt"
g++ -std=c++20 -O1 -shared -fPIC "$here/rough_libm.cpp" -o "$builds/rough_libm.so" -ldl
LD_PRELOAD="$builds/rough_libm.so" "$plain" >"$builds/near/rough libm.txt"
if grep -qw avx2 /proc/cpuinfo; then
  build g++ "-O3 -march=x86-64-v3"
  "$(folder_of "g++ -O3 -march=x86-64-v3")/print_numbers" >"$builds/near/-march=x86-64-v3.txt"
fi

python3 -B "$here/compare.py" "$here/numbers.txt" "$builds"/identical/*.txt --identical
echo
python3 -B "$here/compare.py" "$here/numbers.txt" "$builds"/near/*.txt
