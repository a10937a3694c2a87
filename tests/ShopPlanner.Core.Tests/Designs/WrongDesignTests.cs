namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Documents as a hand leaves them: every fault names its place and what stands there.</summary>
public sealed class WrongDesignTests
{
    [Theory]
    [InlineData("\"says\": \"A case.\"", "\"sais\": \"A case.\"", "sais", "isn't a member here")]
    [InlineData("\"let_in\"", "\"letin\"", "frame.letin", "isn't a setting of sheet-carcass: it takes case,")]
    [InlineData("\"name\": \"gap\"", "\"name\": \"gap\", \"colour\": 1", "dimensions.3.colour", "isn't a member here")]
    [InlineData(
        "\"value\": \"6\"",
        "\"value\": \"height - width\"",
        "dimensions.height",
        "depends on itself: height → gap → height"
    )]
    [InlineData("\"value\": \"6\"", "\"value\": \"gap * 2\"", "dimensions.gap", "depends on itself: gap → gap")]
    [InlineData("width + gap", "width + gab", "dimensions.height", "isn't a name in this design: it has depth, ")]
    [InlineData("width + gap", "width + 6", "dimensions.height", "can't be worked out: a length and a bare number are added")]
    [InlineData(
        "width + gap",
        "min(width, 6)",
        "dimensions.height",
        "can't be worked out: a length and a bare number are compared"
    )]
    [InlineData("width + gap", "width * gap", "dimensions.height", "multiplies a length by a length")]
    [InlineData("width + gap", "6 / gap", "dimensions.height", "divides a bare number by a length")]
    [InlineData("width + gap", "width / gap", "dimensions.height", "is a bare number where a length is needed")]
    [InlineData("width + gap", "width / 0", "dimensions.height", "is divided by zero")]
    [InlineData("width + gap", "round(width, 0 in)", "dimensions.height", "needs a step of more than zero")]
    [InlineData("width + gap", "width +", "dimensions.height", "ends where a value is expected")]
    [InlineData("width + gap", "(width + gap", "dimensions.height", "is missing a ')'")]
    [InlineData("width + gap", "width gap", "dimensions.height", "has 'gap' where nothing more is expected")]
    [InlineData("width + gap", "width + 2 1/2", "dimensions.height", "has '1' where nothing more is expected")]
    [InlineData("width + gap", "width & gap", "dimensions.height", "has '&', which is neither a name, a number nor a sign")]
    [InlineData("width + gap", "NaN", "dimensions.height", "has 'N', which is neither")]
    [InlineData("width + gap", "1e400", "dimensions.height", "has 'e400' where nothing more")]
    [InlineData("width + gap", "4000", "dimensions.height", "is more than 3,937 in (328 ft)")]
    [InlineData("width + gap", "-5", "dimensions.height", "is less than zero")]
    [InlineData(
        "width + gap",
        "width * 999999999999 * 999999999999",
        "dimensions.height",
        "comes to a size beyond any furniture"
    )]
    [InlineData(
        "width + gap",
        "width * 99999999999999999999 * 99999999999999999999",
        "dimensions.height",
        "comes to a size beyond any furniture"
    )]
    [InlineData("width + gap", "width * 1000000000", "dimensions.height", "comes to a size beyond any furniture")]
    [InlineData("width + gap", "gap - width", "dimensions", "must have width, depth and height")]
    [InlineData("\"value\": \"12\"", "\"value\": \"0\"", "dimensions", "must have width, depth and height")]
    [InlineData("\"value\": \"30\"", "\"value\": \"5\"", "dimensions.width", "is too small for width: at least 10″")]
    [InlineData("\"least\": \"10\"", "\"least\": \"ten\"", "dimensions.width.least", "isn't a name in this design")]
    [InlineData("\"name\": \"gap\"", "\"name\": \"width\"", "dimensions", "is named twice: use each name once")]
    [InlineData("\"name\": \"gap\"", "\"name\": \"Gap\"", "dimensions.3.name", "isn't a name: use lowercase letters")]
    [InlineData("\"role\": \"rail\"", "\"role\": \"case\"", "materials", "is named twice: use each name once")]
    [InlineData(
        "\"case\": \"case\"",
        "\"case\": \"oak\"",
        "frame.case",
        "isn't a material role in this design: it has case, rail"
    )]
    [InlineData("\"case\": \"case\"", "\"case\": \"\"", "frame.case", "is empty: pick a material role")]
    [InlineData("\"case\": \"case\"", "\"case\": null", "frame.case", "is empty: pick a material role")]
    [InlineData("\"case\": \"case\",", "", "frame.case", "is missing")]
    [InlineData("\"1/4 in\"", "\"3 in\"", "frame.let_in", "goes through the side")]
    [InlineData("\"1/4 in\"", "\"gap - width\"", "frame.let_in", "comes to −24, less than zero: there is no room for it")]
    [InlineData("\"1/4 in\"", "[ 1 ]", "frame.let_in", "isn't a text or a number")]
    [InlineData(
        "\"kind\": \"sheet-carcass\"",
        "\"kind\": \"barrel\"",
        "frame.kind",
        "isn't a choice here: pick one of sheet-carcass, "
    )]
    [InlineData(
        "\"kind\": \"adjustable-shelves\"",
        "\"kind\": \"divider\"",
        "bays.fills.0.kind",
        "isn't a choice here: pick one of doors, "
    )]
    [InlineData(
        "\"frame\": { \"kind\": \"sheet-carcass\", \"case\": \"case\", \"let_in\": \"1/4 in\" },",
        "",
        "frame.kind",
        "is missing"
    )]
    [InlineData("\"count\": \"shelves\"", "\"count\": \"width\"", "bays.fills.0.count", "is not a whole number from 0 to 1000")]
    [InlineData("\"count\": \"shelves\"", "\"count\": 2.5", "bays.fills.0.count", "is not a whole number from 0 to 1000")]
    [InlineData("\"count\": \"shelves\"", "\"count\": -1", "bays.fills.0.count", "is not a whole number from 0 to 1000")]
    [InlineData("\"count\": \"shelves\"", "\"count\": 100", "bays.fills.0.count", "shelves leave no room between them")]
    [InlineData("\"4 * 2\"", "\"width\"", "hardware.0.quantity", "is not a whole number from 0 to 1000")]
    [InlineData("\"flat\": \"y\"", "\"flat\": \"x\"", "parts.0.flat", "is the direction of its length too")]
    [InlineData("\"material\": \"rail\"", "\"material\": \"rale\"", "parts.0.material", "isn't a material role in this design")]
    [InlineData(
        "\"material\": \"rail\"",
        "\"material\": \"case\"",
        "parts.0.width",
        "is missing, and a sheet has no width of its own"
    )]
    [InlineData(
        "\"10 in\"",
        "\"width - 40 in\"",
        "parts.0",
        "is what the rail comes to, less than zero in one direction: there is no room for it"
    )]
    [InlineData("[ \"1 in\", \"1 in\", \"1 in\" ]", "[ \"1 in\", \"1 in\" ]", "parts.0.at.0", "isn't a corner")]
    [InlineData(
        "[ \"1 in\", \"1 in\", \"1 in\" ]",
        "[ \"1 in\", \"nowhere\", \"1 in\" ]",
        "parts.0.at.0.1",
        "isn't a name in this design"
    )]
    [InlineData("[ [ \"1 in\", \"1 in\", \"1 in\" ] ]", "7", "parts.0.at", "isn't a list")]
    [InlineData("\"form\": \"board\", ", "\"form\": \"plank\", ", "materials.1.form", "isn't a choice: pick one of board, sheet")]
    [InlineData("\"form\": \"board\", ", "\"form\": \"sheet\", ", "materials.1.width", "belongs to a board")]
    [InlineData("\"width\": \"2 1/2\"", "\"width\": \"0\"", "materials.1.width", "must be more than zero")]
    [InlineData(", \"width\": \"2 1/2\"", "", "materials.1.width", "is missing: a board needs a width")]
    [InlineData("\"thickness\": \"3/4\" }", "\"thickness\": \"thick\" }", "materials.0.thickness", "is not a length")]
    [InlineData("\"unit\": \"in\"", "\"unit\": \"cubit\"", "unit", "isn't a choice: pick one of in, mm")]
    [InlineData("\"version\": 1", "\"version\": 2", "version", "is a newer version than this program reads: at most 1")]
    [InlineData("\"version\": 1", "\"version\": \"1\"", "version", "isn't a whole number")]
    [InlineData("\"version\": 1", "\"version\": 0", "version", "isn't a version: the first one is 1")]
    [InlineData("\"hardware\": [", "\"steps\": [ 5 ], \"hardware\": [", "steps.0", "isn't a text: put it in quotes")]
    [InlineData("\"name\": \"gap\"", "\"name\": \"mm\"", "dimensions.mm", "is a unit or a function in arithmetic")]
    [InlineData("\"name\": \"gap\"", "\"name\": \"min\"", "dimensions.min", "is a unit or a function in arithmetic")]
    [InlineData(
        "\"shop-planner/design\"",
        "\"shop-planner/cut-request\"",
        "format",
        "isn't a design: the format must be shop-planner/design"
    )]
    [InlineData("\"name\": \"Case\",", "", "name", "is missing")]
    [InlineData("\"name\": \"Case\",", "\"name\": \"Case\", \"name\": \"Box\",", "name", "appears twice")]
    [InlineData(
        "\"name\": \"Case\",",
        "\"name\": \"C\\ud800\",",
        "line 3, column 11",
        "isn't text: an escape such as \\ud800 is only half a character"
    )]
    [InlineData("\"name\": \"Case\",", "\"name\": \"Case\"", "line 3, column 18", "isn't JSON here")]
    public void A_fault_names_its_place(string old, string replacement, string place, string says)
    {
        Assert.Contains(old, Made.Case, StringComparison.Ordinal);
        var at = Made.Case.IndexOf(old, StringComparison.Ordinal);
        var evaluation = Made.Evaluate(Made.Case[..at] + replacement + Made.Case[(at + old.Length)..]);
        Assert.Null(evaluation.Piece);
        Assert.Contains(
            evaluation.Faults,
            fault => fault.Field == place && fault.Message.Contains(says, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_text_that_is_too_long_is_one_fault()
    {
        var fault = Assert.Single(
            Made.Evaluate(
                Made.Case.Replace("\"name\": \"Case\"", $"\"name\": \"{new string('x', 3000)}\"", StringComparison.Ordinal)
            ).Faults
        );
        Assert.Equal(("name", "is longer than 2000 characters"), (fault.Field, fault.Message));
    }

    [Fact]
    public void The_design_that_faults_are_tried_on_has_none() => Assert.Empty(Made.Evaluate(Made.Case).Faults);

    [Theory]
    [InlineData("\"20 in\", \"20 in\"", "come to 12 1/4 in more than the bay has: make them smaller")]
    [InlineData("\"40 in\", \"*\"", "leave a bay of −12 1/4 in: there is no room for it")]
    [InlineData("\"10 in\", \"10 in\"", "leave 7 3/4 in of the bay unused: write * for one of them")]
    public void Clear_sizes_must_share_the_bay(string sizes, string says)
    {
        var json = Made.Carcass("30", "12", "30", "")
            .Replace(
                "\"fills\": [  ]",
                $$"""
                "split": { "kind": "divider", "material": "case" }, "sizes": [ {{sizes}} ], "bays": [ {}, {} ]
                """,
                StringComparison.Ordinal
            );
        var fault = Assert.Single(Made.Evaluate(json).Faults);
        Assert.Equal("bays.sizes", fault.Field);
        Assert.StartsWith(says, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_built_as_it_stands_is_a_warning()
    {
        var wide = Made.Case.Replace(
            "\"length\": \"10 in\"",
            "\"length\": \"40 in\", \"width\": \"5 in\"",
            StringComparison.Ordinal
        );
        var texts = Made.Piece(wide).Warnings.Select(warning => warning.Text).ToList();
        Assert.Contains(texts, text => text.StartsWith("Rail is 5″ wide, but its board is 2 ½″", StringComparison.Ordinal));
        Assert.Contains("Rail sticks out past the outside size.", texts);
        Assert.Contains(texts, text => text.Contains("would be in the same place", StringComparison.Ordinal));
    }
}
