using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Asks a form as the command line does.</summary>
internal static class Asked
{
    public static FormOutcome Run(string name, params string[] given) => Run(LengthUnit.Inch, name, given);

    public static FormOutcome Run(LengthUnit unit, string name, params string[] given)
    {
        Assert.True(WorkingForms.TryFind(name, out var form), name);
        return form.Run(given.Select(one => one.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1]), unit);
    }

    public static Answer Answer(string name, params string[] given)
    {
        var outcome = Run(name, given);
        Assert.Empty(outcome.Faults);
        return outcome.Answer!;
    }

    public static Working Result(string name, string result, params string[] given) =>
        Answer(name, given).Results.Single(one => one.Name == result);

    public static double Number(string name, string result, params string[] given) =>
        Result(name, result, given).Figure.Number(LengthUnit.Inch)!.Value;

    public static Length Length(string name, string result, params string[] given) =>
        ((Working<Length>)Result(name, result, given)).Value;

    public static Length Inch(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
