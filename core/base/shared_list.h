/// @file shared_list.h  A list of immutable things that lists share.
#pragma once
#include <cstddef>
#include <iterator>
#include <memory>
#include <utility>
#include <vector>

namespace tenthday {

/// Read like a vector of the things themselves. A copy costs a pointer each; equal pointers mean
/// that a thing is the very same. No pointer is null.
template <class Thing>
class SharedList {
    using Pointers = std::vector<std::shared_ptr<const Thing>>;

public:
    class Iterator {
    public:
        using iterator_category = std::forward_iterator_tag;
        using value_type = Thing;
        using difference_type = std::ptrdiff_t;
        using pointer = const Thing*;
        using reference = const Thing&;

        Iterator() = default;
        explicit Iterator(typename Pointers::const_iterator at) : at_(at) {}
        reference operator*() const { return **at_; }
        pointer operator->() const { return at_->get(); }
        Iterator& operator++() { return ++at_, *this; }
        Iterator operator++(int) { return Iterator(at_++); }
        difference_type operator-(const Iterator& other) const { return at_ - other.at_; }
        friend bool operator==(const Iterator&, const Iterator&) = default;

    private:
        typename Pointers::const_iterator at_;
    };

    [[nodiscard]] Iterator begin() const { return Iterator(things_.begin()); }
    [[nodiscard]] Iterator end() const { return Iterator(things_.end()); }
    [[nodiscard]] std::size_t size() const { return things_.size(); }
    [[nodiscard]] bool empty() const { return things_.empty(); }
    [[nodiscard]] const Thing& operator[](std::size_t place) const { return *things_[place]; }
    [[nodiscard]] const std::shared_ptr<const Thing>& pointer(std::size_t place) const {
        return things_[place];
    }

    void reserve(std::size_t size) { things_.reserve(size); }
    void push_back(Thing thing) {
        things_.push_back(std::make_shared<const Thing>(std::move(thing)));
    }
    void push_back(std::shared_ptr<const Thing> thing) { things_.push_back(std::move(thing)); }
    void replace(std::size_t place, Thing thing) {
        things_[place] = std::make_shared<const Thing>(std::move(thing));
    }

private:
    Pointers things_;
};

}  // namespace tenthday
