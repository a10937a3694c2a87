using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Shop;

/// <summary>Reads the shop's settings as the planner takes them.</summary>
internal static class SawReader
{
    /// <summary>Longest time a search may be given.</summary>
    public const int MostSeconds = 3_600;

    // No blade or bit of a home shop takes more; a larger one is a slip of the pen, such as 18 for 1/8.
    private static readonly Length MostKerf = Length.FromInches(1, 0, 1);
    private static readonly Length MostTrim = Length.FromInches(24, 0, 1);

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
        if (!Enum.IsDefined(settings.Unit))
            faults.Add(Fault.Of(nameof(settings.Unit), settings.Unit.ToString(), "is no unit"));
        if (!Enum.IsDefined(settings.Paper))
            faults.Add(Fault.Of(nameof(settings.Paper), settings.Paper.ToString(), "is no paper size"));
        return faults;
    }

    /// <summary>What the saw takes and can take, what is worth keeping, what the car carries; wrong texts add a fault and count
    /// as nothing.</summary>
    public static (SawSettings Saw, KeepRule Keep, CarryLimit? Carry) Read(ShopSettings settings, List<Fault> faults)
    {
        Length Size(string field, string text, Length most) =>
            Take(LengthText.Parse(text, settings.Unit), field, text, most, settings.Unit, faults);
        Length? Least(string field, string text) =>
            text.Trim().Length == 0
                ? null
                : Take(LengthText.ParsePositive(text, settings.Unit), field, text, LengthText.Longest, settings.Unit, faults);

        return (
            new SawSettings(
                Kerf(settings, faults),
                Size(nameof(settings.BoardEndTrim), settings.BoardEndTrim, MostTrim),
                Size(nameof(settings.SheetEdgeTrim), settings.SheetEdgeTrim, MostTrim)
            )
            {
                WidestRip = Least(nameof(settings.WidestRip), settings.WidestRip),
                LongestCrosscut = Least(nameof(settings.LongestCrosscut), settings.LongestCrosscut),
            },
            new KeepRule(
                Least(nameof(settings.KeepBoardLength), settings.KeepBoardLength),
                Least(nameof(settings.KeepSheetLength), settings.KeepSheetLength),
                Least(nameof(settings.KeepSheetWidth), settings.KeepSheetWidth)
            ),
            Carry(
                Least(nameof(settings.CarryLongest), settings.CarryLongest),
                Least(nameof(settings.CarryWidest), settings.CarryWidest),
                settings,
                faults
            )
        );
    }

    // Every blade takes wood: a kerf of nothing would plan each piece too near its neighbour.
    private static Length Kerf(ShopSettings settings, List<Fault> faults) =>
        Take(
            LengthText.ParsePositive(settings.Kerf, settings.Unit),
            nameof(settings.Kerf),
            settings.Kerf,
            MostKerf,
            settings.Unit,
            faults
        );

    // A side that is not limited may be as long as any.
    private static CarryLimit? Carry(Length? longest, Length? widest, ShopSettings settings, List<Fault> faults)
    {
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

    private static Length Take(Parsed<Length> parsed, string field, string text, Length most, LengthUnit unit, List<Fault> faults)
    {
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(field));
        else if (parsed.Value > most)
            faults.Add(Fault.Of(field, text, $"is more than {LengthFormat.WithUnit(most, unit)}, which is surely a slip"));
        else
            return parsed.Value;
        return Length.Zero;
    }
}
