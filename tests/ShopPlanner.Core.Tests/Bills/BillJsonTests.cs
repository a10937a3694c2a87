using System.Text.Json;
using ShopPlanner.Core.Bills;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>The open stock bill format.</summary>
public sealed class BillJsonTests
{
    private static JsonElement Write(string text) => JsonDocument.Parse(BillJson.Write(BillText.Read(text).Bill!)).RootElement;

    [Fact]
    public void Each_part_has_its_members()
    {
        var root = Write("2 rails, rough 1 x 4-1/2 x 24, finished 3/4 x 4 x 22-1/2 in., oak, S-4-S (shown dotted)\n4 hinges");
        Assert.Equal(
            ("shop-planner/stock-bill", 1, "in"),
            (Text(root, "format"), root.GetProperty("version").GetInt32(), Text(root, "unit"))
        );
        Assert.Equal("thickness-width-length", Text(root, "order"));
        var part = Assert.Single(root.GetProperty("parts").EnumerateArray());
        Assert.Equal(
            ("rails", "oak", "S-4-S", "shown dotted"),
            (Text(part, "name"), Text(part, "material"), Text(part, "surfacing"), Text(part, "note"))
        );
        Assert.Equal((1, 2), (part.GetProperty("line").GetInt32(), part.GetProperty("count").GetInt32()));
        Assert.Equal((0.75m, 4m, 22.5m), Size(part));
        Assert.Equal((1m, 4.5m, 24m), Size(part.GetProperty("bought")));
        Assert.Equal(JsonValueKind.Null, part.GetProperty("doubt").ValueKind);
        var other = Assert.Single(root.GetProperty("others").EnumerateArray());
        Assert.Equal(
            (2, "hardware", "4 hinges"),
            (other.GetProperty("line").GetInt32(), Text(other, "kind"), Text(other, "as_written"))
        );
    }

    [Fact]
    public void What_is_not_known_is_null_and_a_doubt()
    {
        var part = Write("rails, 4 by 22 in.\n4 legs, 20 by 40 by 700 mm").GetProperty("parts")[0];
        Assert.Equal(JsonValueKind.Null, part.GetProperty("count").ValueKind);
        Assert.Equal(JsonValueKind.Null, part.GetProperty("thickness").ValueKind);
        Assert.Contains("No count is written.", Text(part, "doubt"), StringComparison.Ordinal);
        Assert.Equal("rails, 4 by 22 in.", Text(part, "as_written"));
    }

    [Fact]
    public void Each_part_is_in_the_unit_it_is_written_in()
    {
        var parts = Write("2 rails, 3/4 by 4 by 22 in.\n4 legs, 20 by 40 by 700 mm").GetProperty("parts");
        Assert.Equal(["in", "mm"], parts.EnumerateArray().Select(part => Text(part, "unit")));
        Assert.Equal((20m, 40m, 700m), Size(parts[1]));
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString() ?? "";

    private static (decimal, decimal, decimal) Size(JsonElement part) =>
        (
            part.GetProperty("thickness").GetDecimal(),
            part.GetProperty("width").GetDecimal(),
            part.GetProperty("length").GetDecimal()
        );
}
