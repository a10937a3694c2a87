using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Access;

/// <summary>
/// Passwords and what is kept of them: PBKDF2 with HMAC-SHA-512, salted. Source of the number of rounds: OWASP Application
/// Security Verification Standard 5.0.0, appendix C.
/// </summary>
internal static class Passwords
{
    /// <summary>Rounds of PBKDF2.</summary>
    public const int Rounds = 210_000;

    private const int Fewest = 10,
        Most = 200;

    private static readonly object Anybody = new();

    private static readonly PasswordHasher<object> Hasher = new(
        Options.Create(new PasswordHasherOptions { IterationCount = Rounds })
    );

    /// <summary>What is wrong with a new password; null where nothing is. Length counts, kinds of characters do not.</summary>
    public static Fault? Wrong(string password, string name) =>
        password switch
        {
            { Length: < Fewest } => new Fault("Password", "", $"is too short: choose at least {Fewest} characters"),
            { Length: > Most } => new Fault("Password", "", $"is too long: at most {Most} characters"),
            _ when password.Distinct().Count() < 4 => new Fault(
                "Password",
                "",
                "repeats itself: choose one that others don't guess"
            ),
            _ when name.Length > 2 && password.Contains(name, StringComparison.OrdinalIgnoreCase) => new Fault(
                "Password",
                "",
                "holds your name: choose one that others don't guess"
            ),
            _ => null,
        };

    /// <summary>What is kept of a password.</summary>
    public static string Kept(string password) => Hasher.HashPassword(Anybody, password);

    /// <summary>Whether a password is the one that was kept.</summary>
    public static bool IsRight(string kept, string password) =>
        password.Length <= Most && Hasher.VerifyHashedPassword(Anybody, kept, password) != PasswordVerificationResult.Failed;
}
