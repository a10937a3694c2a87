using System.Text.Json;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>The page about the format names every kind there is, and its examples are documents' parts.</summary>
public sealed partial class FormatReadmeTests
{
    private static readonly string Text = File.ReadAllText(
        Path.Combine(DesignFiles.Root, "src", "ShopPlanner.Core", "Designs", "README.md")
    );

    public static IEnumerable<KindInfo> Kinds =>
        DesignKinds.Frames.Concat(DesignKinds.Splits).Concat(DesignKinds.Fills).Concat(DesignKinds.Tops);

    [Fact]
    public void Every_kind_is_named() =>
        Assert.All(Kinds, kind => Assert.Contains("`" + kind.Name + "`", Text, StringComparison.Ordinal));

    [Fact]
    public void Examples_name_only_what_a_kind_takes_and_all_it_needs()
    {
        var examples = Example().Matches(Text).Select(match => JsonDocument.Parse(match.Value).RootElement).ToList();
        Assert.True(examples.Count >= 8);
        foreach (var example in examples)
        {
            var names = example.EnumerateObject().Select(one => one.Name).Where(name => name != "kind").ToList();
            var kind = Kinds.Single(one => one.Name == example.GetProperty("kind").GetString());
            Assert.Subset(kind.Members.Select(one => one.Name).ToHashSet(), names.ToHashSet());
            Assert.Subset(names.ToHashSet(), kind.Members.Where(one => one.Default is null).Select(one => one.Name).ToHashSet());
        }
    }

    [GeneratedRegex("""\{ "kind": [^}]*\}""")]
    private static partial Regex Example();
}
