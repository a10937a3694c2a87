using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Designs;

/// <summary>The designs that lie beside the program, read once.</summary>
internal sealed class BuiltInDesigns
{
    private readonly Lazy<ImmutableArray<DesignView>> all = new(Read);

    /// <summary>By name.</summary>
    /// <exception cref="ShopStartException">A file is missing or cannot be read.</exception>
    public ImmutableArray<DesignView> All => all.Value;

    private static ImmutableArray<DesignView> Read()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "designs");
        return [.. Directory.GetFiles(folder, "*.json").Select(Read).OrderBy(one => one.Document.Name, StringComparer.Ordinal)];
    }

    private static DesignView Read(string file)
    {
        var reading = DesignJson.Read(File.ReadAllBytes(file));
        return reading.Document is { } document
            ? new(Path.GetFileNameWithoutExtension(file), null, document, null, 0)
            : throw new ShopStartException($"The design {file} cannot be read: {reading.Faults[0]}.");
    }
}
