using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Shop;

/// <summary>Reads the shop's settings as the planner takes them.</summary>
internal static class SawReader
{
    /// <summary>Longest time a search may be given.</summary>
    public const int MostSeconds = 3_600;

    public static List<Fault> Check(ShopSettings settings)
    {
        var faults = new List<Fault>();
        Read(settings, faults);
        if (TextRules.Line(nameof(settings.CurrencySign), settings.CurrencySign, 6) is { } sign)
            faults.Add(sign);
        if (settings.PlanSeconds is < 1 or > MostSeconds)
            faults.Add(
                new Fault(
                    nameof(settings.PlanSeconds),
                    settings.PlanSeconds.ToString(System.Globalization.CultureInfo.InvariantCulture),
                    $"is not from 1 to {MostSeconds} seconds"
                )
            );
        if (settings.SetupCards is < 0 or > IShopService.Cards)
            faults.Add(Fault.Of(nameof(settings.SetupCards), $"{settings.SetupCards}", $"is not from 0 to {IShopService.Cards}"));
        if (!Enum.IsDefined(settings.Unit))
            faults.Add(Fault.Of(nameof(settings.Unit), settings.Unit.ToString(), "is not a unit"));
        if (!Enum.IsDefined(settings.Paper))
            faults.Add(Fault.Of(nameof(settings.Paper), settings.Paper.ToString(), "is not a paper size"));
        return faults;
    }

    /// <summary>Returns what the saws take and can take, what is worth keeping, what the car carries; a wrong text adds a fault
    /// and counts as nothing.</summary>
    public static (SawSettings Saw, KeepRule Keep, CarryLimit? Carry) Read(ShopSettings settings, List<Fault> faults)
    {
        var tools = ToolReader.Read(settings, faults);
        var read = new SizeReader(settings.Unit, faults);
        return (
            new SawSettings(
                tools.WidestKerf,
                read.Trim(nameof(settings.BoardEndTrim), settings.BoardEndTrim),
                read.Trim(nameof(settings.SheetEdgeTrim), settings.SheetEdgeTrim)
            )
            {
                WidestRip = tools.WidestRip,
                LongestCrosscut = tools.LongestCrosscut,
            },
            new KeepRule(
                read.Limit(nameof(settings.KeepBoardLength), settings.KeepBoardLength),
                read.Limit(nameof(settings.KeepSheetLength), settings.KeepSheetLength),
                read.Limit(nameof(settings.KeepSheetWidth), settings.KeepSheetWidth)
            ),
            Carry(read, settings, faults)
        );
    }

    // A side that is not limited may be as long as any.
    private static CarryLimit? Carry(SizeReader read, ShopSettings settings, List<Fault> faults)
    {
        var longest = read.Limit(nameof(settings.CarryLongest), settings.CarryLongest);
        var widest = read.Limit(nameof(settings.CarryWidest), settings.CarryWidest);
        if (longest is null && widest is null)
            return null;
        if (widest > longest)
            faults.Add(
                Fault.Of(
                    nameof(settings.CarryWidest),
                    settings.CarryWidest,
                    "is more than the longest piece: the width is a piece's shorter side"
                )
            );
        return new CarryLimit(longest ?? LengthText.Longest, widest ?? LengthText.Longest);
    }
}
