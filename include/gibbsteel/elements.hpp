#pragma once
/// Symbols, English names and molar masses of the chemical elements, so that a mill
/// certificate can be read even where a parameter file does not model an element.

#include <optional>
#include <string_view>

namespace gibbsteel {

struct ElementFacts {
  std::string_view symbol;  ///< "Cr"
  std::string_view name;    ///< "chromium"
  /// [g/mol]; IUPAC 2021 abridged standard atomic weights (from memory); 0 where the
  /// element has no standard atomic weight.
  double molar_mass;
};

/// Facts of the element with this symbol (case matters: "Co" is cobalt, "CO" is
/// nothing).
std::optional<ElementFacts> find_element(std::string_view symbol) noexcept;

/// The symbol the writer of `text` may have meant ("cr", "CR", " Cr" -> "Cr"); empty if
/// none.
std::string_view suggest_element(std::string_view text) noexcept;

}  // namespace gibbsteel
