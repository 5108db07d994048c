<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>Words</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one look on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a &amp;batch ...</source>
        <translation>&amp;Serie planen ...</translation>
    </message>
    <message>
        <source>Change the &amp;selected batch ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Serie planen</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Serie %1</translation>
    </message>
    <message>
        <source>&amp;Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Starts with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the breeder queen confined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed cells found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe cells bought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>virgins</source>
        <translation>unbegattete Königinnen</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward from its first day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backward from a day wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft &amp;on</source>
        <translation>&amp;Umlarven am</translation>
    </message>
    <message>
        <source>C&amp;onfined on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ound on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ome on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe cells</source>
        <translation>reife Zellen</translation>
    </message>
    <message>
        <source>virgins out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laying queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>queens caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>19 of 20 of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given (12:00)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, day %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ma&amp;ting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open, from the nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a mating station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by insemination</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make &amp;up the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for this batch, without open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for this batch, with open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Leisten</translation>
    </message>
    <message>
        <source>Breeder queen</source>
        <translation>Zuchtmutter</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts</source>
        <translation>Larven</translation>
    </message>
    <message>
        <source>Virgins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells: type what you counted. Until then %1 of the grafts are expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells by yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No yard for mating yet: add one in the set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 without brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 of 10 within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What speaks against this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing: it clashes with no other batch, builder or nuc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft on another day of that week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free the queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graft</source>
        <translation>umlarven</translation>
    </message>
    <message>
        <source>count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first look</source>
        <translation>erste Durchsicht</translation>
    </message>
    <message>
        <source>second look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, free day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln job(s)</source>
        <translation>
            <numerusform>%Ln Arbeit</numerusform>
            <numerusform>%Ln Arbeiten</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the weekdays without work: then this says which graft days keep them free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No day of this week brings work on a free day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is the only graft day without work on a free day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work on a free day: graft on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every graft day brings work on a free day. Least on %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest days that clash with nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln day(s) sooner</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln day(s) later</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Repeat every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Delete batch ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete batch %1? Its bars and its planned make-up go with it. Undo brings all back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete batch %1? Its bars, placed cells (%2) and what was seen (%3) go with it. Undo brings all back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The graft is recorded: its day, hour, larvae and method stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no day on which it could start for that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % chance %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 d %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grafts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>verdeckelt</translation>
    </message>
    <message>
        <source>after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the latest before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a queen is out by then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first queen out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready for a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queenless at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if caught or looked at by the day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be stocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand there empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>need open brood first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without open brood or queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught on eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught on sealed brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught by age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on eggs %1, on sealed brood %2, by age %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2, %3: %4 nuc days each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nuc days by catch rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells day and catch day both count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press to show or hide each nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cell given %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells out %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grafted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>of these for nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the likely ones would do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make up %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with open brood: wild cells can be begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for wild cells · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queenless since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wild queen out, seldom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wild queen out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rests until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1, by its method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queenless without cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 (%3 d)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be moved there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season chart</source>
        <translation>Saisonbild</translation>
    </message>
    <message>
        <source>batch %1, graft %2, cells out %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>today, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no builder yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>Builders</source>
        <translation>Pflegevölker</translation>
    </message>
    <message>
        <source>Mating nucs</source>
        <translation>Begattungskästchen</translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s)</source>
        <translation>
            <numerusform>%Ln Kästchen</numerusform>
            <numerusform>%Ln Kästchen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s)</source>
        <translation>
            <numerusform>%Ln Zelle</numerusform>
            <numerusform>%Ln Zellen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 +%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too many cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queen out first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved while fragile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a day off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the builder&apos;s last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln wait(s) for the catch</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stocked</source>
        <translation>nicht besetzt</translation>
    </message>
    <message>
        <source>queenless too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds a virgin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>her queen is due to fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>her queen lays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>her queen is to be caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs open brood first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given up or not standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cell, no queen</source>
        <translation>ohne Zelle und Königin</translation>
    </message>
    <message>
        <source>ripe cell</source>
        <translation>reife Zelle</translation>
    </message>
    <message>
        <source>virgin</source>
        <translation>unbegattet</translation>
    </message>
    <message>
        <source>due to fly</source>
        <translation>vor dem Hochzeitsflug</translation>
    </message>
    <message>
        <source>laying, not judged</source>
        <translation>in Eilage, nicht beurteilt</translation>
    </message>
    <message>
        <source>judged good</source>
        <translation>für gut befunden</translation>
    </message>
    <message>
        <source>no queen found</source>
        <translation>keine Königin gefunden</translation>
    </message>
    <message>
        <source>drone layer</source>
        <translation>drohnenbrütig</translation>
    </message>
    <message>
        <source>queen caught</source>
        <translation>Königin entnommen</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>confine breeder queen</source>
        <translation>Zuchtmutter absperren</translation>
    </message>
    <message>
        <source>free breeder queen</source>
        <translation>Zuchtmutter freigeben</translation>
    </message>
    <message>
        <source>make up builder</source>
        <translation>Pflegevolk bilden</translation>
    </message>
    <message>
        <source>take count</source>
        <translation>Annahme zählen</translation>
    </message>
    <message>
        <source>top-up day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>starter to finisher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fragile from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fragile until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cage from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergence</source>
        <translation>Schlupf</translation>
    </message>
    <message>
        <source>mature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first eggs</source>
        <translation>erste Eier</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>Entnahme</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>Starter</translation>
    </message>
    <message>
        <source>finisher</source>
        <translation>Finisher</translation>
    </message>
    <message>
        <source>starter and finisher</source>
        <translation>Starter und Finisher</translation>
    </message>
    <message>
        <source>incubator</source>
        <translation>Brutschrank</translation>
    </message>
    <message>
        <source>holding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed, ripe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs brood, or too soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look for wild cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>morning</source>
        <translation>Morgen</translation>
    </message>
    <message>
        <source>midday</source>
        <translation>Mittag</translation>
    </message>
    <message>
        <source>afternoon</source>
        <translation>Nachmittag</translation>
    </message>
    <message>
        <source>evening</source>
        <translation>Abend</translation>
    </message>
    <message>
        <source>W%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Egg, from laying to hatching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen emerges, from the egg at 34.5 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) of emergence among queens of one age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell is sealed, from the egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Youngest larva grafted when no age is given, since hatching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oldest larva grafted when no age is given, since hatching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the brood nest and of the incubator unless set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower end of the measured temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later emergence when sealed cells are kept at the lower end throughout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder queen is confined to the comb so long before the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder queen stays confined so long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder is made up and queenless so long before the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells stay so long in a closed starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells can be counted from here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells should be counted by here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bar can be topped up until here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells are fragile from here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells are fragile until here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed cells go to an incubator, a careful step, here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nursery cages are put over cells in place from here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells are ripe and leave the box by road from here after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Risk of a queen out in the box at the latest move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgin is mature, from emergence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earliest age of first flights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of virgins due to fly from the earliest age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of virgins due to fly a day later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of virgins due to fly two days later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of queens that fly on a second day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First eggs, from the last mating flight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last age at which a virgin can still mate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age at first egg, where no weather is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) of age at first egg, where no weather is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look into the nuc, from emergence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed worker brood after the first eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age at catching under the rule by age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc is queenless so long before it takes a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc needs open brood first after so long without open brood, virgin or queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open brood of a stocked or dequeened colony is all sealed after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A virgin not found at the first look is taken as lost at this age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts that are started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells that are sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells from which a queen emerges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins that mate and lay, in fair weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying queens judged good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells in a box that finishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells in a starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one batch into a starter to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one batch into a finisher to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one batch into a box that starts and finishes to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wild queen of a 96 h larva is out, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wild queen of a 72 h larva is out, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wild queen of a 36 h larva is out, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wild cells of a dequeening have all run out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All wild cells are begun, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look for wild cells, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look for wild cells, last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second look for wild cells, from dequeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second look for wild cells, last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of queens that should have eggs by the first look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour at which the work of a day starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flying day is as warm as this at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flying day has no more wind than this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flying day has less rain than this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past years also serve shifted by up to so many days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade numbers</source>
        <translation>Fachzahlen</translation>
    </message>
    <message>
        <source>Everything is reckoned from these. Type over a number to use your own; the published range and source stand beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the default</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Default</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number from %1 to %2 %3 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the season chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the page of nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the trade numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day before, the day after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page up, Page down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a week back, a week on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the batch before, the batch after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next batch; after the last one on to the next part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Left, Alt+Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop a move, or let go of the chosen batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+, -</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom in, zoom out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go to today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show or hide each nuc of that yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Up, Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose more nucs; Ctrl+A all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the week before, the week after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick the task as done, or take the tick back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new task of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F2, Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change or delete a task of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number before, the number after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F2, or type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give a number of your own; Enter keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move it; what follows is shown at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go through the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press a yard&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show or hide each of its nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go through the season, or up and down where there is more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom at the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest on anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is, and where each number comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs on %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely %1 more if caught or looked at the day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can be stocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln need(s) open brood first</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>All nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can be stocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Need open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a yard, nuc or batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day before (Left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day after (Right)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brood frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Donor yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Stock %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the nucs to stock in the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose all shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc stands in a yard on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar %1: %2 from %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells out of %1, batch %2: %3 expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins into nucs, batch %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells into nucs, batch %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cage the cells in %1 in place, batch %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free the breeder queen, batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confine the breeder queen for batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make up %1 for batch %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft batch %1: %2 larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the started cells, batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells of batch %1 into %2: %3 expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for wild cells in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again for wild cells in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look, batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look, batch %1: circle what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch queens of batch %1: about %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock nucs: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright, never shake, 32 to 35 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a queen can be out from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not even day 10 is safe; do not move them until then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shake where bees cannot fly back to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brush the bees off gently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brush, never shake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every comb; break down each wild cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every comb; after this one none can be begun any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shut, cool and dark until they are set out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grafted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>started, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stocked, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free breeder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wild cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stock nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nursery cages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cell protectors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comb cage and an empty comb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cups, grafting tool, damp cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brush, spray, ventilated box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queen cages, marking pen (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pencil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>culled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stings: trouble breathing, faintness or a rash within minutes is an emergency: call the emergency number, use the prescribed injector. Do not work alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full boxes: two people. Smoker: never on dry grass. Treatments: follow the label and the local rules. Before bees or queens are moved or sold: ask the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black bar: must be done this day. Leave nucs with virgins alone from 11:00 to 16:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (goes on)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: leave nucs shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E L S V – X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E eggs, L larvae, S sealed brood, V virgin seen, – none yet, X gone or dead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells of this day must add up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wee&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;task of your own ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do in this week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln task(s)</source>
        <translation>
            <numerusform>%Ln Aufgabe</numerusform>
            <numerusform>%Ln Aufgaben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1  ·  %2 must be done on their day  ·  %3 done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Still open: %Ln task(s) from before today</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Cells out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins into nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells into nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cage cells in place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free the breeder queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confine the breeder queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make up the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the started cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the cells on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for wild cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again for wild cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week before (Page up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week after (Page down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ew task ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All dates of the batch (W)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a task: here stands which rule it comes from and what sets its day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is done by what was recorded in the book, not by a tick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New task of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What is to be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no particular yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;must be done on this very day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what is to be done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day on which the breeder queen is confined is the one you set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They came as virgins, so they count as out on the day you set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The graft is on the day you set; every other day is counted from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells were found sealed, so their age is not known: the middle between sealing and emergence is taken, and the graft reckoned back from there by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells came ripe; the graft is reckoned back by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They came as virgins; the graft is reckoned back by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The breeder queen is confined to a comb %1 before the graft, so that there are larvae of one known age.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>She is freed %1 after she was confined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The builder is made up %1 before the graft, so that it is queenless by then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafted %1 after the breeder queen was confined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells can be counted from %1 to %2 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bar can be topped up until %1 after the graft, once the started cells are counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells are sealed %1 after the egg is laid; with these larvae, on average %2 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 after the graft the cells must not be shaken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until %1 after the graft the cells must not be shaken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nursery cages can go over the cells where they hang from %1 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells are ripe and can travel from %1 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens come out %1 after the egg is laid; with these larvae, on average %2 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A virgin is mature %1 after she came out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins first fly at %1 to %2 days of age, not all on the same day; on average %3 after they came out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens lay their first eggs %1 days after they came out, on average.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first look is %1 days after the queens came out; by then %2 of those that will lay have eggs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worker brood is sealed %1 days after the first eggs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caught %1 days after they came out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caught on eggs: at the first look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until here the risk that the first of %1 queens in one box is out stays below %2. The more cells in a box, the earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first of %1 queens in one box to come out. The more cells in a box, the earlier, for the quickest of them counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By then %1 of the queens that will lay have eggs; this is later than %2 days after they came out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caught when %1 of those that will lay have sealed brood, and not before the first look: the later of the two counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caught on sealed brood, and not before the first look: the later of the two counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature is outside what was measured; the nearest measured one was used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the age is not known, a queen may be out at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not even the day the cells are ripe is safe: cage them in place, or move them earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only where they hang; cells leave the box once they are ripe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was seen and recorded; it stands in place of what was reckoned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The method moves the cells on %1 after the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees that have open brood and no queen begin wild cells. The first look breaks down what was begun so far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only on the second look are all wild cells begun: after it none can follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queenless with open brood from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the builder&apos;s make-up or diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wild queen can be out, seldom, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells go on the day for which you placed them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells go when the last step of the method ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A queen can be out before the cells leave the builder, so they are caged where they hang.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The make-up of this builder stands in the book for this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A builder without a make-up in the book is made up in time for the graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The method moves the cells into the next builder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the first look most queens that will lay have eggs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good queens are caught, and their nucs are free again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees go into these nucs on the day that stands in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A task of your own, on the day you set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day comes from a date of the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell of batch %1 given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready: it has bees, no queen, and has been queenless long enough to take a cell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: there are no bees in it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: bees take a cell only once they have been queenless for a while.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: a cell hangs in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: a virgin is in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: her first flights are due; leave it shut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: a queen lays in it who is not caught yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not surely ready: nobody has caught the queen or looked yet. It counts as likely until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: too long without open brood; workers would lay. It needs open brood first, or is joined to another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: it is given up, laid out anew or stands in no yard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has looked: this is the likeliest of what it can be, with %1 of 100.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By what stands in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was not done on its first day and can still be done, so it is planned for today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can be done until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder queen confined on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found sealed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells came on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins came on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set by you; without an hour noon is taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until %1 after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the method &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age of the larvae since hatching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Living cells in the fullest box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from your count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>default</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set by you; the default is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set by you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on sealed brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set by you for this batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rule of the whole book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last step ends after the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this day? Batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y this day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a batch first, or a task or nuc of one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch is no longer in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is that day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earliest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move cells of batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delete %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick look at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the number &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick a task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick a task of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delete batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 - %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Darstellung</translation>
    </message>
    <message>
        <source>&amp;New book ...</source>
        <translation>&amp;Neues Buch ...</translation>
    </message>
    <message>
        <source>&amp;Open a book ...</source>
        <translation>Buch ö&amp;ffnen ...</translation>
    </message>
    <message>
        <source>Open the &amp;example</source>
        <translation>&amp;Beispiel öffnen</translation>
    </message>
    <message>
        <source>Save a &amp;copy ...</source>
        <translation>&amp;Kopie sichern ...</translation>
    </message>
    <message>
        <source>&amp;Week sheet ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a list ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport a list ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is in the list?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees put into nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builders made up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looks and brood of builders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Methods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars in builders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells for each yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen and counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather by day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks of tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list says nothing new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) were taken from the list.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The list is in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list cannot be taken; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list cannot be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore a backup ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>The window speaks it from the next start on.</source>
        <translation>Das Fenster spricht sie ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Season chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade &amp;numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which backup shall take the place of the book? The book as it is now is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup of this book yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is restored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is restored. The book as it was: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup cannot be restored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shall the newest good backup take its place? The damaged file is kept. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, before bringing it up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, before a backup was restored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>&amp;Whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to &amp;today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenthday books (*.tenthday)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No backup was made: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book cannot be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy cannot be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was not saved. The book is as it was before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open for reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The newest backup is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planning a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change the chosen batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W on a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter on a line of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graft on that day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert, Ctrl+Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+S, Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save the form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discard what is not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delete it, or retire what is in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>find in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan a batch that starts on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yard %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>builder %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queen %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days off %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New days off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No yard yet: add the first place where nuc boxes or builders stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc box yet: add a dozen at once, counted up from a first label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No builder yet: add the box or colony that is to raise the cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No queen yet: add the breeder queens you graft from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No method yet: add the steps by which you raise cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No days off yet: add days on which nobody works with the bees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here has these letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label of the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of the earth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First hard frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones are thrown out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place on the round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boxes today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this yard from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid out so from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room for started cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room for sealed cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mother</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeder until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cell builders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>giving bees and brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drone colonies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>northern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>southern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>retired from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Her mark is %1 (S105).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: %1, your own number (default %2; %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: %1, the default (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: no bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month and day count, the year does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 is driven to first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frames of each side: 7 is one nuc, 3+3 two, 2+2+2 three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another yard is a move from this day on; the day alone puts a wrong day right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new name makes a new line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: still there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 batch uses this method. With other steps it is kept as a copy under a label of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 batches use this method. With other steps it is kept as a copy under a label of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To an incubator after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a s&amp;tep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove the last step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: this is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole number from %1 to %2 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day. Write it like 2027-05-01, or choose it from the calendar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is there already. Each label is used once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This ends before it begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no layout. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To count up, the first label must end in a number, such as Q1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 begins before the one before it has ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A yard is needed first: add one under &quot;Yards&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add one (Insert)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete what is chosen, or retire it (Del)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dis&amp;card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade nu&amp;mbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose from a calendar (Alt+Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet. Enter saves, Esc discards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deleted: %1. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retired: %1. Undo takes that back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a box to see it, several to move or divide them at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one in the list to see and change it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you changed is not saved yet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep editing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in use: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire it from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Retire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A retired box stands nowhere from that day on; what happened in it stays in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A retired builder takes no cells from that day on; what happened in it stays in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From that day on she is no breeder queen; her daughters and bars stay in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A yard cannot be deleted while anything leads to it. Move its boxes and builders to another yard first; a yard with a history stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A method that batches used stays, so that their dates stay as they were.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans a season of raising queens: grafts, cell builders, mating nucs, and the week&apos;s work on paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented season to look at and to try things on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A book keeps one operation with all its seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins an empty book for your own operation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter opens a book, Del takes it off this list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name of the operation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>northern hemisphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>southern hemisphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season fr&amp;om</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First &amp;yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The operation needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book needs a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season ends before it begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a file of this name already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No builder yet: add the boxes that raise your cells in Set-up (Ctrl+8).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch yet: double-click a day, or press Ctrl+B, to plan one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc yet: add your boxes, a dozen at once, in Set-up (Ctrl+8).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;arvae, hours old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On free days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, clashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the &amp;book</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) for nucs</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>There is no such folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay(s) of boxes</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln builder(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stocking(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) seen or counted</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>made up %Ln time(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln look(s) or brood put in</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bar(s) of batches</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bar(s) grafted</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with cells for it</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln daughter(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln own task(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln other record(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln box(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>In the south the first yard needs a name: the yards say where they stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 (%Ln nuc day(s))</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>not planned with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, to find nucs by themselves in the fewest yards.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, all given.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, %1 given: %2 left to find nucs by themselves.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln ripe cell(s) expected, %1 given: %2 more than there are.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>None within 60 days: each brings a clash, or work on a free day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source> day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>batch(es) more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Saving this takes out %Ln recorded count(s). Undo brings all back.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Leave without saving what you changed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take off this list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>such as Home</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>A season lasts %Ln day(s) at most.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>▲ make up on %1: that day is past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worker emerges, from the egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone brood is sealed, from the egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone emerges, from the egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone is mature, from emergence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone comb is put in so long before the first flights of virgins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong drone colonies within reach, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins that fly at one time for each drone colony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last graft, before drones are thrown out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From emergence to eggs, counted back from winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins that should find flying weather within the season of grafts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colonies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>drones seen %Ln time(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln flow(s), dearth(s) or robbing(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay(s) for mating</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>season %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No season yet: add the days between which you raise queens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) would stand in no season any more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Weather by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mating stations and insemination</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) of the daily maximum around its monthly mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of days that keep the weather of the day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from the weather by month in your book, with warm days more often than not in a row. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted in %1 possible seasons, made from your record of %2. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of the queens that will lay have eggs by then. A virgin first flies at %1 to %2 days of age and waits for a flying day; %3 need a second one; eggs come %4 days after the last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There %1 of the virgins find no flying day while they can still mate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;ason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too early: first graft on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too late: last graft on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days at the station not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age at instrumental insemination, where no day is given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No weather is known: every day there is taken as one. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Her nuc stands at a mating station, and she flies on the days there only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>She is inseminated on the last day given for it, else at %1 days of age; eggs come %2 days after. Weather does not count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be printed whole. See whether the printer is ready, or whether the file can be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chance of a flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones mature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside the season for grafts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted from the months&apos; weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>counted from %Ln past year(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>a flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely a flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely no flying day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the weather recorded for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the weather forecast for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones mature from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones thrown out about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flying days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>late: %Ln day(s) without flying</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>On the weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day after, the day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F, N, Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens flew, did not fly, nobody looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the usual weather of a month; Enter keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: no drones or drone comb of this season are noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: no mating yard says when its drones are thrown out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: there is no weather of past years that lets virgins out in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: no yard has a day of hard frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>drones are mature from %1; first flights are %Ln day(s) after the graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the first graft whose virgins find flying weather in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>drones are thrown out about %1; queens fly up to %Ln day(s) after the graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the last graft whose virgins find flying weather in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>hard frost about %1; two rounds of her own bees take %Ln day(s) from the graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>hard frost about %1; one round of her own bees, the last chance, takes %Ln day(s) from the graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1: before the first graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: after the last graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a file ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Daily record from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first days as they will stand in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Daily maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Daily minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens flew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>km/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miles an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>did not fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No day of weather is found in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s): %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln line(s) whose day can&apos;t be read</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln value(s) that can&apos;t be read</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln value(s) that no weather has</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Leave out %Ln placeholder(s) such as -999</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %Ln day(s) that stand there again take the last line</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Go on with %Ln gap(s) in the record</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day as 2027-06-03 or 20270603</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; can&apos;t be read (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not possible (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands for a missing value (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stands there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is known of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Mend the file, or tick what may be left out, before it is taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Import %Ln day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The book holds all of this already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) came in or changed.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Weathe&amp;r</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Reckoned with %Ln past year(s) of the daily record, from %1 to %2.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Reckoned with the usual weather of the months: no past year holds the season whole. A daily record of past years would do better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No weather is reckoned with yet: first eggs come at one fixed figure. Import a daily record of past years, or type the usual weather of the months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did queens fly? The last 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flew (F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did not fly (N)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said (Del)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flights on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once 20 days are ticked whose maximum is known, at least 3 each way, the limit of warmth can be fitted to them. So far: %1 flew, %2 did not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Your %Ln tick(s) agree best with the %1 °C in force; against it: %2.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %Ln tick(s) say %1 °C; against it: %2, against the %3 °C in force: %4.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual weather of the months (not in use: past years are recorded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual weather of the months (in use)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual weather of the months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean maximum, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual weather of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the mean maximum of the month first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mean maximum is from -60 to 59.9 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A month has from 0 to 31 rain days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: virgins of every graft find flying weather in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day on which they can mate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) between batches: grafts that are started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) between batches: started cells that are sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) between batches: ripe cells from which a queen emerges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) between batches: virgins that mate and lay, in fair weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread (standard deviation) between batches: laying queens judged good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dearth: feed, or %1 % take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of %1, which is held for disease until %2: ask the bee inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drone colonies: %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first eggs due, as high as their chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln strong drone colony(ies) wanted</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, none noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: about %2 virgins due to fly at one time on %3; %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones mature from %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put drone comb in by %1, at the latest on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones: no virgin of this season flies from a yard yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Evening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: what was done and seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>virgin seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cage them in place now; a queen can be out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give them today, or cage them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cage them now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free her now; graft from the youngest larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graft today if the larvae are young enough, or move the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look today: every comb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch her, or her nuc is not free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feed this evening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>do it, or move it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the number; Enter alone: as expected; Delete takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E eggs, L larvae, S sealed brood, V virgin seen, N none yet, X gone; Delete takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter: it went in; Delete takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter: done; Delete takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A key on this line is for all lines under it that are still empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is entered. Another key corrects it, Delete takes it back, Ctrl+Z undoes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That day is still to come: enter it when it is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number from 0 to %1 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: the batch was grafted only on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: there were only %1 before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: %1 were counted later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: the cell went in on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: no queen of this batch is out before %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: no queen of this batch has flown before %1. Is it another queen?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: the nuc holds another batch&apos;s cell or queen since %1. Enter first what became of her.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only: nothing can be entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An hour is a whole number from 0 to 23.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole number is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>did not come back from her flight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>killed by the bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cell dead or never left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bees gone or robbed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost by the beekeeper&apos;s hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is she gone?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was planned for this day, and nothing is late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As &amp;expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers and order are those of the week sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells in a builder in a dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts that are started in a dearth, where no feed is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A builder in a dearth is fed so long before the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A feed noted for a builder serves so long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour of the day from which virgins fly: nucs are left alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour of the day until which virgins fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour from which no box is opened while robbing is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour until which no box is opened while robbing is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again after a look that found neither queen nor eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First eggs before larvae are seen, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A virgin less likely than this to be mated or to mate yet is given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no past year and no usual weather of the months to go by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a fixed figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after emergence, whatever the weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no past year to reckon with: first eggs at a fixed figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the evening page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the virgins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a count; Enter alone: as expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E, L, S, V, N, X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eggs, larvae, sealed brood, virgin seen, none yet, gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space, Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done, in, caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take back what was entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct the count, the hour or the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go to the nuc on the page of nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colonies with drones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mature by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flow and dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New sighting of drones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New flow or dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drones yet: add drone comb you put in, drone brood or drones you saw. The day from which drones are mature follows, and with it the first graft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet: add the days of a nectar flow, of a dearth or of robbing in a yard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed %1 for batch %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs of batch %1 to the mating station: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs of batch %1 back from the mating station: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inseminate queens of batch %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone comb into strong colonies: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not from %1 to %2: virgins fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>robbing: only before %1 or after %2, quickly, nothing spilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; virgins fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the evening, shut feeder: there is a dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at dusk, shut and aired; ask the inspector&apos;s rules first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the first flights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inseminated, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inseminate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drone comb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straps, ventilated screens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brought there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fetched back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insemination %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggest da&amp;ys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a sta&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add da&amp;ys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove stay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 of 10 virgins are due to fly from %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 No days yet: reckoned as if they flew from the nucs at home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested: from the day before the earliest are due to fly until a week after the latest are, to spare for bad weather (common practice). Queens mate on days there only; the days move with the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of the virgins are %1 days old on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 No days yet: that age is taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested: the day of that age, a trade number (%1; %2). Eggs are reckoned from the last day; the days move with the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No flying day since %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>No flying day on the %Ln day(s) before.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The day before was a flying day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the day before no weather is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day is a flying day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next flying day known is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No virgin waits for a flying day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln virgin(s) wait(s) for a flying day.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>For %Ln of them the last useful day is %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Virgins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins on %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age, days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last useful day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still can</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recell %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>combine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All virgins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Combine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By yard and batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flying days and chances are the mean of the nucs of this batch in this yard; the list of nucs tells where each comes from. Double-click to change the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the &amp;nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the &amp;batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc holds a virgin on this day. Nucs stand here from two days before their cell emerges until their queen is seen laying.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen and forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no flying day on %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no flying day from %1 to %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 of %2 past years no flying day from %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the months&apos; usual weather a chance of %1 of no flying day from %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and in %1 of %2 past years none until %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and by the months&apos; usual weather a chance of %1 of none until %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inseminated: weather does not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the days at the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather hardly keeps them from flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 of %2 past years %3 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted with the past years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the days recorded and forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the months&apos; usual weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of those that will lay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never mate for weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of those that will lay, %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the days of this year are known: they count where they tell all of a batch&apos;s mating, else first eggs come at one fixed figure. Import a daily record of past years, or type the usual weather of the months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs to the mating station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs back from the mating station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inseminate queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put drone comb in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from the days recorded and forecast in your book; there is no past year. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First graft whose virgins fly here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins due to fly at one time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dearth is noted for the builder&apos;s yard on the day of the graft. Bees that are not fed start few of the grafts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days for mating stand with the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones need longer than queens: comb goes in so long before the first virgins fly in this yard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Seen without eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Her first look is not due yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By then enough queens of her age and flying days have eggs to be worth a look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There were too few flying days: sooner, a look would find too many queens that only need more time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No weather is known of her flying days, so her age alone decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After these flying days she should have laid when she was seen. The rules cannot say how she goes on: look again, at the latest when eggs of her last useful day are due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>She has had hardly any chance to mate and has hardly any left: she is given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>She is too old to mate and has hardly had a chance to: unmated she would lay drones only. She is given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take her out the day before and give a ripe cell: her bees can still take one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next ripe cells come too late for her bees, who have been too long without brood: unite them with a nuc that has a queen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ripe cells are planned: unite her bees with a nuc that has a queen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next ripe cells, batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Her bees take no cell without brood from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in her cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted from the day on which she was seen to come out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted from the day on which half of her batch are out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nine of ten came out from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days from the first on which she could fly to the day before this one, at the latest to her last useful day. Recorded and forecast days count by their weather or by what was seen, others by their chance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Could fly from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days with flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days without flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A virgin that has not mated by this age will lay drones only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance to mate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by now, %2 from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For weather alone: that enough flying days lie behind her, and that enough come before her last useful day. Cells that did not emerge and virgins lost on their flights are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never, for weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None: she is given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The later of the first look by her age and the day by which enough of those that will lay have eggs; never before this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First look by her age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>derived from S57</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comb that is put in is laid into from that day on (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The youngest eggs are laid that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The youngest are %1 days from the egg (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drone comb put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pupae with purple eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emerging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All mature by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flying drones are taken as mature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drones are mature %1 days from the egg: %2 until they emerge (%3) and %4 more (%5).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nectar flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>robbing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>disease hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not over yet: the day you expect it to end; put it right later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must be done on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar for the &amp;phone ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the season&apos;s tasks into a calendar file that phones and calendar programs read. An alarm rings for what must be done on its day, and on the last day for what can wait.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Choose ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at their &amp;hour, where they have one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on their &amp;day, without hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the file up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is written anew whenever the book has changed. Put it into a folder that your phone shares, and the phone follows: what moves is moved there, what falls away is marked as cancelled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is kept up to date. Changes made here go into it at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only: the file can be written once, not kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop keeping it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar needs a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one kind of task at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar cannot be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar is in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar is in %1 and is kept up to date there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar is no longer kept up to date; its file stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone calendar not up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasks of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confined for batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confined for batches %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>her first this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>free for %Ln day(s) before</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>too soon: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reserve: her line is not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reserve of her line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in reserve: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from confining to the graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from confining to freeing</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Fewer than %Ln free day(s) are called too soon (derived from S25: three queens share a batch every fourth day).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Confined this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>too soon %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2; %3; %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season of queen %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch of the season shown is grafted from her.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle her as little as you can: each time she can be lost. Keep one in reserve of each line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wild queen can be out from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serves until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for open brood of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look again for wild cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticked off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room for %1 sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no bound: a flow or a feed is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room for %1 in the dearth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overfull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started cells once the take is known; sealed ones where they come sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>for mite work: %Ln day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>for mite work: until open brood or a queen comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sealed worker brood either</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 no sealed worker brood either</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worker brood is sealed %1 d from the egg (S1, S2, S27) and out %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatments against mites: follow the label and the local rules, also on whether cells or queens may be in the box. Open it first: a queen or laying workers that nobody noted may have brood there. Drone brood comes out some days later than worker brood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season of builder %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing happens in this builder in the season shown. Note in the diary of builders when it is made up, or let a batch stand in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its seas&amp;on ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its season in order (F4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 into nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 into splits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 caged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 into the incubator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 culled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ce&amp;lls day ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells day: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 without a place yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> + </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ripe, but %2: %3 too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ripe = %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ripe cells come out on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch of this season has cells to come out. Plan a batch first (Ctrl+B).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln more cell(s) of this batch have their place on other days.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 ripe cells, as counted. Type another count if it was wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ripe cells are expected of %2 grafts, by the trade numbers for cells started, sealed and emerging, or by what was counted so far. Type the number once you have counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ready, %2 more if caught before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So many cells go to this yard: the nucs that are ready longest are ticked in the list. Ready is stocked, queenless long enough, and free until the catch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incubator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells for splits and colonies that are no mating nucs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells for buyers. What may be sold, and with which papers, is a matter of local rules and the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each in a nursery cage: her virgin emerges there and waits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back into the incubator until there is a place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To other beekeepers, for nothing. Local rules on moving bees hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too small, damaged, or more than are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded as done on this day already: this page leaves them as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) have no place yet</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) too many</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nucs in walking order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if caught before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another cell comes too soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch %1, done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs that can take a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The placement list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks are cells of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space ticks the chosen nucs; or press on a tick and draw over several. Shift and arrows choose more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells day before (Alt+Left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cells day after (Alt+Right)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;ropose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (at most %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gives the cells that are left a place: the yards their batch names, else as few yards as can be; there the nucs that are ready longest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest, in your order: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, then </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Order of ways ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pr&amp;int the list ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeps the places as planned, instead of what was planned for this day. What is done stays. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records all places as done on this day. It must add up. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The places are not kept yet. Shall they be left as they were?</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) more than are ripe have a place.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) have no place yet. Count those thrown away as culled.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>This day is still to come: it can be planned, not recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another cell or queen is in nuc %1 by record. Enter first what became of her.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Batch %1: %Ln cell(s) of this day are recorded, so many were ripe.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Planned: %1. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded: %1. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only: nothing can be kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where cells go that find no nuc where they were meant to, tried from top to bottom. A way that is not ticked is not proposed; 0 is as many as there are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest ready nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do&amp;wn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cell has a nuc yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drones mature only from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look for wild cells on %1 to %2 and again on %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brood put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bees added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pollen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larvae of all ages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none older than 36 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eggs only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ml of bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln brood frame(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>moved away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open brood: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>o&apos;clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are eggs or larvae among it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How old at the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Donors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands out of flight range of its donors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A builder is needed first: add one under &quot;Builders&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there from %2 to %3 only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there from %2 on only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take care: full boxes weigh 20 to 40 kg, two people lift them. Never light a smoker on dry grass. Find the donor&apos;s queen first, so that she stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the donor&apos;s queen first, so that she stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shake or brush the bees off every comb but those with your cells, and break down each wild cell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the evening, in a shut feeder: spilt feed brings robbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: 12 o&apos;clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: larvae of all ages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch is grafted in it on this day or the four days after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For batch %1, graft %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For batches %1, graft %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Its %Ln graft(s) want(s) %1 workers at %2 a cell (S77).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Deep frames full of bees, %1 to %2 on each: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serves until %1: no dearth counts for its cells until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wild queen can be out from %1, seldom, and from %2 more often</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wild queen can be out from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after it came in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A queen takes %1 from the egg, less %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as an egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the first look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the second look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its bees have a queen: brood put in begins no wild cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without eggs and larvae no wild cells are begun.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open brood of %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No open brood of it wants a look on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yards or colonies of yards with a comma between: Mill 3, Heath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warning: %1 is held for disease until %2, no bees or brood may leave it. Ask the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees that stay within flight range fly back to their donors; young bees stay (common practice). Moving colonies can need a certificate: ask the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not seen laying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look on the next warm day, before %1 or after %2 o&apos;clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the cells day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick the chosen nucs, or take the ticks away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift and Up, Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose several nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cells day before, the cells day after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take back what was planned or recorded there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the season of the chosen builder or queen in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diary of builders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New entry of the diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet: add when a builder is made up, looked through for wild cells, fed, or given brood, bees or pollen. The looks that are due follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a flying day leave the nucs alone from %1 to %2 h: virgins are out then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen; planned %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see larvae of %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no larvae, and nobody is in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no larvae: graft from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> or </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larvae seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae fit to graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look the day before the graft (common practice). Without larvae the reserve of her line is named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 virgins of this batch wait in cages or in the incubator. Take them out of these ways and give them nucs: dates of those nucs run from the day they fly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;lear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch %1: virgins out of cages are recorded once they are in their nucs: press Done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins that wait in cages: %1. Clear takes them out, Propose gives them nucs that are ready; what is left stays caged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays for winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen %1 was moved since, or has daughters. Delete her among the queens caught (set-up) first, then take the catch back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter: caught; W: she stays here for the winter; Delete takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worker bees a builder wants for each cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees a nuc is stocked with where nothing else is said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds after which a nuc&apos;s bees are worn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens that one bank colony keeps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest a queen stays in a bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest that queens on the way should have it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest that queens on the way should have it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold that can kill half of a queen&apos;s sperm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat that can kill half of a queen&apos;s sperm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days a breeder queen lays freely between two confinements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change or delete the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deliver, replace what failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean a batch for it by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L, C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>onto or off the waiting list; cancel or open again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens bought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I, S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what if; losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+C, Ctrl+V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to and from a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses from graft to good queen</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>At each stage your own batches speak beside what is published. Ranges hold the rate with 80 %. From %Ln batch(es) on your own rate is reckoned with in orders and promises, unless the trade number is set by hand. Leave a batch out when something was odd about it.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>grafts that are started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>started cells that are sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe cells that emerge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>virgins that mate in flying weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laying queens judged good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set by hand: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published: %1.
Result: the published rate put right by your batches, each with luck of its own (Bayes&apos; rule on a grid of rate and spread).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches that speak for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch speaks yet for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) speak(s) for: %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Came to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave out ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the &amp;reason ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Count it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For &amp;whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For wha&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is &amp;moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deli&amp;very</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How &amp;sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Importance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing in particular</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in parts as queens are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a code of your own, for example K-07</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: any line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day fits between not before and due: look at days off too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caged %1, goes %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By catch rule: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that it is whole on its day: %1 (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its due day lies outside this season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day on which it can be whole, %1 sure: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s) that is/are met now would no longer be.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Being reckoned ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be kept so: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of &amp;batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mated &amp;at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deliver order %1: %2 still owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Deliver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several, or not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>named, so that a failed queen can be traced to batch and yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, caught from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace queens of order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Owe them again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the &amp;delivery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, batch %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, mated at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How many failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of %1 delivered; 0 takes it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens meant for order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0: none of it; what is not meant by hand is given by due day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mated queens bought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Which</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 takes them away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In hand &amp;from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B&amp;rood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brood seen: proven</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mated, brood not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave batch %1 out of the rates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was odd about it, for example: builder was robbed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Importance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Met: as sure as it must be. In doubt: less sure, but likelier whole than not. Short: so many are missing to be as sure as it must be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last of its weekdays, on or before the due day, that is free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of orders due on one day the more important one is filled first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is expected of each batch, in queens or cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today lies outside the season: nothing is reckoned for this week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready by %1: %2 queens, 90 % sure. Owed by then: %3. Can promise: %4 this week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No orders yet in this season.

Enter the first with Insert, or copy lines from a spreadsheet and press Ctrl+V. What you need for yourself is entered the same way, as own needs.

Then this page says which orders will be whole on their day, how sure that is, and what more you can promise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No orders of this kind. The filter above shows others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an order to see why it stands so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancelled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find an order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New order ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orders from a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take in %Ln order(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Bought in ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What &amp;if ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losse&amp;s ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cha&amp;nge ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Deliver ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Replace ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear&amp;mark a batch ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the &amp;waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Onto the &amp;waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a&amp;gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cancel it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De&amp;lete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete order %1 with its deliveries? An order that is off is better cancelled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was delivered for this order yet that could be replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This order is not open: take it off the waiting list or open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waiting: from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dead on arrival</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delivery of %1 for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that none of %1 has to be replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to replace for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that none of batch %1 is meant for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of batch %2 meant for %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order %1 as open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order %1 on the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order %1 as cancelled</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) bought in</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>batch %1 left out of the rates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch %1 counted in the rates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mated queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>proven queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>requeening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delivered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln short</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cells %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 virgins %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>being reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>losses by your own rates, weather as it is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>losses by your own rates, weather of %Ln past year(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>from batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected, after what comes before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens in hand, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half of all outcomes give as many or fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 to 90 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone to orders by then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all that is due by this day; taken off before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 for %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 still owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chance that it is whole then</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) owed by then, its own among them</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>from the batches whose cells serve on its days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be %1 sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week %1, until %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be promised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or more by then, 90 % sure, since the season began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to orders due by then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy lines in your spreadsheet and paste them here with Ctrl+V.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where is what?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (needed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines as they were read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it brings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changes what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no lines yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be read: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say on the left where this is found: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All good: %1 new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All good: %1 new, %2 that change what is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These lines say nothing new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mated in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caught on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days in bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bank colony.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which cage, and for what.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which colony she was introduced to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For which order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How she was lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: longer than %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens stay in a bank for up to %1 days (S20; of those kept up to 75 days 59 to 71 in 100 lived, S97). Change it among the trade numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In banks then: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bank colony keeps up to %1 queens (S20).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>She was caught only on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selling and moving queens can need an inspection or a certificate: ask your bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The receiving colony is queenless for 6 to 24 hours before (S103). Stings: do not work alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Queen numbers ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give each caught &amp;queen a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} running number, {n:3} with three digits; {year} or {yy} year of birth; {line} her line; {batch} her batch. All else stands as you write it. The number runs on by itself for each text around it. Queens caught stand in the set-up, first in the bank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next three: %1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The running number {n} is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The running number {n} stands there more than once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A word in braces is not known, or a brace stands alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No queen caught yet: enter catches on the evening page (Ctrl+6), where each queen gets a number by your pattern. They come into the bank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a queen to see her, several to move them at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cage queens for order %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deliver order %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each with young workers and candy; 15 to 38 °C on the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaded and aired; papers as the bee inspector wants them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caged, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delivered, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cage queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deliver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shipping cages, candy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln round(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thin out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brood in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Boost %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Thin out %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Brood into %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Feed %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Bees for a nuc that has none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees, and brood if you like, for a nuc that is weak or worn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees or brood taken out of a nuc that is too strong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A frame of brood. With eggs or larvae a queenless nuc takes a cell again, and its bees can begin wild cells of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed in the evening: robbing starts easily at nucs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh bees on %1; %2 since.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in less taken out: %1. What a round costs is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upkeep last on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 rounds the bees of a nuc are worn (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boost it with young bees, or unite it and stock anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees worn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stockin&amp;g list ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs to stock, %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Donor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells of %1; wants open brood first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it stands in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brood goes in the day before the cell at the latest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queenless for %1 h before the cell (trade numbers; 3 days are best, S85). Better sooner: shut, cool and dark for 1 to 3 days, set out at dusk (S11).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That day is over: the cell comes sooner than is good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc has to be stocked: the cells of these days find ready nucs, or none come out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 of bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells without a nuc even so: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Donors, those that gave least first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing may leave, disease until %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How strong a donor is you see at the hive: take brood and bees only from strong, healthy colonies, never the queen. Bees of the nuc&apos;s own yard fly back, so none is named from there. Boxes weigh 20 to 40 kg: two people. On moving bees ask your bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied: it can be pasted as a table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mite work ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days without open brood, for work against mites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc or builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No brood at all from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done on a day with open brood, as far as is known: mites in sealed brood are not reached.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All open brood is sealed by the ninth day after the last eggs (S1, S2, S27), all workers are out after %1. New brood: brood put in, or the first day on which a queen of the batch can lay. What was not noted is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All of the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc and no builder is without open brood in these days, as far as is noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Enter for %Ln place(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the nucs and builders in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the label and the local rules (S117): what is allowed, when, at what warmth, with cells or virgins in the box, and what to wear. Ask your bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cage queens for orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deliver orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cold week, no flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;builder is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Nucs are robbed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poor &amp;take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder that is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yard that is robbed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs robbed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of grafts that are started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here is kept. Ticks can be joined; of nucs the least harmful go first: empty ones, then cells, virgins, laying queens. A poor take counts for bars not counted yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be asked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▼ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what goes wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens expected this season: %1, then %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All orders that are met stay met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s) would no longer be met.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No weather is known: cold days change nothing here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that it is whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The queens in hand by then, since the season began, must be as many as were delivered, as it still wants and as all orders before it still want. Batches add under the weather of one season; the chance is the mean over all possible seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The batches whose cells serve on its days must give what it and all orders before it want.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owed by then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure it must be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short by, to be so sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is expected of each batch once earlier orders have theirs; what is meant for it by hand comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meant by hand, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last of its weekdays on or before the due day that is no day off and has none the day after. Queens are caged the day before, those for oneself on the day itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due day moved on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens that have to be replaced are owed again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mated at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, of these %2 to replace: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep caged queens out of the sun and of frost, and never in a parked car: cold and heat can kill half of a queen&apos;s sperm, and nothing shows it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside what queens should have: wait, or pack for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as recorded or forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting in a bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens caught before they go wait caged in a queenless colony with young bees and feed. Survival falls with the days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not caught for it before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bank colonies wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selling queens or moving colonies can need an inspection or a certificate; rules differ by country and state.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the first goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask the local bee inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens are caged the day before they go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day the order can go by its due day and its weekdays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned %1, now %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or&amp;ders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in hand, 10 to 90 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in hand, about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number of grafts in the batches planned makes it %1 sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in batch %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts that would do: %1 instead of %2 (%3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered by mistake: take the delivery back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take upkeep back</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Take back upkeep of %Ln nuc(s) on %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>What was noted of these nucs on the day shown, by mistake.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Top up cups: %1 ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft them anew into the same box, until %1 (common practice): a batch of its own, for its queens are younger. Count and move by the oldest cells of the box.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Graft again ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A second graft as insurance, the day after: the same bars into the same box. Cells of two ages stand there then; the box goes by the oldest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells of several ages in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the oldest, those of %1: none may still stand there then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the oldest, which are these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left here %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the colours and marks mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days on which virgins can fly stand here, once there is weather.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens caught and the orders that want them stand here, once there are any.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells stand here from the graft on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln graft(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>were %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>into builder %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to yard %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) earlier</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) later</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Drawn to days that clash with nothing; hold Shift for any day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yard %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready %1, likely %2, can be stocked %3, needs open brood first %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graft %1, cells out %2, catch %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order %1 due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No clash in that direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work in that direction that must be done on its day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left %1, held for disease until %2: tell the bee inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C on the way, queens should have %2 °C or more: wait, or pack for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C on the way, queens should have %2 °C or less: wait, or pack for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 queens in a bank that keeps up to %2: set up another bank colony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in the bank for longer than %2 days: use these queens first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no larvae fit to graft: take a queen in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look whether %1 has larvae fit to graft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not kept: %1 is held for disease until %2, so no bees, brood or nucs may leave it on %3. What was really done can be entered once its day has come. Ask the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays for winter: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frames of brood a colony may give within one brood cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees a colony may give within one brood cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C, Shift+C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next clash, the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M, Shift+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next day with work that must be done then, the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Up, Shift+Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose more batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Left, Ctrl+Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cells of a builder before, after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Up, Ctrl+Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the yard above, below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tell about the place again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move the chosen batches by a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move its cells to the builder above, below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+plus, Alt+minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a graft more, a graft fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin a batch on the chosen day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold or unfold the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give the task to somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), wintered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, wintered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waiting: being reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln order(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Week sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves for a clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placement list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recell list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocking list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loading list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order confirmation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Review of the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No queens are to be caught by this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc wants another cell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc wants bees or brood for the cells of these seven days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is to be taken along on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No nuc holds a cell or a queen on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to print for this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gets the cell of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Event</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded of</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln queen(s) to catch</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln frame(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>batch %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cell is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells come out on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ripe cells come out on this day or later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wants open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cell lacks a nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, cells on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Even so, %Ln cell(s) find no nuc.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Mark of the year: blue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark of the year: white.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark of the year: yellow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark of the year: red.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark of the year: green.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells, upright, 32 to 35 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cups to graft into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen cages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shipping cages with workers and candy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs, shut and aired, strapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drone combs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Virgins in cages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools and boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell of %1, in on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cell of %1, goes in on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen out about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not open from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nor from %1:00 to %2:00 while virgins of the yard fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look: from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch: about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen: eggs ____  larvae ____  sealed ____</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is what we have noted, on %1. Please tell us at once if something is not as you meant it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noted for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may come in parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comes as a whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen rearing hangs on weather and bees: days and numbers are planned, not sure. We tell you when something changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving and selling bees and queens: the rules of your country and region hold, with the papers they want; ask your bee inspector before anything travels. Nothing leaves a yard under a disease hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep caged queens in the shade, aired, at 15 to 38 °C, with a drop of water, and give them to their colonies soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep ripe cells upright at 32 to 35 °C, never shake or chill them, and give them to their colonies the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work with veil and smoker at hand. Trouble breathing, faintness or a rash after a sting is an emergency: call the emergency number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season %1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) until %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Planned and happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae grafted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 of %Ln batch(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 % planned, %2 % counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) grafted in a dearth</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 flying days and %2 without flying are recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) late by weather</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) without flying behind them</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cell(s) found no nuc</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) without a queen</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln drone layer(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln delivered</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to be replaced</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Each line compares the batches of which that stage is recorded with what was planned for these same batches. What nobody wrote down is not guessed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stings: trouble breathing, faintness or a rash within minutes is an emergency. Do not work alone. Full boxes: two people. Smoker: never on dry grass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before bees or queens are moved or sold: local rules, and the bee inspector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees of the yard a nuc stands in fly back: take them from elsewhere. None from a yard under a disease hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poster, A3 (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poster, A4 (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the grafts %1 are started, of these %2 are sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the ripe cells %1 emerge, %2 of these mate in fair weather, %3 of these are judged good; weather takes its share besides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln graft day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped: the best plan found so far; nothing is proven of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is owed: there are no orders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to plan: what is owed comes from the batches that are in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at again as it stands now; nothing was planned anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proposed batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A breeder queen of the line asked for that is one on that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book has no breeder queen on that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A builder that is there and free for each step of the method, rest included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As many as builders, nucs and the most grafts a day let, and orders want.
%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nucs that are free from the cells day until the catch; the rest for orders for cells and virgins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day its queens are caught, by the book&apos;s rule and the weather to be expected. Below stands why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each order is expected to have of it.
%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan: graft %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a proposed batch to see why its queens are ready that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln more warning(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The season before and after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the book is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the ticked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trips to mating yards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nuc days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare queens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days on which is grafted, of all batches of the season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae grafted, of all batches of the season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days, yard by yard, on which cells are brought or queens caught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days that nucs are held, from the cells day to the catch, both counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens expected by the season&apos;s end, less all that is owed; below 0: too few.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3 by %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that it is whole on its day, over all possible seasons. It must be %1 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>—</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ Missing: no open order is due in this season. Enter what is promised and what you need yourself, each with its day and how sure it must be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ %1, %2 wanted in all. How sure each must be stands with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln open order(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln yard(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln breeder queen(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>✗ Missing: a builder, in which the cells are raised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ No mating nucs: it is planned as if there were enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ No breeder queen: bars are proposed without one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ This season is over. Enter the next one, then choose it under View, Season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First what is missing above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to graft, when and in what. Nothing goes into the book until you take it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season %1. Nothing is planned in it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season %1. %2 in the book, which stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;easons ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1  Orders in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2  Boxes and builders as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3  A plan out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to &amp;orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to set-&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season &amp;plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find wa&amp;ys to fix it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As p&amp;lanned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick n&amp;one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See it in the &amp;chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Drop the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take over %Ln batch(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) taken over into the book; undo takes back all in one step.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The book has changed since it was planned. Dates and chances are those of the book as it is now; plan anew for the best plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book was changed, so planning was given up: plan anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be planned: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These batches cannot be in the book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading: nothing can be taken over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Graft from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is proposed before today, outside the season or on the book&apos;s days off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First graft worth while: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last graft worth while: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At &amp;most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> grafts a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the builders take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order on one &amp;batch alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch is meant to give more than half of an order of two or more: one that fails then takes no more than that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep free:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On these weekdays nothing is grafted and no ripe cells come out. Days off are kept anyway.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the ticked batches as they stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The batches ticked below stay as they are, and the rest is planned round them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each order says itself how sure it must be: see the page of orders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading builders, nucs and orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1: as little short as can be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2: as few graft days as can be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3: few grafts, and early ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure each order is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trying way %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round %1, to be sure enough. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, no plan can do with less than %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planning ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Being looked at again ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proposed graft of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change and look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graft day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> grafts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing goes into the book yet: dates, chances and warnings are told anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafts of %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln more builder(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln more nuc(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>graft %Ln day(s) earlier</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order %1 due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More nucs alone fix nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More builders (%1) alone fix nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More builders alone fix nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grafting earlier alone fixes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A later due day of order %1 alone fixes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later due days alone fix nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways to fix it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for ways ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for ways: way %1 is tried ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ %1: no order is short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way was found: neither nucs, builders, earlier grafts nor later due days, one or two of them together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each is planned by itself and is the least that does: one less leaves an order short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials of whom the task is given to; empty: to nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of &amp;which one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For w&amp;hom (initials)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next week too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A&amp;cross the long side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Large print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet of labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First free label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines to cut along</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln page(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>There is no batch in this season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no order in this book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such labels go on no sheet: each must be 30 by 15 mm or more, and the first free one must be on the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>her nuc, for the winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nuc that she was raised in is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 for the winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything to remember of her.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the next season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is ticked goes on into the next season. What is not is retired the day before it begins; its history stays. One undo takes all of it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yards, methods, trade numbers, times of work and driving, and what your own outcomes say go on of themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Begin the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next season cannot begin so: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;Take in %Ln line(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Lists for my spreadsheet (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln task(s) of this week are given to nobody and not on this sheet.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 h %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours: by your own times for each kind of task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours: by common practice where no times of your own are set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and the driving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; ways without a set time count nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times of work and driving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From these come the hours of a day on the week&apos;s sheet and on the loading list. Until you set times of your own, those of common practice count; nobody has measured them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And for each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Driving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>ticks say about %1 min (%Ln time(s))</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Take what ticks say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks teach something only where you tick each task as you finish it: the time since the tick before, the way there and breaks with it. Ticks entered together in the evening teach nothing and are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your ticks say nothing about times yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of bees, brood frames: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each of its colonies may give %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may still give %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing taken in %2 days; %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 and brood frames: %3, in %4 days; %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A strong colony gives at most %1 of bees and %2 brood frames within %3 days, the time a worker takes from the egg (common practice). Change it among the trade numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: a queen of a season before is in it. Say among the queens in the set-up when she is caught, moved or lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move batches %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move cells of batch %1 to another yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change the grafts of batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan batches %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give a task to somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give a task of %1 to somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set times of work and driving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry over to season %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work and driving: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Season as a poster or picture ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show eac&amp;h nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nu&amp;cs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 lines %2 cannot be taken; none is until all can. First: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queen %1 stays in nuc %2. Enter first where she is now, or that she is lost: Set-up, Queens caught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nucs left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ready +%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely, once caught (+5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be: queen %1 stays in this nuc since %2. Enter first where she is now, or that she is lost: Set-up, Queens caught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, all met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 not met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each by itself: at its mast, or zoomed in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as planned before, or proposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late, or other trouble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not worked out yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not worked out: the weather is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this week is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>orders and queens are being reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set its source on the page of weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 lines are shown; all of them are taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is proven within %1: so sure with fewer was not found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer graft days do not do; grafts are proven within %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer graft days do not do, nor do fewer grafts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proven: every order is met, with %1 in all. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not possible: whatever is grafted on these days, not every order is met. This plan leaves %1 short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not every order is met: this plan leaves %1 short, and asking for more grafts brought no more. That no plan does better is not proven.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 short of %3 %4, due %5 (%6 sure, must be %7)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1 takes %2 with all that is to be done, longer than you asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day&apos;s &amp;work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> h at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of work with its ways, on days on which a proposed batch is grafted, its cells come out or its queens are caught, beside what the book has on those days. It goes by the book&apos;s times of work and driving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough for every order with %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As little short as can be with %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of an earlier season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes your own times back: those of common practice count again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the time back: nothing is counted for this way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch %1 is late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days without flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded or forecast, from the first day its virgins could fly to the day of the first look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 were every day a flying day (S47, S49, S58)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is reckoned from cells, looks and weather. Paste looks on the page Evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is reckoned from the list of virgins. Paste looks on the page Evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is reckoned from the cells of a week. Paste what nucs are stocked with on the page Nucs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: days without brood are reckoned. Choose lines and enter the work below them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: rates are reckoned from your counts and looks. Paste these on the page Evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: counts and looks are pasted on the page Evening. Enter leaves a batch out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is reckoned and not kept. Change the question above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: proposals are reckoned. Change what is asked, or the batch once it is in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: sums are reckoned. Change orders on the page Orders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: tick nucs with Space or by drawing over them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: move and change the ways one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is what the file says. Change the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This shows how the copied lines were read: paste into the field above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: this is told from batches, diary and moves. Paste into the diary in the set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: days are reckoned from the graft. Change the batch&apos;s fields.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be pasted here: dates are reckoned. Change the batch, or paste what was seen on the page Evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar or nuc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entries of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hour is kept here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No note is kept here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move its cells to the yard above, below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+1 to Alt+5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to a spreadsheet, and what is stocked back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to a spreadsheet, and ticks and initials back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to and from a spreadsheet, a column of counts too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked: bees (ml)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked: brood frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked: open brood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked: from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stockings of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it is already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Said already: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only: nothing can be pasted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is none of these: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no line of the table has these names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this stands twice in what was pasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day; 2027-05-01 is one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number that can stand here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That fewer graft days do not do is not proven.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every order is met, with %1 in all. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which orders are met is told by their chances: over all possible seasons, with the luck that a batch&apos;s cells share.
What is proven is proven of plans as they are reckoned here: batches on the days asked for, by the book&apos;s methods, and no more cells planned than there are nucs. The proof lets each cell go by itself, in the best of the possible seasons; shared luck and other weather only ask for more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste lines ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes in lines copied in a spreadsheet. Ctrl+C in a table copies it with its heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticks and initials of tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was done in season %1, which is shown now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold or unfold flying days, builders, mating nucs, queens, promises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells go out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>builder made up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queenless, no cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells are ripe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many in a thin stripe, or to promise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>queens in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order in doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weekend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no clash, while dragging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>urgent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all, not for each week: the least that is left at its end or on a later due day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print lists an&amp;d cards ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Give to ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep as PDF ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready nucs, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all yards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the plus sign: more, if caught or looked at by the day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Begin the next season ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ti&amp;mes of work and driving ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a stocking is not deleted by empty cells: delete it in the list of stockings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes back what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Not read: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you typed was read only now. Look at the lines, then take them in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken in, of the lists before neither.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twice in the table: say which, with a line for each of these rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no time in this line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an empty cell: to take your own times back, both columns of times have to be there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Taken back: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dearth: %1 cells, room for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overfull: %1 sealed, room for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overfull: %1 cells, room for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>builder free only from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y, Shift+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same: to the yard below, above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an order leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not possible: no graft on these days helps. Short: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No graft on these days was found to help. Short: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queens of these grafts are ready only after the orders are due, or no builder or nucs are free for them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do: find ways to fix it, let grafts begin earlier, or give these orders a later due day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batches %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more nucs of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wild cells: look today</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>room for %1 of %Ln cell(s) in %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>B, Shift+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lanes below, the lanes above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can promise in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now to Sunday, 90 % sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) overfull</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with too many cells</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) moved too late: a queen is out first</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) moved while fragile</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) to look through for wild cells</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) on a day off</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) in a builder that is not free</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with a named nuc that is not ready</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) waiting for a catch</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) too early to graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) too late to graft</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) without a day to mate</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) to feed in the dearth</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) short of drones</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) out of a yard held for disease</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) without larvae seen</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) with too few nucs</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) in trouble</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln batch(es) late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>own: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waiting: no day yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) to free</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>free %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) left</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %Ln cell(s) too many</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>of these in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ready less %2 cells for nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nucs to free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cells for nucs less %2 ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still too many with the likely ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press, or key %1, to scroll there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in this picture: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scroll there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cells for nucs</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 of %Ln cell(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln more order(s) met</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %Ln more order(s) not met</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>orders not met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as many as before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nucs short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left or too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln nuc(s) short</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
</TS>
