namespace Stilewright.Wording;

/// <summary>What was asked for by a name that a person typed, or why there is no such thing.</summary>
public abstract record Found<T>
{
    private Found()
    {
    }

    public sealed record There(T Thing) : Found<T>;

    /// <param name="Problem">In a sentence, with the nearest names where there are any.</param>
    public sealed record Missing(string Problem) : Found<T>;
}
