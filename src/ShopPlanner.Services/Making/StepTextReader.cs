using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;

namespace ShopPlanner.Services.Making;

/// <summary>Reads what a builder wrote about a step, and writes it as texts again.</summary>
internal static class StepTextReader
{
    private const int MostSaid = TextRules.NoteCharacters;

    private static readonly char[] Breaks = ['\n', '\r', '\u2028', '\u2029'];

    /// <summary>Returns a step's texts as they stand.</summary>
    public static StepTexts Write(Guid projectId, WorkStepView step, int version) =>
        new(
            projectId,
            step.Step.Id,
            step.Title,
            string.Join('\n', step.Says),
            step.Note,
            step.Openings.SelectMany(Texts).ToImmutableSortedDictionary(StringComparer.Ordinal),
            version
        )
        {
            Took = step.Took,
        };

    /// <summary>Returns what is wrong with the texts.</summary>
    public static IReadOnlyList<Fault> Check(StepTexts texts, LengthUnit unit)
    {
        Fault?[] faults =
        [
            TextRules.Line("title", texts.Title, TextRules.NameCharacters),
            TextRules.Free("says", texts.Says, MostSaid),
            RefuseNote(texts.Note),
            WorkLogs.Refuse(texts.Took),
            .. texts.Measured.Select(one => Size(one.Key, one.Value, unit)),
        ];
        return [.. faults.OfType<Fault>()];
    }

    /// <summary>Returns what is wrong with a note; null for nothing.</summary>
    public static Fault? RefuseNote(string note) => TextRules.Free("note", note, TextRules.NoteCharacters);

    /// <summary>Returns what is wrong with a step that is added.</summary>
    public static IReadOnlyList<Fault> CheckNew(string title, string says)
    {
        Fault?[] faults = [TextRules.Name("title", title), TextRules.Free("says", says, MostSaid)];
        return [.. faults.OfType<Fault>()];
    }

    /// <summary>The lines of a text, without empty ones.</summary>
    public static ImmutableArray<string> Lines(string says) =>
        [.. says.Split(Breaks, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>What was measured, without what was left empty.</summary>
    public static ImmutableSortedDictionary<string, string> Measured(StepTexts texts) =>
        texts
            .Measured.Where(one => one.Value.Trim().Length > 0)
            .ToImmutableSortedDictionary(one => one.Key, one => one.Value.Trim(), StringComparer.Ordinal);

    /// <summary>Returns the builder's words for a step; null where they are the plan's.</summary>
    /// <param name="step">As planned.</param>
    /// <param name="texts">As typed.</param>
    /// <param name="instead">What the plan says.</param>
    /// <param name="before">Her words before; they stay written for what the plan said then.</param>
    public static StoredWords? Words(WorkStep step, StepTexts texts, ImmutableArray<string> instead, StoredWords? before)
    {
        var (title, says) = (TextRules.Tidy(texts.Title), Lines(texts.Says));
        if (title == step.Title)
            title = "";
        if (says.SequenceEqual(step.Says))
            says = [];
        if (title.Length == 0 && says.IsEmpty)
            return null;
        return before is not null && before.Title == title && before.Says.SequenceEqual(says)
            ? before
            : new(title, says, instead);
    }

    private static IEnumerable<KeyValuePair<string, string>> Texts(OpeningView opening) =>
        [new(opening.WidthKey, opening.Width), new(opening.HeightKey, opening.Height)];

    private static Fault? Size(string field, string text, LengthUnit unit)
    {
        if (TextRules.Line(field, text, TextRules.CellCharacters) is { } wrong)
            return wrong;
        if (text.Trim().Length == 0)
            return null;
        var read = LengthText.ParsePositive(text, unit);
        return read.Ok ? null : read.Fault.At(field);
    }
}
