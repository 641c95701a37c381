using System.Globalization;

namespace Stilewright.Web.Serving;

/// <summary>The log of an ordinary evening: silent, until something fails; then one plain line for the person at the keyboard.</summary>
/// <param name="terminal">Where lines are written.</param>
internal sealed class FaultNotice(TextWriter terminal, TimeProvider clock) : ILoggerProvider, ILogger
{
    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Error;

    // The message may hold an address or what was typed; what kind of fault it was is enough here.
    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        if (IsEnabled(logLevel))
            terminal.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.GetLocalNow():HH:mm} Something failed ({exception?.GetType().Name ?? eventId.Name ?? "no more is known"}). What was saved is safe. Start with --log to see what it is."));
    }

    public void Dispose()
    {
    }
}
