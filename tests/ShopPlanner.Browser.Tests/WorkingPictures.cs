namespace ShopPlanner.Browser.Tests;

/// <summary>Addresses of workings with everyday inputs, for pictures of them.</summary>
internal static class WorkingPictures
{
    private static readonly string[] Inputs =
    [
        "mortise?thickness=3/4&width=3&into=2 1/4&between=20",
        "dado?thickness=23/32&into=3/4&cutter=1/2&inside=30",
        "fronts?height=24&width=18",
        "slides?slide=undermount&width=15&height=6&depth=21",
        "butt-hinges?height=30&width=15",
        "hinge-overlay?overlay=16",
        "top-fastening?width=30&length=60&species=oak-red",
        "square?width=24&length=36&first=43 5/16&second=43 3/16",
        "taper?offset=3/4&length=24&start=2&jig=36",
        "miter?sides=6&slope=10&across=12",
        "arc?chord=24&rise=3",
        "wall?weight=50&load=100&width=30&depth=12&height=29",
        "screw-holding?species=oak-red&count=4",
        "slats?span=38&width=3 1/2&thickness=1",
        "edge-band?length=30&width=12&roll=25 ft",
        "price?price=6.50&width=7 1/2&length=8 ft&count=3",
        "convert?value=18 mm",
        "kerf?board=24&count=10&strip=1&rest=12 3/4",
        "five-cuts?far=1.250&near=1.238&length=24",
        "parallel?front=6&back=5.994&length=10",
    ];

    /// <summary>By the picture's name.</summary>
    public static IEnumerable<KeyValuePair<string, string>> All =>
        Inputs.Select(one =>
            KeyValuePair.Create(
                "math-" + one.Split('?')[0],
                "/workings/" + one.Replace(" ", "%20", StringComparison.Ordinal) + "&unit=in"
            )
        );

    /// <summary>The same added up from a project's parts.</summary>
    /// <param name="project">Address of its parts list.</param>
    public static IEnumerable<KeyValuePair<string, string>> From(string project)
    {
        var id = project.Split('/', StringSplitOptions.RemoveEmptyEntries)[1];
        return new[] { "coats", "weight", "stability", "movement", "glue-up" }.Select(form =>
            KeyValuePair.Create("math-from-" + form, $"/workings/{form}?project={id}&unit=in")
        );
    }
}
