#include "gibbsteel/measured_carbide.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/carbide_balance.hpp"
#include "internal/measured_checks.hpp"
#include "internal/measured_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/occurrence_names.hpp"
#include "internal/shared_hash.hpp"
#include "internal/state_totals.hpp"

namespace gibbsteel {
namespace {

using internal::CarbideBalance;
using internal::CarbideShare;
using internal::fixed;
using internal::MatrixVolume;
using internal::shortest;

std::vector<Occurrence> of_kind(const State& state, const std::string& kind) {
  std::vector<Occurrence> found;
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind) found.push_back(o);
  return found;
}

/// Kinds that are not matrix, in the order of the state.
std::vector<std::string> other_kinds(const State& state) {
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.occurrences)
    if (o.role != Role::matrix &&
        std::find(kinds.begin(), kinds.end(), o.kind) == kinds.end())
      kinds.push_back(o.kind);
  return kinds;
}

/// Volumes are those that the microscope sees.
SoakOptions at_room(SoakOptions options) {
  options.basis = VolumeBasis::room;
  return options;
}

/// A kind in the balance: with the composition used, and with the other one.
struct Candidate {
  CarbideInBalance report;
  CarbideShare used, other;
};

class Balance {
 public:
  Balance(const State& state, const std::vector<MeasuredCarbide>& measured,
          const MeasuredCarbideOptions& options, const Steel& steel)
      : state_(state),
        options_(options),
        set_(*steel.parameters()),
        annealed_(steel.soak(options.annealed_at, at_room(options.annealing))),
        matrix_(state.matrix_phases().front()),
        volume_(steel, matrix_),
        steel_atoms_(state.analysis.mole_fractions(set_)) {
    collect(measured);
    check();
  }

  ShortSoak result(const std::vector<MeasuredCarbide>& measured) const;

 private:
  void collect(const std::vector<MeasuredCarbide>& measured);
  void add(const std::string& kind, double percent, double deviation, bool measured);
  void check();
  void check_volumes();
  void check_possible() const;
  std::vector<CarbideShare> shares(CarbideShare Candidate::*which) const;
  CarbideBalance solve(const std::vector<CarbideShare>& shares) const {
    return internal::balance_carbides(steel_atoms_, shares, volume_,
                                      matrix_.molar_volume);
  }
  NamedValues matrix_of(const std::vector<CarbideShare>& shares) const {
    return solve(shares).matrix_weight_percent(set_);
  }
  NamedValues deviations() const;
  std::vector<MatrixBand> bands() const;
  Occurrence matrix_occurrence(const CarbideBalance& balance) const;
  State state() const;

  const State& state_;
  const MeasuredCarbideOptions& options_;
  const ParameterSet& set_;
  State annealed_;
  Occurrence matrix_;
  MatrixVolume volume_;
  NamedValues steel_atoms_;
  std::vector<Candidate> all_;
  std::vector<Problem> problems_;
};

void Balance::collect(const std::vector<MeasuredCarbide>& measured) {
  for (const MeasuredCarbide& m : measured)
    add(m.kind, m.volume_percent, m.standard_deviation, true);
  if (options_.unlisted == UnlistedCarbide::absent) return;
  for (const std::string& kind : other_kinds(state_)) {
    const auto listed =
        std::find_if(measured.begin(), measured.end(),
                     [&](const MeasuredCarbide& m) { return m.kind == kind; });
    if (listed == measured.end()) add(kind, state_.volume_percent_of(kind), 0.0, false);
  }
}

void Balance::add(const std::string& kind, double percent, double deviation,
                  bool measured) {
  auto soak = of_kind(state_, kind), annealed = of_kind(annealed_, kind);
  // What was not measured is kept as it is.
  const bool prefers_soak = !measured || options_.composition == CarbideSource::soak;
  const bool from_soak = annealed.empty() || (prefers_soak && !soak.empty());
  Candidate c;
  c.report.standard_deviation = deviation;
  c.used = {from_soak ? soak : annealed, percent};
  c.other = {from_soak ? annealed : soak, percent};
  c.report.other_source_exists = measured && !c.other.occurrences.empty();
  if (!c.report.other_source_exists) c.other = c.used;
  c.report.kind = kind;
  c.report.volume_percent = percent;
  c.report.long_hold_volume = state_.volume_percent_of(kind);
  c.report.measured = measured;
  c.report.composition = from_soak ? CarbideSource::soak : CarbideSource::annealed;
  if (!c.used.occurrences.empty())
    c.report.weight_percent = c.used.occurrences.front().weight_percent;
  else if (percent > 0.0)
    problems_.push_back(
        {"gibbsteel.input.264", "measured, " + kind,
         "occurs neither at " + fixed(state_.temperature.in_celsius(), 0) +
             " C nor at the annealing temperature, " +
             fixed(options_.annealed_at.in_celsius(), 0) +
             " C: its composition is not known",
         "check the kind, or give an annealing temperature at which it occurs"});
  if (!c.used.occurrences.empty()) all_.push_back(std::move(c));
}

void Balance::check() {
  if (problems_.empty()) check_volumes();
  if (!problems_.empty()) throw InputError(std::move(problems_));
  check_possible();
}

void Balance::check_volumes() {
  const auto check = [&](const Occurrence& o) {
    if (std::isnan(o.molar_volume))
      problems_.push_back({"gibbsteel.input.265", "parameters",
                           "have no volume data for " + o.kind,
                           "add `room_volume` to the parameter file"});
  };
  check(matrix_);
  for (const Candidate& c : all_) {
    check(c.used.occurrences.front());
    if (c.report.other_source_exists &&
        c.other.occurrences.front().phase != c.used.occurrences.front().phase)
      check(c.other.occurrences.front());
  }
}

void Balance::check_possible() const {
  const CarbideBalance balance = solve(shares(&Candidate::used));
  if (balance.possible) return;
  std::string text;
  for (const Candidate& c : all_)
    text += (text.empty() ? "" : " and ") +
            internal::significant(c.report.volume_percent, 4) + " vol% " +
            c.report.kind;
  std::vector<Problem> problems;
  for (const auto& [symbol, amount] : balance.matrix) {
    if (amount >= 0.0) continue;
    const double given = state_.analysis.modelled[symbol];
    const double held = given * (1.0 - amount / steel_atoms_[symbol]);
    problems.push_back(
        {"gibbsteel.input.263", "measured, " + symbol,
         text + " would hold " + fixed(held, 3) + " wt% " + symbol +
             " of the steel, which has " + fixed(given, 3),
         "check the count, the kind and the composition, or take the composition of "
         "the other source"});
  }
  throw InputError(std::move(problems));
}

std::vector<CarbideShare> Balance::shares(CarbideShare Candidate::*which) const {
  std::vector<CarbideShare> list;
  for (const Candidate& c : all_) list.push_back(c.*which);
  return list;
}

/// Standard deviation of every element of the matrix: half the difference between the
/// count plus and minus its own, added in squares.
NamedValues Balance::deviations() const {
  NamedValues squares;
  for (std::size_t k = 0; k < all_.size(); ++k) {
    const double deviation = all_[k].report.standard_deviation;
    if (deviation <= 0.0) continue;
    auto more = shares(&Candidate::used), less = more;
    more[k].volume_percent += deviation;
    less[k].volume_percent = std::max(less[k].volume_percent - deviation, 0.0);
    const double width = more[k].volume_percent - less[k].volume_percent;
    const NamedValues high = matrix_of(more), low = matrix_of(less);
    for (const auto& [symbol, value] : high) {
      const double change = (value - low[symbol]) * deviation / width;
      squares.set(symbol, squares[symbol] + change * change);
    }
  }
  NamedValues result;
  for (const auto& [symbol, square] : squares) result.set(symbol, std::sqrt(square));
  return result;
}

std::vector<MatrixBand> Balance::bands() const {
  const NamedValues value = matrix_of(shares(&Candidate::used));
  const NamedValues other = matrix_of(shares(&Candidate::other));
  const NamedValues deviation = deviations();
  std::vector<MatrixBand> list;
  for (const auto& [symbol, percent] : value) {
    const double two = 2.0 * deviation[symbol];
    list.push_back({symbol, percent, state_.matrix.weight_percent[symbol],
                    deviation[symbol], other[symbol],
                    std::max(std::min(percent, other[symbol]) - two, 0.0),
                    std::min(std::max(percent, other[symbol]) + two, 100.0)});
  }
  return list;
}

Occurrence Balance::matrix_occurrence(const CarbideBalance& balance) const {
  Occurrence o = matrix_;
  o.mole_percent = balance.matrix_moles;
  o.molar_volume = balance.matrix_volume;
  o.atom_fraction = balance.matrix_atom_fraction();
  o.weight_percent = balance.matrix_weight_percent(set_);
  o.molar_mass = 0.0;
  for (const auto& [symbol, fraction] : o.atom_fraction)
    o.molar_mass += fraction * set_.find_element(symbol)->molar_mass;
  o.density = o.molar_mass / o.molar_volume;
  const std::vector<double> y = volume_.site_fractions(o.atom_fraction);
  if (y.empty()) o.site_fractions.clear();
  for (std::size_t i = 0; i < y.size(); ++i) {
    const Constituent& c = volume_.model().constituents()[i];
    o.site_fractions[c.sublattice].fractions.set(c.name, y[i]);
  }
  return o;
}

State Balance::state() const {
  const CarbideBalance balance = solve(shares(&Candidate::used));
  State result = state_;
  result.occurrences = {matrix_occurrence(balance)};
  for (std::size_t k = 0; k < all_.size(); ++k) {
    double moles = 0.0;
    for (const Occurrence& o : all_[k].used.occurrences) moles += o.mole_percent;
    for (Occurrence o : all_[k].used.occurrences) {
      o.mole_percent *= balance.moles[k] / moles;
      if (o.mole_percent > 0.0) result.occurrences.push_back(std::move(o));
    }
  }
  internal::fill_percents(result.occurrences);
  internal::sort_by_size(result.occurrences);
  for (Occurrence& o : result.occurrences) o.name.clear();
  internal::name_occurrences(result.occurrences);
  internal::fill_totals(result);
  result.carbon_activity = result.gibbs_energy = Occurrence::kUnknown;
  result.chemical_potential = result.driving_force = {};
  SolveReport report;
  report.status = SolveStatus::measured;
  report.reason = "matrix by mass balance with measured carbide, no equilibrium";
  result.solve_report = report;
  return result;
}

ShortSoak Balance::result(const std::vector<MeasuredCarbide>& measured) const {
  ShortSoak soak;
  soak.state = state();
  soak.measured = measured;
  for (const Candidate& c : all_) soak.carbides.push_back(c.report);
  soak.bands = bands();
  soak.annealed_at = options_.annealed_at;
  const auto more = internal::measured_warnings(soak);
  soak.state.warnings.insert(soak.state.warnings.begin(), more.begin(), more.end());
  return soak;
}

}  // namespace

ShortSoak with_measured_carbide(const State& state,
                                const std::vector<MeasuredCarbide>& measured,
                                const MeasuredCarbideOptions& options) {
  const SharedParameters parameters =
      options.parameters ? options.parameters : default_parameters();
  internal::check_measured(state, measured, internal::shared_hash(parameters));
  const Steel steel(state.analysis.given,
                    {state.steel, parameters, !state.analysis.bound.empty()});
  return Balance(state, measured, options, steel).result(measured);
}

}  // namespace gibbsteel
