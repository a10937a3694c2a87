using System.Text.Json;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Listing;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>The page about the format names every kind there is with all that it takes, as the code has it, and its examples are
/// parts of documents that can be worked out.</summary>
public sealed partial class FormatReadmeTests
{
    private const string Begin = "<!-- kinds -->\n";
    private const string End = "<!-- end of kinds -->";

    private static readonly string Text = File.ReadAllText(
        Path.Combine(DesignFiles.Root, "src", "ShopPlanner.Core", "Designs", "README.md")
    );

    public static IEnumerable<KindInfo> Kinds =>
        DesignKinds.Frames.Concat(DesignKinds.Splits).Concat(DesignKinds.Fills).Concat(DesignKinds.Tops);

    public static TheoryData<string, string> Listed
    {
        get
        {
            var listed = new TheoryData<string, string>();
            foreach (var place in KindPlace.All)
            foreach (var kind in place.Kinds)
                listed.Add(place.Member, kind.Name);
            return listed;
        }
    }

    [Fact]
    public void Every_kind_is_named() =>
        Assert.All(Kinds, kind => Assert.Contains("`" + kind.Name + "`", Text, StringComparison.Ordinal));

    // To renew it: shop-planner parts --kinds, between the two marks.
    [Fact]
    public void The_list_of_kinds_is_the_code_s()
    {
        var from = Text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        Assert.Equal(KindText.Write(), Text[from..Text.IndexOf(End, StringComparison.Ordinal)]);
    }

    [Theory, MemberData(nameof(Listed))]
    public void An_example_can_be_worked_out_and_built(string place, string name)
    {
        var there = KindPlace.All.Single(one => one.Member == place);
        var example = KindExample.Of(there, there.Kinds.Single(one => one.Name == name));
        var piece = Made.Piece(example.Document);
        Assert.Contains(example.Node, example.Document, StringComparison.Ordinal);
        var fails = PieceJudge.Of(piece).Where(one => one.Severity == Severity.Fails).Select(one => one.Text);
        Assert.Equal([], fails);
    }

    [Fact]
    public void As_json_the_list_has_the_same_kinds_with_documents_that_are_read()
    {
        using var list = JsonDocument.Parse(KindJson.Write());
        var kinds = list
            .RootElement.GetProperty("places")
            .EnumerateArray()
            .SelectMany(place => place.GetProperty("kinds").EnumerateArray())
            .ToList();
        Assert.Equal(
            KindPlace.All.SelectMany(place => place.Kinds).Select(kind => kind.Name),
            kinds.Select(kind => kind.GetProperty("kind").GetString())
        );
        Assert.All(kinds, kind => Assert.Empty(Made.Evaluate(kind.GetProperty("example").GetRawText()).Faults));
    }

    [Fact]
    public void Examples_name_only_what_a_kind_takes_and_all_it_needs()
    {
        var examples = Example().Matches(Text).Select(match => JsonDocument.Parse(match.Value).RootElement).ToList();
        Assert.True(examples.Count >= 40);
        var all = KindPlace.All.SelectMany(place => place.Kinds).ToList();
        foreach (var example in examples)
        {
            var names = example.EnumerateObject().Select(one => one.Name).Where(name => name != "kind").ToList();
            var kind = all.Single(one => one.Name == example.GetProperty("kind").GetString());
            Assert.Subset(kind.Members.Select(one => one.Name).ToHashSet(), names.ToHashSet());
            Assert.Subset(names.ToHashSet(), kind.Members.Where(one => one.Default is null).Select(one => one.Name).ToHashSet());
        }
    }

    [GeneratedRegex("""\{ "kind": [^}]*\}""")]
    private static partial Regex Example();
}
