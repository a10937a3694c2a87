using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>
/// A figure that knows how it came about: its formula, what went into it (figures themselves), and where the rule comes from. The
/// formula names its inputs by key in braces, <c>{width} × {coefficient}</c>, so that it reads in words and with the numbers
/// filled in.
/// </summary>
public abstract record Working
{
    private protected Working(string name, string template, SourceNote source, ImmutableArray<WorkingInput> inputs) =>
        (Name, Template, Source, Inputs) = (name, template, source, inputs);

    /// <summary>What the figure is, as a person says it: <c>Change in width</c>.</summary>
    public string Name { get; }

    /// <summary>The formula with its inputs' keys in braces; empty for a figure that was given or looked up.</summary>
    public string Template { get; }

    /// <summary>Where the rule, or the figure looked up, comes from.</summary>
    public SourceNote Source { get; }

    /// <summary>What went into it.</summary>
    public ImmutableArray<WorkingInput> Inputs { get; }

    /// <summary>Why the rule was not made for these inputs; null where it was.</summary>
    public string? OutsideRange { get; init; }

    /// <summary>The value as shown.</summary>
    public abstract Figure Figure { get; }

    /// <summary>The formula in words: <c>width × coefficient</c>.</summary>
    public string Formula => Fill(input => char.ToLowerInvariant(input.Name[0]) + input.Name[1..], word => word.Contains(' '));

    /// <summary>The formula with the numbers: <c>12″ × 0.00369</c>. A figure that is raised to a power stands in brackets,
    /// <c>(¾″)³</c>, since its unit is raised as well.</summary>
    public string Filled(LengthUnit unit) => Fill(input => input.Figure.Text(unit), _ => true);

    /// <summary>Where a figure was typed in by the person who asks.</summary>
    public static readonly SourceNote AsGiven = new("As entered", Certainty.Read);

    /// <summary>Plain arithmetic or geometry that needs no source.</summary>
    public static readonly SourceNote Geometry = new("Geometry", Certainty.Derived);

    /// <summary>A length that was given.</summary>
    public static Working<Length> Given(string name, Length value) => Looked(name, value, new LengthFigure(value), AsGiven);

    /// <summary>A quantity that was given, in the metric unit of its kind.</summary>
    public static Working<double> Given(string name, double value, QuantityKind kind, int digits) =>
        Looked(name, value, new QuantityFigure(value, kind, digits), AsGiven);

    /// <summary>A figure looked up in a table or given.</summary>
    public static Working<T> Looked<T>(string name, T value, Figure figure, SourceNote source) =>
        new(name, value, figure, "", source, []);

    /// <summary>A quantity looked up in a table, in the metric unit of its kind.</summary>
    public static Working<double> Looked(string name, double value, QuantityKind kind, int digits, SourceNote source) =>
        Looked(name, value, new QuantityFigure(value, kind, digits), source);

    /// <summary>A length worked out.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">The result.</param>
    /// <param name="template">The formula, the inputs' keys in braces.</param>
    /// <param name="source">Where the rule comes from.</param>
    /// <param name="inputs">Each key of the template with its figure.</param>
    public static Working<Length> Of(
        string name,
        Length value,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Of(name, value, new LengthFigure(value), template, source, inputs);

    /// <summary>A quantity worked out, in the metric unit of its kind.</summary>
    public static Working<double> Of(
        string name,
        double value,
        QuantityKind kind,
        int digits,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Of(name, value, new QuantityFigure(value, kind, digits), template, source, inputs);

    /// <summary>A value worked out, shown as the figure says.</summary>
    public static Working<T> Of<T>(
        string name,
        T value,
        Figure figure,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => new(name, value, figure, template, source, [.. inputs.Select(one => new WorkingInput(one.Key, one.Input))]);

    private string Fill(Func<Working, string> word, Func<string, bool> isBracketed) =>
        Inputs.Aggregate(Template, (text, input) => Put(text, "{" + input.Key + "}", word(input.Working), isBracketed));

    private static string Put(string text, string key, string word, Func<string, bool> isBracketed)
    {
        var raised = isBracketed(word) ? "(" + word + ")" : word;
        return text.Replace(key + "²", raised + "²", StringComparison.Ordinal)
            .Replace(key + "³", raised + "³", StringComparison.Ordinal)
            .Replace(key, word, StringComparison.Ordinal);
    }
}

/// <summary>What went into a figure.</summary>
/// <param name="Key">Its name in the formula.</param>
/// <param name="Working">The figure.</param>
public sealed record WorkingInput(string Key, Working Working);

/// <summary>A figure with its value.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed record Working<T> : Working
{
    internal Working(string name, T value, Figure figure, string template, SourceNote source, ImmutableArray<WorkingInput> inputs)
        : base(name, template, source, inputs) => (Value, Figure) = (value, figure);

    /// <summary>The value.</summary>
    public T Value { get; }

    /// <inheritdoc />
    public override Figure Figure { get; }

    /// <summary>The same figure under another name.</summary>
    internal Working<T> Named(string name) => new(name, Value, Figure, Template, Source, Inputs) { OutsideRange = OutsideRange };

    /// <summary>The same value shown in another way.</summary>
    internal Working<T> Shown(Figure figure) =>
        new(Name, Value, figure, Template, Source, Inputs) { OutsideRange = OutsideRange };
}
