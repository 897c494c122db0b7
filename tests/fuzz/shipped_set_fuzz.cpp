/// The bytes choose elements, amounts, a temperature, candidate phases and options for
/// the minimizer on the shipped parameter file.

#include "gibbsteel/parameter_file.hpp"
#include "input_bytes.hpp"
#include "solve_checks.hpp"

using namespace gibbsteel;

namespace {

/// Symbols by the bits of two bytes; none is refused further down.
std::vector<std::string> elements(fuzz::InputBytes& bytes) {
  const auto& all = default_parameters()->elements;
  unsigned bits = bytes.byte();
  bits += 256 * bytes.byte();
  std::vector<std::string> chosen;
  for (std::size_t e = 0; e < all.size(); ++e)
    if ((bits >> e) % 2 == 1) chosen.push_back(all[e].symbol);
  return chosen;
}

std::vector<std::string> phases(fuzz::InputBytes& bytes) {
  const auto& all = default_parameters()->phases;
  unsigned bits = ~bytes.byte();  // zeros: all phases
  bits ^= 256 * bytes.byte();
  std::vector<std::string> chosen;
  for (std::size_t f = 0; f < all.size(); ++f)
    if ((bits >> f) % 2 == 1) chosen.push_back(all[f].name);
  return chosen;
}

/// Normalized unless a byte says otherwise or nothing sensible comes out.
std::vector<double> fractions(fuzz::InputBytes& bytes, std::size_t count) {
  std::vector<double> x(count);
  double sum = 0.0;
  for (double& value : x) sum += value = bytes.number(1.0);
  const bool as_they_are = bytes.byte() > 250;
  if (!as_they_are && sum > 0.0 && std::isfinite(sum))
    for (double& value : x) value /= sum;
  return x;
}

SolveOptions options(fuzz::InputBytes& bytes) {
  SolveOptions result;
  if (bytes.byte() < 200) return result;
  result.max_rounds = static_cast<int>(bytes.byte()) - 1;
  result.max_newton_steps = static_cast<int>(bytes.byte()) - 1;
  result.starts_per_phase = static_cast<int>(bytes.index(25)) - 1;
  result.balance_tolerance = bytes.number(1e-10);
  result.stability_tolerance = bytes.number(1e-2);
  return result;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::InputBytes bytes(data, size);
  const auto symbols = elements(bytes);
  const auto names = phases(bytes);
  const auto t = Temperature::kelvin(300.0 + bytes.number(2200.0));
  const auto x = fractions(bytes, symbols.size());
  const SolveOptions chosen = fuzz::proven_now_and_then(bytes, options(bytes));
  fuzz::input_accepted([&] {
    const PhaseSystem system(default_parameters(), symbols, names);
    fuzz::check_result(system, x, minimize(system, t, x, chosen), chosen);
  });
  return 0;
}
