using System.Net;

namespace Stilewright.Web.Serving;

/// <summary>Tells the screen of the computer that the application runs on from those that come over the network.</summary>
internal static class ThisComputer
{
    /// <summary>Whether the request was made on this computer. Only the connection itself is believed: what a header says about who asked is not.</summary>
    public static bool Asks(HttpContext context) => context.Connection.RemoteIpAddress is { } address
        && IPAddress.IsLoopback(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address);
}
