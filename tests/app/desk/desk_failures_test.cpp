/// Random edits, undo and redo while the database gives up at the nth statement.
#include "app/book/book_fixture.h"
#include "app/desk/random_edits.h"
#include "desk/desk.h"

namespace tenthday {
namespace {

enum class Move { Edit, Undo, Redo };

/// A plain model of what a desk must hold: contents, each a whole snapshot.
struct Model {
    std::vector<Snapshot> contents;
    std::size_t place = 0;

    const Snapshot& now() const { return contents[place]; }
    bool canUndo() const { return place > 0; }
    bool canRedo() const { return place + 1 < contents.size(); }
    void edited(const Snapshot& snapshot) {
        contents.resize(++place);
        contents.push_back(snapshot);
    }
};

class DeskFailures : public test::BookTest, public ::testing::WithParamInterface<std::uint32_t> {
protected:
    void SetUp() override {
        path_ = makeSmallBook();
        desk_ = Desk::open(path_, test::fixedOptions()).value();
        model_.contents.push_back(desk_->snapshot());
        QObject::connect(desk_.get(), &Desk::shown, desk_.get(), [this] { ++signals_; });
    }
    void TearDown() override { desk_.reset(); }

    /// Makes the nth statement fail; none when n is 0 or beyond the last.
    void sabotage(int failing) {
        statement_ = 0;
        desk_->file().connection().setSaboteur([this, failing](const QString& sql) {
            const bool fail = ++statement_ == failing;
            commitFailed_ = commitFailed_ || (fail && sql == QStringLiteral("COMMIT"));
            return fail;
        });
    }
    /// One step; whether it had something to do and did it, in the model too.
    void step() {
        const auto move = static_cast<Move>(edits_.below(3));
        const auto edit = edits_.next(desk_->snapshot());
        sabotage(static_cast<int>(edits_.below(12)));
        signals_ = 0;
        const auto done = move == Move::Edit   ? desk_->apply(edit)
                          : move == Move::Undo ? desk_->undo()
                                               : desk_->redo();
        desk_->file().connection().setSaboteur({});
        const bool idle = move == Move::Edit   ? edit.isEmpty()
                          : move == Move::Undo ? !model_.canUndo()
                                               : !model_.canRedo();
        const bool changed = done && !idle;
        if (changed && move == Move::Edit) model_.edited(desk_->snapshot());
        if (changed && move == Move::Undo) --model_.place;
        if (changed && move == Move::Redo) ++model_.place;
        saved_ += changed ? 1 : 0;
        failed_ += done ? 0 : 1;
        EXPECT_EQ(signals_, changed ? 1 : 0);
    }
    void expectAgreement() {
        ASSERT_TRUE(desk_->snapshot().sameContent(model_.now())) << "memory";
        ASSERT_TRUE(reread(path_).sameContent(model_.now())) << "file";
        ASSERT_EQ(desk_->canUndo(), model_.canUndo());
        ASSERT_EQ(desk_->canRedo(), model_.canRedo());
    }
    /// Versions of rows that stay never fall.
    void expectRisen(const Snapshot& before) {
        forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
            for (const auto& row : before.all<Row>()) {
                const auto now = desk_->snapshot().find(row->id);
                EXPECT_TRUE(!now || now->version >= row->version);
            }
        });
    }

    QString path_;
    std::unique_ptr<Desk> desk_;
    test::RandomEdits edits_{GetParam()};
    Model model_;
    int statement_ = 0;
    int signals_ = 0;
    int saved_ = 0;
    int failed_ = 0;
    bool commitFailed_ = false;
};

TEST_P(DeskFailures, LeaveMemoryUndoAndFileInAgreement) {
    for (int i = 0; i < 250; ++i) {
        const auto before = desk_->snapshot();
        step();
        expectAgreement();
        expectRisen(before);
        if (HasFailure()) FAIL() << "in step " << i;
    }
    EXPECT_GT(failed_, 30);
    EXPECT_GT(saved_, 60);
    EXPECT_TRUE(commitFailed_);
}

TEST_P(DeskFailures, AllTheWayBackAndForth) {
    for (int i = 0; i < 60; ++i) step();
    while (desk_->canUndo()) ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(reread(path_).sameContent(test::smallBook()));
    while (desk_->canRedo()) ASSERT_TRUE(desk_->redo());
    EXPECT_TRUE(reread(path_).sameContent(model_.contents.back()));
}

INSTANTIATE_TEST_SUITE_P(Seeds, DeskFailures, ::testing::Values(1U, 20270610U, 77U));

}  // namespace
}  // namespace tenthday
