using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Shop;

/// <summary>Reads what the shop cuts with.</summary>
internal static class ToolReader
{
    /// <summary>Returns the tools. Texts of a tool that is not there are read too, so that nothing wrong is kept.</summary>
    public static ShopTools Read(ShopSettings settings, List<Fault> faults)
    {
        var read = new SizeReader(settings.Unit, faults);
        var table = new TableSaw(
            read.Kerf(nameof(settings.Kerf), settings.Kerf),
            read.Limit(nameof(settings.WidestRip), settings.WidestRip),
            read.Limit(nameof(settings.LongestCrosscut), settings.LongestCrosscut)
        );
        var guide = new GuideSaw(read.KerfOr(ShopTools.UsualKerf, nameof(settings.GuideKerf), settings.GuideKerf));
        var miter = new MiterSaw(
            read.KerfOr(ShopTools.UsualKerf, nameof(settings.MiterKerf), settings.MiterKerf),
            read.Limit(nameof(settings.MiterCrosscut), settings.MiterCrosscut)
        );
        var hand = new HandSaw(read.KerfOr(ShopTools.UsualHandKerf, nameof(settings.HandKerf), settings.HandKerf));
        return new(
            settings.HasTableSaw ? table : null,
            settings.HasGuideSaw ? guide : null,
            settings.HasMiterSaw ? miter : null,
            settings.HasHandSaw ? hand : null
        );
    }
}
