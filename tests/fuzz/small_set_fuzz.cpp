/// The bytes are a small parameter set made by hand (so that the reader does not stand
/// between), amounts and a temperature for the minimizer.

#include "small_set.hpp"
#include "solve_checks.hpp"

using namespace gibbsteel;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::InputBytes bytes(data, size);
  const auto t = Temperature::kelvin(bytes.number(2500.0));
  const SharedParameters set = fuzz::small_set(bytes);
  std::vector<std::string> symbols, names;
  std::vector<double> x;
  double sum = 0.0;
  for (const Element& element : set->elements) {
    symbols.push_back(element.symbol);
    sum += x.emplace_back(bytes.number(1.0));
  }
  for (double& value : x) value /= sum;
  for (const Phase& phase : set->phases) names.push_back(phase.name);
  const SolveOptions chosen = fuzz::proven_now_and_then(bytes, {});
  fuzz::input_accepted([&] {
    const PhaseSystem system(set, symbols, names);
    fuzz::check_result(system, x, minimize(system, t, x, chosen), chosen);
  });
  return 0;
}
