#pragma once
/// The conditions of the long run: the same ones whenever they are asked for.

#include <string>
#include <vector>

#include "gibbsteel/steel.hpp"
#include "robustness/random_steels.hpp"

namespace gibbsteel::long_run {

/// Where a condition was drawn from.
enum class Draw { soaks, all_temperatures, many_traces };
inline constexpr std::size_t kDraws = 3;
const char* to_string(Draw) noexcept;

/// Compositions of the same elements at one temperature: convexity relates them.
struct Group {
  Draw draw = Draw::soaks;
  std::vector<testing::RandomSteel> steels;
};

inline constexpr std::size_t kGroupSize = 10;

/// Four steels drawn by themselves, three near them (each element within 10 percent of
/// its amount), three mixtures of two of them. Of ten groups six are soaks (700 to
/// 1250 C), two at any temperature that is accepted (27 to 2226 C), and of two at
/// either every second amount is a trace.
Group group(const ParameterSet& set, std::size_t number);

/// Steels along a line: one of temperature, or of one element.
struct Line {
  Steel steel{{{"C", 1.0}}};
  std::string element;         ///< empty: temperatures
  std::vector<double> values;  ///< [C] or [wt%]
  double celsius = 0.0;        ///< of a line of compositions
};

inline constexpr std::size_t kLinePoints = 100;

/// Every second line is one of temperatures: 5 to 500 K long within the temperatures of
/// a soak, each fifth of them over all that are accepted. The others take an element
/// from a billionth of its range to the end of it, as far as the steel has iron.
Line line(const ParameterSet& set, std::size_t number);

/// Weight percents of all but Fe.
NamedValues weight_percent(const testing::RandomSteel& steel);
std::string text(const testing::RandomSteel& steel);

}  // namespace gibbsteel::long_run
