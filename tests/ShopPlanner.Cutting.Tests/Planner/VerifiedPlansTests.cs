using System.Text.RegularExpressions;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>No test plans around its verifier: where a source calls the planner or a solver, it checks what comes of it as often.</summary>
public sealed partial class VerifiedPlansTests
{
    [Fact]
    public void Whoever_plans_checks_the_plan()
    {
        var root = Root();
        Assert.SkipWhen(root is null, "the sources are not beside the built tests");
        var sources = Directory
            .EnumerateFiles(root!, "*.cs", SearchOption.AllDirectories)
            .Where(path => Plan().IsMatch(File.ReadAllText(path)))
            .ToList();
        Assert.NotEmpty(sources);
        Assert.DoesNotContain(sources, path => File.ReadAllText(path) is var text && Plan().Count(text) > Check().Count(text));
    }

    private static string? Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (at.GetFiles("ShopPlanner.Cutting.Tests.csproj").Length > 0)
                return at.FullName;
        return null;
    }

    [GeneratedRegex(@"\b(CutPlanner\.Plan|BoardSolver\.Solve|SheetSolver\.Solve)\(")]
    private static partial Regex Plan();

    [GeneratedRegex(@"\b(PlanVerifier\.Check|Rules\.Broken|LayoutRules\.Check)\(")]
    private static partial Regex Check();
}
