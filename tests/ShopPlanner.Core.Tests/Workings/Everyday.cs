namespace ShopPlanner.Core.Tests.Workings;

/// <summary>A form with everyday inputs, every length with its unit.</summary>
/// <param name="Form">Its name.</param>
/// <param name="Given">Inputs as they are typed.</param>
internal sealed record Everyday(string Form, params string[] Given)
{
    /// <summary>One of each form that this project has had from the start.</summary>
    public static readonly Everyday[] All =
    [
        new("actual-size", "nominal=1x4"),
        new("board-feet", "thickness=1 in", "width=7 1/2 in", "length=8 ft", "count=3"),
        new("moisture", "temperature=70 F", "humidity=50"),
        new("movement", "species=oak-red", "width=36 in", "from=6", "to=11"),
        new("weight", "material=oak-red", "thickness=3/4 in", "width=12 in", "length=36 in"),
        new("door", "opening-width=15 in", "opening-height=24 in", "species=cherry-black"),
        new("groove", "stock=3/4 in", "groove=1/4 in", "cutter=1/8 in"),
        new("drawer", "opening-width=15 in", "opening-height=6 in", "opening-depth=21 in", "slides=none"),
        new("glue-up", "width=20 in", "length=40 in", "clamp-force=600 lbf"),
        new("sag", "span=36 in", "load=75 lb", "species=pine-ponderosa"),
        new("stability", "depth=16 in", "height=40 in", "weight=120 lb"),
        new("hinges", "height=30 in", "width=15 in"),
        new("spacing", "span=60 in", "member=1 1/2 in", "count=7"),
        new("pins", "height=30 in"),
        new("screws", "thickness=3/4 in", "into=1 1/2 in"),
        new("dowels", "thickness=3/4 in", "width=4 in"),
        new("coats", "area=150 ft²"),
    ];

    /// <summary>The same with an input set.</summary>
    public Everyday With(string key, string text) =>
        this with
        {
            Given = [.. Given.Where(one => !one.StartsWith(key + "=", StringComparison.Ordinal)), key + "=" + text],
        };

    /// <summary>The form of a name.</summary>
    public static Everyday Of(string form) => All.Single(one => one.Form == form);
}
