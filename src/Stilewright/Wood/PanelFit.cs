using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>How a solid panel fits its grooves across its grain from making through the year.</summary>
/// <param name="IsPinned">Held in the middle, so that both edges share its movement; else one edge may sit on the bottom of its groove.</param>
/// <param name="Clear">From sight line to sight line, across the grain.</param>
/// <param name="Depth">Of each groove.</param>
/// <param name="Width">Of the panel at making.</param>
/// <param name="Clearance">Play in each groove at making.</param>
/// <param name="WidthAtWettest">Across the grain.</param>
/// <param name="WidthAtDriest">Across the grain.</param>
/// <param name="PlayAtWettest">Left in each groove where it is pinned, in both together where it is free; below zero it presses.</param>
/// <param name="EngagementAtDriest">The least that an edge stands in its groove then; below zero it comes out.</param>
/// <param name="FlatNeeded">How much of a raised panel's edge enters its groove at most, which its tongue must be flat for.</param>
/// <remarks>
/// A width w at making is w (1 + swelling) at the wettest and w (1 − shrinking) at the driest. Frame and groove do not move along their own grain;
/// a panel under an arch is taken by its straight edges, since its flanks have a rule of their own. Along the grain movement is left out.
/// </remarks>
public sealed record PanelFit(
    Part Panel, PanelWood Wood, bool IsPinned, Worked Clear, Worked Depth, Worked Width, Worked Clearance, Worked WidthAtWettest, Worked WidthAtDriest,
    Worked PlayAtWettest, Worked EngagementAtDriest, Worked LeastAir, Worked LeastEngagement, Worked? TongueFlat, Worked? FlatNeeded)
{
    private const int MostSteps = 8;

    private StandardInForce? standard;

    /// <summary>Less than the least air is left at the wettest.</summary>
    public bool Bottoms => PlayAtWettest.Amount < (IsPinned ? LeastAir.Amount : 2 * LeastAir.Amount);

    /// <summary>It stands in its groove by less than the least engagement at the driest.</summary>
    public bool IsLoose => EngagementAtDriest.Amount < LeastEngagement.Amount;

    /// <summary>The raise begins before the groove ends, so that the panel wedges its groove open.</summary>
    public bool Wedges => TongueFlat is not null && TongueFlat.Amount < FlatNeeded!.Amount;

    public bool Fits => !Bottoms && !IsLoose && !Wedges;

    /// <summary>The widths at making that work; by how much none does, and what would help.</summary>
    public PanelRange Range { get => field ??= FindRange(); private init; }

    /// <summary>Every solid panel of a leaf whose wood is known, in the order of its parts.</summary>
    public static IReadOnlyList<PanelFit> Of(SizedLeaf leaf)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        return [.. leaf.Parts.Select(part => Of(part, leaf.Standard)).OfType<PanelFit>()];
    }

    /// <summary>Null for a part that is no solid panel, or whose wood, or its movement, is not known.</summary>
    public static PanelFit? Of(Part panel, StandardInForce standard)
    {
        ArgumentNullException.ThrowIfNull(panel);
        return panel.Groove is not { } groove || PanelWood.Of(standard, panel.Material) is not { } wood ? null
            : Of(panel, wood, groove, panel.Finished.Width, standard, standard.Word(Settings.PanelHeld) != Settings.Free);
    }

    /// <summary>The same panel cut to another width across the grain.</summary>
    public PanelFit AtWidth(Worked width) => Of(Panel, Wood, Panel.Groove!, width, standard!, IsPinned);

    /// <summary>The same panel held otherwise.</summary>
    public PanelFit Held(bool isPinned) => Of(Panel, Wood, Panel.Groove!, Width, standard!, isPinned);

    /// <summary>The panel in the middle of every month.</summary>
    /// <remarks><see cref="ServiceMoisture.Assumption"/> says how the months were found.</remarks>
    public IReadOnlyList<MonthPlay> PlayOverYear() =>
    [
        .. Wood.Moisture.Months.Select((moisture, index) =>
        {
            var then = new Given("moisture/month", "moisture of the month", Dimension.Moisture, moisture, new(OriginKind.Shape, "months"));
            var width = Length.FromInches(Width.Amount + Movement.Of(Width, Wood.Species, Wood.Rings, Wood.Moisture.Making, then).Amount);
            var play = Clear.Length + (Depth.Length * 2) - width;
            return new MonthPlay(index + 1, moisture, width, IsPinned ? play / 2 : play, IsPinned ? (width - Clear.Length) / 2 : width - Clear.Length - Depth.Length);
        }),
    ];

    private static PanelFit Of(Part panel, PanelWood wood, PanelGroove groove, Worked width, StandardInForce standard, bool isPinned)
    {
        var segment = panel.Path[(panel.Path.LastIndexOf('/') + 1)..];
        var (clear, depth) = (groove.Clear, groove.Depth);
        var room = clear + (2 * depth);
        var wide = (width * (new Number(1) + wood.Swelling)).As("width at the wettest", $"leaf/{segment}.wettest");
        var narrow = (width * (new Number(1) - wood.Shrinking)).As("width at the driest", $"leaf/{segment}.driest");
        var play = isPinned ? ((room - wide) / 2).As("play in each groove at the wettest", $"leaf/{segment}.play")
            : (room - wide).As("all the play at the wettest", $"leaf/{segment}.play");
        var engagement = (isPinned ? (narrow - clear) / 2 : narrow - clear - depth).As("engagement at the driest", $"leaf/{segment}.engagement");
        return new(panel, wood, isPinned, clear, depth, width, ((room - width) / 2).As("clearance at making", $"leaf/{segment}.clearance"), wide, narrow,
            play, engagement, standard[Settings.PanelAir], standard[Settings.PanelEngagement], groove.TongueFlat,
            groove.TongueFlat is null ? null : !isPinned || play.Amount.IsNegative ? depth : (depth - play).As("depth of the edge in its groove at the wettest", $"leaf/{segment}.tongue"))
        { standard = standard };
    }

    private PanelRange FindRange()
    {
        var (least, greatest) = Ends(Clear, Depth, Wood, IsPinned, standard!);
        if (least.Amount <= greatest.Amount)
            return new PanelRange.Some(least, greatest);
        return new PanelRange.None(least, greatest, (least - greatest).As("short by", "wood/range.short"), [.. Remedies()]);
    }

    /// <summary>The narrowest and the widest width at making, on the cutting step; none works where the first is the greater.</summary>
    internal static (Worked Least, Worked Greatest) Ends(Worked clear, Worked depth, PanelWood wood, bool isPinned, StandardInForce standard)
    {
        var (air, engagement, step) = (standard[Settings.PanelAir], standard[Settings.PanelEngagement], standard[Settings.Step]);
        var least = ((isPinned ? clear + (2 * engagement) : clear + depth + engagement) / (new Number(1) - wood.Shrinking)).On(step, StepDirection.Up);
        return (least.As("narrowest that stays in its grooves", "wood/range.least"), Greatest(clear, depth, wood, standard).As("widest that keeps its air", "wood/range.greatest"));
    }

    /// <summary>The widest width at making that keeps its air at the wettest, on the cutting step.</summary>
    internal static Worked Greatest(Worked clear, Worked depth, PanelWood wood, StandardInForce standard) =>
        ((clear + (2 * depth) - (2 * standard[Settings.PanelAir])) / (new Number(1) + wood.Swelling)).On(standard[Settings.Step], StepDirection.Down);

    private IEnumerable<PanelRemedy> Remedies()
    {
        if (!IsPinned && Works(Clear, Depth, Wood, true))
            yield return new(PanelRemedyKind.PinIt, null, $"pin it in the middle of its width, top and bottom");
        if (Deeper() is { } more)
            yield return new(PanelRemedyKind.DeeperGroove, more, $"cut the grooves {more} deeper");
        if (Wood.Rings != RingOrientation.Quarter && Works(Clear, Depth, PanelWood.Of(standard!, Panel.Material, RingOrientation.Quarter)!, IsPinned))
            yield return new(PanelRemedyKind.Quartersawn, null, $"use quartersawn stock");
        var half = (Clear - Panel.Groove!.MidStile) / 2;
        if (half.Amount >= standard![Settings.LeastLight].Amount && Works(half, Depth, Wood, IsPinned))
            yield return new(PanelRemedyKind.TwoLights, null, $"make two lights of it, {half.Length.OnStep(standard[Settings.Step].Length, StepDirection.Down)} clear each");
        yield return new(PanelRemedyKind.Sheet, null, $"use sheet, which hardly moves");
    }

    private bool Works(Worked clear, Worked depth, PanelWood wood, bool isPinned)
    {
        var (least, greatest) = Ends(clear, depth, wood, isPinned, standard!);
        return least.Amount <= greatest.Amount;
    }

    // What the grooves lack by the formulas, then on until both ends lie on the cutting step.
    private Length? Deeper()
    {
        var step = standard![Settings.Step].Length;
        var spread = (1 + Wood.Swelling.Amount) / (1 - Wood.Shrinking.Amount);
        var (clear, depth, air, engagement) = (Clear.Amount, Depth.Amount, LeastAir.Amount, LeastEngagement.Amount);
        Fraction lacking;
        if (IsPinned)
            lacking = (((clear + (2 * engagement)) * spread) - clear - (2 * depth) + (2 * air)) / 2;
        else if (spread < 2)
            lacking = (((clear + depth + engagement) * spread) - clear - (2 * depth) + (2 * air)) / (2 - spread);
        else
            return null;
        var more = Length.Greatest(step, Length.FromInches(lacking).OnStep(step, StepDirection.Up));
        for (var tried = 0; tried < MostSteps; tried++, more += step)
        {
            if (Works(Clear, new Given("groove/deeper", "deeper groove", Depth.Length + more, Origin.Typed), Wood, IsPinned))
                return more;
        }

        return null;
    }
}
