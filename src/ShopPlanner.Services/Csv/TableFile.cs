using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>How a person says that a table is written; what is null is found out from the table.</summary>
public sealed record TableChoices
{
    /// <summary>Everything is found out.</summary>
    public static TableChoices Guess { get; } = new();

    /// <summary>What stands between cells: a comma, a semicolon or a tab.</summary>
    public char? Separator { get; init; }

    /// <summary>Whether a comma in a number is its decimal mark.</summary>
    public bool? CommaIsDecimal { get; init; }

    /// <summary>Of sizes that name no unit and whose heading names none.</summary>
    public LengthUnit? Unit { get; init; }
}

/// <summary>How a table was read.</summary>
/// <param name="Separator">What stands between its cells.</param>
/// <param name="CommaIsDecimal">Whether a comma in a number is its decimal mark.</param>
/// <param name="Unit">Of sizes that name none.</param>
public sealed record TableFormat(char Separator, bool CommaIsDecimal, LengthUnit Unit);

/// <summary>A table in a file.</summary>
/// <param name="Bytes">Text in UTF-8, or in UTF-16 with its mark.</param>
public sealed record TableFile(ReadOnlyMemory<byte> Bytes)
{
    /// <summary>How it is written, as far as a person says so.</summary>
    public TableChoices Choices { get; init; } = TableChoices.Guess;

    /// <summary>A file about which nothing is said.</summary>
    public static implicit operator TableFile(ReadOnlyMemory<byte> bytes) => new(bytes);

    /// <summary>A file about which nothing is said.</summary>
    public static implicit operator TableFile(byte[] bytes) => new(bytes);
}
