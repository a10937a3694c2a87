using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Shared;

/// <summary>Faults as sentences.</summary>
public static class FaultWords
{
    /// <summary>For beside the field: the value and what is wrong with it, e.g. <c>'12 1/0' is not a length: …</c></summary>
    public static string Beside(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return Sentences.Capital(After(fault));
    }

    /// <summary>For after the field's name, on the same line.</summary>
    public static string After(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return fault.Value.Length > 0 ? $"‘{fault.Value}’ {fault.Message}." : fault.Message + ".";
    }

    /// <summary>With the field's name, for lists.</summary>
    public static string Line(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        var subject = (fault.Field.Length, fault.Value.Length) switch
        {
            (0, 0) => "",
            (0, _) => $"‘{fault.Value}’ ",
            (_, 0) => Sentences.Capital(fault.Field) + " ",
            _ => $"{Sentences.Capital(fault.Field)}: ‘{fault.Value}’ ",
        };
        return subject.Length == 0 ? Sentences.Capital(fault.Message) + "." : $"{subject}{fault.Message}.";
    }

    /// <summary>The first fault of a field, beside it; null when there is none.</summary>
    public static string? For(IEnumerable<Fault> faults, string field) =>
        faults.FirstOrDefault(fault => string.Equals(fault.Field, field, StringComparison.OrdinalIgnoreCase)) is { } fault
            ? Beside(fault)
            : null;
}
