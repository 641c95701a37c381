using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>The figure of an opening as it really is, its bottom left corner at the origin and its bottom edge level.</summary>
/// <param name="Width">Width of the upright rectangle that is used.</param>
/// <param name="Height">Height of the upright rectangle that is used.</param>
/// <param name="Offset">Bottom left corner of that rectangle.</param>
/// <param name="Corners">The figure's corners from the bottom left, anticlockwise.</param>
/// <param name="Lean">How far the top stands to the right of the bottom; null when no diagonals were read.</param>
/// <param name="Reason">Why this rectangle.</param>
public sealed record OpeningFigure(
    Worked Width, Worked Height, Point Offset, IReadOnlyList<Point> Corners, Worked? Lean, string Reason)
{
    /// <summary>The figure of an opening taken from its layout: square by construction.</summary>
    public static OpeningFigure Square(Worked width, Worked height, string reason) => new(
        width, height, default, new Rectangle(default, default, width.Length, height.Length).Corners, null, reason);

    /// <summary>
    /// The figure that tape readings make. lean = (D1² − D2² + left² − right²) / (4 × mean width), which with equal heights is
    /// (D1² − D2²) / (4 × width): exact where the bottom is level and the heights are taken plumb.
    /// </summary>
    internal static OpeningFigure Of(Opening opening, StandardInForce standard, List<Finding> findings)
    {
        var readings = opening.Readings!;
        var inset = opening.Filling.Mount == Mount.Inset;
        var place = new Place(opening.Id, "readings");
        var tolerance = standard[Settings.ReadingTolerance].Length;

        Given Read(string key, string label, LengthEntry entry) =>
            new($"opening/{key}", label, entry.Value, new(OriginKind.Opening, $"{opening.Id}/readings/{key}"));

        var widths = readings.Widths;
        var heights = readings.Heights;
        var top = Read("width.top", widths.Count == 1 ? "opening width" : "width at the top", widths[0]);
        var bottom = widths.Count == 1 ? top : Read("width.bottom", "width at the bottom", widths[^1]);
        var left = Read("height.left", heights.Count == 1 ? "opening height" : "height at the left", heights[0]);
        var right = heights.Count == 1 ? left : Read("height.right", "height at the right", heights[^1]);

        // A middle reading tells how far the members bow; each of the two is taken to bow by half.
        Worked? Bow(IReadOnlyList<LengthEntry> three, string key, string label, Worked first, Worked last)
        {
            if (three.Count != 3)
                return null;
            var middle = Read(key, label, three[1]);
            var mean = first.Equals(last) ? first : (first + last) / 2;
            var bow = (middle - mean).As("bow", $"{key}.bow");
            if (Length.Abs(bow.Length) > tolerance)
            {
                findings.Add(new(Rules.Bowed, place,
                    $"The {label} is {middle}, the ends make {mean}: a bow of {Length.Abs(bow.Length)} {(bow.Amount.IsNegative ? "inwards" : "outwards")}.",
                    $"Straighten the member if it can be, or expect the gap to vary by that."));
            }

            return bow;
        }

        var widthBow = Bow(widths, "width.middle", "width in the middle", top, bottom);
        var heightBow = Bow(heights, "height.middle", "height in the middle", left, right);

        var halfDifference = ((bottom - top) / 2).As("half the taper", "opening/taper");
        var tapered = top.Length != bottom.Length;
        Worked? lean = null;
        if (readings is { Rising: { } rising, Falling: { } falling })
        {
            var one = Read("rising", "rising diagonal", rising);
            var two = Read("falling", "falling diagonal", falling);
            var meanWidth = tapered ? ((top + bottom) / 2).As("mean width", "opening/width.mean") : (Worked)top;
            var squares = (one * one) - (two * two);
            if (left.Length != right.Length)
                squares = squares + (left * left) - (right * right);
            lean = (squares / (4 * meanWidth)).As("lean", "opening/lean");
            CheckReadings(one, two, meanWidth, left, right, lean);
        }
        else if (inset)
        {
            findings.Add(new(Rules.NoDiagonalsInset, place,
                $"An inset front of {opening.Id} is sized without diagonals; the opening may lean.", $"Take both diagonals, corner to corner, before cutting."));
        }
        else
        {
            findings.Add(new(Rules.NoDiagonalsOverlay, place,
                $"No diagonals were taken; the overlay may differ from corner to corner.", $"Take both diagonals."));
        }

        var topLeftX = Top(left: true);
        var topRightX = Top(left: false);
        Point[] corners =
        [
            default, new(bottom.Length, default), new(topRightX?.Length ?? bottom.Length, right.Length),
            new(topLeftX?.Length ?? default, left.Length),
        ];

        var around = !inset || readings.Fit == OutOfSquareFit.PlaneToFit;
        var square = topLeftX is null && left.Length == right.Length;
        var rectangleLeft = topLeftX is null ? null : around
            ? (Worked)new Least([Zero("bottom left corner"), topLeftX]) : new Greatest([Zero("bottom left corner"), topLeftX]);
        var rectangleRight = topRightX is null ? null : around
            ? (Worked)new Greatest([bottom, topRightX]) : new Least([bottom, topRightX]);

        var width = rectangleLeft is null ? bottom : rectangleRight! - rectangleLeft;
        var height = left.Length == right.Length ? left : around ? (Worked)new Greatest([left, right]) : new Least([left, right]);
        if (Counts(widthBow))
            width += widthBow!;
        if (Counts(heightBow))
            height += heightBow!;

        var offset = new Point(
            (rectangleLeft?.Length ?? default) - (Counts(widthBow) ? widthBow!.Length / 2 : default),
            -(Counts(heightBow) ? heightBow!.Length / 2 : default));
        var reason = square && !Counts(widthBow) && !Counts(heightBow)
            ? lean is null ? "as measured; squareness not read" : "as measured, and square"
            : readings.Fit == OutOfSquareFit.PlaneToFit && inset ? "the largest reading, to be planed to the opening"
            : around ? "the smallest upright rectangle round the opening" : "the largest upright rectangle inside the opening";
        return new(width.As("opening width", "opening/width"), height.As("opening height", "opening/height"), offset, corners, lean, reason);

        // A bow outwards must be covered, a bow inwards must be cleared; the other kind changes nothing.
        bool Counts(Worked? bow) => bow is not null && (around ? bow.Amount.IsPositive : bow.Amount.IsNegative);

        Worked? Top(bool left)
        {
            if (!tapered && (lean is null || lean.Amount.IsZero))
                return null;
            Worked x = left ? halfDifference : bottom - halfDifference;
            if (!tapered)
                x = left ? lean! : bottom + lean!;
            else if (lean is not null && !lean.Amount.IsZero)
                x += lean;
            return x.As(left ? "top left corner, from the left" : "top right corner, from the left", left ? "opening/top-left" : "opening/top-right");
        }

        static Given Zero(string label) => new("opening/bottom-left", label, default(Length), Origin.Typed);

        void CheckReadings(Worked one, Worked two, Worked meanWidth, Worked leftHeight, Worked rightHeight, Worked leanFound)
        {
            // Twice the mean square of the diagonals is what widths and heights leave for them.
            var square = ((2 * (meanWidth * meanWidth)) + (2 * (leanFound * leanFound)) + (leftHeight * leftHeight) + (rightHeight * rightHeight)) / 2;
            var expected = new SquareRoot(square);
            var read = new SquareRoot(((one * one) + (two * two)) / 2);
            var amount = Length.Abs(read.Length - expected.Length);
            if (amount > tolerance)
            {
                findings.Add(new(Rules.ReadingsContradict, place,
                    $"The diagonals are {one.Length} and {two.Length}, but widths and heights call for about {Rounded(expected.Length)}: {Rounded(amount)} apart.",
                    $"One reading is wrong. Measure the diagonals again, corner to corner, then the widths."));
            }
        }

        Length Rounded(Length length) => length.OnStep(standard[Settings.Step].Length, StepDirection.Nearest);
    }

    /// <summary>How far each edge of a leaf planed to the figure tapers over its length: left, right, top, bottom.</summary>
    public IReadOnlyDictionary<Side, Length> Tapers => new Dictionary<Side, Length>
    {
        [Side.Left] = Length.Abs(Corners[3].X - Corners[0].X),
        [Side.Right] = Length.Abs(Corners[2].X - Corners[1].X),
        [Side.Top] = Length.Abs(Corners[2].Y - Corners[3].Y),
        [Side.Bottom] = Length.Abs(Corners[1].Y - Corners[0].Y),
    };
}
