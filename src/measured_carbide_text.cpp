/// How a ShortSoak prints; see measured_carbide.hpp.

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/measured_carbide.hpp"
#include "internal/number_format.hpp"
#include "internal/short_soak_tables.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

}  // namespace

const MatrixBand& ShortSoak::band(std::string_view element) const {
  std::string present;
  for (const MatrixBand& band : bands) {
    if (band.element == element) return band;
    present += (present.empty() ? "" : ", ") + band.element;
  }
  throw InputError(
      {{"gibbsteel.input.209", "matrix",
        "there is no '" + std::string(element) + "' in it", "present: " + present}});
}

std::string ShortSoak::brief() const {
  std::string text = state.brief();
  const auto carbon =
      std::find_if(bands.begin(), bands.end(),
                   [](const MatrixBand& band) { return band.element == "C"; });
  if (carbon == bands.end()) return text;
  if (state.solve_report.status == SolveStatus::short_soak_limit)
    return text + " (long-hold limit " + fixed(carbon->long_hold, 2) + ")";
  return text + " (" + fixed(carbon->low, 2) + " to " + fixed(carbon->high, 2) +
         "; long-hold limit " + fixed(carbon->long_hold, 2) + ")";
}

std::string ShortSoak::full() const {
  std::string text = state.full() + "\n" +
                     internal::text_table(internal::carbide_rows(*this)) + "\n" +
                     internal::text_table(internal::band_rows(*this));
  return text + internal::wrapped(internal::band_sentence(*this), kWidth, 0);
}

}  // namespace gibbsteel
