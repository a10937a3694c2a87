using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>The same question in inches and in millimeters has the same answer; what is rounded to a mark of a rule may be one
/// mark off.</summary>
public sealed partial class UnitTests
{
    // Wider than a mark of either rule, 1/16 in or 1 mm.
    private const double Mark = 1.7;

    [Fact]
    public void Inches_and_millimetres_answer_alike()
    {
        foreach (var everyday in Everyday.All)
        {
            var inches = Answer(everyday.Form, everyday.Given, LengthUnit.Inch);
            var metric = Answer(everyday.Form, [.. everyday.Given.Select(Metric)], LengthUnit.Millimetre);
            // A conversion tells the unit's own figure first.
            var (first, second) = (inches.Results.OrderBy(one => one.Name), metric.Results.OrderBy(one => one.Name));
            Assert.Equal(first.Select(one => one.Name), second.Select(one => one.Name));
            Assert.All(first.Zip(second), pair => Same(everyday.Form, pair.First, pair.Second));
            Assert.Equal(
                inches.Verdicts.Where(one => one.Text != SettingFigure.Paper).Select(one => one.Severity),
                metric.Verdicts.Where(one => one.Text != SettingFigure.Paper).Select(one => one.Severity)
            );
            Assert.Equal(inches.Cautions, metric.Cautions);
        }
    }

    private static void Same(string form, Working first, Working second)
    {
        var (a, b) = (first.Figure.Number(LengthUnit.Millimetre), second.Figure.Number(LengthUnit.Millimetre));
        var told = $"{form} {first.Name}: {a} and {b}";
        if (first.Figure is LengthsFigure one && second.Figure is LengthsFigure two)
            Assert.All(
                one.Lengths.Zip(two.Lengths),
                pair => Assert.InRange((double)(pair.First - pair.Second).ToMillimetres(), -Mark, Mark)
            );
        // Cans come in quarts or half liters.
        else if (first.Figure is Core.Finishing.CansFigure)
            Assert.InRange(a!.Value - b!.Value, -1, 1);
        // A load that somebody trusts is told in whole pounds or kilograms, rounded down.
        else if (form == "slats" && first.Name.StartsWith("Carries", StringComparison.Ordinal))
            Assert.InRange(a!.Value - b!.Value, -1, 1);
        // Slides are sold every 2 in or every 50 mm.
        else if (first.Name is "Slide length" or "Box length" && form == "slides")
            Assert.InRange(a!.Value - b!.Value, -50.8, 50.8);
        else if (first.Figure is QuantityFigure)
            Assert.True(Math.Abs(a!.Value - b!.Value) <= Math.Abs(a.Value) * 1e-3, told);
        else
            Assert.True(a is null == b is null && Math.Abs((a - b) ?? 0) <= Mark, told);
    }

    private static Answer Answer(string form, string[] given, LengthUnit unit)
    {
        var outcome = Asked.Run(unit, form, given);
        Assert.True(outcome.Answer is not null, form + ": " + string.Join("; ", outcome.Faults));
        return outcome.Answer;
    }

    // Each length and quantity in the other system, without a unit where millimetres are meant anyway.
    private static string Metric(string given)
    {
        var (key, text) = (given.Split('=')[0], given.Split('=')[1]);
        var match = Measured().Match(text);
        if (!match.Success)
            return given;
        var kinds = new[] { QuantityKind.Mass, QuantityKind.Force, QuantityKind.Area, QuantityKind.Temperature };
        if (match.Groups["unit"].Value is "in" or "ft")
            return key + "=" + Asked.Inch(text).ToMillimetres().ToString("0.#####", CultureInfo.InvariantCulture);
        var kind = kinds.Single(one => one.Customary.Replace("°", "", StringComparison.Ordinal) == match.Groups["unit"].Value);
        var value = kind.ToMetric(double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture), LengthUnit.Inch);
        return key + "=" + value.ToString("0.########", CultureInfo.InvariantCulture) + " " + kind.Metric;
    }

    [GeneratedRegex(@"^(?<number>[0-9][0-9 /.]*) (?<unit>in|ft|lbf|lb|ft²|F)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Measured();
}
