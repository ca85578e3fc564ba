<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en">
<context>
    <name>ts::ComparablesCard</name>
    <message numerus="yes">
        <source>%n comparable sale(s) pasted</source>
        <translation>
            <numerusform>%n comparable sale pasted</numerusform>
            <numerusform>%n comparable sales pasted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n asking price(s) drawn as rings, never counted.</source>
        <translation>
            <numerusform>%n asking price drawn as a ring, never counted.</numerusform>
            <numerusform>%n asking prices drawn as rings, never counted.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::LedgerPlace</name>
    <message numerus="yes">
        <source>%n sum(s) without a rate left out</source>
        <translation>
            <numerusform>%n sum without a rate left out</numerusform>
            <numerusform>%n sums without a rate left out</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::LogWords</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s)</source>
        <translation>
            <numerusform>%n fastener</numerusform>
            <numerusform>%n fasteners</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::MoveBar</name>
    <message numerus="yes">
        <source>Move %n entries to</source>
        <translation>
            <numerusform>Move %n entry to</numerusform>
            <numerusform>Move %n entries to</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::NextCard</name>
    <message numerus="yes">
        <source>Before anything is measured under power, %n steps:</source>
        <translation>
            <numerusform>Before anything is measured under power, %n step:</numerusform>
            <numerusform>Before anything is measured under power, %n steps:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::OrderPane</name>
    <message numerus="yes">
        <source>%n without a price</source>
        <translation>
            <numerusform>%n without a price</numerusform>
            <numerusform>%n without a price</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::OverviewPlace</name>
    <message numerus="yes">
        <source>%n unit(s) not closed</source>
        <translation>
            <numerusform>%n unit not closed</numerusform>
            <numerusform>%n units not closed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PhotoDesk</name>
    <message numerus="yes">
        <source>Drop: %n photo(s) for %1 %2</source>
        <translation>
            <numerusform>Drop: %n photo for %1 %2</numerusform>
            <numerusform>Drop: %n photos for %1 %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PhotoIntake</name>
    <message numerus="yes">
        <source>%n photo(s) for %1</source>
        <translation>
            <numerusform>%n photo for %1</numerusform>
            <numerusform>%n photos for %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>So it went with %n more.</source>
        <translation>
            <numerusform>So it went with %n more.</numerusform>
            <numerusform>So it went with %n more.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PhotoTray</name>
    <message numerus="yes">
        <source>%n photo(s) for %1 %2?</source>
        <translation>
            <numerusform>%n photo for %1 %2?</numerusform>
            <numerusform>%n photos for %1 %2?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) came in.</source>
        <translation>
            <numerusform>%n photo came in.</numerusform>
            <numerusform>%n photos came in.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::SheetPreview</name>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::TagGiven</name>
    <message numerus="yes">
        <source>%n test point(s)</source>
        <translation>
            <numerusform>%n test point</numerusform>
            <numerusform>%n test points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) of teardown</source>
        <translation>
            <numerusform>%n step of teardown</numerusform>
            <numerusform>%n steps of teardown</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n proof(s)</source>
        <translation>
            <numerusform>%n proof</numerusform>
            <numerusform>%n proofs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::TakeInBrings</name>
    <message numerus="yes">
        <source>%n test point(s) are copied over.</source>
        <translation>
            <numerusform>%n test point is copied over.</numerusform>
            <numerusform>%n test points are copied over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::TakeInPage</name>
    <message numerus="yes">
        <source>%n photo(s) go with it</source>
        <translation>
            <numerusform>%n photo goes with it</numerusform>
            <numerusform>%n photos go with it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::TeardownPage</name>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
</context>
</TS>
