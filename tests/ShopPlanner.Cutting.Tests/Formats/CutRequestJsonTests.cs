using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>A good request reads to what it says, and what is written reads back equal.</summary>
public sealed class CutRequestJsonTests
{
    [Fact]
    public void The_printed_example_reads_to_what_it_says()
    {
        var (request, faults) = ReadRequest(Request);
        Assert.Empty(faults);
        Assert.Equal(new SawSettings(In(0.125m), In(0.5m), In(0.25m)), request!.Saw);
        Assert.Equal(new KeepRule(In(12), In(12), In(6)), request.Keep);
        Assert.Equal(
            [new("pine-1x3", StockForm.Board, In(0.75m), In(2.5m)), new("birch-18", StockForm.Sheet, In(0.71875m), null)],
            request.Materials
        );
        Assert.Equal(
            [
                new("pine-1x3-8ft", "pine-1x3", In(96), In(2.5m), Money.From(6.48m), null, false),
                new("B7", "pine-1x3", In(41.375m), In(2.5m), Money.Zero, 1, true),
                new("birch-full", "birch-18", In(96), In(48), Money.From(64), 4, false),
            ],
            request.Stock
        );
        Assert.Equal(
            [
                new("A", "Leg", "pine-1x3", In(34.5m), In(2.5m), Grain.Length, 4),
                new("P", "Side panel", "birch-18", In(27), In(13.25m), Grain.Length, 2),
            ],
            request.Parts
        );
        Assert.Equal(10, request.Limits.Seconds);
    }

    [Fact]
    public void What_may_be_absent_has_the_value_of_the_description()
    {
        var (request, faults) = ReadRequest(
            """
            { "format": "shop-planner/cut-request", "version": 1, "unit": "mm",
              "materials": [ { "id": "m", "form": "board", "width": 60 } ],
              "stock": [ { "id": "s", "material": "m", "length": 2400 } ],
              "parts": [ { "id": "p", "material": "m", "length": 500 } ] }
            """
        );
        Assert.Empty(faults);
        Assert.Equal(new SawSettings(Length.Zero, Length.Zero, Length.Zero), request!.Saw);
        Assert.Equal(new KeepRule(null, null, null), request.Keep);
        Assert.Equal(
            new CutStock("s", "m", Length.FromMillimetres(2400), Length.FromMillimetres(60), Money.Zero, null, false),
            request.Stock.Single()
        );
        Assert.Equal(
            new CutPart("p", "p", "m", Length.FromMillimetres(500), Length.FromMillimetres(60), Grain.Length, 1),
            request.Parts.Single()
        );
        Assert.Equal(10, request.Limits.Seconds);
    }

    [Theory]
    [InlineData("\"34 1/2\"", 34.5)]
    [InlineData("\"3/4\"", 0.75)]
    [InlineData("\"34-1/2 in\"", 34.5)]
    [InlineData("\"8 ft\"", 96)]
    [InlineData("\"8' 6 1/2\\\"\"", 102.5)]
    [InlineData("\"0.75\"", 0.75)]
    [InlineData("34.5", 34.5)]
    [InlineData("3.45e1", 34.5)]
    [InlineData("345E-1", 34.5)]
    public void A_length_in_inches_is_a_number_or_text(string json, double inches)
    {
        var (request, faults) = ReadRequest(Request.With("\"34 1/2\"", json));
        Assert.Empty(faults);
        Assert.Equal(In((decimal)inches), request!.Parts[0].Length);
    }

    [Theory]
    [InlineData("\"600 mm\"", 600)]
    [InlineData("\"60 cm\"", 600)]
    [InlineData("\"1.2 m\"", 1200)]
    [InlineData("600", 600)]
    [InlineData("0.1", 0.1)]
    [InlineData("\"1 in\"", 25.4)]
    public void A_length_in_millimetres_is_a_number_or_text(string json, double millimetres)
    {
        var (request, faults) = ReadRequest(Request.With("\"in\"", "\"mm\"").With("\"34 1/2\"", json));
        Assert.Empty(faults);
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), request!.Parts[0].Length);
    }

    [Theory]
    [InlineData("in")]
    [InlineData("mm")]
    public void What_is_written_reads_back_equal(string unit)
    {
        var request = ReadRequest(
            Request.With("\"in\"", $"\"{unit}\"").With("34 1/2", "33 21/64 in").With("\"Leg\"", "\"Pied \\\"½\\\" — 脚\"")
        ).Request!;
        var text = CutRequestJson.Write(request);
        var (back, faults) = ReadRequest(text);
        Assert.Empty(faults);
        Assert.Equal(request.Unit, back!.Unit);
        Assert.Equal(request.Saw, back.Saw);
        Assert.Equal(request.Keep, back.Keep);
        Assert.Equal(request.Materials, back.Materials.AsEnumerable());
        Assert.Equal(request.Stock, back.Stock.AsEnumerable());
        Assert.Equal(request.Parts, back.Parts.AsEnumerable());
        Assert.Equal(request.Limits, back.Limits);
        Assert.Equal(text, CutRequestJson.Write(back));
    }

    [Fact]
    public void Every_length_of_a_whole_number_of_ticks_reads_back_equal()
    {
        var request = ReadRequest(Request).Request!;
        foreach (var unit in new[] { LengthUnit.Inch, LengthUnit.Millimetre })
        {
            var parts = Enumerable
                .Range(1, 8128)
                .Select(ticks => request.Parts[0] with { Id = $"t{ticks}", Length = Length.FromTicks(ticks * 3001L) });
            var (back, faults) = ReadRequest(CutRequestJson.Write(request with { Unit = unit, Parts = [.. parts] }));
            Assert.Empty(faults);
            Assert.Equal(parts, back!.Parts);
        }
    }

    [Fact]
    public void Members_are_written_in_a_fixed_order_and_plain_digits()
    {
        var text = CutRequestJson.Write(ReadRequest(Request).Request!);
        Assert.StartsWith(
            "{\n  \"format\": \"shop-planner/cut-request\",\n  \"version\": 1,\n  \"unit\": \"in\",\n  \"saw\": {\n    \"kerf\": 0.125,\n",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("\"thickness\": 0.71875", text, StringComparison.Ordinal);
        Assert.Contains("\"price\": 64,\n      \"quantity\": 4,\n      \"offcut\": false", text, StringComparison.Ordinal);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"unit\": \"in\",", "\"unit\": \"in\", \"madeBy\": { \"deep\": [1, [2, { \"x\": null }]] },")]
    [InlineData("\"name\": \"Leg\",", "\"name\": \"Leg\", \"colour\": \"red\",")]
    [InlineData("\"price\": 6.48", "\"price\": 6.48, \"width\": null, \"quantity\": null")]
    [InlineData("\"quantity\": 1 }", "\"quantity\": 0 }")]
    [InlineData("\"length\": 27,", "\"length\": \"12 ft\",")]
    [InlineData("\"quantity\": 2,", "\"quantity\": 2.0,")]
    [InlineData("\"seconds\": 10", "\"seconds\": 86400")]
    public void These_are_no_faults(string old, string replacement) =>
        Assert.Empty(ReadRequest(Request.With(old, replacement)).Faults);

    [Fact]
    public void A_byte_order_mark_is_passed_over() => Assert.Empty(ReadRequest("\uFEFF" + Request).Faults);

    [Fact]
    public void A_stream_is_read_like_its_bytes()
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Request));
        var (request, faults) = CutRequestJson.Read(stream);
        Assert.Empty(faults);
        Assert.Equal(2, request!.Parts.Length);
    }
}
