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
    /// The figure that tape readings make, or null where neither they nor the layout give both width and height, which a finding tells.
    /// lean = (D1² − D2² + left² − right²) / (4 × mean width), which with equal heights is
    /// (D1² − D2²) / (4 × width): exact where the bottom is level and the heights are taken plumb.
    /// </summary>
    /// <remarks>An end that was not read is taken as the nearest reading of its kind; where nothing of a kind was read, the layout's figure holds.</remarks>
    internal static OpeningFigure? Of(OpeningSite site, TapeReadings tape, StandardInForce standard, List<Finding> findings)
    {
        var opening = site.Opening;
        var inset = opening.Filling.Mount == Mount.Inset;
        var fit = opening.Readings?.Fit ?? OutOfSquareFit.Upright;
        var tolerance = standard[Settings.ReadingTolerance].Length;
        Place At(string? field = null) => new(opening.Id, field is null ? "readings" : $"readings/{field}");

        if ((tape.Widths.Start ?? site.Width) is not { } top || (tape.Widths.End ?? site.Width) is not { } bottom
            || (tape.Heights.Start ?? site.Height) is not { } left || (tape.Heights.End ?? site.Height) is not { } right)
        {
            findings.Add(NotMeasured());
            return null;
        }

        var widthBow = Bow(tape.Widths, "widthMiddle");
        var heightBow = Bow(tape.Heights, "heightMiddle");

        var halfDifference = ((bottom - top) / 2).As("half the taper", "opening/taper");
        var tapered = top.Length != bottom.Length;
        Worked? lean = null;
        if (tape is { Rising: { } one, Falling: { } two })
        {
            var meanWidth = tapered ? ((top + bottom) / 2).As("mean width", "opening/width.mean") : top;
            var squares = (one * one) - (two * two);
            if (left.Length != right.Length)
                squares = squares + (left * left) - (right * right);
            lean = (squares / (4 * meanWidth)).As("lean", "opening/lean");
            CheckReadings(one, two, meanWidth, left, right, lean);
        }
        else if (inset)
        {
            findings.Add(new(Rules.NoDiagonalsInset, At(tape.Rising is null ? "rising" : "falling"),
                $"An inset front of {opening.Id} is sized without diagonals; the opening may lean.", $"Take both diagonals, corner to corner, before cutting."));
        }
        else
        {
            findings.Add(new(Rules.NoDiagonalsOverlay, At(tape.Rising is null ? "rising" : "falling"),
                $"No diagonals were taken; the overlay may differ from corner to corner.", $"Take both diagonals."));
        }

        var topLeftX = Top(left: true);
        var topRightX = Top(left: false);
        Point[] corners =
        [
            default, new(bottom.Length, default), new(topRightX?.Length ?? bottom.Length, right.Length),
            new(topLeftX?.Length ?? default, left.Length),
        ];

        var around = !inset || fit == OutOfSquareFit.PlaneToFit;
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
        return new(
            FrontSizing.Called(width, "opening width", "opening/width"), FrontSizing.Called(height, "opening height", "opening/height"),
            offset, corners, lean, Reason());

        Finding NotMeasured()
        {
            var (lacksWidth, lacksHeight) = (!tape.Widths.IsRead && site.Width is null, !tape.Heights.IsRead && site.Height is null);
            var onlyDiagonals = lacksWidth && lacksHeight && tape.All.Count > 0 ? " Diagonals alone make no size." : "";
            return (lacksWidth, lacksHeight) switch
            {
                (true, true) => new(Rules.NotMeasured, At(), $"Neither its width nor its height is read yet, and no layout gives them.{onlyDiagonals}",
                    $"Measure the width at the top and the height at the left at least, and enter them; or enter the face's layout."),
                (true, _) => new(Rules.NotMeasured, At("widthTop"), $"Its width is not read yet, and no layout gives it.",
                    $"Measure the width at the top at least, and enter it."),
                _ => new(Rules.NotMeasured, At("heightLeft"), $"Its height is not read yet, and no layout gives it.",
                    $"Measure the height at the left at least, and enter it."),
            };
        }

        // A middle reading tells how far the members bow; each of the two is taken to bow by half.
        Worked? Bow(TapeReadings.Kind kind, string field)
        {
            if (kind is not { First: { } first, Middle: { } middle, Last: { } last })
                return null;
            var mean = (first + last) / 2;
            var bow = (middle - mean).As("bow", $"{middle.Key}.bow");
            if (Length.Abs(bow.Length) > tolerance)
            {
                findings.Add(new(Rules.Bowed, At(field),
                    $"The {middle.Label} is {middle}, the ends make {mean}: a bow of {Length.Abs(bow.Length)} {(bow.Amount.IsNegative ? "inwards" : "outwards")}.",
                    $"Straighten the member if it can be, or expect the gap to vary by that."));
            }

            return bow;
        }

        string Reason()
        {
            var read = (tape.Widths.IsRead, tape.Heights.IsRead) switch
            {
                (true, true) => "as measured",
                (true, false) => "width as measured, height by the layout",
                (false, true) => "height as measured, width by the layout",
                _ => "by the layout",
            };
            if (square && !Counts(widthBow) && !Counts(heightBow))
                return lean is null ? $"{read}; squareness not read" : $"{read}, and square";
            var rectangle = fit == OutOfSquareFit.PlaneToFit && inset ? "the largest reading, to be planed to the opening"
                : around ? "the smallest upright rectangle round the opening" : "the largest upright rectangle inside the opening";
            return tape.Widths.IsRead && tape.Heights.IsRead ? rectangle : $"{rectangle}; {read}";
        }

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

        static Given Zero(string label) => new("opening/bottom-left", label, default(Length), Origin.Datum);

        void CheckReadings(Worked one, Worked two, Worked meanWidth, Worked leftHeight, Worked rightHeight, Worked leanFound)
        {
            // Twice the mean square of the diagonals is what widths and heights leave for them.
            var square = ((2 * (meanWidth * meanWidth)) + (2 * (leanFound * leanFound)) + (leftHeight * leftHeight) + (rightHeight * rightHeight)) / 2;
            var expected = new SquareRoot(square);
            var read = new SquareRoot(((one * one) + (two * two)) / 2);
            var amount = Length.Abs(read.Length - expected.Length);
            if (amount > tolerance)
            {
                findings.Add(new(Rules.ReadingsContradict, At(),
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
