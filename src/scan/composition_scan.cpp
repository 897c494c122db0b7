#include "scan/composition_scan.hpp"

#include <cmath>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/slopes_of_soak.hpp"

namespace gibbsteel::internal {
namespace {

using Problems = std::vector<Problem>;

const char* const kCode = "gibbsteel.input.268";

void check_element(const Steel& steel, const std::string& element, Problems& out) {
  const auto bad = [&](const std::string& what) {
    out.push_back({kCode, "element", what,
                   "choose an element that the parameter file models, other than Fe"});
  };
  if (!find_element(element))
    bad("'" + element + "' is not the symbol of an element");
  else if (element == "Fe")
    bad("Fe is the balance of all others");
  else if (!steel.parameters()->find_element(element))
    bad(element + " is not modelled by the parameter file");
}

/// What the other elements leave [wt%].
double most_of(const Steel& steel, const std::string& element) {
  double rest = 100.0;
  for (const auto& [symbol, percent] : steel.analysis().given)
    if (symbol != "Fe" && symbol != element) rest -= percent;
  return rest;
}

void check_range(const Steel& steel, const std::string& element,
                 const WeightPercentRange& range, Problems& out) {
  const std::string text =
      "goes from " + shortest(range.low) + " to " + shortest(range.high) + " wt%";
  const double most = most_of(steel, element);
  if (!(range.low >= 0.0 && range.low < range.high))
    out.push_back({kCode, "range", text, "give 0 or more, the lower number first"});
  else if (!(range.high <= most))
    out.push_back(
        {kCode, "range", text, "the other elements leave " + fixed(most, 2) + " wt%"});
}

void check_options(const CompositionSearchOptions& search, Problems& out) {
  const auto require = [&](bool good, const char* place, const std::string& value,
                           const char* remedy) {
    if (!good) out.push_back({kCode, place, "is " + value, remedy});
  };
  require(search.steps >= 4 && search.steps <= 10000, "steps",
          std::to_string(search.steps), "give 4 to 10000");
  require(search.tolerance >= 1e-8 && search.tolerance <= 1.0, "tolerance",
          shortest(search.tolerance), "give 1e-8 to 1 wt%");
  require(search.most_soaks >= 10, "most_soaks", std::to_string(search.most_soaks),
          "give 10 or more");
}

/// The steel with all elements of the line; checked first.
Steel at_high_end(const Steel& steel, const std::string& element,
                  const WeightPercentRange& range, Temperature t, TemperatureUnit unit,
                  const CompositionSearchOptions& search) {
  check_temperatures({&t, 1}, unit);
  Problems problems;
  check_element(steel, element, problems);
  check_range(steel, element, range, problems);
  check_options(search, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  return steel.changed({{element, range.high}}, steel.name());
}

}  // namespace

CompositionScan::CompositionScan(const Steel& steel, const std::string& element,
                                 const WeightPercentRange& range, Temperature t,
                                 const SoakOptions& soak,
                                 const CompositionSearchOptions& search)
    : steel_(at_high_end(steel, element, range, t, soak.temperature_unit, search)),
      element_(element),
      range_(range),
      search_(search),
      problem_(steel_, soak),
      line_(problem_.system, soak.solve, {t, moles(range.low)},
            {t, moles(range.high)}) {
  require_straight();
  scan_ = scan_line(line_, {1.0 / static_cast<double>(search.steps),
                            search.tolerance / (range.high - range.low),
                            search.most_soaks, search.progress});
}

double CompositionScan::percent(double s) const {
  return std::lerp(range_.low, range_.high, s);
}

MillAnalysis CompositionScan::analysis(double percent) const {
  return steel_.changed({{element_, percent}}).analysis();
}

/// In 100 g of certificate, as system.elements().
std::vector<double> CompositionScan::moles(double percent) const {
  const NamedValues modelled = analysis(percent).modelled;
  std::vector<double> moles;
  for (const std::string& symbol : problem_.system.elements())
    moles.push_back(modelled[symbol] /
                    steel_.parameters()->find_element(symbol)->molar_mass);
  return moles;
}

/// A compound of tramp elements that uses up the element bends the line.
void CompositionScan::require_straight() const {
  constexpr double kRounding = 1e-9;  // [mol per 100 g]
  const auto low = moles(range_.low), middle = moles(percent(0.5)),
             high = moles(range_.high);
  for (std::size_t e = 0; e < middle.size(); ++e)
    if (std::abs(middle[e] - 0.5 * (low[e] + high[e])) > kRounding)
      throw InputError(
          {{kCode, "range", element_ + " is tied up by tramp elements in a part of it",
            "start the range higher, or do not bind tramp elements"}});
}

const SoakProblem& CompositionScan::at(double s) {
  problem_.mole_fractions = line_.mole_fractions(s);
  problem_.blank.analysis = analysis(percent(s));
  return problem_;
}

ValueLine CompositionScan::line() {
  ValueLine line;
  line.scan = &scan_;
  line.solve = [this](double s) { return line_.solve(s); };
  line.state = [this](double s, const Equilibrium& result) {
    return at(s).state_of(result);
  };
  line.slope = [this](double s, const Equilibrium& result, const State& state) {
    const auto slopes =
        slopes_of_soak(at(s), result, state, {std::vector{element_}, {}, false});
    return slopes.empty() ? std::nullopt : std::optional(slopes.back());
  };
  line.length = range_.high - range_.low;
  line.tolerance = search_.tolerance / line.length;
  line.most_soaks = search_.most_soaks;
  line.progress = search_.progress;
  return line;
}

}  // namespace gibbsteel::internal
