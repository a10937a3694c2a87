using System.Globalization;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Expressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>
/// The names of a design and their values, worked out when asked for, so that their order does not matter. What is wrong is
/// gathered as faults that name the place; a name that failed counts as nothing from then on.
/// </summary>
internal sealed class Scope
{
    // A name that follows a name that follows a name: deeper than any design, and far from the end of the stack.
    private const int MostSteps = 60;

    private readonly Dictionary<string, DesignDimension> dimensions;
    private readonly IReadOnlyDictionary<string, string> changed;
    private readonly LengthUnit unit;
    private readonly List<Fault> faults;
    private readonly Dictionary<string, Working> known = [];
    private readonly List<string> underWay = [];
    private readonly HashSet<string> failed = [];

    public Scope(DesignDocument document, IReadOnlyDictionary<string, string> changed, List<Fault> faults)
    {
        (this.changed, this.faults, unit) = (changed, faults, document.Unit);
        dimensions = document.Dimensions.ToDictionary(one => one.Name);
        foreach (var name in dimensions.Keys.Where(ExpressionParser.Words.Contains))
            faults.Add(Fault.Of("dimensions." + name, name, "is a unit or a function in arithmetic: use another name"));
        foreach (var (name, value) in changed.Where(pair => !dimensions.ContainsKey(pair.Key)))
            faults.Add(
                Fault.Of(name, value, "is set for a size this design doesn't have: it has " + string.Join(", ", dimensions.Keys))
            );
    }

    public LengthUnit Unit => unit;

    private string Beyond => "comes to a size beyond any furniture: at most " + LengthText.LongestIn(unit);

    /// <summary>The value of a name; null after a fault.</summary>
    public Working? Find(string name, string askedAt)
    {
        if (known.TryGetValue(name, out var working))
            return working;
        if (failed.Contains(name))
            return null;
        if (!dimensions.TryGetValue(name, out var dimension))
            return Fail(askedAt, name, "isn't a name in this design: it has " + string.Join(", ", Names));
        if (underWay.Contains(name))
            return Fail(
                "dimensions." + name,
                Text(dimension),
                "depends on itself: " + Circle(name) + ". Give one of them a value of its own"
            );
        if (underWay.Count == MostSteps)
            return Fail(askedAt, name, $"goes through more than {MostSteps} names in a row: use fewer steps");
        underWay.Add(name);
        var found = Value(dimension);
        underWay.RemoveAt(underWay.Count - 1);
        if (found is not null)
            known[name] = found;
        else
            failed.Add(name);
        return found;
    }

    private IEnumerable<string> Names => dimensions.Keys.Order(StringComparer.Ordinal);

    private string Circle(string name) => string.Join(" → ", underWay.SkipWhile(one => one != name).Append(name));

    private string Text(DesignDimension dimension) => changed.GetValueOrDefault(dimension.Name) ?? dimension.Value;

    /// <summary>A length by arithmetic; null after a fault.</summary>
    public Working<Length>? Length(string name, string text, string path)
    {
        var plain = LengthText.Parse(text, unit);
        if (plain.Ok)
            return Working.Given(name, plain.Value);
        if (Evaluate(text, path) is not { } result)
            return null;
        return result is { Amount.IsLength: false, Inputs.Length: 0 } ? Fail<Length>(path, text, plain.Fault.Message)
            : !result.Amount.IsLength
                ? Fail<Length>(path, text, "is a bare number where a length is needed: add the unit, as in 3/4 in or 18 mm")
            : Math.Abs(result.Amount.Value) > LengthText.Longest.Ticks ? Fail<Length>(path, text, Beyond)
            : Working.Of(name, result.Amount.ToLength(), result.Template, Working.Geometry, result.Inputs);
    }

    /// <summary>A whole number by arithmetic; null after a fault.</summary>
    public int? Count(string text, string path)
    {
        if (Evaluate(text, path) is not { } result)
            return null;
        if (
            !result.Amount.IsLength
            && result.Amount.Value == Math.Floor(result.Amount.Value)
            && result.Amount.Value is >= 0 and <= 1000
        )
            return (int)result.Amount.Value;
        faults.Add(Fault.Of(path, text, "is not a whole number from 0 to 1000"));
        return null;
    }

    /// <summary>A bare number by arithmetic; null after a fault.</summary>
    public decimal? Number(string text, string path)
    {
        if (Evaluate(text, path) is not { } result)
            return null;
        if (!result.Amount.IsLength)
            return result.Amount.Value;
        faults.Add(Fault.Of(path, text, "is a length where degrees are needed: write a bare number, as in 45"));
        return null;
    }

    private (Amount Amount, string Template, (string, Working)[] Inputs)? Evaluate(string text, string path)
    {
        try
        {
            var expression = ExpressionParser.Parse(text);
            var inputs = expression.Names.Select(name => (name, Find(name, path))).ToArray();
            if (inputs.Any(one => one.Item2 is null))
                return null;
            var values = inputs.ToDictionary(one => one.name, one => one.Item2!);
            return (
                expression.Evaluate(name => AmountOf(values[name])),
                expression.Template,
                [.. inputs.Select(one => (one.name, one.Item2!))]
            );
        }
        catch (ExpressionException problem)
        {
            faults.Add(Fault.Of(path, text, problem.Message));
            return null;
        }
        catch (OverflowException)
        {
            faults.Add(Fault.Of(path, text, Beyond));
            return null;
        }
    }

    private static Amount AmountOf(Working working) =>
        working switch
        {
            Working<Length> length => Amount.Of(length.Value),
            Working<int> count => Amount.Of(count.Value),
            Working<double> number => Amount.Of((decimal)number.Value),
            _ => throw new InvalidOperationException(working.Name + " is no number"),
        };

    private Working? Value(DesignDimension dimension)
    {
        var (text, path) = changed.TryGetValue(dimension.Name, out var set)
            ? (set, dimension.Name)
            : (dimension.Value, "dimensions." + dimension.Name);
        if (dimension.IsCount)
        {
            if (Count(text, path) is not { } count)
                return null;
            return Within(dimension, count, (text, path), (limit, at) => Count(limit, at), Words)
                ? Working.Looked(dimension.Label, count, new QuantityFigure(count, QuantityKind.Bare, 0), Working.AsGiven)
                : null;
        }

        return
            Length(dimension.Label, text, path) is { } length
            && Within(dimension, length.Value, (text, path), (limit, at) => Length("limit", limit, at)?.Value, Words)
            ? length
            : null;
    }

    // A limit by arithmetic is told as what it comes to.
    private bool Within<T>(
        DesignDimension dimension,
        T value,
        (string Text, string Path) typed,
        Func<string, string, T?> read,
        Func<T, string> say
    )
        where T : struct, IComparable<T>
    {
        var label = dimension.Label.ToLowerInvariant();
        if (dimension.Least is { } least && read(least, Limit(dimension, "least")) is { } low && value.CompareTo(low) < 0)
            faults.Add(Fault.Of(typed.Path, typed.Text, $"is too small for {label}: at least {say(low)}"));
        else if (dimension.Most is { } most && read(most, Limit(dimension, "most")) is { } high && value.CompareTo(high) > 0)
            faults.Add(Fault.Of(typed.Path, typed.Text, $"is too large for {label}: at most {say(high)}"));
        else
            return true;
        return false;
    }

    private string Words(Length length) => LengthFormat.WithUnit(length, unit);

    private static string Words(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Limit(DesignDimension dimension, string which) => $"dimensions.{dimension.Name}.{which}";

    private Working? Fail(string path, string value, string message)
    {
        faults.Add(Fault.Of(path, value, message));
        return null;
    }

    private Working<T>? Fail<T>(string path, string value, string message)
    {
        faults.Add(Fault.Of(path, value, message));
        return null;
    }
}
