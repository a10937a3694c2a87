using System.Globalization;
using System.Text;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Each wrong request is refused with the path of the member and the value that stands there.</summary>
public sealed class CutRequestFaultTests
{
    [Theory]
    [InlineData("shop-planner/cut-request", "shop-planner/cut-plan", "format", "shop-planner/cut-plan")]
    [InlineData("\"version\": 1", "\"version\": 3", "version", "3")]
    [InlineData("\"version\": 1", "\"version\": 0", "version", "0")]
    [InlineData("\"version\": 1", "\"version\": \"1\"", "version", "1")]
    [InlineData("\"version\": 1, ", "", "version", "")]
    [InlineData("\"unit\": \"in\"", "\"unit\": \"ft\"", "unit", "ft")]
    [InlineData("\"1/8\"", "-0.125", "saw.kerf", "-0.125")]
    [InlineData("\"1/8\"", "\"-1/8\"", "saw.kerf", "-1/8")]
    [InlineData("\"1/8\"", "\"2 5/8\"", "saw.kerf", "2 5/8")]
    [InlineData("\"1/8\"", "NaN", "saw.kerf", "NaN")]
    [InlineData("\"1/8\"", "Infinity", "saw.kerf", "Infinity")]
    [InlineData("\"1/8\"", "1e400", "saw.kerf", "1e400")]
    [InlineData("\"1/8\"", "1e999999999999", "saw.kerf", "1e999999999999")]
    [InlineData("\"boardEndTrim\": \"1/2\"", "\"boardEndTrim\": \"8 ft\"", "saw.boardEndTrim", "8 ft")]
    [InlineData("\"sheetEdgeTrim\": \"1/4\"", "\"sheetEdgeTrim\": 24", "saw.sheetEdgeTrim", "24")]
    [InlineData("\"boardLength\": 12", "\"boardLength\": true", "keep.boardLength", "true")]
    [InlineData(
        "\"materials\": [",
        "\"materials\": [ { \"id\": \"birch-18\", \"form\": \"sheet\" },",
        "materials[2].id",
        "birch-18"
    )]
    [InlineData("\"form\": \"board\"", "\"form\": \"plank\"", "materials[0].form", "plank")]
    [InlineData("\"form\": \"board\", ", "", "materials[0].form", "")]
    [InlineData(", \"width\": \"2 1/2\"", "", "materials[0].width", "")]
    [InlineData("\"B7\"", "\"pine-1x3-8ft\"", "stock[1].id", "pine-1x3-8ft")]
    [InlineData("\"B7\"", "\" \"", "stock[1].id", " ")]
    [InlineData("\"41 3/8\"", "\"41 3/0\"", "stock[1].length", "41 3/0")]
    [InlineData("\"41 3/8\"", "\"41 3/8 cubits\"", "stock[1].length", "41 3/8 cubits")]
    [InlineData("\"41 3/8\"", "[41]", "stock[1].length", "[…]")]
    [InlineData("\"41 3/8\"", "0", "stock[1].length", "0")]
    [InlineData("\"41 3/8\"", "\"1,5\"", "stock[1].length", "1,5")]
    [InlineData("\"offcut\": true", "\"offcut\": \"yes\"", "stock[1].offcut", "yes")]
    [InlineData("\"offcut\": true", "\"offcut\": true, \"width\": 3", "stock[1].width", "3")]
    [InlineData("\"price\": 6.48", "\"price\": -1", "stock[0].price", "-1")]
    [InlineData("\"price\": 6.48", "\"price\": 1e12", "stock[0].price", "1e12")]
    [InlineData("\"price\": 6.48", "\"price\": \"cheap\"", "stock[0].price", "cheap")]
    [InlineData("64.00, \"quantity\": 4", "64.00, \"quantity\": -1", "stock[2].quantity", "-1")]
    [InlineData("\"width\": 48, ", "", "stock[2].width", "")]
    [InlineData("\"id\": \"A\"", "\"id\": \"P\"", "parts[1].id", "P")]
    [InlineData("\"id\": \"A\"", "\"id\": \"\"", "parts[0].id", "")]
    [InlineData("\"id\": \"A\"", "\"id\": 7", "parts[0].id", "7")]
    [InlineData("\"id\": \"A\", ", "", "parts[0].id", "")]
    [InlineData("\"34 1/2\"", "\"12 1/0\"", "parts[0].length", "12 1/0")]
    [InlineData("\"34 1/2\"", "-3", "parts[0].length", "-3")]
    [InlineData("\"34 1/2\"", "null", "parts[0].length", "")]
    [InlineData("\"34 1/2\"", "1e30", "parts[0].length", "1e30")]
    [InlineData("\"34 1/2\"", "\"101 m\"", "parts[0].length", "101 m")]
    [InlineData("\"13 1/4\"", "0", "parts[1].width", "0")]
    [InlineData("\"width\": \"13 1/4\", ", "", "parts[1].width", "")]
    [InlineData("\"grain\": \"length\"", "\"grain\": \"across\"", "parts[1].grain", "across")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 0,", "parts[1].quantity", "0")]
    [InlineData("\"quantity\": 2,", "\"quantity\": -2,", "parts[1].quantity", "-2")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 1e9,", "parts[1].quantity", "1e9")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 1.5,", "parts[1].quantity", "1.5")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 99997,", "parts", "100001")]
    [InlineData("\"Side panel\"", "{}", "parts[1].name", "{…}")]
    [InlineData("\"name\": \"Leg\", \"material\": \"pine-1x3\"", "\"material\": \"oak\"", "parts[0].material", "oak")]
    [InlineData("\"name\": \"Leg\", \"material\": \"pine-1x3\"", "\"name\": \"Leg\"", "parts[0].material", "")]
    [InlineData("\"name\": \"Leg\"", "\"name\": \"Leg\", \"name\": \"Foot\"", "parts[0].name", "Foot")]
    [InlineData("\"name\": \"Leg\"", "\"x\": 1, \"x\": 1", "parts[0].x", "1")]
    [InlineData("\"version\": 1", "\"version\": 1, \"version\": 1", "version", "1")]
    [InlineData("\"seconds\": 10", "\"seconds\": 0", "limits.seconds", "0")]
    [InlineData("\"seconds\": 10", "\"seconds\": -1", "limits.seconds", "-1")]
    [InlineData("\"seconds\": 10", "\"seconds\": 86401", "limits.seconds", "86401")]
    [InlineData("\"seconds\": 10", "\"seconds\": \"ten\"", "limits.seconds", "ten")]
    [InlineData("{ \"seconds\": 10 }", "7", "limits", "7")]
    [InlineData("{ \"seconds\": 10 }", "{ \"seconds\": 10 ]", "limits.seconds", "]")]
    [InlineData("\"Leg\"", "\"\\ud800\"", "parts[0].name", "\"\\ud800\"")]
    public void A_wrong_member_is_named_with_its_value(string old, string replacement, string path, string value)
    {
        var (request, faults) = ReadRequest(Request.With(old, replacement));
        Assert.Null(request);
        var fault = Assert.Single(faults);
        Assert.Equal((path, value), (fault.Field, fault.Value));
        Assert.NotEmpty(fault.Message);
    }

    [Theory]
    [InlineData("materials")]
    [InlineData("stock")]
    [InlineData("parts")]
    public void A_list_that_must_be_there_is_asked_for(string name)
    {
        var (request, faults) = ReadRequest(Request.With($"\"{name}\": [", $"\"no-{name}\": ["));
        Assert.Null(request);
        Assert.Contains(faults, fault => fault.Field == name && fault.Message.StartsWith("is missing", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("  \n", "is empty")]
    [InlineData("null", "is missing")]
    [InlineData("[]", "is not an object")]
    [InlineData("\"text\"", "is not an object")]
    [InlineData("{", "ends the document too early")]
    [InlineData("{ 'format': 1 }", "is not JSON")]
    [InlineData("{} {}", "is not JSON")]
    [InlineData("{ // a comment\n }", "is not JSON")]
    [InlineData("{}", "is missing")]
    public void What_is_no_document_is_refused_with_one_fault(string json, string message)
    {
        var (request, faults) = ReadRequest(json);
        Assert.Null(request);
        Assert.StartsWith(message, Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_not_utf_8_is_refused()
    {
        var (request, faults) = CutRequestJson.Read(Encoding.Latin1.GetBytes(Request.With("Leg", "Tischfüße")));
        Assert.Null(request);
        Assert.Equal("is not UTF-8 text", Assert.Single(faults).Message);
    }

    [Fact]
    public void Every_fault_is_reported_at_once()
    {
        var json = Request
            .With("\"1/8\"", "-1")
            .With("\"price\": 6.48", "\"price\": -1")
            .With("\"34 1/2\"", "\"12 1/0\"")
            .With("\"grain\": \"length\"", "\"grain\": 1");
        Assert.Equal(
            ["saw.kerf", "stock[0].price", "parts[0].length", "parts[1].grain"],
            ReadRequest(json).Faults.Select(fault => fault.Field)
        );
    }

    [Fact]
    public void A_hundred_faults_are_listed_and_the_rest_counted()
    {
        var bad = string.Join(
            ",",
            Enumerable
                .Range(0, 250)
                .Select(i =>
                    string.Create(CultureInfo.InvariantCulture, $$"""{ "id": "x{{i}}", "material": "pine-1x3", "length": 0 }""")
                )
        );
        var (request, faults) = ReadRequest(Request.With("\"parts\": [", "\"parts\": [" + bad + ","));
        Assert.Null(request);
        Assert.Equal(101, faults.Length);
        Assert.Equal("parts[99].length", faults[99].Field);
        Assert.Equal("'and 150 more' errors are not shown: fix these first", faults[100].ToString());
    }

    [Fact]
    public void A_fault_reads_as_one_line()
    {
        var faults = ReadRequest(Request.With("\"34 1/2\"", "\"12 1/0\"")).Faults;
        Assert.StartsWith(
            "parts[0].length: '12 1/0' is not a length",
            Assert.Single(faults).ToString(),
            StringComparison.Ordinal
        );
    }
}
