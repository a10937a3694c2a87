using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

// A request as far as it could be read: null stands where a fault was noted. Only a draft without faults becomes a request.

/// <summary>A whole request, with the members that the rules between members need.</summary>
internal sealed record CutRequestDraft(
    LengthUnit Unit,
    SawDraft Saw,
    KeepRule Keep,
    MaterialDraft[] Materials,
    StockDraft[] Stock,
    PartDraft[] Parts,
    double? Seconds
)
{
    public StoreCuts? Store { get; init; }

    public CarryLimit? Carry { get; init; }

    /// <summary>Set by the rules: the first material of each id.</summary>
    public Dictionary<string, MaterialDraft> MaterialOf { get; } = new(StringComparer.Ordinal);

    /// <summary>The material meant, where it is known.</summary>
    public MaterialDraft? Find(DocumentValue material, string? id)
    {
        if (id is null)
            return null;
        if (MaterialOf.TryGetValue(id, out var found))
            return found;
        material.Refuse("is not the id of a material of this request");
        return null;
    }
}

/// <summary>The saw.</summary>
internal sealed record SawDraft(
    DocumentObject Source,
    Length? Kerf,
    Length? BoardEndTrim,
    Length? SheetEdgeTrim,
    Length? WidestRip,
    Length? LongestCrosscut
);

/// <summary>A material.</summary>
internal sealed record MaterialDraft(DocumentObject Source, string? Id, StockForm? Form, Length? Thickness, Length? Width);

/// <summary>A size of stock.</summary>
internal sealed record StockDraft(
    DocumentObject Source,
    string? Id,
    string? Material,
    Length? Length,
    Length? Width,
    Money? Price,
    int? Quantity,
    bool Offcut,
    bool StoreCuts
);

/// <summary>A kind of part.</summary>
internal sealed record PartDraft(
    DocumentObject Source,
    string? Id,
    string? Name,
    string? Material,
    Length? Length,
    Length? Width,
    Grain? Grain,
    int? Quantity
)
{
    public Length? FinishedLength { get; init; }

    public Length? FinishedWidth { get; init; }

    public string? PracticeFor { get; init; }
}
