/// log, exp and pow of the C library, every third result moved to the next double: a
/// stand-in for the library of another machine. Loaded before it (LD_PRELOAD) by
/// run.sh.

#include <dlfcn.h>

#include <cmath>
#include <cstdint>
#include <cstring>

namespace {

/// A third of all doubles, picked by their bits: the same argument gives the same
/// result.
double roughened(double value, double argument) {
  std::uint64_t bits = 0;
  std::memcpy(&bits, &argument, sizeof bits);
  bits ^= bits >> 29u;
  bits *= 0x9E3779B97F4A7C15u;
  if ((bits >> 40u) % 3u != 0u) return value;
  return std::nextafter(value, (bits >> 50u) % 2u == 0u ? HUGE_VAL : -HUGE_VAL);
}

template <typename Function>
Function* next_of(const char* name) {
  return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

}  // namespace

extern "C" double log(double x) {
  static const auto exact = next_of<double(double)>("log");
  return roughened(exact(x), x);
}

extern "C" double exp(double x) {
  static const auto exact = next_of<double(double)>("exp");
  return roughened(exact(x), x);
}

extern "C" double pow(double x, double y) {
  static const auto exact = next_of<double(double, double)>("pow");
  return roughened(exact(x, y), x);
}
