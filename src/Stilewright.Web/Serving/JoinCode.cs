using System.Security.Cryptography;
using System.Text;

namespace Stilewright.Web.Serving;

/// <summary>What a screen on the network must enter before it is let in. Made anew at every start, and shown on this computer alone.</summary>
public sealed class JoinCode
{
    private const int Digits = 6;

    public JoinCode()
    {
        Text = RandomNumberGenerator.GetString("0123456789", Digits);
        // A plain hash of six digits could be guessed one cookie after another, past the limit on guesses; the key of this start forbids it.
        Token = Convert.ToHexStringLower(HMACSHA256.HashData(RandomNumberGenerator.GetBytes(HMACSHA256.HashSizeInBytes), Encoding.UTF8.GetBytes(Text)));
    }

    public string Text { get; }

    /// <summary>What a screen that has joined carries in its cookie: a keyed hash of the code, worth nothing after the next start.</summary>
    public string Token { get; }

    /// <summary>Whether the digits entered are the code; spaces between them do not matter. Compared in constant time.</summary>
    public bool Is(string entered) => AreSame(string.Concat(entered.Where(letter => !char.IsWhiteSpace(letter))), Text);

    /// <summary>Whether a cookie was given by this start.</summary>
    public bool Gave(string? token) => token is not null && AreSame(token, Token);

    private static bool AreSame(string one, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));
}
