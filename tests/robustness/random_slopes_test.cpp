/// Slopes of random steels against two oracles: differences of soaks, and identities
/// that the slopes of any equilibrium obey.

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <limits>
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
  usual = std::max(20, usual / 15);  // with fewer, one odd draw decides
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

  void check(const std::string& what) const {
    MESSAGE(what << ": " << states << " compared, " << other_phases
                 << " with a change of phases within the steps, " << one_sided
                 << " one-sided, " << unusable << " not usable; " << numbers.compared
                 << " numbers, worst miss " << numbers.worst << " ("
                 << numbers.worst_name << "); " << numbers.not_resolved
                 << " numbers hardly change, worst miss there "
                 << numbers.worst_unresolved << " (" << numbers.worst_unresolved_name
                 << "), " << numbers.not_converged << " differences are not converged");
    CHECK(numbers.worst <= 1e-6);
    // 1e-9 of the number per step: a minimum of D is found to about 1e-7 J/mol only.
    CHECK(numbers.worst_unresolved <= 100.0);
    CHECK(states > 2 * (other_phases + one_sided + unusable));
    CHECK(numbers.compared > 5 * numbers.not_converged);
    CHECK(2 * numbers.compared > numbers.not_resolved);
  }
};

using Number = parameter_file::ParameterNumber;

Expression& expression_at(ParameterSet& set, const Number& number) {
  if (number.where == Number::Where::curve)
    return set.curves[number.owner].pieces[number.item].value;
  Phase& phase = set.phases[number.owner];
  if (number.where == Number::Where::energy) return phase.energy[number.item].value;
  if (number.where == Number::Where::curie_temperature)
    return phase.curie_temperature[number.item].value;
  return phase.magnetic_moment[number.item].value;
}

/// A set in which one number has become `value`. (That the places of the numbers are
/// right is tested in parameter_file/parameter_numbers_test.cpp.)
SharedParameters changed(ParameterSet set, const Number& number, double value) {
  const bool room = number.where == Number::Where::room_volume;
  if (room || number.where == Number::Where::hot_volume) {
    Phase& phase = set.phases[number.owner];
    VolumeData& data = room ? *phase.room_volume : *phase.hot_volume;
    if (number.entry == Number::Entry::expansion)
      data.linear_expansion = value;
    else
      data.terms[number.item].cm3_per_mol = value;
  } else if (number.entry == Number::Entry::factor) {
    expression_at(set, number).curves[number.index].factor = value;
  } else {
    expression_at(set, number).terms[number.index].coefficient = value;
  }
  return std::make_shared<const ParameterSet>(std::move(set));
}

/// A step that changes amounts and compositions of the phases by up to 1 in 100.
double step_of(const Number& number, const State& state, const StateSlope& slope) {
  double relative = 0.0;
  for (std::size_t k = 0; k < state.occurrences.size(); ++k) {
    const Occurrence &o = state.occurrences[k], &d = slope.occurrences[k];
    relative = std::max({relative, std::abs(d.mole_percent / o.mole_percent),
                         std::abs(d.volume_percent / o.volume_percent)});
    for (const auto& [symbol, percent] : o.weight_percent)
      relative = std::max(relative, std::abs(d.weight_percent[symbol] / percent));
  }
  // Without an effect on those: on driving forces only, which are nearly linear in it.
  const double size = number.value == 0.0 ? 1e3 : std::abs(number.value);
  return relative > 0.0 ? std::min(1e-2 / relative, 0.3 * size) : 1e-3 * size;
}

bool is_zero(const StateSlope& slope) {
  const auto numbers = testing::numbers_of(slope);
  return std::all_of(numbers.begin(), numbers.end(),
                     [](const auto& number) { return number.second == 0.0; });
}

/// To the accuracy of a soak, which for driving forces is that of a minimum of D.
bool same(const State& a, const State& b) {
  const auto x = testing::numbers_of(a), y = testing::numbers_of(b);
  if (x.size() != y.size()) return false;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double least = x[i].first.starts_with("driving force") ? 1e-5 : 1e-13;
    if (std::abs(x[i].second - y[i].second) > 1e-9 * std::abs(x[i].second) + least)
      return false;
  }
  return true;
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

/// Of u . dmu(v) = v . dmu(u), relative to the size of the terms that are summed; at
/// the largest number of phases both are zero but for rounding, and the least size
/// counts [J/mol].
double asymmetry(double least, const std::vector<double>& u,
                 const EquilibriumSlope& along_u, const std::vector<double>& v,
                 const EquilibriumSlope& along_v) {
  double difference = 0.0, size = least;
  for (std::size_t i = 0; i < u.size(); ++i) {
    const double a = u[i] * along_v.chemical_potential[i];
    const double b = v[i] * along_u.chemical_potential[i];
    difference += a - b;
    size += std::abs(a) + std::abs(b);
  }
  return std::abs(difference) / size;
}

/// The worst miss of each identity.
struct Identities {
  double balance = 0.0, duhem = 0.0, entropy = 0.0, symmetry = 0.0, convexity = 0.0;
  double strict = 0.0;  ///< symmetry by the least size that was asked before

  /// Gibbs-Duhem phase by phase, M . dmu/dT = dG/dT, which is the negative entropy.
  void look_at_temperature(const Solved& s, const EquilibriumSlope& dt) {
    const std::vector<double> nothing(s.x.size(), 0.0);
    balance = std::max(balance, balance_miss(s, dt, nothing));
    double negative_entropy = 0.0;
    for (const PhasePoint& p : s.result.present) {
      const double g_t =
          s.system.phases()[p.phase].evaluate(s.result.temperature, p.y).dt;
      const double sum = dot(atoms_of(s, p.phase, p.y), dt.chemical_potential);
      duhem = std::max(duhem, std::abs(sum - g_t) / std::abs(g_t));
      negative_entropy += p.amount * g_t;
    }
    entropy = std::max(entropy, std::abs(dt.gibbs_energy - negative_entropy) /
                                    std::abs(negative_entropy));
  }

  /// The response of the potentials to the composition is symmetric, not negative, and
  /// without a part along the composition itself.
  void look_at_composition(const Solved& s, const Linearization& linear,
                           std::mt19937_64& random) {
    const auto u = direction(s.x, random), v = direction(s.x, random);
    const auto along_u = linear.along(u), along_v = linear.along(v);
    balance = std::max(balance, balance_miss(s, along_u, u));
    const double rt = kGasConstant * s.result.temperature.in_kelvin();
    // 1e-9 of this is R T epsilon, what rounding leaves of a potential.
    const double least = rt * std::numeric_limits<double>::epsilon() / 1e-9;
    symmetry = std::max(symmetry, asymmetry(least, u, along_u, v, along_v));
    strict = std::max(strict, asymmetry(1e-4, u, along_u, v, along_v));
    convexity = std::min(convexity, dot(u, along_u.chemical_potential));
    duhem = std::max(duhem, std::abs(dot(s.x, along_u.chemical_potential)) / rt);
  }
};

}  // namespace

TEST_CASE("slopes to temperature and elements agree with differences of soaks") {
  const auto set = default_parameters();
  Tally temperature, element;
  for (int k = 0; k < states_of(80); ++k) {
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
        5e-3 * middle);
  }
  temperature.check("temperature");
  element.check("one element of each steel");
}

TEST_CASE("slopes to numbers of the parameter file agree with differences of soaks") {
  const auto set = default_parameters();
  const auto numbers = parameter_file::parameter_numbers(*set);
  Tally tally;
  int without_effect = 0;
  for (int k = 0; tally.states < states_of(50); ++k) {
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
    const auto soak = [&](double h) {
      return steel_of(drawn, changed(*set, number, number.value + h)).soak(t, options);
    };
    if (is_zero(slope)) {
      ++without_effect;
      CHECK(same(all.state, soak(1e-2 * number.value)));
    } else {
      tally.add(slope, soak, step_of(number, all.state, slope));
    }
  }
  MESSAGE(without_effect << " numbers drawn without effect");
  tally.check("one number of the parameter file for each steel");
}

TEST_CASE("slopes obey the identities of equilibria") {
  Identities worst;
  int states = 0;
  for (int k = 0; k < states_of(200); ++k) {
    const auto solved = solve(k);
    if (!solved) continue;
    ++states;
    const Linearization linear(solved->system, solved->result, solved->x);
    REQUIRE(linear.unique());
    worst.look_at_temperature(*solved, linear.per_kelvin());
    std::mt19937_64 random(7u + static_cast<unsigned>(k));
    worst.look_at_composition(*solved, linear, random);
  }
  MESSAGE(states << " states; balance " << worst.balance << ", Gibbs-Duhem "
                 << worst.duhem << ", entropy " << worst.entropy << ", symmetry "
                 << worst.symmetry << ", lowest u.dmu(u) " << worst.convexity
                 << " J/mol");
  CHECK(states > 0);
  CHECK(worst.balance <= 1e-9);
  CHECK(worst.duhem <= 1e-9);
  CHECK(worst.entropy <= 1e-12);
  CHECK(worst.symmetry <= 1e-9);
  // Missed since the search takes other steps: 2.2e-9 at one state of five phases and
  // five elements, 2.2e-13 J/mol, an eighth of R T epsilon. Kept in sight.
  WARN(worst.strict <= 1e-9);
  CHECK(worst.convexity >= -1e-7);
}
