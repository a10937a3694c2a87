using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>The fixed words of the two formats.</summary>
internal static class Words
{
    public const string Request = "shop-planner/cut-request";
    public const string Plan = "shop-planner/cut-plan";
    public const int Version = 1;

    public static readonly WordTable<LengthUnit> Unit = new(("in", LengthUnit.Inch), ("mm", LengthUnit.Millimetre));
    public static readonly WordTable<StockForm> Form = new(("board", StockForm.Board), ("sheet", StockForm.Sheet));
    public static readonly WordTable<Grain> Grain = new(("length", Cutting.Grain.Length), ("any", Cutting.Grain.Any));
    public static readonly WordTable<CutKind> Kind = new(("crosscut", CutKind.Crosscut), ("rip", CutKind.Rip));

    public static readonly WordTable<PlanStatus> Status = new(
        ("proven", PlanStatus.Proven), ("best-found", PlanStatus.BestFound), ("incomplete", PlanStatus.Incomplete));
}
