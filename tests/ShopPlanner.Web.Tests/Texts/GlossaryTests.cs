using System.Text.RegularExpressions;

namespace ShopPlanner.Web.Tests.Texts;

/// <summary>Texts that people read hold none of the words that were given up.</summary>
public sealed class GlossaryTests
{
    private static readonly IReadOnlyList<ReadText> All =
    [
        .. Glossary.Folders.SelectMany(folder => ReadTexts.Below(Path.Combine(Root, folder))),
    ];

    private static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder!.FullName, "ShopPlanner.sln")))
                folder = folder.Parent;
            return folder.FullName;
        }
    }

    [Fact]
    public void Texts_are_found_in_pages_code_and_designs() =>
        Assert.All(
            [
                "Make parts list",
                "Shop math",
                "A table with a red oak top on four painted legs.",
                "Copied. Paste it into a message.",
            ],
            known => Assert.Contains(All, one => one.Text.Trim() == known)
        );

    // To be read from end to end, or translated.
    [Fact(Explicit = true)]
    public async Task All_texts_can_be_written_out_to_be_read()
    {
        var path =
            Environment.GetEnvironmentVariable("SHOP_PLANNER_TEXTS")
            ?? throw new InvalidOperationException("SHOP_PLANNER_TEXTS is not set: write the path of a file, like texts.txt");
        var texts = All.Select(one => $"{Path.GetRelativePath(Root, one.File)}\t{one.Text.Trim()}")
            .Where(line => line.Contains(' ', StringComparison.Ordinal));
        await File.WriteAllLinesAsync(path, texts.Distinct(), TestContext.Current.CancellationToken);
    }

    [Fact]
    public void No_text_holds_a_phrase_that_was_given_up() => Refuse(Glossary.Phrases, (text, old) => Holds(text, old));

    [Fact]
    public void No_text_is_a_word_that_was_given_up() =>
        Refuse(Glossary.Alone, (text, old) => string.Equals(text.Trim(), old, StringComparison.Ordinal));

    [Fact]
    public void Spelling_is_American() => Refuse(Glossary.Spellings, Holds);

    [Theory]
    [InlineData("Nothing is reckoned here", "reckoned", true)]
    [InlineData("A manewver", "anew", false)]
    [InlineData("Written anew.", "anew", true)]
    public void A_phrase_is_found_as_whole_words(string text, string phrase, bool isFound) =>
        Assert.Equal(isFound, Holds(text, phrase));

    private static bool Holds(string text, string phrase) =>
        Regex.IsMatch(text, $@"(?<![\w.]){Regex.Escape(phrase)}(?!\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static void Refuse((string Old, string Now)[] words, Func<string, string, bool> isIn)
    {
        var found = words.SelectMany(word =>
            All.Where(one => isIn(one.Text, word.Old))
                .Select(one => $"{Path.GetRelativePath(Root, one.File)}: '{one.Text.Trim()}' says '{word.Old}', now '{word.Now}'")
        );
        var all = found.Distinct().ToList();
        Assert.True(all.Count == 0, string.Join("\n", all));
    }
}
