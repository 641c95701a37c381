using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

// Where hinges go: the outer ones by the shop's distance, moved by the least off what is in their way; leaves with one line in common
// move together; inner ones equally spaced.
internal sealed partial class HangingBuilder
{
    private static readonly Length LeastFromEnd = Length.FromInches(new Fractions.Fraction(3, 2));

    private static List<Band> Bands(SizedFront front, SizedLeaf leaf, HingeKind hinge, StandardInForce standard, Opening? opening)
    {
        List<Band> bands = [];
        var clear = standard[Settings.HingeClear];
        if (opening is { Shelves.Count: > 0 })
        {
            var reach = Reaches.Left(front, leaf, Side.Bottom);
            var isInset = front.Mount == Mount.Inset;
            for (var i = 0; i < opening.Shelves.Count; i++)
            {
                var shelf = opening.Shelves[i];
                Given Typed(string field, string label, LengthEntry entry) =>
                    new($"opening/shelf.{i + 1}.{field}", label, entry.Value, new(OriginKind.Opening, $"{opening.Id}/shelves/{i}/{field}"));
                Worked top = Typed("height", "shelf", shelf.Height);
                top = isInset ? top - reach : top + reach;
                var under = shelf.Thickness is { } thick ? top - Typed("thickness", "thickness of the shelf", thick) : top;
                bands.Add(new(under - clear, top + clear, "a shelf"));
            }
        }

        if (hinge.Cup is null)
            return bands;
        foreach (var part in leaf.Parts)
        {
            var box = part.VisibleBounds;
            if (part.Kind == PartKind.MidRail)
                bands.Add(new(Edge("lower", box.Y) - clear, Edge("upper", box.Top) + clear, "the joint of a mid rail"));
            // A cope's tongue ends short of a cup that the stile holds at all; deeper joints do not.
            else if (part.Kind == PartKind.Rail && part.Work.Any(work => work is EdgeWork.TenonBothEnds or EdgeWork.DowelBothEnds or EdgeWork.LooseTenonBothEnds))
                bands.Add(part.Path.EndsWith("/rail.bottom", StringComparison.Ordinal)
                    ? new(Edge("lower", default) - clear, Edge("upper", part.Outline.Top) + clear, "the joint of a rail")
                    : new(Edge("lower", part.Outline.Y) - clear, Edge("upper", leaf.Height.Length) + clear, "the joint of a rail"));

            Given Edge(string end, Length at) => new($"leaf/{part.Path[(part.Path.LastIndexOf('/') + 1)..]}.{end}", $"{end} edge of the {(part.Kind == PartKind.MidRail ? "mid rail" : "rail")}", at, Origin.Datum);
        }

        return bands;
    }

    private void Place()
    {
        foreach (var line in hangings.GroupBy(one => (one.Line, one.Leaf.Place.Y, one.FromStart.Length)))
            Outer([.. line], isFirst: true);
        foreach (var line in hangings.GroupBy(one => (one.Line, one.Leaf.Place.Top, one.FromEnd.Length)))
            Outer([.. line], isFirst: false);
        foreach (var line in hangings.GroupBy(one => (one.Line, one.Leaf.Place.Y, one.Leaf.Place.Top,
            one.Number.Count.Amount, one.First!.FromStart.Length, one.Last!.FromEnd.Length)))
        {
            Inner([.. line]);
        }
    }

    private void Outer(IReadOnlyList<Hanging> line, bool isFirst)
    {
        var shortest = line.Min(one => one.Along.Length);
        var all = line.SelectMany(one => one.Bands.Select(band => (Of: one, Band: isFirst ? band : band.Turned(one.Along)))).ToList();
        foreach (var one in line)
        {
            var ideal = isFirst ? one.FromStart : one.FromEnd;
            var (place, why) = Free(one, ideal, all, Length.Least(LeastFromEnd, ideal.Length), shortest / 2) ?? Stuck(one, ideal, isFirst ? "first" : "last");
            var other = (one.Along - place).As(isFirst ? "from the other end" : "hinge from the start", isFirst ? "hinge/from-other" : "hinge/from-start");
            if (isFirst)
                one.First = new(place, other, why);
            else
                one.Last = new(other, place, why);
        }
    }

    private void Inner(IReadOnlyList<Hanging> line)
    {
        var all = line.SelectMany(one => one.Bands.Select(band => (Of: one, Band: band))).ToList();
        foreach (var one in line)
        {
            one.Places.Add(one.First!);
            var between = (int)one.Number.Count.Amount - 1;
            var span = (one.Last!.FromStart - one.First!.FromStart).As("between the outer hinges", "hinge/span");
            for (var i = 1; i < between; i++)
            {
                var ideal = (one.First.FromStart + (i == 1 ? span / between : i * span / between)).On(one.Standard[Settings.Step], StepDirection.Nearest).As("hinge from the start", $"hinge/inner.{i}");
                // Within a quarter of the spacing, so that two never come nearer than half of it.
                var near = span.Length / (4 * between);
                var (place, why) = Free(one, ideal, all, ideal.Length - near, ideal.Length + near) ?? Stuck(one, ideal, "middle");
                one.Places.Add(new(place, (one.Along - place).As("from the other end", $"hinge/inner.{i}.other"), why));
            }

            one.Places.Add(one.Last);
        }
    }

    // The nearest free place on the cutting step; of two as near, the lower one. Where the line has none, the leaf's own bands decide alone.
    private static (Worked Place, string? Why)? Free(Hanging one, Worked ideal, IReadOnlyList<(Hanging Of, Band Band)> bands, Length least, Length greatest)
    {
        return Search(bands) ?? Search([.. bands.Where(each => each.Of == one)]);

        (Worked, string?)? Search(IReadOnlyList<(Hanging Of, Band Band)> among)
        {
            if (among.FirstOrDefault(each => each.Band.Holds(ideal.Length)) is not { Band: { } met } held)
                return (ideal, null);
            var step = one.Standard[Settings.Step];
            var found = among.SelectMany(each => new[] { each.Band.Low.On(step, StepDirection.Down), each.Band.High.On(step, StepDirection.Up) })
                .Where(edge => edge.Length >= least && edge.Length <= greatest && !among.Any(each => each.Band.Holds(edge.Length)))
                .MinBy(edge => (Length.Abs(edge.Length - ideal.Length).Inches, edge.Amount));
            if (found is null)
                return null;
            var why = held.Of == one ? $"it keeps clear of {met.Why}" : $"it lines up with {held.Of.Leaf.Label}, which keeps clear of {met.Why}";
            return (new Chosen(why, found, ideal).As(ideal is Named named ? named.Label : "hinge", ideal is Named same ? same.Key : "hinge/place"), why);
        }
    }

    private (Worked, string?) Stuck(Hanging one, Worked ideal, string which)
    {
        var met = one.Bands.FirstOrDefault(band => band.Holds(ideal.Length)) ?? one.Bands.Select(band => band.Turned(one.Along)).First(band => band.Holds(ideal.Length));
        findings.Add(new(Rules.HingeNoPlace, new(one.Leaf.Path, $"overrides/{Settings.HingeClear.Key}"),
            $"The {which} hinge, {ideal} along, meets {met.Why}, and no place near it is free.", $"Move what is in its way, or keep hinges clear by less than {one.Standard[Settings.HingeClear]}."));
        return (ideal, null);
    }
}
