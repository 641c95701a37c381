namespace Stilewright.Web.Serving;

/// <summary>Stops the guessing of the join code: after ten wrong ones in a minute, from all screens together, none is looked at for a while.</summary>
/// <remarks>Ten in a minute try half of all codes in five weeks; a code lasts until the program is stopped. Right codes are not
/// counted, so that a whole class can join in one minute.</remarks>
public sealed class GuessLimit(TimeProvider clock)
{
    /// <summary>Wrong codes allowed within <see cref="Window"/>.</summary>
    public const int Most = 10;

    private readonly Queue<DateTimeOffset> wrong = [];
    private readonly Lock gate = new();

    public static TimeSpan Window { get; } = TimeSpan.FromMinutes(1);

    /// <summary>Checks a guess.</summary>
    /// <returns>Null where too many were wrong just now, and this one was not looked at.</returns>
    public bool? Check(Func<bool> isRight)
    {
        lock (gate)
        {
            var now = clock.GetUtcNow();
            while (wrong.TryPeek(out var oldest) && now - oldest >= Window)
                wrong.Dequeue();
            if (wrong.Count >= Most)
                return null;
            if (isRight())
                return true;
            wrong.Enqueue(now);
            return false;
        }
    }
}
