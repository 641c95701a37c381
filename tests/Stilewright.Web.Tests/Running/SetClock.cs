namespace Stilewright.Web.Tests.Running;

/// <summary>A clock that stands until it is set.</summary>
public sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 1, 12, 18, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
