/// Slopes of random steels against two oracles: differences of soaks, and identities
/// that the slopes of any equilibrium obey.

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <random>

#include "differences.hpp"
#include "gibbsteel/linearization.hpp"
#include "gibbsteel/sensitivities.hpp"
#include "parameter_file/parameter_numbers.hpp"
#include "robustness/random_steels.hpp"

using namespace gibbsteel;
using testing::Band;
using testing::Comparison;
using testing::draw;
using testing::RandomSteel;

namespace {

constexpr Band kSoaks{700.0, 1250.0};

/// States drawn; GIBBSTEEL_SLOPE_STATES asks for another number (1000 take minutes).
int states_of(int usual) {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
  usual = std::max(2, usual / 15);
#endif
  const char* asked = std::getenv("GIBBSTEEL_SLOPE_STATES");
  return asked ? std::atoi(asked) : usual;
}

Steel steel_of(const RandomSteel& drawn, SharedParameters set = nullptr) {
  NamedValues weight_percent;
  for (std::size_t e = 1; e < drawn.elements.size(); ++e)
    weight_percent.set(drawn.elements[e], drawn.weight_percent[e]);
  return Steel(weight_percent, {"", std::move(set), false});
}

/// Tighter than by default: differences magnify what a soak leaves over.
SoakOptions tight() {
  SoakOptions options;
  options.solve.balance_tolerance = 1e-13;
  return options;
}

struct Tally {
  int states = 0;        ///< usable, with a slope that is not one-sided
  int one_sided = 0;     ///< flagged: not compared
  int other_phases = 0;  ///< the phases change within the steps: not compared
  int unusable = 0;
  Comparison numbers;

  template <class Soak>
  void add(const StateSlope& slope, const Soak& soak, double h) {
    if (slope.one_sided || !slope.remark.empty()) {
      ++one_sided;
      return;
    }
    const auto expected = testing::differences(soak, h);
    if (!expected || !testing::compare(slope, *expected, numbers)) {
      ++other_phases;
      return;
    }
    ++states;
  }

  void check(const char* what) const {
    MESSAGE(what << ": " << states << " compared, " << other_phases
                 << " with a change of phases within the steps, " << one_sided
                 << " one-sided, " << unusable << " not usable; " << numbers.compared
                 << " numbers, worst miss " << numbers.worst << " ("
                 << numbers.worst_name << "); " << numbers.not_converged
                 << " numbers of which the difference is not converged");
    CHECK(numbers.worst <= 1e-6);
    CHECK(states > 2 * (other_phases + one_sided + unusable));
    CHECK(numbers.compared > 2 * numbers.not_converged);
  }
};

/// The number at a place of a set becomes `value`: by way of the text of the file.
SharedParameters changed(const nlohmann::json& file, const std::string& place,
                         double value) {
  nlohmann::json copy = file;
  copy.at(nlohmann::json::json_pointer(place)) = value;
  return parse_parameters(copy.dump(), "changed.json");
}

/// A step that changes amounts and compositions of the phases by up to 1 in 500; less
/// for a curve, of which no piece may part from the next by 1 J/mol.
double step_of(const parameter_file::ParameterNumber& number, double kelvin,
               const State& state, const StateSlope& slope) {
  double relative = 0.0;
  for (std::size_t k = 0; k < state.occurrences.size(); ++k) {
    const Occurrence &o = state.occurrences[k], &d = slope.occurrences[k];
    relative = std::max({relative, std::abs(d.mole_percent / o.mole_percent),
                         std::abs(d.volume_percent / o.volume_percent)});
    for (const auto& [symbol, percent] : o.weight_percent)
      relative = std::max(relative, std::abs(d.weight_percent[symbol] / percent));
  }
  using Number = parameter_file::ParameterNumber;
  // Without an effect on those: on driving forces only, which are nearly linear in it.
  const double size = number.value == 0.0 ? 1e3 : std::abs(number.value);
  const double step =
      relative > 0.0 ? std::min(2e-3 / relative, 0.3 * size) : 1e-3 * size;
  if (number.where != Number::Where::curve) return step;
  if (number.entry == Number::Entry::factor) return std::min(step, 1e-6);
  const auto power = number.place.substr(number.place.rfind('/') + 1);
  if (power == "1") return std::min(step, 0.4);
  if (power == "T ln T") return std::min(step, 0.4 / (kelvin * std::log(kelvin)));
  const int n = power == "T" ? 1 : std::stoi(power.substr(2));
  return std::min(step, 0.4 / std::pow(kelvin, n));
}

double dot(std::span<const double> a, std::span<const double> b) {
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

/// A usable, unique equilibrium of a random steel, and its linearization.
struct Solved {
  PhaseSystem system;
  std::vector<double> x;
  Equilibrium result;
};

std::optional<Solved> solve(int k) {
  const auto set = default_parameters();
  std::mt19937_64 random(20261125u + static_cast<unsigned>(k));
  const RandomSteel steel = draw(*set, kSoaks, random);
  Solved solved{
      PhaseSystem(set, steel.elements, testing::phases_without_graphite(*set)),
      steel.x,
      {}};
  solved.result = minimize(solved.system, Temperature::celsius(steel.celsius), solved.x,
                           tight().solve);
  if (!solved.result.report.usable() || !solved.result.report.unique)
    return std::nullopt;
  return solved;
}

/// A random change of composition that keeps the sum, no element by more than itself.
std::vector<double> direction(const std::vector<double>& x, std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(-1.0, 1.0);
  std::vector<double> v;
  double sum = 0.0;
  for (const double share : x) sum += v.emplace_back(share * u(random));
  for (std::size_t i = 0; i < x.size(); ++i) v[i] -= sum * x[i];
  return v;
}

std::vector<double> atoms_of(const Solved& s, std::size_t phase,
                             std::span<const double> y) {
  std::vector<double> atoms(s.x.size(), 0.0);
  const PhaseModel& model = s.system.phases()[phase];
  for (std::size_t i = 0; i < y.size(); ++i) {
    const int element = model.constituents()[i].element;
    if (element >= 0) atoms[static_cast<std::size_t>(element)] += model.sites(i) * y[i];
  }
  return atoms;
}

/// sum of n dM + dn M is db.
double balance_miss(const Solved& s, const EquilibriumSlope& slope,
                    std::span<const double> db) {
  std::vector<double> sum(s.x.size(), 0.0), size(s.x);
  for (std::size_t f = 0; f < s.result.present.size(); ++f) {
    const PhasePoint& p = s.result.present[f];
    const auto atoms = atoms_of(s, p.phase, p.y);
    const auto change = atoms_of(s, p.phase, slope.present[f].y);
    for (std::size_t e = 0; e < sum.size(); ++e) {
      const double a = p.amount * change[e], b = slope.present[f].amount * atoms[e];
      sum[e] += a + b;
      size[e] += std::abs(a) + std::abs(b);
    }
  }
  double worst = 0.0;
  for (std::size_t e = 0; e < sum.size(); ++e)
    worst = std::max(worst, std::abs(sum[e] - db[e]) / size[e]);
  return worst;
}

}  // namespace

TEST_CASE("slopes to temperature and elements agree with differences of soaks") {
  const auto set = default_parameters();
  Tally temperature, element;
  for (int k = 0; k < states_of(150); ++k) {
    std::mt19937_64 random(20261125u + static_cast<unsigned>(k));
    const RandomSteel drawn = draw(*set, kSoaks, random);
    const Steel steel = steel_of(drawn);
    const auto t = Temperature::celsius(drawn.celsius);
    const auto all = sensitivities(steel, t, tight());
    if (!all.state.usable()) {
      ++temperature.unusable;
      continue;
    }
    temperature.add(
        all.at("temperature"),
        [&](double h) {
          return steel.soak(Temperature::celsius(drawn.celsius + h), tight());
        },
        0.5);
    const std::size_t e = 1 + random() % (drawn.elements.size() - 1);
    const double middle = drawn.weight_percent[e];
    element.add(
        all.at(drawn.elements[e]),
        [&](double h) {
          return steel.changed({{drawn.elements[e], middle + h}}).soak(t, tight());
        },
        2e-3 * middle);
  }
  temperature.check("temperature");
  element.check("one element of each steel");
}

TEST_CASE("slopes to numbers of the parameter file agree with differences of soaks") {
  const auto set = default_parameters();
  const auto file = nlohmann::json::parse(write_parameters(*set));
  const auto numbers = parameter_file::parameter_numbers(*set);
  Tally tally;
  int without_effect = 0;
  for (int k = 0; tally.states < states_of(100); ++k) {
    std::mt19937_64 random(20261125u + static_cast<unsigned>(k));
    const RandomSteel drawn = draw(*set, kSoaks, random);
    const auto& number = numbers[random() % numbers.size()];
    const auto t = Temperature::celsius(drawn.celsius);
    SoakOptions options = tight();
    options.basis = k % 2 == 0 ? VolumeBasis::room : VolumeBasis::soak;
    const auto all = sensitivities(steel_of(drawn), t, options,
                                   {std::vector<std::string>{}, {number.place}, false});
    if (!all.state.usable()) {
      ++tally.unusable;
      continue;
    }
    const StateSlope& slope = all.at(number.place);
    double largest = 0.0;
    for (const auto& [name, value] : testing::numbers_of(slope))
      largest = std::max(largest, std::abs(value));
    if (largest == 0.0) {
      ++without_effect;
      continue;
    }
    tally.add(
        slope,
        [&](double h) {
          return steel_of(drawn, changed(file, number.place, number.value + h))
              .soak(t, options);
        },
        step_of(number, t.in_kelvin(), all.state, slope));
  }
  MESSAGE(without_effect << " numbers drawn without effect");
  tally.check("one number of the parameter file for each steel");
}

TEST_CASE("slopes obey the identities of equilibria") {
  double balance = 0.0, duhem = 0.0, entropy = 0.0, symmetry = 0.0, convexity = 0.0;
  int states = 0;
  for (int k = 0; k < states_of(300); ++k) {
    const auto solved = solve(k);
    if (!solved) continue;
    ++states;
    const auto& [system, x, result] = *solved;
    const Linearization linear(system, result, x);
    REQUIRE(linear.unique());
    const auto dt = linear.per_kelvin();
    const std::vector<double> nothing(x.size(), 0.0);
    balance = std::max(balance, balance_miss(*solved, dt, nothing));
    // Gibbs-Duhem, phase by phase: M . dmu/dT = dG/dT, the negative entropy.
    double negative_entropy = 0.0;
    for (const PhasePoint& p : result.present) {
      const double s = system.phases()[p.phase].evaluate(result.temperature, p.y).dt;
      const auto atoms = atoms_of(*solved, p.phase, p.y);
      duhem = std::max(duhem,
                       std::abs(dot(atoms, dt.chemical_potential) - s) / std::abs(s));
      negative_entropy += p.amount * s;
    }
    entropy = std::max(entropy, std::abs(dt.gibbs_energy - negative_entropy) /
                                    std::abs(negative_entropy));
    std::mt19937_64 random(7u + static_cast<unsigned>(k));
    const auto u = direction(x, random), v = direction(x, random);
    const auto along_u = linear.along(u), along_v = linear.along(v);
    balance = std::max(balance, balance_miss(*solved, along_u, u));
    // The response of the potentials to the composition is symmetric and not negative.
    const double uu = dot(u, along_u.chemical_potential);
    const double vv = dot(v, along_v.chemical_potential);
    const double scale = std::sqrt(std::abs(uu * vv)) + 1e-9;
    symmetry = std::max(symmetry, std::abs(dot(u, along_v.chemical_potential) -
                                           dot(v, along_u.chemical_potential)) /
                                      scale);
    convexity = std::min(convexity, uu);
    for (const auto& slope : {along_u, along_v})
      duhem = std::max(duhem, std::abs(dot(x, slope.chemical_potential)) /
                                  kGasConstant / result.temperature.in_kelvin());
  }
  MESSAGE(states << " states; balance " << balance << ", Gibbs-Duhem " << duhem
                 << ", entropy " << entropy << ", symmetry " << symmetry
                 << ", lowest u.dmu(u) " << convexity << " J/mol");
  CHECK(states > 0);
  CHECK(balance <= 1e-9);
  CHECK(duhem <= 1e-9);
  CHECK(entropy <= 1e-12);
  CHECK(symmetry <= 1e-7);
  CHECK(convexity >= -1e-7);
}
