#pragma once
/// Plain-text tables of fixed column width.

#include <string>
#include <vector>

namespace gibbsteel::internal {

/// First column left-aligned, the others right-aligned, two spaces between columns.
std::string text_table(const std::vector<std::vector<std::string>>& rows);

/// `text` in lines of at most `width`, each but the first indented by `indent` spaces.
std::string wrapped(const std::string& text, std::size_t width, std::size_t indent);

/// The caution under every printed result: what equilibrium is not, and who comes
/// first.
extern const char* const kCaution;
/// The same for a matrix that comes from measured carbide.
extern const char* const kMeasuredCaution;
/// The same for a short-soak limit.
extern const char* const kShortSoakCaution;
/// The same for a timed soak.
extern const char* const kTimedSoakCaution;

}  // namespace gibbsteel::internal
