namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>No test plans around its verifier: the helpers that solve and check are the only callers of planner and solvers.</summary>
public sealed class VerifiedPlansTests
{
    private static readonly Dictionary<string, string> Checked = new()
    {
        ["CutPlanner" + ".Plan("] = Path.Combine("Planner", "Some.cs"),
        ["BoardSolver" + ".Solve("] = Path.Combine("Boards", "Some.cs"),
        ["SheetSolver" + ".Solve("] = Path.Combine("Sheets", "Problems.cs"),
    };

    public static TheoryData<string> Calls => [.. Checked.Keys];

    [Theory]
    [MemberData(nameof(Calls))]
    public void Only_the_helper_that_checks_calls_it(string call)
    {
        var root = Root();
        Assert.SkipWhen(root is null, "the sources are not beside the built tests");
        var callers = Directory.EnumerateFiles(root!, "*.cs", SearchOption.AllDirectories)
            .Where(path => File.ReadAllText(path).Contains(call, StringComparison.Ordinal)).Select(path => Path.GetRelativePath(root!, path));
        Assert.Equal([Checked[call]], callers);
    }

    private static string? Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (at.GetFiles("ShopPlanner.Cutting.Tests.csproj").Length > 0) return at.FullName;
        return null;
    }
}
