using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Shop;

/// <summary>The shop's own settings. Texts are in the shop's unit, as <see cref="LengthText"/> reads them.</summary>
/// <param name="Unit">Of new projects and of this record's texts.</param>
/// <param name="Kerf">Width of the table saw's cut.</param>
/// <param name="BoardEndTrim">Taken off one end of a new board to square it, kerf included.</param>
/// <param name="SheetEdgeTrim">Margin of a new sheet that is not used, along all four edges.</param>
/// <param name="KeepBoardLength">Least board leftover worth keeping; empty keeps none.</param>
/// <param name="KeepSheetLength">Least longer side of a sheet leftover worth keeping; empty keeps none.</param>
/// <param name="KeepSheetWidth">Least shorter side of a sheet leftover worth keeping; empty keeps none.</param>
/// <param name="Paper">Of packets.</param>
/// <param name="CurrencySign">Stands before amounts; may be empty.</param>
/// <param name="PlanSeconds">How long the planner keeps searching.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record ShopSettings(
    LengthUnit Unit,
    string Kerf,
    string BoardEndTrim,
    string SheetEdgeTrim,
    string KeepBoardLength,
    string KeepSheetLength,
    string KeepSheetWidth,
    PaperSize Paper,
    string CurrencySign,
    int PlanSeconds,
    int Version
)
{
    /// <summary>Whether there is a table saw.</summary>
    public bool HasTableSaw { get; init; } = true;

    /// <summary>The widest strip that fits between the table saw's blade and fence; empty for no limit.</summary>
    public string WidestRip { get; init; } = "";

    /// <summary>The longest crosscut that the table saw makes; empty for no limit.</summary>
    public string LongestCrosscut { get; init; } = "";

    /// <summary>Whether there is a track saw, or a circular saw with a guide.</summary>
    public bool HasGuideSaw { get; init; }

    /// <summary>The width of its cut; empty for the usual one.</summary>
    public string GuideKerf { get; init; } = "";

    /// <summary>Whether there is a miter saw.</summary>
    public bool HasMiterSaw { get; init; }

    /// <summary>The width of its cut; empty for the usual one.</summary>
    public string MiterKerf { get; init; } = "";

    /// <summary>The widest board that the miter saw crosscuts; empty where it is not known.</summary>
    public string MiterCrosscut { get; init; } = "";

    /// <summary>Whether there is a hand saw that cuts by hand what the others do not.</summary>
    public bool HasHandSaw { get; init; }

    /// <summary>The width of its cut; empty for the usual one.</summary>
    public string HandKerf { get; init; } = "";

    /// <summary>How many cards of the first setup were left, done or skipped.</summary>
    public int SetupCards { get; init; }

    /// <summary>The longer side of the largest piece that the car carries; empty for no limit.</summary>
    public string CarryLongest { get; init; } = "";

    /// <summary>The shorter side of the largest piece that the car carries; empty for no limit. Boards are not held to
    /// it.</summary>
    public string CarryWidest { get; init; } = "";
}

/// <summary>Keeps the shop's settings.</summary>
public interface IShopService
{
    /// <summary>How many cards the first setup has.</summary>
    const int Cards = 4;

    /// <summary>Returns the settings, or the defaults (kerf 1/8 in: common practice, measure your own blade).</summary>
    Task<ShopSettings> GetAsync(CancellationToken cancel = default);

    /// <summary>Saves all settings, or none with a fault for each wrong one (field names are the record's member
    /// names).</summary>
    Task<Outcome<ShopSettings>> SaveAsync(ShopSettings settings, CancellationToken cancel = default);
}
