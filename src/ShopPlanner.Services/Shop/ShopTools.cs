using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Shop;

/// <summary>A table saw.</summary>
/// <param name="Kerf">The width of its cut.</param>
/// <param name="WidestRip">The widest strip between blade and fence; null for no limit.</param>
/// <param name="LongestCrosscut">The longest crosscut with sled or gauge; null for no limit.</param>
public sealed record TableSaw(Length Kerf, Length? WidestRip, Length? LongestCrosscut);

/// <summary>A track saw, or a circular saw run along a guide: it reaches across any sheet.</summary>
/// <param name="Kerf">The width of its cut.</param>
public sealed record GuideSaw(Length Kerf);

/// <summary>A miter saw.</summary>
/// <param name="Kerf">The width of its cut.</param>
/// <param name="WidestCrosscut">The widest board that it crosscuts; null where it is not known.</param>
public sealed record MiterSaw(Length Kerf, Length? WidestCrosscut);

/// <summary>A hand saw.</summary>
/// <param name="Kerf">The width of its cut.</param>
public sealed record HandSaw(Length Kerf);

/// <summary>What the shop cuts with; null for a tool that is not there.</summary>
public sealed record ShopTools(TableSaw? Table, GuideSaw? Guide, MiterSaw? Miter, HandSaw? Hand)
{
    /// <summary>The usual cut of a circular blade, where none was measured: 1/8 in (common practice for a full-kerf blade;
    /// thinner ones leave more wood, never less).</summary>
    public static readonly Length UsualKerf = Length.FromInches(0.125m);

    /// <summary>The usual cut of a hand saw, where none was measured: 1/16 in (from memory; saws differ).</summary>
    public static readonly Length UsualHandKerf = Length.FromInches(0.0625m);

    /// <summary>The widest cut of the tools in use: a plan made with it has wood enough whichever tool makes a cut. The hand saw
    /// counts where there is no other.</summary>
    public Length WidestKerf => new[] { Table?.Kerf, Guide?.Kerf, Miter?.Kerf }.Max() ?? Hand?.Kerf ?? UsualKerf;

    /// <summary>The widest rip that is sure to be made; null for no limit. A guide makes wider ones, but slower: a plan keeps to
    /// the fence where there is one.</summary>
    public Length? WidestRip => Table?.WidestRip;

    /// <summary>The longest crosscut that one of the tools makes; null for no limit.</summary>
    public Length? LongestCrosscut =>
        Guide is not null ? null
        : Table is null ? Miter?.WidestCrosscut
        : Table.LongestCrosscut is { } table && Miter?.WidestCrosscut > table ? Miter.WidestCrosscut
        : Table.LongestCrosscut;

    /// <summary>Returns the tools of the settings; a text that cannot be read counts as not given.</summary>
    public static ShopTools Of(ShopSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return ToolReader.Read(settings, []);
    }
}
