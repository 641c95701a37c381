using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

public enum BoredRemedyKind
{
    TurnEndForEnd,
    ServeAnother,
    PlugAndBore,
}

/// <summary>One way to make good a leaf that is bored wrong.</summary>
/// <param name="Serves">The path of the leaf that it then is; the leaf's own where it stays itself.</param>
public sealed record BoredRemedy(BoredRemedyKind Kind, string Serves, FormattableString Words);

/// <summary>Whether a leaf is bored right, which door it is now, and what can be done if it is not.</summary>
/// <param name="Now">Where it is hinged as it is bored, seen from the front.</param>
/// <param name="Remedies">The lightest first; empty where it is right.</param>
public sealed record BoredRight(bool IsRight, HingeSide Now, FormattableString Words, IReadOnlyList<BoredRemedy> Remedies)
{
    /// <param name="plan">The whole course, in which another leaf may need what was bored.</param>
    /// <exception cref="ArgumentException">The leaf has no cups, or hangs from a level edge.</exception>
    public static BoredRight Of(HungLeaf leaf, BoredReading reading, HangingPlan plan)
    {
        var wanted = BoredLeaf.Wanted(leaf) ?? throw new ArgumentException("Only a leaf with cups on an upright edge is looked at.", nameof(leaf));
        var bored = reading.On(leaf.Leaf.Height.Length);
        var tolerance = leaf.Standard[Settings.Step].Length;
        var isDistanceRight = reading.Distance is not { } measured || leaf.Sheet!.Distance is var right && Length.Abs(measured - right.Length) <= tolerance;
        var now = bored.Hand == HingeSide.Left ? "left" : "right";
        if (bored.IsLike(wanted, tolerance) && isDistanceRight)
            return new(true, bored.Hand, $"It is bored right: a door hinged on its {now}, seen from the front.", []);

        FormattableString words = bored.Edge != wanted.Edge
            ? $"It is bored as a door hinged on its {now}, seen from the front; {leaf.Leaf.Label} is hinged on its {(leaf.Leaf.Hinge == HingeSide.Left ? "left" : "right")}."
            : !isDistanceRight ? (FormattableString)$"Its edge is right, but it is bored {reading.Distance!.Value} from the edge instead of {leaf.Sheet!.Distance}."
            : $"Its edge is right, but its cups are not where the sheet has them.";
        List<BoredRemedy> remedies = [];
        if (isDistanceRight)
        {
            if (!leaf.Hand.HasTop && bored.TurnedEndForEnd().IsLike(wanted, tolerance))
                remedies.Add(new(BoredRemedyKind.TurnEndForEnd, leaf.Leaf.Path, $"Turn it end for end: it looks the same, and its cups come right."));
            foreach (var other in plan.Leaves.Where(one => one.Leaf.Path != leaf.Leaf.Path && IsLike(leaf, one)))
            {
                var needs = BoredLeaf.Wanted(other);
                if (needs is null)
                    continue;
                if (bored.IsLike(needs, tolerance))
                    remedies.Add(new(BoredRemedyKind.ServeAnother, other.Leaf.Path, $"Use it as {other.Leaf.Label}, which is the same leaf hinged on its {now}, and make this one from that one's blank."));
                else if (!other.Hand.HasTop && bored.TurnedEndForEnd().IsLike(needs, tolerance))
                    remedies.Add(new(BoredRemedyKind.ServeAnother, other.Leaf.Path, $"Turn it end for end and use it as {other.Leaf.Label}."));
            }
        }

        remedies.Add(new(BoredRemedyKind.PlugAndBore, leaf.Leaf.Path,
            $"Plug the cups with face-grain plugs of {leaf.Hinge.Cup!.Diameter.WithUnit}, grain along the stile, level them and bore again. They stay in sight when the door is open; a new stile shows nothing."));
        return new(false, bored.Hand, words, remedies);
    }

    // The same leaf before it was bored, for the same boring distance.
    private static bool IsLike(HungLeaf one, HungLeaf other) => one.Hinge.Cup?.Diameter == other.Hinge.Cup?.Diameter && LeafShape.Of(one.Leaf) == LeafShape.Of(other.Leaf)
        && one.Sheet?.Distance.Length == other.Sheet?.Distance.Length;
}
