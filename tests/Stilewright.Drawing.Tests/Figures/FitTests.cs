using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Tests.Figures;

public class FitTests
{
    private static Scene Plain(Scale scale) =>
        new("", "", scale.OnPaper(30.Inches) + 10, scale.OnPaper(20.Inches) + 10, []) { Scale = scale };

    // 30 in at 1:8 is 95.25 mm on paper, at 1:4 190.5 mm.
    [Theory]
    [InlineData(200.5, 200, 4, true)]
    [InlineData(200.4, 200, 8, true)]
    [InlineData(500, 60, 12, true)]
    [InlineData(12, 12, 96, false)]
    public void Largest_scale_that_fits_is_taken(double width, double height, int reduction, bool fits)
    {
        var fitted = Fit.Largest(LengthUnit.Inch, width, height, Plain);
        Assert.Equal(new Scale(reduction), fitted.Scene.Scale);
        Assert.Equal(fits, fitted.Fits);
        Assert.Equal(fitted.Scene, Fit.Largest(LengthUnit.Inch, width, height, Plain, (30.Inches, 20.Inches)).Scene);
    }

    [Fact]
    public void Scales_at_which_the_thing_is_too_large_are_not_drawn()
    {
        List<Scale> drawn = [];
        Fit.Largest(LengthUnit.Millimetre, 110, 110, scale =>
        {
            drawn.Add(scale);
            return Plain(scale);
        }, (30.Inches, 20.Inches));
        Assert.Equal([new Scale(10)], drawn);
    }
}
