namespace ShopPlanner.Architecture.Tests;

/// <summary>Project references point down only, so that the trade's knowledge can be read and tested alone.</summary>
public sealed class ArrowTests
{
    // Lower rooms first: a room may know those named here and what they know.
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Core"] = [],
        ["Cutting"] = ["Core"],
        ["Scheduling"] = ["Core"],
        ["Drawing"] = ["Core"],
        ["Packets"] = ["Core", "Drawing"],
        ["Services"] = ["Core", "Cutting", "Scheduling", "Drawing", "Packets"],
        ["Web"] = ["Core", "Cutting", "Scheduling", "Drawing", "Packets", "Services"],
        ["Cli"] = ["Core", "Cutting", "Scheduling", "Drawing", "Packets", "Services"],
    };

    // Packages and the rooms they belong to: elsewhere they would carry a file format or a database into the trade's knowledge.
    private static readonly Dictionary<string, string[]> Home = new()
    {
        ["PDFsharp"] = ["Packets"],
        ["QRCoder"] = ["Packets"],
        ["Google.OrTools"] = ["Cutting", "Scheduling"],
        ["NodaTime"] = ["Scheduling"],
        ["Microsoft.EntityFrameworkCore.Sqlite"] = ["Services"],
        ["Npgsql.EntityFrameworkCore.PostgreSQL"] = ["Services"],
        ["MudBlazor"] = ["Web"],
    };

    /// <summary>All projects of the program.</summary>
    public static IEnumerable<string> Rooms => Allowed.Keys;

    public static TheoryData<string> SourceProjects() =>
        [.. Repository.Projects().Where(path => path.StartsWith(Path.Combine(Repository.Root, "src"), StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(SourceProjects))]
    public void A_room_refers_only_to_rooms_below_it(string project)
    {
        var room = Repository.Room(project);
        var referred = Repository.References(project, "ProjectReference").Select(Repository.Room);
        Assert.True(Allowed.ContainsKey(room), $"{room} is a new room: say here what lies below it");
        Assert.Empty(referred.Except(Allowed[room]));
    }

    [Theory]
    [MemberData(nameof(SourceProjects))]
    public void A_package_stays_in_its_rooms(string project)
    {
        var room = Repository.Room(project);
        var strangers = Repository
            .References(project, "PackageReference")
            .Where(name => Home.TryGetValue(name, out var homes) && !homes.Contains(room));
        Assert.Empty(strangers);
    }

    [Fact]
    public void The_trade_knows_no_package()
    {
        var core = Repository.Projects().Single(path => Repository.Room(path) == "Core");
        Assert.Empty(Repository.References(core, "PackageReference"));
    }

    [Fact]
    public void Every_room_has_a_test_project_named_for_it()
    {
        var tests = Repository
            .Projects()
            .Select(Repository.Room)
            .Where(name => name.EndsWith(".Tests", StringComparison.Ordinal));
        Assert.Empty(Allowed.Keys.Select(room => room + ".Tests").Except(tests));
    }
}
