/// Prints the numbers of a set of soaks, every bit of them, one number a line:
///
///   condition | quantity | which | value as a hexadecimal float
///
/// compare.py holds two such lists against each other; README.md says what for.

#include <cstdio>
#include <numeric>

#include "conditions.hpp"
#include "gibbsteel/linearization.hpp"
#include "gibbsteel/parameter_file.hpp"

using namespace gibbsteel;

namespace {

struct Solved {
  PhaseSystem system;
  std::vector<double> overall;
  Equilibrium result;
};

/// All phases of the shipped file but graphite, as Steel::soak().
std::vector<std::string> candidates(const ParameterSet& set) {
  std::vector<std::string> names;
  for (const Phase& phase : set.phases)
    if (phase.name != "graphite") names.push_back(phase.name);
  return names;
}

Solved solve(const SharedParameters& set, const testing::Condition& condition) {
  std::vector<std::string> elements{"Fe"};
  std::vector<double> moles{100.0};
  for (const auto& [symbol, percent] : condition.weight_percent) {
    elements.emplace_back(symbol);
    moles.push_back(percent);
    moles[0] -= percent;
  }
  for (std::size_t e = 0; e < elements.size(); ++e)
    moles[e] /= set->find_element(elements[e])->molar_mass;
  const double sum = std::accumulate(moles.begin(), moles.end(), 0.0);
  for (double& value : moles) value /= sum;
  PhaseSystem system(set, elements, candidates(*set));
  Equilibrium result = minimize(system, Temperature::celsius(condition.celsius), moles);
  return {std::move(system), std::move(moles), std::move(result)};
}

class Printer {
 public:
  explicit Printer(const char* condition) : condition_(condition) {}
  void number(const std::string& quantity, const std::string& which,
              double value) const {
    std::printf("%s | %s | %s | %a\n", condition_, quantity.c_str(), which.c_str(),
                value);
  }

 private:
  const char* condition_;
};

/// "austenite 1": phase and place in the list of those present.
std::string name_of(const Solved& s, std::size_t place) {
  return s.system.phases()[s.result.present[place].phase].name() + " " +
         std::to_string(place + 1);
}

void print_result(const Printer& out, const Solved& s) {
  const auto& elements = s.system.elements();
  out.number("Gibbs energy", "", s.result.gibbs_energy);
  for (std::size_t e = 0; e < elements.size(); ++e)
    out.number("chemical potential", elements[e], s.result.chemical_potential[e]);
  for (std::size_t f = 0; f < s.result.present.size(); ++f) {
    const PhasePoint& point = s.result.present[f];
    const auto& names = s.system.phases()[point.phase].constituents();
    out.number("amount", name_of(s, f), point.amount);
    for (std::size_t i = 0; i < names.size(); ++i)
      out.number("site fraction", name_of(s, f) + " " + names[i].name, point.y[i]);
  }
  if (!s.result.absent.empty())
    out.number("driving force", s.system.phases()[s.result.absent[0].phase].name(),
               s.result.absent[0].driving_force);
}

/// @param per  " per K", " per mole"
void print_slope(const Printer& out, const Solved& s, const EquilibriumSlope& slope,
                 const std::string& per) {
  out.number("slope of Gibbs energy" + per, "", slope.gibbs_energy);
  for (std::size_t e = 0; e < s.system.elements().size(); ++e)
    out.number("slope of chemical potential" + per, s.system.elements()[e],
               slope.chemical_potential[e]);
  for (std::size_t f = 0; f < s.result.present.size(); ++f) {
    const auto& names = s.system.phases()[s.result.present[f].phase].constituents();
    out.number("slope of amount" + per, name_of(s, f), slope.present[f].amount);
    for (std::size_t i = 0; i < names.size(); ++i)
      out.number("slope of site fraction" + per, name_of(s, f) + " " + names[i].name,
                 slope.present[f].y[i]);
  }
}

/// With temperature, and with the first element behind iron in exchange for iron.
void print_slopes(const Printer& out, const Solved& s) {
  const Linearization linear(s.system, s.result, s.overall);
  print_slope(out, s, linear.per_kelvin(), " per K");
  std::vector<double> change(s.overall.size(), 0.0);
  change[0] = -1.0;
  change[1] = 1.0;
  print_slope(out, s, linear.along(change), " per mole");
}

}  // namespace

int main() {
  const SharedParameters set = default_parameters();
  for (const testing::Condition& condition : testing::kConditions) {
    const Solved s = solve(set, condition);
    const Printer out(condition.name);
    const bool usable = s.result.report.usable() && s.result.report.unique;
    out.number("usable", "", usable ? 1.0 : 0.0);
    if (!usable) continue;
    print_result(out, s);
    print_slopes(out, s);
  }
  return 0;
}
