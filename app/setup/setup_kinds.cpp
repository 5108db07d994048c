#include "setup/setup_kind.h"

namespace tenthday {

std::vector<std::unique_ptr<SetupKind>> allSetupKinds() {
    std::vector<std::unique_ptr<SetupKind>> kinds;
    kinds.push_back(yardKind());
    kinds.push_back(boxKind());
    kinds.push_back(builderKind());
    kinds.push_back(diaryKind());
    kinds.push_back(queenKind());
    kinds.push_back(caughtKind());
    kinds.push_back(methodKind());
    kinds.push_back(dronesKind());
    kinds.push_back(yardNoteKind());
    kinds.push_back(dayOffKind());
    kinds.push_back(seasonKind());
    return kinds;
}

}  // namespace tenthday
