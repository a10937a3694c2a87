using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Waits of the finish: those of the can in hand where they were entered, else the usual ones.</summary>
public static class FinishWaits
{
    /// <summary>Keys of <see cref="WorkChoices.Hours"/> that the finish reads, each with what has to pass.</summary>
    public static ImmutableDictionary<string, string> Keys { get; } =
        new Dictionary<string, string>
        {
            ["recoat"] = "From one coat to the next",
            ["cure"] = "From the last coat to use",
            ["primer"] = "From primer to paint",
            ["stain"] = "From stain to the next coat",
            ["filler"] = "From grain filler to the next coat",
            ["conditioner"] = "From conditioner to stain",
            ["sealer"] = "From sealer to the next coat",
            ["putty"] = "From putty to the next coat",
            ["knots"] = "From shellac on knots to the next coat",
            ["oil"] = "From oil to a coat that isn't oil",
            ["damp"] = "From wetting the wood to sanding it",
        }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The wait after a step.</summary>
    /// <param name="choices">What the can in hand says.</param>
    /// <param name="key">One of <see cref="Keys"/>.</param>
    /// <param name="what">What has to pass.</param>
    /// <param name="usual">Hours where the can says nothing.</param>
    /// <param name="source">Where those come from.</param>
    internal static WorkWait Of(WorkChoices choices, string key, string what, double usual, SourceNote source) =>
        choices.Hours.TryGetValue(key, out var hours) && IsGood(hours)
            ? new(what, Minutes(hours), FinishSources.Can)
            : new(what, Minutes(usual), source);

    /// <summary>The wait after a step, of a figure where the can says nothing.</summary>
    internal static WorkWait Of(WorkChoices choices, string key, string what, Working<double> usual) =>
        Of(choices, key, what, usual.Value, usual.Source);

    /// <summary>The wait until a product can be coated.</summary>
    internal static WorkWait Of(WorkChoices choices, string key, string what, FinishProduct product) =>
        Of(choices, key, what, product.RecoatHours, product.RecoatSource);

    /// <summary>What is wrong with the hours that were entered.</summary>
    internal static IEnumerable<WorkFinding> Findings(WorkChoices choices) =>
        choices
            .Hours.Where(one => Keys.ContainsKey(one.Key) && !IsGood(one.Value))
            .OrderBy(one => one.Key, StringComparer.Ordinal)
            .Select(one => new WorkFinding(
                Severity.Watch,
                FormattableString.Invariant($"{Keys[one.Key]}: {one.Value} h isn't a wait. ")
                    + FormattableString.Invariant($"Enter 0 to {FinishFigures.LongestWait.Value} h. The usual one is used."),
                []
            ));

    private static bool IsGood(double hours) => hours >= 0 && hours <= FinishFigures.LongestWait.Value;

    private static int Minutes(double hours) => (int)Math.Ceiling(hours * 60);
}
