using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Tells which steps ask for an offcut, so that one is kept before the last is in the bin or the stove.</summary>
public static class OffcutTrials
{
    /// <summary>The sentence of such a step.</summary>
    internal const string Says = "Try the setting on an offcut of the same stock first.";

    /// <summary>Returns whether a step's setting is to be tried on an offcut of the same stock.</summary>
    public static bool AreAsked(WorkStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Says.Contains(Says);
    }
}
