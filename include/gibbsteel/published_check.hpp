#pragma once
/// What a calibration does to the published measurements that ship with the library.

#include <cstddef>
#include <string>

namespace gibbsteel {

/// Counts of published_measurements() that both the file and the file with the layer
/// have a number for. Met: missed by one published uncertainty or less.
struct PublishedCheck {
  std::size_t count = 0;
  std::size_t met_before = 0, met_after = 0;
  /// Of them, those that this calibration was fitted to: no test of it.
  std::size_t fitted_to = 0;
  /// Of the others.
  std::size_t others_met_before = 0, others_met_after = 0;

  std::size_t others() const noexcept { return count - fitted_to; }
  /// Fewer are met than before: of the others, or of all where there are no others.
  bool worse() const noexcept {
    return others() > 0 ? others_met_after < others_met_before : met_after < met_before;
  }
  /// "published measurements met: 82 before, 69 after, of 137", and of the others where
  /// some were fitted to; empty when none was compared.
  std::string brief() const;
  bool operator==(const PublishedCheck&) const = default;
};

}  // namespace gibbsteel
