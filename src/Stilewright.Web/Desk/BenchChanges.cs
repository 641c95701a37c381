using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Web.Desk;

/// <summary>How one bench differs between two states: other sizes, and what is found that was not.</summary>
/// <param name="Course">The name of the course.</param>
/// <param name="Parts">How many parts differ in any size.</param>
/// <param name="Most">The greatest difference of any width or length.</param>
public sealed record BenchChanges(
    string Course, int Bench, string Name, int Parts, Length Most, IReadOnlyList<SizeChange> Sizes, IReadOnlyList<Finding> Found)
{
    public bool IsEmpty => Sizes.Count == 0 && Found.Count == 0;

    /// <summary>Compares one project worked out twice.</summary>
    /// <param name="before">With one project.</param>
    /// <param name="after">With the same project.</param>
    public static BenchChanges Between(Breakdown before, Breakdown after, LengthFormat format)
    {
        var words = new TradeWords(format);
        List<SizeChange> sizes = [];
        var most = Length.Zero;
        var parts = 0;
        var (oldLeaves, newLeaves) = (LeavesOf(before), LeavesOf(after));
        foreach (var path in newLeaves.Keys.Concat(oldLeaves.Keys).Distinct())
        {
            var (old, now) = (oldLeaves.GetValueOrDefault(path), newLeaves.GetValueOrDefault(path));
            Compare(path, (now ?? old)!.Label, "leaf", "finished", old is null ? null : (old.Width, old.Height), now is null ? null : (now.Width, now.Height));
            var (oldParts, newParts) = (PartsOf(old), PartsOf(now));
            foreach (var part in newParts.Keys.Concat(oldParts.Keys).Distinct())
            {
                var (was, will) = (oldParts.GetValueOrDefault(part), newParts.GetValueOrDefault(part));
                var said = sizes.Count;
                var either = (will ?? was)!;
                Compare(part, either.Label, either.Name, "finished", Pair(was?.Finished), Pair(will?.Finished));
                // A part that is new, or gone, is told once.
                if (was is not null && will is not null)
                {
                    Compare(part, either.Label, either.Name, "into the clamps", Pair(was.GlueUp), Pair(will.GlueUp));
                    Compare(part, either.Label, either.Name, "rough", Pair(was.Rough), Pair(will.Rough));
                    if (was.Thickness?.Final.Amount != will.Thickness?.Final.Amount)
                        sizes.Add(new(part, either.Label, either.Name, "thick", words.Of(was.Thickness?.Final), words.Of(will.Thickness?.Final)));
                    if (Curve(was) != Curve(will))
                        sizes.Add(new(part, either.Label, either.Name, "arch", Curve(was), Curve(will)));
                }

                if (sizes.Count > said)
                    parts++;
            }
        }

        var known = before.Findings.Select(finding => (finding.Rule.Code, finding.Place)).ToHashSet();
        var project = after.Projects[0].Project;
        return new(after.Course.Name, project.Bench, project.Name, parts, most, sizes,
            [.. after.Findings.Where(finding => finding.Severity != Severity.Note && !known.Contains((finding.Rule.Code, finding.Place)))]);

        void Compare(string path, string label, string name, string stage, (Worked Width, Worked Length)? was, (Worked Width, Worked Length)? now)
        {
            if (was is { } one && now is { } other)
            {
                var (width, length) = (Difference(one.Width, other.Width), Difference(one.Length, other.Length));
                if (width.IsZero && length.IsZero)
                    return;
                most = Length.Greatest(most, Length.Greatest(width, length));
            }
            else if (was is null && now is null)
            {
                return;
            }

            sizes.Add(new(path, label, name, stage, was is { } before ? words.Size(before.Width, before.Length) : null, now is { } after ? words.Size(after.Width, after.Length) : null));
        }

        string Curve(Part part) => part.Arch is null && part.TopArch is null && part.BottomArch is null ? "straight"
            : string.Join("; ", new[] { part.Arch, part.TopArch, part.BottomArch }.OfType<ArchShape>().Select(words.Arch));
    }

    private static Length Difference(Worked one, Worked other) => Length.Abs(one.Length - other.Length);

    private static (Worked, Worked)? Pair(PartSize? size) => size is null ? null : (size.Width, size.Length);

    private static Dictionary<string, SizedLeaf> LeavesOf(Breakdown breakdown) => breakdown.Leaves.ToDictionary(leaf => leaf.Path, StringComparer.Ordinal);

    private static Dictionary<string, Part> PartsOf(SizedLeaf? leaf) => (leaf?.Parts ?? []).ToDictionary(part => part.Path, StringComparer.Ordinal);
}
