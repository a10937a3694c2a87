namespace ShopPlanner.Web.Fields;

/// <summary>Handed down to the fields of a form: their texts are stored when the form is sent.</summary>
public sealed class DraftMark
{
    private DraftMark() { }

    /// <summary>The only one.</summary>
    public static DraftMark Value { get; } = new();
}
