using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Calculators;

/// <summary>What must not be.</summary>
/// <typeparam name="T">What is looked at.</typeparam>
/// <param name="Key">The key to mend.</param>
/// <param name="When">Whether it is so.</param>
/// <param name="Message">What is wrong and what would be right, reading on from the quoted value.</param>
internal sealed record Refusal<T>(Func<T, string> Key, Func<T, bool> When, Func<T, string> Message)
{
    /// <summary>A refusal that names one key.</summary>
    public Refusal(string key, Func<T, bool> when, Func<T, string> message)
        : this(_ => key, when, message) { }

    /// <summary>A refusal in the same words for all values.</summary>
    public Refusal(string key, Func<T, bool> when, string message)
        : this(_ => key, when, _ => message) { }

    /// <summary>The value quoted; null for the text that was given, or the default.</summary>
    public Func<T, string?>? Quote { get; init; }

    /// <summary>The first that applies, as a fault; null where none does.</summary>
    public static Fault? First(ImmutableArray<Refusal<T>> refusals, T value, FormReader reader)
    {
        if (refusals.FirstOrDefault(one => one.When(value)) is not { } refusal)
            return null;
        var key = refusal.Key(value);
        return Fault.Of(key, refusal.Quote is { } quote ? quote(value) : reader.Text(key), refusal.Message(value));
    }
}
