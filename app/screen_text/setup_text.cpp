#include "screen_text/setup_text.h"

#include <QLocale>

#include "screen_text/chart_text.h"
#include "screen_text/words.h"

namespace tenthday::setup_text {
namespace {

QString use(const Use& use) {
    const auto n = static_cast<int>(use.count);
    const auto is = [&](std::string_view table) { return use.table == table; };
    if (is("box_stay")) return Words::tr("%Ln stay(s) of boxes", nullptr, n);
    if (is("builder")) return Words::tr("%Ln builder(s)", nullptr, n);
    if (is("stocking")) return Words::tr("%Ln stocking(s)", nullptr, n);
    if (is("placement")) return Words::tr("%Ln cell(s)", nullptr, n);
    if (is("outcome")) return Words::tr("%Ln thing(s) seen or counted", nullptr, n);
    if (is("make_up")) return Words::tr("made up %Ln time(s)", nullptr, n);
    if (is("builder_note")) return Words::tr("%Ln look(s) or brood put in", nullptr, n);
    if (is("batch_load")) return Words::tr("%Ln bar(s) of batches", nullptr, n);
    if (is("batch_bar")) return Words::tr("%Ln bar(s) grafted", nullptr, n);
    if (is("batch_yard")) return Words::tr("%Ln batch(es) with cells for it", nullptr, n);
    if (is("batch")) return batches(n);
    if (is("queen")) return Words::tr("%Ln daughter(s)", nullptr, n);
    if (is("drone_sighting")) return Words::tr("drones seen %Ln time(s)", nullptr, n);
    if (is("yard_note")) return Words::tr("%Ln flow(s), dearth(s) or robbing(s)", nullptr, n);
    if (is("mating_stay")) return Words::tr("%Ln stay(s) for mating", nullptr, n);
    if (is("own_task")) return Words::tr("%Ln own task(s)", nullptr, n);
    return Words::tr("%Ln other record(s)", nullptr, n);
}

}  // namespace

QString kindName(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("Yards");
        case Kind::Boxes:
            return Words::tr("Nuc boxes");
        case Kind::Builders:
            return Words::tr("Builders");
        case Kind::Diary:
            return Words::tr("Diary of builders");
        case Kind::Queens:
            return Words::tr("Breeder queens");
        case Kind::Caught:
            return Words::tr("Queens caught");
        case Kind::Methods:
            return Words::tr("Methods");
        case Kind::DaysOff:
            return Words::tr("Days off");
        case Kind::Seasons:
            return Words::tr("Seasons");
        case Kind::Drones:
            return Words::tr("Drones");
        case Kind::YardNotes:
            return Words::tr("Flow and dearth");
    }
    return {};
}

QString kindAndCount(Kind kind, int count) {
    return Words::tr("%1 (%2)").arg(kindName(kind), chart_text::number(count));
}

QString thing(Kind kind, const QString& label) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("yard %1").arg(label);
        case Kind::Boxes:
            return Words::tr("box %1").arg(label);
        case Kind::Builders:
            return Words::tr("builder %1").arg(label);
        case Kind::Queens:
        case Kind::Caught:
            return Words::tr("queen %1").arg(label);
        case Kind::Methods:
            return Words::tr("method %1").arg(label);
        case Kind::DaysOff:
            return Words::tr("days off %1").arg(label);
        case Kind::Seasons:
            return Words::tr("season %1").arg(label);
        case Kind::Drones:
            return Words::tr("drones of %1").arg(label);
        case Kind::Diary:
        case Kind::YardNotes:
            return label;
    }
    return {};
}

QString atStart(const QString& text) { return QLocale().toUpper(text.left(1)) + text.mid(1); }

QString things(Kind kind, int count) {
    return kind == Kind::Boxes ? Words::tr("%Ln box(es)", nullptr, count)
                               : kindAndCount(kind, count);
}

QString newThing(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("New yard");
        case Kind::Boxes:
            return Words::tr("New boxes");
        case Kind::Builders:
            return Words::tr("New builder");
        case Kind::Diary:
            return Words::tr("New entry of the diary");
        case Kind::Queens:
        case Kind::Caught:
            return Words::tr("New queen");
        case Kind::Methods:
            return Words::tr("New method");
        case Kind::DaysOff:
            return Words::tr("New days off");
        case Kind::Seasons:
            return Words::tr("New season");
        case Kind::Drones:
            return Words::tr("New sighting of drones");
        case Kind::YardNotes:
            return Words::tr("New flow or dearth");
    }
    return {};
}

QString begin(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("No yard yet: add the first place where nuc boxes or builders stand.");
        case Kind::Boxes:
            return Words::tr("No nuc box yet: add a dozen at once, counted up from a first label.");
        case Kind::Builders:
            return Words::tr("No builder yet: add the box or colony that is to raise the cells.");
        case Kind::Diary:
            return Words::tr(
                "Nothing yet: add when a builder is made up, looked through for wild cells, fed, "
                "or given brood, bees or pollen. The looks that are due follow.");
        case Kind::Queens:
            return Words::tr("No queen yet: add the breeder queens you graft from.");
        case Kind::Caught:
            return Words::tr(
                "No queen caught yet: enter catches on the evening page (Ctrl+6), where each queen "
                "gets a number by your pattern. They come into the bank.");
        case Kind::Methods:
            return Words::tr("No method yet: add the steps by which you raise cells.");
        case Kind::DaysOff:
            return Words::tr("No days off yet: add days on which nobody works with the bees.");
        case Kind::Seasons:
            return Words::tr("No season yet: add the days between which you raise queens.");
        case Kind::Drones:
            return Words::tr(
                "No drones yet: add drone comb you put in, drone brood or drones you saw. The day "
                "from which drones are mature follows, and with it the first graft.");
        case Kind::YardNotes:
            return Words::tr(
                "Nothing yet: add the days of a nectar flow, of a dearth or of robbing in a yard.");
    }
    return {};
}
QString nothingFound() { return Words::tr("Nothing here has these letters."); }

QString head() { return Words::tr("Set-up"); }
QString find(Kind kind) { return Words::tr("Find in: %1").arg(kindName(kind)); }
QString shownOf(int shown, int all) {
    return shown == all ? QString()
                        : Words::tr("%1 of %2 shown")
                              .arg(chart_text::number(shown), chart_text::number(all));
}
QString add() { return Words::tr("&Add"); }
QString addTip() { return Words::tr("Add one (Insert)"); }
QString remove() { return Words::tr("&Delete"); }
QString removeTip() { return Words::tr("Delete what is chosen, or retire it (Del)"); }
QString save() { return Words::tr("&Save"); }
QString discard() { return Words::tr("Dis&card"); }
QString numbers() { return Words::tr("Trade nu&mbers"); }
QString calendar() { return Words::tr("Choose from a calendar (Alt+Down)"); }
QString notSavedYet() { return Words::tr("Not saved yet. Enter saves, Esc discards."); }
QString saved() { return Words::tr("Saved."); }
QString deleted(const QString& thing) {
    return Words::tr("Deleted: %1. Undo brings it back.").arg(thing);
}
QString retired(const QString& thing) {
    return Words::tr("Retired: %1. Undo takes that back.").arg(thing);
}
QString readOnly() { return Words::tr("This book is open for reading only."); }
QString chooseOne(Kind kind) {
    if (kind == Kind::Caught)
        return Words::tr("Choose a queen to see her, several to move them at once.");
    return kind == Kind::Boxes
               ? Words::tr("Choose a box to see it, several to move or divide them at once.")
               : Words::tr("Choose one in the list to see and change it.");
}

QString leaveHead() { return Words::tr("Not saved yet"); }
QString leaveText(const QString& thing) {
    return Words::tr("What you changed is not saved yet: %1.").arg(thing);
}
QString keepEditing() { return Words::tr("&Keep editing"); }

QString inUseHead() { return Words::tr("In use"); }
QString inUse(const QString& thing, const std::vector<Use>& uses) {
    QStringList parts;
    for (const auto& one : uses) parts += use(one);
    return Words::tr("%1 is in use: %2.").arg(atStart(thing), parts.join(QStringLiteral(", ")));
}
QString retireFrom() { return Words::tr("Retire it from"); }
QString retire() { return Words::tr("&Retire"); }
QString retireHint(Kind kind) {
    switch (kind) {
        case Kind::Boxes:
            return Words::tr(
                "A retired box stands nowhere from that day on; what happened in it "
                "stays in the book.");
        case Kind::Builders:
            return Words::tr(
                "A retired builder takes no cells from that day on; what happened in "
                "it stays in the book.");
        default:
            return Words::tr(
                "From that day on she is no breeder queen; her daughters and bars "
                "stay in the book.");
    }
}
QString cannotRetire(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr(
                "A yard cannot be deleted while anything leads to it. Move its boxes "
                "and builders to another yard first; a yard with a history stays.");
        default:
            return Words::tr(
                "A method that batches used stays, so that their dates stay as they "
                "were.");
    }
}

}  // namespace tenthday::setup_text
