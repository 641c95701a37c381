using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Teaching.ClassView;

/// <summary>The sheet that trains what was missed.</summary>
/// <param name="Level">The worksheet level that asks for it; null where a drill in fractions trains it.</param>
/// <param name="Drill">The kind of drill where one went worst; null for all kinds.</param>
public sealed record NextSheet(Level? Level, DrillKind? Drill = null)
{
    /// <summary>The lowest level whose problems ask for what was missed and that the class has not learned yet; a drill where a figure was misread or miswritten.</summary>
    /// <param name="learned">Numbers of levels that went well of late. Where all that ask for it did, the highest of them is given.</param>
    /// <returns>Null for what no sheet trains, such as a list copied from another part.</returns>
    public static NextSheet? For(MissedCause missed, LengthUnit unit, IReadOnlySet<int>? learned = null)
    {
        switch (missed.Kind)
        {
            case SlipKind.TapeFromOne or SlipKind.FractionMisread or SlipKind.FractionDropped or SlipKind.FractionAsDecimal or SlipKind.DigitsTransposed or SlipKind.UnitExchanged or SlipKind.RoundedCoarsely:
                return new((Level?)null);
            case SlipKind.AnotherPart or SlipKind.Exchanged or SlipKind.EarlierSize or SlipKind.KerfLost:
                return null;
            case SlipKind.AnotherStage or SlipKind.TrimmedOneSide:
                return Asking(SizeKind.IntoClamps);
        }

        return missed.Subject switch
        {
            "groove" or "tenon" or "cut-back" or "stile" or "rail" => Asking(SizeKind.Rail),
            "overlay" or "reveal" or "front" or "opening" => Asking(SizeKind.Front),
            "leaf" => Asking(SizeKind.Leaf),
            "clear size" => Asking(SizeKind.Clear),
            "clearance" or "panel" or "glass" => Asking(SizeKind.Panel),
            "gap" or "lap" => Having(ProblemFeature.Pair),
            "trim" => Asking(SizeKind.IntoClamps),
            "rise" or "span" or "shoulder" => Having(ProblemFeature.Arch),
            "light" or "mid rail" or "mid stile" => Asking(SizeKind.Light),
            "rough" => Asking(SizeKind.Rough),
            "lip" or "lip clearance" => null,
            _ => Asking(SizeKind.Front),
        };

        NextSheet Asking(SizeKind kind) => First(level => level.Asked.Contains(kind));
        NextSheet Having(ProblemFeature feature) => First(level => level.Limits.Always.Contains(feature));
        NextSheet First(Func<Level, bool> trains)
        {
            var levels = Levels.For(unit).Where(trains).ToList();
            return new(levels.FirstOrDefault(level => learned?.Contains(level.Number) != true) ?? levels[^1]);
        }
    }
}
