using System.Security.Cryptography;
using System.Text;

namespace Stilewright.Web.Serving;

/// <summary>What a screen on the network must enter before it is let in. Made anew at every start, and shown on this computer alone.</summary>
public sealed class JoinCode
{
    private const int Digits = 6;

    public string Text { get; } = RandomNumberGenerator.GetString("0123456789", Digits);

    /// <summary>Compared in constant time.</summary>
    public bool Is(string entered) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(entered.Trim()), Encoding.UTF8.GetBytes(Text));
}
