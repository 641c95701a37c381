namespace Stilewright.Web.Serving;

/// <summary>How screens reach the application, and what those on the network must enter.</summary>
/// <param name="code">Null where it listens on this computer alone.</param>
public sealed class Entrance(JoinCode? code)
{
    public JoinCode? Code => code;

    /// <summary>Where it can be reached, the one on this computer first; empty until it listens.</summary>
    public IReadOnlyList<string> Addresses { get; internal set; } = [];
}
