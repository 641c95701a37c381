namespace Stilewright.Web.Features.Join;

/// <summary>What joining writes into the log; never a code.</summary>
internal static partial class JoinLog
{
    [LoggerMessage(Level = LogLevel.Warning, Message = "Too many wrong join codes within a minute; no more are looked at for now.")]
    public static partial void Refused(ILogger log);
}
