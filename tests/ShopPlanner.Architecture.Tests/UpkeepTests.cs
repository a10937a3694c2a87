using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ShopPlanner.Architecture.Tests;

/// <summary>Habits of the repository that reviews would otherwise repeat.</summary>
public sealed partial class UpkeepTests
{
    private const int MostLines = 300;
    private const int WidestLine = 130;
    private const int MostWideLines = 5;

    [Fact]
    public void Versions_are_stated_in_one_place() =>
        Assert.DoesNotContain(
            Repository.Projects(),
            path => XDocument.Load(path).Descendants("PackageReference").Any(item => item.Attribute("Version") is not null)
        );

    [Fact]
    public void Every_project_has_its_lock_file() =>
        Assert.DoesNotContain(
            Repository.Projects(),
            path => !File.Exists(Path.Combine(Path.GetDirectoryName(path)!, "packages.lock.json"))
        );

    [Theory]
    [InlineData("linux-x64")]
    [InlineData("linux-arm64")]
    public void Publishing_for_a_platform_leaves_the_lock_files_as_they_are(string platform) =>
        Assert.DoesNotContain(
            Repository.Files("packages.lock.json", "src"),
            path => !File.ReadAllText(path).Contains($"net10.0/{platform}", StringComparison.Ordinal)
        );

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var solution = File.ReadAllText(Path.Combine(Repository.Root, "ShopPlanner.sln"));
        Assert.DoesNotContain(
            Repository.Projects(),
            path => !solution.Contains(Path.GetFileName(path), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_file_has_one_subject_and_so_few_lines()
    {
        var code = Repository
            .Files("*.cs", "src", "tests")
            .Concat(Repository.Files("*.razor", "src"))
            .Where(path => !path.Contains("Migrations", StringComparison.Ordinal));
        Assert.Empty(
            code.Where(path => File.ReadLines(path).Count() > MostLines)
                .Select(path => Path.GetRelativePath(Repository.Root, path))
        );
    }

    // A pattern or a rule of a style sheet that cannot be broken may be longer.
    [Fact]
    public void A_line_fits_beside_another_on_a_screen()
    {
        var code = new[] { "*.cs", "*.razor", "*.css", "*.js" }
            .SelectMany(pattern => Repository.Files(pattern, "src", "wwwroot-assets"))
            .Where(path =>
                !path.Contains("Migrations", StringComparison.Ordinal) && !path.Contains(".min.", StringComparison.Ordinal)
            );
        var wide = code.SelectMany(path =>
            File.ReadLines(path).Where(line => line.Length > WidestLine).Select(_ => Path.GetRelativePath(Repository.Root, path))
        );
        Assert.InRange(wide.Count(), 0, MostWideLines);
    }

    // On a busy computer a second passes within one match: a good length was then refused by an exception. Texts that are read are
    // short, and the patterns say how many digits they take.
    [Fact]
    public void No_pattern_has_a_time_limit() =>
        Assert.Empty(
            Repository
                .Files("*.cs", "src")
                .Where(path => File.ReadAllText(path).Contains("matchTimeout", StringComparison.OrdinalIgnoreCase))
                .Select(path => Path.GetRelativePath(Repository.Root, path))
        );

    [Fact]
    public void Nothing_is_loaded_from_outside_the_server()
    {
        var pages = Repository
            .Files("*.razor", "src")
            .Concat(Repository.Files("*.css", "src", "wwwroot-assets"))
            .Concat(Repository.Files("*.js", "src", "wwwroot-assets"));
        Assert.Empty(
            pages
                .Where(path => OutsideAddress().IsMatch(File.ReadAllText(path)))
                .Select(path => Path.GetRelativePath(Repository.Root, path))
        );
    }

    [GeneratedRegex("""(src|href|url\()\s*=?\s*["'(]?\s*(https?:)?//[a-z]""", RegexOptions.IgnoreCase)]
    private static partial Regex OutsideAddress();
}
