#include "section/section_conditions.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "gibbsteel/elements.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

void check_range(const SweptElement& range, const std::string& place,
                 std::vector<Problem>& problems) {
  if (!(std::isfinite(range.high) && range.low >= 0.0 && range.low < range.high))
    problems.push_back(
        {"gibbsteel.input.280", place,
         "goes from " + shortest(range.low) + " to " + shortest(range.high) + " wt%",
         "give two weight percents from 0 upwards, the lower one first"});
  if (range.element == "Fe")
    problems.push_back({"gibbsteel.input.281", place, "is that of Fe",
                        "name another element: Fe is the balance"});
}

constexpr double kLeastExtent = 10.0;  ///< of an axis [tolerances]

/// An axis on which the least tolerance is too wide.
void check_width(double width, double least_tolerance, const std::string& unit,
                 const std::string& place, std::vector<Problem>& problems) {
  const double least = kLeastExtent * least_tolerance;
  if (width > 0.0 && width < (1.0 - 1e-6) * least)
    problems.push_back({"gibbsteel.input.282", place,
                        "is " + significant(width, 3) + " " + unit + " from end to end",
                        "give " + significant(least, 1) + " " + unit + " or more"});
}

/// Moles in 100 g, in the order of `elements`.
std::vector<double> moles_of(const Steel& steel,
                             const std::vector<std::string>& elements) {
  std::vector<double> moles;
  for (const std::string& symbol : elements)
    moles.push_back(steel.analysis().modelled[symbol] /
                    steel.parameters()->find_element(symbol)->molar_mass);
  return moles;
}

std::vector<double> slope(const std::vector<double>& from,
                          const std::vector<double>& to, double extent) {
  std::vector<double> per_unit(from.size());
  for (std::size_t e = 0; e < from.size(); ++e)
    per_unit[e] = (to[e] - from[e]) / extent;
  return per_unit;
}

/// Bound tramp elements can make the composition bend.
void check_straight(const std::vector<double>& expected,
                    const std::vector<double>& found) {
  for (std::size_t e = 0; e < found.size(); ++e)
    if (std::abs(expected[e] - found[e]) > 1e-6)
      throw InputError(
          {{"gibbsteel.input.283", "steel",
            "binds tramp elements so that its composition is not linear over the map",
            "narrow the ranges, or use a steel without bind_tramp_elements"}});
}

}  // namespace

double SectionRequest::height() const {
  return y ? y->high - y->low : high.in_kelvin() - low.in_kelvin();
}

double SectionRequest::x_tolerance() const {
  return std::min(options.percent_tolerance, width() / kLeastExtent);
}

double SectionRequest::y_tolerance() const {
  return std::min(y ? options.percent_tolerance : options.temperature_tolerance,
                  height() / kLeastExtent);
}

PlanePoint SectionRequest::extent() const {
  return {width() / x_tolerance(), height() / y_tolerance()};
}

Steel SectionRequest::steel_at(PlanePoint at) const {
  NamedValues percent{{x.element, x.low + at.x * x_tolerance()}};
  if (y) percent.set(y->element, y->low + at.y * y_tolerance());
  return steel.changed(percent, steel.name());
}

Temperature SectionRequest::temperature_at(PlanePoint at) const {
  return y ? low : Temperature::kelvin(low.in_kelvin() + at.y * y_tolerance());
}

void check(const SectionRequest& request) {
  std::vector<Problem> problems = request.options.problems();
  check_range(request.x, "x axis", problems);
  check_width(request.width(), kLeastPercentTolerance, "wt%", "x axis", problems);
  const double least = request.y ? kLeastPercentTolerance : kLeastTemperatureTolerance;
  check_width(request.height(), least, request.y ? "wt%" : "K", "y axis", problems);
  if (request.y) {
    check_range(*request.y, "y axis", problems);
    if (request.x.element == request.y->element)
      problems.push_back({"gibbsteel.input.281", "y axis",
                          "is that of " + request.y->element + ", as the x axis is",
                          "name two elements"});
  }
  try {
    check_temperatures(std::array{request.low, request.high});
    if (!request.y && !(request.low < request.high))
      problems.push_back({"gibbsteel.input.250", "range",
                          "goes from " + fixed(request.low.in_celsius(), 1) + " C to " +
                              fixed(request.high.in_celsius(), 1) + " C",
                          "give the lower temperature first"});
  } catch (const InputError& error) {
    problems.insert(problems.end(), error.problems().begin(), error.problems().end());
  }
  if (!problems.empty()) throw InputError(std::move(problems));
}

SoakPlane soak_plane(const SectionRequest& request, const SoakOptions& soak) {
  const PlanePoint extent = request.extent();
  SoakProblem problem(request.steel_at(extent), soak);
  const auto elements = problem.system.elements();  // the problem is moved away
  const auto moles = [&](PlanePoint at) {
    return moles_of(request.steel_at(at), elements);
  };
  ConditionPlane plane{{request.low, moles({})}, 0.0, {}, {}};
  plane.moles_per_x = slope(plane.corner.moles, moles({extent.x, 0.0}), extent.x);
  plane.moles_per_y = slope(plane.corner.moles, moles({0.0, extent.y}), extent.y);
  if (!request.y) plane.kelvin_per_y = request.y_tolerance();
  SoakPlane result(std::move(problem), std::move(plane));
  for (const double s : {0.31, 0.57, 1.0}) {
    const PlanePoint at{s * extent.x, s * s * extent.y};
    check_straight(result.conditions(at).moles, moles(at));
  }
  return result;
}

}  // namespace gibbsteel::internal
