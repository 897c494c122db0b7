#!/usr/bin/env bash
# Installs the Debian packages that a command of this project needs and that are missing.
#
#   bash tests/install_packages.sh run      to build and use the library and its module
#   bash tests/install_packages.sh tests    that, and what the tests need
#   bash tests/install_packages.sh benchmarks   to run it, and what benchmarks/ needs
#
# DEVELOPERS.md says why each package is there.
set -euo pipefail

run_packages=(
  g++ cmake ninja-build
  libeigen3-dev libboost-math-dev nlohmann-json3-dev libnlopt-dev
  pybind11-dev python3-dev python3-numpy
)
test_packages=(
  clang libclang-rt-14-dev ccache git pkgconf
  doctest-dev libbenchmark-dev
  python3-pytest python3-hypothesis python3-jsonschema python3-scipy
  python3-setuptools python3-wheel python3-venv
  python3-pandas python3-tqdm mypy
  python3-xarray python3-pint python3-joblib python3-dask python3-distributed
  python3-matplotlib python3-nbclient python3-nbformat python3-ipykernel
)
benchmark_packages=(
  libbenchmark-dev coinor-libipopt-dev python3-scipy python3-matplotlib
)

case "${1:-}" in
  run) wanted=("${run_packages[@]}") ;;
  tests) wanted=("${run_packages[@]}" "${test_packages[@]}") ;;
  benchmarks) wanted=("${run_packages[@]}" "${benchmark_packages[@]}") ;;
  *) echo "usage: bash tests/install_packages.sh run|tests|benchmarks" >&2; exit 2 ;;
esac

missing_packages() {
  local package
  for package in "${wanted[@]}"; do
    dpkg-query --show --showformat='${db:Status-Status}' "$package" 2>/dev/null |
      grep -qx installed || echo "$package"
  done
}

fail() {
  echo "install_packages: $1" >&2
  exit 1
}

command -v apt-get >/dev/null ||
  fail "no apt-get here; this script knows Debian 12. Install by other means: ${wanted[*]}"

mapfile -t missing < <(missing_packages)
if [ "${#missing[@]}" -eq 0 ]; then
  echo "packages: all ${#wanted[@]} are installed"
  exit 0
fi
echo "packages: installing ${#missing[@]} of ${#wanted[@]}: ${missing[*]}"

as_root=()
if [ "$(id -u)" -ne 0 ]; then
  command -v sudo >/dev/null || fail "needs root or sudo to install: ${missing[*]}"
  as_root=(sudo)
fi
log=$(mktemp)
trap 'rm -f "$log"' EXIT
quiet_apt() {
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get -q -y -o DPkg::Lock::Timeout=300 "$@" >>"$log" 2>&1 </dev/null
}
# A failed update is no reason to stop: the lists on the machine may do.
quiet_apt update || true
quiet_apt install --no-install-recommends "${missing[@]}" || {
  tail -n 15 "$log" >&2
  fail "apt-get could not install: ${missing[*]}. Is the package server reachable?"
}
