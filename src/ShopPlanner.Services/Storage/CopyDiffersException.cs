namespace ShopPlanner.Services.Storage;

/// <summary>A copy is whole, but not what it was made from: somebody wrote meanwhile, or rows were lost.</summary>
internal sealed class CopyDiffersException(string difference)
    : IOException($"The copy is not what it was made from: {difference}. It was deleted.");
