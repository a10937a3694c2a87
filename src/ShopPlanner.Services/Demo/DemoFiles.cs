using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Demo;

/// <summary>A project of the demo.</summary>
/// <param name="Design">Key of the built-in design.</param>
/// <param name="Note">Of the project.</param>
/// <param name="Sizes">Texts by dimension, where they differ from the design's.</param>
/// <param name="IsCutting">Whether it is planned and half cut.</param>
internal sealed record DemoProject(string Design, string Note, ImmutableSortedDictionary<string, string> Sizes, bool IsCutting);

internal sealed record DemoPrice(string Material, string Length, string Width, string Price, bool InStock);

internal sealed record DemoStore(string Name, string Unit, string Note, IReadOnlyList<DemoPrice> Prices);

internal sealed record DemoPiece(string Place, string Material, string Length, string Width, string Quantity, string Note);

internal sealed record DemoStock(string Unit, IReadOnlyList<DemoPiece> Pieces);

/// <summary>What the demo's shop cuts with, beside the usual table saw.</summary>
internal sealed record DemoSaws(string WidestRip, bool HasGuideSaw, bool HasMiterSaw, string MiterCrosscut);

/// <summary>When the demo's people work.</summary>
/// <param name="Hours">Hours of each weekday, by its English name, as somebody types them.</param>
/// <param name="People">How many.</param>
/// <param name="Clamps">How many there are.</param>
/// <param name="Drying">How many pieces can dry at a time.</param>
/// <param name="LeftOut">Projects that wait, by the key of their design.</param>
internal sealed record DemoHours(
    ImmutableSortedDictionary<string, string> Hours,
    string People,
    string Clamps,
    string Drying,
    IReadOnlyList<string> LeftOut
);

/// <summary>The demo as its files have it, which lie beside the program.</summary>
internal sealed record DemoFiles(
    IReadOnlyList<DemoProject> Projects,
    IReadOnlyList<DemoStore> Stores,
    DemoStock Stock,
    DemoSaws Saws,
    DemoHours Weekends
)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>Reads all files.</summary>
    /// <exception cref="ShopStartException">One is missing or cannot be read.</exception>
    public static DemoFiles Read() =>
        new(
            Read<List<DemoProject>>("projects.json"),
            Read<List<DemoStore>>("stores.json"),
            Read<DemoStock>("stock.json"),
            Read<DemoSaws>("saws.json"),
            Read<DemoHours>("weekends.json")
        );

    private static T Read<T>(string name)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "demo", name);
        try
        {
            using var stream = File.OpenRead(file);
            return JsonSerializer.Deserialize<T>(stream, Options) ?? throw new JsonException("it is empty");
        }
        catch (Exception problem) when (problem is IOException or JsonException or UnauthorizedAccessException)
        {
            throw new ShopStartException(
                $"The demo file {file} cannot be read: {problem.Message.ReplaceLineEndings(" ")} Start without the demo.",
                problem
            );
        }
    }
}
