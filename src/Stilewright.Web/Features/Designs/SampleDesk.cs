using Stilewright.Measure;
using Stilewright.Web.Desk;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Designs;

/// <summary>The size of the sample leaf on one screen; it is kept there alone and saved nowhere.</summary>
public sealed class SampleDesk(string courseId, LengthUnit unit, LengthFormat format) : FieldDesk<SampleSize>(format.Unit)
{
    private SampleSize size = SampleSize.Usual(unit);

    public static LengthField<SampleSize> Width { get; } = new("width", "width", there => there.Width, (there, entry) => there with { Width = entry ?? there.Width })
    {
        IsOptional = false,
    };

    public static LengthField<SampleSize> Height { get; } = new("height", "height", there => there.Height, (there, entry) => there with { Height = entry ?? there.Height })
    {
        IsOptional = false,
    };

    public override string Id => $"{courseId}/sample";

    public override LengthUnit OwnUnit => unit;

    public override LengthFormat Format => new(ReaderUnit ?? unit, format.FinestDenominator);

    public override SampleSize Saved => size;

    public override Task<bool> SaveAsync(Func<SampleSize, SampleSize> edit)
    {
        size = edit(size);
        return Task.FromResult(true);
    }
}
