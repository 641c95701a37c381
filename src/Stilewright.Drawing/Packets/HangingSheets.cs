using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays what is bored into the leaves of a project and how they are hung: boring sheets, hinges and why so many, stops, steps.</summary>
internal sealed class HangingSheets
{
    private const double ShareOfSheet = 0.88;

    private readonly PacketContents contents;
    private readonly IReadOnlyList<HungLeaf> leaves;
    private readonly HangingPlan plan;
    private readonly Flow flow;
    private readonly LengthFormat format;
    private readonly TradeWords figures;

    public HangingSheets(PacketContents contents, ProjectBreakdown project, Flow flow, LengthFormat format)
    {
        (this.contents, this.flow, this.format) = (contents, flow, format);
        figures = new(format);
        plan = contents.HangingOf(project);
        leaves = plan.Leaves;
    }

    private double Width => flow.Width;
    private double Most => flow.Height / 2;

    /// <summary>Nothing where no leaf is hung.</summary>
    public void Lay()
    {
        if (leaves.Count == 0)
            return;
        flow.Begin(new("", "boring and hanging", true));
        flow.Add(Prose.Title("Boring and hanging", Width, new Bookmark("Boring and hanging", 2)));
        flow.Add(Prose.Paragraph("Leaves are drawn from the back, top up, as they lie face down: left and right change places.", Width, TextStyle.Small).Select(strip => strip with { KeepWithNext = true }));
        foreach (var (left, right) in plan.InPairs)
        {
            foreach (var (drawn, fitted) in BoringFigure.DrawPair(left, right, format, Width, flow.Height * ShareOfSheet))
                flow.Add(FigureStrips.Drawn(string.Join(" and ", drawn.Select(leaf => leaf.Leaf.Label)), fitted, Width));
        }

        LayNumbers();
        LayStops();
        LaySteps();
        LayWorking();
    }

    private void LayNumbers()
    {
        flow.Add(Prose.Heading($"Hinges, in {figures.Unit}", Width));
        flow.Add(Table.Of(
            ["leaf", "door", "hinge", Column.Figure("count"), Column.Figure("boring distance"), Column.Figure("cup centre"), Column.Figure("plate")],
            leaves.Select(leaf => new Row(
            [
                leaf.Leaf.Label, BoringWords.Hand(leaf.Leaf.Hinge), leaf.Hinge.Name, leaf.Bores.Count.ToString(CultureInfo.InvariantCulture),
                figures.Of(leaf.Sheet?.Distance), figures.Of(leaf.Sheet?.CupCentre), figures.Of(leaf.Fit?.Plate),
            ])
            {
                Note = string.Join(" ", new[] { BoringWords.Why(leaf.Set.Number) + ".", BoringWords.Fit(leaf, format) }.OfType<string>()),
            }),
            Width, Most));
        foreach (var source in leaves.SelectMany(leaf => BoringWords.Sources(leaf.Set.Number)).Select(source => source.Text).Distinct())
            flow.Add(Prose.Paragraph($"Numbers of hinges: {source}.", Width, TextStyle.Small));
        foreach (var hinge in leaves.Select(leaf => leaf.Hinge).DistinctBy(hinge => hinge.Id).Where(hinge => hinge.Source is not null))
            flow.Add(Prose.Paragraph($"{hinge.Name}: {hinge.Source}.", Width, TextStyle.Small));
    }

    private void LayStops()
    {
        var machines = leaves[0].Standard.Standard.BoringMachines;
        HungLeaf[] bored = [.. leaves.Where(leaf => leaf.Sheet is not null)];
        if (machines.Count == 0 || bored.Length == 0)
            return;
        foreach (var machine in machines)
        {
            flow.Add(Prose.Heading($"Stops of {machine.Name}", Width));
            flow.Add(Prose.Paragraph("The leaf lies face down, its hinge edge against the fence; left and right are those of who stands at the machine.", Width, TextStyle.Small).Select(strip => strip with { KeepWithNext = true }));
            var plans = bored.Select(leaf => leaf.StopPlans.First(each => each.Machine.Id == machine.Id)).ToList();
            flow.Add(Table.Of(
                ["leaf", "hinge", Column.Figure("from the top or left"), Column.Figure("from the other end"), "stop", Column.Figure("fence")],
                plans.SelectMany(each => each.Stops.Select(stop => new Row(
                [
                    each.Sheet.Leaf.Leaf.Label, stop.Bore.Number.ToString(CultureInfo.InvariantCulture), figures.Of(stop.Bore.FromFirst), figures.Of(stop.Bore.FromOther),
                    BoringWords.Stop(stop, format), figures.Of(each.Fence),
                ])
                {
                    Note = stop.Bore.Why is { } why ? $"Moved because {why}." : "",
                })),
                Width, Most));
            foreach (var caution in plans.SelectMany(each => each.Cautions).Select(caution => FindingText.Say(caution, format)).Distinct())
                flow.Add(Prose.Paragraph(caution, Width, TextStyle.Body.Bold));
            if (machine.Source is { } source)
                flow.Add(Prose.Paragraph($"{machine.Name}: {source}.", Width, TextStyle.Small));
        }

        foreach (var line in BoringWords.Batch(bored, format))
            flow.Add(Prose.Paragraph(line, Width));
    }

    // Leaves that are hung alike share their steps, but for which edge is marked.
    private void LaySteps()
    {
        foreach (var group in leaves.GroupBy(leaf => string.Join('\n', Steps(leaf).Where(step => !step.Step.IsOfHand).Select(step => step.Words))))
        {
            flow.Add(Prose.Heading($"How to hang {string.Join(", ", group.Select(leaf => leaf.Leaf.Label))}", Width));
            foreach (var (number, (title, words, step)) in Steps(group.First()).Index())
            {
                var style = step.IsCaution ? TextStyle.Body.Bold : TextStyle.Body;
                var told = !step.IsOfHand ? words : string.Join(" ", group.GroupBy(leaf => Steps(leaf).ElementAt(number).Words)
                    .Select(same => group.Count() == same.Count() ? same.Key : $"{string.Join(", ", same.Select(leaf => leaf.Leaf.Label))}: {same.Key}"));
                flow.Add(Prose.First(Prose.Led(title, told, style, Width), 1.6).Select(strip => strip with { KeepWithNext = true }));
                flow.Add(Prose.Paragraph($"Source: {step.Source.Text}", Width, TextStyle.Small, above: 0));
            }
        }
    }

    private IEnumerable<(string Title, string Words, HangingStep Step)> Steps(HungLeaf leaf) =>
        HangingSteps.Of(leaf).Select((step, i) => ($"{(i + 1).ToString(CultureInfo.InvariantCulture)}. {step.Title}", FindingText.Say(step.Words, format), step));

    private void LayWorking()
    {
        if (!contents.Settings.Working)
            return;
        Strip[] heading = [.. Prose.Heading("How the figures of boring are found", Width)];
        flow.Add(heading);
        flow.Add(WorkingStrips.Of([.. leaves.SelectMany(BoringWords.Quantities)], format, Width, Most, heading.Sum(strip => strip.SpaceBefore + strip.Height), flow.Left, flow.Height));
    }
}
