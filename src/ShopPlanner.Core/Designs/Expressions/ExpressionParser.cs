using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Expressions;

/// <summary>Reads an <see cref="Expression"/>.</summary>
internal sealed partial class ExpressionParser
{
    private const int MostCharacters = 500;
    private const int MostDepth = 40;

    private static readonly string[] Functions = ["min", "max", "round", "count"];
    private static readonly string[] Units = ["in", "mm", "cm", "m", "ft"];

    /// <summary>Words that mean something in arithmetic, so that no name may be one of them.</summary>
    public static IReadOnlyCollection<string> Words { get; } = [.. Functions, .. Units];

    private readonly List<string> tokens;
    private int at;
    private int depth;

    private ExpressionParser(List<string> tokens) => this.tokens = tokens;

    /// <exception cref="ExpressionException">The text is no expression.</exception>
    public static Expression Parse(string text)
    {
        if (text.Length > MostCharacters)
            throw new ExpressionException($"is longer than {MostCharacters} characters");
        var parser = new ExpressionParser(Split(text));
        var whole = parser.Sum();
        return parser.at == parser.tokens.Count
            ? whole
            : throw new ExpressionException(
                $"has '{parser.tokens[parser.at]}' where nothing more is expected: write a sign such as + or * before it"
            );
    }

    private static List<string> Split(string text)
    {
        var tokens = new List<string>();
        for (var at = 0; at < text.Length; )
        {
            var match = Token().Match(text, at);
            if (!match.Success)
                throw new ExpressionException($"has '{text[at]}', which is neither a name, a number nor a sign: use + - * / ( )");
            at += match.Length;
            if (match.Value.Trim() is { Length: > 0 } token)
                tokens.Add(token);
        }

        return tokens;
    }

    private Expression Sum()
    {
        if (++depth > MostDepth)
            throw new ExpressionException($"is nested too deeply: at most {MostDepth} parentheses in each other");
        var left = Product();
        while ((Take("+") ?? Take("-") ?? Take("−")) is { } sign)
            left = new Binary(sign == "+" ? '+' : '−', left, Product());
        depth--;
        return left;
    }

    private Expression Product()
    {
        var left = Factor();
        while ((Take("*") ?? Take("×") ?? Take("/") ?? Take("÷")) is { } sign)
            left = new Binary(sign is "*" or "×" ? '×' : '÷', left, Factor());
        return left;
    }

    private Expression Factor()
    {
        var token =
            at < tokens.Count
                ? tokens[at++]
                : throw new ExpressionException("ends where a value is expected: write a number or a name there");
        if (token == "(")
        {
            var inner = Sum();
            Expect(")");
            return inner;
        }

        if (token is "-" or "−")
            return new Binary('×', new Literal(Amount.Of(-1), "−1"), Factor());
        if (char.IsAsciiDigit(token[0]) || token[0] == '.')
            return Number(token);
        if (!Name().IsMatch(token))
            throw new ExpressionException($"has '{token}' where a value is expected: write a number or a name there");
        return Functions.Contains(token) && Take("(") is not null ? CallOf(token) : new NameExpression(token);
    }

    private Call CallOf(string function)
    {
        var first = Sum();
        Expect(",");
        var second = Sum();
        Expect(")");
        return new Call(function, first, second);
    }

    private static Literal Number(string token)
    {
        if (decimal.TryParse(token, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            return new(Amount.Of(number), token);
        var length = LengthText.Parse(token, LengthUnit.Inch);
        return length.Ok
            ? new(Amount.Of(length.Value), token)
            : throw new ExpressionException($"has '{token}', which is not a length");
    }

    private string? Take(string wanted)
    {
        if (at >= tokens.Count || tokens[at] != wanted)
            return null;
        at++;
        return wanted;
    }

    private void Expect(string wanted)
    {
        if (Take(wanted) is null)
            throw new ExpressionException($"is missing a '{wanted}'");
    }

    // A number with a unit is one token, its fraction included, so that 3/4 in is a length and 3/4 a division.
    [GeneratedRegex(
        """\G(\s+|(\d+[ -])?\d+/\d+\s*(in|mm|cm|m|ft|"|″|')(?![a-z_0-9])|(\d+\.?\d*|\.\d+)\s*(in|mm|cm|m|ft|"|″|')(?![a-z_0-9])|\d+\.?\d*|\.\d+|[a-z][a-z0-9_]*|[-−+*×/÷(),])"""
    )]
    private static partial Regex Token();

    [GeneratedRegex("^[a-z][a-z0-9_]*$")]
    private static partial Regex Name();
}
