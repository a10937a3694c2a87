using System.Collections.Immutable;

namespace ShopPlanner.Core.Designs.Listing;

/// <summary>What an example of a kind needs beyond the usual: its size, the frame around it, members that show what the kind is
/// for.</summary>
/// <param name="Size">Width, depth and height in inches.</param>
/// <param name="Frame">JSON of the frame around a split, a fill or a top.</param>
/// <param name="Members">Members that are given, beside those that must be.</param>
internal sealed record ExampleSetting(
    (decimal Wide, decimal Deep, decimal High) Size,
    string Frame,
    ImmutableDictionary<string, string> Members
)
{
    private const string Case = "{ \"kind\": \"sheet-carcass\", \"case\": \"ply\" }";
    private const string Legs = "{ \"kind\": \"leg-and-apron\", \"leg\": \"post\", \"apron\": \"rail\" }";
    private const string Cabinet =
        "{ \"kind\": \"post-cabinet\", \"leg\": \"post\", \"rail\": \"rail\", \"side\": \"ply\", \"foot\": \"10 in\" }";

    private static readonly ExampleSetting Usual = new((30, 14, 34), Case, ImmutableDictionary<string, string>.Empty);

    private static readonly Dictionary<string, ExampleSetting> Special = new(StringComparer.Ordinal)
    {
        ["sheet-carcass"] = Usual.With("back", "thin", "back_fit", "rabbet", "toe", "3 in", "let_in", "1/4 in"),
        ["post-and-rail"] = Usual.With("panel", "thin"),
        ["post-cabinet"] = Usual.With("back", "thin", "foot", "10 in", "low_rail", "rail", "slat", "rail", "slats", "7"),
        ["floating-shelf"] = Usual.With("cleat", "apron") with { Size = (36, 5.5m, 4.25m) },
        ["drawer-table"] = Usual with { Size = (30, 16, 28) },
        ["box"] = Usual.With("bottom", "half", "front_lower", "3/4 in", "lid", "ply", "edging", "strip") with
        {
            Size = (36, 18, 19),
        },
        ["bed-frame"] = Usual.With(
            "rail",
            "beam",
            "ledger",
            "strip",
            "beam",
            "beam",
            "post",
            "beam",
            "slat",
            "beam",
            "head",
            "apron"
        ) with
        {
            Size = (62, 82, 40),
        },
        ["open-rack"] = Usual with { Size = (48, 18, 60) },
        ["drop-in-bottom"] = Usual with { Frame = Cabinet },
        ["doors"] = Usual.With("material", "rail", "panel", "thin", "leaves", "2"),
        ["drawers"] = Usual.With("heights", "graded"),
        ["adjustable-shelves"] = Usual.With("edge", "band"),
        ["fixed-shelf"] = Usual.With("edge", "lipping", "edge_material", "strip"),
        ["hanging-rail"] = Usual.With("material", "rail"),
        ["slats"] = Usual.With("material", "rail", "count", "4"),
        ["door-stops"] = Usual.With("material", "strip"),
        ["sheet-top"] = Usual.With("edging", "strip", "overhang_front", "1 in") with { Frame = Legs },
        ["solid-top"] = Usual.With("material", "apron") with { Frame = Legs },
        ["slatted-top"] = Usual.With("material", "apron", "count", "5", "lie", "across") with { Frame = Legs },
        ["hole"] = Usual.With("face", "top", "x", "3 in", "y", "2 in", "diameter", "2 in"),
        ["groove"] = Usual.With("face", "top", "run", "x", "from", "1/2 in", "width", "1/4 in", "depth", "1/4 in"),
        ["notch"] = Usual.With("through", "z", "edge", "front", "deep", "1 in", "long", "3 in"),
        ["bevel"] = Usual.With("edge", "front", "keeps", "top", "angle", "30"),
        ["taper"] = Usual.With("faces", "front", "end", "right", "from", "6 in", "to", "10 in"),
        ["arc"] = Usual.With("edge", "front", "run", "x", "rise", "1 in"),
        ["corner"] = Usual.With("through", "z", "radius", "2 in"),
        ["band"] = Usual.With("side", "front"),
        ["lipping"] = Usual.With("side", "front", "material", "strip"),
        ["strip"] = Usual.With("side", "front", "material", "strip"),
        ["round"] = Usual.With("side", "front", "radius", "1/4 in"),
    };

    /// <summary>What the kind needs; the usual for most.</summary>
    public static ExampleSetting Of(string kind) => Special.GetValueOrDefault(kind, Usual);

    private ExampleSetting With(params string[] members) =>
        this with
        {
            Members = members.Chunk(2).ToImmutableDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal),
        };
}
