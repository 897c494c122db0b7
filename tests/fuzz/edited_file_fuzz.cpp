/// The bytes are edits of a small good parameter file: what stands at some place is
/// replaced by another piece of the file or by a hostile one. Files that are still
/// accepted go through the minimizer, as a stranger's file would.

#include <array>
#include <cctype>

#include "file_checks.hpp"
#include "input_bytes.hpp"
#include "solve_checks.hpp"

using namespace gibbsteel;

namespace {

using Tokens = std::vector<std::string>;

/// Texts in quotes, numbers and words, and every other byte that is no blank.
Tokens tokens_of(const std::string& text) {
  Tokens tokens;
  for (std::size_t i = 0; i < text.size();) {
    std::size_t end = i + 1;
    if (text[i] == '"') {
      end = text.find('"', i + 1) + 1;
    } else if (std::isalnum(static_cast<unsigned char>(text[i])) || text[i] == '-') {
      end = text.find_first_of(" \n,]}", i);
    }
    if (!std::isspace(static_cast<unsigned char>(text[i])))
      tokens.push_back(text.substr(i, end - i));
    i = end;
  }
  return tokens;
}

const Tokens& good_file(std::size_t which) {
  static const std::array files{tokens_of(fuzz::test_file("good/small.json")),
                                tokens_of(fuzz::test_file("good/graphite_only.json")),
                                tokens_of(fuzz::test_file("good/uncertain.json"))};
  return files[which % files.size()];
}

std::string hostile_piece(fuzz::InputBytes& bytes) {
  static constexpr std::array kPieces{
      "0",      "-1",          "1e-30",       "1e-308",  "4e-324",   "1e308",
      "1e999",  "1e11",        "-1e9",        "64",      "0.5",      "1e6",
      "[]",     "{}",          "null",        "true",    "\"\"",     "\"vacancy\"",
      "\"C\"",  "\"Fe\"",      "\"Cr\"",      "\"T^9\"", "\"T^-9\"", "\"T ln T\"",
      "\"MC\"", "\"\\u0000\"", "\"\\ud800\"", "7"};
  return kPieces[bytes.index(kPieces.size())];
}

/// Replaces, removes, doubles or exchanges tokens.
void edit(Tokens& tokens, fuzz::InputBytes& bytes) {
  const unsigned kind = bytes.byte() % 8;
  const std::size_t at = bytes.index(tokens.size());
  const std::size_t other = kind < 3 ? bytes.index(tokens.size()) : at;
  if (kind == 0) tokens[at] = tokens[other];
  if (kind == 1) std::swap(tokens[at], tokens[other]);
  if (kind == 2) {
    const Tokens part(
        tokens.begin() + static_cast<std::ptrdiff_t>(std::min(at, other)),
        tokens.begin() + static_cast<std::ptrdiff_t>(std::max(at, other)));
    tokens.insert(tokens.begin() + static_cast<std::ptrdiff_t>(std::max(at, other)),
                  part.begin(), part.end());
  }
  if (kind == 3) tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(at));
  if (kind == 4) tokens[at] = std::to_string(bytes.any_double());
  if (kind > 4) tokens[at] = hostile_piece(bytes);
}

/// Every element of the file in the amounts that the bytes give.
void solve(const SharedParameters& set, fuzz::InputBytes& bytes) {
  std::vector<std::string> symbols, names;
  std::vector<double> x;
  double sum = 0.0;
  for (const Element& element : set->elements) {
    symbols.push_back(element.symbol);
    sum += x.emplace_back(1e-3 + bytes.share());
  }
  for (double& value : x) value /= sum;
  for (const Phase& phase : set->phases) names.push_back(phase.name);
  const PhaseSystem system(set, symbols, names);
  const double low = set->lowest_temperature, high = set->highest_temperature;
  const auto t = Temperature::kelvin(low + bytes.share() * (high - low));
  fuzz::check_result(system, x, minimize(system, t, x));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::InputBytes bytes(data, size);
  Tokens tokens = good_file(bytes.byte());
  for (std::size_t i = bytes.index(8) + 1; i > 0; --i) edit(tokens, bytes);
  std::string text;
  for (const std::string& token : tokens) text += token + ' ';
  SharedParameters set;
  if (!fuzz::file_accepted([&] { set = parse_parameters(text, "edited.json"); }))
    return 0;
  fuzz::check_round_trip(*set);
  solve(set, bytes);
  return 0;
}
