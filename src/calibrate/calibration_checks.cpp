#include "calibrate/calibration_checks.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/soak_problem.hpp"
#include "parameter_file/number_in_words.hpp"
#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel::internal {
namespace {

using parameter_file::ParameterNumber;
using Problems = std::vector<Problem>;
using Where = ParameterNumber::Where;
using Entry = ParameterNumber::Entry;

constexpr std::size_t kMostNumbers = 100;

/// Why a layer cannot hold a fitted value here; empty where it can.
std::string refusal(const ParameterNumber& number) {
  if (number.where == Where::curve) return "belongs to a curve, which a layer keeps";
  if (number.entry == Entry::factor)
    return "is the factor of a curve, which has no standard deviation";
  if (number.entry == Entry::expansion) return "is an expansion, which a layer keeps";
  return "";
}

/// Those that the file states, by place.
double stated_deviation(const ParameterSet& set, const std::string& place) {
  for (const auto& number : parameter_file::uncertain_numbers(set))
    if (number.place == place) return number.standard_deviation;
  return 0.0;
}

/// Of a number that can be freed: one whose standard deviation the file states, if any.
std::string remedy_for_place(const ParameterSet& set,
                             const std::vector<ParameterNumber>& all) {
  const auto stated = parameter_file::uncertain_numbers(set);
  const auto example = std::find_if(all.begin(), all.end(), [&](const auto& number) {
    return stated.empty() ? refusal(number).empty()
                          : number.place == stated.front().place;
  });
  std::string remedy = "give places";
  if (example != all.end())
    remedy += " such as '" + example->place + "' or what they are called, '" +
              parameter_file::number_in_words(set, *example) + "'";
  remedy += "; parameter_inputs of the parameter set lists all places";
  if (!stated.empty())
    remedy += "; in Python leave numbers out (stated_numbers() in C++) for the " +
              std::to_string(stated.size()) +
              " whose standard deviation the set states";
  return remedy;
}

/// By its place, or by what it is called.
const ParameterNumber* find_number(const ParameterSet& set, const std::string& name,
                                   const std::vector<ParameterNumber>& all) {
  for (const ParameterNumber& number : all)
    if (number.place == name) return &number;
  for (const ParameterNumber& number : all)
    if (parameter_file::number_in_words(set, number) == name) return &number;
  return nullptr;
}

void check_number(const ParameterSet& set, const FreeNumber& free,
                  const std::vector<ParameterNumber>& all, Problems& out,
                  std::vector<std::pair<ParameterNumber, double>>& sound) {
  const auto bad = [&](const std::string& what, const std::string& remedy) {
    out.push_back(
        {std::string(codes::kFreeNumber), "numbers, " + free.place, what, remedy});
  };
  const ParameterNumber* found = find_number(set, free.place, all);
  if (!found)
    return bad("there is no number at this place", remedy_for_place(set, all));
  const std::string why = refusal(*found);
  if (!why.empty()) return bad(why, "free coefficients of terms, and volumes");
  for (const auto& [number, deviation] : sound)
    if (number.place == found->place) return bad("is given twice", "give it once");
  const double deviation = free.prior_deviation == 0.0
                               ? stated_deviation(set, found->place)
                               : free.prior_deviation;
  if (free.prior_deviation == 0.0 && deviation == 0.0)
    return bad("has no prior standard deviation, and the file states none",
               "give one, in " + found->unit);
  if (!(deviation > 0.0 && std::isfinite(deviation)))
    return bad("has a prior standard deviation of " + shortest(deviation),
               "give a number above 0, in " + found->unit);
  if (free.start && !std::isfinite(*free.start))
    return bad("starts at " + shortest(*free.start),
               "give a finite number in " + found->unit);
  sound.emplace_back(*found, deviation);
}

std::string place_of(const Measurement& measurement, std::size_t index) {
  return "measurements, " + std::to_string(index + 1) +
         (measurement.steel.empty() ? "" : " (" + measurement.steel + ")");
}

/// The composition and the phases, as the soaks will see them.
void check_soak(const Measurement& measurement, const std::string& place,
                const SharedParameters& set, Problems& out) {
  try {
    const Steel steel(measurement.weight_percent, {measurement.steel, set, false});
    check_temperatures({&measurement.temperature, 1});
    const SoakProblem problem(steel, measurement.soak);
  } catch (const InputError& error) {
    for (Problem problem : error.problems()) {
      problem.place = place + ", " + problem.place;
      out.push_back(std::move(problem));
    }
  }
}

void check_measurement(const Measurement& m, std::size_t index,
                       const SharedParameters& set, Problems& out) {
  const std::string place = place_of(m, index);
  const auto bad = [&](const std::string& what, const std::string& remedy) {
    out.push_back({std::string(codes::kMeasurement), place, what, remedy});
  };
  if (m.steel.empty())
    bad("has no name of the steel", "name it: leaving out goes by it");
  if (!std::isfinite(m.value))
    bad("has the value " + shortest(m.value), "give what was measured");
  if (!(m.uncertainty > 0.0 && std::isfinite(m.uncertainty)))
    bad("has an uncertainty of " + shortest(m.uncertainty),
        "give a number above 0 in the unit of the quantity");
  for (const Problem& problem : m.quantity.problems(*set))
    bad(problem.what, problem.remedy);
  check_soak(m, place, set, out);
}

void check_options(const CalibrationOptions& options, Problems& out) {
  const auto bad = [&](const char* place, const std::string& what,
                       const std::string& remedy) {
    out.push_back({std::string(codes::kCalibrationOption), place, what, remedy});
  };
  const double scale = options.loss_scale;
  if (!(scale >= 0.0 && std::isfinite(scale)))
    bad("loss_scale", "is " + shortest(scale), "give uncertainties above 0, or 0");
  if (options.most_evaluations < 2 || options.most_evaluations > 100000)
    bad("most_evaluations", "is " + std::to_string(options.most_evaluations),
        "give 2 to 100000");
  const std::pair<const char*, const std::string*> texts[] = {
      {"file_name", &options.file_name},
      {"title", &options.title},
      {"edition", &options.edition},
      {"licence", &options.licence}};
  for (const auto& [place, text] : texts)
    if (text->empty()) bad(place, "is empty", "give a text for the layer");
}

}  // namespace

std::vector<std::pair<ParameterNumber, double>> checked_calibration(
    const SharedParameters& set, const std::vector<FreeNumber>& numbers,
    const std::vector<Measurement>& measurements, const CalibrationOptions& options) {
  Problems problems;
  std::vector<std::pair<ParameterNumber, double>> sound;
  if (numbers.size() > kMostNumbers)
    problems.push_back({std::string(codes::kFreeNumber), "numbers",
                        "are " + std::to_string(numbers.size()),
                        "give at most " + std::to_string(kMostNumbers)});
  const auto all = parameter_file::parameter_numbers(*set);
  for (const FreeNumber& free : numbers) check_number(*set, free, all, problems, sound);
  if (numbers.empty() && measurements.empty())
    problems.push_back({std::string(codes::kMeasurement), "measurements",
                        "there is none", "give what was measured"});
  if (!numbers.empty() && std::all_of(measurements.begin(), measurements.end(),
                                      [](const Measurement& m) { return m.held_back; }))
    problems.push_back({std::string(codes::kMeasurement), "measurements",
                        "there is none to fit to", "give one that is not held back"});
  for (std::size_t i = 0; i < measurements.size(); ++i)
    check_measurement(measurements[i], i, set, problems);
  check_options(options, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  return sound;
}

}  // namespace gibbsteel::internal
