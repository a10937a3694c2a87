using System.Text.Json;
using ShopPlanner.Core.Calculators;

namespace ShopPlanner.Cli.Tests;

/// <summary>Workings at the command line: what is printed, for a person and for a program, and what is refused how.</summary>
public sealed class WorkCommandTests
{
    // 2 × 1 × 6 × 96 in³ ÷ 144 in³ = 8.
    private static readonly string[] EightFeet = ["work", "board-feet", "thickness=1", "width=6", "length=8 ft", "count=2"];

    [Fact]
    public async Task Without_a_name_every_working_is_listed_with_what_it_answers()
    {
        var run = await ShopPlannerProgram.RunAsync("work");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.All(
            WorkingForms.All,
            form =>
                Assert.Contains(
                    run.Output.Split('\n'),
                    line =>
                        line.Contains(form.Name, StringComparison.Ordinal) && line.EndsWith(form.Says, StringComparison.Ordinal)
                )
        );
    }

    [Fact]
    public async Task A_result_comes_with_formula_numbers_inputs_and_source()
    {
        var run = await ShopPlannerProgram.RunAsync([.. EightFeet, "--workings"]);
        Assert.Equal((0, ""), (run.Exit, run.Error));
        var lines = run.Output.Split('\n').Select(line => line.Trim()).ToList();
        Assert.Equal("Board feet: 8 bd ft", lines[0]);
        Assert.Contains("= pieces × thickness counted × width × length ÷ 144 in³", lines);
        Assert.Contains("= 2 × 1″ × 6″ × 96″ ÷ 144 in³", lines);
        Assert.Contains("Width: 6″ [As entered]", lines);
        Assert.Contains(
            lines,
            line =>
                line.StartsWith("source: Board measure", StringComparison.Ordinal)
                && line.EndsWith("1910s)", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Inputs_of_inputs_verdicts_and_cautions_are_printed_and_a_habit_of_the_trade_is_called_one()
    {
        var spacing = await ShopPlannerProgram.RunAsync(
            "work",
            "spacing",
            "span=32 1/2",
            "member=2 1/2",
            "count=5",
            "--workings"
        );
        Assert.Contains(
            "\n  Gaps: 6\n    = pieces + 1\n    = 5 + 1\n    source: Geometry\n",
            spacing.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("\nPart: 1 Spacer block, ", spacing.Output, StringComparison.Ordinal);
        Assert.Contains("\nSafety: ", spacing.Output, StringComparison.Ordinal);
        var screws = await ShopPlannerProgram.RunAsync("work", "screws", "thickness=3/4", "into=1 1/2", "joint=edge");
        Assert.Contains("ommon practice", screws.Output, StringComparison.Ordinal);
        Assert.Contains("\nCheck: End grain", screws.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_comes_first_and_how_it_came_about_only_where_it_is_asked_for()
    {
        string[] shelf = ["work", "sag", "span=36", "load=75 lb", "species=pine-ponderosa"];
        var plain = await ShopPlannerProgram.RunAsync(shelf);
        Assert.StartsWith("Sag at first: 0.089″\n", plain.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("source:", plain.Output, StringComparison.Ordinal);
        Assert.Contains("--workings", plain.Output, StringComparison.Ordinal);
        Assert.Contains("\nSafety: ", plain.Output, StringComparison.Ordinal);
        // A remembered figure is marked without being asked about.
        Assert.Contains("[Unverified: check before you rely on it]", plain.Output, StringComparison.Ordinal);
        var worked = await ShopPlannerProgram.RunAsync([.. shelf, "--workings"]);
        Assert.StartsWith(
            plain.Output[..plain.Output.IndexOf("\nAdd --workings", StringComparison.Ordinal)],
            worked.Output,
            StringComparison.Ordinal
        );
        var steps = worked.Output[worked.Output.IndexOf("How it was worked out", StringComparison.Ordinal)..].Split('\n');
        var figures = steps.Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' ').ToList();
        Assert.Equal(figures.Distinct(), figures);
        Assert.InRange(figures.Count, 12, 30);
    }

    [Fact]
    public async Task The_case_of_a_key_does_not_matter_and_two_of_one_key_are_refused()
    {
        var run = await ShopPlannerProgram.RunAsync("work", "board-feet", "Thickness=1", "WIDTH=6", "length=8 ft", "count=2");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        var twice = await ShopPlannerProgram.RunAsync("work", "board-feet", "thickness=1", "width=6", "Width=7", "length=8 ft");
        Assert.Equal(2, twice.Exit);
        Assert.Contains("Width: '7' is a second value, after '6'", twice.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_program_reads_numbers_with_their_units()
    {
        var root = await JsonAsync([.. EightFeet, "--json"]);
        Assert.Equal(
            ("board-feet", "Board feet", 8, "bd ft", "8 bd ft"),
            (
                Text(root, "working"),
                Text(root, "name"),
                root.GetProperty("value").GetDouble(),
                Text(root, "unit"),
                Text(root, "text")
            )
        );
        Assert.Equal("2 × 1″ × 6″ × 96″ ÷ 144 in³", Text(root, "filled"));
        Assert.Equal(
            ["count", "thickness", "width", "length"],
            root.GetProperty("inputs").EnumerateArray().Select(input => Text(input, "key"))
        );
        var length = root.GetProperty("inputs")[3];
        Assert.Equal(
            (96, "in", "As entered"),
            (length.GetProperty("value").GetDouble(), Text(length, "unit"), Text(length.GetProperty("source"), "text"))
        );
        Assert.Equal("read", Text(root.GetProperty("source"), "certainty"));
        Assert.Equal(JsonValueKind.Null, root.GetProperty("outsideRange").ValueKind);
        Assert.Equal(8, Assert.Single(root.GetProperty("results").EnumerateArray()).GetProperty("value").GetDouble());
    }

    [Fact]
    public async Task A_list_of_lengths_has_a_list_of_numbers_as_its_value()
    {
        var root = await JsonAsync(["work", "spacing", "span=32 1/2", "member=2 1/2", "count=5", "--json"]);
        var positions = root.GetProperty("results").EnumerateArray().Last();
        Assert.Equal(5, positions.GetProperty("value").GetArrayLength());
        Assert.Equal(
            positions.GetProperty("value").EnumerateArray().Select(one => one.GetDouble()),
            positions.GetProperty("values").EnumerateArray().Select(one => one.GetDouble())
        );
        Assert.Equal("geometry", Text(root.GetProperty("source"), "text"), ignoreCase: true);
        Assert.Equal("small-parts", Text(root.GetProperty("cautions")[0], "id"));
        Assert.Equal(
            ("Spacer block", 1),
            (Text(root.GetProperty("parts")[0], "name"), root.GetProperty("parts")[0].GetProperty("quantity").GetInt32())
        );
    }

    [Fact]
    public async Task Millimetres_are_read_and_printed_where_asked_for()
    {
        var root = await JsonAsync(["work", "spacing", "span=820", "member=60", "count=5", "--unit", "mm", "--json"]);
        Assert.Equal(
            ("mm", Math.Round((820 - (5 * 60)) / 6.0, 1)),
            (Text(root, "unit"), Math.Round(root.GetProperty("value").GetDouble(), 1))
        );
    }

    [Fact]
    public async Task A_piece_with_nothing_open_has_a_text_in_place_of_a_number()
    {
        var root = await JsonAsync(["work", "stability", "depth=12", "height=30", "weight=50", "doors=0", "--json"]);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("value").ValueKind);
        Assert.NotEqual("", Text(root, "text"));
    }

    [Fact]
    public async Task Each_missing_key_is_one_line_that_says_what_is_wanted()
    {
        var run = await ShopPlannerProgram.RunAsync("work", "board-feet");
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Equal(
            ["thickness", "width", "length"],
            run.Error.TrimEnd().Split(Environment.NewLine).Select(line => line.Split(" is missing: write a length like ")[0])
        );
    }

    [Theory]
    [InlineData("'board-foot' is not a calculation: choose one of", "board-feet", "board-foot", "width=3")]
    [InlineData(
        "colour: 'red' is not an input of board-feet: it takes thickness, width, length",
        "count",
        "board-feet",
        "thickness=1",
        "width=6",
        "length=96",
        "colour=red"
    )]
    [InlineData("width: '12 1/0' is not a length", "", "board-feet", "thickness=1", "width=12 1/0", "length=96")]
    [InlineData("width: '-3'", "", "board-feet", "thickness=1", "width=-3", "length=96")]
    [InlineData("length: '90 ft' is too large: at most 40 ft", "", "board-feet", "thickness=1", "width=6", "length=90 ft")]
    [InlineData(
        "thin: 'maybe' is not a choice: pick one of as-inch, real",
        "",
        "board-feet",
        "thickness=1",
        "width=6",
        "length=96",
        "thin=maybe"
    )]
    [InlineData("count is missing, and so is the widest gap", "", "spacing", "span=30", "member=2")]
    [InlineData("'6' is not key=value", "key=value", "board-feet", "6")]
    [InlineData("width: '7' is a second value, after '6'", "", "board-feet", "width=6", "width=7")]
    [InlineData("--unit: 'cm' is not a unit", "in or mm", "board-feet", "--unit", "cm")]
    public async Task What_is_wrong_is_named_in_one_line(string said, string also, params string[] arguments)
    {
        var run = await ShopPlannerProgram.RunAsync(["work", .. arguments]);
        Assert.True(run is { Exit: 2, Output: "" }, run.ToString());
        var line = Assert.Single(run.Error.TrimEnd().Split(Environment.NewLine));
        Assert.Contains(said, line, StringComparison.Ordinal);
        Assert.Contains(also, line, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_working_takes_can_be_asked()
    {
        var run = await ShopPlannerProgram.RunAsync("work", "spacing", "--keys");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("; required", run.Output, StringComparison.Ordinal);
        Assert.Contains("gaps (a gap at each end)", run.Output, StringComparison.Ordinal);
        var root = await JsonAsync(["work", "spacing", "--keys", "--json"]);
        Assert.Equal(
            ["span", "member", "count", "max-gap", "ends"],
            root.GetProperty("keys").EnumerateArray().Select(key => Text(key, "key"))
        );
        Assert.True(root.GetProperty("keys")[0].GetProperty("required").GetBoolean());
    }

    private static async Task<JsonElement> JsonAsync(string[] arguments)
    {
        var run = await ShopPlannerProgram.RunAsync(arguments);
        Assert.Equal((0, ""), (run.Exit, run.Error));
        return JsonDocument.Parse(run.Output).RootElement;
    }

    private static string Text(JsonElement element, string member) => element.GetProperty(member).GetString()!;
}
