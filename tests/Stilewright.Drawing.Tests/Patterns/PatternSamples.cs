using Stilewright.Curves;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Writing;
using Stilewright.Projects;

namespace Stilewright.Drawing.Tests.Patterns;

internal static class PatternSamples
{
    /// <summary>What a pattern must hold everywhere: 0.001 in.</summary>
    public const double HeldMillimetres = 0.0254;

    public const string Revision = "1a2b3c4d";

    /// <summary>Every pattern of the sample course, panels whole, with the sizes it was made from.</summary>
    public static IReadOnlyList<(FullSizePattern Pattern, DrawnLeaf Leaf)> Sample { get; } = Of(isWhole: true);

    /// <summary>The same as they are printed: tall panels end below their curves.</summary>
    public static IReadOnlyList<(FullSizePattern Pattern, DrawnLeaf Leaf)> Printed { get; } = Of(isWhole: false);

    private static IReadOnlyList<(FullSizePattern Pattern, DrawnLeaf Leaf)> Of(bool isWhole) =>
    [
        .. from drawn in Drawn.Sample()
           from result in new PatternFigure(Revision, drawn.Format) { IsWhole = isWhole }.Of(drawn.Detail.Curves)
           select (Assert.IsType<PatternResult.Drawn>(result).Pattern, drawn),
    ];

    /// <summary>The first rail of a family.</summary>
    public static FullSizePattern Rail(ArchFamily family) => Sample.First(each => each.Pattern.Part.Arch?.Family == family).Pattern;

    public static FullSizePattern Panel(ArchFamily family) => Sample.First(each => each.Pattern.Part.TopArch?.Family == family).Pattern;

    public static byte[] Pdf(IEnumerable<Scene> sheets)
    {
        using var pdf = new MemoryStream();
        PdfWriter.Write(pdf, new("Patterns", "", null, "", "", DateTimeOffset.UnixEpoch), sheets.Select(scene => new PdfPage(scene, [])));
        return pdf.ToArray();
    }

    /// <summary>How far a place on the scene is from a curve of the pattern, in millimetres.</summary>
    public static double Off(FullSizePattern pattern, Chain chain, PaperPoint place)
    {
        var step = place - pattern.SpringMiddle;
        return chain.ClosestTo(new(step.X / 25.4, step.Y / 25.4 * (pattern.IsTurnedOver ? 1 : -1))).Distance * 25.4;
    }
}
