using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>What forms declare of their keys can be read, and every wrong text is answered in words.</summary>
public sealed class LimitTests
{
    public static TheoryData<string> Forms() => [.. WorkingForms.All.Select(form => form.Name)];

    [Theory, MemberData(nameof(Forms))]
    public void Limits_and_defaults_of_lengths_can_be_read(string name)
    {
        Assert.True(WorkingForms.TryFind(name, out var form));
        foreach (var key in form.Keys.Where(key => key.Kind is KeyKind.Length or KeyKind.LengthOrZero))
        foreach (var text in new[] { key.Least, key.Most, key.Default }.OfType<string>())
            Assert.True(LengthText.Parse(text, LengthUnit.Inch).Ok, $"{name}, {key.Name}: {text}");
    }

    [Theory, MemberData(nameof(Forms))]
    public void Hostile_texts_are_refused_in_words_or_answered_and_never_thrown(string name)
    {
        Assert.True(WorkingForms.TryFind(name, out var form));
        string[] texts = ["0", "-1", "1/0", "NaN", "1e9", "328 ft", "0.00001", "999999999", "lots", "½″³", "{span}", "1,5"];
        foreach (var unit in new[] { LengthUnit.Inch, LengthUnit.Millimetre })
        foreach (var key in form.Keys)
        foreach (var text in texts)
        {
            var given = form.Keys.Where(one => one is { Default: null, Optional: false }).ToDictionary(one => one.Name, _ => "1");
            given[key.Name] = text;
            var outcome = form.Run(given, unit);
            Assert.True(
                outcome.Answer is not null || outcome.Faults.All(fault => fault.Message.Length > 5),
                $"{key.Name}={text}"
            );
        }
    }
}
