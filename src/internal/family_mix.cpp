#include "internal/family_mix.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

/// Half of the stretch in which one family goes over into the next, as a part of the
/// bound.
constexpr double kHalfStretch = 0.1;

/// Eq. (H29).
Along from(Along x, double bound) {
  const double width = 2.0 * kHalfStretch * bound;
  const double t = (x.value - (1.0 - kHalfStretch) * bound) / width;
  if (t <= 0.0) return {0.0, 0.0};
  if (t >= 1.0) return {1.0, 0.0};
  return {t * t * (3.0 - 2.0 * t), 6.0 * t * (1.0 - t) / width * x.slope};
}

Along up_to(Along x, double bound) { return 1.0 - from(x, bound); }

/// By rule of hardening_family.cpp, in its order; the rest is "general".
std::array<Along, 4> shares_by_rule(const NamedValues& wt, const Input* input) {
  const bool element = input && input->kind == Input::Kind::element;
  const auto of = [&](const char* symbol) {
    return Along{wt[symbol], element && input->name == symbol ? 1.0 : 0.0};
  };
  const Along carbon = of("C"), chromium = of("Cr");
  const Along molybdenum = of("Mo") + 0.5 * of("W");
  const Along rich = from(chromium, 10.5);
  const Along stainless = from(chromium - 5.0 * carbon, 7.0);
  const Along high_speed = from(carbon, 0.45) * from(chromium, 3.0) *
                           up_to(chromium, 6.0) * from(molybdenum, 2.0);
  const Along bearing = from(carbon, 0.75) * up_to(carbon, 1.3) * up_to(chromium, 2.0) *
                        up_to(molybdenum, 0.6) * up_to(of("V"), 0.6);
  return {high_speed, rich * (1.0 - stainless), rich * stainless, bearing};
}

}  // namespace

std::vector<FamilyShare> family_shares(const NamedValues& steel_weight_percent,
                                       const Input* input) {
  const auto& families = hardening_families();
  const auto by_rule = shares_by_rule(steel_weight_percent, input);
  std::vector<FamilyShare> found;
  Along rest{1.0, 0.0};
  for (std::size_t i = 0; i < families.size(); ++i) {
    const Along share = i < by_rule.size() ? by_rule[i] : rest;
    rest = rest - share;
    if (share.value > 0.0) found.push_back({&families[i], share});
  }
  return found;
}

Along mixed(const std::vector<FamilyShare>& shares, double HardeningFamily::*number) {
  Along sum;
  for (const FamilyShare& s : shares) sum = sum + s.family->*number * s.share;
  return sum;
}

double mixed_error(const std::vector<FamilyShare>& shares,
                   double HardeningFamily::*number, double HardeningFamily::*error) {
  const double mean = mixed(shares, number).value;
  double variance = 0.0;
  for (const FamilyShare& s : shares) {
    const double apart = s.family->*number - mean;
    variance += s.share.value * (std::pow(s.family->*error, 2) + apart * apart);
  }
  return std::sqrt(variance);
}

NamedValues by_key(const std::vector<FamilyShare>& shares) {
  NamedValues found;
  for (const FamilyShare& s : shares) found.set(s.family->key, s.share.value);
  return found;
}

bool is_between(const NamedValues& shares) {
  return std::none_of(shares.begin(), shares.end(),
                      [](const auto& share) { return share.second >= 0.95; });
}

std::string shares_text(const NamedValues& shares) {
  std::vector<std::pair<std::string, double>> sorted(shares.begin(), shares.end());
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const auto& a, const auto& b) { return a.second > b.second; });
  std::string text;
  for (std::size_t i = 0; i < sorted.size(); ++i)
    text += (i == 0                   ? ""
             : i + 1 == sorted.size() ? " and "
                                      : ", ") +
            sorted[i].first + " (" + fixed(100.0 * sorted[i].second, 0) + " %)";
  return text;
}

}  // namespace gibbsteel::internal
