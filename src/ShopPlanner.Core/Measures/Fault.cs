namespace ShopPlanner.Core.Measures;

/// <summary>
/// Something wrong with what a person or a document gave: data, not an exception.
/// </summary>
/// <param name="Field">Where: the member's path in a document (<c>parts[3].length</c>) or the field's name; empty when only one
/// value was read.</param>
/// <param name="Value">The offending text as it was given, shortened to 60 characters.</param>
/// <param name="Message">What is wrong and what would be right, in a plain sentence without a full stop that reads on from the
/// quoted value: <c>is not a length: …</c></param>
public sealed record Fault(string Field, string Value, string Message)
{
    private const int ShownCharacters = 60;

    /// <summary>A fault about a value, which is shortened for showing.</summary>
    public static Fault Of(string field, string? value, string message)
    {
        var text = value ?? "";
        return new Fault(field, text.Length <= ShownCharacters ? text : text[..ShownCharacters] + "…", message);
    }

    /// <summary>The same fault at another place.</summary>
    public Fault At(string field) => this with { Field = field };

    /// <summary>One line: <c>parts[3].length: '12 1/0' is not a length: …</c></summary>
    public override string ToString() =>
        Field.Length + Value.Length == 0
            ? "the document " + Message
            : (Field.Length > 0 ? Field + ": " : "") + "'" + Value.ReplaceLineEndings(" ") + "' " + Message;
}
