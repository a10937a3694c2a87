using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ShopPlanner.Core.Designs;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Documents that no one means well: whatever they hold, they end in a piece or in faults, soon.</summary>
public sealed class HostileDesignTests
{
    private const int Mutations = 400;

    private static readonly string[] Nasty =
    [
        "",
        " ",
        "0",
        "-1",
        "1/0",
        "0 in",
        "-3 in",
        "1000",
        "1001",
        "99999999999999999999999999999",
        "1e999",
        "NaN",
        "3937 in",
        "0.000001 in",
        "width",
        "0 in - width",
        "width / 3 * 3",
        "height * 1000",
        "count(width, 1/64 in)",
        "min(depth, 1/64 in)",
        "((((((((((",
        "*",
        "null",
        "case",
        "width + width",
        "π",
        "\u0000",
        "frame",
        "sheet",
    ];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Cut_off_at_any_byte_it_says_where(string name)
    {
        var bytes = Encoding.UTF8.GetBytes(File.ReadAllText(DesignFiles.PathOf(name)).TrimEnd());
        for (var length = 0; length < bytes.Length; length++)
        {
            var fault = Assert.Single(Made.Evaluate(bytes[..length]).Faults);
            Assert.Matches("^line [0-9]+, column [0-9]+$|^$", fault.Field);
            Assert.True(
                fault.Field.Length > 0
                    || fault.Message.Contains("is empty", StringComparison.Ordinal)
                    || fault.Message.Contains("UTF-8", StringComparison.Ordinal),
                fault.ToString()
            );
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Any_value_may_be_replaced_by_anything(string name)
    {
        var text = File.ReadAllText(DesignFiles.PathOf(name));
        var chance = new Random(20261126);
        for (var i = 0; i < Mutations; i++)
        {
            var root = JsonNode.Parse(text)!;
            var changes = string.Join("; ", Enumerable.Range(0, 1 + (i % 3)).Select(_ => Change(root, chance)));
            Ends(root.ToJsonString(), name + ": " + changes);
        }
    }

    [Fact]
    public void A_row_of_names_as_long_as_the_document_may_be()
    {
        var names = string.Join(",", Enumerable.Range(0, 490).Select(i => Name("d" + i, $"d{i + 1} + 1 in")));
        var faults = Made.Evaluate(With("dimensions", names)).Faults;
        Assert.Equal("dimensions.d59", faults[0].Field);
        Assert.All(
            faults.SkipLast(1),
            fault => Assert.EndsWith("names in a row: use fewer steps", fault.Message, StringComparison.Ordinal)
        );
    }

    // Each name that fails is asked for twice by the two before it: without memory that is 2^100 questions.
    [Fact]
    public void Names_that_fail_are_asked_for_once()
    {
        var names = string.Join(",", Enumerable.Range(0, 50).Select(i => Name("d" + i, $"d{i + 1} + d{i + 2}")));
        Assert.All(
            Made.Evaluate(With("dimensions", names)).Faults,
            fault => Assert.Contains("isn't a name in this design", fault.Message, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_thousand_entries_are_refused_and_five_hundred_of_two_copies_are_not()
    {
        string Parts(int count) =>
            string.Join(
                ",",
                Enumerable
                    .Range(0, count)
                    .Select(i =>
                        $$"""{ "name": "P{{i}}", "material": "rail", "length": "10 in", "flat": "y", "at": [ [ 0, 0, 0 ], [ 1, 1, 1 ] ] }"""
                    )
            );
        var fault = Assert.Single(Made.Evaluate(With("parts", Parts(1000))).Faults);
        Assert.Equal(("parts", "has more than 500 entries"), (fault.Field, fault.Message));
        var piece = Made.Piece(With("parts", Parts(499)));
        Assert.Equal(499 * 2, piece.Parts.Where(part => part.Name.StartsWith('P')).Sum(part => part.Quantity));
        Assert.InRange(piece.Warnings.Length, 1, 1100);
    }

    [Fact]
    public void More_wood_than_any_furniture_has_is_refused_at_once()
    {
        var many = string.Join(",", Enumerable.Repeat("[0,0,0]", 500));
        var parts = string.Join(
            ",",
            Enumerable
                .Range(0, 200)
                .Select(i => $$"""{ "name": "P{{i}}", "material": "rail", "length": "9 in", "flat": "y", "at": [ {{many}} ] }""")
        );
        var free = Assert.Single(Made.Evaluate(With("parts", parts)).Faults);
        Assert.Equal(("parts.3", "asks for more than 2000 pieces of wood: use fewer"), (free.Field, free.Message));
        var fills = string.Join(
            ",",
            Enumerable.Repeat(
                """{ "kind": "slats", "material": "thin", "count": 1000, "width": "1/64 in", "lie": "upright" }""",
                490
            )
        );
        var filled = Made.Evaluate(Made.Carcass("300", "12", "30", fills)).Faults;
        Assert.Contains(filled, fault => fault.Message == "asks for more than 2000 pieces of wood: use fewer");
    }

    [Fact]
    public void A_top_is_not_glued_up_from_splinters()
    {
        var json = File.ReadAllText(DesignFiles.PathOf("table"))
            .Replace("\"solid-top\",", "\"solid-top\", \"jointing\": \"5.499 in\",", StringComparison.Ordinal);
        var fault = Assert.Single(Made.Evaluate(json).Faults);
        Assert.Equal("top.material", fault.Field);
        Assert.Contains("use a wider board", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"a\":", 1000)]
    [InlineData("[", 100_000)]
    public void A_bottomless_document_is_refused(string open, int times) =>
        Assert.Contains(
            "is nested more than 64 deep",
            Assert.Single(Made.Evaluate(string.Concat(Enumerable.Repeat(open, times))).Faults).Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void Bays_in_bays_have_an_end()
    {
        var bays = "{}";
        for (var i = 0; i < 12; i++)
            bays = $$"""{ "split": { "kind": "fixed-shelf", "material": "case" }, "bays": [ {{bays}}, {} ] }""";
        var json = Made.Carcass("30", "12", "60", "").Replace("{ \"fills\": [  ] }", bays, StringComparison.Ordinal);
        Assert.Contains(
            Made.Evaluate(json).Faults,
            fault => fault.Message.StartsWith("is nested too deeply", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused_and_a_byte_order_mark_is_not()
    {
        var bytes = Encoding.UTF8.GetBytes(Made.Case);
        Assert.Empty(Made.Evaluate([0xEF, 0xBB, 0xBF, .. bytes]).Faults);
        bytes[Made.Case.IndexOf("A case.", StringComparison.Ordinal)] = 0xFF;
        Assert.Equal("isn't UTF-8 text", Assert.Single(Made.Evaluate(bytes).Faults).Message);
        Assert.StartsWith(
            "is too long for a design",
            Assert.Single(Made.Evaluate(new byte[2_000_000]).Faults).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_very_many_faults_the_first_hundred_are_listed()
    {
        var parts = string.Join(
            ",",
            Enumerable
                .Range(0, 400)
                .Select(i => $$"""{ "name": "P{{i}}", "material": "none", "length": "9 in", "at": [ [ 0, 0, 0 ] ] }""")
        );
        var faults = Made.Evaluate(With("parts", parts)).Faults;
        Assert.Equal((101, "and 300 more"), (faults.Length, faults[^1].Value));
    }

    private static void Ends(string json, string said)
    {
        Evaluation evaluation;
        try
        {
            evaluation = Made.Evaluate(json);
        }
        catch (Exception crash)
        {
            throw new InvalidOperationException(said, crash);
        }

        if (evaluation.Piece is { } piece)
            Assert.True(piece.Parts.Length > 0, said);
        else
            Assert.True(
                evaluation.Faults.All(fault => fault.Field.Length > 0 || fault.Value.StartsWith("and ", StringComparison.Ordinal))
                    && !evaluation.Faults.IsEmpty,
                said
            );
    }

    private static string Change(JsonNode root, Random chance)
    {
        var leaves = Leaves(root).ToList();
        var leaf = leaves[chance.Next(leaves.Count)];
        var value = Nasty[chance.Next(Nasty.Length)];
        var said = leaf.GetPath() + " = " + value;
        leaf.ReplaceWith(value);
        return said;
    }

    // What kind of document it is stays, or nothing else would be tried.
    private static IEnumerable<JsonValue> Leaves(JsonNode node) =>
        node switch
        {
            JsonObject members => members
                .Where(one => one.Key is not ("format" or "version") && one.Value is not null)
                .SelectMany(one => Leaves(one.Value!)),
            JsonArray items => items.OfType<JsonNode>().SelectMany(Leaves),
            _ => [(JsonValue)node],
        };

    private static string Name(string name, string value) => $$"""{ "name": "{{name}}", "value": "{{value}}" }""";

    private static string With(string list, string entries) =>
        Made.Case.Replace(
            string.Create(CultureInfo.InvariantCulture, $"\"{list}\": ["),
            $"\"{list}\": [ {entries},",
            StringComparison.Ordinal
        );
}
