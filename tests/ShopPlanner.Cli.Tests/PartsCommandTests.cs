using System.Text;
using System.Text.Json;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Tests;

/// <summary>The parts command of the built program: what it writes, how it ends, what it leaves behind.</summary>
public sealed class PartsCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public static TheoryData<string> Designs =>
        [
            .. Directory
                .GetFiles(Folder, "*.json")
                .Select(path => Path.GetFileNameWithoutExtension(path))
                .Order(StringComparer.Ordinal),
        ];

    private static string Folder =>
        Path.GetDirectoryName(ShopPlannerProgram.FindAbove(Path.Combine("wwwroot-assets", "designs", "table.json")))!;

    public void Dispose() => scratch.Dispose();

    [Theory, MemberData(nameof(Designs))]
    public async Task What_it_writes_can_be_cut(string name)
    {
        var request = await ShopPlannerProgram.RunAsync("parts", File(name), "--format", "cut-request");
        Assert.Equal((0, ""), (request.Exit, request.Error));
        var cut = await ShopPlannerProgram.RunWithInputAsync(request.Output, "cut", "-", "--seconds", "5");
        Assert.Equal((0, ""), (cut.Exit, cut.Error));
        var (asked, faults) = CutRequestJson.Read(Encoding.UTF8.GetBytes(request.Output));
        Assert.Empty(faults);
        Assert.Empty(PlanVerifier.Check(asked!, CutPlanJson.Read(Encoding.UTF8.GetBytes(cut.Output)).Plan!));
    }

    [Fact]
    public async Task A_request_holds_rough_and_finished_sizes_and_what_is_practice()
    {
        var run = await ShopPlannerProgram.RunAsync("parts", File("pantry-cupboard"), "--format", "cut-request");
        var request = CutRequestJson.Read(Encoding.UTF8.GetBytes(run.Output)).Request!;
        var stile = Assert.Single(request.Parts, part => part.Name == "Door stile");
        Assert.Equal(Core.Measures.Length.FromInches(0.5m), stile.Length - stile.FinishedLength!.Value);
        Assert.Null(stile.FinishedWidth);
        var practice = Assert.Single(request.Parts, part => part.PracticeFor is not null);
        Assert.Equal("Door rail", request.Parts.Single(part => part.Id == practice.PracticeFor).Name);
        Assert.Equal(["case", "door", "thin"], request.Materials.Select(material => material.Id).Order());
        Assert.Equal(
            ["door-4ft", "door-6ft", "door-8ft"],
            request.Stock.Where(stock => stock.Material == "door").Select(stock => stock.Id)
        );
        Assert.All(request.Stock, stock => Assert.Equal(Core.Measures.Money.Zero, stock.Price));
    }

    [Fact]
    public async Task Where_the_material_is_not_known_there_are_the_usual_boards_and_sheets()
    {
        var run = await ShopPlannerProgram.RunAsync("parts", scratch.Write("d.json", Made), "--format", "cut-request");
        var request = CutRequestJson.Read(Encoding.UTF8.GetBytes(run.Output)).Request!;
        Assert.Equal(["case-8ftx4ft", "rail-8ft"], request.Stock.Select(stock => stock.Id));
    }

    [Fact]
    public async Task Json_is_written_where_no_format_is_named_and_a_value_is_set()
    {
        var run = await ShopPlannerProgram.RunAsync("parts", File("table"), "--set", "width=48", "--set", "overhang = 3 in");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        using var document = JsonDocument.Parse(run.Output);
        Assert.Equal(48, document.RootElement.GetProperty("outside").GetProperty("dx").GetDecimal());
        var leg = document.RootElement.GetProperty("parts")[0];
        Assert.Equal(
            ("Leg", 3),
            (leg.GetProperty("name").GetString(), leg.GetProperty("copies")[0].GetProperty("x").GetDecimal())
        );
    }

    [Fact]
    public async Task Kinds_are_listed_without_a_design_as_text_and_as_json()
    {
        var text = await ShopPlannerProgram.RunAsync("parts", "--kinds");
        Assert.Equal((0, ""), (text.Exit, text.Error));
        var readme = ShopPlannerProgram.FindAbove(Path.Combine("src", "ShopPlanner.Core", "Designs", "README.md"))!;
        Assert.Contains(
            text.Output,
            await System.IO.File.ReadAllTextAsync(readme, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
        var json = await ShopPlannerProgram.RunAsync("parts", "--kinds", "--json", "-o", scratch["kinds.json"]);
        Assert.Equal(new Run(0, "", ""), json);
        using var list = JsonDocument.Parse(
            await System.IO.File.ReadAllTextAsync(scratch["kinds.json"], TestContext.Current.CancellationToken)
        );
        var example = list.RootElement.GetProperty("places")[0].GetProperty("kinds")[0].GetProperty("example").GetRawText();
        Assert.Equal(0, (await ShopPlannerProgram.RunWithInputAsync(example, "parts", "-")).Exit);
    }

    [Theory]
    [InlineData("parts: name a design")]
    [InlineData("parts: --kinds takes no design: leave out 'table.json'", "table.json", "--kinds")]
    public async Task A_design_or_the_list_of_kinds_is_asked_for(string says, params string[] options)
    {
        var run = await ShopPlannerProgram.RunAsync(["parts", .. options]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.StartsWith(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_comes_from_standard_input_into_a_file()
    {
        var run = await ShopPlannerProgram.RunWithInputAsync(Made, "parts", "-", "--format", "csv", "-o", scratch["parts.csv"]);
        Assert.Equal(new Run(0, "", ""), run);
        var lines = await System.IO.File.ReadAllLinesAsync(scratch["parts.csv"], TestContext.Current.CancellationToken);
        Assert.Equal(["mark", "A", "B", "C", "D"], lines.Select(line => line.Split(',')[0]));
    }

    [Theory]
    [InlineData("--set width: '5' is too small for width: at least 10", "--set", "width=5")]
    [InlineData("--set width: 'wide' isn't a name in this design", "--set", "width=wide")]
    [InlineData("--set tall: '5' is set for a size this design doesn't have", "--set", "tall=5")]
    [InlineData("--set: 'width' is not name=value", "--set", "width")]
    [InlineData("--set: 'width' is set twice", "--set", "width=20", "--set", "width=21")]
    [InlineData("shop-planner parts: --format: 'xml' is not a format: write one of json, csv, cut-request", "--format", "xml")]
    public async Task What_is_wrong_on_the_line_is_said_and_nothing_written(string says, params string[] options)
    {
        var run = await ShopPlannerProgram.RunAsync([
            "parts",
            scratch.Write("d.json", Made),
            "-o",
            scratch["out.json"],
            .. options,
        ]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.StartsWith(says, run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(c => c == '\n'));
        Assert.Equal(["d.json"], scratch.Files);
    }

    [Theory]
    [InlineData("\"let_in\": \"0 in\"", "\"let_out\": \"0 in\"", "frame.let_out: '0 in' isn't a setting of sheet-carcass")]
    [InlineData(
        "\"value\": \"12\"",
        "\"value\": \"width * depth\"",
        "dimensions.depth: 'width * depth' depends on itself: depth → depth"
    )]
    [InlineData("\"at\": [ [ 1, 1, 1 ] ]", "\"at\": [ [ 1, 1, 1 ] ", "line ")]
    [InlineData("\"10 in\"", "\"10 in - width\"", "parts.0: '")]
    public async Task A_wrong_design_is_one_line_for_each_fault_and_nothing_written(string old, string replacement, string says)
    {
        Assert.Contains(old, Made, StringComparison.Ordinal);
        var run = await ShopPlannerProgram.RunAsync(
            "parts",
            scratch.Write("d.json", Made.Replace(old, replacement, StringComparison.Ordinal)),
            "-o",
            scratch["out.json"]
        );
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.StartsWith(says, run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(c => c == '\n'));
        Assert.Equal(["d.json"], scratch.Files);
    }

    [Fact]
    public async Task Files_that_are_not_there_or_would_be_lost_are_refused()
    {
        var design = scratch.Write("d.json", Made);
        Assert.Equal(
            new Run(2, "", $"'{scratch["no.json"]}': there is no such file\n"),
            await ShopPlannerProgram.RunAsync("parts", scratch["no.json"])
        );
        Assert.Equal(
            new Run(2, "", $"'{design}' is the design itself: choose another name for the list\n"),
            await ShopPlannerProgram.RunAsync("parts", design, "-o", design)
        );
        Assert.Equal(2, (await ShopPlannerProgram.RunAsync("parts", scratch.Folder)).Exit);
    }

    // The list of parts has no place for it: it is said beside.
    [Fact]
    public async Task What_cannot_be_built_is_said_beside_a_table()
    {
        var run = await ShopPlannerProgram.RunAsync(
            "parts",
            scratch.Write("d.json", Made.Replace("[ 1, 1, 1 ]", "[ 0, 0, 0 ]", StringComparison.Ordinal)),
            "--format",
            "csv"
        );
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("mark,", run.Output, StringComparison.Ordinal);
        Assert.StartsWith("Fix this: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("would be in the same place", run.Error, StringComparison.Ordinal);
    }

    private static string File(string name) => Path.Combine(Folder, name + ".json");

    private const string Made = """
        { "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
          "dimensions": [ { "name": "width", "value": "30", "least": "10" }, { "name": "depth", "value": "12" }, { "name": "height", "value": "20" } ],
          "materials": [
            { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
            { "role": "rail", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" } ],
          "frame": { "kind": "sheet-carcass", "case": "case", "let_in": "0 in" },
          "parts": [ { "name": "Rail", "material": "rail", "length": "10 in", "flat": "y", "at": [ [ 1, 1, 1 ] ] } ] }
        """;
}
