using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Web.Drawings;

// Wood that moves, and what it weighs.
public sealed partial class StandardFigures
{
    /// <summary>An inch of the moisture rule is this many per cent.</summary>
    private const double PercentPerInch = 10;

    private const double RuleHigh = 0.4;

    // A panel's edge in the groove of a stile: the groove's bottom is at 0, the sight line at its depth.
    private Groove PanelEdge(Sketch on, double play, double beyond, out PaperBox all)
    {
        var groove = new Groove(cutters);
        const double Back = 0.6;
        on.EndGrain(Shape(on, (-Back, 0), (groove.Depth, 0), (groove.Depth, groove.Low), (0, groove.Low), (0, groove.High), (groove.Depth, groove.High), (groove.Depth, groove.Thick), (-Back, groove.Thick)))
            .EndGrain(Box(on, play, groove.Low + Air, groove.Depth + beyond - play, groove.High - groove.Low - (2 * Air)));
        all = on.Box(-Back, 0, Back + groove.Depth + beyond, groove.Thick);
        return groove;
    }

    private void PanelPolicy(Sketch on)
    {
        var bySeason = inForce.Word(Settings.PanelPolicy) == Settings.BySeason;
        const double Beyond = 1.4;
        var play = Math.Min(Size(Settings.ClearanceAcross), Inches(cutters.GrooveDepth.Value) * 0.6);
        var groove = PanelEdge(on, play, Beyond, out var all);
        if (bySeason)
        {
            // The same edge at the driest and the wettest.
            foreach (var at in new[] { play * 0.3, play * 1.7 })
                on.Line(on.At(at, groove.Low - 0.1), on.At(at, groove.High + 0.1), LineStyle.Hidden);
        }
        else
        {
            on.Dimensions(all, new DimensionRow(Side.Top, [Across(on, 0, play, Value(Settings.ClearanceAcross), "clearance")]));
        }

        on.Named(Settings.PanelPolicy.Key, bySeason ? "as the wood moves by season" : "by the clearance", on.At(groove.Depth + (Beyond / 2) - 0.3, -0.25));
    }

    private void PanelRings(Sketch on)
    {
        const double Wide = 3, High = 0.8;
        const int Lines = 7;
        on.Wood(Box(on, 0, 0, Wide, High));
        var rings = inForce.Word(Settings.PanelRings);
        for (var line = 1; line < Lines; line++)
        {
            var x = Wide * line / Lines;
            if (rings == "quarter")
                on.Line(on.At(x, 0), on.At(x, High), LineStyle.Hatch);
            else if (rings == "mixed")
                on.Line(on.At(x - 0.35, 0), on.At(x + 0.35, High), LineStyle.Hatch);
            else if (line < 5)
                on.Draw(Outline.Through(false, on.At(0, High * line / 6), on.At(Wide * 0.25, High * (line + 0.7) / 6), on.At(Wide / 2, High * (line + 1) / 6), on.At(Wide * 0.75, High * (line + 0.7) / 6), on.At(Wide, High * line / 6)), LineStyle.Hatch);
        }

        on.Named(Settings.PanelRings.Key, rings, on.At(Wide / 2, -0.25));
    }

    private void PanelHeld(Sketch on)
    {
        const double Stile = 0.7, Clear = 2.4, Depth = 0.375, Low = 0.25, High = 0.5, Play = 0.12;
        var isFree = inForce.Word(Settings.PanelHeld) == Settings.Free;
        var end = Clear + (2 * Depth);
        on.EndGrain(Shape(on, (-Stile, 0), (Depth, 0), (Depth, Low), (0, Low), (0, High), (Depth, High), (Depth, Thickness), (-Stile, Thickness)))
            .EndGrain(Shape(on, (end + Stile, 0), (end - Depth, 0), (end - Depth, Low), (end, Low), (end, High), (end - Depth, High), (end - Depth, Thickness), (end + Stile, Thickness)));
        on.EndGrain(Box(on, isFree ? 0 : Play, Low + Air, end - (2 * Play), High - Low - (2 * Air)));
        if (!isFree)
            on.Line(on.At(end / 2, Low - 0.12), on.At(end / 2, High + 0.12), LineStyle.Heavy);
        on.Named(Settings.PanelHeld.Key, isFree ? "free" : "pinned", on.At(end / 2, -0.2));
    }

    private void PanelEngagement(Sketch on)
    {
        var engagement = Size(Settings.PanelEngagement);
        var groove = PanelEdge(on, Inches(cutters.GrooveDepth.Value) - engagement, 1, out var all);
        on.Dimensions(all, new DimensionRow(Side.Top, [Named(on, Settings.PanelEngagement, groove.Depth - engagement, groove.Depth, "in the groove")]));
    }

    private void PanelAir(Sketch on)
    {
        var air = Size(Settings.PanelAir);
        PanelEdge(on, air, 1, out var all);
        on.Dimensions(all, new DimensionRow(Side.Top, [Named(on, Settings.PanelAir, 0, air, "air")]));
    }

    private void FinishBuild(Sketch on)
    {
        const double Film = 0.06, Gap = 0.5, High = 0.9;
        on.EndGrain(Box(on, 0, 0, 1, High)).EndGrain(Box(on, 1 + Gap, 0, 1, High));
        on.Draw(Box(on, 1, 0, Film, High), LineStyle.Heavy).Draw(Box(on, 1 + Gap - Film, 0, Film, High), LineStyle.Heavy);
        on.Named(Settings.FinishBuild.Key, $"finish {inForce.Find(Settings.FinishBuild).Value.Text}", on.At(1 + (Gap / 2), -0.25));
    }

    private void GlassThickness(Sketch on)
    {
        const double Wide = 2.4;
        var thick = Size(Settings.GlassThickness);
        on.Draw(Box(on, 0, 0, Wide, thick), LineStyle.Visible);
        on.Dimensions(on.Box(0, 0, Wide, thick), new DimensionRow(Side.Right, [NamedUpright(on, Settings.GlassThickness, 0, thick, "glass")]));
    }

    private void Moisture(Sketch on)
    {
        MoistureRule(on);
        Mark(on, ServiceMoisture.Of(inForce).Making.Amount.ToDouble());
        on.Named(Settings.Moisture.Key, $"at making {inForce.Find(Settings.Moisture).Value.Text}", on.At(1.5, RuleHigh + 0.45));
    }

    private void Driest(Sketch on) => End(on, Settings.Driest, "driest", ServiceMoisture.Of(inForce).Driest.Amount.ToDouble());

    private void Wettest(Sketch on) => End(on, Settings.Wettest, "wettest", ServiceMoisture.Of(inForce).Wettest.Amount.ToDouble());

    private void End(Sketch on, Setting setting, string word, double percent)
    {
        MoistureRule(on);
        Mark(on, percent);
        on.Named(setting.Key, string.Create(CultureInfo.InvariantCulture, $"{word} {percent:0.#} %{(inForce.Moisture(setting) is null ? ", by the climate" : "")}"), on.At(1.5, RuleHigh + 0.45));
    }

    private void Climate(Sketch on)
    {
        MoistureRule(on);
        var moisture = ServiceMoisture.Of(inForce);
        var (from, to) = (moisture.Driest.Amount.ToDouble() / PercentPerInch, moisture.Wettest.Amount.ToDouble() / PercentPerInch);
        on.Wood(Box(on, from, RuleHigh + 0.02, to - from, 0.14));
        on.Named(Settings.Climate.Key, moisture.Climate?.Name ?? inForce.Word(Settings.Climate), on.At(1.5, RuleHigh + 0.45));
    }

    // From 0 to 30 %, a mark at every per cent.
    private static void MoistureRule(Sketch on)
    {
        const int Most = 30;
        Rule(on, Most / PercentPerInch, RuleHigh);
        for (var percent = 1; percent < Most; percent++)
            on.Line(on.At(percent / PercentPerInch, RuleHigh), on.At(percent / PercentPerInch, RuleHigh - (percent % 5 == 0 ? 0.16 : 0.08)), LineStyle.Edge);
        foreach (var percent in new[] { 10, 20 })
            on.Word(string.Create(CultureInfo.InvariantCulture, $"{percent} %"), on.At(percent / PercentPerInch, 0.1));
    }

    private static void Mark(Sketch on, double percent) =>
        on.Line(on.At(percent / PercentPerInch, RuleHigh - 0.2), on.At(percent / PercentPerInch, RuleHigh + 0.24), LineStyle.Heavy);
}
