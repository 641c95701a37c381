using Stilewright.Curves;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

internal sealed partial class LeafBreakdown
{
    internal static Length LeastForRaising { get; } = Length.FromInches(10);

    private bool FrameFits(Members members, Worked clearWidth, Worked clearHeight, CutterSet cutters, Worked depth)
    {
        var leastLight = standard[Settings.LeastLight];
        if (plan.IsDrawerFront && LeastDrawerHeight(members, cutters, depth) is { } least && Height.Length < least.Length)
        {
            var up = least.Length.OnStep(standard[Settings.Step].Length, StepDirection.Up);
            if (design.SlabWhenTooLow)
            {
                Report(Rules.DrawerMadeSlab, $"It is {Height} high and a frame needs {up}; it is made as a slab.", $"Match its grain to the fronts around it.");
                Slab();
            }
            else
            {
                Report(Rules.DrawerTooLow, $"It is {Height} high; a frame of this design needs at least {up}.",
                    $"Make it at least {up} high, or let the design say \"slabWhenTooLow\".", "slabWhenTooLow");
            }

            return false;
        }

        var fits = true;
        if (!clearWidth.Amount.IsPositive || !clearHeight.Amount.IsPositive)
        {
            Report(Rules.NarrowerThanFrame,
                $"The leaf is {Width} × {Height}, its stiles take {(members.Left + members.Right).Length} and its rails {(members.Top + members.Bottom).Length}.",
                $"Use narrower members or a slab.");
            fits = false;
        }
        else if (clearWidth.Length < leastLight.Length || clearHeight.Length < leastLight.Length)
        {
            Report(Rules.LightTooSmall, $"The frame is clear by {clearWidth} × {clearHeight}; the standard's least is {leastLight}.",
                $"Use narrower members or a slab.");
            fits = false;
        }

        if (cutters.CopeLength.Value > cutters.GrooveDepth.Value)
        {
            Report(Rules.CopeTooLong, $"The cope of '{cutters.Name}' is {cutters.CopeLength.Value} long, its groove {cutters.GrooveDepth.Value} deep.",
                $"Correct the cutter set.", "cutters");
            fits = false;
        }

        if (design.Construction == Construction.Mitred)
        {
            if (design.TopArch is not null || design.BottomArch is not null)
            {
                Report(Rules.ArchOnMitre, $"A mitred frame cannot take an arch.", $"Choose cope-and-stick, or leave the arch out.", "topArch");
                fits = false;
            }

            if (new[] { members.Left, members.Right, members.Bottom }.Any(member => member.Length != members.Top.Length))
            {
                Report(Rules.UnequalMitre,
                    $"The members are {members.Left.Length}, {members.Right.Length}, {members.Top.Length} and {members.Bottom.Length} wide, so the mitres are not 45°.",
                    $"Use one width for all four.", "stiles");
            }
        }

        return fits;
    }

    // Raised: both rails, both raises, the least field and the play in the grooves, less what the grooves take.
    private Worked? LeastDrawerHeight(Members members, CutterSet cutters, Worked depth)
    {
        if (design.MidRails is not null)
            return null;
        var rails = Worked.Both(members.Top, members.Bottom);
        var plain = (rails + standard[Settings.LeastLight]).As("least height of a frame", "leaf/height.least");
        if (design.Panel is not { Kind: PanelKind.Raised } || cutters.RaiseWidth is not { } raise)
            return plain;
        var clearance = standard[GrainOr(design.Panel.Grain) == GrainDirection.Vertical ? Settings.ClearanceAlong : Settings.ClearanceAcross];
        var atArch = standard.LengthOrWord(Settings.ClearanceAtArch) ?? clearance;
        return (rails + (2 * Cut(cutters, "raise.width", "raise", raise)) + standard[Settings.LeastField]
            + Worked.Both(design.BottomArch is null ? clearance : atArch, design.TopArch is null ? clearance : atArch) - (2 * depth))
            .As("least height of a frame with a raised panel", "leaf/height.least");
    }

    // A tongue or tenon longer than the member is wide would come out at its other edge.
    private bool JointsFit(Members members, List<Worked> midRails, List<Worked?> rows, Worked? reach)
    {
        var longest = reach?.Length ?? default;
        var railsEnterStiles = design.Construction != Construction.Mitred || midRails.Count > 0;
        var fits = Takes("left stile", members.Left, railsEnterStiles) & Takes("right stile", members.Right, railsEnterStiles)
            & Takes("bottom rail", members.Bottom, rows[0] is not null) & Takes("top rail", members.Top, rows[^1] is not null);
        for (var i = 0; i < midRails.Count; i++)
            fits &= Takes(midRails.Count == 1 ? "mid rail" : $"mid rail {i + 1} from the bottom", midRails[i], rows[i] is not null || rows[i + 1] is not null);
        return fits;

        bool Takes(string member, Worked width, bool joined)
        {
            if (width.Amount.IsPositive && (!joined || width.Length >= longest))
                return true;
            Report(Rules.JointTooLong, $"The {member} is {width.Length} wide and must take a joint {longest} long.",
                $"Use a joint no longer than the member is wide, or a wider member.", "tenon");
            return false;
        }
    }

    // An arch across the pair is held to its whole span and rise before, and here to the light alone.
    private bool ArchesFit(Worked? topRise, Worked? bottomRise, PairStretch? topPart, PairStretch? bottomPart, Worked clearWidth, Worked clearHeight) =>
        ArchFits(design.TopArch, topRise, "top", topPart?.Width ?? Span(design.TopArch, "top", clearWidth), topPart is null, clearHeight)
        & ArchFits(design.BottomArch, bottomRise, "bottom", bottomPart?.Width ?? Span(design.BottomArch, "bottom", clearWidth), bottomPart is null, clearHeight);

    // A single arc rises at most half its span; no arch may rise past the other rail.
    private bool ArchFits(Arch? arch, Worked? rise, string end, Worked over, bool isWhole, Worked clearHeight)
    {
        if (arch is null)
            return true;
        if (!CurveIsSound(arch, end))
            return false;

        var span = over.Length;
        if (arch.Shoulder is { } shoulder && isWhole)
            span -= shoulder.Value * 2;
        var most = isWhole && arch.Family is ArchFamily.Eyebrow or ArchFamily.Stepped or ArchFamily.HalfRound ? span / 2 : clearHeight.Length;
        if (rise is not null && rise.Length <= most && rise.Length < clearHeight.Length && span.IsPositive)
            return true;
        most = Length.Greatest(default, Length.Least(most, clearHeight.Length)).OnStep(standard[Settings.Step].Length, StepDirection.Down);
        Report(Rules.ArchTooHigh, $"The {end} arch rises {rise?.Length ?? default} over a span of {span}.",
            $"Let it rise at most {most}, or make the door wider.", $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : "rise")}");
        return false;
    }

    private bool CurveIsSound(Arch arch, string end)
    {
        if (arch.Family != ArchFamily.Drawn || CurveOf(arch, end).Faults is not [_, ..] faults)
            return true;
        foreach (var fault in faults)
            Report(Rules.ArchCannotBeDrawn, $"In step {fault.Index + 1} of the {end} arch, {fault.Problem}.", $"In that step, {fault.Fix}.", $"{end}Arch/curve/{fault.Index + 1}");
        return false;
    }

    // At the stiles an arched rail is deeper by its rise: there it must clear the mid rail, or the arched rail opposite.
    private bool ArchesClear(Worked? topRise, Worked? bottomRise, List<Worked> lightHeights)
    {
        if (lightHeights.Count == 1)
        {
            return topRise is null || bottomRise is null
                || Clears(topRise.Length + bottomRise.Length, lightHeights[0].Length, "two arches together rise", "topArch/rise");
        }

        return (topRise is null || Clears(topRise.Length, lightHeights[^1].Length, "top arch rises", "topArch/rise"))
            & (bottomRise is null || Clears(bottomRise.Length, lightHeights[0].Length, "bottom arch rises", "bottomArch/rise"));

        bool Clears(Length rise, Length clear, string what, string field)
        {
            if (rise < clear)
                return true;
            Report(Rules.ArchTooHigh, $"The {what} {rise}, and the light is {clear} high.",
                $"Keep the rise under {clear}, or make the light higher.", field);
            return false;
        }
    }

    private void CheckCrown(Worked narrow, string segment, string label)
    {
        var cutters = standard.Standard.Cutter(design.Cutters!)!;
        var left = narrow.Length - cutters.GrooveDepth.Value;
        var least = standard[Settings.LeastCrown].Length;
        if (left < least)
        {
            Report(Rules.CrownThin, $"The {label} is {narrow} at its narrowest; its groove leaves {left} of wood there, less than {least}.",
                $"Make the rail at least {least + cutters.GrooveDepth.Value} wide at its narrowest.", segment == "rail.top" ? "topRail" : "bottomRail", segment);
        }
    }

    // An arched rail is sawn from a blank as wide as its narrowest width, the rise, and what trimming and ripping take.
    private void CheckBlank(Part rail, ArchShape arch, Stock stock, string end, string segment)
    {
        if (stock.WidestBoard is not { } widest || rail.Rough!.Width.Length <= widest.Value)
            return;
        // Across a pair, the whole curve is lowered as the part in this leaf must be.
        var rise = ((arch.Rise.Length - (rail.Rough.Width.Length - widest.Value)) * (arch.WholeRise.Length / arch.Rise.Length)).OnStep(standard[Settings.Step].Length, StepDirection.Down);
        Report(Rules.BlankWiderThanStock,
            $"The blank of the {end} rail is {rail.Rough.Width.Length} wide in the rough, {arch.Rise.Length} of it for the rise; the widest board of '{stock.Name}' is {widest.Value}.",
            rise.IsPositive && arch.Family is not (ArchFamily.HalfRound or ArchFamily.Drawn)
                ? $"Let the rise be at most {rise}, or glue the blank up from strips."
                : (FormattableString)$"Glue the blank up from strips, or use another arch.",
            $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : "rise")}", segment);
    }

    private bool ArchDraws(ArchShape? arch, string end)
    {
        if (arch is null || Drawn(arch) is not ArchResult.Refused(var problem, var limit))
            return true;
        Report(Rules.ArchCannotBeDrawn, problem, Either([limit]), $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : Field(limit.Measure))}");
        return false;
    }

    // A leaf has at most two arches, and asks for each several times.
    private ArchResult Drawn(ArchShape arch)
    {
        foreach (var (known, result) in drawnArches)
        {
            if (ReferenceEquals(known, arch))
                return result;
        }

        var drawn = LeafCurves.Draw(arch);
        drawnArches.Add((arch, drawn));
        return drawn;
    }

    private void CheckRailCurve(ArchShape arch, string end, string segment, Worked? reach)
    {
        if (Drawn(arch) is not ArchResult.Drawn(var curve))
            return;
        var least = standard[Settings.LeastShortGrain].Length;
        var grain = ArchChecks.ShortGrain(curve, CurveLength.Inches(arch.Shoulder?.Length ?? default), CurveLength.Inches(reach?.Length ?? default), CurveLength.Inches(least));
        if (!grain.Passes)
        {
            Report(Rules.ShortGrain,
                $"{least} above the spring line of the {end} arch the grain runs {CurveLength.ToLength(grain.Measured, StepDirection.Nearest)} from the rail's end to the curve, less than {least}.",
                Either(grain.Remedies), $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : "shoulder")}", segment);
        }

        if (standard.Standard.Cutter(design.Cutters!)!.CollarRadius is { } collar)
        {
            CheckCollar(ArchChecks.Collar(arch.Family, LeafCurves.SizesOf(arch), drawn => LeafCurves.InLeaf(arch, drawn).Chain, CurveLength.Inches(collar.Value)),
                $"{end} rail", collar.Value, "moulding", $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : "rise")}", segment);
        }
    }

    // A fixed pattern brings its own rise, shoulders and radii; a narrower span than it was made for cuts its ends off.
    private void CheckRack(ArchShape arch, string end, string segment)
    {
        if (standard.Standard.Patterns.Count == 0)
            return;
        switch (new PatternRack([.. standard.Standard.Patterns.Select(pattern => pattern.Hard)]).Choose(arch.Family, LeafCurves.SizesOf(arch)))
        {
            case PatternChoice.Fitting([var first, ..] fitting):
                var also = fitting.Count == 1 ? "" : $" So does {string.Join(", ", fitting.Skip(1).Select(other => other.Pattern.Name))}.";
                Report(Rules.PatternFits, $"Pattern {first.Pattern.Name} fits this span of {arch.Span.Length} in the {end} rail.{also}", OnPattern(first, arch),
                    $"{end}Arch/{(first is { Rise: null, Shoulder: not null } ? "shoulder" : first is { Rise: null, ReverseToCrown: not null } ? "reverseToCrown" : "rise")}", segment);
                break;
            case PatternChoice.NoneFits({ Count: > 0 } nearest):
                Report(Rules.NoPatternFits, $"The rack has patterns of this family, and none serves the span of {arch.Span.Length} in the {end} rail.",
                    $"Make the door {Joined(", or ", nearest.Select(each => (FormattableString)$"{WidthOver(each.Span, arch)} wide for pattern {each.Pattern.Name}"))}; or make a pattern.",
                    $"{end}Arch", segment);
                break;
        }
    }

    // What the pattern leaves over this span where the design says something else, and the door that would have the shoulders as designed.
    private FormattableString OnPattern(PatternFit fit, ArchShape arch)
    {
        List<FormattableString> differs = [];
        if (fit.Rise is { } rise)
            differs.Add($"it rises {CurveLength.ToLength(rise, StepDirection.Nearest)}, and the design says {arch.WholeRise.Length}");
        if (fit.Shoulder is { } shoulder)
            differs.Add($"its shoulders are {CurveLength.ToLength(shoulder, StepDirection.Nearest)}, and the design says {arch.Shoulder?.Length ?? default}");
        if (fit.ReverseToCrown is { } ratio)
            differs.Add($"its reverse radius over the crown's is {Fractions.Fraction.FromDoubleRounded(ratio, 6)}, and the design says {arch.ReverseToCrown}");
        if (differs.Count == 0)
            return $"Use it; it leaves the curve that the design says.";
        return fit.Shoulder is not null && fit.Pattern.SpanWithShoulder(CurveLength.Inches(arch.Shoulder?.Length ?? default)) is { } span
            ? $"Over this span {Joined("; ", differs)}. A door {WidthOver(span, arch)} wide has the shoulders of the design; else change the design, or make a pattern."
            : (FormattableString)$"Over this span {Joined("; ", differs)}; change the design, or make a pattern.";
    }

    private Length WidthOver(double span, ArchShape arch) =>
        Width.Length + ((CurveLength.ToLength(span, StepDirection.Nearest) - arch.Span.Length) * (arch.OfPair is null ? new Fractions.Fraction(arch.Repeats) : new Fractions.Fraction(1, 2)));

    private static FormattableString Joined(string between, IEnumerable<FormattableString> items) => items.Aggregate((one, next) => $"{one}{between}{next}");

    private void CheckCollar(CurveCheck check, string what, Length collar, string work, string? field, string segment)
    {
        if (check.Passes)
            return;
        FormattableString hollow = check.Measured > 0
            ? $"The {what} has an inside radius of {CurveLength.ToLength(check.Measured, StepDirection.Down)}; the collar for {work} has {collar}."
            : (FormattableString)$"The {what} has an inside corner, which the collar for {work} does not enter; it has a radius of {collar}.";
        Report(Rules.InsideRadius, hollow, Either(check.Remedies), field, segment);
    }

    // Panels under or over an arch: their own edge must be followed and keep a field, and their flanks must have room to swell.
    private void CheckPanelCurves(CutterSet cutters)
    {
        (string Work, Length Radius)[] collars =
        [
            .. cutters.RaiseCollarRadius is { } raising ? [("raising", raising.Value)] : Array.Empty<(string, Length)>(),
            .. cutters.BackCutCollarRadius is { } backCut ? [("the back-cut", backCut.Value)] : Array.Empty<(string, Length)>(),
        ];
        if (!parts.Exists(part => (part.TopArch ?? part.BottomArch) is not null && part.Work.Contains(EdgeWork.JoinStaves)
            && (!SurelyKeepsPlay(part, cutters) || IsRaised(part) && (collars.Length > 0 || !SurelyKeepsField(part, cutters.RaiseWidth!.Value.Value)))))
        {
            return;
        }

        // What cannot be built has no curves, such as an arch with a mid stile in it.
        if (findings.Skip(firstFinding).Any(finding => finding.Severity == Severity.CannotBuild))
            return;
        foreach (var curve in LeafCurves.Of(parts, cutters).Panels)
        {
            if (!curve.Panel.Work.Contains(EdgeWork.JoinStaves))
                continue;
            foreach (var edge in ArchedEdges(curve, CurveLength.Inches(cutters.GrooveDepth.Value)))
            {
                if (IsRaised(curve.Panel))
                    CheckPanelCollars(curve.Panel, edge, collars);
                if (!SurelyKeepsPlay(curve.Panel, cutters))
                    CheckFlank(curve.Panel, edge, cutters);
            }

            if (IsRaised(curve.Panel))
                CheckField(curve, cutters.RaiseWidth!.Value.Value);
        }

        bool IsRaised(Part part) => cutters.RaiseWidth is not null && part.Work.Contains(EdgeWork.RaiseFourEdges);
    }

    // An arched edge of a panel, seen as if it were the upper one.
    private sealed record ArchedEdge(string End, ArchShape Arch, ArchedLight Light);

    private static IEnumerable<ArchedEdge> ArchedEdges(PanelCurve curve, double depth)
    {
        var (panel, seen, whole) = (curve.Panel, curve.Panel.VisibleBounds, curve.Panel.Outline);
        double Play(Length into) => depth - CurveLength.Inches(into);
        var (top, bottom) = (Play(whole.Top - seen.Top), Play(seen.Y - whole.Y));
        var light = curve.Light.Arched with { GrooveDepth = depth, SideClearance = Play(seen.X - whole.X) };
        if (panel.TopArch is { } arch)
            yield return new("top", arch, light with { EndClearance = bottom, ArchClearance = top });
        if (panel.BottomArch is { } under)
        {
            yield return new("bottom", under, light with
            {
                Top = light.Bottom!.TurnedOver(),
                Bottom = panel.TopArch is null ? null : light.Top.TurnedOver(),
                EndClearance = top,
                ArchClearance = bottom,
            });
        }
    }

    private void CheckPanelCollars(Part panel, ArchedEdge edge, IReadOnlyList<(string Work, Length Radius)> collars)
    {
        foreach (var (work, radius) in collars)
        {
            CheckCollar(
                ArchChecks.Collar(edge.Arch.Family, LeafCurves.SizesOf(edge.Arch), drawn => LightCurves.PanelEdge(edge.Light with { Top = LeafCurves.InLeaf(edge.Arch, drawn), Bottom = null }), CurveLength.Inches(radius)),
                panel.Name, radius, work, null, SegmentOf(panel));
        }
    }

    // By season the wood tells how far a panel grows; else it grows as far as the standard's clearance across the grain lets it: until it bottoms there.
    private void CheckFlank(Part panel, ArchedEdge edge, CutterSet cutters)
    {
        var growth = GrowthOf(panel);
        var play = FlankPlay.Of(edge.Light, CurveLength.Inches(growth), panel.Grain!.Value);
        if (play.Least >= -CurveTolerance.SamePlaceInches)
            return;
        var least = play.ArchClearance is { } enough ? OnStepUp(enough - CurveTolerance.SamePlaceInches) : (Length?)null;
        Report(Rules.FlankBottoms,
            $"Grown by {(BySeason ? Rounded(growth) : growth)}, which is {(BySeason ? "what it swells by the wettest" : "all its play across the grain")}, the panel presses {CurveLength.ToLength(-play.Least, StepDirection.Up)} into the groove of the {edge.End} rail beside the arch, where it has {CurveLength.ToLength(edge.Light.ArchClearance!.Value, StepDirection.Nearest)} of clearance.",
            least is { } value && value < cutters.GrooveDepth.Value
                ? $"Let the clearance at an arch be at least {value}, or use a flatter curve."
                : (FormattableString)$"No clearance that leaves the panel in its groove is enough; use a flatter curve, or a deeper groove.",
            "overrides/panel.clearance-arch", SegmentOf(panel));
    }

    private void CheckField(PanelCurve curve, Length raise)
    {
        // A panel whose box keeps no field is told already.
        var least = standard[Settings.LeastField].Length;
        if (curve.Panel.Outline.Width - (raise * 2) < least || curve.Panel.Outline.Height - (raise * 2) < least
            || ArchChecks.Field(curve.Edge, CurveLength.Inches(raise), CurveLength.Inches(least)) is not { Passes: false } field)
        {
            return;
        }

        var left = CurveLength.ToLength(field.Measured, StepDirection.Down);
        Report(Rules.RaiseClosesToPoint,
            left.IsZero ? $"A raise of {raise} closes to a point where the panel's edge curves." : (FormattableString)$"A raise of {raise} leaves a field of {left} under the curve; the least is {least}.",
            field.Remedies.Count > 0 ? Either(field.Remedies) : $"Use a flat panel.", "panel", SegmentOf(curve.Panel));
    }

    private static string SegmentOf(Part part) => part.Path[(part.Path.LastIndexOf('/') + 1)..];

    // Told without drawing the curves: most panels.
    private bool SurelyKeepsPlay(Part panel, CutterSet cutters)
    {
        var growth = GrowthOf(panel);
        var (seen, whole) = (panel.VisibleBounds, panel.Outline);
        return Keeps(panel.TopArch, whole.Top - seen.Top) && Keeps(panel.BottomArch, seen.Y - whole.Y);

        bool Keeps(ArchShape? arch, Length into)
        {
            var clearance = cutters.GrooveDepth.Value - into;
            return arch is null || clearance >= growth / 2
                || panel.Grain == GrainDirection.Vertical && seen.Width >= arch.Span.Length && Drawn(arch) is ArchResult.Drawn(var curve)
                    && FlankPlay.SurelyNone(curve, CurveLength.Inches(arch.Shoulder?.Length ?? default), CurveLength.Inches(cutters.GrooveDepth.Value),
                        CurveLength.Inches(cutters.GrooveDepth.Value - (seen.X - whole.X)), CurveLength.Inches(clearance), CurveLength.Inches(growth));
        }
    }

    // Beside the arches the panel is high enough, and no bulge of its edge is as round as the raise is wide: most panels, told at once.
    private bool SurelyKeepsField(Part panel, Length raise)
    {
        var low = panel.Outline.Height - (panel.TopArch?.Rise.Length ?? default) - (panel.BottomArch?.Rise.Length ?? default);
        return low - (raise * 2) >= standard[Settings.LeastField].Length && IsFlatter(panel.TopArch) && IsFlatter(panel.BottomArch);

        bool IsFlatter(ArchShape? arch) => arch is null || Drawn(arch) is ArchResult.Drawn(var curve)
            && curve.Chain.Segments.All(segment => segment is not ArcSegment { SweepRadians: < 0 } bulge || bulge.Radius > CurveLength.Inches(raise));
    }

    // "Let the rise be at most 2 in, or the shoulders at least 1 in.": values on the cutting step, on the side that works.
    private FormattableString Either(IReadOnlyList<ArchLimit> limits)
    {
        if (limits.Count == 0)
            return $"Use a rounder curve.";
        var words = new List<string>();
        var values = new List<object>();
        foreach (var limit in limits)
        {
            var side = limit.Side switch { LimitSide.AtLeast => "at least", LimitSide.AtMost => "at most", _ => "exactly" };
            words.Add($"{Words(limit.Measure)} {(words.Count == 0 ? "be " : "")}{side} {{{values.Count}}}");
            values.Add(limit.Measure == ArchMeasure.ReverseToCrown
                ? Fractions.Fraction.FromDoubleRounded(limit.Value, 6)
                : limit.Side == LimitSide.Exactly ? CurveLength.ToLength(limit.Value, StepDirection.Nearest)
                : CurveLength.ToLength(limit.Value, StepDirection.Nearest).OnStep(standard[Settings.Step].Length, StepDirection.Nearest) is var near
                    && Math.Abs(CurveLength.Inches(near) - limit.Value) < 1e-9 ? near
                : CurveLength.ToLength(limit.Value, limit.Side == LimitSide.AtLeast ? StepDirection.Up : StepDirection.Down)
                    .OnStep(standard[Settings.Step].Length, limit.Side == LimitSide.AtLeast ? StepDirection.Up : StepDirection.Down));
        }

        return System.Runtime.CompilerServices.FormattableStringFactory.Create($"Let {string.Join(", or ", words)}.", [.. values]);
    }

    private Length OnStepUp(double inches) => CurveLength.ToLength(inches, StepDirection.Up).OnStep(standard[Settings.Step].Length, StepDirection.Up);

    private static string Words(ArchMeasure measure) => measure switch
    {
        ArchMeasure.Span => "the span",
        ArchMeasure.Rise => "the rise",
        ArchMeasure.Shoulder => "the shoulders",
        ArchMeasure.Step => "the step",
        ArchMeasure.PointRadius => "the radius of the arcs",
        ArchMeasure.ReverseToCrown => "the reverse radius over the crown's",
        ArchMeasure.RaiseWidth => "the raise",
        ArchMeasure.CollarRadius => "the collar's radius",
        ArchMeasure.StileWidth => "the stile's width",
        _ => throw new ArgumentOutOfRangeException(nameof(measure)),
    };

    private static string Field(ArchMeasure measure) => measure switch
    {
        ArchMeasure.Shoulder => "shoulder",
        ArchMeasure.ReverseToCrown => "reverseToCrown",
        _ => "rise",
    };

    private void CheckMidStile(ArchShape arch, string end, string segment, Length x, Worked width, Worked clearWidth)
    {
        if (arch.Repeats > 1 || IsUnderShoulder(arch, x, width, clearWidth))
            return;
        var from = x - FrameLeft;
        Report(Rules.MidStileUnderArch, $"A mid stile stands {from} from the stile, where the {end} rail is not straight.",
            $"Give each light its own arch (\"perLight\"), or leave the mid stile out of that row.", "midStiles", segment);
    }

    private Length FrameLeft => parts.First(part => part.Path.EndsWith("/stile.left", StringComparison.Ordinal)).Finished.Width.Length;

    private void CheckLeaf(bool hasMidRails, bool hasMidStiles, bool isDivided)
    {
        if (plan.IsDrawerFront)
            return;
        var tallest = standard[Settings.TallestUndivided].Length;
        if (!hasMidRails && Height.Length > tallest)
            Report(Rules.TallUndivided, $"The door is {Height} high and has no mid rail.", $"Add a mid rail; over {tallest} one is called for.", "midRails");
        var widest = standard[Settings.WidestDoor].Length;
        if (!hasMidStiles && Width.Length > widest)
        {
            Report(Rules.WideUndivided, $"The door is {Width} wide{(isDivided ? ", undivided across" : "")}; beyond {widest} makers do not answer for flatness.",
                $"Make a pair of it, or divide it with a mid stile.");
        }
    }

    private void CheckStock(Stock stock, CutterSet? cutters)
    {
        if (cutters is not null && (stock.Planed.Value < cutters.ThinnestStock.Value || stock.Planed.Value > cutters.ThickestStock.Value))
        {
            Report(Rules.StockOutsideCutters,
                $"'{stock.Name}' is planed to {stock.Planed.Value}; '{cutters.Name}' takes {cutters.ThinnestStock.Value} to {cutters.ThickestStock.Value}.",
                $"Choose stock between the two, or other cutters.", "stock");
        }

        CheckFinal(stock);
    }

    private void CheckFinal(Stock stock)
    {
        var final = stock.Planed.Value - (stock.FaceLoss?.Value ?? default) - (stock.BackLoss?.Value ?? default);
        if (stock.Least is { } least && final < least.Value)
        {
            Report(Rules.FinalTooThin, $"'{stock.Name}' ends at {final} after sanding, below its least of {least.Value}.",
                $"Plane to {least.Value + (stock.FaceLoss?.Value ?? default) + (stock.BackLoss?.Value ?? default)}, or sand less.", "stock");
        }
    }

    private void CheckWide(Worked across, string segment)
    {
        foreach (var machine in standard.Standard.Machines)
        {
            if (machine.Kind is MachineKind.Planer or MachineKind.Sander && machine.Widest is { } widest && across.Length > widest.Value)
            {
                Report(Rules.WiderThanMachine, $"It is {across.Length} wide across the grain; {machine.Name} takes {widest.Value}.",
                    $"Glue it up in halves that fit, plane or sand them, and join them last.", null, segment);
            }
        }

        var practice = standard[Settings.WidestPanel].Length;
        if (across.Length > practice)
        {
            Report(Rules.WiderThanPractice, $"It is {across.Length} wide across the grain, beyond the {practice} that common practice holds.",
                $"Divide the light, or use sheet.", "panel", segment);
        }
    }

    private void CheckPanel(
        LightFilling filling, string segment, PartSize finished, Worked horizontal, Worked vertical, CutterSet cutters, Worked depth, Worked? across, Worked? along, Worked? atArch)
    {
        var solid = filling.Kind != PanelKind.FlatSheet;
        if (solid && (across!.Amount.IsZero || along!.Amount.IsZero))
        {
            Report(Rules.NoClearance, $"A solid panel is given {across} of play across the grain and {along} along it.",
                $"Leave play both ways: a panel that cannot move opens joints or splits.", "overrides/panel.clearance-across", segment);
        }

        if (atArch is { Amount.IsZero: true })
        {
            Report(Rules.NoClearance, $"A solid panel is given {atArch} of play at its arch.",
                $"Leave play there too: a panel that cannot move opens joints or splits.", "overrides/panel.clearance-arch", segment);
        }

        if (atArch is not null && atArch.Length >= depth.Length)
        {
            Report(Rules.ClearanceFillsGroove, $"The clearance at an arch of {atArch} is as deep as the groove of {depth}.",
                $"Leave less play there, or cut a deeper groove.", "overrides/panel.clearance-arch", segment);
        }

        if (across is not null && (across.Length >= depth.Length || along!.Length >= depth.Length))
        {
            Report(Rules.ClearanceFillsGroove, $"The clearance of {Length.Greatest(across.Length, along!.Length)} is as deep as the groove of {depth}.",
                $"Leave less play, or cut a deeper groove.", "overrides/panel.clearance-across", segment);
        }

        if (solid)
            CheckWide(finished.Width, segment);
        if (standard.Standard.StockOf(filling.Stock!) is { } stock && filling.Stock != design.Stock)
            CheckFinal(stock);
        if (filling.Kind != PanelKind.Raised)
            return;

        if (cutters.RaiseWidth is not { } raise)
        {
            Report(Rules.NoRaise, $"'{cutters.Name}' raises no panels.", $"Choose cutters with a raise, or a flat panel.", "cutters", segment);
            return;
        }

        var least = standard[Settings.LeastField].Length;
        var fieldWidth = horizontal.Length - (raise.Value * 2);
        var fieldHeight = vertical.Length - (raise.Value * 2);
        if (fieldWidth < least || fieldHeight < least)
        {
            var missing = Length.Greatest(least - fieldWidth, least - fieldHeight).OnStep(standard[Settings.Step].Length, StepDirection.Up);
            var narrowest = fieldWidth < least;
            Report(Rules.NoField,
                $"The raise of {raise.Value} leaves a field of {Shown(fieldWidth)} × {Shown(fieldHeight)}; the least is {least}.",
                $"The light must be {missing} {(narrowest ? "wider" : "taller")}; else use a flat panel or a slab.", "panel", segment);
        }
        else if (horizontal.Length < LeastForRaising || vertical.Length < LeastForRaising)
        {
            Report(Rules.ShortForRaising, $"The panel is {horizontal.Length} × {vertical.Length}, under {LeastForRaising} on a side.",
                $"Hold it in a jig, or raise it on a larger blank and cut it to size afterwards; keep hands away from the cutter.", null, segment);
        }

        static Length Shown(Length length) => length.IsNegative ? default : length;
    }

    private void CheckMachines()
    {
        var frame = parts.Where(part => part.Kind is PartKind.Stile or PartKind.Rail or PartKind.MidRail or PartKind.MidStile).ToList();
        CheckSize(Limits("narrowest", machine => machine.Kind == MachineKind.Sander ? null : machine.Narrowest), frame, part => part.GlueUp.Width, (narrow, least, limit) => new(
            Rules.NarrowForMachine,
            $"{Names(narrow)} {least} wide; {limit.Takers} nothing narrower than {limit.Least}.",
            $"Work a wider blank and rip it afterwards, or use a holder with featherboards."));
        var coped = frame.FindAll(part => part.Work.Contains(EdgeWork.CopeBothEnds));
        var shaper = Limits("shaper", machine => machine.Kind == MachineKind.Shaper ? machine.Shortest : null);
        CheckSize(shaper, coped, part => part.GlueUp.Length, (few, least, limit) => new(
            Rules.ShortForCoping,
            $"{Names(few)} {least} long; {limit.Takers} nothing under {limit.Least} for coping by hand.",
            $"Cope a double-wide blank, stick both edges, then rip it in two; or use a sled with clamp and backer. A longer blank cut afterwards helps sticking only, never coping."));
        CheckSize(shaper, frame.FindAll(part => !part.Work.Contains(EdgeWork.CopeBothEnds)), part => part.GlueUp.Length, (few, least, limit) => new(
            Rules.ShortForSticking,
            $"{Names(few)} {least} long; {limit.Takers} nothing under {limit.Least} by hand.",
            $"Stick a longer blank and cut it to length afterwards, or use a holder."));
        CheckSize(Limits("flattening", machine => machine.Kind is MachineKind.Jointer or MachineKind.Planer ? machine.Shortest : null), frame, part => part.Rough!.Length, (few, least, limit) => new(
            Rules.ShortForMachine,
            $"{Names(few)} {least} long in the rough; {limit.Takers} nothing under {limit.Least}.",
            $"Joint and plane them as one longer blank and crosscut afterwards."));
    }

    // A least size, and the machines that share it, as the start of a sentence: "the jointer and the planer take".
    private sealed record MachineLimit(Length Least, string Takers);

    private List<MachineLimit> Limits(string name, Func<Machine, LengthEntry?> limitOf) => standard.Once("machines", name, () =>
        standard.Standard.Machines.Where(machine => limitOf(machine) is not null).GroupBy(machine => limitOf(machine)!.Value.Value).Select(group =>
        {
            var names = group.Select(machine => machine.Name).ToList();
            return new MachineLimit(group.Key, names.Count == 1 ? $"{names[0]} takes" : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]} take");
        }).ToList());

    private sealed record SizeFinding(Rule Rule, FormattableString Problem, FormattableString Advice);

    // One finding for all machines that stop at the same limit.
    private void CheckSize(
        List<MachineLimit> limits, List<Part> candidates, Func<Part, Worked> sizeOf, Func<List<Part>, Length, MachineLimit, SizeFinding> tell)
    {
        foreach (var limit in limits)
        {
            var under = candidates.FindAll(part => sizeOf(part).Length < limit.Least);
            if (under.Count == 0)
                continue;
            var found = tell(under, under.Min(part => sizeOf(part).Length), limit);
            findings.Add(new(found.Rule, new(under[0].Path), found.Problem, found.Advice) { AlsoAt = [.. under.Skip(1).Select(part => new Place(part.Path))] });
        }
    }

    private static string Names(List<Part> some)
    {
        var names = some.Select(part => part.Kind switch
        {
            PartKind.Stile => "stiles",
            PartKind.Rail => "rails",
            PartKind.MidRail => "mid rails",
            _ => "mid stiles",
        }).Distinct().ToList();
        var all = names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
        return some.Count == 1 ? $"The {some[0].Name} is" : $"{char.ToUpperInvariant(all[0])}{all[1..]} are";
    }
}
