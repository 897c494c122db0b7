/// Calibrations as text.

#include <cmath>

#include "gibbsteel/calibrate.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed_or;
using internal::rounded_or;
using internal::significant;
using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kWidth = 78;

std::string number(double value, int digits = 5) {
  return rounded_or(value, digits, "n/a");
}

std::string numbers_table(const Calibration& c) {
  Rows rows{{"number", "before", "after", "+-", "prior +-", "ratio", ""}};
  for (const CalibratedNumber& n : c.numbers) {
    rows.push_back({n.text, number(n.before), number(n.after), number(n.deviation, 3),
                    number(n.prior_deviation, 3), fixed_or(n.ratio(), 2, "n/a"),
                    n.seen() ? "" : "NOT SEEN"});
  }
  return internal::text_table(rows);
}

std::string fate_of(const MeasurementOutcome& m) {
  if (m.held_back) return "held back";
  return m.weight == 0.0 ? "LEFT OUT" : fixed_or(m.weight, 2, "n/a");
}

std::string name_of(const MeasurementOutcome& m) {
  return m.steel + ", " + m.quantity + (m.unit.empty() ? "" : " [" + m.unit + "]");
}

std::string measurements_table(const Calibration& c) {
  Rows rows{{"measurement", "at", "measured", "+-", "before", "after", "miss before",
             "after", "left out", "weight"}};
  for (const MeasurementOutcome& m : c.measurements)
    rows.push_back({name_of(m), internal::degrees(m.temperature), number(m.value),
                    number(m.uncertainty, 3), number(m.before), number(m.after),
                    fixed_or(m.residual_before, 2, "n/a"),
                    fixed_or(m.residual_after, 2, "n/a"),
                    fixed_or(m.residual_left_out, 2, "n/a"), fate_of(m)});
  return internal::text_table(rows);
}

/// Only what the file as it is computes.
std::string comparison_table(const Calibration& c) {
  Rows rows{{"measurement", "at", "measured", "+-", "computed", "miss"}};
  for (const MeasurementOutcome& m : c.measurements)
    rows.push_back({name_of(m), internal::degrees(m.temperature), number(m.value),
                    number(m.uncertainty, 3), number(m.before),
                    fixed_or(m.residual_before, 2, "n/a")});
  return internal::text_table(rows);
}

std::string steels_table(const Calibration& c) {
  Rows rows{{"steel left out", "measurements", "before", "fitted", "predicted", ""}};
  for (const LeftOutSteel& s : c.steels)
    rows.push_back({s.steel, std::to_string(s.count), fixed_or(s.before, 2, "n/a"),
                    fixed_or(s.fitted, 2, "n/a"), fixed_or(s.predicted, 2, "n/a"),
                    s.status == CalibrationStatus::converged
                        ? ""
                        : std::string(to_string(s.status))});
  return "root mean square of the misses, in uncertainties\n" +
         internal::text_table(rows);
}

/// The combination that the data see least, with what it is made of.
std::string least_seen(const Calibration& c) {
  const SeenDirection& least = c.directions.back();
  std::string parts;
  for (std::size_t j = 0; j < least.along.size(); ++j)
    if (std::abs(least.along[j]) > 0.1)
      parts += (parts.empty() ? "" : "; ") + internal::fixed(least.along[j], 2) +
               " of " + c.numbers[j].text;
  return internal::wrapped("combination that is seen least: standard deviation " +
                               internal::fixed(least.ratio, 2) +
                               " of that of the prior; in prior standard deviations " +
                               parts,
                           kWidth, 2);
}

std::string left_out_text(const Calibration& c) {
  std::string text;
  for (const MeasurementOutcome& m : c.measurements)
    if (!m.reason.empty())
      text += internal::wrapped(
          "! " + m.steel + ", " + m.quantity + " at " +
              internal::degrees(m.temperature) +
              (m.held_back || c.numbers.empty()
                   ? " not computed"
                   : " left out of " + std::to_string(m.left_out) + " evaluations") +
              ": " + m.reason,
          kWidth, 2);
  return text;
}

std::size_t fitted_count(const Calibration& c) {
  std::size_t count = 0;
  for (const MeasurementOutcome& m : c.measurements) count += m.weight > 0.0;
  return count;
}

std::string heading(const Calibration& c) {
  std::string text = "calibration of " + std::to_string(c.numbers.size()) +
                     " numbers on " + std::to_string(fitted_count(c)) + " of " +
                     std::to_string(c.measurements.size()) + " measurements: ";
  if (c.status != CalibrationStatus::converged) {
    for (const char letter : to_string(c.status))
      text += letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 32) : letter;
    return text + ", " + c.reason;
  }
  return text + "converged";
}

/// What to do where the fit spoils what was measured elsewhere.
std::string remedy_text(const PublishedCheck& published) {
  if (!published.worse()) return "";
  return internal::wrapped(
      "! fewer published measurements are met than before: the numbers that suit these "
      "steels suit others less. " +
          std::string(published.others() > 0
                          ? "Add those of published_measurements() to the fit, or give "
                            "smaller prior standard deviations."
                          : "Give smaller prior standard deviations."),
      kWidth, 2);
}

/// Nothing was fitted, so all of them count.
std::string comparison_heading(const Calibration& c) {
  std::size_t computed = 0, met = 0;
  double sum = 0.0;
  for (const MeasurementOutcome& m : c.measurements) {
    if (std::isnan(m.residual_before)) continue;
    ++computed;
    met += std::abs(m.residual_before) <= 1.0;
    sum += m.residual_before * m.residual_before;
  }
  const double rms = std::sqrt(sum / static_cast<double>(computed));
  return std::to_string(c.measurements.size()) +
         " measurements beside what is computed, no number was free: " +
         std::to_string(met) + " of " + std::to_string(computed) +
         " met within their uncertainty, rms miss " + fixed_or(rms, 2, "n/a");
}

/// That of the long hold unless all are of minutes; and what an estimate's miss says.
std::string cautions(const Calibration& c) {
  const auto& all = c.measurements;
  const auto is_long_hold = [](const MeasurementOutcome& m) {
    return internal::long_hold_mark(m.quantity).empty();
  };
  const bool minutes =
      !all.empty() && std::none_of(all.begin(), all.end(), is_long_hold);
  const bool hardened = std::any_of(all.begin(), all.end(), [](const auto& m) {
    return m.unit == "HRC" || m.unit == "HV" || m.quantity.starts_with("martensite") ||
           m.quantity.starts_with("retained");
  });
  return (hardened
              ? internal::wrapped(
                    "Hardness, martensite start and retained austenite are "
                    "estimates with an error of their own, see the bands of "
                    "hardening(): within it a miss says nothing of the file, and a "
                    "fit lets the energies take the blame.",
                    kWidth, 0)
              : "") +
         internal::wrapped(
             minutes ? internal::caution_of(all.front().quantity) : internal::kCaution,
             kWidth, 0);
}

std::string comparison_text(const Calibration& c) {
  return internal::wrapped(c.brief(), kWidth, 2) +
         internal::wrapped("computed with: " + c.below, kWidth, 2) + "\n" +
         comparison_table(c) + left_out_text(c) +
         internal::wrapped("miss: computed less measured, in uncertainties.", kWidth,
                           0) +
         cautions(c);
}

}  // namespace

std::string Calibration::brief() const {
  if (status == CalibrationStatus::compared) return comparison_heading(*this);
  std::string text = heading(*this) + ", rms miss " + fixed_or(rms_before(), 2, "n/a") +
                     " before, " + fixed_or(rms_after(), 2, "n/a") + " after";
  const double held_back = rms_after(true);
  if (!std::isnan(held_back))
    text += "; held back " + internal::fixed(rms_before(true), 2) + ", " +
            internal::fixed(held_back, 2);
  const std::string checked = published.brief();
  return text + (checked.empty() ? "" : "; " + checked);
}

std::string Calibration::full() const {
  if (status == CalibrationStatus::compared) return comparison_text(*this);
  std::string text = internal::wrapped(brief(), kWidth, 2);
  text += internal::wrapped(
      "on " + below + "; loss " + std::string(to_string(loss)) +
          (loss == Loss::squares
               ? std::string()
               : ", c = " + significant(loss_scale, 4) + " uncertainties") +
          "; " + std::to_string(rounds) + " rounds, " + std::to_string(evaluations) +
          " evaluations",
      kWidth, 2);
  text += remedy_text(published);
  text += "\n" + numbers_table(*this) + "\n" + measurements_table(*this);
  if (!steels.empty()) text += "\n" + steels_table(*this);
  if (!directions.empty()) text += "\n" + least_seen(*this);
  text += left_out_text(*this);
  for (const std::string& remark : remarks)
    text += internal::wrapped("! " + remark, kWidth, 2);
  return text +
         internal::wrapped(
             "Standard deviations hold if the model is right between the measurements "
             "and their uncertainties are independent. Where a phase is absent its "
             "amount has no slope, and the fit cannot bring it back.",
             kWidth, 0) +
         cautions(*this);
}

}  // namespace gibbsteel
