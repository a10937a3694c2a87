using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>A document read, or the faults that say why there is none.</summary>
/// <param name="Document">Null where there are faults.</param>
/// <param name="Faults">Each names its member and value.</param>
public sealed record DesignReading(DesignDocument? Document, ImmutableArray<Fault> Faults);

/// <summary>Design documents as JSON (RFC 8259, UTF-8): <c>"format": "shop-planner/design", "version": 1</c>. What is written
/// reads back equal.</summary>
public static class DesignJson
{
    /// <summary>Name of the format.</summary>
    public const string Format = "shop-planner/design";

    /// <summary>The first version, still written where a design needs no more.</summary>
    public const int First = 1;

    /// <summary>The latest version that is read: free parts are repeated, turned, joined, shaped and edged.</summary>
    public const int Version = 2;

    /// <summary>The longest document that is read.</summary>
    public const int MostBytes = 1_000_000;

    /// <summary>Reads a document.</summary>
    /// <param name="json">UTF-8 text; a byte order mark is passed over.</param>
    public static DesignReading Read(ReadOnlyMemory<byte> json)
    {
        var (document, fault) = DesignText.Open(json);
        using (document)
            return fault is null ? Read(document!.RootElement) : new(null, [fault]);
    }

    /// <summary>Writes a document.</summary>
    public static string Write(DesignDocument document) => DesignWriter.Write(document);

    private static DesignReading Read(JsonElement root)
    {
        var faults = new List<Fault>();
        var node = new JsonNode(root, "", faults);
        if (node["format"].Required() is var format && faults.Count == 0 && format != Format)
            node["format"].Fail($"isn't a design: the format must be {Format}");
        if (faults.Count == 0 && node["version"].Whole() is { } version and not (>= 1 and <= Version))
            node["version"]
                .Fail(
                    version < 1
                        ? "isn't a version: the first one is 1"
                        : $"is a newer version than this program reads: at most {Version}"
                );
        if (faults.Count > 0)
            return new(null, FaultList.Cap(faults));
        var read = new DesignReader(node, faults).Read();
        return faults.Count > 0 ? new(null, FaultList.Cap(faults)) : new(read, []);
    }
}
