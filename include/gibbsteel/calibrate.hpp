#pragma once
/// Numbers of a parameter file fitted to measurements.
///
/// Chosen numbers p_j of the file, with prior standard deviations s_j around the values
/// p0_j that the file has, are moved to where
///
///   sum_i rho(r_i) + sum_j ((p_j - p0_j) / s_j)^2                             Eq. (K1)
///
/// is least; r_i = (q_i(p) - m_i) / u_i, q_i the computed quantity, m_i and u_i the
/// measured value and its standard deviation. Besides squares, rho(r) = r^2:
///
///   huber:   rho = r^2 up to |r| = c, 2 c |r| - c^2 beyond                    Eq. (K2)
///   cauchy:  rho = c^2 ln(1 + (r/c)^2)                                        Eq. (K3)
///
/// (Huber 1964; c = 1.345 and 2.385 cost 5 % where nothing is an outlier, Holland &
/// Welsch 1977; from memory). The minimum is found by iterated reweighting: rounds of
/// least squares by Levenberg-Marquardt (More 1978) with the exact slopes of
/// sensitivities.hpp and the weights w = rho'(r) / (2 r) of the round before. Where a
/// phase appears or vanishes the slope jumps; from such an edge the fit goes on along
///
///   min |sum_k w_k h_k|_(1/H),  w_k >= 0,  sum_k w_k = 1                      Eq. (K6)
///
/// h_k half the slopes of Eq. (K1) on its sides, H = S J^T W J S + 1, in units of s_j;
/// where that is next to zero, the edge has its bottom (bundle of Lemarechal 1975,
/// gradient sampling of Burke, Lewis & Overton 2005, from memory). At the minimum
///
///   covariance of p = (J^T W J + S^-2)^-1                                     Eq. (K4)
///
/// J = dr/dp, W and S diagonal with w_i and s_j; at an edge, of the side that the fit
/// ended on. What the data see: with W^1/2 J S =
/// U diag(t) V^T, the direction S v_k has, in units of the prior, the standard
/// deviation
///
///   1 / sqrt(1 + t_k^2)                                                       Eq. (K5)
///
/// Where a phase is absent its amount has no slope, and the fit cannot bring it back by
/// it: give its driving force as 0 where it was seen.
///
/// All of it takes the model as right between the measurements and the uncertainties as
/// independent.

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/published_check.hpp"
#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// One measured number.
struct Measurement {
  std::string steel;           ///< not empty; leaving out goes by this name
  NamedValues weight_percent;  ///< as for Steel
  Temperature temperature;
  Quantity quantity;
  double value;          ///< in the unit of the quantity
  double uncertainty;    ///< one standard deviation, > 0
  std::string record{};  ///< where it is published; may be empty
  /// Not fitted to, only compared with, before and after: a test.
  bool held_back = false;
  SoakOptions soak{};
};

/// One soak of one steel: whatever else is measured on it, it is soaked once.
bool same_soak(const Measurement& a, const Measurement& b);

/// A number of the parameter file that may move: a coefficient in an energy, Curie
/// temperature or moment of a phase, or a volume. (A layer cannot change a curve or an
/// expansion, and cannot state how uncertain the factor of a curve is.) A term that the
/// file lacks is first added with the coefficient 0 by a layer of its own.
struct FreeNumber {
  std::string place;  ///< as parameter_inputs(), or CalibratedNumber::text of it
  double prior_deviation = 0.0;  ///< in its unit; 0: what the file states for it
  /// Where the fit starts; at the value of the file when not given. A misfit with
  /// several minima ends in another one from another start: the least misfit_after
  /// counts. The prior stays around the value of the file.
  std::optional<double> start{};
};

/// Those that the set states a standard deviation for, which is their prior.
/// @throws InputError gibbsteel.input.300 (it states none)
std::vector<FreeNumber> stated_numbers(const ParameterSet& set);

enum class Loss { squares, huber, cauchy };

std::string_view to_string(Loss) noexcept;

struct CalibrationOptions {
  Loss loss = Loss::huber;
  double loss_scale = 0.0;  ///< c in uncertainties, > 0; 0: the usual one
  /// Refits without each steel in turn (two steels or more) and predicts it.
  bool cross_validate = true;
  /// Counts the published measurements that are met before and after: two evaluations.
  bool check_published = true;
  int most_evaluations = 200;  ///< of all soaks, in each fit, 2 to 100000
  std::size_t threads = 0;     ///< 0: as many as cores; no result depends on it
  /// Called with the evaluations done, those of cross-validation and of the published
  /// measurements too; false stops.
  std::function<bool(std::size_t)> progress;
  // Of the layer:
  std::string file_name = "calibration.json";
  std::string title = "Calibrated numbers";
  std::string edition = "1";
  std::string licence = "CC0-1.0";
};

enum class CalibrationStatus {
  converged,  ///< in a valley, or at the bottom of an edge
  /// No step makes the misfit smaller, but it has a slope: it jumps here, or the
  /// evaluations were used up on the way down an edge. The numbers are the best found.
  stalled,
  not_converged,   ///< evaluations used up before; no layer
  nothing_usable,  ///< no measurement could be computed with the file as it is
  cancelled,       ///< by `progress`; no layer
  compared,        ///< no number was free: measurements beside the file as it is
};

std::string_view to_string(CalibrationStatus) noexcept;

struct CalibratedNumber {
  static constexpr double kUnseen = 0.9;

  std::string place, unit;
  std::string text;     ///< "M6C, energy on (Fe, Mo, W, C), power 1"
  double before = 0.0;  ///< in the file
  double after = 0.0;
  double prior_deviation = 0.0;
  double deviation = 0.0;  ///< after the fit, from Eq. (K4)

  double ratio() const noexcept { return deviation / prior_deviation; }
  /// False: the data say next to nothing about it (ratio above 0.9).
  bool seen() const noexcept { return ratio() <= kUnseen; }
  bool operator==(const CalibratedNumber&) const = default;
};

/// Residuals are (computed - measured) / uncertainty; NaN where not computed.
struct MeasurementOutcome {
  std::string steel, record, quantity, unit;
  Temperature temperature = Temperature::kelvin(0.0);
  double value = 0.0, uncertainty = 0.0;
  bool held_back = false;
  double before = Occurrence::kUnknown;  ///< computed with the file
  double after = Occurrence::kUnknown;   ///< computed with the layer on it
  double residual_before = Occurrence::kUnknown, residual_after = Occurrence::kUnknown;
  /// By a fit without this steel; NaN without cross-validation.
  double residual_left_out = Occurrence::kUnknown;
  double weight = 0.0;  ///< of the last round; 0: not fitted to
  /// Evaluations of the fit in which it had no value or no slope; it was left out of
  /// those steps: its residual stood still, so that losing it never looked like a gain.
  std::size_t left_out = 0;
  std::string reason;  ///< of the last of them; empty when there were none
  bool operator==(const MeasurementOutcome&) const;  ///< two NaN are equal
};

/// A combination of the numbers, Eq. (K5).
struct SeenDirection {
  double singular_value = 0.0;
  double ratio = 1.0;         ///< standard deviation over that of the prior
  std::vector<double> along;  ///< v_k: of each number, in prior deviations; length 1
  bool operator==(const SeenDirection&) const = default;
};

/// Root mean squares of residuals of one steel.
struct LeftOutSteel {
  std::string steel;
  std::size_t count = 0;  ///< measurements that have all three residuals
  double before = Occurrence::kUnknown;
  double fitted = Occurrence::kUnknown;     ///< with the steel in the fit
  double predicted = Occurrence::kUnknown;  ///< by the fit without it
  CalibrationStatus status = CalibrationStatus::converged;
  bool operator==(const LeftOutSteel&) const;  ///< two NaN are equal
};

struct Calibration {
  CalibrationStatus status = CalibrationStatus::nothing_usable;
  std::string reason;  ///< in one sentence, unless converged
  Loss loss = Loss::huber;
  double loss_scale = 0.0;
  std::vector<CalibratedNumber> numbers;         ///< as asked for
  std::vector<MeasurementOutcome> measurements;  ///< as given
  /// Row by row, in the order and units of `numbers`.
  std::vector<double> covariance;
  std::vector<SeenDirection> directions;  ///< best seen first
  std::vector<LeftOutSteel> steels;       ///< in the order of the measurements
  PublishedCheck published;               ///< count 0 without a layer, or not asked for
  /// Eq. (K1) with the file and after; over the measurements in the fit at that point.
  double misfit_before = Occurrence::kUnknown, misfit_after = Occurrence::kUnknown;
  int rounds = 0;                    ///< of reweighting
  std::size_t evaluations = 0;       ///< of the fit; cross-validation not counted
  std::string layer;                 ///< a parameter file; empty when there is none
  std::vector<std::string> remarks;  ///< on what the layer cannot hold
  SharedParameters parameters;  ///< the file with the layer on it; null without a layer
  std::string below;            ///< title of the file calibrated

  bool usable() const noexcept { return parameters != nullptr; }
  /// Root mean square of the residuals of measurements fitted to, or held back.
  double rms_before(bool held_back = false) const;
  double rms_after(bool held_back = false) const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables
};

/// @param numbers  none: nothing is fitted; `before` of the measurements says how the
///                 file does on them
/// @param on  default_parameters() when null; calibrated numbers keep no correlation
///            that it states with others, the prior takes them as independent
/// @throws InputError with every problem: gibbsteel.input.300 (numbers), .301
///         (measurements), .302 (options), .210 (temperatures), and those of Steel and
///         of the quantities
Calibration calibrate(const std::vector<Measurement>& measurements,
                      const std::vector<FreeNumber>& numbers,
                      const SharedParameters& on = nullptr,
                      const CalibrationOptions& options = {});

}  // namespace gibbsteel
