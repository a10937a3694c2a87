using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>What is found wrong with a plan.</summary>
internal sealed class Findings
{
    private readonly ImmutableArray<Fault>.Builder _faults = ImmutableArray.CreateBuilder<Fault>();

    public ImmutableArray<Fault> Faults => _faults.ToImmutable();

    public void Add(string field, string value, string message) => _faults.Add(Fault.Of(field, value, message));

    public void Add(string field, long value, string message) =>
        Add(field, value.ToString(CultureInfo.InvariantCulture), message);

    public static string At(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");
}
