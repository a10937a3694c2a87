namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A step that can be undone and done again.</summary>
internal interface IUndoStep
{
    /// <summary>Its place among all steps.</summary>
    long Number { get; }

    /// <summary>Whether it is undone.</summary>
    bool Undone { get; }
}
