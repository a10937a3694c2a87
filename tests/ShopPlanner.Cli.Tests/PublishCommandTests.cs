using System.IO.Compression;

namespace ShopPlanner.Cli.Tests;

/// <summary>The publish command of the built program: a folder or a zip, whole or not at all.</summary>
public sealed class PublishCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    private static string Shelf =>
        ShopPlannerProgram.FindAbove(Path.Combine("wwwroot-assets", "designs", "floating-shelf.json"))!;

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_folder_holds_a_page_and_a_design_that_gives_the_same_parts()
    {
        var run = await ShopPlannerProgram.RunAsync(
            "publish",
            Shelf,
            "-o",
            scratch["plan"],
            "--set",
            "width=34",
            "--license",
            "cc-by-sa-4.0",
            "--by",
            "Ana"
        );
        Assert.Equal((0, "", ""), (run.Exit, run.Output, run.Error));
        var page = await File.ReadAllTextAsync(
            Path.Combine(scratch["plan"], "index.html"),
            TestContext.Current.CancellationToken
        );
        Assert.Contains("CC-BY-SA-4.0", page, StringComparison.Ordinal);
        Assert.Contains("34″ × ", page, StringComparison.Ordinal);
        var published = await ShopPlannerProgram.RunAsync(
            "parts",
            Path.Combine(scratch["plan"], "design.json"),
            "--format",
            "csv"
        );
        var own = await ShopPlannerProgram.RunAsync("parts", Shelf, "--set", "width=34", "--format", "csv");
        Assert.Equal(own.Output, published.Output);
        Assert.Equal(["plan"], scratch.Files);
    }

    [Fact]
    public async Task A_zip_holds_the_same_files()
    {
        var run = await ShopPlannerProgram.RunAsync("publish", Shelf, "-o", scratch["plan.zip"], "--paper", "a4");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        using var zip = ZipFile.OpenRead(scratch["plan.zip"]);
        Assert.Equal("index.html", zip.Entries[0].FullName);
        Assert.Contains(zip.Entries, entry => entry.FullName == "packet.pdf" && entry.Length > 10_000);
        Assert.Equal(["plan.zip"], scratch.Files);
    }

    [Theory]
    [InlineData("--license", "MIT-ish", "write one of all-rights-reserved, CC-BY-4.0")]
    [InlineData("--paper", "a3", "write letter or a4")]
    [InlineData("--set", "width=none", "--set width")]
    [InlineData("--photo", "/no/such.jpg", "no such file")]
    [InlineData("--by", "two\nlines", "one line")]
    public async Task A_wrong_option_is_refused_and_nothing_is_written(string option, string value, string said)
    {
        var run = await ShopPlannerProgram.RunAsync("publish", Shelf, "-o", scratch["plan"], option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Empty(scratch.Files);
    }

    [Fact]
    public async Task A_folder_with_something_in_it_is_left_alone()
    {
        Directory.CreateDirectory(scratch["plan"]);
        await File.WriteAllTextAsync(Path.Combine(scratch["plan"], "mine.txt"), "mine", TestContext.Current.CancellationToken);
        var run = await ShopPlannerProgram.RunAsync("publish", Shelf, "-o", scratch["plan"]);
        Assert.Equal(2, run.Exit);
        Assert.Contains("is not empty", run.Error, StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(scratch["plan"]));
    }

    [Fact]
    public async Task What_is_no_design_or_no_photo_is_refused()
    {
        var design = await ShopPlannerProgram.RunAsync("publish", scratch.Write("no.json", "{}"), "-o", scratch["plan"]);
        Assert.Equal(2, design.Exit);
        var photo = scratch.Write("no.jpg", "no picture");
        var run = await ShopPlannerProgram.RunAsync("publish", Shelf, "-o", scratch["plan"], "--photo", photo);
        Assert.Equal(2, run.Exit);
        Assert.Contains("isn't a JPEG", run.Error, StringComparison.Ordinal);
        Assert.Equal(["no.jpg", "no.json"], scratch.Files);
    }
}
