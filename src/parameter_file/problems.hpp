#pragma once
/// Collects everything wrong with one file, so that it can be reported in one go.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/errors.hpp"

namespace gibbsteel::parameter_file {

class Problems {
 public:
  Problems(std::string file_name, std::size_t limit);

  /// `pointer` is a JSON pointer, or "line 3, column 7", or empty for the whole file.
  void add(std::string_view code, const std::string& pointer, const std::string& what,
           const std::string& remedy);

  /// Problems seen so far, listed or not. Compare two counts to know whether what was
  /// read in between is sound.
  std::size_t count() const noexcept { return count_; }
  /// No further problem will be listed: loops over bad content may stop.
  bool full() const noexcept { return count_ > limit_; }
  /// @throws DataError if there was any
  void throw_if_any() const;

 private:
  std::string file_name_;
  std::size_t limit_;
  std::size_t count_ = 0;
  std::vector<Problem> listed_;
};

}  // namespace gibbsteel::parameter_file
