using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays what the wood of a project does: its panels through the year, its glue-ups, what its leaves weigh. What is alike is told once.</summary>
internal sealed class WoodSheets(ProjectBreakdown project, Flow flow, LengthFormat format)
{
    // Drawings leave the rest of a sheet to the words.
    private const double ShareOfFit = 0.86;
    private const double ShareOfGlueUp = 0.62;
    private const double LeastChart = 94;
    private const double ChartHeight = 60;
    private const double Gap = 4;

    private readonly TradeWords figures = new(format);
    private bool hasNone = true;

    private double Width => flow.Width;
    private double Most => flow.Height / 2;
    private IEnumerable<SizedLeaf> Leaves => project.Fronts.SelectMany(front => front.Leaves);

    public void Lay()
    {
        LayPanels();
        LayGlueUps();
        LayWeights();
    }

    /// <summary>What leaves weigh together, as a sentence; null where there is nothing to weigh.</summary>
    public static string? Total(string subject, IEnumerable<SizedLeaf> leaves, LengthFormat format)
    {
        var total = WeightTotal.Of(leaves);
        return total.Pounds.IsZero ? null
            : $"{subject}: {TradeWords.Count(total.Leaves, "leaf", "leaves")}, {WoodWords.Pounds(total.Pounds)}{WoodWords.Without(total.Unknown)}; faces {WoodWords.Area(total.Area, format.Unit)}.";
    }

    private void LayPanels()
    {
        var isFirst = true;
        foreach (var (leaf, fit, labels) in AlikePanels.Of(Leaves))
        {
            Begin("panels through the year", "Panels through the year", ref isFirst);
            flow.Add(Prose.Heading($"{string.Join(", ", labels)}: {fit.Panel.Name}, {fit.Panel.Material}", Width));
            flow.Add(Prose.Paragraph($"{WoodWords.Moisture(fit.Wood.Moisture)} {Capital(WoodWords.Rings(fit.Wood.Rings))}, {WoodWords.Held(fit.IsPinned)}: {WoodWords.Judged(fit)}", Width));
            flow.Add(Prose.Paragraph(WoodWords.Range(fit, figures), Width, TextStyle.Body.Bold));
            LayFit(leaf, fit);
        }
    }

    // The chart beside the grooves where both have room, else below them.
    private void LayFit(SizedLeaf leaf, PanelFit fit)
    {
        const string InGrooves = "At the driest, at making and at the wettest";
        const string OverYear = "Play and engagement through the year";
        List<Strip> words = [];
        if (fit.Wood.Caution is { } caution)
            words.AddRange(Prose.Paragraph(caution, LeastChart, TextStyle.Small));
        words.AddRange(Prose.Paragraph($"{WoodWords.MovementSource(fit.Wood.Species)} {WoodWords.MoistureSource(leaf.Standard)}", LeastChart, TextStyle.Small, above: 3));
        if (PanelFitFigure.Draw(fit, leaf, format, Width, flow.Height * ShareOfFit) is not { Fits: true, Scene: var grooves })
        {
            flow.Add(FigureStrips.Of(PlayChart.Draw(fit, format, LeastChart, ChartHeight), Width, OverYear));
            flow.Add(words);
            return;
        }

        var drawn = FigureStrips.Of(grooves, grooves.WidthMillimetres, InGrooves);
        var left = Width - LeastChart;
        var chart = FigureStrips.Of(PlayChart.Draw(fit, format, LeastChart, ChartHeight), LeastChart, OverYear);
        if (grooves.WidthMillimetres + Gap <= left)
            flow.Add(Strip.Beside((0, [drawn]), (left, [chart, .. words])) with { SpaceBefore = 4 });
        else
            flow.Add([FigureStrips.Of(grooves, Width, InGrooves), Strip.Beside((0, [chart, .. words])) with { SpaceBefore = 4 }]);
    }

    private void LayGlueUps()
    {
        // One board that is wide enough is no glue-up.
        foreach (var (part, standard, labels) in AlikeGlueUps.Of(Leaves))
        {
            var result = GlueUp.Of(part, standard, GlueUpOrder.Usual);
            if (result is GlueUpResult.Planned { GlueUp.Staves.Count: 1 })
                continue;
            Begin("glue-ups and weights", "Glue-ups", ref hasNone);
            flow.Add(Prose.Heading($"{string.Join(", ", labels)}: {part.Name}, {part.Material}{(labels.Count > 1 ? $", {Text(labels.Count)} alike" : "")}", Width));
            switch (result)
            {
                case GlueUpResult.Planned(var glueUp):
                    LayGlueUp(glueUp, GlueUpCaution.Of(glueUp, standard));
                    break;
                case GlueUpResult.Refused(var problem, var advice):
                    flow.Add(Prose.Paragraph($"{FindingText.Say(problem, format)} {FindingText.Say(advice, format)}", Width));
                    break;
            }
        }
    }

    private void LayGlueUp(GlueUp glueUp, IReadOnlyList<GlueUpCaution> cautions)
    {
        // What can hurt someone comes before anything that is worked from.
        foreach (var caution in cautions)
            flow.Add(Prose.Paragraph($"Caution: {FindingText.Say(caution.Problem, format)} Do: {FindingText.Say(caution.Advice, format)} Source: {caution.Source}.", Width));
        if (GlueUpFigure.Draw(glueUp, format, Width, flow.Height * ShareOfGlueUp) is { Fits: true, Scene: var scene })
            flow.Add(FigureStrips.Of(scene, Width, "Staves, face up"));
        flow.Add(Table.Of(
            [Column.Figure("stave"), Column.Figure("rip to"), Column.Figure("jointed"), Column.Figure("length"), "face up", Column.Figure("section")],
            glueUp.Staves.Select(stave => new Row([Text(stave.Number), figures.Of(stave.Rough), figures.Of(stave.Jointed), figures.Of(glueUp.Length), stave.BarkUp ? "bark side" : "heart side", glueUp.Sections > 1 ? Text(stave.Section) : ""])),
            Width, Most));
        flow.Add(Prose.Paragraph($"{Text(glueUp.Clamps)} clamps, over and under in turn, at most {figures.Of(glueUp.ClampSpacing)} apart; {figures.Of(glueUp.Waste)} over the rough width.", Width, above: 2));
        foreach (var (index, step) in glueUp.Steps.Index())
            flow.Add(Prose.Paragraph($"{Text(index + 1)}. {FindingText.Say(step, format)}", Width));
        flow.Add(Prose.Paragraph($"Staves of {figures.Of(GlueUpOrder.Usual.LeastStave)} to {figures.Of(GlueUpOrder.Usual.GreatestStave)}, allowances and clamps: common practice, no source. {Remarks.Machines}", Width, TextStyle.Small));
    }

    private void LayWeights()
    {
        var leaves = Leaves.Where(leaf => leaf.Parts.Count > 0).Select(leaf => (Leaf: leaf, Weight: LeafWeight.Of(leaf))).Where(each => each.Weight.Weight is not null).ToList();
        if (leaves.Count == 0)
            return;
        if (hasNone)
            flow.Begin(new("", "weights", false));
        flow.Add(Prose.Title("What the leaves weigh", Width, new Bookmark("Weights", 2)));
        flow.Add(Table.Of(
            ["leaf", "name", "weight", Column.Figure("from the left"), Column.Figure("from below"), Column.Figure("face")],
            leaves.Select(each => new Row(
            [
                each.Leaf.Label, each.Leaf.Name, WoodWords.Pounds(each.Weight.Pounds),
                WoodWords.About(each.Weight.Centre!.Value.X, format), WoodWords.About(each.Weight.Centre.Value.Y, format), WoodWords.Area(each.Weight.Area.Amount, format.Unit),
            ])
            { Note = each.Weight.Unknown.Count > 0 ? $"{Capital(WoodWords.Without(each.Weight.Unknown)[2..])}." : "" }),
            Width, Most));
        flow.Add(Prose.Paragraph(Total("Together", Leaves, format)!, Width, TextStyle.Body.Bold, above: 3));
        flow.Add(Prose.Paragraph("The centre of gravity lies so far from the left and from below, to the nearest 1/8 in or millimetre. At 12 % moisture, from the parts' sections, without hinges, pulls and finish.", Width, TextStyle.Small));
        var sources = leaves.SelectMany(each => each.Weight.Parts).Where(part => part.Weight is not null)
            .SelectMany(part => part.Weight!.Distinct().OfType<FromTable>()).Select(table => $"{table.Label}: {table.Row}, {table.Source}").Distinct();
        flow.Add(Prose.Paragraph($"Sources: {string.Join("; ", sources)}.", Width, TextStyle.Small));
    }

    private void Begin(string content, string title, ref bool isFirst)
    {
        if (isFirst)
        {
            flow.Begin(new("", content, true));
            flow.Add(Prose.Title(title, Width, new Bookmark(title, 2)));
        }

        isFirst = false;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
