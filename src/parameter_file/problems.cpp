#include "problems.hpp"

#include <utility>

#include "../internal/error_codes.hpp"

namespace gibbsteel::parameter_file {

Problems::Problems(std::string file_name, std::size_t limit)
    : file_name_(std::move(file_name)), limit_(limit) {}

void Problems::add(std::string_view code, const std::string& pointer,
                   const std::string& what, const std::string& remedy) {
  ++count_;
  if (count_ > limit_) return;
  const std::string place = pointer.empty() ? file_name_ : file_name_ + ": " + pointer;
  listed_.push_back({std::string(code), place, what, remedy});
}

void Problems::throw_if_any() const {
  if (count_ == 0) return;
  std::vector<Problem> all = listed_;
  if (full()) {
    all.push_back({std::string(codes::kManyMore), file_name_, "has more problems",
                   "mend the " + std::to_string(limit_) + " listed here first"});
  }
  throw DataError(std::move(all));
}

}  // namespace gibbsteel::parameter_file
