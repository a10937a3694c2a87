using System.Text;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>More requests that are refused: wrong types, numbers beyond every limit, ids and lists that are not there, documents cut off.</summary>
public sealed class WrongRequestTests
{
    [Theory]
    // Wrong types.
    [InlineData("\"34 1/2\"", "true", "parts[0].length")]
    [InlineData("\"34 1/2\"", "{}", "parts[0].length")]
    [InlineData("\"34 1/2\"", "\"\"", "parts[0].length")]
    [InlineData("\"quantity\": 2,", "\"quantity\": \"2\",", "parts[1].quantity")]
    [InlineData("\"quantity\": 2,", "\"quantity\": true,", "parts[1].quantity")]
    [InlineData("\"quantity\": 2,", "\"quantity\": [2],", "parts[1].quantity")]
    [InlineData("\"price\": 6.48", "\"price\": true", "stock[0].price")]
    [InlineData("\"price\": 6.48", "\"price\": [6]", "stock[0].price")]
    [InlineData("\"offcut\": true", "\"offcut\": 1", "stock[1].offcut")]
    [InlineData("\"form\": \"sheet\"", "\"form\": 2", "materials[1].form")]
    [InlineData("\"grain\": \"length\"", "\"grain\": true", "parts[1].grain")]
    [InlineData("\"id\": \"A\"", "\"id\": null", "parts[0].id")]
    [InlineData("\"id\": \"A\"", "\"id\": [\"A\"]", "parts[0].id")]
    [InlineData("\"unit\": \"in\"", "\"unit\": null", "unit")]
    [InlineData("\"unit\": \"in\"", "\"unit\": \"IN\"", "unit")]
    [InlineData("\"unit\": \"in\"", "\"unit\": [\"in\"]", "unit")]
    [InlineData("\"version\": 1", "\"version\": 1.5", "version")]
    [InlineData("\"version\": 1", "\"version\": null", "version")]
    [InlineData("\"version\": 1", "\"version\": -1", "version")]
    [InlineData("\"version\": 1", "\"version\": 99999999999999999999", "version")]
    [InlineData("\"version\": 1", "\"version\": [1]", "version")]
    [InlineData("\"shop-planner/cut-request\"", "null", "format")]
    [InlineData("\"shop-planner/cut-request\"", "7", "format")]
    // Numbers beyond every limit.
    [InlineData("\"34 1/2\"", "NaN", "parts[0].length")]
    [InlineData("\"34 1/2\"", "-Infinity", "parts[0].length")]
    [InlineData("\"34 1/2\"", "\"NaN\"", "parts[0].length")]
    [InlineData("\"34 1/2\"", "\"∞\"", "parts[0].length")]
    [InlineData("\"34 1/2\"", "1e400", "parts[0].length")]
    [InlineData("\"34 1/2\"", "1e-400", "parts[0].length")]
    [InlineData("\"34 1/2\"", "-0", "parts[0].length")]
    [InlineData("\"34 1/2\"", "0.00001", "parts[0].length")]
    [InlineData("\"34 1/2\"", "9223372036854775808", "parts[0].length")]
    [InlineData("\"34 1/2\"", "79228162514264337593543950336", "parts[0].length")]
    [InlineData("\"34 1/2\"", "\"99999999999999999999 ft\"", "parts[0].length")]
    [InlineData("\"34 1/2\"", "\"1 99999999999999999999/99999999999999999998\"", "parts[0].length")]
    [InlineData("\"34 1/2\"", "0x22", "parts[0].length")]
    [InlineData("\"34 1/2\"", "+34", "parts[0].length")]
    [InlineData("\"34 1/2\"", ".5", "parts[0].length")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 2147483648,", "parts[1].quantity")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 1e400,", "parts[1].quantity")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 99999999999999999999999999999999,", "parts[1].quantity")]
    [InlineData("64.00, \"quantity\": 4", "64.00, \"quantity\": 1e10", "stock[2].quantity")]
    [InlineData("64.00, \"quantity\": 4", "64.00, \"quantity\": 0.5", "stock[2].quantity")]
    [InlineData("\"price\": 6.48", "\"price\": 1e400", "stock[0].price")]
    [InlineData("\"seconds\": 10", "\"seconds\": 1e400", "limits.seconds")]
    [InlineData("\"1/8\"", "\"-1 mm\"", "saw.kerf")]
    // Lists that are no lists, ids that are taken or not known, commas too many.
    [InlineData("\"material\": \"birch-18\", \"length\": 96", "\"material\": \"Birch-18\", \"length\": 96", "stock[2].material")]
    [InlineData("\"id\": \"birch-full\"", "\"id\": \"B7\"", "stock[2].id")]
    [InlineData(
        "{ \"id\": \"A\", \"name\": \"Leg\", \"material\": \"pine-1x3\", \"length\": \"34 1/2\", \"quantity\": 4 }",
        "null",
        "parts[0]"
    )]
    [InlineData(
        "{ \"id\": \"A\", \"name\": \"Leg\", \"material\": \"pine-1x3\", \"length\": \"34 1/2\", \"quantity\": 4 }",
        "[]",
        "parts[0]"
    )]
    [InlineData("{ \"seconds\": 10 }", "{ \"seconds\": 10, }", "limits.seconds")]
    public void A_wrong_member_is_named(string old, string replacement, string path)
    {
        var (request, faults) = ReadRequest(Request.With(old, replacement));
        Assert.Null(request);
        Assert.Equal(path, Assert.Single(faults).Field);
    }

    [Theory]
    [InlineData("materials", "{}")]
    [InlineData("materials", "[]")]
    [InlineData("stock", "\"all\"")]
    [InlineData("parts", "7")]
    [InlineData("parts", "null")]
    public void A_list_that_is_none_is_named(string name, string instead)
    {
        var lists = new Dictionary<string, string>
        {
            ["materials"] = "[]",
            ["stock"] = "[]",
            ["parts"] = "[]",
            [name] = instead,
        };
        var members = string.Join(", ", lists.Select(list => $"\"{list.Key}\": {list.Value}"));
        var (request, faults) = ReadRequest(
            $$"""{ "format": "shop-planner/cut-request", "version": 1, "unit": "in", {{members}} }"""
        );
        Assert.Null(request);
        Assert.Contains(faults, fault => fault.Field == name);
    }

    // Every byte at which a document can break off on its way, in the middle of a character too.
    [Fact]
    public void A_document_cut_off_anywhere_is_refused()
    {
        var whole = Encoding.UTF8.GetBytes(Request.With("\"Leg\"", "\"Füße — 脚\""));
        Assert.Empty(CutRequestJson.Read(whole).Faults);
        for (var length = 0; length < whole.Length; length++)
        {
            var (request, faults) = CutRequestJson.Read(whole.AsMemory(0, length));
            Assert.True(request is null && faults.Length == 1, $"the first {length} of {whole.Length} bytes");
        }
    }
}
