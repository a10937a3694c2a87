namespace ShopPlanner.Web.Frame;

/// <summary>Names the style sheets of a plain page that loads no others: one that is opened over a phone's slow line.</summary>
/// <param name="names">Files of <c>assets/styles</c>, in order.</param>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class StyleSheetsAttribute(params string[] names) : Attribute
{
    /// <summary>The names.</summary>
    public IReadOnlyList<string> Names => names;

    /// <summary>Whether the page shows drawings, which have a sheet of their own.</summary>
    public bool HasDrawings { get; init; }
}
