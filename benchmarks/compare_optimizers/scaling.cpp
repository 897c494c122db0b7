/// Cost against the size of the task: number of elements of a high-speed steel at
/// 1150 C with all phases (the last three of a layer), and number of phases with all
/// elements of the shipped file.
///
///   scaling OUT.json

#include <fstream>
#include <iostream>
#include <limits>

#include "json_out.hpp"
#include "measure.hpp"
#include "solvers.hpp"

namespace {

using namespace gibbsteel;
using namespace gibbsteel::contest;

constexpr std::size_t kOfFile = 9, kElements = 12;  // added to iron; with the layer

/// In the order in which elements are added; Fe makes one more.
NamedValues first_elements(std::size_t count) {
  static const NamedValues all{
      {"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2},  {"V", 1.9},   {"Co", 5.0},
      {"Mn", 0.3}, {"Si", 0.3}, {"Ni", 0.3}, {"Nb", 0.2}, {"Ti", 0.02}, {"N", 0.03},
  };
  NamedValues some;
  for (const auto& [symbol, percent] : all) {
    if (count-- == 0) break;
    some.set(symbol, percent);
  }
  return some;
}

struct Size {
  std::string grows;
  Task task;
};

std::vector<Size> all_sizes() {
  const auto t = Temperature::celsius(1150.0);
  std::vector<Size> sizes;
  const auto layered = load_parameters(
      GIBBSTEEL_LAYERS "/niobium_titanium_nitrogen.json", default_parameters());
  for (std::size_t added = 2; added <= kElements; ++added)
    sizes.push_back({"elements", make_task("elements", first_elements(added), t, {},
                                           added > kOfFile ? layered : nullptr)});
  std::vector<std::string> phases;
  for (const Phase& phase : default_parameters()->phases) {
    phases.push_back(phase.name);
    if (phases.size() >= 2)
      sizes.push_back(
          {"phases", make_task("phases", first_elements(kOfFile), t, phases)});
  }
  return sizes;
}

void write_size(std::ostream& out, const Size& size) {
  const Task& task = size.task;
  const auto time = [&](const char* name, const std::function<Answer()>& solve) {
    const Outcome outcome = measure(task, solve);
    out << ", \"" << name << "\": ";
    write_number(out, outcome.seconds);
    out << ", \"" << name << "_gap\": ";
    write_number(out, outcome.balance < 1e-6
                          ? outcome.gap
                          : std::numeric_limits<double>::quiet_NaN());
  };
  const auto cold = minimize(*task.system, task.temperature, task.mole_fractions);
  out << "{\"grows\": \"" << size.grows
      << "\", \"elements\": " << task.system->elements().size()
      << ", \"phases\": " << task.system->phases().size()
      << ", \"evaluations\": " << cold.report.evaluations;
  const Sets naive = naive_start(task);
  time("cold", [&] { return gibbsteel_cold(task); });
  time("newton", [&] {
    return gibbsteel_newton(task, warm_start(task), task.nearby.chemical_potential);
  });
  time("ipopt_naive", [&] { return ipopt(task, naive, Barrier::low); });
  time("ipopt_warm", [&] { return ipopt(task, warm_start(task), Barrier::lowest); });
  time("slsqp_warm", [&] { return nlopt_slsqp(task, warm_start(task)); });
  out << '}';
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: scaling OUT.json\n";
    return 2;
  }
  std::ofstream out(argv[1]);
  out << '[';
  bool first = true;
  for (const Size& size : all_sizes()) {
    if (!first) out << ",\n ";
    first = false;
    write_size(out, size);
  }
  out << "]\n";
  return out ? 0 : 1;
}
