using System.Collections.Immutable;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Making.Stored;

namespace ShopPlanner.Services.Making;

/// <summary>What a builder chooses from: an id, and the name that people read.</summary>
public static class WorkLists
{
    /// <summary>Stands for what suits the finish, or for what the piece's name tells.</summary>
    public const string AsUsual = "";

    /// <summary>Stands for dry hands alone.</summary>
    public const string NothingSpecial = "nothing";

    // In the order of the work; what comes to be known besides follows.
    private static readonly string[] Order =
    [
        "putty",
        "knots",
        "conditioner",
        "stain",
        "filler",
        "primer",
        "sealer",
        "recoat",
        "cure",
    ];

    /// <summary>Glues.</summary>
    public static ImmutableArray<(string Id, string Name)> Glues { get; } = [.. WorkGlue.All.Select(one => (one.Id, one.Name))];

    /// <summary>Finishes.</summary>
    public static ImmutableArray<(string Id, string Name)> Finishes { get; } =
    [.. FinishChoices.All.Select(one => (one.Id, one.Name))];

    /// <summary>What is done with the edges of sheets that are seen.</summary>
    public static ImmutableArray<(string Id, string Name)> Edges { get; } =
    [(AsUsual, "What suits the finish"), .. FinishChoices.Edges.Select(one => (one.Id, one.Name))];

    /// <summary>What a finish will meet.</summary>
    public static ImmutableArray<(string Id, string Name)> Uses { get; } =
    [
        (AsUsual, "What the piece's name says"),
        (NothingSpecial, "Nothing special"),
        (UseWords.Of(FinishUse.Outdoors), "Rain and sun"),
        (UseWords.Of(FinishUse.Children), "Children, who put things in their mouths"),
        (UseWords.Of(FinishUse.Food), "Food"),
    ];

    /// <summary>Hours that a label may say: key, what has to pass, and whether it is the glue's.</summary>
    public static ImmutableArray<(string Key, string Name, bool IsGlue)> Hours { get; } =
    [
        ("clamp", "In clamps", true),
        ("glue", "Before the joint takes a load", true),
        .. FinishWaits
            .Keys.OrderBy(one => Place(one.Key))
            .ThenBy(one => one.Key, StringComparer.Ordinal)
            .Select(one => (one.Key, one.Value, false)),
    ];

    private static int Place(string key) => Array.IndexOf(Order, key) is >= 0 and var at ? at : Order.Length;
}
