#pragma once
/// A small ordered list of (name, number), for compositions and site fractions.

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gibbsteel {

/// Keeps the order of insertion; names are unique. Look-up is linear (lists are short).
class NamedValues {
 public:
  using Entry = std::pair<std::string, double>;

  NamedValues() = default;
  NamedValues(std::initializer_list<Entry> entries);

  /// Number for `name`; 0.0 if it is not listed (an element that is absent).
  double operator[](std::string_view name) const noexcept;
  bool contains(std::string_view name) const noexcept;
  /// Replaces the number of `name`, or appends it.
  void set(std::string_view name, double value);
  /// Appends a name. It must not be listed yet: nothing looks.
  void append(std::string_view name, double value) {
    entries_.emplace_back(name, value);
  }
  /// Memory for so many names.
  void reserve(std::size_t count) { entries_.reserve(count); }
  double sum() const noexcept;

  std::size_t size() const noexcept { return entries_.size(); }
  bool empty() const noexcept { return entries_.empty(); }
  auto begin() const noexcept { return entries_.begin(); }
  auto end() const noexcept { return entries_.end(); }
  bool operator==(const NamedValues&) const = default;

 private:
  std::vector<Entry> entries_;
};

}  // namespace gibbsteel
