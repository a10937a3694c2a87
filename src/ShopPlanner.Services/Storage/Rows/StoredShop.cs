using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>The shop's settings: one row.</summary>
internal sealed class StoredShop : IVersioned
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;

    public LengthUnit Unit { get; set; }

    public string Kerf { get; set; } = "";

    public string BoardEndTrim { get; set; } = "";

    public string SheetEdgeTrim { get; set; } = "";

    public string KeepBoardLength { get; set; } = "";

    public string KeepSheetLength { get; set; } = "";

    public string KeepSheetWidth { get; set; } = "";

    public string WidestRip { get; set; } = "";

    public string LongestCrosscut { get; set; } = "";

    public bool HasTableSaw { get; set; }

    public bool HasGuideSaw { get; set; }

    public string GuideKerf { get; set; } = "";

    public bool HasMiterSaw { get; set; }

    public string MiterKerf { get; set; } = "";

    public string MiterCrosscut { get; set; } = "";

    public bool HasHandSaw { get; set; }

    public string HandKerf { get; set; } = "";

    public string CarryLongest { get; set; } = "";

    public string CarryWidest { get; set; } = "";

    public PaperSize Paper { get; set; }

    public string CurrencySign { get; set; } = "";

    public int PlanSeconds { get; set; }

    public int SetupCards { get; set; }

    public int Version { get; set; }
}

/// <summary>The last number given out of a series that never repeats: tags, ledger lines, steps.</summary>
internal sealed class StoredCounter
{
    public required string Name { get; init; }

    public long Last { get; set; }
}

/// <summary>A fact about the database itself, such as the version that wrote it.</summary>
internal sealed class StoredFact
{
    public required string Name { get; init; }

    public required string Value { get; set; }
}
