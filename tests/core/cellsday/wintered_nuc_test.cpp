/// A nuc in which a queen of the season before still stays takes no cell: cells day, evening page
/// and import all say so, and where to note what became of her.
#include "core/cellsday/cells_day_fixture.h"
#include "core/exchange/paper_book.h"
#include "evening/evening_verbs.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Queen 26-003 was left in nuc M1 in September 2026.
class WinteredNuc : public CellsDayTest {
protected:
    WinteredNuc() {
        Batch old;
        old.id = id<Batch>(900);
        old.label = "old";
        old.day = day("2026-06-10");
        old.method = (*outlook_->snapshot.all<Batch>().begin())->method;
        Queen queen;
        queen.id = id<Queen>(901);
        queen.label = "26-003";
        CaughtQueen raised;
        raised.id = id<CaughtQueen>(902);
        raised.queen = queen.id;
        raised.batch = old.id;
        raised.side = maker_.sideId("M1/-");
        raised.day = day("2026-09-10");
        auto book = with(outlook_->snapshot, old, queen, raised);
        // Of a season that is not read.
        book.setAll(book.all<Batch>().with(book.find(old.id), nullptr));
        read(book);
        stay(QueenPlace::Nuc, "2026-09-10");
    }
    void stay(QueenPlace place, const char* from) {
        QueenStay row;
        row.id = id<QueenStay>(++next_);
        row.queen = id<Queen>(901);
        row.place = place;
        row.from = day(from);
        read(with(outlook_->snapshot, row));
    }
    /// All eight cells have a nuc, one of them M1.
    void draftIntoIt() {
        open();
        propose();
        takeOut(draft_, draft_.batches[0].nucs.front());
        give(draft_, 0, maker_.sideId("M1/-"));
    }
    NucFit fit() const {
        for (const auto& nuc : nucs_)
            if (nuc.side->box->label == "M1") return nuc.fit;
        throw std::invalid_argument("no M1");
    }
};

TEST_F(WinteredNuc, TheCellsDayNamesHerAndSaysWhatToDo) {
    draftIntoIt();
    EXPECT_EQ(fit(), NucFit::Held);
    EXPECT_EQ(refusal(CellsKept::Done),
              "9: queen 26-003 stays in nuc M1/-: note first where she is now");
    stay(QueenPlace::Lost, "2027-06-20");
    draftIntoIt();
    EXPECT_NE(fit(), NucFit::Held);
    keep(CellsKept::Done);
    EXPECT_EQ(draft_.batches.at(0).doneNucs.size(), 8U);
}

TEST_F(WinteredNuc, ForADayToComeItCanBePlanned) {
    auto later = outlook_->snapshot;
    later.setToday(day("2027-06-18"));
    read(later);
    draftIntoIt();
    EXPECT_NE(fit(), NucFit::Held) << "she may be caught by then";
}

TEST_F(WinteredNuc, TheEveningPageSaysTheSame) {
    Placement plan;
    plan.id = id<Placement>(++next_);
    plan.batch = maker_.batchId("9");
    plan.side = maker_.sideId("M1/-");
    plan.day = day("2027-06-21");
    read(with(outlook_->snapshot, plan));
    const auto refused = [&]() -> std::optional<Refusal> {
        EveningInput input;
        input.day = day("2027-06-21");
        for (const auto& row : eveningOf(*outlook_, input.day).rows)
            if (row.entry == EveningEntry::Placed && row.side && row.side->box->label == "M1")
                return whyImpossible(*outlook_, row, input);
        throw std::invalid_argument("no row for M1");
    };
    ASSERT_TRUE(refused());
    EXPECT_EQ(refused()->why, Impossible::QueenStays);
    EXPECT_EQ(refused()->queen, "26-003");
    EXPECT_EQ(refused()->day, day("2026-09-10"));
    stay(QueenPlace::Bank, "2027-06-20");
    EXPECT_FALSE(refused());
}

TEST(WinteredNucImport, ALineThatPutsACellToHerIsRefused) {
    PaperBook book;
    const auto take = [&](std::string_view kind, std::string_view text) {
        ASSERT_EQ(book.import(kind, text), "") << kind;
    };
    take("yards", "label\nMill\n");
    take("boxes", "label,yard,yard_from,layout,layout_from\nM1,Mill,2026-04-01,7,2026-04-01\n");
    take("batches", "label,day\n601,2026-06-10\n701,2027-06-11\n");
    take("placements", "batch,box,side,target,day,done\n601,M1,-,nuc,2026-06-20,yes\n");
    const auto before = book.text("placements");
    take("queens", "label\n26-003\n");
    take("caught", "queen,batch,box,side,day\n26-003,601,M1,-,2026-09-10\n");
    take("queenstays", "queen,place,from\n26-003,nuc,2026-09-10\n");
    EXPECT_EQ(book.import("placements", before), "") << "what stands in the book";
    const std::string cell = "batch,box,side,target,day,done\n701,M1,-,nuc,2027-06-21,";
    EXPECT_EQ(book.import("placements", cell + "yes\n"),
              "line 2, column side: queen '26-003' stays in it since 2026-09-10; import first "
              "where she is now, as queenstays");
    EXPECT_EQ(book.import("placements", cell + "no\n"), "") << "a plan";
    take("queenstays", "queen,place,from\n26-003,lost,2027-05-02\n");
    EXPECT_EQ(book.import("placements", cell + "yes\n"), "");
}

}  // namespace
}  // namespace tenthday::test
