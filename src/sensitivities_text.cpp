/// How Sensitivities and a StateSlope print; see sensitivities.hpp.

#include <algorithm>

#include "gibbsteel/sensitivities.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;
constexpr std::size_t kSlopesAcross = 4;  ///< in one table
constexpr int kDigits = 4;

struct Line {
  std::string label;
  double value;
};

/// The numbers to show of a State or a StateSlope: the same ones in the same order.
template <class Of>
std::vector<Line> lines_of(const Of& x) {
  std::vector<Line> lines;
  for (const Occurrence& o : x.occurrences)
    if (o.role != Role::matrix) lines.push_back({o.name + " [vol%]", o.volume_percent});
  lines.push_back({"all carbides [vol%]", x.carbide_volume_percent});
  for (const auto& [symbol, percent] : x.matrix.weight_percent)
    lines.push_back({symbol + " in the matrix [wt%]", percent});
  lines.push_back({"carbon activity", x.carbon_activity});
  return lines;
}

std::string number(double value) {
  return value == 0.0 ? "0" : internal::rounded_or(value, kDigits, "n/a");
}

/// "per K", "per wt% C", "per J/mol of /phases/M6C/..."
std::string heading(const Input& input) {
  if (input.kind == Input::Kind::temperature) return "per K";
  if (input.kind == Input::Kind::element) return "per wt% " + input.name;
  return "per " + (input.unit.empty() ? "1" : input.unit) + " of " + input.name;
}

std::string remark_text(const StateSlope& slope) {
  if (slope.remark.empty()) return "";
  return internal::wrapped("! " + heading(slope.input) + ": " + slope.remark, kWidth,
                           2);
}

using Slopes = std::vector<const StateSlope*>;

std::string table(const State& state, const Slopes& slopes) {
  std::vector<std::vector<std::string>> rows{{"", "value"}};
  for (const Line& line : lines_of(state))
    rows.push_back({line.label, number(line.value)});
  for (const StateSlope* slope : slopes) {
    rows[0].push_back(heading(slope->input));
    const auto lines = lines_of(*slope);
    for (std::size_t i = 0; i < lines.size(); ++i)
      rows[i + 1].push_back(number(lines[i].value));
  }
  return internal::text_table(rows);
}

/// Every slope but those to parameters, some to a table.
std::string tables(const Sensitivities& all) {
  Slopes shown;
  for (const StateSlope& slope : all.slopes)
    if (slope.input.kind != Input::Kind::parameter) shown.push_back(&slope);
  std::string text;
  for (std::size_t from = 0; from < shown.size(); from += kSlopesAcross) {
    const std::size_t to = std::min(from + kSlopesAcross, shown.size());
    text += "\n" + table(all.state, {shown.data() + from, shown.data() + to});
  }
  const std::size_t others = all.slopes.size() - shown.size();
  if (others > 0)
    text += std::to_string(others) +
            (others == 1 ? " parameter more" : " parameters more") +
            ": see to_frame()\n";
  return text;
}

}  // namespace

std::string slope_text(const StateSlope& slope) {
  std::vector<std::vector<std::string>> rows{{"", heading(slope.input)}};
  for (const Line& line : lines_of(slope))
    rows.push_back({line.label, number(line.value)});
  return internal::text_table(rows) + remark_text(slope);
}

std::string Sensitivities::full() const {
  std::string text = internal::heading(state) + ", " + internal::condition(state) +
                     ", and exact slopes; balance Fe\n" +
                     internal::analysis_text(state) +
                     internal::wrapped("parameters: " + state.parameters, kWidth, 2) +
                     internal::basis_text(state);
  if (slopes.empty())
    text += state.solve_report.brief() + "\n";
  else
    text += tables(*this) + internal::last_digits_text(!state.warnings.empty());
  text += "\n";
  for (const StateSlope& slope : slopes)
    if (slope.input.kind != Input::Kind::parameter) text += remark_text(slope);
  for (const Warning& warning : state.warnings)
    text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text + internal::wrapped(internal::caution_of(state), kWidth, 0);
}

}  // namespace gibbsteel
