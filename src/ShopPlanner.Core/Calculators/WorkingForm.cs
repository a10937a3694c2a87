using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A working as a person asks for it, on a page or at the command line: keys with texts in, figures out.</summary>
/// <param name="Name">Stable name: <c>board-feet</c>.</param>
/// <param name="Title">Heading: <c>Board feet</c>.</param>
/// <param name="Says">What it answers, one plain sentence.</param>
/// <param name="Keys">What it takes.</param>
/// <param name="Read">Reads all keys, then returns what works the answer out; it is only asked to where every key was
/// right.</param>
public sealed record WorkingForm(
    string Name,
    string Title,
    string Says,
    ImmutableArray<FormKey> Keys,
    Func<FormReader, Func<FormOutcome>> Read
)
{
    /// <summary>Works it out.</summary>
    /// <param name="given">Texts by key; an empty text counts as not given.</param>
    /// <param name="unit">Unit of lengths without a suffix, and whether customary or metric units are meant.</param>
    public FormOutcome Run(IReadOnlyDictionary<string, string> given, LengthUnit unit)
    {
        var reader = new FormReader(this, given, unit);
        var work = Read(reader);
        return reader.Faults.Count > 0 ? new FormOutcome(null, [.. reader.Faults]) : work();
    }
}

/// <summary>What a key takes.</summary>
public enum KeyKind
{
    /// <summary>A length of more than zero.</summary>
    Length,

    /// <summary>A length of zero or more.</summary>
    LengthOrZero,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A quantity with a unit, <c>75 lb</c>, <c>21 C</c>.</summary>
    Quantity,

    /// <summary>One of <see cref="FormKey.Choices"/>.</summary>
    Choice,

    /// <summary>A word or size, <c>1x3</c>.</summary>
    Text,
}

/// <summary>A key of a form.</summary>
/// <param name="Name">As typed at the command line: <c>width</c>.</param>
/// <param name="Label">As shown on the page.</param>
/// <param name="Kind">What it takes.</param>
public sealed record FormKey(string Name, string Label, KeyKind Kind)
{
    /// <summary>Text used where none is given; null where one must be given or may be left out (see <see
    /// cref="Optional"/>).</summary>
    public string? Default { get; init; }

    /// <summary>True where it may be left out without a default.</summary>
    public bool Optional { get; init; }

    /// <summary>What to choose from: the word typed and what it means.</summary>
    public ImmutableArray<FormChoice> Choices { get; init; } = [];

    /// <summary>Least value taken, in the key's own text (<c>1/4 in</c>, <c>0</c>); null for no limit.</summary>
    public string? Least { get; init; }

    /// <summary>Greatest value taken, in the key's own text.</summary>
    public string? Most { get; init; }

    /// <summary>Kind of quantity, for <see cref="KeyKind.Quantity"/>.</summary>
    public QuantityKind? Quantity { get; init; }

    /// <summary>A line of help; empty for none.</summary>
    public string Hint { get; init; } = "";
}

/// <summary>A choice of a key.</summary>
/// <param name="Word">As typed.</param>
/// <param name="Meaning">As shown.</param>
public sealed record FormChoice(string Word, string Meaning);

/// <summary>An answer, or the faults that say why there is none.</summary>
/// <param name="Answer">Null where there are faults.</param>
/// <param name="Faults">Each names its key.</param>
public sealed record FormOutcome(Answer? Answer, ImmutableArray<Fault> Faults)
{
    /// <summary>An answer.</summary>
    public static implicit operator FormOutcome(Answer answer) => From(answer);

    /// <summary>A fault.</summary>
    public static implicit operator FormOutcome(Fault fault) => From(fault);

    /// <summary>An answer.</summary>
    public static FormOutcome From(Answer answer) => new(answer, []);

    /// <summary>A fault.</summary>
    public static FormOutcome From(Fault fault) => new(null, [fault]);
}
