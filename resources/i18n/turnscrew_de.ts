<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name></name>
    <message>
        <source>Symptom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldWords</name>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± 95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time to fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost to fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Odds of the fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In place of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connectors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Springs, washers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Claim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Function</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the bench&apos;s money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proof</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By which rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not power</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LaneWords</name>
    <message>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proofs and papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoTile</name>
    <message>
        <source>sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ValueWords</name>
    <message>
        <source>%1 is no uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number of pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts</name>
    <message>
        <source>“%1” is no time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write it as 4 h 30 m, 4:30 or 270</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is below zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This line is not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a figure taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Symptoms, causes and checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part has no price below nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave the price empty where it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a part: belt 78x4x0.6 2.50</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%n lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%n without a price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part needs a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take the line off the list instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number of pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner says “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold as “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak runs for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet made; photos %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet yet; photos %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>do not power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mains caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands right on the limit: no meter settles that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; none of the bench&apos;s is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; %2 is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; %2 on its %3 range is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not read yet, and nothing is wanted of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not read yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read and what is wanted are of different measures: they cannot be compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what is wanted in its row, and it is held against that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tolerance is given, so there is no verdict.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over range of the meter, and so above what is wanted at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over range of the meter, and so above what is wanted at the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure the value is was not said: name the meter, or type ± behind the value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that it is really within: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%n readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter, range, 95 % uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a test point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was due for calibration on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every %1 min for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ran %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drift %1 %2 (95 %: %3 to %4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>interrupted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disc player</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cassette deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turntable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amplifier or receiver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reel recorder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loudspeaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Game console</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To sell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An owner’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>During work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it leaves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ChannelList</name>
    <message>
        <source>Channels, the places where you sell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A channel needs a name; the old one stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the channel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selling fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fee of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ClockBox</name>
    <message>
        <source>Stop clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F9 stops it while its unit is in hand; with another in hand it starts there instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F9 starts it for the unit in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock runs for %1; go there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock of %1 ran on while nobody was seen here, for %2 since %3. What counts?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it: %1, and it runs on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ClosedAsk</name>
    <message>
        <source>Sold on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price got</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selling fees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carriage you paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its rules %1 takes %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> for %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ComparablesCard</name>
    <message>
        <source>The line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sale was recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin with the price: 118.00 27 Sep working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it should fetch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sales of the same or a like unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a sale down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a sale down: 118.00 27 Sep working, measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the marked sale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sale of the same or a like unit is written down yet. With five or more this says what the unit should fetch; asking prices are kept apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparable sale: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparable sale removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That sale belongs to another unit; remove it there.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ComputerCard</name>
    <message>
        <source>This computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Those of the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That of the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside the workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder that is watched for photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::CostModel</name>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press Enter or F2 to change the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost against resale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned at purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At completion</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::EarlierSheets</name>
    <message>
        <source>Handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. %1 · edition %2 · %3 · %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open edition %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 restoration sheet %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on this computer opens %1 files; write the sheet again and take it to one that does.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::EditLine</name>
    <message>
        <source>%1: nothing yet. Enter to write it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2. Enter to change it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::EntryForm</name>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ExchangePlace</name>
    <message>
        <source>Units, a table as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparable sales, a table as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts, a table as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repair records in the Open Repair Data Standard, CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole workbook without its photos, JSON</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year&apos;s books and the cost sheets, for a spreadsheet (xlsx)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a list in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the file holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File to take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file, or drop it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A list goes in whole or not at all, and one Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a list out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came of it, by line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists in and out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a table of units or of comparable sales, repair records in the Open Repair Data Standard, or a workbook written out as JSON. “Only look” reads the file and says by line what it would do; nothing is changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists (*.csv *.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::FeeRow</name>
    <message>
        <source>the item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>item and carriage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>item, carriage and tax</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the fee is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Percent of what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the part above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the part up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds from this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds until this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the fee %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fee removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fee was not changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it needs a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>say what it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write it as 2026-11-28</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fee: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::FindField</name>
    <message>
        <source>Find anything: tag, part, reading, words…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in this workbook has “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::FirstStart</name>
    <message>
        <source>Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The workbook of a restorer: from taking a unit in to the buyer’s sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One file, wherever you put it. Everything you record goes into it, and nowhere else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New workbook…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A workbook that you made before, or one that a colleague gave you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open workbook…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented bench with units over every stage, to look around in and to spoil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::FoundModel</name>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::GridDelegate</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::HandoverPage</name>
    <message>
        <source>Write PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write web page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet warns of this first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flaws a buyer should know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another flaw: scratch on the lid, 40 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks on its use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another remark: let it warm up before recording</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out, always printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench, terms and paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who does the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Terms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4, unless chosen otherwise</source>
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
        <source>The sheet as the buyer gets it, from what was recorded; what was not done is worked out and always printed. Ctrl and the wheel come closer. Each sheet that is written or printed is numbered and kept in the workbook as it was, whatever happens to the unit afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is missing from the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the sheet as a web page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 restoration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrote %1: restoration sheet %2, edition %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed restoration sheet %1, edition %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not begin; the workbook kept the sheet, and it can be opened and printed from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer stopped at page %1; the workbook kept the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::HeldAsk</name>
    <message>
        <source>belt 78 × 4 × 0.6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>28 Nov, Friday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until (if you know)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::HelpCard</name>
    <message>
        <source>Put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this page is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every action is in the menu with its key. Ctrl+K finds anything, Ctrl+1 to Ctrl+8 are the unit&apos;s pages, Alt+Up and Alt+Down go along the rack.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::HistoryPlace</name>
    <message>
        <source>This unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything that was recorded, newest first, with who did it and when. Undo takes back the last change of the workbook; it also works after a restart. A line struck through was taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taken back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::JotBar</name>
    <message>
        <source>CN2.4 = 11.92 V want 12 V 5% · saw reel stops · did cleaned the switch 20m · F1 has more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is it so?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Enter records it all the same, Esc goes back to the line.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::JotLine</name>
    <message>
        <source>Jot a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jot what you saw, read, did, paid…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter to record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab completes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LaneChips</name>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all kinds of entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show only: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LeavingBar</name>
    <message>
        <source>What comes next?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its clock runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; its clock runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note it and close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the clock and close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note it and stop the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is put down, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock of %1 runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop it and close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it run and close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LedgerModel</name>
    <message>
        <source>purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>consumable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>packing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>selling fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refund</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deposit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LedgerPlace</name>
    <message>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow: a tag, a word…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money out and in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter on a line opens its unit. No tax advice; rates and rules are yours to set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every sum that went out or came in, on units and on the bench as a whole. Sums are jotted in the Log of their unit: paid carriage 8.40, got sale 120. The totals are in the bench&apos;s currency; a sum in another one counts where its worth was entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out %1 · in %2 · left %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n sum(s) without a rate left out</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::LeftOffBox</name>
    <message>
        <source>Where you were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where were you?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes next?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else lies loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing lies loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it must not be powered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be powered, as far as is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loose: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safe to power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not power: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where you left off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left off %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left off %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LikeUnits</name>
    <message>
        <source>Alt+L  like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy from %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies its name, maker, model, category, mains, protection class and test points</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LimitCard</name>
    <message>
        <source>No test point is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, wanted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LogChart</name>
    <message>
        <source>Hours and money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the chart of hours and money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fold the chart of hours and money away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of hours and money over time</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LogPage</name>
    <message>
        <source>Choose entries of the log first; they can then be moved to another unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look at the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit	Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Move to another unit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take out	Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything that happened to this unit, day by day. What you type goes into the line at the foot; under it stands what will be recorded, and Enter records it. Tab completes test points, parts and causes of this unit, Up brings back what you recorded before.
Readings: CN2.4 = 11.92 V want 12 V 5% · insulation = 200 MΩ want &gt;= 2 MΩ with insulation tester · add found, during or after for the phase.
Faults: saw …, cleared …, think … 40%, ruled out …, was …, check … 5m normal.
Work: did … 20m. Parts: need … 2.50, ordered …, here …, fitted …. Money: paid … 8.40, got … 5.00.
Taking apart: off lid 5 screws M3x8 tray A1, back lid. Proofs: proved …, failed …. Where you are: next …, do not power …, safe to power, waiting … until 28 Nov. Anything else is a note.
In the list: Enter edits an entry in its place, Delete takes it out, Ctrl+M moves the chosen ones to another unit; Shift and the arrow keys choose several. Ctrl+Z takes anything back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LogView</name>
    <message>
        <source>Log of the unit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::LogWords</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Symptom cleared: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Symptom: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>claim “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>function: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earlier work: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paid %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Got %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible cause: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause confirmed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ruled out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check came out %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check to do: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak ended: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak begun: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>interrupted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in place of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>kept in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proof %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>do not power: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock ran until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to come %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>got %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spent %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::MainWindow</name>
    <message>
        <source>Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workbooks (*.turnscrew)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workbooks (*.turnscrew);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo workbook was not made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making a backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A backup was made and checked: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::Menus</name>
    <message>
        <source>&amp;Workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the &amp;demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists &amp;in and out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a &amp;backup now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether it is &amp;sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking through the workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep it and open the newest backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take in a unit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Narrow the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ext tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start or stop the &amp;clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cost against resale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restoration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours of the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;arger text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large type for the &amp;bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual text size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What is this page for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Turnscrew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;b&gt;Turnscrew %1&lt;/b&gt;&lt;p&gt;The workbook of a restorer of used electronics.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later. It comes without any warranty. What it says about safety reminds you; your local codes and licensed practice come first.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Watched folder…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ModelNotesPlace</name>
    <message>
        <source>Models</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the notes of this model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is known of a model across units belongs here: how to tell its versions, its usual faults and how they were cured, what to adjust and where, where the service papers are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variants, and how to tell them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mains versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual faults and what cured them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adjustments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts, with position and rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking it apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Service papers and other sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ideas to come back to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is found out once is written down here, so that the next unit of the model is quicker. Cautions written here stand on every unit of the model and on its sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No maker yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model notes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model notes removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::MoneyPage</name>
    <message>
        <source>Cost against resale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the resale price goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was planned at purchase, what it cost to date, and how it will stand when the unit is finished and sold. Enter or F2 on a planned figure changes the plan. Sales of the same or a like unit are written down at the right; the newest and the likest count most. Money out and in is jotted in the Log: paid carriage 8.40.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resale: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::MoveBar</name>
    <message>
        <source>Unit to move the entries to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave them here</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Move %n entries to</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::NoteLines</name>
    <message>
        <source>Flaw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 removed: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::NoticeBar</name>
    <message>
        <source>What went wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put away</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::OfferedAsk</name>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price asked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::OverviewPlace</name>
    <message>
        <source>Money tied up, by stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units, money and hours by stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where units and money stand today. Closed units are left out: their money is no longer tied up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) not closed</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 tied up</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PageTabs</name>
    <message>
        <source>Pages of the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 open</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PartsPage</name>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On to the next state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back one state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as in the log: 2 x C214 47 µF 63 V 0.35</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this unit needs, what is ordered, what is here and what is fitted. Type in the last row to add a part, in the words of the log: 2 x C214 47 µF 63 V 0.35. Ctrl+Right moves a part to its next state, Ctrl+Left back; on the state itself n, o, h and f set it. Delete takes a line off the list, and Ctrl+Z brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part is needed so far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark as ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark as here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark as fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part %1: no %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part %1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part needed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part taken off the list: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PartsStorePlace</name>
    <message>
        <source>Narrow: belt, 63 V, drawer C3…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the parts store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a part down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a part down: 10 × capacitor 100 µF 63 V at 0.12 in drawer C3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies on the shelf, with what it cost and where it is. A part that falls below what you keep at least is marked. What a unit needs stands on its own page, Parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below what you keep at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into the parts store: %1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PhotoCanvas</name>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PhotoDesk</name>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.gif *.bmp);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is in hand; choose the tag that the photos belong to first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder that a telephone puts its photos into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos that come into %1 are offered for the unit in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Drop: %n photo(s) for %1 %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a tag first, then drop its photos</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PhotoIntake</name>
    <message numerus="yes">
        <source>%n photo(s) for %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>pasted picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not taken again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has this photo already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>So it went with %n more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PhotoListModel</name>
    <message>
        <source>on the sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PhotoSide</name>
    <message>
        <source>Caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the restoration sheet  ·  S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the restoration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the photo to another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove  ·  Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption  ·  C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Belongs to another unit  ·  M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo caption: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo onto the sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo off the sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::PhotoTray</name>
    <message>
        <source>Yes  ·  F8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the photos to the unit in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the photos to another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stay in the folder and are not offered again</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) for %1 %2?</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) came in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::PhotosPlace</name>
    <message>
        <source>Add photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos of this unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photos of this unit yet. Drop them anywhere on the window, paste a copied one, choose files, or have a folder watched that your telephone puts them into.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right go through the photos. The wheel, + and − zoom; 0 shows the whole photo, 1 its own pixels; drag to move it. F, D and L say whether it shows the unit as found, during work or as it leaves; S puts it on the sheet; C goes to its caption, M to the field that moves it to another unit; Del removes it. Undo takes each of these back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos of %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole photo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ProgressLine</name>
    <message>
        <source>How far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::QuestionLine</name>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::RackModel</name>
    <message>
        <source>%1, %2 folded away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::RackPane</name>
    <message>
        <source>Narrow this list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Moved last on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Waiting longest on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Due first on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By &amp;tag, newest on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order within a stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit has “%1” in its tag, its name or an open symptom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack is empty. Each unit that you take in hangs here as a tag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::RackView</name>
    <message>
        <source>Rack of units</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ReadingsPage</name>
    <message>
        <source>Test point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test point needs a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete takes it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point %1 is now %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point %1: nothing is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point %1: wanted %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading stands there to be set right: go to one under “As found” or “After work”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading taken out: %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point taken out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point taken out with its readings: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test point moved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter of what is typed next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is typed into the table is taken with this meter, unless the value is followed by “with” and another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Taken with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a test point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out the reading or the test point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the last reading right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out the test point with its readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is measured on this unit. Stand on “As found” or “After work” and type a value: Enter records it and goes on in the row below. A bare number has the unit of what is wanted; OL, &lt;, &gt; and about are kept; ± and an uncertainty, “with” and a meter may follow. A value typed where there is one is a reading of its own, and the earlier ones are kept. Ctrl+E sets the last one right, Delete takes it out. Below, the row at hand is held against what is wanted, with the chance that it is really within.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of spec (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet read (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not read after work (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no meter named</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::ResalePicture</name>
    <message>
        <source>middle %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>break-even %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it should fetch</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::RunningClock</name>
    <message>
        <source>The clock runs for a unit: take one in hand first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::SaidLine</name>
    <message>
        <source>What was done last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::SettingsPlace</name>
    <message>
        <source>On papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harbour Lane Audio Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who does the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R. M.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Terms, printed at the foot of the restoration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4, unless chosen otherwise</source>
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
        <source>The bench’s own mains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>230 V 50 Hz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country, three letters; goes into open repair data</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours a week at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency, three letters; stays once money is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What an hour of yours is worth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the bench costs an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel that break-even is worked out for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a unit should leave beside your hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax on the margin, percent; leave empty if you sell outside such a scheme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sales that come back, percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days from offered to sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rates and rules are yours to set; this is no tax advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings of the workbook go with it wherever it goes, and Undo takes them back. What stands under “This computer” stays here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::SharesBar</name>
    <message>
        <source>Where the resale price goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::SheetPhotos</name>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos for the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photos of this unit yet; drop or paste them anywhere on the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None is chosen, so the first as found and the last as it leaves go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most eight go on, from arrival to leaving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo off the sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo onto the sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo moved on the sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::SheetPreview</name>
    <message>
        <source>The sheet as it will be</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::SoakCard</name>
    <message>
        <source>Which soak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of the soak %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::StagePanel</name>
    <message>
        <source>It goes there all the same, because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the proofs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at what is off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is put right first: a ready unit can be plugged in by anybody.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::StageRibbon</name>
    <message>
        <source>Move to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for %1, was due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for %1 until %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On %1; say for how much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say where and for how much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 asked on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 asked; say where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say how it ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold for %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold for %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::StandLine</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::StandingPane</name>
    <message>
        <source>As it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Symptoms open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings out of spec</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts awaited</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proofs passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likeliest cause left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If finished and sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Per hour of yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-even price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, was due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1, %2 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it was sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss, your hours aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profit, your hours aside</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::Strip</name>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists in and out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::TagGiven</name>
    <message>
        <source>Taken in. Its tag is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it  ·  Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in another  ·  Ctrl+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tie tag %1 to it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::TakeInBrings</name>
    <message>
        <source>Before it is plugged in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be proved before handover</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n test point(s) are copied over.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ts::TakeInFields</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as you call it: Pellworth KD-7 cassette deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mains, as on the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>230 V 50 Hz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner’s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the seller or owner says is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned resale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 h 30 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Category</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest can wait; Tab goes through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Protection class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::TakeInPage</name>
    <message>
        <source>A name and a category are enough. Enter takes it in; Esc leaves, and what is typed waits here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or drop or paste them anywhere on the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) go with it</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The unit has no name; call it what it is: maker, model, what kind of thing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what kind of thing it is; it brings the cautions and the proofs.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::UnitField</name>
    <message>
        <source>tag or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is called “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” names several units; choose one of them, or type its tag.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::UnitHead</name>
    <message>
        <source>serial %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owner says “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold as “%1”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::UnitPane</name>
    <message>
        <source>Log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault-finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is in hand. Choose a tag on the left, or take in the first one: a name and a category are enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::Workplace</name>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::Workspace</name>
    <message>
        <source>Nothing was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this window cannot open the workbook a second time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else is being done; wait for it, or stop it first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::shown</name>
    <message>
        <source>%1 h %2 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>during work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inbound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>returned to owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken for parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scrapped</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ts::typed</name>
    <message>
        <source>%1 is no %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type a whole number from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type a percentage from 0 to 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type it like 28 Nov, Friday or 2026-11-28</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type minutes, like 20, 20m or 1h20</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruled out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>abnormal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unclear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>during work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lubricate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adjust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>renew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>align</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>investigate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>consumable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>packing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carriage out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>selling fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refund</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deposit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>function</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrical safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>restoration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tag label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>putting-back sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year&apos;s ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flaw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>returned to owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken for parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scrapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inbound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
