using Fractions;
using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>The weight, the centre of gravity and the face of a leaf, at 12 % moisture content, without hardware and finish.</summary>
/// <param name="Parts">Every part with its own weight.</param>
/// <param name="Weight">Of all parts whose density is known, in pounds; null where none is.</param>
/// <param name="Unknown">Materials without a density, whose parts are left out of the weight; empty where it is whole.</param>
/// <param name="Centre">Centre of gravity of what has a weight, in from the leaf's bottom left corner; null without a weight.</param>
/// <param name="Area">Of one face of the whole leaf, in².</param>
/// <remarks>
/// Sections: members lose their grooves and gain the tongues of their joints; a moulding whose profile is not known is taken as a straight
/// bevel from the sight line to the groove's near wall, and a raise as a flat tongue of the groove's width with a straight bevel to the field,
/// cut from the face alone. A tenon fills its mortise. Curved parts are taken by the area under their curve.
/// </remarks>
public sealed record LeafWeight(
    IReadOnlyList<PartWeight> Parts, Worked? Weight, IReadOnlyList<string> Unknown, (double X, double Y)? Centre, Worked Area)
{
    /// <summary>Curves are followed to this, in, where a centre is looked for.</summary>
    private const double FlatteningInches = 0.01;

    /// <summary>A volume is taken from its shape to this part of a cubic inch.</summary>
    private const int Millionths = 1_000_000;

    /// <summary>Volumes are put on this, in³, when they enter a worked quantity.</summary>
    private static readonly Given VolumeStep = new("volume/step", "thousandth of a cubic inch", Dimension.Volume, new Fraction(1, 1000), Origin.Datum);

    /// <summary>Whether every part has a weight.</summary>
    public bool IsWhole => Weight is not null && Unknown.Count == 0;

    /// <summary>The weight in pounds; zero where nothing is known.</summary>
    public Fraction Pounds => Weight?.Amount ?? Fraction.Zero;

    /// <exception cref="ArgumentException">An arch of the leaf cannot be drawn; a breakdown withholds the parts of such a leaf.</exception>
    public static LeafWeight Of(SizedLeaf leaf)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        var cutters = leaf.Design?.Cutters is { } id ? leaf.Standard.Standard.Cutter(id) : null;
        var curves = LeafCurves.Of(leaf, cutters);
        List<PartWeight> parts = [];
        List<string> unknown = [];
        foreach (var part in leaf.Parts)
        {
            var face = FaceOf(part, curves);
            var thickness = part.Thickness?.Final ?? leaf.Standard[Settings.GlassThickness];
            var cubicInches = Volume(part, face, CurveLength.Inches(thickness.Length), leaf.Design, cutters);
            var volume = new Stepped(
                new Given($"volume/{part.Path}", $"volume of the {part.Name}", Dimension.Volume, new Fraction((System.Numerics.BigInteger)Math.Round(cubicInches * Millionths), Millionths), new(OriginKind.Shape, part.Path)),
                VolumeStep, StepDirection.Nearest).As($"volume of the {part.Name}", $"leaf/{SegmentOf(part)}.volume");
            var density = DensityOf(part, leaf.Standard);
            if (density is null && !unknown.Contains(part.Material))
                unknown.Add(part.Material);
            parts.Add(new(part, volume, density is null ? null : (volume * density).As($"weight of the {part.Name}", $"leaf/{SegmentOf(part)}.weight"), face.Centre));
        }

        List<Worked> weights = [.. parts.Select(part => part.Weight).OfType<Worked>()];
        var weight = weights.Count == 0 ? null : Worked.Total(weights).As("weight of the leaf", "leaf/weight");
        return new(parts, weight, unknown, CentreOf(parts), (leaf.Width * leaf.Height).As("face of the leaf", "leaf/area"));
    }

    private static string SegmentOf(Part part) => part.Path[(part.Path.LastIndexOf('/') + 1)..];

    private static (double X, double Y)? CentreOf(List<PartWeight> parts)
    {
        var (x, y, total) = (0.0, 0.0, 0.0);
        foreach (var part in parts)
        {
            if (part.Weight is not { } weight)
                continue;
            var pounds = weight.Amount.ToDouble();
            (x, y, total) = (x + (part.Centre.X * pounds), y + (part.Centre.Y * pounds), total + pounds);
        }

        return total > 0 ? (x / total, y / total) : null;
    }

    private static Worked? DensityOf(Part part, StandardInForce standard) => part switch
    {
        { Kind: PartKind.Glass } => Density.Glass,
        // Sheet has no rough size.
        { Rough: null } => Density.Sheet($"{part.Material} {part.Stock}"),
        _ => SpeciesTable.Find(standard, part.Material) is SpeciesMatch.Found(var found) ? Density.Solid(found) : null,
    };

    // What a part shows, or of a filling its whole edge.
    private static Face FaceOf(Part part, LeafCurves curves)
    {
        if (curves.Of(part) is { } rail)
            return Face.Of(rail.Seen) with { InnerEdge = rail.Sight.Length };
        if (curves.Filling(part)?.Edge is { } edge)
            return Face.Of(edge);
        if (part.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab)
            return Face.Of([.. part.Outline.Corners]);
        return part.Kind == PartKind.MidStile ? Face.Of([.. curves.SeenOf(part).Corners]) : Face.Of(part.Visible);
    }

    private static double Volume(Part part, Face face, double thickness, DoorDesign? design, CutterSet? cutters)
    {
        var whole = face.Area * thickness;
        if (cutters is null || part.Kind is PartKind.Glass or PartKind.Slab)
            return whole;
        var (depth, width) = (CurveLength.Inches(cutters.GrooveDepth.Value), CurveLength.Inches(cutters.GrooveWidth.Value));
        if (part.Kind == PartKind.Panel)
            return whole - (part.Work.Contains(EdgeWork.RaiseFourEdges) && cutters.RaiseWidth is { } raise ? Raised(face, thickness, width, CurveLength.Inches(raise.Value), CurveLength.Inches(cutters.TongueFlat?.Value ?? cutters.GrooveDepth.Value)) : 0);

        var profile = (depth * width) + (CurveLength.Inches(cutters.StickingWidth.Value) * CurveLength.Inches(cutters.GrooveFromFace.Value) / 2);
        // A stile is moulded over its whole length, a rail between its shoulders.
        var moulded = part switch
        {
            { Kind: PartKind.Stile or PartKind.MidStile } => CurveLength.Inches(part.VisibleBounds.Height),
            { Arch: not null } => face.InnerEdge,
            _ => CurveLength.Inches(part.VisibleBounds.Width),
        };
        var edges = part.Work.Contains(EdgeWork.StickBothEdges) ? 2 : 1;
        // Tongues fill the grooves of the members beside them; dowels and mitres leave them as they are.
        var into = part.Work.Contains(EdgeWork.CopeBothEnds) ? CurveLength.Inches(cutters.CopeLength.Value)
            : part.Work.Contains(EdgeWork.TenonBothEnds) && design is not null ? depth : 0;
        return whole - (profile * moulded * edges) + (2 * into * width * CurveLength.Inches(part.Finished.Width.Length));
    }

    // What raising takes off: full depth over the flat tongue, then evenly less to the field. Rings of the panel's edge, mitred at four corners.
    private static double Raised(Face face, double thickness, double tongue, double raise, double flat)
    {
        var deep = thickness - tongue;
        if (deep <= 0 || raise <= 0)
            return 0;
        flat = Math.Min(flat, raise);
        var slope = raise - flat;
        return deep * (Ring(flat) + (slope <= 0 ? 0 : ((Ring(raise) - Ring(flat)) * raise / slope) - (Moment(flat, raise) / slope)));

        // Area of the ring from the edge in to s, and the area's moment about the edge: the ring's length is P − 8 s.
        double Ring(double s) => (face.Perimeter * s) - (4 * s * s);
        double Moment(double from, double to) => (face.Perimeter * ((to * to) - (from * from)) / 2) - (8 * ((to * to * to) - (from * from * from)) / 3);
    }

    /// <summary>A face in inches.</summary>
    /// <param name="InnerEdge">Of an arched rail, the length of its sight line.</param>
    private sealed record Face(double Area, double Perimeter, (double X, double Y) Centre, double InnerEdge)
    {
        public static Face Of(Chain chain)
        {
            var (_, centre) = Polygon([.. chain.Flattened(FlatteningInches).Select(point => (point.X, point.Y))]);
            return new(Math.Abs(chain.Area), chain.Length, centre, 0);
        }

        public static Face Of(IReadOnlyList<Doors.Point> corners)
        {
            List<(double X, double Y)> points = [.. corners.Select(point => (CurveLength.Inches(point.X), CurveLength.Inches(point.Y)))];
            var (area, centre) = Polygon(points);
            var perimeter = points.Zip([.. points.Skip(1), points[0]]).Sum(side => Math.Sqrt(Math.Pow(side.First.X - side.Second.X, 2) + Math.Pow(side.First.Y - side.Second.Y, 2)));
            return new(area, perimeter, centre, 0);
        }

        // Area and centre by the shoelace rule.
        private static (double Area, (double X, double Y) Centre) Polygon(IReadOnlyList<(double X, double Y)> points)
        {
            var (twice, x, y) = (0.0, 0.0, 0.0);
            for (var i = 0; i < points.Count; i++)
            {
                var (one, next) = (points[i], points[(i + 1) % points.Count]);
                var cross = (one.X * next.Y) - (next.X * one.Y);
                (twice, x, y) = (twice + cross, x + ((one.X + next.X) * cross), y + ((one.Y + next.Y) * cross));
            }

            return (Math.Abs(twice) / 2, (x / (3 * twice), y / (3 * twice)));
        }
    }
}
