namespace ShopPlanner.Web.Tests.Shared;

/// <summary>Words that a builder would not say at the bench do not come back to these pages.</summary>
public sealed class PlainWordsTests
{
    private static readonly string[] Rooms =
    [
        "Frame",
        "Shared",
        "Look",
        "Features/Home",
        "Features/Projects",
        "Features/Shop",
        "Features/Welcome",
    ];

    public static TheoryData<string> Old =>
        [
            "Opening page",
            "opening page\"",
            "In the shop now",
            "Begin a project",
            "Name, unit, state",
            ">Put away",
            "put away\"",
            "Take out again",
            "May turn",
            "Sizes without a sign",
            "Empty for any",
            "Edge of a sheet",
            "\"Letters\"",
            "a look\"",
            "there stands",
            "stands there",
            "Leave it<",
            "started anew",
            "Look for better",
            "Copies of all",
            "Millimetres\"",
            "No cheaper way",
        ];

    [Theory]
    [MemberData(nameof(Old))]
    public void It_is_on_no_page(string old)
    {
        var files = Rooms.SelectMany(room =>
            Directory.EnumerateFiles(Path.Combine(Pages(), room), "*", SearchOption.AllDirectories)
        );
        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.DoesNotContain(old, File.ReadAllText(file), StringComparison.Ordinal));
    }

    private static string Pages()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "src", "ShopPlanner.Web")))
            folder = Path.GetDirectoryName(folder)!;
        return Path.Combine(folder, "src", "ShopPlanner.Web");
    }
}
