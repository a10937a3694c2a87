using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Shop;

internal sealed class ShopService(ShopWork work) : IShopService
{
    public Task<ShopSettings> GetAsync(CancellationToken cancel = default) => work.ReadAsync(db => ReadAsync(db, cancel), cancel);

    public Task<Outcome<ShopSettings>> SaveAsync(ShopSettings settings, CancellationToken cancel = default) =>
        work.WriteAsync(db => SaveAsync(db, settings, cancel), cancel);

    /// <summary>The settings stored, or the defaults.</summary>
    internal static async Task<ShopSettings> ReadAsync(ShopContext db, CancellationToken cancel) =>
        View(await db.Shops.AsNoTracking().SingleOrDefaultAsync(cancel) ?? Defaults());

    /// <summary>Stores settings, or says what is wrong with them.</summary>
    internal static async Task<Outcome<ShopSettings>> SaveAsync(ShopContext db, ShopSettings wanted, CancellationToken cancel)
    {
        var stored = await db.Shops.SingleOrDefaultAsync(cancel);
        var row = stored ?? Defaults();
        if (wanted.Version != row.Version)
            return Outcome.Conflict<ShopSettings>(
                new Fault(nameof(wanted.Version), "", "is not the latest: another device changed the settings. Load them again")
            );
        var rewritten = Rewrite(wanted, View(row));
        var faults = SawReader.Check(rewritten);
        if (faults.Count > 0)
            return Outcome.Faulty<ShopSettings>(faults);
        if (stored is null)
            db.Shops.Add(row);
        Take(row, rewritten);
        await db.SaveChangesAsync(cancel);
        return View(row);
    }

    // A text left as it was when the unit changes means the same length as before: 1/8 in must not become 1/8 mm.
    private static ShopSettings Rewrite(ShopSettings wanted, ShopSettings stored)
    {
        if (wanted.Unit == stored.Unit)
            return wanted;
        string In(string text, string before) => text == before ? UnitChange.Rewrite(text, stored.Unit, wanted.Unit) : text;
        return wanted with
        {
            Kerf = In(wanted.Kerf, stored.Kerf),
            BoardEndTrim = In(wanted.BoardEndTrim, stored.BoardEndTrim),
            SheetEdgeTrim = In(wanted.SheetEdgeTrim, stored.SheetEdgeTrim),
            KeepBoardLength = In(wanted.KeepBoardLength, stored.KeepBoardLength),
            KeepSheetLength = In(wanted.KeepSheetLength, stored.KeepSheetLength),
            KeepSheetWidth = In(wanted.KeepSheetWidth, stored.KeepSheetWidth),
            WidestRip = In(wanted.WidestRip, stored.WidestRip),
            LongestCrosscut = In(wanted.LongestCrosscut, stored.LongestCrosscut),
            GuideKerf = In(wanted.GuideKerf, stored.GuideKerf),
            MiterKerf = In(wanted.MiterKerf, stored.MiterKerf),
            MiterCrosscut = In(wanted.MiterCrosscut, stored.MiterCrosscut),
            HandKerf = In(wanted.HandKerf, stored.HandKerf),
            CarryLongest = In(wanted.CarryLongest, stored.CarryLongest),
            CarryWidest = In(wanted.CarryWidest, stored.CarryWidest),
        };
    }

    private static StoredShop Defaults() =>
        new()
        {
            HasTableSaw = true,
            Unit = LengthUnit.Inch,
            Kerf = Text(SawSettings.Usual.Kerf),
            BoardEndTrim = Text(SawSettings.Usual.BoardEndTrim),
            SheetEdgeTrim = Text(SawSettings.Usual.SheetEdgeTrim),
            KeepBoardLength = Text(KeepRule.Usual.BoardLength),
            KeepSheetLength = Text(KeepRule.Usual.SheetLength),
            KeepSheetWidth = Text(KeepRule.Usual.SheetWidth),
            Paper = PaperSize.Letter,
            CurrencySign = "$",
            PlanSeconds = 10,
        };

    private static string Text(Length? length) => length is { } given ? LengthFormat.Plain(given, LengthUnit.Inch).Text : "";

    private static void Take(StoredShop row, ShopSettings settings)
    {
        (row.Unit, row.Kerf, row.BoardEndTrim) = (settings.Unit, settings.Kerf, settings.BoardEndTrim);
        (row.SheetEdgeTrim, row.KeepBoardLength) = (settings.SheetEdgeTrim, settings.KeepBoardLength);
        (row.KeepSheetLength, row.KeepSheetWidth) = (settings.KeepSheetLength, settings.KeepSheetWidth);
        (row.WidestRip, row.LongestCrosscut) = (settings.WidestRip, settings.LongestCrosscut);
        (row.CarryLongest, row.CarryWidest) = (settings.CarryLongest, settings.CarryWidest);
        (row.HasTableSaw, row.HasGuideSaw) = (settings.HasTableSaw, settings.HasGuideSaw);
        (row.HasMiterSaw, row.HasHandSaw) = (settings.HasMiterSaw, settings.HasHandSaw);
        (row.GuideKerf, row.HandKerf) = (settings.GuideKerf, settings.HandKerf);
        (row.MiterKerf, row.MiterCrosscut) = (settings.MiterKerf, settings.MiterCrosscut);
        row.SetupCards = settings.SetupCards;
        (row.Paper, row.CurrencySign, row.PlanSeconds) = (settings.Paper, settings.CurrencySign, settings.PlanSeconds);
    }

    private static ShopSettings View(StoredShop row) =>
        new(
            row.Unit,
            row.Kerf,
            row.BoardEndTrim,
            row.SheetEdgeTrim,
            row.KeepBoardLength,
            row.KeepSheetLength,
            row.KeepSheetWidth,
            row.Paper,
            row.CurrencySign,
            row.PlanSeconds,
            row.Version
        )
        {
            WidestRip = row.WidestRip,
            LongestCrosscut = row.LongestCrosscut,
            CarryLongest = row.CarryLongest,
            CarryWidest = row.CarryWidest,
            HasTableSaw = row.HasTableSaw,
            HasGuideSaw = row.HasGuideSaw,
            GuideKerf = row.GuideKerf,
            HasMiterSaw = row.HasMiterSaw,
            MiterKerf = row.MiterKerf,
            MiterCrosscut = row.MiterCrosscut,
            HasHandSaw = row.HasHandSaw,
            HandKerf = row.HandKerf,
            SetupCards = row.SetupCards,
        };
}
