using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>What reading a document gave: its content, or everything that is wrong with it.</summary>
/// <typeparam name="T">What the document holds.</typeparam>
/// <param name="Value">The content; null when there is a fault.</param>
/// <param name="Faults">What is wrong, at most <see cref="FaultList.MostTold"/>.</param>
/// <param name="More">How many more faults there are than are told.</param>
public sealed record DocumentReading<T>(T? Value, ImmutableArray<Fault> Faults, int More)
    where T : class
{
    /// <summary>The faults as lines for a person, the last of them <c>and 12 more</c> when not all are told.</summary>
    public IEnumerable<string> Lines()
    {
        foreach (var fault in Faults) yield return fault.ToString();
        if (More > 0) yield return string.Create(CultureInfo.InvariantCulture, $"and {More} more");
    }

    internal static DocumentReading<T> Of(T? value, FaultList faults) =>
        new(faults.Any ? null : value, faults.Told, faults.More);
}
