namespace Stilewright.Cli.Layout;

/// <summary>A column of a grid.</summary>
/// <param name="IsFigure">Whether it holds sizes or counts, which are set to the right.</param>
internal readonly record struct Column(string Heading, bool IsFigure = false)
{
    public static Column Figure(string heading) => new(heading, true);

    public static implicit operator Column(string heading) => new(heading);
}
