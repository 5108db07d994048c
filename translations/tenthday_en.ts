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
        <source>%Ln need(s) a catch</source>
        <translation>
            <numerusform>%Ln needs a catch</numerusform>
            <numerusform>%Ln need a catch</numerusform>
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
</context>
</TS>
