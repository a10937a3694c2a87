using System.Text.Json;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Plans.Bought;

namespace ShopPlanner.Web.Features.Shopping;

/// <summary>A piece that is bought, for the phone.</summary>
/// <param name="Place">Which piece of its line.</param>
/// <param name="Price">What was paid, in ten-thousandths.</param>
/// <param name="Is">Where it is.</param>
internal sealed record BoughtItem(int Place, long Price, BoughtState Is);

/// <summary>A line of boards or sheets, for the phone.</summary>
/// <param name="Asked">How many the plan cuts.</param>
/// <param name="Needed">How many the bench still needs, bought or not.</param>
/// <param name="Price">What one costs now, in ten-thousandths.</param>
/// <param name="Planned">What the plan counted on, in ten-thousandths.</param>
/// <param name="InStock">Whether the store had it when last seen.</param>
/// <param name="Bought">What is bought.</param>
internal sealed record LineItem(int Asked, int Needed, long Price, long Planned, bool InStock, IReadOnlyList<BoughtItem> Bought);

/// <summary>A line of hardware or supplies, for the phone.</summary>
/// <param name="Bought">Whether it is bought.</param>
/// <param name="Price">Of the whole line, in ten-thousandths; null where nobody said.</param>
internal sealed record SupplyItem(bool Bought, long? Price);

/// <summary>
/// A shopping list as its page's script knows it: what the server has, upon which the script draws what it has not sent yet.
/// </summary>
/// <param name="At">When it was read: of two states the later one counts.</param>
/// <param name="IsOpen">Whether boards can be bought.</param>
/// <param name="Spent">In ten-thousandths.</param>
/// <param name="Lines">By stock id.</param>
/// <param name="Supplies">By project and key.</param>
internal sealed record ShoppingState(
    long At,
    bool IsOpen,
    long Spent,
    IReadOnlyDictionary<string, LineItem> Lines,
    IReadOnlyDictionary<string, SupplyItem> Supplies
)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>How the page's script reads and writes.</summary>
    public static JsonSerializerOptions Format => Options;

    /// <summary>Returns the state of a list.</summary>
    public static ShoppingState Of(ShoppingList list) =>
        new(
            list.ReadUtc.Ticks / TimeSpan.TicksPerMillisecond,
            list.Plan?.IsOpen ?? false,
            list.Totals.Spent.Count,
            list.Lines.ToDictionary(line => line.Stock, Of),
            list.Supplies.SelectMany(project => project.Lines)
                .ToDictionary(KeyOf, line => new SupplyItem(line.Bought, line.Price?.Count))
        );

    /// <summary>Returns what a supply is called in the page.</summary>
    public static string KeyOf(SupplyLine line) => $"{line.Project} {line.Key}";

    /// <summary>Returns the state as the page holds it: no sign that could end the element.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    private static LineItem Of(StockLine line) =>
        new(
            line.Asked,
            line.Needed,
            line.Price.Count,
            line.Planned.Count,
            line.Now is null || line.InStock,
            [.. line.Bought.Select(one => new BoughtItem(one.Place, one.Price.Count, one.State))]
        );
}
