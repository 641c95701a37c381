using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Fractions;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Documents.Lists;

/// <summary>What the wood of a selection does, as JSON. Lengths are exact fractions of inches as text, moisture in %, weight in pounds and what was found for a month are decimal.</summary>
public static class WoodJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        // Read by programs and people; never put into a page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="order">What glue-ups are planned from; null to leave them out.</param>
    public static string Of(Selection selection, GlueUpOrder? order)
    {
        ArgumentNullException.ThrowIfNull(selection);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("course", selection.Breakdown.Course.Name);
            json.WriteString("unit", "in");
            json.WriteStartArray("leaves");
            foreach (var chosen in selection.Fronts)
            {
                foreach (var leaf in chosen.Leaves)
                    WriteLeaf(json, chosen.Project.Project.Bench, leaf, order);
            }

            json.WriteEndArray();
            json.WriteStartArray("fronts");
            foreach (var chosen in selection.Fronts)
                WriteFront(json, chosen.Front);
            json.WriteEndArray();
            var total = WeightTotal.Of(selection.Fronts.SelectMany(chosen => chosen.Leaves));
            json.WriteStartObject("together");
            json.WriteNumber("leaves", total.Leaves);
            WriteDecimal(json, "pounds", total.Pounds);
            WriteDecimal(json, "squareInches", total.Area);
            WriteWords(json, "unknown", total.Unknown);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteLeaf(Utf8JsonWriter json, int bench, SizedLeaf leaf, GlueUpOrder? order)
    {
        json.WriteStartObject();
        json.WriteNumber("bench", bench);
        json.WriteString("label", leaf.Label);
        json.WriteString("path", leaf.Path);
        if (leaf.IsWithheld)
        {
            json.WriteBoolean("withheld", true);
            json.WriteEndObject();
            return;
        }

        var moisture = ServiceMoisture.Of(leaf.Standard);
        json.WriteStartObject("moisture");
        WriteDecimal(json, "making", moisture.Making.Amount);
        WriteDecimal(json, "driest", moisture.Driest.Amount);
        WriteDecimal(json, "wettest", moisture.Wettest.Amount);
        json.WriteString("source", WoodWords.MoistureSource(leaf.Standard));
        json.WriteEndObject();
        json.WriteStartArray("panels");
        foreach (var fit in PanelFit.Of(leaf))
            WriteFit(json, fit);
        json.WriteEndArray();
        if (order is not null)
        {
            json.WriteStartArray("glueUps");
            foreach (var part in leaf.Parts.Where(part => part.Work.Contains(EdgeWork.JoinStaves)))
                WriteGlueUp(json, part, GlueUp.Of(part, leaf.Standard, order), leaf);
            json.WriteEndArray();
        }

        if (leaf.Parts.Count > 0)
        {
            var weight = LeafWeight.Of(leaf);
            json.WriteStartObject("weight");
            WriteDecimal(json, "pounds", weight.Pounds);
            WriteDecimal(json, "squareInches", weight.Area.Amount);
            if (weight.Centre is { } centre)
            {
                json.WriteNumber("centreFromLeft", Math.Round(centre.X, 3));
                json.WriteNumber("centreFromBelow", Math.Round(centre.Y, 3));
            }

            WriteWords(json, "unknown", weight.Unknown);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteFit(Utf8JsonWriter json, PanelFit fit)
    {
        json.WriteStartObject();
        json.WriteString("part", fit.Panel.Label);
        json.WriteString("path", fit.Panel.Path);
        json.WriteString("species", fit.Wood.Species.Name);
        json.WriteString("source", WoodWords.MovementSource(fit.Wood.Species));
        json.WriteString("rings", WoodWords.Rings(fit.Wood.Rings));
        json.WriteBoolean("pinned", fit.IsPinned);
        json.WriteBoolean("fits", fit.Fits);
        json.WriteString("judged", WoodWords.Judged(fit));
        Write(json, "width", fit.Width.Amount);
        Write(json, "clear", fit.Clear.Amount);
        Write(json, "groove", fit.Depth.Amount);
        Write(json, "clearance", fit.Clearance.Amount);
        Write(json, "playAtWettest", fit.PlayAtWettest.Amount);
        Write(json, "engagementAtDriest", fit.EngagementAtDriest.Amount);
        json.WriteStartObject("range");
        switch (fit.Range)
        {
            case PanelRange.Some(var least, var greatest):
                Write(json, "least", least.Amount);
                Write(json, "greatest", greatest.Amount);
                break;
            case PanelRange.None none:
                Write(json, "shortBy", none.ShortBy.Amount);
                WriteWords(json, "whatWould", none.Remedies.Select(remedy => FindingText.Say(remedy.Advice, new LengthFormat(LengthUnit.Inch, 64))));
                break;
        }

        json.WriteEndObject();
        json.WriteStartArray("months");
        foreach (var month in fit.PlayOverYear())
        {
            json.WriteStartObject();
            json.WriteNumber("month", month.Month);
            WriteDecimal(json, "moisture", month.Moisture);
            WriteDecimal(json, "playInches", month.Play.Inches);
            WriteDecimal(json, "engagementInches", month.Engagement.Inches);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("assumption", fit.Wood.Moisture.Assumption);
        json.WriteEndObject();
    }

    private static void WriteGlueUp(Utf8JsonWriter json, Part part, GlueUpResult result, SizedLeaf leaf)
    {
        var format = new LengthFormat(LengthUnit.Inch, 64);
        json.WriteStartObject();
        json.WriteString("part", part.Label);
        json.WriteString("path", part.Path);
        switch (result)
        {
            case GlueUpResult.Planned(var glueUp):
                Write(json, "width", glueUp.Width.Inches);
                Write(json, "length", glueUp.Length.Inches);
                Write(json, "waste", glueUp.Waste.Inches);
                json.WriteNumber("clamps", glueUp.Clamps);
                json.WriteNumber("sections", glueUp.Sections);
                json.WriteStartArray("staves");
                foreach (var stave in glueUp.Staves)
                {
                    json.WriteStartObject();
                    json.WriteNumber("number", stave.Number);
                    Write(json, "rough", stave.Rough.Inches);
                    Write(json, "jointed", stave.Jointed.Inches);
                    json.WriteBoolean("barkUp", stave.BarkUp);
                    json.WriteNumber("section", stave.Section);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                WriteWords(json, "steps", glueUp.Steps.Select(step => FindingText.Say(step, format)));
                WriteWords(json, "cautions", GlueUpCaution.Of(glueUp, leaf.Standard).Select(caution => $"{FindingText.Say(caution.Problem, format)} {FindingText.Say(caution.Advice, format)} Source: {caution.Source}."));
                break;
            case GlueUpResult.NotEnough(var lacking):
                Write(json, "shortBy", lacking.Inches);
                break;
            case GlueUpResult.Refused(var problem, var advice):
                json.WriteString("problem", FindingText.Say(problem, format));
                json.WriteString("advice", FindingText.Say(advice, format));
                break;
        }

        json.WriteEndObject();
    }

    private static void WriteFront(Utf8JsonWriter json, SizedFront front)
    {
        var movement = FrontMovement.Of(front);
        json.WriteStartObject();
        json.WriteString("front", front.Label);
        json.WriteString("path", front.Path);
        json.WriteStartArray("gaps");
        foreach (var gap in movement.Gaps)
        {
            json.WriteStartObject();
            json.WriteString("leaf", gap.Path);
            json.WriteString("which", gap.Words);
            Write(json, "atMaking", gap.AtMaking.Amount);
            Write(json, "atWettest", gap.AtWettest.Amount);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("overlays");
        foreach (var overlay in movement.Overlays)
        {
            json.WriteStartObject();
            json.WriteString("leaf", overlay.Path);
            json.WriteString("side", TradeWords.Words(overlay.Side));
            Write(json, "atMaking", overlay.AtMaking.Amount);
            Write(json, "atDriest", overlay.AtDriest.Amount);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Fraction number) => json.WriteString(name, number.Reduce().ToString());

    private static void WriteDecimal(Utf8JsonWriter json, string name, Fraction number) => json.WriteNumber(name, Math.Round(number.ToDecimal(), 4));

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
