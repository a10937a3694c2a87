using System.Text.Json;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Demo;

internal sealed record DemoPart(
    string Mark,
    string Name,
    string Material,
    string Length,
    string Width,
    string Quantity,
    bool CanTurn,
    string Note
);

internal sealed record DemoProject(string Name, string Unit, string Note, IReadOnlyList<DemoPart> Parts);

internal sealed record DemoPrice(string Material, string Length, string Width, string Price, bool InStock);

internal sealed record DemoStore(string Name, string Unit, string Note, IReadOnlyList<DemoPrice> Prices);

internal sealed record DemoPiece(string Place, string Material, string Length, string Width, string Quantity, string Note);

internal sealed record DemoStock(string Unit, IReadOnlyList<DemoPiece> Pieces);

/// <summary>The demo as its files have it, which lie beside the program.</summary>
internal sealed record DemoFiles(IReadOnlyList<DemoProject> Projects, IReadOnlyList<DemoStore> Stores, DemoStock Stock)
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
        new(Read<List<DemoProject>>("projects.json"), Read<List<DemoStore>>("stores.json"), Read<DemoStock>("stock.json"));

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
