#include "internal/family_mix.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

/// Eq. (H29) from 0 at `low` to 1 at `high`.
Along rising(Along x, double low, double high) {
  const double t = (x.value - low) / (high - low);
  if (t <= 0.0) return {0.0, 0.0};
  if (t >= 1.0) return {1.0, 0.0};
  return {t * t * (3.0 - 2.0 * t), 6.0 * t * (1.0 - t) / (high - low) * x.slope};
}

/// Within 10 % of a bound.
Along from(Along x, double bound) { return rising(x, 0.9 * bound, 1.1 * bound); }
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
                           up_to(chromium, 6.0) * rising(molybdenum, 1.8, 3.4);
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
  std::stable_sort(found.begin(), found.end(),
                   [](const FamilyShare& a, const FamilyShare& b) {
                     return a.share.value > b.share.value;
                   });
  return found;
}

bool is_moved(const std::vector<FamilyShare>& shares) {
  const HardeningFamily& main = *shares.front().family;
  const auto moved = [&](double HardeningFamily::*number) {
    double by = 0.0;
    for (const FamilyShare& s : shares)
      by += s.share.value * (s.family->*number - main.*number);
    return std::abs(by);
  };
  return moved(&HardeningFamily::start_offset) > 10.0 ||
         moved(&HardeningFamily::hardness_offset) > 15.0 ||
         moved(&HardeningFamily::transformation_rate) > 0.1 * main.transformation_rate;
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
  std::string text;
  std::size_t i = 0;
  for (const auto& [key, share] : shares) {
    text += (i == 0                   ? ""
             : i + 1 == shares.size() ? " and "
                                      : ", ") +
            key + " (" + fixed(100.0 * share, 0) + " %)";
    ++i;
  }
  return text;
}

}  // namespace gibbsteel::internal
