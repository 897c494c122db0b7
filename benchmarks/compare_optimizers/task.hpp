#pragma once
/// What every solver is given: the compiled phases, a composition, a temperature, and
/// two classes of starts.

#include <memory>
#include <string>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"

namespace gibbsteel::contest {

/// Phases taken to be present: amounts [mol of formula units per mol of atoms] and site
/// fractions.
using Sets = std::vector<PhasePoint>;

struct Task {
  std::string name;
  std::shared_ptr<const PhaseSystem> system;  ///< compiled beforehand, for all solvers
  std::vector<double> mole_fractions;
  Temperature temperature = Temperature::kelvin(0.0);
  Equilibrium reference;  ///< of minimize(), with a proof where the budget allows one
  Equilibrium nearby;     ///< the same 1 K higher: where the warm starts come from
  Equilibrium before;     ///< the same one soak of the line before
};

/// A line of soaks that ends at the task, from the side that stays in the range of the
/// file.
inline constexpr int kLineSoaks = 2000;
Temperature on_line(const Task& task, int soaks_before);

/// Ten soaks of one nine-element high-speed steel and ten random tool steels. The
/// random ones are the same on every machine.
std::vector<Task> all_tasks();

/// A steel with the phases that can form from its elements, ready for the solvers.
/// @param phases      candidate phases; all of the file when empty
/// @param parameters  default_parameters() when null
/// @throws std::runtime_error when the library itself has no usable result
Task make_task(std::string name, const NamedValues& weight_percent,
               Temperature temperature, std::vector<std::string> phases = {},
               const SharedParameters& parameters = nullptr);

/// Nothing known: every phase model once, and twice if the file names two kinds of it
/// (austenite and MC). Carbides and other phases in equal shares that together hold at
/// most half of any element, austenite from the rest, so that the elements balance.
/// Metals as in the bulk and sites for carbon 5 % filled in the first kind; metals in
/// equal shares and 95 % in the second, so that they do not start from the same place.
/// @pre the first phase of the system is austenite
Sets naive_start(const Task& task);

/// The phase models of the naive start, compositions and shares at random, balanced in
/// the same way.
Sets random_start(const Task& task, unsigned seed);

/// The phases that are stable 1 K higher, with their amounts and compositions there.
inline const Sets& warm_start(const Task& task) { return task.nearby.present; }

/// The same one soak of the line before.
inline const Sets& line_start(const Task& task) { return task.before.present; }

}  // namespace gibbsteel::contest
