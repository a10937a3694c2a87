using System.Security.Cryptography;
using System.Text;

namespace ShopPlanner.Services.Common;

/// <summary>Secrets that nobody guesses, and what is kept of them.</summary>
internal static class Secrets
{
    // Without I, L, O and U, which are taken for others or make words.
    private const string Letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private const int CodeLetters = 10,
        TokenBytes = 32,
        LinkBytes = 16;

    /// <summary>256 bits, for a cookie.</summary>
    public static string Token() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));

    /// <summary>128 bits, for an address.</summary>
    public static string Link() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(LinkBytes));

    /// <summary>50 bits that a person can type, in two groups of five; it lives for minutes and allows few tries.</summary>
    public static string Code() => RandomNumberGenerator.GetString(Letters, CodeLetters).Insert(CodeLetters / 2, "-");

    /// <summary>What is kept of a secret: from it, the secret cannot be told. It needs no slow hash, as it is no word that
    /// somebody chose.</summary>
    public static string Kept(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>A code as a person may have typed it.</summary>
    public static string Plain(string code) => new([.. code.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit).Select(Meant)]);

    /// <summary>Whether two texts are the same; how long it takes says nothing about how much of a guess is right.</summary>
    public static bool AreSame(string one, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));

    private static char Meant(char letter) =>
        letter switch
        {
            'I' or 'L' => '1',
            'O' => '0',
            _ => letter,
        };
}
