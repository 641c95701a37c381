using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Prints;

/// <summary>One thing that is no longer as it was handed out.</summary>
public abstract record Change
{
    private protected Change(string? path) => Path = path;

    /// <summary>The path of the part or the id of the project; null where it is neither.</summary>
    public string? Path { get; }

    /// <summary>What changed; lengths are put in the reader's unit when it is shown.</summary>
    public abstract FormattableString Sentence { get; }

    /// <summary>Lengths that were handed out, each beside what it is now.</summary>
    private protected virtual IReadOnlyList<(Length Was, Length Now)> Lengths => [];

    /// <summary>The sentence in the reader's unit, and in finer steps where was and now would be printed alike.</summary>
    public string Text(LengthFormat format)
    {
        LengthFormat[] finer = format.Unit == LengthUnit.Inch
            ? [format, new(LengthUnit.Inch, 64), LengthFormat.MillimetresToTenth] : [format];
        var telling = Lengths.Count == 0 ? format
            : finer.FirstOrDefault(each => Lengths.Any(pair => Figure(each, pair.Was) != Figure(each, pair.Now)));
        return telling is null ? FindingText.Say(Sentence, format) + ", by less than is printed" : FindingText.Say(Sentence, telling);
    }

    // The rounding mark alone does not tell two figures apart.
    private static string Figure(LengthFormat format, Length length) => format.Print(length).TrimStart(LengthFormat.RoundedMark[0]);
}

public enum SizeStage
{
    Finished,
    GlueUp,
    Rough,
}

/// <param name="Was">Null where it was handed out without a size of this stage.</param>
/// <param name="Now">Null where it has no size of this stage now.</param>
public sealed record SizeChange(HandedOutPart Part, SizeStage Stage, HandedOutSize? Was, HandedOutSize? Now) : Change(Part.Path)
{
    public override FormattableString Sentence => (Was, Now) switch
    {
        ({ } was, { } now) => $"{Part.Label} {Part.Name}: handed out at {was.Width:figure} × {was.Length}, now {now.Width:figure} × {now.Length} ({Words})",
        ({ } was, null) => $"{Part.Label} {Part.Name}: handed out at {was.Width:figure} × {was.Length}, now without such a size ({Words})",
        (null, { } now) => $"{Part.Label} {Part.Name}: handed out without such a size, now {now.Width:figure} × {now.Length} ({Words})",
        _ => throw new InvalidOperationException(),
    };

    private protected override IReadOnlyList<(Length Was, Length Now)> Lengths => Was is null || Now is null ? [] : [(Was.Width, Now.Width), (Was.Length, Now.Length)];

    private string Words => Stage switch
    {
        SizeStage.Finished => "finished",
        SizeStage.GlueUp => "into the clamps",
        _ => "rough",
    };
}

public enum ThicknessStage
{
    Rough,
    Planed,
    Sanded,
}

/// <param name="Was">Null where it was handed out without a thickness of this stage.</param>
/// <param name="Now">Null where it has no thickness of this stage now.</param>
public sealed record ThicknessChange(HandedOutPart Part, ThicknessStage Stage, Length? Was, Length? Now) : Change(Part.Path)
{
    public override FormattableString Sentence => (Was, Now) switch
    {
        ({ } was, { } now) => $"{Part.Label} {Part.Name}: handed out {was} thick, now {now} ({Words})",
        ({ } was, null) => $"{Part.Label} {Part.Name}: handed out {was} thick, now without such a thickness ({Words})",
        (null, { } now) => $"{Part.Label} {Part.Name}: handed out without such a thickness, now {now} ({Words})",
        _ => throw new InvalidOperationException(),
    };

    private protected override IReadOnlyList<(Length Was, Length Now)> Lengths => Was is { } was && Now is { } now ? [(was, now)] : [];

    private string Words => Stage switch
    {
        ThicknessStage.Rough => "rough",
        ThicknessStage.Planed => "planed",
        _ => "sanded",
    };
}

public sealed record MaterialChange(HandedOutPart Part, string Now) : Change(Part.Path)
{
    public override FormattableString Sentence => $"{Part.Label} {Part.Name}: handed out in {Part.Material}, now {Now}";
}

/// <summary>A part whose label or name is another; one that differs by the bench alone is told by <see cref="BenchChange"/>.</summary>
public sealed record Renaming(HandedOutPart Part, string Label, string Name) : Change(Part.Path)
{
    public override FormattableString Sentence => $"{Part.Label} {Part.Name}: now {Label} {Name}";
}

/// <param name="IsWithheld">Whether its leaf is still there but cannot be built.</param>
public sealed record PartGone(HandedOutPart Part, bool IsWithheld) : Change(Part.Path)
{
    public override FormattableString Sentence => IsWithheld
        ? $"{Part.Label} {Part.Name}: withheld now, since its leaf cannot be built"
        : (FormattableString)$"{Part.Label} {Part.Name}: no longer there";
}

public sealed record PartAdded(HandedOutPart Part) : Change(Part.Path)
{
    public override FormattableString Sentence => $"{Part.Label} {Part.Name}: new since";
}

public sealed record BenchChange(HandedOutProject Project, int Now) : Change(Project.Id)
{
    public override FormattableString Sentence => $"{Project.Name}: handed out for bench {Project.Bench}, now bench {Now}; its labels begin with {Now}";
}

public sealed record ProjectGone(HandedOutProject Project) : Change(Project.Id)
{
    public override FormattableString Sentence => $"Bench {Project.Bench}, {Project.Name}: no longer in the course; parts handed out: {Project.Parts.Count}";
}

public sealed record ProjectAdded(HandedOutProject Project) : Change(Project.Id)
{
    public override FormattableString Sentence => $"Bench {Project.Bench}, {Project.Name}: new in the course since; parts: {Project.Parts.Count}";
}

public sealed record ProjectEdited(HandedOutProject Project, string Now) : Change(Project.Id)
{
    public override FormattableString Sentence => $"Bench {Project.Bench}, {Project.Name}: handed out from revision {Project.Revision}, now {Now}";
}

public sealed record StandardChange(string Was, string WasRevision, string Now, string NowRevision) : Change((string?)null)
{
    public override FormattableString Sentence => $"House standard: handed out under {Was}, revision {WasRevision}, now {Now}, revision {NowRevision}";
}

public sealed record ProgramChange(string Was, string Now) : Change((string?)null)
{
    public override FormattableString Sentence => $"Program: handed out by version {Was}, now version {Now}";
}
