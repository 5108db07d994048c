<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US">
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%Ln job(s)</source>
        <translation>
            <numerusform>%Ln job</numerusform>
            <numerusform>%Ln jobs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln day(s) sooner</source>
        <translation>
            <numerusform>%1, %Ln day sooner</numerusform>
            <numerusform>%1, %Ln days sooner</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln day(s) later</source>
        <translation>
            <numerusform>%1, %Ln day later</numerusform>
            <numerusform>%1, %Ln days later</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s)</source>
        <translation>
            <numerusform>%Ln nuc</numerusform>
            <numerusform>%Ln nucs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s)</source>
        <translation>
            <numerusform>%Ln cell</numerusform>
            <numerusform>%Ln cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln wait(s) for the catch</source>
        <translation>
            <numerusform>%Ln waits for the catch</numerusform>
            <numerusform>%Ln wait for the catch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln need(s) open brood first</source>
        <translation>
            <numerusform>%Ln needs open brood first</numerusform>
            <numerusform>%Ln need open brood first</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stock %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Stock %Ln nuc on %1</numerusform>
            <numerusform>Stock %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln task(s)</source>
        <translation>
            <numerusform>%Ln task</numerusform>
            <numerusform>%Ln tasks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Still open: %Ln task(s) from before today</source>
        <translation>
            <numerusform>Still open: %Ln task from before today</numerusform>
            <numerusform>Still open: %Ln tasks from before today</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) were taken from the list.</source>
        <translation>
            <numerusform>%Ln row was taken from the list.</numerusform>
            <numerusform>%Ln rows were taken from the list.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) for nucs</source>
        <translation>
            <numerusform>%Ln ripe cell for nucs</numerusform>
            <numerusform>%Ln ripe cells for nucs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay(s) of boxes</source>
        <translation>
            <numerusform>%Ln stay of a box</numerusform>
            <numerusform>%Ln stays of boxes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln builder(s)</source>
        <translation>
            <numerusform>%Ln builder</numerusform>
            <numerusform>%Ln builders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stocking(s)</source>
        <translation>
            <numerusform>%Ln stocking</numerusform>
            <numerusform>%Ln stockings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) seen or counted</source>
        <translation>
            <numerusform>%Ln thing seen or counted</numerusform>
            <numerusform>%Ln things seen or counted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>made up %Ln time(s)</source>
        <translation>
            <numerusform>made up %Ln time</numerusform>
            <numerusform>made up %Ln times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln look(s) or brood put in</source>
        <translation>
            <numerusform>%Ln look or brood put in</numerusform>
            <numerusform>%Ln looks or brood put in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bar(s) of batches</source>
        <translation>
            <numerusform>%Ln bar of a batch</numerusform>
            <numerusform>%Ln bars of batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bar(s) grafted</source>
        <translation>
            <numerusform>%Ln bar grafted</numerusform>
            <numerusform>%Ln bars grafted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with cells for it</source>
        <translation>
            <numerusform>%Ln batch with cells for it</numerusform>
            <numerusform>%Ln batches with cells for it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln daughter(s)</source>
        <translation>
            <numerusform>%Ln daughter</numerusform>
            <numerusform>%Ln daughters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln own task(s)</source>
        <translation>
            <numerusform>%Ln own task</numerusform>
            <numerusform>%Ln own tasks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln other record(s)</source>
        <translation>
            <numerusform>%Ln other record</numerusform>
            <numerusform>%Ln other records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln box(es)</source>
        <translation>
            <numerusform>%Ln box</numerusform>
            <numerusform>%Ln boxes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es)</source>
        <translation>
            <numerusform>%Ln batch</numerusform>
            <numerusform>%Ln batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 (%Ln nuc day(s))</source>
        <translation>
            <numerusform>%1 (%Ln nuc day)</numerusform>
            <numerusform>%1 (%Ln nuc days)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, to find nucs by themselves in the fewest yards.</source>
        <translation>
            <numerusform>%Ln ripe cell expected, to find nucs by themselves in the fewest yards.</numerusform>
            <numerusform>%Ln ripe cells expected, to find nucs by themselves in the fewest yards.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, all given.</source>
        <translation>
            <numerusform>%Ln ripe cell expected, all given.</numerusform>
            <numerusform>%Ln ripe cells expected, all given.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, %1 given: %2 left to find nucs by themselves.</source>
        <translation>
            <numerusform>%Ln ripe cell expected, %1 given: %2 left to find nucs by themselves.</numerusform>
            <numerusform>%Ln ripe cells expected, %1 given: %2 left to find nucs by themselves.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, %1 given: %2 more than there are.</source>
        <translation>
            <numerusform>%Ln ripe cell expected, %1 given: %2 more than there are.</numerusform>
            <numerusform>%Ln ripe cells expected, %1 given: %2 more than there are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> day(s)</source>
        <translation>
            <numerusform> day</numerusform>
            <numerusform> days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>batch(es) more</source>
        <translation>
            <numerusform>batch more</numerusform>
            <numerusform>batches more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Saving this takes out %Ln recorded count(s). Undo brings all back.</source>
        <translation>
            <numerusform>Saving this takes out %Ln recorded count. Undo brings all back.</numerusform>
            <numerusform>Saving this takes out %Ln recorded counts. Undo brings all back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A season lasts %Ln day(s) at most.</source>
        <translation>
            <numerusform>A season lasts %Ln day at most.</numerusform>
            <numerusform>A season lasts %Ln days at most.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>drones seen %Ln time(s)</source>
        <translation>
            <numerusform>drones seen %Ln time</numerusform>
            <numerusform>drones seen %Ln times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln flow(s), dearth(s) or robbing(s)</source>
        <translation>
            <numerusform>%Ln flow, dearth or robbing</numerusform>
            <numerusform>%Ln flows, dearths or robbings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay(s) for mating</source>
        <translation>
            <numerusform>%Ln stay for mating</numerusform>
            <numerusform>%Ln stays for mating</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) would stand in no season any more.</source>
        <translation>
            <numerusform>%Ln batch would stand in no season any more.</numerusform>
            <numerusform>%Ln batches would stand in no season any more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Reckoned with %Ln past year(s) of the daily record, from %1 to %2.</source>
        <translation>
            <numerusform>Reckoned with %Ln past year of the daily record, from %1 to %2.</numerusform>
            <numerusform>Reckoned with %Ln past years of the daily record, from %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %Ln tick(s) agree best with the %1 °C in force; against it: %2.</source>
        <translation>
            <numerusform>Your %Ln tick agrees best with the %1 °C in force; against it: %2.</numerusform>
            <numerusform>Your %Ln ticks agree best with the %1 °C in force; against it: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %Ln tick(s) say %1 °C; against it: %2, against the %3 °C in force: %4.</source>
        <translation>
            <numerusform>Your %Ln tick says %1 °C; against it: %2, against the %3 °C in force: %4.</numerusform>
            <numerusform>Your %Ln ticks say %1 °C; against it: %2, against the %3 °C in force: %4.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s): %1.</source>
        <translation>
            <numerusform>%Ln day: %1.</numerusform>
            <numerusform>%Ln days: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln line(s) whose day can&apos;t be read</source>
        <translation>
            <numerusform>Leave out %Ln line whose day can&apos;t be read</numerusform>
            <numerusform>Leave out %Ln lines whose day can&apos;t be read</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln value(s) that can&apos;t be read</source>
        <translation>
            <numerusform>Leave out %Ln value that can&apos;t be read</numerusform>
            <numerusform>Leave out %Ln values that can&apos;t be read</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln value(s) that no weather has</source>
        <translation>
            <numerusform>Leave out %Ln value that no weather has</numerusform>
            <numerusform>Leave out %Ln values that no weather has</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln placeholder(s) such as -999</source>
        <translation>
            <numerusform>Leave out %Ln placeholder such as -999</numerusform>
            <numerusform>Leave out %Ln placeholders such as -999</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %Ln day(s) that stand there again take the last line</source>
        <translation>
            <numerusform>Of %Ln day that stands there again take the last line</numerusform>
            <numerusform>Of %Ln days that stand there again take the last line</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Go on with %Ln gap(s) in the record</source>
        <translation>
            <numerusform>Go on with %Ln gap in the record</numerusform>
            <numerusform>Go on with %Ln gaps in the record</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation>
            <numerusform>and %Ln more</numerusform>
            <numerusform>and %Ln more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %Ln day(s)</source>
        <translation>
            <numerusform>Import %Ln day</numerusform>
            <numerusform>Import %Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) came in or changed.</source>
        <translation>
            <numerusform>%Ln day came in or changed.</numerusform>
            <numerusform>%Ln days came in or changed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>counted from %Ln past year(s)</source>
        <translation>
            <numerusform>counted from %Ln past year</numerusform>
            <numerusform>counted from %Ln past years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>late: %Ln day(s) without flying</source>
        <translation>
            <numerusform>late: %Ln day without flying</numerusform>
            <numerusform>late: %Ln days without flying</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>drones are mature from %1; first flights are %Ln day(s) after the graft</source>
        <translation>
            <numerusform>drones are mature from %1; first flights are %Ln day after the graft</numerusform>
            <numerusform>drones are mature from %1; first flights are %Ln days after the graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>drones are thrown out about %1; queens fly up to %Ln day(s) after the graft</source>
        <translation>
            <numerusform>drones are thrown out about %1; queens fly up to %Ln day after the graft</numerusform>
            <numerusform>drones are thrown out about %1; queens fly up to %Ln days after the graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>hard frost about %1; two rounds of her own bees take %Ln day(s) from the graft</source>
        <translation>
            <numerusform>hard frost about %1; two rounds of her own bees take %Ln day from the graft</numerusform>
            <numerusform>hard frost about %1; two rounds of her own bees take %Ln days from the graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>hard frost about %1; one round of her own bees, the last chance, takes %Ln day(s) from the graft</source>
        <translation>
            <numerusform>hard frost about %1; one round of her own bees, the last chance, takes %Ln day from the graft</numerusform>
            <numerusform>hard frost about %1; one round of her own bees, the last chance, takes %Ln days from the graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No flying day on the %Ln day(s) before.</source>
        <translation>
            <numerusform>No flying day on the %Ln day before.</numerusform>
            <numerusform>No flying day on the %Ln days before.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln virgin(s) wait(s) for a flying day.</source>
        <translation>
            <numerusform>%Ln virgin waits for a flying day.</numerusform>
            <numerusform>%Ln virgins wait for a flying day.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>For %Ln of them the last useful day is %1.</source>
        <translation>
            <numerusform>For %Ln of them the last useful day is %1.</numerusform>
            <numerusform>For %Ln of them the last useful day is %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln day</numerusform>
            <numerusform>%Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln strong drone colony(ies) wanted</source>
        <translation>
            <numerusform>%Ln strong drone colony wanted</numerusform>
            <numerusform>%Ln strong drone colonies wanted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln late</source>
        <translation>
            <numerusform>%Ln late</numerusform>
            <numerusform>%Ln late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln more cell(s) of this batch have their place on other days.</source>
        <translation>
            <numerusform>%Ln more cell of this batch has its place on another day.</numerusform>
            <numerusform>%Ln more cells of this batch have their place on other days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) have no place yet</source>
        <translation>
            <numerusform>%Ln cell has no place yet</numerusform>
            <numerusform>%Ln cells have no place yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) too many</source>
        <translation>
            <numerusform>%Ln cell too many</numerusform>
            <numerusform>%Ln cells too many</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) more than are ripe have a place.</source>
        <translation>
            <numerusform>Batch %1: %Ln cell more than are ripe has a place.</numerusform>
            <numerusform>Batch %1: %Ln cells more than are ripe have a place.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) have no place yet. Count those thrown away as culled.</source>
        <translation>
            <numerusform>Batch %1: %Ln cell has no place yet. If it was thrown away, count it as culled.</numerusform>
            <numerusform>Batch %1: %Ln cells have no place yet. Count those thrown away as culled.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) of this day are recorded, so many were ripe.</source>
        <translation>
            <numerusform>Batch %1: %Ln cell of this day is recorded, so many were ripe.</numerusform>
            <numerusform>Batch %1: %Ln cells of this day are recorded, so many were ripe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>free for %Ln day(s) before</source>
        <translation>
            <numerusform>free for %Ln day before</numerusform>
            <numerusform>free for %Ln days before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fewer than %Ln free day(s) are called too soon (derived from S25: three queens share a batch every fourth day).</source>
        <translation>
            <numerusform>Fewer than %Ln free day is called too soon (derived from S25: three queens share a batch every fourth day).</numerusform>
            <numerusform>Fewer than %Ln free days are called too soon (derived from S25: three queens share a batch every fourth day).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s)</source>
        <translation>
            <numerusform>%Ln time</numerusform>
            <numerusform>%Ln times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>for mite work: %Ln day(s)</source>
        <translation>
            <numerusform>for mite work: %Ln day</numerusform>
            <numerusform>for mite work: %Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln brood frame(s)</source>
        <translation>
            <numerusform>%Ln brood frame</numerusform>
            <numerusform>%Ln brood frames</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Its %Ln graft(s) want(s) %1 workers at %2 a cell (S77).</source>
        <translation>
            <numerusform>Its %Ln graft wants %1 workers at %2 a cell (S77).</numerusform>
            <numerusform>Its %Ln grafts want %1 workers at %2 a cell (S77).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At each stage your own batches speak beside what is published. Ranges hold the rate with 80 %. From %Ln batch(es) on your own rate is reckoned with in orders and promises, unless the trade number is set by hand. Leave a batch out when something was odd about it.</source>
        <translation>
            <numerusform>At each stage your own batches speak beside what is published. Ranges hold the rate with 80 %. From %Ln batch on your own rate is reckoned with in orders and promises, unless the trade number is set by hand. Leave a batch out when something was odd about it.</numerusform>
            <numerusform>At each stage your own batches speak beside what is published. Ranges hold the rate with 80 %. From %Ln batches on your own rate is reckoned with in orders and promises, unless the trade number is set by hand. Leave a batch out when something was odd about it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) speak(s) for: %1</source>
        <translation>
            <numerusform>%Ln batch speaks for: %1</numerusform>
            <numerusform>%Ln batches speak for: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s) that is/are met now would no longer be.</source>
        <translation>
            <numerusform>%Ln order that is met now would no longer be.</numerusform>
            <numerusform>%Ln orders that are met now would no longer be.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take in %Ln order(s)</source>
        <translation>
            <numerusform>&amp;Take in %Ln order</numerusform>
            <numerusform>&amp;Take in %Ln orders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) bought in</source>
        <translation>
            <numerusform>%Ln queen bought in</numerusform>
            <numerusform>%Ln queens bought in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln short</source>
        <translation>
            <numerusform>%Ln short</numerusform>
            <numerusform>%Ln short</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>losses by your own rates, weather of %Ln past year(s)</source>
        <translation>
            <numerusform>losses by your own rates, weather of %Ln past year</numerusform>
            <numerusform>losses by your own rates, weather of %Ln past years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) owed by then, its own among them</source>
        <translation>
            <numerusform>%Ln queen owed by then, its own among them</numerusform>
            <numerusform>%Ln queens owed by then, its own among them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln round(s)</source>
        <translation>
            <numerusform>%Ln round</numerusform>
            <numerusform>%Ln rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Boost %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Boost %Ln nuc on %1</numerusform>
            <numerusform>Boost %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Thin out %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Thin out %Ln nuc on %1</numerusform>
            <numerusform>Thin out %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Brood into %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Brood into %Ln nuc on %1</numerusform>
            <numerusform>Brood into %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Feed %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Feed %Ln nuc on %1</numerusform>
            <numerusform>Feed %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Enter for %Ln place(s)</source>
        <translation>
            <numerusform>Enter for %Ln place</numerusform>
            <numerusform>Enter for %Ln places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s) would no longer be met.</source>
        <translation>
            <numerusform>%Ln order would no longer be met.</numerusform>
            <numerusform>%Ln orders would no longer be met.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take back upkeep of %Ln nuc(s) on %1</source>
        <translation>
            <numerusform>Take back upkeep of %Ln nuc on %1</numerusform>
            <numerusform>Take back upkeep of %Ln nucs on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln graft(s)</source>
        <translation>
            <numerusform>%Ln graft</numerusform>
            <numerusform>%Ln grafts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) earlier</source>
        <translation>
            <numerusform>%Ln day earlier</numerusform>
            <numerusform>%Ln days earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) later</source>
        <translation>
            <numerusform>%Ln day later</numerusform>
            <numerusform>%Ln days later</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s)</source>
        <translation>
            <numerusform>%Ln order</numerusform>
            <numerusform>%Ln orders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) to catch</source>
        <translation>
            <numerusform>%Ln queen to catch</numerusform>
            <numerusform>%Ln queens to catch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln frame(s)</source>
        <translation>
            <numerusform>%Ln frame</numerusform>
            <numerusform>%Ln frames</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Even so, %Ln cell(s) find no nuc.</source>
        <translation>
            <numerusform>Even so, %Ln cell finds no nuc.</numerusform>
            <numerusform>Even so, %Ln cells find no nuc.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) until %1.</source>
        <translation>
            <numerusform>%Ln batch until %1.</numerusform>
            <numerusform>%Ln batches until %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %Ln batch(es)</source>
        <translation>
            <numerusform>%1 of %Ln batch</numerusform>
            <numerusform>%1 of %Ln batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) grafted in a dearth</source>
        <translation>
            <numerusform>%Ln batch grafted in a dearth</numerusform>
            <numerusform>%Ln batches grafted in a dearth</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) late by weather</source>
        <translation>
            <numerusform>%Ln batch late by weather</numerusform>
            <numerusform>%Ln batches late by weather</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) without flying behind them</source>
        <translation>
            <numerusform>%Ln day without flying behind them</numerusform>
            <numerusform>%Ln days without flying behind them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) found no nuc</source>
        <translation>
            <numerusform>%Ln cell found no nuc</numerusform>
            <numerusform>%Ln cells found no nuc</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) without a queen</source>
        <translation>
            <numerusform>%Ln nuc without a queen</numerusform>
            <numerusform>%Ln nucs without a queen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln drone layer(s)</source>
        <translation>
            <numerusform>%Ln drone layer</numerusform>
            <numerusform>%Ln drone layers</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln delivered</source>
        <translation>
            <numerusform>%Ln delivered</numerusform>
            <numerusform>%Ln delivered</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to be replaced</source>
        <translation>
            <numerusform>%Ln to be replaced</numerusform>
            <numerusform>%Ln to be replaced</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln graft day(s)</source>
        <translation>
            <numerusform>%Ln graft day</numerusform>
            <numerusform>%Ln graft days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln more warning(s)</source>
        <translation>
            <numerusform>%Ln more warning</numerusform>
            <numerusform>%Ln more warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln open order(s)</source>
        <translation>
            <numerusform>%Ln open order</numerusform>
            <numerusform>%Ln open orders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln yard(s)</source>
        <translation>
            <numerusform>%Ln yard</numerusform>
            <numerusform>%Ln yards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln breeder queen(s)</source>
        <translation>
            <numerusform>%Ln breeder queen</numerusform>
            <numerusform>%Ln breeder queens</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take over %Ln batch(es)</source>
        <translation>
            <numerusform>&amp;Take over %Ln batch</numerusform>
            <numerusform>&amp;Take over %Ln batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) taken over into the book; undo takes back all in one step.</source>
        <translation>
            <numerusform>%Ln batch taken over into the book; undo takes back all in one step.</numerusform>
            <numerusform>%Ln batches taken over into the book; undo takes back all in one step.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln more builder(s)</source>
        <translation>
            <numerusform>%Ln more builder</numerusform>
            <numerusform>%Ln more builders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln more nuc(s)</source>
        <translation>
            <numerusform>%Ln more nuc</numerusform>
            <numerusform>%Ln more nucs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>graft %Ln day(s) earlier</source>
        <translation>
            <numerusform>graft %Ln day earlier</numerusform>
            <numerusform>graft %Ln days earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln page(s)</source>
        <translation>
            <numerusform>%Ln page</numerusform>
            <numerusform>%Ln pages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take in %Ln line(s)</source>
        <translation>
            <numerusform>&amp;Take in %Ln line</numerusform>
            <numerusform>&amp;Take in %Ln lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln task(s) of this week are given to nobody and not on this sheet.</source>
        <translation>
            <numerusform>%Ln task of this week is given to nobody and not on this sheet.</numerusform>
            <numerusform>%Ln tasks of this week are given to nobody and not on this sheet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>ticks say about %1 min (%Ln time(s))</source>
        <translation>
            <numerusform>ticks say about %1 min (%Ln time)</numerusform>
            <numerusform>ticks say about %1 min (%Ln times)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>room for %1 of %Ln cell(s) in %2</source>
        <translation>
            <numerusform>room for %1 of %Ln cell in %2</numerusform>
            <numerusform>room for %1 of %Ln cells in %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) overfull</source>
        <translation>
            <numerusform>%Ln batch overfull</numerusform>
            <numerusform>%Ln batches overfull</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with too many cells</source>
        <translation>
            <numerusform>%Ln batch with too many cells</numerusform>
            <numerusform>%Ln batches with too many cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) moved too late: a queen is out first</source>
        <translation>
            <numerusform>%Ln batch moved too late: a queen is out first</numerusform>
            <numerusform>%Ln batches moved too late: a queen is out first</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) moved while fragile</source>
        <translation>
            <numerusform>%Ln batch moved while fragile</numerusform>
            <numerusform>%Ln batches moved while fragile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) to look through for wild cells</source>
        <translation>
            <numerusform>%Ln batch to look through for wild cells</numerusform>
            <numerusform>%Ln batches to look through for wild cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) on a day off</source>
        <translation>
            <numerusform>%Ln batch on a day off</numerusform>
            <numerusform>%Ln batches on a day off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) in a builder that is not free</source>
        <translation>
            <numerusform>%Ln batch in a builder that is not free</numerusform>
            <numerusform>%Ln batches in a builder that is not free</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with a named nuc that is not ready</source>
        <translation>
            <numerusform>%Ln batch with a named nuc that is not ready</numerusform>
            <numerusform>%Ln batches with a named nuc that is not ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) waiting for a catch</source>
        <translation>
            <numerusform>%Ln batch waiting for a catch</numerusform>
            <numerusform>%Ln batches waiting for a catch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) too early to graft</source>
        <translation>
            <numerusform>%Ln batch too early to graft</numerusform>
            <numerusform>%Ln batches too early to graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) too late to graft</source>
        <translation>
            <numerusform>%Ln batch too late to graft</numerusform>
            <numerusform>%Ln batches too late to graft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) without a day to mate</source>
        <translation>
            <numerusform>%Ln batch without a day to mate</numerusform>
            <numerusform>%Ln batches without a day to mate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) to feed in the dearth</source>
        <translation>
            <numerusform>%Ln batch to feed in the dearth</numerusform>
            <numerusform>%Ln batches to feed in the dearth</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) short of drones</source>
        <translation>
            <numerusform>%Ln batch short of drones</numerusform>
            <numerusform>%Ln batches short of drones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) out of a yard held for disease</source>
        <translation>
            <numerusform>%Ln batch out of a yard held for disease</numerusform>
            <numerusform>%Ln batches out of a yard held for disease</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) without larvae seen</source>
        <translation>
            <numerusform>%Ln batch without larvae seen</numerusform>
            <numerusform>%Ln batches without larvae seen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with too few nucs</source>
        <translation>
            <numerusform>%Ln batch with too few nucs</numerusform>
            <numerusform>%Ln batches with too few nucs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) in trouble</source>
        <translation>
            <numerusform>%Ln batch in trouble</numerusform>
            <numerusform>%Ln batches in trouble</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) late</source>
        <translation>
            <numerusform>%Ln batch late</numerusform>
            <numerusform>%Ln batches late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) to free</source>
        <translation>
            <numerusform>%Ln nuc to free</numerusform>
            <numerusform>%Ln nucs to free</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) left</source>
        <translation>
            <numerusform>%Ln nuc left</numerusform>
            <numerusform>%Ln nucs left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %Ln cell(s) too many</source>
        <translation>
            <numerusform>%1 to %Ln cell too many</numerusform>
            <numerusform>%1 to %Ln cells too many</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %Ln cell(s)</source>
        <translation>
            <numerusform>%1 of %Ln cell</numerusform>
            <numerusform>%1 of %Ln cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln more order(s) met</source>
        <translation>
            <numerusform>%1, %Ln more order met</numerusform>
            <numerusform>%1, %Ln more orders met</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln more order(s) not met</source>
        <translation>
            <numerusform>%1, %Ln more order not met</numerusform>
            <numerusform>%1, %Ln more orders not met</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) short</source>
        <translation>
            <numerusform>%Ln nuc short</numerusform>
            <numerusform>%Ln nucs short</numerusform>
        </translation>
    </message>
</context>
</TS>
