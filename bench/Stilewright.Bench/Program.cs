using Stilewright.Bench;

const string usage = """
    Measures the program on this machine. Name what to measure:
      doors    10,000 doors with all worked steps, on one core
      course   a course of 24 benches and 100 leaves, from file to all results
      changes  two people's edits of a course of 60 benches: differences, merge, sentences
      packet   the packet of 100 leaves as a PDF, and the first page of one project
      patterns curves and full-size patterns of one arched leaf, and of 100 leaves as a PDF
      teaching makers' lists with planted slips: how often they are found, and how soon; right lists
      sheets   24 different worksheets with their key as a PDF, by level, and 24 drills
      hanging  panels through the year, weights and hinges of 100 leaves; a row of six doors adjusted
      fuzz     100,000 damaged files, each read or refused with reasons
      cli      the published program, cold, from the sample to its cut list
      web      the web application: start, course page, thirty screens
      all      each of them in turn
    """;

if (args is not [var what] || what is not ("doors" or "course" or "changes" or "packet" or "patterns" or "teaching" or "sheets" or "hanging" or "fuzz" or "cli" or "web" or "all"))
{
    Console.Error.WriteLine(usage);
    return 64;
}

Console.WriteLine(Host.Describe());
var sound = true;
if (what is "doors" or "all")
    DoorsMeasurement.Run();
if (what is "course" or "all")
    CourseMeasurement.Run();
if (what is "changes" or "all")
    ChangesMeasurement.Run();
if (what is "packet" or "all")
    PacketMeasurement.Run();
if (what is "patterns" or "all")
    PatternMeasurement.Run();
if (what is "teaching" or "all")
    sound &= TeachingMeasurement.Run();
if (what is "sheets" or "all")
    WorksheetMeasurement.Run();
if (what is "hanging" or "all")
    HangingMeasurement.Run();
if (what is "fuzz" or "all")
    sound &= FuzzMeasurement.Run();
if (what is "cli" or "all")
    sound &= CommandLineMeasurement.Run();
if (what is "web" or "all")
    sound &= await WebMeasurement.RunAsync();
return sound ? 0 : 1;
