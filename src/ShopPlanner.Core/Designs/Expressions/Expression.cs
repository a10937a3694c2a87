using System.Collections.Immutable;

namespace ShopPlanner.Core.Designs.Expressions;

/// <summary>
/// Arithmetic on names and lengths, as written in a design: <c>width - 2 * leg</c>, <c>(height - 3/4 in) ÷ 2</c>,
/// <c>min(a, b)</c>, <c>max(a, b)</c>, <c>round(a, 1/16 in)</c> to the nearest step, <c>count(a, b)</c> the whole times that b
/// goes into a. A length is written with its unit; a number without one is a bare number.
/// </summary>
internal abstract record Expression
{
    /// <summary>Names that it uses, each once.</summary>
    public abstract ImmutableArray<string> Names { get; }

    /// <summary>Its value.</summary>
    /// <param name="name">Value of a name.</param>
    /// <exception cref="ExpressionException">Units that do not fit, a division by nothing.</exception>
    public abstract Amount Evaluate(Func<string, Amount> name);

    /// <summary>The formula with names in braces.</summary>
    public abstract string Template { get; }
}

/// <summary>A literal.</summary>
internal sealed record Literal(Amount Amount, string Text) : Expression
{
    public override ImmutableArray<string> Names => [];

    public override string Template => Text;

    public override Amount Evaluate(Func<string, Amount> name) => Amount;
}

/// <summary>A name.</summary>
internal sealed record NameExpression(string Name) : Expression
{
    public override ImmutableArray<string> Names => [Name];

    public override string Template => "{" + Name + "}";

    public override Amount Evaluate(Func<string, Amount> name) => name(Name);
}

/// <summary>Two values and a sign between them.</summary>
internal sealed record Binary(char Sign, Expression Left, Expression Right) : Expression
{
    public override ImmutableArray<string> Names => [.. Left.Names.Union(Right.Names)];

    public override string Template =>
        Sign is '+' or '−' ? $"{Left.Template} {Sign} {Right.Template}" : $"{Wrap(Left)} {Sign} {Wrap(Right)}";

    public override Amount Evaluate(Func<string, Amount> name)
    {
        var (a, b) = (Left.Evaluate(name), Right.Evaluate(name));
        return Sign switch
        {
            '+' => Same(a, b, "added") with { Value = a.Value + b.Value },
            '−' => Same(a, b, "subtracted") with { Value = a.Value - b.Value },
            '×' when a.IsLength && b.IsLength => throw new ExpressionException(
                "multiplies a length by a length, which is no longer a length: multiply by a bare number"
            ),
            '×' => new(a.Value * b.Value, a.IsLength || b.IsLength),
            _ => Divide(a, b),
        };
    }

    private static Amount Divide(Amount a, Amount b)
    {
        if (b.Value == 0)
            throw new ExpressionException("is divided by zero: divide by something else");
        if (b.IsLength && !a.IsLength)
            throw new ExpressionException("divides a bare number by a length, which is not a length: divide by a bare number");
        return new(a.Value / b.Value, a.IsLength && !b.IsLength);
    }

    internal static Amount Same(Amount a, Amount b, string what) =>
        a.IsLength == b.IsLength
            ? a
            : throw new ExpressionException(
                $"can't be worked out: a length and a bare number are {what}. Add the unit, as in 3/4 in or 18 mm"
            );

    private static string Wrap(Expression inner) => inner is Binary { Sign: '+' or '−' } ? $"({inner.Template})" : inner.Template;
}

/// <summary>A named function of two values.</summary>
internal sealed record Call(string Function, Expression First, Expression Second) : Expression
{
    private const int CountDigits = 12;

    public override ImmutableArray<string> Names => [.. First.Names.Union(Second.Names)];

    public override string Template => $"{Function}({First.Template}, {Second.Template})";

    public override Amount Evaluate(Func<string, Amount> name)
    {
        var (a, b) = (First.Evaluate(name), Second.Evaluate(name));
        Binary.Same(a, b, "compared");
        return Function switch
        {
            "min" => a.Value <= b.Value ? a : b,
            "max" => a.Value >= b.Value ? a : b,
            "round" => a with { Value = Math.Round(a.Value / Step(b), MidpointRounding.AwayFromZero) * b.Value },
            // A third of a length is not a whole count of digits: three of them are still three.
            _ => new(Math.Floor(Math.Round(a.Value / Step(b), CountDigits)), false),
        };
    }

    private static decimal Step(Amount step) =>
        step.Value > 0 ? step.Value : throw new ExpressionException("needs a step of more than zero, as in round(a, 1/16 in)");
}

/// <summary>What an expression says cannot be worked out; the message reads on from the expression.</summary>
internal sealed class ExpressionException(string message) : Exception(message);
