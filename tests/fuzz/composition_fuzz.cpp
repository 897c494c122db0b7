/// The bytes are a mill certificate (lines of a number and a symbol), a temperature and
/// names to look up: everything outside parameter files that takes a text.

#include <cmath>

#include "gibbsteel/curve_value.hpp"
#include "gibbsteel/elements.hpp"
#include "gibbsteel/hardening_family.hpp"
#include "gibbsteel/property_equations.hpp"
#include "gibbsteel/steel.hpp"
#include "input_bytes.hpp"
#include "promises.hpp"

using namespace gibbsteel;

namespace {

constexpr std::size_t kLongestName = 300;

/// A symbol that may be right: most are, so that the checks behind it are reached.
std::string symbol(fuzz::InputBytes& bytes) {
  const unsigned kind = bytes.byte();
  if (kind > 200) return bytes.text(kLongestName);
  const auto& elements = default_parameters()->elements;
  if (kind < 150) return elements[kind % elements.size()].symbol;
  static constexpr std::array kTramps{"P", "S", "N", "Ti", "Nb", "Cu", "Al", "Tc"};
  return kTramps[kind % kTramps.size()];
}

NamedValues certificate(fuzz::InputBytes& bytes) {
  NamedValues result;
  for (std::size_t i = bytes.index(24); i > 0 && !bytes.empty(); --i) {
    const std::string name = symbol(bytes);
    result.set(name, bytes.number(20.0));
  }
  return result;
}

void check_analysis(const MillAnalysis& analysis) {
  fuzz::promise(analysis.modelled.sum() > 0.0, "an analysis holds something");
  for (const auto& list : {analysis.modelled, analysis.not_modelled})
    for (const auto& [name, percent] : list) {
      fuzz::promise(find_element(name).has_value(), "an analysis names elements only");
      fuzz::promise(percent >= 0.0 && percent <= 100.0, "weight percents are sound");
    }
  fuzz::promise(fuzz::is_printable(analysis.brief()), "a line is a line");
}

void check_steel(const Steel& steel) {
  check_analysis(steel.analysis());
  double sum = 0.0;
  for (const double x : steel.mole_fractions()) {
    fuzz::promise(x > 0.0 && x <= 1.0 + 1e-12, "a mole fraction is from 0 to 1");
    sum += x;
  }
  fuzz::promise(std::abs(sum - 1.0) < 1e-9, "mole fractions sum to 1");
}

/// Names of phases, equations, families and curves.
void look_up(fuzz::InputBytes& bytes, const Steel& steel) {
  SoakOptions options;
  options.phases = {bytes.text(kLongestName)};
  options.suppressed = {bytes.text(kLongestName)};
  // Not a temperature of a soak, so that nothing is solved here.
  const bool solved = fuzz::input_accepted(
      [&] { steel.soak(Temperature::celsius(-bytes.number(1000.0)), {}); });
  fuzz::promise(!solved, "a soak below 300 K is refused");
  fuzz::input_accepted(
      [&] { PhaseSystem(steel.parameters(), steel.elements(), *options.phases); });
  fuzz::input_accepted([&] {
    PhaseSystem(steel.parameters(), {bytes.text(kLongestName), "Fe"}, {"austenite"});
  });
  fuzz::input_accepted([&] { hardening_family(bytes.text(kLongestName)); });
  fuzz::input_accepted([&] {
    PropertyEquations().at(PropertyKind::martensite_start, bytes.text(kLongestName));
  });
  fuzz::input_accepted([&] {
    curve_value(*steel.parameters(), bytes.text(kLongestName),
                Temperature::kelvin(1300.0));
  });
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::InputBytes bytes(data, size);
  SteelOptions options;
  options.bind_tramp_elements = bytes.byte() % 2 == 1;
  const NamedValues values = certificate(bytes);
  const std::string name = bytes.text(kLongestName);
  const auto meant = suggest_element(name);
  fuzz::promise(meant.empty() || find_element(meant).has_value(),
                "what is suggested is an element");
  fuzz::input_accepted([&] {
    const Steel steel(values, options);
    check_steel(steel);
    look_up(bytes, steel);
    fuzz::input_accepted([&] { check_steel(steel.changed(certificate(bytes))); });
  });
  return 0;
}
