using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

/// <summary>Faces and fillers of a run as they stand, edge to edge, the bottoms of the frames in one line.</summary>
/// <remarks>What is scribed off a stile is gone, here as in the members between fronts. A stile's shown width, a filler and the
/// next stile's shown width are therefore the one member that two fronts share across the run.</remarks>
/// <param name="Items">Left to right.</param>
/// <param name="Width">From end to end, after scribing.</param>
public sealed record RunFigure(Run Run, IReadOnlyList<RunFigureItem> Items, Length Width)
{
    /// <summary>Null where a face of the run is unknown or has no frame figure.</summary>
    internal static RunFigure? Of(Run run, IEnumerable<FaceBreakdown> faces)
    {
        var framed = faces.Where(face => face.Frame is not null).ToDictionary(face => face.Face.Id);
        var items = new List<RunFigureItem>();
        var x = Length.Zero;
        foreach (var item in run.Items)
        {
            if (item is RunFiller filler)
                items.Add(new RunFigureFiller(x, filler.Width.Value));
            else if (item is RunFace stands && framed.TryGetValue(stands.Face, out var face))
                items.Add(RunFigureFace.At(x, face));
            else
                return null;
            x += items[^1].Width;
        }

        return new(run, items, x);
    }
}

/// <summary>A face or a filler where it stands.</summary>
/// <param name="X">Its left edge, from the left end of the run.</param>
/// <param name="Width">The width that shows.</param>
public abstract record RunFigureItem(Length X, Length Width);

/// <summary>A face in a run.</summary>
/// <param name="FrameX">Where places on the face are counted from: left of <paramref name="X"/> by what is scribed off the left stile.</param>
public sealed record RunFigureFace(FaceBreakdown Face, Length X, Length Width, Length FrameX) : RunFigureItem(X, Width)
{
    internal static RunFigureFace At(Length x, FaceBreakdown face)
    {
        var (left, right) = (Scribed(face.Face.Layout!.LeftStile), Scribed(face.Face.Layout.RightStile));
        return new(face, x, face.Frame!.Width - left - right, x - left);

        static Length Scribed(OuterStile stile) => stile.Scribe?.Value ?? default;
    }
}

public sealed record RunFigureFiller(Length X, Length Width) : RunFigureItem(X, Width);
