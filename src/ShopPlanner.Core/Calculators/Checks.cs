using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Calculators;

/// <summary>What must not be between the values of several keys.</summary>
/// <param name="Wrong">True where it is so.</param>
/// <param name="Key">The key to mend.</param>
/// <param name="Message">What is wrong and what would be right, reading on from the quoted value.</param>
internal readonly record struct Check(bool Wrong, string Key, string Message)
{
    /// <summary>The first that is wrong, quoting what was given or the default; null where all is well.</summary>
    public static Fault? First(FormReader reader, params ReadOnlySpan<Check> checks)
    {
        foreach (var check in checks)
            if (check.Wrong)
                return Fault.Of(check.Key, reader.Text(check.Key), check.Message);
        return null;
    }
}
