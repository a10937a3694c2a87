using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Benchmarks;

/// <summary>Which way items lie that an instance does not say it of.</summary>
public enum Turning
{
    /// <summary>As written.</summary>
    Fixed,

    /// <summary>Either way.</summary>
    Free,
}

/// <summary>
/// A published instance. Its kerf twin has the same optimum: sizes times ten, the kerf off every side of item and sheet, and a
/// saw of that kerf; the problem adds the kerf back.
/// </summary>
public sealed record SheetInstance(string Set, string Name, Turning Turning, SheetProblem Problem, double? Best, long Kerf)
{
    /// <summary>The instance once for each problem kind that applies to it: both when its items do not say.</summary>
    public static IEnumerable<SheetInstance> ReadAll(JsonElement json, long kerf)
    {
        var said = json.GetProperty("items").EnumerateArray().Select(item => item[3].ValueKind).ToHashSet();
        if (!said.Contains(JsonValueKind.False))
            yield return Read(json, kerf, Turning.Free, "best_known_guillotine_rotation");
        if (!said.Contains(JsonValueKind.True))
            yield return Read(json, kerf, Turning.Fixed, "best_known_guillotine_oriented");
    }

    private static SheetInstance Read(JsonElement json, long kerf, Turning turning, string best)
    {
        var scale = kerf > 0 ? 10 : 1;
        var sheet = json.GetProperty("sheet");
        var stock = new SheetStock(Side(sheet[0], scale, kerf) + kerf, Side(sheet[1], scale, kerf) + kerf, 1, null, false);
        ImmutableArray<SheetItem> items =
        [
            .. json.GetProperty("items")
                .EnumerateArray()
                .Select(item => new SheetItem(
                    Side(item[0], scale, kerf) + kerf,
                    Side(item[1], scale, kerf) + kerf,
                    item[3].ValueKind == JsonValueKind.Null ? turning == Turning.Free : item[3].GetBoolean(),
                    item[2].GetInt32()
                )),
        ];
        var kind = turning == Turning.Free ? "turning" : "fixed";
        return new(
            $"{InstanceFiles.Set(json)} {kind}",
            InstanceFiles.Name(json),
            turning,
            new([stock], items),
            InstanceFiles.FirstNumber(json, best),
            kerf
        );
    }

    /// <summary>A side as cut at the saw: without the kerf.</summary>
    private static long Side(JsonElement side, long scale, long kerf)
    {
        var length = (side.GetInt64() * scale) - kerf;
        return length > 0 ? length : throw new UsageException($"A kerf of {kerf} leaves nothing of a side of {side}.");
    }
}
