<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
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
        <source>What is known of a model across units stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts on the shelf, their batches and what they cost stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money out and in over the year stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the bench does as a whole stands here.</source>
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
    <name>ts::LongWork</name>
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
    <name>ts::RackModel</name>
    <message>
        <source>Do not power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit %1, %2, %3</source>
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
        <source>Rack of units</source>
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
    <name>ts::StageRibbon</name>
    <message>
        <source>Move to %1</source>
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
</context>
</TS>
