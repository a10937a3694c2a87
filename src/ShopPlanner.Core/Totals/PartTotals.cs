using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Totals;

/// <summary>Asks a working of parts: adds them up, enters what comes out, and tells what was added.</summary>
public static class PartTotals
{
    private static readonly ImmutableDictionary<string, Func<TotalAsked, PartTotal>> ByForm = new Dictionary<
        string,
        Func<TotalAsked, PartTotal>
    >
    {
        ["coats"] = FinishTotal.Of,
        ["weight"] = WeightTotal.Of,
        ["stability"] = StandingTotal.Of,
        ["movement"] = PanelTotals.Moving,
        ["glue-up"] = PanelTotals.Glued,
    }.ToImmutableDictionary();

    /// <summary>Names of the workings that can be asked of parts, in the order of the list of all.</summary>
    public static ImmutableArray<string> Forms { get; } =
    [.. WorkingForms.All.Select(form => form.Name).Where(name => ByForm.ContainsKey(name))];

    /// <summary>Whether a working can be asked of parts.</summary>
    public static bool Take(string form) => ByForm.ContainsKey(form);

    /// <summary>Adds up and asks.</summary>
    /// <param name="form">One of <see cref="Forms"/>.</param>
    /// <param name="parts">What is added up.</param>
    /// <param name="unit">Of the figures, and of <paramref name="more"/>.</param>
    /// <param name="more">What is entered besides; it comes before what the parts say.</param>
    public static PartTotal Of(WorkingForm form, TakenParts parts, LengthUnit unit, IReadOnlyDictionary<string, string> more)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(more);
        var total = ByForm[form.Name](new(form, parts, unit, more));
        return total with { Notes = [.. total.Notes, .. parts.Left] };
    }
}
