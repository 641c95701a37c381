using Fractions;
using Stilewright.Curves;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

public enum PartKind
{
    Stile,
    Rail,
    MidRail,
    MidStile,
    Panel,
    Glass,
    Slab,
}

/// <summary>Width across the grain and length along it; of glass, width and height.</summary>
public sealed record PartSize(Worked Width, Worked Length);

/// <summary>The thicknesses a part goes through.</summary>
/// <param name="Rough">As bought; null for sheet and glass.</param>
/// <param name="Planed">As it goes over the cutters.</param>
/// <param name="Final">After sanding.</param>
public sealed record ThicknessStages(Worked? Rough, Worked Planed, Worked Final);

public enum EdgeWork
{
    /// <summary>Moulded and grooved along the inner edge.</summary>
    StickInnerEdge,

    /// <summary>Moulded and grooved along both edges.</summary>
    StickBothEdges,

    CopeBothEnds,
    TenonBothEnds,
    DowelBothEnds,
    LooseTenonBothEnds,
    MitreBothEnds,

    /// <summary>Sawn to the arch after coping.</summary>
    SawArch,

    RaiseFourEdges,
    MortiseForRails,
    BoreForDowels,
    MortiseForLooseTenons,
    JoinStaves,
}

/// <summary>The arch of a rail's inner edge, by its numbers; <see cref="LeafCurves"/> draws it.</summary>
/// <param name="Span">Sight line to sight line; of several arches, that of the narrowest light, so that one pattern serves them all.</param>
/// <param name="Rise">From the spring line to where the rail is narrowest, so that the blank is narrowest width and rise.</param>
/// <param name="Repeats">How many lights have such an arch of their own.</param>
public sealed record ArchShape(ArchFamily Family, Worked Span, Worked Rise, Worked? Shoulder, int Repeats)
{
    /// <summary>Radius of the reverse arcs over the crown's, in a family that has both.</summary>
    public Fraction ReverseToCrown { get; init; } = Fraction.One;

    /// <summary>The curve of <see cref="ArchFamily.Drawn"/>, from the left sight line and the spring line.</summary>
    public Chain? Drawn { get; init; }

    /// <summary>Which part of an arch across a pair lies in this leaf; null where the leaf has the whole arch. Span and shoulder are
    /// those of the whole curve, the rise that of the part.</summary>
    public PairPart? OfPair { get; init; }

    /// <summary>How much of the span lies in its leaf.</summary>
    public Worked SpanInLeaf => OfPair?.Width ?? Span;

    /// <summary>Of the whole curve, above the spring line.</summary>
    public Worked WholeRise => OfPair?.Rise ?? Rise;
}

/// <summary>The part of an arch across a pair that lies in one leaf, from the hinge stile's sight line to the meeting stile's.</summary>
/// <param name="Rise">Of the whole curve.</param>
/// <param name="Width">Between the sight lines of the leaf.</param>
/// <param name="Meeting">The side of the leaf where it meets the other.</param>
/// <param name="IsMirrored">Whether the other leaf's part is its mirror image, so that one hard pattern, turned over, serves both.</param>
public sealed record PairPart(Worked Rise, Worked Width, Side Meeting, bool IsMirrored);

/// <summary>What a solid panel has round it across its grain: the light, and the grooves beyond its sight lines.</summary>
/// <param name="Clear">From sight line to sight line; of an arched light to the crown.</param>
/// <param name="Depth">Of each groove.</param>
/// <param name="TongueFlat">Flat tongue round a raised panel, from its edge; null where no cutter raises it.</param>
/// <param name="MidStile">What a mid stile of this design takes, were the light divided across the grain.</param>
public sealed record PanelGroove(Worked Clear, Worked Depth, Worked? TongueFlat, Worked MidStile);

/// <summary>One piece of wood, sheet or glass of a leaf.</summary>
/// <param name="Path">Opening, leaf and part, such as <c>hall-lower/leaf.left/rail.top</c>.</param>
/// <param name="Label">What is chalked on it, such as <c>7·2L·TR</c>.</param>
/// <param name="Name">What people call it, such as "top rail, arched".</param>
/// <param name="Material">Species, sheet or glass.</param>
/// <param name="Stock">The stock's name; empty for glass.</param>
/// <param name="Finished">Size in the finished leaf.</param>
/// <param name="GlueUp">Size into the clamps, with the trim allowance.</param>
/// <param name="Rough">Size of the rough blank; null for sheet and glass, which are cut to size.</param>
/// <param name="Thickness">Null for glass.</param>
/// <param name="Grain">Direction of the grain in the hung leaf; null for glass.</param>
/// <param name="FaceDown">Whether its face lies on the table over the cutters; null where no cutter runs.</param>
/// <param name="Hand">Left or right where the two would not be alike; null where either way round will do.</param>
/// <param name="Shoulder">Shoulder to shoulder, for a part with tongues or tenons.</param>
/// <param name="Outline">The whole part on the finished leaf, tongues and tenons included, from the leaf's bottom left corner.</param>
/// <param name="Visible">Its visible face on the finished leaf; an arched rail is taken at its narrowest.</param>
public sealed record Part(
    string Path, string Label, PartKind Kind, string Name, string Material, string Stock,
    PartSize Finished, PartSize GlueUp, PartSize? Rough, ThicknessStages? Thickness,
    GrainDirection? Grain, bool? FaceDown, IReadOnlyList<EdgeWork> Work, Side? Hand, ArchShape? Arch,
    Worked? Shoulder, Rectangle Outline, IReadOnlyList<Point> Visible)
{
    /// <summary>The arch over a panel or pane, which gives its edge the same curve; null under a straight edge.</summary>
    public ArchShape? TopArch { get; init; }

    /// <summary>The arch under a panel or pane; null over a straight edge.</summary>
    public ArchShape? BottomArch { get; init; }

    /// <summary>The groove that a solid panel stands in, across its grain; null for any other part.</summary>
    public PanelGroove? Groove { get; init; }

    /// <summary>The upright rectangle round the visible face.</summary>
    public Rectangle VisibleBounds
    {
        get
        {
            var (left, bottom) = (Visible[0].X, Visible[0].Y);
            var (right, top) = (left, bottom);
            foreach (var (x, y) in Visible)
            {
                (left, right) = (Length.Least(left, x), Length.Greatest(right, x));
                (bottom, top) = (Length.Least(bottom, y), Length.Greatest(top, y));
            }

            return new(left, bottom, right - left, top - bottom);
        }
    }

    /// <summary>Every worked quantity of the part, in the order in which its sheet tells them.</summary>
    public IReadOnlyList<Worked> Quantities =>
    [
        Finished.Width, Finished.Length, GlueUp.Width, GlueUp.Length,
        .. Rough is null ? Array.Empty<Worked>() : [Rough.Width, Rough.Length],
        .. Thickness is null ? Array.Empty<Worked>() : [.. new[] { Thickness.Rough, Thickness.Planed, Thickness.Final }.OfType<Worked>()],
    ];
}
