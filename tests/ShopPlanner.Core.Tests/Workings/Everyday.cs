namespace ShopPlanner.Core.Tests.Workings;

/// <summary>A form with everyday inputs, every length with its unit.</summary>
/// <param name="Form">Its name.</param>
/// <param name="Given">Inputs as they are typed.</param>
internal sealed record Everyday(string Form, params string[] Given)
{
    /// <summary>One of each form.</summary>
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
        new("price", "price=6.50", "thickness=1 in", "width=7 1/2 in", "length=8 ft"),
        new("convert", "value=18 mm"),
        new("mortise", "thickness=3/4 in", "width=3 in", "into=2 1/4 in"),
        new("dado", "thickness=23/32 in", "into=3/4 in", "cutter=1/2 in", "inside=30 in"),
        new("fronts", "height=24 in", "width=18 in"),
        new("slides", "slide=side", "width=15 in", "height=6 in", "depth=21 in"),
        new("butt-hinges", "height=30 in", "width=15 in"),
        new("hinge-overlay", "overlay=16"),
        new("top-fastening", "width=30 in", "length=60 in", "species=oak-red"),
        new("square", "width=24 in", "length=36 in", "first=43 5/16 in", "second=43 1/4 in"),
        new("taper", "offset=3/4 in", "length=24 in", "start=2 in", "jig=36 in"),
        new("miter", "sides=6", "across=12 in"),
        new("arc", "chord=24 in", "rise=3 in"),
        new("wall", "weight=50 lb", "load=100 lb", "width=36 in", "depth=12 in", "height=29 in"),
        new("screw-holding", "species=oak-red"),
        new("slats", "span=38 in", "width=3 1/2 in", "thickness=1 in"),
        new("edge-band", "length=30 in", "width=12 in", "roll=25 ft"),
        new("kerf", "board=24 in", "count=10", "strip=1 in", "rest=12 3/4 in"),
        new("five-cuts", "far=1.250 in", "near=1.238 in", "length=24 in"),
        new("parallel", "front=6.000 in", "back=5.994 in", "length=10 in"),
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
