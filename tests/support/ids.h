/// @file ids.h  Readable fixed ids for tests.
#pragma once
#include "base/id.h"

namespace tenthday::test {

/// The n-th id of a kind, in UUIDv7 form; n = 0 is a valid id too.
template <class Row>
constexpr Id<Row> id(std::uint64_t n) {
    return {Uuid{0x0190000000007000ULL, 0x8000000000000000ULL | n}};
}

}  // namespace tenthday::test
