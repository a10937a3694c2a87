using System.Text;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Whatever is typed into any field ends in an answer of numbers, or in a fault that names the field and says what would
/// be right.</summary>
public sealed class HostileInputTests
{
    private static readonly string[] Texts =
    [
        "-1",
        "0",
        "0.000001",
        "1e9",
        "99999999999999999999",
        "NaN",
        "∞",
        "1/0",
        "12 1/0",
        "1,5",
        "--3",
        "3 3 3",
        "%",
        "8%%RHRH",
        "<script>",
        "ten",
        "½ in",
        "4 ft 3 in in",
        "5 lb/ft/ft",
        new string('9', 300),
        new string(' ', 200) + "1",
        "1 " + new string(' ', 200) + "/ 2",
        "\u202e12",
        "12\u00a0in",
    ];

    [Fact]
    public void It_is_answered_in_numbers_or_refused_by_name()
    {
        var (tried, wrong) = (0, new StringBuilder());
        foreach (var everyday in Everyday.All)
        {
            Assert.True(WorkingForms.TryFind(everyday.Form, out var form));
            foreach (var key in form.Keys)
            foreach (var text in Texts)
            foreach (var unit in Enum.GetValues<LengthUnit>())
            {
                tried++;
                var outcome = Asked.Run(unit, everyday.Form, everyday.With(key.Name, text).Given);
                if (Problem(outcome, unit) is { } problem)
                    wrong.AppendLine($"{everyday.Form} {key.Name}={text}: {problem}");
            }
        }

        Assert.True(wrong.Length == 0, wrong.ToString());
        Assert.Equal(WorkingForms.All.Sum(form => form.Keys.Length) * Texts.Length * 2, tried);
    }

    // A form without everyday inputs would be tried with none of these texts.
    [Fact]
    public void Every_form_has_everyday_inputs() =>
        Assert.Equal(WorkingForms.All.Select(form => form.Name).Order(), Everyday.All.Select(one => one.Form).Order());

    private static string? Problem(FormOutcome outcome, LengthUnit unit)
    {
        if (outcome.Answer is null)
            return outcome.Faults.IsEmpty ? "neither answer nor fault"
                : outcome.Faults.Any(fault => fault.Field.Length == 0 || fault.Message.Length < 15) ? outcome.Faults[0].ToString()
                : null;
        foreach (var result in outcome.Answer.Results)
        {
            var text = result.Figure.Text(unit);
            if (
                text.Length is 0 or > 6000
                || text.Contains("NaN", StringComparison.Ordinal)
                || text.Contains('∞', StringComparison.Ordinal)
                || result.Figure.Number(unit) is { } number && !double.IsFinite(number)
                || result.Filled(unit).Contains('{', StringComparison.Ordinal)
            )
                return $"{result.Name}: {text}";
        }

        return null;
    }
}
