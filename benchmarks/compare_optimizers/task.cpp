#include "task.hpp"

#include "balanced_start.hpp"

#include <cmath>
#include <random>
#include <stdexcept>

namespace gibbsteel::contest {
namespace {

/// In [low, high], from the raw numbers of the generator: the distributions of the
/// standard library differ between implementations.
double uniform(std::mt19937& random, double low, double high) {
  return low + (high - low) * (static_cast<double>(random()) + 0.5) / 4294967296.0;
}

NamedValues random_steel(std::mt19937& random) {
  struct Range {
    const char* symbol;
    double low, high;
  };
  static constexpr Range kRanges[] = {
      {"C", 0.4, 2.2},  {"Cr", 0.5, 12.5}, {"Mo", 0.2, 6.0},
      {"W", 0.2, 9.0},  {"V", 0.1, 5.0},   {"Co", 0.1, 8.0},
      {"Ni", 0.1, 1.0}, {"Mn", 0.2, 1.0},  {"Si", 0.1, 1.0}};
  NamedValues steel;
  for (const Range& range : kRanges)
    steel.set(range.symbol, uniform(random, range.low, range.high));
  return steel;
}

double atoms_of(const PhaseModel& model, const std::vector<double>& y) {
  double sum = 0.0;
  for (std::size_t i = 0; i < y.size(); ++i)
    if (model.constituents()[i].element >= 0) sum += model.sites(i) * y[i];
  return sum;
}

/// Divides every sublattice by its sum.
void normalize(const PhaseModel& model, std::vector<double>& y) {
  const auto& constituents = model.constituents();
  for (std::size_t i = 0, end = 0; i < y.size(); i = end) {
    double sum = 0.0;
    for (end = i; end < y.size(); ++end) {
      if (constituents[end].sublattice != constituents[i].sublattice) break;
      sum += y[end];
    }
    for (std::size_t j = i; j < end; ++j) y[j] /= sum;
  }
}

/// @param kind  0: metals as in the bulk, interstitial sites 5 % filled; 1: metals in
///              equal shares, 95 % filled
std::vector<double> simple_fractions(const Task& task, const PhaseModel& model,
                                     int kind) {
  const double filled = kind == 0 ? 0.05 : 0.95;
  const auto& constituents = model.constituents();
  std::vector<double> y;
  for (const Constituent& constituent : constituents) {
    bool interstitial = false;
    for (const Constituent& other : constituents)
      if (other.sublattice == constituent.sublattice && other.element < 0)
        interstitial = true;
    if (constituent.element < 0)
      y.push_back(1.0 - filled);
    else if (interstitial)
      y.push_back(filled);
    else if (kind == 1)
      y.push_back(1.0);
    else
      y.push_back(task.mole_fractions[static_cast<std::size_t>(constituent.element)]);
  }
  normalize(model, y);
  return y;
}

/// The models of the naive start: those with two kinds stand here twice.
std::vector<std::pair<std::size_t, int>> all_kinds(const PhaseSystem& system) {
  std::vector<std::pair<std::size_t, int>> kinds;
  for (std::size_t i = 0; i < system.phases().size(); ++i) {
    kinds.emplace_back(i, 0);
    if (system.definition(i).second_occurrence) kinds.emplace_back(i, 1);
  }
  return kinds;
}

/// Below it lines come from above, to stay in the range of the file; their step [K].
constexpr double kTurn = 1273.15, kLineStep = 0.2;

Equilibrium solve(const Task& task, double warmer, Certificate certificate) {
  SolveOptions options;
  options.certify = certificate;
  options.proof_seconds = 2.0;
  const auto t = Temperature::kelvin(task.temperature.in_kelvin() + warmer);
  Equilibrium result = minimize(*task.system, t, task.mole_fractions, options);
  if (!result.report.usable())
    throw std::runtime_error(task.name + ": " + result.report.brief());
  return result;
}

}  // namespace

Temperature on_line(const Task& task, int soaks_before) {
  const double kelvin = task.temperature.in_kelvin();
  const double step = kelvin < kTurn ? kLineStep : -kLineStep;
  return Temperature::kelvin(kelvin + step * soaks_before);
}

Task make_task(std::string name, const NamedValues& weight_percent,
               Temperature temperature, std::vector<std::string> phases,
               const SharedParameters& parameters) {
  const Steel steel(weight_percent, {"", parameters, false});
  if (phases.empty())
    for (const Phase& phase : steel.parameters()->phases) phases.push_back(phase.name);
  Task task;
  task.name = std::move(name);
  task.system =
      std::make_shared<const PhaseSystem>(steel.parameters(), steel.elements(), phases);
  task.mole_fractions = steel.mole_fractions();
  task.temperature = temperature;
  task.reference = solve(task, 0.0, Certificate::proof);
  task.nearby = solve(task, 1.0, Certificate::many_starts);
  task.before = solve(task, on_line(task, 1).in_kelvin() - temperature.in_kelvin(),
                      Certificate::many_starts);
  return task;
}

std::vector<Task> all_tasks() {
  const NamedValues high_speed_steel{
      {"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2},  {"V", 1.9},
      {"Co", 5.0}, {"Ni", 0.3}, {"Mn", 0.3}, {"Si", 0.3},
  };
  std::vector<Task> tasks;
  for (int i = 0; i < 10; ++i) {
    const double celsius = 850.0 + 400.0 * i / 9.0;
    tasks.push_back(
        make_task("high-speed steel, " + std::to_string(std::lround(celsius)) + " C",
                  high_speed_steel, Temperature::celsius(celsius)));
  }
  std::mt19937 random(20250101);
  for (int i = 1; i <= 10; ++i) {
    const NamedValues steel = random_steel(random);
    const double celsius = uniform(random, 700.0, 1250.0);
    tasks.push_back(make_task("random steel " + std::to_string(i), steel,
                              Temperature::celsius(celsius)));
  }
  return tasks;
}

namespace {

/// Every kind of every model in equal shares of the atoms.
Sets equal_shares(const Task& task) {
  const auto kinds = all_kinds(*task.system);
  Sets sets;
  for (const auto& [phase, kind] : kinds) {
    const PhaseModel& model = task.system->phases()[phase];
    PhasePoint set;
    set.phase = phase;
    set.y = simple_fractions(task, model, kind);
    set.amount = 1.0 / (static_cast<double>(kinds.size()) * atoms_of(model, set.y));
    sets.push_back(std::move(set));
  }
  return sets;
}

}  // namespace

Sets naive_start(const Task& task) { return balanced(task, equal_shares(task)); }

Sets random_start(const Task& task, unsigned seed) {
  std::mt19937 random(seed);
  Sets sets = equal_shares(task);
  double total = 0.0;
  for (PhasePoint& set : sets) {
    const PhaseModel& model = task.system->phases()[set.phase];
    // Exponentially distributed and normalized: even over the composition space.
    for (double& y : set.y) y = -std::log(uniform(random, 0.0, 1.0));
    normalize(model, set.y);
    set.amount = -std::log(uniform(random, 0.0, 1.0));
    total += set.amount * atoms_of(model, set.y);
  }
  for (PhasePoint& set : sets) set.amount /= total;
  return balanced(task, sets);
}

}  // namespace gibbsteel::contest
