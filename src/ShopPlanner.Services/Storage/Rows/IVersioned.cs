namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A row with a number of its own that rises by one with every save and is checked against what was read.</summary>
internal interface IVersioned
{
    int Version { get; set; }
}
