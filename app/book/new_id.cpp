#include "book/new_id.h"

#include <QDateTime>
#include <QRandomGenerator>

namespace tenthday {

IdMaker::IdMaker()
    : IdMaker([] { return static_cast<std::uint64_t>(QDateTime::currentMSecsSinceEpoch()); },
              [] { return QRandomGenerator::system()->generate64(); }) {}

IdMaker::IdMaker(Milliseconds clock, Randomness random)
    : clock_(std::move(clock)), random_(std::move(random)) {}

Uuid IdMaker::next() {
    const std::scoped_lock lock(mutex_);
    const auto now = clock_() & 0xFFFF'FFFF'FFFFULL;
    if (now > millis_) {
        millis_ = now;
        counter_ = static_cast<std::uint32_t>(random_() & 0x7FF);  // room to count upwards
    } else if (++counter_ > 0xFFF) {
        ++millis_;
        counter_ = 0;
    }
    constexpr std::uint64_t kVersion = 0x7000;
    constexpr std::uint64_t kVariant = 0x8000'0000'0000'0000ULL;
    return {millis_ << 16 | kVersion | counter_, kVariant | (random_() >> 2)};
}

IdMaker& idMaker() {
    static IdMaker maker;
    return maker;
}

}  // namespace tenthday
