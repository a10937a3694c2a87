using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Totals;

/// <summary>A working asked of parts.</summary>
/// <param name="Form">The working.</param>
/// <param name="Parts">What is added up.</param>
/// <param name="Unit">Of the figures.</param>
/// <param name="More">What is entered besides.</param>
internal sealed record TotalAsked(WorkingForm Form, TakenParts Parts, LengthUnit Unit, IReadOnlyDictionary<string, string> More)
{
    /// <summary>Enters what the parts say, and what was entered besides.</summary>
    public PartQuestion Ask(string about, IEnumerable<KeyValuePair<string, string>> said, params ImmutableArray<PartAdded> added)
    {
        var given = said.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase).SetItems(More);
        return new(about, given, added, Form.Run(given, Unit));
    }

    /// <summary>No question, and why.</summary>
    public PartTotal None(string why) => new(Form, [], [why]);

    /// <summary>A length as it is entered.</summary>
    public string Enter(Length length) => LengthFormat.Exact(length, Unit);

    /// <summary>A length as a person reads it.</summary>
    public string Say(Length length) => LengthFormat.WithUnit(length, Unit);

    /// <summary>Length, width and thickness as a person reads them.</summary>
    public string Sizes(Length length, Length width, Length thickness) => $"{Say(length)} × {Say(width)} × {Say(thickness)}";
}
