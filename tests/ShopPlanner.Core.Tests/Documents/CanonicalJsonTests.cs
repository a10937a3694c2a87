using System.Text.Json;
using CsCheck;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Core.Tests.Documents;

/// <summary>The canonical form against the examples of the standard (RFC 8785).</summary>
public sealed class CanonicalJsonTests
{
    [Fact]
    public void The_standards_first_example_comes_out_as_printed() // RFC 8785, 3.2.2
    {
        const string Given = """
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """;
        const string Wanted =
            """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]"""
            + ""","string":"€$\u000f\nA'B\"\\\\\"/"}""";
        Assert.Equal(Wanted, Write(Given));
    }

    [Fact]
    public void Members_stand_in_the_order_of_their_utf16_units() // RFC 8785, 3.2.3
    {
        const string Given = """
            { "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
              "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis" }
            """;
        using var document = JsonDocument.Parse(Write(Given));
        Assert.Equal(
            [
                "Carriage Return",
                "One",
                "Control",
                "Latin Small Letter O With Diaeresis",
                "Euro Sign",
                "Emoji: Grinning Face",
                "Hebrew Letter Dalet With Dagesh",
            ],
            document.RootElement.EnumerateObject().Select(member => member.Value.GetString())
        );
    }

    [Theory] // ECMA-262, Number::toString, by its rules for the exponent.
    [InlineData("1e20", "100000000000000000000")]
    [InlineData("1e21", "1e+21")]
    [InlineData("0.000001", "0.000001")]
    [InlineData("0.0000001", "1e-7")]
    [InlineData("-0.0", "0")]
    [InlineData("123456789012345680000.0", "123456789012345680000")]
    [InlineData("9223372036854775807", "9223372036854775807")]
    [InlineData("-1.50", "-1.5")]
    public void Numbers_are_printed_as_ecmascript_does(string given, string wanted) =>
        Assert.Equal($"[{wanted}]", Write($"[{given}]"));

    [Fact]
    public void Every_number_reads_back_as_itself() =>
        Gen
            .Double.Where(double.IsFinite)
            .Sample(number =>
            {
                using var document = JsonDocument.Parse(Write($"[{JsonSerializer.Serialize(number)}]"));
                return document.RootElement[0].GetDouble() == number;
            });

    [Fact]
    public void Blanks_order_and_escapes_make_no_difference() =>
        Assert.Equal(Write("""{ "a": [1, "é"], "b": { } }"""), Write("{\"b\":{},\n\"a\":[1,\"\\u00e9\"]}"));

    private static string Write(string json)
    {
        using var document = JsonDocument.Parse(json);
        return CanonicalJson.Write(document.RootElement);
    }
}
