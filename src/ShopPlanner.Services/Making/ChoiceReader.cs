using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Making.Stored;

namespace ShopPlanner.Services.Making;

/// <summary>Reads what a builder decided, and writes it as texts again.</summary>
internal sealed class ChoiceReader(ChoiceTexts texts)
{
    private const int MostCoats = 20,
        CoarsestGrit = 36,
        FinestGrit = 3000,
        MostHours = 5000;
    private const string HoursField = "hours.";

    private readonly List<Fault> faults = [];

    /// <summary>What is wrong with the texts read so far.</summary>
    public IReadOnlyList<Fault> Faults => faults;

    /// <summary>Returns the choices as texts.</summary>
    public static ChoiceTexts Write(Guid projectId, WorkChoices choices, int version) =>
        new(
            projectId,
            choices,
            choices.Edges ?? WorkLists.AsUsual,
            choices.Uses is not { } uses ? WorkLists.AsUsual
                : uses.IsEmpty ? WorkLists.NothingSpecial
                : UseWords.Of(uses[0]),
            Number(choices.Coats),
            Number(choices.StartGrit),
            Number(choices.EndGrit),
            choices.Hours.ToImmutableSortedDictionary(
                one => one.Key,
                one => one.Value.ToString(CultureInfo.InvariantCulture),
                StringComparer.Ordinal
            ),
            version
        );

    /// <summary>Returns the choices; of what is wrong, the usual.</summary>
    public StoredChoices Read()
    {
        var chosen = StoredChoices.Of(texts.Choices) with
        {
            Glue = Known("glue", texts.Choices.Glue, WorkLists.Glues),
            Finish = Known("finish", texts.Choices.Finish, WorkLists.Finishes),
            Edges = Known("edges", texts.Edges, WorkLists.Edges) is { Length: > 0 } edges ? edges : null,
            Uses = Uses(Known("use", texts.Use, WorkLists.Uses)),
            Coats = Whole("coats", texts.Coats, 1, MostCoats),
            StartGrit = Whole("startGrit", texts.StartGrit, CoarsestGrit, FinestGrit) ?? WorkChoices.Usual.StartGrit,
            EndGrit = Whole("endGrit", texts.EndGrit, CoarsestGrit, FinestGrit),
            Hours = ReadHours(),
        };
        if (chosen.EndGrit < chosen.StartGrit)
            faults.Add(
                Fault.Of(
                    "endGrit",
                    texts.EndGrit,
                    $"is coarser than the first grit, {Number(chosen.StartGrit)}: write a finer one"
                )
            );
        return chosen;
    }

    private static ImmutableArray<string>? Uses(string use) =>
        use switch
        {
            WorkLists.AsUsual => null,
            WorkLists.NothingSpecial => [],
            _ => [use],
        };

    private ImmutableSortedDictionary<string, double> ReadHours()
    {
        var hours = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var (key, text) in texts.Hours)
            if (HoursOf(HoursField + key, text) is { } read)
                hours[Known(HoursField + key, key)] = read;
        return hours.ToImmutable();
    }

    private double? HoursOf(string field, string text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (
            double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours)
            && hours is > 0 and <= MostHours
        )
            return hours;
        faults.Add(
            Fault.Of(
                field,
                text,
                $"is not a number of hours: write one up to {Number(MostHours)}, or leave it blank for the usual"
            )
        );
        return null;
    }

    private int? Whole(string field, string text, int least, int most)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (
            int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number >= least
            && number <= most
        )
            return number;
        faults.Add(
            Fault.Of(
                field,
                text,
                $"is not a whole number from {Number(least)} to {Number(most)}: write one, or leave it blank for the usual"
            )
        );
        return null;
    }

    private string Known(string field, string id, ImmutableArray<(string Id, string Name)> list)
    {
        if (!list.Any(one => one.Id == id))
            faults.Add(Fault.Of(field, id, "is not one that is known here: choose one of the list"));
        return id;
    }

    private string Known(string field, string key)
    {
        if (!WorkLists.Hours.Any(one => one.Key == key))
            faults.Add(Fault.Of(field, key, "is not one that is known here"));
        return key;
    }

    private static string Number(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
