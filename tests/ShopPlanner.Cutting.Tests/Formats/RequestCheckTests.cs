using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>A request made in code keeps to the rules of one read from a document, and its faults read the same.</summary>
public sealed class RequestCheckTests
{
    private static readonly CutRequest Sound = Some.Request(
        [Some.Board(), Some.Sheet()],
        [
            Some.Stock("new", "96", price: 6),
            Some.Stock("bin", "40", quantity: 1, offcut: true),
            Some.Stock("sheet", "96", "48", 60, 2, material: "ply"),
        ],
        [Some.Part("A", "40", 2), Some.Part("P", "30", 1, "20", material: "ply")],
        endTrim: "1/2",
        edgeTrim: "1/4"
    ) with
    {
        Store = new(2, Some.Of("1/8")),
        Carry = new(Some.Of("60"), Some.Of("30")),
    };

    private static readonly Length Less = Length.FromTicks(-1016);
    private static readonly Length Far = Length.FromMillimetres(100_001);

    private static readonly Dictionary<string, Func<CutRequest, CutRequest>> Ways = new()
    {
        ["saw.kerf"] = r => r with { Saw = r.Saw with { Kerf = Less } },
        ["saw.boardEndTrim"] = r => r with { Saw = r.Saw with { BoardEndTrim = Some.Of("96") } },
        ["saw.sheetEdgeTrim"] = r => r with { Saw = r.Saw with { SheetEdgeTrim = Some.Of("24") } },
        ["saw.widestRip"] = r => r with { Saw = r.Saw with { WidestRip = Length.Zero } },
        ["saw.longestCrosscut"] = r => r with { Saw = r.Saw with { LongestCrosscut = Far } },
        ["keep.boardLength"] = r => r with { Keep = r.Keep with { BoardLength = Less } },
        ["keep.sheetLength"] = r => r with { Keep = r.Keep with { SheetLength = Far } },
        ["keep.sheetWidth"] = r => r with { Keep = r.Keep with { SheetWidth = Less } },
        ["materials"] = r => r with { Materials = [], Stock = [], Parts = [] },
        ["materials[1].id"] = r => r with { Materials = [r.Materials[0], .. r.Materials] },
        ["materials[0].width"] = r => r with { Materials = [r.Materials[0] with { Width = null }, r.Materials[1]] },
        ["materials[1].thickness"] = r =>
            r with
            {
                Materials = [r.Materials[0], r.Materials[1] with { Thickness = Length.Zero }],
            },
        ["stock[1].id"] = r => Stock(r, 1, one => one with { Id = "new" }),
        ["stock[0].material"] = r => Stock(r, 0, one => one with { Material = "oak" }),
        ["stock[0].length"] = r => Stock(r, 0, one => one with { Length = Length.Zero }),
        ["stock[1].width"] = r => Stock(r, 1, one => one with { Width = Some.Of("3") }),
        ["stock[2].price"] = r => Stock(r, 2, one => one with { Price = Money.From(-1) }),
        ["stock[2].quantity"] = r => Stock(r, 2, one => one with { Quantity = -1 }),
        ["stock[1].untrimmed"] = r => Stock(r, 1, one => one with { Untrimmed = StockEdges.All }),
        ["stock[0].quantity"] = r => Stock(r, 0, one => one with { BadPlaces = [Place("1", "2 1/2")] }),
        ["stock[1].badPlaces[0].dx"] = r => Stock(r, 1, one => one with { BadPlaces = [Place("41", "2 1/2")] }),
        ["stock[1].badPlaces[0].dy"] = r => Stock(r, 1, one => one with { BadPlaces = [Place("1", "3")] }),
        ["stock[1].badPlaces"] = r => Stock(r, 1, one => one with { BadPlaces = [.. Enumerable.Repeat(Place("1", "1"), 21)] }),
        ["parts[0].id"] = r => Part(r, 0, one => one with { Id = " " }),
        ["parts[1].id"] = r => Part(r, 1, one => one with { Id = "A" }),
        ["parts[0].name"] = r => Part(r, 0, one => one with { Name = new string('x', 4001) }),
        ["parts[1].material"] = r => Part(r, 1, one => one with { Material = "oak" }),
        ["parts[0].length"] = r => Part(r, 0, one => one with { Length = Less }),
        ["parts[1].width"] = r => Part(r, 1, one => one with { Width = Length.Zero }),
        ["parts[0].quantity"] = r => Part(r, 0, one => one with { Quantity = 0 }),
        ["parts"] = r => Part(r, 0, one => one with { Quantity = 100_000 }),
        ["parts[0].finishedLength"] = r => Part(r, 0, one => one with { FinishedLength = Some.Of("41") }),
        ["parts[1].finishedWidth"] = r => Part(r, 1, one => one with { FinishedWidth = Some.Of("21") }),
        ["parts[1].practiceFor"] = r => Part(r, 1, one => one with { PracticeFor = "Z" }),
        ["limits.seconds"] = r => r with { Limits = new(86_401) },
        ["store.cuts"] = r => r with { Store = r.Store! with { Most = 101 } },
        ["store.tolerance"] = r => r with { Store = r.Store! with { Tolerance = Less } },
        ["carry.longest"] = r => r with { Carry = new(Length.Zero, Some.Of("30")) },
        ["carry.widest"] = r => r with { Carry = new(Some.Of("60"), Some.Of("61")) },
    };

    public static TheoryData<string> Members => [.. Ways.Keys];

    [Fact]
    public void A_sound_request_has_no_fault() => Assert.Empty(Sound.Check());

    [Theory]
    [MemberData(nameof(Members))]
    public void A_wrong_member_is_named_with_the_words_and_the_value_of_the_document(string member)
    {
        var request = Ways[member](Sound);
        var faults = request.Check();
        Assert.Contains(faults, fault => fault.Field == member);
        Assert.Equal(CutRequestJson.Read(Encoding.UTF8.GetBytes(CutRequestJson.Write(request))).Faults, faults);
    }

    [Fact]
    public void A_hundred_faults_are_listed_and_the_rest_counted()
    {
        var parts = Enumerable.Range(0, 150).Select(i => Some.Part($"A{i}", "0"));
        var faults = (Sound with { Parts = [.. parts] }).Check();
        Assert.Equal(101, faults.Length);
        Assert.Equal("and 50 more", faults[100].Value);
    }

    private static BadPlace Place(string dx, string dy) => new(Length.Zero, Length.Zero, Some.Of(dx), Some.Of(dy));

    private static CutRequest Stock(CutRequest request, int index, Func<CutStock, CutStock> spoil) =>
        request with
        {
            Stock = request.Stock.SetItem(index, spoil(request.Stock[index])),
        };

    private static CutRequest Part(CutRequest request, int index, Func<CutPart, CutPart> spoil) =>
        request with
        {
            Parts = request.Parts.SetItem(index, spoil(request.Parts[index])),
        };
}
