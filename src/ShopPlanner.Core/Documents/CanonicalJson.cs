using System.Globalization;
using System.Text;
using System.Text.Json;

namespace ShopPlanner.Core.Documents;

/// <summary>
/// One text for all JSON documents that say the same, so that a hash can tell whether two do: the JSON Canonicalization Scheme
/// (RFC 8785). No blanks; the members of an object in the order of their names' UTF-16 units; texts with no more escapes than
/// JSON needs; numbers as ECMAScript prints them. Whole numbers of 64 bits keep all digits, where the standard would round them
/// beyond 2^53.
/// </summary>
public static class CanonicalJson
{
    // ECMAScript prints plain digits for numbers from 1e-6 up to 1e21.
    private const int MostWholeDigits = 21,
        MostLeadingNoughts = -5;

    /// <summary>Returns the canonical text.</summary>
    public static string Write(JsonElement element)
    {
        var text = new StringBuilder();
        Append(text, element);
        return text.ToString();
    }

    private static void Append(StringBuilder text, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                AppendAll(
                    text,
                    ('{', '}'),
                    element.EnumerateObject().OrderBy(member => member.Name, StringComparer.Ordinal),
                    AppendMember
                );
                break;
            case JsonValueKind.Array:
                AppendAll(text, ('[', ']'), element.EnumerateArray(), Append);
                break;
            case JsonValueKind.String:
                AppendText(text, element.GetString()!);
                break;
            case JsonValueKind.Number:
                text.Append(
                    element.TryGetInt64(out var whole)
                        ? whole.ToString(CultureInfo.InvariantCulture)
                        : Number(element.GetDouble())
                );
                break;
            default:
                text.Append(element.GetRawText());
                break;
        }
    }

    private static void AppendAll<T>(
        StringBuilder text,
        (char Open, char Close) marks,
        IEnumerable<T> items,
        Action<StringBuilder, T> append
    )
    {
        text.Append(marks.Open);
        foreach (var (at, item) in items.Index())
        {
            if (at > 0)
                text.Append(',');
            append(text, item);
        }

        text.Append(marks.Close);
    }

    private static void AppendMember(StringBuilder text, JsonProperty member)
    {
        AppendText(text, member.Name);
        text.Append(':');
        Append(text, member.Value);
    }

    private static void AppendText(StringBuilder text, string value)
    {
        text.Append('"');
        foreach (var c in value)
            text.Append(
                c switch
                {
                    '"' => "\\\"",
                    '\\' => @"\\",
                    '\b' => "\\b",
                    '\t' => "\\t",
                    '\n' => "\\n",
                    '\f' => "\\f",
                    '\r' => "\\r",
                    < ' ' => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                    _ => c.ToString(),
                }
            );
        text.Append('"');
    }

    // ECMA-262, Number::toString: the shortest digits that read back as the same number.
    private static string Number(double number)
    {
        if (number == 0)
            return "0";
        var sign = number < 0 ? "-" : "";
        var parts = Math.Abs(number).ToString("R", CultureInfo.InvariantCulture).Split('E');
        var whole = parts[0].Split('.')[0].Length;
        var all = parts[0].Replace(".", "", StringComparison.Ordinal);
        var digits = all.TrimStart('0');
        var exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        var point = whole - (all.Length - digits.Length) + exponent;
        return sign + Placed(digits.TrimEnd('0'), point);
    }

    private static string Placed(string digits, int point)
    {
        if (point > MostWholeDigits || point < MostLeadingNoughts)
        {
            var (head, rest) = (digits[..1], digits[1..]);
            var exponent = (point > 0 ? "e+" : "e") + (point - 1).ToString(CultureInfo.InvariantCulture);
            return head + (rest.Length > 0 ? "." + rest : "") + exponent;
        }

        return point >= digits.Length ? digits.PadRight(point, '0')
            : point > 0 ? digits[..point] + "." + digits[point..]
            : "0." + new string('0', -point) + digits;
    }
}
